/**
 * Which type of problem each fault belongs to. A question whose faults are of several types is
 * invalid as a whole.
 */

import type { DoorFaultData, FaultCode } from '../contract/problems/fault.js';
import type { ProblemCode } from '../contract/problems/problem-type.js';
import { ERROR_OF } from '../usecases/question-fault.js';

const OF_THE_DOOR: Readonly<Record<keyof DoorFaultData, ProblemCode>> = {
  'repeated-name': 'invalid-request',
  'reserved-name': 'invalid-request',
  'too-deep': 'invalid-request',
  'too-many-values': 'invalid-request',
  'unknown-parameter': 'invalid-request',
  'repeated-parameter': 'invalid-request',
  'too-many-parameters': 'invalid-request',
  'malformed-encoding': 'invalid-request',
  'unknown-field': 'invalid-request',
  missing: 'invalid-request',
  'wrong-type': 'invalid-request',
  'empty-text': 'invalid-request',
  'empty-list': 'invalid-request',
  'too-long': 'invalid-request',
  'too-many-items': 'invalid-request',
  'too-many-places': 'invalid-request',
  'too-small': 'invalid-request',
  'too-large': 'invalid-request',
  'not-one-of': 'invalid-request',
  'unseen-characters': 'invalid-request',
  'not-a-place': 'invalid-request',
  'not-a-language-tag': 'invalid-request',
  'not-a-month': 'invalid-request',
  'not-an-edition': 'invalid-request',
  'not-beside-names': 'invalid-request',
  'not-beside-vehicle': 'invalid-request',
  'not-a-cursor': 'invalid-cursor',
  'cursor-of-another-list': 'invalid-cursor',
  'cursor-of-another-edition': 'invalid-cursor',
  'not-json': 'malformed-json',
  'not-utf-8': 'malformed-json',
  'body-ended-early': 'malformed-request',
  'body-too-large': 'body-too-large',
  'body-not-json-type': 'unsupported-media-type',
  'body-encoded': 'unsupported-media-type',
  'body-type-not-taken': 'unsupported-media-type',
  'coding-not-taken': 'unsupported-media-type',
  'not-gzip': 'malformed-request',
  'expands-too-far': 'body-too-large',
  'line-too-long': 'body-too-large',
  'row-not-utf-8': 'invalid-request',
  'malformed-row': 'invalid-request',
  'repeated-column': 'invalid-request',
  'unknown-column': 'invalid-request',
  'key-not-known': 'unknown-key',
  'no-key': 'key-needed',
  'scope-not-granted': 'not-granted',
  'origin-not-granted': 'not-granted',
  'question-not-in-view': 'not-granted',
  'edition-not-in-view': 'not-granted',
  'list-not-in-view': 'not-granted',
  'wish-not-in-view': 'not-granted',
  'url-too-long': 'url-too-long',
  'nothing-at-path': 'unknown-path',
  'unknown-problem': 'unknown-problem',
  'method-not-taken': 'method-not-allowed',
  'type-not-accepted': 'not-acceptable',
};

export const PROBLEM_OF_FAULT: Readonly<Record<FaultCode, ProblemCode>> = {
  ...ERROR_OF,
  ...OF_THE_DOOR,
};

export const FAULT_CODES = Object.keys(PROBLEM_OF_FAULT) as readonly FaultCode[];
