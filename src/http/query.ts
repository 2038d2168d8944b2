/**
 * Reads a question out of a URL, strictly: a parameter that nobody knows, or that is there twice,
 * is a fault that names it, since an answer to half a question would be trusted as a whole one.
 *
 * The text is taken apart here and not by `URLSearchParams`, which takes `%ff` for a letter.
 */

import { echo } from '../contract/json-pointer.js';
import {
  NO_PARAMETERS,
  type ParameterGroup,
  type QueryGrammar,
  type Reading,
} from '../contract/parameters.js';
import type { FaultWire } from '../contract/problem.js';
import { PLACE_PATTERN } from '../contract/question.js';
import { formRefusal, type Place, type ReadFields } from './form.js';

export interface ReadQuery extends ReadFields {
  /** Names and values as they stood there, decoded. */
  readonly pairs: readonly Pair[];
}

export type Pair = readonly [name: string, value: string];

type Fields = Record<string, unknown>;

/** `search` is what stands after the question mark. */
export function readQuery(search: string, grammar: QueryGrammar): ReadQuery {
  const faults: FaultWire[] = [];
  const pairs = pairsOf(search, faults);
  const value = emptyFields(grammar);
  const seen = new Set<string>();
  const counts = new Map<ParameterGroup, number>();
  for (const [name, text] of pairs) {
    if (seen.has(name)) {
      faults.push(fault(name, 'repeated-parameter', 'It is there more than once.'));
      continue;
    }
    seen.add(name);
    if (
      fillParameter(value, name, text, grammar) ||
      fillGroup(value, name, text, grammar, counts)
    ) {
      continue;
    }
    const known = `There is no parameter "${echo(name)}" here.`;
    faults.push(fault(name, 'unknown-parameter', known));
  }
  for (const [{ prefix, most }, count] of counts) {
    if (count <= most) continue;
    const text = `A URL has at most ${most} of them; POST takes more.`;
    faults.push(fault(prefix, 'too-many', text));
  }
  return { value, faults, pairs };
}

function fault(parameter: string, code: string, text: string): FaultWire {
  return { parameter: echo(parameter), code, text };
}

function pairsOf(search: string, faults: FaultWire[]): Pair[] {
  const pairs: Pair[] = [];
  for (const piece of search.split('&')) {
    if (piece === '') continue;
    const sign = piece.indexOf('=');
    const name = decode(sign === -1 ? piece : piece.slice(0, sign));
    const value = sign === -1 ? '' : decode(piece.slice(sign + 1));
    if (name !== null && value !== null) pairs.push([name, value]);
    else {
      const text = 'Its percent-encoding is no text in UTF-8.';
      faults.push(fault(name ?? piece, 'malformed', text));
    }
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

function fillParameter(
  value: Fields,
  name: string,
  text: string,
  { parameters }: QueryGrammar,
): boolean {
  const known = parameters.find((one) => one.name === name);
  if (known === undefined) return false;
  const [outer, inner] = known.field;
  const read = readText(text, known.reading);
  if (inner === undefined) value[outer] = read;
  else (value[outer] as Fields)[inner] = read;
  return true;
}

function fillGroup(
  value: Fields,
  name: string,
  text: string,
  { groups }: QueryGrammar,
  counts: Map<ParameterGroup, number>,
): boolean {
  const dot = name.indexOf('.');
  const group = groups.find(({ prefix }) => prefix === name.slice(0, dot));
  const place = name.slice(dot + 1);
  if (group === undefined || !PLACE_PATTERN.test(place)) return false;
  counts.set(group, (counts.get(group) ?? 0) + 1);
  value[group.field] ??= {};
  (value[group.field] as Fields)[place] = readText(text, group.reading);
  return true;
}

/** What is no such text stays a text, and the schema says what it should have been. */
function readText(text: string, reading: Reading): unknown {
  switch (reading) {
    case 'number':
      return /^\d{1,15}$/.test(text) ? Number(text) : text;
    case 'boolean':
      return text === 'true' ? true : text === 'false' ? false : text;
    case 'list':
      return text.split(',');
    case 'text':
      return text;
  }
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
 * The one way to write this question: parameters in the order of their names, without those that
 * say what is so anyway, with the edition and the language that answer it. Two URLs that ask the
 * same are one address to caches.
 */
export function canonicalSearch(
  pairs: readonly Pair[],
  { edition, lang }: { readonly edition: number; readonly lang: string },
): string {
  const kept = pairs.filter(
    ([name, value]) => name !== 'edition' && name !== 'lang' && DEFAULTS.get(name) !== value,
  );
  const all: Pair[] = [...kept, ['edition', String(edition)], ['lang', lang]];
  return all
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, value]) => `${encodeURIComponent(name)}=${encodeURIComponent(value)}`)
    .join('&');
}

/** What a question means where it does not say so. */
const DEFAULTS: ReadonlyMap<string, string> = new Map([
  ['changes', 'no'],
  ['ignorePresent', 'false'],
]);

/** For paths that take no parameters at all. */
export function refuseParameters(search: string): void {
  if (search === '') return;
  const { faults } = readQuery(search, NO_PARAMETERS);
  if (faults.length > 0) throw formRefusal(faults);
}
