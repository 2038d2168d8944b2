/**
 * Does this part fit this vehicle? For each place where it could stand: the vehicle as it is,
 * with the part (and its companions) put there and nothing else changed.
 */

import type { Catalogue, Part, Position, Vehicle } from '../catalogue/catalogue.js';
import type { Use } from '../check/coupling.js';
import type { Hand } from '../check/reading.js';
import { OUTCOMES, type Outcome } from '../check/state.js';
import type { Interval } from '../quantity/interval.js';
import {
  type Adapters,
  type Arrangement,
  asBuilt,
  type Configuration,
  handsOf,
  isChanged,
  overlay,
  type Seat,
  type Seats,
  seatAt,
} from './configuration.js';
import { type Judgement, judge } from './judge.js';

export interface FitQuestion {
  readonly vehicle: Vehicle;
  readonly part: Part;
  /** The place asked about; null asks about all that take such a part. */
  readonly position: string | null;
  /** What is fitted beside it, by position: one part, or one for each hand. */
  readonly with: ReadonlyMap<string, readonly Companion[]>;
  /** What is on this vehicle instead of what the works fitted. */
  readonly said: Said;
  readonly torque: { readonly interval: Interval; readonly text: string } | null;
  readonly use: Use | null;
  readonly ignorePresent: boolean;
}

/** A part beside the one that is asked about; null for both hands, or the one it is made for. */
export interface Companion {
  readonly part: Part;
  readonly hand: Hand | null;
}

/** What a question says is on the vehicle, over its record. */
export interface Said {
  readonly seats: ReadonlyMap<string, Seats>;
  readonly adapters: ReadonlyMap<string, Adapters>;
}

export interface FitAt {
  readonly position: Position;
  /** What the part takes the place of; several on a handed position. */
  readonly replaces: readonly string[];
  readonly alone: Outcome;
  readonly verdict: FitVerdict | null;
  /** The part is there already. */
  readonly isPresent: boolean;
  readonly judgement: Judgement;
}

export type FitVerdict = 'fits' | 'does-not-fit' | 'unknown';

export interface Fit {
  readonly positions: readonly FitAt[];
  /** The best of the positions; `fails` where there is none. */
  readonly alone: Outcome;
  /** Null where only changes could make it fit, and nobody asked for changes. */
  readonly verdict: FitVerdict | null;
  /** It has no place of its own, but could sit in a joint between two others. */
  readonly isAdapter: boolean;
  readonly isPresent: boolean;
  /** The positions differ. */
  readonly isAmbiguous: boolean;
  /** Where the best verdict is had. */
  readonly at: readonly string[];
}

/** The part at each of its places; the question's ids are resolved already. */
export function judgeFit(catalogue: Catalogue, question: FitQuestion): Fit {
  const { vehicle, part, position, said } = question;
  const present = overlay(asBuilt(vehicle), said.seats, said.adapters);
  const places =
    position === null
      ? placesFor(part, vehicle)
      : [...vehicle.layout.positions.values()].filter(({ id }) => id === position);
  const positions = places.map((place) => judgeAt(catalogue, question, present, place));
  return { positions, ...(overall(positions) ?? placeless(catalogue, question)) };
}

/** What has no place in this vehicle; what sits in joints may be part of a change all the same. */
function placeless(catalogue: Catalogue, { part, vehicle }: FitQuestion): Omit<Fit, 'positions'> {
  const isAdapter = part.faces.size === 2 && takesAdapters(vehicle) && !hasPlace(catalogue, part);
  const verdict = isAdapter ? null : 'does-not-fit';
  return { alone: 'fails', verdict, isAdapter, isPresent: false, isAmbiguous: false, at: [] };
}

function takesAdapters({ layout }: Vehicle): boolean {
  return [...layout.matings.values()].some(({ adapters }) => adapters > 0);
}

/** Whether a position of any layout takes such a part. */
export function hasPlace({ layouts }: Catalogue, part: Part): boolean {
  const positions = [...layouts.values()].flatMap((layout) => [...layout.positions.values()]);
  return positions.some((position) => takes(position, part));
}

export function takes({ roles }: Position, part: Part): boolean {
  return part.roles.some((role) => roles.includes(role));
}

/** The positions that take a part of its roles; one that spans several is asked of the first. */
export function placesFor(part: Part, vehicle: Vehicle): Position[] {
  const { positions } = vehicle.layout;
  const places = [...positions.values()].filter((position) => takes(position, part));
  if (part.spans === null) return places;
  const [first] = part.spans;
  const own = first === undefined ? undefined : positions.get(first);
  return own === undefined ? places.slice(0, 1) : [own];
}

function judgeAt(
  catalogue: Catalogue,
  question: FitQuestion,
  present: Arrangement,
  place: Position,
): FitAt {
  const { vehicle, part, torque, use, ignorePresent } = question;
  const seats = new Map<string, Seats>();
  for (const [id, companion] of question.with) {
    const position = vehicle.layout.positions.get(id);
    if (position === undefined || id === place.id) continue;
    for (const { part: other, hand } of companion) {
      seatPart(seats, other, hand ?? other.hand, position, present, catalogue, vehicle);
    }
  }
  seatPart(seats, part, part.hand, place, present, catalogue, vehicle);
  const configuration: Configuration = {
    catalogue,
    pairsOf: catalogue,
    vehicle,
    layout: vehicle.layout,
    present,
    judged: overlay(present, seats),
    torque,
    use,
    ignorePresent,
    skipsGiven: true,
  };
  const judgement = judge(configuration);
  const alone = judgement.outcome;
  const replaces = replacedBy(place, configuration);
  const isPresent = !isChanged(configuration, place.id);
  const verdict = alone === 'holds' ? 'fits' : alone === 'open' ? 'unknown' : null;
  return { position: place, replaces, alone, verdict, isPresent, judgement };
}

/**
 * Puts a part in its place: on both hands, or on the one that is named; in all the places
 * that it spans. What spanned the place before comes out of its other places too.
 */
function seatPart(
  seats: Map<string, Seats>,
  part: Part,
  only: Hand | null,
  place: Position,
  present: Arrangement,
  catalogue: Catalogue,
  vehicle: Vehicle,
): void {
  const seat: Seat = { occupant: { is: 'part', part: part.id }, origin: 'chosen' };
  const filled = part.spans?.includes(place.id) ? part.spans : [place.id];
  for (const id of filled) {
    const position = vehicle.layout.positions.get(id);
    if (position === undefined) continue;
    for (const hand of handsOf(position)) {
      const old = seatAt(present, id, hand)?.occupant;
      const spans = old?.is === 'part' ? (catalogue.parts.get(old.part)?.spans ?? []) : [];
      if (!spans.includes(id)) continue;
      for (const other of spans.filter((one) => !filled.includes(one) && !seats.has(one))) {
        const empty: Seat = { occupant: { is: 'empty' }, origin: 'chosen' };
        seats.set(other, { hands: false, seat: empty });
      }
    }
    if (!position.isHanded) {
      seats.set(id, { hands: false, seat });
      continue;
    }
    const before = seats.get(id) ?? present.seats.get(id);
    const left = only === 'right' && before?.hands ? before.left : seat;
    const right = only === 'left' && before?.hands ? before.right : seat;
    seats.set(id, { hands: true, left, right });
  }
}

function replacedBy(place: Position, { present, judged }: Configuration): string[] {
  const replaced = handsOf(place).flatMap((hand) => {
    const old = seatAt(present, place.id, hand)?.occupant;
    const now = seatAt(judged, place.id, hand)?.occupant;
    if (old?.is !== 'part' || (now?.is === 'part' && now.part === old.part)) return [];
    return [old.part];
  });
  return [...new Set(replaced)];
}

/** Null where there is no place. */
function overall(positions: readonly FitAt[]): Omit<Fit, 'positions'> | null {
  const [first, ...others] = positions;
  if (first === undefined) return null;
  let best = first;
  for (const one of others)
    if (OUTCOMES.indexOf(one.alone) < OUTCOMES.indexOf(best.alone)) best = one;
  const at = positions.filter(({ alone }) => alone === best.alone);
  return {
    alone: best.alone,
    verdict: best.verdict,
    isAdapter: false,
    isPresent: at.some(({ isPresent }) => isPresent),
    isAmbiguous: at.length < positions.length,
    at: at.map(({ position }) => position.id),
  };
}
