/**
 * What a kit question brings with it: pieces and prices of its own, lots that may be bought, and
 * values that were measured.
 */

import { few, lot, money, part, position } from './kit-wishes.js';
import { atMost } from './limits.js';
import { z } from './openapi-zod.js';
import { nameOf } from './question.js';
import { handSchema } from './reason.js';

const quantity = z
  .int()
  .min(1)
  .max(...atMost('ownedPieces'));

export const ownedSchema = z
  .strictObject({
    part,
    quantity: quantity.optional().openapi({
      description: 'Pieces; as many as one place of it takes where this is left out.',
      example: 1,
    }),
  })
  .openapi('Owned', { description: 'Pieces that are at hand and cost nothing.' });

export const lotsSchema = z.union([z.enum(['all', 'none']), few(lot)]);

const PRICED = {
  price: money('Of one pack.', '120.00'),
  stock: z
    .int()
    .min(0)
    .max(...atMost('stockPieces'))
    .optional()
    .openapi({
      description: 'Pieces at hand.',
      example: 2,
    }),
  leadDays: z
    .int()
    .min(0)
    .max(...atMost('leadDays'))
    .optional()
    .openapi({ description: 'Days until it is there.', example: 3 }),
  pack: nameOf('valueCharacters').optional().openapi({
    description: 'What one price buys, such as `2` or `1 l`; one piece where it is left out.',
    example: '1 l',
  }),
};

export const ownOfferSchema = z
  .union([
    z.strictObject({ part, ...PRICED }).openapi('OwnOfferOfPart'),
    z.strictObject({ lot, ...PRICED }).openapi('OwnOfferOfLot'),
    z.strictObject({ work: nameOf(), ...PRICED }).openapi('OwnOfferOfWork'),
    z.strictObject({ sku: nameOf(), ...PRICED }).openapi('OwnOfferUnderSku', {
      description:
        'An order code of the price and stock list, without `sku:` before it. What is left out ' +
        'here is as it stands there.',
    }),
  ])
  .openapi('OwnOffer', { description: 'A price of the asker, used once and never stored.' });

const MEASURED_ON = {
  part: part.nullable().optional().openapi({ description: 'The part that was measured.' }),
  position: position.nullable().optional().openapi({
    description: 'Where it stands, if the part is not named: whatever is there now.',
  }),
  hand: handSchema.nullable().optional(),
  interface: nameOf().nullable().optional().openapi({
    description: 'The face; null for a value of the part itself.',
    example: 'wheel',
  }),
  parameter: nameOf().nullable().optional().openapi({ example: 'spigot' }),
  fact: nameOf().nullable().optional().openapi({
    description: 'A fact of the vehicle, in place of a part; the value is one of its values.',
  }),
  mating: nameOf().nullable().optional().openapi({ description: 'Is not looked at.' }),
  name: nameOf('wishCharacters').nullable().optional().openapi({
    description: 'Is not looked at.',
  }),
};

const measuredValue = nameOf('valueCharacters').openapi({
  description: 'As the catalogue document writes it, with its unit and tolerance.',
  example: '56.10 ±0.05 mm',
});

export const measuredSchema = z
  .strictObject({
    on: z.strictObject(MEASURED_ON).openapi('MeasuredOn', {
      description: 'The `on` of what an answer asks to have measured, as it is.',
    }),
    value: z.union([measuredValue, few(measuredValue).min(1)]),
    tool: nameOf().nullable().optional().openapi({
      description: 'The tool that it was read with, by its id; it may widen the value.',
      example: 'caliper',
    }),
  })
  .openapi('Measured', { description: 'A value in place of the recorded one, for this question.' });
