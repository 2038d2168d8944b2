/**
 * A kit question as a door has read it: every default filled in, no name looked up yet.
 */

import { USUAL_ROUTES, USUAL_STEPS } from '../domain/kit/extent.js';
import type { KitQuestion, Preference } from '../domain/kit/question.js';
import type { Hand } from './answer.js';
import type { VehicleInput } from './question.js';

/** A condition in the words of the layout, of what stands at a position. */
export interface ConditionInput {
  readonly position: string;
  readonly condition: unknown;
}

export interface WantedPartInput {
  /** It, or one of these. */
  readonly part: string | readonly string[];
  /** Null for any one place that takes it. */
  readonly position: string | null;
  readonly hand: Hand | null;
  /** A new piece, even where the same article is there already. */
  readonly renew: boolean;
}

/** A load of the vehicle's layout with its rating over its demand at the least, a decimal. */
export interface WantedLoadInput {
  readonly load: string;
  readonly atLeast: string;
}

/** One thing that the change must bring about. */
export type WantInput = WantedPartInput | WantedLotInput | WantedLoadInput | ConditionInput;

export interface WantedLotInput {
  readonly lot: string;
  /** Null for whole where the vehicle can take it whole. */
  readonly whole: boolean | null;
}

/** One thing that must not be added. */
export type AvoidInput = { readonly part: string } | { readonly supplier: string } | ConditionInput;

export interface OwnedInput {
  readonly part: string;
  /** Null for as many as one place of it takes. */
  readonly quantity: number | null;
}

export interface KitLimitsInput {
  readonly cost: string | null;
  readonly changedPositions: number | null;
  readonly labourHours: string | null;
  readonly leadDays: number | null;
  readonly inStock: boolean;
}

/** What is offered, by a name of that sort. */
export interface OfferedInput {
  readonly of: 'part' | 'lot' | 'work' | 'sku';
  readonly name: string;
}

/** A price of the asker's own, used for this question alone. */
export interface OwnOfferInput extends OfferedInput {
  readonly price: string;
  readonly stock: number | null;
  readonly leadDays: number | null;
  readonly pack: string | null;
}

export interface KitInput extends VehicleInput {
  readonly want: readonly WantInput[];
  readonly keep: readonly string[];
  readonly avoid: readonly AvoidInput[];
  readonly owned: readonly OwnedInput[];
  readonly lots: 'all' | 'none' | readonly string[];
  readonly workUpTo: KitQuestion['workUpTo'];
  readonly limits: KitLimitsInput;
  readonly labourRate: string | null;
  readonly ruleset: string | null;
  readonly unknowns: 'allow' | 'refuse';
  readonly from: KitQuestion['from'];
  readonly ownOffers: readonly OwnOfferInput[];
  /** `over`: in place of the recorded ones of the same goods. `replace`: of all of them. */
  readonly offersMode: 'over' | 'replace';
  readonly prefer: Preference;
  readonly routes: number;
  readonly undominated: boolean;
  readonly steps: number;
}

/** What a kit question is where it says nothing: also what asking whether a part fits comes to. */
export const USUAL_KIT = {
  want: [],
  keep: [],
  avoid: [],
  owned: [],
  lots: 'all',
  // Every way is shown: each route names who must sign for it, so nobody is led into a work.
  workUpTo: 'engineer',
  limits: {
    cost: null,
    changedPositions: null,
    labourHours: null,
    leadDays: null,
    inStock: false,
  },
  labourRate: null,
  ruleset: null,
  unknowns: 'allow',
  from: 'recorded',
  ownOffers: [],
  offersMode: 'over',
  prefer: 'cost',
  routes: USUAL_ROUTES,
  undominated: false,
  steps: USUAL_STEPS,
} as const satisfies Omit<KitInput, keyof VehicleInput>;
