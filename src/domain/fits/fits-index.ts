/**
 * Which parts fit which vehicles as they are, over a whole catalogue. Parts that are alike and
 * vehicles that are alike around a place are judged once, and what the compiled index says cannot
 * meet is not judged at all.
 */

import type { Catalogue, Layout, Mating, Part, Position, Vehicle } from '../catalogue/catalogue.js';
import type { Hand } from '../check/reading.js';
import type { Outcome } from '../check/state.js';
import type { CompiledIndex } from '../index/compiled-index.js';
import { asBuilt, handsOf, seatAt } from '../judge/configuration.js';
import { builtPairs, pairKey } from '../judge/evidence.js';
import { type Companion, type FitQuestion, judgeFit, placesFor } from '../judge/fit.js';
import { Likeness } from './likeness.js';
import { Surroundings } from './surroundings.js';

/** A place of a vehicle that takes a part, and what comes of it with nothing else changed. */
export interface FitsAt {
  readonly position: Position;
  readonly alone: Outcome;
}

/** Vehicles on which every part comes to the same at one place. */
interface AlikeAt {
  readonly sample: Vehicle;
  readonly vehicles: readonly Vehicle[];
  readonly known: KnownOutcomes;
}

/** By the number of those parts that are alike. */
type KnownOutcomes = Map<number, Outcome>;

/** A vehicle that a part is put into. */
export interface Recipient {
  /** With the articles that are fitted beside it. */
  readonly catalogue: Catalogue;
  readonly vehicle: Vehicle;
  /** What is fitted beside it, by position. */
  readonly beside: ReadonlyMap<string, readonly Companion[]>;
}

const NOTHING_BESIDE: Recipient['beside'] = new Map();

export class FitsIndex {
  readonly #catalogue: Catalogue;
  readonly #index: CompiledIndex;
  readonly likeness: Likeness;
  readonly #byLayout = new Map<Layout, readonly Vehicle[]>();
  readonly #surroundings = new Map<Layout, Surroundings>();
  readonly #alike = new Map<Layout, Map<string, ReadonlyMap<Vehicle, AlikeAt>>>();
  readonly #stated: ReadonlySet<string>;
  /** How many configurations have been judged: what tests count. */
  judged = 0;

  constructor(catalogue: Catalogue, index: CompiledIndex) {
    this.#catalogue = catalogue;
    this.#index = index;
    this.likeness = new Likeness(catalogue);
    this.#stated = new Set(
      catalogue.statements.flatMap(({ part, with: beside }) => [part, ...beside.values()]),
    );
    for (const vehicle of catalogue.vehicles.values()) {
      this.#byLayout.set(vehicle.layout, [...(this.#byLayout.get(vehicle.layout) ?? []), vehicle]);
    }
  }

  /** The places of a vehicle that take a part, in the order of its layout. */
  at(part: Part, vehicle: Vehicle): FitsAt[] {
    return placesFor(part, vehicle).map((position) => {
      return { position, alone: this.aloneAt(part, vehicle, position) };
    });
  }

  /** What comes of a part at a place of a vehicle, as `judgeFit` has it. */
  aloneAt(part: Part, vehicle: Vehicle, position: Position): Outcome {
    const alike = this.#alikeAt(vehicle, position);
    const like = this.likeness.of(part);
    let outcome = alike.known.get(like);
    if (outcome === undefined) {
      const recipient = { vehicle: alike.sample, beside: NOTHING_BESIDE };
      outcome = this.#decide(part, position, { ...recipient, catalogue: this.#catalogue });
      alike.known.set(like, outcome);
    }
    return outcome;
  }

  /**
   * The same for a vehicle of which a question says more than its record, or with parts beside:
   * what is found is kept for this one question.
   */
  askedOf(recipient: Recipient): (part: Part) => FitsAt[] {
    const { vehicle, beside } = recipient;
    const known = new Map<Position, KnownOutcomes>();
    const besides = new Set([...beside.values()].flat().map(({ part }) => part));
    const aloneAt = (part: Part, position: Position): Outcome => {
      // Two pieces of one article are alike as no others are.
      if (besides.has(part)) return this.#decide(part, position, recipient);
      const here = known.get(position) ?? new Map<number, Outcome>();
      known.set(position, here);
      const like = this.likeness.of(part);
      const outcome = here.get(like) ?? this.#decide(part, position, recipient);
      here.set(like, outcome);
      return outcome;
    };
    return (part) =>
      placesFor(part, vehicle).map((position) => {
        return { position, alone: aloneAt(part, position) };
      });
  }

  #alikeAt(vehicle: Vehicle, { id }: Position): AlikeAt {
    const { layout } = vehicle;
    const places = this.#alike.get(layout) ?? new Map<string, ReadonlyMap<Vehicle, AlikeAt>>();
    this.#alike.set(layout, places);
    let found = places.get(id);
    if (found === undefined) {
      found = this.#sorted(layout, id);
      places.set(id, found);
    }
    const alike = found.get(vehicle);
    if (alike === undefined) throw new RangeError(`"${vehicle.id}" is not of the catalogue`);
    return alike;
  }

  /** All vehicles of a layout, sorted by their surroundings of a place. */
  #sorted(layout: Layout, position: string): Map<Vehicle, AlikeAt> {
    const surroundings =
      this.#surroundings.get(layout) ?? new Surroundings(this.#catalogue, layout);
    this.#surroundings.set(layout, surroundings);
    const byKey = new Map<string, { sample: Vehicle; vehicles: Vehicle[] }>();
    for (const vehicle of this.#byLayout.get(layout) ?? []) {
      const key = surroundings.keyOf(vehicle, position);
      const known = byKey.get(key);
      if (known === undefined) byKey.set(key, { sample: vehicle, vehicles: [vehicle] });
      else known.vehicles.push(vehicle);
    }
    const found = new Map<Vehicle, AlikeAt>();
    for (const { sample, vehicles } of byKey.values()) {
      const alike: AlikeAt = { sample, vehicles, known: new Map() };
      for (const vehicle of vehicles) found.set(vehicle, alike);
    }
    return found;
  }

  #decide(part: Part, position: Position, recipient: Recipient): Outcome {
    if (this.#cannotMeet(part, position, recipient)) return 'fails';
    const { catalogue, vehicle, beside } = recipient;
    this.judged += 1;
    const question: FitQuestion = {
      vehicle,
      part,
      position: position.id,
      with: beside,
      said: { seats: new Map(), adapters: new Map() },
      torque: null,
      use: null,
      ignorePresent: false,
    };
    return judgeFit(catalogue, question).alone;
  }

  /**
   * Whether a joint of the place fails by the recorded faces alone, on a hand where the part is
   * put in anew. What the works have built or somebody states may say otherwise, so it is asked.
   */
  #cannotMeet(part: Part, position: Position, { vehicle, beside }: Recipient): boolean {
    if (part.spans !== null || this.#stated.has(part.id)) return false;
    const besides = [...beside.values()].flat();
    if (besides.some((one) => one.part.spans !== null)) return false;
    const built = asBuilt(vehicle);
    const hands = handsOf(position).filter((hand) => part.hand === null || hand === part.hand);
    const isThere = hands.some((hand) => {
      const seat = seatAt(built, position.id, hand);
      return seat?.option !== undefined || isPart(seat?.occupant, part.id);
    });
    if (isThere) return false;
    return [...vehicle.layout.matings.values()]
      .filter(({ ends }) => ends.every((end) => !beside.has(end.position)))
      .some((mating) => this.#failsIn(mating, part, vehicle, position, hands));
  }

  #failsIn(
    mating: Mating,
    part: Part,
    vehicle: Vehicle,
    position: Position,
    hands: readonly (Hand | null)[],
  ): boolean {
    const ends = endsAt(mating, position.id);
    if (ends === null) return false;
    const [own, other] = ends;
    if ((vehicle.adapters.get(mating.id) ?? []).length > 0) return false;
    const from = this.#index.classOf(part.id, own.interface);
    if (from === null) return false;
    const built = asBuilt(vehicle);
    const beside = vehicle.layout.positions.get(other.position);
    return (beside === undefined ? [] : handsOf(beside)).some((hand) => {
      const isMet = hands.some((one) => one === null || hand === null || one === hand);
      const occupant = seatAt(built, other.position, hand)?.occupant;
      if (!isMet || occupant?.is !== 'part' || occupant.part === part.id) return false;
      const there = this.#catalogue.parts.get(occupant.part);
      if (there === undefined || there.spans !== null) return false;
      const to = this.#index.classOf(there.id, other.interface);
      if (to === null || this.#index.meets(from, to) !== 'fails') return false;
      const x = { part: part.id, interface: own.interface };
      const y = { part: there.id, interface: other.interface };
      const pairs = builtPairs(this.#catalogue);
      return !pairs.has(pairKey(x, y, []));
    });
  }
}

/** The end at a place, and the other one; a place that meets itself is left to the judge. */
function endsAt({ ends: [a, b] }: Mating, position: string) {
  if (a.position === position && b.position !== position) return [a, b] as const;
  if (b.position === position && a.position !== position) return [b, a] as const;
  return null;
}

function isPart(
  occupant: { readonly is: string; readonly part?: string } | undefined,
  id: string,
): boolean {
  return occupant?.is === 'part' && occupant.part === id;
}

const INDEXES = new WeakMap<Catalogue, FitsIndex>();

/** That of a catalogue, which is made when it is first asked for. */
export function fitsIndex(catalogue: Catalogue, index: CompiledIndex): FitsIndex {
  const known = INDEXES.get(catalogue);
  if (known !== undefined) return known;
  const made = new FitsIndex(catalogue, index);
  INDEXES.set(catalogue, made);
  return made;
}
