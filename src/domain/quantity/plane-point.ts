/**
 * A point in the plane of a face, such as the centre of a bolt hole: two lengths, across and up,
 * from an origin that the kind of interface names. Each is read like any measured length, so a
 * point is a rectangle of all the places where the centre may be.
 */

import type { QuantityFault } from './fault.js';
import { quantityFault } from './fault.js';
import type { Interval } from './interval.js';
import { isFault, parseQuantity } from './quantity.js';
import { absolute, add, larger, multiply, type Rational, subtract, ZERO } from './rational.js';
import type { Dimension } from './unit.js';

export interface PlanePoint {
  /** As recorded, for people. */
  readonly text: string;
  readonly x: Interval;
  readonly y: Interval;
}

export interface PointOptions {
  readonly dimension: Dimension;
  /** Id of the tool that read both; it widens them. */
  readonly tool?: string | undefined;
}

/** The unit at the end of a text; what stands before it are digits, signs and tolerances. */
const UNIT = /[a-zA-Z"″]+[a-zA-Z0-9]*$/;

/**
 * Reads "120.50, -45.00 mm" or "120.5 ±0.1, -45 ±0.1 mm": across, up, and the unit of both.
 * Never throws.
 */
export function parsePoint(
  text: string,
  { dimension, tool }: PointOptions,
): PlanePoint | QuantityFault {
  const [across, up, ...more] = text.trim().split(/\s*,\s*/);
  if (across === undefined || up === undefined || more.length > 0) {
    const shortened = text.length > 40 ? `${text.slice(0, 40)}…` : text;
    return quantityFault(
      'malformed',
      `“${shortened}” is no point. Write two lengths with a comma between: 120.50, -45.00 mm.`,
    );
  }
  const unit = UNIT.exec(up)?.[0] ?? '';
  const isNamedTwice = UNIT.test(across);
  const options = { type: 'measured', dimension, tool } as const;
  const x = parseQuantity(isNamedTwice ? across : `${across} ${unit}`, options);
  if (isFault(x)) return x;
  const y = parseQuantity(up, options);
  if (isFault(y)) return y;
  return { text: text.trim().replace(/\s+/g, ' '), x: x.interval, y: y.interval };
}

/** The square of the distance of two points: the least and the most that it can be. */
export function squaredDistance(
  a: PlanePoint,
  b: PlanePoint,
): { readonly least: Rational; readonly most: Rational } {
  const across = gapOf(a.x, b.x);
  const up = gapOf(a.y, b.y);
  return {
    least: add(squared(across.least), squared(up.least)),
    most: add(squared(across.most), squared(up.most)),
  };
}

/** How far apart two numbers can lie, at least and at most. */
function gapOf(a: Interval, b: Interval): { readonly least: Rational; readonly most: Rational } {
  if (a.low === null || a.high === null || b.low === null || b.high === null) {
    throw new Error('a measured length has two ends');
  }
  const over = subtract(a.high, b.low);
  const under = subtract(a.low, b.high);
  const most = larger(absolute(over), absolute(under));
  const isApart = over.compare(0) < 0 || under.compare(0) > 0;
  if (!isApart) return { least: ZERO, most };
  const least = over.compare(0) < 0 ? absolute(over) : absolute(under);
  return { least, most };
}

function squared(value: Rational): Rational {
  return multiply(value, value);
}
