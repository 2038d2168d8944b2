/**
 * The vocabulary of the catalogue, as answers show it: kinds of interface and roles of parts.
 */

import type { CautionView, ShownValue, ValuesHead } from './answer.js';
import type { DeclaredCheckView } from './catalogue-view.js';

/** What a kind or a role wants to be told: its form, before any value is put in. */
export interface SpecView {
  name: string;
  /** Open: types may be added. */
  type: string;
  /** Empty for pure numbers and codes. */
  unit: string;
  /** Id of the tool that usually tells it, and its name; null where none is named. */
  tool: string | null;
  toolName: string | null;
  /** Outside of it a value is doubtful, not wrong; null where nothing is said. */
  usual: ShownValue | null;
}

export interface KindEntry {
  id: string;
  name: string;
  /** It comes with the program; others are declared by the catalogue. */
  builtIn: boolean;
  /** The group of cautions. */
  caution: string | null;
  /** How many parts have a face of it. */
  parts: number;
}

export interface ParameterView extends SpecView {
  parameter: string;
  /** The one side that has it; null where both have. */
  side: string | null;
  optional: boolean;
  /** Parameters that do instead, where both faces have all of them. */
  unless: string[];
}

export interface KindAnswer extends ValuesHead, KindEntry {
  /** The governing standard, or that there is none; null where the catalogue does not say. */
  standard: string | null;
  /** None where both ends are alike. */
  sides: { side: string; name: string }[];
  parameters: ParameterView[];
  checks: DeclaredCheckView[];
  /** What two faces can still differ in although every check holds. */
  notChecked: string[];
  cautions: CautionView[];
}

export interface RoleEntry {
  id: string;
  name: string;
  caution: string | null;
  /** How many parts are of it. */
  parts: number;
}

export interface RoleValueView extends SpecView {
  /** Its id, by which measures and parts name it. */
  parameter: string;
  /** It is a list of values. */
  list: boolean;
  /** It is what a part bears. */
  rating: boolean;
  /** It is computed from other values of the part, and never recorded. */
  derived: boolean;
  /** The field of a question that takes its place. */
  askedAs: string | null;
}

export interface RoleAnswer extends ValuesHead, RoleEntry {
  /** Names of the faces that such a part has; null where the role leaves that open. */
  faces: string[] | null;
  values: RoleValueView[];
  cautions: CautionView[];
}
