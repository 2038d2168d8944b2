/**
 * What the OpenAPI document says of a body: its media types, each with its schema and examples.
 *
 * Of many lines OpenAPI 3.1 knows only that they are a text. What one line is stands beside it, as
 * the schema of its content.
 */

import { CSV_TYPE, NDJSON_TYPE } from '../contract/fit-batch.js';
import { z } from '../contract/openapi-zod.js';
import type { Operation } from '../contract/operation.js';
import { refTo } from './openapi-examples.js';

const JSON_TYPE = 'application/json';

/** The examples of a media type; of the only one, where no type is named. */
type ExamplesOf = (type?: string) => object;

export function contentOf(
  { body, answer, lines }: Operation,
  of: 'question' | 'answer',
  examplesOf: ExamplesOf,
): Readonly<Record<string, { readonly schema: z.ZodType | LinesSchema }>> {
  if (lines === undefined) {
    const schema = of === 'question' ? (body ?? z.never()) : answer.schema;
    return { [JSON_TYPE]: { schema, ...examplesOf() } };
  }
  const form = lines[of];
  if (form === null) return {};
  const { name, columns } = form;
  const objects: LinesSchema = {
    type: 'string',
    description: 'One object a line; the schema is that of a line.',
    contentMediaType: NDJSON_TYPE,
    contentSchema: refTo('schemas', name),
  };
  const rows: LinesSchema = {
    type: 'string',
    description: columns,
    contentMediaType: CSV_TYPE,
  };
  return {
    [NDJSON_TYPE]: { schema: objects, ...examplesOf(NDJSON_TYPE) },
    [CSV_TYPE]: { schema: rows, ...examplesOf(CSV_TYPE) },
  };
}

interface LinesSchema {
  readonly type: 'string';
  readonly description: string;
  readonly contentMediaType: string;
  readonly contentSchema?: object;
}
