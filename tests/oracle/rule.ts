/**
 * Rules: when one speaks, what it needs must hold and what it excludes must not. Like a check, a
 * rule that names something handed is run for each hand, and the worse counts.
 */

import type { RuleRecord } from '../../src/domain/catalogue/document.js';
import {
  checksIn,
  joinNames,
  judgeCondition,
  type Names,
  namesInCheck,
  namesInCondition,
} from './condition.js';
import type { Finding } from './finding.js';
import { handsOfNames, viewOf } from './layout-check.js';
import { type Outcome, opposite, worst } from './outcome.js';
import { basisOf, type Hand, type Scene } from './scene.js';
import { standingOf, stateOf } from './standing.js';
import type { RawCheck } from './trial.js';

export function findRules(scene: Scene): Finding[] {
  return (scene.document.rules ?? [])
    .filter(({ layouts }) => layouts?.includes(scene.layout.id) ?? true)
    .filter(({ needs, excludes, note, caution }) => {
      // What is only recommended or used up demands nothing.
      return [needs, excludes, note, caution].some((effect) => effect !== undefined);
    })
    .flatMap((rule) => {
      const { positions, matings, opened } = namesOf(rule, scene);
      const isOpened = opened.map((id) => scene.isOpened(id)).join();
      const name = `rule ${rule.id} ${scene.standing(positions, matings)} ${isOpened}`;
      return scene.memory.once(name, () => findRule(rule, scene)) ?? [];
    });
}

function namesOf({ id, when, needs, excludes }: RuleRecord, { layout, memory }: Scene): Names {
  return memory.once(`names in rule ${id}`, () =>
    joinNames([when, needs, excludes].map((one) => namesInCondition(one, layout))),
  );
}

function findRule(rule: RuleRecord, scene: Scene): Finding | null {
  const conditions = [rule.when, rule.needs, rule.excludes];
  const hands = handsOfNames(scene, joinNames(conditions.flatMap(checksIn).map(namesIn(scene))));
  const outcomes = hands.flatMap((hand) => outcomeAt(rule, scene, hand) ?? []);
  if (outcomes.length === 0) return null;
  const computed = worst(outcomes);
  const names = namesOf(rule, scene);
  const { ignorePresent } = scene.question;
  const state = stateOf(computed, standingOf(scene, names, null), { ignorePresent });
  const isDemand = rule.needs !== undefined || rule.excludes !== undefined;
  return {
    form: 'rule',
    id: rule.id,
    hand: null,
    severity: isDemand ? 'must' : 'caution',
    names,
    verdicts: [{ computed, state, basis: null, failsFirstHand: false }],
  };
}

function namesIn({ layout }: Scene): (raw: RawCheck) => Names {
  return (raw) => namesInCheck(raw, layout);
}

/** Null where the rule does not speak. */
function outcomeAt(rule: RuleRecord, scene: Scene, hand: Hand | null): Outcome | null {
  const view = viewOf(scene, 'judged', hand);
  const when = judgeCondition(rule.when, view);
  if (when === 'fails') return null;
  const demands: Outcome[] = [];
  if (rule.needs !== undefined) demands.push(judgeCondition(rule.needs, view));
  if (rule.excludes !== undefined) demands.push(opposite(judgeCondition(rule.excludes, view)));
  const demanded = worst(demands);
  if (demanded !== 'fails') return demanded;
  const isWeak = basisOf(scene.document, rule) === 'reported';
  return when === 'open' || isWeak ? 'open' : 'fails';
}
