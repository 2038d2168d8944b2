/**
 * The balance of the brakes and the travel of their pedal.
 *
 * The balance is compared with the share that the maker chose, where that is recorded: within 5 per
 * cent of all is common practice, no source, and beyond is for an engineer.
 */

import type { Outcome } from '../check/state.js';
import {
  addIntervals,
  closed,
  divideIntervals,
  type Interval,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { HUNDRED, negate, rational } from '../quantity/rational.js';
import { notAbove, within } from './compare.js';
import { type Bench, type Figure, figure, known } from './figure.js';
import { pedalTravel } from './pedal-stroke.js';

/** How far the share of the front may be from the maker's: common practice, no source. */
const ROOM = rational('0.05');

export function brakeFigures(bench: Bench): Figure[] {
  return [...balanceOf(bench), ...pedalOf(bench)];
}

function balanceOf({ driveline: { brakes }, reader }: Bench): Figure[] {
  if (brakes === null) return [];
  const [front, rear] = [reader.number(brakes.front), reader.number(brakes.rear)];
  const share = known([front, rear], frontShare);
  const wanted = brakes.frontShare === null ? null : reader.number(brakes.frontShare);
  const outcome: Outcome | null =
    share.value === null || wanted === null || wanted.interval === null
      ? null
      : within(subtractIntervals(share.value, wanted.interval), closed(negate(ROOM), ROOM));
  return [
    figure({
      section: 'brakes',
      key: 'front-braking-share',
      what: { code: 'front-braking-share', of: null },
      told: 'percent',
      ...share,
      value: share.value === null ? null : scaleInterval(share.value, HUNDRED),
      outcome,
    }),
  ];
}

/** One over one plus the rear by the front, so that each stands once and the set is exact. */
function frontShare(front: Interval, rear: Interval): Interval {
  const one = closed(rational(1), rational(1));
  return divideIntervals(one, addIntervals(one, divideIntervals(rear, front)));
}

function pedalOf({ driveline: { pedal }, reader }: Bench): Figure[] {
  if (pedal === null) return [];
  const fixed = [pedal.master, pedal.ratio].map((term) => reader.number(term));
  const moved = pedal.wheels.map(({ area, travel }) =>
    [area, travel].map((term) => reader.number(term)),
  );
  const travel = known([...fixed, ...moved.flat()], (master, ratio, ...pistons) =>
    pedalTravel({
      master,
      ratio,
      pistons: pedal.wheels.map((_, index) => {
        const [area, way] = pistons.slice(2 * index);
        if (area === undefined || way === undefined) throw new Error('each axle has both');
        return { area, travel: way };
      }),
    }),
  );
  const room = pedal.available === null ? null : reader.number(pedal.available).interval;
  const outcome = travel.value === null || room === null ? null : notAbove(travel.value, room);
  return [
    figure({
      section: 'brakes',
      key: 'pedal-travel',
      what: { code: 'pedal-travel', of: null },
      dimension: 'length',
      aim: 'less',
      ...travel,
      outcome,
    }),
  ];
}
