/**
 * The sentences, in English. One per code, plain text, in words of the trade; both parts by
 * name, never the mating. Cautions defer to the maker, the law and qualified people.
 *
 * Length: one table, with a sentence for each code.
 */

import { ENGLISH_CONFLICTS } from './english-conflicts.js';
import { ENGLISH_COMPARED, ENGLISH_KITS } from './english-kits.js';
import {
  and,
  compared,
  face,
  fittedAs,
  label,
  lead,
  lower,
  madeToSuit,
  ofPart,
  oneOf,
  owned,
  parameter,
  places,
  precision,
  quoted,
  shown,
  things,
  told,
  unrecorded,
  upper,
} from './english-phrases.js';
import { ENGLISH_PIECES } from './english-pieces.js';
import { ENGLISH_NUMBERS } from './number-words.js';
import {
  amount,
  emptyEnd,
  isOfPart,
  isPart,
  isSameParameter,
  knownSide,
  mismatch,
  otherEnd,
} from './phrases.js';
import type { NamedValue, ReasonData } from './reason.js';
import type { Words } from './sentence.js';
import { ENGLISH_VEHICLES } from './vehicle-words.js';

/** The name of one path of a loop: its term, or which of the two it is. */
function path(value: NamedValue | undefined, otherwise: string): string {
  return value?.parameterName ?? otherwise;
}

const checks = {
  equal: (d: ReasonData) =>
    `${lead(d)}${upper(parameter(d.left))} is the same${onBoth(d)}: ${shown(d.left)}.`,
  'one-of': (d: ReasonData) => `${lead(d)}${upper(told(d.left))} is one of those that suit.`,
  clears: (d: ReasonData) =>
    d.choices === undefined
      ? `${lead(d)}${upper(compared(d))}: within limits${spare(d)}.`
      : `${lead(d)}It suits with ${madeToSuit(d)}.`,
  coincides: (d: ReasonData) =>
    `${lead(d)}${upper(parameter(d.left))}: all ${shown(d.left)}${ofPart(d.left)} lie on those ` +
    `of ${isOfPart(d.right) ? label(d.right) : 'the other'}.`,
  agrees: (d: ReasonData) =>
    `${lead(d)}${upper(path(d.left, 'the first path'))} and ${path(d.right, 'the second path')} ` +
    `agree${within(d)}.`,
  carries: (d: ReasonData) => `${lead(d)}${upper(told(d.left))} is enough for ${owned(d.right)}.`,
  'not-equal': (d: ReasonData) =>
    `${lead(d)}${upper(parameter(d.left))} differs: ${shown(d.left)} on ${label(d.left)}, ` +
    `${shown(d.right)} on ${label(d.right)}.`,
  'not-one-of': (d: ReasonData) => `${lead(d)}${upper(told(d.left))} is none of those that suit.`,
  'too-small': (d: ReasonData) => `${lead(d)}Too small: ${compared(d)}.`,
  'too-large': (d: ReasonData) => `${lead(d)}Too large: ${compared(d)}.`,
  'too-weak': (d: ReasonData) =>
    `${lead(d)}${upper(told(d.left))} is less than what it must bear: ${owned(d.right)}.`,
  'points-apart': (d: ReasonData) => `${lead(d)}${upper(compared(d))}${oddOne(d)}.`,
  'first-too-fast': (d: ReasonData) =>
    `${lead(d)}The ${path(d.left, 'first path')} runs ${amount(d.margin, 'far')} too fast for ` +
    `the ${path(d.right, 'second path')}.`,
  'first-too-slow': (d: ReasonData) =>
    `${lead(d)}The ${path(d.left, 'first path')} runs ${amount(d.margin, 'far')} too slowly for ` +
    `the ${path(d.right, 'second path')}.`,
  'not-recorded': (d: ReasonData) =>
    `${lead(d)}Nobody has recorded ${unrecorded(d)}${toCompare(d)}.`,
  'not-precise-enough': (d: ReasonData) =>
    `${lead(d)}Recorded too coarsely to tell: ${compared(d)}.`,
  'evidence-too-weak': (d: ReasonData) =>
    `${lead(d)}${upper(compared(d))}: only ${basis(d, 'inferred or reported')}, which proves ` +
    'nothing until somebody confirms it.',
  'not-decided': (d: ReasonData) => `${lead(d)}This could not be decided exactly: ${compared(d)}.`,
  'too-many-choices': (d: ReasonData) =>
    `${lead(d)}There are too many choices to try them all${forParts(d)}.`,
  'may-not-apply': (d: ReasonData) =>
    `${lead(d)}It is not known whether this applies: ${compared(d)}.`,
} as const;

/** ` on “…” and “…”`, where both values are of parts. */
function onBoth({ left, right }: ReasonData): string {
  return isOfPart(left) && isOfPart(right) ? ` on ${label(left)} and ${label(right)}` : '';
}

/** ` for “…” and “…”`: the parts that there is something to choose of. */
function forParts({ left, right }: ReasonData): string {
  const parts = [left, right].filter(isOfPart).map(label);
  return parts.length === 0 ? '' : ` for ${and([...new Set(parts)])}`;
}

/** What is recorded, where the other value is what is missing. */
function toCompare(d: ReasonData): string {
  const known = knownSide(d);
  if (known === null) return '';
  return `, to compare with ${isSameParameter(d) ? owned(known) : told(known)}`;
}

/** Which point a person would look at first. */
function oddOne({ odd, left, right }: ReasonData): string {
  if (odd === undefined) return '';
  const { apart, point } = odd;
  const far = apart?.text == null ? 'has none beside it' : `has none nearer than ${apart.text}`;
  return `; the one at ${point.text} on ${label(odd.of === 'left' ? left : right)} ${far}`;
}

/** How much a check that holds has in reserve. */
function spare({ margin }: ReasonData): string {
  return margin === undefined ? '' : `, ${amount(margin, 'some')} to spare`;
}

/** How nearly the two paths of a loop agree. */
function within(d: ReasonData): string {
  const most = mismatch(d);
  return most === null ? '' : ` within ${most}`;
}

/** How a value or a statement is known. */
const BASES: Readonly<Record<string, string>> = {
  built: 'built so',
  measured: 'measured',
  drawing: 'from a drawing',
  maker: 'by the maker',
  inferred: 'inferred',
  reported: 'reported',
};

function basis({ basis: known }: ReasonData, otherwise: string): string {
  return BASES[known ?? ''] ?? otherwise;
}

const cautionsOfChecks = {
  'winds-up': (d: ReasonData) =>
    `The axles differ by ${amount(d.margin, 'a little')}: the centre works all the time, or ` +
    'winds up.',
  'may-wind-up': (d: ReasonData) =>
    `The axles may differ by up to ${amount(d.margin, 'a little')}: the centre may work all the ` +
    'time.',
  'off-road-only': (d: ReasonData) =>
    `The axles differ by ${amount(d.margin, 'much')}: on loose ground only, not on the road.`,
  'may-be-off-road-only': (d: ReasonData) =>
    `The axles may differ by up to ${amount(d.margin, 'much')}: perhaps for loose ground only.`,
  'caution-fails': (d: ReasonData) => d.text ?? 'One caution applies.',
  'caution-open': (d: ReasonData) => `Not known for certain: ${d.text ?? 'one caution'}`,
  'engineer-signs': (d: ReasonData) => `${quoted(d.text)}: an engineer must sign for the work.`,
  'workshop-signs': (d: ReasonData) => `${quoted(d.text)}: the workshop must sign for the work.`,
  'work-first': (d: ReasonData) => `${quoted(d.text)}: not before the work on it is done.`,
} as const;

const matings = {
  meets: (d: ReasonData) => `${upper(label(d.a))} meets ${label(d.b)}${through(d)}.`,
  'as-built': (d: ReasonData) =>
    `${upper(label(d.a))} and ${label(d.b)} are together as the works built them ` +
    `(${and(d.vehicles ?? [])}).`,
  'contradicts-as-built': (d: ReasonData) =>
    `By the records ${label(d.a)} and ${label(d.b)} do not meet, yet the works built them ` +
    `together (${and(d.vehicles ?? [])}): one of the records is wrong.`,
  'nothing-needed': (d: ReasonData) =>
    isPart(d.a) && isPart(d.b)
      ? `${upper(label(d.a))} and ${label(d.b)} need nothing of each other.`
      : `${upper(label(d.part))} needs nothing at its ${face(d.part)}.`,
  'needed-empty': (d: ReasonData) =>
    `${upper(label(d.part))} needs something at its ${face(d.part)}, and nothing is ` +
    `${fittedAs(emptyEnd(d))}.`,
  'needed-absent': (d: ReasonData) =>
    `${upper(label(d.part))} needs something at its ${face(d.part)}, and ` +
    `${otherPart(d, 'the other part')} has no such face.`,
  'face-not-recorded': (d: ReasonData) =>
    !isPart(d.part)
      ? `Nobody has recorded what is ${fittedAs(d.part)}.`
      : `Nobody has recorded the ${face(d.part)} of ${label(d.part)}${whereMet(d)}.`,
  'different-kinds': (d: ReasonData) =>
    `${upper(label(d.a))} has ${oneOf(d.a?.kindName)} where ${label(d.b)} has ` +
    `${oneOf(d.b?.kindName)}.`,
  'same-side': (d: ReasonData) =>
    `${upper(label(d.a))} and ${label(d.b)} both have the same half of ` +
    `${oneOf(d.a?.kindName ?? 'joint')}.`,
  stated: (d: ReasonData) =>
    `${statedOf(d)} (${source(d)}); the faces themselves are not all recorded.`,
  'contradicts-statement': (d: ReasonData) =>
    `A statement (${d.text ?? basis(d, 'without a source')}) and the records disagree: ` +
    `not known until it has been measured.${disputed(d)}`,
} as const;

function through({ adapters = [] }: ReasonData): string {
  return adapters.length === 0 ? '' : ` through ${and(adapters.map((name) => `“${name}”`))}`;
}

/** The part at the other end of a mating; a phrase where there is none, or nobody knows it. */
function otherPart(d: ReasonData, otherwise: string): string {
  const other = otherEnd(d);
  return isPart(other) ? label(other) : otherwise;
}

function statedOf({ a, b }: ReasonData): string {
  return isPart(a) && isPart(b)
    ? `${upper(label(a))} and ${label(b)} are stated to fit`
    : 'Stated to fit';
}

function whereMet(d: ReasonData): string {
  const other = otherPart(d, '');
  return other === '' ? '' : `, where ${other} would meet it`;
}

/** On what a statement rests, and where it stands. */
function source(d: ReasonData): string {
  const known = basis(d, 'stated');
  return d.text === undefined ? known : `${known}, ${d.text}`;
}

/** What the records say, where a statement says the contrary. */
function disputed(d: ReasonData): string {
  if (d.left === undefined || d.right === undefined) return '';
  return ` ${lead(d)}${upper(compared(d))}.`;
}

const constraints = {
  'chain-broken': (d: ReasonData) =>
    `The change leaves nothing ${fittedAs(d.part)}, and paths that must agree lead through there.`,
  'fails-as-built-too': (d: ReasonData) =>
    `${lead(d)}By the records this fails as the works built it too, so the records are ` +
    `wrong${d.left === undefined || d.right === undefined ? '' : `: ${compared(d)}`}.`,
  'told-by-fact': (d: ReasonData) =>
    `It hangs on what nobody has told of this vehicle: ${and(d.names ?? [])}.`,
  'same-for-each-fact': (d: ReasonData) =>
    `The same for each answer to ${and(d.names ?? [])}; for one of them: ${d.text ?? ''}`,
  suits: (d: ReasonData) =>
    d.choices === undefined ? 'One choice suits every place.' : `It suits with ${madeToSuit(d)}.`,
  'no-common-choice': (d: ReasonData) =>
    `${lead(d)}No ${and((d.choices ?? []).map((one) => `${parameter(one)}${ofPart(one)}`))} ` +
    'does both.',
  'rule-met': (d: ReasonData) => d.because ?? 'A rule is met.',
  'rule-may-apply': (d: ReasonData) =>
    `It is not known whether this applies: ${d.because ?? 'a rule'}`,
  'rule-open': (d: ReasonData) => `Not known whether this is met: ${d.because ?? 'a rule'}`,
  'rule-needs': (d: ReasonData) => `Something else is needed: ${d.because ?? 'a rule'}`,
  'rule-excludes': (d: ReasonData) => `This does not go together: ${d.because ?? 'a rule'}`,
  'needed-place-empty': (d: ReasonData) =>
    `The change leaves nothing fitted as ${lower(d.part?.positionName ?? 'a part')}, and ` +
    'something must be.',
  'wrong-role': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” is no part for this place ` +
    `(${lower(d.part?.positionName ?? 'the place')}).`,
  'wrong-hand': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” is made for the other side, not for the ` +
    `${d.part?.hand ?? 'one where it is'}.`,
  'no-place-to-span': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” fills several places, and this vehicle lacks one of them.`,
  'span-occupied': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” fills several places, and another part stands in one.`,
  'no-mating-for-interface': (d: ReasonData) =>
    `${upper(label(d.part))} needs something at its ${face(d.part)}, and this vehicle has no ` +
    'place for it.',
  'stated-not-to-fit': (d: ReasonData) => `Stated not to fit (${source(d)}).`,
  'stated-before-work': (d: ReasonData) =>
    `As it was before the work it is stated not to fit (${source(d)}): not known until all of ` +
    'it has been measured.',
} as const;

/** Who reads the summary alone must not take the part for all that is needed. */
function together({ count }: ReasonData): string {
  if (count === undefined || count === 0) return '';
  return `, together with the ${count === 1 ? 'other part' : `${count} other parts`} named`;
}

const summaries = {
  fits: (d: ReasonData) => `Fits${places(d)}${together(d)}.`,
  'fits-made-to-order': (d: ReasonData) =>
    `Fits${places(d)}${together(d)}, made to order: see what to order.`,
  'fits-once-signed': (d: ReasonData) =>
    `Fits, once ${d.text === 'engineer' ? 'an engineer' : 'the workshop'} has signed off the ` +
    `work: ${and((d.names ?? []).map(quoted))}.`,
  'fits-already-there': (d: ReasonData) => `This part is on the vehicle already${places(d)}.`,
  unknown: (d: ReasonData) =>
    d.count === undefined || d.count === 0
      ? `Not known whether it fits${places(d)}.`
      : `Not known whether it fits${places(d)}: ${things(d.count)} to find out.`,
  'not-alone': () =>
    'Does not fit the vehicle as it stands; changes around it were not looked for.',
  'no-position': () => 'This vehicle has no place for such a part.',
  'goes-between': () =>
    'This part goes between two others: ask what stands beside it, with this as their adapter.',
  depends: (d: ReasonData) => `Depends on which of ${d.count ?? 0} vehicles it is.`,
  'each-fits': (d: ReasonData) => `Fits, whichever of ${d.count ?? 0} vehicles it is.`,
  'each-fits-with-changes': (d: ReasonData) =>
    `Fits with changes around it, whichever of ${d.count ?? 0} vehicles it is.`,
  'each-unknown': (d: ReasonData) =>
    `Not known whether it fits, whichever of ${d.count ?? 0} vehicles it is.`,
  'none-fits': (d: ReasonData) => `Does not fit, whichever of ${d.count ?? 0} vehicles it is.`,
  'too-many-vehicles': (d: ReasonData) =>
    `It could be any of ${d.count ?? 0} vehicles: say more of it to know whether this fits.`,
  'right-as-it-stands': () => 'Nothing speaks against the vehicle as it stands.',
  'open-as-it-stands': () => 'Not everything about the vehicle as it stands is known.',
  'wrong-as-it-stands': () => 'Something on the vehicle as it stands does not go together.',
  'faces-meet': () => 'The two faces meet.',
  'faces-may-meet': () => 'Not known whether the two faces meet.',
  'faces-do-not-meet': () => 'The two faces do not meet.',
} as const;

/** How a value is known, after "is only". */
const KNOWN_AS: Readonly<Record<string, string>> = {
  drawing: 'from a drawing',
  maker: 'the maker’s figure',
  inferred: 'inferred',
  reported: 'reported',
};

const rest = {
  'kind-does-not-check': (d: ReasonData) =>
    `Not checked where ${label(d.a)} meets ${label(d.b)}: ${d.text ?? ''}.`,
  'position-not-recorded': (d: ReasonData) =>
    `Nobody has recorded what is fitted as ${lower(d.part?.positionName ?? 'a part')}.`,
  'face-on-no-mating': (d: ReasonData) =>
    `The ${face(d.part)} of ${label(d.part)} meets nothing on this vehicle; it is not needed.`,
  'measure-to-decide': (d: ReasonData) =>
    `Measure the ${parameter(d.left)}${ofPart(d.left)}${precision(d)}.`,
  'measure-to-order': (d: ReasonData) =>
    `Before ordering, measure the ${parameter(d.left)}${ofPart(d.left)}${precision(d)}.`,
  confirm: (d: ReasonData) =>
    `Confirm the ${parameter(d.left)}${ofPart(d.left)}${precision(d)}: ${shown(d.left)} is only ` +
    `${KNOWN_AS[d.basis ?? ''] ?? 'said'}.`,
  'look-up': (d: ReasonData) =>
    `Find out the ${parameter(d.left)}${ofPart(d.left)}${precision(d)}.`,
  identify: (d: ReasonData) =>
    isPart(d.part)
      ? `Find out which part this is: ${label(d.part)}.`
      : `Find out what is ${fittedAs(d.part)}.`,
  'ask-fact': (d: ReasonData) =>
    `Find out: ${parameter(d.left)}.${d.text === undefined ? '' : ` ${d.text}`}`,
  'record-face': (d: ReasonData) => `Look at the ${face(d.part)} of ${label(d.part)}.`,
  'order-to-suit': (d: ReasonData) =>
    `Order ${label(d.left)} with a ${parameter(d.left)} of ${amount(d.order, 'what suits')}.`,
  'order-after-measuring': (d: ReasonData) =>
    `Order ${label(d.left)} with the ${parameter(d.left)} that suits, once measured.`,
} as const;

export const ENGLISH: Words = {
  sentences: {
    ...checks,
    ...cautionsOfChecks,
    ...matings,
    ...constraints,
    ...summaries,
    ...ENGLISH_CONFLICTS,
    ...ENGLISH_KITS,
    ...ENGLISH_PIECES,
    ...rest,
  },
  ownCode: (d) =>
    d.left === undefined
      ? (d.says ?? 'A check fails.')
      : `${lead(d)}${upper(d.right === undefined ? told(d.left) : compared(d))}.`,
  points: (count) => (count === 1 ? '1 point' : `${count} points`),
  partOfQuestion: (end) => `part ${end} of the question`,
  ofDonor: (place, hand, lot) =>
    `${place}${hand === null ? '' : ` (${hand})`} of the donor ‘${lot}’, not recorded`,
  cautions: {
    general:
      'The maker’s figures come first, local roadworthiness and competition rules decide, and a ' +
      'qualified person does the work and checks it.',
    driveline:
      'Driveline: support the vehicle on stands, use the maker’s tightening torques and new ' +
      'single-use fasteners, check fluid levels, and road-test at low speed first.',
    brakes:
      'Brakes: work by a qualified person only; bleed, check for leaks and test at low speed ' +
      'before the road. Never mix kinds of pipe flare or brake fluid.',
    steering:
      'Steering: work by a qualified person only; new split pins and nuts, alignment afterwards. ' +
      'No drilling, bending or welding of steering parts.',
    suspension:
      'Suspension: springs hold force, use the right tools; tighten at ride height to the ' +
      'maker’s torque; have the alignment checked.',
    wheels:
      'Wheels: all fasteners in place, of the right seat form and length, tightened by the ' +
      'maker’s figure and again after 50 to 100 km.',
    fuel: 'Fuel: no flames, no sparks, relieve the pressure first, check for leaks afterwards.',
    electrical: 'Electrical: disconnect the battery first; check every signal before driving.',
  },
  compared: ENGLISH_COMPARED,
  hands: { left: 'left', right: 'right' },
  noSuchFace: 'no such face',
  vehicles: ENGLISH_VEHICLES,
  numbers: ENGLISH_NUMBERS,
};
