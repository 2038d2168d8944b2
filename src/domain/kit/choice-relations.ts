/**
 * Joints and checks that share a choice, judged together: one length, one setting, one alternative
 * must serve them all. Which of them share one hangs on the parts, so all that may are taken.
 */

import type { Check } from '../check/check.js';
import { termsOf } from '../check/check.js';
import type { Constraint } from '../judge/constraint.js';
import { judgeMeetings } from '../judge/judge.js';
import { hasChoice } from '../judge/plan.js';
import { partsPossibleIn } from './candidates.js';
import { STATE } from './core/problem.js';
import { judgeIn, keptForVehicle, layoutOf } from './judged-in.js';
import { Reads } from './reads.js';
import { HOLDS, type Judged, type KitRelation, relationOf, worstOf } from './relation.js';
import type { Scene } from './scene.js';

/** Whether some value of a variable leaves something to choose. */
function offersChoice(scene: Scene, variable: number): boolean {
  return Array.from({ length: scene.sizeOf(variable) }, (_, value) => value).some((value) =>
    choosesAt(scene, variable, value),
  );
}

function choosesAt(scene: Scene, variable: number, value: number): boolean {
  const ids =
    variable < scene.places.length
      ? partsPossibleIn(scene.seatValue(variable, value).seats)
      : scene.row(variable, value);
  return ids.some((id) => {
    const part = scene.catalogue.parts.get(id);
    return part !== undefined && hasChoice(part);
  });
}

/**
 * Relations that may share a choice are judged together, since one choice must serve them all.
 *
 * @param demanded the checks of the question's ruleset, each of which is a relation among those
 * that are joined
 */
export function choiceRelations(
  scene: Scene,
  joined: readonly KitRelation[],
  demanded: readonly Check[] = [],
): KitRelation[] {
  const groups: { choosers: Set<number>; members: Set<KitRelation> }[] = [];
  for (let variable = 0; variable < scene.variables; variable += 1) {
    if (!offersChoice(scene, variable)) continue;
    const members = new Set(joined.filter(({ scope }) => scope.includes(variable)));
    const choosers = new Set([variable]);
    for (const group of groups.filter((one) => [...one.members].some((own) => members.has(own)))) {
      for (const own of group.members) members.add(own);
      for (const own of group.choosers) choosers.add(own);
      groups.splice(groups.indexOf(group), 1);
    }
    groups.push({ choosers, members });
  }
  return groups
    .filter(({ members }) => members.size > 0)
    .map(({ choosers, members }) => choiceRelation(scene, choosers, [...members], demanded));
}

function choiceRelation(
  scene: Scene,
  choosers: ReadonlySet<number>,
  members: readonly KitRelation[],
  demanded: readonly Check[],
): KitRelation {
  const { layout } = scene.question.vehicle;
  const reads = new Reads(scene);
  for (const variable of new Set(members.flatMap(({ scope }) => scope))) {
    const name = scene.nameOf(variable);
    if (variable < scene.places.length) reads.change(name);
    else reads.mating(name);
  }
  const ids = members.filter(({ sort }) => sort === 'mating').map(({ id }) => id);
  const isMember = (own: KitRelation['sort'], { id }: Check) =>
    members.some((member) => member.sort === own && member.id === id);
  const demands = demanded.filter((check) => isMember('demand', check) || isMember('want', check));
  const checks = [...layout.checks.filter((check) => isMember('check', check)), ...demands];
  for (const check of checks) {
    reads.terms(termsOf(check));
    if (check.when !== null) reads.condition(check.when);
  }
  const own = layoutOf(scene, [...ids, ...reads.matings], checks);
  const name = [...choosers].map((variable) => scene.nameOf(variable)).join('+');
  const memberKey = (variable: number, value: number): string =>
    members.flatMap(({ scope, classes }) => classes[scope.indexOf(variable)]?.[value] ?? []).join();
  // What a ruleset demands is of this question alone.
  const kept = {
    keptAs: () => keptForVehicle(scene, 'choice', name),
    keptKeyOf: (variable: number, value: number) => scene.articlesOf(variable, value),
  };
  return relationOf(scene, {
    sort: 'choice',
    id: name,
    reads,
    ...(demands.length === 0 ? kept : {}),
    keyOf: (variable, value) =>
      choosesAt(scene, variable, value)
        ? `${memberKey(variable, value)} ${value}`
        : memberKey(variable, value),
    judge: (scope, values) => {
      // What may be there may be one that leaves a choice, where a works option stands.
      const isIdle = !scope.some((variable, at) => choosesAt(scene, variable, values[at] ?? 0));
      if (isIdle) return HOLDS;
      const found =
        demands.length === 0
          ? judgeIn(scene, own, scope, values)
          : judgeMeetings({ ...scene.configuration(scope, values), layout: own });
      const choices = found.filter(({ form }) => form === 'choice');
      return blamed(scene, worstOf(choices.map((one) => demandedOf(one, demands))));
    },
  });
}

/** What is demanded of a vehicle is demanded of all of it, touched or not. */
function demandedOf(constraint: Constraint, demands: readonly Check[]): Constraint {
  if (constraint.form !== 'choice') return constraint;
  const isDemanded = constraint.checks.some(({ check }) => demands.includes(check));
  return isDemanded ? { ...constraint, state: constraint.computed } : constraint;
}

/** Only what the constraints speak of, of all that was read. */
function blamed(scene: Scene, judged: Judged): Judged {
  const [first] = judged.constraints;
  if (first === undefined || judged.state === STATE.holds) return judged;
  const places = first.positions.map((id) => scene.placeVariable(id));
  const matings = 'matings' in first ? first.matings : [];
  const rows = matings.flatMap((id) => scene.matingVariable(id) ?? []);
  return { ...judged, blame: [...places, ...rows].sort((a, b) => a - b) };
}
