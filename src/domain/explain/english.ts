/**
 * The sentences, in English. One per code, plain text, in words of the trade; both parts by
 * name, never the mating. Cautions defer to the maker, the law and qualified people.
 */

import type { CAUTION_GROUPS, Named, NamedValue, ReasonCode, ReasonData } from './reason.js';

export type Sentence = (data: ReasonData) => string;

export interface Words {
  readonly sentences: Readonly<Record<ReasonCode, Sentence>>;
  readonly cautions: Readonly<Record<(typeof CAUTION_GROUPS)[number], string>>;
  /** What to say for a failing check whose code a catalogue made up, without a text of its own. */
  readonly ownCode: Sentence;
}

/** `Gearbox “Six-speed, late”`; without a record, what the place is called. */
function label(named: Named | undefined): string {
  if (named === undefined) return 'it';
  const place = named.positionName;
  const side = named.hand === null ? '' : ` (${named.hand})`;
  if (named.partName === null) {
    return place === null ? 'a part' : `whatever is fitted as ${lower(place)}${side}`;
  }
  return place === null ? `“${named.partName}”` : `${place}${side} “${named.partName}”`;
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function parameter(value: NamedValue | undefined): string {
  return value?.parameterName ?? value?.parameter?.replaceAll('-', ' ') ?? 'value';
}

function shown(value: NamedValue | undefined): string {
  return value?.value ?? 'not recorded';
}

/** `register diameter 47 mm of Gearbox “…”`; a computed value has no part. */
function told(value: NamedValue | undefined): string {
  const said = `${parameter(value)} ${shown(value)}`;
  if (value === undefined || (value.part === null && value.position === null)) return said;
  return `${said} (${label(value)})`;
}

function lead({ says }: ReasonData): string {
  return says === undefined ? '' : `${says} `;
}

function face(named: Named | undefined): string {
  const kind = named?.kindName === null || named?.kindName === undefined ? '' : named.kindName;
  const name = named?.interface?.replaceAll('-', ' ') ?? 'face';
  return kind === '' ? `“${name}” face` : `“${name}” face (${kind})`;
}

function compared({ left, right }: ReasonData): string {
  return `${told(left)} against ${told(right)}`;
}

function silentSide({ left, right }: ReasonData): string {
  const missing = [left, right].filter((one) => one !== undefined && one.value === null);
  const names = missing.map((one) => `${parameter(one)} of ${label(one)}`);
  return names.length === 0 ? 'a value that is needed' : names.join(' and ');
}

function and(names: readonly string[]): string {
  return names.length <= 1
    ? names.join('')
    : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

const checks = {
  equal: (d: ReasonData) => `${lead(d)}${upper(parameter(d.left))} is the same: ${shown(d.left)}.`,
  'one-of': (d: ReasonData) => `${lead(d)}${upper(told(d.left))} is one of those that suit.`,
  clears: (d: ReasonData) =>
    `${lead(d)}${upper(compared(d))}: within limits${d.margin ? `, ${d.margin} to spare` : ''}.`,
  agrees: (d: ReasonData) => `${lead(d)}The two paths agree: mismatch ${d.margin ?? 'small'}.`,
  carries: (d: ReasonData) => `${lead(d)}${upper(told(d.left))} carries ${shown(d.right)}.`,
  'not-equal': (d: ReasonData) =>
    `${lead(d)}${upper(parameter(d.left))} differs: ${shown(d.left)} on ${label(d.left)}, ` +
    `${shown(d.right)} on ${label(d.right)}.`,
  'not-one-of': (d: ReasonData) => `${lead(d)}${upper(told(d.left))} is none of those that suit.`,
  'too-small': (d: ReasonData) => `${lead(d)}Too small: ${compared(d)}.`,
  'too-large': (d: ReasonData) => `${lead(d)}Too large: ${compared(d)}.`,
  'too-weak': (d: ReasonData) =>
    `${lead(d)}${upper(told(d.left))} is less than the ${shown(d.right)} that it must carry.`,
  'first-too-fast': (d: ReasonData) =>
    `${lead(d)}The first path turns ${d.margin ?? 'too much'} too fast: ${compared(d)}.`,
  'first-too-slow': (d: ReasonData) =>
    `${lead(d)}The first path turns too slowly, by ${d.margin ?? 'too much'}: ${compared(d)}.`,
  'out-of-range': (d: ReasonData) =>
    `${lead(d)}No value that can be ordered or set suits: ${compared(d)}.`,
  'not-recorded': (d: ReasonData) => `${lead(d)}Nobody has recorded ${silentSide(d)}.`,
  'not-precise-enough': (d: ReasonData) =>
    `${lead(d)}Recorded too coarsely to tell: ${compared(d)}.`,
  'evidence-too-weak': (d: ReasonData) =>
    `${lead(d)}Only inferred or reported, so it proves nothing yet: ${compared(d)}.`,
  'not-decided': (d: ReasonData) => `${lead(d)}This could not be decided exactly: ${compared(d)}.`,
  'too-many-choices': (d: ReasonData) => `${lead(d)}There are too many choices to try them all.`,
  'may-not-apply': (d: ReasonData) =>
    `${lead(d)}It is not known whether this applies: ${compared(d)}.`,
} as const;

const cautionsOfChecks = {
  'winds-up': (d: ReasonData) =>
    `The axles differ by ${d.margin ?? 'a little'}: the centre works all the time, or winds up.`,
  'may-wind-up': (d: ReasonData) =>
    `The axles may differ by up to ${d.margin ?? 'a little'}: the centre may work all the time.`,
  'off-road-only': (d: ReasonData) =>
    `The axles differ by ${d.margin ?? 'much'}: on loose ground only, not on the road.`,
  'may-be-off-road-only': (d: ReasonData) =>
    `The axles may differ by up to ${d.margin ?? 'much'}: perhaps for loose ground only.`,
  'caution-fails': (d: ReasonData) => d.text ?? 'One caution applies.',
  'caution-open': (d: ReasonData) => `Not known for certain: ${d.text ?? 'one caution'}`,
} as const;

const matings = {
  meets: (d: ReasonData) => `${label(d.a)} meets ${label(d.b)}.`,
  'as-built': (d: ReasonData) =>
    `${label(d.a)} and ${label(d.b)} are together as the works built them ` +
    `(${and(d.vehicles ?? [])}).`,
  'contradicts-as-built': (d: ReasonData) =>
    `By the records ${label(d.a)} and ${label(d.b)} do not meet, yet the works built them ` +
    `together (${and(d.vehicles ?? [])}): one of the records is wrong.`,
  'nothing-needed': (d: ReasonData) =>
    `${label(d.a)} and ${label(d.b)} need nothing of each other.`,
  'needed-empty': (d: ReasonData) =>
    `${label(d.part)} needs something at its ${face(d.part)}, and nothing is fitted there.`,
  'needed-absent': (d: ReasonData) =>
    `${label(d.part)} needs something at its ${face(d.part)}, and the other part has no such face.`,
  'face-not-recorded': (d: ReasonData) =>
    `Nobody has recorded the ${face(d.part)} of ${label(d.part)}.`,
  'different-kinds': (d: ReasonData) =>
    `${label(d.a)} has a ${d.a?.kindName ?? 'face'} where ${label(d.b)} has a ` +
    `${d.b?.kindName ?? 'face'}.`,
  'same-side': (d: ReasonData) =>
    `${label(d.a)} and ${label(d.b)} both have the same half of a ${d.a?.kindName ?? 'joint'}.`,
  stated: (d: ReasonData) =>
    `Stated to fit (${d.basis ?? 'stated'}${d.text === undefined ? '' : `, ${d.text}`}); ` +
    'the faces themselves are not all recorded.',
  'contradicts-statement': (d: ReasonData) =>
    `A statement and the records disagree (${d.statement ?? 'statement'}): ` +
    'not known until somebody has measured it.',
} as const;

const constraints = {
  'chain-broken': (d: ReasonData) =>
    `${lead(d)}The change leaves ${label(d.part)} empty, and the two paths need it.`,
  'fails-as-built-too': (d: ReasonData) =>
    `${lead(d)}By the records this fails as the works built it too, so the records are wrong.`,
  suits: (d: ReasonData) =>
    d.order === undefined ? 'One choice suits every place.' : `One choice suits: ${d.order}.`,
  'no-common-choice': (d: ReasonData) =>
    `No single choice suits every place: ${and(d.between ?? [])} leave nothing between them.`,
  'rule-met': (d: ReasonData) => d.because ?? 'A rule is met.',
  'rule-may-apply': (d: ReasonData) =>
    `It is not known whether this applies: ${d.because ?? 'a rule'}`,
  'rule-open': (d: ReasonData) => `Not known whether this is met: ${d.because ?? 'a rule'}`,
  'rule-needs': (d: ReasonData) => `Something else is needed: ${d.because ?? 'a rule'}`,
  'rule-excludes': (d: ReasonData) => `This does not go together: ${d.because ?? 'a rule'}`,
  'needed-place-empty': (d: ReasonData) =>
    `The change leaves ${lower(d.part?.positionName ?? 'a place')} empty, which must not be.`,
  'wrong-role': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” is no part for this place ` +
    `(${lower(d.part?.positionName ?? 'the place')}).`,
  'wrong-hand': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” is made for the other side.`,
  'no-place-to-span': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” fills several places, and this vehicle lacks one of them.`,
  'span-occupied': (d: ReasonData) =>
    `“${d.part?.partName ?? 'The part'}” fills several places, and another part stands in one.`,
  'no-mating-for-interface': (d: ReasonData) =>
    `${label(d.part)} needs something at its ${face(d.part)}, and this vehicle has no place for it.`,
  'stated-not-to-fit': (d: ReasonData) =>
    `Stated not to fit (${d.basis ?? 'stated'}${d.text === undefined ? '' : `, ${d.text}`}).`,
} as const;

const summaries = {
  fits: (d: ReasonData) => `Fits${d.names?.length ? ` as ${lower(and(d.names))}` : ''}.`,
  'fits-made-to-order': () => 'Fits, made to order: see what to order.',
  'fits-already-there': () => 'This part is on the vehicle already.',
  unknown: (d: ReasonData) =>
    d.count === undefined || d.count === 0
      ? 'Not known whether it fits.'
      : `Not known whether it fits: ${d.count === 1 ? 'one thing' : `${d.count} things`} to find out.`,
  'not-alone': () =>
    'Does not fit the vehicle as it stands; changes around it were not looked for.',
  'no-position': () => 'This vehicle has no place for such a part.',
  'right-as-it-stands': () => 'Nothing speaks against the vehicle as it stands.',
  'open-as-it-stands': () => 'Not everything about the vehicle as it stands is known.',
  'wrong-as-it-stands': () => 'Something on the vehicle as it stands does not go together.',
  'faces-meet': () => 'The two faces meet.',
  'faces-may-meet': () => 'Not known whether the two faces meet.',
  'faces-do-not-meet': () => 'The two faces do not meet.',
} as const;

const rest = {
  'kind-does-not-check': (d: ReasonData) =>
    `Not checked where ${label(d.a)} meets ${label(d.b)}: ${d.text ?? ''}.`,
  'position-not-recorded': (d: ReasonData) =>
    `Nobody has recorded what is fitted as ${lower(d.part?.positionName ?? 'a part')}.`,
  'face-on-no-mating': (d: ReasonData) =>
    `The ${face(d.part)} of ${label(d.part)} meets nothing on this vehicle; it is not needed.`,
  'measure-to-decide': (d: ReasonData) =>
    `Measure ${parameter(d.left)} of ${label(d.left)}${precision(d)}.`,
  'measure-to-order': (d: ReasonData) =>
    `Before ordering, measure ${parameter(d.left)} of ${label(d.left)}${precision(d)}.`,
  confirm: (d: ReasonData) =>
    `Confirm ${parameter(d.left)} of ${label(d.left)}: ${shown(d.left)} is only ${d.basis ?? 'said'}.`,
  'look-up': (d: ReasonData) => `Find out ${parameter(d.left)} of ${label(d.left)}.`,
  identify: (d: ReasonData) =>
    `Find out what is fitted as ${lower(d.part?.positionName ?? 'a part')}.`,
  'record-face': (d: ReasonData) => `Look at the ${face(d.part)} of ${label(d.part)}.`,
  'order-to-suit': (d: ReasonData) =>
    `Order ${label(d.left)} with ${parameter(d.left)} ${d.order ?? 'to suit'}.`,
  'order-after-measuring': (d: ReasonData) =>
    `Order ${label(d.left)} with ${parameter(d.left)} to suit, once measured.`,
  'use-alternative': (d: ReasonData) =>
    `Use ${d.order ?? 'the alternative'} of the ${face(d.part)} of ${label(d.part)}.`,
} as const;

function precision({ needed, tool }: ReasonData): string {
  const how = tool === undefined ? '' : ` with a ${tool}`;
  return needed === undefined ? how : `${how} to ${needed}`;
}

export const ENGLISH: Words = {
  sentences: {
    ...checks,
    ...cautionsOfChecks,
    ...matings,
    ...constraints,
    ...summaries,
    ...rest,
  },
  ownCode: (d) => `${lead(d)}${d.right === undefined ? told(d.left) : compared(d)}.`,
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
};
