/**
 * The lines of a route and what they come to, as answers show them: names beside ids, money and
 * hours as decimal texts, and null for what nobody knows. Nothing is computed here.
 */

import type { Amount } from '../domain/catalogue/amount.js';
import { NOWHERE } from '../domain/check/reading.js';
import type { Line, Totals } from '../domain/kit/basket.js';
import { moneyText } from '../domain/kit/money.js';
import type { KitQuestion, Money, Offer } from '../domain/kit/question.js';
import type { Alternative, Route } from '../domain/kit/route.js';
import { exactText, type Rational } from '../domain/quantity/rational.js';
import { baseSymbol, type Dimension } from '../domain/quantity/unit.js';
import type {
  KitLineView,
  KitTotalsView,
  LeftOverView,
  OfferView,
  OtherPartView,
  QuantityView,
  SubstituteView,
} from './kit-answer.js';
import { whyViews } from './kit-why.js';
import type { Speaker } from './speaker.js';

/** The order codes of goods and works, by their id; each once, in the order of the list. */
export type SkusOf = ReadonlyMap<string, readonly string[]>;

export function skusOf({ offers }: Pick<KitQuestion, 'offers'>): SkusOf {
  const skus = new Map<string, string[]>();
  for (const { record } of offers) {
    const { for: goods, sku } = record;
    if (sku === undefined) continue;
    const known = skus.get(goods);
    if (known === undefined) skus.set(goods, [sku]);
    else if (!known.includes(sku)) known.push(sku);
  }
  return skus;
}

export function lineView(line: Line, route: Route, skus: SkusOf, speaker: Speaker): KitLineView {
  const { key, action, position, mating, hand, part, lot, work } = line;
  const article = part === null ? undefined : speaker.catalogue.parts.get(part);
  const goods = lot ?? work ?? part;
  const alternatives = route.alternatives.get(key) ?? [];
  return {
    key,
    action,
    position,
    positionName: speaker.positionName(position),
    mating,
    hand,
    part,
    lot,
    work,
    name: nameOf(line, speaker),
    maker: article?.maker ?? null,
    skus: goods === null ? [] : [...(skus.get(goods) ?? [])],
    numbers: (article?.numbers ?? []).map(({ number }) => number),
    quantity: quantityView(line.quantity, line.dimension),
    unitPrice: moneyOrNull(line.unitPrice),
    price: moneyOrNull(line.price),
    offer: line.offer === null ? null : offerView(line.offer, line),
    source: line.source,
    fromLot: line.fromLot,
    labourHours: line.labourHours === null ? null : exactText(line.labourHours),
    labour: moneyOrNull(line.labourPrice),
    why: whyViews(line, route, speaker),
    substitutes: (route.substitutes.get(key) ?? []).map((one) => substituteView(one, speaker)),
    alternatives: alternatives.map((one) => otherPartView(one, speaker)),
    leftOver: line.leftOver.map((one) => leftOverView(one, speaker)),
    signOff: line.signOff,
    reversible: line.isReversible,
  };
}

/** Of the work, the lot or the part; of the place where it is only opened. */
function nameOf({ work, lot, part, position, key }: Line, speaker: Speaker): string {
  if (work !== null) {
    const known = speaker.catalogue.works.get(work);
    return known === undefined ? work : speaker.text(known.name);
  }
  if (lot !== null) return speaker.lotName(lot);
  return speaker.partName(part) ?? speaker.positionName(position) ?? key;
}

export function totalsView(totals: Totals): KitTotalsView {
  return {
    parts: moneyText(totals.parts),
    works: moneyText(totals.works),
    labourHours: exactText(totals.labourHours),
    labour: moneyOrNull(totals.labour),
    cost: moneyText(totals.cost),
    unpriced: [...totals.unpriced],
    untimed: [...totals.untimed],
    changedPositions: totals.changedPositions,
    leadDays: totals.leadDays,
    unknownLimits: [...totals.unknownLimits],
    signOff: totals.signOff,
    reversible: totals.isReversible,
  };
}

function moneyOrNull(money: Money | null): string | null {
  return money === null ? null : moneyText(money);
}

function quantityView(value: Rational | null, dimension: Dimension): QuantityView {
  const unit = dimension === '1' ? 'piece' : baseSymbol(dimension);
  return { value: value === null ? null : exactText(value), unit };
}

function offerView({ record, pack }: Offer, { packs, over, dimension }: Line): OfferView {
  const { id, sku = null, supplier = null, condition = null, stock = null } = record;
  return {
    id,
    sku,
    pack: packView(pack),
    packs,
    over: over === null ? null : quantityView(over, dimension),
    supplier,
    condition,
    stock,
    leadDays: record.leadDays ?? null,
  };
}

function packView({ value, dimension }: Amount): QuantityView {
  return quantityView(value, dimension);
}

function otherPartView(
  { part, priceDifference, openPoints }: Alternative,
  speaker: Speaker,
): OtherPartView {
  const name = speaker.partName(part) ?? part;
  const difference = moneyOrNull(priceDifference);
  const { currency } = speaker.catalogue;
  const data = {
    part: speaker.named({ ...NOWHERE, part }),
    count: openPoints,
    ...(difference === null ? {} : { price: speaker.values.money(difference, currency) }),
  };
  const said = speaker.said('alternative', data);
  return { part, name, priceDifference: difference, openPoints, ...said };
}

function substituteView(part: string, speaker: Speaker): SubstituteView {
  const name = speaker.partName(part) ?? part;
  return {
    part,
    name,
    ...speaker.said('substitute', { part: speaker.named({ ...NOWHERE, part }) }),
  };
}

function leftOverView(
  { part, quantity, dimension }: Line['leftOver'][number],
  speaker: Speaker,
): LeftOverView {
  const name = speaker.partName(part) ?? part;
  return { part, name, quantity: quantityView(quantity, dimension) };
}
