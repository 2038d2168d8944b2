/**
 * What a written decimal stands for.
 *
 * `3.55` may be a rounded 39/11 or a cut-off 3.559: the number of decimals that somebody wrote is
 * all that is known. Texts here are decimals or integers as `rational` reads them.
 */

import type { Interval } from './interval.js';
import { closed, interval } from './interval.js';
import type { Rational } from './rational.js';
import { add, fraction, rational, sign, subtract } from './rational.js';

/** @throws RangeError unless the text is a decimal or an integer: a fraction has no last digit. */
function decimalOf(text: string): Rational {
  if (text.includes('/')) throw new RangeError(`A fraction is not rounded: ${text.slice(0, 64)}`);
  return rational(text);
}

/** One unit of the last written digit: 1/1000 for `3.583`, 1 for `612`. */
function lastDigit(text: string, divisor = 1n): Rational {
  const dot = text.indexOf('.');
  const places = dot < 0 ? 0 : text.length - dot - 1;
  return fraction(1n, divisor * 10n ** BigInt(places));
}

/**
 * All numbers that round half up to the text: `3.583` is 3.5825 up to, not including, 3.5835.
 *
 * @throws RangeError when the text is not a decimal or an integer.
 */
export function roundedInterval(text: string): Interval {
  const written = decimalOf(text);
  const half = lastDigit(text, 2n);
  return interval(subtract(written, half), add(written, half), { highOpen: true });
}

/**
 * All numbers that become the text when further digits are cut off: `3.54` is 3.54 up to, not
 * including, 3.55; and `-3.54` is above -3.55 up to -3.54.
 *
 * @throws RangeError when the text is not a decimal or an integer.
 */
export function truncatedInterval(text: string): Interval {
  const written = decimalOf(text);
  if (sign(written) < 0) {
    const low = subtract(written, lastDigit(text));
    return interval(low, written, { lowOpen: true });
  }
  return interval(written, add(written, lastDigit(text)), { highOpen: true });
}

/**
 * A reading: half a unit of the last written digit to both sides, ends included, since a reading
 * between two marks may go either way. `56.1` is 56.05 to 56.15.
 *
 * @throws RangeError when the text is not a decimal or an integer.
 */
export function readingInterval(text: string): Interval {
  const written = decimalOf(text);
  const half = lastDigit(text, 2n);
  return closed(subtract(written, half), add(written, half));
}
