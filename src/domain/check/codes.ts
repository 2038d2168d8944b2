/**
 * Whether comparisons of codes that are open one by one can all be true: a code that nobody has
 * recorded may be any, but it is one code in all of them.
 *
 *   one clashes:  p = q, q = 'a', p one of 'b', 'c'
 *
 * Codes that must be equal are one class; a class is possible as long as some code is allowed to
 * all that are in it.
 */

import type { CodeReading } from './reading.js';

/** Two codes that must be equal, or one that must be among some. */
export type CodeComparison =
  | { readonly is: 'equal'; readonly sides: readonly [CodeReading, CodeReading] }
  | { readonly is: 'one-of'; readonly code: CodeReading; readonly among: readonly string[] };

/** Codes that are equal, what they may be (null for any), and which comparisons say so. */
interface CodeClass {
  readonly allowed: readonly string[] | null;
  readonly from: readonly number[];
}

/**
 * The comparisons (by index) that cannot all be true; null where all of them can.
 *
 * @param comparisons undefined for what compares no codes
 */
export function codeClash(
  comparisons: readonly (CodeComparison | undefined)[],
): readonly number[] | null {
  const classes = new Map<string, CodeClass>();
  for (const [index, comparison] of comparisons.entries()) {
    if (comparison === undefined) continue;
    const codes = comparison.is === 'equal' ? comparison.sides : [comparison.code];
    // A code without a key is read once: nothing else can be compared with the same one.
    const named = codes.map((code, at) => [code.key ?? `${index}/${at}`, code.codes] as const);
    const own = named.map(([key, allowed]) => classes.get(key) ?? { allowed, from: [] });
    const among = comparison.is === 'one-of' ? [{ allowed: comparison.among, from: [] }] : [];
    const joined = [...own, ...among].reduce(both, { allowed: null, from: [index] });
    if (joined.allowed?.length === 0) return joined.from;
    const keys = new Set(named.map(([key]) => key));
    for (const [key, known] of classes) if (own.includes(known)) keys.add(key);
    for (const key of keys) classes.set(key, joined);
  }
  return null;
}

function both(a: CodeClass, b: CodeClass): CodeClass {
  const from = [...new Set([...a.from, ...b.from])].sort((x, y) => x - y);
  if (a.allowed === null || b.allowed === null) return { allowed: a.allowed ?? b.allowed, from };
  return { allowed: a.allowed.filter((code) => b.allowed?.includes(code)), from };
}
