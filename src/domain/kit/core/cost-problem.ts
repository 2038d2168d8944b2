/**
 * The least cost, as plain data: variables whose values cost something, tables of what values
 * cost together, and limits on the product or the sum of a number that each value has.
 *
 * It is the part of a search that wants one best assignment and nothing else. Sets bought whole,
 * several counts at once and what is merely open are left out: whoever has them asks this again.
 */

/** An exact number. */
export interface Fraction {
  readonly numerator: bigint;
  /** Greater than 0. */
  readonly denominator: bigint;
}

export interface CostVariable {
  /** By value; at least one. Whole, not negative, Infinity where the value may not be taken. */
  readonly costs: readonly number[];
}

export interface CostTable {
  /** A variable may be named more than once. */
  readonly scope: readonly number[];
  /** By place in the scope, by value: its class, a whole number from 0. */
  readonly classes: readonly (readonly number[])[];
  /** By place in the scope: how many classes there are. */
  readonly counts: readonly number[];
  /**
   * By classes, those of the last place counting fastest. Whole, not negative, Infinity where they
   * do not go together.
   */
  readonly costs: ArrayLike<number>;
}

/** The product, or the sum, of one number per value lies between two others, both included. */
export interface CostLimit {
  readonly combines: 'product' | 'sum';
  /** A variable may be named more than once; then its number counts as often. */
  readonly scope: readonly number[];
  /** By place in the scope, by value. */
  readonly numbers: readonly (readonly Fraction[])[];
  readonly low: Fraction;
  readonly high: Fraction;
}

export interface CostProblem {
  readonly variables: readonly CostVariable[];
  readonly tables: readonly CostTable[];
  readonly limits: readonly CostLimit[];
}

/** By variable, its value; of several with the same cost the first in the order of the values. */
export interface CheapestAssignment {
  readonly cost: number;
  readonly values: readonly number[];
}

export type Optimum =
  | {
      readonly isComplete: true;
      /** Null where no assignment is allowed. */
      readonly best: CheapestAssignment | null;
      readonly work: Work;
    }
  | {
      readonly isComplete: false;
      /** No assignment costs less. */
      readonly bound: number;
      /** The cheapest that was found; not proven to be the cheapest that there is. */
      readonly best: CheapestAssignment | null;
      readonly work: Work;
    };

/** What was done, counted, so that it is the same on every machine. */
export interface Work {
  /** Cells of tables looked at. */
  readonly cells: number;
  /** Partial assignments that were branched on. */
  readonly branches: number;
}

/**
 * What all the dearest values and cells add up to must stay below this: bounds move costs about
 * between tables, and a double is exact only up to 2^53.
 */
export const GREATEST_TOTAL = 2 ** 45;
