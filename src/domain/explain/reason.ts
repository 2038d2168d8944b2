/**
 * A reason is a code with data: programs read these, people read the sentence that `words.ts`
 * makes of them. Codes are stable. No decision is made here.
 *
 * Length: one list of codes for each group.
 */

import { WHY_CODES } from '../kit/route.js';

/** A value as people read it, and exactly: low = high where it is exact. */
export interface ShownValue {
  /** Null where nothing is recorded. */
  readonly text: string | null;
  /**
   * Decimal or fraction in `unit`; null for a code, and where there is no end. The least that the
   * value can be, or what it comes arbitrarily near to: an end need not belong to the set.
   */
  readonly low: string | null;
  readonly high: string | null;
  /** Empty for pure numbers and codes. */
  readonly unit: string;
}

/** A point in the plane of a face. */
export interface ShownPoint {
  readonly text: string;
  readonly x: ShownValue;
  readonly y: ShownValue;
}

/** A part at its place, as sentences name it. */
export interface Named {
  readonly position: string | null;
  readonly positionName: string | null;
  readonly hand: 'left' | 'right' | null;
  readonly part: string | null;
  readonly partName: string | null;
  readonly interface: string | null;
  /** The kind of interface, in words, where the face is recorded. */
  readonly kindName: string | null;
}

/** One value of a check, as sentences name it. */
export interface NamedValue extends Named {
  readonly parameter: string | null;
  readonly parameterName: string | null;
  /** As recorded, or as computed; null where it is not recorded, or not known yet. */
  readonly value: ShownValue | null;
}

export interface ReasonData {
  readonly left?: NamedValue;
  readonly right?: NamedValue;
  /** What a check needs and nobody recorded. */
  readonly missing?: readonly NamedValue[];
  /** What one may set, order or pick, with the values that suit; null where it must be measured. */
  readonly choices?: readonly NamedValue[];
  /** Of points that do not all meet, one that has no partner, and how far the nearest is. */
  readonly odd?: {
    readonly of: 'left' | 'right';
    readonly point: ShownPoint;
    readonly apart?: ShownValue;
  };
  /** What the check says of itself, in words of the trade. */
  readonly says?: string;
  readonly a?: Named;
  readonly b?: Named;
  readonly adapters?: readonly string[];
  readonly part?: Named;
  /** In one number: the greatest mismatch of a loop, the least reserve otherwise. */
  readonly margin?: ShownValue;
  readonly vehicles?: readonly string[];
  readonly basis?: string;
  readonly because?: string;
  readonly statement?: string;
  readonly between?: readonly string[];
  /** What to order: the text lies within what suits, the ends are all that suits. */
  readonly order?: ShownValue;
  readonly text?: string;
  readonly count?: number;
  /** How finely to measure: how far a reading may be off, to either side. */
  readonly needed?: ShownValue;
  readonly tool?: string;
  readonly names?: readonly string[];
  /** How many places of the vehicle change. */
  readonly places?: number;
  /** How many things have to be found out. */
  readonly facts?: number;
  /** What it costs, as far as prices are known. */
  readonly price?: ShownValue;
  /** A limit, as it was set. */
  readonly asked?: ShownValue;
  /** What it takes of what was limited. */
  readonly takes?: ShownValue;
  /** How many lines have no price. */
  readonly unpriced?: number;
  /** There are more ways than are counted. */
  readonly more?: true;
  /** No other way costs less. */
  readonly cheapest?: true;
}

export interface Reason {
  readonly code: string;
  readonly data: ReasonData;
}

/** Codes of single checks. A kind or a layout can give a failing check a code of its own. */
export const CHECK_CODES = [
  'equal',
  'one-of',
  'clears',
  'coincides',
  'agrees',
  'carries',
  'not-equal',
  'not-one-of',
  'too-small',
  'too-large',
  'too-weak',
  'points-apart',
  'first-too-fast',
  'first-too-slow',
  'not-recorded',
  'not-precise-enough',
  'evidence-too-weak',
  'not-decided',
  'too-many-choices',
  'may-not-apply',
] as const;

/** What is warned of although it holds. */
export const CAUTION_CODES = [
  'winds-up',
  'may-wind-up',
  'off-road-only',
  'may-be-off-road-only',
  'caution-fails',
  'caution-open',
  'engineer-signs',
  'workshop-signs',
  'work-first',
] as const;

/** Codes of matings, beside those of the check that decides one. */
export const MATING_CODES = [
  'meets',
  'as-built',
  'contradicts-as-built',
  'nothing-needed',
  'needed-empty',
  'needed-absent',
  'face-not-recorded',
  'different-kinds',
  'same-side',
  'stated',
  'contradicts-statement',
] as const;

export const CONSTRAINT_CODES = [
  'chain-broken',
  'fails-as-built-too',
  'told-by-fact',
  'same-for-each-fact',
  'suits',
  'no-common-choice',
  'rule-met',
  'rule-may-apply',
  'rule-open',
  'rule-needs',
  'rule-excludes',
  'needed-place-empty',
  'wrong-role',
  'wrong-hand',
  'no-place-to-span',
  'span-occupied',
  'no-mating-for-interface',
  'stated-not-to-fit',
  'stated-before-work',
] as const;

export const SUMMARY_CODES = [
  'fits',
  'fits-made-to-order',
  'fits-already-there',
  'fits-once-signed',
  'unknown',
  'not-alone',
  'fits-with-changes',
  'fits-unless-alone',
  'may-fit-with-changes',
  'search-cut-short',
  'does-not-fit',
  'no-position',
  'goes-between',
  'depends',
  'each-fits',
  'each-fits-with-changes',
  'each-unknown',
  'none-fits',
  'too-many-vehicles',
  'right-as-it-stands',
  'open-as-it-stands',
  'wrong-as-it-stands',
  'faces-meet',
  'faces-may-meet',
  'faces-do-not-meet',
] as const;

/** Of the answer to a kit question, and of each route in it. */
export const KIT_CODES = [
  'ways-proven',
  'ways-open',
  'ways-so-far',
  'nothing-to-change',
  'no-way',
  'no-way-together',
  'no-way-so-far',
  'each-proven',
  'each-open',
  'no-way-for-any',
  'ways-depend',
  'too-many-to-solve',
  'no-such-place',
  'route-proven',
  'route-open',
] as const;

/** Why a line of a route is there; a needed face that meets nothing is said as in a mating. */
export const LINE_CODES = WHY_CODES.filter((code) => code !== 'needed-empty');

/** What a question demands, and the same taken back. */
export const DEMAND_CODES = [
  'demand-part',
  'demand-lot',
  'demand-load',
  'demand-condition',
  'demand-present',
  'demand-keep',
  'demand-avoid-part',
  'demand-avoid-supplier',
  'demand-avoid-condition',
  'demand-cost',
  'demand-places',
  'demand-hours',
  'demand-days',
  'demand-stock',
  'demand-torque',
  'demand-ruleset-keep',
  'demand-ruleset-check',
  'demand-ruleset-rest',
  'demand-unknowns',
  'drop-part',
  'drop-lot',
  'drop-load',
  'drop-condition',
  'drop-present',
  'drop-keep',
  'drop-avoid-part',
  'drop-avoid-supplier',
  'drop-avoid-condition',
  'drop-cost',
  'drop-places',
  'drop-hours',
  'drop-days',
  'drop-stock',
  'drop-torque',
  'drop-ruleset-keep',
  'drop-ruleset-check',
  'drop-ruleset-rest',
  'drop-unknowns',
] as const;

/** Why demands contradict each other, and what would help. */
export const CONFLICT_CODES = [
  'in-the-way-fails',
  'in-the-way-open',
  'way-out-proven',
  'way-out-open',
  'way-out-so-far',
] as const;

/** What would do in place of the part of a line. */
export const INSTEAD_CODES = ['substitute', 'alternative'] as const;

/** What the vehicle has before a change and no more after it. */
export const LOSS_CODES = ['place-emptied', 'joint-lost', 'value-lower', 'rating-unknown'] as const;

/** What an answer did not look at. */
export const NOT_CHECKED_CODES = [
  'kind-does-not-check',
  'position-not-recorded',
  'face-on-no-mating',
] as const;

export const MEASURE_CODES = [
  'measure-to-decide',
  'measure-to-order',
  'confirm',
  'look-up',
  'identify',
  'record-face',
  'ask-fact',
] as const;

export const ORDER_CODES = ['order-to-suit', 'order-after-measuring'] as const;

/** Of a piece on the bench: which parts it can be, why, and what to find out next. */
export const PIECE_CODES = [
  'one-part-left',
  'several-parts-left',
  'no-part-left',
  'match-is-no-proof',
  'number-of-no-part',
  'role-agrees',
  'other-role',
  'hand-agrees',
  'hand-not-recorded',
  'other-hand',
  'fitted-by-works',
  'not-fitted-by-works',
  'number-agrees',
  'number-not-recorded',
  'other-number',
  'value-agrees',
  'value-not-recorded',
  'value-only-inferred',
  'value-only-reported',
  'value-differs',
  'face-absent',
  'face-there',
  'told-face-not-recorded',
  'no-such-face',
  'no-face-agrees',
  'other-kind',
  'other-side',
  'tell-role',
  'tell-hand',
  'read-number',
  'find-next',
  'measure-next',
] as const;

/** Caution groups that roles and kinds name, and the two that every answer may carry. */
export const CAUTION_GROUPS = [
  'general',
  'driveline',
  'brakes',
  'steering',
  'suspension',
  'wheels',
  'fuel',
  'electrical',
] as const;

/** All codes of reasons, by what they are of, in the order in which people read them. */
export const CODE_GROUPS = {
  checks: CHECK_CODES,
  cautions: CAUTION_CODES,
  matings: MATING_CODES,
  constraints: CONSTRAINT_CODES,
  summaries: SUMMARY_CODES,
  kits: KIT_CODES,
  lines: LINE_CODES,
  instead: INSTEAD_CODES,
  demands: DEMAND_CODES,
  conflicts: CONFLICT_CODES,
  losses: LOSS_CODES,
  'not-checked': NOT_CHECKED_CODES,
  measures: MEASURE_CODES,
  orders: ORDER_CODES,
  pieces: PIECE_CODES,
} as const;

export type CodeGroup = keyof typeof CODE_GROUPS;
export type ReasonCode = (typeof CODE_GROUPS)[CodeGroup][number];

/** Beside reasons answers carry the usual cautions, and what built-in kinds give their checks. */
export type ListedGroup = CodeGroup | 'usual-cautions' | 'kinds';

/** In the order of a list of all codes. */
export const LISTED_GROUPS: readonly ListedGroup[] = [
  ...(Object.keys(CODE_GROUPS) as CodeGroup[]),
  'usual-cautions',
  'kinds',
];

/** All codes that answers can carry, beside those that a catalogue gives its own checks. */
export const REASON_CODES: readonly ReasonCode[] = Object.values(CODE_GROUPS).flat();
