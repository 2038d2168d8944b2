/**
 * The sentences about demands that contradict each other, in German: each demand as it was made
 * and as it can be taken back, what is in its way, and what taking it back comes to.
 */

import { comesTo, toFindOut } from './german-kits.js';
import { and, fittedAt, label, place, start } from './german-phrases.js';
import { isNothing } from './phrases.js';
import type { ReasonData } from './reason.js';

function wanted({ part, names }: ReasonData): string {
  return names === undefined ? label(part) : `eines von ${quoted(names)}`;
}

function quoted(names: readonly string[]): string {
  return names.map((name) => `„${name}“`).join(', ');
}

/** What stays where it is: one part, or one on either side; null where none is known there. */
function kept({ part, names }: ReasonData): string | null {
  if (names !== undefined) return and(names.map((name) => `„${name}“`));
  return part?.part == null ? null : label(part);
}

const places = ({ text }: { readonly text: string | null }): string =>
  text === '1' ? '1 Einbauplatz' : `${text} Einbauplätze`;

const days = ({ text }: { readonly text: string | null }): string =>
  text === '1' ? '1 Tag' : `${text} Tage`;

function isOne({ asked }: ReasonData): boolean {
  return asked?.text === '1';
}

const NONE = { text: null };

/** Of a check whose catalogue does not say in words what it is. */
const NO_WORDS = 'eine Prüfung, die niemand in Worte gefasst hat.';

/** The words of a check within another sentence. */
function whereItSays(text: string | undefined): string {
  return text === undefined ? 'wo niemand es in Worte gefasst hat' : `wo es heißt: „${bare(text)}“`;
}

function bare(text: string): string {
  return text.replace(/\.$/, '');
}

function keeps(d: ReasonData): string {
  const stays = kept(d);
  if (stays === null) return `Am ${place(d.part)} soll nichts geändert werden.`;
  return `${start(stays)} ${d.names === undefined ? 'soll' : 'sollen'} bleiben.`;
}

/** Without a full stop. */
function letsChange(d: ReasonData): string {
  const stays = kept(d);
  if (stays === null) return `Auch am ${place(d.part)} darf etwas geändert werden`;
  return `Auch ${stays} ${d.names === undefined ? 'darf' : 'dürfen'} geändert werden`;
}

const demands = {
  'demand-part': (d: ReasonData) => `${start(wanted(d))} soll eingebaut werden.`,
  'demand-lot': (d: ReasonData) => `„${d.text}“ soll gekauft und verwendet werden.`,
  'demand-load': (d: ReasonData) =>
    `Mit einer Reserve von mindestens ${d.asked?.text}: ${d.text ?? NO_WORDS}`,
  'demand-condition': (d: ReasonData) =>
    `Was ${fittedAt(d.part)} sitzt, soll die Bedingung erfüllen.`,
  'demand-present': () =>
    'Was am Fahrzeug sein soll und nicht zusammenpasst, soll in Ordnung gebracht werden.',
  'demand-keep': keeps,
  'demand-avoid-part': (d: ReasonData) => `${start(label(d.part))} soll nicht dazukommen.`,
  'demand-avoid-supplier': (d: ReasonData) => `Nichts soll von ${d.text} kommen.`,
  'demand-avoid-condition': (d: ReasonData) =>
    `Was ${fittedAt(d.part)} neu dazukommt, darf die Bedingung nicht erfüllen.`,
  'demand-cost': (d: ReasonData) => `Es soll höchstens ${d.asked?.text} netto kosten.`,
  'demand-places': (d: ReasonData) =>
    `Höchstens ${places(d.asked ?? NONE)} ${isOne(d) ? 'soll' : 'sollen'} geändert werden.`,
  'demand-hours': (d: ReasonData) => `Die Arbeit soll höchstens ${d.asked?.text} dauern.`,
  'demand-days': (d: ReasonData) =>
    `Alles soll in höchstens ${d.asked?.text} ${isOne(d) ? 'Tag' : 'Tagen'} da sein.`,
  'demand-stock': () => 'Nur was auf Lager ist, soll gekauft werden.',
  'demand-torque': (d: ReasonData) => `Alles soll ${d.asked?.text} vom Motor aushalten.`,
  'demand-ruleset-keep': (d: ReasonData) => `„${d.text}“ verlangt: ${keeps(d)}`,
  'demand-ruleset-check': (d: ReasonData) => `„${d.text}“ verlangt: ${d.because ?? NO_WORDS}`,
  'demand-ruleset-rest': (d: ReasonData) =>
    `„${d.text}“ verlangt mehr, als sich von einem Fahrzeug dieser Bauart sagen lässt.`,
  'demand-unknowns': () => 'Nichts soll unbekannt bleiben.',
} as const;

/** `2838,00 EUR statt 2500,00 EUR`; only what was asked where it is not known. */
function instead(
  { asked, takes }: ReasonData,
  say: (value: { readonly text: string | null }) => string,
): string {
  if (takes === undefined) return `mehr als ${say(asked ?? NONE)}`;
  return `${say(takes)} statt ${asked?.text}`;
}

const plain = ({ text }: { readonly text: string | null }): string => text ?? '';

const drops = {
  'drop-part': (d: ReasonData) => `Verzicht auf ${wanted(d)}.`,
  'drop-lot': (d: ReasonData) => `Verzicht auf „${d.text}“.`,
  'drop-load': (d: ReasonData) =>
    `Verzicht auf eine Reserve von ${d.asked?.text}, ${whereItSays(d.text)}.`,
  'drop-condition': (d: ReasonData) =>
    `Keine Bedingung stellen an das, was ${fittedAt(d.part)} sitzt.`,
  'drop-present': () => 'Was am Fahrzeug sein soll, bleibt, wie es ist.',
  'drop-keep': (d: ReasonData) => `${letsChange(d)}.`,
  'drop-avoid-part': (d: ReasonData) => `${start(label(d.part))} darf dazukommen.`,
  'drop-avoid-supplier': (d: ReasonData) => `Auch was von ${d.text} kommt, darf dabei sein.`,
  'drop-avoid-condition': (d: ReasonData) =>
    `Nichts wird vermieden, was ${fittedAt(d.part)} dazukommt.`,
  'drop-cost': (d: ReasonData) => `Ausgaben von ${instead(d, plain)}, netto.`,
  'drop-places': (d: ReasonData) => `Zu ändern: ${instead(d, places)}.`,
  'drop-hours': (d: ReasonData) => `Arbeit: ${instead(d, plain)}.`,
  'drop-days': (d: ReasonData) => `Wartezeit: ${instead(d, days)}.`,
  'drop-stock': () => 'Auch was nicht auf Lager ist, wird gekauft.',
  'drop-torque': (d: ReasonData) =>
    `Mit dem rechnen, was vom Motor erfasst ist, statt mit ${d.asked?.text}.`,
  'drop-ruleset-keep': (d: ReasonData) => `${letsChange(d)}, gegen „${d.text}“.`,
  'drop-ruleset-check': (d: ReasonData) => `Gegen „${d.text}“, ${whereItSays(d.because)}.`,
  'drop-ruleset-rest': (d: ReasonData) => `Verzicht auf „${d.text}“.`,
  'drop-unknowns': () => 'Was noch nicht bekannt ist, wird hingenommen und zuerst geklärt.',
} as const;

/** All that is taken back, in one breath. */
function together({ names = [] }: ReasonData): string {
  const [first = '', ...others] = names.map(bare);
  const joined = others.map((text) =>
    text.startsWith('Auch ') ? `, und auch ${text.slice(5)}` : `; und: ${text}`,
  );
  return [first, ...joined].join('');
}

/** A sentence without its full stop. */
function thenIs(way: string, d: ReasonData): string {
  return [`${way}: Er ${comesTo(d)}`, toFindOut(d)].filter((text) => text !== null).join(', ');
}

/** What would be put in, unless the sentence begins with it. */
function withNames({ names = [], because = '' }: ReasonData): string {
  const others = names.filter((name) => !because.startsWith(`„${name}“`));
  return others.length === 0 ? '' : `Mit ${quoted(others)}: `;
}

const NOTHING = 'muss nichts geändert werden';

const conflicts = {
  'in-the-way-fails': (d: ReasonData) =>
    `${withNames(d)}${d.because ?? 'Etwas passt nicht zusammen.'}`,
  'in-the-way-open': (d: ReasonData) =>
    `${withNames(d)}${d.because ?? 'Es ist nicht bekannt, ob alles zusammenpasst.'}`,
  'way-out-proven': (d: ReasonData) =>
    `${together(d)} – dann ${isNothing(d) ? NOTHING : thenIs('ein belegter Weg', d)}.`,
  'way-out-open': (d: ReasonData) =>
    isNothing(d)
      ? `${together(d)} – dann ${NOTHING}, aber nicht alles ist belegt.`
      : `${together(d)} – dann ${thenIs('ein Weg, der nicht belegt ist', d)}.`,
  'way-out-so-far': (d: ReasonData) =>
    `${together(d)} – dann gibt es einen Weg; die Suche nach dem besten wurde abgebrochen.`,
} as const;

export const GERMAN_CONFLICTS = { ...demands, ...drops, ...conflicts } as const;
