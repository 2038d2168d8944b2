/**
 * What is bought, done and demanded, as a catalogue document writes it: lots, works, rulesets and
 * offers.
 */

import type { EvidenceRecord, Scalar, Text, ValueRecord } from './document.js';

export type LotItemRecord =
  | { readonly part: string; readonly quantity?: Scalar }
  | { readonly vehicle: string; readonly position: string };

export interface LotRecord {
  readonly id: string;
  readonly name?: Text;
  readonly contains: readonly LotItemRecord[];
}

export interface WorkRecord {
  readonly id: string;
  readonly name: Text;
  /** A condition over the one part that is worked on. */
  readonly on: unknown;
  readonly gives: {
    readonly interfaces?: {
      readonly [name: string]: { readonly [parameter: string]: ValueRecord };
    };
    readonly values?: { readonly [name: string]: ValueRecord };
  };
  /** Ratings that nobody knows any more once it is done. */
  readonly voids?: readonly string[];
  readonly labour?: Scalar;
  /** Who must sign for it. */
  readonly signOff?: 'workshop' | 'engineer' | null;
  readonly reversible?: boolean;
  readonly evidence?: EvidenceRecord;
}

export interface RulesetRecord {
  readonly id: string;
  readonly name?: Text;
  /** First and last month of registration or build that it is for, as its source has it. */
  readonly valid: readonly [string | null, string | null];
  /** Where it stands, for people to look it up. */
  readonly cite: string;
  readonly demands: {
    readonly keep?: readonly string[];
    readonly checks?: readonly unknown[];
  };
}

export interface OfferRecord {
  readonly id: string;
  /** A part, a lot or a work. */
  readonly for: string;
  readonly price: string;
  readonly condition?: 'new' | 'rebuilt' | 'used';
  readonly stock?: number;
  readonly leadDays?: number;
  readonly supplier?: string;
  readonly sku?: string;
  readonly pack?: string;
}
