/**
 * Reads what a calculator was given: texts and whole numbers, by the declarations of its inputs.
 * Which names there are, which are missing and which codes there can be, whoever asks has checked
 * by the same declarations; here every value that cannot be read, or cannot be, is said at once.
 */

import { readLiteral } from '../check/term.js';
import type { QuantityFaultCode } from '../quantity/fault.js';
import { type Interval, interval, isWithin } from '../quantity/interval.js';
import { readNotation } from '../quantity/notation.js';
import { fitClassOf, isFault, type NumberType, parseQuantity } from '../quantity/quantity.js';
import type { Rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import type { AnyCalculation, GivenByName, Input, OneValue, QuantityInput } from './calculation.js';

/** As it stands in a question. */
export type GivenText = string | number;
export type GivenTexts = Readonly<Record<string, GivenText | readonly GivenText[] | undefined>>;

/** Which value, counted from 0 in what was given for the input, and why. */
export type InputFault = { readonly input: string; readonly index: number | null } & (
  | { readonly is: 'unreadable'; readonly because: QuantityFaultCode; readonly text: string }
  /** There is no such value; `bounds` are those that there can be. */
  | { readonly is: 'impossible'; readonly bounds: Interval; readonly dimension: Dimension }
);

/** A value that was given, for an answer to show what it was taken for. */
export interface TakenValue {
  readonly input: string;
  readonly text: string;
  /** Null for a code or a designation. */
  readonly interval: Interval | null;
  readonly dimension: Dimension;
}

export interface Read {
  readonly given: GivenByName;
  readonly taken: readonly TakenValue[];
  /** Inputs with a value outside of what is usual. */
  readonly unusual: readonly string[];
  readonly faults: readonly InputFault[];
}

export function readGiven({ inputs }: AnyCalculation, texts: GivenTexts): Read {
  const faults: InputFault[] = [];
  const taken: TakenValue[] = [];
  const given: Record<string, OneValue | readonly OneValue[] | null> = {};
  for (const [name, input] of Object.entries(inputs)) {
    const isList = input.most !== undefined;
    const values = textsOf(texts[name]).flatMap((text, index) => {
      const read = readOne(input, String(text).trim());
      if ('is' in read) faults.push({ input: name, index: isList ? index : null, ...read });
      return 'is' in read ? [] : [{ input: name, ...read }];
    });
    taken.push(...values);
    const plain = values.map((value) => value.interval ?? value.text);
    if (plain.length === 0) given[name] = null;
    else given[name] = isList ? plain : (plain[0] ?? null);
  }
  const unusual = Object.entries(inputs).filter(([name, input]) =>
    taken.some((value) => value.input === name && isUnusual(value, input)),
  );
  return { given, taken, faults, unusual: unusual.map(([name]) => name) };
}

function textsOf(value: GivenText | readonly GivenText[] | undefined): readonly GivenText[] {
  if (value === undefined) return [];
  return typeof value === 'string' || typeof value === 'number' ? [value] : value;
}

type OneFault = InputFault extends infer Fault
  ? Fault extends unknown
    ? Omit<Fault, 'input' | 'index'>
    : never
  : never;

function readOne(input: Input, text: string): Omit<TakenValue, 'input'> | OneFault {
  if (input.type === 'text' || input.type === 'code') {
    return { text, interval: null, dimension: '1' };
  }
  const dimension = input.dimension ?? '1';
  const read = parseQuantity(text, { type: typeFor(input, text), dimension });
  if (isFault(read)) return { is: 'unreadable', because: read.code, text: read.text };
  const bounds = boundsOf(input);
  if (!isWithin(read.interval, bounds)) return { is: 'impossible', bounds, dimension };
  return { text: read.text, interval: read.interval, dimension };
}

/** A single number is exactly that number; a spread or a fit class is read as a measurement. */
export function typeFor({ type }: Pick<QuantityInput, 'type'>, text: string): NumberType {
  if (type !== 'quantity') return type;
  const notation = readNotation(text);
  if (isFault(notation)) return 'designation';
  return notation.form === 'range' || fitClassOf(notation) !== null ? 'measured' : 'designation';
}

/** The values that there can be of an input. */
export function boundsOf({ above, least, greatest }: QuantityInput): Interval {
  const low = above ?? least;
  return interval(
    low === undefined ? null : literal(low),
    greatest === undefined ? null : literal(greatest),
    { lowOpen: above !== undefined },
  );
}

/** The usual values of an input, or null where nothing is said of them. */
export function usualOf({ usual }: QuantityInput): Interval | null {
  return usual === undefined ? null : interval(literal(usual[0]), literal(usual[1]));
}

/** A value that the program itself writes: `76 mm`, `1/2`. */
export function literal(text: string): Rational {
  const read = readLiteral(text);
  if (read === null) throw new Error(`not a value: ${text}`);
  return read.value;
}

function isUnusual({ interval: value }: TakenValue, input: Input): boolean {
  if (value === null || input.type === 'code' || input.type === 'text') return false;
  const usual = usualOf(input);
  return usual !== null && !isWithin(value, usual);
}
