/**
 * Terms: values computed from values. A term is read once, when a kind or a layout is compiled:
 * names are resolved, dimensions agree, named terms are put in place (a term that names itself
 * is a fault). What a reference finds is asked of an environment, later, for one configuration.
 */

import { at, type FaultList } from '../catalogue/faults.js';
import { type Rational, rational } from '../quantity/rational.js';
import { type Dimension, multiplyDimensions, toBase, unitOf } from '../quantity/unit.js';

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
  | { readonly is: 'list'; readonly dimension: Dimension }
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
  /** The reference or named term behind a name, or a sentence saying why there is none. */
  resolve(name: string): ResolvedName | string;
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

/** A literal ('4 mm', '1/2', '3.9'), exact by name; `null` if the text is none. */
export function readLiteral(text: string): { value: Rational; dimension: Dimension } | null {
  const match = LITERAL.exec(text.trim());
  if (match === null) return null;
  const unit = unitOf(match[2] ?? match[3] ?? '');
  const digits = match[1]?.replace(/^\+/, '');
  if (unit === undefined || digits === undefined) return null;
  if (digits.includes('.') && digits.includes('/')) return null;
  if (/\/0+$/.test(digits)) return null;
  return { value: toBase(rational(digits), unit), dimension: unit.dimension };
}

/** How deep a term may nest; deeper documents are mistakes or attacks. */
const DEEPEST = 16;

/** Compiles one term; says every fault, and gives `null` if there was one. */
export function compileTerm(
  raw: unknown,
  scope: Scope,
  pointer: string,
  list: FaultList,
  depth = 0,
): Term | null {
  if (depth > DEEPEST) {
    list.fault(pointer, 'too-deep', `A term may nest ${DEEPEST} deep at most.`);
    return null;
  }
  if (typeof raw === 'string') return compileName(raw, scope, pointer, list);
  if (typeof raw === 'number' && Number.isSafeInteger(raw)) {
    return { op: 'literal', value: rational(raw), dimension: '1', text: String(raw) };
  }
  if (Array.isArray(raw)) return compileMany('product', raw, scope, pointer, list, depth);
  if (typeof raw === 'object' && raw !== null) {
    const [word, ...more] = Object.keys(raw);
    const inner = word === undefined ? undefined : (raw as Record<string, unknown>)[word];
    if (more.length === 0 && word !== undefined) {
      const place = at(pointer, word);
      if (word === 'count') return compileCount(inner, scope, place, list);
      if (word === 'product' || word === 'sum' || word === 'min' || word === 'max') {
        const terms = Array.isArray(inner) ? inner : [inner];
        return compileMany(word, terms, scope, place, list, depth);
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

function compileName(raw: string, scope: Scope, pointer: string, list: FaultList): Term | null {
  if (/^[-+\d]/.test(raw)) {
    const literal = readLiteral(raw);
    if (literal !== null) return { op: 'literal', ...literal, text: raw.trim() };
    const example = 'such as "4 mm", "1/2" or "2 %"';
    list.fault(pointer, 'not-a-term', `"${raw}" is no value that can be read, ${example}.`);
    return null;
  }
  const found = scope.resolve(raw);
  if (typeof found === 'string') {
    list.fault(pointer, 'unknown-name', found);
    return null;
  }
  if ('term' in found) return { op: 'named', name: found.name, term: found.term };
  return { op: 'reference', reference: found.reference, shape: found.shape };
}

function compileCount(raw: unknown, scope: Scope, pointer: string, list: FaultList): Term | null {
  const inner = compileTerm(raw, scope, pointer, list);
  if (inner === null) return null;
  if (shapeOf(inner).is !== 'list') {
    list.fault(pointer, 'not-a-list', 'Only a list, such as the gears of a gearbox, has a count.');
    return null;
  }
  return { op: 'count', list: inner };
}

function compileMany(
  op: 'product' | 'sum' | 'min' | 'max',
  raw: readonly unknown[],
  scope: Scope,
  pointer: string,
  list: FaultList,
  depth: number,
): Term | null {
  if (raw.length === 0) {
    list.fault(pointer, 'empty-term', `A ${op} of nothing has no value.`);
    return null;
  }
  const terms: Term[] = [];
  for (const [index, item] of raw.entries()) {
    const place = raw.length === 1 ? pointer : at(pointer, index);
    const term = compileTerm(item, scope, place, list, depth + 1);
    if (term === null) continue;
    const shape = shapeOf(term);
    if (shape.is === 'code') {
      list.fault(place, 'not-a-number', `A code has no ${op}; codes are compared with "equal".`);
    } else if (shape.is === 'list' && op !== 'min' && op !== 'max') {
      list.fault(place, 'not-a-number', `A list has no ${op}; use {"max": …}, {"min": …}.`);
    } else terms.push(term);
  }
  if (terms.length !== raw.length) return null;
  if (op !== 'product' && !sameDimension(terms)) {
    const kinds = [...new Set(terms.map((term) => numberOf(term)))].join(' and ');
    list.fault(pointer, 'wrong-dimension', `A ${op} cannot join ${kinds}.`);
    return null;
  }
  return { op, terms };
}

function sameDimension(terms: readonly Term[]): boolean {
  return terms.every((term) => {
    const [first] = terms;
    return first !== undefined && numberOf(term) === numberOf(first);
  });
}
