/**
 * The first ten routes of a question, by the project's search, against ten least costs by HiGHS:
 * after each a cut takes out whatever repeats the route, or changes the same positions otherwise.
 */

import { compiledCosts } from '../../src/domain/kit/core/compile-costs.js';
import type { Network } from '../../src/domain/kit/core/cost-network.js';
import type { Budget } from '../../src/domain/kit/core/problem.js';
import { Search } from '../../src/domain/kit/core/search.js';
import { linearModel, type Row } from './linear-model.js';
import { medianOf, type Times, timed, timesOf } from './measured.js';
import type { Opponent } from './opponents.js';
import type { Extent } from './optimum-cells.js';
import {
  nearlyEqual,
  nothingRecorded,
  nothingToPay,
  type RouteInstance,
  routeInstance,
  starOfRoutes,
} from './route-instance.js';

export interface RouteCell {
  readonly name: string;
  readonly isQuick: boolean;
  readonly instance: (seed: number) => RouteInstance;
}

export interface HighsOnRoutes {
  readonly times: Times;
  readonly agreed: number;
  /** Stopped before it had ten; what it had then agrees or not. */
  readonly unfinished: number;
  readonly ratio: number;
}

export interface RouteResult {
  readonly cell: RouteCell;
  readonly cold: number;
  readonly first: Times;
  readonly ten: Times;
  readonly highs: HighsOnRoutes | null;
  readonly mismatches: readonly string[];
  readonly steps: number;
  /** Of all instances, how many routes were found at the least and at the most. */
  readonly found: readonly [number, number];
  /** How many searches used up their steps. */
  readonly cut: number;
}

const ROUTES = 10;
const STEPS = 200_000;

export function routeCells(): RouteCell[] {
  const cells: RouteCell[] = [];
  for (const [positions, parts] of [
    [20, 12],
    [20, 50],
    [40, 12],
    [40, 50],
  ] as const) {
    for (const allowed of [0.25, 0.45]) {
      const shape = { positions, parts, extra: 3, allowed };
      const name = `n=${positions} d=${parts} ${allowed * 100} % allowed`;
      const isQuick = allowed === 0.45 && positions === 20;
      cells.push({ name, isQuick, instance: (seed) => routeInstance(shape, seed) });
    }
  }
  const plain = { positions: 20, parts: 50, extra: 3, allowed: 0.45 };
  return [
    ...cells,
    { name: '199 x 199 nearly equal', isQuick: false, instance: (seed) => nearlyEqual(200, seed) },
    { name: 'star of 8, d=200', isQuick: false, instance: (seed) => starOfRoutes(200, seed) },
    { name: 'nothing recorded', isQuick: true, instance: (seed) => nothingRecorded(plain, seed) },
    { name: 'nothing to pay', isQuick: true, instance: (seed) => nothingToPay(plain, seed) },
  ];
}

export function measuredRoutes(cell: RouteCell, extent: Extent, highs: Opponent): RouteResult {
  const seeds = Array.from({ length: extent.seeds }, (_, seed) => seed + 1);
  const instances = seeds.map(cell.instance);
  const cold = instances.map((one) => timed(() => foundIn(one, ROUTES)).ms);
  const first: number[][] = instances.map(() => []);
  const ten: number[][] = instances.map(() => []);
  const theirs: number[][] = instances.map(() => []);
  const steps: number[] = [];
  const counts: number[] = [];
  const mismatches: string[] = [];
  let [agreed, unfinished, cut] = [0, 0, 0];
  for (let round = 0; round < extent.rounds; round += 1) {
    instances.forEach((one, at) => {
      first[at]?.push(timed(() => foundIn(one, 1)).ms);
      const own = timed(() => foundIn(one, ROUTES));
      ten[at]?.push(own.ms);
      steps.push(own.result.steps);
      counts.push(own.result.costs.length);
      if (own.result.isCut) cut += 1;
      if (one.costs === null || own.result.isCut || round > 0) return;
      const other = byCuts(compiledCosts(one.costs).network, one.forced, highs, extent.seconds);
      theirs[at]?.push(other.ms);
      if (other.isCut) unfinished += 1;
      const same = own.result.costs.slice(0, other.isCut ? other.costs.length : ROUTES);
      if (other.costs.join() === same.join()) agreed += 1;
      else
        mismatches.push(
          `${cell.name}, seed ${at + 1}: ${own.result.costs.join()} is not ${other.costs.join()}`,
        );
    });
  }
  const times = timesOf(ten);
  const compared = theirs.filter((own) => own.length > 0);
  const others = timesOf(compared);
  const ratio = others.median / times.median;
  return {
    cell,
    cold: medianOf(cold.sort(ascending)),
    first: timesOf(first),
    ten: times,
    cut,
    highs: compared.length === 0 ? null : { times: others, agreed, unfinished, ratio },
    mismatches,
    steps: medianOf(steps.sort(ascending)),
    found: [Math.min(...counts), Math.max(...counts)],
  };
}

/** The costs of the first routes that change different positions. */
function foundIn({ problem, phase }: RouteInstance, many: number) {
  const budget: Budget = { left: STEPS };
  const search = new Search(problem, phase, budget);
  const costs: number[] = [];
  const seen = new Set<string>();
  while (costs.length < many) {
    const found = search.next();
    if (found === null) break;
    const changed = found.values.flatMap((part, position) => (part === 0 ? [] : [position])).join();
    if (!seen.has(changed)) costs.push(found.cost);
    seen.add(changed);
  }
  return { costs, steps: STEPS - budget.left, isCut: budget.left <= 0 };
}

/** What is not counted: to test whether a solution leaves out all that can be left out. */
function byCuts(network: Network | null, forced: number, highs: Opponent, seconds: number) {
  const costs: number[] = [];
  if (network === null) return { costs, ms: 0, isCut: false };
  let ms = 0;
  const cuts: Row[] = [];
  while (costs.length < ROUTES && ms < 1000 * seconds) {
    const solved = timed(() => {
      const model = linearModel(network);
      return { model, answer: highs({ ...model, rows: [...model.rows, ...cuts] }, seconds) };
    });
    ms += solved.ms;
    const { model, answer } = solved.result;
    if (answer.cost === null) return { costs, ms, isCut: false };
    if (answer.cost === 'gave up') break;
    const values = network.costs.map((own, position) =>
      [...own.keys()].findIndex(
        (value) => answer.taken((model.first[position] ?? 0) + value) > 0.5,
      ),
    );
    const needed = smallestWithin(network, values, forced);
    if (needed.length === changedIn(network, values).length) {
      costs.push(answer.cost);
      cuts.push(sameSet(network, model.first, needed));
    }
    const terms = needed.map((one) => [(model.first[one] ?? 0) + (values[one] ?? 0), 1] as const);
    cuts.push({ terms, low: null, high: terms.length - 1 });
  }
  return { costs, ms, isCut: costs.length < ROUTES };
}

/** Not exactly these positions changed. */
function sameSet(network: Network, first: readonly number[], changed: readonly number[]): Row {
  const terms: (readonly [number, number])[] = [];
  let constant = 0;
  network.original.forEach((own, position) => {
    const stays = own.indexOf(0);
    if (stays < 0) return;
    const isChanged = changed.includes(position);
    if (isChanged) constant += 1;
    terms.push([(first[position] ?? 0) + stays, isChanged ? -1 : 1]);
  });
  return { terms, low: null, high: terms.length - constant - 1 };
}

function changedIn({ original }: Network, values: readonly number[]): number[] {
  return values.flatMap((value, position) => (original[position]?.[value] === 0 ? [] : [position]));
}

/** The fewest of the changes that are valid without the others. */
function smallestWithin(network: Network, values: readonly number[], forced: number): number[] {
  const changed = changedIn(network, values);
  const free = changed.filter((position) => position !== forced);
  const sets = Array.from({ length: 2 ** free.length }, (_, bits) => [
    forced,
    ...free.filter((_one, at) => (bits & (1 << at)) !== 0),
  ]);
  sets.sort((a, b) => a.length - b.length);
  const works = sets.find((kept) => isValid(network, values, kept));
  return works ?? changed;
}

function isValid(network: Network, values: readonly number[], kept: readonly number[]): boolean {
  const at = network.original.map((own, position) =>
    kept.includes(position) ? (values[position] ?? 0) : own.indexOf(0),
  );
  return network.factors.every(({ scope, classOf, strides, costs }) => {
    const cell = scope.reduce(
      (sum, position, place) =>
        sum + (classOf[place]?.[at[position] ?? 0] ?? 0) * (strides[place] ?? 0),
      0,
    );
    return costs?.[cell] !== Number.POSITIVE_INFINITY;
  });
}

function ascending(a: number, b: number): number {
  return a - b;
}
