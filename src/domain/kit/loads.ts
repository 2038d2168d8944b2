/**
 * How much the loads of a configuration leave: for each, the least that its rating may be over
 * the most that it may have to carry.
 */

import type { CheckResult } from '../check/result.js';
import type { Configuration } from '../judge/configuration.js';
import type { CheckConstraint, Constraint } from '../judge/constraint.js';
import { judgeMeetings } from '../judge/judge.js';
import { supposalsOf } from '../judge/supposed.js';
import { compare, type Rational } from '../quantity/rational.js';

export interface Load {
  readonly check: string;
  /** The place whose part carries it. */
  readonly position: string;
  /** Null where rating or demand is not known. */
  readonly margin: Rational | null;
  /** Its rating or its demand is not known well enough. */
  readonly isOpen: boolean;
}

/** The loads of the layout that apply, each with its margin; the worse hand counts. */
export function loadsOf(configuration: Configuration): Load[] {
  const supposals = supposalsOf(configuration);
  if (supposals.length === 0) return loadsAsTold(configuration);
  return worstOf(supposals.flatMap((one) => loadsAsTold(one.configuration)));
}

function loadsAsTold(configuration: Configuration): Load[] {
  const { layout } = configuration;
  const checks = layout.checks.filter(({ primitive }) => primitive === 'carries');
  if (checks.length === 0) return [];
  const own = { ...configuration, layout: { ...layout, matings: new Map(), checks } };
  return worstOf(
    judgeMeetings(own)
      .filter(isCheck)
      .flatMap((one) => loadOf(one) ?? []),
  );
}

/** Each load once, as the worst that it may be. */
function worstOf(all: readonly Load[]): Load[] {
  const loads = new Map<string, Load>();
  for (const load of all) {
    const other = loads.get(load.check);
    loads.set(load.check, other === undefined ? load : worse(other, load));
  }
  return [...loads.values()];
}

function isCheck(constraint: Constraint): constraint is CheckConstraint {
  return constraint.form === 'check';
}

function loadOf(constraint: CheckConstraint): Load | null {
  const [result] = constraint.checks;
  if (result === undefined) return null;
  const position = result.left.address.position ?? constraint.positions[0] ?? '';
  // What is given may be unknown all the same: no margin is told of it.
  const isOpen = constraint.computed === 'open';
  return { check: constraint.id, position, margin: isOpen ? null : marginOf(result), isOpen };
}

/** Rating over demand at its worst; null where that has no limit. */
function marginOf({ margin }: CheckResult): Rational | null {
  return margin === null || margin.measure !== 'ratio' ? null : margin.interval.low;
}

function worse(a: Load, b: Load): Load {
  if (a.isOpen !== b.isOpen) return a.isOpen ? a : b;
  if (a.margin === null) return a;
  if (b.margin === null) return b;
  return compare(a.margin, b.margin) <= 0 ? a : b;
}

/** The load with the smallest margin; null where none is known, or an open one may be smaller. */
export function weakestOf(loads: readonly Load[]): { position: string; margin: Rational } | null {
  if (loads.some(({ isOpen }) => isOpen)) return null;
  let weakest: { position: string; margin: Rational } | null = null;
  for (const { position, margin } of loads) {
    if (margin === null) continue;
    if (weakest === null || compare(margin, weakest.margin) < 0) weakest = { position, margin };
  }
  return weakest;
}
