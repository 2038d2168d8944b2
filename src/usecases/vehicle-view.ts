/**
 * Vehicles, as answers show them: an entry of a list, the questions that tell them apart, and one
 * whole.
 */

import type { AdapterView, AnswerHead, CautionView, Hand, ValuesHead } from './answer.js';
import type { SortKey } from './listing.js';
import type { EvidenceView, RecordedValueView } from './record-views.js';

export interface VehicleEntry {
  id: string;
  /** Make, model, variant and months, for people. */
  label: string;
  make: string;
  model: string;
  variant: string | null;
  /** First and last month; null is not known, or still going on. */
  built: (string | null)[];
  layout: string;
  /** Values by fact. */
  facts: Record<string, string>;
  /** The more exact vehicles that took its place. */
  replacedBy: string[];
}

/** One way of having fewer vehicles left. */
export interface AskView {
  field: 'make' | 'model' | 'variant' | 'year' | 'built' | 'fact' | 'fitted';
  /** Id of the fact; null where another field is asked for. */
  fact: string | null;
  /** Id of the place; null where it is not asked what is fitted somewhere. */
  position: string | null;
  name: string;
  /** How to find it out; null where nobody says. */
  how: string | null;
  values: AskValueView[];
}

export interface AskValueView {
  /** As the filter takes it. */
  value: string;
  label: string;
  /** So many vehicles are left with this answer. */
  count: number;
}

export interface VehiclesAnswer extends AnswerHead {
  items: VehicleEntry[];
  next: SortKey | null;
  counts: { total: number };
  /** The best question first. */
  ask: AskView[];
}

/** A fact that has a say about the vehicle, with what can be said of it. */
export interface VehicleFactView {
  fact: string;
  name: string;
  /** How to find it out; null where nobody says. */
  how: string | null;
  /** Id of what is recorded, and its name; null where nobody recorded it. */
  value: string | null;
  valueName: string | null;
  values: { value: string; name: string }[];
  /** Where it tells what the works fitted. */
  positions: string[];
}

/** What stands at a place; `as-found`: something may be there, nobody recorded what. */
export interface OccupantView {
  occupant: 'part' | 'empty' | 'as-found';
  part: string | null;
  partName: string | null;
}

/** What the works fitted, by the value of a fact; what is not listed is not recorded. */
export interface WorksOptionView {
  fact: string;
  by: ({ value: string; valueName: string } & OccupantView)[];
}

/** A position of the vehicle; one with a left and a right piece has an entry for each. */
export interface VehiclePositionView extends OccupantView {
  position: string;
  name: string;
  hand: Hand | null;
  /** The groups of cautions of its roles. */
  cautionGroups: string[];
  /** Null where no fact tells it. */
  option: WorksOptionView | null;
}

export interface WorksAdaptersView {
  mating: string;
  /** Two of `position.interface`. */
  between: string[];
  /** In a row; none where the works fitted none. */
  adapters: AdapterView[];
}

/** A value of what the works fitted, in whose place a question may name another. */
export interface AskableValueView {
  position: string;
  hand: Hand | null;
  part: string | null;
  partName: string | null;
  parameter: string;
  name: string;
  /** The field of a question that takes its place. */
  askedAs: string;
  /** Null where nobody recorded it. */
  recorded: RecordedValueView | null;
}

/** A pattern of identification numbers; `*` stands for any character. */
export interface VinView {
  pattern: string;
  /** First and last serial number at its end; none where all belong. */
  serial: string[];
}

export interface VehicleAnswer extends ValuesHead, VehicleEntry {
  layoutName: string | null;
  /** The vehicle that it is recorded to be like. */
  like: string | null;
  vin: VinView[];
  namedFacts: VehicleFactView[];
  positions: VehiclePositionView[];
  /** Of the matings of which it is recorded. */
  adapters: WorksAdaptersView[];
  values: AskableValueView[];
  evidence: EvidenceView;
  cautions: CautionView[];
}
