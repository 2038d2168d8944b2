/**
 * The parts that English sentences are made of: how a part, a face and a value are named. A part
 * is named by what a customer calls it, with its place where the name does not say that already.
 */

import { isOfPart, isSameParameter } from './phrases.js';
import type { Named, NamedValue, ReasonData } from './reason.js';
import { LONGEST_PLACES } from './sentence.js';

/** `“Six-speed gearbox, late”`, `front wheel “15-inch wheel”`; `whatever is fitted as clutch`. */
export function label(named: Named | undefined): string {
  if (named === undefined) return 'it';
  const { positionName: place, partName: part, hand } = named;
  const side = hand === null || part?.includes(hand) ? '' : ` (${hand})`;
  if (part === null) return place === null ? 'a part' : `whatever is ${fittedAs(named)}`;
  const says = place !== null && !part.toLowerCase().includes(place.toLowerCase());
  return says ? `${lower(place)}${side} “${part}”` : `“${part}”${side}`;
}

/** `fitted as rear half-shaft (left)`, for what nobody recorded. */
export function fittedAs(named: Named | undefined): string {
  const side = named?.hand === null || named?.hand === undefined ? '' : ` (${named.hand})`;
  return `fitted as ${lower(named?.positionName ?? 'a part')}${side}`;
}

/** Small at the start, except where the word is an abbreviation, such as ABS. */
export function lower(text: string): string {
  return /^.\p{Lu}/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}

export function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function parameter(value: NamedValue | undefined): string {
  return value?.parameterName ?? value?.parameter?.replaceAll('-', ' ') ?? 'value';
}

export function shown(value: NamedValue | undefined): string {
  return value?.value?.text ?? 'not recorded';
}

/** ` of “…”`; nothing for a fact of the vehicle or a computed value. */
export function ofPart(value: NamedValue | undefined): string {
  return isOfPart(value) ? ` of ${label(value)}` : '';
}

/** `register diameter 47 mm (“…”)`; a computed value has no part, and perhaps no name either. */
export function told(value: NamedValue | undefined): string {
  const isNameless = value?.parameterName == null && value?.parameter == null;
  return isNameless ? owned(value) : `${parameter(value)} ${owned(value)}`;
}

/** `47 mm (“…”)`; a computed value has no part. */
export function owned(value: NamedValue | undefined): string {
  return isOfPart(value) ? `${shown(value)} (${label(value)})` : shown(value);
}

/** Both values; what they are is said once where it is the same. */
export function compared(data: ReasonData): string {
  const { left, right } = data;
  return `${told(left)} against ${isSameParameter(data) ? owned(right) : told(right)}`;
}

/** A part by its name alone. */
export function quoted(name: string | undefined): string {
  return name === undefined ? 'The part' : `“${name}”`;
}

export function lead({ says }: ReasonData): string {
  return says === undefined ? '' : `${says} `;
}

export function face(named: Named | undefined): string {
  const name = named?.interface?.replaceAll('-', ' ') ?? 'nameless';
  const kind = named?.kindName ?? null;
  return kind === null ? `“${name}” face` : `“${name}” face (${kind})`;
}

/** `an involute spline`, `a bolted flange`. */
export function oneOf(kindName: string | null | undefined): string {
  const name = kindName ?? 'face';
  return `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${name}`;
}

/** What nobody recorded, each thing once. */
export function unrecorded({ missing = [] }: ReasonData): string {
  const things = missing.map((value) =>
    value.part === null && value.position !== null
      ? `what is ${fittedAs(value)}`
      : `the ${parameter(value)}${ofPart(value)}`,
  );
  return things.length === 0 ? 'a value that is needed' : and([...new Set(things)]);
}

/** What is set, ordered or picked so that it suits. */
export function madeToSuit({ choices = [] }: ReasonData): string {
  return and(choices.map((one) => (one.value === null ? `${parameter(one)} to suit` : told(one))));
}

export function and(names: readonly string[]): string {
  return names.length <= 1
    ? names.join('')
    : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

export function things(count: number): string {
  return count === 1 ? 'one thing' : `${count} things`;
}

/** At which of several places; a summary has no room for long names. */
export function places({ names = [] }: ReasonData): string {
  if (names.length === 0) return '';
  const said = ` as ${and(names.map(lower))}`;
  return names.length === 1 || said.length <= LONGEST_PLACES ? said : ` at ${names.length} places`;
}

/** ` with a vernier caliper to ±0.05 mm`, as far as that is known. */
export function precision({ needed, tool }: ReasonData): string {
  const how = tool === undefined ? '' : ` with ${oneOf(tool)}`;
  return needed?.text == null ? how : `${how} to ${needed.text}`;
}
