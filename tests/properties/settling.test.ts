/**
 * The fewest questions that settle what comes of a part on a vehicle that is known in part, against
 * asking about every vehicle that may be meant: whoever answers truthfully is never led past his
 * vehicle, what is said to settle settles with every answer, and no smaller set of questions does.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Catalogue, Fact, Vehicle } from '../../src/domain/catalogue/catalogue.js';
import {
  type Candidate,
  candidateOf,
  candidatesFor,
  type VehicleFilter,
} from '../../src/domain/identify/candidate.js';
import {
  type Settled,
  type SettlingAsk,
  type SettlingContext,
  settlingAsks,
} from '../../src/domain/identify/settling.js';

const FACTS = ['tag', 'brakes'] as const;
const VALUES = ['a', 'b', 'c'] as const;

const month = fc.option(
  fc
    .tuple(fc.integer({ min: 2001, max: 2004 }), fc.integer({ min: 1, max: 12 }))
    .map(([year, one]) => `${year}-${String(one).padStart(2, '0')}`),
  { nil: null, freq: 3 },
);

const vehicles = fc.array(
  fc.record({
    make: fc.constantFrom('Tarn', 'Ordal'),
    model: fc.constantFrom('One', 'Two'),
    variant: fc.option(fc.constantFrom('long', 'short'), { nil: null }),
    months: fc.tuple(month, month),
    tag: fc.option(fc.constantFrom(...VALUES), { nil: null }),
    brakes: fc.option(fc.constantFrom(...VALUES), { nil: null }),
    outcome: fc.constantFrom('fits', 'unknown', 'does-not-fit'),
  }),
  { minLength: 1, maxLength: 7 },
);

const facts = new Map(
  FACTS.map((id): [string, Fact] => [
    id,
    { id, name: id, how: null, values: new Map(VALUES.map((one) => [one, one])) },
  ]),
);

const NOTHING: VehicleFilter = {
  make: null,
  model: null,
  variant: null,
  text: null,
  year: null,
  built: null,
  layout: null,
  facts: new Map(),
};

const NO_RULES = { rules: new Map(), rulesets: new Map() } as unknown as Catalogue;

/** Nothing that can be told changes what a vehicle comes to. */
const CONTEXT: SettlingContext<string> = {
  facts,
  known: { year: null, built: null, facts: new Map() },
  latestYear: 2005,
  catalogue: NO_RULES,
  read: new Set(),
  places: new Set(),
  near: new Set(),
  outcomeWith: () => {
    throw new Error('nobody need be asked again');
  },
  notAsked: 'not asked',
  isOpen: () => false,
};

const LAYOUT = {
  id: 'one',
  checks: [],
  positions: new Map([
    ['box', {}],
    ['prop', {}],
  ]),
};

const fold = (text: string) => text.toLowerCase();

type Drawn = readonly {
  readonly make: string;
  readonly model: string;
  readonly variant: string | null;
  readonly months: readonly [string | null, string | null];
  readonly tag: string | null;
  readonly brakes: string | null;
  readonly outcome: string;
}[];

function settledOf(drawn: Drawn): Settled<string>[] {
  return drawn.map(({ make, model, variant, months, tag, brakes, outcome }, index) => {
    const [from, until] = months;
    const built = from !== null && until !== null && from > until ? [until, from] : [from, until];
    const told = { tag, brakes };
    const known = FACTS.flatMap((id): [string, string][] => {
      const value = told[id];
      return value === null ? [] : [[id, value]];
    });
    const own = { make, model, variant, built, facts: new Map(known), fitted: new Map() };
    const vehicle = { id: `v-${index}`, layout: LAYOUT, ...own };
    return { candidate: candidateOf(vehicle as unknown as Vehicle, fold), outcome };
  });
}

function filterWith(filter: VehicleFilter, { field, fact }: SettlingAsk<string>, value: string) {
  if (fact !== null) return { ...filter, facts: new Map([...filter.facts, [fact, value]]) };
  return { ...filter, [field]: field === 'year' ? Number(value) : value };
}

/** What is left of each way of answering all of the questions. */
function ways(asks: readonly SettlingAsk<string>[], all: readonly Settled<string>[]) {
  let filters: VehicleFilter[] = [NOTHING];
  for (const ask of asks) {
    filters = filters.flatMap((filter) =>
      ask.values.map(({ value }) => filterWith(filter, ask, value)),
    );
  }
  const candidates = all.map(({ candidate }) => candidate);
  const outcomeOf = new Map(all.map(({ candidate, outcome }) => [candidate, outcome]));
  return filters.map((filter) => {
    const left = candidatesFor(candidates, filter, fold);
    return { left, outcomes: new Set(left.map((one: Candidate) => outcomeOf.get(one))) };
  });
}

test('what each answer leads to is what the list of vehicles leaves', () => {
  fc.assert(
    fc.property(vehicles, (drawn) => {
      const all = settledOf(drawn);
      for (const ask of settlingAsks(all, CONTEXT).asks) {
        const found = ways([ask], all);
        for (const [index, { outcomes }] of ask.values.entries()) {
          const left = found[index]?.left ?? [];
          expect(outcomes.length).toBe(left.length);
          expect(new Set(outcomes)).toEqual(found[index]?.outcomes);
          expect(outcomes.length).toBeGreaterThan(0);
        }
      }
    }),
    { numRuns: 2000, seed: 1 },
  );
});

test('they settle it where they say so, whatever is answered, and only there', () => {
  let [settled, asked] = [0, 0];
  fc.assert(
    fc.property(vehicles, (drawn) => {
      const all = settledOf(drawn);
      const { asks, isCertain } = settlingAsks(all, CONTEXT);
      const found = ways(asks, all);
      expect(found.every(({ outcomes }) => outcomes.size <= 1)).toBe(isCertain);
      if (isCertain && asks.length > 0) settled += 1;
      asked += asks.length;
      if (new Set(all.map(({ outcome }) => outcome)).size === 1) expect(asks).toEqual([]);
    }),
    { numRuns: 2000, seed: 2 },
  );
  expect(settled).toBeGreaterThan(200);
  expect(asked).toBeGreaterThan(settled);
});

test('no smaller set of questions settles it', () => {
  fc.assert(
    fc.property(vehicles, (drawn) => {
      const all = settledOf(drawn);
      const { asks, isCertain } = settlingAsks(all, CONTEXT);
      if (!isCertain || asks.length === 0) return;
      for (const fewer of subsetsOf(everyQuestion(all), asks.length - 1)) {
        const isSettled = ways(fewer, all).every(({ outcomes }) => outcomes.size <= 1);
        expect(isSettled, fewer.map(({ field, fact }) => fact ?? field).join()).toBe(false);
      }
    }),
    { numRuns: 500, seed: 3 },
  );
});

/** Every question that can be asked of them, with every answer that leaves any. */
function everyQuestion(all: readonly Settled<string>[]): SettlingAsk<string>[] {
  const vehicles = all.map(({ candidate }) => candidate.vehicle);
  const distinct = (names: readonly (string | null)[]) => [
    ...new Set(names.flatMap((name) => name ?? [])),
  ];
  const years = Array.from({ length: 8 }, (_, index) => String(1999 + index));
  const questions = [
    { field: 'make' as const, fact: null, names: distinct(vehicles.map(({ make }) => make)) },
    { field: 'model' as const, fact: null, names: distinct(vehicles.map(({ model }) => model)) },
    { field: 'variant' as const, fact: null, names: distinct(vehicles.map((v) => v.variant)) },
    { field: 'year' as const, fact: null, names: years },
    ...FACTS.map((fact) => ({ field: 'fact' as const, fact, names: [...VALUES] })),
  ];
  return questions.map(({ field, fact, names }) => {
    const ask = {
      field,
      fact,
      position: null,
      values: names.map((value) => ({ value, outcomes: [] })),
    };
    const found = names.length === 0 ? [] : ways([ask], all);
    return { ...ask, values: ask.values.filter((_, at) => (found[at]?.left.length ?? 0) > 0) };
  });
}

/** All sets of at most so many. */
function* subsetsOf<One>(all: readonly One[], most: number): Generator<One[]> {
  for (let bits = 0; bits < 2 ** all.length; bits += 1) {
    const some = all.filter((_, index) => (bits >> index) % 2 === 1);
    if (some.length <= most) yield some;
  }
}
