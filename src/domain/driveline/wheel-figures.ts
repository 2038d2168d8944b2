/**
 * How far wheels with their tyres reach, inwards and outwards of the hub face, and how large they
 * are.
 */

import { point } from '../quantity/interval.js';
import { ZERO } from '../quantity/rational.js';
import { type Bench, type Figure, figure, known } from './figure.js';
import { innerReach, outerReach } from './wheel.js';

export function wheelFigures({ driveline: { wheels }, reader }: Bench): Figure[] {
  return wheels.flatMap(({ position, inset, width, diameter, spacer }) => {
    const between = spacer === null ? NOTHING_BETWEEN : reader.number(spacer);
    const read = [reader.number(width), reader.number(inset), between];
    if (read.some(({ isEmpty }) => isEmpty)) return [];
    const common = { section: 'wheels', dimension: 'length' } as const;
    return [
      figure({
        ...common,
        key: `${position}-inner-reach`,
        what: { code: 'wheel-inner-reach', of: position },
        ...known(read, (across, set, plate) =>
          innerReach({ width: across, inset: set, outwards: plate }),
        ),
      }),
      figure({
        ...common,
        key: `${position}-outer-reach`,
        what: { code: 'wheel-outer-reach', of: position },
        ...known(read, (across, set, plate) =>
          outerReach({ width: across, inset: set, outwards: plate }),
        ),
      }),
      figure({
        ...common,
        key: `${position}-tyre-diameter`,
        what: { code: 'tyre-diameter', of: position },
        ...known([reader.number(diameter)], (size) => size),
      }),
    ];
  });
}

const NOTHING_BETWEEN = { interval: point(ZERO), missing: [], isEmpty: false };
