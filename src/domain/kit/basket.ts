/**
 * What a route takes, line by line, and what that comes to. Totals are the sums of the lines.
 */

import type { Occupant, Position } from '../catalogue/catalogue.js';
import type { Hand } from '../check/reading.js';
import type { Rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import type { Money, Offer } from './question.js';

export const ACTIONS = ['add', 'adapter', 'lot', 'work', 'extra', 'remove', 'open'] as const;
export type Action = (typeof ACTIONS)[number];

/** What has to be done at a place, for one hand of it. */
export interface SeatChange {
  readonly position: Position;
  readonly hand: Hand | null;
  /** So many pieces stand there. */
  readonly pieces: number;
  readonly now: Occupant;
  /** A part may be worked: `part+work`. */
  readonly becomes: Occupant;
}

/** What sits in a mating now, and what it becomes; each of them so many times. */
export interface AdapterChange {
  readonly mating: string;
  readonly pieces: number;
  readonly now: readonly string[];
  readonly becomes: readonly string[];
}

/** What a rule uses up. */
export interface Consumed {
  readonly part: string;
  /** Null where a value that it follows from is not recorded. */
  readonly quantity: Rational | null;
  readonly dimension: Dimension;
  readonly rule: string;
}

/** All that a change is, as far as it costs something. */
export interface Bill {
  readonly seats: readonly SeatChange[];
  readonly adapters: readonly AdapterChange[];
  readonly consumed: readonly Consumed[];
  /** Opened to get at something, not changed themselves; in layout order. */
  readonly opened: readonly Position[];
}

/** How the goods of a line are come by; `unpriced`: bought, and nobody knows at what price. */
export type Source = 'offer' | 'owned' | 'lot' | 'present' | 'unpriced';

export interface LeftOver {
  readonly part: string;
  readonly quantity: Rational;
  readonly dimension: Dimension;
}

export interface Line {
  /** The same for the same thing done, in every route and edition: `add:gearbox:gb6-late`. */
  readonly key: string;
  readonly action: Action;
  readonly position: string | null;
  readonly mating: string | null;
  readonly hand: Hand | null;
  /** The article; null for lots and for what is opened. */
  readonly part: string | null;
  readonly lot: string | null;
  readonly work: string | null;
  /** Null where nobody knows how much it takes; its price is not known then either. */
  readonly quantity: Rational | null;
  readonly dimension: Dimension;
  /** Null for lines that are of no goods. */
  readonly source: Source | null;
  /** The lot that its goods come out of. */
  readonly fromLot: string | null;
  readonly offer: Offer | null;
  /** Packs of the offer that are bought, and what is left of them. */
  readonly packs: number | null;
  readonly over: Rational | null;
  /** Of one pack of the offer; null where it has none. */
  readonly unitPrice: Money | null;
  /** Null where it is not known; 0 where nothing is to be paid for it. */
  readonly price: Money | null;
  /** Null where nobody recorded it. */
  readonly labourHours: Rational | null;
  /** At the question's rate; null without a rate, or without hours. */
  readonly labourPrice: Money | null;
  readonly leadDays: number | null;
  /** Of a lot: what of it has no use here. */
  readonly leftOver: readonly LeftOver[];
  /** Of a work. */
  readonly signOff: 'workshop' | 'engineer' | null;
  readonly isReversible: boolean;
}

/** Limits against which something can stand that is not known. */
export const LIMITED = ['cost', 'labourHours', 'leadDays'] as const;
export type Limited = (typeof LIMITED)[number];

export interface Totals {
  /** All that is bought, as far as prices are known. */
  readonly parts: Money;
  readonly works: Money;
  readonly labourHours: Rational;
  /** Null without a rate. */
  readonly labour: Money | null;
  /** Parts, works and labour. */
  readonly cost: Money;
  /** Keys of the lines whose price is not known. */
  readonly unpriced: readonly string[];
  /** Keys of the lines whose labour nobody recorded. */
  readonly untimed: readonly string[];
  readonly changedPositions: number;
  /** Until all is there; null where it is not known of something that is bought. */
  readonly leadDays: number | null;
  /** Limits of the question of which nobody can tell whether they are kept. */
  readonly unknownLimits: readonly Limited[];
  /** Whoever must sign for most. */
  readonly signOff: 'workshop' | 'engineer' | null;
  /** Everything can be made again what it was. */
  readonly isReversible: boolean;
}

export interface Basket {
  readonly lines: readonly Line[];
  readonly totals: Totals;
}
