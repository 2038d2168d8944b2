/**
 * A compiled catalogue: everything resolved, every value a set of values, nothing left to read.
 * Immutable; one edition of the store, or one document that is being checked, gives one.
 */

import type { Check, Condition } from '../check/check.js';
import type { Couplings } from '../check/coupling.js';
import type { Hand } from '../check/reading.js';
import type { Basis } from '../check/state.js';
import type { Term } from '../check/term.js';
import type { Interval } from '../quantity/interval.js';
import type { PlanePoint } from '../quantity/plane-point.js';
import type { ValueType } from '../quantity/quantity.js';
import type { Rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import type { EvidenceRecord, OfferRecord, Text } from './document.js';
import type { Driveline } from './driveline.js';
import type { Consumption, Lot, Recommendation, Ruleset, Work } from './trade.js';
import type { VinPattern } from './vin.js';

export interface Evidence extends EvidenceRecord {
  readonly basis: Basis;
}

/** What a kind's parameter or a role's value is. */
export interface ValueSpec {
  readonly id: string;
  readonly name: Text | null;
  readonly type: ValueType;
  readonly dimension: Dimension;
  /** Canonical unit symbol, '' for pure numbers and codes. */
  readonly unit: string;
  readonly tool: string | null;
  readonly usual: Interval | null;
  readonly isList: boolean;
  readonly isRating: boolean;
}

export interface Parameter extends ValueSpec {
  /** The one side that has it; null where both have. */
  readonly of: string | null;
  readonly isOptional: boolean;
  /** Parameters that say the same in another way: recorded on both faces, they do instead. */
  readonly unless: readonly string[];
}

export interface Kind {
  readonly id: string;
  readonly name: Text;
  readonly standard: string | null;
  /** Null where both ends are alike. */
  readonly sides: readonly [string, string] | null;
  readonly parameters: ReadonlyMap<string, Parameter>;
  readonly checks: readonly Check[];
  readonly notChecked: readonly Text[];
  readonly caution: string | null;
  readonly isBuiltIn: boolean;
}

export interface RoleValue extends ValueSpec {
  /** Derived values are computed, never recorded. */
  readonly term: Term | null;
  readonly askedAs: 'torque' | null;
}

export interface Role {
  readonly id: string;
  readonly name: Text;
  readonly caution: string | null;
  /** Null where the role does not list them. */
  readonly faces: ReadonlySet<string> | null;
  readonly values: ReadonlyMap<string, RoleValue>;
}

/** The set of values that one record allows, and who says so. */
export type Value = ValueBody & {
  readonly spec: ValueSpec;
  readonly evidence: Evidence;
  readonly tool: string | null;
  /** As recorded, for people. */
  readonly text: string;
};

export type ValueBody =
  | { readonly form: 'number'; readonly interval: Interval }
  | { readonly form: 'code'; readonly code: string }
  | { readonly form: 'list'; readonly items: readonly ListItem[] }
  /** Points in the plane of a face, such as bolt holes; their order means nothing. */
  | { readonly form: 'points'; readonly points: readonly PlanePoint[] }
  /** One may set or order any value in it. */
  | { readonly form: 'range'; readonly interval: Interval }
  /** One may set or order one of these. */
  | { readonly form: 'set'; readonly items: readonly ListItem[] };

export type ListItem = {
  readonly text: string;
  readonly interval: Interval | null;
  readonly code: string | null;
};

export type Values = ReadonlyMap<string, Value>;

export interface Face {
  readonly name: string;
  readonly isOptional: boolean;
  /** The part really has no such face; then it has no kind and no values. */
  readonly isAbsent: boolean;
  readonly kind: Kind | null;
  readonly side: string | null;
  /** One set of values, or several alternatives of which one is used. */
  readonly alternatives: readonly Values[];
  readonly evidence: Evidence;
}

export interface Part {
  readonly id: string;
  readonly roles: readonly string[];
  readonly name: Text;
  readonly maker: string | null;
  readonly numbers: readonly { readonly number: string; readonly of: string }[];
  /** First and last month; null is not known, or still going on. */
  readonly built: readonly [string | null, string | null];
  readonly supersededBy: string | null;
  readonly hand: Hand | null;
  readonly spans: readonly string[] | null;
  readonly faces: ReadonlyMap<string, Face>;
  readonly values: Values;
  readonly evidence: Evidence;
}

export interface Position {
  readonly id: string;
  readonly name: Text;
  readonly roles: readonly string[];
  readonly count: number;
  readonly isHanded: boolean;
  readonly isOptional: boolean;
  /** Positions that must come out before this one can. */
  readonly behind: readonly string[];
  /** In hours, for each piece: to change it, and to get it out of the way; null: not recorded. */
  readonly labour: Rational | null;
  readonly access: Rational | null;
  readonly index: number;
}

export interface MatingEnd {
  readonly position: string;
  readonly interface: string;
}

export interface Mating {
  readonly id: string;
  readonly ends: readonly [MatingEnd, MatingEnd];
  readonly adapters: number;
  /** How many such joints there are: the larger count of the two positions. */
  readonly quantity: number;
  readonly isHanded: boolean;
}

export interface Layout {
  readonly id: string;
  readonly name: Text | null;
  readonly positions: ReadonlyMap<string, Position>;
  readonly matings: ReadonlyMap<string, Mating>;
  readonly terms: ReadonlyMap<string, Term>;
  /** What terms are called; those that are not here, by their ids. */
  readonly termNames: ReadonlyMap<string, Text>;
  readonly checks: readonly Check[];
  readonly driveline: Driveline;
  readonly unmated: 'open' | 'ignore';
}

/** What stands at a position, for one hand. */
export type Occupant =
  | { readonly is: 'part'; readonly part: string }
  | { readonly is: 'empty' }
  /** Something may stand there; nobody recorded what. */
  | { readonly is: 'as-found' };

/**
 * What the works fitted is told by a fact that is not known of this vehicle. A value of the fact
 * that is not listed says nothing: what stands there then is not recorded. A fact that several
 * positions name is one unknown.
 */
export interface WorksOption {
  readonly is: 'option';
  readonly fact: string;
  readonly by: ReadonlyMap<string, Occupant>;
}

export interface Vehicle {
  readonly id: string;
  readonly make: string;
  readonly model: string;
  readonly variant: string | null;
  readonly built: readonly [string | null, string | null];
  /** Its own and those of the vehicle that it is like. */
  readonly facts: ReadonlyMap<string, string>;
  /** Those that the question says, which no record has to vouch for. */
  readonly saidFacts: ReadonlySet<string>;
  /** The identification numbers that it can have; none where they are not recorded. */
  readonly vin: readonly VinPattern[];
  readonly layout: Layout;
  readonly like: string | null;
  /** The more exact vehicles that took its place. */
  readonly replacedBy: readonly string[];
  readonly evidence: Evidence;
  /** By position, then by hand; a position that is not handed has one occupant. */
  readonly fitted: ReadonlyMap<string, FittedHere>;
  /** The positions of which a fact tells what is fitted, as if no record told the fact. */
  readonly options: ReadonlyMap<string, FittedHere>;
  readonly adapters: ReadonlyMap<string, readonly string[]>;
}

export type FittedHere =
  | { readonly hands: false; readonly occupant: Occupant | WorksOption }
  | {
      readonly hands: true;
      readonly left: Occupant | WorksOption;
      readonly right: Occupant | WorksOption;
    };

export interface Rule {
  readonly id: string;
  readonly when: Condition;
  readonly needs: Condition | null;
  readonly excludes: Condition | null;
  /** What only recommends or uses up never constrains. */
  readonly recommends: Recommendation | null;
  readonly consumes: Consumption | null;
  readonly note: Text | null;
  readonly caution: Text | null;
  readonly because: Text;
  readonly evidence: Evidence;
}

export interface Statement {
  readonly id: string;
  readonly part: string;
  readonly vehicles: readonly string[];
  readonly position: string;
  readonly with: ReadonlyMap<string, string>;
  readonly verdict: 'fits' | 'does-not-fit';
  readonly evidence: Evidence;
}

export interface Fact {
  readonly id: string;
  readonly name: Text;
  readonly values: ReadonlyMap<string, Text>;
  readonly how: Text | null;
}

export interface Catalogue {
  readonly lang: string;
  readonly currency: string | null;
  readonly evidence: Evidence;
  readonly couplings: Couplings;
  readonly facts: ReadonlyMap<string, Fact>;
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly roles: ReadonlyMap<string, Role>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly layouts: ReadonlyMap<string, Layout>;
  readonly vehicles: ReadonlyMap<string, Vehicle>;
  /** By layout: the rules that speak of it, in the order of the document. */
  readonly rules: ReadonlyMap<string, readonly Rule[]>;
  readonly statements: readonly Statement[];
  readonly lots: ReadonlyMap<string, Lot>;
  readonly works: ReadonlyMap<string, Work>;
  readonly rulesets: ReadonlyMap<string, Ruleset>;
  readonly offers: readonly OfferRecord[];
}
