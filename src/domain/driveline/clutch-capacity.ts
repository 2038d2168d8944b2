/**
 * The torque that a friction clutch carries, and what it has in reserve over the engine.
 *
 * Two models of how the pressure lies on the ring: uniform wear, as in a lining that has run in,
 * and uniform pressure, as in a new one on stiff plates. Each pair of friction faces carries the
 * same; one disc has two pairs. The formulas are those of machine design, no standard.
 *
 * Left out: heat and fade, soft rings, springs that weaken as the lining wears, centrifugal force.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { overCorners, PI, rootInterval } from '../quantity/enclosure.js';
import {
  addIntervals,
  divideIntervals,
  hull,
  type Interval,
  multiplyIntervals,
  overlaps,
  point,
  powerInterval,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove } from './compare.js';

const THREE = point(rational(3));
const HALF = rational('1/2');
const QUARTER = rational('1/4');
const THIRD = rational('1/3');
const A_MM_IN_METRES = rational('1/1000');

/** The friction ring, in mm; its inner diameter is the smaller one. */
export interface Ring {
  readonly outer: Interval;
  readonly inner: Interval;
}

export type PressureModel = 'uniform-wear' | 'uniform-pressure';

/** The arm at which the friction acts, in mm. */
export function frictionRadius({ outer, inner }: Ring, model: PressureModel): Interval {
  if (model === 'uniform-wear') return scaleInterval(addIntervals(outer, inner), QUARTER);
  // (D3 - d3) / (3 (D2 - d2)), with D - d cancelled; it rises with each of the two.
  return overCorners([outer, inner], (big, small) => {
    const sum = addIntervals(big, small);
    const squares = addIntervals(powerInterval(big, 2), powerInterval(small, 2));
    const product = multiplyIntervals(big, small);
    return scaleInterval(divideIntervals(addIntervals(squares, product), sum), THIRD);
  });
}

/** What all pairs of friction faces carry, in N.m; `clamp` is in N. */
export function clutchTorque(
  ring: Ring,
  model: PressureModel,
  { clamp, friction, pairs }: { clamp: Interval; friction: Interval; pairs: Interval },
): Interval {
  const radius = scaleInterval(frictionRadius(ring, model), A_MM_IN_METRES);
  return [friction, pairs, radius].reduce(multiplyIntervals, clamp);
}

/** The clamp load that presses a ring as hard as `pressure` in MPa at its hardest place, in N. */
export function clampAt(ring: Ring, model: PressureModel, pressure: Interval): Interval {
  const { outer, inner } = ring;
  const area =
    model === 'uniform-pressure'
      ? scaleInterval(subtractIntervals(powerInterval(outer, 2), powerInterval(inner, 2)), QUARTER)
      : scaleInterval(wornRing(ring, 1), HALF);
  return [PI, area].reduce(multiplyIntervals, pressure);
}

/**
 * The torque of one pair at such a pressure, over friction and pressure, in mm3. Worn rings press
 * hardest at the inner diameter: pi d (D2 - d2) / 8; else pi (D3 - d3) / 12.
 */
function torqueAtOne(ring: Ring, model: PressureModel): Interval {
  if (model === 'uniform-wear')
    return scaleInterval(multiplyIntervals(PI, wornRing(ring, 2)), EIGHTH);
  const cubes = subtractIntervals(powerInterval(ring.outer, 3), powerInterval(ring.inner, 3));
  return scaleInterval(multiplyIntervals(PI, cubes), TWELFTH);
}

const EIGHTH = rational('1/8');
const TWELFTH = rational('1/12');

/** What all pairs carry at a pressure in MPa at the hardest place, in N.m. */
export function clutchTorqueAt(
  ring: Ring,
  model: PressureModel,
  { pressure, friction, pairs }: { pressure: Interval; friction: Interval; pairs: Interval },
): Interval {
  const one = scaleInterval(torqueAtOne(ring, model), A_MM_IN_METRES);
  return [pressure, friction, pairs].reduce(multiplyIntervals, one);
}

/**
 * d (D - d) or d (D2 - d2). It rises with the outer diameter; with the inner one it rises up to a
 * peak, D/2 or D/sqrt(3), and falls from there. So the least lies at a corner, and the greatest at
 * one or at the peak of the greatest outer diameter.
 */
function wornRing({ outer, inner }: Ring, exponent: 1 | 2): Interval {
  const at = (big: Interval, small: Interval) =>
    multiplyIntervals(
      small,
      subtractIntervals(powerInterval(big, exponent), powerInterval(small, exponent)),
    );
  const corners = overCorners([outer, inner], at);
  if (outer.high === null) return corners;
  const widest = point(outer.high);
  const peak =
    exponent === 1 ? scaleInterval(widest, HALF) : divideIntervals(widest, rootInterval(THREE, 2));
  return overlaps(peak, inner) ? hull(corners, at(widest, peak)) : corners;
}

/** What a clutch on the street has in reserve over the engine: common practice. */
export const STREET_RESERVE = point(rational('1.2'));

const LOADS = ['clampLoad', 'pressure'];

export const clutchCapacity = calculation({
  name: 'clutch-capacity',
  title: { en: 'Torque capacity of a clutch', de: 'Übertragbares Drehmoment einer Kupplung' },
  about: {
    en: 'How much torque does this clutch carry, and is that enough for the engine?',
    de: 'Wie viel Drehmoment überträgt diese Kupplung, und reicht das für den Motor?',
  },
  inputs: {
    outerDiameter: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      usual: ['160 mm', '260 mm'],
      name: { en: 'outer diameter of the lining', de: 'Außendurchmesser des Belags' },
    },
    innerDiameter: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      usual: ['100 mm', '180 mm'],
      name: { en: 'inner diameter of the lining', de: 'Innendurchmesser des Belags' },
    },
    friction: {
      type: 'quantity',
      dimension: '1',
      above: '0',
      usual: ['0.2', '0.4'],
      name: { en: 'friction of the lining', de: 'Reibwert des Belags' },
    },
    clampLoad: {
      type: 'quantity',
      dimension: 'force',
      optional: true,
      above: '0 N',
      usual: ['2000 N', '15000 N'],
      name: { en: 'clamp load of the cover', de: 'Anpresskraft der Druckplatte' },
    },
    pressure: {
      type: 'quantity',
      dimension: 'pressure',
      optional: true,
      above: '0 MPa',
      usual: ['0.1 MPa', '0.5 MPa'],
      name: {
        en: 'greatest pressure on the lining, instead of the clamp load',
        de: 'größte Flächenpressung am Belag, statt der Anpresskraft',
      },
    },
    pairs: {
      type: 'count',
      optional: true,
      least: '1',
      usual: ['2', '6'],
      name: {
        en: 'pairs of friction faces, 2 of one disc if not told',
        de: 'Reibpaarungen, sonst die 2 einer Scheibe',
      },
    },
    model: {
      type: 'code',
      optional: true,
      name: { en: 'state of the lining, run in if not told', de: 'Belag, sonst eingelaufen' },
      codes: {
        'uniform-wear': { en: 'run in: uniform wear', de: 'eingelaufen: gleichmäßiger Verschleiß' },
        'uniform-pressure': { en: 'new: uniform pressure', de: 'neu: gleichmäßige Pressung' },
      },
    },
    engineTorque: {
      type: 'quantity',
      dimension: 'torque',
      optional: true,
      above: '0 N.m',
      usual: ['50 N.m', '800 N.m'],
      name: { en: 'greatest torque of the engine', de: 'größtes Motordrehmoment' },
    },
  },
  outputs: {
    clampForce: {
      type: 'quantity',
      dimension: 'force',
      needs: LOADS,
      name: { en: 'clamp load', de: 'Anpresskraft' },
    },
    capacity: {
      type: 'quantity',
      dimension: 'torque',
      needs: LOADS,
      name: { en: 'torque at which it slips', de: 'Drehmoment, bei dem sie rutscht' },
    },
    greatestTorque: {
      type: 'quantity',
      dimension: 'torque',
      needs: LOADS,
      name: {
        en: 'greatest engine torque with the usual reserve',
        de: 'größtes Motordrehmoment mit üblicher Reserve',
      },
    },
    reserve: {
      type: 'quantity',
      dimension: '1',
      needs: [...LOADS, 'engineTorque'],
      name: { en: 'capacity over engine torque', de: 'Verhältnis zum Motordrehmoment' },
    },
    suffices: {
      type: 'outcome',
      needs: [...LOADS, 'engineTorque'],
      name: {
        en: 'It carries at least 1.2 times the engine torque.',
        de: 'Sie überträgt mindestens das 1,2-Fache des Motordrehmoments.',
      },
    },
  },
  formulas: [
    'uniform wear: capacity = pairs · friction · clampForce · (outerDiameter + innerDiameter) / 4',
    'uniform pressure: capacity = pairs · friction · clampForce' +
      ' · (outerDiameter³ − innerDiameter³) / (3 · (outerDiameter² − innerDiameter²))',
    'uniform wear: clampForce = π · pressure · innerDiameter' +
      ' · (outerDiameter − innerDiameter) / 2',
    'uniform pressure: clampForce = π · pressure · (outerDiameter² − innerDiameter²) / 4',
    'reserve = capacity / engineTorque',
    'greatestTorque = capacity / 1.2',
  ],
  assumptions: [
    {
      en: 'Stiff plates, dry and clean linings, and all pairs pressed alike.',
      de: 'Steife Platten, trockene, saubere Beläge, alle Paarungen gleich gepresst.',
    },
    {
      en: 'A pressure that is given is that of the hardest pressed place.',
      de: 'Eine angegebene Pressung gilt für die am stärksten gepresste Stelle.',
    },
  ],
  validity: [
    {
      en: 'Not for hot linings that fade, nor for the torque of a dropped clutch.',
      de: 'Nicht für heiße Beläge, deren Reibwert fällt, und nicht für springende Kupplungen.',
    },
    {
      en: 'The clamp load changes as the lining wears: take that of the worn state if it is known.',
      de: 'Die Anpresskraft ändert sich mit dem Verschleiß: wenn bekannt, die des Endzustands.',
    },
    {
      en: 'A torque that the maker of the clutch states counts before this one.',
      de: 'Nennt der Hersteller der Kupplung ein Drehmoment, so gilt jenes vor diesem.',
    },
  ],
  sources: [
    { title: 'machine-design textbook, friction clutches', basis: 'read' },
    { title: 'friction of dry linings from 0.2 to 0.4', basis: 'read' },
    { title: 'reserve of at least 1.2 on the street', basis: 'common-practice' },
  ],
  warnings: {
    slips: {
      en: 'The engine turns, or may turn, more than the clutch carries: it slips.',
      de: 'Der Motor gibt mehr ab, als die Kupplung überträgt, oder kann es: Sie rutscht.',
    },
    'small-reserve': {
      en: 'The reserve is, or may be, below the 1.2 that is common on the street.',
      de: 'Die Reserve liegt unter den auf der Straße üblichen 1,2 oder kann es.',
    },
    'new-lining': {
      en: 'A new lining carries a little more than one that has run in: size it for the latter.',
      de: 'Ein neuer Belag überträgt etwas mehr als ein eingelaufener: nach diesem auslegen.',
    },
    'load-before-pressure': {
      en: 'Both a clamp load and a pressure are given: only the clamp load counts here.',
      de: 'Anpresskraft und Pressung sind beide gegeben: Hier zählt nur die Anpresskraft.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'early-clutch',
      summary: 'A clutch of 235 mm behind 320 N.m',
      given: {
        outerDiameter: '235 mm',
        innerDiameter: '150 mm',
        friction: '0.3',
        clampLoad: '6500 N',
        pairs: 2,
        model: 'uniform-wear',
        engineTorque: '320 N.m',
      },
    },
    {
      name: 'by-pressure',
      summary: 'What 0.25 MPa on the lining of one disc gives',
      given: {
        outerDiameter: '240 mm',
        innerDiameter: '155 mm',
        friction: '0.27 to 0.33',
        pressure: '0.25 MPa',
      },
    },
  ],
  calculate: (given) => {
    const faults = faultsOf(given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const { clampLoad, pressure, engineTorque } = given;
    const model = given.model ?? 'uniform-wear';
    const capacity = capacityOf(given, model);
    const warnings = [
      ...(model === 'uniform-pressure' ? ['new-lining'] : []),
      ...(clampLoad !== null && pressure !== null ? ['load-before-pressure'] : []),
    ];
    if (capacity === null) return { found: {}, warnings };
    const clampForce = clampLoad ?? (pressure && clampAt(ringOf(given), model, pressure));
    const found = {
      clampForce: clampForce ?? undefined,
      capacity,
      greatestTorque: divideIntervals(capacity, STREET_RESERVE),
    };
    if (engineTorque === null) return { found, warnings };
    const suffices = notAbove(multiplyIntervals(engineTorque, STREET_RESERVE), capacity);
    const isTight = isBelow(engineTorque, capacity) !== 'holds';
    return {
      found: { ...found, reserve: divideIntervals(capacity, engineTorque), suffices },
      warnings: [
        ...(isTight ? ['slips'] : []),
        ...(suffices !== 'holds' && !isTight ? ['small-reserve'] : []),
        ...warnings,
      ],
    };
  },
});

interface Told {
  readonly outerDiameter: Interval;
  readonly innerDiameter: Interval;
  readonly friction: Interval;
  readonly clampLoad: Interval | null;
  readonly pressure: Interval | null;
  readonly pairs: Interval | null;
}

function ringOf({ outerDiameter, innerDiameter }: Told): Ring {
  return { outer: outerDiameter, inner: innerDiameter };
}

function capacityOf(given: Told, model: PressureModel): Interval | null {
  const { friction, clampLoad, pressure } = given;
  const pairs = given.pairs ?? point(rational(2));
  if (clampLoad !== null) {
    return clutchTorque(ringOf(given), model, { clamp: clampLoad, friction, pairs });
  }
  if (pressure === null) return null;
  return clutchTorqueAt(ringOf(given), model, { pressure, friction, pairs });
}

function faultsOf({ outerDiameter, innerDiameter }: Told): GivenFault[] {
  if (isBelow(innerDiameter, outerDiameter) === 'holds') return [];
  const text = {
    en: 'The inner diameter must be smaller than the outer one.',
    de: 'Der Innendurchmesser muss kleiner sein als der Außendurchmesser.',
  };
  return [{ input: 'innerDiameter', text }];
}
