/**
 * The goods that a kit question brings with it or restricts: pieces at hand, lots that may be
 * bought, and what is offered at which price.
 */

import { readAmount } from '../domain/catalogue/amount.js';
import type { Catalogue, Part } from '../domain/catalogue/catalogue.js';
import type { OfferRecord } from '../domain/catalogue/document.js';
import { FAULT_LANGUAGE } from '../domain/catalogue/faults.js';
import { moneyOf, moneyText } from '../domain/kit/money.js';
import { offerOf } from '../domain/kit/offered.js';
import type { Offer } from '../domain/kit/question.js';
import type { AskedKit, AskedOffer } from './asked-kit.js';
import type { KitContext } from './kit-context.js';
import type { KitInput, OwnedInput, OwnOfferInput } from './kit-input.js';
import type { Resolved } from './kit-wants.js';
import { faultList } from './quoted-faults.js';
import { checkOne } from './read-one.js';
import type { Skus } from './skus.js';

/** The names of parts that stand among the goods. */
export function partsAtHand({ owned, ownOffers }: Pick<KitInput, 'owned' | 'ownOffers'>): string[] {
  const offered = ownOffers.flatMap(({ of, name }) => (of === 'part' ? name : []));
  return [...owned.map(({ part }) => part), ...offered];
}

/** Pieces by part; what is named twice is there so many times together. */
export function ownedOf(
  inputs: readonly OwnedInput[],
  context: KitContext,
): Resolved<Map<string, number>, AskedKit['owned']> {
  const owned = new Map<string, number>();
  for (const [index, { part: name, quantity }] of inputs.entries()) {
    const part = context.parts.part(name, `owned.${index}.part`);
    if (part === null) continue;
    const pieces = quantity ?? piecesAt(part, context);
    owned.set(part.id, (owned.get(part.id) ?? 0) + pieces);
  }
  const asked = [...owned].map(([part, quantity]) => ({ part, quantity }));
  return { domain: owned, asked };
}

/** As many as the first place takes that is for such a part; one of what has none. */
function piecesAt({ roles, hand }: Part, { vehicle }: KitContext): number {
  const place = [...vehicle.layout.positions.values()].find((position) =>
    position.roles.some((role) => roles.includes(role)),
  );
  if (place === undefined) return 1;
  return place.isHanded && hand !== null ? place.count / 2 : place.count;
}

/** The lots that may be bought: those that are named, and always those that are wanted. */
export function lotsOf(
  { lots, want }: Pick<KitInput, 'lots' | 'want'>,
  context: KitContext,
): Resolved<Set<string>, AskedKit['lots']> {
  if (lots === 'all') return { domain: new Set(context.catalogue.lots.keys()), asked: 'all' };
  const named = lots === 'none' ? [] : lots;
  const found = named.flatMap((id, index) => context.lot(id, `lots.${index}`) ?? []);
  const wanted = want.flatMap((one) => ('lot' in one ? one.lot : []));
  const asked = lots === 'none' ? 'none' : [...new Set(found)];
  return { domain: new Set([...found, ...wanted]), asked };
}

/** The offers of the price and stock list, with the asker's own in the place of some or of all. */
export function offersOf(
  { ownOffers, offersMode }: Pick<KitInput, 'ownOffers' | 'offersMode'>,
  list: Skus,
  context: KitContext,
): Resolved<Offer[], AskedOffer[]> {
  const own = ownOffers.flatMap((input, index) => ownOffer(input, index, list, context) ?? []);
  const recorded = offersMode === 'replace' ? [] : recordedOffers(list, context.catalogue);
  const goods = new Set(own.flatMap(({ record, asked }) => ('sku' in asked ? [] : record.for)));
  // One order code is one offer: another one for the same goods stays.
  const skus = new Set(own.flatMap(({ asked }) => ('sku' in asked ? asked.sku : [])));
  const kept = recorded.filter(({ record: { for: id, sku } }) => {
    return !goods.has(id) && (sku === undefined || !skus.has(sku));
  });
  return {
    domain: [...kept, ...own.map(({ record }) => offerOf(record))],
    asked: own.map(({ asked }) => asked),
  };
}

const OFFERS = new WeakMap<Skus, WeakMap<Catalogue, readonly Offer[]>>();

/** What the catalogue has of what is offered. */
function recordedOffers(list: Skus, catalogue: Catalogue): readonly Offer[] {
  const byCatalogue = OFFERS.get(list) ?? new WeakMap<Catalogue, readonly Offer[]>();
  OFFERS.set(list, byCatalogue);
  const known = byCatalogue.get(catalogue);
  if (known !== undefined) return known;
  const found = list.offers.filter((record) => hasGoods(record.for, catalogue)).map(offerOf);
  byCatalogue.set(catalogue, found);
  return found;
}

function hasGoods(id: string, { parts, lots, works }: Catalogue): boolean {
  return parts.has(id) || lots.has(id) || works.has(id);
}

interface OwnOffer {
  readonly record: OfferRecord;
  readonly asked: AskedOffer;
}

function ownOffer(
  input: OwnOfferInput,
  index: number,
  list: Skus,
  context: KitContext,
): OwnOffer | null {
  const at = `offers.${index}`;
  const goods = goodsOf(input, at, list, context);
  const money = moneyOf(input.price);
  if (money === null) context.faults.add(`${at}.price`, 'not-a-price', {});
  const isPack = input.pack === null || isAmount(input.pack, `${at}.pack`, context);
  if (goods === null || money === null || !isPack) return null;
  const { stock, leadDays, pack } = input;
  const given = {
    price: moneyText(money),
    ...(stock === null ? {} : { stock }),
    ...(leadDays === null ? {} : { leadDays }),
    ...(pack === null ? {} : { pack }),
  };
  // No id of the list has brackets, so this offer is nobody else's.
  const record: OfferRecord = { ...goods.recorded, ...given, id: `(${at})`, for: goods.id };
  return { record, asked: { ...goods.asked, ...given } };
}

interface Goods {
  /** Of the part, the lot or the work. */
  readonly id: string;
  /** What is recorded of it, as far as the question does not say otherwise. */
  readonly recorded: Partial<OfferRecord>;
  readonly asked: { part: string } | { lot: string } | { work: string } | { sku: string };
}

function goodsOf(
  { of, name }: OwnOfferInput,
  at: string,
  list: Skus,
  context: KitContext,
): Goods | null {
  if (of === 'sku') return goodsUnder(name, `${at}.sku`, list, context);
  const id = goodsNamed(of, name, `${at}.${of}`, context);
  if (id === null) return null;
  const asked = of === 'part' ? { part: id } : of === 'lot' ? { lot: id } : { work: id };
  return { id, recorded: {}, asked };
}

function goodsNamed(
  of: 'part' | 'lot' | 'work',
  id: string,
  at: string,
  context: KitContext,
): string | null {
  if (of === 'part') return context.parts.part(id, at)?.id ?? null;
  if (of === 'lot') return context.lot(id, at);
  return checkOne(context.catalogue.works, 'work', { id, at }, context.faults)?.id ?? null;
}

function goodsUnder(
  sku: string,
  at: string,
  list: Skus,
  { catalogue, faults }: KitContext,
): Goods | null {
  const ids = list.find(sku).filter((id) => hasGoods(id, catalogue));
  const [id, ...others] = ids;
  if (id === undefined) {
    faults.add(at, 'unknown-sku', { name: sku, meant: list.near(sku) });
    return null;
  }
  if (others.length > 0) {
    faults.add(at, 'ambiguous-sku', { name: sku, candidates: ids });
    return null;
  }
  const recorded = list.offers.find((offer) => offer.sku === sku) ?? {};
  return { id, recorded, asked: { sku } };
}

function isAmount(text: string, at: string, { faults }: KitContext): boolean {
  const own = faultList();
  const amount = readAmount(text, '', own);
  for (const { code: because, text: said } of own.faults) {
    faults.add(at, 'amount-at-fault', { because, text: said, lang: FAULT_LANGUAGE });
  }
  return amount !== null;
}
