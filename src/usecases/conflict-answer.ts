/**
 * Why a question has no route, as every door tells it: which of its own demands are in each
 * other's way, what of the vehicle and of the catalogue breaks them, and what would help.
 */

import type { SaidReason, ShownValue } from './answer.js';
import type { KitTotalsView } from './kit-answer.js';

/** One demand of the question. */
export interface DemandView extends SaidReason {
  /** `present`, `want`, `keep`, `avoid-part`, `limit`, `unknowns` and the like. Open. */
  demand: string;
  /** Where it stands in the question of the answer: `want.0`, `limits.cost`. */
  at: string;
}

/** One joint, check or rule that cannot hold together with the others. */
export interface PathStepView extends SaidReason {
  /** Id of the mating, the check or the rule. */
  constraint: string;
  state: 'fails' | 'open';
  /** What would stand where to come so far; empty where all is as it is now. */
  changed: PathPartView[];
}

export interface PathPartView {
  position: string | null;
  mating: string | null;
  part: string;
  name: string;
}

/** A demand that is taken back. */
export interface DroppedView extends DemandView {
  /** Of a limit: what it takes; null of anything else, and where it is not known. */
  takes: ShownValue | null;
}

/** What is possible once some demands are taken back. */
export interface RelaxationView extends SaidReason {
  drop: DroppedView[];
  /** Of the best route then; null where none was found in time. */
  grade: 'proven' | 'open' | null;
  changes: string[];
  totals: KitTotalsView | null;
}

export interface ConflictView {
  /** None of them could be left out, and the others still contradict each other. */
  demands: DemandView[];
  /** No fewer demands contradict each other. */
  smallest: boolean;
  /** From what is asked for onwards, joint by joint; null where it was not found in time. */
  path: PathStepView[] | null;
  /** Those that take back the fewest demands first, then the cheapest. */
  relaxations: RelaxationView[];
  /** There are more of them. */
  more: boolean;
}
