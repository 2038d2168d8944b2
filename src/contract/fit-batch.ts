/**
 * Does this part fit this vehicle, asked any number of times in one go: a question a line, and an
 * answer a line, in their order.
 */

import type { FitBatchStart, ShortFit } from '../usecases/fit-batch.js';
import { editionField, engineField } from './answer-head.js';
import { fitAnswerSchema, verdictSchema } from './fit-answer.js';
import { outcomeSchema } from './judged.js';
import { atMost, LIMITS } from './limits.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import {
  ADAPTER_GROUP,
  FACT_GROUP,
  FITTED_GROUP,
  parameter,
  type QueryGrammar,
  WITH_GROUP,
} from './parameters.js';
import { itemProblemSchema } from './problem.js';
import { partField, positionField, VALUES_FIELDS, withField } from './question.js';
import { unitsSchema } from './units.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';
import type { Wire } from './wire.js';

export const NDJSON_TYPE = 'application/x-ndjson';
export const CSV_TYPE = 'text/csv';

/** The forms of lines, of a question and of an answer. */
export const LINE_TYPES = [NDJSON_TYPE, CSV_TYPE] as const;
export type LineType = (typeof LINE_TYPES)[number];

const { edition: _edition, lang: _lang, units: _units, ...OF_ONE_VEHICLE } = VEHICLE_FIELDS;

const LINE_FIELDS = {
  ref: z
    .string()
    .max(...atMost('refCharacters'))
    .optional()
    .openapi({
      description: 'Any text; it comes back with the answer.',
      example: 'GB-60417',
    }),
  ...OF_ONE_VEHICLE,
  part: partField,
  position: positionField,
  with: withField,
};

export const fitLineSchema = z.strictObject(LINE_FIELDS).openapi('FitLine', {
  description: 'One line of a batch: a fit question, without what holds for all lines.',
});

export type FitLine = z.infer<typeof fitLineSchema>;

/** The columns of a row: as a URL has the same fields. What was measured has none. */
export const FIT_COLUMNS: QueryGrammar = {
  parameters: [
    parameter('ref', LINE_FIELDS.ref),
    parameter('vehicle', LINE_FIELDS.vehicle),
    parameter('part', LINE_FIELDS.part),
    parameter('position', LINE_FIELDS.position),
    parameter('torque', LINE_FIELDS.torque),
    parameter('use', LINE_FIELDS.use),
    parameter('ignorePresent', LINE_FIELDS.ignorePresent, 'boolean'),
  ],
  groups: [WITH_GROUP, FACT_GROUP, FITTED_GROUP, ADAPTER_GROUP],
};

const changesSchema = z.enum(['no', 'yes']);
const formSchema = z.enum(['short', 'full']);

const BATCH_FIELDS = {
  ...VALUES_FIELDS,
  changes: changesSchema.optional().openapi({
    description:
      'Whether to look for changes around each part that would make it fit. Left out, it is ' +
      '`no`, which is quicker by far and leaves the verdict open where the part alone fails.',
    example: 'no',
  }),
  form: formSchema.optional().openapi({
    description:
      '`short` (where it is left out): what a program goes by, and no sentence. `full`: the ' +
      'whole answer of `GET /v1/fit`.',
    example: 'short',
  }),
};

export const fitBatchSchema = z.strictObject(BATCH_FIELDS);
export type FitBatchQuestion = z.infer<typeof fitBatchSchema>;

const startSchema = z
  .strictObject({
    edition: editionField.openapi({ description: 'The edition that answers every line.' }),
    offers: z.int().min(0).openapi({
      description: 'Of the price and stock list that order codes are looked up in.',
    }),
    engine: engineField,
    lang: z.string(),
    units: unitsSchema,
    changes: changesSchema,
    form: formSchema,
  })
  .openapi('FitBatchStart', { description: 'What is settled for all lines.' });

export type FitBatchStartWire = Wire<FitBatchStart, z.infer<typeof startSchema>>;

const shortFields = {
  vehicle: z.string(),
  part: z.string().openapi({ description: 'Its id, whatever it was called.' }),
  alone: outcomeSchema,
  verdict: verdictSchema,
  codes: z.array(z.string()).openapi({
    description:
      'Of what fails or is open at the best places, each once, in the order of the alphabet; or ' +
      'why there is no place for the part. Cautions are among them, and leave `alone` as it is. ' +
      'Open; `GET /v1/codes` says what each means.',
  }),
};

const shortSchema = z.strictObject(shortFields);

export type ShortFitWire = Wire<ShortFit, z.infer<typeof shortSchema>>;

const count = z.int().min(0);

const endSchema = z
  .strictObject({
    lines: count.openapi({ description: 'Lines that were read, blank ones among them.' }),
    answers: count,
    errors: count,
    alone: z.strictObject({ holds: count, open: count, fails: count }),
    verdict: z.strictObject({
      fits: count,
      'fits-with-changes': count,
      'does-not-fit': count,
      unknown: count,
      none: count.openapi({ description: 'Those with a verdict of null.' }),
    }),
    problems: z.record(z.string(), count).openapi({ description: 'Errors by code. Open.' }),
  })
  .openapi('FitBatchEnd', { description: 'How many there were of what.' });

export type FitBatchEnd = z.infer<typeof endSchema>;

const PLACE = {
  ref: z.string().optional().openapi({ description: 'As the line had it, if it had one.' }),
  line: z.int().min(1).openapi({
    description: 'The line of the question, counted from 1; of a row, its first one.',
  }),
};

export const fitBatchLineSchema = z
  .union([
    z.strictObject({ start: startSchema }),
    z.strictObject({ ...PLACE, ...shortFields }),
    z.strictObject({ ...PLACE, answer: fitAnswerSchema }),
    z.strictObject({ ...PLACE, error: itemProblemSchema }),
    z.strictObject({ end: endSchema }),
  ])
  .openapi('FitBatchLine', {
    description:
      'The first line is `start`, the last one `end`; between them is one for each question, in ' +
      'order: an answer in the short or the full form, or an error.',
  });

/** The columns of every row that comes back; those that say nothing of a row are empty. */
export const ANSWER_COLUMNS = [
  'kind',
  'line',
  'ref',
  'vehicle',
  'part',
  'alone',
  'verdict',
  'codes',
  'code',
  'text',
  'json',
] as const;

const COLUMNS_ASKED =
  'Rows by RFC 4180, the first one with the names of the columns: `vehicle` and `part`, and of ' +
  'the others those that are wanted, in any order: `ref`, `position`, `torque`, `use`, ' +
  '`ignorePresent`, `with.<position>`, `fitted.<position>`, `fact.<fact>`, `adapter.<mating>`, ' +
  'as `GET /v1/fit` has them. A field that is empty counts as left out.';

const COLUMNS_ANSWERED =
  `Rows by RFC 4180 with the columns ${ANSWER_COLUMNS.join(', ')}. \`kind\` is \`start\`, ` +
  '`answer`, `error` or `end`. `codes` has spaces between; `code` and `text` say of an error its ' +
  'problem, of a full answer its summary. `json` has what `start`, `end`, `error` and a full ' +
  '`answer` are as JSON.';

export const fitBatchOperation: Operation = {
  method: 'post',
  path: '/v1/fit/batch',
  operationId: 'askFitBatch',
  tag: 'fit',
  summary: 'The same question, a million times',
  description: [
    'A question a line, and an answer a line, in order: NDJSON or CSV as `Content-Type` says, ' +
      'NDJSON or CSV as `Accept` wishes (else as the questions came). There may be any number of ' +
      `lines, each of ${LIMITS.batchLineBytes.value} bytes at most. What is wrong with a line is ` +
      'an error on that line, and the others have their answers.',
    'Answers come while questions are still being sent: whoever sends without reading is not ' +
      'read from any more, and cut off in the end. The edition is settled at the start, so that ' +
      'all answers are of one, whatever is published meanwhile. The last line is `end`, with the ' +
      'counts. **A stream that was broken off has no `end`**: then what is missing has not been ' +
      'asked, and the lines behind the last answer can be sent again. If that is the fault of ' +
      'the body, such as a gzip that is none, its last line is an error.',
    'Both ways gzip is taken: `Content-Encoding` and `Accept-Encoding`.',
    'It changes nothing and may be repeated. The method `QUERY` takes the same body to the same ' +
      'answer: it tells whoever stands between that it may be sent again after a failure, which ' +
      'nobody may do with a POST unasked. Neither has an `ETag` or is kept by caches: the answer ' +
      'begins before the question has ended.',
  ].join('\n\n'),
  segment: null,
  query: {
    parameters: [
      parameter('edition', BATCH_FIELDS.edition, 'number'),
      parameter('lang', BATCH_FIELDS.lang),
      parameter('view', BATCH_FIELDS.view),
      parameter('units', BATCH_FIELDS.units),
      parameter('changes', BATCH_FIELDS.changes),
      parameter('form', BATCH_FIELDS.form),
    ],
    groups: [],
  },
  body: fitLineSchema,
  answer: { schema: fitBatchLineSchema, description: 'A line for each question.' },
  lines: {
    question: { name: 'FitLine', columns: COLUMNS_ASKED },
    answer: { name: 'FitBatchLine', columns: COLUMNS_ANSWERED },
  },
  errors: ['unknown-edition', 'no-edition'],
};
