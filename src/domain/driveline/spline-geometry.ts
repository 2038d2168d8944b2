/**
 * Diameters of involute splines from teeth and module, and what their teeth carry: each formula
 * once.
 *
 * Diameters by ISO 4156-1 (ANSI B92.2M took its system over), ANSI B92.1 and DIN 5480-1, side fit,
 * without the deviation of the tooth thickness that a fit class brings. Capacity by the formulas
 * of Machinery's Handbook for straight involute splines, whose factors are inputs.
 *
 * Left out: tolerances, tip relief, crowned teeth, helical splines, major diameter fit.
 */

import { cosineInterval, rootInterval, sineInterval } from '../quantity/enclosure.js';
import {
  addIntervals,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  powerInterval,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { divide, type Rational, rational } from '../quantity/rational.js';

export type SplineFamily = 'iso-4156' | 'ansi-b92-1' | 'din-5480';
export type SplineAngle = '30' | '37.5' | '45';
export type SplineRoot = 'flat' | 'fillet';

export interface Spline {
  readonly family: SplineFamily;
  readonly angle: SplineAngle;
  readonly root: SplineRoot;
  readonly teeth: Interval;
  /** In mm; an inch pitch P is a module of 25.4 / P mm. */
  readonly module: Interval;
  /** Of DIN 5480, in mm; null of the others. */
  readonly reference: Interval | null;
}

/** In mm; null where the standard's table has it by ranges of pitch. */
export interface SplineDiameters {
  readonly pitch: Interval;
  readonly shaftMajor: Interval;
  readonly shaftMinor: Interval | null;
  readonly hubMajor: Interval;
  readonly hubMinor: Interval;
}

const INCH_MM = rational('25.4');
const TWO = rational(2);
const HALF = rational('1/2');

/** In mm, of a pitch in teeth to the inch of diameter. */
export function moduleOfPitch(pitch: Interval): Interval {
  return divideIntervals(point(INCH_MM), pitch);
}

/** How many modules the diameters lie from the pitch diameter. */
interface Offsets {
  readonly shaftMajor: string;
  readonly hubMajor: string;
  readonly hubMinor: string;
}

/** ISO 4156-1 and ANSI B92.2M; shaft roots lie as far inside as hub roots lie outside. */
const ISO: Readonly<Record<SplineAngle, { tip: string; fillet: string; flat: string }>> = {
  '30': { tip: '1', flat: '1.5', fillet: '1.8' },
  '37.5': { tip: '0.9', flat: '1.4', fillet: '1.4' },
  '45': { tip: '0.8', flat: '1.2', fillet: '1.2' },
};

/** The height of a shaft's flank below the pitch diameter, in modules, and the clearance beside. */
const ISO_FLANK = { '30': '0.6', '37.5': '0.55', '45': '0.5' } as const;
const ISO_FORM_CLEARANCE = rational('0.1');

/** ANSI B92.1, side fit. */
const INCH_OFFSETS: Readonly<Record<SplineAngle, Readonly<Record<SplineRoot, Offsets>>>> = {
  '30': {
    flat: { shaftMajor: '1', hubMajor: '1.35', hubMinor: '-1' },
    fillet: { shaftMajor: '1', hubMajor: '1.8', hubMinor: '-1' },
  },
  '37.5': bothRoots({ shaftMajor: '1', hubMajor: '1.6', hubMinor: '-0.8' }),
  '45': bothRoots({ shaftMajor: '1', hubMajor: '1.4', hubMinor: '-0.8' }),
};

function bothRoots(offsets: Offsets) {
  return { flat: offsets, fillet: offsets };
}

export function splineDiameters(spline: Spline): SplineDiameters {
  const { family, teeth, module } = spline;
  const pitch = multiplyIntervals(teeth, module);
  if (family === 'din-5480') return dinDiameters(spline, pitch);
  const beside = (modules: string) =>
    multiplyIntervals(addIntervals(teeth, point(rational(modules))), module);
  if (family === 'ansi-b92-1') {
    const offsets = INCH_OFFSETS[spline.angle][spline.root];
    return {
      pitch,
      shaftMajor: beside(offsets.shaftMajor),
      shaftMinor: null,
      hubMajor: beside(offsets.hubMajor),
      hubMinor: beside(offsets.hubMinor),
    };
  }
  const { tip, ...roots } = ISO[spline.angle];
  return {
    pitch,
    shaftMajor: beside(tip),
    shaftMinor: beside(`-${roots[spline.root]}`),
    hubMajor: beside(roots[spline.root]),
    hubMinor: multiplyIntervals(hubMinorInModules(spline), module),
  };
}

/** All of DIN 5480 hangs on the reference diameter; the shaft's root as it is broached. */
function dinDiameters({ module, reference }: Spline, pitch: Interval): SplineDiameters {
  const root = reference ?? pitch;
  const inside = (modules: string) =>
    subtractIntervals(root, scaleInterval(module, rational(modules)));
  return {
    pitch,
    shaftMajor: inside('0.2'),
    shaftMinor: inside('2.2'),
    hubMajor: root,
    hubMinor: inside('2'),
  };
}

/**
 * The form diameter of the shaft and twice the form clearance. The form diameter is where the
 * flank of the shaft ends, at half the pitch diameter along the line of action less the flank.
 */
function hubMinorInModules({ angle, teeth }: Spline): Interval {
  const at = point(rational(angle));
  const radius = scaleInterval(teeth, HALF);
  const flank = divideIntervals(point(rational(ISO_FLANK[angle])), sineInterval(at));
  const base = multiplyIntervals(radius, cosineInterval(at));
  const along = subtractIntervals(multiplyIntervals(radius, sineInterval(at)), flank);
  const form = rootInterval(addIntervals(powerInterval(base, 2), powerInterval(along, 2)), 2);
  return addIntervals(scaleInterval(form, TWO), scaleInterval(point(ISO_FORM_CLEARANCE), TWO));
}

/** What the teeth are asked to carry. */
export interface SplineLoad {
  /** In N.m. */
  readonly torque: Interval;
  /** The pitch diameter, in mm. */
  readonly diameter: Interval;
  readonly teeth: Interval;
  /** Application over life, times the distribution of the load: Ka Km / Kf. */
  readonly factor: Interval;
}

/** In MPa times mm of length: 4 T Ka Km / (D N t Kf), since half of the teeth carry. */
export function shearTimesLength(load: SplineLoad, thickness: Interval): Interval {
  return timesLength(load, thickness, rational(4000));
}

/** In MPa times mm of length: 2 T Ka Km / (D N h Kf) of a spline that does not slide. */
export function bearingTimesLength(load: SplineLoad, height: Interval): Interval {
  return timesLength(load, height, rational(2000));
}

function timesLength(
  { torque, diameter, teeth, factor }: SplineLoad,
  across: Interval,
  times: Rational,
): Interval {
  const teethAcross = [diameter, teeth].reduce(multiplyIntervals, across);
  const asked = scaleInterval(multiplyIntervals(torque, factor), times);
  return divideIntervals(asked, teethAcross);
}

/** The modules of ISO 4156-1, in mm; 45 degrees has a finer one, and ends with 2.5. */
const ISO_MODULES = '0.25 0.5 0.75 1 1.25 1.5 1.75 2 2.5 3 4 5 6 8 10'.split(' ');

function isoModules(angle: SplineAngle): readonly string[] {
  const last = ISO_MODULES.indexOf('2.5') + 1;
  return angle === '45' ? ISO_MODULES.slice(0, last) : ISO_MODULES.slice(1);
}

/** The pitches of ANSI B92.1, in teeth to the inch; at 30 degrees flat roots end with 32. */
const INCH_PITCHES = [
  '2.5 3 4 5 6 8 10 12 16 20 24 32', // of all angles but 45 degrees, which begins with 10
  '40 48',
  '64 80 128', // of 45 degrees alone
].map((pitches) => pitches.split(' '));

function inchPitches(angle: SplineAngle, root: SplineRoot): readonly string[] {
  const [coarse = [], fine = [], finest = []] = INCH_PITCHES;
  if (angle === '45') return [...coarse.slice(coarse.indexOf('10')), ...fine, ...finest];
  return angle === '30' && root === 'flat' ? coarse : [...coarse, ...fine];
}

/** The modules of DIN 5480-1, in mm, all at 30 degrees. */
const DIN_MODULES = '0.5 0.6 0.75 0.8 1 1.25 1.5 1.75 2 2.5 3 4 5 6 8 10'.split(' ');

/** The modules that a standard has at an angle, in mm. */
export function modulesOf({
  family,
  angle,
  root,
}: Pick<Spline, 'family' | 'angle' | 'root'>): readonly Rational[] {
  const inMm = (texts: readonly string[]) => texts.map((text) => rational(text));
  if (family === 'iso-4156') return inMm(isoModules(angle));
  if (family === 'din-5480') return angle === '30' ? inMm(DIN_MODULES) : [];
  return inchPitches(angle, root).map((pitch) => divide(INCH_MM, rational(pitch)));
}
