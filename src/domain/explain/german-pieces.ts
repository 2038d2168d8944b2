/**
 * What is said in German of a piece on the bench: which parts it can be, and why.
 */

import { face, parameter, precision, shown, start } from './german-phrases.js';
import type { Named, NamedValue, PIECE_CODES, ReasonData } from './reason.js';
import type { Sentence } from './sentence.js';

/** ` am Anschluss „…“ (…)`; nothing for a value of the piece itself. */
function onFace(value: NamedValue | undefined): string {
  const isOfFace = value?.interface != null || value?.kindName != null;
  return isOfFace ? ` am ${toldFace(value)}` : '';
}

function toldFace(named: Named | undefined): string {
  if (named?.interface != null) return face(named);
  return named?.kindName == null ? 'Anschluss' : `Anschluss der Art „${named.kindName}“`;
}

function valueAt(value: NamedValue | undefined): string {
  return `${parameter(value)}${onFace(value)}`;
}

function both(d: ReasonData): string {
  return `${start(valueAt(d.right))}: gemessen ${shown(d.left)}, erfasst ${shown(d.right)}`;
}

export const GERMAN_PIECES = {
  'one-part-left': () => 'Ein erfasstes Teil bleibt, das es sein kann.',
  'several-parts-left': (d) => `Es kann jedes von ${d.count ?? 0} erfassten Teilen sein.`,
  'no-part-left': () =>
    'Kein erfasstes Teil kann es sein: Etwas ist verlesen, oder es ist nicht erfasst.',
  'match-is-no-proof': () =>
    'Dass Werte übereinstimmen, beweist nicht, welches Teil es ist: Ein anderes, erfasst oder ' +
    'nicht, kann dieselben Maße haben.',
  'number-of-no-part': (d) => `Kein erfasstes Teil hat die Nummer ${d.text ?? ''}.`,
  'role-agrees': () => 'Es ist ein solches Teil.',
  'other-role': () => 'Es ist eine andere Art Teil.',
  'hand-agrees': () => 'Es ist für diese Seite gemacht.',
  'hand-not-recorded': () => 'Es ist für keine der beiden Seiten allein erfasst.',
  'other-hand': () => 'Es ist für die andere Seite gemacht.',
  'fitted-by-works': () => 'Ab Werk kann es in diesem Fahrzeug verbaut sein.',
  'not-fitted-by-works': () =>
    'Dass es ab Werk in diesem Fahrzeug verbaut ist, ist nicht erfasst; es kann seither dorthin ' +
    'gekommen sein.',
  'number-agrees': (d) => `Es hat die Nummer ${d.text ?? ''}.`,
  'number-not-recorded': (d) => `Ob es die Nummer ${d.text ?? ''} hat, ist nicht erfasst.`,
  'other-number': (d) =>
    `Die Nummer ${d.text ?? ''} gehört zu einem anderen Teil, und dieses hat eine eigene.`,
  'value-agrees': (d) => `${both(d)}.`,
  'value-not-recorded': (d) => `Zum Vergleich ist nichts erfasst: ${valueAt(d.left)}.`,
  'value-only-inferred': (d) => `${both(d)}, aber nur erschlossen.`,
  'value-only-reported': (d) => `${both(d)}, aber nur vom Hörensagen.`,
  'value-differs': (d) => `${both(d)}: Das kann nicht dasselbe sein.`,
  'face-absent': (d) => `Auch diesem Teil fehlt er: ${toldFace(d.part)}.`,
  'face-there': (d) => `Dieses Teil hat ihn: ${toldFace(d.part)}.`,
  'told-face-not-recorded': (d) => `Nicht erfasst: ${toldFace(d.part)}.`,
  'no-such-face': (d) => `Diesem Teil fehlt er: ${toldFace(d.part)}.`,
  'no-face-agrees': (d) => `Keiner seiner Anschlüsse ist, was gesagt ist: ${toldFace(d.part)}.`,
  'other-kind': (d) => `${start(face(d.part))} ist von anderer Art.`,
  'other-side': (d) => `${start(face(d.part))} ist die andere Seite einer solchen Verbindung.`,
  'tell-role': () => 'Zu sagen: was für ein Teil es ist.',
  'tell-hand': () => 'Zu sagen: für welche Seite es gemacht ist.',
  'read-number': () => 'Abzulesen: eine Nummer am Teil.',
  'find-next': (d) => `Zu klären: ${valueAt(d.left)}${precision(d)}.`,
  'measure-next': (d) => `Zu messen: ${valueAt(d.left)}${precision(d)}.`,
} as const satisfies Readonly<Record<(typeof PIECE_CODES)[number], Sentence>>;
