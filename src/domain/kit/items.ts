/**
 * The items of a bill, each with its lines and with what of its cost is known before it is known
 * how goods are come by: what is done at one place, what sits in one mating, one article that is
 * used up, one place that is opened.
 */

import { byCodeUnit } from '../catalogue/canonical.js';
import type { Position } from '../catalogue/catalogue.js';
import { add, type Rational, rational, roundUp, sign, ZERO } from '../quantity/rational.js';
import type { AdapterChange, Consumed, Line, SeatChange } from './basket.js';
import { type Draft, lineOf, type Need } from './drafts.js';
import type { Packing } from './lanes.js';
import type { Market } from './market.js';
import { openLine, placeJob } from './place-job.js';
import type { KitQuestion, Money } from './question.js';

export interface Item {
  readonly drafts: readonly Draft[];
  readonly needs: readonly Need[];
  /** Keys of lines of whose labour only a part is recorded. */
  readonly untimed: readonly string[];
  /** Not all of its labour is recorded. */
  readonly isUntimed: boolean;
  /** Something else stands at the place than before. */
  readonly isChanged: boolean;
  /** Something that it takes, other than goods, is not to be had. */
  readonly isImpossible: boolean;
  /** Of labour and works, as far as it is known. */
  readonly money: Money;
  /** In units of the packing. */
  readonly hours: number;
  /** Lines without a price that no purchase can change. */
  readonly unpriced: number;
}

/** What items are made from. */
export interface Workshop {
  readonly question: KitQuestion;
  readonly market: Market;
  readonly packing: Packing;
}

/** @param changes All at one place: one, or one for each hand. */
export function placeItem(changes: readonly SeatChange[], workshop: Workshop): Item {
  const job = placeJob(changes, workshop.market, workshop.question);
  const item = itemOf(job.drafts, workshop);
  return { ...item, ...job, isUntimed: item.isUntimed || job.untimed.length > 0 };
}

export function openItem(position: Position, workshop: Workshop): Item {
  return itemOf([{ line: openLine(position, workshop.question), need: null }], workshop);
}

/** Adapters that are there already stay; each of the others so many times. */
export function adapterItem(change: AdapterChange, workshop: Workshop): Item {
  const { mating, pieces, now, becomes } = change;
  const { labourRate } = workshop.question;
  const drafts: Draft[] = [];
  for (const [part, times] of countsBeyond(becomes, now)) {
    const quantity = rational(times * pieces);
    const said = { key: `adapter:${mating}:${part}`, action: 'adapter', mating, part } as const;
    const good = workshop.market.goods(part, '1');
    const need = { good, units: good.unitsOf(quantity), isExtra: false };
    drafts.push({ line: lineOf({ ...said, quantity }, labourRate), need });
  }
  for (const [part, times] of countsBeyond(now, becomes)) {
    const quantity = rational(times * pieces);
    const said = { key: `remove:${mating}:${part}`, action: 'remove', mating, part } as const;
    drafts.push({ line: lineOf({ ...said, quantity }, labourRate), need: null });
  }
  return itemOf(drafts, workshop);
}

/** By name, how many more of it there are in one list than in the other. */
function countsBeyond(list: readonly string[], other: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const name of list) counts.set(name, (counts.get(name) ?? 0) + 1);
  for (const name of other) {
    const count = counts.get(name);
    if (count !== undefined) counts.set(name, count - 1);
  }
  return new Map([...counts].filter(([, count]) => count > 0));
}

/** What is used up, article by article in the order of their names. */
export function byArticle(consumed: readonly Consumed[]): (readonly Consumed[])[] {
  const lists = new Map<string, Consumed[]>();
  for (const one of consumed) {
    const known = lists.get(one.part);
    if (known === undefined) lists.set(one.part, [one]);
    else known.push(one);
  }
  return [...lists].sort(([a], [b]) => byCodeUnit(a, b)).map(([, list]) => list);
}

/**
 * All that is used up of one article. What is known of the quantity has a line, and what is not
 * known another, so that the price of the former is still counted. What must be avoided is not
 * used up either: then there is no kit.
 */
export function extraItem(consumed: readonly Consumed[], workshop: Workshop): Item {
  const { parts } = workshop.question.avoid;
  const isImpossible = consumed.some(({ part }) => parts.has(part));
  return { ...itemOf(extraDrafts(consumed, workshop), workshop), isImpossible };
}

function extraDrafts(consumed: readonly Consumed[], { market, question }: Workshop): Draft[] {
  const drafts: Draft[] = [];
  const put = (part: string, word: string, more: Partial<Line>, units: Draft['need']): void => {
    const key = drafts.length === 0 ? `extra:${part}` : `extra:${part}:${word}`;
    const line = lineOf({ key, action: 'extra', part, ...more }, question.labourRate);
    drafts.push({ line, need: units });
  };
  const dimensions = [...new Set(consumed.map(({ dimension }) => dimension))].sort(byCodeUnit);
  for (const dimension of dimensions) {
    const list = consumed.filter((one) => one.dimension === dimension);
    const [{ part } = { part: '' }] = list;
    const quantity = sumOf(list);
    if (sign(quantity) > 0) {
      const whole = dimension === '1' ? roundUp(quantity, 0) : quantity;
      const good = market.goods(part, dimension, whole);
      const need = { good, units: good.unitsOf(whole), isExtra: true };
      put(part, dimension, { quantity: whole, dimension }, need);
    }
    if (list.some((one) => one.quantity === null)) {
      const unknown = { quantity: null, dimension, source: 'unpriced', price: null } as const;
      put(part, `${dimension}:unknown`, unknown, null);
    }
  }
  return drafts;
}

function sumOf(consumed: readonly Consumed[]): Rational {
  return consumed.reduce((sum: Rational, { quantity }) => add(sum, quantity ?? ZERO), ZERO);
}

function itemOf(drafts: readonly Draft[], { packing }: Workshop): Item {
  let [money, hours, unpriced] = [0, 0, 0];
  for (const { line } of drafts) {
    money += (line.labourPrice ?? 0) + (line.price ?? 0);
    hours += packing.hours(line.labourHours ?? ZERO);
    unpriced += line.price === null ? 1 : 0;
  }
  return {
    drafts,
    needs: drafts.flatMap(({ need }) => need ?? []),
    untimed: [],
    isUntimed: drafts.some(({ line }) => line.labourHours === null),
    isChanged: false,
    isImpossible: false,
    money,
    hours,
    unpriced,
  };
}
