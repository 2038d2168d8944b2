/**
 * What a kit answer says of routes over the demo catalogue: sums as texts, nothing that is unknown
 * as 0, every reason with both values, and names that a route can be opened by again.
 */

import { describe, expect, test } from 'vitest';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { offerOf } from '../../src/domain/kit/offered.js';
import { fraction, rational } from '../../src/domain/quantity/rational.js';
import { demoDocument } from '../memory-store.js';
import { found, judged } from '../rules/world.js';
import { madeLine, madeRoute, told } from './made-kits.js';

const document = demoDocument();
const { catalogue } = compileDocument(document, BUILT_IN_KINDS);
if (catalogue === null) throw new Error('the demo catalogue compiles');
const demo = { catalogue, document, warnings: [] };

const alone = judged(demo, { on: 'lirren-1', put: { gearbox: 'gearbox-6-late' } });

/** The engine end and the shafts. */
const front = {
  gearbox: 'gearbox-6-late',
  flywheel: 'flywheel-late',
  clutch: 'clutch-late',
  'release-bearing': 'bearing-pull',
  linkage: 'linkage-cables',
  'front-half-shaft': 'front-shaft-hybrid',
  starter: 'starter-late',
  speedometer: 'speedometer-pulses',
  'prop-shaft': 'prop-made-two',
};
const whole = judged(demo, {
  on: 'lirren-1',
  put: {
    ...front,
    'rear-final-drive': 'axle-late-used',
    'axle-bracket': 'bracket-20',
    'rear-half-shaft': 'rear-shaft-late',
    'rear-hub': 'rear-hub-late',
    'front-hub': 'front-hub-117',
    'front-wheel': 'wheel-15-117',
    'rear-wheel': 'wheel-15-117',
  },
});
const donor = judged(demo, {
  on: 'lirren-1',
  put: { ...front, 'rear-final-drive': 'axle-hulvane' },
});

const GEARBOX = 'add:gearbox:gearbox-6-late';
const LINKAGE = 'add:linkage:linkage-cables';

const recorded = demo.catalogue.offers.find((one) => one.for === 'gearbox-6-late');
if (recorded === undefined) throw new Error('the late gearbox is offered');
const offer = offerOf(recorded);

const gearbox = madeLine(GEARBOX, {
  source: 'offer',
  offer,
  packs: 1,
  unitPrice: 9_000_000,
  price: 9_000_000,
  labourHours: rational('6.5'),
});
const oil = madeLine('extra:gear-oil', {
  position: null,
  part: 'gear-oil',
  quantity: null,
  dimension: 'volume',
});

const route = madeRoute(whole, {
  lines: [gearbox, madeLine(LINKAGE), oil],
  totals: { parts: 9_000_000, cost: 9_000_000, labourHours: rational('6.5') },
  weakest: { position: 'clutch', margin: fraction(47n, 40n) },
  loads: [
    {
      check: 'clutch-load',
      position: 'clutch',
      before: null,
      dimension: 'torque',
      after: fraction(47n, 40n),
    },
  ],
  whys: {
    [GEARBOX]: [{ code: 'wanted' }],
    [LINKAGE]: [
      { code: 'mating-fails', after: GEARBOX, constraint: found(alone, 'gearbox-linkage') ?? null },
    ],
  },
});

const english = told([route], whole, { question: { offers: [offer] } });
const [first] = english.routes;
if (first === undefined) throw new Error('one route');

describe('a line', () => {
  const [bought, without, poured] = first.lines;

  test('says what is bought, by every name that the shop joins it by', () => {
    expect(bought).toMatchObject({
      key: GEARBOX,
      name: 'Lirren II six-speed gearbox',
      positionName: 'Gearbox',
      maker: 'Corrablyn',
      skus: ['F-1001'],
      numbers: ['CBL-2G-6'],
      quantity: { value: '1', unit: 'piece' },
      unitPrice: '900.00',
      price: '900.00',
      labourHours: '6.5',
      source: 'offer',
    });
    expect(bought?.offer).toMatchObject({ sku: 'F-1001', packs: 1, over: null, leadDays: 3 });
  });

  test('has null, never 0, for what nobody knows', () => {
    expect(without).toMatchObject({ unitPrice: null, price: null, offer: null, labourHours: null });
    expect(poured?.quantity).toEqual({ value: null, unit: 'l' });
    expect(first.totals.unpriced).toEqual([LINKAGE, 'extra:gear-oil']);
  });

  test('says why it is there, after which, and with both values', () => {
    expect(bought?.why).toEqual([
      { code: 'wanted', data: {}, text: 'Asked for.', after: null, constraint: null },
    ]);
    const [why] = without?.why ?? [];
    expect(why).toMatchObject({ code: 'mating-fails', after: GEARBOX });
    expect(why?.constraint).toBe('gearbox-linkage');
    expect([why?.data.left?.value?.text, why?.data.right?.value?.text]).toEqual(['cables', 'rods']);
    expect(why?.text).toContain('cables on “Lirren II six-speed gearbox”');
    expect(why?.text).toContain('rods on “five-speed gear linkage, rods”');
  });
});

describe('a route', () => {
  test('says in one sentence what it comes to, and what has no price', () => {
    expect(whole.outcome).toBe('holds');
    expect(first.summary.text).toBe('Proven: 900.00 EUR net plus 2 unpriced, 16 places.');
    expect(english.summary.text).toBe(
      'One way: it is proven, costs 900.00 EUR net plus 2 unpriced and changes 16 places.',
    );
  });

  test('says it in German, with the same numbers', () => {
    const german = told([route], whole, { lang: 'de' });
    expect(german.summary.text).toBe(
      'Ein Weg, belegt: Er kostet 900,00 EUR netto und 2 ohne Preis und ändert 16 Einbauplätze.',
    );
    const [other] = german.routes;
    expect([other?.key, other?.digest]).toEqual([first.key, first.digest]);
    expect(other?.totals).toEqual(first.totals);
    expect(german.compare.rows.map(({ key, values }) => [key, values])).toEqual(
      english.compare.rows.map(({ key, values }) => [key, values]),
    );
  });

  test('shows what it touches, what to order, and its weakest part', () => {
    expect(first.matings.map(({ mating }) => mating)).toContain('gearbox-linkage');
    expect(first.checks.map(({ id }) => id)).toContain('axle-match');
    expect(first.order.map(({ value }) => value?.text)).toEqual(['1374 ±2 mm']);
    expect(first.weakest?.margin).toMatchObject({ text: '1.17', low: '1.175', unit: 'ratio' });
    expect(first.loads[0]).toMatchObject({ check: 'clutch-load', before: null });
    expect(first.cautions.map(({ group }) => group)).toContain('driveline');
  });

  test('of which one fact is not known names the routes that this fact settles', () => {
    expect(donor.outcome).toBe('open');
    const listed = [route, madeRoute(donor), madeRoute(donor)];
    const { routes, summary } = told(listed, whole);
    expect(routes.map(({ measure }) => measure.map((one) => one.settlesRoutes))).toEqual([
      [],
      [[1, 2]],
      [[1, 2]],
    ]);
    expect(routes[1]?.summary.code).toBe('route-open');
    expect(routes[1]?.summary.data).toMatchObject({ facts: 1 });
    expect(summary.code).toBe('ways-proven');
  });
});

describe('the key of a route', () => {
  test('is short enough for an address, and says what the route is', () => {
    expect(first.key).toMatch(/^k1\.[A-Za-z0-9_-]+$/);
    const text = Buffer.from(first.key?.slice(3) ?? '', 'base64url').toString('utf8');
    const packed = JSON.parse(text) as Record<string, unknown>;
    expect(packed).toMatchObject({ edition: 1, offers: 1, question: { vehicle: 'lirren-1' } });
    expect(packed.changes).toContainEqual(['gearbox', null, 'gearbox-6-late']);
    expect(packed.changes).toContainEqual(['rear-half-shaft', 'left', 'rear-shaft-late']);
    expect(packed.adapters).toEqual([]);
  });

  test('and its digest tell two routes apart', () => {
    const dearer = madeRoute(whole, { lines: [{ ...gearbox, price: 9_100_000 }] });
    const [other] = told([dearer], whole).routes;
    expect(other?.key).toBe(first.key);
    expect(other?.digest).not.toBe(first.digest);
    expect(first.digest).toMatch(/^sha256-[0-9a-f]{64}$/);
  });
});

describe('several routes', () => {
  const small = madeRoute(whole, { lines: [gearbox], totals: { cost: 9_000_000 } });
  const both = told([small, route], whole, { kits: { hasMore: true } });

  test('have what all of them do, and a row for each count', () => {
    expect(both.compare.same).toEqual([GEARBOX]);
    const rows = new Map(both.compare.rows.map(({ key, values }) => [key, values]));
    expect(rows.get('cost')).toEqual(['900.00', '900.00']);
    expect(rows.get('unpriced')).toEqual([0, 2]);
    expect(rows.get('weakest')).toEqual([null, '1.17']);
  });

  test('are called the cheapest only where that is certain', () => {
    expect(both.summary.text).toBe(
      'More than two ways; the first proven one costs 900.00 EUR net and changes 16 places.',
    );
    expect(told([small, small], whole).summary.text).toBe(
      'Two ways; the cheapest proven one costs 900.00 EUR net and changes 16 places.',
    );
    for (const telling of [
      { question: { prefer: 'labour-hours' as const } },
      { kits: { isComplete: false } },
    ]) {
      expect(told([small, small], whole, telling).summary.data.cheapest).toBeUndefined();
    }
  });
});

describe('where nothing was found', () => {
  test('no way is no way in this edition, and no more than that', () => {
    expect(told([], whole).summary.code).toBe('no-way');
    expect(told([], whole).summary.text).toContain('This edition of the catalogue');
  });

  test('a search that ended early never says that there is none', () => {
    const early = told([], whole, {
      kits: { isComplete: false, bound: { grade: 'proven', cost: 12_345_000 } },
    });
    expect(early.summary.code).toBe('no-way-so-far');
    expect(early.bound).toEqual({ grade: 'proven', cost: '1234.50' });
  });
});
