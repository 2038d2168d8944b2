/**
 * The three outcomes and how they are joined (strong Kleene logic), and what evidence may do:
 * `inferred` values may fail a check and never hold it, `reported` ones may do neither.
 */

import type { EvidenceRecord } from '../../src/domain/catalogue/document.js';

export type Outcome = 'holds' | 'open' | 'fails';
export type State = Outcome | 'given';
export type Basis = NonNullable<EvidenceRecord['basis']>;

/** From worst to best. */
export const OUTCOMES: readonly Outcome[] = ['fails', 'open', 'holds'];

export function worst(outcomes: readonly Outcome[]): Outcome {
  return OUTCOMES.find((outcome) => outcomes.includes(outcome)) ?? 'holds';
}

export function best(outcomes: readonly Outcome[]): Outcome {
  return [...OUTCOMES].reverse().find((outcome) => outcomes.includes(outcome)) ?? 'fails';
}

export function opposite(outcome: Outcome): Outcome {
  if (outcome === 'open') return 'open';
  return outcome === 'holds' ? 'fails' : 'holds';
}

/** Strongest first. */
const BASES: readonly Basis[] = ['built', 'measured', 'drawing', 'maker', 'inferred', 'reported'];

export function weakest(bases: readonly Basis[]): Basis | null {
  return BASES.findLast((basis) => bases.includes(basis)) ?? null;
}

export function strongest(bases: readonly Basis[]): Basis | null {
  return BASES.find((basis) => bases.includes(basis)) ?? null;
}

export function isFirstHand(basis: Basis | null): boolean {
  return basis === 'measured' || basis === 'built';
}

export function canDecide(basis: Basis): boolean {
  return basis !== 'inferred' && basis !== 'reported';
}

/** Which records are believed; those that are not count as missing. */
export type Trust = (basis: Basis) => boolean;

export const trustAll: Trust = () => true;
const trustInferred: Trust = (basis) => basis !== 'reported';

export interface Weighed {
  readonly outcome: Outcome;
  /** The records that it took to decide it; all of them where it is open. */
  readonly trust: Trust;
}

/** Judges with weak values missing first, then with inferred ones, which may only fail it. */
export function weigh(judgeWith: (trust: Trust) => Outcome): Weighed {
  const decided = judgeWith(canDecide);
  if (decided !== 'open') return { outcome: decided, trust: canDecide };
  if (judgeWith(trustInferred) === 'fails') return { outcome: 'fails', trust: trustInferred };
  return { outcome: 'open', trust: trustAll };
}
