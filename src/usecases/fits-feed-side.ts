/**
 * What fits what in one edition, part by part, as a feed tells it: pair by pair, or in ranges of
 * vehicles that were built one after the other.
 */

import type { Part, Position, Vehicle } from '../domain/catalogue/catalogue.js';
import { OUTCOMES } from '../domain/check/state.js';
import { type FitsIndex, fitsIndex } from '../domain/fits/fits-index.js';
import type { Outcome } from './answer.js';
import { verdictAlone } from './fits-entries.js';
import type { FeedForm, FitsPair, FitsRange } from './fits-feed.js';
import type { Edition } from './library.js';
import { compareKeys } from './listing.js';
import { vehicleDirectory } from './vehicle-directory.js';
import { vehicleLabel } from './vehicle-label.js';

export interface Wanted {
  readonly role: string | null;
  readonly alone: readonly Outcome[] | null;
  readonly parts: readonly string[] | null;
  readonly vehicles: readonly string[] | null;
  readonly form: FeedForm;
  readonly lang: string;
}

/** A line of one part, and the key that it is in order by. */
export interface Row {
  readonly key: readonly string[];
  readonly line: FitsPair | FitsRange;
}

/** What comes of a part at a place of one vehicle. */
interface Met {
  readonly vehicle: Vehicle;
  readonly position: Position;
  readonly alone: Outcome;
}

/** A list without lines, so that others have their turn. */
const TURN: readonly never[] = [];

export class FeedSide {
  readonly #wanted: Wanted;
  readonly #outcomes: ReadonlySet<Outcome>;
  readonly #index: FitsIndex;
  readonly #parts: ReadonlyMap<string, Part>;
  readonly #vehicles: ReadonlySet<Vehicle>;
  /** The vehicles that are wanted of those that nothing tells apart, worked out once. */
  readonly #among = new Map<readonly Vehicle[], readonly Vehicle[]>();
  /** All that bear one name, whether or not they have a place for a part. */
  readonly #namesakes = new Map<string, Vehicle[]>();

  constructor({ catalogue, index }: Edition, wanted: Wanted) {
    const { role, parts, vehicles, form } = wanted;
    this.#wanted = wanted;
    this.#outcomes = new Set(wanted.alone ?? OUTCOMES);
    this.#index = fitsIndex(catalogue, index);
    const named = parts?.flatMap((id) => catalogue.parts.get(id) ?? []);
    const asked = [...(named ?? catalogue.parts.values())].filter(
      ({ roles }) => role === null || roles.includes(role),
    );
    this.#parts = new Map(asked.map((part) => [part.id, part]));
    const current = vehicleDirectory(catalogue).current.map(({ vehicle }) => vehicle);
    const ids = vehicles === null ? null : new Set(vehicles);
    this.#vehicles = new Set(current.filter(({ id }) => ids?.has(id) ?? true));
    if (form === 'pairs') return;
    for (const vehicle of current) addTo(this.#namesakes, nameOf(vehicle), vehicle);
  }

  /** Ids of the parts that are wanted. */
  get parts(): Iterable<string> {
    return this.#parts.keys();
  }

  /** The lines of a part in order; none where this edition has no such part. */
  *rowsOf(id: string): Generator<readonly never[], readonly Row[]> {
    const part = this.#parts.get(id);
    if (part === undefined) return [];
    const met = yield* this.#met(part);
    const rows =
      this.#wanted.form === 'pairs'
        ? met.map((one) => pairOf(id, one))
        : rangesOf(id, met, this.#namesakes, this.#wanted.lang);
    return rows
      .filter(({ line }) => this.#outcomes.has(line.alone))
      .sort((a, b) => compareKeys(a.key, b.key));
  }

  /** What is not wanted is not even gone through, but where others are compared with it. */
  *#met(part: Part): Generator<readonly never[], Met[]> {
    const isAll = this.#wanted.form === 'ranges';
    const found: Met[] = [];
    let judged = this.#index.judged;
    const isWanted = (alike: readonly Vehicle[]) => this.#wantedOf(alike).length > 0;
    for (const { position, vehicles, alone } of this.#index.everywhere(part, isWanted)) {
      if (isAll || this.#outcomes.has(alone)) {
        for (const vehicle of this.#wantedOf(vehicles)) found.push({ vehicle, position, alone });
      }
      // To judge one may take as long as thousands that are known.
      if (this.#index.judged === judged) continue;
      yield TURN;
      judged = this.#index.judged;
    }
    return found;
  }

  #wantedOf(alike: readonly Vehicle[]): readonly Vehicle[] {
    const known = this.#among.get(alike);
    if (known !== undefined) return known;
    const wanted = alike.filter((vehicle) => this.#vehicles.has(vehicle));
    this.#among.set(alike, wanted);
    return wanted;
  }
}

function pairOf(part: string, { vehicle, position, alone }: Met): Row {
  const verdict = verdictAlone(alone);
  return {
    key: [vehicle.id, position.id],
    line: { part, vehicle: vehicle.id, position: position.id, alone, verdict },
  };
}

function nameOf({ make, model, variant }: Vehicle): string {
  return JSON.stringify([make, model, variant]);
}

function addTo<One>(lists: Map<string, One[]>, key: string, one: One): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [one]);
  else list.push(one);
}

type Built = readonly [string | null, string | null];

function rangesOf(
  part: string,
  met: readonly Met[],
  namesakes: ReadonlyMap<string, readonly Vehicle[]>,
  lang: string,
): Row[] {
  const groups = new Map<string, Met[]>();
  for (const one of met) {
    addTo(groups, JSON.stringify([nameOf(one.vehicle), one.position.id]), one);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group as [Met];
    const outcomes = new Map(group.map(({ vehicle, alone }) => [vehicle, alone]));
    const others = namesakes.get(nameOf(first.vehicle)) ?? [];
    return OUTCOMES.flatMap((alone) => {
      const alike = group.filter((one) => one.alone === alone).map(({ vehicle }) => vehicle);
      return spansOf(alike).map(({ built, vehicles }) => {
        const mixed = others.some(
          (other) => outcomes.get(other) !== alone && meets(other.built, built),
        );
        const said = { ...first.vehicle, built };
        return rangeOf(part, said, { position: first.position, alone, vehicles, mixed, lang });
      });
    });
  });
}

interface Told extends Pick<FitsRange, 'alone' | 'vehicles' | 'mixed'> {
  readonly position: Position;
  readonly lang: string;
}

function rangeOf(part: string, vehicle: Vehicle, { position, lang, ...told }: Told): Row {
  const { make, model, variant, built } = vehicle;
  const { alone, vehicles, mixed } = told;
  const [from, until] = built;
  const verdict = verdictAlone(alone);
  return {
    key: [make, model, variant ?? '', from ?? '', until ?? '', position.id, alone],
    line: {
      part,
      make,
      model,
      variant,
      built: [from, until],
      label: vehicleLabel(vehicle, lang),
      position: position.id,
      alone,
      verdict,
      vehicles,
      mixed,
    },
  };
}

interface Span {
  readonly built: Built;
  readonly vehicles: number;
}

/**
 * Spans of building that overlap, or of which one begins in the month after the other, are one.
 * What has no first month is by itself: nobody knows beside which.
 */
function spansOf(vehicles: readonly Vehicle[]): Span[] {
  const inOrder = vehicles
    .map(({ built }) => built)
    .sort((a, b) => compareKeys([a[0] ?? '', a[1] ?? ''], [b[0] ?? '', b[1] ?? '']));
  const spans: Span[] = [];
  for (const built of inOrder) {
    const last = spans.at(-1);
    const joined = last === undefined ? null : joinedWith(last.built, built);
    if (last === undefined || joined === null) spans.push({ built, vehicles: 1 });
    else spans[spans.length - 1] = { built: joined, vehicles: last.vehicles + 1 };
  }
  return spans;
}

/** Of two in order; null where they are apart. */
function joinedWith([from, until]: Built, [next, end]: Built): Built | null {
  if (from === null || next === null) return from === next && until === end ? [from, until] : null;
  if (until === null) return [from, null];
  if (monthNumber(next) > monthNumber(until) + 1) return null;
  return [from, end === null || end > until ? end : until];
}

function monthNumber(month: string): number {
  const [year, number] = month.split('-');
  return Number(year) * 12 + Number(number);
}

/** What is not known may be any month. */
function meets([from, until]: Built, [first, last]: Built): boolean {
  const begins = (month: string | null) => month ?? '';
  const ends = (month: string | null) => month ?? '9999-12';
  return begins(from) <= ends(last) && begins(first) <= ends(until);
}
