/**
 * What was measured, read off or found out since, in the shape in which an answer asks for it.
 */

import type { MeasuredInput } from '../usecases/question.js';
import { few, part, position } from './kit-wishes.js';
import { z } from './openapi-zod.js';
import { nameOf } from './question.js';
import { handSchema } from './reason.js';

const MEASURED_ON = {
  part: part.nullable().optional().openapi({ description: 'The part that was measured.' }),
  position: position
    .nullable()
    .optional()
    .openapi({
      description:
        'Where it stands, if the part is not named: whatever is there now. With nothing else ' +
        'beside it but a hand, it was found out what stands there: the value is the name of a ' +
        'part, or `none`; it wins over `fitted`.',
    }),
  hand: handSchema.nullable().optional(),
  interface: nameOf().nullable().optional().openapi({
    description: 'The face; null for a value of the part itself.',
    example: 'wheel',
  }),
  parameter: nameOf().nullable().optional().openapi({ example: 'spigot' }),
  fact: nameOf().nullable().optional().openapi({
    description: 'A fact of the vehicle, in place of a part; the value is one of its values.',
    example: 'axle-tag',
  }),
  mating: nameOf().nullable().optional().openapi({ description: 'Is not looked at.' }),
  name: nameOf('wishCharacters').nullable().optional().openapi({
    description: 'Is not looked at.',
  }),
};

export const measuredValue = nameOf('valueCharacters').openapi({
  description: 'As the catalogue document writes it, with its unit and tolerance.',
  example: '56.10 ±0.05 mm',
});

export const toolField = nameOf().nullable().optional().openapi({
  description: 'The tool that it was read with, by its id; it may widen the value.',
  example: 'caliper',
});

const measuredSchema = z
  .strictObject({
    on: z.strictObject(MEASURED_ON).openapi('MeasuredOn', {
      description: 'The `on` of what an answer asks to have measured, as it is.',
    }),
    value: z.union([measuredValue, few(measuredValue).min(1)]),
    tool: toolField,
  })
  .openapi('Measured', { description: 'A value in place of the recorded one, for this question.' });

export const measuredField = few(measuredSchema).optional().openapi({
  description: 'What was measured or found out since; it counts as first-hand.',
});

type Measured = z.infer<typeof measuredSchema>;

/** As the use-cases take it: what is left out, filled in. */
export function measuredInput(measured: readonly Measured[] = []): MeasuredInput[] {
  return measured.map(({ on, value, tool = null }) => {
    const { part = null, position = null, hand = null, parameter = null, fact = null } = on;
    const { interface: face = null } = on;
    return { on: { part, position, hand, interface: face, parameter, fact }, value, tool };
  });
}
