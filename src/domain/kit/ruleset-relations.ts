/**
 * What a ruleset demands, as relations. It must hold of the whole vehicle, also of what is not
 * changed; and one choice must serve what it demands beside everything else that uses it.
 */

import type { Check } from '../check/check.js';
import { termsOf } from '../check/check.js';
import { judgeMeetings } from '../judge/judge.js';
import { choiceRelations } from './choice-relations.js';
import { STATE } from './core/problem.js';
import { layoutOf } from './judged-in.js';
import { Reads } from './reads.js';
import { HOLDS, type KitRelation, relationOf, worstOf } from './relation.js';
import type { Scene } from './scene.js';

/** The relations of the question's ruleset, and with them those of the vehicle. */
export function withRuleset(scene: Scene, ofVehicle: readonly KitRelation[]): KitRelation[] {
  const { ruleset, vehicle } = scene.question;
  if (ruleset === null) return [...ofVehicle];
  const demands = ruleset.demands.get(vehicle.layout.id);
  const checks = demands?.checks ?? [];
  const asked = checks.map((check) => demandRelation(scene, check));
  const joined = ofVehicle.filter(({ sort }) => sort === 'mating' || sort === 'check');
  const own = [
    ...asked,
    ...ofVehicle.filter(({ sort }) => sort !== 'choice'),
    ...choiceRelations(scene, [...joined, ...asked], checks),
  ];
  if (demands?.isWhole === true) return own;
  // It asks for what this layout has no words for: nobody can say that it is met.
  const open = relationOf(scene, {
    sort: 'demand',
    id: ruleset.id,
    reads: new Reads(scene),
    judge: () => ({ ...HOLDS, state: STATE.open }),
  });
  return [open, ...own];
}

function demandRelation(scene: Scene, check: Check): KitRelation {
  const reads = new Reads(scene);
  reads.terms(termsOf(check));
  if (check.when !== null) reads.condition(check.when);
  const own = layoutOf(scene, reads.matings, [check]);
  return relationOf(scene, {
    sort: 'demand',
    id: check.id,
    reads,
    judge: (scope, values) => {
      const found = judgeMeetings({ ...scene.configuration(scope, values), layout: own });
      const computed = found
        .filter(({ form, id }) => form === 'check' && id === check.id)
        .map((one) => ({ ...one, state: one.computed }));
      return worstOf(computed);
    },
  });
}
