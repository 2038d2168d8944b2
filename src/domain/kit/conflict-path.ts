/**
 * What is in the way of demands that contradict each other: joints, checks and rules of which none
 * can be left out, each with what would stand where if all others of them held.
 */

import type { DemandBase } from './demand-base.js';
import type { KitProblem } from './kit-problem.js';
import type { Judged, KitRelation } from './relation.js';

/** One joint or check that cannot hold with all others of the path. */
export interface Step {
  readonly relation: Pick<KitRelation, 'sort' | 'id'>;
  /** What it comes to with as little changed as all others of the path allow. */
  readonly judged: Judged;
  /** Changed so far as it bears on this: positions and matings, with the articles there. */
  readonly changed: readonly Changed[];
}

export interface Changed {
  readonly position: string | null;
  readonly mating: string | null;
  readonly articles: readonly string[];
}

export function stepOf(
  base: DemandBase,
  index: number,
  values: readonly number[] | null,
): Step | null {
  const relation = base.problem.relations[index];
  if (values === null || relation === undefined) return null;
  const judged = relation.judge(relation.scope.map((variable) => values[variable] ?? 0));
  return {
    relation: { sort: relation.sort, id: relation.id },
    judged,
    changed: relation.scope.flatMap((variable) => changedAt(base.problem, variable, values)),
  };
}

function changedAt(problem: KitProblem, variable: number, values: readonly number[]): Changed[] {
  if ((values[variable] ?? 0) === 0) return [];
  const { scene } = problem;
  const value = problem.sceneValues(values)[variable] ?? 0;
  const name = scene.nameOf(variable);
  if (variable >= scene.places.length) {
    return [{ position: null, mating: name, articles: scene.row(variable, value) }];
  }
  const articles = scene
    .seatChanges(variable, value)
    .flatMap(({ becomes }) => (becomes.is === 'part' ? [becomes.part] : []));
  return [{ position: name, mating: null, articles: [...new Set(articles)] }];
}

/** From what is demanded onwards, joint by joint; between equals in the order of the layout. */
export function inOrder(
  { relations }: KitProblem,
  cited: readonly number[],
  steps: readonly Step[],
  starts: readonly number[],
): Step[] {
  const reached = new Set(starts);
  const left = new Map(cited.map((relation, at) => [relation, steps[at] as Step] as const));
  const ordered: Step[] = [];
  while (left.size > 0) {
    const near = [...left.keys()].find((relation) =>
      relations[relation]?.scope.some((variable) => reached.has(variable)),
    );
    for (const [relation, step] of left) {
      if (near !== undefined && relation !== near) continue;
      ordered.push(step);
      left.delete(relation);
      for (const variable of relations[relation]?.scope ?? []) reached.add(variable);
      break;
    }
  }
  return ordered;
}
