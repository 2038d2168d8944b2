/**
 * Brings one check, in one environment, into a form that can be decided: which inequalities
 * must hold (every requirement is `polynomial >= 0`), over which unknowns, in which worlds.
 *
 * A world is one way the codes may be: where a coupling is not recorded, each coupling is a
 * world, and the check comes to what all worlds agree on. Deciding is `decide.ts`.
 */

import { type Interval, isPoint, maximumInterval, minimumInterval } from '../quantity/interval.js';
import { add, equals, negate, ONE, type Rational, subtract, ZERO } from '../quantity/rational.js';
import type { AgreeCheck, CarriesCheck, Check, ClearanceCheck, OneOfCheck } from './check.js';
import { type Couplings, refusalOf, type Use } from './coupling.js';
import {
  constant,
  minus,
  NOTHING,
  type Polynomial,
  plus,
  quotient,
  rangeOf,
  signatureOf,
  times,
  timesNumber,
  unknownOf,
  unknownsOf,
} from './polynomial.js';
import type { CodeReading, NumberReading, RangeReading, Reading } from './reading.js';
import type { Basis, Outcome } from './state.js';
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

export type World = { readonly decided: Outcome } | { readonly requirements: Requirement[] };

/** Must be >= 0 wherever the check holds; `reason` is the code if it is below. */
export interface Requirement {
  readonly polynomial: Polynomial;
  readonly reason: string;
}

export type Side =
  | { readonly is: 'number'; readonly polynomial: Polynomial }
  | { readonly is: 'code'; readonly reading: CodeReading };

export interface Prepared {
  readonly check: Check;
  readonly worlds: readonly World[];
  readonly left: Side;
  readonly right: Side | null;
  /** What the check read, literals left out. */
  readonly readings: readonly Reading[];
  readonly unknowns: ReadonlyMap<string, Unknown>;
  /** Its condition is open: one of its worlds asks nothing. */
  readonly mayNotApply?: true;
}

/** A check that does not apply: its condition fails, or it names places where nothing is. */
export interface NotApplying {
  readonly empty: readonly string[];
}

/** Raised inside when a term meets an emptied place; never leaves this module. */
class EmptyPlace extends Error {
  readonly position: string;

  constructor(position: string) {
    super(`nothing stands at ${position}`);
    this.position = position;
  }
}

type Value =
  | { readonly is: 'number'; readonly polynomial: Polynomial }
  | { readonly is: 'list'; readonly items: readonly Polynomial[] | null; natural: Interval }
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
    const parts = reading.items.map((item) => this.#numberReading(item));
    return this.#least(parts, 'min');
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
      if (value.is === 'code') throw new Error('a code has no extreme');
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
    const readings = [...this.unknowns.values()].flatMap((unknown) => unknown.readings);
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
    let reading = this.#environment.lookup(reference, shape);
    if (reading.form === 'choice') {
      const pick = this.#setting.picks.get(reading.choice) ?? 0;
      const option = reading.options[pick];
      if (option === undefined) throw new Error(`no option ${pick} of ${reading.choice}`);
      reading = option;
    }
    if (reading.form === 'empty') return this.#empty(reading.position);
    if (reading.form === 'several') {
      let sum: Polynomial = NOTHING;
      for (const item of reading.items) sum = plus(sum, this.#numberReading(item));
      return { is: 'number', polynomial: sum };
    }
    if (reading.form === 'code') {
      const trusted = this.#trusts(reading.basis) ? reading : { ...reading, codes: null };
      this.readings.push(reading);
      return { is: 'code', reading: trusted };
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
    const natural = reading.form === 'number' ? reading.natural : reading.domain;
    const recorded = trusted ? reading.domain : natural;
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

/** Prepares a check, or says which places it names that are empty. */
export function prepare(
  check: Check,
  environment: Environment,
  setting: Setting,
): Prepared | NotApplying {
  const whenEmpty = check.primitive === 'agree' ? check.whenEmpty : undefined;
  const evaluator = new Evaluator(environment, setting, whenEmpty);
  try {
    const { worlds, left, right } = worldsOf(check, evaluator, setting);
    const { readings, unknowns } = evaluator;
    return { check, worlds, left, right, readings, unknowns };
  } catch (error) {
    if (error instanceof EmptyPlace) return { empty: [error.position] };
    throw error;
  }
}

interface Sides {
  readonly worlds: readonly World[];
  readonly left: Side;
  readonly right: Side | null;
}

function worldsOf(check: Check, evaluator: Evaluator, setting: Setting): Sides {
  const left = sideOf(
    check.primitive === 'carries' ? evaluator.rating(check.left) : evaluator.term(check.left),
  );
  if (check.primitive === 'one-of') {
    return { worlds: oneOf(check, left, evaluator), left, right: null };
  }
  const right = sideOf(evaluator.term(check.right));
  if (left.is === 'code' || right.is === 'code') {
    if (left.is !== right.is) throw new Error('a code and a number were compiled as a pair');
    const worlds = left.is === 'code' && right.is === 'code' ? [equalCodes(left, right)] : [];
    return { worlds, left, right };
  }
  const l = left.polynomial;
  const r = right.polynomial;
  switch (check.primitive) {
    case 'equal': {
      const difference = minus(l, r);
      return { worlds: [equality(difference)], left, right };
    }
    case 'clearance':
      return { worlds: [clearance(check, minus(l, r), evaluator)], left, right };
    case 'carries':
      return { worlds: [carries(check, minus(l, r))], left, right };
    case 'agree':
      return { worlds: agree(check, l, r, evaluator, setting), left, right };
  }
}

function sideOf(value: Value): Side {
  if (value.is === 'list') throw new Error('a list was compiled as a side of a check');
  return value;
}

function equality(difference: Polynomial): World {
  return {
    requirements: [
      { polynomial: difference, reason: 'not-equal' },
      { polynomial: timesNumber(difference, negate(ONE)), reason: 'not-equal' },
    ],
  };
}

function equalCodes(
  left: { readonly reading: CodeReading },
  right: { readonly reading: CodeReading },
): World {
  const a = left.reading;
  const b = right.reading;
  if (a.key !== null && a.key === b.key) return { decided: 'holds' };
  if (a.codes === null || b.codes === null) return { decided: 'open' };
  const common = a.codes.filter((code) => b.codes?.includes(code));
  if (common.length === 0) return { decided: 'fails' };
  return { decided: a.codes.length === 1 && b.codes.length === 1 ? 'holds' : 'open' };
}

function oneOf(check: OneOfCheck, left: Side, evaluator: Evaluator): World[] {
  const { options } = check;
  if ('codes' in options) {
    if (left.is !== 'code') throw new Error('a number was compiled against codes');
    const { codes } = left.reading;
    if (codes === null) return [{ decided: 'open' }];
    const found = codes.filter((code) => options.codes.includes(code)).length;
    if (found === codes.length) return [{ decided: 'holds' }];
    return [{ decided: found === 0 ? 'fails' : 'open' }];
  }
  if (left.is !== 'number') throw new Error('a code was compiled against numbers');
  const range = rangeOf(left.polynomial, evaluator.domains);
  const { low, high } = range;
  if (isPoint(range) && low !== null) {
    const hit = options.numbers.some((number) => equals(number, low));
    return [{ decided: hit ? 'holds' : 'fails' }];
  }
  const possible = options.numbers.some(
    (number) =>
      (low === null || number.compare(low) >= (range.lowOpen ? 1 : 0)) &&
      (high === null || number.compare(high) <= (range.highOpen ? -1 : 0)),
  );
  return [{ decided: possible ? 'open' : 'fails' }];
}

function clearance(check: ClearanceCheck, difference: Polynomial, evaluator: Evaluator): World {
  const requirements: Requirement[] = [];
  if (check.min !== null) {
    const polynomial = minus(difference, evaluator.number(check.min));
    requirements.push({ polynomial, reason: 'too-small' });
  }
  if (check.max !== null) {
    const polynomial = minus(evaluator.number(check.max), difference);
    requirements.push({ polynomial, reason: 'too-large' });
  }
  return { requirements };
}

function carries(_check: CarriesCheck, reserve: Polynomial): World {
  return { requirements: [{ polynomial: reserve, reason: 'too-weak' }] };
}

/**
 * A loop. With v the speed ratio of the two axles, right over left, it holds where
 * 1 - refuse <= v <= 1 + refuse. Where v is one product, equal factors have cancelled in it, so
 * its range is exact; else both sides are compared as sums, which is exact to the extent that
 * `rangeOf` is. Totals of a driveline are positive, so multiplying through keeps the sense.
 */
function agree(
  check: AgreeCheck,
  left: Polynomial,
  right: Polynomial,
  evaluator: Evaluator,
  setting: Setting,
): World[] {
  const coupling = evaluator.term(check.coupling);
  if (coupling.is !== 'code') throw new Error('a coupling was compiled as a number');
  const codes = coupling.reading.codes ?? [...setting.couplings.keys()];
  const isChosen = [...evaluator.unknowns.values()].some(({ isChoice }) => isChoice);
  const speeds = isChosen ? null : quotient(right, left);
  return codes.map((code) => {
    const band = setting.couplings.get(code);
    if (band === undefined) return { decided: 'open' };
    const limit = refusalOf(band, setting.use);
    const most = add(ONE, limit);
    const least = subtract(ONE, limit);
    const above =
      speeds === null ? minus(timesNumber(left, most), right) : minus(constant(most), speeds);
    const below =
      speeds === null ? minus(right, timesNumber(left, least)) : minus(speeds, constant(least));
    return {
      requirements: [
        { polynomial: above, reason: 'first-too-fast' },
        { polynomial: below, reason: 'first-too-slow' },
      ],
    };
  });
}

/** The speed ratio minus 1 of a loop, as an interval; the whole line where it has no bounds. */
export function mismatchOf(prepared: Prepared): Interval | null {
  const { left, right, unknowns } = prepared;
  if (left.is !== 'number' || right?.is !== 'number') return null;
  const speeds = quotient(right.polynomial, left.polynomial);
  if (speeds === null) return null;
  const domains = domainsOf(unknowns);
  return rangeOf(minus(speeds, constant(ONE)), domains);
}

export function domainsOf(unknowns: ReadonlyMap<string, Unknown>): (key: string) => Interval {
  return (key) => {
    const unknown = unknowns.get(key);
    if (unknown === undefined) throw new Error(`unknown without a domain: ${key}`);
    return unknown.domain;
  };
}

/** The unknowns that are left in a prepared check after cancelling. */
export function remainingUnknowns(prepared: Prepared): Unknown[] {
  const keys = new Set<string>();
  for (const world of prepared.worlds) {
    if ('decided' in world) continue;
    for (const { polynomial } of world.requirements) {
      for (const key of unknownsOf(polynomial)) keys.add(key);
    }
  }
  return [...keys].flatMap((key) => prepared.unknowns.get(key) ?? []);
}
