/**
 * What can go wrong with a question: a closed union. That a part does not fit is no error.
 */

import type { Fault } from '../domain/catalogue/faults.js';
import { ERROR_OF, type QuestionFault } from './question-fault.js';
import type { AskView } from './vehicle-view.js';

/** Codes are stable; each is the last segment of a problem type. */
export type QuestionErrorCode =
  | 'unknown-edition'
  | 'no-edition'
  | 'unknown-vehicle'
  | 'vehicle-replaced'
  | 'unknown-part'
  | 'ambiguous-part'
  | 'unknown-position'
  | 'unknown-interface'
  | 'unknown-layout'
  | 'unknown-role'
  | 'unknown-kind'
  | 'unknown-calculation'
  | 'invalid-question';

export class QuestionError extends Error {
  readonly code: QuestionErrorCode;
  /** Every fault that was found. */
  readonly faults: Faulty;
  /** What to ask of whoever asked: the best question first. */
  readonly ask: readonly AskView[];

  constructor(faults: Faulty, ask: readonly AskView[] = []) {
    super(faults.map(({ at, code }) => `${at ?? 'question'}: ${code}`).join(', '));
    this.name = 'QuestionError';
    this.code = errorOf(faults);
    this.faults = faults;
    this.ask = ask;
  }
}

type Faulty = readonly [QuestionFault, ...QuestionFault[]];

/** The error of all the faults if they are of one, else that the question is invalid. */
function errorOf([first, ...others]: Faulty): QuestionErrorCode {
  const code = ERROR_OF[first.code];
  return others.every((other) => ERROR_OF[other.code] === code) ? code : 'invalid-question';
}

/** A document with faults: refused as a whole. */
export class DocumentRefused extends Error {
  readonly faults: readonly Fault[];
  readonly warnings: readonly Fault[];

  constructor(faults: readonly Fault[], warnings: readonly Fault[]) {
    super(`the document has ${faults.length} fault${faults.length === 1 ? '' : 's'}`);
    this.name = 'DocumentRefused';
    this.faults = faults;
    this.warnings = warnings;
  }
}

/** The store holds something that it must not, or cannot be used; `remedy` is one line. */
export class StoreFault extends Error {
  readonly remedy: string;

  constructor(message: string, remedy: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'StoreFault';
    this.remedy = remedy;
  }
}
