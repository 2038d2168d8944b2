/**
 * Why each change of a route is there, as a cascade from the wish: with only the changes before
 * it made, this would not hold. Each change is reached so, since nothing in a route could be left
 * out.
 */

import type { Constraint } from '../judge/constraint.js';
import { STATE, type State } from './core/problem.js';
import type { Tables } from './core/tables.js';
import type { KitProblem, Solved } from './kit-problem.js';
import type { KitRelation } from './relation.js';
import type { WhyCode } from './route.js';

/** Why one variable is changed. */
export interface Cause {
  readonly variable: number;
  readonly code: WhyCode;
  /** The change that made it necessary; null where the wish itself did. */
  readonly after: number | null;
  readonly constraint: Constraint | null;
}

/** The causes of all changes of an assignment, in the order in which they become necessary. */
export function cascade(problem: KitProblem, tables: Tables, values: readonly number[]): Cause[] {
  const causes: Cause[] = [];
  const made = values.map(() => 0);
  const bears = problem.relations.map((_, index) => tables.stateAt(index, values));
  const left = new Set(values.flatMap((value, variable) => (value === 0 ? [] : [variable])));
  while (left.size > 0) {
    const cause = nextCause({ problem, tables, values }, { made, bears, left, causes });
    if (cause === null) throw new Error('a route leaves nothing out that could be left out');
    causes.push(cause);
    left.delete(cause.variable);
    made[cause.variable] = values[cause.variable] ?? 0;
  }
  return causes;
}

/** How far the cascade has come. */
interface Progress {
  /** The changes that are made so far. */
  readonly made: readonly number[];
  /** What each relation comes to in the end. */
  readonly bears: readonly State[];
  readonly left: ReadonlySet<number>;
  readonly causes: readonly Cause[];
}

function nextCause(
  { problem, tables, values }: Solved & { readonly values: readonly number[] },
  { made, bears, left, causes }: Progress,
): Cause | null {
  for (const [index, relation] of problem.relations.entries()) {
    const touched = relation.scope.filter((variable) => left.has(variable));
    if (touched.length === 0) continue;
    const state = tables.stateAt(index, made);
    if (state === STATE.holds || state >= (bears[index] ?? STATE.holds)) continue;
    const { constraints, blame } = relation.judge(valuesAt(relation, made));
    const blamed = touched.filter((variable) => blame === null || blame.includes(variable));
    // Rather one that this relation could not do without.
    const variable =
      blamed.find((one) => tables.stateAt(index, values.with(one, 0)) < (bears[index] ?? 0)) ??
      blamed[0];
    if (variable === undefined) continue;
    const before = causes
      .map((cause) => cause.variable)
      .filter((one) => relation.scope.includes(one));
    // The last without which nothing would be wrong with it.
    const after =
      before.findLast((one) => tables.stateAt(index, made.with(one, 0)) > state) ??
      before.at(-1) ??
      null;
    const [constraint = null] = constraints;
    const code = codeOf(problem, relation, state, constraint, after);
    return { variable, code, after, constraint };
  }
  return null;
}

/**
 * What else fails, or becomes open, when only this change is put back, as far as changes before
 * it are a part of it: what only later ones are a part of is the reason of those.
 */
export function causesWithout(
  { problem, tables }: Solved,
  values: readonly number[],
  variable: number,
  before: readonly number[],
): readonly Omit<Cause, 'variable'>[] {
  const back = values.with(variable, 0);
  return problem.relations.flatMap((relation, index) => {
    if (!relation.scope.includes(variable)) return [];
    const state = tables.stateAt(index, back);
    if (state === STATE.holds || state >= tables.stateAt(index, values)) return [];
    const after = before.findLast((one) => relation.scope.includes(one));
    if (after === undefined) return [];
    const [constraint = null] = relation.judge(valuesAt(relation, back)).constraints;
    return [{ code: codeOf(problem, relation, state, constraint, after), after, constraint }];
  });
}

/** What a relation says of an assignment that it does not hold of. */
export function causeOf(
  problem: KitProblem,
  relation: KitRelation,
  values: readonly number[],
  after: number | null,
): Omit<Cause, 'variable'> {
  const { state, constraints } = relation.judge(valuesAt(relation, values));
  const [constraint = null] = constraints;
  return { code: codeOf(problem, relation, state, constraint, after), after, constraint };
}

function valuesAt({ scope }: KitRelation, values: readonly number[]): number[] {
  return scope.map((variable) => values[variable] ?? 0);
}

function codeOf(
  { scene }: KitProblem,
  { sort }: KitRelation,
  state: State,
  constraint: Constraint | null,
  after: number | null,
): WhyCode {
  if (sort === 'want') return 'wanted';
  if (sort === 'avoided') return 'avoided';
  if (sort === 'demand') return 'limit';
  // A load that the question itself raises is not wrong with the vehicle.
  const isAsked = scene.question.torque !== null && checkCode(constraint) === 'load';
  if (after === null && !isAsked) return 'present-fails';
  if (state === STATE.open) return 'becomes-open';
  if (sort === 'rule') return 'rule';
  if (sort === 'place' || sort === 'span' || sort === 'statement') return 'place';
  if (sort === 'mating') return isEmptyEnd(constraint) ? 'needed-empty' : 'mating-fails';
  return checkCode(constraint);
}

function isEmptyEnd(constraint: Constraint | null): boolean {
  return constraint?.code === 'needed-empty' || constraint?.code === 'needed-absent';
}

function checkCode(constraint: Constraint | null): WhyCode {
  const primitive = constraint?.checks[0]?.check.primitive;
  if (primitive === 'agree' || constraint?.code === 'chain-broken') return 'loop';
  return primitive === 'carries' ? 'load' : 'check';
}
