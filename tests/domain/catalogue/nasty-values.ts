/**
 * What somebody can put where something else is wanted, to trip the reader up: values of every
 * sort, names that every object has, texts that cannot be stored, numbers that lose digits; and
 * random documents, which are the sample with such values in it.
 */

import fc from 'fast-check';
import { type Changes, changed, GONE, sampleDocument } from './sample-document.js';

/** Nested far deeper than any document is. */
function deep(layers: number, around: (inner: unknown) => unknown): unknown {
  let value: unknown = 'gearbox';
  for (let layer = 0; layer < layers; layer += 1) value = around(value);
  return value;
}

const NUMBERS = [0, -0, -1, 1.5, 2 ** 53, -(2 ** 53), 1e308, Number.POSITIVE_INFINITY, Number.NaN];

const NAMES =
  '__proto__ constructor toString hasOwnProperty none unknown n/a ? GEARBOX gearbox front ' +
  'gearbox.rear gearbox.rear.pcd gearbox.coupling fact.axle-tag gb5-a long-awd half-shaft rod';

const QUANTITIES = ['1/0', '0/1', '1e9', '-5 mm', '4 mm', '50 H7', '± mm', '5 ±-1 mm', '1 to 0 mm'];

const TEXTS = [
  '',
  ' ',
  '\u0000',
  '\ud800',
  'x\udc00',
  '😀',
  '\u202e',
  '\ufeff',
  'gearbox ',
  '٣ mm',
  '1,5',
  '9'.repeat(64),
  '9'.repeat(65),
  `1/${'9'.repeat(40)}`,
  '#'.repeat(70_000),
];

const LISTS: readonly unknown[] = [[], [[]], [{}], [null], deep(300, (inner) => [inner])];

const OBJECTS: readonly unknown[] = [
  JSON.parse('{"__proto__": {"id": "x"}, "constructor": 5}'),
  { '': {} },
  { 'a/b~c': 1 },
  { is: null },
  { is: '5', choose: ['1', '2'] },
  { choose: [] },
  { choose: { of: [{}] } },
  { left: null },
  { left: 'hs-l', right: 'hs-r' },
  { all: [] },
  { not: {} },
  { equal: [] },
  { count: 'front' },
  { product: {} },
  { mating: 1, adapter: 1 },
  { changed: [] },
  deep(300, (sum) => ({ sum })),
  deep(300, (not) => ({ not })),
  deep(40, (when) => ({ equal: ['front', 'rear'], when })),
];

export const NASTY: readonly unknown[] = [
  GONE,
  null,
  true,
  {},
  ...NUMBERS,
  ...NAMES.split(' '),
  ...QUANTITIES,
  ...TEXTS,
  ...LISTS,
  ...OBJECTS,
];

/** Every place of the sample but the whole, in the order of the document. */
export const PLACES: readonly string[] = pointersOf(sampleDocument()).slice(1);

/** The pointers of a value and of what is in it, in the order of the document. */
export function pointersOf(value: unknown, pointer = '', layers = 60): string[] {
  if (typeof value !== 'object' || value === null || layers === 0) return [pointer];
  const inside = Object.entries(value).flatMap(([key, item]) => {
    const step = key.replaceAll('~', '~0').replaceAll('/', '~1');
    return pointersOf(item, `${pointer}/${step}`, layers - 1);
  });
  return [pointer, ...inside];
}

/** The sample with a value somewhere; from a list nothing can be taken but by a hole. */
export function spoiltAt(places: readonly (readonly [place: string, value: unknown])[]): object {
  const changes = places.map(([place, value]) => {
    return [place, value === GONE && /\/\d+$/.test(place) ? null : value];
  });
  return changed(Object.fromEntries(changes) as Changes);
}

/** The sample with some of its places spoilt; outer places last, which hide the inner ones. */
export function spoilt(): fc.Arbitrary<object> {
  const value = fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...NASTY) },
    { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 2 }) },
  );
  return fc
    .array(fc.tuple(fc.nat(PLACES.length - 1), value), { minLength: 1, maxLength: 6 })
    .map((spoils) => {
      const innerFirst = spoils.toSorted(([a], [b]) => b - a);
      return spoiltAt(innerFirst.map(([place, item]) => [PLACES[place] ?? '/parts', item]));
    });
}
