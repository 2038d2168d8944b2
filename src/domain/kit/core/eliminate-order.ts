/**
 * In which order variables are eliminated, and what that costs, found without computing a single
 * table. Two orders are tried, the smallest new table first and the fewest neighbours first:
 * neither is always better, and the cheaper is taken.
 */

import type { Network } from './cost-network.js';
import type { Partitions } from './partitions.js';

export interface Order {
  readonly variables: readonly number[];
  /** Cells that are looked at; Infinity where a limit is not written out. */
  readonly work: number;
  /** The most variables that meet in one table, the one that is eliminated not counted. */
  readonly width: number;
}

/** The cheaper of both orders; this variable last, where one is given. */
export function cheaperOrder(network: Network, partitions: Partitions, last = -1): Order {
  const bySize = new Simulation(network, partitions, last).run('size', Number.POSITIVE_INFINITY);
  const byDegree = new Simulation(network, partitions, last).run('degree', bySize.work);
  return byDegree.work < bySize.work ? byDegree : bySize;
}

/** What it costs to eliminate all in this order. */
export function inOrder(
  network: Network,
  partitions: Partitions,
  variables: readonly number[],
): Order {
  return new Simulation(network, partitions, -1).follow(variables);
}

interface Scope {
  readonly variables: readonly number[];
  /** By place: which factors of the variable went into it. */
  readonly places: readonly number[];
}

class Simulation {
  readonly #network: Network;
  readonly #partitions: Partitions;
  readonly #last: number;
  /** By variable: the scopes of the tables that it is in. */
  readonly #tables: Scope[][];
  readonly #sizes: Float64Array;
  readonly #works: Float64Array;
  readonly #degrees: Int32Array;
  /** Of the variable looked at last: its neighbours, and by neighbour its places. */
  #neighbours: number[] = [];
  readonly #places: Int32Array;
  readonly #seen: Int32Array;
  #round = 0;

  constructor(network: Network, partitions: Partitions, last: number) {
    const count = network.costs.length;
    this.#network = network;
    this.#partitions = partitions;
    this.#last = last;
    this.#sizes = new Float64Array(count);
    this.#works = new Float64Array(count);
    this.#degrees = new Int32Array(count);
    this.#places = new Int32Array(count);
    this.#seen = new Int32Array(count).fill(-1);
    this.#tables = network.costs.map(() => []);
    scopesOf(network, partitions).forEach((scope) => {
      for (const variable of scope.variables) (this.#tables[variable] as Scope[]).push(scope);
    });
  }

  follow(variables: readonly number[]): Order {
    let work = this.#start;
    let width = 0;
    for (const variable of variables) {
      this.#look(variable);
      work += this.#works[variable] as number;
      width = Math.max(width, this.#degrees[variable] as number);
      this.#eliminate(variable);
    }
    return { variables, work, width };
  }

  get #start(): number {
    const isWritten = this.#network.factors.every(({ costs }) => costs !== null);
    return isWritten ? 0 : Number.POSITIVE_INFINITY;
  }

  run(by: 'size' | 'degree', most: number): Order {
    const left = [...this.#network.costs.keys()];
    const variables: number[] = [];
    let work = this.#start;
    let width = 0;
    for (const variable of left) this.#look(variable);
    while (left.length > 0 && work < most) {
      const at = this.#next(left, by);
      const variable = left[at] as number;
      left[at] = left.at(-1) as number;
      left.pop();
      variables.push(variable);
      work += this.#works[variable] as number;
      width = Math.max(width, this.#degrees[variable] as number);
      this.#eliminate(variable);
    }
    return { variables, work: left.length > 0 ? Number.POSITIVE_INFINITY : work, width };
  }

  #next(left: readonly number[], by: 'size' | 'degree'): number {
    let best = 0;
    for (let at = 1; at < left.length; at += 1) {
      if (this.#isBefore(left[at] as number, left[best] as number, by)) best = at;
    }
    return best;
  }

  #isBefore(one: number, other: number, by: 'size' | 'degree'): boolean {
    if (one === this.#last || other === this.#last) return other === this.#last;
    const degree = (this.#degrees[one] as number) - (this.#degrees[other] as number);
    const size = (this.#sizes[one] as number) - (this.#sizes[other] as number);
    if (by === 'degree' && degree !== 0) return degree < 0;
    if (size !== 0) return size < 0;
    const work = (this.#works[one] as number) - (this.#works[other] as number);
    return work === 0 ? one < other : work < 0;
  }

  /** What it would cost to eliminate it now. */
  #look(variable: number): void {
    this.#round += 1;
    this.#neighbours = [];
    let own = 0;
    for (const scope of this.#tables[variable] as readonly Scope[]) {
      for (let place = 0; place < scope.variables.length; place += 1) {
        const other = scope.variables[place] as number;
        const places = scope.places[place] as number;
        if (other === variable) own |= places;
        else if (this.#seen[other] === this.#round)
          this.#places[other] = this.#placesOf(other) | places;
        else {
          this.#seen[other] = this.#round;
          this.#places[other] = places;
          this.#neighbours.push(other);
        }
      }
    }
    let size = 1;
    for (const other of this.#neighbours) {
      size *= this.#partitions.of(other, this.#placesOf(other)).count;
    }
    this.#sizes[variable] = size;
    this.#works[variable] = size * this.#partitions.of(variable, own).count;
    this.#degrees[variable] = this.#neighbours.length;
  }

  #placesOf(variable: number): number {
    return this.#places[variable] as number;
  }

  #eliminate(variable: number): void {
    this.#look(variable);
    const neighbours = this.#neighbours;
    const made = { variables: neighbours, places: neighbours.map((one) => this.#placesOf(one)) };
    for (const other of neighbours) {
      const tables = this.#tables[other] as Scope[];
      const rest = tables.filter(({ variables }) => !variables.includes(variable));
      rest.push(made);
      this.#tables[other] = rest;
    }
    this.#tables[variable] = [];
    for (const other of neighbours) this.#look(other);
  }
}

/** The scopes of the factors, before anything is eliminated. */
export function scopesOf(network: Network, partitions: Partitions): Scope[] {
  const places = network.factors.map(({ scope }) => scope.map(() => 0));
  network.places.forEach((own, variable) => {
    own.forEach(({ factor, place }, index) => {
      (places[factor] as number[])[place] = partitions.bit(variable, index);
    });
  });
  return network.factors.map(({ scope }, factor) => ({
    variables: scope,
    places: places[factor] as number[],
  }));
}
