/**
 * The canonical form of a document: equal content gives equal bytes, whatever the order in which
 * somebody wrote it. Content hashes are taken of it.
 *
 * Keys are sorted by UTF-16 code unit and white space is left out, as RFC 8785 has it. Left out of
 * that standard: numbers that are not whole, which the reader refuses.
 */

import { type CatalogueDocument, ENTITY_LISTS } from './document.js';
import { SURROGATE_PATTERN } from './grammar.js';

/** Deeper than any document that can be read; far beyond it the stack would not hold. */
const DEEPEST = 500;

/**
 * A JSON value as its canonical text; a field that is `undefined` is none.
 *
 * @throws RangeError for what a document cannot hold: a number that is not whole or too large to
 *   be exact, half a character, nesting more than 500 deep, and what is no JSON at all.
 */
export function canonicalJson(value: unknown): string {
  return write(value, 0);
}

function write(value: unknown, depth: number): string {
  if (depth > DEEPEST) throw new RangeError(`nested more than ${DEEPEST} deep`);
  if (typeof value === 'string') return writeString(value);
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') {
    // Minus zero is written as zero.
    if (Number.isSafeInteger(value)) return String(value);
    throw new RangeError(`no whole number that is exact: ${value}`);
  }
  if (Array.isArray(value)) {
    // Not by `map`, which passes over the holes of an array.
    return `[${Array.from(value, (item: unknown) => write(item, depth + 1)).join(',')}]`;
  }
  if (typeof value === 'object') {
    const fields = Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .sort(([a], [b]) => byCodeUnit(a, b))
      .map(([key, item]) => `${writeString(key)}:${write(item, depth + 1)}`);
    return `{${fields.join(',')}}`;
  }
  throw new RangeError(`no JSON value: ${typeof value}`);
}

function writeString(text: string): string {
  if (SURROGATE_PATTERN.test(text)) throw new RangeError('half a character in a text');
  return JSON.stringify(text);
}

/** The order of ids and keys, whatever the language of the machine. */
export function byCodeUnit(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/**
 * A document with its lists sorted by id and its offers left out: those are kept apart and no
 * edition's hash covers them. Empty lists are left out too. The order within an entity means
 * something and stays: a layout's positions, a fact's values.
 */
export function canonicalDocument(document: CatalogueDocument): CatalogueDocument {
  const { offers: _, ...kept } = document;
  const whole = Object.entries(kept).flatMap(([key, value]): [string, unknown][] => {
    if (!ENTITY_LISTS.some((list) => list === key)) return [[key, value]];
    const entities = value as readonly { readonly id: string }[];
    return entities.length === 0
      ? []
      : [[key, entities.toSorted((a, b) => byCodeUnit(a.id, b.id))]];
  });
  return Object.fromEntries(whole) as unknown as CatalogueDocument;
}
