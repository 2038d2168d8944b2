/**
 * What a choice of values costs: its bill, with all that rules use up and all that is opened.
 */

import type { Rule } from '../catalogue/catalogue.js';
import type { Consumption } from '../catalogue/trade.js';
import type { Condition } from '../check/check.js';
import { EmptyPlace, Evaluator } from '../check/evaluator.js';
import { rangeOf } from '../check/polynomial.js';
import { shapeOf, type Term } from '../check/term.js';
import { judgeCondition } from '../judge/condition.js';
import type { Configuration } from '../judge/configuration.js';
import { LayoutEnvironment } from '../judge/environment.js';
import { settingOf } from '../judge/judge.js';
import { supposalsOf } from '../judge/supposed.js';
import { outcomeForEach } from '../judge/supposed-constraints.js';
import { middle } from '../quantity/interval.js';
import { type Rational, ZERO } from '../quantity/rational.js';
import type { AdapterChange, Bill, Consumed, SeatChange } from './basket.js';
import { Reads } from './reads.js';
import type { Scene } from './scene.js';

interface Consumer {
  readonly rule: Rule;
  readonly consumes: Consumption;
  readonly reads: Reads;
  readonly scope: readonly number[];
  readonly known: Map<string, Consumed | null>;
}

export class Billing {
  readonly #scene: Scene;
  readonly #consumers: readonly Consumer[];
  readonly #opened = new Map<string, Bill['opened']>();

  constructor(scene: Scene) {
    this.#scene = scene;
    const rules = scene.catalogue.rules.get(scene.question.vehicle.layout.id) ?? [];
    this.#consumers = rules.flatMap((rule) => {
      return rule.consumes === null ? [] : [consumerOf(scene, rule, rule.consumes)];
    });
  }

  /** Equal for values of a variable that every rule takes alike. */
  keyOf(variable: number, value: number): string {
    return this.#consumers
      .filter(({ scope }) => scope.includes(variable))
      .map(({ reads }) => reads.keyOf(variable, value))
      .join(' & ');
  }

  bill(values: readonly number[]): Bill {
    return this.#bill(values, null);
  }

  /** As much of the bill as no further change can take away. */
  least(values: readonly number[], decided: readonly boolean[]): Bill {
    return this.#bill(values, decided);
  }

  #bill(values: readonly number[], decided: readonly boolean[] | null): Bill {
    const seats: SeatChange[] = [];
    const adapters: AdapterChange[] = [];
    const changed = new Set<string>();
    for (const [variable, value] of values.entries()) {
      if (value === 0) continue;
      if (variable < this.#scene.places.length) {
        seats.push(...this.#scene.seatChanges(variable, value));
        changed.add(this.#scene.nameOf(variable));
      } else {
        const change = this.#scene.adapterChange(variable, value);
        if (change !== null) adapters.push(change);
      }
    }
    const consumed = this.#consumers.flatMap((consumer) => {
      if (decided !== null && !isSettled(consumer, decided)) return [];
      return this.#consumed(consumer, values) ?? [];
    });
    return { seats, adapters, consumed, opened: this.#openedBy(changed) };
  }

  #openedBy(changed: ReadonlySet<string>): Bill['opened'] {
    const key = [...changed].join();
    let known = this.#opened.get(key);
    if (known === undefined) {
      known = this.#scene.openedBy(changed).filter((position) => !this.#scene.isEmptyNow(position));
      this.#opened.set(key, known);
    }
    return known;
  }

  #consumed(consumer: Consumer, values: readonly number[]): Consumed | null {
    const own = consumer.scope.map((variable) => values[variable] ?? 0);
    const key = own.join();
    let known = consumer.known.get(key);
    if (known === undefined) {
      known = consumedBy(consumer, this.#scene.configuration(consumer.scope, own));
      consumer.known.set(key, known);
    }
    return known;
  }
}

function consumerOf(scene: Scene, rule: Rule, consumes: Consumption): Consumer {
  const reads = new Reads(scene);
  reads.condition(rule.when);
  reads.terms([consumes.quantity]);
  return { rule, consumes, reads, scope: reads.scope, known: new Map() };
}

/** Nothing that it reads can change any more. */
function isSettled({ scope }: Consumer, decided: readonly boolean[]): boolean {
  return scope.every((variable) => decided[variable] === true);
}

function consumedBy({ rule, consumes }: Consumer, configuration: Configuration): Consumed | null {
  if (!speaks(rule.when, configuration)) return null;
  const quantity = quantityOf(consumes.quantity, configuration);
  if (quantity?.equals(ZERO) === true) return null;
  const shape = shapeOf(consumes.quantity);
  const dimension = shape.is === 'number' ? shape.dimension : '1';
  return { part: consumes.part, quantity, dimension, rule: rule.id };
}

/** Whether the condition of a rule holds for sure. */
export function speaks(when: Condition, configuration: Configuration): boolean {
  const outcome = outcomeForEach(configuration, (one) =>
    judgeCondition(when, one, settingOf(one), null),
  );
  return outcome === 'holds';
}

/**
 * As recorded, the middle of what it may be; null where nobody recorded it, or where it hangs on a
 * fact that nobody told.
 */
export function quantityOf(term: Term, configuration: Configuration): Rational | null {
  const [one, ...others] = supposalsOf(configuration);
  if (one === undefined) return quantityAsTold(term, configuration);
  const quantity = quantityAsTold(term, one.configuration);
  const isSame = others.every((other) => {
    const own = quantityAsTold(term, other.configuration);
    return own === null || quantity === null ? own === quantity : own.equals(quantity);
  });
  return isSame ? quantity : null;
}

function quantityAsTold(term: Term, configuration: Configuration): Rational | null {
  const setting = settingOf(configuration);
  const { judged } = configuration;
  const evaluator = new Evaluator(
    new LayoutEnvironment(configuration, judged, null, setting),
    setting,
  );
  try {
    const polynomial = evaluator.number(term);
    return middle(rangeOf(polynomial, evaluator.domains));
  } catch (error) {
    // Nothing stands where it would be filled in.
    if (error instanceof EmptyPlace) return ZERO;
    throw error;
  }
}
