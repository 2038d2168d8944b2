/**
 * Writes the recorded values of a face in another way that means the same or less: lengths in
 * inches, an interval as one exact value of it.
 */

import type { InterfaceRecord } from '../../src/domain/catalogue/document.js';
import type { BuiltInKind } from '../../src/domain/kinds/kind.js';
import type { Interval } from '../../src/domain/quantity/interval.js';
import { middle, width } from '../../src/domain/quantity/interval.js';
import { type PlanePoint, parsePoint } from '../../src/domain/quantity/plane-point.js';
import { isFault, type NumberType, parseQuantity } from '../../src/domain/quantity/quantity.js';
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
  readonly type: NumberType;
  /** The base unit: `mm`, `deg` or none. */
  readonly unit: string;
  readonly interval: Interval;
}

/** The numbers that a face records; codes and points are left out. */
export function numbersOf(kind: BuiltInKind, face: InterfaceRecord): Recorded[] {
  return Object.entries(kind.parameters).flatMap(([parameter, { type, unit = '' }]) => {
    const raw = face[parameter];
    if (type === 'code' || type === 'points' || raw === undefined) return [];
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
  const points = pointsOf(kind, face).map(({ parameter, points: own }) => {
    const texts = own.map(({ x, y }) => {
      return `${spread(x, '', INCH).trim()}, ${spread(y, 'in', INCH)}`;
    });
    return [parameter, texts] as const;
  });
  return { ...face, ...Object.fromEntries([...restated, ...points]) };
}

/** The sets of points that a face records. */
export function pointsOf(
  kind: BuiltInKind,
  face: InterfaceRecord,
): { readonly parameter: string; readonly points: readonly PlanePoint[] }[] {
  return Object.entries(kind.parameters).flatMap(([parameter, { type, unit = '' }]) => {
    const raw = face[parameter];
    if (type !== 'points' || raw === undefined) return [];
    const dimension = unitOf(unit)?.dimension ?? '1';
    const { list, tool } = listOf(raw);
    const points = list.map((text) => {
      const read = parsePoint(String(text), { dimension, tool });
      if (isFault(read)) throw new Error(`${parameter}: ${read.text}`);
      return read;
    });
    return [{ parameter, points }];
  });
}

function listOf(raw: unknown): { list: readonly unknown[]; tool: string | undefined } {
  if (Array.isArray(raw)) return { list: raw, tool: undefined };
  if (typeof raw !== 'object' || raw === null || !('is' in raw) || !Array.isArray(raw.is)) {
    throw new Error('points are a list');
  }
  return { list: raw.is, tool: 'tool' in raw ? String(raw.tool) : undefined };
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
  // The decimal of a ratio stands for all that rounds to it.
  if (type === 'ratio') return value.toFraction();
  return `${exactText(value)} ${unit}`.trim();
}
