/**
 * What a part's record says of one thing that was told of a piece, as a code and its data; and what
 * that comes to. It decides nothing.
 */

import type { Outcome } from '../check/state.js';
import type { Compared } from './compared.js';

/** What of the question a finding is about, and which of several. */
export interface ToldAt {
  readonly field: 'role' | 'hand' | 'vehicle' | 'numbers' | 'measured';
  /** Counted from 0; null where there is one of them. */
  readonly index: number | null;
}

/** The record agrees, does not say, or cannot be so. */
const STATES = {
  'role-agrees': 'holds',
  'other-role': 'fails',
  'hand-agrees': 'holds',
  'hand-not-recorded': 'open',
  'other-hand': 'fails',
  'fitted-by-works': 'holds',
  'not-fitted-by-works': 'open',
  'number-agrees': 'holds',
  'number-not-recorded': 'open',
  'other-number': 'fails',
  'value-agrees': 'holds',
  'value-not-recorded': 'open',
  'value-only-inferred': 'open',
  'value-only-reported': 'open',
  'value-differs': 'fails',
  'face-absent': 'holds',
  'face-there': 'fails',
  'told-face-not-recorded': 'open',
  'no-such-face': 'fails',
  'no-face-agrees': 'fails',
  'other-kind': 'fails',
  'other-side': 'fails',
} as const satisfies Readonly<Record<string, Outcome>>;

type FindingCode = keyof typeof STATES;

/** Of a face as a whole. */
export type FaceCode =
  | 'face-absent'
  | 'face-there'
  | 'told-face-not-recorded'
  | 'no-such-face'
  | 'no-face-agrees'
  | 'other-kind'
  | 'other-side';

type NumberCode = 'number-agrees' | 'number-not-recorded' | 'other-number';

type PieceCode = Exclude<FindingCode, FaceCode | NumberCode | Compared['code']>;

/** `face` is null for a value of the part itself, and for a face that is told by its kind alone. */
export type FaceFinding = { readonly at: ToldAt; readonly face: string | null } & (
  | ({ readonly about: 'value' } & Compared)
  | { readonly about: 'face'; readonly code: FaceCode; readonly kind: string | null }
);

export type Finding =
  | FaceFinding
  | { readonly at: ToldAt; readonly about: 'piece'; readonly code: PieceCode }
  | {
      readonly at: ToldAt;
      readonly about: 'number';
      readonly code: NumberCode;
      /** As it was read. */
      readonly number: string;
    };

export function stateOf({ code }: Pick<Finding, 'code'>): Outcome {
  return STATES[code];
}
