/**
 * What stands at a place of a vehicle that is taken apart, and nobody recorded what it is: an
 * article of its own, to be had out of that lot alone. None of its faces and values is known; all
 * that is known is where it stood, and so whom it met there.
 *
 * It is no part of the catalogue, so whatever judges a configuration takes it for what it is:
 * something that is there and that nobody has identified.
 */

import type { Hand } from '../check/reading.js';
import type {
  Catalogue,
  FittedHere,
  Occupant,
  Position,
  Vehicle,
  WorksOption,
} from './catalogue.js';
import type { Lot } from './trade.js';

export interface DonorArticle {
  /** `donor:lot:position`, and the hand behind it where the place has a left and a right one. */
  readonly id: string;
  readonly lot: Lot;
  readonly vehicle: Vehicle;
  readonly position: Position;
  readonly hand: Hand | null;
}

const SIGN = 'donor:';

/** No id of a part has a colon in it. */
export function isDonorArticle(article: string): boolean {
  return article.startsWith(SIGN);
}

const known = new WeakMap<Catalogue['lots'], ReadonlyMap<string, DonorArticle>>();

/** Of all lots of a catalogue, in their order; by id. */
export function donorArticles({ lots, vehicles }: Catalogue): ReadonlyMap<string, DonorArticle> {
  let articles = known.get(lots);
  if (articles === undefined) {
    const found = [...lots.values()].flatMap((lot) => articlesOf(lot, vehicles));
    articles = new Map(found.map((article) => [article.id, article]));
    known.set(lots, articles);
  }
  return articles;
}

function articlesOf(lot: Lot, vehicles: Catalogue['vehicles']): DonorArticle[] {
  return lot.contains.flatMap((item) => {
    if (item.is === 'part') return [];
    const vehicle = vehicles.get(item.vehicle);
    const position = vehicle?.layout.positions.get(item.position);
    if (vehicle === undefined || position === undefined) return [];
    return handsTaken(vehicle.fitted.get(position.id), position).flatMap(({ hand, occupant }) => {
      if (occupant.is === 'part' || occupant.is === 'empty') return [];
      const id = donorArticleId(lot, { vehicle: vehicle.id, position: position.id, hand });
      return [{ id, lot, vehicle, position, hand }];
    });
  });
}

/** Two vehicles in one lot may both have such a place. */
export function donorArticleId(
  { id, contains }: Lot,
  { vehicle, position, hand }: { vehicle: string; position: string; hand: Hand | null },
): string {
  const isOfSeveral = contains.some(
    (item) => item.is === 'position' && item.position === position && item.vehicle !== vehicle,
  );
  const place = isOfSeveral ? `${vehicle}/${position}` : position;
  return [`${SIGN}${id}`, place, ...(hand === null ? [] : [hand])].join(':');
}

/** What stands at a place that is taken, for each of its hands, and how many pieces of it. */
export interface Taken {
  readonly hand: Hand | null;
  readonly occupant: Occupant | WorksOption;
  readonly pieces: number;
}

export function handsTaken(fitted: FittedHere | undefined, position: Position): Taken[] {
  const { count, isHanded } = position;
  const as = (hand: Hand | null): Occupant | WorksOption => {
    if (fitted === undefined) return { is: 'as-found' };
    if (!fitted.hands) return fitted.occupant;
    return hand === 'right' ? fitted.right : fitted.left;
  };
  if (!isHanded) return [{ hand: null, occupant: as(null), pieces: count }];
  // A pair is two even where its position does not say so.
  const pieces = Math.max(2, count) / 2;
  return (['left', 'right'] as const).map((hand) => ({ hand, occupant: as(hand), pieces }));
}

/** Whether it may stand at a place: whatever of its roles it has, the place takes. */
export function mayStandAt(
  { position: { roles }, hand: own }: DonorArticle,
  place: Position,
  hand: Hand | null,
): boolean {
  const isRightHand = own === null || hand === null || own === hand;
  return isRightHand && roles.every((role) => place.roles.includes(role));
}
