/**
 * The parts that German sentences are made of. Nobody knows the gender of a part's name, so names
 * stand in quotes or behind a colon, without an article, and no sentence bends them: whose value it
 * is stands in brackets behind the value, and a place is called `Einbauplatz „…“`.
 */

import { isOfPart, isSameParameter } from './phrases.js';
import type { Named, NamedValue, ReasonData } from './reason.js';
import { LONGEST_PLACES } from './sentence.js';

export const HANDS = { left: 'links', right: 'rechts' } as const;

/** `„Getriebe, spät“`, `„Rad 15 Zoll“ (Vorderrad)`; where nobody recorded a part, what is there. */
export function label(named: Named | undefined): string {
  if (named === undefined) return 'dieses Teil';
  if (named.part === null) {
    return named.position === null ? 'ein Teil' : `was ${fittedAt(named)} eingebaut ist`;
  }
  const [name = '', ...where] = nameAndPlace(named);
  return where.length === 0 ? name : `${name} (${where.join(', ')})`;
}

/** The name in quotes, then place and side where the name does not say them already. */
function nameAndPlace({ positionName: place, partName, part, hand }: Named): string[] {
  const name = partName ?? part ?? '';
  const isIn = (word: string) => name.toLowerCase().includes(word.toLowerCase());
  const side = hand === null ? null : HANDS[hand];
  return [`„${name}“`, ...[place, side].flatMap((word) => (word && !isIn(word) ? [word] : []))];
}

export function side(hand: Named['hand'] | undefined): string | null {
  return hand === null || hand === undefined ? null : HANDS[hand];
}

/** `am Einbauplatz „Hintere Antriebswelle“ (links)`. */
export function fittedAt(named: Named | undefined): string {
  return `am ${seat(named)}`;
}

/** `Einbauplatz „Hintere Antriebswelle“`, whichever side. */
export function place(named: Named | undefined): string {
  const name = named?.positionName ?? named?.position ?? null;
  return name === null ? 'Einbauplatz' : `Einbauplatz „${name}“`;
}

function seat(named: Named | undefined): string {
  const hand = side(named?.hand);
  return hand === null ? place(named) : `${place(named)} (${hand})`;
}

/** Large at the start of a sentence, where the name of a value begins with an adjective. */
export function start(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function parameter(value: NamedValue | undefined): string {
  return value?.parameterName ?? value?.parameter?.replaceAll('-', ' ') ?? 'Wert';
}

export function shown(value: NamedValue | undefined): string {
  return value?.value?.text ?? 'nicht erfasst';
}

/** ` („…“)`, ` (Einbauplatz „…“)`; nothing for a fact of the vehicle or a computed value. */
export function ofPart(value: NamedValue | undefined): string {
  if (!isOfPart(value)) return '';
  return ` (${value.part === null ? seat(value) : nameAndPlace(value).join(', ')})`;
}

/** `Zentrierdurchmesser 47 mm („…“)`; a computed value has no part, and perhaps no name either. */
export function told(value: NamedValue | undefined): string {
  const isNameless = value?.parameterName == null && value?.parameter == null;
  return isNameless ? owned(value) : `${parameter(value)} ${owned(value)}`;
}

export function owned(value: NamedValue | undefined): string {
  return `${shown(value)}${ofPart(value)}`;
}

/** `Zentrierdurchmesser („…“)`, where the value itself is not told. */
export function named(value: NamedValue | undefined): string {
  return `${parameter(value)}${ofPart(value)}`;
}

/** Both values; what they are is said once where it is the same. */
export function compared(data: ReasonData): string {
  const { left, right } = data;
  return `${told(left)} gegen ${isSameParameter(data) ? owned(right) : told(right)}`;
}

export function lead({ says }: ReasonData): string {
  return says === undefined ? '' : `${says} `;
}

/** `Anschluss „hinten“ (Gelenkwellenflansch)`; it can stand after `am` and after `den`. */
export function face(named: Named | undefined): string {
  const name = named?.interface?.replaceAll('-', ' ') ?? 'ohne Namen';
  const kind = named?.kindName ?? null;
  return kind === null ? `Anschluss „${name}“` : `Anschluss „${name}“ (${kind})`;
}

/** What nobody recorded, each thing once. */
export function unrecorded({ missing = [] }: ReasonData): string {
  const things = missing.map((value) =>
    value.part === null && value.position !== null
      ? `was ${fittedAt(value)} eingebaut ist`
      : named(value),
  );
  return things.length === 0 ? 'ein Wert, der gebraucht wird' : and([...new Set(things)]);
}

/** What is set, ordered or picked so that it suits. */
export function madeToSuit({ choices = [] }: ReasonData): string {
  return and(
    choices.map((one) => (one.value === null ? `${parameter(one)} nach Bedarf` : told(one))),
  );
}

/** A part by its name alone. */
export function quoted(name: string | null | undefined): string {
  return name === null || name === undefined ? 'Das Teil' : `„${name}“`;
}

export function and(names: readonly string[]): string {
  return names.length <= 1
    ? names.join('')
    : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;
}

/** At which places; a summary has no room for long names. */
export function places({ names = [] }: ReasonData): string {
  if (names.length === 0) return '';
  const where = names.length === 1 ? 'am Einbauplatz' : 'an den Einbauplätzen';
  const said = ` ${where} ${and(names.map(quoted))}`;
  const isShort = names.length === 1 || said.length <= LONGEST_PLACES;
  return isShort ? said : ` an ${names.length} Einbauplätzen`;
}

/** `, auf ±0,05 mm genau, per Messschieber`, as far as that is known. */
export function precision({ needed, tool }: ReasonData): string {
  const fine = needed?.text == null ? '' : `, auf ${needed.text} genau`;
  return tool === undefined ? fine : `${fine}, per ${tool}`;
}
