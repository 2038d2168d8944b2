/**
 * The catalogue document as it is written, once its shape has been read (`read.ts`). Names,
 * numbers and references are still texts here; `compile.ts` makes them a catalogue.
 */

import type { Basis } from '../check/state.js';
import type { DrivelineRecord } from './document-driveline.js';
import type { LotRecord, OfferRecord, RulesetRecord, WorkRecord } from './document-trade.js';

export type {
  LotItemRecord,
  LotRecord,
  OfferRecord,
  RulesetRecord,
  WorkRecord,
} from './document-trade.js';

/** A text, or the same text by language ({"en": …, "de": …}). */
export type Text = string | { readonly [language: string]: string };

export interface EvidenceRecord {
  readonly basis?: Basis;
  readonly by?: string;
  readonly on?: string;
  readonly source?: string;
  /** For `built`: how often it has been built. */
  readonly times?: number;
}

export type Scalar = string | number;

export type ValueRecord =
  | Scalar
  | readonly Scalar[]
  | {
      readonly is: Scalar | readonly Scalar[];
      readonly evidence?: EvidenceRecord;
      readonly tool?: string;
    }
  | {
      readonly choose: readonly [Scalar, Scalar] | { readonly of: readonly Scalar[] };
      readonly evidence?: EvidenceRecord;
    };

export interface FactRecord {
  readonly id: string;
  readonly name: Text;
  readonly values: readonly { readonly id: string; readonly name: Text }[];
  readonly how?: Text;
}

export interface ParameterRecord {
  readonly type: 'code' | 'count' | 'designation' | 'ratio' | 'measured' | 'points';
  readonly name?: Text;
  readonly unit?: string;
  /** The one side that has it; both sides have it where this is left out. */
  readonly of?: string;
  /** A check that names it applies only where it is recorded. */
  readonly optional?: boolean;
  /** It is needed unless both faces record all of these, which say the same in another way. */
  readonly unless?: readonly string[];
  readonly tool?: string;
  /** Outside this closed range a value is doubtful, not wrong. */
  readonly usual?: readonly [Scalar, Scalar];
}

export interface RoleValueRecord
  extends Partial<Omit<ParameterRecord, 'of' | 'optional' | 'unless'>> {
  readonly list?: boolean;
  readonly rating?: boolean;
  /** Derived from the part's other values, never recorded. */
  readonly term?: unknown;
  /** A question's value of this name stands in its place. */
  readonly askedAs?: 'torque';
}

export interface KindRecord {
  readonly id: string;
  readonly name?: Text;
  /** Governing standard and clause, or "none". */
  readonly standard?: string;
  readonly sides?: readonly [string, string];
  readonly parameters: { readonly [parameter: string]: ParameterRecord };
  readonly checks: readonly unknown[];
  readonly notChecked?: readonly Text[];
  readonly caution?: string;
}

export interface RoleRecord {
  readonly id: string;
  readonly name: Text;
  readonly caution?: string;
  readonly faces?: readonly string[];
  readonly values?: { readonly [value: string]: RoleValueRecord };
}

export interface PositionRecord {
  readonly id: string;
  readonly name: Text;
  readonly roles: readonly string[];
  readonly count?: number;
  readonly handed?: boolean;
  readonly optional?: boolean;
  readonly behind?: readonly string[];
  /** Time to change one piece, such as "6 h". */
  readonly labour?: Scalar;
  /** Time to get at one piece and to close up again, where it must only come out of the way. */
  readonly access?: Scalar;
}

export interface MatingRecord {
  readonly id: string;
  readonly between: readonly [string, string];
  readonly adapters?: number;
  /** Its interfaces may serve other shared matings too. */
  readonly shared?: boolean;
}

export interface LayoutRecord {
  readonly id: string;
  readonly name?: Text;
  readonly positions: readonly PositionRecord[];
  readonly matings?: readonly MatingRecord[];
  readonly terms?: { readonly [term: string]: unknown };
  /** By term; one that is not here is called by its id. */
  readonly termNames?: { readonly [term: string]: Text };
  readonly checks?: readonly unknown[];
  readonly driveline?: DrivelineRecord;
  readonly unmated?: 'open' | 'ignore';
}

export interface InterfaceRecord {
  readonly kind?: string;
  readonly side?: string;
  readonly optional?: boolean;
  readonly absent?: boolean;
  readonly evidence?: EvidenceRecord;
  /** Several faces in one, of which one is used: each lays its values over the common ones. */
  readonly alternatives?: readonly { readonly [parameter: string]: ValueRecord }[];
  readonly [parameter: string]: unknown;
}

export interface PartRecord {
  readonly id: string;
  readonly roles: readonly string[];
  readonly name: Text;
  readonly maker?: string;
  readonly numbers?: readonly { readonly number: string; readonly of: string }[];
  readonly built?: readonly [string | null, string | null];
  readonly supersededBy?: string | null;
  readonly hand?: 'left' | 'right';
  readonly spans?: readonly string[];
  readonly evidence?: EvidenceRecord;
  readonly interfaces?: { readonly [name: string]: InterfaceRecord };
  readonly values?: { readonly [name: string]: ValueRecord };
}

/** What stands at a position: one part, nothing, or a piece for each hand. */
export type PiecesRecord =
  | string
  | null
  | { readonly left: string | null; readonly right: string | null };

/** `by` names a fact; each other name is a value of it, with what the works fitted then. */
export interface OptionRecord {
  readonly by: string;
  readonly [value: string]: PiecesRecord | undefined;
}

export type FittedRecord = PiecesRecord | OptionRecord;

/** 17 characters, `*` for any; or such a pattern with a range of the serial numbers at its end. */
export type VinRecord =
  | string
  | { readonly pattern: string; readonly from: string; readonly to: string };

export interface VehicleRecord {
  readonly id: string;
  readonly make: string;
  readonly model: string;
  readonly variant?: string;
  readonly built?: readonly [string | null, string | null];
  readonly vin?: readonly VinRecord[];
  readonly facts?: { readonly [fact: string]: string };
  /** Only a vehicle that is like another may leave it out. */
  readonly layout?: string;
  /** A vehicle whose layout, facts, evidence and fitted parts it has, but for its own. */
  readonly like?: string | null;
  /** The more exact vehicles that took its place. */
  readonly replacedBy?: readonly string[];
  readonly evidence?: EvidenceRecord;
  /** Positions; `matings` names the adapters that the works fitted. */
  readonly fitted?: { readonly [position: string]: FittedRecord | FittedAdapters | undefined };
}

export interface FittedAdapters {
  readonly [mating: string]: string | readonly string[];
}

export interface RuleRecord {
  readonly id: string;
  /** The layouts it speaks of; all that have its positions, where left out. */
  readonly layouts?: readonly string[];
  readonly when: unknown;
  readonly needs?: unknown;
  readonly excludes?: unknown;
  readonly recommends?: RecommendsRecord;
  readonly consumes?: ConsumesRecord;
  readonly note?: Text;
  readonly caution?: Text;
  readonly because: Text;
  readonly evidence?: EvidenceRecord;
}

export interface RecommendsRecord {
  readonly position?: string;
  readonly part?: string;
  readonly quantity?: unknown;
}

export interface ConsumesRecord {
  readonly part: string;
  readonly quantity: unknown;
}

export interface StatementRecord {
  readonly id: string;
  readonly part: string;
  readonly vehicles: readonly string[];
  readonly position: string;
  readonly with?: { readonly [position: string]: string };
  readonly verdict: 'fits' | 'does-not-fit';
  readonly evidence?: EvidenceRecord;
}

export interface BandRecord {
  readonly pass: string;
  readonly warn: string;
  readonly refuse: string;
}

export interface CatalogueDocument {
  readonly catalogue: 1;
  readonly lang: string;
  readonly currency?: string;
  readonly evidence: EvidenceRecord & { readonly basis: Basis };
  readonly couplings?: { readonly [coupling: string]: BandRecord };
  readonly facts?: readonly FactRecord[];
  readonly roles?: readonly RoleRecord[];
  readonly kinds?: readonly KindRecord[];
  readonly layouts?: readonly LayoutRecord[];
  readonly parts?: readonly PartRecord[];
  readonly vehicles?: readonly VehicleRecord[];
  readonly rules?: readonly RuleRecord[];
  readonly statements?: readonly StatementRecord[];
  readonly lots?: readonly LotRecord[];
  readonly works?: readonly WorkRecord[];
  readonly rulesets?: readonly RulesetRecord[];
  readonly offers?: readonly OfferRecord[];
}

/** The lists of a document, in the order in which they build on one another. */
export const ENTITY_LISTS = [
  'facts',
  'kinds',
  'roles',
  'parts',
  'layouts',
  'vehicles',
  'rules',
  'statements',
  'lots',
  'works',
  'rulesets',
  'offers',
] as const;
export type EntityList = (typeof ENTITY_LISTS)[number];
