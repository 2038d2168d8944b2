/**
 * As-built evidence: two articles that a vehicle record has at the two ends of a mating meet
 * there. It is pooled over all vehicles, by article and interface, and holds wherever the same
 * two faces meet in the same way.
 *
 * What nobody recorded of a vehicle that is taken apart is an article of its lot: it met what stood
 * beside it on that vehicle, recorded or out of the same lot.
 */

import type { Catalogue, Vehicle } from '../catalogue/catalogue.js';
import { donorArticles, isDonorArticle } from '../catalogue/donor-article.js';
import type { Hand } from '../check/reading.js';
import { BASES, type Basis } from '../check/state.js';
import { asBuilt, handsOf, seatAt } from './configuration.js';

export interface BuiltPair {
  readonly basis: Basis;
  /** The vehicles whose records say so, in the order of the document. */
  readonly vehicles: readonly string[];
}

/** What meets on some vehicle as the works built it, by `pairKey`. */
export type BuiltPairs = ReadonlyMap<string, BuiltPair>;

export interface FaceName {
  readonly part: string;
  readonly interface: string;
}

/** The same for both orders of the ends; adapters between them count in their order. */
export function pairKey(a: FaceName, b: FaceName, adapters: readonly string[]): string {
  const left = `${a.part}.${a.interface}`;
  const right = `${b.part}.${b.interface}`;
  if (left <= right) return [left, ...adapters, right].join('|');
  return [right, ...adapters.toReversed(), left].join('|');
}

/** What a key is made of. */
export function namesInPair(key: string): { ends: FaceName[]; adapters: string[] } {
  const names = key.split('|');
  const ends = [names[0], names.at(-1)].map((name = ''): FaceName => {
    const [part = '', face = ''] = name.split('.');
    return { part, interface: face };
  });
  return { ends, adapters: names.slice(1, -1) };
}

/** By the vehicles of a catalogue, which it keeps where a question adds parts to it. */
const pooled = new WeakMap<Catalogue['vehicles'], BuiltPairs>();

/** All as-built pairs of a catalogue; computed once for each. */
export function builtPairs(catalogue: Catalogue): BuiltPairs {
  const known = pooled.get(catalogue.vehicles);
  if (known !== undefined) return known;
  const pairs = new Map<string, { basis: Basis; vehicles: string[] }>();
  const put = (key: string, { id, evidence: { basis } }: Vehicle): void => {
    const pair = pairs.get(key);
    if (pair === undefined) pairs.set(key, { basis, vehicles: [id] });
    else {
      pair.vehicles.push(id);
      if (BASES.indexOf(basis) < BASES.indexOf(pair.basis)) pair.basis = basis;
    }
  };
  for (const vehicle of catalogue.vehicles.values()) {
    for (const key of pairsOf(vehicle, catalogue)) put(key, vehicle);
  }
  for (const { vehicle, articles } of takenApart(catalogue)) {
    for (const key of pairsOf(vehicle, catalogue, articles)) {
      if (namesInPair(key).ends.some(({ part }) => isDonorArticle(part))) put(key, vehicle);
    }
  }
  pooled.set(catalogue.vehicles, pairs);
  return pairs;
}

/** The articles of one lot out of one vehicle, by position and hand. */
type ArticlesOut = ReadonlyMap<string, string>;

function takenApart(
  catalogue: Catalogue,
): { readonly vehicle: Vehicle; readonly articles: ArticlesOut }[] {
  const found = new Map<string, { vehicle: Vehicle; articles: Map<string, string> }>();
  for (const { id, lot, vehicle, position, hand } of donorArticles(catalogue).values()) {
    const key = `${lot.id} ${vehicle.id}`;
    const own = found.get(key) ?? { vehicle, articles: new Map<string, string>() };
    found.set(key, own);
    own.articles.set(placeKey(position.id, hand), id);
  }
  return [...found.values()];
}

function placeKey(position: string, hand: Hand | null): string {
  return `${position} ${hand ?? ''}`;
}

const NONE_OUT: ArticlesOut = new Map();

function pairsOf(
  vehicle: Vehicle,
  { parts }: Catalogue,
  articles: ArticlesOut = NONE_OUT,
): Set<string> {
  const keys = new Set<string>();
  const built = asBuilt(vehicle);
  const articleAt = (position: string, hand: Hand | null): string | null => {
    const own = vehicle.layout.positions.get(position)?.isHanded === true ? hand : null;
    const occupant = seatAt(built, position, own)?.occupant;
    if (occupant?.is === 'part') return occupant.part;
    return articles.get(placeKey(position, own)) ?? null;
  };
  for (const mating of vehicle.layout.matings.values()) {
    const [a, b] = mating.ends;
    const positions = mating.ends.map((end) => vehicle.layout.positions.get(end.position));
    const handed = positions.find((position) => position?.isHanded);
    const adapters = vehicle.adapters.get(mating.id) ?? [];
    for (const hand of handed === undefined ? [null] : handsOf(handed)) {
      const left = articleAt(a.position, hand);
      const right = articleAt(b.position, hand);
      if (left === null || right === null) continue;
      const spans = parts.get(left)?.spans ?? [];
      const isOnePiece = left === right && spans.includes(a.position) && spans.includes(b.position);
      if (isOnePiece) continue;
      const x = { part: left, interface: a.interface };
      const y = { part: right, interface: b.interface };
      keys.add(pairKey(x, y, adapters));
    }
  }
  return keys;
}
