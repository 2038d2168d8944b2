/**
 * Parts, as answers show them: an entry of a list, and one whole.
 */

import type { ShownPoint } from '../domain/explain/reason.js';
import type { AnswerHead, Basis, CautionView, Hand, ShownValue } from './answer.js';

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

/** Who says so, as recorded; null where nobody wrote it down. */
export interface EvidenceView {
  basis: Basis;
  by: string | null;
  on: string | null;
  source: string | null;
  /** How often it has been built so. */
  times: number | null;
}

export interface RecordedValueView {
  parameter: string;
  name: string;
  /** `range` and `set`: one may set or order what is in it. */
  form: 'number' | 'code' | 'list' | 'points' | 'range' | 'set';
  value: ShownValue;
  /** What is in a list or a set. */
  items: ShownValue[];
  points: ShownPoint[];
  /** Id of the tool that it was read with, and its name; null where nobody wrote it down. */
  tool: string | null;
  toolName: string | null;
  evidence: EvidenceView;
}

/** One way in which a face can be. */
export interface AlternativeView {
  parameters: RecordedValueView[];
  /** What its kind asks for and nobody recorded. */
  notRecorded: string[];
}

export interface InterfaceView {
  interface: string;
  /** Null where the part really has no such face. */
  kind: string | null;
  kindName: string | null;
  /** Null where both ends are alike. */
  side: string | null;
  optional: boolean;
  absent: boolean;
  /** One, or several of which one is used; none where the face is absent. */
  alternatives: AlternativeView[];
  evidence: EvidenceView;
}

export interface PartAnswer extends AnswerHead, PartEntry {
  interfaces: InterfaceView[];
  values: RecordedValueView[];
  /** What its roles say that such a part has, and nobody recorded of it. */
  notRecorded: { interfaces: string[]; values: string[] };
  evidence: EvidenceView;
  cautions: CautionView[];
}
