/**
 * What a judged check shows of itself: the value on each side, and the margin between them.
 */

import {
  divideIntervals,
  type Interval,
  minimumInterval,
  scaleInterval,
} from '../quantity/interval.js';
import type { PlanePoint } from '../quantity/plane-point.js';
import { HUNDRED } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import type { Check } from './check.js';
import { domainsOf, mismatchOf, type Prepared, type Side } from './evaluate.js';
import { Evaluator, type Setting } from './evaluator.js';
import { rangeOf } from './polynomial.js';
import { type FactAddress, NOWHERE, type Reading } from './reading.js';
import { shapeOf, type Term } from './term.js';
import type { Member } from './together.js';

/** One side of a check, for people and programs. */
export interface Shown {
  /** As recorded, when the side is one recorded value. */
  readonly text: string | null;
  readonly interval: Interval | null;
  readonly dimension: Dimension | null;
  readonly codes: readonly string[] | null;
  /** Where its points are, when the side is a set of points. */
  readonly points: PointSet | null;
  /** One may set or order any value that is in it. */
  readonly isRange: boolean;
  /** Whose value it is, when the side is one value. */
  readonly address: FactAddress;
  /** The name of a layout's term, when the side is one. */
  readonly term: string | null;
}

export interface PointSet {
  readonly points: readonly PlanePoint[];
  readonly dimension: Dimension;
}

export interface Margin {
  readonly interval: Interval;
  /** `ratio` for loads, `%` for loops, else the dimension that was compared. */
  readonly measure: Dimension;
}

export function marginOf(prepared: Prepared): Margin | null {
  const { check, left, right, unknowns } = prepared;
  if (left.is !== 'number' || right?.is !== 'number') return null;
  // A margin that one may still choose is none.
  if ([...unknowns.values()].some(({ isChoice }) => isChoice)) return null;
  const domains = domainsOf(unknowns);
  if (check.primitive === 'agree') {
    const mismatch = mismatchOf(prepared);
    return mismatch === null ? null : { interval: scaleInterval(mismatch, HUNDRED), measure: '%' };
  }
  const l = rangeOf(left.polynomial, domains);
  const r = rangeOf(right.polynomial, domains);
  if (check.primitive === 'carries') {
    return { interval: divideIntervals(l, r), measure: 'ratio' };
  }
  if (check.primitive !== 'clearance') return null;
  const [world] = prepared.worlds;
  if (world === undefined || 'decided' in world) return null;
  const reserves = world.requirements.map(({ polynomial }) => rangeOf(polynomial, domains));
  const [first, ...others] = reserves;
  if (first === undefined) return null;
  const shape = shapeOf(check.left);
  const measure = shape.is === 'code' ? '1' : shape.dimension;
  return { interval: others.reduce(minimumInterval, first), measure };
}

export function shownOf(
  which: 'left' | 'right',
  { check, environment }: Member,
  side: Side,
  setting: Setting,
): Shown {
  const term = which === 'left' || !('right' in check) ? check.left : check.right;
  const single = term.op === 'reference' ? environment.lookup(term.reference, term.shape) : null;
  const reading = onlyReading(single, setting);
  const address = addressOf(term, reading);
  const text = reading !== null && 'text' in reading ? reading.text : null;
  const name = term.op === 'named' ? term.name : null;
  const isRange = reading?.form === 'range';
  const none = { interval: null, dimension: null, codes: null, points: null };
  const bare = { ...none, text, isRange, address };
  if (side.is === 'code') return { ...bare, codes: side.reading.codes, term: name };
  if (side.is === 'points') {
    const { points, dimension } = side.reading;
    return { ...bare, points: points === null ? null : { points, dimension }, term: name };
  }
  const shape = shapeOf(term);
  const dimension = shape.is === 'code' ? '1' : shape.dimension;
  const evaluator = new Evaluator(environment, setting, emptyFactors(check));
  const interval = rangeOf(evaluator.number(term), evaluator.domains);
  return { ...bare, interval, dimension, term: name };
}

/** The reading of a side that is one value; of several adapters in a row there is none. */
function onlyReading(found: Reading | null, setting: Setting): Reading | null {
  if (found?.form === 'choice') return found.options[pickOf(found, setting)] ?? null;
  if (found?.form !== 'several' || found.items.length !== 1) return found;
  return onlyReading(found.items[0] ?? null, setting);
}

function addressOf(term: Term, reading: Reading | null): FactAddress {
  if (reading !== null && 'address' in reading) return reading.address;
  if (term.op !== 'reference' || term.reference.of !== 'adapter') return NOWHERE;
  const { mating, value } = term.reference;
  return { ...NOWHERE, mating, parameter: value };
}

function emptyFactors(check: Check): ReadonlyMap<string, Term> {
  return check.primitive === 'agree' ? check.whenEmpty : new Map();
}

function pickOf(reading: { readonly choice: string }, setting: Setting): number {
  return setting.picks.get(reading.choice) ?? 0;
}
