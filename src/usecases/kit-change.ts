/**
 * What a kit changes on a vehicle: by its lines, as an answer about kits gives them, or by the key
 * of a route. Only what stands somewhere counts; what is bought, used up or opened changes nothing.
 */

import type { Vehicle } from '../domain/catalogue/catalogue.js';
import type { Hand } from '../domain/check/reading.js';
import {
  type Adapters,
  type Arrangement,
  handsOf,
  overlay,
  type Seat,
  type Seats,
  seatAt,
} from '../domain/judge/configuration.js';
import type { AskedParts } from './asked-parts.js';
import type { Faults } from './faults.js';
import { positionOf, saidAdapters, seatOf } from './question.js';
import { routeOfKey } from './route-key.js';

/** A line of a kit, as far as it changes something. */
export interface LineInput {
  /** `add`, `adapter`, `work`, `remove`; all others change nothing. */
  readonly action: string;
  readonly position: string | null;
  readonly mating: string | null;
  readonly hand: Hand | null;
  readonly part: string | null;
  readonly work: string | null;
}

/** What is put somewhere, and where the question says so. */
interface Placed {
  readonly at: string;
  readonly position: string;
  readonly hand: Hand | null;
  /** Null for a place that is emptied. */
  readonly part: string | null;
}

export interface AskedChange {
  readonly placed: readonly Placed[];
  /** Adapters in a row, by mating. */
  readonly adapters: Readonly<Record<string, readonly string[]>>;
}

/** What lines change; a work on a part is of the line that puts the part in. */
export function changeOfLines(lines: readonly LineInput[]): AskedChange {
  const placed: Placed[] = [];
  const adapters: Record<string, string[]> = {};
  for (const [index, { action, position, mating, hand, part }] of lines.entries()) {
    const at = `lines.${index}`;
    if (action === 'adapter' && mating !== null && part !== null) {
      adapters[mating] = [...(adapters[mating] ?? []), part];
    } else if (action === 'remove' && mating !== null) adapters[mating] ??= [];
    else if (action === 'add' && position !== null && part !== null) {
      const works = lines.flatMap((one) =>
        one.action === 'work' && one.position === position && one.hand === hand && one.work !== null
          ? [one.work]
          : [],
      );
      placed.push({ at, position, hand, part: [part, ...works].join('+') });
    }
  }
  const filled = new Set(placed.map(({ position, hand }) => `${position} ${hand ?? ''}`));
  const emptied = lines.flatMap(({ action, position, hand }, index) => {
    if (action !== 'remove' || position === null) return [];
    const isFilled = filled.has(`${position} ${hand ?? ''}`) || filled.has(`${position} `);
    return isFilled ? [] : [{ at: `lines.${index}`, position, hand, part: null }];
  });
  return { placed: [...emptied, ...placed], adapters };
}

/** What the route of a key changes; null with a fault where it is no key of this vehicle. */
export function changeOfKey(
  key: string,
  vehicle: string,
  at: string,
  faults: Faults,
): AskedChange | null {
  const route = routeOfKey(key);
  if (route === null) faults.add(at, 'not-a-route-key', {});
  else if (route.vehicle !== vehicle) {
    faults.add(at, 'route-of-another-vehicle', { vehicle: route.vehicle });
  } else {
    const placed = route.changes.map(([position, hand, part]) => ({ at, position, hand, part }));
    const adapters = route.adapters.map(([mating, ...parts]) => [mating, parts] as const);
    return { placed, adapters: Object.fromEntries(adapters) };
  }
  return null;
}

/** The names of parts in a change. */
export function partsIn({ placed, adapters }: AskedChange): string[] {
  return [...placed.flatMap(({ part }) => part ?? []), ...Object.values(adapters).flat()];
}

/** The vehicle with the change on it. */
export function changed(
  { placed, adapters }: AskedChange,
  present: Arrangement,
  { parts, vehicle, faults }: { parts: AskedParts; vehicle: Vehicle; faults: Faults },
): Arrangement {
  const seats = new Map<string, Seats>();
  for (const { at, position: id, hand, part } of placed) {
    const position = positionOf(vehicle, id, at, faults);
    const found = seatOf(parts, part ?? 'none', at);
    if (position === null || found === null) continue;
    const seat: Seat = { ...found, origin: 'chosen' };
    const spans = seat.occupant.is === 'part' ? spansOf(parts, seat.occupant.part, id) : [id];
    for (const place of spans) seatIn(seats, vehicle, { place, hand, seat }, present);
  }
  const said = saidAdapters(parts, vehicle, adapters, faults);
  const chosen = [...said].map(([mating, row]): [string, Adapters] => {
    return [mating, { ...row, origin: 'chosen' }];
  });
  return overlay(present, seats, new Map(chosen));
}

function spansOf({ catalogue }: AskedParts, part: string, position: string): readonly string[] {
  const spans = catalogue.parts.get(part)?.spans ?? null;
  return spans?.includes(position) ? spans : [position];
}

interface Seated {
  readonly place: string;
  readonly hand: Hand | null;
  readonly seat: Seat;
}

function seatIn(
  seats: Map<string, Seats>,
  { layout }: Vehicle,
  { place, hand, seat }: Seated,
  present: Arrangement,
): void {
  const position = layout.positions.get(place);
  if (position === undefined) return;
  if (!position.isHanded) {
    seats.set(place, { hands: false, seat });
    return;
  }
  const at = { seats, adapters: new Map<string, Adapters>() };
  const [left, right] = handsOf(position).map((one) => {
    if (hand === null || one === hand) return seat;
    return seatAt(at, place, one) ?? seatAt(present, place, one) ?? seat;
  });
  if (left === undefined || right === undefined) throw new Error('a handed position has two hands');
  seats.set(place, { hands: true, left, right });
}
