/**
 * How much the loads of a configuration leave: for each, the least that its rating may be over
 * the most that it may have to carry. And the same turned round: the greatest engine torque that
 * every part still carries.
 *
 * Demands are the layout's own terms. Those that a question's engine torque enters are asked for
 * with a torque of one and of two newton metres: what doubles is in proportion to it, and can be
 * turned round; what does not, such as a wheel under the weight of the car, bounds no torque.
 */

import type { Use } from '../check/coupling.js';
import type { Reading } from '../check/reading.js';
import { type CheckResult, isUnrecorded } from '../check/result.js';
import type { Configuration } from '../judge/configuration.js';
import type { CheckConstraint, Constraint } from '../judge/constraint.js';
import { judgeMeetings } from '../judge/judge.js';
import { supposalsOf } from '../judge/supposed.js';
import {
  equalIntervals,
  type Interval,
  minimumInterval,
  point,
  scaleInterval,
} from '../quantity/interval.js';
import { compare, ONE, type Rational, rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import { greatestTorque as engineTorqueAt } from './torque-path.js';

export interface Load {
  readonly check: string;
  /** The place whose part carries it. */
  readonly position: string;
  /** Null where rating or demand is not known. */
  readonly margin: Rational | null;
  /** Its rating or its demand is not known well enough. */
  readonly isOpen: boolean;
  /** What it can bear and what it has to; null where nobody knows. */
  readonly rating: Interval | null;
  readonly demand: Interval | null;
  readonly dimension: Dimension;
  /** What was read of both and nobody recorded. */
  readonly missing: readonly Reading[];
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
  const { left, right } = result;
  return {
    check: constraint.id,
    position,
    margin: isOpen ? null : marginOf(result),
    isOpen,
    rating: left.interval,
    demand: right?.interval ?? null,
    dimension: left.dimension ?? '1',
    missing: result.readings.filter(isUnrecorded),
  };
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

const TWO = rational(2);
const WHOLE = point(ONE);

/** What each load has to carry for each newton metre of engine torque. */
export function demandsByTorque(configuration: Configuration): ReadonlyMap<string, Interval> {
  const [one, two] = [ONE, TWO].map((torque) => {
    const asked = { interval: point(torque), text: '' };
    const loads = loadsOf({ ...configuration, torque: asked });
    return new Map(loads.map(({ check, demand }) => [check, demand]));
  });
  const found = new Map<string, Interval>();
  for (const [check, demand] of one ?? []) {
    const twice = two?.get(check) ?? null;
    if (demand === null || twice === null) continue;
    if (equalIntervals(scaleInterval(demand, TWO), twice)) found.set(check, demand);
  }
  return found;
}

/**
 * How hard each use is on a driveline: what the torque of the engine is multiplied by where the
 * clutch is let in abruptly or a wheel lands. Common practice, no source: 1.5 to 2.
 */
export const SHOCK_OF_USE = {
  road: ONE,
  'off-road': rational('1.5'),
  competition: TWO,
} as const satisfies Readonly<Record<Use, Rational>>;

/** The greatest engine torque that all of these carry; null where a rating is not known. */
export function greatestTorque(
  loads: readonly Load[],
  byTorque: ReadonlyMap<string, Interval>,
  shock: Rational,
): Interval | null {
  let least: Interval | null = null;
  for (const { check, rating, isOpen } of loads) {
    const demand = byTorque.get(check);
    if (demand === undefined) continue;
    if (rating === null || rating.low === null || (isOpen && rating.high === null)) return null;
    const carried = engineTorqueAt(rating, { ratio: demand, share: WHOLE, shock: point(shock) });
    least = least === null ? carried : minimumInterval(least, carried);
  }
  return least;
}
