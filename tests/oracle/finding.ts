/**
 * What the oracle finds: one line for each constraint that it knows of.
 */

import type { Names } from './condition.js';
import type { Basis, Outcome, State } from './outcome.js';
import type { Hand } from './scene.js';

export interface Verdict {
  /** What the records alone come to. */
  readonly computed: Outcome;
  readonly state: State;
  /** The weakest basis of what decided it; null where nothing recorded did. */
  readonly basis: Basis | null;
  /** Whether it fails by a record that somebody measured or built. */
  readonly failsFirstHand: boolean;
}

export interface Finding {
  readonly form: 'place' | 'face' | 'mating' | 'check' | 'choice' | 'rule' | 'statement';
  readonly id: string;
  readonly hand: Hand | null;
  readonly severity: 'must' | 'caution';
  readonly names: Names;
  /**
   * Best first. More than one where the rules leave it open how a single check is shown whose
   * options suit others less well.
   */
  readonly verdicts: readonly Verdict[];
}

export function about(positions: readonly string[], matings: readonly string[] = []): Names {
  return { positions, matings, opened: [] };
}
