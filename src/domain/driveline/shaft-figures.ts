/**
 * Propeller shafts at the greatest speed of the vehicle, against the speed at which they whirl.
 */

import { scaleInterval } from '../quantity/interval.js';
import { notAbove } from './compare.js';
import { type Bench, type Figure, figure, known } from './figure.js';
import { criticalSpeed, SHARE_OF_CRITICAL } from './propeller-shaft.js';
import { rotationAt } from './road-speed.js';

export function shaftFigures({ driveline, reader }: Bench): Figure[] {
  const { shafts, topSpeed, axles } = driveline;
  return shafts.flatMap(({ position, axle: id, drive, outer, inner, length }) => {
    const axle = axles.find((one) => one.id === id);
    if (axle === undefined || topSpeed === null) return [];
    const tube = [outer, inner, length].map((term) => reader.number(term));
    if (tube.some(({ isEmpty }) => isEmpty)) return [];
    const turning = [topSpeed, drive, axle.circumference].map((term) => reader.number(term));
    const speed = known(turning, (top, ratio, circumference) =>
      rotationAt(top, ratio, circumference),
    );
    const limit = known(tube, (outside, inside, piece) =>
      scaleInterval(
        criticalSpeed({ outer: outside, inner: inside, length: piece }),
        SHARE_OF_CRITICAL.car,
      ),
    );
    const isKnown = speed.value !== null && limit.value !== null;
    const common = { section: 'shafts', dimension: 'rotation' } as const;
    return [
      figure({
        ...common,
        key: `${position}-speed`,
        what: { code: 'shaft-speed', of: position },
        ...speed,
        outcome: isKnown ? notAbove(speed.value, limit.value) : 'open',
      }),
      figure({
        ...common,
        key: `${position}-limit`,
        what: { code: 'shaft-limit', of: position },
        aim: 'more',
        ...limit,
      }),
    ];
  });
}
