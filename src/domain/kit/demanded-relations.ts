/**
 * What a ruleset demands, and the margins that the question wishes for, as relations. They must
 * hold of the whole vehicle, also of what is not changed; and one choice must serve them beside
 * everything else that uses it.
 */

import type { Check } from '../check/check.js';
import { termsOf } from '../check/check.js';
import type { Term } from '../check/term.js';
import { judgeMeetings } from '../judge/judge.js';
import { exactText } from '../quantity/rational.js';
import { choiceRelations } from './choice-relations.js';
import { STATE, type State } from './core/problem.js';
import { layoutOf } from './judged-in.js';
import type { Want } from './question.js';
import { Reads } from './reads.js';
import { HOLDS, type KitRelation, relationOf, worstOf } from './relation.js';
import type { Scene } from './scene.js';

/** What is demanded by checks, and with it the relations of the vehicle. */
export function withDemanded(scene: Scene, ofVehicle: readonly KitRelation[]): KitRelation[] {
  const { ruleset, vehicle, wants } = scene.question;
  const demands = ruleset?.demands.get(vehicle.layout.id);
  const ofRuleset = demands?.checks ?? [];
  const loads = wants.flatMap((want, index) => {
    return want.is === 'load' ? [loadCheck(scene, want, index)] : [];
  });
  const asked = [
    ...loads.map((check) => demandRelation(scene, check, 'want', STATE.fails)),
    ...ofRuleset.map((check) => demandRelation(scene, check, 'demand', STATE.holds)),
  ];
  const joined = ofVehicle.filter(({ sort }) => sort === 'mating' || sort === 'check');
  const own =
    asked.length === 0
      ? ofVehicle
      : [
          ...asked,
          ...ofVehicle.filter(({ sort }) => sort !== 'choice'),
          ...choiceRelations(scene, [...joined, ...asked], [...loads, ...ofRuleset]),
        ];
  if (ruleset === null || demands?.isWhole === true) return [...own];
  // It asks for what this layout has no words for: nobody can say that it is met.
  const open = relationOf(scene, {
    sort: 'demand',
    id: ruleset.id,
    reads: new Reads(scene),
    judge: () => ({ ...HOLDS, state: STATE.open }),
  });
  return [open, ...own];
}

/** The load as the layout has it, with so many times its demand; named as the wish is. */
function loadCheck(scene: Scene, want: Want & { readonly is: 'load' }, index: number): Check {
  const { checks } = scene.question.vehicle.layout;
  const load = checks.find((check) => check.primitive === 'carries' && check.id === want.load);
  if (load?.primitive !== 'carries') throw new Error(`no load ${want.load} in this layout`);
  const { atLeast } = want;
  const times: Term = { op: 'literal', value: atLeast, dimension: '1', text: exactText(atLeast) };
  const right: Term = { op: 'product', terms: [load.right, times] };
  return { ...load, id: `${index}`, severity: 'must', right };
}

/** @param ifIdle What it comes to where the check does not apply: nothing carries such a load. */
function demandRelation(
  scene: Scene,
  check: Check,
  sort: 'want' | 'demand',
  ifIdle: State,
): KitRelation {
  const reads = new Reads(scene);
  reads.terms(termsOf(check));
  if (check.when !== null) reads.condition(check.when);
  const own = layoutOf(scene, reads.matings, [check]);
  return relationOf(scene, {
    sort,
    id: check.id,
    reads,
    judge: (scope, values) => {
      const found = judgeMeetings({ ...scene.configuration(scope, values), layout: own });
      const computed = found
        .filter(({ form, id }) => form === 'check' && id === check.id)
        .map((one) => ({ ...one, state: one.computed }));
      return computed.length === 0 ? { ...HOLDS, state: ifIdle } : worstOf(computed);
    },
  });
}
