/**
 * What goes wrong with a question, as something that can be caught: what the service refuses, by
 * RFC 9457, and what is no answer of the service at all.
 */

import type { Problem } from './contract.js';
import { retryAfterMs } from './retry.js';

/**
 * The service's own problem. That a part does not fit is an answer, and never thrown. `code` is
 * open: a program goes by those that it knows, and by `retry` for the others.
 */
export class FayingProblem extends Error {
  override readonly name = 'FayingProblem';
  readonly problem: Problem;
  /** Milliseconds after which to ask again, where the answer said so. */
  readonly retryAfterMs: number | null;

  constructor(problem: Problem, waitMs: number | null) {
    super(problem.detail);
    this.problem = problem;
    this.retryAfterMs = waitMs;
  }

  get code(): string {
    return this.problem.code;
  }

  get status(): number {
    return this.problem.status;
  }

  /** Whether to ask again: not at all, the same later, or something else. */
  get retry(): Problem['retry'] {
    return this.problem.retry;
  }

  /** Every fault that was found in the question, and where. */
  get errors(): Problem['errors'] {
    return this.problem.errors;
  }

  /** What would narrow the question down; empty where nothing would. */
  get ask(): NonNullable<Problem['ask']> {
    return this.problem.ask ?? [];
  }
}

/** An answer that is not the service's: a gateway's page of an error, say. */
export class UnexpectedAnswer extends Error {
  override readonly name = 'UnexpectedAnswer';
  readonly status: number;
  readonly body: unknown;

  constructor(status: number, body: unknown) {
    super(`The answer with status ${status} is none of the service's`);
    this.status = status;
    this.body = body;
  }
}

/** What to throw for an answer that is none. */
export function refusalOf(response: Response, body: unknown, now: number): Error {
  if (!isProblem(body)) return new UnexpectedAnswer(response.status, body);
  return new FayingProblem(body, retryAfterMs(response, now));
}

function isProblem(body: unknown): body is Problem {
  return (
    typeof body === 'object' &&
    body !== null &&
    'code' in body &&
    typeof body.code === 'string' &&
    'status' in body &&
    typeof body.status === 'number' &&
    'detail' in body &&
    typeof body.detail === 'string' &&
    'errors' in body &&
    Array.isArray(body.errors) &&
    'retry' in body &&
    typeof body.retry === 'string'
  );
}
