/**
 * From the foot to the torque of one disc brake: line pressure, force of the pads, torque.
 *
 * The pads press from both sides with the force of the pistons of one side, whether the caliper
 * floats or has pistons on both: T = 2 mu F r. Where the radius is not told, it is taken at the
 * middle of the pad band, or for even pressure over the band as 2/3 (ro3 - ri3) / (ro2 - ri2).
 *
 * Left out: pressure lost in valves and return springs, fade, pads that do not bear evenly.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { PI } from '../quantity/enclosure.js';
import {
  addIntervals,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  powerInterval,
  scaleInterval,
} from '../quantity/interval.js';
import { ONE, rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { frictionRadius, type Ring } from './clutch-capacity.js';
import { isBelow } from './compare.js';

const _HALF = rational('0.5');
const TWO = rational(2);
const QUARTER_PI = scaleInterval(PI, rational('0.25'));

/** Of a piston, or of several together, in mm2. */
export function pistonArea(diameters: readonly Interval[]): Interval {
  return multiplyIntervals(QUARTER_PI, squareSum(diameters));
}

/** The squares of diameters together: areas but for the factor pi/4, and exact. */
export function squareSum(diameters: readonly Interval[]): Interval {
  const [first, ...more] = diameters.map((one) => powerInterval(one, 2));
  if (first === undefined) throw new Error('a brake has a piston');
  return more.reduce(addIntervals, first);
}

export interface Pedal {
  /** In N. */
  readonly force: Interval;
  readonly ratio: Interval;
  /** What a booster multiplies the force by. */
  readonly boost: Interval;
  /** Of the master cylinder, in mm. */
  readonly masterBore: Interval;
}

/** In MPa. */
export function linePressure(pedal: Pedal): Interval {
  return divideIntervals(pedalPush(pedal), pistonArea([pedal.masterBore]));
}

/** On the pistons by the foot, in N; pi stands in both areas and goes out. */
export function forceByPedal(pedal: Pedal, diameters: readonly Interval[]): Interval {
  const onMaster = divideIntervals(pedalPush(pedal), powerInterval(pedal.masterBore, 2));
  return multiplyIntervals(onMaster, squareSum(diameters));
}

function pedalPush({ force, ratio, boost }: Pedal): Interval {
  return multiplyIntervals(multiplyIntervals(force, ratio), boost);
}

/** On the pistons by a line pressure in MPa, in N. */
export function forceByPressure(pressure: Interval, diameters: readonly Interval[]): Interval {
  return multiplyIntervals(pressure, pistonArea(diameters));
}

/** The middle of a band from an inner to an outer radius. */
export function middleRadius(inner: Interval, outer: Interval): Interval {
  return frictionRadius(ringOf(inner, outer), 'uniform-wear');
}

/** The radius at which even pressure over a ring acts; a ring without width has one too. */
export function ringRadius(inner: Interval, outer: Interval): Interval {
  return frictionRadius(ringOf(inner, outer), 'uniform-pressure');
}

/** A clutch is told by its diameters. */
function ringOf(inner: Interval, outer: Interval): Ring {
  return { outer: scaleInterval(outer, TWO), inner: scaleInterval(inner, TWO) };
}

/** Of pads that press from both sides with `force` in N at a radius in mm, in N.m. */
export function discTorque(force: Interval, friction: Interval, radius: Interval): Interval {
  const both = scaleInterval(multiplyIntervals(friction, force), TWO);
  return scaleInterval(multiplyIntervals(both, radius), rational('1/1000'));
}

/** Ends of what brake pads of cars have for friction; the maker's figure goes before it. */
const USUAL_FRICTION = ['0.35', '0.45'] as const;

/** What leads from the foot to the pistons, the same for discs and drums. */
export const PEDAL_INPUTS = {
  pressure: {
    type: 'quantity',
    dimension: 'pressure',
    optional: true,
    least: '0 MPa',
    greatest: '100 MPa',
    usual: ['0 MPa', '16 MPa'],
    name: {
      en: 'line pressure, where it is known',
      de: 'Leitungsdruck, wo er bekannt ist',
    },
  },
  pedalForce: {
    type: 'quantity',
    dimension: 'force',
    optional: true,
    least: '0 N',
    greatest: '10000 N',
    usual: ['0 N', '1000 N'],
    name: { en: 'force of the foot on the pedal', de: 'Fußkraft am Pedal' },
  },
  pedalRatio: {
    type: 'quantity',
    optional: true,
    above: '0',
    greatest: '100',
    usual: ['3', '8'],
    name: { en: 'pedal ratio, 1 if not told', de: 'Pedalübersetzung, sonst 1' },
  },
  boost: {
    type: 'quantity',
    optional: true,
    least: '1',
    greatest: '100',
    usual: ['1', '10'],
    name: {
      en: 'what the booster multiplies the force by, 1 if not told',
      de: 'Verstärkung durch den Bremskraftverstärker, sonst 1',
    },
  },
  masterBore: {
    type: 'quantity',
    dimension: 'length',
    optional: true,
    above: '0 mm',
    greatest: '200 mm',
    usual: ['15 mm', '32 mm'],
    name: {
      en: 'bore of the master cylinder',
      de: 'Durchmesser des Hauptbremszylinders',
    },
  },
} as const;

/** Inputs of which the outputs of a line pressure need some. */
export const PEDAL_NEEDS = ['pressure', 'pedalForce', 'masterBore'] as const;

export interface GivenPedal {
  readonly pressure: Interval | null;
  readonly pedalForce: Interval | null;
  readonly pedalRatio: Interval | null;
  readonly boost: Interval | null;
  readonly masterBore: Interval | null;
}

/** The foot as it was told; null where the pressure has to be, or one of the two is missing. */
function pedalOf({ pedalForce, pedalRatio, boost, masterBore }: GivenPedal): Pedal | null {
  if (pedalForce === null || masterBore === null) return null;
  const one = point(ONE);
  return { force: pedalForce, ratio: pedalRatio ?? one, boost: boost ?? one, masterBore };
}

/** Pressure and force on pistons, as far as what was told leads to them. */
export function hydraulics(given: GivenPedal, diameters: readonly Interval[]) {
  const pedal = pedalOf(given);
  if (given.pressure !== null) {
    return { pressure: given.pressure, force: forceByPressure(given.pressure, diameters) };
  }
  if (pedal === null) return {};
  return { pressure: linePressure(pedal), force: forceByPedal(pedal, diameters) };
}

/** A pressure may be told or follow from the foot, not both. */
export function pedalFaults(given: GivenPedal): GivenFault[] {
  const { pressure, ...foot } = given;
  if (pressure === null) return [];
  const isTwice = PEDAL_NAMES.some((name) => foot[name] !== null);
  if (!isTwice) return [];
  const text = {
    en: 'Give the line pressure, or what it follows from at the pedal, not both.',
    de: 'Den Leitungsdruck angeben oder das, woraus er am Pedal folgt, nicht beides.',
  };
  return [{ input: 'pressure', text }];
}

const PEDAL_NAMES = ['pedalForce', 'pedalRatio', 'boost', 'masterBore'] as const;

const RADIUS = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  above: '0 mm',
  greatest: '1000 mm',
} as const;

export const brakeTorque = calculation({
  name: 'brake-torque',
  title: { en: 'Torque of a disc brake', de: 'Bremsmoment einer Scheibenbremse' },
  about: {
    en: 'With which torque does this caliper brake at that pedal force or line pressure?',
    de: 'Mit welchem Moment bremst dieser Sattel bei dieser Fußkraft oder diesem Druck?',
  },
  inputs: {
    ...PEDAL_INPUTS,
    pistons: {
      type: 'quantity',
      dimension: 'length',
      most: 8,
      above: '0 mm',
      greatest: '300 mm',
      usual: ['25 mm', '70 mm'],
      name: {
        en: 'diameters of the pistons of one side of the disc',
        de: 'Durchmesser der Kolben auf einer Seite der Scheibe',
      },
    },
    friction: {
      type: 'quantity',
      above: '0',
      greatest: '2',
      usual: USUAL_FRICTION,
      name: { en: 'friction of the pads', de: 'Reibwert der Beläge' },
    },
    radius: {
      ...RADIUS,
      usual: ['70 mm', '200 mm'],
      name: { en: 'effective radius', de: 'wirksamer Reibhalbmesser' },
    },
    padInner: {
      ...RADIUS,
      name: { en: 'inner radius of the pad band', de: 'Innenhalbmesser der Belagbahn' },
    },
    padOuter: {
      ...RADIUS,
      name: { en: 'outer radius of the pad band', de: 'Außenhalbmesser der Belagbahn' },
    },
    band: {
      type: 'code',
      optional: true,
      name: {
        en: 'where the band acts, in its middle if not told',
        de: 'wo die Bahn wirkt, sonst in der Mitte',
      },
      codes: {
        middle: { en: 'in the middle of the band', de: 'in der Mitte der Bahn' },
        'even-pressure': {
          en: 'as with even pressure over the band',
          de: 'wie bei gleichmäßigem Druck über die Bahn',
        },
      },
    },
  },
  outputs: {
    linePressure: {
      type: 'quantity',
      dimension: 'pressure',
      needs: PEDAL_NEEDS,
      name: { en: 'line pressure', de: 'Leitungsdruck' },
    },
    pistonArea: {
      type: 'quantity',
      dimension: 'length^2',
      name: { en: 'piston area of one side', de: 'Kolbenfläche einer Seite' },
    },
    force: {
      type: 'quantity',
      dimension: 'force',
      needs: PEDAL_NEEDS,
      name: { en: 'force on each pad', de: 'Kraft auf jeden Belag' },
    },
    effectiveRadius: {
      type: 'quantity',
      dimension: 'length',
      needs: ['radius', 'padInner', 'padOuter'],
      name: { en: 'effective radius', de: 'wirksamer Reibhalbmesser' },
    },
    torque: {
      type: 'quantity',
      dimension: 'torque',
      needs: [...PEDAL_NEEDS, 'radius', 'padInner', 'padOuter'],
      name: { en: 'torque of one brake', de: 'Moment einer Bremse' },
    },
  },
  formulas: [
    'linePressure = pedalForce · pedalRatio · boost / (π/4 · masterBore²)',
    'pistonArea = π/4 · (pistons[1]² + pistons[2]² + …)',
    'force = linePressure · pistonArea',
    'effectiveRadius = (padInner + padOuter) / 2   (middle)',
    'effectiveRadius = 2/3 · (padOuter³ − padInner³) / (padOuter² − padInner²)   (even-pressure)',
    'torque = 2 · friction · force · effectiveRadius',
  ],
  assumptions: [
    {
      en: 'A floating caliper, or one with like pistons on both sides: count those of one side.',
      de: 'Schwimmsattel oder Festsattel mit gleichen Kolben: die einer Seite zählen.',
    },
    {
      en: 'The pressure reaches the pistons whole, without valve or return spring.',
      de: 'Der Druck kommt ganz an den Kolben an, ohne Ventil und ohne Rückstellfeder.',
    },
  ],
  validity: [
    {
      en: 'Not for hot, wet or new pads: enter the friction that the maker states.',
      de: 'Nicht für heiße, nasse, neue Beläge: Den Reibwert des Herstellers eingeben.',
    },
    {
      en: 'The tyre may slide before the brake gives this torque.',
      de: 'Der Reifen kann rutschen, ehe die Bremse dieses Moment aufbringt.',
    },
  ],
  sources: [
    { title: 'disc brake torque T = 2 mu F r, rings by even pressure', basis: 'read' },
    { title: 'friction of 0.35 to 0.45', basis: 'common-practice' },
  ],
  warnings: {
    'band-may-be-none': {
      en: 'The ranges of both radii meet: measure the pad band more closely.',
      de: 'Die Bereiche beider Halbmesser berühren sich: die Belagbahn genauer messen.',
    },
  },
  caution: 'brakes',
  examples: [
    {
      name: 'by-pedal',
      summary: 'From the pedal to a floating caliper, with the band of its pads',
      given: {
        pedalForce: '300 N',
        pedalRatio: '4.2',
        boost: '4',
        masterBore: '23.81 mm',
        pistons: ['54 mm'],
        friction: '0.35 to 0.42',
        padInner: '92 mm',
        padOuter: '138 mm',
        band: 'even-pressure',
      },
    },
    {
      name: 'by-pressure',
      summary: 'At 8 MPa with two pistons on a side',
      given: { pressure: '8 MPa', pistons: ['36 mm', '40 mm'], friction: '0.38', radius: '115 mm' },
    },
  ],
  calculate: (given) => {
    const faults = [...pedalFaults(given), ...radiusFaults(given)];
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const { pressure, force } = hydraulics(given, given.pistons);
    const effectiveRadius = radiusOf(given);
    const { padInner, padOuter } = given;
    const isNoBand = padInner && padOuter && isBelow(padInner, padOuter) !== 'holds';
    return {
      found: {
        linePressure: pressure,
        pistonArea: pistonArea(given.pistons),
        force,
        effectiveRadius,
        torque: force && effectiveRadius && discTorque(force, given.friction, effectiveRadius),
      },
      warnings: isNoBand ? ['band-may-be-none'] : [],
    };
  },
});

interface GivenRadius {
  readonly radius: Interval | null;
  readonly padInner: Interval | null;
  readonly padOuter: Interval | null;
  readonly band: 'middle' | 'even-pressure' | null;
}

function radiusOf({ radius, padInner, padOuter, band }: GivenRadius): Interval | undefined {
  if (radius !== null) return radius;
  if (padInner === null || padOuter === null) return undefined;
  const by = band === 'even-pressure' ? ringRadius : middleRadius;
  return by(padInner, padOuter);
}

function radiusFaults({ radius, padInner, padOuter }: GivenRadius): GivenFault[] {
  const isBand = padInner !== null || padOuter !== null;
  if (radius !== null && isBand) {
    const text = {
      en: 'Give the effective radius, or the band of the pads, not both.',
      de: 'Den wirksamen Halbmesser angeben oder die Bahn der Beläge, nicht beides.',
    };
    return [{ input: 'radius', text }];
  }
  if (padInner === null || padOuter === null || isBelow(padInner, padOuter) !== 'fails') return [];
  const text = {
    en: 'The inner radius of the pad band is smaller than its outer one.',
    de: 'Der Innenhalbmesser der Belagbahn ist kleiner als der äußere.',
  };
  return [{ input: 'padInner', text }];
}
