/**
 * What the undecided variables of a node are limited to, where only some of what is below it is
 * looked at.
 */

import type { Forest } from './forest.js';

/** A variable that may have some values only. */
export interface Limit {
  readonly variable: number;
  /** By value: 1 where it may. */
  readonly allowed: Uint8Array;
  /** Relations that would be worse if something were put back. */
  readonly worse: readonly Worse[];
}

export interface Worse {
  readonly relation: number;
  /** What would be put back. */
  readonly outside: readonly number[];
}

export class Limits {
  /** By variable: the values that it may have; null for all of them. */
  readonly allowed: (Uint8Array | null)[];
  /** By edge of the forest: those of its relations that have to be worse. */
  readonly worse: readonly Worse[][];
  /** By relation in an edge: the edge. */
  readonly #edgeOf = new Map<number, number>();
  #limits: readonly Limit[] = [];

  constructor(countVariables: number, { edges }: Forest) {
    this.allowed = Array.from({ length: countVariables }, () => null);
    this.worse = edges.map(() => []);
    edges.forEach(({ relations, joints }, edge) => {
      for (const one of relations) this.#edgeOf.set(one, edge);
      for (const one of joints.flatMap((joint) => joint.relations)) this.#edgeOf.set(one, edge);
    });
  }

  /** In place of those before. */
  set(limits: readonly Limit[]): void {
    for (const { variable, worse } of this.#limits) {
      this.allowed[variable] = null;
      for (const { relation } of worse) this.#worseOf(relation).length = 0;
    }
    for (const { variable, allowed, worse } of limits) {
      this.allowed[variable] = allowed;
      for (const one of worse) this.#worseOf(one.relation).push(one);
    }
    this.#limits = limits;
  }

  /** Of a relation outside the forest it is not looked at; the bound is none too high without. */
  #worseOf(relation: number): Worse[] {
    return this.worse[this.#edgeOf.get(relation) ?? -1] ?? [];
  }
}
