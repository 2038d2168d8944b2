/**
 * What is not known or may be chosen, with the values that are tried for it.
 *
 * An open end is tried just inside, an end that is missing far beyond anything a document says.
 * Random documents keep to whole and half numbers of millimetres and to ratios whose bands are
 * wider than the steps here, so that trying these values tells all.
 */

import { compare, type Fraction, fraction, minus, ONE, over, plus, times } from './fraction.js';
import { isExact, type Span } from './record.js';

/** One value: a number, a word, or the index of an option. */
export type Dot = Fraction | string;

export type World = Map<string, Dot>;

export interface Variable {
  /** Two places with one key are the same unknown, or the same choice. */
  readonly key: string;
  readonly isChoice: boolean;
  readonly isNumber: boolean;
  readonly isAnyWord?: true;
  /** Its least and its greatest value; every word it may be. */
  readonly ends: readonly Dot[];
  /** The ends and enough between them. */
  readonly grid: readonly Dot[];
}

const FAR = fraction(1_000_000n);
const INSIDE = fraction(1n, 1_000_000n);
const STEP = fraction(1n, 2n);
/** Below the width of the narrowest band of a loop, which is 1 %. */
const RATIO_STEP = fraction(1008n, 1000n);

export function numberVariable(key: string, span: Span, isChoice: boolean): Variable {
  const { low, high } = span;
  const least = low === null ? minus(fraction(0n), FAR) : span.lowOpen ? plus(low, INSIDE) : low;
  const most = high === null ? FAR : span.highOpen ? minus(high, INSIDE) : high;
  const ends = isExact(span) ? [least] : [least, most];
  const between = isExact(span) ? [] : valuesBetween(span, least, most);
  return { key, isChoice, isNumber: true, ends, grid: [...ends, ...between] };
}

function valuesBetween({ low, high, lowOpen }: Span, least: Fraction, most: Fraction): Fraction[] {
  if (high === null && low !== null && lowOpen) return manyRatios();
  const from = low ?? fraction(-20n);
  const to = high ?? fraction(30n);
  const isShort = compare(minus(to, from), fraction(1n)) < 0;
  const step = isShort ? times(minus(to, from), fraction(1n, 16n)) : STEP;
  const values: Fraction[] = [];
  for (let value = plus(from, step); compare(value, to) < 0; value = plus(value, step)) {
    if (compare(value, least) > 0 && compare(value, most) < 0) values.push(value);
  }
  return low === null && high === null ? [...values, ...farValues(from, to)] : values;
}

/** As far as sums of adapters reach, with steps below the width of any tolerance there. */
function farValues(from: Fraction, to: Fraction): Fraction[] {
  const steps = Array.from({ length: 20 }, (_, index) => fraction(2 * index));
  return steps.flatMap((step) => [minus(from, step), plus(to, step)]);
}

/** From 1/32 to 32, each a little more than the one before; the middle first. */
function manyRatios(): Fraction[] {
  const values: Fraction[] = [ONE];
  let value = ONE;
  while (compare(value, fraction(32n)) < 0) {
    // Kept short, or the numbers would grow with every step.
    const next = times(value, RATIO_STEP);
    value = fraction((next.top * 10_000n) / next.bottom, 10_000n);
    values.push(value, over(ONE, value));
  }
  return values;
}

export function wordVariable(key: string, words: readonly string[], isChoice: boolean): Variable {
  return { key, isChoice, isNumber: false, ends: words, grid: words };
}

/** A word that nobody recorded; which words are worth trying, the checks that read it tell. */
export function anyWord(key: string): Variable {
  return { ...wordVariable(key, [], false), isAnyWord: true };
}

/** The same two words stand for all those that no record here has. */
const OTHER_WORDS = ['any other word', 'yet another word'] as const;

export function withWords(variable: Variable, words: readonly string[]): Variable {
  if (variable.isAnyWord !== true) return variable;
  return wordVariable(variable.key, [...OTHER_WORDS, ...new Set(words)], false);
}

/** All worlds that the variables span, each value in turn. The same map is given every time. */
export function* worldsOf(
  variables: readonly Variable[],
  values: (variable: Variable) => readonly Dot[],
  world: World = new Map(),
): Generator<World> {
  const [first, ...others] = variables;
  if (first === undefined) {
    yield world;
    return;
  }
  for (const value of values(first)) {
    world.set(first.key, value);
    yield* worldsOf(others, values, world);
  }
}

/** What comes out in each of those worlds. */
export function inEach<Result>(
  variables: readonly Variable[],
  values: (variable: Variable) => readonly Dot[],
  resultIn: (world: World) => Result,
): Result[] {
  const results: Result[] = [];
  for (const world of worldsOf(variables, values)) results.push(resultIn(world));
  return results;
}

/** Each variable once. */
export function distinct(variables: readonly Variable[]): Variable[] {
  return [...new Map(variables.map((variable) => [variable.key, variable])).values()];
}
