/**
 * Why a question has no route: a smallest set of its own demands that cannot hold together, the
 * joints and checks that break it, and what would have to be taken back.
 *
 * The records of the vehicle as it stands are never among the reasons: with no demands at all it
 * stays as it is. Each demand is a relation that can be left out, or, where it bears on prices or
 * on what is taken as given, a problem of its own.
 */

import type { Catalogue } from '../catalogue/catalogue.js';
import { inOrder, type Step, stepOf } from './conflict-path.js';
import { contradictionOf } from './core/contradiction.js';
import { byChanges, feasible } from './core/feasible.js';
import { type Budget, STATE } from './core/problem.js';
import { leastDoing } from './core/quick-xplain.js';
import { Search } from './core/search.js';
import { baseOf, bearsOnAll, type DemandBase } from './demand-base.js';
import { type Demand, demandsOf, keyOfDemand } from './demands.js';
import type { KitQuestion } from './question.js';
import { type Relaxations, relaxationsOf } from './relaxations.js';

/** So often it is asked whether some demands can hold together; then what is known must do. */
const MOST_SOLVES = 2000;

export interface Conflict extends Relaxations {
  /** With all articles that works would make, as the path may name them. */
  readonly catalogue: Catalogue;
  readonly demands: readonly Demand[];
  /** No fewer demands contradict each other. */
  readonly isSmallest: boolean;
  /** Null where the search ended before it was found. */
  readonly path: readonly Step[] | null;
  /** How often it was asked whether demands can hold together, and steps, without the ways out. */
  readonly work: { readonly solves: number; readonly steps: number };
}

/** @throws where the question has a route. */
export function conflictOf(question: KitQuestion): Conflict {
  const budget = { left: question.steps };
  const demands = demandsOf(question);
  const trials = new Trials(question, demands, budget);
  const found = contradictionOf({ count: demands.length, met: (some) => trials.met(some) });
  const conflict = found.conflict.map((index) => demands[index] as Demand);
  const path = trials.path(new Set(found.conflict));
  const work = { solves: trials.solves, steps: question.steps - budget.left };
  // The ways out get the steps that are left, all of them together.
  const relaxations = relaxationsOf(question, demands, found, budget);
  return {
    catalogue: trials.catalogue(new Set(found.conflict)),
    demands: conflict,
    isSmallest: found.isSmallest,
    path,
    work,
    ...relaxations,
  };
}

const PROVEN = ['proven'] as const;
const BOTH = ['proven', 'open'] as const;

class Trials {
  /** So often it was asked whether something can hold. */
  solves = 0;
  readonly #question: KitQuestion;
  readonly #demands: readonly Demand[];
  readonly #budget: Budget;
  readonly #bases = new Map<string, DemandBase>();

  constructor(question: KitQuestion, demands: readonly Demand[], budget: Budget) {
    this.#question = question;
    this.#demands = demands;
    this.#budget = budget;
  }

  catalogue(some: ReadonlySet<number>): Catalogue {
    return this.#base(some).problem.scene.catalogue;
  }

  met(some: ReadonlySet<number>): ReadonlySet<number> | null | undefined {
    const base = this.#base(some);
    const values = this.#solve(base, [...base.ofVehicle, ...this.#relations(base, some)]);
    if (values === null || values === undefined) return values;
    const isMet = (index: number, demand: Demand): boolean => {
      if (bearsOnAll(demand, this.#question)) return some.has(index);
      const own = base.ofDemand.get(keyOfDemand(demand)) ?? [];
      return own.every((one) => base.tables.stateAt(one, values) >= base.leastState);
    };
    return new Set(this.#demands.flatMap((one, index) => (isMet(index, one) ? [index] : [])));
  }

  /** What of the vehicle is in the way of these demands; null where that is not known. */
  path(some: ReadonlySet<number>): Step[] | null {
    const base = this.#base(some);
    const demanded = this.#relations(base, some);
    const cited = leastDoing(base.ofVehicle, (relations) => {
      const found = this.#solve(base, [...relations, ...demanded]);
      return found === undefined ? undefined : found === null;
    });
    if (cited === null) return null;
    const steps = cited.map((relation) => {
      const others = cited.filter((one) => one !== relation);
      return stepOf(base, relation, this.#fewest(base, [...others, ...demanded]));
    });
    if (steps.some((step) => step === null)) return null;
    const starts = demanded.flatMap((one) => base.problem.relations[one]?.scope ?? []);
    return inOrder(base.problem, cited, steps as Step[], starts);
  }

  /** As little changed as these relations allow. */
  #fewest(base: DemandBase, relations: readonly number[]): readonly number[] | null {
    const prices = base.isPriced ? base.problem.prices : byChanges(base.tables);
    const tables = base.tables.only(relations, prices);
    const phases = base.leastState === STATE.holds ? PROVEN : BOTH;
    for (const phase of phases) {
      const found = new Search(tables, phase, this.#budget).next();
      if (found !== null) return found.values;
    }
    return null;
  }

  #solve(base: DemandBase, relations: readonly number[]): readonly number[] | null | undefined {
    if (this.solves >= MOST_SOLVES) return undefined;
    this.solves += 1;
    return feasible(base.tables.only(relations, base.prices), base.leastState, this.#budget);
  }

  #relations({ ofDemand }: DemandBase, some: ReadonlySet<number>): number[] {
    return [...some].flatMap((index) => {
      const demand = this.#demands[index];
      return demand === undefined ? [] : (ofDemand.get(keyOfDemand(demand)) ?? []);
    });
  }

  /** The problem in which of the demands that bear on all of it just these are made. */
  #base(some: ReadonlySet<number>): DemandBase {
    const left = this.#demands.filter(
      (one, index) => bearsOnAll(one, this.#question) && !some.has(index),
    );
    const key = left.map(keyOfDemand).join(' | ');
    const base = this.#bases.get(key) ?? baseOf(this.#question, this.#demands, left);
    this.#bases.set(key, base);
    return base;
  }
}
