/**
 * Amounts and times as a catalogue states them: exact by name, since nobody measures what a price
 * buys or what a job is charged at. Left out: amounts with a tolerance.
 */

import { readLiteral } from '../check/term.js';
import { decimalPlaces, type Rational, sign } from '../quantity/rational.js';
import { type Dimension, nameOf } from '../quantity/unit.js';
import type { Scalar } from './document.js';
import { type FaultList, quoted } from './faults.js';

/** So much of something, above zero; pieces are whole. */
export interface Amount {
  readonly value: Rational;
  readonly dimension: Dimension;
  /** As recorded, for people. */
  readonly text: string;
}

/** What goods are counted or measured out in. */
export const AMOUNT_DIMENSIONS: readonly Dimension[] = ['1', 'volume', 'mass', 'length'];

/** Reads "2", "1 l", "500 g" or "3 m"; says what is wrong and gives null. */
export function readAmount(raw: Scalar, pointer: string, list: FaultList): Amount | null {
  const text = String(raw).trim();
  const read = readLiteral(text);
  if (read === null) {
    list.fault(pointer, 'malformed', `${quoted(text)} is no amount, such as "2" or "1 l".`);
    return null;
  }
  if (!AMOUNT_DIMENSIONS.includes(read.dimension)) {
    const said = 'goods come in pieces, or by volume, mass or length';
    list.fault(pointer, 'wrong-dimension', `This is ${nameOf(read.dimension)}: ${said}.`);
    return null;
  }
  if (sign(read.value) <= 0) {
    list.fault(pointer, 'out-of-range', 'An amount is more than nothing.');
    return null;
  }
  if (read.dimension === '1' && decimalPlaces(read.value) !== 0) {
    list.fault(
      pointer,
      'out-of-range',
      'Pieces are whole; write what is poured or cut with a unit.',
    );
    return null;
  }
  return { ...read, text };
}

/** Reads a time such as "6 h" or "45 min" in hours, never below zero; null where there is none. */
export function readHours(
  raw: Scalar | undefined,
  place: string,
  list: FaultList,
): Rational | null {
  if (raw === undefined) return null;
  const text = String(raw).trim();
  const read = readLiteral(text);
  if (read === null) {
    list.fault(place, 'malformed', `${quoted(text)} is no time, such as "6 h" or "45 min".`);
    return null;
  }
  if (read.dimension !== 'time') {
    const text_ = `This is ${nameOf(read.dimension)}; wanted here is a time, such as "6 h".`;
    list.fault(place, 'wrong-dimension', text_);
    return null;
  }
  if (sign(read.value) < 0) {
    list.fault(place, 'out-of-range', 'A time is never below zero.');
    return null;
  }
  return read.value;
}
