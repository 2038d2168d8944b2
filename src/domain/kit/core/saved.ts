/**
 * A problem saved as plain data with all that has been asked of it, and the same made into a
 * problem again. What it was never asked it cannot answer; a search that goes the same way as the
 * one that was saved asks nothing else.
 */

import type { Answer, Problem, Relation, State, Variable } from './problem.js';
import type { Tables } from './tables.js';

/** Null stands for infinity, which no JSON can say. */
type SavedCost = number | null;

export interface SavedRelation {
  readonly name: string;
  readonly scope: readonly number[];
  readonly classes: readonly (readonly number[])[];
  /** Values by place in the scope, the state, and who is to blame: null for the whole scope. */
  readonly answers: readonly (readonly [readonly number[], State, readonly number[] | null])[];
}

export interface SavedProblem {
  readonly variables: readonly Variable[];
  readonly relations: readonly SavedRelation[];
  readonly atLeast: readonly (readonly SavedCost[])[];
  /** By variable its value, -1 where it was not decided; and the least cost. */
  readonly floors: readonly (readonly [readonly number[], SavedCost])[];
  readonly exacts: readonly (readonly [readonly number[], SavedCost])[];
}

export function save(tables: Tables): SavedProblem {
  if (tables.log === null) throw new Error('the tables to be saved have not kept their prices');
  return {
    variables: tables.variables,
    relations: tables.tables.map((table) => ({
      name: table.relation.name,
      scope: [...table.scope],
      classes: table.relation.classes.map((of) => [...of]),
      answers: table.answers().map(({ values, state, blame }) => {
        const isWhole = blame.length === table.scope.length;
        return [[...values], state, isWhole ? null : [...blame]] as const;
      }),
    })),
    atLeast: tables.atLeast.map((of) => of.map(savedCost)),
    floors: tables.log.floors.map(({ decided, cost }) => [decided, savedCost(cost)]),
    exacts: tables.log.exacts.map(({ values, cost }) => [values, savedCost(cost)]),
  };
}

export function replay(saved: SavedProblem): Problem {
  const floors = new Map(saved.floors.map(([decided, cost]) => [decided.join(), costOf(cost)]));
  const exacts = new Map(saved.exacts.map(([values, cost]) => [values.join(), costOf(cost)]));
  return {
    variables: saved.variables,
    relations: saved.relations.map(replayed),
    prices: {
      atLeast: saved.atLeast.map((of) => of.map(costOf)),
      floor: (values, decided) =>
        asked(
          floors,
          values.map((value, one) => (decided[one] === true ? value : -1)).join(),
          'floor',
        ),
      exact: (values) => asked(exacts, values.join(), 'exact price'),
    },
  };
}

function replayed({ name, scope, classes, answers }: SavedRelation): Relation {
  const classesOf = (values: readonly number[]): string =>
    values.map((value, place) => classes[place]?.[value]).join();
  const known = new Map(
    answers.map(([values, state, blame]): [string, Answer] => [
      classesOf(values),
      { state, blame: blame ?? scope },
    ]),
  );
  return { name, scope, classes, ask: (values) => asked(known, classesOf(values), name) };
}

function asked<Answered>(known: ReadonlyMap<string, Answered>, key: string, of: string): Answered {
  const answer = known.get(key);
  if (answer === undefined) {
    throw new RangeError(`the saved problem was never asked: ${of} at ${key}`);
  }
  return answer;
}

function savedCost(cost: number): SavedCost {
  return cost === Infinity ? null : cost;
}

function costOf(saved: SavedCost): number {
  return saved ?? Infinity;
}
