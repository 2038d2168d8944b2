/**
 * What decides which routes there are, in worlds of a few parts; the oracle that tries everything
 * must find the same ones.
 */

import { describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../../src/domain/catalogue/document.js';
import type { KitAsk } from '../../oracle/kit-ask.js';
import { askKits } from '../../oracle/kit-routes.js';
import { ASK, BOX_B, part, priced, ROW } from '../../oracle/row-world.js';
import { kitDifferences } from '../../properties/kit-agreement.js';
import { askReal, nameOfRoute } from '../../properties/real-kits.js';

/** Each route as `grade cost, what stands and sits there`. */
function routes(more: Partial<KitAsk>, own: Partial<CatalogueDocument>): string[] {
  const document = { ...ROW, ...own };
  const ask = { ...ASK, ...more };
  const kits = askReal({ document, ask });
  expect(kitDifferences(askKits(document, ask), kits, ask)).toEqual([]);
  return kits.routes.map((route) => {
    const names = nameOfRoute(route)
      .replaceAll(/(box|shaft|axle|box-shaft|shaft-axle)=/g, '')
      .replaceAll(/ +/g, ' ')
      .trim();
    return `${route.grade} ${route.basket.totals.cost / 10_000}, ${names}`;
  });
}

const parts = ROW.parts ?? [];

describe('an open route is hidden by a proven one that is no dearer', () => {
  const vague = parts.map((one) => (one.id === 'box-b' ? part('box-b', 'box', {}) : one));
  const offers = priced({ 'box-a': '200.00', 'box-b': '100.00' });
  const wants = [{ ...BOX_B, parts: ['box-a', 'box-b'], renews: true }];
  const keep = ['shaft', 'axle'];

  it('whatever else is preferred to the price', () => {
    const asked = { wants, keep, prefer: 'changed-positions' } as const;
    expect(routes(asked, { parts: vague, offers })).toEqual([
      'proven 200, box-a shaft-aa axle-a',
      'open 100, box-b shaft-aa axle-a',
    ]);
  });
});

describe('one choice serves what a ruleset demands beside what the layout asks', () => {
  const [layout] = ROW.layouts ?? [];
  if (layout === undefined) throw new Error('there is one layout');
  const roles = (ROW.roles ?? []).map((role) =>
    role.id === 'shaft'
      ? { ...role, values: { length: { type: 'measured', unit: 'mm' } as const } }
      : role,
  );
  const made = { choose: ['8 mm', '12 mm'] } as const;
  const shaft = {
    ...part('shaft-made', 'shaft', { front: 'a', rear: 'a' }),
    values: { length: made },
  };
  const wants = [{ ...BOX_B, position: 'shaft', parts: ['shaft-made'] }];
  const asked = { wants, keep: ['box', 'axle'], ruleset: 'club' };
  const demanding = (length: string) => ({
    roles,
    parts: [...parts, shaft],
    layouts: [{ ...layout, checks: [{ id: 'room', 'at-most': ['shaft.length', '9 mm'] }] }],
    rulesets: [
      {
        id: 'club',
        valid: [null, null] as const,
        cite: 'Club rules',
        demands: { checks: [{ id: 'reach', 'at-least': ['shaft.length', length] }] },
      },
    ],
  });

  it('if there is one', () => {
    expect(routes(asked, demanding('9 mm'))).toEqual(['proven 0, box-a shaft-made axle-a']);
    expect(routes(asked, demanding('9.1 mm'))).toEqual([]);
  });
});

describe('a lot that is wanted', () => {
  it('has no room on the left for what is made for the right', () => {
    const layouts = (ROW.layouts ?? []).map((layout) => {
      const positions = layout.positions.map((one) =>
        one.id === 'axle' ? { ...one, handed: true } : one,
      );
      return { ...layout, positions };
    });
    const right = { ...part('axle-r', 'axle', { front: 'a' }), hand: 'right' as const };
    const lots = [{ id: 'pair', contains: [{ part: 'axle-r', quantity: '2' }] }];
    const wants = [{ is: 'lot', lot: 'pair', whole: true } as const];
    const offers = priced({ pair: '20.00' });
    expect(routes({ wants }, { layouts, parts: [...parts, right], lots, offers })).toEqual([
      'proven 20, box-a shaft-aa axle:left=axle-a axle:right=axle-r',
    ]);
  });
});

describe('what nobody recorded of a donor', () => {
  const wreck = { id: 'wreck', make: 'Marl', model: 'Wreck', layout: 'row' };
  const vehicles = [...(ROW.vehicles ?? []), { ...wreck, fitted: { shaft: 'shaft-bb' } }];
  const contains = ['box', 'shaft', 'axle'].map((position) => ({ vehicle: 'wreck', position }));
  const lots = [{ id: 'donor', contains }];
  const world = { vehicles, lots, offers: priced({ donor: '60.00' }) };
  const shaft = { ...BOX_B, position: 'shaft', parts: ['shaft-bb'] };
  const asked = { wants: [shaft], lots: ['donor'], from: 'offered' } as const;
  const all = 'proven 60, donor:donor:box shaft-bb donor:donor:axle';

  it('is known to meet what it met there, and nothing else', () => {
    // Its box and its axle met shaft-bb; box-a and axle-a do not meet it.
    expect(routes(asked, world)).toEqual([all]);
    const changed = { is: 'condition', position: 'box', condition: { changed: 'box' } } as const;
    expect(routes({ ...asked, wants: [changed], keep: ['shaft'] }, world)).toEqual([
      'open 60, donor:donor:box shaft-aa axle-a',
    ]);
    expect(routes({ ...asked, lots: [] }, world)).toEqual([]);
  });

  it('goes in with all of the lot, or as one piece of it', () => {
    const want = (whole: boolean) => [{ is: 'lot', lot: 'donor', whole } as const];
    expect(routes({ ...asked, wants: want(true) }, world)).toEqual([all]);
    expect(routes({ ...asked, wants: want(false), keep: ['shaft'] }, world)).toEqual([
      // The axle takes no time.
      'open 60, box-a shaft-aa donor:donor:axle',
      'open 60, donor:donor:box shaft-aa axle-a',
    ]);
    expect(routes({ ...asked, wants: want(true), keep: ['shaft'] }, world)).toEqual([]);
  });
});

describe('an adapter that neither face calls for', () => {
  const kinds = (ROW.kinds ?? []).flatMap((kind) => [kind, { ...kind, id: 'other' }]);
  const odd = {
    ...part('odd', 'plate', {}),
    interfaces: { one: { kind: 'other' }, two: { kind: 'other' } },
  };
  const said = { box: '?', shaft: '?' } as const;
  const keep = ['box', 'shaft', 'axle'];
  const own = { kinds, parts: [...parts, odd] };

  it('may sit between faces that nobody has recorded, where it is asked for', () => {
    const condition = { mating: 'box-shaft', adapter: 'odd' };
    const wants = [{ is: 'condition', position: 'box', condition } as const];
    expect(routes({ said, keep, wants }, own)).toEqual(['open 0, as-found as-found axle-a odd']);
  });

  it('or stay there while another beside it goes', () => {
    const layouts = (ROW.layouts ?? []).map((layout) => {
      const matings = (layout.matings ?? []).map((mating) => ({ ...mating, adapters: 2 }));
      return { ...layout, matings };
    });
    const condition = { not: { mating: 'box-shaft', adapter: 'plate' } };
    const wants = [
      { is: 'condition', position: 'box', condition },
      { is: 'condition', position: 'box', condition: { mating: 'box-shaft', adapter: 'odd' } },
    ] as const;
    const saidAdapters = { 'box-shaft': ['odd', 'plate'] };
    expect(routes({ said, keep, wants, saidAdapters }, { ...own, layouts })).toEqual([
      'open 0, as-found as-found axle-a odd',
    ]);
  });
});

describe('an adapter line that can go', () => {
  it('is in no route, though what was there before would not do', () => {
    const shaft = part('shaft-ca', 'shaft', { front: 'c', rear: 'a' });
    const ring = part('ring', 'plate', { one: 'a', two: 'c' });
    const own = { parts: [...parts, shaft, ring], offers: priced({ 'shaft-ba': '50.00' }) };
    const asked = { wants: [], keep: ['box', 'axle'], saidAdapters: { 'box-shaft': ['plate'] } };
    // With the ring taken out, and nothing in its place, the shaft can stay as it was.
    expect(routes(asked, own)).toEqual([
      'proven 0, box-a shaft-aa axle-a',
      'proven 50, box-a shaft-ba axle-a plate',
    ]);
  });
});
