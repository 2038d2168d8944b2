/**
 * Statements that a part does not fit, as relations. What a statement settles is told by the joint
 * or the check that it settles.
 */

import type { Statement } from '../catalogue/catalogue.js';
import { judgeIn, keptForVehicle, layoutOf } from './judged-in.js';
import { Reads } from './reads.js';
import { type KitRelation, relationOf, worstOf } from './relation.js';
import type { Scene } from './scene.js';

/** That a part does not fit hangs on what the records say of everything around it. */
export function statementRelations(scene: Scene, joined: readonly KitRelation[]): KitRelation[] {
  const { layout } = scene.question.vehicle;
  return scene.catalogue.statements
    .filter(({ verdict, position }) => verdict === 'does-not-fit' && layout.positions.has(position))
    .map((statement) => statementRelation(scene, statement, joined));
}

function statementRelation(
  scene: Scene,
  statement: Statement,
  joined: readonly KitRelation[],
): KitRelation {
  const { layout } = scene.question.vehicle;
  const variable = scene.placeVariable(statement.position);
  const around = joined.filter(({ scope }) => scope.includes(variable));
  const reads = new Reads(scene);
  reads.named(statement.position, statement.part);
  for (const [id, part] of statement.with) {
    if (layout.positions.has(id)) reads.named(id, part);
  }
  for (const one of new Set(around.flatMap(({ scope }) => scope))) {
    const name = scene.nameOf(one);
    if (one < scene.places.length) reads.whole(name);
    else reads.mating(name);
  }
  const matings = around.filter(({ sort }) => sort === 'mating').map(({ id }) => id);
  const checks = layout.checks.filter(({ id }) =>
    around.some((one) => one.sort === 'check' && one.id === id),
  );
  const own = layoutOf(scene, matings, checks);
  return relationOf(scene, {
    sort: 'statement',
    id: statement.id,
    reads,
    keptAs: () => keptForVehicle(scene, 'statement', statement.id),
    judge: (scope, values) =>
      worstOf(
        judgeIn(scene, own, scope, values).filter(
          (one) => one.form === 'statement' && one.id === statement.id,
        ),
      ),
  });
}
