/**
 * The oracle of kits itself, on cases small enough to work out by hand.
 */

import { describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import type { KitAsk } from './kit-ask.js';
import { nameOf } from './kit-change.js';
import type { KitRoute } from './kit-order.js';
import { askKits } from './kit-routes.js';
import { ASK, BOX_B, part, priced, ROW } from './row-world.js';

function shown({ grade, touched, best }: KitRoute): string {
  const [first] = best;
  if (first === undefined) throw new Error('a route is at least one way of doing it');
  const { unpriced, money } = first.cost;
  const lacking = unpriced === 0 ? '' : ` and ${unpriced}`;
  return `${grade} ${touched.join('+')}: ${money / 10_000}${lacking}, ${best
    .map(({ change }) => nameOf(change).replaceAll(/(box|shaft|axle|box-shaft|shaft-axle)=/g, ''))
    .join(' or ')
    .replaceAll(/ +/g, ' ')
    .trim()}`;
}

function ask(more: Partial<KitAsk> = {}, document: Partial<CatalogueDocument> = {}): string[] {
  const { routes } = askKits({ ...ROW, ...document }, { ...ASK, ...more });
  return routes.map(shown).sort();
}

const BY_PLATE = 'proven box: 115, box-b shaft-aa axle-a plate';
const BY_SHAFT = 'proven box+shaft: 145, box-b shaft-bb axle-a plate';
const BY_ALL = 'proven box+shaft+axle: 170, box-b shaft-bb axle-b';

describe('the oracle of kits finds', () => {
  it('every way of doing it, and of those that change the same the cheapest', () => {
    expect(ask()).toEqual([BY_ALL, BY_SHAFT, BY_PLATE]);
  });

  it('nothing that could be left out, even where two things justify each other', () => {
    // shaft-bb would do with the plate at either end, or with axle-b; none of it is needed.
    expect(ask({ wants: [] })).toEqual(['proven : 0, box-a shaft-aa axle-a']);
  });

  it('several as good as each other', () => {
    const offers = priced({
      'box-b': '100.00',
      'shaft-ba': '45.00',
      'shaft-bb': '30.00',
      plate: '15.00',
    });
    expect(ask({ keep: ['axle'] }, { offers })).toEqual([
      'proven box+shaft: 145, box-b shaft-ba axle-a or box-b shaft-bb axle-a plate',
      BY_PLATE,
    ]);
  });

  it('what is left where something is kept or not to be added', () => {
    expect(ask({ keep: ['shaft'] })).toEqual([BY_PLATE]);
    expect(ask({ avoid: ['plate'] })).toEqual([
      BY_ALL,
      'proven box+shaft: 150, box-b shaft-ba axle-a',
    ]);
    expect(ask({ keep: ['box'] })).toEqual([]);
  });

  it('what is within limits', () => {
    expect(ask({ costLimit: 1_450_000 })).toEqual([BY_SHAFT, BY_PLATE]);
    expect(ask({ changesLimit: 1 })).toEqual([BY_PLATE]);
  });

  it('another best where fewer hours are preferred', () => {
    const slow = (ROW.layouts ?? []).map((layout) => {
      const positions = layout.positions.map((one) => ({ ...one, labour: '1 h' }));
      return { ...layout, positions };
    });
    const offers = priced({ 'box-b': '100.00', 'shaft-ba': '45.00' });
    const wants = [{ ...BOX_B, parts: ['box-b'] }];
    expect(
      ask({ prefer: 'labour-hours', wants, keep: ['axle'] }, { layouts: slow, offers }),
    ).toEqual([
      'proven box+shaft: 145, box-b shaft-ba axle-a',
      'proven box: 100 and 1, box-b shaft-aa axle-a plate',
    ]);
  });
});

describe('the oracle of kits counts', () => {
  it('lines without a price before money, and only what is offered where that is asked', () => {
    const offers = priced({ 'box-b': '100.00', 'shaft-ba': '50.00' });
    expect(ask({ keep: ['axle'] }, { offers })).toEqual([
      'proven box+shaft: 150, box-b shaft-ba axle-a',
      'proven box: 100 and 1, box-b shaft-aa axle-a plate',
    ]);
    expect(ask({ from: 'offered' }, { offers })).toEqual([
      'proven box+shaft: 150, box-b shaft-ba axle-a',
    ]);
  });

  it('what is owned as free, and of lots the whole price', () => {
    const lots = [{ id: 'pair', contains: [{ part: 'shaft-ba' }, { part: 'axle-b' }] }];
    const offers = [...(ROW.offers ?? []), ...priced({ pair: '20.00' })];
    // With axle-b out of the lot, shaft-bb is bought beside it.
    expect(ask({ lots: ['pair'] }, { lots, offers })).toEqual([
      'proven box+shaft+axle: 150, box-b shaft-bb axle-b',
      'proven box+shaft: 120, box-b shaft-ba axle-a',
      BY_PLATE,
    ]);
    expect(ask({ owned: { plate: 1 }, keep: ['axle'] })).toEqual([
      'proven box+shaft: 130, box-b shaft-bb axle-a plate',
      'proven box: 100, box-b shaft-aa axle-a plate',
    ]);
  });

  it('whole packs, for all places together', () => {
    const layouts = (ROW.layouts ?? []).map((layout) => {
      const positions = layout.positions.map((one) => ({ ...one, count: 2 }));
      return { ...layout, positions };
    });
    const pack = (price: string, size: string) => ({ id: size, for: 'plate', price, pack: size });
    const offers = [...priced({ 'box-b': '100.00' }), pack('15.00', '1'), pack('25.00', '3')];
    expect(ask({ keep: ['shaft'] }, { layouts, offers })).toEqual([
      'proven box: 225, box-b shaft-aa axle-a plate',
    ]);
    expect(ask({ keep: ['shaft'], owned: { plate: 1 } }, { layouts, offers })).toEqual([
      'proven box: 215, box-b shaft-aa axle-a plate',
    ]);
  });

  it('labour line by line, and once what has to come out of the way', () => {
    // A third of an hour at 10.00 is 3.33; the box is half an hour in the way of the shaft.
    const wants = [{ ...BOX_B, position: 'shaft', parts: ['shaft-ba'] }];
    expect(ask({ wants, labourRate: 100_000, keep: ['box'] })).toEqual([
      'proven shaft: 73.33, box-a shaft-ba axle-a plate',
    ]);
    // Where the box is changed it is out of the way already.
    expect(ask({ labourRate: 100_000, avoid: ['plate'], keep: ['axle'] })).toEqual([
      'proven box+shaft: 163.33, box-b shaft-ba axle-a',
    ]);
  });

  it('what rules use up, bought if it can be', () => {
    const rules = [
      {
        id: 'greasing',
        when: { changed: 'box' },
        consumes: { part: 'grease', quantity: '1.5 l' },
        because: 'it is used up',
      },
    ];
    const tin = { id: 'tin', for: 'grease', price: '4.00', pack: '1 l' };
    const offers = [...(ROW.offers ?? []), tin];
    expect(ask({ keep: ['shaft'] }, { rules, offers })).toEqual([
      'proven box: 123, box-b shaft-aa axle-a plate',
    ]);
    expect(ask({ keep: ['shaft'], from: 'offered' }, { rules })).toEqual([
      'proven box: 115 and 1, box-b shaft-aa axle-a plate',
    ]);
  });
});

describe('the oracle of kits tells', () => {
  const vague = (ROW.parts ?? []).map((one) =>
    one.id === 'shaft-ba' ? part('shaft-ba', 'shaft', { front: null, rear: 'a' }) : one,
  );

  it('open routes beside proven ones that cost more', () => {
    const offers = priced({
      'box-b': '100.00',
      'shaft-ba': '5.00',
      'shaft-bb': '30.00',
      plate: '15.00',
    });
    expect(ask({ keep: ['axle'] }, { parts: vague, offers })).toEqual([
      'open box+shaft: 105, box-b shaft-ba axle-a',
      BY_SHAFT,
      BY_PLATE,
    ]);
    expect(ask({ keep: ['axle'], refusesUnknowns: true }, { parts: vague, offers })).toEqual([
      BY_SHAFT,
      BY_PLATE,
    ]);
  });

  it('and leaves out open ones that cost no less', () => {
    expect(ask({ keep: ['axle'] }, { parts: vague })).toEqual([BY_SHAFT, BY_PLATE]);
  });

  it('no plate where nothing is known to keep it from going', () => {
    // Without the plate it is open whether box-b meets the shaft; with it, that it does.
    const said = { shaft: '?' } as const;
    expect(ask({ said, keep: ['shaft', 'axle'] })).toEqual([
      'open box: 100, box-b as-found axle-a',
    ]);
  });
});

describe('the oracle of kits makes', () => {
  const works = [
    {
      id: 'turn',
      name: 'turned',
      on: { 'one-of': ['role', ['box']] },
      gives: { interfaces: { rear: { pattern: 'a' } } },
      labour: '0.5 h',
      signOff: 'engineer',
    } as const,
  ];
  const offers = [...(ROW.offers ?? []), ...priced({ turn: '9.00' })];

  it('parts that are worked, as far as works may go', () => {
    expect(ask({ workUpTo: 'engineer', keep: ['shaft'] }, { works, offers })).toEqual([
      'proven box: 109, box-b+turn shaft-aa axle-a',
    ]);
    expect(ask({ workUpTo: 'workshop', keep: ['shaft'] }, { works, offers })).toEqual([BY_PLATE]);
  });

  it('something of what is there already', () => {
    const [box] = ROW.parts ?? [];
    if (box === undefined) throw new Error('there is a box');
    const gives = { values: { load: '90 N.m' } };
    const on = { 'one-of': ['role', ['box']] };
    const proven = [{ id: 'prove', name: 'proved', on, gives, labour: '0.5 h' }];
    const condition = { 'at-least': ['box.load', '80 N.m'] };
    const wants = [{ is: 'condition', position: 'box', condition } as const];
    const more = { works: proven, offers: priced({ prove: '7.00' }) };
    // Nobody recorded what box-a bears, so it may do as it is.
    expect(ask({ wants, workUpTo: 'workshop', keep: ['shaft'], avoid: ['box-b'] }, more)).toEqual([
      'open : 0, box-a shaft-aa axle-a',
      'proven box: 7, box-a+prove shaft-aa axle-a',
    ]);
  });
});

describe('the oracle of kits minds', () => {
  it('that the same is bought anew only where that is wished', () => {
    const wants = [{ ...BOX_B, parts: ['box-a'], renews: true }];
    const offers = [...(ROW.offers ?? []), ...priced({ 'box-a': '80.00' })];
    expect(ask({ wants }, { offers })).toEqual(['proven box: 80, box-a shaft-aa axle-a']);
    expect(ask({ wants: [{ ...BOX_B, parts: ['box-a'] }] }, { offers })).toEqual([
      'proven : 0, box-a shaft-aa axle-a',
    ]);
  });

  it('what is said of the vehicle, and mends it', () => {
    const said = { box: 'box-b' };
    expect(ask({ said, wants: [], keep: ['box'] })).toEqual([
      'proven : 15, box-b shaft-aa axle-a plate',
      'proven shaft+axle: 70, box-b shaft-bb axle-b',
      'proven shaft: 45, box-b shaft-bb axle-a plate',
    ]);
    const saidAdapters = { 'box-shaft': ['plate'] };
    expect(ask({ said, saidAdapters, wants: [] })).toEqual([
      'proven : 0, box-b shaft-aa axle-a plate',
    ]);
    expect(ask({ said, wants: [], ignorePresent: true })).toEqual([
      'proven : 0, box-b shaft-aa axle-a',
    ]);
  });

  it('pieces that two places would share', () => {
    const layouts = (ROW.layouts ?? []).map((layout) => {
      const more = { id: 'spare', name: 'Spare', roles: ['box'], optional: true };
      return { ...layout, positions: [...layout.positions, more], unmated: 'ignore' as const };
    });
    const vehicles = (ROW.vehicles ?? []).map((one) => ({
      ...one,
      fitted: { ...one.fitted, spare: null },
    }));
    const wants = [BOX_B, { ...BOX_B, position: 'spare' }];
    const keep = ['shaft'];
    const both = (price: number) => [
      `proven box+spare: ${price}, box-b shaft-aa axle-a spare=box-b plate`,
    ];
    const world = { layouts, vehicles };
    expect(ask({ wants, keep }, world)).toEqual(both(215));
    expect(ask({ wants, keep, owned: { 'box-b': 1 } }, world)).toEqual(both(115));
    expect(ask({ wants, keep, owned: { 'box-b': 2 } }, world)).toEqual(both(15));
  });

  it('what a rule book demands of the whole vehicle', () => {
    const rulesets = [
      {
        id: 'club',
        valid: [null, null] as const,
        cite: 'Club rules',
        demands: {
          keep: ['axle'],
          checks: [{ 'one-of': ['shaft.part', ['shaft-ba', 'shaft-aa']] }],
        },
      },
    ];
    expect(ask({ ruleset: 'club' }, { rulesets })).toEqual([
      'proven box+shaft: 150, box-b shaft-ba axle-a',
      BY_PLATE,
    ]);
  });
});
