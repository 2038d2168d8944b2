/**
 * Whether the service lives, and whether it can answer.
 */

import { editionField } from './answer-head.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { NO_PARAMETERS } from './parameters.js';

export const liveAnswerSchema = z
  .strictObject({ status: z.literal('live') })
  .openapi('Live', { description: 'The event loop turns.' });

export const readyAnswerSchema = z
  .strictObject({ status: z.literal('ready'), edition: editionField })
  .openapi('Ready', { description: 'An edition is loaded.' });

export type LiveAnswer = z.infer<typeof liveAnswerSchema>;
export type ReadyAnswer = z.infer<typeof readyAnswerSchema>;

const SERVICE = {
  method: 'get',
  tag: 'service',
  segment: null,
  query: NO_PARAMETERS,
  body: null,
} as const satisfies Partial<Operation>;

export const liveOperation: Operation = {
  ...SERVICE,
  path: '/livez',
  operationId: 'isLive',
  summary: 'Does the service live?',
  description: 'Touches nothing but the event loop. Where it does not answer, restart.',
  answer: { schema: liveAnswerSchema, description: 'It does.' },
  errors: [],
};

export const readyOperation: Operation = {
  ...SERVICE,
  path: '/readyz',
  operationId: 'isReady',
  summary: 'Can the service answer?',
  description: 'An edition is loaded and the service is not being stopped.',
  answer: { schema: readyAnswerSchema, description: 'It can.' },
  errors: ['no-edition'],
};
