/**
 * Compiles rules, each for every layout that it speaks of.
 */

import { type ConditionScope, compileCondition } from '../check/compile.js';
import type { Evidence, Rule } from './catalogue.js';
import type { RuleRecord } from './document.js';
import { at, type Fault, FaultList } from './faults.js';
import { present } from './holes.js';
import type { LayoutScope } from './layout-scope.js';
import { ANY_NAME } from './scope.js';

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
    checkLayouts(record, names, at(pointer, 'layouts'), list);
    const compiled = compileEverywhere(record, names, inherited, pointer, list);
    for (const [layout, rule] of compiled) rules.get(layout)?.push(rule);
  }
  return rules;
}

function checkEffects(record: RuleRecord, pointer: string, list: FaultList): void {
  const effects = ['needs', 'excludes', 'note', 'caution'] as const;
  const isThere = effects.some(
    (effect) => record[effect] !== undefined || list.isUnread(at(pointer, effect)),
  );
  if (isThere) return;
  const text = 'A rule needs an effect: "needs", "excludes", "note" or "caution".';
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

type Compiled = readonly [layout: string, rule: Rule][];

interface Attempt {
  readonly layout: string;
  /** Null where it has faults, or names what has. */
  readonly rule: Rule | null;
  readonly list: FaultList;
}

/**
 * Compiles a rule for every layout that it speaks of. Where it names none, it speaks of all
 * layouts that know its words, and has a fault only if no layout does: those of the layout that
 * comes nearest to it. Where no layout can be asked, only its form is looked at.
 */
function compileEverywhere(
  record: RuleRecord,
  names: RuleNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Compiled {
  const attempts = attemptsOf(record, names, inherited, pointer, list);
  if (attempts.length === 0) compileRule(record, ANY_NAME, inherited, pointer, list);
  const isNamed = record.layouts !== undefined;
  const clean = attempts.filter((one) => one.list.isClean);
  if (isNamed || clean.length > 0) {
    sayOnce(isNamed ? attempts : clean, list);
  } else if (!list.lost.hasAny('layouts')) {
    const [nearest] = attempts.sort((a, b) => a.list.faults.length - b.list.faults.length);
    if (nearest !== undefined) sayOnce([nearest], list);
  }
  return attempts.flatMap(({ layout, rule }) => (rule === null ? [] : [[layout, rule] as const]));
}

function attemptsOf(
  record: RuleRecord,
  { scopes }: RuleNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Attempt[] {
  // Which layouts were meant by a list that cannot be read, nobody can say.
  if (list.isUnread(at(pointer, 'layouts'))) return [];
  const wanted = record.layouts ?? [...scopes.keys()];
  return wanted.flatMap((layout) => {
    const scope = scopes.get(layout);
    if (scope === undefined) return [];
    const own = new FaultList(list.lost);
    return { layout, rule: compileRule(record, scope, inherited, pointer, own), list: own };
  });
}

/**
 * What several layouts say of one place, in the words of the first that says it, and with its
 * name where others have nothing to say.
 */
function sayOnce(attempts: readonly Attempt[], list: FaultList): void {
  for (const { pointer, code, text } of saidOnce(attempts, (own) => own.faults)) {
    list.fault(pointer, code, text);
  }
  for (const { pointer, code, text } of saidOnce(attempts, (own) => own.warnings)) {
    list.warn(pointer, code, text);
  }
}

function saidOnce<Code extends string>(
  attempts: readonly Attempt[],
  saidIn: (list: FaultList) => readonly Fault<Code>[],
): Fault<Code>[] {
  const said = new Map<string, { readonly fault: Fault<Code>; readonly layouts: string[] }>();
  for (const { layout, list } of attempts) {
    for (const fault of saidIn(list)) {
      const key = `${fault.code} ${fault.pointer}`;
      const known = said.get(key) ?? { fault, layouts: [] };
      known.layouts.push(layout);
      said.set(key, known);
    }
  }
  return [...said.values()].map(({ fault, layouts }) => {
    const [first = ''] = layouts;
    const where = layouts.length < attempts.length ? ` So it is in the layout "${first}".` : '';
    return { ...fault, text: `${fault.text}${where}` };
  });
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
  const isWhole =
    (record.needs === undefined || needs !== null) &&
    (record.excludes === undefined || excludes !== null);
  if (when === null || !isWhole) return null;
  const { id, note = null, caution = null, because } = record;
  const evidence = { ...inherited, ...record.evidence };
  return { id, when, needs, excludes, note, caution, because, evidence };
}
