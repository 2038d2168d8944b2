/**
 * Writes the recorded values of a face in another way that means the same or less: lengths in
 * inches, an interval as one exact value of it.
 */

import type { InterfaceRecord, ParameterRecord } from '../../src/domain/catalogue/document.js';
import type { BuiltInKind } from '../../src/domain/kinds/kind.js';
import type { Interval } from '../../src/domain/quantity/interval.js';
import { middle, width } from '../../src/domain/quantity/interval.js';
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import {
  divide,
  exactText,
  multiply,
  type Rational,
  rational,
} from '../../src/domain/quantity/rational.js';
import { unitOf } from '../../src/domain/quantity/unit.js';

const INCH = rational('25.4');
const HALF = rational('1/2');

/** A recorded number, as all the values that it allows, in its base unit. */
export interface Recorded {
  readonly parameter: string;
  readonly type: Exclude<ParameterRecord['type'], 'code'>;
  /** The base unit: `mm`, `deg` or none. */
  readonly unit: string;
  readonly interval: Interval;
}

/** The numbers that a face records; codes are left out. */
export function numbersOf(kind: BuiltInKind, face: InterfaceRecord): Recorded[] {
  return Object.entries(kind.parameters).flatMap(([parameter, { type, unit = '' }]) => {
    const raw = face[parameter];
    if (type === 'code' || raw === undefined) return [];
    const { text, tool } = partsOf(raw);
    const dimension = unitOf(unit)?.dimension ?? '1';
    const read = parseQuantity(text, { type, dimension, tool });
    if (isFault(read)) throw new Error(`${parameter}: ${read.text}`);
    return [{ parameter, type, unit, interval: read.interval }];
  });
}

function partsOf(raw: unknown): { text: string; tool: string | undefined } {
  if (typeof raw !== 'object' || raw === null || !('is' in raw)) {
    return { text: String(raw), tool: undefined };
  }
  const tool = 'tool' in raw ? String(raw.tool) : undefined;
  return { text: String(raw.is), tool };
}

/** A face with all its lengths in inches. */
export function inInches(kind: BuiltInKind, face: InterfaceRecord): InterfaceRecord {
  const restated = numbersOf(kind, face)
    .filter(({ unit }) => unit === 'mm')
    .map(({ parameter, interval }) => [parameter, spread(interval, 'in', INCH)] as const);
  return { ...face, ...Object.fromEntries(restated) };
}

/** `56.1 ±0.05 mm`: any closed interval, exactly. */
export function spread(interval: Interval, unit: string, factor: Rational = rational(1)): string {
  const [centre, whole] = [middle(interval), width(interval)];
  if (centre === null || whole === null) throw new Error('a recorded interval has two ends');
  const half = multiply(whole, HALF);
  return `${exactText(divide(centre, factor))} ±${exactText(divide(half, factor))} ${unit}`;
}

/** One value exactly, as a number of this type is written. */
export function exactly({ type, unit }: Recorded, value: Rational): string {
  if (type === 'measured') return `${exactText(value)} ±0 ${unit}`;
  return `${exactText(value)} ${unit}`.trim();
}
