/**
 * As-built evidence: two articles that a vehicle record has at the two ends of a mating meet
 * there. It is pooled over all vehicles, by article and interface, and holds wherever the same
 * two faces meet in the same way.
 */

import type { Catalogue, Occupant, Vehicle } from '../catalogue/catalogue.js';
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
  for (const vehicle of catalogue.vehicles.values()) {
    for (const key of pairsOf(vehicle, catalogue)) {
      const { basis } = vehicle.evidence;
      const pair = pairs.get(key);
      if (pair === undefined) pairs.set(key, { basis, vehicles: [vehicle.id] });
      else {
        pair.vehicles.push(vehicle.id);
        if (BASES.indexOf(basis) < BASES.indexOf(pair.basis)) pair.basis = basis;
      }
    }
  }
  pooled.set(catalogue.vehicles, pairs);
  return pairs;
}

function pairsOf(vehicle: Vehicle, { parts }: Catalogue): Set<string> {
  const keys = new Set<string>();
  const built = asBuilt(vehicle);
  for (const mating of vehicle.layout.matings.values()) {
    const [a, b] = mating.ends;
    const positions = mating.ends.map((end) => vehicle.layout.positions.get(end.position));
    const handed = positions.find((position) => position?.isHanded);
    const adapters = vehicle.adapters.get(mating.id) ?? [];
    for (const hand of handed === undefined ? [null] : handsOf(handed)) {
      const left = partOf(seatAt(built, a.position, hand)?.occupant);
      const right = partOf(seatAt(built, b.position, hand)?.occupant);
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

function partOf(occupant: Occupant | undefined): string | null {
  return occupant?.is === 'part' ? occupant.part : null;
}
