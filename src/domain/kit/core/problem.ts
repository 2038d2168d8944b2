/**
 * What is searched, as plain data: variables with values, relations that say of some variables
 * together whether their values hold, and what a choice of values costs.
 *
 * Value 0 of a variable is how it stands now; every other value is a change. Nothing here knows
 * what the values are. A relation is asked only for what the search comes across, once for each
 * combination of classes; what was asked and answered can be saved and run again.
 */

/** What a relation says of a combination; a greater number is better. */
export const STATE = { fails: 0, open: 1, holds: 2 } as const;
export type State = (typeof STATE)[keyof typeof STATE];

export interface Variable {
  readonly name: string;
  /** How many values it has, at least 1. */
  readonly size: number;
  /** Whether a change of it counts where results are told apart by what they change. */
  readonly isPlace: boolean;
  /**
   * By value: the value that is left where only what is new in it goes, and not all is put back.
   * Left out where that is value 0 for all.
   */
  readonly less?: readonly number[];
}

export interface Answer {
  readonly state: State;
  /**
   * Variables of the scope whose values alone come to this state, whatever the others have; all
   * of the scope where it is not known better. Without meaning where the state is `holds`.
   */
  readonly blame: readonly number[];
}

export interface Relation {
  readonly name: string;
  /** The variables that it reads, ascending, each once. */
  readonly scope: readonly number[];
  /** By place in the scope, by value: its class. Values of one class are alike to the relation. */
  readonly classes: readonly (readonly number[])[];
  /** Asked with one value for each variable of the scope; pure. */
  readonly ask: (values: readonly number[]) => Answer;
}

/**
 * Costs are whole numbers below 2^53, never negative; what counts first is in the high digits.
 * For every assignment: exact ≥ floor of any part of it, and
 * floor(decided and more) ≥ floor(decided) + the sum of `atLeast` of the variables decided more.
 */
export interface Prices {
  /** By variable, by value: the least that this value adds to the rest; 0 for value 0. */
  readonly atLeast: readonly (readonly number[])[];
  /**
   * The least that every assignment costs which has these values at the decided variables; those
   * not decided have value 0 in `values`. Infinity where no such assignment is within the limits.
   */
  readonly floor: (values: readonly number[], decided: readonly boolean[]) => number;
  /** What an assignment costs; Infinity where it is beyond a limit. */
  readonly exact: (values: readonly number[]) => number;
}

export interface Problem {
  readonly variables: readonly Variable[];
  readonly relations: readonly Relation[];
  readonly prices: Prices;
}

/** `proven`: every relation holds. `open`: none fails, and at least one is open. */
export type Phase = 'proven' | 'open';

/** One assignment that the search has found. */
export interface Found {
  /** By variable. */
  readonly values: readonly number[];
  readonly cost: number;
  /** Indices of the relations that are open. */
  readonly open: readonly number[];
}

/** How much work a search may do; shared by all searches of one question. */
export interface Budget {
  /** Steps that are left; a step is one assignment looked at. */
  left: number;
}
