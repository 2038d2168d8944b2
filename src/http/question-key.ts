/**
 * A question in its one form, and the key that stands for its answer: a digest of everything that
 * decides the bytes of it. Two questions that differ in their order alone are one.
 */

import { hash } from 'node:crypto';
import { ENGINE_VERSION } from '../contract/answer-head.js';

export interface Keyed {
  /** Of the edition that answers; its number, which answers name too, stands in the input. */
  readonly editionHash: string;
  readonly path: string;
  readonly mediaType: string;
  /** What the use-case is asked, all of it: edition, language, defaults filled in. */
  readonly input: object;
}

/** 256 bits in base64url. Can be had before anything is judged. */
export function keyOf({ editionHash, path, mediaType, input }: Keyed): string {
  return digestOf([ENGINE_VERSION, editionHash, path, mediaType, canonicalText(input)]);
}

export function digestOf(parts: readonly string[]): string {
  return hash('sha256', JSON.stringify(parts), 'base64url');
}

/**
 * The same value with the names of each object in the order of their code units. The use-case is
 * asked in this form too: its answer then depends on nothing that the key does not hold.
 */
export function ordered<Value>(value: Value): Value {
  return orderedValue(value) as Value;
}

function orderedValue(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(orderedValue);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([name, one]) => [name, orderedValue(one)]));
}

/** JSON, but for the numbers that JSON has no signs for: those are no `null`. */
export function canonicalText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  if (typeof value === 'number') return Object.is(value, -0) ? '-0' : String(value);
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(
    ([name, one]) => `${JSON.stringify(name)}:${canonicalText(one)}`,
  );
  return `{${fields.join(',')}}`;
}
