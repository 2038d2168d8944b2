/**
 * What random catalogues have beside what is judged: how long things take, what they cost, what is
 * bought together, what can be made of a part, what is used up, and what a rule book demands.
 */

import fc from 'fast-check';
import type {
  CatalogueDocument,
  LotRecord,
  OfferRecord,
  PartRecord,
  PositionRecord,
  RuleRecord,
  WorkRecord,
} from '../../src/domain/catalogue/document.js';
import type { Picked } from './small-frame.js';
import { type CheckPick, checkOf, checkPicks, type Raw, type Vocabulary } from './small-rule.js';
import { bases, evidenceOf, weighted } from './small-value.js';

const times = weighted<string | null>(
  [3, '1 h'],
  [2, '0.5 h'],
  [1, '1.25 h'],
  [1, '20 min'],
  [2, null],
);

const offerPicks = fc.record({
  price: weighted([3, '10.00'], [2, '25.50'], [2, '99.99'], [1, '0.00'], [2, '140.00']),
  pack: weighted<string | null>([6, null], [2, '2'], [1, '3']),
});

const lotPicks = fc.record({
  items: fc.array(
    fc.record({
      part: fc.nat({ max: 20 }),
      quantity: weighted([3, 1], [2, 2], [1, 3]),
      isPlace: weighted([2, false], [1, true]),
      vehicle: fc.nat({ max: 2 }),
      place: fc.nat({ max: 4 }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  offers: fc.array(
    offerPicks.map((pick) => ({ ...pick, pack: null })),
    { maxLength: 2 },
  ),
});

const GIVES: readonly WorkRecord['gives'][] = [
  { interfaces: { right: { pattern: 'a' } } },
  { interfaces: { left: { pattern: 'a', circle: '5 mm' } } },
  { interfaces: { left: { circle: '5 mm' }, right: { circle: '5 mm', holes: 4 } } },
  { values: { length: '10 ±0 mm' } },
  { values: { size: '5 mm', style: 'a' } },
  { values: { rating: '900 N.m' } },
  { values: { ratio: '2' } },
];

const workPicks = fc.record({
  role: weighted([3, 0], [2, 1], [1, 2], [1, 3]),
  on: weighted<'role' | 'size' | 'pattern'>([8, 'role'], [1, 'size'], [1, 'pattern']),
  gives: fc.nat({ max: GIVES.length - 1 }),
  voids: weighted([4, false], [1, true]),
  labour: times,
  signOff: weighted<WorkRecord['signOff']>(
    [2, null],
    [1, undefined],
    [2, 'workshop'],
    [2, 'engineer'],
  ),
  basis: bases(),
  offers: weighted([3, 1], [1, 0]).chain((length) =>
    fc.array(
      fc.record({
        price: weighted([1, '5.00'], [1, '15.00'], [1, '40.00']),
        pack: fc.constant<string | null>(null),
      }),
      { minLength: length, maxLength: length },
    ),
  ),
});

const useUpPicks = fc.record({
  place: fc.nat({ max: 4 }),
  when: weighted<'changed' | 'opened' | 'both'>([2, 'changed'], [2, 'opened'], [1, 'both']),
  other: fc.nat({ max: 4 }),
  what: weighted([2, '3.5 l'], [1, '1 l'], [2, '2']),
});

export const tradePicks = fc.record({
  labour: fc.array(fc.tuple(times, times, weighted([2, false], [1, true])), {
    minLength: 5,
    maxLength: 5,
  }),
  offers: fc.array(fc.array(offerPicks, { minLength: 0, maxLength: 2 }), {
    minLength: 16,
    maxLength: 16,
  }),
  lots: fc.array(lotPicks, { maxLength: 2 }),
  works: weighted([1, 0], [2, 2], [1, 3]).chain((length) =>
    fc.array(workPicks, { minLength: length, maxLength: length }),
  ),
  usesUp: fc.array(useUpPicks, { maxLength: 2 }),
  demands: fc.record({
    keep: weighted<number | null>([3, null], [1, 0], [1, 2]),
    checks: fc.array(checkPicks(), { minLength: 1, maxLength: 2 }),
  }),
});

type TradePick = Picked<typeof tradePicks>;

/** Poured or counted out, and of no place on a vehicle. */
const FLUID: PartRecord = { id: 'fluid', name: 'Fluid', roles: ['used-up'] };
const CLIP: PartRecord = { id: 'clip', name: 'Clip', roles: ['used-up'] };

export function withTrade(
  document: CatalogueDocument,
  picks: TradePick,
  words: Vocabulary,
): CatalogueDocument {
  const [layout] = document.layouts ?? [];
  if (layout === undefined) throw new Error('there is one layout');
  const parts = [...(document.parts ?? []), FLUID, CLIP];
  const positions = layout.positions.map((position, index) => timed(position, index, picks));
  const works = picks.works.map((pick, index) => workOf(pick, index, document));
  const lots = picks.lots.map((pick, index) => lotOf(pick, index, document));
  const usedUp = picks.usesUp.map((pick, index) => usingUp(pick, index, words));
  const offers = [
    ...parts.flatMap((part, index) => offersFor(part.id, picks.offers[index % 16] ?? [])),
    ...lots.flatMap(({ id }, index) => offersFor(id, picks.lots[index]?.offers ?? [])),
    ...works.flatMap(({ id }, index) => offersFor(id, picks.works[index]?.offers ?? [])),
    ...offersOfFluid(picks),
  ];
  const checks = picks.demands.checks.map((pick: CheckPick, index) => {
    return { ...checkOf({ ...pick, when: null, isCaution: false }, words, index) };
  });
  const keep = picks.demands.keep === null ? {} : { keep: [words.place(picks.demands.keep)] };
  return {
    ...document,
    currency: 'EUR',
    roles: [...(document.roles ?? []), { id: 'used-up', name: 'Used up' }],
    parts,
    layouts: [{ ...layout, positions }],
    rules: [...(document.rules ?? []), ...usedUp],
    lots,
    works,
    rulesets: [
      { id: 'club', valid: [null, null], cite: 'Club rules, 3', demands: { ...keep, checks } },
    ],
    offers,
  };
}

function timed(position: PositionRecord, index: number, { labour }: TradePick): PositionRecord {
  const [own, access, isBehind] = labour[index] ?? [null, null, false];
  return {
    ...position,
    ...(own === null ? {} : { labour: own }),
    ...(access === null ? {} : { access }),
    ...(isBehind && index > 0 ? { behind: [`p${index - 1}`] } : {}),
  };
}

function offersFor(id: string, picks: readonly Picked<typeof offerPicks>[]): OfferRecord[] {
  return picks.map(({ price, pack }, index) => {
    return { id: `${id}-${index}`, for: id, price, ...(pack === null ? {} : { pack }) };
  });
}

/** Sold by the litre as well as by the piece, or not at all. */
function offersOfFluid({ offers }: TradePick): OfferRecord[] {
  const [pick] = offers[0] ?? [];
  if (pick === undefined) return [];
  return [
    { id: 'fluid-small', for: 'fluid', price: pick.price, pack: '1 l' },
    { id: 'fluid-large', for: 'fluid', price: '30.00', pack: '4 l' },
  ];
}

function lotOf(
  { items }: Picked<typeof lotPicks>,
  index: number,
  { parts = [], vehicles = [], layouts = [] }: CatalogueDocument,
): LotRecord {
  const placed = parts.filter(({ roles }) => !roles.includes('used-up'));
  const taken = new Set<string>();
  const contains = items.map((item) => {
    const vehicle = vehicles[item.vehicle % vehicles.length];
    const all = layouts[0]?.positions ?? [];
    const unrecorded = all.filter(({ id }) => vehicle?.fitted?.[id] === undefined);
    const positions = item.part % 2 === 0 && unrecorded.length > 0 ? unrecorded : all;
    const position = positions[item.place % Math.max(1, positions.length)]?.id;
    // Two vehicles in one lot that have the same place are left out.
    const place = `${position}`;
    const isPlace = item.isPlace && vehicle !== undefined && position !== undefined;
    if (isPlace && !taken.has(place)) {
      taken.add(place);
      return { vehicle: vehicle.id, position };
    }
    const part = placed[item.part % placed.length]?.id ?? '';
    return item.quantity === 1 ? { part } : { part, quantity: item.quantity };
  });
  return { id: `lot-${index}`, contains };
}

function workOf(
  pick: Picked<typeof workPicks>,
  index: number,
  { roles = [] }: CatalogueDocument,
): WorkRecord {
  const ofPlaces = roles.filter(({ id }) => id.startsWith('role-'));
  const isOfRole = { 'one-of': ['role', [ofPlaces[pick.role % ofPlaces.length]?.id]] };
  const more: Readonly<Record<typeof pick.on, Raw | null>> = {
    role: null,
    size: { 'at-least': ['size', '5 mm'] },
    pattern: { 'one-of': ['left.pattern', ['a', 'b']] },
  };
  const also = more[pick.on];
  const gives = GIVES[pick.gives] ?? {};
  const isRatingGiven = gives.values?.rating !== undefined;
  return {
    id: `work-${index}`,
    name: `worked ${index}`,
    on: also === null ? isOfRole : { all: [isOfRole, also] },
    gives,
    ...(pick.voids && !isRatingGiven ? { voids: ['rating'] } : {}),
    ...(pick.labour === null ? {} : { labour: pick.labour }),
    ...(pick.signOff === undefined ? {} : { signOff: pick.signOff }),
    ...evidenceOf(pick.basis),
  };
}

function usingUp(
  { place, when, other, what }: Picked<typeof useUpPicks>,
  index: number,
  words: Vocabulary,
): RuleRecord {
  const here = words.place(place);
  const conditions: Readonly<Record<typeof when, Raw>> = {
    changed: { changed: here },
    opened: { opened: here },
    both: { all: [{ opened: here }, { changed: words.place(other) }] },
  };
  return {
    id: `uses-${index}`,
    when: conditions[when],
    consumes: { part: what.endsWith('l') ? 'fluid' : 'clip', quantity: what },
    because: 'it is used up',
  };
}
