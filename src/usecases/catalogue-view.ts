/**
 * What the catalogue has, as answers show it: the entries of lists, and single things whole.
 */

import type { AnswerHead } from './answer.js';

export interface LayoutEntry {
  id: string;
  name: string | null;
  /** How many positions it has, and how many vehicles are of it. */
  positions: number;
  vehicles: number;
}

export interface PositionView {
  position: string;
  name: string;
  roles: string[];
  count: number;
  handed: boolean;
  optional: boolean;
  /** Positions that must come out first. */
  behind: string[];
  /** Hours for one piece, a decimal: to change it, and to get it out of the way. */
  labourHours: string | null;
  accessHours: string | null;
}

export interface LayoutMatingView {
  mating: string;
  /** Two of `position.interface`. */
  between: string[];
  /** Most adapters that go between them. */
  adapters: number;
}

/** A check as it is declared, before any value is put in. */
export interface DeclaredCheckView {
  check: string;
  primitive: string;
  severity: 'must' | 'caution';
  /** What it says of itself; null where it says nothing. */
  text: string | null;
}

export interface LayoutAnswer extends AnswerHead {
  id: string;
  name: string | null;
  positions: PositionView[];
  matings: LayoutMatingView[];
  checks: DeclaredCheckView[];
  /** The computed values that its checks compare. */
  terms: { term: string; name: string }[];
}
