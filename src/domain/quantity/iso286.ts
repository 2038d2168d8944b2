/**
 * Limits of size by ISO 286: what `50 H7` allows.
 *
 * Governing standard: ISO 286-1:2010 (standard tolerances, fundamental deviations, the rule for
 * holes) and ISO 286-2:2010 (limits), sizes over 0 up to and including 500 mm. The tables are the
 * standard's values, not its older formulas, which round differently. The rows are from memory,
 * compared with public copies of the tables; no paid copy of the standard was at hand. The tests
 * hold every row but c against the formulas, and all letters against published limits.
 *
 * Left out: sizes above 500 mm, grades 01 to 4 and 17, 18, and the letters a, b, cd, ef, fg, j,
 * t to zc with their holes, whose rows were not checked. A class that is not here is refused,
 * never estimated.
 */

import type { Rational } from './rational.js';
import { compare, fraction, negate, rational, shortText, sign, subtract } from './rational.js';

/** Deviations from the nominal size in mm: a size is within nominal + lower to nominal + upper. */
export interface IsoLimits {
  readonly lower: Rational;
  readonly upper: Rational;
}

export interface IsoFault {
  readonly code: 'unknown-class' | 'out-of-range';
  readonly text: string;
}

/** Nominal sizes in mm, each range over the one before, up to and including the number given. */
const RANGES: readonly number[] = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];

/** The finer ranges in which the deviations of c, r and s are given. */
const FINE_RANGES: readonly number[] = [
  3, 6, 10, 18, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450,
  500,
];

const LARGEST_SIZE = rational(500);
const ONE_MM = rational(1);

/** Standard tolerances in micrometres, ISO 286-1:2010 table 1; grade 4 serves the delta rule. */
const TOLERANCES: Readonly<Record<number, readonly number[]>> = {
  4: [3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20],
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400],
  12: [100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630],
  13: [140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810, 890, 970],
  14: [250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300, 1400, 1550],
  15: [400, 480, 580, 700, 840, 1000, 1200, 1400, 1600, 1850, 2100, 2300, 2500],
  16: [600, 750, 900, 1100, 1300, 1600, 1900, 2200, 2500, 2900, 3200, 3600, 4000],
};
const FINEST_GRADE = 5;
const COARSEST_GRADE = 16;
/** Grades from here on are not for sizes up to 1 mm (ISO 286-1:2010 table 1). */
const FIRST_GRADE_OVER_ONE_MM = 14;

/** Distance in micrometres from the nominal size to the nearer limit, ISO 286-1:2010 table 4. */
const CLEARANCE_DEVIATIONS: Readonly<Record<string, readonly number[]>> = {
  c: [
    60, 70, 80, 95, 110, 120, 130, 140, 150, 170, 180, 200, 210, 230, 240, 260, 280, 300, 330, 360,
    400, 440, 480,
  ],
  d: [20, 30, 40, 50, 65, 80, 100, 120, 145, 170, 190, 210, 230],
  e: [14, 20, 25, 32, 40, 50, 60, 72, 85, 100, 110, 125, 135],
  f: [6, 10, 13, 16, 20, 25, 30, 36, 43, 50, 56, 62, 68],
  g: [2, 4, 5, 6, 7, 9, 10, 12, 14, 15, 17, 18, 20],
  h: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
};

/** As above, table 5: these lie on the other side of the nominal size. */
const INTERFERENCE_DEVIATIONS: Readonly<Record<string, readonly number[]>> = {
  k: [0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5],
  m: [2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23],
  n: [4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40],
  p: [6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68],
  r: [
    10, 15, 19, 23, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132,
  ],
  s: [
    14, 19, 23, 28, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208,
    232, 252,
  ],
};

/** Shafts of k keep their distance only in grades 4 to 7; coarser ones begin at the nominal. */
const COARSEST_K_SHAFT = 7;
/** Holes K, M and N lie nearer by delta up to this grade, P and tighter ones up to the next. */
const COARSEST_DELTA_KMN = 8;
const COARSEST_DELTA_PRS = 7;

const CLASS_TEXT = /^(js|JS|[a-z]|[A-Z])([1-9]\d?)$/;

/** A class at a size, taken apart. */
interface Zone {
  readonly letter: string;
  readonly isHole: boolean;
  readonly grade: number;
  readonly size: Rational;
  /** Standard tolerance in micrometres. */
  readonly tolerance: number;
}

/**
 * The limits of a tolerance class at a nominal size.
 *
 * @param size nominal size in mm, over 0 up to and including 500.
 * @param classText a letter and a grade: capital letters are holes, small ones shafts (`H7`,
 *   `g6`). Letters c d e f g h js k m n p r s, grades 5 to 16; K only to grade 8.
 * @returns deviations in mm, or a fault whose text says which sizes and classes are known.
 */
export function isoLimits(size: Rational, classText: string): IsoLimits | IsoFault {
  const zone = zoneOf(size, classText);
  if ('code' in zone) return zone;
  const lower = zone.letter === 'js' ? null : lowerDeviation(zone);
  if (lower === null) {
    const half = fraction(BigInt(zone.tolerance), 2000n);
    return { lower: negate(half), upper: half };
  }
  return {
    lower: fraction(BigInt(lower), 1000n),
    upper: fraction(BigInt(lower + zone.tolerance), 1000n),
  };
}

/** The rounded value of the standard, in mm, or a fault where it gives none. */
export function isoTolerance(size: Rational, grade: number): Rational | IsoFault {
  const limits = isoLimits(size, `h${grade}`);
  return isIsoFault(limits) ? limits : subtract(limits.upper, limits.lower);
}

/** The range of nominal sizes that a size is in: over the first, up to and including the second. */
export function isoRange(size: Rational): readonly [number, number] | null {
  if (sign(size) <= 0 || compare(size, LARGEST_SIZE) > 0) return null;
  const range = rangeOf(RANGES, size);
  const upTo = RANGES[range];
  return upTo === undefined ? null : [RANGES[range - 1] ?? 0, upTo];
}

export function isIsoFault<Result extends object>(result: Result | IsoFault): result is IsoFault {
  return 'code' in result;
}

function zoneOf(size: Rational, classText: string): Zone | IsoFault {
  if (sign(size) <= 0 || compare(size, LARGEST_SIZE) > 0) {
    return outOfRange(
      `Fit classes are known for sizes above 0 up to 500 mm, not for ${shortText(size)} mm.`,
    );
  }
  const [, letters = '', digits = ''] = CLASS_TEXT.exec(classText) ?? [];
  const letter = letters.toLowerCase();
  const grade = Number(digits);
  if (!isKnownLetter(letter) || grade < FINEST_GRADE || grade > COARSEST_GRADE) {
    return unknownClass(
      `“${classText}” is no fit class known here. Known are the shafts c d e f g h js k m n p ` +
        'r s and the same holes in capital letters, with a grade from 5 to 16, such as H7 or g6.',
    );
  }
  const isHole = letters !== letter;
  if (isHole && letter === 'k' && grade > COARSEST_DELTA_KMN) {
    return unknownClass(`ISO 286 gives the hole K only up to grade 8, not “${classText}”.`);
  }
  if (compare(size, ONE_MM) <= 0) {
    const coarseN = isHole && letter === 'n' && grade > COARSEST_DELTA_KMN;
    if (grade >= FIRST_GRADE_OVER_ONE_MM || coarseN) {
      return outOfRange(`ISO 286 does not give “${classText}” for sizes up to 1 mm.`);
    }
  }
  const tolerance = toleranceOf(grade, size);
  return { letter, isHole, grade, size, tolerance };
}

function isKnownLetter(letter: string): boolean {
  return (
    letter === 'js' ||
    Object.hasOwn(CLEARANCE_DEVIATIONS, letter) ||
    Object.hasOwn(INTERFERENCE_DEVIATIONS, letter)
  );
}

/** The lower limit less the nominal size, in micrometres. */
function lowerDeviation(zone: Zone): number {
  const clearance = rowOf(CLEARANCE_DEVIATIONS, zone);
  if (clearance !== null) return zone.isHole ? clearance : -clearance - zone.tolerance;
  const interference = rowOf(INTERFERENCE_DEVIATIONS, zone) ?? 0;
  if (zone.isHole) return upperDeviationOfHole(zone, interference) - zone.tolerance;
  return zone.letter === 'k' && zone.grade > COARSEST_K_SHAFT ? 0 : interference;
}

/**
 * The upper limit less the nominal size of a hole K to S, in micrometres. Fine holes are moved
 * towards the nominal size by delta, the step to the next finer grade, so that for example P7/h6
 * grips as H7/p6 does (ISO 286-1:2010, 4.3.2.5 and table 3).
 */
function upperDeviationOfHole(zone: Zone, interference: number): number {
  const isKmn = zone.letter === 'k' || zone.letter === 'm' || zone.letter === 'n';
  const isFine = zone.grade <= (isKmn ? COARSEST_DELTA_KMN : COARSEST_DELTA_PRS);
  const range = rangeOf(RANGES, zone.size);
  if (!isFine) return zone.letter === 'n' && range > 0 ? 0 : -interference;
  // The one exception that table 3 prints: M6 over 250 up to 315 mm is -9, not -11.
  if (zone.letter === 'm' && zone.grade === 6 && RANGES[range] === 315) return -9;
  const delta = range === 0 ? 0 : zone.tolerance - toleranceOf(zone.grade - 1, zone.size);
  return delta - interference;
}

function toleranceOf(grade: number, size: Rational): number {
  const tolerance = TOLERANCES[grade]?.[rangeOf(RANGES, size)];
  if (tolerance === undefined) throw new RangeError(`No standard tolerance of grade ${grade}`);
  return tolerance;
}

function rowOf(table: Readonly<Record<string, readonly number[]>>, zone: Zone): number | null {
  const row = Object.hasOwn(table, zone.letter) ? table[zone.letter] : undefined;
  if (row === undefined) return null;
  const ranges = row.length === RANGES.length ? RANGES : FINE_RANGES;
  return row[rangeOf(ranges, zone.size)] ?? null;
}

function rangeOf(ranges: readonly number[], size: Rational): number {
  return ranges.findIndex((upTo) => compare(size, rational(upTo)) <= 0);
}

function unknownClass(text: string): IsoFault {
  return { code: 'unknown-class', text };
}

function outOfRange(text: string): IsoFault {
  return { code: 'out-of-range', text };
}
