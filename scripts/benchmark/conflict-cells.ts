/**
 * Questions that ask for too much. The project's search proves that all demands cannot be met
 * together, and says why: a smallest conflict, and all smallest sets of demands whose dropping
 * leaves a way. HiGHS is asked for the first as a problem without a solution, and for the size of
 * one such set as a problem of least cost, in which a demand that is not met costs one.
 */

import { compiledCosts } from '../../src/domain/kit/core/compile-costs.js';
import { type Contradiction, contradictionOf } from '../../src/domain/kit/core/contradiction.js';
import type { CostProblem } from '../../src/domain/kit/core/cost-problem.js';
import { feasible } from '../../src/domain/kit/core/feasible.js';
import { type Budget, STATE } from '../../src/domain/kit/core/problem.js';
import { Tables } from '../../src/domain/kit/core/tables.js';
import {
  type ConflictInstance,
  type ConflictShape,
  conflictInstance,
} from './conflict-instance.js';
import { linearModel } from './linear-model.js';
import { medianOf, type Times, timed, timesOf } from './measured.js';
import type { Opponent, Outcome } from './opponents.js';
import type { Extent } from './optimum-cells.js';

export interface ConflictCell {
  readonly name: string;
  readonly isQuick: boolean;
  readonly shape: ConflictShape;
}

export interface HighsOnConflicts {
  /** To prove that there is no way, and to find how many demands have to go at least. */
  readonly proof: Times;
  readonly least: Times;
  readonly agreed: number;
  readonly gaveUp: number;
  readonly proofRatio: number;
  readonly leastRatio: number;
}

export interface ConflictResult {
  readonly cell: ConflictCell;
  readonly proof: Times;
  readonly why: Times;
  /** Of one proof, and of all that a conflict takes: medians, and the greatest. */
  readonly proofSteps: readonly [number, number];
  readonly whySteps: readonly [number, number];
  readonly solves: readonly [number, number];
  /** Demands of a smallest conflict, and of a smallest way out: the least and the most. */
  readonly conflictSize: readonly [number, number];
  readonly correctionSize: readonly [number, number];
  /** How many instances have a way after all; they are compared, but not counted above. */
  readonly possible: number;
  /** How many ran out of steps. */
  readonly cut: number;
  readonly highs: HighsOnConflicts;
  readonly mismatches: readonly string[];
}

const STEPS = 200_000;
const MOST_SOLVES = 2000;

export function conflictCells(): ConflictCell[] {
  const cells: ConflictCell[] = [];
  for (const positions of [20, 40]) {
    for (const parts of [12, 50, 200]) {
      const isQuick = parts === 50;
      cells.push(
        cellOf({ positions, parts, extra: 3, allowed: 0.25, isUnplanted: false }, isQuick),
      );
    }
  }
  for (const [positions, parts, extra, allowed] of [
    [20, 12, 10, 0.2],
    [20, 50, 15, 0.15],
    [20, 200, 30, 0.12],
    [40, 12, 15, 0.2],
    [40, 50, 30, 0.15],
    [40, 50, 60, 0.25],
    [40, 200, 60, 0.13],
  ] as const) {
    const shape = { positions, parts, extra, allowed, isUnplanted: true };
    cells.push(cellOf(shape, extra === 30 && parts === 50));
  }
  return cells;
}

function cellOf(shape: ConflictShape, isQuick: boolean): ConflictCell {
  const { positions, parts, extra, allowed, isUnplanted } = shape;
  const more = extra === 3 ? '' : ` +${extra}`;
  const how = isUnplanted ? ` ${100 * allowed} % unplanted` : '';
  return { name: `n=${positions} d=${parts}${more}${how}`, isQuick, shape };
}

export interface Proof {
  /** Undefined where the steps ended before it was known. */
  readonly isPossible: boolean | undefined;
  readonly steps: number;
}

/** Whether all demands can be met together. */
export function proofOf({ problem }: ConflictInstance): Proof {
  const budget: Budget = { left: STEPS };
  const found = feasible(new Tables(problem), STATE.holds, budget);
  const isPossible = found === undefined ? undefined : found !== null;
  return { isPossible, steps: STEPS - budget.left };
}

export interface Explained {
  readonly contradiction: Contradiction;
  readonly solves: number;
  readonly steps: number;
}

/** As the resolver looks for a conflict: of one table, some relations are left out. */
export function explained({ problem, demands }: ConflictInstance): Explained {
  const budget: Budget = { left: STEPS };
  const tables = new Tables(problem);
  const first = problem.relations.length - demands.length;
  const joints = Array.from({ length: first }, (_, index) => index);
  let solves = 0;
  const contradiction = contradictionOf({
    count: demands.length,
    met: (some) => {
      if (solves >= MOST_SOLVES) return undefined;
      solves += 1;
      const relations = [...joints, ...[...some].map((demand) => first + demand)];
      const found = feasible(tables.only(relations, problem.prices), STATE.holds, budget);
      if (found === null || found === undefined) return found;
      const isMet = (demand: number) => tables.stateAt(first + demand, found) === STATE.holds;
      return new Set([...demands.keys()].filter(isMet));
    },
  });
  return { contradiction, solves, steps: STEPS - budget.left };
}

/** What the solvers were timed at, by instance. */
interface Rounds {
  readonly proof: number[][];
  readonly why: number[][];
  readonly theirProof: number[][];
  readonly theirLeast: number[][];
}

export function measuredConflicts(
  cell: ConflictCell,
  extent: Extent,
  highs: Opponent,
): ConflictResult {
  const seeds = Array.from({ length: extent.seeds }, (_, seed) => seed + 1);
  const instances = seeds.map((seed) => conflictInstance(cell.shape, seed));
  const rows = (): number[][] => instances.map(() => []);
  const rounds: Rounds = { proof: rows(), why: rows(), theirProof: rows(), theirLeast: rows() };
  const proofs: Proof[] = [];
  const whys: Explained[] = [];
  const mismatches: string[] = [];
  let [agreed, gaveUp, possible, cut] = [0, 0, 0, 0];
  for (let round = 0; round < extent.rounds; round += 1) {
    for (const [at, one] of instances.entries()) {
      const { ms, result } = timed(() => proofOf(one));
      const why = result.isPossible === false ? timed(() => explained(one)) : null;
      if (why !== null) {
        rounds.proof[at]?.push(ms);
        rounds.why[at]?.push(why.ms);
      }
      if (round > 0) continue;
      proofs.push(result);
      if (result.isPossible === undefined || why?.result.contradiction.isAllSmallest === false) {
        cut += 1;
      }
      if (result.isPossible === true) possible += 1;
      if (why !== null) whys.push(why.result);
      const compare = (name: string, own: Outcome, their: Outcome): void => {
        if (their === 'gave up') gaveUp += 1;
        else if (own === their) agreed += 1;
        else if (own !== 'gave up') {
          mismatches.push(`${cell.name}, seed ${at + 1}: ${name} ${own} is not ${their}`);
        }
      };
      const proof = timed(() => solved(one.strict, highs, extent.seconds));
      const least = timed(() => solved(one.weighted, highs, extent.seconds));
      if (why !== null) {
        rounds.theirProof[at]?.push(proof.ms);
        rounds.theirLeast[at]?.push(least.ms);
      }
      compare('all demands', ofProof(result), proof.result);
      compare('fewest to drop', fewestOf(result, why?.result), least.result);
    }
  }
  const [proof, why] = [rounds.proof, rounds.why].map(timesOfSome) as [Times, Times];
  const theirs = [rounds.theirProof, rounds.theirLeast].map(timesOfSome) as [Times, Times];
  return {
    cell,
    proof,
    why,
    proofSteps: middleAndMost(proofs.map(({ steps }) => steps)),
    whySteps: middleAndMost(whys.map(({ steps }) => steps)),
    solves: middleAndMost(whys.map(({ solves }) => solves)),
    conflictSize: ends(whys.map(({ contradiction }) => contradiction.conflict.length)),
    correctionSize: ends(whys.map(({ contradiction }) => smallestOf(contradiction))),
    possible,
    cut,
    highs: {
      proof: theirs[0],
      least: theirs[1],
      agreed,
      gaveUp,
      proofRatio: theirs[0].median / proof.median,
      leastRatio: theirs[1].median / why.median,
    },
    mismatches,
  };
}

/** With what it takes to bring the problem into the words of the solver. */
function solved(costs: CostProblem, highs: Opponent, seconds: number): Outcome {
  const { network } = compiledCosts(costs);
  return network === null ? null : highs(linearModel(network), seconds).cost;
}

function ofProof({ isPossible }: Proof): Outcome {
  if (isPossible === undefined) return 'gave up';
  return isPossible ? 0 : null;
}

function fewestOf({ isPossible }: Proof, why: Explained | undefined): Outcome {
  if (isPossible === true) return 0;
  return why?.contradiction.isAllSmallest === true ? smallestOf(why.contradiction) : 'gave up';
}

function smallestOf({ corrections }: Contradiction): number {
  return corrections[0]?.length ?? 0;
}

function timesOfSome(rounds: readonly (readonly number[])[]): Times {
  return timesOf(rounds.filter((own) => own.length > 0));
}

function middleAndMost(numbers: readonly number[]): [number, number] {
  const ordered = numbers.toSorted((a, b) => a - b);
  return [medianOf(ordered), ordered.at(-1) ?? 0];
}

function ends(numbers: readonly number[]): [number, number] {
  return numbers.length === 0 ? [0, 0] : [Math.min(...numbers), Math.max(...numbers)];
}
