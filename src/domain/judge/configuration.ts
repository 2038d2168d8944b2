/**
 * One configuration of a vehicle: what stands at each position, which adapters sit in its
 * matings, and where each of these comes from. Judging it is `judge.ts`.
 */

import type {
  Catalogue,
  FittedHere,
  Layout,
  Occupant,
  Part,
  Position,
  Vehicle,
  WorksOption,
} from '../catalogue/catalogue.js';
import { type DonorArticle, donorArticles } from '../catalogue/donor-article.js';
import type { Use } from '../check/coupling.js';
import type { Hand } from '../check/reading.js';
import type { Interval } from '../quantity/interval.js';

/** `works`: on the vehicle's record. `said`: the question says so. `chosen`: the change. */
export type Origin = 'works' | 'said' | 'chosen';

export interface Seat {
  /** As found where a works option stands there of which nobody knows which it is. */
  readonly occupant: Occupant;
  readonly origin: Origin;
  /** That option: it is one of these, and one fact tells which (see `supposed.ts`). */
  readonly option?: WorksOption;
}

/** What stands at a position: one seat, or a left and a right one. */
export type Seats =
  | { readonly hands: false; readonly seat: Seat }
  | { readonly hands: true; readonly left: Seat; readonly right: Seat };

export interface Adapters {
  readonly parts: readonly string[];
  readonly origin: Origin;
}

export interface Configuration {
  readonly catalogue: Catalogue;
  /** The catalogue whose vehicles give as-built evidence; parts of a question are in neither. */
  readonly pairsOf: Catalogue;
  readonly vehicle: Vehicle;
  readonly layout: Layout;
  /** What is on the vehicle now. */
  readonly present: Arrangement;
  /** What is judged; equal to `present` where nothing is changed. */
  readonly judged: Arrangement;
  /** The engine torque that the question names, in N.m, instead of the recorded one. */
  readonly torque: { readonly interval: Interval; readonly text: string } | null;
  readonly use: Use | null;
  /** What fails on the vehicle as it stands is left alone, not mended. */
  readonly ignorePresent: boolean;
  /** Positions at which a new piece of the very article is put in: they are opened, not changed. */
  readonly renewed?: ReadonlySet<string>;
  /** What the change leaves as the works built it is given: it need not be judged, nor listed. */
  readonly skipsGiven?: true;
}

export interface Arrangement {
  readonly seats: ReadonlyMap<string, Seats>;
  readonly adapters: ReadonlyMap<string, Adapters>;
}

const AS_FOUND: Occupant = { is: 'as-found' };

/** What the works fitted; a position without a record is as found. */
export function asBuilt(vehicle: Vehicle): Arrangement {
  const seats = new Map<string, Seats>();
  for (const position of vehicle.layout.positions.values()) {
    seats.set(position.id, seatsOf(vehicle.fitted.get(position.id), position));
  }
  const adapters = new Map<string, Adapters>();
  for (const [mating, parts] of vehicle.adapters) adapters.set(mating, { parts, origin: 'works' });
  return { seats, adapters };
}

function seatsOf(fitted: FittedHere | undefined, position: Position): Seats {
  const origin = 'works';
  if (fitted === undefined) {
    const seat: Seat = { occupant: AS_FOUND, origin };
    return position.isHanded ? { hands: true, left: seat, right: seat } : { hands: false, seat };
  }
  const seat = (occupant: Occupant | WorksOption): Seat =>
    occupant.is === 'option'
      ? { occupant: AS_FOUND, origin, option: occupant }
      : { occupant, origin };
  if (!fitted.hands) return { hands: false, seat: seat(fitted.occupant) };
  return { hands: true, left: seat(fitted.left), right: seat(fitted.right) };
}

/** Lays seats and adapters over an arrangement. The same again changes nothing, nor its origin. */
export function overlay(
  base: Arrangement,
  seats: ReadonlyMap<string, Seats>,
  adapters: ReadonlyMap<string, Adapters> = new Map(),
): Arrangement {
  const laidSeats = new Map(base.seats);
  for (const [id, over] of seats) laidSeats.set(id, overSeats(base.seats.get(id), over));
  const laidAdapters = new Map(base.adapters);
  for (const [mating, over] of adapters) {
    const under = base.adapters.get(mating) ?? NO_ADAPTERS;
    laidAdapters.set(mating, sameAdapters(under, over) ? under : over);
  }
  return { seats: laidSeats, adapters: laidAdapters };
}

const NO_ADAPTERS: Adapters = { parts: [], origin: 'works' };

function overSeats(under: Seats | undefined, over: Seats): Seats {
  if (under === undefined) return over;
  if (over.hands && under.hands) {
    const left = overSeat(under.left, over.left);
    return { hands: true, left, right: overSeat(under.right, over.right) };
  }
  if (over.hands || under.hands) return over;
  return { hands: false, seat: overSeat(under.seat, over.seat) };
}

/** What may be anything is not the same as one of a few that the works fitted. */
function overSeat(under: Seat, over: Seat): Seat {
  const isSame = sameOccupant(under.occupant, over.occupant) && under.option === over.option;
  return isSame ? under : over;
}

export function seatAt(
  arrangement: Arrangement,
  position: string,
  hand: Hand | null,
): Seat | undefined {
  const seats = arrangement.seats.get(position);
  if (seats === undefined) return undefined;
  if (!seats.hands) return seats.seat;
  return hand === 'right' ? seats.right : seats.left;
}

/** Its record; null where nothing is recorded of what stands there. */
export function partAt(configuration: Configuration, seat: Seat | undefined): Part | null {
  if (seat?.occupant.is !== 'part') return null;
  return configuration.catalogue.parts.get(seat.occupant.part) ?? null;
}

/** What stands there out of a vehicle that was taken apart, and nobody identified. */
export function donorArticleAt(
  { catalogue }: Configuration,
  seat: Seat | undefined,
): DonorArticle | null {
  if (seat?.occupant.is !== 'part') return null;
  return donorArticles(catalogue).get(seat.occupant.part) ?? null;
}

export function sameOccupant(a: Occupant, b: Occupant): boolean {
  if (a.is === 'part' && b.is === 'part') return a.part === b.part;
  return a.is === b.is;
}

/** Whether this seat holds something else than it does now. The same article is no change. */
export function isSeatChanged(
  configuration: Configuration,
  position: string,
  hand: Hand | null,
): boolean {
  const now = seatAt(configuration.present, position, hand);
  const then = seatAt(configuration.judged, position, hand);
  if (now === undefined || then === undefined) return now !== then;
  return !sameOccupant(now.occupant, then.occupant);
}

export function handsOf(position: Position): readonly (Hand | null)[] {
  return position.isHanded ? ['left', 'right'] : [null];
}

/** Whether either piece of the position is changed. */
export function isChanged(configuration: Configuration, id: string): boolean {
  const position = configuration.layout.positions.get(id);
  if (position === undefined) return false;
  return handsOf(position).some((hand) => isSeatChanged(configuration, id, hand));
}

/** The positions that must come out before these can, whatever they are behind in turn. */
export function inTheWayOf({ positions }: Layout, touched: Iterable<string>): ReadonlySet<string> {
  const inTheWay = new Set<string>();
  const visit = (id: string): void => {
    for (const other of positions.get(id)?.behind ?? []) {
      if (inTheWay.has(other)) continue;
      inTheWay.add(other);
      visit(other);
    }
  };
  for (const id of touched) visit(id);
  return inTheWay;
}

/** Changed or renewed, or in the way of something that is (see `behind`). */
export function isOpened(configuration: Configuration, id: string): boolean {
  const { layout, renewed } = configuration;
  const isTouched = (one: string): boolean =>
    isChanged(configuration, one) || renewed?.has(one) === true;
  if (isTouched(id)) return true;
  return inTheWayOf(layout, [...layout.positions.keys()].filter(isTouched)).has(id);
}

/** The piece that a position's part is: one that spans several positions is one piece. */
export function pieceOf(part: Part, position: string, hand: Hand | null): string {
  const place = part.spans?.includes(position) ? (part.spans[0] ?? position) : position;
  return hand === null ? place : `${place}:${hand}`;
}

export function adaptersIn(arrangement: Arrangement, mating: string): Adapters | null {
  const adapters = arrangement.adapters.get(mating);
  return adapters === undefined || adapters.parts.length === 0 ? null : adapters;
}

export function sameAdapters(a: Adapters | null, b: Adapters | null): boolean {
  const left = a?.parts ?? [];
  const right = b?.parts ?? [];
  return left.length === right.length && left.every((part, index) => part === right[index]);
}
