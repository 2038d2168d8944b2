/**
 * Sizes of car tyres: the designation taken apart, and what follows from it, each formula once for
 * all calculators.
 *
 * Designations are those of ISO 4000-1 and of the ETRTO's manual: 205/55R16 91V. Free diameter is
 * that of a new tyre by its name; the rim is 25.4 mm an inch of its code, or the whole millimetres
 * that the tables of UN R30 have (406 for 16). Rolling circumference is the ETRTO's convention, a
 * factor by the free diameter: 3.05 for radial tyres, 2.99 for bias ones, at the greatest load, the
 * rated pressure and 60 km/h.
 *
 * Left out: sizes without an aspect ratio (155R13), light-truck sizes (LT, C), rims in millimetres
 * (365), and how much a tyre of some make differs from its name: some 1.5 per cent.
 */

import { PI } from '../quantity/enclosure.js';
import {
  divideIntervals,
  type Interval,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import {
  add,
  decimalText,
  fraction,
  HUNDRED,
  multiply,
  type Rational,
  rational,
} from '../quantity/rational.js';
import type { GivenFault } from './calculation.js';
import { isSpeedSymbol, loadOf, type SpeedSymbol, speedAbove, speedOf } from './tyre-tables.js';

export type Construction = 'radial' | 'bias' | 'bias-belted';

export interface TyreSize {
  /** Section width in mm. */
  readonly width: Rational;
  /** Section height in per cent of the width. */
  readonly aspect: Rational;
  readonly construction: Construction;
  readonly rimCode: Rational;
  readonly loadIndex: number | null;
  readonly speedSymbol: SpeedSymbol | null;
  /** Null where nothing is said of the speed. */
  readonly speed: Interval | null;
  /** As the standards write it. */
  readonly text: string;
}

const DIMENSIONS = /P?(\d{3})\/(\d{2})(ZR|R|B|D|-)(\d{2}(?:\.5)?)/;
/** Load index and speed symbol; in brackets the tyre is faster than any symbol. */
const SERVICE = /(?:(\d{2,3})([A-Z])|\((\d{2,3})Y\))?/;
const REINFORCED = /(?:XL|RF|REINFORCED|EXTRALOAD)?/;
const SIZE = new RegExp(
  `^${[DIMENSIONS, SERVICE, REINFORCED].map(({ source }) => source).join('')}$`,
);

/** A designation with or without spaces, capitals or its service description; null for others. */
export function readTyre(text: string): TyreSize | null {
  const parts = SIZE.exec(text.toUpperCase().replace(/\s+/g, ''));
  if (parts === null) return null;
  const [, width = '', aspect = '', letter = '', rim = '', plain, symbol, inBrackets] = parts;
  const index = plain ?? inBrackets;
  const loadIndex = index === undefined ? null : Number(index);
  if (loadIndex !== null && loadOf(loadIndex) === null) return null;
  if (symbol !== undefined && !isSpeedSymbol(symbol)) return null;
  const isPossible = Number(width) >= 105 && Number(aspect) >= 20 && Number(rim) >= 10;
  if (!isPossible) return null;
  const size = {
    width: rational(width),
    aspect: rational(aspect),
    construction: constructionOf(letter),
    rimCode: rational(rim),
    loadIndex,
    speedSymbol: symbol ?? (inBrackets === undefined ? null : 'Y'),
    speed: inBrackets === undefined ? ratedSpeed(letter, symbol) : speedAbove(300),
  } as const;
  const plainService = index === undefined ? '' : ` ${index}${symbol}`;
  const service = inBrackets === undefined ? plainService : ` (${inBrackets}Y)`;
  return { ...size, text: `${width}/${aspect}${letter}${rim}${service}` };
}

function constructionOf(letter: string): Construction {
  if (letter.endsWith('R')) return 'radial';
  return letter === 'B' ? 'bias-belted' : 'bias';
}

/** ZR alone says above 240 km/h; a symbol in brackets says above its own, which is 300. */
function ratedSpeed(letter: string, symbol: SpeedSymbol | undefined): Interval | null {
  if (symbol !== undefined) return speedOf(symbol);
  return letter === 'ZR' ? speedAbove(240) : null;
}

export function tyreFault(input: string, text: string): GivenFault {
  return {
    input,
    text: {
      en:
        `“${text}” is no size of a car tyre. Write it as on the side wall, such as 205/55R16 or ` +
        '205/55R16 91V, without LT or C; of a size without an aspect ratio measure what it rolls.',
      de:
        `„${text}“ ist keine Größe eines Pkw-Reifens. Schreiben wie auf der Seitenwand, etwa ` +
        '205/55R16 oder 205/55R16 91V, ohne LT oder C; fehlt das Verhältnis, Umfang messen.',
    },
  };
}

/** How the millimetres of a rim are had from its code. */
export type RimMillimetres = 'inch' | 'whole';

const INCH_MM = rational('25.4');

export function rimDiameter(code: Rational, by: RimMillimetres = 'inch'): Rational {
  const exact = multiply(code, INCH_MM);
  return by === 'inch' ? exact : rational(decimalText(exact, 0));
}

/** In mm. */
export function sectionHeight({ width, aspect }: Pick<TyreSize, 'width' | 'aspect'>): Rational {
  return multiply(width, multiply(aspect, fraction(1n, 100n)));
}

/** In mm, less the tread that is worn off. */
export function freeDiameter(
  size: Pick<TyreSize, 'width' | 'aspect' | 'rimCode'>,
  { worn = NOTHING, by = 'inch' }: { readonly worn?: Interval; readonly by?: RimMillimetres } = {},
): Interval {
  const height = sectionHeight(size);
  const whole = add(rimDiameter(size.rimCode, by), multiply(height, rational(2)));
  return subtractIntervals(point(whole), scaleInterval(worn, rational(2)));
}

const NOTHING = point(rational(0));

/** Rolling circumference by free diameter. Of bias-belted tyres from memory. */
const ROLLING: Readonly<Record<Construction, Rational>> = {
  radial: rational('3.05'),
  bias: rational('2.99'),
  'bias-belted': rational('2.99'),
};

export function rollingFactor(construction: Construction): Rational {
  return ROLLING[construction];
}

/** In the unit of the diameter. */
export function rollingCircumference(diameter: Interval, construction: Construction): Interval {
  return scaleInterval(diameter, ROLLING[construction]);
}

/** The radius of a rigid wheel that would roll as far. */
export function rollingRadius(circumference: Interval): Interval {
  return divideIntervals(circumference, scaleInterval(PI, rational(2)));
}

/** By how many per cent one circumference is more than another. */
export function percentMore(one: Interval, other: Interval): Interval {
  const share = subtractIntervals(divideIntervals(one, other), point(rational(1)));
  return scaleInterval(share, HUNDRED);
}
