/**
 * How finely a table must tell the values of a variable apart: no finer than the factors that went
 * into it do. A variable in the scope of a table is thereby an axis of classes, often few, and
 * becomes an axis of values only where all its factors have come together.
 */

import type { Factor, Network, Place } from './cost-network.js';
import { sizeOf } from './cost-network.js';

export interface Partition {
  readonly count: number;
  /** By value. */
  readonly classOf: Int32Array;
  /** By class: the first value in it. */
  readonly first: Int32Array;
}

/** Sets of places are bits; a variable with more places than bits is always told apart wholly. */
const MOST_PLACES = 30;

export class Partitions {
  readonly #network: Network;
  readonly #known: Map<number, Partition>[];

  constructor(network: Network) {
    this.#network = network;
    this.#known = network.costs.map(() => new Map<number, Partition>());
  }

  /** The bit of a place; 0 where the variable has too many of them. */
  bit(variable: number, index: number): number {
    const places = this.#network.places[variable] as readonly Place[];
    return places.length > MOST_PLACES ? 0 : 1 << index;
  }

  /** As the factors at these places see the variable. */
  of(variable: number, places: number): Partition {
    const known = this.#known[variable] as Map<number, Partition>;
    const found = known.get(places);
    if (found !== undefined) return found;
    const made = this.#made(variable, places);
    known.set(places, made);
    return made;
  }

  #made(variable: number, places: number): Partition {
    const all = this.#network.places[variable] as readonly Place[];
    const size = sizeOf(this.#network, variable);
    if (places === 0) {
      if (all.length > MOST_PLACES) return whole(size);
      return { count: 1, classOf: new Int32Array(size), first: new Int32Array(1) };
    }
    const lowest = places & -places;
    const { factor, place } = all[31 - Math.clz32(lowest)] as Place;
    const { classOf, counts } = this.#network.factors[factor] as Factor;
    const own = classOf[place] as Int32Array;
    if (lowest === places) return withFirst(own, counts[place] as number);
    const rest = this.of(variable, places & ~lowest);
    if (rest.count === size) return rest;
    return refinedBy(rest, own, counts[place] as number);
  }
}

function whole(size: number): Partition {
  const classOf = new Int32Array(size);
  for (let value = 0; value < size; value += 1) classOf[value] = value;
  return { count: size, classOf, first: classOf };
}

function withFirst(classOf: Int32Array, count: number): Partition {
  const first = new Int32Array(count);
  for (let value = classOf.length - 1; value >= 0; value -= 1) {
    first[classOf[value] as number] = value;
  }
  return { count, classOf, first };
}

function refinedBy(rest: Partition, own: Int32Array, classes: number): Partition {
  const seen = new Int32Array(rest.count * classes).fill(-1);
  const classOf = new Int32Array(own.length);
  let count = 0;
  for (let value = 0; value < own.length; value += 1) {
    const key = (rest.classOf[value] as number) * classes + (own[value] as number);
    if ((seen[key] as number) < 0) {
      seen[key] = count;
      count += 1;
    }
    classOf[value] = seen[key] as number;
  }
  return withFirst(classOf, count);
}
