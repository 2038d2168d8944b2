/**
 * The notation of quantities: a text taken apart into numbers and a unit, not yet judged.
 *
 * One value is written in one of five ways, always with the unit once and at the end:
 * `114.3 mm`, `56.10 ±0.05 mm`, `56.1 +0.05/-0.1 mm`, `600 to 610 mm`, `50 H7`. Numbers are
 * decimals with a point or fractions (`43/12`). Left out on purpose, since each can be read in
 * two ways or hides how finely a value is known: decimal commas, thousands separators, exponents,
 * mixed numbers, two units.
 */

import type { QuantityFault } from './fault.js';
import { quantityFault } from './fault.js';

/** Numbers as typed, readable by `rational`; `unit` as typed, empty when there is none. */
export type Notation =
  | { readonly form: 'single'; readonly value: string; readonly unit: string }
  | {
      readonly form: 'tolerance';
      readonly value: string;
      readonly half: string;
      readonly unit: string;
    }
  | {
      readonly form: 'deviations';
      readonly value: string;
      /** Both with their sign, in the order typed. */
      readonly first: string;
      readonly second: string;
      readonly unit: string;
    }
  | { readonly form: 'range'; readonly from: string; readonly to: string; readonly unit: string };

/** Longest text that is read, in UTF-16 units. */
export const MAX_TEXT_LENGTH = 64;
/** Most digits that one number may have. */
export const MAX_DIGITS = 30;

const UNSIGNED = String.raw`(?:\d+\/\d+|\d+(?:\.\d+)?)(?![\d.])`;
const NUMBER = `-?${UNSIGNED}`;
const DEVIATION = String.raw`[+-]\d+(?:\.\d+)?(?![\d.])`;
const UNIT = String.raw`(?: ?(\S.*))?`;

const TOLERANCE = new RegExp(`^(${NUMBER}) ?± ?(${UNSIGNED})${UNIT}$`, 'u');
const DEVIATIONS = new RegExp(`^(${NUMBER}) ?(${DEVIATION}) ?/ ?(${DEVIATION})${UNIT}$`, 'u');
const RANGE = new RegExp(`^(${NUMBER}) to (${NUMBER})${UNIT}$`, 'u');
/** How the symbols of all units begin, those of pure numbers included: `mm`, `°`, `1/m`, `/km`. */
const UNIT_START = /^(?:$|[\p{L}°"″%]|1?\/\p{L})/u;
const SINGLE = new RegExp(`^(${NUMBER})${UNIT}$`, 'u');

/** Takes a text apart, or says what about its notation cannot be read. */
export function readNotation(text: string): Notation | QuantityFault {
  if (text.length > MAX_TEXT_LENGTH) {
    return malformed(
      `The text is too long: ${text.length} characters, at most ${MAX_TEXT_LENGTH} are read.`,
    );
  }
  const normal = normalText(text);
  return spellingFault(normal) ?? takeApart(normal);
}

/** Single spaces, a plain minus sign, and one sign for plus-minus. */
function normalText(text: string): string {
  return text
    .replace(/\s+/gu, ' ')
    .trim()
    .replaceAll('−', '-')
    .replace(/\+ ?\/ ?-|\+-/gu, '±');
}

function takeApart(text: string): Notation | QuantityFault {
  const tolerance = TOLERANCE.exec(text);
  if (tolerance !== null) {
    const [, value = '', half = '', unit = ''] = tolerance;
    return zeroDenominator(text) ?? { form: 'tolerance', value, half, unit };
  }
  const deviations = DEVIATIONS.exec(text);
  if (deviations !== null) {
    const [, value = '', first = '', second = '', unit = ''] = deviations;
    return zeroDenominator(text) ?? { form: 'deviations', value, first, second, unit };
  }
  const range = RANGE.exec(text);
  if (range !== null) {
    const [, from = '', to = '', unit = ''] = range;
    return zeroDenominator(text) ?? { form: 'range', from, to, unit };
  }
  const [, value = '', unit = ''] = SINGLE.exec(text) ?? [];
  if (value !== '' && UNIT_START.test(unit)) {
    return zeroDenominator(text) ?? { form: 'single', value, unit };
  }
  return malformed(
    `“${text}” cannot be read. Begin with a number such as 56.1 or 43/12 and end with the unit.`,
  );
}

/** What makes the whole text unreadable, whatever its form. */
function spellingFault(text: string): QuantityFault | null {
  if (text === '') return malformed('The text is empty. Write a value such as 56.1 mm or 43/12.');
  if (text.includes(',')) {
    return malformed(
      `“${text}” has a comma. Write decimals with a point and thousands without a mark: ` +
        '56.1 or 1200.',
    );
  }
  if (/\d['’]\d/u.test(text)) {
    return malformed(`“${text}” has a mark within a number. Write thousands without one: 1200.`);
  }
  if (/\d[eE][+-]?\d/u.test(text)) {
    return malformed(
      `“${text}” looks like a number with an exponent. Write the number in full; before a fit ` +
        'class leave a space, as in 50 e8.',
    );
  }
  if (/\d \d+\/\d/u.test(text)) {
    return malformed(
      `“${text}” has a whole number beside a fraction. Write one number: 9/2 in or 4.5 in, ` +
        'not 4 1/2 in.',
    );
  }
  if (/\d \d+(?![\d/])/u.test(text)) {
    return malformed(`“${text}” has a space within a number, or two numbers. Write one: 1200.`);
  }
  const longest = Math.max(0, ...(text.match(/\d[\d.]*/gu) ?? []).map(digitsIn));
  if (longest > MAX_DIGITS) {
    const text = `A number has ${longest} digits; at most ${MAX_DIGITS} are read.`;
    return quantityFault('too-many-digits', text);
  }
  return null;
}

function digitsIn(number: string): number {
  return number.replaceAll('.', '').length;
}

function zeroDenominator(text: string): QuantityFault | null {
  return /\d\/0+(?![\d.])/u.test(text) ? malformed(`“${text}” divides by zero.`) : null;
}

function malformed(text: string): QuantityFault {
  return quantityFault('malformed', text);
}
