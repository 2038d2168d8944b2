/**
 * Lines of a basket before it is known where their goods come from, and what labour costs.
 */

import {
  decimalText,
  divide,
  multiply,
  ONE,
  type Rational,
  rational,
  roundDown,
  ZERO,
} from '../quantity/rational.js';
import type { Line } from './basket.js';
import type { Good } from './market.js';
import { MONEY_UNIT, moneyOf } from './money.js';
import type { Money } from './question.js';

/** What a line needs of its goods, in their units. */
export interface Need {
  readonly good: Good;
  readonly units: number;
  /** Used up by a rule: that nobody offers it does not stand in the way of a kit. */
  readonly isExtra: boolean;
}

export interface Draft {
  readonly line: Line;
  /** Null where nothing has to be come by. */
  readonly need: Need | null;
}

const BLANK: Omit<Line, 'key' | 'action'> = {
  position: null,
  mating: null,
  hand: null,
  part: null,
  lot: null,
  work: null,
  quantity: ONE,
  dimension: '1',
  source: null,
  fromLot: null,
  offer: null,
  packs: null,
  over: null,
  unitPrice: null,
  price: 0,
  labourHours: ZERO,
  labourPrice: null,
  leadDays: null,
  leftOver: [],
  signOff: null,
  isReversible: true,
};

/** A line for which nothing has to be paid or done unless it is said. */
export function lineOf(
  said: Pick<Line, 'key' | 'action'> & Partial<Line>,
  rate: Money | null,
): Line {
  const line = { ...BLANK, ...said };
  return { ...line, labourPrice: labourPriceOf(line.labourHours, rate) };
}

/** Hundredths of the currency, rounded half up; null without a rate, or without hours. */
export function labourPriceOf(hours: Rational | null, rate: Money | null): Money | null {
  if (rate === null || hours === null) return null;
  return moneyIn(decimalText(exactPrice(hours, rate), 2));
}

/** The same rounded down; nothing without a rate. */
export function labourPriceDown(hours: Rational, rate: Money | null): Money {
  return rate === null ? 0 : moneyIn(decimalText(roundDown(exactPrice(hours, rate), 2), 2));
}

function exactPrice(hours: Rational, rate: Money): Rational {
  return divide(multiply(hours, rational(rate)), rational(MONEY_UNIT));
}

/** @throws RangeError for more than any price can be. */
function moneyIn(text: string): Money {
  const money = moneyOf(text);
  if (money === null) throw new RangeError(`labour for ${text} is too dear to count`);
  return money;
}
