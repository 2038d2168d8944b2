/**
 * One thing that must hold of a kit, as a relation between variables: what it reads, which values
 * are alike to it, and how it is judged.
 */

import type { Catalogue } from '../catalogue/catalogue.js';
import type { Outcome } from '../check/state.js';
import type { Constraint } from '../judge/constraint.js';
import { type Answer, type Relation, STATE, type State } from './core/problem.js';
import type { KitQuestion } from './question.js';
import type { Reads } from './reads.js';
import type { Scene } from './scene.js';

export type RelationSort =
  | 'want'
  | 'avoided'
  | 'kept'
  | 'demand'
  | 'place'
  | 'span'
  | 'mating'
  | 'check'
  | 'choice'
  | 'rule'
  | 'statement';

export interface KitRelation extends Relation {
  readonly sort: RelationSort;
  readonly id: string;
  /** What it comes to, with the constraints that say so. */
  readonly judge: (values: readonly number[]) => Judged;
}

export const STATES: Readonly<Record<Outcome, State>> = {
  holds: STATE.holds,
  open: STATE.open,
  fails: STATE.fails,
};

/** What a relation comes to; no constraint speaks of what only the question demands. */
export interface Judged {
  readonly state: State;
  readonly constraints: readonly Constraint[];
  /** Names of the places and matings that alone come to this; null for all that is read. */
  readonly blame: readonly number[] | null;
}

export interface Description {
  readonly sort: RelationSort;
  readonly id: string;
  readonly reads: Reads;
  /** Asked with one value for each variable of the scope, in its order. */
  readonly judge: (scope: readonly number[], values: readonly number[]) => Judged;
  /** The state alone, where it can be told without judging; null where it cannot. */
  readonly decide?: ((scope: readonly number[], values: readonly number[]) => State | null) | null;
  /** Equal for values of a variable that are alike; what is read, unless it is known better. */
  readonly keyOf?: (variable: number, value: number) => string;
  /**
   * Where an answer is kept for other questions to the same edition: what it is of, and on what
   * else it hangs. Null where it is of this question alone.
   */
  readonly keptAs?: (values: readonly number[]) => string | null;
  /** Words for a value that mean the same in every question; those of `keyOf` if left out. */
  readonly keptKeyOf?: (variable: number, value: number) => string;
  /** What is there now, in the words of `keyOf`; left out where what is kept is of one vehicle. */
  readonly nowKeyOf?: (variable: number) => string;
}

export function relationOf(scene: Scene, description: Description): KitRelation {
  const { sort, id, reads, judge, keyOf } = description;
  const { scope } = reads;
  const key = keyOf ?? ((variable: number, value: number) => reads.keyOf(variable, value));
  const keys = scope.map((variable) =>
    Array.from({ length: scene.sizeOf(variable) }, (_, value) => key(variable, value)),
  );
  const { keptAs = () => null, keptKeyOf, nowKeyOf = () => '0' } = description;
  const kept = keptAnswers(scene);
  const explained = description.keptAs === undefined ? null : keptExplanations(scene);
  const judgeAt = (values: readonly number[]): Judged => {
    // Constraints name the articles themselves, where an answer tells them apart by class.
    const name =
      explained === null
        ? ''
        : [
            sort,
            id,
            scene.question.vehicle.id,
            ...values.map((value, at) => scene.articlesOf(scope[at] ?? 0, value)),
          ].join(' | ');
    let judged = explained?.get(name);
    if (judged === undefined) {
      judged = judge(scope, values);
      explained?.set(name, judged);
    }
    return judged;
  };
  const nameOf = (place: string, values: readonly number[]): string =>
    [
      place,
      ...values.map((value, at) =>
        value === 0
          ? `now ${nowKeyOf(scope[at] ?? 0)}`
          : (keptKeyOf?.(scope[at] ?? 0, value) ?? keys[at]?.[value]),
      ),
    ].join(' | ');
  const ask = (values: readonly number[]): Answer => {
    // What is said of a vehicle bears on what stays as it is: that is asked of it alone.
    const isChange = values.some((value) => value !== 0);
    const place = kept === null || !isChange ? null : keptAs(values);
    const name = place === null ? '' : nameOf(place, values);
    let answer = place === null ? undefined : kept?.get(name);
    if (answer === undefined) {
      const decided = description.decide?.(scope, values) ?? null;
      const { state, blame } =
        decided === null ? judge(scope, values) : { state: decided, blame: null };
      answer = { state, blame: blame?.map((variable) => scene.fullNameOf(variable)) ?? null };
      if (place !== null) kept?.set(name, answer);
    }
    const { state, blame } = answer;
    return { state, blame: blame?.map((one) => scene.variableNamed(one)) ?? scope };
  };
  return {
    sort,
    id,
    name: `${sort} ${id}`,
    scope,
    classes: keys.map(numbered),
    ask,
    judge: judgeAt,
  };
}

/** Equal words, equal numbers. */
function numbered(keys: readonly string[]): number[] {
  const known = new Map<string, number>();
  return keys.map((key) => {
    const found = known.get(key) ?? known.size;
    known.set(key, found);
    return found;
  });
}

interface KeptAnswer {
  readonly state: State;
  /** Names of places and matings; null for all that is read. */
  readonly blame: readonly string[] | null;
}

/** So many answers are kept of one edition; then it is begun anew. */
const MOST_KEPT = 100_000;

/** As many explanations, which are large. */
const MOST_EXPLAINED = 2000;

/** Kept by name, up to so many. */
class Kept<T> {
  readonly #most: number;
  readonly #known = new Map<string, T>();

  constructor(most: number) {
    this.#most = most;
  }

  get(name: string): T | undefined {
    return this.#known.get(name);
  }

  set(name: string, value: T): void {
    if (this.#known.size >= this.#most) this.#known.clear();
    this.#known.set(name, value);
  }
}

const answersOf = new WeakMap<Catalogue, Kept<KeptAnswer>>();
const explanationsOf = new WeakMap<Catalogue, Kept<Judged>>();

/** What questions to one edition share; null where the question brings records of its own. */
function keptAnswers({ question }: Scene): Kept<KeptAnswer> | null {
  return keptOf(answersOf, question, MOST_KEPT);
}

function keptExplanations({ question }: Scene): Kept<Judged> | null {
  const { said, torque, use, ignorePresent, vehicle } = question;
  const isPlain = said.seats.size === 0 && said.adapters.size === 0 && vehicle.saidFacts.size === 0;
  if (!isPlain || torque !== null || use !== null || ignorePresent) return null;
  return keptOf(explanationsOf, question, MOST_EXPLAINED);
}

function keptOf<T>(
  of: WeakMap<Catalogue, Kept<T>>,
  { catalogue, pairsOf }: KitQuestion,
  most: number,
): Kept<T> | null {
  if (catalogue !== pairsOf) return null;
  let kept = of.get(catalogue);
  if (kept === undefined) {
    kept = new Kept(most);
    of.set(catalogue, kept);
  }
  return kept;
}

export const HOLDS: Judged = { state: STATE.holds, constraints: [], blame: null };

/** The worst of the constraints that must hold; `given` counts as holding. */
export function worstOf(constraints: readonly Constraint[]): Judged {
  let state: State = STATE.holds;
  const decisive: Constraint[] = [];
  for (const constraint of constraints) {
    if (constraint.severity !== 'must') continue;
    const own = stateOfConstraint(constraint);
    if (own < state) {
      state = own;
      decisive.length = 0;
    }
    if (own === state && own !== STATE.holds) decisive.push(constraint);
  }
  return { state, constraints: decisive, blame: null };
}

export function stateOfConstraint({ state }: Pick<Constraint, 'state'>): State {
  if (state === 'fails') return STATE.fails;
  return state === 'open' ? STATE.open : STATE.holds;
}
