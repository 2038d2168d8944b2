/**
 * Random questions that ask for too much: positions joined almost as a tree, everything as it
 * stands meets, and eleven demands, each about one position near the others: one of few parts is
 * wanted there, it stays as it is, or many parts are avoided there.
 *
 * `unplanted`: each demand is that a position changes. Only what stands is sure to meet, so that
 * no single demand, and no two of them, show what is wrong.
 */

import type { CostProblem } from '../../src/domain/kit/core/cost-problem.js';
import { freeOfCharge } from '../../src/domain/kit/core/feasible.js';
import { type Problem, type Relation, STATE } from '../../src/domain/kit/core/problem.js';
import { Random } from './random.js';
import {
  costsOf,
  type Joint,
  type RouteShape,
  randomJoints,
  relationOf,
  variablesOf,
} from './route-instance.js';

export interface ConflictShape extends RouteShape {
  readonly isUnplanted: boolean;
}

/** A position, and by part whether the demand allows it there. */
export interface Demanded {
  readonly position: number;
  readonly allows: readonly boolean[];
}

export interface ConflictInstance {
  /** The relations of the demands come last, in their order. */
  readonly problem: Problem;
  readonly demands: readonly Demanded[];
  /** For a general solver: all demands are met, and nothing costs anything. */
  readonly strict: CostProblem;
  /** For a general solver: a demand that is not met costs one. */
  readonly weighted: CostProblem;
}

export const DEMANDS = 11;
const WANTS = 3;
const KEEPS = 4;
/** So many of the positions that are nearest to one of them have a demand or none. */
const NEAR = 16;
const WANTED = 2;

export function conflictInstance(shape: ConflictShape, seed: number): ConflictInstance {
  const random = new Random(seed * 6043 + shape.positions * 17 + shape.parts + shape.extra * 5);
  const joints = randomJoints(shape, random);
  const near = nearest(joints, shape.positions, random).slice(0, NEAR);
  const demands = Array.from({ length: DEMANDS }, (_, index): Demanded => {
    const [position = 0] = near.splice(random.below(near.length), 1);
    return { position, allows: allowedBy(shape, index, random) };
  });
  const none = Array.from({ length: shape.positions }, () =>
    Array.from({ length: shape.parts }, () => 0),
  );
  const broken = none.map((own, position) =>
    own.map(
      (_, part) =>
        demands.filter((one) => one.position === position && one.allows[part] !== true).length,
    ),
  );
  const variables = variablesOf(none);
  const relations = [...joints.map(relationOf), ...demands.map(demandRelation)];
  const strict = broken.map((own) => own.map((many) => (many > 0 ? Number.POSITIVE_INFINITY : 0)));
  return {
    problem: { variables, relations, prices: freeOfCharge({ variables }) },
    demands,
    strict: costsOf(joints, strict),
    weighted: costsOf(joints, broken),
  };
}

/** All positions, from a random one on by how many joints are between. */
function nearest(joints: readonly Joint[], positions: number, random: Random): number[] {
  const reached = [random.below(positions)];
  for (const one of reached) {
    const next = joints.flatMap(({ scope: [a, b] }) => (a === one ? [b] : b === one ? [a] : []));
    reached.push(...new Set(next.filter((other) => !reached.includes(other))));
  }
  return reached;
}

/** First what is wanted, then what stays, then what is avoided. */
function allowedBy({ parts, isUnplanted }: ConflictShape, index: number, random: Random) {
  const own = Array.from({ length: parts }, (_, part) => part);
  if (isUnplanted) return own.map((part) => part > 0);
  if (index < WANTS) {
    const wanted = Array.from({ length: WANTED }, () => 1 + random.below(parts - 1));
    return own.map((part) => wanted.includes(part));
  }
  if (index < WANTS + KEEPS) return own.map((part) => part === 0);
  return own.map((part) => part === 0 || random.isBelow(0.25));
}

function demandRelation({ position, allows }: Demanded, index: number): Relation {
  return {
    name: `demand ${index}`,
    scope: [position],
    classes: [allows.map(Number)],
    ask: ([part = 0]) => {
      return { state: allows[part] === true ? STATE.holds : STATE.fails, blame: [position] };
    },
  };
}
