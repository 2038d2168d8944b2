/**
 * Units: names and spellings, dimensions and their products, and the way to the base and back.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equals, exactText, multiply, ONE } from '../../../src/domain/quantity/rational.js';
import type { Unit } from '../../../src/domain/quantity/unit.js';
import {
  baseSymbol,
  baseUnit,
  fromBase,
  multiplyDimensions,
  nameOf,
  powerDimension,
  toBase,
  unitOf,
  unitsOf,
} from '../../../src/domain/quantity/unit.js';
import { rationals } from './arbitraries.js';

const DIMENSIONS = [
  '1',
  'length',
  'length^-1',
  'length^2',
  'length^4',
  'volume',
  'mass',
  'force',
  'torque',
  'pressure',
  'power',
  'speed',
  'acceleration',
  'time',
  'angle',
  'rotation',
  'temperature',
] as const;

function known(symbol: string): Unit {
  const unit = unitOf(symbol);
  if (unit === undefined) throw new Error(`No unit ${symbol}`);
  return unit;
}

describe('factors', () => {
  // International yard and pound agreement of 1959, standard gravity of 1901, and arithmetic.
  it.each([
    ['in', '25.4'],
    ['ft', '304.8'],
    ['m', '1000'],
    ['cm', '10'],
    ['lb', '0.45359237'],
    ['g', '0.001'],
    ['lbf', '4.4482216152605'],
    ['kN', '1000'],
    ['lbf.ft', '1.3558179483314004'],
    ['lbf.in', '0.1129848290276167'],
    ['ft/s2', '0.3048'],
    ['PS', '0.73549875'],
    ['hp', '0.74569987158227022'],
    ['W', '0.001'],
    ['mph', '1.609344'],
    ['m/s', '3.6'],
    ['bar', '0.1'],
    ['kPa', '0.001'],
    ['ml', '0.001'],
    ['cm3', '0.001'],
    ['1/m', '0.001'],
    ['1/km', '0.000001'],
    ['in2', '645.16'],
    ['cm2', '100'],
    ['min', '1/60'],
    ['s', '1/3600'],
    ['%', '0.01'],
    ['piece', '1'],
  ])('one %s is %s of its base unit', (symbol, factor) => {
    expect(exactText(known(symbol).factor)).toBe(factor);
  });

  it('a pound per square inch is a pound-force by a square inch', () => {
    const perSquareInch = multiply(known('psi').factor, known('in2').factor);
    expect(equals(perSquareInch, known('lbf').factor)).toBe(true);
  });

  it.each(DIMENSIONS)('the base unit of %s has the factor one and leads its list', (dimension) => {
    const base = baseUnit(dimension);
    expect(base?.factor).toEqual(ONE);
    expect(unitsOf(dimension)[0]).toBe(base);
    expect(baseSymbol(dimension)).toBe(base?.symbol);
  });

  it('converts there and back without loss', () => {
    const units = DIMENSIONS.flatMap((dimension) => unitsOf(dimension));
    fc.assert(
      fc.property(rationals(), fc.constantFrom(...units), (r, unit) => {
        expect(equals(fromBase(toBase(r, unit), unit), r)).toBe(true);
      }),
    );
  });
});

describe('symbols', () => {
  it.each([
    ['Nm', 'N.m'],
    ['N·m', 'N.m'],
    ['N m', 'N.m'],
    ['lb-ft', 'lbf.ft'],
    ['ft.lbf', 'lbf.ft'],
    ['"', 'in'],
    ['inch', 'in'],
    ['°', 'deg'],
    ['L', 'l'],
    ['litre', 'l'],
    ['cc', 'cm3'],
    ['1/min', 'rpm'],
    ['/km', '1/km'],
    ['°C', 'degC'],
    ['pcs', 'piece'],
  ])('reads %s as %s', (spelling, symbol) => {
    expect(unitOf(spelling)).toBe(known(symbol));
    expect(known(symbol).symbol).toBe(symbol);
  });

  it.each(['MM', 'nm', 'NM', 'K', 'F', 'gal', 'ton', 'constructor', '__proto__', ' mm'])(
    'does not know %s',
    (symbol) => {
      expect(unitOf(symbol)).toBeUndefined();
    },
  );

  it('reads no symbol as the pure number', () => {
    expect(unitOf('')).toMatchObject({ dimension: '1', symbol: '' });
  });

  it('gives each spelling to one unit only', () => {
    const symbols = DIMENSIONS.flatMap((dimension) => unitsOf(dimension)).map((u) => u.symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
    for (const symbol of symbols) expect(unitOf(symbol)?.symbol).toBe(symbol);
  });
});

describe('dimensions', () => {
  it.each([
    ['length', 'length^-1', '1'],
    ['1', 'torque', 'torque'],
    ['torque', 'length', 'length*torque'],
    ['length', 'length', 'length^2'],
    ['length^-1*torque', 'length', 'torque'],
    ['length^2', 'length^-3', 'length^-1'],
  ])('%s times %s is %s', (a, b, product) => {
    expect(multiplyDimensions(a, b)).toBe(product);
    expect(multiplyDimensions(b, a)).toBe(product);
  });

  it('raises to a power', () => {
    expect(powerDimension('length', -1)).toBe('length^-1');
    expect(powerDimension('length*torque', 2)).toBe('length^2*torque^2');
    expect(powerDimension('length', 0)).toBe('1');
    expect(powerDimension('1', -3)).toBe('1');
    expect(() => powerDimension('length', 0.5)).toThrow(RangeError);
  });

  it('refuses what is no dimension', () => {
    for (const dimension of ['', 'Length', 'length^0', 'length^^2', 'length**mass', '2']) {
      expect(() => multiplyDimensions(dimension, 'length')).toThrow(RangeError);
    }
  });

  it('has no base unit for a product, but a symbol', () => {
    expect(baseUnit('length*torque')).toBeUndefined();
    expect(baseSymbol('length*torque')).toBe('N.m*mm');
    expect(baseSymbol('length^-1*torque')).toBe('N.m*mm^-1');
  });

  it('has words for people', () => {
    expect(nameOf('1')).toBe('a pure number');
    expect(nameOf('length')).toBe('a length');
    expect(nameOf('angle')).toBe('an angle');
    expect(nameOf('length^2')).toBe('an area');
  });
});
