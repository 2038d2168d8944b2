/**
 * Questions that are laid over vehicles known in part, against asking about every vehicle with
 * every answer: what each answer leads to, that they settle it where they say so, and that a place
 * is asked about only where no fact does it, and whenever it would settle what nothing else does.
 *
 * What comes of a part hangs on what stands in the box: of some vehicles by what the works fitted,
 * of others by a fact that nobody told, of the rest not at all.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Catalogue, Fact, Vehicle } from '../../src/domain/catalogue/catalogue.js';
import { candidateOf, candidatesFor } from '../../src/domain/identify/candidate.js';
import {
  type SettlingAsk,
  type SettlingContext,
  settlingAsks,
  type ToldBesides,
} from '../../src/domain/identify/settling.js';

const PARTS = ['box-a', 'box-b'] as const;

const vehicles = fc.array(
  fc.record({
    variant: fc.option(fc.constantFrom('long', 'short'), { nil: null }),
    tag: fc.option(fc.constantFrom('a', 'b'), { nil: null }),
    /** `by-tag`: the tag says which; null: nobody recorded it. */
    box: fc.option(fc.constantFrom(...PARTS, 'by-tag' as const), { nil: null, freq: 9 }),
    /** What it comes to with each box, and where nobody knows which. */
    with: fc.record({
      'box-a': fc.constantFrom('fits', 'fails'),
      'box-b': fc.constantFrom('fits', 'fails'),
    }),
    isByBox: fc.boolean(),
  }),
  { minLength: 1, maxLength: 5 },
);

type Drawn = typeof vehicles extends fc.Arbitrary<infer All> ? All : never;
type One = Drawn[number];

const FACTS = new Map<string, Fact>([
  [
    'tag',
    {
      id: 'tag',
      name: 'tag',
      how: null,
      values: new Map([
        ['a', 'a'],
        ['b', 'b'],
      ]),
    },
  ],
]);

const LAYOUT = {
  id: 'one',
  checks: [],
  positions: new Map([
    ['box', {}],
    ['prop', {}],
  ]),
};

function vehicleOf({ variant, tag, box }: One, index: number): Vehicle {
  const part = (id: string) => ({ is: 'part', part: id });
  const by = new Map([
    ['a', part('box-a')],
    ['b', part('box-b')],
  ]);
  const told = tag === null ? null : `box-${tag}`;
  const occupant =
    box === 'by-tag' && told === null ? { is: 'option', fact: 'tag', by } : part(told ?? box ?? '');
  const here = box === 'by-tag' ? occupant : part(box ?? '');
  const fitted = box === null ? [] : [['box', { hands: false, occupant: here }] as const];
  return {
    id: `v-${index}`,
    make: 'Tarn',
    model: 'One',
    variant,
    built: [null, null],
    facts: new Map(tag === null ? [] : [['tag', tag]]),
    fitted: new Map(fitted),
    layout: LAYOUT,
  } as unknown as Vehicle;
}

/** What it comes to: the same whatever is told, unless it hangs on the box. */
function outcomeOf(one: One, told: ToldBesides): string {
  if (!one.isByBox) return one.with['box-a'];
  const tag = told.facts.get('tag') ?? one.tag;
  const built = one.box === 'by-tag' ? (tag === null ? null : `box-${tag}`) : one.box;
  const box = told.fitted.get('box') ?? built;
  return box === 'box-a' || box === 'box-b' ? one.with[box] : 'unknown';
}

const NOTHING: ToldBesides = { facts: new Map(), fitted: new Map() };

function settled(drawn: Drawn) {
  const candidates = drawn.map((one, index) => candidateOf(vehicleOf(one, index), (text) => text));
  const number = new Map(candidates.map((candidate, index) => [candidate, index]));
  const of = (index: number, told: ToldBesides) => outcomeOf(drawn[index] as One, told);
  const context: SettlingContext<string> = {
    facts: FACTS,
    known: { year: null, built: null, facts: new Map() },
    latestYear: 2005,
    catalogue: { rules: new Map(), rulesets: new Map() } as unknown as Catalogue,
    read: new Set(),
    places: new Set(),
    near: new Set(),
    outcomeWith: (candidate, told) => ({ outcome: of(number.get(candidate) ?? -1, told) }),
    notAsked: 'not asked',
    isOpen: (outcome) => outcome === 'unknown',
  };
  const all = candidates.map((candidate, index) => ({ candidate, outcome: of(index, NOTHING) }));
  const ways = (asks: readonly Asked[]) => waysOf(asks, candidates, of);
  return { all, ways, ...settlingAsks(all, context) };
}

type Asked = Pick<SettlingAsk<string>, 'field' | 'fact' | 'position'> & {
  readonly values: readonly { readonly value: string }[];
};

/** What is left, and what that comes to, for each way of answering all of them. */
function waysOf(
  asks: readonly Asked[],
  candidates: readonly ReturnType<typeof candidateOf>[],
  of: (index: number, told: ToldBesides) => string,
): string[][] {
  let ways = [{ variant: null as string | null, told: NOTHING }];
  for (const { fact, position, values } of asks) {
    ways = ways.flatMap(({ variant, told }) =>
      values.map(({ value }) => {
        if (fact !== null) return { variant, told: { ...told, facts: new Map([[fact, value]]) } };
        if (position === null) return { variant: value, told };
        return { variant, told: { ...told, fitted: new Map([[position, value]]) } };
      }),
    );
  }
  return ways.map(({ variant, told }) => {
    const filter = { make: null, model: null, text: null, year: null, built: null, layout: null };
    const left = candidatesFor(candidates, { ...filter, variant, facts: told.facts }, (one) => one);
    return left.map((candidate) => of(candidates.indexOf(candidate), told));
  });
}

const ALL: readonly Asked[] = [
  { field: 'variant', fact: null, position: null, values: [{ value: 'long' }, { value: 'short' }] },
  { field: 'fact', fact: 'tag', position: null, values: [{ value: 'a' }, { value: 'b' }] },
  { field: 'fitted', fact: null, position: 'box', values: PARTS.map((value) => ({ value })) },
];

/** What the works may have fitted, by what is known. */
function boxesOf({ box, tag }: One): readonly string[] {
  if (box !== 'by-tag') return box === null ? [] : [box];
  return tag === null ? PARTS : [`box-${tag}`];
}

const isSettled = (ways: readonly string[][]) => ways.every((left) => new Set(left).size <= 1);

test('what each answer leads to is what every vehicle then comes to', () => {
  fc.assert(
    fc.property(vehicles, (drawn) => {
      const { asks, ways } = settled(drawn);
      for (const ask of asks) {
        const expected = ways([ask]).map((left) => [...left].sort());
        expect(ask.values.map(({ outcomes }) => [...outcomes].sort())).toEqual(expected);
      }
    }),
    { numRuns: 3000, seed: 1 },
  );
});

test('they settle it where they say so: by a fact, and by a place where no fact does', () => {
  const by = { fact: 0, fitted: 0, opened: 0 };
  fc.assert(
    fc.property(vehicles, (drawn) => {
      const { all, asks, ways, isCertain } = settled(drawn);
      const isOne = new Set(all.map(({ outcome }) => outcome)).size === 1;
      if (isCertain) expect(isSettled(ways(asks))).toBe(true);
      if (isOne) {
        expect([isCertain, asks.length <= 1]).toEqual([true, true]);
        if (asks.length === 1) by.opened += 1;
        return;
      }
      const [variant, tag, box] = ALL.map((ask) => ask);
      const facts = [[variant], [tag], [variant, tag]].map((some) =>
        some.filter((one) => one !== undefined),
      );
      const settles = facts.filter((some) => isSettled(ways(some)));
      const asked = asks.map(({ field }) => field);
      if (settles.length > 0) {
        expect(asked).not.toContain('fitted');
        expect([isCertain, asks.length]).toEqual([
          true,
          Math.min(...settles.map((one) => one.length)),
        ]);
      }
      if (asked.includes('fitted')) by.fitted += 1;
      else if (isCertain && asked.includes('fact')) by.fact += 1;
      const boxes = new Set(drawn.flatMap(boxesOf));
      if (!isCertain && boxes.size === 2 && box !== undefined) {
        expect(isSettled(ways([box]))).toBe(false);
      }
    }),
    { numRuns: 3000, seed: 2 },
  );
  expect(by.fact).toBeGreaterThan(50);
  expect(by.fitted).toBeGreaterThan(15);
  expect(by.opened).toBeGreaterThan(5);
});
