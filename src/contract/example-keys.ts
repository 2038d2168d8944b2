/**
 * Keys as examples show them. They have the form of a key and none of its randomness, so that they
 * open nothing anywhere but in the service that is asked for the examples.
 */

import type { Scope } from '../domain/access.js';

function keyOf(id: string): string {
  return `fy_${id}_${'A'.repeat(43)}`;
}

/** Of nobody. */
export const ENDED_KEY = keyOf('departed');

/** Of whoever may see everything and ask it in many lines. */
export const WIDE_KEY = keyOf('workshop');

/** Of whoever may say what went on, and ask nothing. */
export const NARROW_KEY = keyOf('reporter');

/** What the example keys open. */
export const EXAMPLE_KEYS: ReadonlyMap<string, readonly Scope[]> = new Map([
  [WIDE_KEY, ['full', 'batch']],
  [NARROW_KEY, ['report']],
]);

export function withKey(key: string): Readonly<Record<string, string>> {
  return { authorization: `Bearer ${key}` };
}
