/**
 * Parts, as answers show them: an entry of a list, and one whole.
 */

import type { CautionView, Hand, ValuesHead } from './answer.js';
import type { NamedBy } from './part-names.js';
import type { EvidenceView, RecordedValueView } from './record-views.js';

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

/** A part that was asked for by a name. */
export interface FoundPartEntry extends PartEntry {
  asked: string;
  resolvedBy: NamedBy;
}

/** A name that leads to no part, or to several. */
export interface LostPart<Fault> {
  asked: string;
  faults: readonly Fault[];
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

export interface PartAnswer extends ValuesHead, PartEntry {
  interfaces: InterfaceView[];
  values: RecordedValueView[];
  /** What its roles say that such a part has, and nobody recorded of it. */
  notRecorded: { interfaces: string[]; values: string[] };
  evidence: EvidenceView;
  cautions: CautionView[];
}
