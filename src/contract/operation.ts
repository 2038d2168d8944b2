/**
 * What an operation of the service is, for the document and for whoever mounts it.
 */

import type { QuestionErrorCode } from '../usecases/errors.js';
import type { z } from './openapi-zod.js';
import type { QueryGrammar } from './parameters.js';

export interface Operation {
  readonly method: 'get' | 'post';
  readonly path: string;
  readonly operationId: string;
  readonly tag: Tag;
  readonly summary: string;
  readonly description: string;
  /** The one name in the path that the client fills in, such as `{id}`; null where none is. */
  readonly segment: {
    readonly name: string;
    readonly description: string;
    readonly example: string;
  } | null;
  /** What may stand in the URL behind the question mark. */
  readonly query: QueryGrammar;
  /** What stands in the body; null where there is none. */
  readonly body: z.ZodType | null;
  readonly answer: { readonly schema: z.ZodType; readonly description: string };
  /** The use-case's own errors, as far as this question can meet them. */
  readonly errors: readonly QuestionErrorCode[];
}

export const TAGS = {
  fit: 'Does this part fit this vehicle?',
  inspect: 'Is this vehicle right as it stands?',
  mate: 'Do these two faces meet?',
  catalogue: 'What is in the catalogue?',
  editions: 'The numbered, immutable states of the catalogue.',
  service: 'The service itself.',
} as const;

export type Tag = keyof typeof TAGS;
