/**
 * Reads what a check compares: two values, a value and its limits, a rating and its demand, a
 * value and the codes or numbers that it may be.
 */

import { at, quoted } from '../catalogue/faults.js';
import { compare, type Rational, sign, ZERO } from '../quantity/rational.js';
import { canonicalThread } from '../quantity/thread-code.js';
import type { Dimension } from '../quantity/unit.js';
import { nameOf } from '../quantity/unit.js';
import type { Check, Spelling } from './check.js';
import { type Place, sayShape, unknownName } from './compile-scope.js';
import { compileTerm, readLiteral, referencesOf, shapeOf, type Term } from './term.js';

/** What the primitive itself says; the rest is common to all checks. */
type Own<Kind> = Kind extends Check
  ? Omit<Kind, 'id' | 'spelling' | 'severity' | 'code' | 'text' | 'when'>
  : never;
export type Body = Own<Check>;

/** Compiles what a check compares, or says its faults and gives null. */
export function compileBody(place: Place, spelling: Spelling): Body | null {
  if (spelling === 'one-of') return compileOneOf(place);
  if (spelling === 'carries') return compileCarries(place);
  const pair = compilePair(place, spelling);
  if (spelling === 'equal') {
    if (pair === null) return null;
    warnEqualOfMeasures(place, pair);
    return { primitive: 'equal', left: pair[0], right: pair[1] };
  }
  if (spelling === 'coincide') return compileCoincide(place, pair);
  const numbers = pair !== null && bothNumbers(place, spelling, pair) ? pair : null;
  if (spelling === 'agree') return compileAgree(place, numbers);
  return compileClearance(place, spelling, numbers);
}

type Pair = readonly [left: Term, right: Term];

function compilePair(place: Place, spelling: Spelling): Pair | null {
  const { raw, scope, pointer, list } = place;
  const here = at(pointer, spelling);
  const written = raw[spelling];
  const short = typeof written === 'string' ? scope.bothSides(written) : null;
  const pair: unknown = short ?? written;
  if (!Array.isArray(pair) || pair.length !== 2) {
    const text = `"${spelling}" compares two things: ["left", "right"].`;
    list.fault(here, 'not-a-pair', text);
    return null;
  }
  const left = compileTerm(pair[0], scope, short === null ? at(here, 0) : here, list);
  // The two ends of a shorthand have one name, and so one fault.
  if (left === null && short !== null) return null;
  const right = compileTerm(pair[1], scope, short === null ? at(here, 1) : here, list);
  if (left === null || right === null) return null;
  const a = shapeOf(left);
  const b = shapeOf(right);
  const alike = a.is === b.is && a.is !== 'list';
  const isMixed = a.is !== 'code' && b.is !== 'code' && a.dimension !== b.dimension;
  if (alike && (a.is === 'points') !== (spelling === 'coincide')) {
    const text = 'Points are compared with "coincide", and "coincide" compares points only.';
    list.fault(here, 'not-a-number', text);
    return null;
  }
  if (!alike || isMixed) {
    const text = `"${spelling}" cannot compare ${sayShape(a)} and ${sayShape(b)}.`;
    list.fault(here, 'wrong-dimension', text);
    return null;
  }
  return [left, right];
}

function bothNumbers(place: Place, spelling: Spelling, pair: Pair): boolean {
  if (pair.every((term) => shapeOf(term).is === 'number')) return true;
  const text = `"${spelling}" compares numbers; codes are compared with "equal" or "one-of".`;
  place.list.fault(at(place.pointer, spelling), 'not-a-number', text);
  return false;
}

/** `equal` on two measures can never hold: a measure is an interval. */
function warnEqualOfMeasures(place: Place, pair: Pair): void {
  if (!pair.every(isMeasured)) return;
  const text =
    'Two measures are never exactly equal, so this check can only fail or stay open; ' +
    'compare them with "clearance" or "within".';
  place.list.warn(at(place.pointer, 'equal'), 'equal-of-measures', text);
}

function isMeasured(term: Term): boolean {
  if (term.op === 'named') return isMeasured(term.term);
  return term.op === 'reference' && term.shape.is === 'number' && term.shape.measured === true;
}

/** Reads the limits even where the pair is faulty: they may have faults of their own. */
function compileClearance(place: Place, spelling: Spelling, pair: Pair | null): Body | null {
  const beside = pair === null ? null : pair[0];
  const limits = compileLimits(place, spelling, beside);
  if (limits === null || pair === null) return null;
  const [left, right] = pair;
  return { primitive: 'clearance', left, right, ...limits };
}

interface Limits {
  readonly min: Term | null;
  readonly max: Term | null;
}

function compileLimits(place: Place, spelling: Spelling, beside: Term | null): Limits | null {
  const { pointer, list } = place;
  const dimension = beside === null ? '1' : dimensionOf(beside);
  const zero: Term = { op: 'literal', value: ZERO, dimension, text: '0' };
  if (spelling === 'at-least') return { min: zero, max: null };
  if (spelling === 'at-most') return { min: null, max: zero };
  if (spelling === 'within') {
    const tolerance = compileTolerance(place, beside);
    return tolerance === null ? null : { min: negated(tolerance), max: tolerance };
  }
  const min = compileLimit(place, 'min', beside);
  const max = compileLimit(place, 'max', beside);
  if (min === 'none' && max === 'none') {
    const text = 'A "clearance" needs a "min", a "max", or both.';
    list.fault(pointer, 'missing-field', text);
    return null;
  }
  if (min === null || max === null) return null;
  const limits = { min: min === 'none' ? null : min, max: max === 'none' ? null : max };
  if (limits.min?.op !== 'literal' || limits.max?.op !== 'literal') return limits;
  if (compare(limits.min.value, limits.max.value) <= 0) return limits;
  list.fault(at(pointer, 'min'), 'empty-range', '"min" is not above "max".');
  return null;
}

/** How far two values, or two points, may differ. */
function compileTolerance(place: Place, beside: Term | null): Term | null {
  const { pointer, list } = place;
  const tolerance = compileLimit(place, 'tolerance', beside);
  if (tolerance === 'none') {
    list.missing(pointer, 'tolerance', 'how far the two may differ');
    return null;
  }
  if (tolerance?.op === 'literal' && sign(tolerance.value) < 0) {
    list.fault(at(pointer, 'tolerance'), 'empty-range', 'A tolerance is not negative.');
    return null;
  }
  return tolerance;
}

function negated(term: Term): Term {
  const minus = readLiteral('-1');
  if (minus === null) throw new Error('the literal -1 is not readable');
  return { op: 'product', terms: [{ op: 'literal', ...minus, text: '-1' }, term] };
}

function dimensionOf(term: Term): Dimension {
  const shape = shapeOf(term);
  return shape.is === 'code' ? '1' : shape.dimension;
}

/** A limit: 'none' where it is left out, null where it is faulty. */
function compileLimit(place: Place, key: string, beside: Term | null): Term | 'none' | null {
  if (!Object.hasOwn(place.raw, key)) return 'none';
  const here = at(place.pointer, key);
  const term = compileTerm(place.raw[key], place.scope, here, place.list);
  if (term === null) return null;
  const shape = shapeOf(term);
  const isWrong = beside !== null && dimensionOf(term) !== dimensionOf(beside);
  if (shape.is === 'number' && !isWrong) return term;
  const wanted = beside === null ? 'one number' : nameOf(dimensionOf(beside));
  const text = `"${key}" is ${sayShape(shape)}, but ${wanted} is compared.`;
  place.list.fault(here, 'wrong-dimension', text);
  return null;
}

function compileCoincide(place: Place, pair: Pair | null): Body | null {
  const tolerance = compileTolerance(place, pair === null ? null : pair[0]);
  if (pair === null || tolerance === null) return null;
  return { primitive: 'coincide', left: pair[0], right: pair[1], tolerance };
}

function compileAgree(place: Place, pair: Pair | null): Body | null {
  const { raw, scope, pointer, list } = place;
  const whenEmpty = compileWhenEmpty(place);
  if (!Object.hasOwn(raw, 'coupling')) {
    list.missing(pointer, 'coupling', 'the value that says how the two paths are joined');
    return null;
  }
  const here = at(pointer, 'coupling');
  const coupling = compileTerm(raw.coupling, scope, here, list);
  if (coupling !== null && shapeOf(coupling).is !== 'code') {
    list.fault(here, 'not-a-code', 'A "coupling" is a code, such as "open".');
    return null;
  }
  if (coupling === null || whenEmpty === null || pair === null) return null;
  return { primitive: 'agree', left: pair[0], right: pair[1], coupling, whenEmpty };
}

function compileWhenEmpty({ raw, scope, pointer, list }: Place): Map<string, Term> | null {
  const table = new Map<string, Term>();
  if (!Object.hasOwn(raw, 'whenEmpty')) return table;
  const here = at(pointer, 'whenEmpty');
  if (typeof raw.whenEmpty !== 'object' || raw.whenEmpty === null || Array.isArray(raw.whenEmpty)) {
    list.fault(here, 'not-an-object', '"whenEmpty" gives a factor for each position it names.');
    return null;
  }
  for (const [position, factor] of Object.entries(raw.whenEmpty)) {
    const factorPlace = at(here, position);
    if (!scope.positions.has(position)) {
      unknownName({ raw, scope, pointer: factorPlace, list }, 'positions', position);
    }
    const term = compileTerm(factor, scope, factorPlace, list);
    if (term !== null && shapeOf(term).is !== 'number') {
      list.fault(factorPlace, 'not-a-number', 'What stands for an empty position is a number.');
    } else if (term !== null) table.set(position, term);
  }
  return table;
}

function compileCarries(place: Place): Body | null {
  const { raw, scope, pointer, list } = place;
  const left = compileTerm(raw.carries, scope, at(pointer, 'carries'), list);
  if (!Object.hasOwn(raw, 'demand')) {
    list.missing(pointer, 'demand', 'what the part must carry');
    return null;
  }
  const right = compileTerm(raw.demand, scope, at(pointer, 'demand'), list);
  if (left === null || right === null || !bothNumbers(place, 'carries', [left, right])) return null;
  if (dimensionOf(left) !== dimensionOf(right)) {
    const [rating, demand] = [left, right].map((term) => sayShape(shapeOf(term)));
    const text = `"carries" cannot compare ${rating} and ${demand}.`;
    list.fault(at(pointer, 'carries'), 'wrong-dimension', text);
    return null;
  }
  return { primitive: 'carries', left, right };
}

function compileOneOf(place: Place): Body | null {
  const { raw, scope, pointer, list } = place;
  const here = at(pointer, 'one-of');
  const pair = raw['one-of'];
  if (!Array.isArray(pair) || pair.length !== 2 || !Array.isArray(pair[1])) {
    list.fault(here, 'not-a-pair', '"one-of" is a name and a list: ["gearbox.part", ["a", "b"]].');
    return null;
  }
  const items: readonly unknown[] = pair[1];
  if (items.length === 0) {
    list.fault(at(here, 1), 'empty-list', 'One of nothing can never hold.');
  }
  const left = compileTerm(pair[0], scope, at(here, 0), list);
  if (left === null) return null;
  const shape = shapeOf(left);
  if (shape.is === 'list' || shape.is === 'points') {
    list.fault(at(here, 0), 'not-a-number', 'Neither a list nor points are one of several values.');
    return null;
  }
  const options =
    shape.is === 'code' ? codesOf(items, left, place) : numbersOf(items, shape.dimension, place);
  return options === null ? null : { primitive: 'one-of', left, options };
}

function codesOf(items: readonly unknown[], left: Term, { scope, pointer, list }: Place) {
  const here = at(at(pointer, 'one-of'), 1);
  const codes: string[] = [];
  for (const [index, item] of items.entries()) {
    if (typeof item !== 'string') {
      list.fault(at(here, index), 'not-a-code', 'A code is a text.');
      continue;
    }
    const code = canonicalThread(item);
    for (const reference of referencesOf(left)) {
      if (scope.knowsCode(reference, code)) continue;
      const known = scope.codesOf?.(reference) ?? [];
      const text = `Nothing recorded has ${quoted(item)} here.${list.guess(item, known)}`;
      list.warn(at(here, index), 'unknown-code', text);
    }
    codes.push(code);
  }
  return codes.length === items.length ? { codes } : null;
}

function numbersOf(items: readonly unknown[], dimension: Dimension, { pointer, list }: Place) {
  const here = at(at(pointer, 'one-of'), 1);
  const numbers: Rational[] = [];
  for (const [index, item] of items.entries()) {
    const isNumber = typeof item === 'string' || Number.isSafeInteger(item);
    const literal = isNumber ? readLiteral(String(item)) : null;
    const place = at(here, index);
    if (literal === null) {
      const text = `This is no value that can be read; ${nameOf(dimension)} is compared.`;
      list.fault(place, 'not-a-number', text);
    } else if (literal.dimension !== dimension) {
      const text = `This is ${nameOf(literal.dimension)}, but ${nameOf(dimension)} is compared.`;
      list.fault(place, 'wrong-dimension', text);
    } else numbers.push(literal.value);
  }
  return numbers.length === items.length ? { numbers } : null;
}
