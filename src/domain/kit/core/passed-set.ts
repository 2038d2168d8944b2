/**
 * A set of changed places that has been given already, and is passed over from then on: without
 * that, a search would go through all dearer ways of changing the same places, of which there may
 * be very many.
 *
 * A result that changes other places leaves one place of the set as it is, or it changes more:
 * places outside the set. Then something would be worse if those were put back, for otherwise they
 * could be put back. So there is a relation that is worse with the values that the result has
 * inside, and 0 outside, and it reads an outside place that the result changes. These are all the
 * cases that there are. In each, one or two variables are limited in their values.
 *
 * What is no place may be put back with the places that it stands beside, or not. Either way
 * something has to be worse: that makes two borders, and each has its cases.
 */

import type { Limit } from './limits.js';
import { STATE } from './problem.js';
import type { Tables } from './tables.js';

/** A relation that reads variables outside. */
interface Across {
  readonly relation: number;
  readonly inside: readonly number[];
  readonly outside: readonly number[];
  /** Outside places: it is worse only where one of them has been changed and is put back. */
  readonly places: readonly Returning[];
}

interface Returning {
  readonly place: number;
  /** Whether all that the relation reads outside has value 0 once this place is put back. */
  readonly isAlone: boolean;
}

export class PassedSet {
  /** What the result that was given cost: others with the same cost are not passed over. */
  readonly cost: number;
  readonly borders: readonly Border[];

  constructor(tables: Tables, places: ReadonlySet<number>, cost: number) {
    this.cost = cost;
    const beside = placesBeside(tables, places);
    const ways = beside.size > 0 ? [new Map(), beside] : [beside];
    this.borders = ways.map((way) => new Border(tables, places, way));
  }
}

/** By variable that is no place: the places outside the set that it stands beside. */
type Beside = ReadonlyMap<number, ReadonlySet<number>>;

/** The relations between inside and outside, for one way of putting back. */
export class Border {
  readonly #tables: Tables;
  readonly #isInSet: readonly boolean[];
  readonly #isOutside: readonly boolean[];
  readonly #across: readonly Across[];
  readonly #values: Int32Array;

  /** `beside`: what goes back with outside places, and with which, though it is no place. */
  constructor(tables: Tables, places: ReadonlySet<number>, beside: Beside) {
    this.#tables = tables;
    const { variables } = tables;
    this.#isInSet = variables.map((_, variable) => places.has(variable));
    this.#isOutside = variables.map(({ isPlace }, variable) =>
      isPlace ? !places.has(variable) : beside.has(variable),
    );
    this.#across = tables.tables.flatMap(({ scope }, relation) => {
      const outside = scope.filter((variable) => this.#isOutside[variable]);
      if (outside.length === 0) return [];
      const inside = scope.filter((variable) => !outside.includes(variable));
      const changed = new Set(outside.flatMap((one) => [...(beside.get(one) ?? [one])]));
      const returning = [...changed].map((place) => ({
        place,
        isAlone: outside.every((one) => beside.get(one)?.has(place) ?? true),
      }));
      return [{ relation, inside, outside, places: returning }];
    });
    this.#values = new Int32Array(variables.length);
  }

  /** Whether the set may still come of what is decided. */
  isBelow(decided: Int32Array): boolean {
    for (let variable = 0; variable < decided.length; variable += 1) {
      const value = decided[variable] as number;
      const isOutside = this.#isOutside[variable] === true;
      this.#values[variable] = isOutside ? 0 : Math.max(0, value);
      if (value < 0 || this.#tables.variables[variable]?.isPlace !== true) continue;
      if (value > 0 !== this.#isInSet[variable]) return false;
    }
    return true;
  }

  /** Whether a place of the set can only stay as it is. */
  isLeftBy(limits: readonly Limit[]): boolean {
    return limits.some(
      ({ variable, allowed }) => this.#isInSet[variable] === true && allowed.indexOf(1, 1) < 0,
    );
  }

  /** Each case of a result that is not passed over, as what it limits. `isBelow` comes before. */
  *cases(decided: Int32Array): Generator<Limit[], undefined> {
    for (let variable = 0; variable < decided.length; variable += 1) {
      if (this.#isInSet[variable] === false || (decided[variable] as number) >= 0) continue;
      yield [{ variable, allowed: this.#standing(variable), worse: [] }];
    }
    for (const across of this.#across) yield* this.#casesAcross(across, decided);
  }

  /** A relation would be worse if what is changed outside were put back. */
  *#casesAcross(across: Across, decided: Int32Array): Generator<Limit[], undefined> {
    const { relation, inside, outside, places } = across;
    const undecided = inside.filter((variable) => (decided[variable] as number) < 0);
    const [only] = undecided;
    const isWorse = only !== undefined || this.#isWorse(relation);
    // With several undecided, only an edge of the forest can be asked when it is worse.
    const allowed = only === undefined || undecided.length > 1 ? null : this.#worse(only, relation);
    for (const { place, isAlone } of places) {
      // Outside places that are decided stay as they are: others are not below.
      if ((decided[place] as number) >= 0 || (isAlone && !isWorse)) continue;
      const worse = isAlone ? [{ relation, outside }] : [];
      const limits: Limit[] = [{ variable: place, allowed: this.#changed(place), worse }];
      if (only !== undefined && allowed !== null && isAlone) {
        limits.push({ variable: only, allowed, worse: [] });
      }
      yield limits;
    }
  }

  #standing(variable: number): Uint8Array {
    const allowed = new Uint8Array(this.#sizeOf(variable));
    allowed[0] = 1;
    return allowed;
  }

  #changed(variable: number): Uint8Array {
    const allowed = new Uint8Array(this.#sizeOf(variable)).fill(1);
    allowed[0] = 0;
    return allowed;
  }

  /** By value of a variable inside: whether the relation is worse. */
  #worse(variable: number, relation: number): Uint8Array {
    const allowed = new Uint8Array(this.#sizeOf(variable));
    for (let value = 0; value < allowed.length; value += 1) {
      this.#values[variable] = value;
      if (this.#isWorse(relation)) allowed[value] = 1;
    }
    this.#values[variable] = 0;
    return allowed;
  }

  /** What is open may be open in the result too; that is left out, and the bound none too high. */
  #isWorse(relation: number): boolean {
    return this.#tables.stateAt(relation, this.#values) < STATE.holds;
  }

  #sizeOf(variable: number): number {
    return this.#tables.variables[variable]?.size ?? 0;
  }
}

function placesBeside(tables: Tables, inSet: ReadonlySet<number>): Beside {
  const beside = new Map<number, Set<number>>();
  for (const { scope } of tables.tables) {
    // A wide relation is no neighbourhood.
    if (scope.length > 3) continue;
    const isPlace = (variable: number): boolean => tables.variables[variable]?.isPlace === true;
    const places = scope.filter((variable) => isPlace(variable) && !inSet.has(variable));
    if (places.length === 0) continue;
    for (const variable of scope) {
      if (isPlace(variable)) continue;
      const known = beside.get(variable) ?? new Set();
      beside.set(variable, known);
      for (const place of places) known.add(place);
    }
  }
  return beside;
}
