/**
 * Random small shops with questions and bills, few of everything so that the same article is
 * needed at several places, and is at hand, in lots and offered at once.
 */

import fc from 'fast-check';
import type { AdapterChange, Bill, SeatChange } from '../../../src/domain/kit/basket.js';
import { type KitQuestion, PREFERENCES } from '../../../src/domain/kit/question.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { type Asked, change, consumed, money, question, type Sketch, shop } from './shop.js';

const PARTS = ['part-a', 'part-b', 'part-c', 'part-d', 'oil-a', 'unit-a: box, prop'];
const ARTICLES = ['part-a', 'part-b', 'part-c', 'part-d'];
const WORKED = ['part-a+drill', 'part-b+drill', 'part-a+drill+coat', 'part-c+coat'];

const times = (...some: string[]) => fc.constantFrom('', '', ...some);

const places = fc
  .tuple(
    times('1h', '0.35h'),
    times('/2h', '/0.5h'),
    times('0.5h', '1h'),
    times('/0.35h', '/3h'),
    times('0.25h'),
    times('0.8h', '0.75h'),
    times('/1.5h', '/0.3h'),
    times('2h'),
  )
  .map(([box, boxOut, prop, propOut, wheel, shaft, shaftOut, hub]) => [
    `box ${box} ${boxOut} >prop`,
    `prop ${prop} ${propOut}`,
    `wheel*4 ${wheel}`,
    `shaft<> ${shaft} ${shaftOut}`,
    `hub*2 ${hub} >shaft`,
  ]);

const lotItem = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...ARTICLES) },
  fc.constantFrom('part-a*2', 'part-b*4', 'unit-a', 'oil-a 1 l', 'oil-a 2500 ml', 'oil-a*2'),
  fc.constantFrom('donor/box', 'donor/prop', 'donor/wheel', 'donor/shaft', 'donor/hub'),
);

const lots = fc
  .array(fc.uniqueArray(lotItem, { minLength: 1, maxLength: 4 }), { maxLength: 3 })
  .map((all) => all.map((items, index) => `lot-${index}: ${items.join(', ')}`));

const donor = fc.oneof(
  fc.constant({ box: 'unit-a', prop: 'unit-a' }),
  fc.record(
    {
      box: fc.constantFrom('part-d', 'part-a'),
      wheel: fc.constantFrom('part-b', null),
      shaft: fc.constantFrom('part-c', { left: 'part-a', right: 'part-b' }),
    },
    { requiredKeys: [] },
  ),
);

const works = fc.record({
  drill: times('2 h', '0.75 h'),
  coat: times('0.05 h'),
});

const NAMES = [...ARTICLES, 'unit-a', 'oil-a', 'oil-a', 'drill', 'coat', 'ring-a'];

const offer = fc
  .record({
    name: fc.constantFrom(...NAMES, 'lot-0', 'lot-1', 'lot-2'),
    price: fc.constantFrom('0.00', '5.00', '9.99', '20.00', '35.50', '60.00', '200.00', '0.125'),
    pack: fc.constantFrom('', '', ' per 2', ' per 4', ' per 1 l', ' per 5 l', ' per 300 ml'),
    more: fc.constantFrom('', ' in 2d stock 4', ' in 9d', ' stock 1', ' in 2d by Fennuld'),
  })
  .map(({ name, price, pack, more }) => `${name} ${price}${pack}${more}`);

const asked: fc.Arbitrary<Asked> = fc
  .record({
    offers: fc.array(offer, { maxLength: 16 }),
    owned: fc.constantFrom<Record<string, number>>(
      {},
      {},
      { 'part-a': 1 },
      { 'part-b': 3 },
      {
        'part-a': 4,
        'oil-a': 1,
      },
    ),
    labourRate: fc.constantFrom(undefined, '60.00', '71.99', '33.3333'),
    prefer: fc.constantFrom(...PREFERENCES),
    from: fc.constantFrom('recorded' as const, 'recorded' as const, 'offered' as const),
    avoids: fc.constantFrom(false, false, true),
    wanted: fc.constantFrom(null, null, null, 'lot-0'),
    cost: fc.constantFrom(null, null, '80.00', '400.00'),
    hours: fc.constantFrom(null, null, null, '3', '6.2'),
    changed: fc.constantFrom(null, null, null, 2),
    leadDays: fc.constantFrom(null, null, null, 5),
    inStock: fc.constantFrom(false, false, false, true),
  })
  .map(({ labourRate, avoids, wanted, cost, hours, changed, leadDays, inStock, ...rest }) => ({
    ...rest,
    ...(labourRate === undefined ? {} : { labourRate }),
    avoid: { parts: new Set(), suppliers: new Set(avoids ? ['Fennuld'] : []), conditions: [] },
    wants: wanted === null ? [] : [{ is: 'lot' as const, lot: wanted, whole: true }],
    limits: {
      cost: cost === null ? null : money(cost),
      labourHours: hours === null ? null : rational(hours),
      changedPositions: changed,
      leadDays,
      inStock,
    },
  }));

/** What could be done at a place, as one decision: nothing, or all its hands. */
const seat = fc.record({
  now: fc.constantFrom(null, '?', 'part-a', 'part-b', 'part-a+drill'),
  becomes: fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...ARTICLES) },
    fc.constantFrom(...WORKED),
    fc.constantFrom(null, 'donor:lot-0:hub', 'unit-a'),
  ),
});

const seats = fc.record({
  box: seat,
  prop: seat,
  wheel: seat,
  left: seat,
  right: seat,
  hub: seat,
  done: fc.subarray(['box', 'prop', 'wheel', 'left', 'right', 'hub'] as const),
  // One part that fills both of these places.
  isUnit: fc.constantFrom(false, false, false, true),
});

const extras = fc.array(
  fc.tuple(
    fc.constantFrom('oil-a', 'part-a'),
    fc.constantFrom('3.5 l', '0.3 l', '5 l', '1', '2', '? l', '0.4 kg'),
  ),
  { maxLength: 3 },
);

const rings = fc.subarray(['ring-a', 'ring-b', 'ring-a']);

export interface SmallCase {
  readonly question: KitQuestion;
  /** Each time all that is done at one place, or in one mating. */
  readonly places: readonly (readonly SeatChange[])[];
  readonly matings: readonly AdapterChange[];
  readonly bill: Bill;
}

/** Drawn as few words, so that a case that fails can be read. */
export const smallCases = fc.record({
  places,
  lots,
  donor,
  works,
  asked,
  seats,
  extras,
  before: rings,
  after: rings,
});

type Drawn = typeof smallCases extends fc.Arbitrary<infer One> ? One : never;

export function smallCase(drawn: Drawn): SmallCase {
  const sketch: Sketch = {
    places: drawn.places,
    matings: ['box = prop +3'],
    parts: [...PARTS, 'ring-a', 'ring-b'],
    donors: { donor: drawn.donor },
    lots: drawn.lots,
    works: [
      { id: 'drill', ...timeOf(drawn.works.drill), signOff: 'workshop' },
      { id: 'coat', ...timeOf(drawn.works.coat), reversible: true },
    ],
    rules: ['oil-a', 'part-a'].map((part) => {
      const consumes = { part, quantity: '1' };
      return { id: `uses-${part}`, when: { opened: 'box' }, consumes, because: 'It is used up.' };
    }),
  };
  const catalogue = shop(sketch);
  const wants = (drawn.asked.wants ?? []).filter(
    (want) => want.is !== 'lot' || catalogue.lots.has(want.lot),
  );
  const offers = (drawn.asked.offers ?? []).filter((text) => {
    const [name = ''] = text.split(' ');
    return !name.startsWith('lot-') || catalogue.lots.has(name);
  });
  const whole = question(catalogue, { ...drawn.asked, wants, offers });
  const done = placesOf(whole, drawn.seats);
  const between = { mating: 'box-prop', pieces: 2, now: drawn.before, becomes: drawn.after };
  const matings = drawn.before.join() === drawn.after.join() ? [] : [between];
  const bill = {
    ...billOf(whole, done),
    adapters: matings,
    consumed: drawn.extras.map(([part, amount]) => consumed(part, amount)),
  };
  return { question: whole, places: done, matings, bill };
}

function timeOf(labour: string) {
  return labour === '' ? {} : { labour };
}

/** With whatever these changes open. */
export function billOf({ vehicle }: KitQuestion, places: readonly (readonly SeatChange[])[]): Bill {
  const { positions } = vehicle.layout;
  const opened = new Set(places.flatMap(([first]) => first?.position.behind ?? []));
  for (const id of opened) for (const other of positions.get(id)?.behind ?? []) opened.add(other);
  for (const [first] of places) opened.delete(first?.position.id ?? '');
  return {
    seats: places.flat(),
    adapters: [],
    consumed: [],
    opened: [...positions.values()].filter(({ id }) => opened.has(id)),
  };
}

function placesOf(whole: KitQuestion, drawn: Drawn['seats']): SeatChange[][] {
  const { done, isUnit } = drawn;
  const asUnit = (place: 'box' | 'prop') =>
    isUnit ? 'unit-a' : drawn[place].becomes === 'unit-a' ? 'part-d' : drawn[place].becomes;
  const single = (place: 'box' | 'prop' | 'wheel' | 'hub'): SeatChange[] => {
    const isDone = done.includes(place) || (isUnit && (place === 'box' || place === 'prop'));
    if (!isDone) return [];
    const { now, becomes } = drawn[place];
    const then = place === 'box' || place === 'prop' ? asUnit(place) : becomes;
    return [change(whole, place, [now, then === 'unit-a' && place === 'wheel' ? null : then])];
  };
  const hands = (['left', 'right'] as const).flatMap((hand) => {
    const { now, becomes } = drawn[hand];
    return done.includes(hand) ? [change(whole, 'shaft', [now, becomes], hand)] : [];
  });
  const all = [single('box'), single('prop'), single('wheel'), hands, single('hub')];
  return all
    .map((changes) =>
      changes.filter(({ now, becomes }) => now.is !== 'empty' || becomes.is !== 'empty'),
    )
    .filter((changes) => changes.length > 0);
}
