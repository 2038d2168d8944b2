/**
 * Random kit problems of least cost: positions that are joined almost as a tree, parts with a
 * class at each joint, a planted solution where one is wanted. Modelled after what catalogues look
 * like, not taken from one; optional positions are left out.
 *
 * `few`: the parts of a position are of twelve kinds. `rand`: each part has its own classes.
 * `full`: as few, with adapters that cost something and one ratio around four positions.
 */

import type {
  CostLimit,
  CostProblem,
  CostTable,
  Fraction,
} from '../../src/domain/kit/core/cost-problem.js';
import { Random } from './random.js';

export type Sort = 'few' | 'rand' | 'full';

export interface Shape {
  readonly sort: Sort;
  readonly positions: number;
  readonly parts: number;
  /** Joints beyond those of a tree. */
  readonly extra: number;
  /** The share of pairs of classes that meet. */
  readonly allowed: number;
  /** One solution is made sure of. */
  readonly isPlanted: boolean;
  /** Whether parts cost anything. */
  readonly isPriced: boolean;
}

const CLASSES = 8;
const SIGNATURES = 12;
/** Pairs of teeth of a gear set. */
const TEETH = [
  [41, 10],
  [43, 12],
  [39, 10],
  [37, 9],
  [35, 8],
  [40, 11],
] as const;

export function instance(shape: Shape, seed: number): CostProblem {
  const random = new Random(seed * 7919 + shape.positions * 31 + shape.parts + shape.extra);
  return joinedBy(jointsOf(shape, random), shape, random);
}

function joinedBy(joints: readonly Joint[], shape: Shape, random: Random): CostProblem {
  const { positions, parts } = shape;
  const variables = Array.from({ length: positions }, () => ({
    costs: Array.from({ length: parts }, () => (shape.isPriced ? 10 + random.below(4990) : 0)),
  }));
  const unset = Array.from({ length: parts }, () => 0);
  const faces = joints.map(() => ({ left: [...unset], right: [...unset] }));
  for (let position = 0; position < positions; position += 1) {
    const own = joints.flatMap((joint, index) =>
      joint.flatMap((one, side) => (one === position ? [sideOf(faces[index], side)] : [])),
    );
    classify(own, shape, random);
  }
  const planted = Array.from({ length: positions }, () => random.below(parts));
  const tables = joints.map((scope, index): CostTable => {
    const classes = [sideOf(faces[index], 0), sideOf(faces[index], 1)];
    const costs = tableOf(shape, random);
    if (shape.isPlanted) {
      const [a = 0, b = 0] = scope.map((one, side) => classes[side]?.[planted[one] ?? 0] ?? 0);
      costs[a * CLASSES + b] = 0;
    }
    return { scope, classes, counts: [CLASSES, CLASSES], costs };
  });
  const limits = shape.sort === 'full' ? [loopOf(shape, planted, random)] : [];
  return { variables, tables, limits };
}

type Joint = readonly [number, number];

interface Faces {
  readonly left: number[];
  readonly right: number[];
}

function sideOf(faces: Faces | undefined, side: number): number[] {
  return (side === 0 ? faces?.left : faces?.right) ?? [];
}

/** One position that eight others are joined to, and nothing else. */
export function star(parts: number, seed: number): CostProblem {
  const joints = Array.from({ length: 8 }, (_, one) => [0, one + 1] as const);
  const shape: Shape = {
    sort: 'rand',
    positions: 9,
    parts,
    extra: 0,
    allowed: 0.25,
    isPlanted: true,
    isPriced: true,
  };
  return joinedBy(joints, shape, new Random(seed * 7919 + parts));
}

/** A tree, and so many joints more. */
export function jointsOf(
  { positions, extra }: Pick<Shape, 'positions' | 'extra'>,
  random: Random,
): Joint[] {
  const joints: Joint[] = [];
  for (let one = 1; one < positions; one += 1) joints.push([random.below(one), one]);
  while (joints.length < positions - 1 + extra) {
    const [a, b] = [random.below(positions), random.below(positions)];
    const isThere = joints.some(([c, d]) => (a === c && b === d) || (a === d && b === c));
    if (a < b && !isThere) joints.push([a, b]);
  }
  return joints;
}

/** Gives each part its class at each of the faces of its position. */
function classify(faces: readonly number[][], { sort, parts }: Shape, random: Random): void {
  const signatures = Array.from({ length: SIGNATURES }, () =>
    faces.map(() => random.below(CLASSES)),
  );
  for (let part = 0; part < parts; part += 1) {
    const signature = signatures[random.below(SIGNATURES)] ?? [];
    faces.forEach((own, at) => {
      own[part] = sort === 'rand' ? random.below(CLASSES) : (signature[at] ?? 0);
    });
  }
}

function tableOf({ sort, allowed }: Shape, random: Random): number[] {
  return Array.from({ length: CLASSES * CLASSES }, () => {
    if (random.isBelow(allowed)) return 0;
    const hasAdapter = sort === 'full' && random.isBelow(0.25);
    return hasAdapter ? 50 + random.below(450) : Number.POSITIVE_INFINITY;
  });
}

/** The first two positions drive what the next two do, within a hundredth of the planted ratio. */
function loopOf(shape: Shape, planted: readonly number[], random: Random): CostLimit {
  const scope: number[] = [];
  while (scope.length < 4) {
    const one = random.below(shape.positions);
    if (!scope.includes(one)) scope.push(one);
  }
  const numbers = scope.map((_, place) =>
    Array.from({ length: shape.parts }, (): Fraction => {
      const [driven, driving] = TEETH[random.below(TEETH.length)] ?? TEETH[0];
      const [above, below] = place < 2 ? [driven, driving] : [driving, driven];
      return { numerator: BigInt(above), denominator: BigInt(below) };
    }),
  );
  let [numerator, denominator] = [1n, 1n];
  scope.forEach((position, place) => {
    const one = numbers[place]?.[planted[position] ?? 0];
    numerator *= one?.numerator ?? 1n;
    denominator *= one?.denominator ?? 1n;
  });
  return {
    combines: 'product',
    scope,
    numbers,
    low: { numerator: numerator * 99n, denominator: denominator * 100n },
    high: { numerator: numerator * 101n, denominator: denominator * 100n },
  };
}
