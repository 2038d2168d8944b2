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
import { namesOf } from '../domain/judge/worked-part.js';
import type { Action } from '../domain/kit/basket.js';
import type { AskedParts } from './asked-parts.js';
import type { Faults } from './faults.js';
import { type FittedInput, positionOf, saidAdapters, seatOf } from './question.js';
import { routeOfKey } from './route-key.js';

/** A line of a kit, as far as it changes something. */
export interface LineInput {
  /** `lot`, `extra` and `open` change nothing. */
  readonly action: Action;
  readonly position: string | null;
  readonly mating: string | null;
  readonly hand: Hand | null;
  readonly part: string | null;
  readonly work: string | null;
  /** `present` for a part that is there already and only worked on. */
  readonly source: string | null;
}

type LineField = keyof LineInput;

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
export function changeOfLines(
  lines: readonly LineInput[],
  fitted: Readonly<Record<string, FittedInput>>,
  faults: Faults,
): AskedChange {
  const placed: Placed[] = [];
  const adapters: Record<string, string[]> = {};
  const isUsed = new Set<number>();
  for (const [index, line] of lines.entries()) {
    const { action, position, mating, part } = line;
    const at = `lines.${index}`;
    const needs = missingIn(line);
    if (needs !== null) faults.add(at, 'incomplete-line', { action, needs });
    else if (action === 'adapter' && mating !== null && part !== null) {
      adapters[mating] = [...(adapters[mating] ?? []), part];
    } else if (action === 'remove' && mating !== null) adapters[mating] ??= [];
    else if (action === 'add' && position !== null && part !== null) {
      for (const { hand, works } of worksOn(line, lines)) {
        for (const each of works) isUsed.add(each);
        const named = works.map((each) => lines[each]?.work ?? '');
        placed.push({ at, position, hand, part: [partOf(line, hand, fitted), ...named].join('+') });
      }
    }
  }
  for (const [index, { action, position, work }] of lines.entries()) {
    if (action !== 'work' || position === null || work === null || isUsed.has(index)) continue;
    faults.add(`lines.${index}`, 'work-of-no-line', { work });
  }
  refuseTwice(placed, faults);
  return { placed: [...emptied(lines, placed), ...placed], adapters };
}

/** What a line of its action cannot do without; null where it has all of it. */
function missingIn({ action, position, mating, part, work }: LineInput): LineField | null {
  switch (action) {
    case 'add':
      if (position === null) return 'position';
      return part === null ? 'part' : null;
    case 'adapter':
      if (mating === null) return 'mating';
      return part === null ? 'part' : null;
    case 'work':
      if (position === null) return 'position';
      return work === null ? 'work' : null;
    case 'remove':
      return position === null && mating === null ? 'position' : null;
    case 'lot':
    case 'extra':
    case 'open':
      return null;
  }
}

interface WorksOfHand {
  readonly hand: Hand | null;
  /** Places of their lines. */
  readonly works: readonly number[];
}

/** What is done on the part of a line; left and right apart where that differs. */
function worksOn({ position, hand, part }: LineInput, lines: readonly LineInput[]): WorksOfHand[] {
  const works = [...lines.entries()].filter(([, one]) => {
    const isOfPart = one.part === null || one.part === part;
    return one.action === 'work' && one.position === position && isOfPart;
  });
  const isApart = hand === null && works.some(([, one]) => one.hand !== null);
  return (isApart ? (['left', 'right'] as const) : [hand]).map((each) => {
    const own = works.filter(([, one]) => one.hand === null || one.hand === each);
    return { hand: each, works: own.map(([index]) => index) };
  });
}

function refuseTwice(placed: readonly Placed[], faults: Faults): void {
  for (const [index, one] of placed.entries()) {
    const { at, position } = one;
    if (placed.slice(0, index).some((other) => isAtOdds(one, other))) {
      faults.add(at, 'filled-twice', { position });
    }
  }
}

function isAtOdds(one: Placed, other: Placed): boolean {
  const isElsewhere = one.position !== other.position;
  if (isElsewhere || (one.hand !== null && other.hand !== null && one.hand !== other.hand)) {
    return false;
  }
  return one.part !== other.part;
}

/** The part of a line; one that stays is what the question says of it, works on it included. */
function partOf(
  { position, part, source }: LineInput,
  hand: Hand | null,
  fitted: Readonly<Record<string, FittedInput>>,
) {
  const said = source === 'present' && position !== null ? fitted[position] : undefined;
  const name = typeof said === 'object' ? said[hand ?? 'left'] : said;
  return name !== undefined && namesOf(name)[0] === part ? name : part;
}

/** What is taken out and not replaced. */
function emptied(lines: readonly LineInput[], placed: readonly Placed[]): Placed[] {
  const filled = new Set(placed.map(({ position, hand }) => `${position} ${hand ?? ''}`));
  return lines.flatMap(({ action, position, hand }, index) => {
    if (action !== 'remove' || position === null) return [];
    const isFilled = filled.has(`${position} ${hand ?? ''}`) || filled.has(`${position} `);
    if (isFilled) return [];
    return [{ at: `lines.${index}`, position, hand, part: null }];
  });
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
