/**
 * What was judged, constraint by constraint, with what stands beside it: what to measure, what to
 * order, which cautions. Shared by all answers.
 */

import { OUTCOMES } from '../domain/check/state.js';
import type {
  CautionView,
  JudgedView,
  MatingView,
  MeasureView,
  OrderView,
} from '../usecases/answer.js';
import { z } from './openapi-zod.js';
import { handSchema, orNull, SAID, shownValueSchema } from './reason.js';
import { BY_CODE } from './reason-codes.js';
import type { Wire } from './wire.js';

export const outcomeSchema = z
  .enum(OUTCOMES)
  .openapi('Outcome', { description: 'Closed. `open`: the records leave both possible.' });

const stateSchema = z.enum([...OUTCOMES, 'given']).openapi('State', {
  description: 'Closed. `given`: as the works built it, and untouched by the change.',
});

export const severitySchema = z.enum(['must', 'caution']);

export const basisSchema = z
  .enum(['built', 'measured', 'drawing', 'maker', 'inferred', 'reported'])
  .openapi('Basis', { description: 'Closed. The weakest evidence among what decided.' });

const sideSchema = z
  .strictObject({
    position: z.string().nullable(),
    hand: handSchema.nullable(),
    part: z.string().nullable(),
    name: z.string().nullable(),
    interface: z.string().nullable(),
    parameter: z.string().nullable(),
    parameterName: z.string().nullable().openapi({
      description: 'What the parameter, the fact or the term is called.',
    }),
    term: z.string().nullable().openapi({ description: "The layout's term, where it is one." }),
    value: shownValueSchema,
    said: z.string().nullable().openapi({
      description:
        'The value for people, in no more digits than are known; null where nobody recorded it.',
    }),
  })
  .openapi('Side', { description: 'One side of a check: whose value it is, and which.' });

const cautionReasonSchema = z
  .strictObject(SAID)
  .openapi('CautionReason', { description: 'What a check warns of.', ...BY_CODE });

const checkSchema = z
  .strictObject({
    check: z.string(),
    primitive: z.string(),
    severity: severitySchema,
    state: outcomeSchema,
    left: sideSchema,
    right: orNull(sideSchema),
    margin: orNull(shownValueSchema).openapi({
      description: 'How much to spare; null where the check has no measure.',
    }),
    basis: orNull(basisSchema),
    ...SAID,
    caution: orNull(cautionReasonSchema),
  })
  .openapi('Check', { description: 'One comparison with both its values.', ...BY_CODE });

export const occupantSchema = z.enum(['part', 'empty', 'as-found']).openapi({
  description: '`as-found`: something may be there, nobody recorded what.',
});

export const adapterSchema = z
  .strictObject({ part: z.string(), name: z.string() })
  .openapi('AdapterInMating');

const endSchema = z
  .strictObject({
    position: z.string().nullable(),
    positionName: z.string().nullable(),
    part: z.string().nullable(),
    name: z.string().nullable(),
    interface: z.string(),
    occupant: occupantSchema,
  })
  .openapi('End', { description: 'One end of a mating.' });

export const matingSchema = z
  .strictObject({
    mating: z.string(),
    hand: handSchema.nullable(),
    state: stateSchema,
    computed: outcomeSchema.openapi({ description: 'What the records alone come to.' }),
    ends: z.array(endSchema),
    other: orNull(endSchema).openapi({
      description: 'The end across from the part that was asked about.',
    }),
    adapters: z.array(adapterSchema),
    basis: orNull(basisSchema),
    builtOn: z.array(z.string()).openapi({
      description: 'Vehicles whose works fitted the two together.',
    }),
    statement: z.string().nullable(),
    ...SAID,
    checks: z.array(checkSchema),
  })
  .openapi('Mating', { description: 'Two faces that meet, or that should.', ...BY_CODE });

const constraintSchema = z
  .strictObject({
    id: z.string(),
    form: z.enum(['check', 'choice', 'rule', 'place', 'face', 'statement']),
    hand: handSchema.nullable(),
    positions: z.array(z.string()),
    severity: severitySchema,
    state: stateSchema,
    computed: outcomeSchema,
    basis: orNull(basisSchema),
    statement: z.string().nullable(),
    ...SAID,
    checks: z.array(checkSchema),
  })
  .openapi('Constraint', { description: 'What else must be so on this vehicle.', ...BY_CODE });

export const JUDGED = {
  matings: z.array(matingSchema),
  checks: z.array(constraintSchema),
  choices: z.array(constraintSchema),
  rules: z.array(constraintSchema),
  places: z.array(constraintSchema),
  statements: z.array(constraintSchema),
};

export const judgedSchema = z.strictObject(JUDGED).openapi('Judged', {
  description: 'Constraints by form. What does not apply is not listed.',
});

const factSchema = z
  .strictObject({
    position: z.string().nullable(),
    hand: handSchema.nullable(),
    part: z.string().nullable(),
    name: z.string().nullable(),
    interface: z.string().nullable(),
    parameter: z.string().nullable(),
    fact: z.string().nullable(),
    mating: z.string().nullable(),
  })
  .openapi('FactPlace', { description: 'Where a value stands, for whoever measures it.' });

export const orderSchema = z
  .strictObject({
    on: factSchema,
    value: orNull(shownValueSchema).openapi({
      description: 'What to order; null where something must be measured first.',
    }),
    ...SAID,
  })
  .openapi('Order', { description: 'What is made or set to suit.', ...BY_CODE });

export const measureSchema = z
  .strictObject({
    id: z.string(),
    on: factSchema,
    now: orNull(shownValueSchema).openapi({ description: 'What is recorded now.' }),
    needed: orNull(shownValueSchema).openapi({
      description:
        'How finely to measure: a reading may be off by as much as `high`, to either side. Null ' +
        'where no tolerance is certain to decide.',
      example: { text: '±0.05 mm', low: '-0.05', high: '0.05', unit: 'mm' },
    }),
    tool: z.string().nullable(),
    purpose: z.string().openapi({
      description: '`to-decide`, `to-order` or `to-confirm`. Open: purposes may be added.',
      example: 'to-decide',
    }),
    settles: z.array(z.string()).openapi({
      description: 'Constraints that this fact alone settles.',
    }),
    helps: z.array(z.string()).openapi({ description: 'Constraints that it helps to settle.' }),
    ...SAID,
  })
  .openapi('Measure', { description: 'A fact that is missing, or too coarse.', ...BY_CODE });

export const cautionSchema = z
  .strictObject({
    code: z.string(),
    group: z.string().openapi({ description: 'Open: groups may be added.' }),
    show: z.enum(['always', 'trade']).openapi({
      description: '`trade`: for whoever does the work. `always`: for whoever buys, too.',
    }),
    text: z.string(),
  })
  .openapi('Caution', { description: 'Show those marked `always` wherever the answer is shown.' });

export type MatingWire = Wire<MatingView, z.infer<typeof matingSchema>>;
export type JudgedWire = Wire<JudgedView, z.infer<typeof judgedSchema>>;
export type OrderWire = Wire<OrderView, z.infer<typeof orderSchema>>;
export type MeasureWire = Wire<MeasureView, z.infer<typeof measureSchema>>;
export type CautionWire = Wire<CautionView, z.infer<typeof cautionSchema>>;
