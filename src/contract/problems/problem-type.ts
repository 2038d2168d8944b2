/**
 * The types of problems that the service answers with. Codes are stable; each is the last segment
 * of the address of its type, and has a page there.
 */

import type { QuestionErrorCode } from '../../usecases/errors.js';

/** Problems that only this door knows; the others are the errors of the use-cases. */
export type DoorProblemCode =
  | 'invalid-request'
  | 'invalid-cursor'
  | 'malformed-json'
  | 'malformed-request'
  | 'unknown-path'
  | 'unknown-problem'
  | 'unknown-key'
  | 'key-needed'
  | 'not-granted'
  | 'method-not-allowed'
  | 'not-acceptable'
  | 'request-timeout'
  | 'body-too-large'
  | 'url-too-long'
  | 'unsupported-media-type'
  | 'expectation-failed'
  | 'headers-too-large'
  | 'internal-error'
  | 'store-fault'
  | 'stopping';

export type ProblemCode = QuestionErrorCode | DoorProblemCode;

/** Whether to ask again: not at all, the same later, or with something changed. */
export type Retry = 'no' | 'later' | 'with-change';

export function typeOf(code: ProblemCode): string {
  return `/problems/${code}`;
}
