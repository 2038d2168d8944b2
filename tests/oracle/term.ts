/**
 * Terms as documents write them, computed from what is found at the names in them.
 */

import {
  asNumber,
  countOf,
  exactly,
  extremeOf,
  type Found,
  joined,
  nothingAt,
  sumOf,
} from './found.js';
import { fraction, readFraction, times } from './fraction.js';

/** Finds what stands behind a name. */
export type Finder = (name: string) => Found;

export function compute(raw: unknown, find: Finder): Found {
  if (typeof raw === 'number') return exactly(fraction(raw));
  if (typeof raw === 'string') return /^[-\d]/.test(raw) ? exactly(literal(raw)) : find(raw);
  if (Array.isArray(raw)) return productOf(raw.map((factor) => compute(factor, find)));
  const [[word, inner] = ['', []]] = Object.entries(raw as object) as [string, unknown][];
  const parts = (Array.isArray(inner) ? inner : [inner]).map((part) => compute(part, find));
  switch (word) {
    case 'sum':
      return sumOf(parts);
    case 'product':
      return productOf(parts);
    case 'min':
    case 'max':
      return extremeOf(word, parts);
    case 'count':
      return countOf(parts[0] ?? nothingAt('an empty list'));
    default:
      throw new Error(`no term: ${JSON.stringify(raw)}`);
  }
}

function productOf(parts: readonly Found[]): Found {
  return joined(parts, (values) => values.map(asNumber).reduce(times, fraction(1n)));
}

/** `4 mm`, `1/2`, `2 %`: exact by name. */
export function literal(text: string) {
  const [number = '', unit = ''] = text.split(' ');
  const value = readFraction(number);
  if (unit === '%') return times(value, fraction(1n, 100n));
  if (unit === '' || unit === 'mm' || unit === 'N.m') return value;
  if (unit === 'in') return times(value, fraction(254n, 10n));
  throw new Error(`no unit: ${unit}`);
}

/** The names in a term, those behind named terms included. */
export function namesIn(raw: unknown, terms: Readonly<Record<string, unknown>> = {}): string[] {
  if (typeof raw === 'string') {
    if (/^[-\d]/.test(raw)) return [];
    return raw in terms ? namesIn(terms[raw], terms) : [raw];
  }
  if (typeof raw !== 'object' || raw === null) return [];
  return Object.values(raw).flatMap((inner) => namesIn(inner, terms));
}
