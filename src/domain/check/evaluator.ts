/**
 * Reads terms in one environment: values become polynomials over unknowns, so that equal
 * unknowns cancel before any interval is formed.
 */

import {
  type Interval,
  isPoint,
  maximumInterval,
  minimumInterval,
  NON_NEGATIVE,
} from '../quantity/interval.js';
import { add, ONE, type Rational, ZERO } from '../quantity/rational.js';
import type { Couplings, Use } from './coupling.js';
import {
  constant,
  NOTHING,
  type Polynomial,
  plus,
  rangeOf,
  signatureOf,
  times,
  unknownOf,
  unknownsOf,
} from './polynomial.js';
import type {
  ChoiceReading,
  CodeReading,
  NumberReading,
  PointsReading,
  RangeReading,
  Reading,
  SeveralReading,
} from './reading.js';
import type { Basis } from './state.js';
import type { Reference, Term, TermShape } from './term.js';

/** The places that a term reads, each with what is found there. */
export function leavesOf(term: Term): { reference: Reference; shape: TermShape }[] {
  switch (term.op) {
    case 'literal':
      return [];
    case 'reference':
      return [{ reference: term.reference, shape: term.shape }];
    case 'named':
      return leavesOf(term.term);
    case 'count':
      return leavesOf(term.list);
    default:
      return term.terms.flatMap(leavesOf);
  }
}

/** Finds what one configuration has at a reference. */
export interface Environment {
  lookup(reference: Reference, shape: TermShape): Reading;
}

/** How a question looks at the records. */
export interface Setting {
  readonly couplings: Couplings;
  readonly use: Use | null;
  /** Values of a basis that is not trusted count as not recorded. */
  readonly trusts: (basis: Basis) => boolean;
  /** The option tried of each choice among several. */
  readonly picks: ReadonlyMap<string, number>;
  /** Domains laid over the records, by unknown: how narrowing is tried out. */
  readonly narrowed: ReadonlyMap<string, Interval>;
  /** Unknowns that are tried out as choices: what value of them would decide? */
  readonly supposed?: ReadonlySet<string>;
}

export interface Unknown {
  readonly key: string;
  readonly domain: Interval;
  /** One may set or order it: the check needs only some value of it. */
  readonly isChoice: boolean;
  readonly readings: readonly (NumberReading | RangeReading)[];
}

/** Raised inside when a term meets an emptied place; `evaluate.ts` catches it. */
export class EmptyPlace extends Error {
  readonly position: string;

  constructor(position: string) {
    super(`nothing stands at ${position}`);
    this.position = position;
  }
}

export type Value =
  | { readonly is: 'number'; readonly polynomial: Polynomial }
  | { readonly is: 'list'; readonly items: readonly Polynomial[] | null; natural: Interval }
  | { readonly is: 'points'; readonly reading: PointsReading }
  | { readonly is: 'code'; readonly reading: CodeReading };

export class Evaluator {
  readonly readings: Reading[] = [];
  readonly unknowns = new Map<string, Unknown>();

  readonly #environment: Environment;
  readonly #setting: Setting;
  readonly #whenEmpty: ReadonlyMap<string, Term>;

  constructor(
    environment: Environment,
    setting: Setting,
    whenEmpty: ReadonlyMap<string, Term> = new Map(),
  ) {
    this.#environment = environment;
    this.#setting = setting;
    this.#whenEmpty = whenEmpty;
  }

  readonly domains = (key: string): Interval => {
    const unknown = this.unknowns.get(key);
    if (unknown === undefined) throw new Error(`unknown without a domain: ${key}`);
    return unknown.domain;
  };

  term(term: Term): Value {
    switch (term.op) {
      case 'literal':
        return { is: 'number', polynomial: constant(term.value) };
      case 'named':
        return this.term(term.term);
      case 'reference':
        return this.#reference(term.reference, term.shape);
      case 'count': {
        const list = this.term(term.list);
        if (list.is === 'points') {
          const { points } = list.reading;
          if (points === null) return this.#synthetic('count', [], NON_NEGATIVE);
          return { is: 'number', polynomial: constant(countOf(points)) };
        }
        if (list.is !== 'list') throw new Error('only a list has a count');
        if (list.items === null) return this.#synthetic('count', [], list.natural);
        return { is: 'number', polynomial: constant(countOf(list.items)) };
      }
      case 'sum':
        return this.#join(term.terms, NOTHING, plus);
      case 'product':
        return this.#join(term.terms, constant(ONE), times);
      default:
        return this.#extreme(term.op, term.terms);
    }
  }

  /** A rating: of several adapters in a row, the weakest; of none, there is nothing to load. */
  rating(term: Term): Value {
    if (term.op !== 'reference' || term.reference.of !== 'adapter') return this.term(term);
    const reading = this.#environment.lookup(term.reference, term.shape);
    if (reading.form !== 'several') return this.term(term);
    if (reading.items.length === 0) throw new EmptyPlace(term.reference.mating);
    const parts = reading.items.map((item) => this.#item(item));
    return this.#least(parts, 'min');
  }

  /** The code of a coupling. A factor for an empty place stands in for a ratio, not for this. */
  coupling(term: Term): CodeReading {
    if (term.op === 'reference') {
      const reading = this.#environment.lookup(term.reference, term.shape);
      if (reading.form === 'empty') throw new EmptyPlace(reading.position);
    }
    const value = this.term(term);
    if (value.is !== 'code') throw new Error('a coupling was compiled as a number');
    return value.reading;
  }

  number(term: Term): Polynomial {
    const value = this.term(term);
    if (value.is !== 'number') throw new Error('a number was compiled here');
    return value.polynomial;
  }

  #join(
    terms: readonly Term[],
    start: Polynomial,
    join: (a: Polynomial, b: Polynomial) => Polynomial,
  ): Value {
    let polynomial = start;
    for (const term of terms) polynomial = join(polynomial, this.number(term));
    return { is: 'number', polynomial };
  }

  /** The greatest or least of several: exact for known numbers, else an unknown of its own. */
  #extreme(op: 'min' | 'max', terms: readonly Term[]): Value {
    const parts: Polynomial[] = [];
    for (const term of terms) {
      const value = this.term(term);
      if (value.is === 'code' || value.is === 'points') throw new Error('no numbers here');
      if (value.is === 'number') parts.push(value.polynomial);
      else if (value.items === null) return this.#synthetic(op, [], value.natural);
      else parts.push(...value.items);
    }
    return this.#least(parts, op);
  }

  #least(parts: readonly Polynomial[], op: 'min' | 'max'): Value {
    const [first, ...others] = parts.map((part) => rangeOf(part, this.domains));
    if (first === undefined) throw new Error('an extreme of nothing was compiled');
    const combine = op === 'min' ? minimumInterval : maximumInterval;
    return this.#synthetic(op, parts, others.reduce(combine, first));
  }

  #synthetic(op: string, parts: readonly Polynomial[], domain: Interval): Value {
    if (isPoint(domain) && domain.low !== null) {
      return { is: 'number', polynomial: constant(domain.low) };
    }
    const inner = parts.length === 0 ? this.#lastKey() : parts.map(signatureOf).join(', ');
    const key = `${op}(${inner})`;
    const within = new Set(parts.flatMap(unknownsOf));
    const readings = [...within].flatMap((one) => this.unknowns.get(one)?.readings ?? []);
    const narrowed = this.#setting.narrowed.get(key) ?? domain;
    const isChoice = this.#setting.supposed?.has(key) ?? false;
    this.unknowns.set(key, { key, domain: narrowed, isChoice, readings });
    return { is: 'number', polynomial: unknownOf(key) };
  }

  /** The key of the list that was read last: an unrecorded list has no items to name. */
  #lastKey(): string {
    const last = this.readings.at(-1);
    return last !== undefined && 'key' in last ? String(last.key) : '?';
  }

  #reference(reference: Reference, shape: TermShape): Value {
    const found = this.#environment.lookup(reference, shape);
    const reading = found.form === 'choice' ? this.#picked(found) : found;
    if (reading.form === 'empty') return this.#empty(reading.position);
    if (reading.form === 'several') {
      let sum: Polynomial = NOTHING;
      for (const item of reading.items) sum = plus(sum, this.#item(item));
      return { is: 'number', polynomial: sum };
    }
    if (reading.form === 'code') {
      const trusted = this.#trusts(reading.basis) ? reading : { ...reading, codes: null };
      this.readings.push(reading);
      return { is: 'code', reading: trusted };
    }
    if (reading.form === 'points') {
      const trusted = this.#trusts(reading.basis) ? reading : { ...reading, points: null };
      this.readings.push(reading);
      return { is: 'points', reading: trusted };
    }
    if (reading.form === 'list') {
      this.readings.push(reading);
      const items = this.#trusts(reading.basis) ? reading.items : null;
      const natural = reading.natural;
      if (items === null) return { is: 'list', items, natural };
      return { is: 'list', items: items.map((item) => this.#numberReading(item)), natural };
    }
    return { is: 'number', polynomial: this.#numberReading(reading) };
  }

  #picked({ choice, options }: ChoiceReading): ChoiceReading['options'][number] {
    const pick = this.#setting.picks.get(choice) ?? 0;
    const option = options[pick];
    if (option === undefined) throw new Error(`no option ${pick} of ${choice}`);
    return option;
  }

  #item(item: SeveralReading['items'][number]): Polynomial {
    const reading = item.form === 'choice' ? this.#picked(item) : item;
    if (reading.form === 'code' || reading.form === 'points') {
      throw new Error(`${reading.form} was compiled as a number`);
    }
    return this.#numberReading(reading);
  }

  #empty(position: string): Value {
    const factor = this.#whenEmpty.get(position);
    if (factor === undefined) throw new EmptyPlace(position);
    return this.term(factor);
  }

  #trusts(basis: Basis | null): boolean {
    return basis === null || this.#setting.trusts(basis);
  }

  #numberReading(reading: NumberReading | RangeReading): Polynomial {
    const trusted = this.#trusts(reading.basis);
    const recorded = trusted ? reading.domain : reading.natural;
    const { key } = reading;
    const domain = key === null ? recorded : (this.#setting.narrowed.get(key) ?? recorded);
    const isAsked = reading.form === 'number' && reading.isAsked === true;
    if (reading.basis !== null || key !== null || isAsked) this.readings.push(reading);
    if (isPoint(domain) && domain.low !== null) return constant(domain.low);
    if (key === null) throw new Error('a value that is not exact needs the key of its unknown');
    const known = this.unknowns.get(key);
    const readings = known === undefined ? [reading] : [...known.readings, reading];
    const isSupposed = this.#setting.supposed?.has(key) ?? false;
    const isChoice = isSupposed || (reading.form === 'range' && trusted);
    this.unknowns.set(key, { key, domain, isChoice, readings });
    return unknownOf(key);
  }
}

function countOf(items: readonly unknown[]): Rational {
  return items.reduce<Rational>((sum) => add(sum, ONE), ZERO);
}
