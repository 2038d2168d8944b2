/**
 * What is said in English of a piece on the bench: which parts it can be, and why.
 */

import { face, oneOf, parameter, precision, shown, upper } from './english-phrases.js';
import type { NamedValue, PIECE_CODES, ReasonData } from './reason.js';
import type { Sentence } from './sentence.js';

/** ` at the “rear” face`; nothing for a value of the piece itself. */
function onFace(value: NamedValue | undefined): string {
  if (value?.interface != null) return ` at the ${face(value)}`;
  return value?.kindName == null ? '' : ` at ${oneOf(value.kindName)}`;
}

function valueAt(value: NamedValue | undefined): string {
  return `${parameter(value)}${onFace(value)}`;
}

/** What was told of a face whose name is not known. */
function toldFace({ part }: ReasonData): string {
  return part?.interface == null ? `${oneOf(part?.kindName)}` : `a ${face(part)}`;
}

function both(d: ReasonData): string {
  return `${upper(valueAt(d.right))}: measured ${shown(d.left)}, recorded ${shown(d.right)}`;
}

export const ENGLISH_PIECES = {
  'one-part-left': () => 'It can be one recorded part only.',
  'several-parts-left': (d) => `It can be any of ${d.count ?? 0} recorded parts.`,
  'no-part-left': () => 'It is none of the recorded parts, or something was misread.',
  'match-is-no-proof': () =>
    'That values agree proves no identity: another part, recorded or not, may measure the same.',
  'number-of-no-part': (d) => `No recorded part has the number ${d.text ?? ''}.`,
  'role-agrees': () => 'It is such a part.',
  'other-role': () => 'It is another sort of part.',
  'hand-agrees': () => 'It is made for that side.',
  'hand-not-recorded': () => 'It is recorded for neither side alone.',
  'other-hand': () => 'It is made for the other side.',
  'fitted-by-works': () => 'The works may have fitted it to that vehicle.',
  'not-fitted-by-works': () =>
    'No record says that the works fitted it to that vehicle; it may have come to it since.',
  'number-agrees': (d) => `It has the number ${d.text ?? ''}.`,
  'number-not-recorded': (d) => `Whether it has the number ${d.text ?? ''} is not recorded.`,
  'other-number': (d) => `The number ${d.text ?? ''} is of another part, and this one has its own.`,
  'value-agrees': (d) => `${both(d)}.`,
  'value-not-recorded': (d) => `Nothing is recorded to compare with: ${valueAt(d.left)}.`,
  'value-only-inferred': (d) => `${both(d)}, but that is only inferred.`,
  'value-only-reported': (d) => `${both(d)}, but that is only reported.`,
  'value-differs': (d) => `${both(d)}: that cannot be the same.`,
  'face-absent': (d) => `It has no ${face(d.part)} either.`,
  'face-there': (d) => `It has ${toldFace(d)}.`,
  'told-face-not-recorded': (d) => `Not recorded: ${toldFace(d)}.`,
  'no-such-face': (d) => `It has no ${face(d.part)}.`,
  'no-face-agrees': (d) => `None of its faces is ${toldFace(d)} as it was told.`,
  'other-kind': (d) => `Its ${face(d.part)} is of another kind.`,
  'other-side': (d) => `Its ${face(d.part)} is the other side of such a joint.`,
  'tell-role': () => 'Say what sort of part it is.',
  'tell-hand': () => 'Say for which side it is made.',
  'read-number': () => 'Read a number off it.',
  'find-next': (d) => `Find out the ${valueAt(d.left)}${precision(d)}.`,
  'measure-next': (d) => `Measure the ${valueAt(d.left)}${precision(d)}.`,
} as const satisfies Readonly<Record<(typeof PIECE_CODES)[number], Sentence>>;
