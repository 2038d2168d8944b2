/**
 * Where goods come from, worked out by hand: at hand, out of lots, from one offer or another, and
 * what limits leave of it. The arithmetic stands beside each.
 */

import { describe, expect, test } from 'vitest';
import { moneyText } from '../../../src/domain/kit/money.js';
import { exactText } from '../../../src/domain/quantity/rational.js';
import { OFFERS, priced, shown } from './garage.js';
import { type Asked, bill, change, consumed, shop } from './shop.js';

const WHEELS = { places: ['front*2 0.25h', 'rear*2 0.25h'], parts: ['wheel-a', 'wheel-b'] };

describe('pieces at hand', () => {
  const catalogue = shop(WHEELS);
  const wheels = (asked: Asked) => {
    const { asked: whole, basket } = priced(asked, catalogue);
    const at = (place: string) => change(whole, place, [null, 'wheel-a']);
    return shown(basket(bill(at('rear'), at('front'))));
  };

  test('are shared by all places, the first in the layout first', () => {
    expect(wheels({ owned: { 'wheel-a': 2 }, offers: ['wheel-a 60.00'] })).toEqual([
      'add:front:wheel-a 2 owned 0.00 0.5h',
      'add:rear:wheel-a 2 offer 120.00 0.5h',
    ]);
  });

  test('make two lines of one where they do not reach; the labour stands on one of them', () => {
    expect(wheels({ owned: { 'wheel-a': 3 }, offers: ['wheel-a 60.00'] })).toEqual([
      'add:front:wheel-a 2 owned 0.00 0.5h',
      'add:rear:wheel-a:owned 1 owned 0.00 0h',
      'add:rear:wheel-a 1 offer 60.00 0.5h',
    ]);
  });

  test('may make a pack needless', () => {
    // Four in a pack of 200.00; with three at hand one more at 60.00.
    const offers = ['wheel-a 60.00', 'wheel-a 200.00 per 4'];
    expect(wheels({ offers })).toEqual([
      'add:front:wheel-a 2 offer 200.00 0.5h',
      // Out of the pack that is opened already.
      'add:rear:wheel-a 2 offer 0.00 0.5h',
    ]);
    expect(wheels({ offers, owned: { 'wheel-a': 3 } }).at(-1)).toBe(
      'add:rear:wheel-a 1 offer 60.00 0.5h',
    );
  });
});

describe('the offer', () => {
  const box = (offers: string[], asked: Asked = {}) => {
    const { asked: whole, basket } = priced({ offers, ...asked });
    return basket(bill(change(whole, 'box', [null, 'box-b'])));
  };
  const offerOf = (offers: string[], asked: Asked = {}) =>
    box(offers, asked)?.lines[0]?.offer?.record.id ?? null;
  const limits = (more: Partial<NonNullable<Asked['limits']>>) => ({ limits: more }) as Asked;

  test('is the cheapest, then the quickest, then the first by its name', () => {
    expect(offerOf(['box-b 900.00 in 1d', 'box-b 899.99'])).toBe('offer-1');
    expect(offerOf(['box-b 900.00', 'box-b 900.00 in 5d', 'box-b 900.00 in 3d'])).toBe('offer-2');
    expect(offerOf(['box-b 900.00 in 3d', 'box-b 900.00 in 3d'])).toBe('offer-0');
  });

  test('is none of a supplier that is avoided', () => {
    const avoid = { parts: new Set<string>(), suppliers: new Set(['Fennuld']), conditions: [] };
    const offers = ['box-b 900.00 by Fennuld', 'box-b 950.00 by Skarrel'];
    expect(offerOf(offers, { avoid })).toBe('offer-1');
    expect(shown(box(offers.slice(0, 1), { avoid }))).toEqual(['add:box:box-b 1 unpriced ? 6h']);
    expect(box(offers.slice(0, 1), { avoid, from: 'offered' })).toBeNull();
  });

  test('is one that is there in time, where time is short', () => {
    const offers = ['box-b 700.00', 'box-b 800.00 in 6d', 'box-b 900.00 in 5d'];
    expect(offerOf(offers, limits({ leadDays: 5 }))).toBe('offer-2');
    // Nobody knows when something without an offer is there.
    expect(box(offers, limits({ leadDays: 4 }))).toBeNull();
    expect(box(offers)!.totals.leadDays).toBeNull();
    expect(box(offers.slice(1))!.totals.leadDays).toBe(6);
  });

  test('is one that is in stock, where only stock counts', () => {
    const offers = ['box-b 700.00', 'box-b 800.00 stock 0', 'box-b 900.00 stock 1'];
    expect(offerOf(offers)).toBe('offer-0');
    expect(offerOf(offers, limits({ inStock: true }))).toBe('offer-2');
    expect(box(offers.slice(0, 2), limits({ inStock: true }))).toBeNull();
  });

  test('has so many packs in stock', () => {
    const asked = limits({ inStock: true });
    const bolts = (amount: string) => {
      const { basket } = priced({ offers: ['bolt-a 1.20 per 4 stock 2'], ...asked });
      return basket({ ...bill(), consumed: [consumed('bolt-a', amount)] });
    };
    expect(shown(bolts('8'))).toEqual(['extra:bolt-a 8 offer 2.40 0h']);
    // One offer serves a line, so the ninth is not to be had in stock; without it the kit stands.
    expect(shown(bolts('9'))).toEqual([
      'extra:bolt-a:offer 8 offer 2.40 0h',
      'extra:bolt-a 1 unpriced ? 0h',
    ]);
  });
});

describe('lots', () => {
  // GARAGE has one: box-b, prop-a and two wheel-a.
  const all = (asked: Asked) => {
    const { asked: whole, basket } = priced(asked);
    return basket(
      bill(
        change(whole, 'box', [null, 'box-b']),
        change(whole, 'prop', [null, 'prop-a']),
        change(whole, 'wheel', [null, 'wheel-a']),
      ),
    );
  };

  test('are bought where they save more than they cost, and their pieces are free', () => {
    // On their own: 900 + 180 + 4 x 60 = 1320. With the lot: 1100 + 2 x 60 = 1220.
    const basket = all({ offers: [...OFFERS, 'set 1100.00 in 4d'] });
    expect(shown(basket)).toEqual([
      'add:box:box-b 1 lot 0.00 6h',
      'add:prop:prop-a 1 lot 0.00 1h',
      'add:wheel:wheel-a:lot:set 2 lot 0.00 0h',
      'add:wheel:wheel-a 2 offer 120.00 1h',
      'lot:set 1 offer 1100.00 0h',
    ]);
    expect(moneyText(basket!.totals.parts)).toBe('1220.00');
    expect(basket!.totals.leadDays).toBe(4);
  });

  test('are not bought where they save as much as they cost', () => {
    // 1200 + 120 is no less than 1320.
    const basket = all({ offers: [...OFFERS, 'set 1200.00'] });
    expect(shown(basket).at(-1)).toBe('add:wheel:wheel-a 4 offer 240.00 1h');
    expect(basket!.totals.parts).toBe(13_200_000);
  });

  test('leave over what has no use, which earns nothing', () => {
    const { asked, basket } = priced({
      offers: ['box-b 900.00', 'set 850.00'],
      owned: { 'wheel-a': 3 },
    });
    const found = basket(
      bill(change(asked, 'box', [null, 'box-b']), change(asked, 'wheel', [null, 'wheel-a'])),
    );
    expect(shown(found)).toEqual([
      'add:box:box-b 1 lot 0.00 6h',
      'add:wheel:wheel-a:owned 3 owned 0.00 0h',
      'add:wheel:wheel-a 1 lot 0.00 1h',
      'lot:set 1 offer 850.00 0h',
    ]);
    const left = found!.lines.at(-1)!.leftOver;
    expect(left.map(({ part, quantity }) => `${part} ${exactText(quantity)}`)).toEqual([
      'prop-a 1',
      'wheel-a 1',
    ]);
  });

  test('are bought several times where that is least, as often as there are any', () => {
    const pair = { places: ['wheel*4'], parts: ['wheel-a'], lots: ['pair: wheel-a*2'] };
    const four = (offers: string[], more: Asked = {}) => {
      const { asked, basket } = priced({ offers, from: 'offered', ...more }, shop(pair));
      return basket(bill(change(asked, 'wheel', [null, 'wheel-a'])));
    };
    expect(shown(four(['pair 100.00']))).toEqual([
      'add:wheel:wheel-a 4 lot 0.00 ?',
      'lot:pair 2 offer 200.00 0h',
    ]);
    // Two pairs in a pack for less than two packs of one; or one pair and two wheels.
    const packs = four(['pair 100.00', 'pair 180.00 per 2']);
    expect(shown(packs)[1]).toBe('lot:pair 2 offer 180.00 0h');
    const line = packs?.lines.find(({ action }) => action === 'lot');
    expect([line?.packs, exactText(line!.over!)]).toEqual([1, '0']);
    expect(shown(four(['pair 100.00', 'wheel-a 49.00']))).toEqual([
      'add:wheel:wheel-a 4 offer 196.00 ?',
    ]);
    const limits = { inStock: true } as Asked['limits'];
    const inStock = (stock: number) => four([`pair 100.00 stock ${stock}`], { limits } as Asked);
    expect(shown(inStock(2))).toContain('lot:pair 2 offer 200.00 0h');
    expect(inStock(1)).toBeNull();
  });

  test('are not paid for only to have a price for what is used up', () => {
    const tank = {
      places: ['hub'],
      parts: ['hub-a', 'oil-a'],
      lots: ['tank: hub-a, oil-a 20 l'],
    };
    const filled = (offers: string[], hub: readonly [string | null, string | null]) => {
      const { asked, basket } = priced({ offers }, shop(tank));
      const one = bill(...(hub[1] === null ? [] : [change(asked, 'hub', hub)]));
      return shown(basket({ ...one, consumed: [consumed('oil-a', '2 l')] }));
    };
    const dear = ['tank 9000.00', 'hub-a 30.00'];
    expect(filled(dear, [null, null])).toEqual(['extra:oil-a 2 unpriced ? 0h']);
    expect(filled(dear, [null, 'hub-a'])).toContain('extra:oil-a 2 unpriced ? 0h');
    // It is bought for the hub, and has the oil.
    expect(filled(['tank 9000.00'], [null, 'hub-a'])).toEqual([
      'add:hub:hub-a 1 lot 0.00 ?',
      'lot:tank 1 offer 9000.00 0h',
      'extra:oil-a 2 lot 0.00 0h',
    ]);
    // Money is money: the oil alone would cost more.
    expect(filled(['tank 10.00', 'oil-a 6.00 per 1 l'], [null, null])).toContain(
      'lot:tank 1 offer 10.00 0h',
    );
  });

  test('that nobody offers have no price, or are not to be had', () => {
    // Three lines without a price, or one.
    expect(shown(all({ offers: ['wheel-a 60.00'] }))).toContain('lot:set 1 unpriced ? 0h');
    expect(all({ offers: ['wheel-a 60.00'], from: 'offered' })).toBeNull();
    expect(shown(all({ offers: OFFERS, lots: [] })).join()).not.toContain('lot:');
  });

  test('that are wanted are bought for nothing, and used before what is at hand', () => {
    const wants = [{ is: 'lot', lot: 'set', whole: true } as const];
    const asked = { offers: [...OFFERS, 'set 5000.00'], wants, lots: [] };
    const nothing = priced(asked).basket(bill());
    expect(shown(nothing)).toEqual(['lot:set 1 offer 5000.00 0h']);
    expect(nothing!.lines[0]!.leftOver).toHaveLength(3);
    expect(shown(all({ ...asked, owned: { 'box-b': 1 } }))[0]).toBe('add:box:box-b 1 lot 0.00 6h');
    expect(priced({ ...asked, offers: [], from: 'offered' }).basket(bill())).toBeNull();
  });

  test('out of vehicles have what the works fitted there, and else an article of their own', () => {
    const catalogue = shop({
      places: ['unit', 'box', 'wheel*4', 'shaft<>', 'hub*2'],
      parts: ['unit-a: unit, box', 'wheel-a', 'shaft-a', 'shaft-b'],
      donors: {
        donor: {
          unit: 'unit-a',
          box: 'unit-a',
          wheel: 'wheel-a',
          shaft: { left: 'shaft-a', right: 'shaft-b' },
        },
      },
      lots: ['whole: donor/unit, donor/box, donor/wheel, donor/shaft, donor/hub'],
    });
    const wants = [{ is: 'lot', lot: 'whole', whole: true } as const];
    const { asked, basket } = priced(
      { wants, offers: ['whole 700.00'], from: 'offered' },
      catalogue,
    );
    const left = basket(bill())!.lines[0]!.leftOver;
    expect(left.map(({ part, quantity }) => `${part} ${exactText(quantity)}`)).toEqual([
      // It fills two of the places, and is one piece.
      'unit-a 1',
      'wheel-a 4',
      'shaft-a 1',
      'shaft-b 1',
      'donor:whole:hub 2',
    ]);
    const hub = (part: string) => basket(bill(change(asked, 'hub', [null, part])));
    // Both pieces of the place come with it.
    expect(hub('donor:whole:hub')!.lines.map(({ fromLot }) => fromLot)).toContain('whole');
    const unit = basket(
      bill(change(asked, 'unit', ['?', 'unit-a']), change(asked, 'box', [null, 'unit-a'])),
    );
    expect(shown(unit)).toEqual([
      'add:unit:unit-a 1 lot 0.00 ?',
      // It reaches this place from the other, and is bought once.
      'add:box:unit-a 1 - 0.00 ?',
      'lot:whole 1 offer 700.00 0h',
    ]);
    expect(unit!.totals.changedPositions).toBe(2);
  });
});

describe('limits', () => {
  const limited = (limits: object, offers = OFFERS) => {
    const { asked, basket } = priced({ offers, limits, labourRate: '60.00', lots: [] } as Asked);
    return basket(bill(change(asked, 'box', ['box-a', 'box-b']))) !== null;
  };

  test('of the cost include labour, and count what is known of it', () => {
    // 900 + 6 x 60.
    expect(limited({ cost: 12_600_000 })).toBe(true);
    expect(limited({ cost: 12_599_999 })).toBe(false);
    expect(limited({ cost: 3_600_000 }, [])).toBe(true);
    expect(limited({ cost: 3_599_999 }, [])).toBe(false);
  });

  test('of labour and of changed positions', () => {
    const { asked } = priced();
    const { labour } = asked.vehicle.layout.positions.get('box')!;
    expect(limited({ labourHours: labour })).toBe(true);
    expect(limited({ labourHours: labour!.sub(1) })).toBe(false);
    expect(limited({ changedPositions: 1 })).toBe(true);
    expect(limited({ changedPositions: 0 })).toBe(false);
  });
});
