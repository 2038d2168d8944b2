/**
 * Terms: values computed from values. A term is read once, when a kind or a layout is compiled:
 * names are resolved, dimensions agree, named terms are put in place (a term that names itself
 * is a fault). What a reference finds is asked of an environment, later, for one configuration.
 */

import { at, type FaultList, quoted } from '../catalogue/faults.js';
import { type Rational, rational } from '../quantity/rational.js';
import { type Dimension, multiplyDimensions, nameOf, toBase, unitOf } from '../quantity/unit.js';

/** A place where a value is looked up. */
export type Reference =
  | { readonly of: 'side'; readonly side: string; readonly parameter: string }
  | { readonly of: 'value'; readonly position: string; readonly value: string }
  | {
      readonly of: 'face';
      readonly position: string;
      readonly interface: string;
      readonly parameter: string;
    }
  | { readonly of: 'part'; readonly position: string }
  | { readonly of: 'role'; readonly position: string }
  | { readonly of: 'adapter'; readonly mating: string; readonly value: string }
  | { readonly of: 'fact'; readonly fact: string };

export type TermShape =
  | { readonly is: 'number'; readonly dimension: Dimension; readonly measured?: boolean }
  | { readonly is: 'list' | 'points'; readonly dimension: Dimension }
  | { readonly is: 'code' };

export type Term =
  | {
      readonly op: 'literal';
      readonly value: Rational;
      readonly dimension: Dimension;
      readonly text: string;
    }
  | { readonly op: 'reference'; readonly reference: Reference; readonly shape: TermShape }
  | { readonly op: 'named'; readonly name: string; readonly term: Term }
  | { readonly op: 'product' | 'sum' | 'min' | 'max'; readonly terms: readonly Term[] }
  | { readonly op: 'count'; readonly list: Term };

/** Where names are looked up: the two sides of a kind, or the positions of a layout. */
export interface Scope {
  /**
   * The reference or named term behind a name, or a sentence saying why there is none; null
   * where the fault lies with what is named, and is said there.
   */
  resolve(name: string): ResolvedName | string | null;
}

export type ResolvedName =
  | { readonly reference: Reference; readonly shape: TermShape }
  | { readonly name: string; readonly term: Term };

export function shapeOf(term: Term): TermShape {
  switch (term.op) {
    case 'literal':
      return { is: 'number', dimension: term.dimension };
    case 'reference':
      return term.shape;
    case 'named':
      return shapeOf(term.term);
    case 'count':
      return { is: 'number', dimension: '1' };
    case 'product': {
      let dimension: Dimension = '1';
      for (const factor of term.terms) dimension = multiplyDimensions(dimension, numberOf(factor));
      return { is: 'number', dimension };
    }
    default: {
      const first = term.terms[0];
      return { is: 'number', dimension: first === undefined ? '1' : numberOf(first) };
    }
  }
}

function numberOf(term: Term): Dimension {
  const shape = shapeOf(term);
  return shape.is === 'code' ? '1' : shape.dimension;
}

/** The references of a term, each once for each mention. */
export function referencesOf(term: Term): Reference[] {
  switch (term.op) {
    case 'literal':
      return [];
    case 'reference':
      return [term.reference];
    case 'named':
      return referencesOf(term.term);
    case 'count':
      return referencesOf(term.list);
    default:
      return term.terms.flatMap(referencesOf);
  }
}

const LITERAL = /^([-+]?\d+(?:\.\d+)?(?:\/\d+)?)(?:\s+(\S.*)|([%°"]))?$/;

/** Longest literal, as for recorded values. */
const LONGEST_LITERAL = 64;

/** A literal ('4 mm', '1/2', '3.9'), exact by name; `null` if the text is none. */
export function readLiteral(text: string): { value: Rational; dimension: Dimension } | null {
  if (text.length > LONGEST_LITERAL) return null;
  const match = LITERAL.exec(text.trim());
  if (match === null) return null;
  const unit = unitOf(match[2] ?? match[3] ?? '');
  const digits = match[1]?.replace(/^\+/, '');
  if (unit === undefined || digits === undefined) return null;
  if (digits.includes('.') && digits.includes('/')) return null;
  if (/\/0+$/.test(digits)) return null;
  return { value: toBase(rational(digits), unit), dimension: unit.dimension };
}

/** How deep a term may nest, with the terms that it names; deeper ones are mistakes or attacks. */
export const DEEPEST_TERM = 16;

/**
 * How many values a term may join, with those of the terms that it names. Terms that name terms
 * grow by powers; and the exponent of a dimension has two digits, with at most two for a value.
 */
export const LARGEST_TERM = 40;

interface Extent {
  readonly depth: number;
  readonly size: number;
}

function extentOf(term: Term): Extent {
  switch (term.op) {
    case 'literal':
    case 'reference':
      return { depth: 0, size: 1 };
    case 'named':
      return extentAround([term.term]);
    case 'count':
      return extentAround([term.list]);
    default:
      return extentAround(term.terms);
  }
}

function extentAround(terms: readonly Term[]): Extent {
  let depth = 0;
  let size = 0;
  for (const inner of terms.map(extentOf)) {
    depth = Math.max(depth, inner.depth + 1);
    size += inner.size;
  }
  return { depth, size };
}

/** The term itself, or null with a fault where it is too deep or too large. */
function limited(term: Term, pointer: string, list: FaultList): Term | null {
  const { depth, size } = extentOf(term);
  if (depth > DEEPEST_TERM) return tooDeep(pointer, list);
  if (size <= LARGEST_TERM) return term;
  const text = `A term may join ${LARGEST_TERM} values at most, with those of terms it names.`;
  list.fault(pointer, 'too-large', text);
  return null;
}

function tooDeep(pointer: string, list: FaultList): null {
  const text = `A term may nest ${DEEPEST_TERM} deep at most, with the terms that it names.`;
  list.fault(pointer, 'too-deep', text);
  return null;
}

/** Compiles one term; says every fault, and gives `null` if there was one. */
export function compileTerm(
  raw: unknown,
  scope: Scope,
  pointer: string,
  list: FaultList,
  depth = 0,
): Term | null {
  if (depth > DEEPEST_TERM) return tooDeep(pointer, list);
  if (typeof raw === 'string') return compileName(raw, scope, pointer, list);
  if (typeof raw === 'number') return compileNumber(raw, pointer, list);
  if (Array.isArray(raw)) return compileMany('product', raw, scope, pointer, list, depth);
  if (typeof raw === 'object' && raw !== null) {
    const [word, ...more] = Object.keys(raw);
    const inner = word === undefined ? undefined : (raw as Record<string, unknown>)[word];
    if (more.length === 0 && word !== undefined) {
      const place = at(pointer, word);
      if (word === 'count') return compileCount(inner, scope, place, list, depth);
      if (word === 'product' || word === 'sum' || word === 'min' || word === 'max') {
        return compileMany(word, inner, scope, place, list, depth);
      }
    }
  }
  list.fault(
    pointer,
    'not-a-term',
    'A term is a value ("4 mm"), a name ("gearbox.length"), a list of factors, or one of ' +
      '{"product": …}, {"sum": …}, {"min": …}, {"max": …}, {"count": …}.',
  );
  return null;
}

function compileNumber(raw: number, pointer: string, list: FaultList): Term | null {
  if (Number.isSafeInteger(raw)) {
    return { op: 'literal', value: rational(raw), dimension: '1', text: String(raw) };
  }
  const text = 'Write numbers that are not whole, or very large, as text: "1/2", "3.583".';
  list.fault(pointer, 'not-a-term', text);
  return null;
}

/** A name may begin with a digit too ("4x4.length"), but what can be read as a value is one. */
function compileName(raw: string, scope: Scope, pointer: string, list: FaultList): Term | null {
  const looksLikeValue = /^[-+\d]/.test(raw);
  const literal = looksLikeValue ? readLiteral(raw) : null;
  if (literal !== null) return { op: 'literal', ...literal, text: raw.trim() };
  const found = scope.resolve(raw);
  if (found === null) return null;
  if (typeof found === 'string') {
    if (looksLikeValue && !/\.[a-z]/.test(raw)) {
      const text = `${quoted(raw)} is no value that can be read, such as "4 mm", "1/2" or "2 %".`;
      list.fault(pointer, 'not-a-term', text);
    } else list.fault(pointer, 'unknown-name', found);
    return null;
  }
  if ('term' in found) {
    return limited({ op: 'named', name: found.name, term: found.term }, pointer, list);
  }
  return { op: 'reference', reference: found.reference, shape: found.shape };
}

function compileCount(
  raw: unknown,
  scope: Scope,
  pointer: string,
  list: FaultList,
  depth: number,
): Term | null {
  const inner = compileTerm(raw, scope, pointer, list, depth + 1);
  if (inner === null) return null;
  const { is } = shapeOf(inner);
  if (is !== 'list' && is !== 'points') {
    list.fault(pointer, 'not-a-list', 'Only a list, such as the gears of a gearbox, has a count.');
    return null;
  }
  return limited({ op: 'count', list: inner }, pointer, list);
}

/** One thing may stand for a list of one: `{"max": "gears"}`. */
function compileMany(
  op: 'product' | 'sum' | 'min' | 'max',
  raw: unknown,
  scope: Scope,
  pointer: string,
  list: FaultList,
  depth: number,
): Term | null {
  const items: readonly unknown[] = Array.isArray(raw) ? raw : [raw];
  if (items.length === 0) {
    list.fault(pointer, 'empty-term', `A ${op} of nothing has no value.`);
    return null;
  }
  const terms: Term[] = [];
  for (const [index, item] of items.entries()) {
    const place = Array.isArray(raw) ? at(pointer, index) : pointer;
    const term = compileTerm(item, scope, place, list, depth + 1);
    if (term === null) continue;
    const shape = shapeOf(term);
    if (shape.is === 'code') {
      list.fault(place, 'not-a-number', `A code has no ${op}; codes are compared with "equal".`);
    } else if (shape.is === 'points') {
      const text = `Points have no ${op}; points are compared with "coincide".`;
      list.fault(place, 'not-a-number', text);
    } else if (shape.is === 'list' && op !== 'min' && op !== 'max') {
      list.fault(place, 'not-a-number', `A list has no ${op}; use {"max": …}, {"min": …}.`);
    } else terms.push(term);
  }
  if (terms.length !== items.length) return null;
  if (op !== 'product' && !sameDimension(terms)) {
    const sorts = [...new Set(terms.map((term) => nameOf(numberOf(term))))].join(' and ');
    list.fault(pointer, 'wrong-dimension', `A ${op} cannot join ${sorts}.`);
    return null;
  }
  return limited({ op, terms }, pointer, list);
}

function sameDimension(terms: readonly Term[]): boolean {
  return terms.every((term) => {
    const [first] = terms;
    return first !== undefined && numberOf(term) === numberOf(first);
  });
}
