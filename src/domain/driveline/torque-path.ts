/**
 * What can reach an element of a driveline: from the engine through the gears, and from the tyres
 * back through the gears. The smaller of the two is what it has to bear, since tyres that slip let
 * no more through.
 *
 * How torque is shared follows from the drive alone: an open differential halves it, a planetary
 * one splits it by its teeth, and what is locked can send all of it one way. No standard governs
 * this; it is statics.
 *
 * Left out: losses, the inertia of what turns, the load that moves between axles and wheels.
 */

import {
  divideIntervals,
  type Interval,
  minimumInterval,
  multiplyIntervals,
  NON_NEGATIVE,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { divide, ONE, rational, ZERO } from '../quantity/rational.js';
import { STANDARD_GRAVITY } from '../quantity/unit.js';

const WHOLE = point(ONE);
const NOTHING = point(ZERO);
const HALF = point(rational('1/2'));
const THOUSAND = rational(1000);

/** Which wheels are driven, and what stands between the axles if all are. */
export type Drive = 'front' | 'rear' | 'open' | 'planetary' | 'locked';
export type Differential = 'open' | 'locked';

/** The most of the torque that each axle can get. */
export interface AxleShares {
  readonly front: Interval;
  readonly rear: Interval;
}

/** `frontShare` is what a planetary centre sends to the front, from 0 to 1. */
export function axleShares(drive: Drive, frontShare: Interval | null): AxleShares {
  switch (drive) {
    case 'front':
      return { front: WHOLE, rear: NOTHING };
    case 'rear':
      return { front: NOTHING, rear: WHOLE };
    case 'open':
      return { front: HALF, rear: HALF };
    case 'planetary': {
      const front = frontShare ?? HALF;
      return { front, rear: subtractIntervals(WHOLE, front) };
    }
    case 'locked':
      return { front: WHOLE, rear: WHOLE };
  }
}

/** The most of the torque of an axle that one of its wheels can get. */
export function wheelShare(differential: Differential): Interval {
  return differential === 'open' ? HALF : WHOLE;
}

/** How torque comes from the engine to an element. */
export interface EnginePath {
  /** All ratios from the engine to the element. */
  readonly ratio: Interval;
  /** The part of the torque that goes this way. */
  readonly share: Interval;
  /** How often the steady torque a shock is. */
  readonly shock: Interval;
}

/** What an engine torque makes of itself at an element, in the unit of that torque. */
export function enginePath(torque: Interval, { ratio, share, shock }: EnginePath): Interval {
  return [ratio, share, shock].reduce(multiplyIntervals, torque);
}

/** What the driven wheels behind an element can hold. */
export interface TyrePath {
  readonly grip: Interval;
  /** What they carry, in kg. */
  readonly load: Interval;
  /** In mm. */
  readonly radius: Interval;
  /** All ratios from the element to the wheels. */
  readonly ratio: Interval;
}

/** The torque at which the tyres slip, at the wheels themselves, in N.m. */
export function gripTorque({ grip, load, radius }: Omit<TyrePath, 'ratio'>): Interval {
  const weight = scaleInterval(load, STANDARD_GRAVITY);
  return scaleInterval([grip, radius].reduce(multiplyIntervals, weight), divide(ONE, THOUSAND));
}

/** The torque at an element at which the tyres slip, in N.m. */
export function tyrePath({ ratio, ...wheels }: TyrePath): Interval {
  return divideIntervals(gripTorque(wheels), ratio);
}

/** The engine torque at which an element has its rating, were there no tyres to slip. */
export function greatestTorque(rating: Interval, { ratio, share, shock }: EnginePath): Interval {
  return divideIntervals(rating, [share, shock].reduce(multiplyIntervals, ratio));
}

/** What reaches an element; of the tyres nothing may be known, and then it is the engine's. */
export function torqueAt(fromEngine: Interval, fromTyres: Interval | null): Interval {
  return fromTyres === null ? fromEngine : minimumInterval(fromEngine, fromTyres);
}

/** The least of several limits, of which those that are not known may be anything. */
export function leastOf(limits: readonly (Interval | null)[]): Interval {
  const all = limits.map((limit) => limit ?? NON_NEGATIVE);
  return all.reduce(minimumInterval);
}
