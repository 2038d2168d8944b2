/**
 * What the works built: two articles that a vehicle's record has at the two ends of a mating meet
 * there, with the same adapters between them, on any vehicle.
 */

import type { CatalogueDocument, VehicleRecord } from '../../src/domain/catalogue/document.js';
import { endsOf } from './mating.js';
import { oncePer } from './memory.js';
import { type Basis, strongest } from './outcome.js';
import { basisOf, byId, type Hand, handsOf, worksAdapters } from './scene.js';

/** The strongest basis on record, by the name of the pair. */
export type Pairs = ReadonlyMap<string, Basis>;

/** The same from either end. */
export function pairName(a: string, b: string, adapters: readonly string[]): string {
  const ways = [
    [a, ...adapters, b],
    [b, ...[...adapters].reverse(), a],
  ];
  return ways
    .map((way) => way.join(' '))
    .sort()
    .join(' or ');
}

export const builtPairs: (document: CatalogueDocument) => Pairs = oncePer((document) => {
  const pairs = new Map<string, Basis>();
  for (const vehicle of document.vehicles ?? []) {
    const basis = basisOf(document, vehicle);
    for (const name of pairsOn(vehicle, document)) {
      pairs.set(name, strongest([basis, pairs.get(name) ?? basis]) ?? basis);
    }
  }
  return pairs;
});

function pairsOn(vehicle: VehicleRecord, document: CatalogueDocument): string[] {
  const layout = byId(document.layouts, vehicle.layout ?? '');
  return (layout.matings ?? []).flatMap((mating) => {
    const ends = endsOf(mating);
    const positions = ends.map(([id]) => byId(layout.positions, id));
    const handed = positions.find((position) => position.handed) ?? positions[0];
    if (handed === undefined) return [];
    return handsOf(handed).flatMap((hand) => {
      const [a, b] = ends.map(([id, face]) => {
        const part = fittedAt(vehicle, id, hand);
        return part === null ? null : `${part}.${face}`;
      });
      if (a === undefined || a === null || b === undefined || b === null) return [];
      return [pairName(a, b, worksAdapters(vehicle, mating.id))];
    });
  });
}

function fittedAt(vehicle: VehicleRecord, id: string, hand: Hand | null): string | null {
  const fitted = toldIn(vehicle.fitted?.[id], vehicle);
  if (fitted === undefined || fitted === null || typeof fitted === 'string') return fitted ?? null;
  return fitted[hand ?? 'left'];
}

type Fitted = string | null | Record<Hand, string | null>;

/** Of several, the one of which the record of the vehicle says so; else nobody knows. */
export function toldIn(recorded: unknown, { facts }: VehicleRecord): Fitted | undefined {
  if (typeof recorded !== 'object' || recorded === null || !('by' in recorded)) {
    return recorded as Fitted | undefined;
  }
  const value = facts?.[String(recorded.by)];
  return value === undefined ? undefined : (recorded as Readonly<Record<string, Fitted>>)[value];
}
