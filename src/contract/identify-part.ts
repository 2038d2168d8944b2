/**
 * Which part is this piece on the bench: the answer, and the operation.
 */

import type { ExcludedParts, IdentifyPartAnswer } from '../usecases/identify-part.js';
import type { PieceAskView } from '../usecases/piece-views.js';
import { VALUES_HEAD } from './answer-head.js';
import { cautionSchema, outcomeSchema } from './judged.js';
import { listFields } from './list.js';
import { z } from './openapi-zod.js';
import { ALSO_QUERY, type Operation } from './operation.js';
import { NO_PARAMETERS } from './parameters.js';
import { PART_ENTRY } from './parts.js';
import { identifyPartQuestionSchema, pieceOnSchema } from './piece-question.js';
import { orNull, SAID, saidReasonSchema, shownValueSchema } from './reason.js';
import { BY_CODE } from './reason-codes.js';
import type { Wire } from './wire.js';

const TOLD_AT = {
  field: z.string().openapi({
    description: 'What was told: `role`, `hand`, `vehicle`, `numbers` or `measured`. Open.',
  }),
  index: z.int().nullable().openapi({
    description: 'Which of several, counted from 0; null where there is one.',
  }),
};

const findingSchema = z
  .strictObject({
    ...TOLD_AT,
    state: outcomeSchema.openapi({
      description:
        'Closed. `holds`: the record agrees. `open`: it does not say, which leaves no part out. ' +
        '`fails`: it cannot be so.',
    }),
    ...SAID,
  })
  .openapi('PieceFinding', {
    description: "What a part's record says of one thing that was told.",
    ...BY_CODE,
  });

const candidateSchema = z
  .strictObject({
    ...PART_ENTRY,
    agreeing: z.int().min(0).openapi({ description: 'How much of what was told agrees.' }),
    open: z.int().min(0).openapi({ description: 'Of how much nothing certain is recorded.' }),
    failing: z.int().min(0).openapi({
      description: 'How much cannot be so: 0 of a part that the piece can be.',
    }),
    why: z.array(findingSchema).openapi({ description: 'In the order of the question.' }),
  })
  .openapi('PieceCandidate', { description: 'A part, beside what was told of a piece.' });

const excludedPartSchema = z
  .strictObject({ id: z.string(), name: z.string(), ...SAID })
  .openapi('ExcludedPart', { description: 'A part that it cannot be.', ...BY_CODE });

const excludedSchema = z
  .strictObject({
    ...TOLD_AT,
    name: z.string().openapi({ description: 'What was told, for people.' }),
    count: z.int().min(1),
    parts: z.array(excludedPartSchema).openapi({
      description: 'The first fifty of them, where the question says `nameExcluded`.',
    }),
  })
  .openapi('ExcludedParts', {
    description: 'How many parts one thing leaves out; each counts where it is first left out.',
  });

export type ExcludedPartsWire = Wire<ExcludedParts, z.infer<typeof excludedSchema>>;

const outcomeValueSchema = z
  .strictObject({
    value: z.string().nullable().openapi({
      description: 'As the question takes it. Null for what no exact text says: see `range`.',
    }),
    noFace: z.boolean().openapi({
      description:
        'The piece turns out to have no such face: tell `none` of `on` without its parameter.',
    }),
    range: orNull(shownValueSchema).openapi({
      description: 'All values that come out so; null where it is no number.',
    }),
    label: z.string().openapi({ description: 'For people.' }),
    count: z
      .int()
      .min(0)
      .openapi({
        description:
          'How many parts are left then: one of which it is not recorded counts at every ' +
          'outcome, so that these can come to more than there are.',
      }),
    parts: z.array(z.string()).openapi({ description: 'Ids of the first ten of them.' }),
  })
  .openapi('PieceOutcome', { description: 'What can come out, and what it leaves.' });

const askSchema = z
  .strictObject({
    field: z.enum(['role', 'hand', 'number', 'measured']).openapi({
      description: 'What to tell next; `number` goes in `numbers`. Open: fields may be added.',
    }),
    on: orNull(pieceOnSchema.required()).openapi({
      description: 'Where to read it; null where it is nothing that is read on a face or value.',
    }),
    tool: z.string().nullable().openapi({
      description: 'Id of the tool that tells the outcomes apart, where one is known.',
    }),
    toolName: z.string().nullable(),
    needed: orNull(shownValueSchema).openapi({
      description:
        'How finely to measure: a reading that is off by less than `high` tells the outcomes ' +
        'apart. Send it with that tolerance (`577 ±7.5 mm`) unless it is surely finer: a reading ' +
        'without one is as exact as its tool. Null where it is exact or nothing is measured.',
    }),
    values: z.array(outcomeValueSchema).openapi({
      description:
        'The outcomes, fifty at most. Values that the finest tool cannot tell apart are one.',
    }),
    more: z.int().min(0).openapi({ description: 'How many outcomes there are beside those.' }),
    ...SAID,
  })
  .openapi('PieceAsk', {
    description: 'One thing that tells the parts apart, and what each outcome leaves.',
    ...BY_CODE,
  });

export type PieceAskWire = Wire<PieceAskView, z.infer<typeof askSchema>>;

const { units, ...LIST_HEAD } = VALUES_HEAD;

export const identifyPartAnswerSchema = z
  .strictObject({
    ...LIST_HEAD,
    units,
    summary: saidReasonSchema,
    ...listFields(
      candidateSchema,
      'The parts that it can be: those first of which most agrees, then those that no other took ' +
        'the place of, then in the order of their ids.',
    ),
    nearest: z.array(candidateSchema).openapi({
      description: 'Where none is left, the five of which the fewest things cannot be so.',
    }),
    excluded: z.array(excludedSchema).openapi({
      description: 'What leaves parts out, in the order role, hand, vehicle, numbers, measured.',
    }),
    ask: z.array(askSchema).openapi({
      description:
        'What to find out next, the best first: what leaves fewest parts on average, then what ' +
        'takes least to find out. Five at most; where very many are left, first their role. ' +
        'Empty where one part is left, or nothing tells the others apart.',
    }),
    warnings: z.array(saidReasonSchema).openapi({
      description: 'Always that a match proves no identity.',
    }),
    cautions: z.array(cautionSchema),
  })
  .openapi('IdentifyPartAnswer', { description: 'The parts that a piece can be, and why.' });

export type IdentifyPartAnswerWire = Wire<
  Omit<IdentifyPartAnswer, 'next'> & { readonly next: string | null },
  z.infer<typeof identifyPartAnswerSchema>
>;

export const identifyPartOperation: Operation = {
  method: 'post',
  path: '/v1/parts/identify',
  operationId: 'identifyPart',
  tag: 'catalogue',
  summary: 'Which part is this piece on the bench?',
  description:
    'By what was counted, measured and read off it. A part is left out only where its record ' +
    'cannot be so: what nobody recorded leaves none out, and a measured value is an interval. ' +
    'That values agree is no proof that it is the part. No part left, or several, is an answer. ' +
    `${ALSO_QUERY}`,
  segment: null,
  query: NO_PARAMETERS,
  body: identifyPartQuestionSchema,
  answer: { schema: identifyPartAnswerSchema, description: 'A page of the candidates.' },
  errors: [
    'unknown-edition',
    'no-edition',
    'unknown-vehicle',
    'vehicle-replaced',
    'unknown-role',
    'unknown-kind',
    'invalid-question',
  ],
};
