/**
 * The sentences, in German: the same things as in English, in the words of a German workshop.
 * Names of parts, places and values come from catalogues, so no sentence needs their gender, number
 * or case. Cautions defer to the maker, the law and qualified people.
 *
 * Length: one table, with a sentence for each code.
 */

import { GERMAN_CONFLICTS } from './german-conflicts.js';
import { GERMAN_COMPARED, GERMAN_KITS } from './german-kits.js';
import {
  and,
  compared,
  face,
  fittedAt,
  HANDS,
  label,
  lead,
  madeToSuit,
  named,
  ofPart,
  owned,
  parameter,
  place,
  places,
  precision,
  quoted,
  shown,
  side,
  start,
  told,
  unrecorded,
} from './german-phrases.js';
import { GERMAN_PIECES } from './german-pieces.js';
import { GERMAN_NUMBERS } from './number-words.js';
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
import { GERMAN_VEHICLES } from './vehicle-words.js';

/** The name of one path of a loop: its term, or which of the two it is. */
function path(value: NamedValue | undefined, otherwise: string): string {
  return value?.parameterName ?? otherwise;
}

const FIRST = 'erster Weg';
const SECOND = 'zweiter Weg';

const checks = {
  equal: (d: ReasonData) =>
    `${lead(d)}${start(parameter(d.left))} gleich${onBoth(d)}: ${shown(d.left)}.`,
  'one-of': (d: ReasonData) => `${lead(d)}${start(told(d.left))}: einer der Werte, die passen.`,
  clears: (d: ReasonData) =>
    d.choices === undefined
      ? `${lead(d)}${start(compared(d))}: innerhalb der Grenzen${spare(d)}.`
      : `${lead(d)}Passt mit: ${madeToSuit(d)}.`,
  coincides: (d: ReasonData) =>
    `${lead(d)}${start(parameter(d.left))}: ${owned(d.left)}, alle auf denen der Gegenseite` +
    `${ofPart(d.right)}.`,
  agrees: (d: ReasonData) =>
    `${lead(d)}${start(path(d.left, FIRST))} und ${path(d.right, SECOND)} stimmen überein` +
    `${within(d)}.`,
  carries: (d: ReasonData) => `${lead(d)}${start(told(d.left))}: reicht für ${owned(d.right)}.`,
  'not-equal': (d: ReasonData) =>
    `${lead(d)}${start(parameter(d.left))} verschieden: ${owned(d.left)}, ${owned(d.right)}.`,
  'not-one-of': (d: ReasonData) =>
    `${lead(d)}${start(told(d.left))}: keiner der Werte, die passen.`,
  'too-small': (d: ReasonData) => `${lead(d)}Zu klein: ${compared(d)}.`,
  'too-large': (d: ReasonData) => `${lead(d)}Zu groß: ${compared(d)}.`,
  'too-weak': (d: ReasonData) =>
    `${lead(d)}${start(told(d.left))}: weniger als die auszuhaltenden ${owned(d.right)}.`,
  'points-apart': (d: ReasonData) => `${lead(d)}${start(compared(d))}${oddOne(d)}.`,
  'first-too-fast': (d: ReasonData) =>
    `${lead(d)}${start(path(d.left, FIRST))}: ${faster(d)} zu schnell gegenüber ` +
    `${path(d.right, SECOND)}.`,
  'first-too-slow': (d: ReasonData) =>
    `${lead(d)}${start(path(d.left, FIRST))}: ${faster(d)} zu langsam gegenüber ` +
    `${path(d.right, SECOND)}.`,
  'not-recorded': (d: ReasonData) =>
    `${lead(d)}Niemand hat erfasst: ${unrecorded(d)}${toCompare(d)}.`,
  'not-precise-enough': (d: ReasonData) =>
    `${lead(d)}Zu grob erfasst, um es zu sagen: ${compared(d)}.`,
  'evidence-too-weak': (d: ReasonData) =>
    `${lead(d)}${start(compared(d))}: nur ` +
    `${BASES[d.basis ?? ''] ?? 'abgeleitet oder berichtet'}, das beweist nichts, bis es jemand ` +
    'bestätigt.',
  'not-decided': (d: ReasonData) =>
    `${lead(d)}Das ließ sich nicht exakt entscheiden: ${compared(d)}.`,
  'too-many-choices': (d: ReasonData) =>
    `${lead(d)}Es gibt zu viele Möglichkeiten, um alle durchzuprobieren${forParts(d)}.`,
  'may-not-apply': (d: ReasonData) =>
    `${lead(d)}Es ist nicht bekannt, ob das hier gilt: ${compared(d)}.`,
} as const;

/** ` bei „…“ und „…“`, where both values are of parts. */
function onBoth({ left, right }: ReasonData): string {
  return isOfPart(left) && isOfPart(right) ? ` bei ${label(left)} und ${label(right)}` : '';
}

/** The parts that there is something to choose of. */
function forParts({ left, right }: ReasonData): string {
  const parts = [left, right].filter(isOfPart).map(label);
  return parts.length === 0 ? '' : `: ${and([...new Set(parts)])}`;
}

/** What is recorded, where the other value is what is missing. */
function toCompare(d: ReasonData): string {
  const known = knownSide(d);
  if (known === null) return '';
  return `; zu vergleichen mit ${isSameParameter(d) ? owned(known) : told(known)}`;
}

function faster({ margin }: ReasonData): string {
  return margin === undefined ? 'weit' : `um ${amount(margin, 'viel')}`;
}

/** How nearly the two paths of a loop agree. */
function within(d: ReasonData): string {
  const most = mismatch(d);
  return most === null ? '' : `, bis auf ${most}`;
}

/** Which point a person would look at first. */
function oddOne({ odd, left, right }: ReasonData): string {
  if (odd === undefined) return '';
  const { apart, point } = odd;
  const far = apart?.text == null ? 'keinen neben sich' : `keinen näher als ${apart.text}`;
  const owner = odd.of === 'left' ? left : right;
  return `; der bei ${point.text}${ofPart(owner)} hat ${far}`;
}

/** How much a check that holds has in reserve. */
function spare({ margin }: ReasonData): string {
  return margin === undefined ? '' : `, Reserve ${amount(margin, 'vorhanden')}`;
}

/** How a value or a statement is known. */
const BASES: Readonly<Record<string, string>> = {
  built: 'so gebaut',
  measured: 'gemessen',
  drawing: 'aus einer Zeichnung',
  maker: 'laut Hersteller',
  inferred: 'abgeleitet',
  reported: 'berichtet',
};

const cautionsOfChecks = {
  'winds-up': (d: ReasonData) =>
    `Die Achsen laufen um ${amount(d.margin, 'ein wenig')} verschieden schnell: Der Ausgleich ` +
    'zwischen ihnen arbeitet ständig, oder er verspannt sich.',
  'may-wind-up': (d: ReasonData) =>
    `Die Achsen laufen vielleicht um bis zu ${amount(d.margin, 'ein wenig')} verschieden ` +
    'schnell: Der Ausgleich zwischen ihnen arbeitet vielleicht ständig.',
  'off-road-only': (d: ReasonData) =>
    `Die Achsen laufen um ${amount(d.margin, 'viel')} verschieden schnell: nur auf losem Grund, ` +
    'nicht auf der Straße.',
  'may-be-off-road-only': (d: ReasonData) =>
    `Die Achsen laufen vielleicht um bis zu ${amount(d.margin, 'viel')} verschieden schnell: ` +
    'vielleicht nur für losen Grund.',
  'caution-fails': (d: ReasonData) => d.text ?? 'Ein Hinweis trifft zu.',
  'caution-open': (d: ReasonData) => `Nicht mit Gewissheit bekannt: ${d.text ?? 'ein Hinweis'}`,
  'engineer-signs': (d: ReasonData) =>
    `${quoted(d.text)}: Ein Ingenieur muss für die Arbeit unterschreiben.`,
  'workshop-signs': (d: ReasonData) =>
    `${quoted(d.text)}: Die Werkstatt muss für die Arbeit unterschreiben.`,
  'work-first': (d: ReasonData) => `${quoted(d.text)}: erst, wenn die Arbeit daran getan ist.`,
} as const;

const matings = {
  meets: (d: ReasonData) => `${start(label(d.a))} passt an ${label(d.b)}${through(d)}.`,
  'as-built': (d: ReasonData) =>
    `${start(label(d.a))} und ${label(d.b)} sind ab Werk so zusammengebaut ` +
    `(${and(d.vehicles ?? [])}).`,
  'contradicts-as-built': (d: ReasonData) =>
    `Nach den erfassten Werten passen ${label(d.a)} und ${label(d.b)} nicht zusammen, doch das ` +
    `Werk hat sie zusammengebaut (${and(d.vehicles ?? [])}): Einer der Werte ist falsch.`,
  'nothing-needed': (d: ReasonData) =>
    isPart(d.a) && isPart(d.b)
      ? `${start(label(d.a))} und ${label(d.b)} brauchen nichts voneinander.`
      : `${start(label(d.part))} braucht nichts am ${face(d.part)}.`,
  'needed-empty': (d: ReasonData) =>
    `${start(label(d.part))} braucht etwas am ${face(d.part)}, und ${fittedAt(emptyEnd(d))} ist ` +
    'nichts eingebaut.',
  'needed-absent': (d: ReasonData) =>
    `${start(label(d.part))} braucht etwas am ${face(d.part)}, und ` +
    `${otherPart(d, 'das andere Teil')} hat keinen solchen Anschluss.`,
  'face-not-recorded': (d: ReasonData) =>
    !isPart(d.part)
      ? `Niemand hat erfasst, was ${fittedAt(d.part)} eingebaut ist.`
      : `Niemand hat den ${face(d.part)} von ${label(d.part)} erfasst${whereMet(d)}.`,
  'different-kinds': (d: ReasonData) =>
    `Verschiedene Arten von Anschluss: ${d.a?.kindName ?? 'unbekannt'}${ofEnd(d.a)} gegen ` +
    `${d.b?.kindName ?? 'unbekannt'}${ofEnd(d.b)}.`,
  'same-side': (d: ReasonData) =>
    `${start(label(d.a))} und ${label(d.b)} haben beide die gleiche Hälfte: ` +
    `${d.a?.kindName ?? 'Verbindung'}.`,
  stated: (d: ReasonData) =>
    `${statedOf(d)} (${source(d)}); die Anschlüsse selbst sind nicht alle erfasst.`,
  'contradicts-statement': (d: ReasonData) =>
    `Eine Angabe (${d.text ?? BASES[d.basis ?? ''] ?? 'ohne Quelle'}) und die erfassten Werte ` +
    `widersprechen sich: nicht bekannt, bis nachgemessen ist.${disputed(d)}`,
} as const;

function through({ adapters = [] }: ReasonData): string {
  return adapters.length === 0 ? '' : `, dazwischen ${and(adapters.map(quoted))}`;
}

/** Whose face it is, as an end of a mating. */
function ofEnd(end: ReasonData['a']): string {
  return end === undefined
    ? ''
    : ofPart({ ...end, parameter: null, parameterName: null, value: null });
}

/** On what a statement rests, and where it stands. */
function source({ basis, text }: ReasonData): string {
  const known = BASES[basis ?? ''] ?? 'angegeben';
  return text === undefined ? known : `${known}, ${text}`;
}

/** The part at the other end of a mating; a phrase where there is none, or nobody knows it. */
function otherPart(d: ReasonData, otherwise: string): string {
  const other = otherEnd(d);
  return isPart(other) ? label(other) : otherwise;
}

function statedOf({ a, b }: ReasonData): string {
  return isPart(a) && isPart(b)
    ? `${start(label(a))} und ${label(b)} passen laut Angabe zusammen`
    : 'Passt laut Angabe';
}

function whereMet(d: ReasonData): string {
  const other = otherPart(d, '');
  return other === '' ? '' : `, an den ${other} kommt`;
}

/** What the records say, where a statement says the contrary. */
function disputed(d: ReasonData): string {
  if (d.left === undefined || d.right === undefined) return '';
  return ` ${lead(d)}${start(compared(d))}.`;
}

const constraints = {
  'chain-broken': (d: ReasonData) =>
    `Mit dieser Änderung ist ${fittedAt(d.part)} nichts mehr eingebaut, und Wege, die ` +
    'übereinstimmen müssen, führen darüber.',
  'fails-as-built-too': (d: ReasonData) =>
    `${lead(d)}Nach den erfassten Werten geht das auch ab Werk nicht auf, also sind die Werte ` +
    `falsch${d.left === undefined || d.right === undefined ? '' : `: ${compared(d)}`}.`,
  'told-by-fact': (d: ReasonData) =>
    `Das hängt daran, was bei diesem Fahrzeug noch niemand gesagt hat: ${and(d.names ?? [])}.`,
  'same-for-each-fact': (d: ReasonData) =>
    `Bei jeder Antwort gleich (${and(d.names ?? [])}); bei einer davon: ${d.text ?? ''}`,
  suits: (d: ReasonData) =>
    d.choices === undefined ? 'Eine Wahl passt an allen Stellen.' : `Passt mit: ${madeToSuit(d)}.`,
  'no-common-choice': (d: ReasonData) =>
    `${lead(d)}Für beides zugleich gibt es keinen Wert: ${and((d.choices ?? []).map(named))}.`,
  'rule-met': (d: ReasonData) => d.because ?? 'Eine Regel ist erfüllt.',
  'rule-may-apply': (d: ReasonData) =>
    `Es ist nicht bekannt, ob das hier gilt: ${d.because ?? 'eine Regel'}`,
  'rule-open': (d: ReasonData) => `Nicht bekannt, ob das erfüllt ist: ${d.because ?? 'eine Regel'}`,
  'rule-needs': (d: ReasonData) => `Es wird noch etwas gebraucht: ${d.because ?? 'eine Regel'}`,
  'rule-excludes': (d: ReasonData) => `Das geht nicht zusammen: ${d.because ?? 'eine Regel'}`,
  'needed-place-empty': (d: ReasonData) =>
    `Mit dieser Änderung bleibt der ${place(d.part)} leer, und das darf nicht sein.`,
  'wrong-role': (d: ReasonData) =>
    `${quoted(d.part?.partName)} ist kein Teil für den ${place(d.part)}.`,
  'wrong-hand': (d: ReasonData) =>
    `${quoted(d.part?.partName)} ist für die andere Seite gemacht, nicht für ` +
    `${side(d.part?.hand) ?? 'diese'}.`,
  'no-place-to-span': (d: ReasonData) =>
    `${quoted(d.part?.partName)} füllt mehrere Einbauplätze, und einen davon hat dieses Fahrzeug ` +
    'nicht.',
  'span-occupied': (d: ReasonData) =>
    `${quoted(d.part?.partName)} füllt mehrere Einbauplätze, und an einem davon sitzt ein ` +
    'anderes Teil.',
  'no-mating-for-interface': (d: ReasonData) =>
    `${start(label(d.part))} braucht etwas am ${face(d.part)}, und dieses Fahrzeug hat keinen ` +
    'Platz dafür.',
  'stated-not-to-fit': (d: ReasonData) => `Passt laut Angabe nicht (${source(d)}).`,
  'stated-before-work': (d: ReasonData) =>
    `So, wie es vor der Arbeit war, passt es laut Angabe nicht (${source(d)}): nicht bekannt, ` +
    'bis alles daran gemessen ist.',
} as const;

function things(count: number): string {
  return count === 1 ? 'eine Sache ist' : `${count} Sachen sind`;
}

/** Who reads the summary alone must not take the part for all that is needed. */
function together({ count }: ReasonData): string {
  if (count === undefined || count === 0) return '';
  const others =
    count === 1 ? 'dem anderen genannten Teil' : `den ${count} anderen genannten Teilen`;
  return `, zusammen mit ${others}`;
}

const summaries = {
  fits: (d: ReasonData) => `Passt${places(d)}${together(d)}.`,
  'fits-made-to-order': (d: ReasonData) =>
    `Passt${places(d)}${together(d)}, nach Maß zu bestellen.`,
  'fits-once-signed': (d: ReasonData) =>
    `Passt, sobald ${d.text === 'engineer' ? 'ein Ingenieur' : 'die Werkstatt'} für die Arbeit ` +
    `unterschrieben hat: ${and((d.names ?? []).map(quoted))}.`,
  'fits-already-there': (d: ReasonData) =>
    `Dieses Teil ist schon am Fahrzeug${d.names?.length ? `,${places(d)}` : ''}.`,
  unknown: (d: ReasonData) =>
    d.count === undefined || d.count === 0
      ? `Nicht bekannt, ob es${places(d)} passt.`
      : `Nicht bekannt, ob es${places(d)} passt: ${things(d.count)} noch zu klären.`,
  'not-alone': () =>
    'Passt nicht an das Fahrzeug, wie es jetzt ist; Änderungen darum herum wurden nicht gesucht.',
  'no-position': () => 'Dieses Fahrzeug hat keinen Platz für so ein Teil.',
  'goes-between': () =>
    'Dieses Teil sitzt zwischen zwei anderen: nach diesen fragen, mit diesem Teil als Adapter.',
  depends: (d: ReasonData) => `Es kommt darauf an, welches von ${d.count ?? 0} Fahrzeugen es ist.`,
  'each-fits': (d: ReasonData) => `Passt, welches von ${d.count ?? 0} Fahrzeugen es auch ist.`,
  'each-fits-with-changes': (d: ReasonData) =>
    `Passt mit Änderungen darum herum, welches von ${d.count ?? 0} Fahrzeugen es auch ist.`,
  'each-unknown': (d: ReasonData) =>
    `Nicht bekannt, ob es passt, welches von ${d.count ?? 0} Fahrzeugen es auch ist.`,
  'none-fits': (d: ReasonData) =>
    `Passt nicht, welches von ${d.count ?? 0} Fahrzeugen es auch ist.`,
  'too-many-vehicles': (d: ReasonData) =>
    `Es kann eines von ${d.count ?? 0} Fahrzeugen sein: erst mit mehr Angaben ist zu sagen, ob ` +
    'es passt.',
  'right-as-it-stands': () => 'Nichts spricht gegen das Fahrzeug, wie es jetzt ist.',
  'open-as-it-stands': () => 'Vom Fahrzeug, wie es jetzt ist, ist nicht alles bekannt.',
  'wrong-as-it-stands': () => 'Etwas am Fahrzeug, wie es jetzt ist, passt nicht zusammen.',
  'faces-meet': () => 'Die beiden Anschlüsse passen zusammen.',
  'faces-may-meet': () => 'Nicht bekannt, ob die beiden Anschlüsse zusammenpassen.',
  'faces-do-not-meet': () => 'Die beiden Anschlüsse passen nicht zusammen.',
} as const;

const rest = {
  'kind-does-not-check': (d: ReasonData) =>
    `Nicht geprüft, wo ${label(d.a)} und ${label(d.b)} zusammenkommen: ${d.text ?? ''}.`,
  'position-not-recorded': (d: ReasonData) =>
    `Niemand hat erfasst, was am ${place(d.part)} eingebaut ist.`,
  'face-on-no-mating': (d: ReasonData) =>
    `Der ${face(d.part)} von ${label(d.part)} trifft an diesem Fahrzeug auf nichts; er wird ` +
    'nicht gebraucht.',
  'measure-to-decide': (d: ReasonData) => `Zu messen: ${named(d.left)}${precision(d)}.`,
  'measure-to-order': (d: ReasonData) =>
    `Vor dem Bestellen zu messen: ${named(d.left)}${precision(d)}.`,
  confirm: (d: ReasonData) =>
    `Zu bestätigen: ${named(d.left)}${precision(d)}; ${shown(d.left)} ist nur ` +
    `${BASES[d.basis ?? ''] ?? 'angegeben'}.`,
  'look-up': (d: ReasonData) => `Zu klären: ${named(d.left)}${precision(d)}.`,
  identify: (d: ReasonData) =>
    isPart(d.part)
      ? `Zu klären: welches Teil das ist: ${label(d.part)}.`
      : `Zu klären: was ${fittedAt(d.part)} eingebaut ist.`,
  'ask-fact': (d: ReasonData) =>
    `Zu klären: ${parameter(d.left)}.${d.text === undefined ? '' : ` ${d.text}`}`,
  'record-face': (d: ReasonData) => `Anzusehen: ${face(d.part)} von ${label(d.part)}.`,
  'order-to-suit': (d: ReasonData) =>
    `Zu bestellen: ${label(d.left)}, ${parameter(d.left)} ${amount(d.order, 'passend')}.`,
  'order-after-measuring': (d: ReasonData) =>
    `Zu bestellen: ${label(d.left)}, ${parameter(d.left)} passend, sobald gemessen ist.`,
} as const;

export const GERMAN: Words = {
  sentences: {
    ...checks,
    ...cautionsOfChecks,
    ...matings,
    ...constraints,
    ...summaries,
    ...GERMAN_CONFLICTS,
    ...GERMAN_KITS,
    ...GERMAN_PIECES,
    ...rest,
  },
  ownCode: (d) =>
    d.left === undefined
      ? (d.says ?? 'Eine Prüfung geht nicht auf.')
      : `${lead(d)}${start(d.right === undefined ? told(d.left) : compared(d))}.`,
  points: (count) => (count === 1 ? '1 Punkt' : `${count} Punkte`),
  partOfQuestion: (end) => `Teil ${end} der Frage`,
  ofDonor: (place, hand, lot) => {
    const own = hand === null ? '' : ` (${side(hand)})`;
    return `${place}${own} aus dem Spender ‚${lot}‘, nicht erfasst`;
  },
  compared: GERMAN_COMPARED,
  hands: HANDS,
  noSuchFace: 'kein solcher Anschluss',
  vehicles: GERMAN_VEHICLES,
  numbers: GERMAN_NUMBERS,
  cautions: {
    general:
      'Die Angaben des Herstellers gehen vor, die Vorschriften am Ort für Straße und Wettbewerb ' +
      'entscheiden, und eine Fachkraft macht die Arbeit und prüft sie.',
    driveline:
      'Antriebsstrang: Fahrzeug auf Unterstellböcke stellen, Anzugsmomente des Herstellers und ' +
      'neue Schrauben und Muttern nehmen, wo sie nur einmal taugen, Füllstände prüfen und die ' +
      'Probefahrt langsam beginnen.',
    brakes:
      'Bremsen: Arbeit nur durch eine Fachkraft; vor der Straße entlüften, auf Lecks prüfen und ' +
      'bei geringer Geschwindigkeit erproben. Verschiedene Bördelformen oder Bremsflüssigkeiten ' +
      'nie mischen.',
    steering:
      'Lenkung: Arbeit nur durch eine Fachkraft; neue Splinte und Muttern, danach die Spur ' +
      'einstellen. Teile der Lenkung nicht bohren, biegen oder schweißen.',
    suspension:
      'Fahrwerk: Federn stehen unter Spannung, nur richtiges Werkzeug nehmen; in Fahrhöhe mit ' +
      'dem Anzugsmoment des Herstellers festziehen; das Fahrwerk vermessen lassen.',
    wheels:
      'Räder: alle Muttern oder Schrauben an ihrem Platz, mit richtigem Sitz und richtiger ' +
      'Länge, nach Angabe des Herstellers angezogen und nach 50 bis 100 km nachgezogen.',
    fuel:
      'Kraftstoff: kein Feuer, keine Funken; zuerst den Druck ablassen, danach auf Lecks ' +
      'prüfen.',
    electrical: 'Elektrik: zuerst die Batterie abklemmen; vor der Fahrt jedes Signal prüfen.',
  },
};
