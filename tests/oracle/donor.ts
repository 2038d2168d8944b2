/**
 * What lots have of vehicles that are taken apart, recorded or not. What nobody recorded has a name
 * of its own, and of it nothing is known but where it stood.
 *
 * Left out: two vehicles in one lot that both have such a place.
 */

import type { CatalogueDocument, VehicleRecord } from '../../src/domain/catalogue/document.js';
import { byId, type DonorName, type Hand, handsOf, isDonorName } from './scene.js';

/** What stood at one place of such a vehicle, for one hand. */
export interface DonorPiece {
  /** A part, or the name of what nobody recorded. */
  readonly name: string;
  readonly vehicle: VehicleRecord;
  readonly position: string;
  readonly hand: Hand | null;
  readonly pieces: number;
}

export function donorPieces(document: CatalogueDocument, lot: string): DonorPiece[] {
  return byId(document.lots, lot).contains.flatMap((item): DonorPiece[] => {
    if ('part' in item) return [];
    const vehicle = byId(document.vehicles, item.vehicle);
    const position = byId(byId(document.layouts, vehicle.layout ?? '').positions, item.position);
    const fitted = toldIn(vehicle.fitted?.[item.position], vehicle);
    const hands = handsOf(position);
    const pieces = (position.count ?? hands.length) / hands.length;
    return hands.flatMap((hand) => {
      const name = nameAt(fitted, lot, item.position, hand);
      return name === null ? [] : [{ name, vehicle, position: item.position, hand, pieces }];
    });
  });
}

/** Null where it is known that nothing stands there. */
function nameAt(
  fitted: Fitted | undefined,
  lot: string,
  position: string,
  hand: Hand | null,
): string | null {
  if (fitted === undefined) {
    return ['donor', lot, position, ...(hand === null ? [] : [hand])].join(':');
  }
  return typeof fitted === 'object' && fitted !== null ? fitted[hand ?? 'left'] : fitted;
}

/** All of any lot that nobody recorded. */
export function unrecordedIn(document: CatalogueDocument): DonorPiece[] {
  return (document.lots ?? [])
    .flatMap(({ id }) => donorPieces(document, id))
    .filter(({ name }) => isDonorName(name));
}

export function donorNamed(document: CatalogueDocument, name: string): DonorPiece {
  const piece = unrecordedIn(document).find((one) => one.name === name);
  if (piece === undefined) throw new Error(`no lot has ${name}`);
  return piece;
}

/** Any of the roles that stand at such a place may be its own. */
export function rolesOf(document: CatalogueDocument, name: string): readonly string[] {
  const { vehicle, position } = donorNamed(document, name);
  return byId(byId(document.layouts, vehicle.layout ?? '').positions, position).roles;
}

/** The faces with which it met what stood beside it. */
export function facesMet(name: DonorName, document: CatalogueDocument): string[] {
  const { vehicle, position } = donorNamed(document, name);
  const { matings = [] } = byId(document.layouts, vehicle.layout ?? '');
  return matings.flatMap(({ between }) => {
    const [one, other] = between;
    const pairs = [
      [one, other],
      [other, one],
    ] as const;
    return pairs.flatMap(([own, beside]) => {
      const [id, face = ''] = own.split('.');
      const there = toldIn(vehicle.fitted?.[beside.split('.')[0] ?? ''], vehicle);
      return id === position && !isEmpty(there) ? [face] : [];
    });
  });
}

function isEmpty(fitted: Fitted | undefined): boolean {
  if (typeof fitted !== 'object') return false;
  return fitted === null || (fitted.left === null && fitted.right === null);
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
