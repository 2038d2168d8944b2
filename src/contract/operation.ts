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
  /**
   * Where the answer is many lines, NDJSON or CSV, and the question too if it stands in a body:
   * `body` and `answer.schema` are of one line, which the document knows by these names.
   */
  readonly lines?: { readonly question: LineForm | null; readonly answer: LineForm };
  /** The use-case's own errors, as far as this question can meet them. */
  readonly errors: readonly QuestionErrorCode[];
}

export interface LineForm {
  readonly name: string;
  /** What rows of CSV have, in words. */
  readonly columns: string;
}

/** Of every question in a body: OpenAPI 3.1 has no word for the method. */
export const ALSO_QUERY =
  'It changes nothing and may be repeated. The method `QUERY` takes the same body to the same ' +
  'answer and says so: its answer has an `ETag`, may be kept as long as that of GET, and ' +
  '`If-None-Match` is answered with 304.';

/** In the order of the alphabet, as the document lists them. */
export const TAGS = {
  calculate: 'Formulas of the driveline, each with its limits and sources.',
  catalogue: 'What is in the catalogue?',
  driveline: 'How does it drive, and does it hold?',
  editions: 'The numbered, immutable states of the catalogue.',
  fit: 'Does this part fit this vehicle?',
  inspect: 'Is this vehicle right as it stands?',
  kits: 'What does the conversion take?',
  mate: 'Do these two faces meet?',
  service: 'The service itself.',
} as const;

export type Tag = keyof typeof TAGS;
