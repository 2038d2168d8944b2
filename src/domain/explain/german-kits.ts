/**
 * The sentences about kits, in German: what a way of doing it comes to, why each of its lines is
 * there, and what the vehicle loses by it. What has no price is counted, never passed over.
 */

import { compared, label, named, owned, places, quoted, start } from './german-phrases.js';
import type { ReasonData } from './reason.js';
import type { Compared } from './sentence.js';

const NUMBERS = 'kein ein zwei drei vier fünf sechs sieben acht neun zehn elf zwölf'.split(' ');

function number(count: number): string {
  return NUMBERS[count] ?? String(count);
}

function placesChanged({ places: count = 0 }: ReasonData): string {
  return count === 1 ? '1 Einbauplatz' : `${count} Einbauplätze`;
}

/** `3241,50 EUR netto und 2 ohne Preis`; null where no price is known. */
function cost({ price, unpriced = 0 }: ReasonData): string | null {
  if (price?.text == null) return null;
  return `${price.text} netto${unpriced === 0 ? '' : ` und ${unpriced} ohne Preis`}`;
}

/** `kostet … und ändert …`. */
export function comesTo(d: ReasonData): string {
  const known = cost(d);
  const changes = `ändert ${placesChanged(d)}`;
  return known === null ? `${changes}, Preis nicht bekannt` : `kostet ${known} und ${changes}`;
}

/** The same in figures, for sentences that have more to say. */
export function inFigures(d: ReasonData): string {
  const { facts = 0 } = d;
  const open = facts === 0 ? null : `${facts} zu klären`;
  return [cost(d) ?? 'Preis nicht bekannt', placesChanged(d), open]
    .filter((text) => text !== null)
    .join(', ');
}

export function toFindOut({ facts = 0 }: ReasonData): string | null {
  if (facts === 0) return null;
  return facts === 1 ? 'eine Sache zu klären' : `${facts} Sachen zu klären`;
}

function ways({ count = 0, more }: ReasonData): string {
  if (count === 1) return more === true ? 'Mehr als ein Weg' : 'Ein Weg';
  return start(`${more === true ? 'mehr als ' : ''}${number(count)} Wege`);
}

function firstSoFar({ count = 0 }: ReasonData): string {
  return count === 1 ? 'der einzige Weg bisher' : `der erste von bisher ${number(count)} Wegen`;
}

function isOne({ count, more }: ReasonData): boolean {
  return count === 1 && more !== true;
}

/** Beside the part itself. */
function besides({ places: count = 0 }: ReasonData): string {
  if (count === 0) return 'mit weiteren Teilen am selben Einbauplatz';
  const others = count === 1 ? 'einem anderen Einbauplatz' : `${count} anderen Einbauplätzen`;
  return `mit Änderung an ${others}`;
}

function onceSigned({ text }: ReasonData): string {
  if (text === undefined) return '';
  const who = text === 'engineer' ? 'ein Ingenieur' : 'die Werkstatt';
  return `, sobald ${who} unterschrieben hat`;
}

const summaries = {
  'fits-with-changes': (d: ReasonData) => `Passt${places(d)}, ${besides(d)}${onceSigned(d)}.`,
  'fits-unless-alone': (d: ReasonData) =>
    `Allein${places(d)} unbekannt; ${besides(d)} passt es${onceSigned(d)}.`,
  'may-fit-with-changes': (d: ReasonData) =>
    `Passt allein nicht; ${besides(d)} nicht bekannt: ` +
    `${toFindOut(d) ?? 'siehe, was offen ist'}.`,
  'search-cut-short': () =>
    'Nicht bekannt, ob es passt: Die Suche nach Änderungen endete an der Grenze ihrer Schritte.',
  'does-not-fit': () =>
    'Passt nicht: In dieser Ausgabe des Katalogs gibt es keinen Weg, es passend zu machen.',
  'ways-proven': (d: ReasonData) =>
    isOne(d)
      ? `Ein Weg, belegt: Er ${comesTo(d)}.`
      : `${ways(d)}; der ${d.cheapest === true ? 'günstigste' : 'erste'} belegte ${comesTo(d)}.`,
  'ways-open': (d: ReasonData) =>
    isOne(d)
      ? `Ein Weg, nicht belegt: ${inFigures(d)}.`
      : `${ways(d)}, keiner belegt; der erste: ${inFigures(d)}.`,
  'ways-so-far': (d: ReasonData) => `Suche abgebrochen; ${firstSoFar(d)}: ${inFigures(d)}.`,
  'nothing-to-change': () => 'Es muss nichts geändert werden.',
  'no-way': () => 'Diese Ausgabe des Katalogs hat keinen Weg zu dem, was gefragt ist.',
  'no-way-together': (d: ReasonData) =>
    `Das geht nicht alles zugleich: ${start(number(d.count ?? 0))} Forderungen widersprechen sich.`,
  'no-way-so-far': () =>
    'Die Suche endete an der Grenze ihrer Schritte und hat bis dahin keinen Weg gefunden.',
  'each-proven': (d: ReasonData) =>
    `Es gibt belegte Wege, und dieselben, welches von ${d.count ?? 0} Fahrzeugen es auch ist.`,
  'each-open': (d: ReasonData) =>
    `Es gibt Wege, keiner belegt, und dieselben, welches von ${d.count ?? 0} Fahrzeugen es auch ` +
    'ist.',
  'no-way-for-any': (d: ReasonData) =>
    `Diese Ausgabe des Katalogs hat keinen Weg, welches von ${d.count ?? 0} Fahrzeugen es auch ` +
    'ist.',
  'ways-depend': (d: ReasonData) =>
    `Was es braucht, kommt darauf an, welches von ${d.count ?? 0} Fahrzeugen es ist.`,
  'too-many-to-solve': (d: ReasonData) =>
    `Es kann eines von ${d.count ?? 0} Fahrzeugen sein: erst mit mehr Angaben ist zu sagen, was ` +
    'es braucht.',
  'no-such-place': () => 'Einen solchen Einbauplatz wie in der Frage hat dieses Fahrzeug nicht.',
  'route-proven': (d: ReasonData) => `Belegt: ${inFigures(d)}${onceSigned(d)}.`,
  'route-open': (d: ReasonData) => `Offen: ${inFigures(d)}${onceSigned(d)}.`,
} as const;

/** What fails or is open without the line, said as the constraint says it. */
function because({ because: said }: ReasonData, otherwise: string): string {
  return said ?? otherwise;
}

const lines = {
  wanted: () => 'Gewünscht.',
  avoided: (d: ReasonData) => `Statt dessen, was vermieden werden soll. ${because(d, '')}`,
  'mating-fails': (d: ReasonData) => because(d, 'Ohne das passen zwei Anschlüsse nicht zusammen.'),
  rule: (d: ReasonData) => because(d, 'Eine Regel verlangt es.'),
  loop: (d: ReasonData) => because(d, 'Ohne das stimmen die beiden Wege nicht überein.'),
  load: (d: ReasonData) => because(d, 'Ohne das ist etwas zu schwach.'),
  check: (d: ReasonData) => because(d, 'Ohne das geht eine Prüfung nicht auf.'),
  place: (d: ReasonData) => because(d, 'Ohne das ist ein Einbauplatz nicht richtig besetzt.'),
  limit: (d: ReasonData) => because(d, 'Ohne das wird eine gesetzte Grenze überschritten.'),
  'becomes-open': (d: ReasonData) =>
    `Ohne das ist nicht bekannt: ${because(d, 'ob alles zusammenpasst.')}`,
  'present-fails': (d: ReasonData) =>
    `Am Fahrzeug, wie es jetzt ist, falsch: ${because(d, 'etwas passt nicht zusammen.')}`,
  'adapter-avoided': (d: ReasonData) =>
    `Statt eines Adapters: ${because(d, 'ohne ihn passen zwei Anschlüsse nicht zusammen.')}`,
  'donor-content': (d: ReasonData) =>
    d.text === undefined
      ? 'Gehört zu dem, was als Ganzes gekauft wird.'
      : `Gehört zu dem, was als Ganzes gekauft wird: ${quoted(d.text)}.`,
  consumed: (d: ReasonData) => because(d, 'Wird bei der Arbeit verbraucht.'),
  recommended: (d: ReasonData) => because(d, 'Außerdem ratsam.'),
  'in-the-way': (d: ReasonData) =>
    d.part === undefined ? 'Ist der Arbeit im Weg.' : `Versperrt den Weg zu ${label(d.part)}.`,
  'taken-out': (d: ReasonData) =>
    d.part === undefined ? 'Kommt heraus.' : `Kommt heraus und macht Platz für ${label(d.part)}.`,
} as const;

/** Dearer or cheaper by so much; null where a price is not known. */
function difference({ price }: ReasonData): string {
  if (price?.text == null) return 'Preis nicht bekannt';
  if (price.text.startsWith('-')) return `${price.text.slice(1)} billiger`;
  return /[1-9]/.test(price.low ?? '') ? `${price.text} teurer` : 'zum gleichen Preis';
}

function pointsMore({ count = 0 }: ReasonData): string {
  if (count === 0) return '';
  return count === 1 ? ', eine Sache ist zu klären' : `, ${count} Sachen sind zu klären`;
}

const instead = {
  substitute: (d: ReasonData) =>
    `Ebenso gut: ${label(d.part)}, gleich in allen Anschlüssen, Werten und Regeln.`,
  alternative: (d: ReasonData) =>
    `Ginge hier auch: ${label(d.part)}, ${difference(d)}${pointsMore(d)}.`,
} as const;

const losses = {
  'place-emptied': (d: ReasonData) =>
    `${start(label(d.part))} kommt heraus, und nichts kommt an seine Stelle.`,
  'joint-lost': (d: ReasonData) =>
    `Die Verbindung von ${label(d.a)} und ${label(d.b)} entfällt` + `${kindOf(d)}.`,
  'value-lower': (d: ReasonData) => `Weniger als bisher: ${compared(d)}.`,
  'rating-unknown': (d: ReasonData) =>
    `Nicht mehr bekannt: ${named(d.left)}; bisher ${owned(d.right)}.`,
} as const;

function kindOf({ a, b }: ReasonData): string {
  const kind = a?.kindName ?? b?.kindName ?? null;
  return kind === null ? '' : `: ${kind}`;
}

export const GERMAN_KITS = { ...summaries, ...lines, ...instead, ...losses } as const;

export const GERMAN_COMPARED: Readonly<Record<Compared, string>> = {
  cost: 'Kosten, netto',
  unpriced: 'Posten ohne Preis',
  changedPositions: 'Geänderte Einbauplätze',
  labourHours: 'Arbeitsstunden',
  leadDays: 'Tage, bis alles da ist',
  openPoints: 'Offene Punkte',
  weakest: 'Schwächstes Teil, Nennwert durch Last',
  signOff: 'Wer unterschreiben muss',
  reversible: 'Rückgängig zu machen',
};
