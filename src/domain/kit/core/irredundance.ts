/**
 * Whether something of an assignment can be put back: a group of changed variables that may return
 * to value 0 together so that nothing fails, and nothing is open that is not open anyway.
 *
 * Single variables are too few to look at: two needless changes may justify each other. Each
 * changed variable is put back in turn, those before it kept. Whatever relation is then worse than
 * it was names the variables of which one more must go back; where it names none that may, this
 * way is closed. Of a row of adapters only what is new may go, too, without what was there.
 */

import { type Budget, STATE, type State } from './problem.js';
import type { Tables } from './tables.js';

/** What a test has come to; null where the budget ended before it did. */
export type Outcome = boolean | null;

/** Whether nothing of a whole assignment can be put back. */
export function isIrredundant(tables: Tables, values: readonly number[], budget: Budget): Outcome {
  const states = tables.tables.map((table) => table.at(values));
  return not(new Reversions(tables, values, states, budget).canPutBackAny());
}

/**
 * Whether every result below a node has something in it that can be put back: what is undecided,
 * and some of what is decided, but not `latest`. For then it does not matter what else is changed.
 * What is open by what is decided is open in every result, and may be so.
 */
export function isNeedless(
  tables: Tables,
  decided: Int32Array,
  latest: number,
  budget: Budget,
): Outcome {
  const values = Array.from(decided, (value) => Math.max(0, value));
  const states = tables.tables.map((table): State => {
    if (table.at(values) !== STATE.open) return STATE.holds;
    const isSure = table.blameAt(values).every((variable) => (decided[variable] as number) >= 0);
    return isSure ? STATE.open : STATE.holds;
  });
  const test = new Reversions(tables, values, states, budget);
  test.keep(latest);
  return test.isWorse ? test.canMend() : test.canPutBackAny();
}

function not(outcome: Outcome): Outcome {
  return outcome === null ? null : !outcome;
}

class Reversions {
  readonly #tables: Tables;
  readonly #budget: Budget;
  readonly #chosen: readonly number[];
  readonly #changed: readonly number[];
  /** The relations that can be worse, and the state that each must have. */
  readonly #relations: readonly number[];
  readonly #atLeast: readonly State[];
  readonly #values: number[];
  readonly #isKept: boolean[];

  constructor(
    tables: Tables,
    values: readonly number[],
    atLeast: readonly State[],
    budget: Budget,
  ) {
    this.#tables = tables;
    this.#budget = budget;
    this.#chosen = values;
    this.#values = [...values];
    this.#isKept = values.map(() => false);
    this.#changed = [...values.keys()].filter((variable) => values[variable] !== 0);
    this.#relations = tables.tables.flatMap((table, relation) => {
      const isRead = table.scope.some((variable) => values[variable] !== 0);
      return isRead || table.at(values) < (atLeast[relation] ?? 0) ? [relation] : [];
    });
    this.#atLeast = atLeast;
  }

  /** Whether something is worse than it must be with nothing put back. */
  get isWorse(): boolean {
    return this.#needed() !== null;
  }

  keep(variable: number): void {
    this.#isKept[variable] = true;
  }

  canPutBackAny(): Outcome {
    for (const variable of this.#changed) {
      if (this.#isKept[variable] === true) continue;
      const can = this.#canPutBack(variable);
      if (can !== false) return can;
      this.keep(variable);
    }
    return false;
  }

  /** Whether it can go back, alone or with others that are not kept; null: no budget is left. */
  #canPutBack(variable: number): Outcome {
    const chosen = this.#chosen[variable] ?? 0;
    const less = this.#tables.variables[variable]?.less?.[chosen] ?? 0;
    const can = this.#canBe(variable, 0);
    return can !== false || less === 0 || less === chosen ? can : this.#canBe(variable, less);
  }

  #canBe(variable: number, value: number): Outcome {
    if (this.#budget.left <= 0) return null;
    this.#budget.left -= 1;
    const wasKept = this.#isKept[variable] ?? false;
    this.#values[variable] = value;
    this.#isKept[variable] = true;
    const can = this.canMend();
    this.#values[variable] = this.#chosen[variable] ?? 0;
    this.#isKept[variable] = wasKept;
    return can;
  }

  /** Whether what is worse now can be mended by putting back more. */
  canMend(): Outcome {
    const needed = this.#needed();
    if (needed === null) return true;
    const kept: number[] = [];
    let can: Outcome = false;
    for (const variable of needed) {
      can = this.#canPutBack(variable);
      if (can !== false) break;
      this.#isKept[variable] = true;
      kept.push(variable);
    }
    for (const variable of kept) this.#isKept[variable] = false;
    return can;
  }

  /** Variables of which one more must go back, as few as any relation names; null: none must. */
  #needed(): readonly number[] | null {
    let fewest: readonly number[] | null = null;
    for (const relation of this.#relations) {
      if (this.#tables.stateAt(relation, this.#values) >= (this.#atLeast[relation] ?? 0)) continue;
      const blamed = this.#tables
        .blameAt(relation, this.#values)
        .filter((variable) => this.#values[variable] !== 0 && this.#isKept[variable] === false);
      if (fewest === null || blamed.length < fewest.length) fewest = blamed;
      if (blamed.length === 0) break;
    }
    return fewest;
  }
}
