/**
 * What fits what, over a whole edition, as lines to keep: all of it, or what is different from
 * another edition.
 */

import { OUTCOMES } from '../domain/check/state.js';
import type {
  FeedLine,
  FitsFeedInput,
  FitsFeedStart,
  FitsPair,
  FitsRange,
} from '../usecases/fits-feed.js';
import { editionField, engineField } from './answer-head.js';
import { builtField } from './built.js';
import { editionQuestionSchema, LATEST } from './editions.js';
import { verdictSchema } from './fit-answer.js';
import { COMMON_FITS } from './fits.js';
import { outcomeSchema } from './judged.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { parameter } from './parameters.js';
import { NOT_BESIDE_VEHICLE } from './problems/rules.js';
import { COMMON_FIELDS, nameOf, namesField, refuseBeside } from './question.js';
import type { Wire } from './wire.js';

const formSchema = z.enum(['pairs', 'ranges']);

/** Of a question that does not say which. */
export const USUAL_FORM = 'pairs';

const FEED_FIELDS = {
  from: editionField.optional().openapi({
    description:
      'Only what is different from this edition: lines that are new or changed, and what is gone.',
    example: 1,
  }),
  role: nameOf()
    .optional()
    .openapi({ description: 'Only parts of this role, by its id.', example: 'gearbox' }),
  alone: COMMON_FITS.alone,
  part: namesField().openapi({
    description: 'Only these parts, by id, with commas between them.',
    example: ['gearbox-6-late'],
  }),
  vehicle: namesField().openapi({
    description: 'Only these vehicles, by id, with commas between them; not for `form=ranges`.',
    example: ['lirren-1', 'lirren-2'],
  }),
  form: formSchema.optional().openapi({
    description:
      '`pairs` (where it is left out): a line for each place of a vehicle that takes a part. ' +
      '`ranges`: one for vehicles of one make, model and variant that were built one after the ' +
      'other and on which the part comes to the same there, with words for people.',
    example: 'pairs',
  }),
  lang: COMMON_FIELDS.lang,
};

export const fitsFeedSchema = z
  .strictObject({ ...FEED_FIELDS, number: editionQuestionSchema.shape.number })
  .superRefine((question, context) => {
    // What others of their name come to, is said of all of them.
    if (question.form === 'ranges' && question.vehicle !== undefined) {
      refuseBeside(['form'], question, context, NOT_BESIDE_VEHICLE);
    }
  });

export type FitsFeedQuestion = z.infer<typeof fitsFeedSchema>;

/** What the use-case takes of the question. */
export function fitsFeedFilters({
  from,
  role,
  alone,
  part,
  vehicle,
  form,
}: Omit<FitsFeedQuestion, 'number' | 'lang'>): Omit<FitsFeedInput, 'edition' | 'lang'> {
  return {
    from: from ?? null,
    role: role ?? null,
    alone: alone === undefined ? null : OUTCOMES.filter((one) => alone.includes(one)),
    parts: part === undefined ? null : [...new Set(part)].sort(),
    vehicles: vehicle === undefined ? null : [...new Set(vehicle)].sort(),
    form: form ?? USUAL_FORM,
  };
}

const ids = z.array(z.string()).nullable();

const startSchema = z
  .strictObject({
    edition: editionField.openapi({ description: 'The edition that the lines are of.' }),
    from: editionField.nullable().openapi({ description: 'The edition that they differ from.' }),
    engine: engineField,
    lang: z.string(),
    form: formSchema,
    role: z.string().nullable(),
    alone: z.array(outcomeSchema).nullable(),
    part: ids,
    vehicle: ids,
  })
  .openapi('FitsFeedStart', { description: 'Of what the lines are; null is not narrowed.' });

export type FitsFeedStartWire = Wire<FitsFeedStart, z.infer<typeof startSchema>>;

const part = z.string().openapi({ description: 'Its id.' });
const position = z.string().openapi({ description: 'Id of the place that takes the part.' });
const verdict = verdictSchema.openapi({
  description: 'Null where only changes could make it fit: they are not looked for.',
});

const PAIR = { part, vehicle: z.string().openapi({ description: 'Its id.' }), position };

const pairSchema = z.strictObject({ ...PAIR, alone: outcomeSchema, verdict });

export type FitsPairWire = Wire<FitsPair, z.infer<typeof pairSchema>>;

const NAMED = { part, make: z.string(), model: z.string(), variant: z.string().nullable() };

const rangeSchema = z.strictObject({
  ...NAMED,
  built: builtField,
  label: z.string().openapi({ description: 'Make, model, variant and months, for people.' }),
  position,
  alone: outcomeSchema,
  verdict,
  vehicles: z.int().min(1).openapi({ description: 'How many vehicles it is of.' }),
  mixed: z.boolean().openapi({
    description:
      'Others of this make, model and variant that were, or may have been, built in these months ' +
      'come to something else, or have no such place: whoever has one must ask which it is.',
  }),
});

export type FitsRangeWire = Wire<FitsRange, z.infer<typeof rangeSchema>>;

const gone = z.literal(true).openapi({
  description: 'The other edition had this line, and this one has not.',
});

const goneSchema = z.union([
  z.strictObject({ ...PAIR, gone }),
  z.strictObject({ ...NAMED, built: builtField, position, alone: outcomeSchema, gone }),
]);

export type FeedLineWire = Wire<
  FeedLine,
  FitsPairWire | FitsRangeWire | z.infer<typeof goneSchema>
>;

const count = z.int().min(0);

const endSchema = z
  .strictObject({
    lines: count.openapi({ description: 'Lines between the first and this one.' }),
    alone: z.strictObject({ holds: count, open: count, fails: count }),
    gone: count,
  })
  .openapi('FitsFeedEnd', { description: 'How many lines there were of what.' });

export type FitsFeedEnd = z.infer<typeof endSchema>;

export const fitsFeedLineSchema = z
  .union([
    z.strictObject({ start: startSchema }),
    pairSchema,
    rangeSchema,
    goneSchema,
    z.strictObject({ end: endSchema }),
  ])
  .openapi('FitsFeedLine', {
    description:
      'The first line is `start`, the last one `end`; between them is one for each pair or range.',
  });

/** The columns of every row, by the form; those that say nothing of a row are empty. */
export const FEED_COLUMNS = {
  pairs: ['kind', 'part', 'vehicle', 'position', 'alone', 'verdict', 'gone', 'json'],
  ranges: [
    'kind',
    'part',
    'make',
    'model',
    'variant',
    'builtFrom',
    'builtUntil',
    'label',
    'position',
    'alone',
    'verdict',
    'vehicles',
    'mixed',
    'gone',
    'json',
  ],
} as const;

const COLUMNS_ANSWERED =
  `Rows by RFC 4180 with the columns ${FEED_COLUMNS.pairs.join(', ')}; of \`form=ranges\` with ` +
  `${FEED_COLUMNS.ranges.join(', ')}. \`kind\` is \`start\`, \`fit\` or \`end\`; \`json\` has ` +
  'what `start` and `end` are as JSON.';

export const exportFitsOperation: Operation = {
  method: 'get',
  path: '/v1/editions/{number}/fits',
  operationId: 'exportFits',
  tag: 'fit',
  summary: 'What fits what, all of it',
  description: [
    'A line for every place of every vehicle that takes a part, with what comes of the part ' +
      'there as the vehicle is: NDJSON or CSV as `Accept` wishes. It is what `GET /v1/fit` says ' +
      'with `changes=no` and that position. `alone` narrows it: most parts fail on most ' +
      'vehicles. With `from` it is what to do to the lines of that edition, asked for with the ' +
      'same filters, to have those of this one: what has no `gone` is put in the place of what ' +
      'has the same part, vehicle and position, or added.',
    'Lines are in the order of part, vehicle and position, by code unit; of `form=ranges` by ' +
      'part, make, model, variant, months, position and outcome, all of which tell a range ' +
      'apart. They come as they are read. The last line is `end`, with the counts: **what was ' +
      'broken off has no `end`**. Gzip is taken: `Accept-Encoding`.',
    'Vehicles that more exact ones took the place of are left out. So are order codes, which ' +
      'change without an edition.',
  ].join('\n\n'),
  segment: {
    name: 'number',
    description: `Number of the edition, or \`${LATEST}\`.`,
    example: '1',
  },
  query: {
    parameters: [
      parameter('from', FEED_FIELDS.from, 'number'),
      parameter('role', FEED_FIELDS.role),
      parameter('alone', FEED_FIELDS.alone, 'list'),
      parameter('part', FEED_FIELDS.part, 'list'),
      parameter('vehicle', FEED_FIELDS.vehicle, 'list'),
      parameter('form', FEED_FIELDS.form),
      parameter('lang', FEED_FIELDS.lang),
    ],
    groups: [],
  },
  body: null,
  answer: { schema: fitsFeedLineSchema, description: 'A line for each pair or range.' },
  lines: { question: null, answer: { name: 'FitsFeedLine', columns: COLUMNS_ANSWERED } },
  errors: [
    'unknown-edition',
    'no-edition',
    'unknown-role',
    'unknown-part',
    'unknown-vehicle',
    'vehicle-replaced',
    'invalid-question',
  ],
};
