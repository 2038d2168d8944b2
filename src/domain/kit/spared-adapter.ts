/**
 * Whether a part is changed where an adapter would have done: with the part as it is now and some
 * adapter at one of its joints, everything else of the route would go together as well. Such a
 * change is no mistake: it costs less, or is preferred for another reason.
 */

import { STATE } from './core/problem.js';
import type { Solved } from './kit-problem.js';

export function sparesAdapter(
  { problem, tables }: Solved,
  values: readonly number[],
  variable: number,
): boolean {
  const { relations, scene, variables } = problem;
  if (variable >= scene.places.length) return false;
  const beside = new Set(
    relations.flatMap(({ sort, scope }) =>
      sort === 'mating' && scope.includes(variable) ? scope : [],
    ),
  );
  const joints = [...beside].filter((one) => one >= scene.places.length && values[one] === 0);
  return joints.some((joint) => {
    const touched = relations.flatMap(({ scope }, index) =>
      scope.includes(variable) || scope.includes(joint) ? index : [],
    );
    const size = variables[joint]?.size ?? 1;
    return Array.from({ length: size - 1 }, (_, index) => index + 1).some((adapter) => {
      const instead = values.with(variable, 0).with(joint, adapter);
      return touched.every((index) => {
        const state = tables.stateAt(index, instead);
        return state === STATE.holds || state >= tables.stateAt(index, values);
      });
    });
  });
}
