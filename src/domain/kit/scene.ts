/**
 * A kit question as variables with values: one for each place of the vehicle, and one for each
 * mating that can take an adapter. A choice of values is a configuration, and a bill.
 */

import type { Catalogue, Position } from '../catalogue/catalogue.js';
import {
  type Adapters,
  type Arrangement,
  asBuilt,
  type Configuration,
  handsOf,
  inTheWayOf,
  overlay,
  type Seats,
  sameOccupant,
} from '../judge/configuration.js';
import { type AdapterCandidates, adapterCandidates } from './adapter-candidates.js';
import type { AdapterChange, SeatChange } from './basket.js';
import { candidatesOf, occupantOf, type PlaceCandidates, type SeatValue } from './candidates.js';
import type { KitQuestion } from './question.js';

const IN = 'in ';

export class Scene {
  readonly question: KitQuestion;
  /** With all articles that works would make; of statements, only those of this vehicle. */
  readonly catalogue: Catalogue;
  readonly present: Arrangement;
  /** Variables 0 … places.length - 1 are places in layout order; then come the matings. */
  readonly places: readonly PlaceCandidates[];
  readonly adapters: readonly AdapterCandidates[];
  readonly #variableOfPosition = new Map<string, number>();
  readonly #variableOfMating = new Map<string, number>();
  readonly #seatChanges: SeatChange[][][] = [];
  readonly #adapterChanges: (AdapterChange | null)[][] = [];

  /** @param alike a scene of the same vehicle as it stands, with the same works allowed. */
  constructor(question: KitQuestion, alike: Scene | null = null) {
    this.question = question;
    const { catalogue, present, places, adapters } = alike ?? stage(question);
    this.catalogue = catalogue;
    this.present = present;
    this.places = places;
    this.adapters = adapters;
    for (const [index, { position }] of this.places.entries()) {
      this.#variableOfPosition.set(position.id, index);
    }
    for (const [index, { mating }] of this.adapters.entries()) {
      this.#variableOfMating.set(mating.id, this.places.length + index);
    }
  }

  get variables(): number {
    return this.places.length + this.adapters.length;
  }

  sizeOf(variable: number): number {
    const place = this.places[variable];
    if (place !== undefined) return place.values.length;
    return this.adapters[variable - this.places.length]?.values.length ?? 0;
  }

  nameOf(variable: number): string {
    const place = this.places[variable];
    if (place !== undefined) return place.position.id;
    return this.adapters[variable - this.places.length]?.mating.id ?? '';
  }

  placeVariable(position: string): number {
    const variable = this.#variableOfPosition.get(position);
    if (variable === undefined) throw new Error(`no place ${position} in this layout`);
    return variable;
  }

  /** The variable of what sits in a mating; null where nothing can. */
  matingVariable(mating: string): number | null {
    return this.#variableOfMating.get(mating) ?? null;
  }

  /** A name that no other variable of the layout has: a mating may be called as a place is. */
  fullNameOf(variable: number): string {
    const name = this.nameOf(variable);
    return variable < this.places.length ? name : `${IN}${name}`;
  }

  variableNamed(fullName: string): number {
    const isMating = fullName.startsWith(IN);
    const variable = isMating
      ? this.#variableOfMating.get(fullName.slice(IN.length))
      : this.#variableOfPosition.get(fullName);
    if (variable === undefined) throw new Error(`no variable ${fullName}`);
    return variable;
  }

  /** What a value is, in words that tell it from every other; `now` for what is there already. */
  articlesOf(variable: number, value: number): string {
    if (value === 0) return 'now';
    if (variable >= this.places.length) return this.row(variable, value).join('>');
    const { seats, renewed } = this.seatValue(variable, value);
    const hands = seats.hands ? (['left', 'right'] as const) : [null];
    const words = hands.map((hand) => {
      const occupant = occupantOf(seats, hand);
      return occupant.is === 'part' ? occupant.part : occupant.is;
    });
    return [...words, ...renewed.map((hand) => (hand === null ? 'new' : `new ${hand}`))].join('/');
  }

  seatValue(variable: number, value: number): SeatValue {
    const found = this.places[variable]?.values[value];
    if (found === undefined) throw new RangeError(`place ${variable} has no value ${value}`);
    return found;
  }

  row(variable: number, value: number): readonly string[] {
    const found = this.adapters[variable - this.places.length]?.values[value];
    if (found === undefined) throw new RangeError(`mating ${variable} has no value ${value}`);
    return found;
  }

  /** The vehicle with some variables at these values and all others as they are now. */
  configuration(scope: readonly number[], values: readonly number[]): Configuration {
    const seats = new Map<string, Seats>();
    const adapters = new Map<string, Adapters>();
    const renewed: string[] = [];
    for (const [at, variable] of scope.entries()) {
      const value = values[at] ?? 0;
      if (value === 0) continue;
      const place = this.places[variable];
      if (place !== undefined) {
        const seat = this.seatValue(variable, value);
        seats.set(place.position.id, seat.seats);
        if (seat.renewed.length > 0) renewed.push(place.position.id);
        continue;
      }
      const { mating } = this.adapters[variable - this.places.length] ?? {};
      if (mating === undefined) throw new RangeError(`no variable ${variable}`);
      adapters.set(mating.id, { parts: this.row(variable, value), origin: 'chosen' });
    }
    const { vehicle, torque, use, ignorePresent, pairsOf } = this.question;
    return {
      catalogue: this.catalogue,
      pairsOf,
      vehicle,
      layout: vehicle.layout,
      present: this.present,
      judged: overlay(this.present, seats, adapters),
      torque,
      use,
      ignorePresent,
      renewed: new Set(renewed),
    };
  }

  /** What is changed at a place by one of its values, hand by hand; the same ones each time. */
  seatChanges(variable: number, value: number): readonly SeatChange[] {
    const own = this.#seatChanges[variable] ?? [];
    this.#seatChanges[variable] = own;
    own[value] ??= this.#makeSeatChanges(variable, value);
    return own[value];
  }

  #makeSeatChanges(variable: number, value: number): SeatChange[] {
    if (value === 0) return [];
    const { position } = this.places[variable] ?? {};
    if (position === undefined) return [];
    const { seats, renewed } = this.seatValue(variable, value);
    const now = this.seatValue(variable, 0).seats;
    return handsOf(position).flatMap((hand): SeatChange[] => {
      const change = {
        position,
        hand,
        pieces: hand === null ? position.count : Math.max(1, position.count / 2),
        now: occupantOf(now, hand),
        becomes: occupantOf(seats, hand),
      };
      const isSame = sameOccupant(change.now, change.becomes);
      return renewed.includes(hand) || !isSame ? [change] : [];
    });
  }

  /** The same one each time; null where nothing is changed. */
  adapterChange(variable: number, value: number): AdapterChange | null {
    const own = this.#adapterChanges[variable] ?? [];
    this.#adapterChanges[variable] = own;
    let change = own[value];
    if (change === undefined) {
      change = this.#makeAdapterChange(variable, value);
      own[value] = change;
    }
    return change;
  }

  #makeAdapterChange(variable: number, value: number): AdapterChange | null {
    const candidates = this.adapters[variable - this.places.length];
    if (candidates === undefined || value === 0) return null;
    const { mating } = candidates;
    const now = this.row(variable, 0);
    return { mating: mating.id, pieces: mating.quantity, now, becomes: this.row(variable, value) };
  }

  /** Nothing stands there as the vehicle is: nothing has to be taken out of the way. */
  isEmptyNow({ id }: Position): boolean {
    const { seats } = this.seatValue(this.placeVariable(id), 0);
    const hands = seats.hands ? (['left', 'right'] as const) : [null];
    return hands.every((hand) => occupantOf(seats, hand).is === 'empty');
  }

  /** The places that a change of these opens, themselves not among them; in layout order. */
  openedBy(changed: ReadonlySet<string>): Position[] {
    const { layout } = this.question.vehicle;
    const opened = inTheWayOf(layout, changed);
    const { positions } = layout;
    return [...positions.values()].filter(({ id }) => opened.has(id) && !changed.has(id));
  }
}

/** What could be where, whatever is wanted. */
function stage(
  question: KitQuestion,
): Pick<Scene, 'catalogue' | 'present' | 'places' | 'adapters'> {
  const { vehicle, said } = question;
  const present = overlay(asBuilt(vehicle), said.seats, said.adapters);
  const { catalogue, places } = candidatesOf(question, present);
  const statements = catalogue.statements.filter(({ vehicles }) => vehicles.includes(vehicle.id));
  const adapters = [...vehicle.layout.matings.values()].flatMap(
    (mating) => adapterCandidates(mating, places, question, present) ?? [],
  );
  return { catalogue: { ...catalogue, statements }, present, places, adapters };
}
