/**
 * Parts, as answers show them: an entry of a list.
 */

import type { Hand } from './answer.js';

export interface PartNumberView {
  number: string;
  /** Whose number it is, as recorded; `maker` is whoever makes the part. */
  of: string;
}

export interface PartEntry {
  id: string;
  name: string;
  roles: string[];
  maker: string | null;
  numbers: PartNumberView[];
  hand: Hand | null;
  /** The positions that it fills at once; none where it stands at one. */
  spans: string[];
  /** First and last month; null is not known, or still going on. */
  built: (string | null)[];
  /** The part that took its place. */
  supersededBy: string | null;
}
