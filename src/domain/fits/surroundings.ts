/**
 * What of a vehicle is read when something is put in at one of its places. Vehicles whose
 * surroundings of a place are written alike are judged alike there.
 *
 * A constraint is read when it speaks of the place, or of a place that is opened with it. What has
 * a choice to make serves all its constraints with one choice, so these are read too, and theirs.
 */

import type {
  Catalogue,
  Layout,
  Occupant,
  Part,
  Vehicle,
  WorksOption,
} from '../catalogue/catalogue.js';
import { type Check, type Condition, termsWithin, testsIn } from '../check/check.js';
import { leavesOf } from '../check/evaluator.js';
import type { Reference } from '../check/term.js';
import { asBuilt, handsOf, inTheWayOf, type Seat, seatAt } from '../judge/configuration.js';
import { hasChoice } from '../judge/plan.js';

export class Surroundings {
  readonly #catalogue: Catalogue;
  readonly #layout: Layout;
  /** By place: those that some constraint reads together with it. */
  readonly #beside: ReadonlyMap<string, ReadonlySet<string>>;
  /** The facts that constraints of the layout read. */
  readonly #facts: readonly string[];
  /** Ids of statements by the vehicles that they name. */
  readonly #stated = new Map<string, string[]>();
  readonly #read = new Map<Vehicle, VehicleRead>();

  constructor(catalogue: Catalogue, layout: Layout) {
    this.#catalogue = catalogue;
    this.#layout = layout;
    const scopes = scopesOf(catalogue, layout);
    const beside = new Map([...layout.positions.keys()].map((id) => [id, new Set([id])]));
    for (const { positions } of scopes) {
      for (const one of positions) for (const other of positions) beside.get(one)?.add(other);
    }
    this.#beside = beside;
    for (const { id, vehicles } of catalogue.statements) {
      for (const one of vehicles) this.#stated.set(one, [...(this.#stated.get(one) ?? []), id]);
    }
    this.#facts = [...new Set(scopes.flatMap(({ facts }) => facts))].sort();
  }

  /** Equal only for vehicles of the layout on which a part at the place comes to the same. */
  keyOf(vehicle: Vehicle, position: string): string {
    const { seats, rest, choosing, spanning } = this.#readOf(vehicle);
    const reached = new Set(this.#beside.get(position));
    // What is added while the set is walked through is walked through too.
    for (const id of reached) {
      if (!choosing.has(id)) continue;
      for (const other of this.#beside.get(id) ?? []) reached.add(other);
    }
    const keys = [...seats].flatMap(([id, key]) => (reached.has(id) ? `${id} ${key}` : []));
    // What fills several places leaves all of them when it goes.
    const own = [...spanning].some((id) => reached.has(id)) ? vehicle.id : '';
    return [...keys, rest, own].join('\n');
  }

  #readOf(vehicle: Vehicle): VehicleRead {
    const known = this.#read.get(vehicle);
    if (known !== undefined) return known;
    const read = this.#reading(vehicle);
    this.#read.set(vehicle, read);
    return read;
  }

  #reading(vehicle: Vehicle): VehicleRead {
    const built = asBuilt(vehicle);
    const places = [...this.#layout.positions.values()];
    const seats = places.map((place): [string, string] => {
      const keys = handsOf(place).map((hand) => seatKey(seatAt(built, place.id, hand)));
      return [place.id, keys.join('/')];
    });
    const untold = places.flatMap((place) =>
      handsOf(place).map((hand) => seatAt(built, place.id, hand)?.option?.fact ?? ''),
    );
    const adapters = [...vehicle.adapters].map(([id, parts]) => `${id} ${parts.join('>')}`);
    const facts = this.#facts.map((id) => `${id}=${vehicle.facts.get(id) ?? '?'}`);
    const stated = this.#stated.get(vehicle.id) ?? [];
    const basis = facts.length === 0 ? '' : vehicle.evidence.basis;
    const rest = [adapters.sort(), facts, basis, [...new Set(untold)].sort(), stated];
    const has = (id: string, is: (part: Part) => boolean) =>
      articlesAt(vehicle, id).some((article) => {
        const part = this.#catalogue.parts.get(article);
        return part !== undefined && is(part);
      });
    return {
      seats: new Map(seats),
      rest: JSON.stringify(rest),
      choosing: new Set([
        ...places.flatMap(({ id }) => (has(id, hasChoice) ? [id] : [])),
        ...this.#besideChoosing(vehicle),
      ]),
      spanning: new Set(places.flatMap(({ id }) => (has(id, isSpanning) ? [id] : []))),
    };
  }

  /** The ends of matings in which something has a choice to make. */
  #besideChoosing(vehicle: Vehicle): string[] {
    return [...vehicle.adapters].flatMap(([mating, articles]) => {
      const parts = articles.flatMap((id) => this.#catalogue.parts.get(id) ?? []);
      return parts.some(hasChoice) ? endsOf(this.#layout, mating) : [];
    });
  }
}

function isSpanning({ spans }: Part): boolean {
  return spans !== null;
}

/** What the works fitted at a place, or may have. */
function articlesAt(vehicle: Vehicle, id: string): string[] {
  const fitted = vehicle.fitted.get(id);
  if (fitted === undefined) return [];
  const seats = fitted.hands ? [fitted.left, fitted.right] : [fitted.occupant];
  return seats
    .flatMap((one) => (one.is === 'option' ? [...one.by.values()] : [one]))
    .flatMap((one) => (one.is === 'part' ? [one.part] : []));
}

/** What is read of a vehicle, wherever something is put in. */
interface VehicleRead {
  /** What stands at each place, in the order of the layout. */
  readonly seats: ReadonlyMap<string, string>;
  /** What is not of one place. */
  readonly rest: string;
  /** The places at which something has a choice to make. */
  readonly choosing: ReadonlySet<string>;
  readonly spanning: ReadonlySet<string>;
}

function seatKey(seat: Seat | undefined): string {
  if (seat === undefined) return '';
  const { occupant, option } = seat;
  return option === undefined ? occupantKey(occupant) : optionKey(option);
}

function occupantKey(occupant: Occupant): string {
  return occupant.is === 'part' ? `= ${occupant.part}` : occupant.is;
}

function optionKey({ fact, by }: WorksOption): string {
  return `${fact}: ${[...by].map(([value, one]) => `${value} ${occupantKey(one)}`).join(', ')}`;
}

interface ReadTogether {
  readonly positions: readonly string[];
  readonly facts: readonly string[];
}

/** What each constraint of a layout reads. */
function scopesOf(catalogue: Catalogue, layout: Layout): ReadTogether[] {
  const matings = [...layout.matings.values()].map(({ ends }) => {
    return { positions: ends.map(({ position }) => position), facts: [] };
  });
  const checks = layout.checks.map((check) => readOf(layout, [check], []));
  const rules = (catalogue.rules.get(layout.id) ?? []).map(({ when, needs, excludes }) => {
    const conditions = [when, needs, excludes].filter((one) => one !== null);
    return readOf(layout, [], conditions);
  });
  return [...matings, ...checks, ...rules];
}

function readOf(
  layout: Layout,
  checks: readonly Check[],
  conditions: readonly Condition[],
): ReadTogether {
  const own = checks.flatMap(({ when }) => (when === null ? [] : [when]));
  const tests = [...own, ...conditions].flatMap(testsIn);
  const inside = tests.flatMap((one) => (one.test === 'check' ? [one.check] : []));
  const nested = inside.flatMap(({ when }) => (when === null ? [] : testsIn(when)));
  const references = [...checks, ...inside]
    .flatMap(termsWithin)
    .flatMap(leavesOf)
    .map(({ reference }) => reference);
  const named = [...tests, ...nested].flatMap((one) => {
    if (one.test === 'check') return [];
    if (one.test === 'adapter') return endsOf(layout, one.mating);
    return one.test === 'opened' ? openedWith(layout, one.position) : [one.position];
  });
  const positions = references.flatMap((one) => placesOf(layout, one));
  return {
    positions: [...new Set([...named, ...positions])],
    facts: references.flatMap((one) => (one.of === 'fact' ? [one.fact] : [])),
  };
}

function placesOf(layout: Layout, reference: Reference): string[] {
  if (reference.of === 'adapter') return endsOf(layout, reference.mating);
  return 'position' in reference ? [reference.position] : [];
}

function endsOf(layout: Layout, mating: string): string[] {
  return (layout.matings.get(mating)?.ends ?? []).map(({ position }) => position);
}

/** The place itself, and those that it stands in the way of. */
function openedWith(layout: Layout, position: string): string[] {
  const behindIt = [...layout.positions.keys()].filter((id) =>
    inTheWayOf(layout, [id]).has(position),
  );
  return [position, ...behindIt];
}
