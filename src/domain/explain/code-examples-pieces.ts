/**
 * Examples of what is said of a piece on the bench, of the demo world.
 */

import type { CodeExample, Teller } from './example-teller.js';
import { FACES, PARAMETERS, PARTS } from './example-world.js';
import type { NamedValue, PIECE_CODES } from './reason.js';

const nothing: CodeExample = () => ({});
const number: CodeExample = () => ({ text: 'CBL-2G-*' });

/** A face of the piece, of which nobody knows yet which part it is. */
const faceTold: CodeExample = (t) => {
  const { face, kind } = FACES.onHub;
  return { part: { ...t.nobody(), interface: face, kindName: t.text(kind) } };
};

const kindTold: CodeExample = (t) => {
  return { part: { ...t.nobody(), kindName: t.text(FACES.input.kind) } };
};

const faceOfPart: CodeExample = (t) => {
  return { part: { ...t.loose(PARTS.hub), interface: FACES.onHub.face, kindName: null } };
};

const onHub: CodeExample = (t) => ({
  part: { ...t.loose(PARTS.hub), interface: FACES.onHub.face, kindName: t.text(FACES.onHub.kind) },
});

function spigot(t: Teller, value: NamedValue['value']): NamedValue {
  const { interface: face, kindName } = t.face(PARTS.hub, FACES.onHub);
  return { ...t.term(PARAMETERS.spigot, value), interface: face, kindName };
}

const both =
  (recorded: string): CodeExample =>
  (t) => {
    const { part, partName } = t.loose(PARTS.hub);
    return {
      left: spigot(t, t.shown('58.96 ±0.03 mm', ['58.93', '58.99'])),
      right: { ...spigot(t, t.one(recorded, 'mm')), part, partName },
    };
  };

const next: CodeExample = (t) => ({ left: spigot(t, null) });

export const PIECE_EXAMPLES: Readonly<Record<(typeof PIECE_CODES)[number], CodeExample>> = {
  'one-part-left': nothing,
  'several-parts-left': () => ({ count: 3 }),
  'no-part-left': nothing,
  'match-is-no-proof': nothing,
  'number-of-no-part': number,
  'role-agrees': nothing,
  'other-role': nothing,
  'hand-agrees': nothing,
  'hand-not-recorded': nothing,
  'other-hand': nothing,
  'fitted-by-works': nothing,
  'not-fitted-by-works': nothing,
  'number-agrees': number,
  'number-not-recorded': number,
  'other-number': number,
  'value-agrees': both('58.95'),
  'value-not-recorded': next,
  'value-only-inferred': both('58.95'),
  'value-only-reported': both('59.6'),
  'value-differs': both('59.6'),
  'face-absent': faceOfPart,
  'face-there': onHub,
  'told-face-not-recorded': faceTold,
  'no-such-face': faceOfPart,
  'no-face-agrees': kindTold,
  'other-kind': onHub,
  'other-side': onHub,
  'tell-role': nothing,
  'tell-hand': nothing,
  'read-number': nothing,
  'find-next': (t) => {
    const { interface: face, kindName } = t.face(PARTS.boxSix, FACES.input);
    const left = { ...t.term(PARAMETERS.teeth, null), interface: face, kindName };
    return { left, tool: t.text({ en: 'count', de: 'Zählung' }) };
  },
  'measure-next': (t) => ({
    left: spigot(t, null),
    needed: t.give('0.3', 'mm'),
    tool: t.text({ en: 'vernier caliper', de: 'Messschieber mit Nonius' }),
  }),
};
