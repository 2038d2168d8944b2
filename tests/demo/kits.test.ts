/**
 * What the demo answers to its main question, which kits put the late gearbox into the early car.
 * Which ways there are follows from the ratios, splines and stud patterns of the records; what each
 * costs was added up by hand from the price list. Other conversions are in `more-kits.test.ts`.
 */

import { describe, expect, test } from 'vitest';
import { askKits } from './ask.js';
import { added, bought, cents, leftOver, onlyRoute, routeAt, sumOf } from './kit-lines.js';

const late = askKits('lirren-1', ['gearbox-6-late'], { routes: 6 })();

/** What every way takes in front of the rear axle, at its own price. */
const FRONT = [
  ['gearbox-6-late', '900.00'],
  ['flywheel-late', '130.00'],
  ['linkage-cables', '110.00'],
  // Two at 130.00.
  ['front-shaft-hybrid', '260.00'],
  ['starter-late', '95.00'],
  // Clutch 190.00, bearing 28.50 and pilot bearing 11.00 come to 229.50 one by one.
  ['clutch-kit-late', '205.00'],
] as const;

/** What every way uses up, with how much of it. */
const USED_UP = [
  ['gear-oil-75w90-gl5', '37.20'],
  ['axle-oil-75w90', '13.80'],
  ['flywheel-bolt-lirren', '16.80'],
  ['prop-bolt-lirren', '12.80'],
  ['hub-nut-lirren', '15.20'],
  ['seal-38', '11.20'],
] as const;

const MADE_SHAFT = ['prop-made-two', '420.00'] as const;
const INSTRUMENT = ['speedometer-pulses', '60.00'] as const;
const CONVERTER = ['speed-converter-8', '395.00'] as const;
const HYBRID = [
  ['axle-late-used', '300.00'],
  ['bracket-20', '48.00'],
  // Two at 165.00.
  ['rear-shaft-30-25', '330.00'],
] as const;

/** The lines with a price, way by way. */
const WAYS: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'another gear set': [...FRONT, MADE_SHAFT, INSTRUMENT, ['set-43-12', '505.00'], ...USED_UP],
  'hybrid half-shafts': [...FRONT, MADE_SHAFT, INSTRUMENT, ...HYBRID, ...USED_UP],
  'another gear set, with a converter': [
    ...FRONT,
    MADE_SHAFT,
    CONVERTER,
    ['set-43-12', '505.00'],
    ...USED_UP,
  ],
  'hybrid half-shafts, with a converter': [...FRONT, MADE_SHAFT, CONVERTER, ...HYBRID, ...USED_UP],
  'a donor': [
    ['donor-lirren-2', '2590.00'],
    ['shorten-prop-late', '160.00'],
    ['bracket-20', '48.00'],
    ['front-shaft-hybrid', '260.00'],
    ['front-hub-117', '210.00'],
    ['pilot-15-32-9', '11.00'],
    ['brake-fluid-dot4', '9.80'],
    ...USED_UP,
  ],
  'the late rear end': [
    ...FRONT,
    MADE_SHAFT,
    INSTRUMENT,
    ['axle-late-used', '300.00'],
    ['bracket-20', '48.00'],
    ['rear-shaft-late', '180.00'],
    ['rear-hub-late', '320.00'],
    ['front-hub-117', '210.00'],
    // Two in front and two behind, at 100.00.
    ['wheel-15-117', '400.00'],
    ['brake-fluid-dot4', '9.80'],
    ...USED_UP,
  ],
};

describe('the kits that put the late gearbox into the early car', () => {
  test('are six that are proven, none of them beaten by another on every count', () => {
    expect(late).toMatchObject({ complete: true, more: true, currency: 'EUR' });
    expect(late.routes.map(({ grade }) => grade)).toEqual(Array(6).fill('proven'));
    expect(late.routes.map(({ beatenBy }) => beatenBy)).toEqual(Array(6).fill(null));
    expect(late.routes.map(({ totals }) => totals.unpriced)).toEqual(Array(6).fill([]));
  });

  test.each(Object.entries(WAYS).map((way, index) => [index, ...way] as const))(
    'way %i is %s',
    (index, _, priced) => {
      const route = routeAt(late, index);
      expect(bought(route)).toEqual(Object.fromEntries(priced));
      expect(cents(route.totals.cost)).toBe(sumOf(priced.map(([, price]) => price)));
    },
  );

  test('cost more from way to way', () => {
    const costs = ['2792.00', '2965.00', '3127.00', '3300.00', '3395.80', '3754.80'];
    expect(late.routes.map(({ totals }) => totals.cost)).toEqual(costs);
  });

  test('need a shaft as long as the gearbox leaves room for, and say so', () => {
    // 2254 - 612 - 268 = 1374, as for the part alone.
    for (const { order } of late.routes) expect(order[0]?.value?.text).toBe('1374 ±2 mm');
  });

  test('leave hubs, wheels and body alone where the rear axle allows it', () => {
    const gearSet = routeAt(late, 0);
    expect(gearSet.changes).toHaveLength(10);
    for (const place of ['rear-half-shaft', 'rear-hub', 'rear-wheel', 'front-hub', 'body']) {
      expect(gearSet.changes).not.toContain(place);
    }
    expect(routeAt(late, 1).changes).toEqual(
      expect.arrayContaining(['rear-final-drive', 'axle-bracket', 'rear-half-shaft']),
    );
    expect(routeAt(late, 1).changes).not.toContain('rear-hub');
    // Studs on 117 mm behind want the same in front, or one spare wheel does not serve both.
    const whole = ['rear-hub', 'rear-wheel', 'front-hub', 'front-wheel'];
    expect(routeAt(late, 5).changes).toEqual(expect.arrayContaining(whole));
  });

  test('pour oil in by the litre, in whole cans', () => {
    // 2.6 l for the six-speed gearbox are three cans at 12.40, 0.9 l for the axle one at 13.80.
    const oils = routeAt(late, 0).lines.filter(({ quantity }) => quantity.unit === 'l');
    expect(oils.map(({ key, quantity, offer }) => [key, quantity.value, offer?.packs])).toEqual([
      ['extra:axle-oil-75w90', '0.9', 1],
      ['extra:gear-oil-75w90-gl5', '2.6', 3],
    ]);
    expect(oils.map(({ offer }) => offer?.over?.value)).toEqual(['0.1', '0.4']);
  });

  test('take from the donor what suits, and say what is left over', () => {
    const donor = routeAt(late, 4);
    const fromIt = donor.lines.filter(({ fromLot }) => fromLot === 'donor-lirren-2');
    expect(fromIt.map(({ price }) => price)).toEqual(fromIt.map(() => '0.00'));
    expect(added(donor, 'lot')).toEqual([
      'flywheel-late',
      'clutch-late',
      'bearing-pull',
      'gearbox-6-late',
      'linkage-cables',
      'prop-late',
      'axle-late',
      'rear-shaft-late',
      'rear-hub-late',
      'wheel-16-117',
      'wheel-16-117',
      'starter-late',
      'speedometer-pulses',
      'tyre-205-55-16',
      'tyre-205-55-16',
    ]);
    // Its front half-shafts are 9 mm too long for this body, and its front hubs go with them.
    expect(leftOver(donor)).toEqual(['2 front-shaft-late', '2 front-hub-late']);
    expect(donor.totals).toMatchObject({ signOff: 'workshop', reversible: false });
  });

  test('are dearer with labour, and then another axle comes first', () => {
    const { routes } = askKits('lirren-1', ['gearbox-6-late'], {
      labourRate: '60.00',
      routes: 2,
    })();
    const [built, hybrid] = routes;
    // 0.6 + 0.5 + 0.2 + 6 + 2 + 1 + 2.5 + 1.6 + 0.8 + 1, and 0.6 for the half-shafts in the way.
    expect(built?.totals).toMatchObject({ labourHours: '16.8', labour: '1008.00' });
    // 690.00 for an axle that is built, against 505.00 and 6 hours for the set.
    expect(built?.totals.cost).toBe('3985.00');
    // Without the half-shafts in the way, but 0.6 for the bracket and 1.4 for new half-shafts.
    expect(hybrid?.totals).toMatchObject({ labourHours: '18.2', cost: '4057.00' });
  });
});

test('no other way is listed by tyres of two sizes, or by another body', () => {
  const { routes, more } = askKits('lirren-1', ['gearbox-6-late'], { routes: 20 })();
  expect([routes.length > 6, more]).toEqual([true, false]);
  expect(routes.filter(({ changes }) => changes.includes('body'))).toEqual([]);
  const tyres = routes.map(({ changes }) => [
    changes.includes('front-tyre'),
    changes.includes('rear-tyre'),
  ]);
  expect(tyres.filter(([front, rear]) => front !== rear)).toEqual([]);
  const body = askKits('lirren-1', ['body-lirren-2'])();
  expect([body.complete, body.routes]).toEqual([true, []]);
});

test('with the rear axle kept there is no way; with its half-shafts kept the gear set is', () => {
  const kept = askKits('lirren-1', ['gearbox-6-late'], { keep: ['rear-final-drive'] })();
  expect([kept.complete, kept.routes]).toEqual([true, []]);
  const shafts = askKits('lirren-1', ['gearbox-6-late'], { keep: ['rear-half-shaft'], routes: 1 });
  expect(onlyRoute(shafts()).totals.cost).toBe('2792.00');
});
