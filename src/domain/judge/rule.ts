/**
 * Judges rules: when its condition holds, what a rule needs must hold and what it excludes must
 * not; notes and cautions are said.
 */

import type { Rule } from '../catalogue/catalogue.js';
import type { Condition } from '../check/check.js';
import type { Setting } from '../check/evaluator.js';
import { allOf, gradeOf, negation, type Outcome } from '../check/state.js';
import { handsOfConditions, judgeCondition, positionsOf, scopeOf } from './condition.js';
import type { Configuration } from './configuration.js';
import type { RuleConstraint } from './constraint.js';
import { standingOf, stateOf } from './standing.js';

export function judgeRules(configuration: Configuration, setting: Setting): RuleConstraint[] {
  const rules = configuration.catalogue.rules.get(configuration.layout.id) ?? [];
  return rules.flatMap((rule) => {
    return isSpoken(rule) ? (judgeRule(rule, configuration, setting) ?? []) : [];
  });
}

/** A rule that only recommends something or uses something up has nothing to judge. */
function isSpoken({ needs, excludes, note, caution }: Rule): boolean {
  return [needs, excludes, note, caution].some((effect) => effect !== null);
}

/** Like a check, a rule that reads a handed place is judged for each hand; the worse counts. */
export function judgeRule(
  rule: Rule,
  configuration: Configuration,
  setting: Setting,
): RuleConstraint | null {
  const conditions = [rule.when, rule.needs, rule.excludes].filter((one) => one !== null);
  const judged = handsOfConditions(conditions, configuration).flatMap((hand) => {
    const at = (condition: Condition) => judgeCondition(condition, configuration, setting, hand);
    const when = at(rule.when);
    return when === 'fails' ? [] : [{ when, outcome: weigh(rule, when, demandOf(rule, at)) }];
  });
  if (judged.length === 0) return null;
  const computed = allOf(judged.map(({ outcome }) => outcome));
  const when = allOf(judged.filter(({ outcome }) => outcome === computed).map((one) => one.when));
  const scope = scopeOf(conditions, [], configuration);
  const standing = standingOf(configuration, scope, null);
  const { ignorePresent } = configuration;
  const isDemand = rule.needs !== null || rule.excludes !== null;
  return {
    form: 'rule',
    conditions,
    id: rule.id,
    hand: null,
    positions: positionsOf(scope, configuration),
    state: stateOf(computed, standing, { ignorePresent, isAsked: false }),
    computed,
    severity: isDemand ? 'must' : 'caution',
    code: codeOf(rule, computed, when),
    basis: rule.evidence.basis,
    checks: [],
    missing: [],
    because: rule.because,
    note: rule.note,
    caution: rule.caution,
  };
}

function demandOf(rule: Rule, at: (condition: Condition) => Outcome): Outcome {
  const outcomes: Outcome[] = [];
  if (rule.needs !== null) outcomes.push(at(rule.needs));
  if (rule.excludes !== null) outcomes.push(negation(at(rule.excludes)));
  return allOf(outcomes);
}

/** Where it is open whether the rule speaks, or its evidence is weak, it cannot decide alone. */
function weigh(rule: Rule, when: Outcome, demanded: Outcome): Outcome {
  if (demanded !== 'fails') return demanded;
  if (when === 'open') return 'open';
  return gradeOf(rule.evidence.basis) === 'opens-only' ? 'open' : 'fails';
}

function codeOf(rule: Rule, computed: Outcome, when: Outcome): string {
  if (computed === 'holds') return 'rule-met';
  if (computed === 'open') return when === 'open' ? 'rule-may-apply' : 'rule-open';
  return rule.needs === null ? 'rule-excludes' : 'rule-needs';
}
