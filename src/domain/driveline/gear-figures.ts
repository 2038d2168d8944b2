/**
 * Speeds in the gears, the steps between them, and what the speedometer makes of them.
 *
 * Gears are told on the first axle of the layout, at the greatest engine speed. Slip of the tyres,
 * some 1 to 3 per cent under drive, is left out, as it is of every figure here.
 */

import type { Term } from '../check/term.js';
import {
  divideIntervals,
  multiplyIntervals,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { HUNDRED, ONE } from '../quantity/rational.js';
import { type Bench, type Figure, figure, known } from './figure.js';
import { gearSpread, gearSteps } from './gearing.js';
import { roadSpeed, rotationAt } from './road-speed.js';

/** The speed at which revolutions are compared, in km/h. */
const CRUISING = point(HUNDRED);

export function gearFigures(bench: Bench): Figure[] {
  return [...gearsOf(bench), ...speedometerOf(bench)];
}

function gearsOf({ driveline, reader }: Bench): Figure[] {
  const { gears, axles, engineSpeed: limit } = driveline;
  const [axle] = axles;
  if (gears === null || axle === undefined) return [];
  const { items, missing } = reader.list(gears);
  if (items === null) {
    const what = { code: 'gear-ratio', of: null } as const;
    return [figure({ section: 'gearing', key: 'gears', what, missing })];
  }
  const read = (term: Term) => reader.number(term);
  const [drive, circumference] = [read(axle.drive), read(axle.circumference)];
  const fastest = limit === null ? null : read(limit);
  const each = items.flatMap((ratio, index) => {
    const gear = index + 1;
    const rows = [
      figure({
        section: 'gearing',
        key: `gear-${gear}-ratio`,
        what: { code: 'gear-ratio', of: null, gear },
        value: ratio,
      }),
    ];
    if (fastest === null) return rows;
    const speed = known([drive, circumference, fastest], (final, length, turns) =>
      roadSpeed(turns, multiplyIntervals(ratio, final), length),
    );
    const what = { code: 'gear-speed', of: null, gear } as const;
    const key = `gear-${gear}-speed`;
    return [...rows, figure({ section: 'gearing', key, what, dimension: 'speed', ...speed })];
  });
  const steps = gearSteps(items).map((value, index) => {
    const gear = index + 1;
    const what = { code: 'gear-step', of: null, gear } as const;
    return figure({ section: 'gearing', key: `gear-${gear}-step`, what, told: 'times', value });
  });
  const top = items.at(-1);
  const cruising =
    top === undefined
      ? []
      : [
          figure({
            section: 'gearing',
            key: 'cruising',
            what: { code: 'cruising-speed', of: null },
            dimension: 'rotation',
            aim: 'less',
            ...known([drive, circumference], (final, length) =>
              rotationAt(CRUISING, multiplyIntervals(top, final), length),
            ),
          }),
        ];
  const what = { code: 'speed-spread', of: null } as const;
  const whole = figure({
    section: 'gearing',
    key: 'spread',
    what,
    told: 'times',
    value: items.length === 0 ? null : gearSpread(items),
  });
  return [...each, ...steps, whole, ...cruising];
}

function speedometerOf({ driveline: { speedometer }, reader }: Bench): Figure[] {
  if (speedometer === null) return [];
  const [shows, turns] = [reader.number(speedometer.shows), reader.number(speedometer.turns)];
  const error = known([shows, turns], (set, driven) =>
    subtractIntervals(divideIntervals(driven, set), point(ONE)),
  );
  return [
    figure({
      section: 'speedometer',
      key: 'speedometer',
      what: { code: 'speedometer-error', of: null },
      told: 'percent',
      aim: 'none',
      ...error,
      value: error.value === null ? null : scaleInterval(error.value, HUNDRED),
    }),
  ];
}
