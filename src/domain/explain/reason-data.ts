/**
 * What the data of a reason has, by its code, as answers give it: fields that are always there, and
 * fields that are there where there is something to say. What a sentence names besides, and an
 * answer shows beside the reason, is not repeated in its data: both sides of a check, both ends of
 * a mating.
 *
 * Length: one table, with a line for each code.
 */

import type { PIECE_CODES, ReasonCode, ReasonData } from './reason.js';

export type DataField = keyof ReasonData;

export interface DataFields {
  readonly always: readonly DataField[];
  readonly perhaps: readonly DataField[];
}

function only(...always: readonly DataField[]): DataFields {
  return { always, perhaps: [] };
}

function perhaps(...fields: readonly DataField[]): DataFields {
  return { always: [], perhaps: fields };
}

const NOTHING = only();

/** Of a check that holds. */
const HOLDS = perhaps('says', 'margin', 'choices');

/**
 * Of a check that fails: as it says so itself, as a mating or a choice says it that rests on it,
 * and where a statement says the contrary.
 */
const FAILS = perhaps(
  ...(['says', 'margin', 'odd', 'part', 'between', 'choices'] as const),
  ...(['statement', 'basis', 'text'] as const),
);

/** Of a check that is open, said likewise. */
const OPEN = perhaps(...FAILS.perhaps, 'missing', 'vehicles');

/** Of a loop that holds and is warned of: the caution stands by itself. */
const WARNED: DataFields = { always: ['left', 'right', 'margin'], perhaps: ['says', 'choices'] };

const PART = only('part');

/** Of a mating that rests on no check. */
const MET: DataFields = { always: ['part'], perhaps: ['vehicles'] };

const BUILT = only('part', 'vehicles');

const RULE = only('because');

const STATED: DataFields = { always: ['statement', 'basis'], perhaps: ['text'] };

const CHOSEN: DataFields = { always: ['between'], perhaps: ['choices', 'says'] };

const TO_FIND: DataFields = {
  always: ['left', 'part'],
  perhaps: ['needed', 'tool', 'basis', 'text'],
};

/** What a way of doing something comes to. */
const COMES_TO = ['price', 'unpriced', 'facts'] as const;

const WAYS: DataFields = {
  always: ['count', 'places'],
  perhaps: [...COMES_TO, 'more', 'cheapest'],
};

const ROUTE: DataFields = { always: ['places'], perhaps: [...COMES_TO, 'text'] };

/** How many vehicles may be meant. */
const VEHICLES = only('count');

const CHANGES: DataFields = { always: ['places'], perhaps: ['names', 'text'] };

/** What would not hold without a line: its sentence, and both values. */
const LINE = perhaps('because', 'a', 'b', 'left', 'right', 'part', 'missing');

/** As the reason of a line too, where nothing else shows both ends. */
const NEEDED: DataFields = { always: ['part'], perhaps: ['a', 'b'] };

/** What is wanted, or the choice of it. */
const WANTED = perhaps('part', 'names');

/** What the check says of itself, where it has words. */
const WANTED_LOAD: DataFields = { always: ['asked'], perhaps: ['text'] };

const DEMANDED_CHECK: DataFields = { always: ['text'], perhaps: ['because'] };

const LIMIT = only('asked');

const LIMIT_OUT: DataFields = { always: ['asked'], perhaps: ['takes'] };

/** What stays, and both where either side has its own. */
const KEPT: DataFields = { always: ['part'], perhaps: ['names'] };

const KEPT_BY_RULES: DataFields = { always: ['part', 'text'], perhaps: ['names'] };

/** What would stand where, and what is wrong then. */
const IN_THE_WAY = perhaps('because', 'names');

const WAY_OUT: DataFields = { always: ['names', 'places'], perhaps: [...COMES_TO] };

const TO_IDENTIFY = only('left', 'part');

/** A measured value beside the recorded one. */
const BOTH = only('left', 'right');

const NUMBER = only('text');

/** A parameter of a face, to be found out. */
const NEXT: DataFields = { always: ['left'], perhaps: ['needed', 'tool'] };

const PIECE_DATA: Readonly<Record<(typeof PIECE_CODES)[number], DataFields>> = {
  'one-part-left': NOTHING,
  'several-parts-left': only('count'),
  'no-part-left': NOTHING,
  'match-is-no-proof': NOTHING,
  'number-of-no-part': NUMBER,
  'role-agrees': NOTHING,
  'other-role': NOTHING,
  'hand-agrees': NOTHING,
  'hand-not-recorded': NOTHING,
  'other-hand': NOTHING,
  'fitted-by-works': NOTHING,
  'not-fitted-by-works': NOTHING,
  'number-agrees': NUMBER,
  'number-not-recorded': NUMBER,
  'other-number': NUMBER,
  'value-agrees': BOTH,
  'value-not-recorded': only('left'),
  'value-only-inferred': BOTH,
  'value-only-reported': BOTH,
  'value-differs': BOTH,
  'face-absent': PART,
  'face-there': PART,
  'told-face-not-recorded': PART,
  'no-such-face': PART,
  'no-face-agrees': PART,
  'other-kind': PART,
  'other-side': PART,
  'tell-role': NOTHING,
  'tell-hand': NOTHING,
  'read-number': NOTHING,
  'find-next': NEXT,
  'measure-next': NEXT,
};

export const REASON_DATA: Readonly<Record<ReasonCode, DataFields>> = {
  equal: HOLDS,
  'one-of': HOLDS,
  clears: HOLDS,
  coincides: HOLDS,
  agrees: HOLDS,
  carries: HOLDS,
  'not-equal': FAILS,
  'not-one-of': FAILS,
  'too-small': FAILS,
  'too-large': FAILS,
  'too-weak': FAILS,
  'points-apart': FAILS,
  'first-too-fast': FAILS,
  'first-too-slow': FAILS,
  'not-recorded': OPEN,
  'not-precise-enough': OPEN,
  'evidence-too-weak': OPEN,
  'not-decided': OPEN,
  'too-many-choices': OPEN,
  'may-not-apply': OPEN,
  'winds-up': WARNED,
  'may-wind-up': WARNED,
  'off-road-only': WARNED,
  'may-be-off-road-only': WARNED,
  'caution-fails': { always: ['text'], perhaps: ['says', 'margin', 'odd'] },
  'caution-open': { always: ['text'], perhaps: ['says', 'margin', 'odd', 'basis', 'missing'] },
  'engineer-signs': only('text'),
  'workshop-signs': only('text'),
  'work-first': only('text'),
  meets: { always: ['part'], perhaps: ['adapters', 'vehicles'] },
  'as-built': BUILT,
  'contradicts-as-built': BUILT,
  'nothing-needed': MET,
  'needed-empty': NEEDED,
  'needed-absent': NEEDED,
  'face-not-recorded': MET,
  'different-kinds': PART,
  'same-side': PART,
  stated: OPEN,
  'contradicts-statement': OPEN,
  'chain-broken': PART,
  'fails-as-built-too': FAILS,
  'told-by-fact': only('names'),
  'same-for-each-fact': only('names', 'text'),
  suits: CHOSEN,
  'no-common-choice': CHOSEN,
  'rule-met': RULE,
  'rule-may-apply': RULE,
  'rule-open': RULE,
  'rule-needs': RULE,
  'rule-excludes': RULE,
  'needed-place-empty': PART,
  'wrong-role': PART,
  'wrong-hand': PART,
  'no-place-to-span': PART,
  'span-occupied': PART,
  'no-mating-for-interface': PART,
  'stated-not-to-fit': STATED,
  'stated-before-work': STATED,
  fits: perhaps('names', 'count'),
  'fits-made-to-order': perhaps('names', 'count'),
  'fits-already-there': perhaps('names'),
  'fits-once-signed': only('names', 'text'),
  unknown: { always: ['count'], perhaps: ['names'] },
  'not-alone': NOTHING,
  'fits-with-changes': CHANGES,
  'fits-unless-alone': CHANGES,
  'may-fit-with-changes': { always: ['places'], perhaps: ['facts'] },
  'search-cut-short': NOTHING,
  'does-not-fit': NOTHING,
  'no-position': NOTHING,
  'goes-between': NOTHING,
  depends: VEHICLES,
  'each-fits': VEHICLES,
  'each-fits-with-changes': VEHICLES,
  'each-unknown': VEHICLES,
  'none-fits': VEHICLES,
  'too-many-vehicles': VEHICLES,
  'right-as-it-stands': NOTHING,
  'open-as-it-stands': NOTHING,
  'wrong-as-it-stands': NOTHING,
  'faces-meet': NOTHING,
  'faces-may-meet': NOTHING,
  'faces-do-not-meet': NOTHING,
  'ways-proven': WAYS,
  'ways-open': WAYS,
  'ways-so-far': WAYS,
  'nothing-to-change': NOTHING,
  'no-way': NOTHING,
  'no-way-together': only('count'),
  'no-way-so-far': NOTHING,
  'each-proven': VEHICLES,
  'each-open': VEHICLES,
  'no-way-for-any': VEHICLES,
  'ways-depend': VEHICLES,
  'too-many-to-solve': VEHICLES,
  'no-such-place': NOTHING,
  'route-proven': ROUTE,
  'route-open': ROUTE,
  wanted: NOTHING,
  avoided: LINE,
  'mating-fails': LINE,
  rule: LINE,
  loop: LINE,
  load: LINE,
  check: LINE,
  place: LINE,
  limit: LINE,
  'becomes-open': LINE,
  'present-fails': LINE,
  'adapter-avoided': LINE,
  'donor-content': only('text'),
  consumed: perhaps('because'),
  recommended: perhaps('because'),
  substitute: PART,
  alternative: { always: ['part', 'count'], perhaps: ['price'] },
  'in-the-way': perhaps('part'),
  'taken-out': perhaps('part'),
  'demand-part': WANTED,
  'demand-lot': only('text'),
  'demand-load': WANTED_LOAD,
  'demand-condition': PART,
  'demand-present': NOTHING,
  'demand-keep': KEPT,
  'demand-avoid-part': PART,
  'demand-avoid-supplier': only('text'),
  'demand-avoid-condition': PART,
  'demand-cost': LIMIT,
  'demand-places': LIMIT,
  'demand-hours': LIMIT,
  'demand-days': LIMIT,
  'demand-stock': NOTHING,
  'demand-torque': LIMIT,
  'demand-ruleset-keep': KEPT_BY_RULES,
  'demand-ruleset-check': DEMANDED_CHECK,
  'demand-ruleset-rest': only('text'),
  'demand-unknowns': NOTHING,
  'drop-part': WANTED,
  'drop-lot': only('text'),
  'drop-load': WANTED_LOAD,
  'drop-condition': PART,
  'drop-present': NOTHING,
  'drop-keep': KEPT,
  'drop-avoid-part': PART,
  'drop-avoid-supplier': only('text'),
  'drop-avoid-condition': PART,
  'drop-cost': LIMIT_OUT,
  'drop-places': LIMIT_OUT,
  'drop-hours': LIMIT_OUT,
  'drop-days': LIMIT_OUT,
  'drop-stock': NOTHING,
  'drop-torque': LIMIT,
  'drop-ruleset-keep': KEPT_BY_RULES,
  'drop-ruleset-check': DEMANDED_CHECK,
  'drop-ruleset-rest': only('text'),
  'drop-unknowns': NOTHING,
  'in-the-way-fails': IN_THE_WAY,
  'in-the-way-open': IN_THE_WAY,
  'way-out-proven': WAY_OUT,
  'way-out-open': WAY_OUT,
  'way-out-so-far': only('names'),
  'place-emptied': PART,
  'joint-lost': only('a', 'b'),
  'value-lower': only('left', 'right'),
  'rating-unknown': only('left', 'right'),
  'kind-does-not-check': only('a', 'b', 'text'),
  'position-not-recorded': PART,
  'face-on-no-mating': PART,
  'measure-to-decide': TO_FIND,
  'measure-to-order': TO_FIND,
  confirm: TO_FIND,
  'look-up': TO_FIND,
  identify: TO_IDENTIFY,
  'record-face': TO_IDENTIFY,
  'ask-fact': TO_FIND,
  'order-to-suit': only('left', 'order'),
  'order-after-measuring': only('left'),
  ...PIECE_DATA,
};

/** Of a code that a catalogue or a kind gives a check for where it fails. */
export const OWN_CODE_DATA: DataFields = FAILS;

export function dataFieldsOf(code: string): DataFields {
  const known = Object.entries(REASON_DATA).find(([own]) => own === code);
  return known?.[1] ?? OWN_CODE_DATA;
}
