/**
 * What is wrong with a line before it is a question, or with a batch before it has lines.
 */

import type { FaultWire } from '../contract/problem.js';
import type { Fault } from '../contract/problems/fault.js';
import type { ProblemCode } from '../contract/problems/problem-type.js';

/** Where a fault stands: in an object by pointer, in a row by the name of its column. */
export type LinePlace = Pick<FaultWire, 'pointer' | 'parameter'>;

export type LineFault = Fault & LinePlace;

export class LineRefused extends Error {
  readonly code: ProblemCode;
  readonly faults: readonly LineFault[];

  constructor(code: ProblemCode, faults: readonly LineFault[], options?: ErrorOptions) {
    super(code, options);
    this.name = 'LineRefused';
    this.code = code;
    this.faults = faults;
  }
}
