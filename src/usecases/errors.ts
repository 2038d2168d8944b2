/**
 * What can go wrong with a question: a closed union. That a part does not fit is no error.
 */

import type { Fault } from '../domain/catalogue/faults.js';

/** Codes are stable; each is the last segment of a problem type. */
export type QuestionErrorCode =
  | 'unknown-edition'
  | 'no-edition'
  | 'unknown-vehicle'
  | 'unknown-part'
  | 'unknown-position'
  | 'unknown-interface'
  | 'unknown-layout'
  | 'unknown-role'
  | 'unknown-kind'
  | 'invalid-question'
  | 'changes-not-supported';

export class QuestionError extends Error {
  readonly code: QuestionErrorCode;
  /** The parameter or JSON pointer that is at fault, with what is wrong there. */
  readonly faults: readonly QuestionFault[];

  constructor(code: QuestionErrorCode, message: string, faults: readonly QuestionFault[] = []) {
    super(message);
    this.name = 'QuestionError';
    this.code = code;
    this.faults = faults;
  }
}

export interface QuestionFault {
  /** Name of the question's field: `vehicle`, `with.clutch`, `a.interface.pin`. */
  readonly at: string;
  readonly code: string;
  readonly text: string;
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
