/**
 * What is bought, done and demanded, compiled: lots, works, rulesets, and what rules recommend
 * and use up.
 */

import type { Check, Condition } from '../check/check.js';
import type { Term } from '../check/term.js';
import type { Rational } from '../quantity/rational.js';
import type { Amount } from './amount.js';
import type { Evidence, Values } from './catalogue.js';
import type { Text } from './document.js';

/** Bought whole: what of it is not needed is left over. */
export interface Lot {
  readonly id: string;
  readonly name: Text | null;
  readonly contains: readonly LotItem[];
}

export type LotItem =
  | { readonly is: 'part'; readonly part: string; readonly amount: Amount }
  /** All pieces at a position of a vehicle that is taken apart, whatever the works fitted there. */
  | { readonly is: 'position'; readonly vehicle: string; readonly position: string };

/** Makes the article `part+work` of a part. */
export interface Work {
  readonly id: string;
  readonly name: Text;
  /** Its terms name the one part by the position `ARTICLE`. */
  readonly on: Condition;
  readonly gives: {
    /** By face, then by parameter. */
    readonly interfaces: ReadonlyMap<string, Values>;
    readonly values: Values;
  };
  /** Ratings that nobody knows any more once it is done. */
  readonly voids: readonly string[];
  /** In hours, for one piece; null where it is not recorded. */
  readonly labour: Rational | null;
  /** Null where nobody need sign. */
  readonly signOff: 'workshop' | 'engineer' | null;
  readonly isReversible: boolean;
  readonly evidence: Evidence;
}

/** Stands for the position of the one part that the condition of a work looks at. */
export const ARTICLE = 'article';

export interface Ruleset {
  readonly id: string;
  readonly name: Text | null;
  /** First and last month, included; null for no such limit. */
  readonly valid: readonly [string | null, string | null];
  readonly cite: string;
  /** By layout. */
  readonly demands: ReadonlyMap<string, Demands>;
}

/** What a ruleset demands in the words of one layout. */
export interface Demands {
  readonly keep: readonly string[];
  readonly checks: readonly Check[];
  /** False where it also demands what this layout has no words for, so nobody can say it is met. */
  readonly isWhole: boolean;
}

/** What a rule holds worth having: a place filled, or a part. */
export interface Recommendation {
  readonly position: string | null;
  readonly part: string | null;
  /** Null for as much as it takes. */
  readonly quantity: Term | null;
}

export interface Consumption {
  readonly part: string;
  /** A pure number (pieces), a volume, a mass or a length. */
  readonly quantity: Term;
}

/** An article and those that it was made from: `hub+drill` was made from `hub`. */
export function madeFrom(article: string): string[] {
  const steps = article.split('+');
  return steps.map((_, index) => steps.slice(0, steps.length - index).join('+'));
}
