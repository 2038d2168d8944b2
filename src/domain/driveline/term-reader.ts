/**
 * Reads terms of a layout in one arrangement of a vehicle: the values that they may have, and what
 * nobody has recorded of what they read. Nothing is assumed: a term of which something is missing
 * has no value, however much of it is known.
 *
 * Left out: parts with alternative faces, of which it is not known which one is used; a term that
 * reads one has no value either, unless all of them say the same.
 */

import { EmptyPlace, type Environment, Evaluator } from '../check/evaluator.js';
import { rangeOf } from '../check/polynomial.js';
import type { Hand, Reading } from '../check/reading.js';
import { isUnrecorded } from '../check/result.js';
import type { Reference, Term, TermShape } from '../check/term.js';
import type { Arrangement, Configuration } from '../judge/configuration.js';
import { LayoutEnvironment } from '../judge/environment.js';
import { settingOf } from '../judge/judge.js';
import { hull, type Interval } from '../quantity/interval.js';

export interface TermValue {
  /** Null where it is not known, and where a place that it reads is empty. */
  readonly interval: Interval | null;
  /** What would have to be recorded; empty where the place is, too. */
  readonly missing: readonly Reading[];
  readonly isEmpty: boolean;
}

export interface TermList {
  readonly items: readonly Interval[] | null;
  readonly missing: readonly Reading[];
}

const HANDS: readonly Hand[] = ['left', 'right'];

export class TermReader {
  readonly #configuration: Configuration;
  readonly #arrangement: Arrangement;

  constructor(configuration: Configuration, arrangement: Arrangement) {
    this.#configuration = configuration;
    this.#arrangement = arrangement;
  }

  /** Of left and right that differ, all that either may have. */
  number(term: Term): TermValue {
    const [left, right] = HANDS.map((hand) => this.#numberAt(term, hand));
    if (left === undefined || right === undefined) throw new Error('there are two hands');
    if (left.interval === null || right.interval === null) {
      const missing = left.missing.length > 0 ? left.missing : right.missing;
      return { interval: null, missing, isEmpty: left.isEmpty && right.isEmpty };
    }
    return { ...left, interval: hull(left.interval, right.interval) };
  }

  #numberAt(term: Term, hand: Hand): TermValue {
    const { evaluator, isAmbiguous } = this.#evaluator(hand);
    try {
      const range = rangeOf(evaluator.number(term), evaluator.domains);
      const missing = missingIn(evaluator.readings);
      const isKnown = missing.length === 0 && !isAmbiguous();
      return { interval: isKnown ? range : null, missing, isEmpty: false };
    } catch (error) {
      if (error instanceof EmptyPlace) return { interval: null, missing: [], isEmpty: true };
      throw error;
    }
  }

  list(term: Term): TermList {
    const { evaluator } = this.#evaluator('left');
    try {
      const value = evaluator.term(term);
      if (value.is !== 'list') throw new Error('a list was compiled here');
      const items = value.items?.map((item) => rangeOf(item, evaluator.domains)) ?? null;
      return { items, missing: missingIn(evaluator.readings) };
    } catch (error) {
      if (error instanceof EmptyPlace) return { items: null, missing: [] };
      throw error;
    }
  }

  #evaluator(hand: Hand) {
    const setting = settingOf(this.#configuration);
    const own = new LayoutEnvironment(this.#configuration, this.#arrangement, hand, setting);
    const environment = new Watched(own);
    return {
      evaluator: new Evaluator(environment, setting),
      isAmbiguous: () => environment.isAmbiguous,
    };
  }
}

function missingIn(readings: readonly Reading[]): readonly Reading[] {
  return readings.flatMap((one) => {
    if (!isUnrecorded(one)) return [];
    const behind = one.form === 'number' ? missingIn(one.behind ?? []) : [];
    return behind.length > 0 ? behind : [one];
  });
}

/** Notes whether one of several alternatives was read. */
class Watched implements Environment {
  isAmbiguous = false;
  readonly #inner: Environment;

  constructor(inner: Environment) {
    this.#inner = inner;
  }

  lookup(reference: Reference, shape: TermShape): Reading {
    const reading = this.#inner.lookup(reference, shape);
    if (reading.form === 'choice' && !isOfOneText(reading.options)) this.isAmbiguous = true;
    return reading;
  }
}

function isOfOneText(options: readonly Reading[]): boolean {
  const texts = options.map((one) => ('text' in one ? one.text : null));
  return texts.every((text) => text !== null && text === texts[0]);
}
