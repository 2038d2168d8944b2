/**
 * That every load leaves some margin, as relations: asked where the strongest way is wanted.
 */

import { termsOf } from '../check/check.js';
import { loadsOf } from '../driveline/loads.js';
import { compare, type Rational } from '../quantity/rational.js';
import { STATE } from './core/problem.js';
import { Reads } from './reads.js';
import { HOLDS, type KitRelation, relationOf } from './relation.js';
import type { Scene } from './scene.js';

/** Every load leaves more than this, as far as it is known what it leaves. */
export function capacityRelations(scene: Scene, moreThan: Rational): KitRelation[] {
  const { layout } = scene.question.vehicle;
  return layout.checks.flatMap((check) => {
    if (check.primitive !== 'carries') return [];
    const reads = new Reads(scene);
    reads.terms(termsOf(check));
    if (check.when !== null) reads.condition(check.when);
    const own = { ...layout, checks: [check] };
    return [
      relationOf(scene, {
        sort: 'demand',
        id: check.id,
        reads,
        judge: (scope, values) => {
          const loads = loadsOf({ ...scene.configuration(scope, values), layout: own });
          const isEnough = loads.every(
            ({ margin, isOpen }) => !isOpen && (margin === null || compare(margin, moreThan) > 0),
          );
          return { ...HOLDS, state: isEnough ? STATE.holds : STATE.fails };
        },
      }),
    ];
  });
}
