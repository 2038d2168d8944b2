/**
 * Vehicles, as answers show them, and the questions that tell them apart.
 */

import type { AnswerHead } from './answer.js';
import type { SortKey } from './listing.js';

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
  field: 'make' | 'model' | 'variant' | 'year' | 'built' | 'fact';
  /** Id of the fact; null where another field is asked for. */
  fact: string | null;
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
