/**
 * Checks and conditions: one language for kinds, layouts, rules, wants and rulesets.
 *
 * Compiled, the nine spellings are six primitives: `at-least`, `at-most` and `within` are
 * spellings of `clearance`, whose invariant is min <= left - right <= max (limits included).
 */

import type { Text } from '../catalogue/document.js';
import type { Rational } from '../quantity/rational.js';
import type { Severity } from './state.js';
import type { Term } from './term.js';

export const PRIMITIVES = ['equal', 'one-of', 'clearance', 'coincide', 'agree', 'carries'] as const;
export type Primitive = (typeof PRIMITIVES)[number];

/** The words that a document may use. */
export const SPELLINGS = [
  'equal',
  'one-of',
  'clearance',
  'at-least',
  'at-most',
  'within',
  'coincide',
  'agree',
  'carries',
] as const;
export type Spelling = (typeof SPELLINGS)[number];

interface CheckBase {
  readonly id: string;
  readonly spelling: Spelling;
  readonly severity: Severity;
  /** A reason code of its own for a failure; else the primitive's. */
  readonly code: string | null;
  /** Said beside the reason, in words of the trade. */
  readonly text: Text | null;
  /** The check applies only where this holds. */
  readonly when: Condition | null;
  readonly left: Term;
}

export interface EqualCheck extends CheckBase {
  readonly primitive: 'equal';
  readonly right: Term;
}

export interface OneOfCheck extends CheckBase {
  readonly primitive: 'one-of';
  /** Codes by name, or exact numbers in base units. */
  readonly options: { readonly codes: readonly string[] } | { readonly numbers: Rational[] };
}

/** min <= left - right <= max; a limit that is `null` is none. */
export interface ClearanceCheck extends CheckBase {
  readonly primitive: 'clearance';
  readonly right: Term;
  readonly min: Term | null;
  readonly max: Term | null;
}

/** Each point of one side lies within the tolerance of a point of its own on the other. */
export interface CoincideCheck extends CheckBase {
  readonly primitive: 'coincide';
  readonly right: Term;
  readonly tolerance: Term;
}

/** A loop: left and right, two totals to the two axles, agree within the bands of a coupling. */
export interface AgreeCheck extends CheckBase {
  readonly primitive: 'agree';
  readonly right: Term;
  readonly coupling: Term;
  /** The factor that stands for an emptied position. */
  readonly whenEmpty: ReadonlyMap<string, Term>;
}

/** A load: left is the rating, right the demand. */
export interface CarriesCheck extends CheckBase {
  readonly primitive: 'carries';
  readonly right: Term;
}

export type Check =
  | EqualCheck
  | OneOfCheck
  | ClearanceCheck
  | CoincideCheck
  | AgreeCheck
  | CarriesCheck;

/** `changed`, `kept`, `opened`, `empty` speak of a position; the rest join other conditions. */
export type Condition =
  | { readonly test: 'changed' | 'kept' | 'opened' | 'empty'; readonly position: string }
  | { readonly test: 'adapter'; readonly mating: string; readonly part: string }
  | { readonly test: 'all'; readonly of: readonly Condition[] }
  | { readonly test: 'any'; readonly of: readonly Condition[] }
  | { readonly test: 'not'; readonly of: Condition }
  | { readonly test: 'check'; readonly check: Check };

/** The terms of a check, for whoever wants to know what it reads. */
export function termsOf(check: Check): Term[] {
  switch (check.primitive) {
    case 'one-of':
      return [check.left];
    case 'clearance': {
      const limits = [check.min, check.max].filter((term) => term !== null);
      return [check.left, check.right, ...limits];
    }
    case 'coincide':
      return [check.left, check.right, check.tolerance];
    case 'agree':
      return [check.left, check.right, check.coupling, ...check.whenEmpty.values()];
    default:
      return [check.left, check.right];
  }
}

/** The terms of a check and of the condition under which it applies: all that it hangs on. */
export function termsWithin(check: Check): Term[] {
  return [...termsOf(check), ...(check.when === null ? [] : termsOfCondition(check.when))];
}

export function termsOfCondition(condition: Condition): Term[] {
  return testsIn(condition).flatMap((one) => (one.test === 'check' ? termsWithin(one.check) : []));
}

/** A condition that is not made of others. */
export type SimpleCondition = Exclude<Condition, { readonly test: 'all' | 'any' | 'not' }>;

/** The simple conditions that a condition is made of, however they are joined. */
export function testsIn(condition: Condition): SimpleCondition[] {
  switch (condition.test) {
    case 'all':
    case 'any':
      return condition.of.flatMap(testsIn);
    case 'not':
      return testsIn(condition.of);
    default:
      return [condition];
  }
}
