/**
 * A problem written down in another order: its variables, their values, its relations, and the
 * numbers of the classes; and what is found in it, as the first problem would say it.
 */

import type { Found, Problem } from '../../../../src/domain/kit/core/problem.js';
import { chance, whole } from './random-problem.js';

export interface Reordered {
  readonly problem: Problem;
  readonly named: (found: Found) => Found;
}

export function reordered(problem: Problem, seed: number): Reordered {
  const next = chance(seed + 0x5eed);
  /** By new index: the old one. */
  const variables = shuffled([...problem.variables.keys()], next);
  const relations = shuffled([...problem.relations.keys()], next);
  /** By old variable, by new value: the old one. What stands stays value 0. */
  const values = problem.variables.map(({ size }) => {
    const others = Array.from({ length: size - 1 }, (_, value) => value + 1);
    return [0, ...shuffled(others, next)];
  });
  const oldValues = (found: readonly number[]): number[] => {
    const old: number[] = [];
    variables.forEach((variable, index) => {
      old[variable] = values[variable]?.[found[index] ?? 0] ?? 0;
    });
    return old;
  };
  const newScope = (scope: readonly number[]): number[] =>
    scope.map((one) => variables.indexOf(one)).sort((one, other) => one - other);
  return {
    problem: {
      variables: variables.flatMap((one) => problem.variables[one] ?? []),
      relations: relations.flatMap((index) => {
        const relation = problem.relations[index];
        if (relation === undefined) return [];
        const scope = newScope(relation.scope);
        const placeOf = (variable: number): number => scope.indexOf(variables.indexOf(variable));
        const oldPlaces = scope.map((one) => relation.scope.indexOf(variables[one] ?? 0));
        const classes = oldPlaces.map((place) => {
          const variable = relation.scope[place] ?? 0;
          return (values[variable] ?? []).map(
            (value) => 50 - (relation.classes[place]?.[value] ?? 0),
          );
        });
        return {
          name: relation.name,
          scope,
          classes,
          ask: (asked: readonly number[]) => {
            const old = relation.scope.map(
              (variable) => values[variable]?.[asked[placeOf(variable)] ?? 0] ?? 0,
            );
            const { state, blame } = relation.ask(old);
            return { state, blame: newScope(blame) };
          },
        };
      }),
      prices: {
        atLeast: variables.map((one) =>
          (values[one] ?? []).map((value) => problem.prices.atLeast[one]?.[value] ?? 0),
        ),
        floor: (asked, decided) => {
          const old = variables.map((_, one) => decided[variables.indexOf(one)] === true);
          return problem.prices.floor(oldValues(asked), old);
        },
        exact: (asked) => problem.prices.exact(oldValues(asked)),
      },
    },
    named: ({ values: asked, cost, open }) => ({
      values: oldValues(asked),
      cost,
      open: open.map((one) => relations[one] ?? 0).sort((one, other) => one - other),
    }),
  };
}

function shuffled(list: readonly number[], next: () => number): number[] {
  const rest = [...list];
  return list.flatMap(() => rest.splice(whole(next, rest.length), 1));
}
