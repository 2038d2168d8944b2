/**
 * What a language must be able to say. A language that lacks a sentence does not compile.
 */

import type { Hand } from '../check/reading.js';
import type { NumberWords } from './number-words.js';
import type { CAUTION_GROUPS, ReasonCode, ReasonData } from './reason.js';
import type { VehicleWords } from './vehicle-words.js';

export type Sentence = (data: ReasonData) => string;

/** What routes are compared by, row by row. */
export const COMPARED = [
  'cost',
  'unpriced',
  'changedPositions',
  'labourHours',
  'leadDays',
  'openPoints',
  'weakest',
  'signOff',
  'reversible',
] as const;
export type Compared = (typeof COMPARED)[number];

export interface Words {
  readonly sentences: Readonly<Record<ReasonCode, Sentence>>;
  readonly cautions: Readonly<Record<(typeof CAUTION_GROUPS)[number], string>>;
  /** What to say for a failing check whose code a catalogue made up, without a text of its own. */
  readonly ownCode: Sentence;
  /** So many points, such as the holes of a pattern. */
  readonly points: (count: number) => string;
  /** The name of a part that a question writes out: its first (`a`) or its second (`b`). */
  readonly partOfQuestion: (end: string) => string;
  /** What nobody recorded at a place of a vehicle that is taken apart, out of a lot. */
  readonly ofDonor: (place: string, hand: Hand | null, lot: string) => string;
  /** What the rows are called that compare routes. */
  readonly compared: Readonly<Record<Compared, string>>;
  /** For which side something is made. */
  readonly hands: Readonly<Record<Hand, string>>;
  /** What comes out where a piece turns out to have no such face. */
  readonly noSuchFace: string;
  readonly vehicles: VehicleWords;
  readonly numbers: NumberWords;
}

/** In characters. A summary stands on a badge, and has about twice as many in all. */
export const LONGEST_PLACES = 60;
