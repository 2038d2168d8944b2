/**
 * What the works built: two articles that a vehicle's record has at the two ends of a mating meet
 * there, with the same adapters between them, on any vehicle. What a lot has of a place that nobody
 * recorded met what stood beside it, recorded or out of the same lot.
 */

import type { CatalogueDocument, VehicleRecord } from '../../src/domain/catalogue/document.js';
import { type DonorPiece, donorPieces, toldIn } from './donor.js';
import { endsOf } from './mating.js';
import { oncePer } from './memory.js';
import { type Basis, strongest } from './outcome.js';
import { basisOf, byId, type Hand, handsOf, isDonorName, worksAdapters } from './scene.js';

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
  for (const { id } of document.lots ?? []) {
    for (const vehicle of new Set(donorPieces(document, id).map((one) => one.vehicle))) {
      for (const name of pairsOn(withNames(vehicle, id, document), document)) {
        if (name.includes('donor:')) pairs.set(name, basisOf(document, vehicle));
      }
    }
  }
  return pairs;
});

/** The record with the names of the lot at the places that it does not tell of. */
function withNames(
  vehicle: VehicleRecord,
  lot: string,
  document: CatalogueDocument,
): VehicleRecord {
  const own = donorPieces(document, lot).filter(
    (one) => one.vehicle === vehicle && isDonorName(one.name),
  );
  const named = own.map(({ position, hand, name }) => {
    const isOther = (one: DonorPiece) => one.position === position && one.hand !== hand;
    const other = own.find(isOther)?.name ?? null;
    if (hand === null) return [position, name] as const;
    const pair = hand === 'left' ? { left: name, right: other } : { left: other, right: name };
    return [position, pair] as const;
  });
  return { ...vehicle, fitted: { ...vehicle.fitted, ...Object.fromEntries(named) } };
}

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
