/**
 * How many lines of a batch came to what.
 */

import type { FitBatchEnd } from '../contract/fit-batch.js';
import type { ShortFit } from '../usecases/fit-batch.js';

export class Counts {
  answers = 0;
  errors = 0;
  readonly #alone = { holds: 0, open: 0, fails: 0 };
  readonly #verdict = {
    fits: 0,
    'fits-with-changes': 0,
    'does-not-fit': 0,
    unknown: 0,
    none: 0,
  };
  readonly #problems = new Map<string, number>();

  answer({ alone, verdict }: Pick<ShortFit, 'alone' | 'verdict'>): void {
    this.answers += 1;
    this.#alone[alone] += 1;
    this.#verdict[verdict ?? 'none'] += 1;
  }

  error(code: string): void {
    this.errors += 1;
    this.#problems.set(code, (this.#problems.get(code) ?? 0) + 1);
  }

  /** @param lines that were read, blank ones among them. */
  end(lines: number): FitBatchEnd {
    return {
      lines,
      answers: this.answers,
      errors: this.errors,
      alone: { ...this.#alone },
      verdict: { ...this.#verdict },
      problems: Object.fromEntries([...this.#problems].sort(([a], [b]) => (a < b ? -1 : 1))),
    };
  }
}
