/**
 * What the parts of a driveline bear: the reserve of each load, where tyres slip before it is
 * reached, what the clutch keeps, and the greatest engine torque for each use.
 *
 * Tyres slip at the standing load of their axle. What an axle bears more of while it pulls, and an
 * open differential that lets the lighter wheel spin, are left out: of all torques that can come,
 * this is not the greatest on a hill or with a locked axle.
 */

import type { Use } from '../check/coupling.js';
import { addIntervals, divideIntervals, type Interval } from '../quantity/interval.js';
import type { Dimension } from '../quantity/unit.js';
import { notAbove } from './compare.js';
import { type Bench, type Figure, type FigureCode, figure, known } from './figure.js';
import { demandsByTorque, greatestTorque, type Load, loadsOf, SHOCK_OF_USE } from './loads.js';
import { tyrePath } from './torque-path.js';
import { rollingRadius } from './tyre-size.js';

export function loadFigures(bench: Bench): Figure[] {
  const loads = loadsOf(bench.configuration);
  return [
    ...loads.flatMap((load) => [reserveOf(load), ...slipOf(load, bench)]),
    ...clutchOf(bench),
    ...torquesOf(loads, bench),
  ];
}

/** What the reserve is of: a torque, or what wheels and tyres bear and stand. */
export function reserveCode(dimension: Dimension): FigureCode {
  if (dimension === 'mass') return 'mass-reserve';
  return dimension === 'speed' ? 'speed-reserve' : 'load-reserve';
}

function reserveOf({ check, position, rating, demand, isOpen, missing, dimension }: Load): Figure {
  const isKnown = rating !== null && demand !== null && !isOpen;
  return figure({
    section: 'loads',
    key: check,
    what: { code: reserveCode(dimension), of: position },
    told: 'times',
    value: isKnown ? divideIntervals(rating, demand) : null,
    outcome: rating === null || demand === null ? 'open' : outcomeOf(isOpen, demand, rating),
    aim: 'more',
    missing,
  });
}

function outcomeOf(isOpen: boolean, demand: Interval, rating: Interval) {
  return isOpen ? 'open' : notAbove(demand, rating);
}

/** The torque at which the tyres of its axles slip; the part is safe from more than that. */
function slipOf({ check, position, rating }: Load, { driveline, reader, grip }: Bench): Figure[] {
  const slips = driveline.slips.filter(({ load }) => load === check);
  if (grip === null || slips.length === 0) return [];
  const torques = slips.map(({ axle: id, after }) => {
    const axle = driveline.axles.find((one) => one.id === id);
    if (axle === undefined || axle.mass === null) return { value: null, missing: [] };
    const read = [axle.mass, axle.circumference, after].map((term) => reader.number(term));
    return known(read, (mass, circumference, ratio) =>
      tyrePath({ grip, load: mass, radius: rollingRadius(circumference), ratio }),
    );
  });
  const values = torques.flatMap(({ value }) => (value === null ? [] : [value]));
  const [first, ...others] = values;
  const isKnown = first !== undefined && values.length === torques.length;
  const value = isKnown ? others.reduce(addIntervals, first) : null;
  return [
    figure({
      section: 'loads',
      key: `${check}-slip`,
      what: { code: 'slip-torque', of: position },
      dimension: 'torque',
      value,
      outcome: value === null || rating === null ? null : notAbove(value, rating),
      missing: torques.flatMap(({ missing }) => missing),
    }),
  ];
}

function clutchOf({ driveline, reader }: Bench): Figure[] {
  const { clutchTorque, engineTorque } = driveline;
  if (clutchTorque === null || engineTorque === null) return [];
  const read = [reader.number(clutchTorque), reader.number(engineTorque)];
  return [
    figure({
      section: 'loads',
      key: 'clutch-reserve',
      what: { code: 'clutch-reserve', of: null },
      told: 'times',
      aim: 'more',
      ...known(read, (holds, engine) => divideIntervals(holds, engine)),
    }),
  ];
}

const USES: readonly Use[] = ['road', 'off-road', 'competition'];

function torquesOf(loads: readonly Load[], { configuration }: Bench): Figure[] {
  const byTorque = demandsByTorque(configuration);
  if (byTorque.size === 0) return [];
  const bound = loads.filter(({ check }) => byTorque.has(check));
  return USES.map((use) => {
    const value = greatestTorque(bound, byTorque, SHOCK_OF_USE[use]);
    return figure({
      section: 'torque',
      key: `torque-${use}`,
      what: { code: 'greatest-torque', of: null, use },
      dimension: 'torque',
      value,
      aim: 'more',
      missing: value === null ? bound.flatMap(({ missing }) => missing) : [],
    });
  });
}
