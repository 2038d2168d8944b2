/**
 * Which parts fit which vehicles as they are, over a whole catalogue. Parts that are alike and
 * vehicles that are alike around a place are judged once, and what the compiled index says cannot
 * meet is not judged at all.
 */

import type { Catalogue, Layout, Part, Position, Vehicle } from '../catalogue/catalogue.js';
import type { Outcome } from '../check/state.js';
import type { CompiledIndex } from '../index/compiled-index.js';
import { builtPairs, pairKey } from '../judge/evidence.js';
import { type FitQuestion, judgeFit, placesFor } from '../judge/fit.js';
import { type Around, aroundOf, type Recipient } from './around.js';
import { Likeness } from './likeness.js';
import { Surroundings } from './surroundings.js';

/** A place of a vehicle that takes a part, and what comes of it with nothing else changed. */
export interface FitsAt {
  readonly position: Position;
  readonly alone: Outcome;
}

/** What comes of a part at one place of vehicles that nothing tells apart there. */
export interface FitsOn extends FitsAt {
  readonly vehicles: readonly Vehicle[];
}

/** Vehicles on which every part comes to the same at one place. */
interface AlikeAt {
  readonly sample: Vehicle;
  readonly vehicles: Vehicle[];
  /** Null until somebody asks. */
  around: Around | null;
  readonly known: KnownOutcomes;
}

/** The vehicles of a layout, as one of its places sorts them. */
interface SortedAt {
  readonly kinds: readonly AlikeAt[];
  readonly of: ReadonlyMap<Vehicle, AlikeAt>;
}

/** By the number of those parts that are alike. */
type KnownOutcomes = Map<number, Outcome>;

const NOTHING_BESIDE: Recipient['beside'] = new Map();

export class FitsIndex {
  readonly #catalogue: Catalogue;
  readonly #index: CompiledIndex;
  readonly likeness: Likeness;
  readonly #byLayout = new Map<Layout, readonly Vehicle[]>();
  readonly #surroundings = new Map<Layout, Surroundings>();
  readonly #alike = new Map<Layout, Map<string, SortedAt>>();
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
    return this.#aloneOf(part, position, this.#alikeAt(vehicle, position));
  }

  /**
   * What comes of a part at every place that takes it, in no order that means anything: each is
   * found out when it is asked for, and vehicles of which none is wanted are passed over.
   */
  *everywhere(part: Part, isWanted: (vehicles: readonly Vehicle[]) => boolean): Generator<FitsOn> {
    for (const [layout, [sample]] of this.#byLayout) {
      // Which places take it, the layout says alone.
      const places = sample === undefined ? [] : placesFor(part, sample);
      for (const position of places) {
        for (const alike of this.#sortedAt(layout, position).kinds) {
          const { vehicles } = alike;
          if (!isWanted(vehicles)) continue;
          yield { position, vehicles, alone: this.#aloneOf(part, position, alike) };
        }
      }
    }
  }

  #aloneOf(part: Part, position: Position, alike: AlikeAt): Outcome {
    const like = this.likeness.of(part);
    let outcome = alike.known.get(like);
    if (outcome === undefined) {
      const { sample: vehicle } = alike;
      const recipient = { catalogue: this.#catalogue, vehicle, beside: NOTHING_BESIDE };
      alike.around ??= aroundOf(this.#index, recipient, position);
      outcome = this.#decide(part, position, recipient, alike.around);
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
    const places = new Map<Position, { readonly around: Around; readonly known: KnownOutcomes }>();
    const besides = new Set([...beside.values()].flat().map(({ part }) => part));
    const aloneAt = (part: Part, position: Position): Outcome => {
      const here = places.get(position) ?? {
        around: aroundOf(this.#index, recipient, position),
        known: new Map<number, Outcome>(),
      };
      places.set(position, here);
      const decide = () => this.#decide(part, position, recipient, here.around);
      // Two pieces of one article are alike as no others are.
      if (besides.has(part)) return decide();
      const like = this.likeness.of(part);
      const outcome = here.known.get(like) ?? decide();
      here.known.set(like, outcome);
      return outcome;
    };
    return (part) =>
      placesFor(part, vehicle).map((position) => {
        return { position, alone: aloneAt(part, position) };
      });
  }

  #alikeAt(vehicle: Vehicle, position: Position): AlikeAt {
    const alike = this.#sortedAt(vehicle.layout, position).of.get(vehicle);
    if (alike === undefined) throw new RangeError(`"${vehicle.id}" is not of the catalogue`);
    return alike;
  }

  #sortedAt(layout: Layout, position: Position): SortedAt {
    const { id } = position;
    const places = this.#alike.get(layout) ?? new Map<string, SortedAt>();
    this.#alike.set(layout, places);
    const found = places.get(id) ?? this.#sorted(layout, position);
    places.set(id, found);
    return found;
  }

  /** All vehicles of a layout, sorted by their surroundings of a place. */
  #sorted(layout: Layout, position: Position): SortedAt {
    const surroundings =
      this.#surroundings.get(layout) ?? new Surroundings(this.#catalogue, layout);
    this.#surroundings.set(layout, surroundings);
    const byKey = new Map<string, AlikeAt>();
    const of = new Map<Vehicle, AlikeAt>();
    for (const vehicle of this.#byLayout.get(layout) ?? []) {
      const key = surroundings.keyOf(vehicle, position.id);
      const first: AlikeAt = { sample: vehicle, vehicles: [], around: null, known: new Map() };
      const alike = byKey.get(key) ?? first;
      alike.vehicles.push(vehicle);
      byKey.set(key, alike);
      of.set(vehicle, alike);
    }
    return { kinds: [...byKey.values()], of };
  }

  #decide(part: Part, position: Position, recipient: Recipient, around: Around): Outcome {
    if (!this.#stated.has(part.id) && this.#cannotMeet(part, around)) return 'fails';
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
  #cannotMeet(part: Part, { seats, neighbours }: Around): boolean {
    if (part.spans !== null) return false;
    const own = seats.filter(({ hand }) => part.hand === null || hand === part.hand);
    if (own.some(({ option, article }) => option || article === part.id)) return false;
    return neighbours.some(({ hands, interface: face, article, other, to }) => {
      if (article === part.id || !own.some(({ hand }) => hands.has(hand))) return false;
      const from = this.#index.classOf(part.id, face);
      if (from === null || this.#index.meets(from, to) !== 'fails') return false;
      const x = { part: part.id, interface: face };
      const y = { part: article, interface: other };
      return !builtPairs(this.#catalogue).has(pairKey(x, y, []));
    });
  }
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
