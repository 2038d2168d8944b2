/**
 * What of a vehicle is read when something is put in at one of its places. Vehicles whose
 * surroundings of a place are written alike are judged alike there.
 *
 * A constraint is read when it speaks of the place, or of a place that is opened with it. What has
 * a choice to make serves all its constraints with one choice, so these are read too, and theirs.
 */

import type { Catalogue, Layout, Occupant, Vehicle, WorksOption } from '../catalogue/catalogue.js';
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

  constructor(catalogue: Catalogue, layout: Layout) {
    this.#catalogue = catalogue;
    this.#layout = layout;
    const scopes = scopesOf(catalogue, layout);
    const beside = new Map([...layout.positions.keys()].map((id) => [id, new Set([id])]));
    for (const { positions } of scopes) {
      for (const one of positions) for (const other of positions) beside.get(one)?.add(other);
    }
    this.#beside = beside;
    this.#facts = [...new Set(scopes.flatMap(({ facts }) => facts))].sort();
  }

  /** Equal only for vehicles of the layout on which a part at the place comes to the same. */
  keyOf(vehicle: Vehicle, position: string): string {
    const built = asBuilt(vehicle);
    const positions = this.#reachedFrom(vehicle, position);
    const seats = positions.map((id) => {
      const place = this.#layout.positions.get(id);
      const hands = place === undefined ? [null] : handsOf(place);
      return `${id} ${hands.map((hand) => seatKey(seatAt(built, id, hand))).join('/')}`;
    });
    const adapters = [...vehicle.adapters].map(([id, parts]) => `${id} ${parts.join('>')}`);
    const facts = this.#facts.map((id) => `${id}=${vehicle.facts.get(id) ?? '?'}`);
    const untold = [...this.#layout.positions.values()].flatMap((place) =>
      handsOf(place).map((hand) => seatAt(built, place.id, hand)?.option?.fact ?? ''),
    );
    const stated = this.#catalogue.statements.filter(({ vehicles }) =>
      vehicles.includes(vehicle.id),
    );
    return JSON.stringify([
      seats,
      adapters.sort(),
      facts,
      facts.length === 0 ? '' : vehicle.evidence.basis,
      [...new Set(untold)].sort(),
      stated.map(({ id }) => id),
      this.#spans(positions, vehicle) ? vehicle.id : '',
    ]);
  }

  #reachedFrom(vehicle: Vehicle, position: string): string[] {
    const reached = new Set(this.#beside.get(position));
    // What is added while the set is walked through is walked through too.
    for (const id of reached) {
      if (!this.#isChoosing(vehicle, id)) continue;
      for (const other of this.#beside.get(id) ?? []) reached.add(other);
    }
    return [...this.#layout.positions.keys()].filter((id) => reached.has(id));
  }

  /** Whether something in a place, or in a mating of it, has a choice to make. */
  #isChoosing(vehicle: Vehicle, id: string): boolean {
    const between = [...this.#layout.matings.values()].flatMap((mating) =>
      mating.ends.some(({ position }) => position === id)
        ? (vehicle.adapters.get(mating.id) ?? [])
        : [],
    );
    return [...this.#articlesAt(vehicle, id), ...between].some((article) => {
      const part = this.#catalogue.parts.get(article);
      return part !== undefined && hasChoice(part);
    });
  }

  /** What fills several places leaves all of them when it goes. */
  #spans(positions: readonly string[], vehicle: Vehicle): boolean {
    return positions.some((id) =>
      this.#articlesAt(vehicle, id).some(
        (article) => (this.#catalogue.parts.get(article)?.spans ?? null) !== null,
      ),
    );
  }

  #articlesAt(vehicle: Vehicle, id: string): string[] {
    const fitted = vehicle.fitted.get(id);
    if (fitted === undefined) return [];
    const seats = fitted.hands ? [fitted.left, fitted.right] : [fitted.occupant];
    return seats
      .flatMap((one) => (one.is === 'option' ? [...one.by.values()] : [one]))
      .flatMap((one) => (one.is === 'part' ? [one.part] : []));
  }
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
