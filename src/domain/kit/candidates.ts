/**
 * What could stand at each place of a vehicle, and sit in each of its matings: the values that a
 * search chooses from. Value 0 is always what is there now.
 *
 * Left out: whether they meet anything, and whether the question allows them.
 */

import type { Catalogue, Occupant, Part, Position } from '../catalogue/catalogue.js';
import { donorArticles, mayStandAt } from '../catalogue/donor-article.js';
import type { Work } from '../catalogue/trade.js';
import type { Hand } from '../check/reading.js';
import type { Arrangement, Seat, Seats } from '../judge/configuration.js';
import { namesOf, withArticles, workedPart } from '../judge/worked-part.js';
import type { KitQuestion } from './question.js';

/** What stands at a place, as one decision: all its pieces alike, or a left and a right one. */
export interface SeatValue {
  readonly seats: Seats;
  /** The hands for which a new piece of the very article that is there now is put in. */
  readonly renewed: readonly (Hand | null)[];
}

/** A place of the vehicle with what could stand there. */
export interface PlaceCandidates {
  readonly position: Position;
  readonly values: readonly [SeatValue, ...SeatValue[]];
}

/** So many works are done on one part at the most. */
const MOST_WORKS = 2;

const byRole = new WeakMap<Catalogue['parts'], ReadonlyMap<string, readonly Part[]>>();

/** The parts of each role, in the order of the catalogue. */
function partsByRole({ parts }: Catalogue): ReadonlyMap<string, readonly Part[]> {
  let known = byRole.get(parts);
  if (known === undefined) {
    const lists = new Map<string, Part[]>();
    for (const part of parts.values()) {
      for (const role of part.roles) {
        const list = lists.get(role);
        if (list === undefined) lists.set(role, [part]);
        else list.push(part);
      }
    }
    known = lists;
    byRole.set(parts, known);
  }
  return known;
}

/** The works that the question allows. */
function worksOf({ catalogue, workUpTo }: KitQuestion): Work[] {
  if (workUpTo === 'none') return [];
  return [...catalogue.works.values()].filter(
    ({ signOff }) => workUpTo === 'engineer' || signOff !== 'engineer',
  );
}

/** The ids of all that could be made of a part, the part itself not among them. */
function workedFrom(part: Part, works: readonly Work[], catalogue: Catalogue): string[] {
  const ids: string[] = [];
  const extend = (made: Part, from: number, left: number): void => {
    if (left === 0) return;
    for (const [index, work] of works.entries()) {
      if (index < from || namesOf(made.id).includes(work.id)) continue;
      const worked = workedPart(made, work, catalogue).part;
      if (worked === null) continue;
      ids.push(worked.id);
      extend(worked, index + 1, left - 1);
    }
  };
  extend(part, 0, MOST_WORKS);
  return ids;
}

/** The candidates of all places, and the catalogue with the articles that works would make. */
export function candidatesOf(
  question: KitQuestion,
  present: Arrangement,
): { catalogue: Catalogue; places: PlaceCandidates[] } {
  const { vehicle } = question;
  const works = worksOf(question);
  const ids = new Map<string, string[]>();
  const worked = new Set<string>();
  for (const position of vehicle.layout.positions.values()) {
    const found = articlesFor(position, question, works);
    ids.set(position.id, found);
    for (const id of found) if (id.includes('+')) worked.add(id);
  }
  const catalogue = withArticles(question.catalogue, worked);
  const places = [...vehicle.layout.positions.values()].map((position) =>
    placeCandidates(position, ids.get(position.id) ?? [], { question, present, catalogue }),
  );
  return { catalogue, places };
}

/**
 * Articles for a position, by id in the order of the catalogue, each with what is made of it; then
 * what lots have that nobody recorded.
 */
function articlesFor(position: Position, question: KitQuestion, works: readonly Work[]): string[] {
  const { catalogue } = question;
  const roles = partsByRole(catalogue);
  const found = new Map<string, Part>();
  for (const role of position.roles) {
    for (const part of roles.get(role) ?? []) found.set(part.id, part);
  }
  for (const part of spanningParts(position, catalogue)) found.set(part.id, part);
  const ids: string[] = [];
  for (const part of found.values()) {
    ids.push(part.id);
    for (const id of workedFrom(part, works, catalogue)) ids.push(id);
  }
  for (const article of donorArticles(catalogue).values()) {
    if (mayStandAt(article, position, null)) ids.push(article.id);
  }
  return [...new Set(ids)];
}

const spanning = new WeakMap<Catalogue['parts'], readonly Part[]>();

/** Parts that fill this position as one of several. */
function spanningParts({ id }: Position, { parts }: Catalogue): Part[] {
  let known = spanning.get(parts);
  if (known === undefined) {
    known = [...parts.values()].filter(({ spans }) => spans !== null);
    spanning.set(parts, known);
  }
  return known.filter(({ spans }) => spans?.includes(id) === true);
}

interface Given {
  readonly question: KitQuestion;
  readonly present: Arrangement;
  readonly catalogue: Catalogue;
}

function placeCandidates(
  position: Position,
  ids: readonly string[],
  given: Given,
): PlaceCandidates {
  const now = given.present.seats.get(position.id);
  if (now === undefined) throw new Error(`nothing is said of ${position.id}`);
  const values: [SeatValue, ...SeatValue[]] = [{ seats: now, renewed: [] }];
  values.push(
    ...(now.hands ? pairsAt(position, ids, now, given) : singlesAt(position, ids, now, given)),
  );
  if (mayBeEmptied(position, now, given))
    values.push({ seats: alike(EMPTY, position), renewed: [] });
  return { position, values };
}

const EMPTY: Occupant = { is: 'empty' };

/** Whether a new piece of an article is wanted for a hand, even if one is there already. */
function isWantedAnew(
  id: string,
  { id: position }: Position,
  hand: Hand | null,
  { question }: Given,
) {
  return question.wants.some(
    (want) =>
      want.is === 'part' &&
      want.renews &&
      (want.position === null || want.position === position) &&
      (want.hand === null || want.hand === hand) &&
      want.parts.includes(id),
  );
}

function alike(occupant: Occupant, { isHanded }: Position): Seats {
  const seat = { occupant, origin: 'chosen' } as const;
  return isHanded ? { hands: true, left: seat, right: seat } : { hands: false, seat };
}

/** Something for one hand of a place. */
interface Choice {
  readonly seat: Seat;
  readonly id: string;
  readonly isRenewed: boolean;
}

/** What could be put in for a hand, in the order of the articles. */
function choicesFor(
  position: Position,
  hand: Hand | null,
  ids: readonly string[],
  now: Seat,
  given: Given,
): Choice[] {
  const there = now.occupant.is === 'part' ? now.occupant.part : null;
  return ids.flatMap((id): Choice[] => {
    const own = madeForHand(id, given);
    if (own !== hand && own !== null && hand !== null) return [];
    if (id !== there) {
      return [
        { seat: { occupant: { is: 'part', part: id }, origin: 'chosen' }, id, isRenewed: false },
      ];
    }
    return isWantedAnew(id, position, hand, given) ? [{ seat: now, id, isRenewed: true }] : [];
  });
}

/** Null for either, and for what was made for no hand. */
export function madeForHand(id: string, { catalogue }: Pick<Given, 'catalogue'>): Hand | null {
  return catalogue.parts.get(id)?.hand ?? donorArticles(catalogue).get(id)?.hand ?? null;
}

function singlesAt(
  position: Position,
  ids: readonly string[],
  now: Seats & { readonly hands: false },
  given: Given,
): SeatValue[] {
  return choicesFor(position, null, ids, now.seat, given).map(({ seat, isRenewed }) => {
    return { seats: { hands: false, seat }, renewed: isRenewed ? [null] : [] };
  });
}

/**
 * A left and a right piece. Either may stay beside whatever is put in for the other hand; two that
 * are put in together are of one article, or made for the two hands.
 */
function pairsAt(
  position: Position,
  ids: readonly string[],
  now: Seats & { readonly hands: true },
  given: Given,
): SeatValue[] {
  const lefts = choicesFor(position, 'left', ids, now.left, given);
  const rights = choicesFor(position, 'right', ids, now.right, given);
  const isFor = (id: string, hand: Hand) => madeForHand(id, given) === hand;
  const rightByArticle = new Map(rights.map((choice) => [choice.id, choice]));
  const madeForRight = rights.filter(({ id }) => isFor(id, 'right'));
  const value = (left: Choice | null, right: Choice | null): SeatValue => ({
    seats: { hands: true, left: left?.seat ?? now.left, right: right?.seat ?? now.right },
    renewed: [
      ...(left?.isRenewed === true ? (['left'] as const) : []),
      ...(right?.isRenewed === true ? (['right'] as const) : []),
    ],
  });
  return [
    ...lefts.flatMap((left) => {
      const same = rightByArticle.get(left.id);
      const beside = isFor(left.id, 'left') ? madeForRight : same === undefined ? [] : [same];
      return [value(left, null), ...beside.map((right) => value(left, right))];
    }),
    ...rights.map((right) => value(null, right)),
  ];
}

/** An optional place; or one filled by a piece that fills others too, and may go with it. */
function mayBeEmptied(position: Position, now: Seats, { catalogue }: Given): boolean {
  const occupants = now.hands ? [now.left.occupant, now.right.occupant] : [now.seat.occupant];
  if (occupants.every(({ is }) => is === 'empty')) return false;
  if (position.isOptional) return true;
  return partsPossibleIn(now).some((id) => (catalogue.parts.get(id)?.spans ?? null) !== null);
}

/** The articles of seats, each once. */
export function partsIn(seats: Seats): string[] {
  const occupants = seats.hands
    ? [seats.left.occupant, seats.right.occupant]
    : [seats.seat.occupant];
  return [...new Set(occupants.flatMap((one) => (one.is === 'part' ? [one.part] : [])))];
}

/** Those and the ones of which a fact that nobody told says which it is; each once. */
export function partsPossibleIn(seats: Seats): string[] {
  return [...new Set([...partsIn(seats), ...seatsIn(seats).flatMap(partsOfOption)])];
}

function seatsIn(seats: Seats): Seat[] {
  return seats.hands ? [seats.left, seats.right] : [seats.seat];
}

function partsOfOption({ option }: Seat): string[] {
  if (option === undefined) return [];
  return [...option.by.values()].flatMap((one) => (one.is === 'part' ? [one.part] : []));
}

/** The parts that may be there for a hand, where a works option is; else none. */
export function optionsAt(seats: Seats, hand: Hand | null): readonly string[] {
  const seat = seats.hands ? (hand === 'right' ? seats.right : seats.left) : seats.seat;
  return partsOfOption(seat);
}

/** What stands there for a hand. */
export function occupantOf(seats: Seats, hand: Hand | null): Occupant {
  if (!seats.hands) return seats.seat.occupant;
  return (hand === 'right' ? seats.right : seats.left).occupant;
}
