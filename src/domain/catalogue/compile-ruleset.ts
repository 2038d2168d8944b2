/**
 * Compiles rulesets: what an authority or a rule book demands, each demand in the words of every
 * layout that has them.
 */

import type { Check } from '../check/check.js';
import { compileCheck } from '../check/compile.js';
import { type ConditionScope, unknownName } from '../check/compile-scope.js';
import { checkMonths } from './compile-part.js';
import type { RulesetRecord } from './document.js';
import { compileEverywhere } from './everywhere.js';
import { at, type FaultList } from './faults.js';
import { present } from './holes.js';
import type { LayoutScope } from './layout-scope.js';
import type { Demands, Ruleset } from './trade.js';

export function compileRuleset(
  record: RulesetRecord,
  scopes: ReadonlyMap<string, LayoutScope>,
  pointer: string,
  list: FaultList,
): Ruleset {
  checkMonths(record.valid, at(pointer, 'valid'), list);
  const place = at(pointer, 'demands');
  const keep = compileKept(record, scopes, at(place, 'keep'), list);
  const checks = compileDemandedChecks(record, scopes, at(place, 'checks'), list);
  const count = (record.demands.keep?.length ?? 0) + (record.demands.checks?.length ?? 0);
  if (count === 0 && !list.isTouched(place)) {
    const text = 'A ruleset demands something: positions to "keep", or "checks".';
    list.fault(place, 'missing-field', text);
  }
  const demands = new Map<string, Demands>();
  for (const layout of scopes.keys()) {
    const kept = keep.get(layout) ?? [];
    const checked = checks.get(layout) ?? [];
    const isWhole = kept.length + checked.length === count;
    demands.set(layout, { keep: kept, checks: checked, isWhole });
  }
  const { id, name = null, valid, cite } = record;
  return { id, name, valid, cite, demands };
}

/** By layout: the positions that stay as they are. */
function compileKept(
  record: RulesetRecord,
  scopes: ReadonlyMap<string, LayoutScope>,
  pointer: string,
  list: FaultList,
): Map<string, string[]> {
  const kept = new Map<string, string[]>();
  for (const [position, place] of present(record.demands.keep ?? [], pointer)) {
    const compile = (scope: ConditionScope, own: FaultList) => {
      if (scope.positions.has(position)) return position;
      unknownName({ raw: {}, scope, pointer: place, list: own }, 'positions', position);
      return null;
    };
    for (const [layout] of compileEverywhere({ layouts: null, compile }, scopes, list)) {
      kept.set(layout, [...(kept.get(layout) ?? []), position]);
    }
  }
  return kept;
}

/** By layout: the checks that it has the words for, each with an id of its own. */
function compileDemandedChecks(
  record: RulesetRecord,
  scopes: ReadonlyMap<string, LayoutScope>,
  pointer: string,
  list: FaultList,
): Map<string, Check[]> {
  const checks = new Map<string, Check[]>();
  const taken = new Map<string, number>();
  const said = new Set<number>();
  for (const [raw, place, index] of present(record.demands.checks ?? [], pointer)) {
    const compile = (scope: ConditionScope, own: FaultList) => compileCheck(raw, scope, place, own);
    for (const [layout, check] of compileEverywhere({ layouts: null, compile }, scopes, list)) {
      const first = taken.get(check.id) ?? index;
      taken.set(check.id, first);
      checks.set(layout, [...(checks.get(layout) ?? []), check]);
      // Said once, however many layouts there are.
      if (first === index || said.has(index)) continue;
      said.add(index);
      const text = `Two checks are called "${check.id}"; give one an "id" of its own.`;
      list.fault(place, 'duplicate-id', text);
    }
  }
  return checks;
}
