/**
 * Reads checks and conditions as a document writes them into the compiled form. Every fault is
 * said; a doubtful but legal check (a bore compared by `equal`) is a warning.
 */

import type { Text } from '../catalogue/document.js';
import { at, type FaultList, hint, quoted } from '../catalogue/faults.js';
import { ID_PATTERN } from '../catalogue/grammar.js';
import { isObject, readText } from '../catalogue/read-text.js';
import type { Check, Condition, Spelling } from './check.js';
import { SPELLINGS } from './check.js';
import { type Body, compileBody } from './compile-body.js';
import { type ConditionScope, type Place, unknownName } from './compile-scope.js';
import type { Severity } from './state.js';
import type { Term } from './term.js';

export type { ConditionScope } from './compile-scope.js';

export const COMMON_KEYS = ['id', 'severity', 'code', 'text', 'when'] as const;
export const OWN_KEYS: Readonly<Record<Spelling, readonly string[]>> = {
  equal: [],
  'one-of': [],
  clearance: ['min', 'max'],
  'at-least': [],
  'at-most': [],
  within: ['tolerance'],
  coincide: ['tolerance'],
  agree: ['coupling', 'whenEmpty'],
  carries: ['demand'],
};

export const POSITION_TESTS = ['changed', 'kept', 'opened', 'empty'] as const;

/** How deep conditions may nest; deeper documents are mistakes or attacks. */
const DEEPEST = 16;

const LONGEST_ID = 64;

/** Compiles one check, or says its faults and gives null. */
export function compileCheck(
  raw: unknown,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
  depth = 0,
): Check | null {
  if (!isObject(raw)) {
    list.fault(pointer, 'not-a-check', `A check is an object with one of ${words()}.`);
    return null;
  }
  const place: Place = { raw, scope, pointer, list };
  const spellings = SPELLINGS.filter((word) => Object.hasOwn(raw, word));
  const [spelling] = spellings;
  if (spelling === undefined || spellings.length > 1) {
    const odd = Object.keys(raw).find((key) => !isCommon(key)) ?? '';
    const guess = spelling === undefined ? hint(odd, SPELLINGS) : '';
    list.fault(pointer, 'not-a-check', `A check needs exactly one of ${words()}.${guess}`);
    return null;
  }
  const before = list.faultCount;
  checkKeys(place, spelling);
  const body = compileBody(place, spelling);
  const common = compileCommon(place, depth);
  if (body === null || common === null || list.faultCount > before) return null;
  const id = typeof raw.id === 'string' ? raw.id : defaultId(spelling, body);
  return { ...common, ...body, id, spelling };
}

/** Compiles a list of checks, each with an id of its own. */
export function compileChecks(
  raw: readonly unknown[],
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
  taken: ReadonlySet<string> = new Set(),
): Check[] {
  const checks = new Map<string, Check>();
  for (const [index, item] of raw.entries()) {
    const place = at(pointer, index);
    const check = compileCheck(item, scope, place, list);
    if (check === null) continue;
    if (checks.has(check.id)) {
      const text = `Two checks are called "${check.id}"; give one an "id" of its own.`;
      list.fault(place, 'duplicate-id', text);
    } else if (taken.has(check.id)) {
      const text = `A mating and a check are both called "${check.id}".`;
      list.fault(place, 'duplicate-id', text);
    }
    checks.set(check.id, check);
  }
  return [...checks.values()];
}

function words(): string {
  return SPELLINGS.map((word) => `"${word}"`).join(', ');
}

function isCommon(key: string): boolean {
  return COMMON_KEYS.some((word) => word === key);
}

function checkKeys({ raw, pointer, list }: Place, spelling: Spelling): void {
  const known = [...COMMON_KEYS, spelling, ...OWN_KEYS[spelling]];
  for (const key of Object.keys(raw)) {
    if (known.includes(key)) continue;
    const text = `A check by "${spelling}" has no ${quoted(key)}.${hint(key, known)}`;
    list.fault(at(pointer, key), 'unknown-field', text);
  }
}

function compileCommon(place: Place, depth: number) {
  const { raw, scope, pointer, list } = place;
  for (const key of ['id', 'code'] as const) {
    const value = raw[key];
    if (value === undefined || (typeof value === 'string' && ID_PATTERN.test(value))) continue;
    const text = `"${key}" is a word of small letters, digits and dashes, at most 64.`;
    list.fault(at(pointer, key), 'not-an-id', text);
  }
  const severity = Object.hasOwn(raw, 'severity') ? raw.severity : 'must';
  if (severity !== 'must' && severity !== 'caution') {
    const text = '"severity" is "must" (default) or "caution".';
    list.fault(at(pointer, 'severity'), 'not-one-of', text);
  }
  const text = compileText(raw.text, at(pointer, 'text'), list);
  const code = typeof raw.code === 'string' ? raw.code : null;
  const common = { severity: severity as Severity, code, text };
  if (raw.when === undefined) return { ...common, when: null };
  const when = compileCondition(raw.when, scope, at(pointer, 'when'), list, depth + 1);
  return when === null ? null : { ...common, when };
}

/** A text, or texts by language. */
export function compileText(raw: unknown, pointer: string, list: FaultList): Text | null {
  return raw === undefined ? null : (readText(raw, pointer, list) ?? null);
}

/** `equal-pattern`, `clearance-bore-pin`: the spelling and the last words of the names. */
function defaultId(spelling: Spelling, body: Body): string {
  const terms = 'right' in body ? [body.left, body.right] : [body.left];
  const names = terms.map(lastWord).filter((word) => word !== null);
  return [spelling, ...new Set(names)].join('-').slice(0, LONGEST_ID);
}

function lastWord(term: Term): string | null {
  if (term.op === 'named') return term.name;
  if (term.op !== 'reference') return null;
  const { reference } = term;
  switch (reference.of) {
    case 'side':
    case 'face':
      return reference.parameter;
    case 'value':
    case 'adapter':
      return reference.value;
    case 'fact':
      return reference.fact;
    default:
      return reference.of;
  }
}

/** Compiles one condition, or says its faults and gives null. */
export function compileCondition(
  raw: unknown,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
  depth = 0,
): Condition | null {
  if (depth > DEEPEST) {
    list.fault(pointer, 'too-deep', `Conditions may nest ${DEEPEST} deep at most.`);
    return null;
  }
  if (!isObject(raw)) {
    list.fault(pointer, 'not-a-condition', 'A condition is an object: {"changed": "gearbox"}.');
    return null;
  }
  const place: Place = { raw, scope, pointer, list };
  const keys = Object.keys(raw);
  const [key] = keys;
  if (keys.length === 2 && Object.hasOwn(raw, 'mating') && Object.hasOwn(raw, 'adapter')) {
    return compileAdapterTest(place);
  }
  if (keys.length === 1 && key !== undefined) {
    const here: Place = { ...place, pointer: at(pointer, key) };
    const test = POSITION_TESTS.find((word) => word === key);
    if (test !== undefined) return compilePositionTest(test, here);
    if (key === 'all' || key === 'any') return compileJoin(key, here, depth);
    if (key === 'not') {
      const of = compileCondition(raw.not, scope, here.pointer, list, depth + 1);
      return of === null ? null : { test: 'not', of };
    }
  }
  return compileCheckTest(place, depth);
}

/** What is none of the conditions is a check, or was meant as one of both. */
function compileCheckTest({ raw, scope, pointer, list }: Place, depth: number): Condition | null {
  if (SPELLINGS.some((word) => Object.hasOwn(raw, word))) {
    const check = compileCheck(raw, scope, pointer, list, depth);
    return check === null ? null : { test: 'check', check };
  }
  const known = [...POSITION_TESTS, 'all', 'any', 'not', 'mating', ...SPELLINGS];
  const odd = Object.keys(raw).find((key) => !known.includes(key)) ?? '';
  const text =
    'A condition is one of "changed", "kept", "opened", "empty" with a position, "all", "any", ' +
    `"not", a "mating" with an "adapter", or a check.${hint(odd, known)}`;
  list.fault(pointer, 'not-a-condition', text);
  return null;
}

function compilePositionTest(
  test: (typeof POSITION_TESTS)[number],
  place: Place,
): Condition | null {
  const position = place.raw[test];
  if (typeof position === 'string' && place.scope.positions.has(position)) {
    return { test, position };
  }
  unknownName(place, 'positions', position);
  return null;
}

function compileAdapterTest(place: Place): Condition | null {
  const { raw, scope, pointer } = place;
  const { mating, adapter } = raw;
  const isMating = typeof mating === 'string' && scope.matings.has(mating);
  const isPart = typeof adapter === 'string' && scope.parts.has(adapter);
  if (!isMating) unknownName({ ...place, pointer: at(pointer, 'mating') }, 'matings', mating);
  if (!isPart) unknownName({ ...place, pointer: at(pointer, 'adapter') }, 'parts', adapter);
  return isMating && isPart ? { test: 'adapter', mating, part: adapter } : null;
}

function compileJoin(
  test: 'all' | 'any',
  { raw, scope, pointer, list }: Place,
  depth: number,
): Condition | null {
  const items = raw[test];
  if (!Array.isArray(items) || items.length === 0) {
    list.fault(pointer, 'not-a-list', `"${test}" joins a list of conditions.`);
    return null;
  }
  const of: Condition[] = [];
  for (const [index, item] of items.entries()) {
    const condition = compileCondition(item, scope, at(pointer, index), list, depth + 1);
    if (condition !== null) of.push(condition);
  }
  return of.length === items.length ? { test, of } : null;
}
