/**
 * Three-valued outcomes (strong Kleene logic) and the grades of evidence behind them.
 *
 * `holds`, `open`, `fails` are what a check can come to; `given` is what the vehicle already
 * is, and counts as `holds` wherever states are combined.
 */

/** The best first. */
export const OUTCOMES = ['holds', 'open', 'fails'] as const;
export type Outcome = (typeof OUTCOMES)[number];
export type State = Outcome | 'given';
export type Severity = 'must' | 'caution';

/** Where a value comes from, strongest first. */
export const BASES = ['built', 'measured', 'drawing', 'maker', 'inferred', 'reported'] as const;
export type Basis = (typeof BASES)[number];

/** What a basis may do: decide both ways, only fail a check, or only open one. */
export type Grade = 'decides' | 'fails-only' | 'opens-only';

export function gradeOf(basis: Basis): Grade {
  if (basis === 'inferred') return 'fails-only';
  if (basis === 'reported') return 'opens-only';
  return 'decides';
}

/** The weaker of two bases; `null` stands for "no value was needed" and never weakens. */
export function weaker(a: Basis | null, b: Basis | null): Basis | null {
  if (a === null) return b;
  if (b === null) return a;
  return BASES.indexOf(a) >= BASES.indexOf(b) ? a : b;
}

/** A record that settles a contradiction: somebody put the thing on the bench or built it. */
export function isFirstHand(basis: Basis | null): boolean {
  return basis === 'measured' || basis === 'built';
}

/** Kleene AND: one failure decides, else one open point keeps it open. */
export function allOf(outcomes: Iterable<Outcome>): Outcome {
  let result: Outcome = 'holds';
  for (const outcome of outcomes) {
    if (outcome === 'fails') return 'fails';
    if (outcome === 'open') result = 'open';
  }
  return result;
}

/** Kleene OR: one success decides, else one open point keeps it open. */
export function anyOf(outcomes: Iterable<Outcome>): Outcome {
  let result: Outcome = 'fails';
  for (const outcome of outcomes) {
    if (outcome === 'holds') return 'holds';
    if (outcome === 'open') result = 'open';
  }
  return result;
}

export function negation(outcome: Outcome): Outcome {
  if (outcome === 'holds') return 'fails';
  return outcome === 'fails' ? 'holds' : 'open';
}

/** `given` counts as `holds`. */
export function outcomeOf(state: State): Outcome {
  return state === 'given' ? 'holds' : state;
}
