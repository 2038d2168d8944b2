/**
 * What a recorded value allows: exactly one number, a stretch of numbers, a word, or a choice.
 *
 * Reads the plain notations only (`56.1 mm`, `56 ±1 mm`, `4 to 6 mm`, `43/12`, a tape's reading),
 * in millimetres, inches, newton metres or no unit; the random documents use no others.
 */

import type {
  EvidenceRecord,
  ParameterRecord,
  RoleValueRecord,
  Scalar,
  ValueRecord,
} from '../../src/domain/catalogue/document.js';
import {
  compare,
  type Fraction,
  fraction,
  larger,
  minus,
  plus,
  readFraction,
  smaller,
  times,
  ZERO,
} from './fraction.js';
import type { Basis } from './outcome.js';

export type ValueSpec = Partial<ParameterRecord> & RoleValueRecord;

/** Numbers from low to high; null is without end. An open end is not among them. */
export interface Span {
  readonly low: Fraction | null;
  readonly high: Fraction | null;
  readonly lowOpen: boolean;
  readonly highOpen: boolean;
}

export type Recorded = { readonly basis: Basis } & (
  | { readonly is: 'single'; readonly value: Span | string }
  | { readonly is: 'list'; readonly items: readonly Span[] }
  | { readonly is: 'range'; readonly span: Span }
  | { readonly is: 'set'; readonly options: readonly (Span | string)[] }
);

const UNITS: Readonly<Record<string, Fraction>> = {
  '': fraction(1n),
  mm: fraction(1n),
  in: fraction(254n, 10n),
  'N.m': fraction(1n),
};

/** Half-widths in millimetres of a reading with a tool. */
const TOOLS: Readonly<Record<string, Fraction>> = { tape: fraction(1n) };

export function readValue(record: ValueRecord, spec: ValueSpec, inherited: Basis): Recorded {
  const isObject = typeof record === 'object' && !Array.isArray(record);
  const own = isObject ? (record as { evidence?: EvidenceRecord }).evidence?.basis : undefined;
  const basis = own ?? inherited;
  if (isObject && 'choose' in record) {
    // What one orders is named exactly.
    const exact: ValueSpec = spec.type === 'measured' ? { ...spec, type: 'designation' } : spec;
    const { choose } = record;
    if ('of' in choose) {
      return { basis, is: 'set', options: choose.of.map((option) => readOne(option, exact)) };
    }
    const [from, to] = choose.map((end) => readOne(end, exact) as Span);
    if (from === undefined || to === undefined) throw new Error('a range has two ends');
    return { basis, is: 'range', span: { ...from, high: to.high } };
  }
  const { is, tool } =
    isObject && 'is' in record ? record : { is: record as Scalar | Scalar[], tool: undefined };
  if (Array.isArray(is)) {
    return { basis, is: 'list', items: is.map((one: Scalar) => readOne(one, spec) as Span) };
  }
  return { basis, is: 'single', value: readOne(is as Scalar, spec, tool) };
}

function readOne(raw: Scalar, spec: ValueSpec, tool?: string): Span | string {
  if (spec.type === 'code') return String(raw);
  const [, numbers = '', unit = ''] = /^(.*?) ?(mm|in|N\.m)?$/.exec(String(raw)) ?? [];
  const scale = UNITS[unit];
  if (scale === undefined) throw new Error(`no unit: ${unit}`);
  const read = readNumbers(numbers, spec);
  const span: Span = {
    ...read,
    low: read.low === null ? null : times(read.low, scale),
    high: read.high === null ? null : times(read.high, scale),
  };
  return tool === undefined ? span : widened(span, tool);
}

function readNumbers(text: string, spec: ValueSpec): Span {
  const [first = '', second = ''] = text.split(/ ?± ?| to /);
  const value = readFraction(first);
  if (text.includes('±')) {
    const half = readFraction(second);
    return closed(minus(value, half), plus(value, half));
  }
  if (text.includes(' to ')) return closed(value, readFraction(second));
  const isExact = spec.type === 'count' || spec.type === 'designation' || text.includes('/');
  if (isExact || (spec.type === 'ratio' && !text.includes('.'))) return closed(value, value);
  const decimals = text.split('.')[1]?.length ?? 0;
  const half = fraction(1n, 2n * 10n ** BigInt(decimals));
  const rounded = closed(minus(value, half), plus(value, half));
  return { ...rounded, highOpen: spec.type === 'ratio' };
}

function widened(span: Span, tool: string): Span {
  const half = TOOLS[tool];
  if (half === undefined || span.low === null || span.high === null) {
    throw new Error(`no tool for this: ${tool}`);
  }
  const middle = times(plus(span.low, span.high), fraction(1n, 2n));
  return closed(smaller(span.low, minus(middle, half)), larger(span.high, plus(middle, half)));
}

export function closed(low: Fraction, high: Fraction): Span {
  return { low, high, lowOpen: false, highOpen: false };
}

/** What a value could be if nobody recorded it: lengths of either sign, nothing else below zero. */
export function naturalSpan(spec: ValueSpec): Span {
  const end = { high: null, highOpen: true };
  if (spec.type === 'ratio') return { low: ZERO, lowOpen: true, ...end };
  const isSigned = spec.type !== 'count' && spec.unit !== 'N.m';
  if (isSigned) return { low: null, lowOpen: true, ...end };
  return { low: ZERO, lowOpen: false, ...end };
}

export function isExact({ low, high }: Span): boolean {
  return low !== null && high !== null && compare(low, high) === 0;
}
