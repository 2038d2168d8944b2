/**
 * The canonical form of a document: equal content gives equal bytes, whatever the order in which
 * somebody wrote it. Content hashes are taken of it.
 *
 * Keys are sorted by UTF-16 code unit and white space is left out, as RFC 8785 has it; numbers
 * are whole here (the reader refuses others), so their canonical text is their plain one.
 */

import { type CatalogueDocument, ENTITY_LISTS } from './document.js';

/** A JSON value as its canonical text. Throws a RangeError for what a document cannot hold. */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') {
    return JSON.stringify(value);
  }
  if (typeof value === 'number') {
    if (!Number.isSafeInteger(value)) throw new RangeError(`no whole number: ${value}`);
    return String(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object') {
    const fields = Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .sort(([a], [b]) => byCodeUnit(a, b))
      .map(([key, item]) => `${JSON.stringify(key)}:${canonicalJson(item)}`);
    return `{${fields.join(',')}}`;
  }
  throw new RangeError(`no JSON value: ${typeof value}`);
}

export function byCodeUnit(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/**
 * A document with its lists sorted by id and its offers left out: those are kept apart and no
 * edition's hash covers them. Empty lists are left out too.
 */
export function canonicalDocument(document: CatalogueDocument): CatalogueDocument {
  const { offers: _, ...facts } = document;
  const sorted: Record<string, unknown> = { ...facts };
  for (const name of ENTITY_LISTS) {
    if (name === 'offers') continue;
    const list = facts[name];
    if (list === undefined || list.length === 0) delete sorted[name];
    else sorted[name] = [...list].sort((a, b) => byCodeUnit(a.id, b.id));
  }
  return sorted as unknown as CatalogueDocument;
}
