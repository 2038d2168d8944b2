/**
 * Small random problems, the same for the same seed: tables with all three states over one to four
 * variables, values that are alike, blame that is true (the whole scope, or less), and costs that
 * are a sum, or more than one.
 */

import type {
  Answer,
  Prices,
  Problem,
  Relation,
  State,
  Variable,
} from '../../../../src/domain/kit/core/problem.js';

/** Numbers from 0 up to below 1 (the generator known as mulberry32). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function whole(next: () => number, below: number): number {
  return Math.floor(next() * below);
}

/** How often a combination fails, or is open; and how often a relation holds with no change. */
interface Share {
  readonly fails: number;
  readonly open: number;
  readonly stands: number;
}

export function randomProblem(seed: number): Problem {
  const next = chance(seed);
  const count = 3 + whole(next, 4);
  const placesShare = next() < 0.3 ? 1 : 0.6;
  const variables = Array.from({ length: count }, (_, index): Variable => {
    const size = next() < 0.05 ? 1 : 2 + whole(next, 8 - count);
    return { name: `v${index}`, size, isPlace: next() < placesShare };
  });
  const share = {
    fails: 0.15 + 0.4 * next(),
    open: next() < 0.4 ? 0 : 0.4 * next(),
    stands: next() < 0.6 ? 1 : 0.8,
  };
  const scopes = Array.from({ length: 2 + whole(next, 6) }, () => randomScope(next, count));
  // Most have a change that is forced, as most questions do.
  if (next() < 0.8) scopes.push([whole(next, count)]);
  const relations = scopes.map((scope, index) =>
    randomRelation(next, `r${index}`, scope, variables, share),
  );
  return { variables, relations, prices: randomPrices(next, variables) };
}

function randomScope(next: () => number, count: number): number[] {
  const sizes = [2, 2, 2, 2, 2, 3, 3, 4];
  const size = Math.min(count, sizes[whole(next, sizes.length)] ?? 2);
  const scope = new Set<number>();
  while (scope.size < size) scope.add(whole(next, count));
  return [...scope].sort((one, other) => one - other);
}

function randomRelation(
  next: () => number,
  name: string,
  scope: readonly number[],
  variables: readonly Variable[],
  share: Share,
): Relation {
  const sizes = scope.map((variable) => variables[variable]?.size ?? 1);
  const hasAlike = next() < 0.4;
  const classes = sizes.map((size) =>
    Array.from({ length: size }, (_, value) => (hasAlike ? 7 * whole(next, size) : value + 3)),
  );
  const key = (values: readonly number[]): string =>
    values.map((value, place) => classes[place]?.[value]).join();
  const standsHolding = scope.length > 1 && next() < share.stands;
  const states = new Map<string, State>();
  const cells = [...combinations(sizes)].map((values): Cell => {
    const isForced = scope.length === 1 && values[0] === 0;
    const drawn = isForced ? 0 : next() * (scope.length === 1 ? 2 : 1);
    const state = drawn < share.fails ? 0 : drawn < share.fails + share.open ? 1 : 2;
    const stands = values.every((value) => value === 0) && standsHolding;
    const known = states.get(key(values)) ?? (stands ? 2 : state);
    states.set(key(values), known);
    return { values, state: known };
  });
  const isBlunt = next() < 0.3;
  const blames = new Map<string, readonly number[]>();
  for (const cell of cells) {
    if (blames.has(key(cell.values))) continue;
    const order = scope.map((_, place) => place).sort(() => next() - 0.5);
    const blame = isBlunt ? order : leastBlame(cell, order, cells);
    blames.set(
      key(cell.values),
      blame.map((place) => scope[place] ?? 0),
    );
  }
  const ask = (values: readonly number[]): Answer => ({
    state: states.get(key(values)) ?? 0,
    blame: blames.get(key(values)) ?? scope,
  });
  return { name, scope, classes, ask };
}

interface Cell {
  readonly values: readonly number[];
  readonly state: State;
}

/** Leaves places out in this order, as long as the rest alone come to the state. */
function leastBlame(cell: Cell, order: readonly number[], cells: readonly Cell[]): number[] {
  let blame = [...order];
  for (const place of order) {
    const fewer = blame.filter((one) => one !== place);
    const isEnough = cells.every(
      ({ values, state }) =>
        state === cell.state || fewer.some((one) => values[one] !== cell.values[one]),
    );
    if (isEnough) blame = fewer;
  }
  return blame;
}

/** A sum, and for some groups of variables more once any of them is changed; maybe a limit. */
function randomPrices(next: () => number, variables: readonly Variable[]): Prices {
  const highest = [4, 30, 1000][whole(next, 3)] ?? 4;
  const own = variables.map(({ size }) =>
    Array.from({ length: size }, (_, value) => (value === 0 ? 0 : whole(next, highest))),
  );
  const isVague = next() < 0.3;
  const atLeast = own.map((of) => of.map((cost) => (isVague ? whole(next, cost + 1) : cost)));
  const groups = Array.from({ length: whole(next, 3) }, () => ({
    of: variables.map(() => next() < 0.5),
    cost: whole(next, highest),
  }));
  const limit = next() < 0.25 ? Math.floor(highest * variables.length * 0.3) : Infinity;
  const sum = (values: readonly number[]): number => {
    const parts = values.reduce((total, value, one) => total + (own[one]?.[value] ?? 0), 0);
    const hit = groups.filter(({ of }) => values.some((value, one) => value !== 0 && of[one]));
    return hit.reduce((total, { cost }) => total + cost, parts);
  };
  const within = (cost: number): number => (cost > limit ? Infinity : cost);
  return {
    atLeast,
    floor: (values) => within(sum(values)),
    exact: (values) => within(sum(values)),
  };
}

/** All combinations of values, the last counting up fastest. */
export function* combinations(sizes: readonly number[]): Generator<number[]> {
  const [size, ...rest] = sizes;
  if (size === undefined) {
    yield [];
    return;
  }
  for (let value = 0; value < size; value += 1) {
    for (const others of combinations(rest)) yield [value, ...others];
  }
}
