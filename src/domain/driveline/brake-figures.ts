/**
 * The balance of the brakes and the travel of their pedal.
 *
 * The ratio of front to rear is compared with the one of the share that the maker chose, where that
 * is recorded: within 5 per cent is common practice, no source, and beyond is for an engineer.
 */

import type { Outcome } from '../check/state.js';
import {
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { HUNDRED, ONE } from '../quantity/rational.js';
import { brakeShare, KEPT_RATIO } from './brake-balance.js';
import { notAbove, within } from './compare.js';
import { type Bench, type Figure, figure, known } from './figure.js';
import { strokeOf } from './pedal-travel.js';

const WHOLE = point(ONE);

export function brakeFigures(bench: Bench): Figure[] {
  return [...balanceOf(bench), ...pedalOf(bench)];
}

function balanceOf({ driveline: { brakes }, reader }: Bench): Figure[] {
  if (brakes === null) return [];
  const [front, rear] = [reader.number(brakes.front), reader.number(brakes.rear)];
  const share = known([front, rear], brakeShare);
  const wanted = brakes.frontShare === null ? null : reader.number(brakes.frontShare);
  const outcome =
    wanted === null ? null : keptRatio([front, rear, wanted].map(({ interval }) => interval));
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

/** Whether front by rear is near to what the maker's share of the front makes of it. */
function keptRatio([front, rear, share]: readonly (Interval | null)[]): Outcome | null {
  if (!front || !rear || !share) return null;
  const original = divideIntervals(WHOLE, subtractIntervals(divideIntervals(WHOLE, share), WHOLE));
  const change = divideIntervals(divideIntervals(front, rear), original);
  return within(subtractIntervals(change, WHOLE), KEPT_RATIO);
}

function pedalOf({ driveline: { pedal }, reader }: Bench): Figure[] {
  if (pedal === null) return [];
  const fixed = [pedal.master, pedal.ratio].map((term) => reader.number(term));
  const moved = pedal.wheels.map(({ area, travel }) =>
    [area, travel].map((term) => reader.number(term)),
  );
  const travel = known([...fixed, ...moved.flat()], (master, ratio, ...pistons) => {
    const taken = pedal.wheels.map((_, index) => {
      const [area, way] = pistons.slice(2 * index);
      if (area === undefined || way === undefined) throw new Error('each axle has both');
      return multiplyIntervals(area, way);
    });
    return multiplyIntervals(strokeOf(taken, master), ratio);
  });
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
