/**
 * Reads a question out of a URL, strictly: a parameter that nobody knows, or that is there twice,
 * is a fault that names it, since an answer to half a question would be trusted as a whole one.
 *
 * The text is taken apart here and not by `URLSearchParams`, which takes `%ff` for a letter.
 */

import { USUAL_FORM } from '../contract/fits-feed.js';
import { echo } from '../contract/json-pointer.js';
import { LIMITS } from '../contract/limits.js';
import { USUAL_ENTRIES } from '../contract/list.js';
import type { z } from '../contract/openapi-zod.js';
import {
  isListReading,
  NO_PARAMETERS,
  type Parameter,
  type ParameterGroup,
  type QueryGrammar,
  type Reading,
} from '../contract/parameters.js';
import { languageTag, PLACE_PATTERN } from '../contract/question.js';
import { wantIn, wantText } from '../contract/wish-text.js';
import { USUAL_KIT } from '../usecases/kit-input.js';
import { hasPrefix, splitNames } from '../usecases/part-names.js';
import { checkForm, formRefusal, type ReadFields } from './form.js';
import type { Place, PlacedFault } from './problem.js';

const LONGEST_PLACE = LIMITS.placeCharacters.value;

type Pair = readonly [name: string, value: string];

type Fields = Record<string, unknown>;

/** The question that a URL asks, or a `Refusal` that names every fault. */
export function questionInUrl<Schema extends z.ZodType>(
  { search }: { readonly search: string },
  grammar: QueryGrammar,
  schema: Schema,
): z.infer<Schema> {
  return checkForm(schema, readQuery(search, grammar), (at) => parameterAt(at, grammar));
}

/** `search` is what stands after the question mark. */
export function readQuery(search: string, grammar: QueryGrammar): ReadFields {
  const faults: PlacedFault[] = [];
  const pairs = pairsOf(search, faults);
  const value = emptyFields(grammar);
  const counts = new Map<ParameterGroup, number>();
  for (const [name, texts] of textsByName(pairs)) {
    const slot = slotOf(name, grammar);
    if (slot === null) {
      faults.push({ ...parameterOf(name), code: 'unknown-parameter', data: { name } });
      continue;
    }
    const { field, group, reading } = slot;
    if (texts.length > 1 && !isListReading(reading)) {
      faults.push({ ...parameterOf(name), code: 'repeated-parameter', data: {} });
    }
    if (group !== null) counts.set(group, (counts.get(group) ?? 0) + 1);
    fill(value, field, readTexts(texts, reading));
  }
  for (const [{ prefix, most }, count] of counts) {
    if (count <= most) continue;
    const data = { most, limit: 'placesInUrl' } as const;
    faults.push({ ...parameterOf(prefix), code: 'too-many-parameters', data });
  }
  return { value, faults };
}

function parameterOf(name: string): Place {
  return { parameter: echo(name) };
}

function pairsOf(search: string, faults: PlacedFault[]): Pair[] {
  const pairs: Pair[] = [];
  for (const piece of search.split('&')) {
    if (piece === '') continue;
    const sign = piece.indexOf('=');
    const spelt = sign === -1 ? piece : piece.slice(0, sign);
    const name = decode(spelt);
    const value = sign === -1 ? '' : decode(piece.slice(sign + 1));
    if (name !== null && value !== null) pairs.push([name, value]);
    else faults.push({ ...parameterOf(name ?? spelt), code: 'malformed-encoding', data: {} });
  }
  return pairs;
}

function decode(text: string): string | null {
  return decodeText(text.replaceAll('+', ' '));
}

/** Percent-encoding undone; null where what comes out is no text in UTF-8. */
export function decodeText(text: string): string | null {
  if (!text.includes('%')) return text;
  try {
    return decodeURIComponent(text);
  } catch (error) {
    if (error instanceof URIError) return null;
    throw error;
  }
}

/** The objects that hold fields of fields; what is missing in them is said by the schema. */
function emptyFields({ parameters }: QueryGrammar): Fields {
  const outer = parameters.filter(({ field }) => field.length > 1).map(({ field }) => field[0]);
  return Object.fromEntries(outer.map((name): [string, Fields] => [name, {}]));
}

function textsByName(pairs: readonly Pair[]): Map<string, [string, ...string[]]> {
  const texts = new Map<string, [string, ...string[]]>();
  for (const [name, text] of pairs) {
    const known = texts.get(name);
    if (known === undefined) texts.set(name, [text]);
    else known.push(text);
  }
  return texts;
}

interface Slot {
  readonly field: Parameter['field'];
  readonly group: ParameterGroup | null;
  readonly reading: Reading;
}

/** Where the value of a parameter goes; null where there is no such parameter. */
function slotOf(name: string, { parameters, groups }: QueryGrammar): Slot | null {
  const known = parameters.find((one) => one.name === name);
  if (known !== undefined) return { ...known, group: null };
  const dot = name.indexOf('.');
  const group = groups.find(({ prefix }) => prefix === name.slice(0, dot));
  const place = name.slice(dot + 1);
  // A longer one is said to be too long by the schema.
  if (group === undefined || !PLACE_PATTERN.test(place.slice(0, LONGEST_PLACE))) return null;
  return { field: [group.field, place], group, reading: group.reading };
}

function fill(value: Fields, [outer, inner]: Parameter['field'], read: unknown): void {
  if (inner === undefined) {
    value[outer] = read;
    return;
  }
  value[outer] ??= {};
  (value[outer] as Fields)[inner] = read;
}

/** In the one way in which it is written: no zeros before it, no plus sign, no exponent. */
const WHOLE_NUMBER = /^(0|-?[1-9]\d*)$/;

/** What is no such text stays a text, and the schema says what it should have been. */
function readTexts(texts: readonly [string, ...string[]], reading: Reading): unknown {
  const [text] = texts;
  switch (reading) {
    case 'number':
      return WHOLE_NUMBER.test(text) ? Number(text) : text;
    case 'boolean':
      return text === 'true' ? true : text === 'false' ? false : text;
    case 'list':
      return texts.flatMap(splitNames);
    case 'wants':
      return texts.flatMap(splitNames).map((name) => wantIn(name, hasPrefix));
    case 'parts':
      return texts.flatMap(splitNames).map((part) => ({ part }));
    case 'lots':
      return texts.length === 1 && isWord(text) ? text : texts.flatMap((one) => one.split(','));
    case 'text':
      return text;
  }
}

function isWord(text: unknown): boolean {
  return text === 'all' || text === 'none';
}

/** The parameter that a field of the question came from. */
export function parameterAt(path: readonly PropertyKey[], grammar: QueryGrammar): Place {
  const steps = path.map(String);
  const [first = '', second] = steps;
  const group = grammar.groups.find(({ field }) => field === first);
  if (group !== undefined && second !== undefined)
    return { parameter: `${group.prefix}.${second}` };
  const known = grammar.parameters.find(({ field }) =>
    field.every((name, index) => name === steps[index]),
  );
  return { parameter: known?.name ?? steps.join('.') };
}

/** The same for the names by which use-cases call fields: `with.clutch`, `adapters.0`. */
export function parameterCalled(at: string, grammar: QueryGrammar): Place {
  if (grammar.parameters.some(({ name }) => name === at)) return { parameter: at };
  return parameterAt(at.split('.'), grammar);
}

/**
 * The one way to write this question in a URL: parameters in the order of their names, without
 * those that say what is so anyway, with the edition and the language that answer it. However it
 * was asked, it is one address to caches. Null where a URL cannot say it: a face that is written
 * out, a part for each hand, more than a URL has room for.
 */
export function canonicalSearch(
  question: object,
  grammar: QueryGrammar,
  settled: { readonly edition?: number; readonly lang: string; readonly view?: string },
): string | null {
  const pairs = pairsIn({ ...question, ...settled }, grammar);
  if (pairs === null) return null;
  return pairs
    .filter(([name, value]) => DEFAULTS.get(name) !== value)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, value]) => `${encodeURIComponent(name)}=${encodeURIComponent(value)}`)
    .join('&');
}

function pairsIn(
  question: Readonly<Record<string, unknown>>,
  { parameters, groups }: QueryGrammar,
): Pair[] | null {
  const pairs: Pair[] = [];
  for (const [field, value] of Object.entries(question)) {
    const group = groups.find((one) => one.field === field);
    const inside = fieldsIn(value);
    if (group !== undefined && inside.length > group.most) return null;
    for (const [inner, one] of inside) {
      const known = parameters.find(({ field: [a, b] }) => a === field && b === inner);
      const name = group === undefined ? known?.name : `${group.prefix}.${inner}`;
      const texts = isMistaken(one, known) ? null : textsOf(one);
      if (name === undefined || texts === null) return null;
      pairs.push(...texts.map((text): Pair => [name, text]));
    }
  }
  return pairs;
}

/** A list of one id that would be read as the word for all. */
function isMistaken(value: unknown, known: Parameter | undefined): boolean {
  return (
    known?.reading === 'lots' && Array.isArray(value) && value.length === 1 && isWord(value[0])
  );
}

/** The fields inside a field, or the field itself where it has none. */
function fieldsIn(value: unknown): readonly (readonly [string | undefined, unknown])[] {
  const isOuter = typeof value === 'object' && value !== null && !Array.isArray(value);
  return isOuter ? Object.entries(value) : [[undefined, value]];
}

/** What stands after the sign, each time that the parameter is there; null where nothing can. */
function textsOf(value: unknown): string[] | null {
  if (typeof value === 'string') return [value];
  if (typeof value === 'number' || typeof value === 'boolean') return [String(value)];
  if (!Array.isArray(value)) return null;
  const names: string[] = [];
  for (const one of value) {
    const name = typeof one === 'object' ? wantText(one, hasPrefix) : String(one);
    if (name === null) return null;
    names.push(name);
  }
  if (names.length === 0) return null;
  if (names.some((name) => name.includes(',') && !hasPrefix(name))) return null;
  return names.some(hasPrefix) ? names : [names.join(',')];
}

/** What a question means where it does not say so. */
const DEFAULTS: ReadonlyMap<string, string> = new Map([
  ['changes', 'yes'],
  ['form', USUAL_FORM],
  ['from', USUAL_KIT.from],
  ['ignorePresent', 'false'],
  ['limit', String(USUAL_ENTRIES)],
  ['limits.inStock', String(USUAL_KIT.limits.inStock)],
  ['lots', USUAL_KIT.lots],
  ['prefer', USUAL_KIT.prefer],
  ['replaced', 'false'],
  ['routes', String(USUAL_KIT.routes)],
  ['steps', String(USUAL_KIT.steps)],
  ['undominated', String(USUAL_KIT.undominated)],
  ['units', 'recorded'],
  ['unknowns', USUAL_KIT.unknowns],
  ['workUpTo', USUAL_KIT.workUpTo],
]);

/** The language that a URL asks for, whatever else it has; undefined where none can be read. */
export function langIn(search: string): string | undefined {
  const [first, ...others] = pairsOf(search, []).filter(([name]) => name === 'lang');
  return first === undefined || others.length > 0 ? undefined : languageTag(first[1]);
}

/** For paths that take no parameters at all. */
export function refuseParameters(search: string): void {
  if (search === '') return;
  const { faults } = readQuery(search, NO_PARAMETERS);
  if (faults.length > 0) throw formRefusal(faults);
}
