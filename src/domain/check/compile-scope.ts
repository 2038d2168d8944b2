/**
 * What the readers of checks and conditions share: where names are looked up, and the place in
 * the document that is being read.
 */

import { type FaultList, quoted, SORTS } from '../catalogue/faults.js';
import { nameOf } from '../quantity/unit.js';
import type { Reference, Scope, TermShape } from './term.js';

/** What conditions may speak of beside values; kinds know neither positions nor matings. */
export interface ConditionScope extends Scope {
  readonly positions: ReadonlySet<string>;
  readonly matings: ReadonlySet<string>;
  readonly parts: ReadonlySet<string>;
  /** The two names that a shorthand such as `"equal": "pattern"` stands for, or null. */
  bothSides(name: string): readonly [string, string] | null;
  /** Whether a code is one that this reference can have; unknown codes are doubtful. */
  knowsCode(reference: Reference, code: string): boolean;
  /** The codes that this reference can have, where they are known, for hints. */
  codesOf?(reference: Reference): Iterable<string>;
  /** Whether the fault lies with what is named, and is said there. */
  isLost?(sort: 'positions' | 'matings' | 'parts', name: string): boolean;
}

export type Raw = Readonly<Record<string, unknown>>;

/** One object of a document that is read as a check or a condition. */
export interface Place {
  readonly raw: Raw;
  readonly scope: ConditionScope;
  readonly pointer: string;
  readonly list: FaultList;
}

/** What a term is, in words: `a length`, `a code`, `a list`. */
export function sayShape(shape: TermShape): string {
  if (shape.is === 'number') return nameOf(shape.dimension);
  return shape.is === 'points' ? 'a set of points' : `a ${shape.is}`;
}

/** Says that nothing has this name, unless the fault lies with what is named. */
export function unknownName(
  { scope, pointer, list }: Place,
  sort: 'positions' | 'matings' | 'parts',
  name: unknown,
): void {
  const { one, code } = SORTS[sort];
  if (typeof name !== 'string') {
    list.fault(pointer, code, `Wanted here: the id of a ${one}.`);
  } else if (scope.isLost?.(sort, name) !== true) {
    const text = `There is no ${one} ${quoted(name)}.${list.guess(name, scope[sort])}`;
    list.fault(pointer, code, text);
  }
}
