/**
 * One check made ready to be tried: a number computed from what is found, and the stretches in
 * which it must lie for the check to be true.
 *
 *   equal        left - right              exactly 0; of words, 0 where they are the same
 *   one-of       left                      one of the options
 *   clearance    left - right              from min to max, and the other spellings likewise
 *   agree        right / left - 1          no further from 0 than the coupling allows
 *   carries      left - right              0 or more
 */

import type { BandRecord } from '../../src/domain/catalogue/document.js';
import { asNumber, extremeOf, type Found, nothingAt } from './found.js';
import { compare, type Fraction, minus, ONE, over, ZERO } from './fraction.js';
import { compute, type Finder, literal } from './term.js';
import { type Dot, distinct, type Variable, type World, wordVariable } from './variable.js';

export type RawCheck = Readonly<Record<string, unknown>> & {
  readonly id?: string;
  readonly when?: unknown;
  readonly severity?: 'must' | 'caution';
};

/** From the first to the second, both included; null is without end. */
export type Stretch = readonly [Fraction | null, Fraction | null];

export interface Trial {
  /** Places that it names and where nothing is: then it does not apply. */
  readonly empty: readonly string[];
  readonly variables: readonly Variable[];
  readonly words: readonly string[];
  readonly measure: (world: World) => Fraction;
  readonly stretches: (world: World) => readonly Stretch[];
  /** All that it reads, side by side. */
  readonly sides: readonly Found[];
}

/** What a check may ask beside the values that it names. */
export interface Terms {
  readonly find: Finder;
  /** Finds factors where nothing is. */
  readonly findWith: (factors: Readonly<Record<string, unknown>>) => Finder;
  /** The adapters' values of such a name, one by one; null where it is no such name. */
  readonly findEach: (name: string) => readonly Found[] | null;
  /** The limits of loops by coupling. */
  readonly bands: ReadonlyMap<string, BandRecord>;
  /** Whether a loop that the vehicle can use off the road only is refused. */
  readonly isOnRoad: boolean;
}

export function tryOut(raw: RawCheck, terms: Terms): Trial {
  if ('equal' in raw) return equality(raw.equal, terms);
  if ('one-of' in raw) return oneOf(raw['one-of'] as readonly [unknown, unknown[]], terms);
  if ('agree' in raw) return agreement(raw, terms);
  if ('carries' in raw) return load(raw, terms);
  return clearance(raw, terms);
}

function trialOf(
  sides: readonly Found[],
  measure: (values: readonly Dot[]) => Fraction,
  stretches: (values: readonly Dot[]) => readonly Stretch[],
): Trial {
  const valuesAt = (world: World) => sides.map(({ at }) => at(world));
  return {
    empty: sides.flatMap(({ empty }) => empty),
    variables: distinct(sides.flatMap(({ variables }) => variables)),
    words: sides.flatMap(({ words }) => words),
    measure: (world) => measure(valuesAt(world)),
    stretches: (world) => stretches(valuesAt(world)),
    sides,
  };
}

function difference([left, right]: readonly Dot[]): Fraction {
  if (left === undefined || right === undefined) throw new Error('a check compares two sides');
  if (typeof left === 'string' || typeof right === 'string') return left === right ? ZERO : ONE;
  return minus(left, right);
}

function pairOf(raw: unknown, find: Finder): Found[] {
  return (raw as readonly unknown[]).map((side) => compute(side, find));
}

function equality(raw: unknown, { find }: Terms): Trial {
  return trialOf(pairOf(raw, find), difference, () => [[ZERO, ZERO]]);
}

function oneOf([name, options]: readonly [unknown, readonly unknown[]], { find }: Terms): Trial {
  const left = compute(name, find);
  const isWord = (dot: Dot | undefined): dot is string => typeof dot === 'string';
  const trial = trialOf(
    [left],
    ([value = '']) => (isWord(value) ? (options.includes(value) ? ZERO : ONE) : value),
    ([value]) => {
      if (isWord(value)) return [[ZERO, ZERO]];
      return options.map((option) => [literal(String(option)), literal(String(option))]);
    },
  );
  return { ...trial, words: [...trial.words, ...options.map(String)] };
}

function clearance(raw: RawCheck, { find }: Terms): Trial {
  const limit = (key: string) => {
    const text = raw[key];
    return typeof text === 'string' ? literal(text) : null;
  };
  if ('at-least' in raw) return between(raw['at-least'], [ZERO, null], find);
  if ('at-most' in raw) return between(raw['at-most'], [null, ZERO], find);
  if ('within' in raw) {
    const tolerance = limit('tolerance') ?? ZERO;
    return between(raw.within, [minus(ZERO, tolerance), tolerance], find);
  }
  return between(raw.clearance, [limit('min'), limit('max')], find);
}

function between(raw: unknown, stretch: Stretch, find: Finder): Trial {
  return trialOf(pairOf(raw, find), difference, () => [stretch]);
}

function load(raw: RawCheck, { find, findEach }: Terms): Trial {
  const each = typeof raw.carries === 'string' ? findEach(raw.carries) : null;
  const rating = each === null ? compute(raw.carries, find) : weakestOf(each);
  return trialOf([rating, compute(raw.demand, find)], difference, () => [[ZERO, null]]);
}

/** Of several adapters in a row the weakest counts; without one there is nothing to load. */
function weakestOf(ratings: readonly Found[]): Found {
  return ratings.length === 0 ? nothingAt('a mating without adapters') : extremeOf('min', ratings);
}

function agreement(raw: RawCheck, terms: Terms): Trial {
  // A factor stands for the ratio of an empty place; there is no coupling in it.
  const coupling = amongKnown(compute(raw.coupling, terms.find), [...terms.bands.keys()]);
  const find = terms.findWith((raw.whenEmpty ?? {}) as Readonly<Record<string, unknown>>);
  return trialOf(
    [...pairOf(raw.agree, find), coupling],
    ([left = ONE, right = ONE]) => minus(over(asNumber(right), asNumber(left)), ONE),
    ([, , word]) => {
      const band = typeof word === 'string' ? terms.bands.get(word) : undefined;
      if (band === undefined) throw new Error('a loop has a coupling');
      const limit = literal(terms.isOnRoad ? band.warn : band.refuse);
      return [[minus(ZERO, limit), limit]];
    },
  );
}

/** A coupling that nobody recorded is one of those that there are. */
function amongKnown(coupling: Found, known: readonly string[]): Found {
  const variables = coupling.variables.map((variable) =>
    variable.isAnyWord === true ? wordVariable(variable.key, known, false) : variable,
  );
  return { ...coupling, variables };
}

export function isTrueIn(trial: Trial, world: World): boolean {
  const value = trial.measure(world);
  return trial.stretches(world).some((stretch) => isInside(value, stretch));
}

export function isInside(value: Fraction, [low, high]: Stretch): boolean {
  if (low !== null && compare(value, low) < 0) return false;
  return high === null || compare(value, high) <= 0;
}
