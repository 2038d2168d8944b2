/**
 * Random questions for routes: positions joined almost as a tree, everything as it stands meets,
 * one position has to change. Beside the random ones there are the worst that are known: many
 * parts that cost nearly the same in one changed set, a part in the middle of eight matings,
 * nothing recorded of what stands, nothing to pay.
 */

import type { CostProblem, CostTable } from '../../src/domain/kit/core/cost-problem.js';
import {
  type Answer,
  type Phase,
  type Problem,
  type Relation,
  STATE,
  type Variable,
} from '../../src/domain/kit/core/problem.js';
import { jointsOf } from './instance.js';
import { Random } from './random.js';

/** Pairs of positions, for each value of both whether they meet, is not known, or do not. */
export interface RouteInstance {
  readonly problem: Problem;
  readonly phase: Phase;
  /** The position that must change. */
  readonly forced: number;
  /** The same for a general solver; null where such a one has no words for it. */
  readonly costs: CostProblem | null;
}

export interface RouteShape {
  readonly positions: number;
  readonly parts: number;
  readonly extra: number;
  readonly allowed: number;
}

const CLASSES = 8;

export interface Joint {
  readonly scope: readonly [number, number];
  /** By side, by part. */
  readonly classes: readonly [readonly number[], readonly number[]];
  /** By classes of both sides. */
  readonly meets: readonly boolean[];
}

export function routeInstance(shape: RouteShape, seed: number): RouteInstance {
  const random = new Random(seed * 6007 + shape.positions * 13 + shape.parts);
  const joints = randomJoints(shape, random);
  const forced = random.below(shape.positions);
  return routesOver(joints, pricesOf(shape, 4990, random), forced);
}

/** Of two positions all parts but those that stand go together, and all cost nearly the same. */
export function nearlyEqual(parts: number, seed: number): RouteInstance {
  const random = new Random(seed * 6011 + parts);
  const shape = { positions: 8, parts, extra: 0, allowed: 0.5 };
  const joints = Array.from({ length: 7 }, (_, one) => jointOf([one, one + 1], shape, random));
  const own = Array.from({ length: parts }, (_, part) => part);
  const meets = own.flatMap((a) => own.map((b) => (a === 0) === (b === 0)));
  joints[0] = { scope: [0, 1], classes: [own, own], meets };
  return routesOver(joints, pricesOf(shape, 20, random), 0);
}

/** One position that eight others are joined to. */
export function starOfRoutes(parts: number, seed: number): RouteInstance {
  const random = new Random(seed * 6029 + parts);
  const shape = { positions: 9, parts, extra: 0, allowed: 0.25 };
  const joints = Array.from({ length: 8 }, (_, one) => jointOf([0, one + 1], shape, random));
  return routesOver(joints, pricesOf(shape, 4990, random), 0);
}

/** Nothing is recorded of what stands: whatever meets it is open. */
export function nothingRecorded(shape: RouteShape, seed: number): RouteInstance {
  const { problem, forced } = routeInstance(shape, seed);
  const relations = problem.relations.map((relation): Relation => {
    const { ask, scope } = relation;
    if (scope.length === 1) return relation;
    // What stands has a class of its own: nobody knows which.
    const classes = relation.classes.map((own) => own.map((name, part) => (part === 0 ? 8 : name)));
    const open: Answer = { state: STATE.open, blame: scope };
    return { ...relation, classes, ask: (values) => (values.includes(0) ? open : ask(values)) };
  });
  return { problem: { ...problem, relations }, phase: 'open', forced, costs: null };
}

/** All of it lies on the shelf. */
export function nothingToPay(shape: RouteShape, seed: number): RouteInstance {
  const { problem, forced } = routeInstance(shape, seed);
  const atLeast = problem.prices.atLeast.map((own) => own.map(() => 0));
  return { problem: { ...problem, prices: sumOf(atLeast) }, phase: 'proven', forced, costs: null };
}

/** What stands meets everywhere. */
export function randomJoints(shape: RouteShape, random: Random): Joint[] {
  return jointsOf(shape, random).map((scope) => jointOf(scope, shape, random));
}

function jointOf(scope: readonly [number, number], shape: RouteShape, random: Random): Joint {
  const side = () => Array.from({ length: shape.parts }, () => random.below(CLASSES));
  const classes = [side(), side()] as const;
  const meets = Array.from({ length: CLASSES ** 2 }, () => random.isBelow(shape.allowed));
  meets[(classes[0][0] ?? 0) * CLASSES + (classes[1][0] ?? 0)] = true;
  return { scope, classes, meets };
}

/** What stands costs nothing. */
function pricesOf({ positions, parts }: RouteShape, span: number, random: Random): number[][] {
  return Array.from({ length: positions }, () =>
    Array.from({ length: parts }, (_, part) => (part === 0 ? 0 : 1000 + random.below(span))),
  );
}

function routesOver(
  joints: readonly Joint[],
  prices: readonly (readonly number[])[],
  forced: number,
): RouteInstance {
  const wanted: Relation = {
    name: 'wanted',
    scope: [forced],
    classes: [(prices[forced] ?? []).map((_, part) => (part === 0 ? 0 : 1))],
    ask: ([part]) => ({ state: part === 0 ? STATE.fails : STATE.holds, blame: [forced] }),
  };
  const relations = [...joints.map(relationOf), wanted];
  const problem = { variables: variablesOf(prices), relations, prices: sumOf(prices) };
  const costs = prices.map((own, position) =>
    own.map((price, part) =>
      position === forced && part === 0 ? Number.POSITIVE_INFINITY : price,
    ),
  );
  return { problem, phase: 'proven', forced, costs: costsOf(joints, costs) };
}

export function variablesOf(parts: readonly (readonly unknown[])[]): Variable[] {
  return parts.map(({ length }, position) => {
    return { name: `position ${position}`, size: length, isPlace: true };
  });
}

export function relationOf(joint: Joint, index: number): Relation {
  const [left, right] = joint.classes;
  const { scope } = joint;
  const width = Math.sqrt(joint.meets.length);
  const ask = ([a = 0, b = 0]: readonly number[]): Answer => {
    const doesMeet = joint.meets[(left[a] ?? 0) * width + (right[b] ?? 0)] === true;
    return { state: doesMeet ? STATE.holds : STATE.fails, blame: scope };
  };
  return { name: `joint ${index}`, scope, classes: joint.classes, ask };
}

function sumOf(atLeast: readonly (readonly number[])[]): Problem['prices'] {
  const exact = (values: readonly number[]) =>
    values.reduce((sum, part, position) => sum + (atLeast[position]?.[part] ?? 0), 0);
  return { atLeast, floor: exact, exact };
}

/** For a general solver, with these costs by position and part. */
export function costsOf(
  joints: readonly Joint[],
  costs: readonly (readonly number[])[],
): CostProblem {
  const tables = joints.map(({ scope, classes, meets }): CostTable => {
    const size = Math.sqrt(meets.length);
    const own = meets.map((doesMeet) => (doesMeet ? 0 : Number.POSITIVE_INFINITY));
    return { scope, classes, counts: [size, size], costs: own };
  });
  return { variables: costs.map((own) => ({ costs: own })), tables, limits: [] };
}
