/**
 * The faults of requests, in German: one sentence for each code, with what was probably meant.
 * Names stand in quotes, and no sentence bends them.
 */

import type { NamedPart } from '../../usecases/question-fault.js';
import { echo } from '../json-pointer.js';
import type { JsonExpected, JsonFound, JsonStop, RowFault, ValueType } from './fault.js';
import type { FaultWords } from './problem-words.js';

function quoted(name: string): string {
  return `„${echo(name)}“`;
}

/** A name that nothing has; `none` comes with its article, such as `kein Teil`. */
function none(what: string, name: string, meant: string | null): string {
  return `Es gibt ${what} ${quoted(name)}.${hint(meant)}`;
}

/** `seal-70 (Corrablyn)`. */
function candidate({ part, maker }: NamedPart): string {
  return maker === null ? part : `${part} (${maker})`;
}

function hint(meant: string | null): string {
  return meant === null ? '' : ` War ${quoted(meant)} gemeint?`;
}

const TYPES: Readonly<Record<ValueType, string>> = {
  text: 'kein Text',
  integer: 'keine ganze Zahl',
  boolean: 'weder true noch false',
  object: 'kein Objekt',
  list: 'keine Liste',
};

const ROWS: Readonly<Record<RowFault, string>> = {
  'quote-inside': 'ein Feld mit einem Anführungszeichen darin steht selbst in Anführungszeichen',
  'after-quote': 'nach dem schließenden Anführungszeichen kommt ein Komma oder das Zeilenende',
  'unclosed-quote': 'ein Anführungszeichen wird geöffnet und nicht geschlossen',
  'count-of-fields': 'sie hat nicht so viele Felder, wie es Spalten gibt',
};

const EXPECTED: Readonly<Record<JsonExpected, string>> = {
  value: 'ein Wert',
  name: 'ein Name in doppelten Anführungszeichen',
  colon: 'ein Doppelpunkt',
  'comma-or-brace': 'ein Komma oder „}“',
  'comma-or-bracket': 'ein Komma oder „]“',
  'closing-quote': 'ein schließendes doppeltes Anführungszeichen',
  escape: 'eine Umschreibung wie \\n oder \\u00e9',
  end: 'das Ende des Textes',
};

const FOUND: Readonly<Record<Exclude<JsonFound, 'sign'>, string>> = {
  'end-of-text': 'das Ende des Textes',
  'end-of-line': 'das Ende der Zeile',
  space: 'ein Leerzeichen',
  'control-character': 'ein Steuerzeichen',
  'single-quote': 'ein einfaches Anführungszeichen',
  'double-quote': 'ein doppeltes Anführungszeichen',
};

export function germanStop({ expected, found, sign }: JsonStop): string {
  const there = found === 'sign' ? `„${sign ?? ''}“` : FOUND[found];
  return `erwartet wird ${EXPECTED[expected]}, dort steht ${there}`;
}

export const GERMAN_FAULTS: FaultWords = {
  'no-edition': () => 'Es ist noch nichts veröffentlicht.',
  'unknown-edition': ({ edition }) => `Es gibt keine Ausgabe ${edition}.`,
  'unknown-vehicle': ({ name, meant }) => none('kein Fahrzeug', name, meant),
  'unknown-part': ({ name, meant }) => none('kein Teil', name, meant),
  'vehicle-replaced': ({ name, candidates }) =>
    `${quoted(name)} wird nicht mehr gepflegt: An die Stelle traten ` +
    `${candidates.map(({ vehicle }) => vehicle).join(', ')}.`,
  'ambiguous-part': ({ name, candidates }) =>
    `${quoted(name)} steht für mehr als ein Teil: ${candidates.map(candidate).join(', ')}. Zu ` +
    'nennen ist die Kennung des Teils.',
  'sku-of-lot': ({ name, lot }) =>
    `${quoted(name)} ist kein Teil, sondern der Posten ${quoted(lot)}.`,
  'sku-of-work': ({ name, work }) =>
    `${quoted(name)} ist kein Teil, sondern die Arbeit ${quoted(work)}.`,
  'plus-read-as-space': ({ name }) =>
    `${none('kein Teil', name, null)} In einer URL steht „%2B“ für „+“.`,
  'unknown-work': ({ name, meant }) => none('keine Arbeit', name, meant),
  'work-not-for-part': ({ work }) => `${quoted(work)} geht an diesem Teil nicht.`,
  'work-may-not-apply': ({ work }) =>
    `Es ist nicht bekannt, ob ${quoted(work)} an diesem Teil geht: Dafür fehlen erfasste Werte.`,
  'work-changes-nothing': ({ work, what }) =>
    `${quoted(work)} ändert ${quoted(what)}, und das ist von diesem Teil nicht erfasst.`,
  'unknown-lot': ({ name, meant }) => none('keinen Posten', name, meant),
  'unknown-ruleset': ({ name, meant }) => none('kein Regelwerk', name, meant),
  'unknown-sku': ({ name, meant }) => `Unter ${quoted(name)} wird nichts angeboten.${hint(meant)}`,
  'ambiguous-sku': ({ name, candidates }) =>
    `${quoted(name)} steht für mehreres: ${candidates.join(', ')}. Zu nennen ist, was gemeint ist.`,
  'unknown-layout': ({ name, meant }) => none('keine Bauweise', name, meant),
  'unknown-role': ({ name, meant }) => none('keine Rolle', name, meant),
  'unknown-kind': ({ name, meant }) => none('keine Art von Anschluss', name, meant),
  'unknown-fact': ({ name, meant }) => none('kein Merkmal', name, meant),
  'not-a-value-of-fact': ({ fact, value, meant }) =>
    `${quoted(fact)} kann nicht ${quoted(value)} sein.${hint(meant)}`,
  'unknown-position': ({ vehicle, name, meant }) =>
    `${quoted(vehicle)} hat keinen Einbauplatz ${quoted(name)}.${hint(meant)}`,
  'unknown-mating': ({ vehicle, name, meant }) =>
    `${quoted(vehicle)} hat keine Verbindung ${quoted(name)}.${hint(meant)}`,
  'unknown-load': ({ vehicle, name, meant }) =>
    `${quoted(vehicle)} hat keine Last ${quoted(name)}.${hint(meant)}`,
  'not-handed': ({ position }) =>
    `${quoted(position)} hat kein Links und Rechts; zu nennen ist ein Teil.`,
  'place-of-the-part': ({ position }) =>
    `${quoted(position)} ist der Einbauplatz des Teils selbst; zu nennen ist, was daneben sitzt.`,
  'too-many-adapters': ({ mating, most }) =>
    `${quoted(mating)} nimmt höchstens ${most} Adapter hintereinander auf.`,
  'not-an-adapter': ({ part }) => `${quoted(part)} ist kein Adapter: Es hat nicht zwei Anschlüsse.`,
  'unknown-interface': ({ part, name, meant }) =>
    `Von ${quoted(part)} ist kein Anschluss ${quoted(name)} erfasst.${hint(meant)}`,
  'no-interface-recorded': ({ part }) => `Von ${quoted(part)} ist kein Anschluss erfasst.`,
  'no-sign-of-a-vin': ({ place }) =>
    `Zeichen ${place} steht in keiner Fahrzeug-Identifizierungsnummer: sie haben Buchstaben und ` +
    'Ziffern, und kein I, O oder Q, die wie Ziffern aussehen. Für ein unlesbares * schreiben.',
  'wrong-length-of-vin': ({ length }) =>
    `Eine Fahrzeug-Identifizierungsnummer hat 17 Zeichen, diese hat ${length}. Eine von vor ` +
    '1981, die anders lang sein kann, weglassen.',
  'not-a-torque': ({ text }) => text,
  'negative-torque': () => 'Ein Drehmoment ist nicht negativ.',
  'not-a-price': () => 'Das ist kein Geldbetrag wie 1850.00, der nie negativ ist.',
  'not-a-margin': () => 'Das ist keine Reserve wie 1.25: eine Zahl größer als 0.',
  'not-hours': () => 'Das ist keine Zahl von Stunden wie 8 oder 8.5.',
  'amount-at-fault': ({ text }) => text,
  'condition-at-fault': ({ text }) => text,
  'reading-of-nothing': () =>
    'Gemessen ist ein Wert eines Teils, ein Merkmal oder was an einer Stelle sitzt: Zu nennen ' +
    'ist, welches.',
  'reading-at-fault': ({ text }) => text,
  'reading-of-no-part': () =>
    'Was an einer Stelle sitzt, ist ein Teil mit seinem Namen oder „none“.',
  'measured-twice': () =>
    'Es ist zweimal gemessen, und beides weicht voneinander ab: Zu nennen ist, was gilt.',
  'reading-of-no-face': () =>
    'Zu nennen sind der Parameter und, wenn er zu einem Anschluss gehört, dieser oder seine Art; ' +
    '„none“ sagt von einem genannten Anschluss, dass das Stück keinen hat.',
  'two-faces-in-one': () =>
    'Ein Anschluss ist von einer Art und Seite: Mehrere einer Art unterscheidet „which“.',
  'face-of-no-part': ({ name, meant }) => none('keinen Anschluss', name, meant),
  'side-of-no-kind': ({ name, meant }) =>
    none('keine Seite eines solchen Anschlusses', name, meant),
  'parameter-of-no-kind': ({ name, meant }) =>
    none('keinen Parameter eines solchen Anschlusses', name, meant),
  'value-of-no-role': ({ name, meant }) => none('keinen Wert eines Teils', name, meant),
  'number-says-nothing': () => 'Nichts davon war lesbar: Die Angabe ist wegzulassen.',
  'which-hand': ({ position }) =>
    `Links und rechts von ${quoted(position)} sind verschieden: Zu sagen ist, was gemessen ist.`,
  'no-part-there': ({ position }) =>
    `Für ${quoted(position)} ist kein Teil erfasst: In „fitted“ ist zu sagen, welches es ist.`,
  'incomplete-line': ({ action, needs }) =>
    `Eine Zeile mit der Tätigkeit ${quoted(action)} nennt auch ${quoted(needs)}.`,
  'work-of-no-line': ({ work }) =>
    `Keine Zeile setzt das Teil ein, an dem ${quoted(work)} gemacht wird.`,
  'filled-twice': ({ position }) => `Zwei Zeilen setzen an ${quoted(position)} Verschiedenes ein.`,
  'not-a-route-key': () => 'Das ist kein Schlüssel eines Wegs.',
  'route-of-another-vehicle': ({ vehicle }) =>
    `Das ist der Schlüssel eines Wegs von ${quoted(vehicle)}.`,
  'not-a-grip': () => 'Das ist kein Reibwert von Reifen wie 0,9: über 0 und höchstens 2.',
  'unknown-calculation': ({ name, meant }) => none('keinen Rechner', name, meant),
  'input-at-fault': ({ text }) => text,
  'impossible-input': ({ bounds }) => `Einen solchen Wert gibt es nicht; es gibt ${bounds}.`,
  'face-at-fault': ({ text }) => text,
  'unknown-parameter': ({ name }) => `Hier gibt es keinen Parameter ${quoted(name)}.`,
  'repeated-parameter': () => 'Er steht mehr als einmal da.',
  'too-many-parameters': ({ most }) => `Eine URL hat höchstens ${most} davon; POST nimmt mehr auf.`,
  'malformed-encoding': () => 'Die Prozent-Kodierung ergibt keinen Text in UTF-8.',
  'unknown-field': ({ name }) => `Hier gibt es kein Feld ${quoted(name)}.`,
  missing: () => 'Die Angabe fehlt.',
  'wrong-type': ({ type }) => `Das ist ${TYPES[type]}.`,
  'empty-text': () => 'Der Text ist leer.',
  'empty-list': () => 'Die Liste ist leer.',
  'too-long': ({ most }) => `Der Text hat mehr als ${most} Zeichen.`,
  'too-many-items': ({ most }) => `Die Liste hat mehr als ${most} Einträge.`,
  'too-many-places': ({ most }) => `Das sind mehr als ${most} Stellen.`,
  'too-small': ({ least }) => `Die Zahl ist kleiner als ${least}.`,
  'too-large': ({ most }) => `Die Zahl ist größer als ${most}.`,
  'not-one-of': ({ values }) => `Das ist keines von ${values.join(', ')}.`,
  'unseen-characters': () => 'Darin stehen Zeichen, die kein Text für Menschen hat.',
  'not-a-place': ({ most }) =>
    'Einbauplätze, Verbindungen und Merkmale haben kleine Buchstaben, Ziffern und Bindestriche, ' +
    `höchstens ${most}.`,
  'not-a-language-tag': () => 'Das ist keine Sprachangabe wie en oder de-AT.',
  'not-a-month': () => 'Das ist kein Monat wie 2004-06.',
  'not-an-edition': () => 'Das ist keine Nummer einer Ausgabe wie 3, und auch nicht „latest“.',
  'repeated-name': ({ name }) =>
    `${quoted(name)} steht hier zweimal; nur eines von beiden würde zählen.`,
  'reserved-name': ({ name }) => `${quoted(name)} ist kein Name von irgendetwas.`,
  'too-deep': ({ most }) => `Nichts ist mehr als ${most} Ebenen tief verschachtelt.`,
  'too-many-values': ({ most }) => `Darin stehen mehr als ${most} Werte.`,
  'not-beside-vehicle': () =>
    'Wo „vehicle“ das Fahrzeug nennt, ist es durch nichts anderes zu suchen.',
  'not-beside-names': () => 'Wo „part“ nennt, was zu suchen ist, gibt es nichts zu filtern.',
  'not-a-cursor': () =>
    'Diese Angabe kommt aus keiner Antwort. Zu beginnen ist mit der ersten Seite.',
  'cursor-of-another-list': () =>
    'Die Angabe gehört zu einer anderen Liste. Zu beginnen ist mit der ersten Seite.',
  'cursor-of-another-edition': () =>
    'Die Angabe gehört zu einer anderen Ausgabe. Zu beginnen ist mit der ersten Seite.',
  'not-json': (stop) =>
    `Der Rumpf ist kein JSON: Zeile ${stop.line}, Spalte ${stop.column}, ${germanStop(stop)}.`,
  'not-utf-8': () => 'Der Rumpf ist kein Text in UTF-8.',
  'body-ended-early': () => 'Der Rumpf endete, bevor alles angekommen war.',
  'body-too-large': ({ most }) => `Der Rumpf ist größer als ${most} Byte.`,
  'body-not-json-type': () =>
    'Der Rumpf muss application/json in UTF-8 sein, und Content-Type muss das sagen.',
  'body-encoded': () => 'Der Rumpf muss unkomprimiert kommen.',
  'body-type-not-taken': ({ types }) =>
    `Der Rumpf muss eines von ${types} in UTF-8 sein, und Content-Type muss sagen, welches.`,
  'coding-not-taken': ({ codings }) => `Ein Rumpf kommt höchstens in der Kodierung ${codings}.`,
  'not-gzip': () => 'Der Rumpf ist kein gzip, obwohl Content-Encoding das sagt.',
  'expands-too-far': ({ most }) => `Der Rumpf ergibt mehr als das ${most}-fache seiner Größe.`,
  'line-too-long': ({ most }) => `Die Zeile ist länger als ${most} Byte.`,
  'row-not-utf-8': () => 'Die Zeile ist kein Text in UTF-8.',
  'malformed-row': ({ rule }) => `Das ist keine Zeile dieser Tabelle: ${ROWS[rule]}.`,
  'repeated-column': ({ name }) => `Die Spalte ${quoted(name)} gibt es zweimal.`,
  'unknown-column': ({ name }) => `Eine Spalte ${quoted(name)} gibt es hier nicht.`,
  'key-not-known': () =>
    'Der Schlüssel in Authorization ist keiner dieses Dienstes, oder er gilt nicht mehr.',
  'no-key': ({ scope }) =>
    `Dazu braucht es einen Schlüssel mit dem Recht ${scope}, und es kam keiner mit.`,
  'scope-not-granted': ({ scope }) =>
    `Dazu braucht es einen Schlüssel mit dem Recht ${scope}; dieser hat es nicht.`,
  'origin-not-granted': () => 'Dieser Schlüssel ist für andere Seiten: Origin ist keine von ihnen.',
  'question-not-in-view': ({ view, least }) =>
    `Die Sicht ${view} hat nichts von dieser Frage; ${least} hat etwas.`,
  'edition-not-in-view': ({ edition }) =>
    `Die Ausgabe ${edition} ist nicht die neueste, und ältere sind nicht für alle offen.`,
  'list-not-in-view': ({ view, field }) =>
    `Die Sicht ${view} hat hier keine ganze Liste: nennen Sie mit ${quoted(field)}, wonach Sie ` +
    'fragen.',
  'wish-not-in-view': ({ view, field }) =>
    `Was ${quoted(field)} wünscht, würde verraten, was die Sicht ${view} nicht zeigt.`,
  'url-too-long': ({ most }) =>
    `Die URL hat mehr als ${most} Byte; POST nimmt dieselben Fragen im Rumpf.`,
  'nothing-at-path': ({ path }) => `Unter ${echo(path)} gibt es nichts.`,
  'unknown-problem': ({ path }) => `Es gibt keine Art von Problem ${echo(path)}.`,
  'method-not-taken': ({ path, method, allow }) => `${echo(path)} nimmt ${allow}, nicht ${method}.`,
  'type-not-accepted': ({ type }) => `Die Antwort ist ${type}, und das schließt Accept aus.`,
};
