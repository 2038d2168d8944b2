/**
 * What fits what, as lists show it: an entry for each part or vehicle, with the places it is about.
 */

import type { Outcome } from '../domain/check/state.js';
import type { AnswerHead, FitAnswer } from './answer.js';
import type { DonorKitView } from './donor-kit.js';
import type { SortKey } from './listing.js';
import type { NamedBy } from './part-names.js';
import type { PartNumberView } from './part-view.js';

/** One place that takes the part, and what comes of it with nothing else changed. */
export interface FitsPositionView {
  position: string;
  name: string;
  alone: Outcome;
}

export interface FitsView {
  /** The best of its places; `fails` where there is none. */
  alone: Outcome;
  /** As of a fit answer. */
  verdict: FitAnswer['verdict'];
  /** Nothing better is left out; false where a search ended at its limit of steps. */
  complete: boolean;
  /** The places where it does best. */
  at: string[];
  ambiguous: boolean;
  positions: FitsPositionView[];
}

/** A place of a donor at which the part stands. */
export interface DonorPlaceView {
  position: string;
  name: string;
}

export interface FittingPartEntry extends FitsView {
  part: string;
  name: string;
  maker: string | null;
  numbers: PartNumberView[];
  supersededBy: string | null;
  /** Where it stands on the donor that was asked about; empty where none was. */
  donor: DonorPlaceView[];
  /** What comes along with it; null where no donor, or no change, was asked about. */
  kit: DonorKitView | null;
}

/** A part that was asked for by a name. */
export interface NamedFittingPart extends FittingPartEntry {
  asked: string;
  resolvedBy: NamedBy;
}

export interface FittedVehicleEntry extends FitsView {
  vehicle: string;
  label: string;
  make: string;
  model: string;
  variant: string | null;
  /** First and last month; null is not known, or still going on. */
  built: (string | null)[];
}

/** All vehicles of one model, however many there are. */
export interface FittedModelEntry {
  make: string;
  model: string;
  label: string;
  /** First month of the first and last month of the last of those that it fits or may fit. */
  built: (string | null)[];
  counts: FitsCounts;
}

/** How many entries there are; those of each outcome before that was asked for. */
export interface FitsCounts {
  total: number;
  holds: number;
  open: number;
  fails: number;
}

export interface FitsListAnswer<Entry> extends AnswerHead {
  items: Entry[];
  next: SortKey | null;
  counts: FitsCounts;
}
