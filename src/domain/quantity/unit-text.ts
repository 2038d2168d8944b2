/**
 * The unit at the end of a text, found or refused in words that say which units would do.
 */

import type { QuantityFault } from './fault.js';
import { quantityFault } from './fault.js';
import type { Dimension, Unit } from './unit.js';
import { nameOf, unitOf, unitsOf } from './unit.js';

/**
 * The unit of a typed symbol, if it measures the dimension that is wanted.
 *
 * @param symbol as typed, empty when there was none; then only a pure number has its unit.
 * @param number what stood before it, for the words of a fault.
 */
export function findUnit(symbol: string, wanted: Dimension, number: string): Unit | QuantityFault {
  const unit = unitOf(symbol);
  if (unit?.dimension === wanted) return unit;
  if (symbol === '') {
    return quantityFault('missing-unit', `“${number}” has no unit. ${wantedText(wanted)}`);
  }
  if (unit !== undefined) {
    return quantityFault(
      'wrong-dimension',
      `“${symbol}” is the unit of ${nameOf(unit.dimension)}. ${wantedText(wanted)}`,
    );
  }
  if (/[\d±]| (to|\/) /u.test(symbol) && startsWithUnit(symbol)) {
    return quantityFault(
      'malformed',
      `Only one unit can be read, once and at the end: 56.10 ±0.05 mm, not “… ${symbol}”.`,
    );
  }
  if (/^[A-Za-z]{1,2}\d{1,2} ?\/ ?[A-Za-z]{1,2}\d{1,2}$/u.test(symbol)) {
    return quantityFault(
      'malformed',
      `“${symbol}” names a fit of two parts. Write the class of this part alone, such as 50 H7.`,
    );
  }
  return quantityFault('unknown-unit', `“${symbol}” is no unit known here. ${wantedText(wanted)}`);
}

function startsWithUnit(symbol: string): boolean {
  const [first = ''] = symbol.split(/[\s±+]/u);
  return first === '' || unitOf(first) !== undefined;
}

function wantedText(wanted: Dimension): string {
  const symbols = unitsOf(wanted)
    .map((each) => each.symbol)
    .filter((symbol) => symbol !== '');
  if (wanted === '1') return 'A pure number is wanted, without a unit.';
  if (symbols.length === 0) return `No unit of ${nameOf(wanted)} is known here.`;
  const name = nameOf(wanted);
  return `${name.charAt(0).toUpperCase()}${name.slice(1)} is wanted, in ${symbols.join(', ')}.`;
}
