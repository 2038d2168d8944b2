/**
 * A garage to price bills in, and baskets written as a few words a line.
 */

import type { Basket, Bill, Line } from '../../../src/domain/kit/basket.js';
import { moneyText } from '../../../src/domain/kit/money.js';
import { PriceList } from '../../../src/domain/kit/price.js';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import { exactText } from '../../../src/domain/quantity/rational.js';
import { type Asked, question, type Sketch, shop } from './shop.js';

const GARAGE: Sketch = {
  places: [
    'box 6h /4h >prop',
    'prop 1h /0.5h',
    'wheel*4 0.25h',
    'shaft<> 0.8h',
    'hub*2 2h',
    'trim',
  ],
  matings: ['box = prop +2'],
  parts: [
    'box-a',
    'box-b',
    'prop-a',
    'wheel-a',
    'wheel-b',
    'shaft-a',
    'shaft-b',
    'hub-a',
    'hub-b',
  ].concat(['trim-a', 'ring-a', 'ring-b', 'oil-a', 'bolt-a']),
  lots: ['set: box-b, prop-a, wheel-a*2'],
  works: [
    { id: 'redrill', labour: '2 h', signOff: 'engineer', reversible: false },
    { id: 'bush', labour: '1 h' },
  ],
};
const CATALOGUE = shop(GARAGE);

/** Each line as `key quantity source price hours`. */
export function shown(basket: Basket | null): string[] {
  if (basket === null) return ['none'];
  return basket.lines.map(lineText);
}

function lineText(line: Line): string {
  const { key, quantity, source, price, labourHours } = line;
  return [
    key,
    quantity === null ? '?' : exactText(quantity),
    source ?? '-',
    price === null ? '?' : moneyText(price),
    labourHours === null ? '?' : `${exactText(labourHours)}h`,
  ].join(' ');
}

export interface Case {
  readonly asked: KitQuestion;
  readonly basket: (bill: Bill) => Basket | null;
  readonly cost: (bill: Bill) => number;
}

export function priced(asked: Asked = {}, catalogue = CATALOGUE): Case {
  const whole = question(catalogue, asked);
  const list = new PriceList(whole);
  return { asked: whole, basket: (one) => list.basket(one), cost: (one) => list.cost(one) };
}

export const OFFERS = [
  'box-b 900.00 in 3d',
  'prop-a 180.00 in 8d',
  'wheel-a 60.00 in 2d',
  'trim-a 9.99',
];
