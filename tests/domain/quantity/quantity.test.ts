/**
 * Texts that are read, texts that are refused, and what holds for all of them.
 *
 * Length: most of them are rows of two tables of texts.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Interval } from '../../../src/domain/quantity/interval.js';
import { equalIntervals, isPoint, isWithin } from '../../../src/domain/quantity/interval.js';
import type {
  Quantity,
  QuantityFault,
  QuantityFaultCode,
  QuantityOptions,
} from '../../../src/domain/quantity/quantity.js';
import {
  isFault,
  parseQuantity,
  roundedInterval,
  TOOLS,
  truncatedInterval,
} from '../../../src/domain/quantity/quantity.js';
import { exactText, multiply, rational } from '../../../src/domain/quantity/rational.js';
import { baseSymbol } from '../../../src/domain/quantity/unit.js';

type Type = QuantityOptions['type'];

function read(text: string, type: Type, dimension: string, tool?: string): Quantity {
  const result = parseQuantity(text, { type, dimension, tool });
  if (isFault(result)) throw new Error(`${text}: ${result.text}`);
  return result;
}

function refused(text: string, type: Type, dimension: string, tool?: string): QuantityFault {
  const result = parseQuantity(text, { type, dimension, tool });
  if (!isFault(result)) throw new Error(`${text} was read as ${show(result.interval)}`);
  return result;
}

function show(i: Interval): string {
  const low = i.low === null ? '-inf' : exactText(i.low);
  const high = i.high === null ? 'inf' : exactText(i.high);
  return `${i.lowOpen ? '(' : '['}${low}, ${high}${i.highOpen ? ')' : ']'}`;
}

describe('measured values', () => {
  it.each([
    ['56.10 ±0.05 mm', '[56.05, 56.15]', 'tolerance', '56.10 ±0.05 mm'],
    ['56.1 mm', '[56.05, 56.15]', 'decimal', '56.1 mm'],
    ['56.10 mm', '[56.095, 56.105]', 'decimal', '56.10 mm'],
    ['612 mm', '[611.5, 612.5]', 'decimal', '612 mm'],
    ['600 mm', '[599.5, 600.5]', 'decimal', '600 mm'],
    ['-38 mm', '[-38.5, -37.5]', 'decimal', '-38 mm'],
    ['−38 mm', '[-38.5, -37.5]', 'decimal', '-38 mm'],
    ['0 mm', '[-0.5, 0.5]', 'decimal', '0 mm'],
    ['56.1 +0.05/-0.1 mm', '[56, 56.15]', 'tolerance', '56.1 +0.05/-0.1 mm'],
    ['56.1 -0.1/+0.05 mm', '[56, 56.15]', 'tolerance', '56.1 -0.1/+0.05 mm'],
    ['25 +0.035/+0.022 mm', '[25.022, 25.035]', 'tolerance', '25 +0.035/+0.022 mm'],
    ['50 -0.009 / -0.025 mm', '[49.975, 49.991]', 'tolerance', '50 -0.009/-0.025 mm'],
    ['50 +0/-0.016 mm', '[49.984, 50]', 'tolerance', '50 +0/-0.016 mm'],
    ['600 to 610 mm', '[600, 610]', 'range', '600 to 610 mm'],
    ['-5 to 5 mm', '[-5, 5]', 'range', '-5 to 5 mm'],
    ['5 to 5 mm', '[5, 5]', 'range', '5 to 5 mm'],
    ['50 H7', '[50, 50.025]', 'class', '50 H7'],
    ['50 mm H7', '[50, 50.025]', 'class', '50 H7'],
    ['50H7', '[50, 50.025]', 'class', '50 H7'],
    ['50 g6', '[49.975, 49.991]', 'class', '50 g6'],
    ['50 m6', '[50.009, 50.025]', 'class', '50 m6'],
    ['50 e8', '[49.911, 49.95]', 'class', '50 e8'],
    ['1/2 in', '[12.7, 12.7]', 'exact', '1/2 in'],
    ['2.0 in', '[49.53, 52.07]', 'decimal', '2.0 in'],
    ['56.1 +/- 0.05 mm', '[56.05, 56.15]', 'tolerance', '56.1 ±0.05 mm'],
    ['56.1 +-0.05 mm', '[56.05, 56.15]', 'tolerance', '56.1 ±0.05 mm'],
    ['56.1±0.05mm', '[56.05, 56.15]', 'tolerance', '56.1 ±0.05 mm'],
    ['  56.1\u00a0\u202fmm ', '[56.05, 56.15]', 'decimal', '56.1 mm'],
    ['5.61 cm', '[56.05, 56.15]', 'decimal', '5.61 cm'],
    ['4.5"', '[113.03, 115.57]', 'decimal', '4.5 in'],
    ['127/140 mm', '[127/140, 127/140]', 'exact', '127/140 mm'],
    ['1/2 ±1/64 in', '[12.303125, 13.096875]', 'tolerance', '1/2 ±1/64 in'],
  ])('%s allows %s', (text, allowed, form, canonical) => {
    const quantity = read(text, 'measured', 'length');
    expect(show(quantity.interval)).toBe(allowed);
    expect(quantity).toMatchObject({ form, text: canonical, dimension: 'length' });
  });

  it.each([
    ['360 N.m', 'torque', '[359.5, 360.5]', 'N.m'],
    ['360 Nm', 'torque', '[359.5, 360.5]', 'N.m'],
    ['3.5 l', 'volume', '[3.45, 3.55]', 'l'],
    ['350 ml', 'volume', '[0.3495, 0.3505]', 'ml'],
    ['0.8 h', 'time', '[0.75, 0.85]', 'h'],
    ['30.0°', 'angle', '[29.95, 30.05]', 'deg'],
    ['518 1/km', 'length^-1', '[0.0005175, 0.0005185]', '1/km'],
    ['518/km', 'length^-1', '[0.0005175, 0.0005185]', '1/km'],
    ['0.85', '1', '[0.845, 0.855]', ''],
    ['40 %', '1', '[0.395, 0.405]', '%'],
    ['-40 degC', 'temperature', '[-40.5, -39.5]', 'degC'],
    ['5 cm2', 'length^2', '[450, 550]', 'cm2'],
  ])('%s as %s allows %s', (text, dimension, allowed, unit) => {
    const quantity = read(text, 'measured', dimension);
    expect(show(quantity.interval)).toBe(allowed);
    expect(quantity).toMatchObject({ unit, dimension });
  });

  it.each([
    ['612 mm', 'tape', '[611, 613]'],
    ['56.1 mm', 'caliper', '[56.05, 56.15]'],
    ['56.10 mm', 'caliper', '[56.05, 56.15]'],
    ['56.10 ±0.01 mm', 'caliper', '[56.05, 56.15]'],
    ['56.10 ±0.20 mm', 'caliper', '[55.9, 56.3]'],
    ['56.100 mm', 'micrometer', '[56.09, 56.11]'],
    ['56.100 mm', 'digital-caliper', '[56.07, 56.13]'],
    ['56.10 to 56.12 mm', 'caliper', '[56.06, 56.16]'],
    ['1/2 in', 'caliper', '[12.65, 12.75]'],
    ['2.000 in', 'caliper', '[50.75, 50.85]'],
    ['1.25 mm', 'pitch-gauge', '[1.25, 1.25]'],
    ['50 H7', 'tape', '[50, 50.025]'],
  ])('%s read with a %s allows %s', (text, tool, allowed) => {
    expect(show(read(text, 'measured', 'length', tool).interval)).toBe(allowed);
  });
});

describe('measured angles', () => {
  it.each([
    ['30.00 deg', '[29.9, 30.1]'],
    ['30 deg', '[29.5, 30.5]'],
  ])('%s read with an angle finder allows %s', (text, allowed) => {
    expect(show(read(text, 'measured', 'angle', 'angle-finder').interval)).toBe(allowed);
  });
});

describe('designations', () => {
  it.each([
    ['114.3 mm', 'length', '[114.3, 114.3]', 'exact'],
    ['4.5 in', 'length', '[114.3, 114.3]', 'exact'],
    ['1/2 in', 'length', '[12.7, 12.7]', 'exact'],
    ['1 mm', 'length', '[1, 1]', 'exact'],
    ['-38 mm', 'length', '[-38, -38]', 'exact'],
    ['30 deg', 'angle', '[30, 30]', 'exact'],
    ['5', '1', '[5, 5]', 'exact'],
    ['114 ±0.5 mm', 'length', '[113.5, 114.5]', 'tolerance'],
    ['114 +0.5/-0 mm', 'length', '[114, 114.5]', 'tolerance'],
  ])('%s is %s: %s', (text, dimension, allowed, form) => {
    const quantity = read(text, 'designation', dimension);
    expect(show(quantity.interval)).toBe(allowed);
    expect(quantity.form).toBe(form);
  });

  it('is exact by its name, whatever read it', () => {
    expect(show(read('114.3 mm', 'designation', 'length', 'tape').interval)).toBe('[114.3, 114.3]');
  });
});

describe('counts and ratios', () => {
  it.each([
    ['24', '[24, 24]', '24', ''],
    ['0', '[0, 0]', '0', ''],
    ['24 piece', '[24, 24]', '24 piece', 'piece'],
    ['24 pcs', '[24, 24]', '24 piece', 'piece'],
  ])('%s counts %s', (text, allowed, canonical, unit) => {
    const quantity = read(text, 'count', '1', 'count');
    expect(show(quantity.interval)).toBe(allowed);
    expect(quantity).toMatchObject({ text: canonical, unit, form: 'exact' });
  });

  it.each([
    ['43/12', '[43/12, 43/12]', 'exact'],
    ['3', '[3, 3]', 'exact'],
    ['40 %', '[0.4, 0.4]', 'exact'],
    ['3.583', '[3.5825, 3.5835)', 'decimal'],
    ['3.0', '[2.95, 3.05)', 'decimal'],
    ['33.3 %', '[0.3325, 0.3335)', 'decimal'],
    ['3.58 ±0.01', '[3.57, 3.59]', 'tolerance'],
    ['3.5 to 3.6', '[3.5, 3.6]', 'range'],
  ])('%s is the ratio %s', (text, allowed, form) => {
    const quantity = read(text, 'ratio', '1');
    expect(show(quantity.interval)).toBe(allowed);
    expect(quantity.form).toBe(form);
  });

  it.each([
    ['3.583', '[3.5825, 3.584)'],
    ['3.54', '[3.535, 3.55)'],
    ['43/12', '[43/12, 43/12]'],
    ['3', '[3, 3]'],
    ['3.58 ±0.01', '[3.57, 3.59]'],
  ])('%s on a tag is %s: its decimal may be rounded or cut off', (text, allowed) => {
    expect(show(read(text, 'ratio', '1', 'tag').interval)).toBe(allowed);
  });

  it('tells rounding from cutting off', () => {
    expect(show(roundedInterval('3.583'))).toBe('[3.5825, 3.5835)');
    expect(show(truncatedInterval('3.583'))).toBe('[3.583, 3.584)');
    expect(show(truncatedInterval('-3.5'))).toBe('(-3.6, -3.5]');
    expect(show(roundedInterval('4'))).toBe('[3.5, 4.5)');
    for (const text of ['43/12', '3,5', 'abc']) {
      expect(() => roundedInterval(text)).toThrow(RangeError);
      expect(() => truncatedInterval(text)).toThrow(RangeError);
    }
  });
});

describe('texts that are refused', () => {
  const long = `0.${'1'.repeat(30)} mm`;
  it.each<[string, Type, string, QuantityFaultCode, string]>([
    ['', 'measured', 'length', 'malformed', 'empty'],
    ['   ', 'measured', 'length', 'malformed', 'empty'],
    ['56,1 mm', 'measured', 'length', 'malformed', 'comma'],
    ['1,200.5 mm', 'measured', 'length', 'malformed', 'comma'],
    ["1'200 mm", 'measured', 'length', 'malformed', 'mark'],
    ['1 200 mm', 'measured', 'length', 'malformed', 'space'],
    ['1e3 mm', 'measured', 'length', 'malformed', 'exponent'],
    ['1E-3 mm', 'measured', 'length', 'malformed', 'exponent'],
    ['50e8', 'measured', 'length', 'malformed', '50 e8'],
    ['4 1/2 in', 'measured', 'length', 'malformed', '9/2 in'],
    ['.5 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['5. mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['+5 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['5.5/2 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['--5 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['H7', 'measured', 'length', 'malformed', 'cannot be read'],
    ['about 5 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['56.1 -0.05 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['5 ±1.2.3 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['5 ±-0.1 mm', 'measured', 'length', 'malformed', 'cannot be read'],
    ['1/0 mm', 'measured', 'length', 'malformed', 'zero'],
    ['5 ±1/00 mm', 'measured', 'length', 'malformed', 'zero'],
    ['x'.repeat(65), 'measured', 'length', 'malformed', '65 characters'],
    [long, 'measured', 'length', 'too-many-digits', '31 digits'],
    ['56.10 mm ±0.05 mm', 'measured', 'length', 'malformed', 'one unit'],
    ['600 mm to 610 mm', 'measured', 'length', 'malformed', 'one unit'],
    ['5 ft 6 in', 'measured', 'length', 'malformed', 'one unit'],
    ['50 H7/g6', 'measured', 'length', 'malformed', 'two parts'],
    ['610 to 600 mm', 'measured', 'length', 'out-of-range', 'smaller value first'],
    ['56.1', 'measured', 'length', 'missing-unit', '“56.1” has no unit'],
    ['56.10 ±0.05', 'measured', 'length', 'missing-unit', 'mm, cm, m, in, ft'],
    ['0', 'measured', 'torque', 'missing-unit', 'N.m'],
    ['3 kg', 'measured', 'length', 'wrong-dimension', 'a mass'],
    ['5 mm2', 'measured', 'length', 'wrong-dimension', 'an area'],
    ['5 mm', 'measured', '1', 'wrong-dimension', 'pure number'],
    ['12 MM', 'measured', 'length', 'unknown-unit', '“MM”'],
    ['5 furlong', 'measured', 'length', 'unknown-unit', 'furlong'],
    ['5 mm', 'measured', 'length*torque', 'wrong-dimension', 'No unit'],
    ['50 t6', 'measured', 'length', 'unknown-class', 't6'],
    ['50 m3', 'measured', 'length', 'unknown-class', 'grade from 5 to 16'],
    ['50 K9', 'measured', 'length', 'unknown-class', 'grade 8'],
    ['600 H7', 'measured', 'length', 'out-of-range', '500 mm'],
    ['-50 H7', 'measured', 'length', 'out-of-range', '500 mm'],
    ['2 in H7', 'measured', 'length', 'malformed', 'unit'],
    ['50 H7', 'measured', 'angle', 'unknown-unit', 'H7'],
    ['50 H7', 'designation', 'length', 'malformed', 'fit class'],
    ['1 to 2 mm', 'designation', 'length', 'malformed', 'range'],
    ['114.3', 'designation', 'length', 'missing-unit', 'length'],
    ['24.0', 'count', '1', 'not-a-count', 'whole number'],
    ['-1', 'count', '1', 'not-a-count', 'whole number'],
    ['48/2', 'count', '1', 'not-a-count', 'whole number'],
    ['24 ±1', 'count', '1', 'not-a-count', 'whole number'],
    ['20 to 24', 'count', '1', 'not-a-count', 'whole number'],
    ['24 %', 'count', '1', 'not-a-count', 'whole number'],
    ['24 mm', 'count', '1', 'wrong-dimension', 'length'],
    ['24 mm', 'count', 'length', 'not-a-count', 'whole number'],
    ['-43/12', 'ratio', '1', 'out-of-range', 'above zero'],
    ['0', 'ratio', '1', 'out-of-range', 'above zero'],
    ['0.00', 'ratio', '1', 'out-of-range', 'above zero'],
    ['0.1 ±0.1', 'ratio', '1', 'out-of-range', 'above zero'],
    ['3,583', 'ratio', '1', 'malformed', 'comma'],
    ['43:12', 'ratio', '1', 'malformed', '43/12'],
    ['3.5 mm', 'ratio', '1', 'wrong-dimension', 'length'],
    ['3.5 mm', 'ratio', 'length', 'wrong-dimension', 'pure number'],
    ['43/12/2', 'ratio', '1', 'malformed', 'cannot be read'],
  ])('%s as %s of %s: %s', (text, type, dimension, code, words) => {
    const fault = refused(text, type, dimension);
    expect(fault.code).toBe(code);
    expect(fault.text).toContain(words);
  });

  it.each([
    ['3 mm', 'measured', 'length', 'spoon', 'tape, caliper'],
    ['3 mm', 'measured', 'length', 'toString', 'no tool known'],
    ['3 N.m', 'measured', 'torque', 'tape', 'No tool known here tells a torque'],
    ['3.5', 'ratio', '1', 'caliper', 'count, tag'],
    ['3 mm', 'measured', 'length', 'tag', 'does not tell a length'],
  ] as const)('%s as %s of %s with the tool %s', (text, type, dimension, tool, ...words) => {
    const fault = refused(text, type, dimension, tool);
    expect(fault.code).toBe('unknown-tool');
    for (const each of words) expect(fault.text).toContain(each);
  });

  it.each([
    ['what turns the line round', '\u202e5 mm', '\\u{202e}5 mm'],
    ['what is not seen', '5\u200b mm', '5\\u{200b} mm'],
    ['half a character', '5 \ud800', '\\u{d800}'],
  ])('shows %s by its number', (_, typed, shown) => {
    for (const type of ['count', 'designation', 'ratio', 'measured'] as const) {
      const result = parseQuantity(typed, { type, dimension: 'length' });
      expect(isFault(result)).toBe(true);
      expect(result.text).toContain(shown);
      expect(result.text).not.toMatch(/[\p{C}\p{Zl}\p{Zp}]/u);
    }
  });

  it('never throws, whatever is typed', () => {
    const piece = fc.constantFrom(
      '1',
      '0',
      '.',
      '-',
      '+',
      '/',
      '±',
      ' ',
      'to',
      ' to ',
      'mm',
      'in',
      'H7',
      'e',
      ',',
      '%',
      '°',
      '"',
    );
    const typed = fc.oneof(
      fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join('')),
      fc.string({ unit: 'grapheme', maxLength: 70 }),
    );
    const type = fc.constantFrom<Type>('count', 'designation', 'ratio', 'measured');
    const tool = fc.constantFrom(undefined, ...Object.keys(TOOLS));
    fc.assert(
      fc.property(typed, type, fc.constantFrom('1', 'length'), tool, (text, of, dimension, by) => {
        const result = parseQuantity(text, { type: of, dimension, tool: by });
        expect(result.text.length).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });
});

/** Decimals as a person types them. */
function typedDecimals(): fc.Arbitrary<string> {
  return fc
    .tuple(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 0, max: 4 }))
    .map(([digits, places]) => {
      const padded = String(digits).padStart(places + 1, '0');
      const whole = padded.slice(0, padded.length - places);
      return places === 0 ? whole : `${whole}.${padded.slice(padded.length - places)}`;
    });
}

describe('what holds for all texts', () => {
  it('the canonical text reads back as the same value', () => {
    const texts = fc
      .tuple(typedDecimals(), typedDecimals(), fc.constantFrom('mm', 'in', '"', 'cm', 'inch'))
      .chain(([a, b, unit]) =>
        fc.constantFrom(
          `${a}${unit}`,
          `${a} +/-${b}  ${unit}`,
          `-${a} ${unit}`,
          `${a} +${b} / -${b} ${unit}`,
          `-${a} to ${b} ${unit}`,
        ),
      );
    fc.assert(
      fc.property(texts, (text) => {
        const first = read(text, 'measured', 'length');
        const again = read(first.text, 'measured', 'length');
        expect(again).toEqual(first);
      }),
    );
  });

  it('inches and millimetres agree, in every form', () => {
    const inMm = (inches: string): string =>
      exactText(multiply(rational(inches), rational('25.4')));
    fc.assert(
      fc.property(typedDecimals(), typedDecimals(), (a, b) => {
        const pairs: readonly (readonly [Type, string, string])[] = [
          ['designation', `${a} in`, `${inMm(a)} mm`],
          ['measured', `${a} ±${b} in`, `${inMm(a)} ±${inMm(b)} mm`],
          ['measured', `-${a} to ${b} in`, `${inMm(`-${a}`)} to ${inMm(b)} mm`],
        ];
        for (const [type, inches, millimetres] of pairs) {
          const [one, other] = [inches, millimetres].map((t) => read(t, type, 'length'));
          expect(one?.interval).toEqual(other?.interval);
        }
      }),
    );
  });

  it('a text that says more allows less', () => {
    fc.assert(
      fc.property(typedDecimals(), typedDecimals(), typedDecimals(), (value, a, b) => {
        const [narrow, wide] = Number(a) <= Number(b) ? [a, b] : [b, a];
        const allowed = (text: string, tool?: string): Interval =>
          read(text, 'measured', 'length', tool).interval;
        expect(isWithin(allowed(`${value} ±${narrow} mm`), allowed(`${value} ±${wide} mm`))).toBe(
          true,
        );
        const oneMoreDigit = value.includes('.') ? `${value}0` : `${value}.0`;
        expect(isWithin(allowed(`${oneMoreDigit} mm`), allowed(`${value} mm`))).toBe(true);
        expect(isWithin(allowed(`${value} mm`), allowed(`${value} mm`, 'tape'))).toBe(true);
        const [rounded, tagged] = [undefined, 'tag'].map(
          (tool) => read(oneMoreDigit, 'ratio', '1', tool).interval,
        );
        expect(rounded && tagged && isWithin(rounded, tagged)).toBe(true);
      }),
    );
  });

  it('a designation is a point, and within each reading of the same digits', () => {
    fc.assert(
      fc.property(typedDecimals(), (value) => {
        const named = read(`${value} mm`, 'designation', 'length').interval;
        expect(isPoint(named)).toBe(true);
        expect(isWithin(named, read(`${value} mm`, 'measured', 'length').interval)).toBe(true);
      }),
    );
  });

  it.each(Object.entries(TOOLS))('the tool %s never narrows a tolerance', (id, tool) => {
    for (const dimension of Object.keys(tool.uncertainty)) {
      const unit = baseSymbol(dimension);
      for (const half of ['0.001', '0.05', '3']) {
        const text = `56.1 ±${half} ${unit}`;
        const [without, withTool] = [undefined, id].map(
          (by) => read(text, 'measured', dimension, by).interval,
        );
        expect(without && withTool && isWithin(without, withTool)).toBe(true);
      }
    }
  });

  it('an exact tool reads a number as itself', () => {
    const counted = read('24', 'measured', '1', 'count').interval;
    expect(equalIntervals(counted, read('24', 'count', '1').interval)).toBe(true);
  });
});
