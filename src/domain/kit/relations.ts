/**
 * Everything that the judge knows of a vehicle, as relations between places and matings: the
 * joints, the checks of the layout, what shares a choice, the rules, the statements, and what is
 * asked of places themselves. Each is judged by the judge itself, for the few places it reads.
 */

import type { Layout, Mating, Part, Rule } from '../catalogue/catalogue.js';
import type { Check } from '../check/check.js';
import { termsOf } from '../check/check.js';
import type { Outcome } from '../check/state.js';
import { classKey, partKey } from '../index/interning.js';
import { type Configuration, seatAt } from '../judge/configuration.js';
import { builtPairs } from '../judge/evidence.js';
import { settingOf } from '../judge/judge.js';
import { judgePlaces } from '../judge/place.js';
import { hasChoice } from '../judge/plan.js';
import { judgeRule } from '../judge/rule.js';
import { judgedForEach, outcomeForEach } from '../judge/supposed-constraints.js';
import { occupantOf, optionsAt, partsIn, partsPossibleIn } from './candidates.js';
import { choiceRelations } from './choice-relations.js';
import type { State } from './core/problem.js';
import { isGiven, judgeIn, keptForVehicle, layoutOf, readStatements } from './judged-in.js';
import { metByIndex } from './met-by-index.js';
import { Reads } from './reads.js';
import { HOLDS, type KitRelation, relationOf, STATES, worstOf } from './relation.js';
import type { Scene } from './scene.js';
import { statementRelations } from './statement-relations.js';

/** The relations of the vehicle, in the order of its layout. */
export function vehicleRelations(scene: Scene): KitRelation[] {
  const { layout } = scene.question.vehicle;
  const places = scene.places.map((_, variable) => placeRelation(scene, variable));
  const spans = spanRelations(scene);
  const matings = [...layout.matings.keys()].map((id) => matingRelation(scene, id));
  const checks = layout.checks.map((check) => checkRelation(scene, check));
  const joined = [...matings, ...checks];
  const rules = (scene.catalogue.rules.get(layout.id) ?? []).filter(
    ({ needs, excludes }) => needs !== null || excludes !== null,
  );
  return [
    ...places,
    ...spans,
    ...joined,
    ...choiceRelations(scene, joined),
    ...rules.map((rule) => ruleRelation(scene, rule)),
    ...statementRelations(scene, joined),
  ];
}

function placeRelation(scene: Scene, variable: number): KitRelation {
  const position = scene.places[variable]?.position;
  if (position === undefined) throw new RangeError(`no place ${variable}`);
  const reads = new Reads(scene);
  reads.change(position.id);
  return relationOf(scene, {
    sort: 'place',
    id: position.id,
    reads,
    // Parts are alike only where they are alike in everything that is recorded of them.
    keyOf: (one, value) => `${reads.keyOf(one, value)} ${recordKey(scene, one, value)}`,
    keptAs: () => keptForVehicle(scene, 'place', position.id),
    judge: (scope, values) => {
      if (isGiven(scene, values)) return HOLDS;
      const constraints = judgedForEach(scene.configuration(scope, values), (one) =>
        judgePlaces(one, [position]),
      );
      // Whether a piece fills all its places is a relation of its own.
      return worstOf(constraints.filter(({ code }) => code !== 'span-occupied'));
    },
  });
}

/** All that is recorded of the parts of a value, names and numbers left out. */
function recordKey(scene: Scene, variable: number, value: number): string {
  if (value === 0) return '';
  return partsIn(scene.seatValue(variable, value).seats)
    .map((id) => {
      const part = scene.catalogue.parts.get(id);
      return part === undefined ? id : partKey(part);
    })
    .join('/');
}

/** A piece that fills several places is in all of them, or in none. */
function spanRelations(scene: Scene): KitRelation[] {
  const { layout } = scene.question.vehicle;
  const groups = new Map<string, readonly string[]>();
  for (const { values } of scene.places) {
    for (const id of values.flatMap(({ seats }) => partsPossibleIn(seats))) {
      const spans = scene.catalogue.parts
        .get(id)
        ?.spans?.filter((one) => layout.positions.has(one));
      if (spans !== undefined && spans.length > 1) groups.set(spans.join('+'), spans);
    }
  }
  return [...groups].map(([id, spans]) => {
    const reads = new Reads(scene);
    for (const position of spans) reads.whole(position);
    return relationOf(scene, {
      sort: 'span',
      id,
      reads,
      judge: (scope, values) => {
        const outcome = outcomeForEach(scene.configuration(scope, values), (one) =>
          spanned(one, spans),
        );
        return { ...HOLDS, state: STATES[outcome] };
      },
    });
  });
}

function spanned({ judged, catalogue }: Configuration, spans: readonly string[]): Outcome {
  const standing = spans.map((position) => seatAt(judged, position, null)?.occupant);
  const pieces = standing.flatMap((one) => (one?.is === 'part' ? [one.part] : []));
  const fillsAll = (id: string): boolean => {
    const own = catalogue.parts.get(id)?.spans ?? null;
    if (own === null || !spans.every((position) => own.includes(position))) return true;
    return standing.every((one) => one?.is === 'part' && one.part === id);
  };
  return pieces.every(fillsAll) ? 'holds' : 'fails';
}

function matingRelation(scene: Scene, id: string): KitRelation {
  const layout = layoutOf(scene, [id], []);
  const mating = layout.matings.get(id);
  if (mating === undefined) throw new Error(`no mating ${id}`);
  const reads = new Reads(scene);
  for (const { position } of mating.ends) reads.change(position);
  reads.mating(id);
  const isStated = readStatements(
    scene,
    reads,
    mating.ends.map(({ position }) => position),
  );
  // Two pieces of one article share what they are, and what is equal cancels.
  if (sharesRole(mating, layout)) {
    for (const { position } of mating.ends) reads.whole(position);
  }
  const isUntold = mating.ends.some(({ position }) => hasOption(scene, position));
  const interfaces = new Map(
    mating.ends.map((end) => [scene.placeVariable(end.position), end.interface]),
  );
  const keyOf = (variable: number, value: number): string => {
    const face = interfaces.get(variable);
    const key = reads.keyOf(variable, value);
    return face === undefined || value === 0
      ? key
      : `${key} ${faceKey(scene, variable, value, face)}`;
  };
  return relationOf(scene, {
    sort: 'mating',
    id,
    reads,
    keyOf,
    // Two faces meet on any vehicle, unless somebody states something of this one, or a piece that
    // stays as it is, or is there anew, makes one of two joints given.
    keptAs: (values) =>
      isStated ||
      isUntold ||
      values.some((value, at) => hasStaying(scene, reads.scope[at] ?? 0, value))
        ? keptForVehicle(scene, 'mating', id)
        : `mating ${scene.question.vehicle.layout.id} ${id}`,
    nowKeyOf: (variable) => {
      const face = interfaces.get(variable);
      const now = reads.nowOf(variable);
      return face === undefined ? now : `${now} ${faceKey(scene, variable, 0, face)}`;
    },
    decide: isStated ? null : (scope, values) => decidedByIndex(scene, mating, scope, values),
    judge: (scope, values) =>
      worstOf(judgeIn(scene, layout, scope, values).filter(({ form }) => form === 'mating')),
  });
}

function decidedByIndex(
  scene: Scene,
  mating: Mating,
  scope: readonly number[],
  values: readonly number[],
): State | null {
  const valueAt = (variable: number) => values[scope.indexOf(variable)] ?? 0;
  const [left, right] = mating.ends.map(({ position }) => scene.placeVariable(position));
  if (left === undefined || right === undefined) return null;
  const between = scene.matingVariable(mating.id);
  const outcome = metByIndex(scene, mating, {
    left: scene.seatValue(left, valueAt(left)),
    right: scene.seatValue(right, valueAt(right)),
    isLeftNow: valueAt(left) === 0,
    isRightNow: valueAt(right) === 0,
    row: between === null ? [] : scene.row(between, valueAt(between)),
    isRowNow: between === null || valueAt(between) === 0,
  });
  return outcome === null ? null : STATES[outcome];
}

/** Whether a fact that nobody told says what stands there now. */
function hasOption(scene: Scene, position: string): boolean {
  const { seats } = scene.seatValue(scene.placeVariable(position), 0);
  return optionsAt(seats, 'left').length + optionsAt(seats, 'right').length > 0;
}

/** Whether a hand of a changed place holds what it holds now, be it anew. */
function hasStaying(scene: Scene, variable: number, value: number): boolean {
  if (value === 0 || variable >= scene.places.length) return false;
  const { seats, renewed } = scene.seatValue(variable, value);
  return renewed.length > 0 || (seats.hands && scene.seatChanges(variable, value).length < 2);
}

function sharesRole({ ends: [a, b] }: Mating, { positions }: Layout): boolean {
  const roles = positions.get(a.position)?.roles ?? [];
  return roles.some((role) => positions.get(b.position)?.roles.includes(role) === true);
}

/** What each piece at a place has to offer at a face. */
function faceKey(scene: Scene, variable: number, value: number, name: string): string {
  const { seats } = scene.seatValue(variable, value);
  const hands = seats.hands ? (['left', 'right'] as const) : [null];
  return hands
    .map((hand) => {
      const occupant = occupantOf(seats, hand);
      if (occupant.is !== 'part') return occupant.is;
      const part = scene.catalogue.parts.get(occupant.part);
      return part === undefined ? occupant.part : faceKeyOf(scene, part, name);
    })
    .join('/');
}

function faceKeyOf(scene: Scene, part: Part, name: string): string {
  const face = part.faces.get(name);
  // Who met whom on a vehicle, and what fills two places, is told by article.
  const isMet = metFaces(scene).has(`${part.id}.${name}`);
  if (face === undefined) return isMet ? part.id : part.roles.join();
  if (face.isAbsent) return isMet ? part.id : 'absent';
  const own = isMet || part.spans !== null || hasChoice(part) ? part.id : '';
  return `${own} ${face.isOptional ? 'optional' : 'needed'} ${classKey(face)}`;
}

const metByPairs = new WeakMap<ReturnType<typeof builtPairs>, ReadonlySet<string>>();

/** The faces that some vehicle was built with, as `part.face`. */
function metFaces({ question }: Scene): ReadonlySet<string> {
  const pairs = builtPairs(question.pairsOf);
  let known = metByPairs.get(pairs);
  if (known === undefined) {
    known = new Set([...pairs.keys()].flatMap((key) => key.split('|')));
    metByPairs.set(pairs, known);
  }
  return known;
}

function checkRelation(scene: Scene, check: Check): KitRelation {
  const reads = new Reads(scene);
  reads.terms(termsOf(check));
  if (check.when !== null) reads.condition(check.when);
  const layout = layoutOf(scene, reads.matings, [check]);
  // What sits in a mating speaks of its two ends.
  for (const mating of layout.matings.values()) {
    for (const { position } of mating.ends) reads.change(position);
  }
  const positions = reads.scope.map((variable) => scene.nameOf(variable));
  readStatements(scene, reads, positions);
  return relationOf(scene, {
    sort: 'check',
    id: check.id,
    reads,
    keptAs: () => keptForVehicle(scene, 'check', check.id),
    judge: (scope, values) =>
      worstOf(
        judgeIn(scene, layout, scope, values).filter(
          (one) => one.form === 'check' && one.id === check.id,
        ),
      ),
  });
}

function ruleRelation(scene: Scene, rule: Rule): KitRelation {
  const reads = new Reads(scene);
  for (const condition of [rule.when, rule.needs, rule.excludes]) {
    if (condition !== null) reads.condition(condition);
  }
  return relationOf(scene, {
    sort: 'rule',
    id: rule.id,
    reads,
    keptAs: () => keptForVehicle(scene, 'rule', rule.id),
    judge: (scope, values) => {
      if (isGiven(scene, values)) return HOLDS;
      const constraints = judgedForEach(scene.configuration(scope, values), (one) => {
        const constraint = judgeRule(rule, one, settingOf(one));
        return constraint === null ? [] : [constraint];
      });
      return worstOf(constraints);
    },
  });
}
