/**
 * What to ask next so that fewer vehicles can be meant, wherever an answer or a problem has it.
 */

import type { AskView } from '../usecases/vehicle-view.js';
import { z } from './openapi-zod.js';
import type { Wire } from './wire.js';

export const ASK_VALUE = {
  value: z.string().openapi({ description: 'As the parameter takes it.', example: '2004' }),
  label: z.string().openapi({ description: 'For people.' }),
  count: z
    .int()
    .min(1)
    .openapi({
      description:
        'How many vehicles are left with this answer. One that does not record a fact or a ' +
        'variant counts at every value of it, so that these can come to more than there are.',
    }),
};

const askValueSchema = z
  .strictObject(ASK_VALUE)
  .openapi('AskValue', { description: 'One answer, and what it leaves.' });

export const ASK = {
  field: z.enum(['make', 'model', 'variant', 'year', 'built', 'fact', 'fitted']).openapi({
    description:
      'The parameter to send the answer in; `fact` goes in `fact.<fact>`, `fitted` in ' +
      '`fitted.<position>`. Open: fields may be added.',
  }),
  fact: z.string().nullable().openapi({
    description: 'Id of the fact that is asked for; null where `field` is not `fact`.',
  }),
  position: z
    .string()
    .nullable()
    .openapi({
      description:
        'Id of the position of which it is asked what is fitted there now, whatever the works ' +
        'fitted: it leaves no vehicle out. Null where `field` is not `fitted`.',
    }),
  name: z.string().openapi({ description: 'What is asked for.', example: 'Year of building' }),
  how: z.string().nullable().openapi({
    description: 'How to find it out; null where there is nothing to say.',
  }),
};

export const askSchema = z
  .strictObject({
    ...ASK,
    values: z.array(askValueSchema).openapi({
      description:
        'Two or more, each of which leaves a vehicle. Who does not know the answer leaves the ' +
        'question out.',
    }),
  })
  .openapi('Ask', { description: 'One question that tells vehicles apart.' });

/** A question of which each answer says what it leads to, by these fields. */
export function settlingAsk<Leads extends z.ZodRawShape>(
  leads: Leads,
  { ask, value }: { readonly ask: string; readonly value: string },
) {
  const valueSchema = z
    .strictObject({ ...ASK_VALUE, ...leads })
    .openapi(value, { description: 'One answer, and what it leads to.' });
  return z
    .strictObject({
      ...ASK,
      values: z.array(valueSchema).openapi({ description: 'Each of them leaves a vehicle.' }),
    })
    .openapi(ask, { description: 'One question, with what each answer leads to.' });
}

/** Whose answer is of several vehicles. */
export const MEANT_COUNTS = z
  .strictObject({ total: z.int().min(1) })
  .openapi('MeantCounts', { description: 'How many vehicles may be meant.' });

export const SETTLING_DESCRIPTION =
  'The fewest questions that settle it, the one that decides most first; what is fitted at a ' +
  'position is asked for where no fact tells it. Empty where it is settled, but for all that ' +
  'come to unknown: then what makes more of it. Where too many vehicles may be meant, what ' +
  'narrows them.';

export type AskWire = Wire<AskView, z.infer<typeof askSchema>>;

export const asksField = z.array(askSchema).openapi({
  description:
    'What to ask next, the best question first: of those that leave fewer vehicles with every ' +
    'answer, else of those that do with some. Among them make, model, year and month, then ' +
    'variant and facts by how few are left on average; the model once the make is known, variant ' +
    'and facts once the model is. Empty where one vehicle is left, or nothing tells the others ' +
    'apart.',
});
