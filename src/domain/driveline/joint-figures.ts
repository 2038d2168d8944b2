/**
 * Angles of universal joints: how unevenly each turns, and how far two that even each other out
 * differ. Limits of 6 and 1.5 degrees are working practice.
 */

import { absoluteInterval, subtractIntervals } from '../quantity/interval.js';
import { notAbove } from './compare.js';
import { type Bench, type Figure, figure, known } from './figure.js';
import { irregularity, WORKING_ANGLE } from './universal-joint.js';

export function jointFigures({ driveline: { joints }, reader }: Bench): Figure[] {
  return joints.flatMap(({ id, angle, other }) => {
    const own = reader.number(angle);
    if (own.isEmpty) return [];
    const turned = known([own], absoluteInterval);
    const rows = [
      figure({
        section: 'joints',
        key: `${id}-angle`,
        what: { code: 'joint-angle', of: id },
        dimension: 'angle',
        aim: 'less',
        ...turned,
        outcome: turned.value === null ? 'open' : notAbove(turned.value, WORKING_ANGLE.most),
      }),
      figure({
        section: 'joints',
        key: `${id}-irregularity`,
        what: { code: 'joint-irregularity', of: id },
        aim: 'less',
        ...known([own], (one) => irregularity(absoluteInterval(one))),
      }),
    ];
    if (other === null) return rows;
    const apart = known([own, reader.number(other)], (a, b) =>
      absoluteInterval(subtractIntervals(absoluteInterval(a), absoluteInterval(b))),
    );
    return [
      ...rows,
      figure({
        section: 'joints',
        key: `${id}-difference`,
        what: { code: 'joint-difference', of: id },
        dimension: 'angle',
        aim: 'less',
        ...apart,
        outcome: apart.value === null ? 'open' : notAbove(apart.value, WORKING_ANGLE.difference),
      }),
    ];
  });
}
