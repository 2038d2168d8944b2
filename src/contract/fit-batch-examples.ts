/**
 * Example requests of a batch to the demo catalogue, answered and refused.
 */

import type { ExampleRequest } from './examples.js';
import { CSV_TYPE, NDJSON_TYPE } from './fit-batch.js';
import { LIMITS } from './limits.js';
import type { RefusedQuestion } from './refused-questions.js';

function linesOf(...lines: readonly string[]): string {
  return lines.map((line) => `${line}\n`).join('');
}

export const FIT_BATCH_EXAMPLES: readonly ExampleRequest[] = [
  {
    operationId: 'askFitBatch',
    name: 'lines',
    summary: 'Three questions, one of them of a vehicle that nobody knows',
    lines: {
      type: NDJSON_TYPE,
      accept: NDJSON_TYPE,
      text: linesOf(
        '{"ref":"GB-60417","vehicle":"lirren-1","part":"linkage-cables"}',
        '{"ref":"GB-60418","vehicle":"lirren-1","part":"bracket-20"}',
        '{"ref":"GB-60419","vehicle":"liren-1","part":"bracket-20"}',
      ),
    },
  },
  {
    operationId: 'askFitBatch',
    name: 'rows',
    summary: 'The same part on a vehicle as it was built, and where the gearbox is not known',
    lines: {
      type: CSV_TYPE,
      accept: CSV_TYPE,
      text: linesOf(
        'ref,vehicle,part,fitted.gearbox',
        '1,lirren-1,linkage-cables,',
        '2,lirren-1,linkage-cables,unknown',
      ),
    },
  },
];

export const FIT_BATCH_REFUSED = {
  'malformed-request': {
    summary: 'Lines that are said to be packed, and are not',
    lines: {
      type: NDJSON_TYPE,
      accept: NDJSON_TYPE,
      text: linesOf('{"vehicle":"lirren-1","part":"linkage-cables"}'),
    },
    headers: { 'content-encoding': 'gzip' },
  },
  'body-too-large': {
    summary: 'Names of columns without end',
    lines: {
      type: CSV_TYPE,
      accept: CSV_TYPE,
      text: 'vehicle,part'.padEnd(LIMITS.batchLineBytes.value + 1, ','),
    },
  },
} as const satisfies Readonly<Record<string, RefusedQuestion>>;
