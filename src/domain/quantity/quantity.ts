/**
 * A recorded text, and the set of values that it allows.
 *
 * A record seldom says one exact number. A count or a designation is exact by its name; a ratio
 * is exact as tooth counts, while a decimal stands for all that rounds to it; a measured value is
 * as wide as its last digit, its stated tolerance or the tool it was read with, whichever is
 * widest. Limits by a fit class follow ISO 286. Left out: codes, which are words and not numbers,
 * and values that are missing or may be chosen, which are no texts.
 */

import type { QuantityFault } from './fault.js';
import { quantityFault } from './fault.js';
import type { Interval } from './interval.js';
import { closed, hull, isWithin, middle, POSITIVE, point, scaleInterval } from './interval.js';
import { isIsoFault, isoLimits } from './iso286.js';
import type { Notation } from './notation.js';
import { readNotation } from './notation.js';
import { add, compare, larger, rational, smaller, subtract } from './rational.js';
import { readingInterval, roundedInterval, truncatedInterval } from './rounding.js';
import type { Tool } from './tool.js';
import { toolFor } from './tool.js';
import type { Dimension, Unit } from './unit.js';
import { unitOf } from './unit.js';
import { findUnit } from './unit-text.js';

export type { QuantityFault, QuantityFaultCode } from './fault.js';
export { roundedInterval, truncatedInterval } from './rounding.js';
export type { Tool } from './tool.js';
export { TOOLS } from './tool.js';

export type ValueType = 'code' | 'points' | NumberType;

/** Types whose values are single numbers. */
export type NumberType = 'count' | 'designation' | 'ratio' | 'measured';

export interface Quantity {
  /** In the base unit of the dimension. */
  readonly interval: Interval;
  readonly dimension: Dimension;
  /** As typed, with single spaces and the canonical unit symbol. */
  readonly text: string;
  /** Canonical symbol of the unit that was typed; empty for a pure number. */
  readonly unit: string;
  readonly form: 'exact' | 'decimal' | 'tolerance' | 'range' | 'class';
}

export interface QuantityOptions {
  readonly type: NumberType;
  readonly dimension: Dimension;
  /**
   * Id in `TOOLS` of the tool that read the value. It widens a measured value, but not limits by
   * a fit class, which nobody reads from a part. With `tag`, the decimal of a ratio may have been
   * cut off instead of rounded. Counts and designations are exact whatever read them.
   */
  readonly tool?: string | undefined;
}

interface Reading {
  readonly notation: Notation;
  readonly unit: Unit;
  readonly tool: Tool | null;
}

/** Reads a text as a value of a type and a dimension, or says why it is none. Never throws. */
export function parseQuantity(text: string, options: QuantityOptions): Quantity | QuantityFault {
  const { type, dimension } = options;
  const tool = options.tool === undefined ? null : toolFor(options.tool, dimension);
  if (tool !== null && isFault(tool)) return tool;
  const notation = readNotation(text);
  if (isFault(notation)) return notation;
  const classed = dimension === 'length' ? classedSizeOf(notation) : null;
  if (classed !== null) return classQuantity(classed, type);
  const unit = findUnit(notation.unit, dimension, numbersOf(notation));
  if (isFault(unit)) return unit;
  switch (type) {
    case 'count':
      return countQuantity({ notation, unit, tool });
    case 'designation':
      return designationQuantity({ notation, unit, tool });
    case 'ratio':
      return ratioQuantity({ notation, unit, tool });
    case 'measured':
      return measuredQuantity({ notation, unit, tool });
  }
}

/** Whether reading a text, or a part of one, failed. */
export function isFault<Result extends object>(
  result: Result | QuantityFault,
): result is QuantityFault {
  return 'code' in result;
}

/** A whole number that is not negative: teeth, holes, bolts. */
function countQuantity({ notation, unit, tool }: Reading): Quantity | QuantityFault {
  const isWhole = notation.form === 'single' && /^\d+$/.test(notation.value);
  if (!isWhole || unit.symbol === '%' || unit.dimension !== '1') {
    return quantityFault(
      'not-a-count',
      `“${textOf(notation, unit)}” is not a count. A count is a whole number such as 24.`,
    );
  }
  return quantity({ notation, unit, tool }, 'exact', point(rational(notation.value)));
}

/** A value that is a name: exact, unless it is written as a reading. */
function designationQuantity(reading: Reading): Quantity | QuantityFault {
  const { notation, unit } = reading;
  switch (notation.form) {
    case 'single':
      return quantity(reading, 'exact', point(rational(notation.value)));
    case 'range':
      return quantityFault(
        'malformed',
        `“${textOf(notation, unit)}” is a range, but a designation is one value. ` +
          'Write its name, such as 114.3 mm, or a reading with its tolerance, such as 114 ±0.5 mm.',
      );
    case 'tolerance':
    case 'deviations':
      return spreadQuantity(reading);
  }
}

/** Tooth counts exactly, decimals as all numbers that are written so; always above zero. */
function ratioQuantity(reading: Reading): Quantity | QuantityFault {
  const result = ratioOfAnySign(reading);
  if (isFault(result) || isWithin(result.interval, POSITIVE)) return result;
  return quantityFault(
    'out-of-range',
    `“${result.text}” is, or may be, zero or less. A ratio is above zero; the sense of rotation ` +
      'is recorded on its own.',
  );
}

function ratioOfAnySign(reading: Reading): Quantity | QuantityFault {
  const { notation, unit, tool } = reading;
  if (unit.dimension !== '1') {
    return quantityFault(
      'wrong-dimension',
      `“${textOf(notation, unit)}” has a unit, but a ratio is a pure number such as 43/12.`,
    );
  }
  if (notation.form !== 'single') return spreadQuantity(reading);
  if (!notation.value.includes('.')) {
    return quantity(reading, 'exact', point(rational(notation.value)));
  }
  const rounded = roundedInterval(notation.value);
  const allowed =
    tool?.reading === 'printed' ? hull(rounded, truncatedInterval(notation.value)) : rounded;
  return quantity(reading, 'decimal', allowed);
}

/** As wide as the last digit, the stated tolerance or the tool, whichever is widest. */
function measuredQuantity(reading: Reading): Quantity | QuantityFault {
  const { notation, tool } = reading;
  if (notation.form !== 'single') {
    const spread = spreadQuantity(reading);
    return isFault(spread) ? spread : widened(spread, tool);
  }
  if (notation.value.includes('/') || tool?.reading === 'exact') {
    return widened(quantity(reading, 'exact', point(rational(notation.value))), tool);
  }
  return widened(quantity(reading, 'decimal', readingInterval(notation.value)), tool);
}

/** At least the uncertainty of the tool to both sides of the middle. */
function widened(read: Quantity, tool: Tool | null): Quantity {
  const uncertainty = tool?.uncertainty[read.dimension];
  const centre = middle(read.interval);
  if (uncertainty === undefined || centre === null) return read;
  const byTool = closed(subtract(centre, uncertainty), add(centre, uncertainty));
  return { ...read, interval: hull(read.interval, byTool) };
}

/** A value with its tolerance, or a range: all values between, both ends included. */
function spreadQuantity(reading: Reading): Quantity | QuantityFault {
  const { notation, unit } = reading;
  switch (notation.form) {
    case 'single':
      return quantity(reading, 'exact', point(rational(notation.value)));
    case 'tolerance': {
      const value = rational(notation.value);
      const half = rational(notation.half);
      return quantity(reading, 'tolerance', closed(subtract(value, half), add(value, half)));
    }
    case 'deviations': {
      const value = rational(notation.value);
      const first = add(value, rational(notation.first.replace('+', '')));
      const second = add(value, rational(notation.second.replace('+', '')));
      return quantity(reading, 'tolerance', closed(smaller(first, second), larger(first, second)));
    }
    case 'range': {
      const [from, to] = [rational(notation.from), rational(notation.to)];
      if (compare(from, to) <= 0) return quantity(reading, 'range', closed(from, to));
      return quantityFault(
        'out-of-range',
        `“${textOf(notation, unit)}” runs backwards. Write the smaller value first.`,
      );
    }
  }
}

/** A size in mm with its fit class, both as typed. */
interface ClassedSize {
  readonly value: string;
  readonly fitClass: string;
}

/** The parts of `50 H7` and of `50 mm H7`; null when the text has no fit class. */
function classedSizeOf(notation: Notation): ClassedSize | null {
  const fitClass = fitClassOf(notation);
  return notation.form !== 'single' || fitClass === null
    ? null
    : { value: notation.value, fitClass };
}

/** The fit class that stands where others have a unit; null where there is none. */
export function fitClassOf({ form, unit }: Notation): string | null {
  if (form !== 'single' || unitOf(unit) !== undefined) return null;
  return /^(?:mm ?)?([A-Za-z]{1,2}\d{1,2})$/.exec(unit)?.[1] ?? null;
}

/** Limits by ISO 286, in millimetres whether that was typed or not. */
function classQuantity(
  { value, fitClass }: ClassedSize,
  type: QuantityOptions['type'],
): Quantity | QuantityFault {
  const text = `${value} ${fitClass}`;
  if (type !== 'measured') {
    return quantityFault(
      'malformed',
      `“${text}” gives limits by a fit class, but one value is wanted, such as 50 mm.`,
    );
  }
  const size = rational(value);
  const limits = isoLimits(size, fitClass);
  if (isIsoFault(limits)) return limits;
  return {
    interval: closed(add(size, limits.lower), add(size, limits.upper)),
    dimension: 'length',
    text,
    unit: 'mm',
    form: 'class',
  };
}

function quantity(
  { notation, unit }: Reading,
  form: Quantity['form'],
  inTypedUnit: Interval,
): Quantity {
  return {
    interval: scaleInterval(inTypedUnit, unit.factor),
    dimension: unit.dimension,
    text: textOf(notation, unit),
    unit: unit.symbol,
    form,
  };
}

function textOf(notation: Notation, unit: Unit): string {
  return unit.symbol === '' ? numbersOf(notation) : `${numbersOf(notation)} ${unit.symbol}`;
}

function numbersOf(notation: Notation): string {
  switch (notation.form) {
    case 'single':
      return notation.value;
    case 'tolerance':
      return `${notation.value} ±${notation.half}`;
    case 'deviations':
      return `${notation.value} ${notation.first}/${notation.second}`;
    case 'range':
      return `${notation.from} to ${notation.to}`;
  }
}
