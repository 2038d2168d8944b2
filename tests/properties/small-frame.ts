/**
 * What a random document is put together from before its vehicles and questions: how large it may
 * be, and its places, parts and names.
 */

import fc from 'fast-check';
import type {
  KindRecord,
  PartRecord,
  PositionRecord,
  RoleRecord,
} from '../../src/domain/catalogue/document.js';
import type { Vocabulary } from './small-rule.js';

export const MOST_PLACES = 5;
export const MOST_ROLES = 4;
export const PARTS_A_ROLE = 3;

export function five<Value>(one: fc.Arbitrary<Value>): fc.Arbitrary<Value[]> {
  return fc.array(one, { minLength: MOST_PLACES, maxLength: MOST_PLACES });
}

export type Picked<From> = From extends fc.Arbitrary<infer Value> ? Value : never;

export interface Frame {
  readonly positions: readonly PositionRecord[];
  readonly matings: readonly string[];
  readonly kinds: readonly KindRecord[];
  readonly roles: readonly RoleRecord[];
  readonly parts: readonly PartRecord[];
  readonly words: Vocabulary;
}

/** The parts that may stand at a place, for a hand. */
export function partsFor(
  frame: Pick<Frame, 'parts'>,
  position: PositionRecord,
  hand: 'left' | 'right' | null,
) {
  return frame.parts.filter(
    (part) =>
      part.roles.some((role) => position.roles.includes(role)) &&
      (hand === null || part.hand === undefined || part.hand === hand),
  );
}
