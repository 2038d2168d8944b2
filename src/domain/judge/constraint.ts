/**
 * The constraints of a configuration as judged: each with its state, its reason as a code with
 * data, the evidence behind it, and the checks that it rests on.
 */

import type { Kind, Occupant, Statement } from '../catalogue/catalogue.js';
import type { Text } from '../catalogue/document.js';
import type { Condition } from '../check/check.js';
import type { FactAddress, Hand } from '../check/reading.js';
import type { CheckResult } from '../check/result.js';
import type { Basis, Outcome, Severity, State } from '../check/state.js';
import type { Interval } from '../quantity/interval.js';
import type { BuiltPair } from './evidence.js';

interface ConstraintBase {
  readonly id: string;
  readonly hand: Hand | null;
  /** The positions whose articles it speaks of, in layout order. */
  readonly positions: readonly string[];
  readonly state: State;
  /** What the records alone come to; it differs from `state` where evidence or `given` decides. */
  readonly computed: Outcome;
  readonly severity: Severity;
  readonly code: string;
  readonly basis: Basis | null;
  readonly checks: readonly CheckResult[];
  /** Faces and articles that nobody recorded and that keep it open. */
  readonly missing: readonly FactAddress[];
  /** Set where it is told over all values of facts that nobody told (see `supposed.ts`). */
  readonly supposed?: Supposed;
}

export interface Supposed {
  /** The facts that it hangs on; or all over which it comes to the same. */
  readonly facts: readonly string[];
  /** The reason by itself: with nothing supposed, or as for one value of these facts. */
  readonly code: string;
}

/** One end of a mating, or of one joint in it. */
export interface End {
  readonly position: string | null;
  readonly interface: string;
  readonly occupant: Occupant;
  /** Set for an end that is a face of an adapter. */
  readonly adapter: string | null;
}

export interface JointResult {
  readonly ends: readonly [End, End];
  readonly kind: Kind | null;
  readonly outcome: Outcome;
  readonly code: string;
  readonly checks: readonly CheckResult[];
  readonly notChecked: readonly Text[];
}

export interface MatingConstraint extends ConstraintBase {
  readonly form: 'mating';
  readonly matings: readonly string[];
  readonly ends: readonly [End, End];
  readonly adapters: readonly string[];
  readonly joints: readonly JointResult[];
  readonly builtPair: BuiltPair | null;
  readonly statement: Statement | null;
}

export interface CheckConstraint extends ConstraintBase {
  readonly form: 'check';
  /** The matings whose adapters it reads. */
  readonly matings: readonly string[];
  /** The position whose change emptied the loop, for `chain-broken`. */
  readonly emptied: string | null;
  readonly statement: Statement | null;
}

/** Checks that share a choice, judged as one. */
export interface ChoiceConstraint extends ConstraintBase {
  readonly form: 'choice';
  readonly matings: readonly string[];
  /** Which group of the plan it is. */
  readonly group: number;
  /** The checks that share it, by name. */
  readonly members: readonly string[];
  /** What the choice is of, and what may be ordered or set; null where it must be measured. */
  readonly choices: readonly {
    readonly address: FactAddress;
    readonly order: Interval | null;
    readonly dimension: string;
    /** The alternative or size that was picked, by index; null for a range. */
    readonly pick: number | null;
  }[];
  /** The two members (ids) that bound the empty range. */
  readonly between: readonly string[];
  readonly statement: Statement | null;
}

export interface RuleConstraint extends ConstraintBase {
  readonly form: 'rule';
  /** When it speaks, and what it demands then. */
  readonly conditions: readonly Condition[];
  readonly because: Text;
  readonly note: Text | null;
  readonly caution: Text | null;
}

/** Something about a place itself: a role, a hand, an empty or doubly filled position. */
export interface PlaceConstraint extends ConstraintBase {
  readonly form: 'place';
  readonly part: string | null;
}

/** A needed face that no mating of the layout serves. */
export interface FaceConstraint extends ConstraintBase {
  readonly form: 'face';
  readonly part: string;
  readonly interface: string;
}

/** A statement that the part does not fit, or one that the records contradict. */
export interface StatementConstraint extends ConstraintBase {
  readonly form: 'statement';
  readonly statement: Statement;
}

export type Constraint =
  | MatingConstraint
  | CheckConstraint
  | ChoiceConstraint
  | RuleConstraint
  | PlaceConstraint
  | FaceConstraint
  | StatementConstraint;
