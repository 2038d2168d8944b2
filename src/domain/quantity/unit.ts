/**
 * Units and what they measure.
 *
 * Every factor is an exact rational, derived from three agreed numbers: the inch, the pound and
 * standard gravity. Each dimension has one base unit, in which all intervals are kept. Dimensions
 * are names of what a workshop measures, not of physics: volume is not length cubed and power is
 * not torque times rotation, because no check multiplies one into the other. Left out: units with
 * an offset (degrees Fahrenheit), and those with two sizes (gallon, ton), which cannot be exact.
 */

import type { Rational } from './rational.js';
import { divide, multiply, ONE, power, rational } from './rational.js';

/**
 * A product of powers of named dimensions, in the order of their names: `length`, `length^-1`,
 * `length*torque`. A pure number is `1`.
 */
export type Dimension = string;

export type UnitSystem = 'metric' | 'imperial';

/** In which units people are shown values: as each was recorded, or all in one system. */
export const SHOWN_UNITS = ['recorded', 'metric', 'imperial'] as const;

export type ShownUnits = (typeof SHOWN_UNITS)[number];

export interface Unit {
  /** The canonical spelling; empty for a pure number. */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** The size of one of it in the base unit of its dimension. */
  readonly factor: Rational;
  readonly system: UnitSystem | 'both';
}

const PURE: Dimension = '1';

/** International yard and pound agreement, 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg. */
const INCH_MM = rational('25.4');
const POUND_KG = rational('0.45359237');
/** Standard gravity in m/s2: 3rd General Conference on Weights and Measures, 1901. */
export const STANDARD_GRAVITY = rational('9.80665');

const THOUSAND = rational(1000);
const INCHES_A_FOOT = rational(12);
const FEET_A_MILE = rational(5280);
const MM_A_KM = rational(1_000_000);

const FOOT_MM = multiply(INCH_MM, INCHES_A_FOOT);
/** The weight of one pound: 4.4482216152605 N exactly. */
const POUND_FORCE_N = multiply(POUND_KG, STANDARD_GRAVITY);
const POUND_FOOT_NM = divide(multiply(POUND_FORCE_N, FOOT_MM), THOUSAND);
const POUND_INCH_NM = divide(multiply(POUND_FORCE_N, INCH_MM), THOUSAND);
/** Mechanical horsepower by its definition, 550 foot-pounds a second: about 0.7457 kW. */
const HORSEPOWER_KW = divide(multiply(rational(550), POUND_FOOT_NM), THOUSAND);
/** Metric horsepower by its definition, 75 kilogram-force metres a second: 0.73549875 kW. */
const METRIC_HORSEPOWER_KW = divide(multiply(rational(75), STANDARD_GRAVITY), THOUSAND);

function unit(
  symbol: string,
  dimension: Dimension,
  system: Unit['system'],
  factor: Rational = ONE,
): Unit {
  return { symbol, dimension, factor, system };
}

/** The first unit of each dimension is its base unit, whose factor is one. */
const UNITS: readonly Unit[] = [
  unit('', PURE, 'both'),
  unit('%', PURE, 'both', rational('0.01')),
  unit('piece', PURE, 'both'),
  unit('mm', 'length', 'metric'),
  unit('cm', 'length', 'metric', rational(10)),
  unit('m', 'length', 'metric', THOUSAND),
  unit('in', 'length', 'imperial', INCH_MM),
  unit('ft', 'length', 'imperial', FOOT_MM),
  unit('1/mm', 'length^-1', 'metric'),
  unit('1/m', 'length^-1', 'metric', divide(ONE, THOUSAND)),
  unit('1/km', 'length^-1', 'metric', divide(ONE, MM_A_KM)),
  unit('mm2', 'length^2', 'metric'),
  unit('cm2', 'length^2', 'metric', rational(100)),
  unit('in2', 'length^2', 'imperial', power(INCH_MM, 2)),
  unit('mm4', 'length^4', 'metric'),
  unit('in4', 'length^4', 'imperial', power(INCH_MM, 4)),
  unit('l', 'volume', 'metric'),
  unit('ml', 'volume', 'metric', rational('0.001')),
  unit('cm3', 'volume', 'metric', rational('0.001')),
  unit('kg', 'mass', 'metric'),
  unit('g', 'mass', 'metric', rational('0.001')),
  unit('lb', 'mass', 'imperial', POUND_KG),
  unit('kg/m3', 'density', 'metric'),
  unit('N', 'force', 'metric'),
  unit('kN', 'force', 'metric', THOUSAND),
  unit('lbf', 'force', 'imperial', POUND_FORCE_N),
  unit('N.m', 'torque', 'metric'),
  unit('lbf.ft', 'torque', 'imperial', POUND_FOOT_NM),
  unit('lbf.in', 'torque', 'imperial', POUND_INCH_NM),
  // 1 MPa is 1 N/mm2.
  unit('MPa', 'pressure', 'metric'),
  unit('GPa', 'pressure', 'metric', THOUSAND),
  unit('bar', 'pressure', 'metric', rational('0.1')),
  unit('kPa', 'pressure', 'metric', rational('0.001')),
  unit('psi', 'pressure', 'imperial', divide(POUND_FORCE_N, power(INCH_MM, 2))),
  unit('kW', 'power', 'metric'),
  unit('W', 'power', 'metric', rational('0.001')),
  unit('PS', 'power', 'metric', METRIC_HORSEPOWER_KW),
  unit('hp', 'power', 'imperial', HORSEPOWER_KW),
  unit('km/h', 'speed', 'metric'),
  unit('m/s', 'speed', 'metric', rational('3.6')),
  unit('mph', 'speed', 'imperial', divide(multiply(FOOT_MM, FEET_A_MILE), MM_A_KM)),
  unit('m/s2', 'acceleration', 'metric'),
  unit('ft/s2', 'acceleration', 'imperial', divide(FOOT_MM, THOUSAND)),
  unit('h', 'time', 'both'),
  unit('min', 'time', 'both', divide(ONE, rational(60))),
  unit('s', 'time', 'both', divide(ONE, rational(3600))),
  unit('deg', 'angle', 'both'),
  unit('rpm', 'rotation', 'both'),
  unit('degC', 'temperature', 'metric'),
  unit('V', 'voltage', 'both'),
  unit('A', 'current', 'both'),
  unit('mA', 'current', 'both', divide(ONE, THOUSAND)),
  unit('mm2/s', 'viscosity', 'both'),
];

/** Other spellings that are read, each for one canonical symbol. Case matters in all of them. */
const ALIASES: Readonly<Record<string, readonly string[]>> = {
  '%': ['percent'],
  piece: ['pieces', 'pc', 'pcs'],
  in: ['"', '″', 'inch', 'inches'],
  ft: ['foot', 'feet'],
  '1/mm': ['/mm'],
  '1/m': ['/m'],
  '1/km': ['/km'],
  mm2: ['mm²', 'mm^2'],
  cm2: ['cm²', 'cm^2'],
  in2: ['in²', 'in^2'],
  mm4: ['mm⁴', 'mm^4'],
  in4: ['in⁴', 'in^4'],
  cm3: ['cm³', 'cm^3', 'cc', 'ccm'],
  l: ['L', 'litre', 'litres', 'liter', 'liters'],
  ml: ['mL'],
  lb: ['lbs'],
  'kg/m3': ['kg/m³', 'kg/m^3'],
  'N.m': ['Nm', 'N·m', 'N⋅m', 'N*m', 'N-m', 'N m'],
  'lbf.ft': [
    'lbf·ft',
    'lbf⋅ft',
    'lbf*ft',
    'lbf-ft',
    'lbf ft',
    'lb.ft',
    'lb·ft',
    'lb-ft',
    'lb ft',
    'ft.lbf',
    'ft·lbf',
    'ft-lbf',
    'ft lbf',
    'ft.lb',
    'ft-lb',
    'ft lb',
  ],
  'lbf.in': ['lbf·in', 'lbf-in', 'lbf in', 'lb.in', 'lb-in', 'lb in', 'in.lbf', 'in-lbf', 'in-lb'],
  'm/s2': ['m/s²', 'm/s^2'],
  'ft/s2': ['ft/s²', 'ft/s^2'],
  'km/h': ['kph', 'km/hr'],
  h: ['hour', 'hours', 'hr'],
  min: ['minute', 'minutes'],
  s: ['sec', 'second', 'seconds'],
  deg: ['°', 'º', 'degree', 'degrees'],
  rpm: ['1/min', '/min', 'r/min', 'rev/min'],
  degC: ['°C', 'ºC'],
  'mm2/s': ['mm²/s', 'mm^2/s', 'cSt'],
};

const BY_SYMBOL: ReadonlyMap<string, Unit> = new Map(
  UNITS.flatMap((each) =>
    [each.symbol, ...(ALIASES[each.symbol] ?? [])].map((spelling) => [spelling, each] as const),
  ),
);

const BASE_UNITS: ReadonlyMap<Dimension, Unit> = new Map(
  // Reversed, because the last entry of a dimension stays in the map and the first is meant.
  [...UNITS].reverse().map((each) => [each.dimension, each] as const),
);

/** The unit of a symbol or of one of its other spellings; the empty symbol is the pure number. */
export function unitOf(symbol: string): Unit | undefined {
  return BY_SYMBOL.get(symbol);
}

/** The unit in which values of a dimension are kept; a product of dimensions has none. */
export function baseUnit(dimension: Dimension): Unit | undefined {
  return BASE_UNITS.get(dimension);
}

/** The units of a dimension, its base unit first. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return UNITS.filter((each) => each.dimension === dimension);
}

/** Every spelling of the units of a dimension, or of all; the pure number has an empty one. */
export function spellingsOf(dimension?: Dimension): readonly string[] {
  return [...BY_SYMBOL]
    .filter(([, unit]) => dimension === undefined || unit.dimension === dimension)
    .map(([spelling]) => spelling);
}

/** A dimension in words with its article, for people: `a length`, `a pure number`. */
export function nameOf(dimension: Dimension): string {
  switch (dimension) {
    case PURE:
      return 'a pure number';
    case 'length^-1':
      return 'a number per length';
    case 'length^2':
      return 'an area';
    case 'length^4':
      return 'a second moment of area';
    default:
      return `${/^[aeiou]/.test(dimension) ? 'an' : 'a'} ${dimension}`;
  }
}

/** A number of `unit`, as a number of the base unit of its dimension. */
export function toBase(r: Rational, from: Unit): Rational {
  return multiply(r, from.factor);
}

/** A number of base units, as a number of `unit`. */
export function fromBase(r: Rational, to: Unit): Rational {
  return divide(r, to.factor);
}

/** The dimension of a product: `length` times `length^-1` is `1`. */
export function multiplyDimensions(a: Dimension, b: Dimension): Dimension {
  const exponents = exponentsOf(a);
  for (const [name, exponent] of exponentsOf(b)) {
    exponents.set(name, (exponents.get(name) ?? 0) + exponent);
  }
  return textOf(exponents);
}

/** The dimension of an integer power: `length` to the power -1 is `length^-1`. */
export function powerDimension(dimension: Dimension, exponent: number): Dimension {
  if (!Number.isInteger(exponent)) throw new RangeError(`Not an integer exponent: ${exponent}`);
  const exponents = exponentsOf(dimension);
  for (const [name, each] of exponents) exponents.set(name, each * exponent);
  return textOf(exponents);
}

/** The symbol of the base unit, or of the product of base units: `mm`, `N.m*mm`. */
export function baseSymbol(dimension: Dimension): string {
  const base = baseUnit(dimension);
  if (base !== undefined) return base.symbol;
  const parts: string[] = [];
  for (const [name, exponent] of exponentsOf(dimension)) {
    const symbol = baseUnit(name)?.symbol ?? name;
    parts.push(exponent === 1 ? symbol : `${symbol}^${exponent}`);
  }
  return parts.sort().join('*');
}

function exponentsOf(dimension: Dimension): Map<string, number> {
  const exponents = new Map<string, number>();
  if (dimension === PURE) return exponents;
  for (const part of dimension.split('*')) {
    const [name = '', exponent = '1'] = part.split('^');
    if (!/^[a-z]+$/.test(name) || !/^-?[1-9]\d?$/.test(exponent)) {
      throw new RangeError(`Not a dimension: ${dimension}`);
    }
    exponents.set(name, Number(exponent));
  }
  return exponents;
}

function textOf(exponents: ReadonlyMap<string, number>): Dimension {
  const parts = [...exponents]
    .filter(([, exponent]) => exponent !== 0)
    .map(([name, exponent]) => (exponent === 1 ? name : `${name}^${exponent}`));
  return parts.length === 0 ? PURE : parts.sort().join('*');
}
