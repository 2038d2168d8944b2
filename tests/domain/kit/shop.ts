/**
 * Small shops to price bills in: places with labour, parts without faces, offers, lots and works.
 *
 *   places   'hub'  'wheel*4' (count)  'shaft<>' (left and right)
 *            then '2h' labour, '/1h' access, '>prop' behind it: 'box 6h /4h >prop'
 *   offers   'hub-a 30.00'  'oil 12.00 per 1 l'  'hub-a 30.00 per 2 in 3d stock 4 by Fennuld'
 *   lots     'axle-lot: hub-a, wheel-a*4, oil 2 l, donor/hub' (what stands there on the donor)
 */

import type { Catalogue, Occupant } from '../../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../../src/domain/catalogue/compile.js';
import type { OfferRecord } from '../../../src/domain/catalogue/document.js';
import type { Hand } from '../../../src/domain/check/reading.js';
import type { AdapterChange, Bill, SeatChange } from '../../../src/domain/kit/basket.js';
import { moneyOf } from '../../../src/domain/kit/money.js';
import { offerOf } from '../../../src/domain/kit/offered.js';
import type { KitQuestion, Money } from '../../../src/domain/kit/question.js';
import { rational } from '../../../src/domain/quantity/rational.js';

export interface Sketch {
  readonly places: readonly string[];
  /** Matings of places, with so many adapters: 'a = b +1'. */
  readonly matings?: readonly string[];
  /** The role is what stands before the dash; `spans` after a colon: 'unit-a: box, transfer'. */
  readonly parts: readonly string[];
  readonly donors?: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly lots?: readonly string[];
  readonly works?: readonly Readonly<Record<string, unknown>>[];
  readonly rules?: readonly unknown[];
}

export interface Asked
  extends Partial<Omit<KitQuestion, 'offers' | 'labourRate' | 'lots' | 'owned'>> {
  readonly offers?: readonly string[];
  /** All lots where left out. */
  readonly lots?: readonly string[];
  readonly owned?: Readonly<Record<string, number>>;
  readonly labourRate?: string;
}

/** For every part, and of no account here. */
const WORK = {
  on: { not: { 'one-of': ['part', ['none']] } },
  gives: { values: { size: 'worked' } },
};

/** @throws Error where the catalogue has a fault. */
export function shop(sketch: Sketch): Catalogue {
  const { parts, lots = [], works = [], rules = [], donors = {} } = sketch;
  const places = sketch.places.map(placeOf);
  const roles = new Set([
    ...places.flatMap((place) => place.roles),
    ...parts.map((text) => text.split(':')[0]!.split('-')[0]!),
  ]);
  const fitted = Object.entries({ car: {}, ...donors });
  const { catalogue, faults } = compileDocument(
    {
      catalogue: 1,
      lang: 'en',
      currency: 'EUR',
      evidence: { basis: 'maker' },
      kinds: [{ id: 'any', parameters: { code: { type: 'code' } }, checks: [{ equal: 'code' }] }],
      roles: [...roles].map((id) => ({ id, name: id, values: { size: { type: 'code' } } })),
      layouts: [{ id: 'plan', positions: places, matings: (sketch.matings ?? []).map(matingOf) }],
      parts: parts.map(partOf),
      vehicles: fitted.map(([id, seats]) => {
        return { id, make: 'Orrin', model: 'Test', layout: 'plan', fitted: seats };
      }),
      lots: lots.map(lotOf),
      works: works.map((work) => ({ ...WORK, name: work.id, ...work })),
      rules,
    },
    [],
  );
  if (catalogue === null) throw new Error(JSON.stringify(faults, null, 1));
  return catalogue;
}

export function question(catalogue: Catalogue, asked: Asked = {}): KitQuestion {
  const { offers = [], lots, owned = {}, labourRate, limits, avoid, ...rest } = asked;
  return {
    catalogue,
    pairsOf: catalogue,
    vehicle: catalogue.vehicles.get('car')!,
    said: { seats: new Map(), adapters: new Map() },
    wants: [],
    keep: [],
    avoid: { parts: new Set(), suppliers: new Set(), conditions: [], ...avoid },
    owned: new Map(Object.entries(owned)),
    lots: new Set(lots ?? catalogue.lots.keys()),
    workUpTo: 'engineer',
    limits: {
      cost: null,
      changedPositions: null,
      labourHours: null,
      leadDays: null,
      inStock: false,
      ...limits,
    },
    torque: null,
    use: null,
    ignorePresent: false,
    labourRate: labourRate === undefined ? null : money(labourRate),
    ruleset: null,
    refusesUnknowns: false,
    from: 'recorded',
    offers: offers.map((text, index) => offerOf(recordOf(text, index))),
    prefer: 'cost',
    routes: 3,
    onlyUndominated: false,
    steps: 1000,
    ...rest,
  };
}

export function money(text: string): Money {
  const value = moneyOf(text);
  if (value === null) throw new Error(`no price: ${text}`);
  return value;
}

/** What is there and what goes in: a part, null for nothing, '?' for what nobody recorded. */
export function change(
  { vehicle }: KitQuestion,
  place: string,
  [now, becomes]: readonly [string | null, string | null],
  hand: Hand | null = null,
): SeatChange {
  const position = vehicle.layout.positions.get(place)!;
  const pieces = hand === null ? position.count : Math.max(1, position.count / 2);
  return { position, hand, pieces, now: occupant(now), becomes: occupant(becomes) };
}

/** Both hands of a place at once. */
export function pair(
  asked: KitQuestion,
  place: string,
  left: readonly [string | null, string | null],
  right: readonly [string | null, string | null] = left,
): SeatChange[] {
  return [change(asked, place, left, 'left'), change(asked, place, right, 'right')];
}

export function between(
  mating: string,
  becomes: readonly string[],
  now: readonly string[] = [],
  pieces = 1,
): AdapterChange {
  return { mating, pieces, now, becomes };
}

export function bill(...items: (SeatChange | AdapterChange)[]): Bill {
  return {
    seats: items.flatMap((item) => ('position' in item ? [item] : [])),
    adapters: items.flatMap((item) => ('mating' in item ? [item] : [])),
    consumed: [],
    opened: [],
  };
}

/** Such as '3.5 l', '2' pieces, or '? l' where nobody recorded how much. */
export function consumed(part: string, amount: string, rule = 'fill') {
  const [value = '', unit] = amount.split(' ');
  const dimension = { l: 'volume', kg: 'mass' }[unit ?? ''] ?? '1';
  return { part, quantity: value === '?' ? null : rational(value), dimension, rule };
}

function occupant(text: string | null): Occupant {
  if (text === null) return { is: 'empty' };
  return text === '?' ? { is: 'as-found' } : { is: 'part', part: text };
}

function placeOf(text: string) {
  const [name = '', ...more] = text.split(' ');
  const match = /^([a-z0-9-]+?)(?:\*(\d+))?(<>)?$/.exec(name);
  if (match === null) throw new Error(`no place: ${text}`);
  const [, id = '', count, isHanded] = match;
  const labour = hours(more.find((word) => /^\d/.test(word)));
  const access = hours(more.find((word) => word.startsWith('/'))?.slice(1));
  const behind = more.filter((word) => word.startsWith('>')).map((word) => word.slice(1));
  return {
    id,
    name: id,
    // And whatever else: no price looks at it.
    roles: [id, 'part', 'unit'],
    optional: true,
    ...(count === undefined ? {} : { count: Number(count) }),
    ...(isHanded === undefined ? {} : { handed: true }),
    ...(labour === undefined ? {} : { labour }),
    ...(access === undefined ? {} : { access }),
    ...(behind.length === 0 ? {} : { behind }),
  };
}

/** '2h' or '20min' as a catalogue writes it. */
function hours(word: string | undefined): string | undefined {
  return word?.replace(/h|min/, ' $&');
}

function matingOf(text: string) {
  const match = /^(\S+) = (\S+) \+(\d)$/.exec(text);
  if (match === null) throw new Error(`no mating: ${text}`);
  const [, left, right, adapters] = match;
  return {
    id: `${left}-${right}`,
    between: [`${left}.to-${right}`, `${right}.to-${left}`],
    adapters: Number(adapters),
  };
}

function partOf(text: string) {
  const [id = '', spans] = text.split(': ');
  const more = spans === undefined ? {} : { spans: spans.split(', ') };
  return { id, name: id, roles: [id.split('-')[0]], interfaces: {}, ...more };
}

function lotOf(text: string) {
  const [id = '', contents = ''] = text.split(': ');
  return {
    id,
    contains: contents.split(', ').map((item) => {
      const [name = '', ...amount] = item.split(' ');
      const [vehicle, position] = name.split('/');
      if (position !== undefined) return { vehicle, position };
      const [part, count] = name.split('*');
      const quantity = amount.length > 0 ? amount.join(' ') : count;
      return quantity === undefined ? { part } : { part, quantity };
    }),
  };
}

const AMOUNT = String.raw`\d+(?: (?:l|ml|kg))?`;
const OFFER = new RegExp(
  String.raw`^(\S+) ([\d.]+)(?: per (${AMOUNT}))?(?: in (\d+)d)?(?: stock (\d+))?(?: by (\S+))?$`,
);

function recordOf(text: string, index: number): OfferRecord {
  const match = OFFER.exec(text);
  if (match === null) throw new Error(`no offer: ${text}`);
  const [, name = '', price = '', pack, days, stock, supplier] = match;
  return {
    id: `offer-${index}`,
    for: name,
    price,
    ...(pack === undefined ? {} : { pack }),
    ...(days === undefined ? {} : { leadDays: Number(days) }),
    ...(stock === undefined ? {} : { stock: Number(stock) }),
    ...(supplier === undefined ? {} : { supplier }),
  };
}
