/**
 * A kit question with every name resolved: what is wished for, what may be used for it, and what
 * must not be exceeded. What a route costs follows from it alone; nothing is looked up elsewhere.
 */

import type { Amount } from '../catalogue/amount.js';
import type { Catalogue, Vehicle } from '../catalogue/catalogue.js';
import type { OfferRecord } from '../catalogue/document.js';
import type { Ruleset } from '../catalogue/trade.js';
import type { Condition } from '../check/check.js';
import type { Use } from '../check/coupling.js';
import type { Hand } from '../check/reading.js';
import type { CompiledIndex } from '../index/compiled-index.js';
import type { Said } from '../judge/fit.js';
import type { Interval } from '../quantity/interval.js';
import type { Rational } from '../quantity/rational.js';

/** Ten-thousandths of the currency's unit, whole and never negative: no float holds a price. */
export type Money = number;

export interface Offer {
  readonly record: OfferRecord;
  /** Of one pack. */
  readonly price: Money;
  /** What one price buys; one piece where the offer does not say. */
  readonly pack: Amount;
}

export const PREFERENCES = [
  'cost',
  'changed-positions',
  'labour-hours',
  'lead-days',
  'capacity',
] as const;
export type Preference = (typeof PREFERENCES)[number];

/** One thing that the change must bring about. */
export type Want =
  | {
      readonly is: 'part';
      /** Null for any one place that takes it. */
      readonly position: string | null;
      readonly hand: Hand | null;
      /** One of these. */
      readonly parts: readonly string[];
      /** A new piece is wanted even where the same article is there already. */
      readonly renews: boolean;
    }
  /**
   * Bought whole. Of the pieces that have a place on the vehicle all are put there if it is to be
   * used whole, else one at least is put in.
   */
  | { readonly is: 'lot'; readonly lot: string; readonly whole: boolean }
  /** The rating of a load, the id of a `carries` of the layout, is so many times its demand. */
  | { readonly is: 'load'; readonly load: string; readonly atLeast: Rational }
  /** What stands at the position must meet this. */
  | { readonly is: 'condition'; readonly position: string; readonly condition: Condition };

export interface Limits {
  readonly cost: Money | null;
  readonly changedPositions: number | null;
  readonly labourHours: Rational | null;
  readonly leadDays: number | null;
  /** Only what the stock of an offer covers is bought. */
  readonly inStock: boolean;
}

export interface Avoided {
  /** Ids of parts; what is there already may stay. */
  readonly parts: ReadonlySet<string>;
  readonly suppliers: ReadonlySet<string>;
  /** What stands at the position, if it is changed, must not meet this. */
  readonly conditions: readonly { readonly position: string; readonly condition: Condition }[];
}

export interface KitQuestion {
  /** With the parts that the question itself brings. */
  readonly catalogue: Catalogue;
  /** The catalogue whose vehicles give as-built evidence. */
  readonly pairsOf: Catalogue;
  /** Of that catalogue; without it every joint is judged, with the same outcome. */
  readonly index?: CompiledIndex;
  readonly vehicle: Vehicle;
  readonly said: Said;
  readonly wants: readonly Want[];
  /** Positions that stay as they are. */
  readonly keep: readonly string[];
  readonly avoid: Avoided;
  /** Pieces at hand, by part; they cost nothing. */
  readonly owned: ReadonlyMap<string, number>;
  /** The lots that may be bought. */
  readonly lots: ReadonlySet<string>;
  /** How far works may go: by whom they must be signed off at the most. */
  readonly workUpTo: 'none' | 'workshop' | 'engineer';
  readonly limits: Limits;
  readonly torque: { readonly interval: Interval; readonly text: string } | null;
  readonly use: Use | null;
  readonly ignorePresent: boolean;
  /** For an hour; null where labour is not priced. */
  readonly labourRate: Money | null;
  readonly ruleset: Ruleset | null;
  /** Only proven routes. */
  readonly refusesUnknowns: boolean;
  /** `offered`: only what is offered, owned or in a lot is bought. */
  readonly from: 'recorded' | 'offered';
  readonly offers: readonly Offer[];
  readonly prefer: Preference;
  /** How many routes are wanted. */
  readonly routes: number;
  /** Routes that another beats on every count are left out. */
  readonly onlyUndominated: boolean;
  /** How many steps the search may take. */
  readonly steps: number;
}
