/**
 * Money as texts write it: a decimal with four places at most. Sums and prices are whole numbers
 * of ten-thousandths, so that nothing is ever rounded. Left out: which currency it is, and tax.
 */

import { PRICE_PATTERN } from '../catalogue/grammar.js';
import type { Money } from './question.js';

const PLACES = 4;

/** Ten-thousandths of one unit of the currency. */
export const MONEY_UNIT = 10 ** PLACES;

/** What a text such as "1850.00" says; null where it is no price. */
export function moneyOf(text: string): Money | null {
  if (!PRICE_PATTERN.test(text)) return null;
  const [whole = '', places = ''] = text.split('.');
  return Number(whole) * MONEY_UNIT + Number(places.padEnd(PLACES, '0'));
}

/** At least two places, and more only where they say something: `1850.00`, `0.0125`. */
export function moneyText(money: Money): string {
  const minus = money < 0 ? '-' : '';
  const digits = String(Math.abs(money)).padStart(PLACES + 1, '0');
  const whole = digits.slice(0, -PLACES);
  const places = digits.slice(-PLACES).replace(/0{1,2}$/, '');
  return `${minus}${whole}.${places}`;
}
