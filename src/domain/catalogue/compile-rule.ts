/**
 * Compiles rules, each for every layout that it speaks of.
 */

import { type ConditionScope, compileCondition } from '../check/compile.js';
import type { Evidence, Rule } from './catalogue.js';
import { compileConsumption, compileRecommendation } from './compile-effect.js';
import type { RuleRecord } from './document.js';
import { compileEverywhere } from './everywhere.js';
import { evidenceWithin } from './evidence-within.js';
import { at, type FaultList } from './faults.js';
import { present } from './holes.js';
import type { LayoutScope } from './layout-scope.js';

export interface RuleNames {
  readonly scopes: ReadonlyMap<string, LayoutScope>;
  readonly layoutIds: ReadonlySet<string>;
}

/** By layout: the rules that speak of it, in the order of the document. */
export function compileRules(
  records: readonly (readonly [RuleRecord, string])[],
  names: RuleNames,
  inherited: Evidence,
  list: FaultList,
): Map<string, Rule[]> {
  const rules = new Map<string, Rule[]>([...names.scopes.keys()].map((id) => [id, []]));
  for (const [record, pointer] of records) {
    checkEffects(record, pointer, list);
    const place = at(pointer, 'layouts');
    checkLayouts(record, names, place, list);
    // Which layouts were meant by a list that cannot be read, nobody can say.
    const layouts = list.isUnread(place) ? [] : (record.layouts ?? null);
    const compile = (scope: ConditionScope, own: FaultList) =>
      compileRule(record, scope, inherited, pointer, own);
    for (const [layout, rule] of compileEverywhere({ layouts, compile }, names.scopes, list)) {
      rules.get(layout)?.push(rule);
    }
  }
  return rules;
}

const EFFECTS = ['needs', 'excludes', 'recommends', 'consumes', 'note', 'caution'] as const;

function checkEffects(record: RuleRecord, pointer: string, list: FaultList): void {
  const isThere = EFFECTS.some(
    (effect) => record[effect] !== undefined || list.isUnread(at(pointer, effect)),
  );
  if (isThere) return;
  const words = EFFECTS.map((effect) => `"${effect}"`);
  const text = `A rule needs an effect: ${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}.`;
  list.fault(pointer, 'missing-field', text);
}

function checkLayouts(
  record: RuleRecord,
  { layoutIds }: RuleNames,
  pointer: string,
  list: FaultList,
): void {
  for (const [id, place] of present(record.layouts ?? [], pointer)) {
    if (layoutIds.has(id)) continue;
    list.unknown(id, { sort: 'layouts', pointer: place, known: layoutIds });
  }
}

function compileRule(
  record: RuleRecord,
  scope: ConditionScope,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Rule | null {
  const condition = (key: 'when' | 'needs' | 'excludes') =>
    record[key] === undefined ? null : compileCondition(record[key], scope, at(pointer, key), list);
  const when = condition('when');
  const needs = condition('needs');
  const excludes = condition('excludes');
  const effect = <Raw, Made>(
    key: 'recommends' | 'consumes',
    raw: Raw | undefined,
    compile: (raw: Raw, scope: ConditionScope, pointer: string, list: FaultList) => Made | null,
  ) => (raw === undefined ? null : compile(raw, scope, at(pointer, key), list));
  const recommends = effect('recommends', record.recommends, compileRecommendation);
  const consumes = effect('consumes', record.consumes, compileConsumption);
  const effects = { needs, excludes, recommends, consumes };
  const isWhole = (['needs', 'excludes', 'recommends', 'consumes'] as const).every(
    (key) => record[key] === undefined || effects[key] !== null,
  );
  if (when === null || !isWhole) return null;
  const { id, note = null, caution = null, because } = record;
  const evidence = evidenceWithin(inherited, record.evidence);
  return { id, when, ...effects, note, caution, because, evidence };
}
