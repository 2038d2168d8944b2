/**
 * Why some demands cannot hold together: a smallest set of them that cannot, and the smallest sets
 * whose dropping makes the rest possible.
 *
 * The two hit each other: whatever is dropped so that the rest is possible has a member of every
 * set that cannot hold together, and the other way round. So each kind is found as the smallest
 * set that hits all known sets of the other kind, and is either what is looked for or leads to one
 * more set to hit.
 */

import { comesFirst, smallestHittingSet } from './hitting-set.js';

/** Whether some demands can hold together. */
export interface DemandSolver {
  /** How many demands there are; they are numbered from 0, in the order of the question. */
  readonly count: number;
  /**
   * @returns those demands, of all, that one way of holding these meets; null where they cannot
   * hold together; undefined where nobody can tell any more.
   */
  readonly met: (demands: ReadonlySet<number>) => ReadonlySet<number> | null | undefined;
}

export interface Contradiction {
  /** Demands that cannot hold together, ascending; none of them could be left out. */
  readonly conflict: readonly number[];
  /** No fewer demands contradict each other, and of as few none that come first. */
  readonly isSmallest: boolean;
  /**
   * Sets of demands: without all of one set, and with all others, there is a way; none of a set
   * could stay. The smallest first.
   */
  readonly corrections: readonly (readonly number[])[];
  /** All smallest ones are among them, and for each demand of the conflict a smallest with it. */
  readonly isAllSmallest: boolean;
}

/** Ends the work where the solver can tell no more. */
class Ended extends Error {}

/** @throws where all demands can hold together. */
export function contradictionOf(solver: DemandSolver): Contradiction {
  return new Explorer(solver).explore();
}

class Explorer {
  readonly #solver: DemandSolver;
  readonly #all: readonly number[];
  readonly #corrections: (readonly number[])[] = [];

  constructor(solver: DemandSolver) {
    this.#solver = solver;
    this.#all = Array.from({ length: solver.count }, (_, demand) => demand);
  }

  explore(): Contradiction {
    const { conflict, isSmallest } = this.#findConflict();
    const found: (readonly number[])[] = [];
    const isAllSmallest = isSmallest && this.#findCorrections(conflict, found);
    if (!isAllSmallest) this.#cover(conflict, found);
    found.sort((a, b) => (comesFirst(a, b) ? -1 : 1));
    return { conflict, isSmallest, corrections: found, isAllSmallest };
  }

  #findConflict(): Pick<Contradiction, 'conflict' | 'isSmallest'> {
    try {
      for (;;) {
        const least = smallestHittingSet(this.#corrections) ?? [];
        const met = this.#met(least);
        if (met === null) return { conflict: least, isSmallest: true };
        this.#corrections.push(this.#grown(least, met));
      }
    } catch (error) {
      if (!(error instanceof Ended)) throw error;
      return { conflict: this.#shrunk(this.#all), isSmallest: false };
    }
  }

  /** What has to be dropped after as much as possible was added to these. */
  #grown(demands: readonly number[], met: ReadonlySet<number>): readonly number[] {
    const kept = new Set([...demands, ...met]);
    for (const demand of this.#all) {
      if (kept.has(demand)) continue;
      const more = this.#met([...kept, demand]);
      if (more !== null) for (const one of more) kept.add(one);
    }
    const dropped = this.#all.filter((demand) => !kept.has(demand));
    if (dropped.length === 0) throw new Error('all demands can hold together');
    return dropped;
  }

  /** Demands that cannot hold together, with as many left out as can be told. */
  #shrunk(demands: readonly number[]): readonly number[] {
    let kept = demands;
    for (const demand of demands) {
      const fewer = kept.filter((one) => one !== demand);
      if (this.#isKnownImpossible(fewer)) kept = fewer;
    }
    return kept;
  }

  /** All smallest corrections, and smallest ones with each demand of the conflict. */
  #findCorrections(conflict: readonly number[], found: (readonly number[])[]): boolean {
    const conflicts = [conflict];
    const isCovered = (): boolean =>
      conflict.every((demand) => found.some((set) => set.includes(demand)));
    try {
      for (;;) {
        const next = smallestHittingSet(conflicts, found);
        if (next === null) return true;
        const isLarger = next.length > (found[0]?.length ?? Number.POSITIVE_INFINITY);
        if (isLarger && isCovered()) return true;
        const dropped = new Set(next);
        const rest = this.#all.filter((demand) => !dropped.has(demand));
        if (this.#met(rest) !== null) found.push(next);
        else conflicts.push(this.#shrunk(rest));
      }
    } catch (error) {
      if (!(error instanceof Ended)) throw error;
      return false;
    }
  }

  /** For each demand of the conflict one correction with it, of those that are known anyway. */
  #cover(conflict: readonly number[], found: (readonly number[])[]): void {
    for (const demand of conflict) {
      if (found.some((set) => set.includes(demand))) continue;
      const known = this.#corrections.filter((set) => set.includes(demand));
      const [first] = known.sort((a, b) => (comesFirst(a, b) ? -1 : 1));
      if (first !== undefined) found.push(first);
    }
  }

  #isKnownImpossible(demands: readonly number[]): boolean {
    return this.#solver.met(new Set(demands)) === null;
  }

  #met(demands: readonly number[]): ReadonlySet<number> | null {
    const met = this.#solver.met(new Set(demands));
    if (met === undefined) throw new Ended();
    return met;
  }
}
