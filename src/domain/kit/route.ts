/**
 * The answer to a kit question: routes, each with what it takes and why, the best first.
 */

import type { Constraint } from '../judge/constraint.js';
import type { Judgement } from '../judge/judge.js';
import type { Rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import type { Basket, Line } from './basket.js';
import type { Money } from './question.js';

/** `proven`: all of it holds. `open`: nothing fails, but something is not known. */
export type RouteGrade = 'proven' | 'open';

export const WHY_CODES = [
  'wanted',
  'avoided',
  'mating-fails',
  'needed-empty',
  'rule',
  'loop',
  'load',
  'check',
  'place',
  'limit',
  'becomes-open',
  'present-fails',
  'adapter-avoided',
  'donor-content',
  'consumed',
  'recommended',
  'in-the-way',
  'taken-out',
] as const;
export type WhyCode = (typeof WHY_CODES)[number];

/** Why a line is there: without it, this would not hold. */
export interface Why {
  readonly code: WhyCode;
  /** Key of the line that made it necessary; null where the wish itself did. */
  readonly after: string | null;
  /** What fails or is open with everything up to `after` done and this line not. */
  readonly constraint: Constraint | null;
  /** The rule that uses something up or recommends it, or the lot that a piece comes with. */
  readonly name: string | null;
}

/** Another part at the place of a line that does as well, all other lines kept. */
export interface Alternative {
  readonly part: string;
  /** Null where one of the two costs is not known. */
  readonly priceDifference: Money | null;
  readonly openPoints: number;
}

/** A load with its rating against its demand, before and after; null: not known, or no such. */
export interface LoadView {
  readonly check: string;
  readonly position: string;
  readonly before: Rational | null;
  readonly after: Rational | null;
  readonly dimension: Dimension;
}

export interface Route {
  readonly grade: RouteGrade;
  /** Of the vehicle with all changes of the route made. */
  readonly judgement: Judgement;
  /** Positions, in layout order. */
  readonly changes: readonly string[];
  readonly basket: Basket;
  /** By key of the line; at least one for each line. */
  readonly why: ReadonlyMap<string, readonly Why[]>;
  /** Parts alike in everything, by key of the line; the cheapest first. */
  readonly substitutes: ReadonlyMap<string, readonly string[]>;
  readonly alternatives: ReadonlyMap<string, readonly Alternative[]>;
  readonly recommended: readonly Line[];
  readonly loads: readonly LoadView[];
  /** The load with the smallest margin; null where one that counts is not known, or none is. */
  readonly weakest: { readonly position: string; readonly margin: Rational } | null;
  /** Index of the first listed route that is no worse on any count and better on one. */
  readonly beatenBy: number | null;
}

export interface Kits {
  readonly routes: readonly Route[];
  /** Nothing that belongs among these routes is left out. */
  readonly isComplete: boolean;
  /** There are more routes; or the search ended before that was known. */
  readonly hasMore: boolean;
  /** Where it is not complete: no route of this grade that is not listed costs less. */
  readonly bound: { readonly grade: RouteGrade; readonly cost: Money } | null;
  readonly steps: number;
}
