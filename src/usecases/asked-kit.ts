/**
 * A kit question in its one form: every default filled in, every part by its id. Sent again, it
 * gives the same answer. What nobody asked for, such as a torque, is left out.
 *
 * Left out: the price and stock list, which has no past; the answer names its number.
 */

import type { Hand } from './answer.js';
import type { KitInput } from './kit-input.js';
import type { FittedInput } from './question.js';

export type AskedWant =
  | { part: string[]; position?: string; hand?: Hand; renew: boolean }
  | { lot: string; whole: boolean }
  | { load: string; atLeast: string }
  | AskedCondition;

export interface AskedCondition {
  position: string;
  condition: Readonly<Record<string, unknown>>;
}

export type AskedAvoid = { part: string } | { supplier: string } | AskedCondition;

export interface AskedLimits {
  cost?: string;
  changedPositions?: number;
  labourHours?: string;
  leadDays?: number;
  inStock: boolean;
}

interface AskedPrice {
  price: string;
  stock?: number;
  leadDays?: number;
  pack?: string;
}

export type AskedOffer =
  | (AskedPrice & { part: string })
  | (AskedPrice & { lot: string })
  | (AskedPrice & { work: string })
  | (AskedPrice & { sku: string });

export type AskedReading =
  | {
      on: { part: string; interface?: string; parameter: string };
      value: string | string[];
      tool?: string;
    }
  | AskedIdentity;

/** What stands at a position: a part by its id, or `none`. */
export interface AskedIdentity {
  on: { position: string; hand?: Hand };
  value: string;
}

/** A type and no interface, so that it can be read field by field. */
export type AskedKit = {
  edition: number;
  lang: string;
  units: KitInput['units'];
  vehicle: string;
  facts: Readonly<Record<string, string>>;
  fitted: Record<string, FittedInput>;
  adapters: Record<string, string[]>;
  torque?: string;
  use?: NonNullable<KitInput['use']>;
  ignorePresent: boolean;
  want: AskedWant[];
  keep: string[];
  avoid: AskedAvoid[];
  owned: { part: string; quantity: number }[];
  lots: 'all' | 'none' | string[];
  workUpTo: KitInput['workUpTo'];
  limits: AskedLimits;
  labourRate?: string;
  ruleset?: string;
  unknowns: KitInput['unknowns'];
  from: KitInput['from'];
  offers: AskedOffer[];
  offersMode: KitInput['offersMode'];
  measured: AskedReading[];
  prefer: KitInput['prefer'];
  routes: number;
  undominated: boolean;
  steps: number;
};
