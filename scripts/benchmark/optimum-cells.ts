/**
 * The least cost of one kit, cell by cell: the project's optimum against YALPS and HiGHS. All
 * start from the same collapsed instance; collapsing it and building the model count for each.
 */

import { compiledCosts } from '../../src/domain/kit/core/compile-costs.js';
import type { Network } from '../../src/domain/kit/core/cost-network.js';
import type { CostProblem, Optimum } from '../../src/domain/kit/core/cost-problem.js';
import { cheaperOrder } from '../../src/domain/kit/core/eliminate-order.js';
import { optimumOf } from '../../src/domain/kit/core/optimum.js';
import { Partitions } from '../../src/domain/kit/core/partitions.js';
import { instance, type Shape, star } from './instance.js';
import { linearModel } from './linear-model.js';
import { medianOf, type Times, timed, timesOf } from './measured.js';
import type { Opponent, Outcome } from './opponents.js';

export interface Extent {
  readonly seeds: number;
  readonly rounds: number;
  /** After so many seconds an opponent may give up. */
  readonly seconds: number;
}

export interface Cell {
  readonly name: string;
  /** What its floors are. */
  readonly group: 'few' | 'rand' | 'full' | 'wide' | 'worst';
  readonly isQuick: boolean;
  /** An opponent that comes to no end here, and is not asked. */
  readonly without: string | null;
  readonly problem: (seed: number) => CostProblem;
}

export interface OpponentTimes {
  readonly name: string;
  /** Where it gave up, what it had taken until then. */
  readonly times: Times;
  readonly agreed: number;
  readonly gaveUp: number;
  readonly ratio: number;
}

export interface CellResult {
  readonly cell: Cell;
  /** The first time that the instances were solved, one after the other. */
  readonly cold: number;
  readonly own: Times;
  /** Of the time, what collapsing took. */
  readonly collapse: number;
  readonly opponents: readonly OpponentTimes[];
  readonly mismatches: readonly string[];
  /** How many had no assignment that is allowed. */
  readonly infeasible: number;
  /** The most values that a position has left after collapsing. */
  readonly values: number;
  readonly width: number;
  /** Of the work, which is the same on every machine: median of cells, most branches. */
  readonly cells: number;
  readonly branches: number;
}

const LONG_MS = 300;

const PLAIN = { allowed: 0.25, isPlanted: true, isPriced: true } as const;

export function optimumCells(): Cell[] {
  const cells: Cell[] = [];
  for (const sort of ['few', 'rand', 'full'] as const) {
    for (const positions of [10, 20, 40]) {
      for (const parts of [10, 50, 200]) {
        const shape = { ...PLAIN, sort, positions, parts, extra: 3 };
        cells.push(cellOf(sort, shape, parts === 50 && positions !== 20));
      }
    }
    for (const extra of [6, 10, 15]) {
      const shape = { ...PLAIN, sort, positions: 40, parts: 50, extra };
      cells.push(cellOf('wide', shape, extra === 15));
    }
    const broad = { ...PLAIN, sort, positions: 40, parts: 200, extra: 15 };
    cells.push(cellOf('wide', broad, false));
    const free = { ...PLAIN, sort, positions: 40, parts: 50, extra: 6, isPriced: false };
    cells.push(cellOf('worst', free, sort === 'few'));
  }
  const unplanted = { isPlanted: false, isPriced: true, positions: 40, parts: 50 } as const;
  cells.push(cellOf('worst', { ...unplanted, sort: 'few', extra: 15, allowed: 0.17 }, true));
  cells.push(cellOf('worst', { ...unplanted, sort: 'few', extra: 30, allowed: 0.22 }, false));
  cells.push(cellOf('worst', { ...unplanted, sort: 'rand', extra: 30, allowed: 0.12 }, false));
  cells.push(cellOf('worst', { ...unplanted, sort: 'full', extra: 15, allowed: 0.1 }, false));
  cells.push({
    name: 'star of 8 matings d=200',
    group: 'worst',
    isQuick: true,
    without: null,
    problem: (seed) => star(200, seed),
  });
  return cells;
}

function cellOf(group: Cell['group'], shape: Shape, isQuick: boolean): Cell {
  const { sort, positions, parts, extra, allowed, isPlanted, isPriced } = shape;
  const more = extra === 3 ? '' : ` +${extra}`;
  const how = `${isPlanted ? '' : ` ${100 * allowed} % unplanted`}${isPriced ? '' : ' all free'}`;
  const name = `${sort} n=${positions} d=${parts}${more}${how}`;
  // Where nothing costs anything it goes round in circles.
  const without = isPriced ? null : 'YALPS';
  return { name, group, isQuick, without, problem: (seed) => instance(shape, seed) };
}

export function measuredCell(
  cell: Cell,
  extent: Extent,
  opponents: ReadonlyMap<string, Opponent>,
): CellResult {
  const seeds = Array.from({ length: extent.seeds }, (_, seed) => seed + 1);
  const problems = seeds.map(cell.problem);
  const first = problems.map((problem) => timed(() => optimumOf(compiledCosts(problem))).ms);
  const own: number[][] = problems.map(() => []);
  const collapse: number[] = [];
  const names = [...opponents.keys()].filter((name) => name !== cell.without);
  const others = names.map((name) => ({
    name,
    ms: problems.map((): number[] => []),
    agreed: 0,
    gaveUp: 0,
  }));
  const mismatches: string[] = [];
  const answers: Optimum[] = [];
  const networks: (Network | null)[] = [];
  for (let round = 0; round < extent.rounds; round += 1) {
    problems.forEach((problem, at) => {
      const compiled = timed(() => compiledCosts(problem));
      const solved = timed(() => optimumOf(compiled.result));
      own[at]?.push(compiled.ms + solved.ms);
      collapse.push(compiled.ms);
      answers[at] = solved.result;
      const { network } = compiled.result;
      networks[at] = network;
      if (network === null) return;
      for (const other of others) {
        // What took long once is not waited for again.
        if ((other.ms[at]?.[0] ?? 0) > LONG_MS) continue;
        const solve = opponents.get(other.name) as Opponent;
        const answer = timed(() => solve(linearModel(network), extent.seconds));
        other.ms[at]?.push(compiled.ms + answer.ms);
        const { cost } = answer.result;
        if (cost === 'gave up') other.gaveUp += 1;
        else if (isEqual(solved.result, cost)) other.agreed += 1;
        else mismatches.push(`${cell.name}, seed ${at + 1}: ${other.name} says ${cost}`);
      }
    });
  }
  const times = timesOf(own);
  return {
    cell,
    cold: medianOf(first.sort(ascending)),
    own: times,
    mismatches,
    collapse: medianOf(collapse.sort(ascending)),
    opponents: others.map(({ name, ms, agreed, gaveUp }) => {
      const theirs = timesOf(ms);
      return { name, times: theirs, agreed, gaveUp, ratio: theirs.median / times.median };
    }),
    ...workOf(answers, networks),
  };
}

function isEqual({ isComplete, best }: Optimum, cost: Exclude<Outcome, 'gave up'>): boolean {
  return isComplete && (best?.cost ?? null) === cost;
}

function workOf(answers: readonly Optimum[], networks: readonly (Network | null)[]) {
  const cells = answers.map(({ work }) => work.cells).sort(ascending);
  const there = networks.filter((network) => network !== null);
  const sizes = there.flatMap(({ costs }) => costs.map(({ length }) => length));
  const orders = there.map((network) => cheaperOrder(network, new Partitions(network)));
  return {
    infeasible: answers.filter(({ best }) => best === null).length,
    values: Math.max(0, ...sizes),
    width: medianOf(orders.map(({ width }) => width).sort(ascending)),
    cells: medianOf(cells),
    branches: Math.max(...answers.map(({ work }) => work.branches)),
  };
}

function ascending(a: number, b: number): number {
  return a - b;
}
