/**
 * What the names of parts in a question led to.
 */

import type { NamedView } from '../usecases/answer.js';
import { z } from './openapi-zod.js';
import { itemProblemSchema } from './problem.js';
import { namesField } from './question.js';
import type { Wire } from './wire.js';

export const namedBySchema = z.enum(['id', 'number', 'sku']).openapi('NamedBy', {
  description: 'Closed. By what it was found: an id, a number, or a code that it is offered under.',
});

export const supersededByField = z.string().nullable().openapi({
  description: 'Id of the part that is recorded to have taken its place.',
});

export const askedField = z.string().openapi({ description: 'The name, as the question has it.' });

/** Parts that are looked up by name; `what` they are instead of. */
export function partNamesField(what: string) {
  return namesField().openapi({
    description:
      `${what}: ids, \`number:\`, \`sku:\` (see \`part\` of a fit question). It may stand there ` +
      'more than once; ids alone may have commas between them. A name that leads to no part is ' +
      'an `error` of its item.',
    example: ['gearbox-6-late'],
  });
}

/** In place of an item, where several names are looked up. */
export const lostNameSchema = z
  .strictObject({ asked: askedField, error: itemProblemSchema })
  .openapi('LostName', { description: 'A name that leads to nothing, or to several.' });

const namedSchema = z
  .strictObject({
    at: z.string().openapi({
      description: 'The field of the question that it stands in, as in a body.',
      example: 'fitted.rear-half-shaft.left',
    }),
    asked: z.string().openapi({ description: 'As the question has it.' }),
    part: z.string().openapi({ description: 'Id of the part.' }),
    name: z.string(),
    resolvedBy: namedBySchema,
    supersededBy: supersededByField,
  })
  .openapi('NamedPart', { description: 'What one name of a part led to.' });

export type NamedWire = Wire<NamedView, z.infer<typeof namedSchema>>;

export const offersField = z
  .int()
  .min(0)
  .nullable()
  .openapi({
    description:
      'Number of the price and stock list, where a `sku:` was looked up in it. It has a counter ' +
      'of its own: such an answer is not pinned by `edition`.',
  });

export const NAMING = {
  offers: offersField,
  named: z.array(namedSchema).openapi({
    description: 'The parts that the question names, beside the one that it is about.',
  }),
};
