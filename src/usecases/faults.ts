/**
 * Every fault of a question is said at once, at the field that has it.
 */

import { QuestionError } from './errors.js';
import type { QuestionFault, QuestionFaultCode, QuestionFaultData } from './question-fault.js';
import type { AskView } from './vehicle-view.js';

/** Collects faults, to throw one error that names them all. */
export class Faults {
  readonly #found: QuestionFault[] = [];
  #ask: readonly AskView[] = [];

  add<Code extends QuestionFaultCode>(
    at: string | null,
    code: Code,
    data: QuestionFaultData[Code],
  ): void {
    // The compiler does not see that code and data of one call belong together.
    this.#found.push({ at, code, data } as QuestionFault);
  }

  /** What to ask of whoever asked, so that the question can be mended. */
  ask(ask: readonly AskView[]): void {
    this.#ask = ask;
  }

  /** What was found so far. */
  get found(): readonly QuestionFault[] {
    return this.#found;
  }

  endIfAny(): void {
    if (this.#found.length > 0) this.end();
  }

  /** Throws all faults as one. */
  end(): never {
    const [first, ...others] = this.#found;
    if (first === undefined) throw new Error('a question ends early only for a fault');
    throw new QuestionError([first, ...others], this.#ask);
  }
}
