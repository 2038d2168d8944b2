/**
 * Reads checks and conditions as a document writes them into the compiled form. Every fault is
 * said; a doubtful but legal check (a bore compared by `equal`) is a warning.
 */

import type { Text } from '../catalogue/document.js';
import { at, type FaultList, hint } from '../catalogue/faults.js';
import { type Rational, ZERO } from '../quantity/rational.js';
import type { Check, Condition, Spelling } from './check.js';
import { SPELLINGS } from './check.js';
import type { Severity } from './state.js';
import {
  compileTerm,
  type Reference,
  readLiteral,
  referencesOf,
  type Scope,
  shapeOf,
  type Term,
} from './term.js';

/** What conditions may speak of beside values; kinds know neither positions nor matings. */
export interface ConditionScope extends Scope {
  readonly positions: ReadonlySet<string>;
  readonly matings: ReadonlySet<string>;
  readonly parts: ReadonlySet<string>;
  /** The two names that a shorthand such as `"equal": "pattern"` stands for, or null. */
  bothSides(name: string): readonly [string, string] | null;
  /** Whether a code is one that this reference can have; unknown codes are doubtful. */
  knowsCode(reference: Reference, code: string): boolean;
}

const COMMON_KEYS = ['id', 'severity', 'code', 'text', 'when'];
const OWN_KEYS: Readonly<Record<Spelling, readonly string[]>> = {
  equal: [],
  'one-of': [],
  clearance: ['min', 'max'],
  'at-least': [],
  'at-most': [],
  within: ['tolerance'],
  agree: ['coupling', 'whenEmpty'],
  carries: ['demand'],
};

const CODE = /^[a-z0-9][a-z0-9-]{0,63}$/;
const DEEPEST = 16;

type Raw = Readonly<Record<string, unknown>>;

interface Place {
  readonly raw: Raw;
  readonly scope: ConditionScope;
  readonly pointer: string;
  readonly list: FaultList;
}

/** Compiles one check, or says its faults and gives null. */
export function compileCheck(
  raw: unknown,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
  depth = 0,
): Check | null {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    list.fault(pointer, 'not-a-check', `A check is an object with one of ${words()}.`);
    return null;
  }
  const place: Place = { raw: raw as Raw, scope, pointer, list };
  const spellings = SPELLINGS.filter((word) => Object.hasOwn(raw, word));
  const [spelling] = spellings;
  if (spelling === undefined || spellings.length > 1) {
    const known = [...SPELLINGS];
    const odd = Object.keys(raw).find((key) => !COMMON_KEYS.includes(key)) ?? '';
    const guess = spelling === undefined ? hint(odd, known) : '';
    list.fault(pointer, 'not-a-check', `A check needs exactly one of ${words()}.${guess}`);
    return null;
  }
  const before = list.faults.length;
  checkKeys(place, spelling);
  const body = compileBody(place, spelling);
  const common = compileCommon(place, depth);
  if (body === null || list.faults.length > before) return null;
  const id = typeof place.raw.id === 'string' ? place.raw.id : defaultId(spelling, body);
  return { ...common, ...body, id, spelling } as Check;
}

function words(): string {
  return SPELLINGS.map((word) => `"${word}"`).join(', ');
}

function checkKeys({ raw, pointer, list }: Place, spelling: Spelling): void {
  const known = [...COMMON_KEYS, spelling, ...OWN_KEYS[spelling]];
  for (const key of Object.keys(raw)) {
    if (known.includes(key)) continue;
    const text = `A check by "${spelling}" has no "${key}".${hint(key, known)}`;
    list.fault(at(pointer, key), 'unknown-field', text);
  }
}

function compileCommon(place: Place, depth: number) {
  const { raw, scope, pointer, list } = place;
  for (const key of ['id', 'code'] as const) {
    const value = raw[key];
    if (value === undefined || (typeof value === 'string' && CODE.test(value))) continue;
    const text = `"${key}" is a word of small letters, digits and dashes, at most 64.`;
    list.fault(at(pointer, key), 'not-an-id', text);
  }
  const severity = raw.severity ?? 'must';
  if (severity !== 'must' && severity !== 'caution') {
    const text = '"severity" is "must" (default) or "caution".';
    list.fault(at(pointer, 'severity'), 'not-one-of', text);
  }
  const text = compileText(raw.text, at(pointer, 'text'), list);
  const when =
    raw.when === undefined
      ? null
      : compileCondition(raw.when, scope, at(pointer, 'when'), list, depth + 1);
  const code = typeof raw.code === 'string' ? raw.code : null;
  return { severity: severity as Severity, code, text, when };
}

/** A text, or texts by language. */
export function compileText(raw: unknown, pointer: string, list: FaultList): Text | null {
  if (raw === undefined) return null;
  if (typeof raw === 'string') return raw;
  const isTable = typeof raw === 'object' && raw !== null && !Array.isArray(raw);
  if (isTable && Object.values(raw).every((value) => typeof value === 'string')) {
    return raw as Text;
  }
  list.fault(pointer, 'not-a-text', 'A text is a string, or an object of texts by language.');
  return null;
}

type Body = Omit<Check, 'id' | 'spelling' | 'severity' | 'code' | 'text' | 'when'>;

function compileBody(place: Place, spelling: Spelling): Body | null {
  if (spelling === 'one-of') return compileOneOf(place);
  if (spelling === 'carries') return compileCarries(place);
  const pair = compilePair(place, spelling);
  if (pair === null) return null;
  const [left, right] = pair;
  if (spelling === 'equal') {
    warnEqualOfMeasures(place, left, right);
    return { primitive: 'equal', left, right } as Body;
  }
  if (!bothNumbers(place, spelling, left, right)) return null;
  if (spelling === 'agree') return compileAgree(place, left, right);
  return compileClearance(place, spelling, left, right);
}

function compilePair(place: Place, spelling: Spelling): [Term, Term] | null {
  const { raw, scope, pointer, list } = place;
  let pair = raw[spelling];
  const here = at(pointer, spelling);
  if (typeof pair === 'string') pair = scope.bothSides(pair) ?? pair;
  if (!Array.isArray(pair) || pair.length !== 2) {
    const text = `"${spelling}" compares two things: ["left", "right"].`;
    list.fault(here, 'not-a-pair', text);
    return null;
  }
  const left = compileTerm(pair[0], scope, at(here, 0), list);
  const right = compileTerm(pair[1], scope, at(here, 1), list);
  if (left === null || right === null) return null;
  const a = shapeOf(left);
  const b = shapeOf(right);
  const alike = a.is === b.is && a.is !== 'list';
  if (!alike || (a.is === 'number' && b.is === 'number' && a.dimension !== b.dimension)) {
    const text = `The two sides of "${spelling}" are not of one sort: ${said(a)} and ${said(b)}.`;
    list.fault(here, 'wrong-dimension', text);
    return null;
  }
  return [left, right];
}

function said(shape: ReturnType<typeof shapeOf>): string {
  if (shape.is === 'code') return 'a code';
  const dimension = shape.dimension === '1' ? 'a plain number' : shape.dimension;
  return shape.is === 'list' ? `a list of ${dimension}` : dimension;
}

function bothNumbers(place: Place, spelling: Spelling, left: Term, right: Term): boolean {
  if (shapeOf(left).is === 'number' && shapeOf(right).is === 'number') return true;
  const text = `"${spelling}" compares numbers; codes are compared with "equal" or "one-of".`;
  place.list.fault(at(place.pointer, spelling), 'not-a-number', text);
  return false;
}

/** `equal` on two measures can never hold: a measure is an interval. */
function warnEqualOfMeasures(place: Place, left: Term, right: Term): void {
  if (shapeOf(left).is !== 'number') return;
  if (!isMeasured(left) || !isMeasured(right)) return;
  const text =
    'Two measures are never exactly equal, so this check can only fail or stay open; ' +
    'compare them with "clearance" or "within".';
  place.list.warn(at(place.pointer, 'equal'), 'equal-of-measures', text);
}

function isMeasured(term: Term): boolean {
  return term.op === 'reference' && term.shape.is === 'number' && term.shape.measured === true;
}

function compileClearance(place: Place, spelling: Spelling, left: Term, right: Term): Body | null {
  const zero: Term = { op: 'literal', value: ZERO, dimension: dimensionOf(left), text: '0' };
  let min: Term | null = null;
  let max: Term | null = null;
  if (spelling === 'at-least') min = zero;
  else if (spelling === 'at-most') max = zero;
  else if (spelling === 'within') {
    const tolerance = compileLimit(place, 'tolerance', left);
    if (tolerance === undefined) return null;
    if (tolerance === null) {
      const text = '"within" needs a "tolerance".';
      place.list.fault(place.pointer, 'missing-field', text);
      return null;
    }
    max = tolerance;
    min = negated(tolerance);
  } else {
    const low = compileLimit(place, 'min', left);
    const high = compileLimit(place, 'max', left);
    if (low === undefined || high === undefined) return null;
    if (low === null && high === null) {
      const text = '"clearance" needs a "min", a "max", or both.';
      place.list.fault(place.pointer, 'missing-field', text);
      return null;
    }
    min = low;
    max = high;
  }
  return { primitive: 'clearance', left, right, min, max } as Body;
}

function negated(term: Term): Term {
  const minus = readLiteral('-1');
  if (minus === null) throw new Error('the literal -1 is not readable');
  return { op: 'product', terms: [{ op: 'literal', ...minus, text: '-1' }, term] };
}

function dimensionOf(term: Term): string {
  const shape = shapeOf(term);
  return shape.is === 'code' ? '1' : shape.dimension;
}

/** A limit: null where there is none, undefined where it is faulty. */
function compileLimit(place: Place, key: string, beside: Term): Term | null | undefined {
  const raw = place.raw[key];
  if (raw === undefined) return null;
  const here = at(place.pointer, key);
  const term = compileTerm(raw, place.scope, here, place.list);
  if (term === null) return undefined;
  if (shapeOf(term).is !== 'number' || dimensionOf(term) !== dimensionOf(beside)) {
    const text = `"${key}" is ${said(shapeOf(term))}, the check compares ${dimensionOf(beside)}.`;
    place.list.fault(here, 'wrong-dimension', text);
    return undefined;
  }
  return term;
}

function compileAgree(place: Place, left: Term, right: Term): Body | null {
  const { raw, scope, pointer, list } = place;
  if (raw.coupling === undefined) {
    const text = '"agree" needs a "coupling": the value that says how the two paths are joined.';
    list.fault(pointer, 'missing-field', text);
    return null;
  }
  const coupling = compileTerm(raw.coupling, scope, at(pointer, 'coupling'), list);
  if (coupling !== null && shapeOf(coupling).is !== 'code') {
    list.fault(at(pointer, 'coupling'), 'not-a-code', 'A "coupling" is a code, such as "open".');
    return null;
  }
  const whenEmpty = compileWhenEmpty(place);
  if (coupling === null || whenEmpty === null) return null;
  return { primitive: 'agree', left, right, coupling, whenEmpty } as Body;
}

function compileWhenEmpty({ raw, scope, pointer, list }: Place): Map<string, Term> | null {
  const table = new Map<string, Term>();
  if (raw.whenEmpty === undefined) return table;
  const here = at(pointer, 'whenEmpty');
  if (typeof raw.whenEmpty !== 'object' || raw.whenEmpty === null) {
    list.fault(here, 'not-an-object', '"whenEmpty" gives a factor for each position it names.');
    return null;
  }
  for (const [position, factor] of Object.entries(raw.whenEmpty)) {
    if (!scope.positions.has(position)) {
      list.fault(at(here, position), 'unknown-position', noPosition(position, scope));
      continue;
    }
    const term = compileTerm(factor, scope, at(here, position), list);
    if (term !== null) table.set(position, term);
  }
  return table;
}

function compileCarries(place: Place): Body | null {
  const { raw, scope, pointer, list } = place;
  const left = compileTerm(raw.carries, scope, at(pointer, 'carries'), list);
  if (raw.demand === undefined) {
    list.fault(pointer, 'missing-field', '"carries" needs a "demand": what the part must carry.');
    return null;
  }
  const right = compileTerm(raw.demand, scope, at(pointer, 'demand'), list);
  if (left === null || right === null || !bothNumbers(place, 'carries', left, right)) return null;
  if (dimensionOf(left) !== dimensionOf(right)) {
    const text = `A rating in ${dimensionOf(left)} cannot carry a demand in ${dimensionOf(right)}.`;
    list.fault(pointer, 'wrong-dimension', text);
    return null;
  }
  return { primitive: 'carries', left, right } as Body;
}

function compileOneOf(place: Place): Body | null {
  const { raw, scope, pointer, list } = place;
  const here = at(pointer, 'one-of');
  const pair = raw['one-of'];
  if (!Array.isArray(pair) || pair.length !== 2 || !Array.isArray(pair[1])) {
    list.fault(here, 'not-a-pair', '"one-of" is a name and a list: ["gearbox.part", ["a", "b"]].');
    return null;
  }
  const left = compileTerm(pair[0], scope, at(here, 0), list);
  if (left === null) return null;
  const items: readonly unknown[] = pair[1];
  if (items.length === 0) {
    list.fault(at(here, 1), 'empty-list', 'One of nothing can never hold.');
    return null;
  }
  const shape = shapeOf(left);
  if (shape.is === 'list') {
    list.fault(at(here, 0), 'not-a-number', 'A list is not one of several values.');
    return null;
  }
  const options =
    shape.is === 'code' ? codesOf(items, left, place) : numbersOf(items, shape.dimension, place);
  return options === null ? null : ({ primitive: 'one-of', left, options } as Body);
}

function codesOf(items: readonly unknown[], left: Term, { scope, pointer, list }: Place) {
  const here = at(at(pointer, 'one-of'), 1);
  const codes: string[] = [];
  for (const [index, item] of items.entries()) {
    if (typeof item !== 'string') {
      list.fault(at(here, index), 'not-a-code', 'A code is a string.');
      continue;
    }
    for (const reference of referencesOf(left)) {
      if (scope.knowsCode(reference, item)) continue;
      list.warn(at(here, index), 'unknown-code', `Nothing recorded has "${item}" here.`);
    }
    codes.push(item);
  }
  return codes.length === items.length ? { codes } : null;
}

function numbersOf(items: readonly unknown[], dimension: string, { pointer, list }: Place) {
  const here = at(at(pointer, 'one-of'), 1);
  const numbers: Rational[] = [];
  for (const [index, item] of items.entries()) {
    const isNumber = typeof item === 'string' || Number.isSafeInteger(item);
    const literal = isNumber ? readLiteral(String(item)) : null;
    if (literal === null || literal.dimension !== dimension) {
      list.fault(at(here, index), 'wrong-dimension', `This is not an exact ${dimension}.`);
    } else numbers.push(literal.value);
  }
  return numbers.length === items.length ? { numbers } : null;
}

/** `equal-pattern`, `clearance-bore-pin`: the spelling and the last words of the names. */
function defaultId(spelling: Spelling, body: Body): string {
  const terms = 'right' in body ? [body.left, body.right as Term] : [body.left];
  const names = terms.map(lastWord).filter((word) => word !== null);
  return [spelling, ...new Set(names)].join('-').slice(0, 64);
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

function noPosition(word: string, scope: ConditionScope): string {
  return `There is no position "${word}".${hint(word, scope.positions)}`;
}

const POSITION_TESTS = ['changed', 'kept', 'opened', 'empty'] as const;

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
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    list.fault(pointer, 'not-a-condition', 'A condition is an object: {"changed": "gearbox"}.');
    return null;
  }
  const record = raw as Raw;
  const keys = Object.keys(record);
  const [key] = keys;
  if (keys.length === 2 && 'mating' in record && 'adapter' in record) {
    return compileAdapterTest({ raw: record, scope, pointer, list });
  }
  if (keys.length === 1 && key !== undefined) {
    const inner = record[key];
    const here = at(pointer, key);
    const test = POSITION_TESTS.find((word) => word === key);
    if (test !== undefined) {
      if (typeof inner === 'string' && scope.positions.has(inner)) {
        return { test, position: inner };
      }
      list.fault(here, 'unknown-position', noPosition(String(inner), scope));
      return null;
    }
    if (key === 'all' || key === 'any') {
      return compileJoin(key, inner, scope, here, list, depth);
    }
    if (key === 'not') {
      const of = compileCondition(inner, scope, here, list, depth + 1);
      return of === null ? null : { test: 'not', of };
    }
  }
  const check = compileCheck(raw, scope, pointer, list, depth);
  return check === null ? null : { test: 'check', check };
}

function compileAdapterTest({ raw, scope, pointer, list }: Place): Condition | null {
  const { mating, adapter } = raw;
  if (typeof mating !== 'string' || !scope.matings.has(mating)) {
    const text = `There is no mating "${String(mating)}".${hint(String(mating), scope.matings)}`;
    list.fault(at(pointer, 'mating'), 'unknown-mating', text);
    return null;
  }
  if (typeof adapter !== 'string' || !scope.parts.has(adapter)) {
    const text = `There is no part "${String(adapter)}".${hint(String(adapter), scope.parts)}`;
    list.fault(at(pointer, 'adapter'), 'unknown-part', text);
    return null;
  }
  return { test: 'adapter', mating, part: adapter };
}

function compileJoin(
  test: 'all' | 'any',
  raw: unknown,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
  depth: number,
): Condition | null {
  if (!Array.isArray(raw) || raw.length === 0) {
    list.fault(pointer, 'not-a-list', `"${test}" joins a list of conditions.`);
    return null;
  }
  const of: Condition[] = [];
  for (const [index, item] of raw.entries()) {
    const condition = compileCondition(item, scope, at(pointer, index), list, depth + 1);
    if (condition !== null) of.push(condition);
  }
  return of.length === raw.length ? { test, of } : null;
}
