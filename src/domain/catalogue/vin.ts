/**
 * Vehicle identification numbers, as far as they tell builds apart: 17 characters (ISO 3779)
 * that a pattern names or leaves open, and a range of the serial number at the end.
 *
 * Left out: what a maker means by each character, the check digit that some countries ask for at
 * the ninth place, and the numbers of other lengths that were given before 1981.
 */

import type { VinRecord } from './document.js';
import { at, type FaultList, quoted } from './faults.js';

export interface VinPattern {
  /** 17 characters; `*` stands for any one. */
  readonly pattern: string;
  /** The last characters of the number, digits all of them, as a number in this closed range. */
  readonly serial: { readonly digits: number; readonly from: number; readonly to: number } | null;
}

/** Whether a number of 17 capitals and digits is one of these; another length never is. */
export function matchesVin({ pattern, serial }: VinPattern, vin: string): boolean {
  if (vin.length !== pattern.length) return false;
  const isAlike = Array.from(pattern).every((sign, place) => sign === '*' || sign === vin[place]);
  if (!isAlike || serial === null) return isAlike;
  const last = vin.slice(-serial.digits);
  return /^[0-9]+$/.test(last) && Number(last) >= serial.from && Number(last) <= serial.to;
}

/** The same where characters of the number may be unread: `*` may be any. */
export function mayMatchVin({ pattern, serial }: VinPattern, vin: string): boolean {
  if (vin.length !== pattern.length) return false;
  const isAlike = Array.from(pattern).every(
    (sign, place) => sign === '*' || vin[place] === '*' || sign === vin[place],
  );
  if (!isAlike || serial === null) return isAlike;
  const last = vin.slice(-serial.digits);
  const least = last.replaceAll('*', '0');
  const most = last.replaceAll('*', '9');
  return /^[0-9]+$/.test(least) && Number(most) >= serial.from && Number(least) <= serial.to;
}

/** Null where it says nothing that can be used. */
export function compileVin(record: VinRecord, pointer: string, list: FaultList): VinPattern | null {
  if (typeof record === 'string') {
    if (record.includes('*')) return { pattern: record, serial: null };
    const text =
      'This is the number of one vehicle, which is none of the catalogue: leave its end open.';
    list.fault(pointer, 'vin-not-open', text);
    return null;
  }
  const { pattern, from, to } = record;
  // What cannot be read stands empty, and is said already.
  if (pattern === '' || from === '' || to === '') return null;
  if (from.length !== to.length) {
    const text = `Both ends have as many digits, unlike ${quoted(from)} and ${quoted(to)}.`;
    list.fault(at(pointer, 'to'), 'wrong-length', text);
    return null;
  }
  const digits = from.length;
  if (!pattern.endsWith('*'.repeat(digits))) {
    const text = `A range of ${digits} digits needs a "*" for each of them at the end.`;
    list.fault(at(pointer, 'pattern'), 'vin-not-open', text);
    return null;
  }
  if (Number(from) > Number(to)) {
    list.fault(pointer, 'empty-range', 'The first serial number comes first.');
    return null;
  }
  return { pattern, serial: { digits, from: Number(from), to: Number(to) } };
}
