/**
 * What a language has to say for problems: a table that does not compile where a type of problem,
 * the code of a fault or a limit has no words.
 */

import type { LimitName } from '../limits.js';
import type { RequestWords } from '../sent-request.js';
import type { FaultCode, FaultData, JsonStop } from './fault.js';
import type { ProblemCode, Retry } from './problem-type.js';

export type FaultWords = {
  readonly [Code in FaultCode]: (data: FaultData[Code]) => string;
};

export type ProblemTypeWords = Readonly<
  Record<ProblemCode, { readonly title: string; readonly about: string }>
>;

/** What each limit is the most of. */
export type LimitWords = Readonly<Record<LimitName, string>>;

export interface ProblemWords {
  readonly problems: ProblemTypeWords;
  readonly faults: FaultWords;
  readonly limits: LimitWords;
  /** Where a text stops being JSON: what is expected there, and what is there. */
  readonly jsonStop: (stop: JsonStop) => string;
  /** How many faults there are beside the first. */
  readonly others: (count: number) => string;
  readonly page: {
    readonly code: (code: string, status: number) => string;
    readonly again: Readonly<Record<Retry, string>>;
    readonly request: RequestWords;
    /** What stands above a request that is refused, and above the same one mended. */
    readonly refused: string;
    readonly mended: string;
    /** What stands above a request that is refused for no fault of its own. */
    readonly meanwhile: string;
    /** What stands above the faults. */
    readonly faults: string;
  };
}
