/**
 * What a kit question brings with it: pieces and prices of its own, and lots that may be bought.
 */

import { few, lot, money, part } from './kit-wishes.js';
import { atMost } from './limits.js';
import { z } from './openapi-zod.js';
import { nameOf } from './question.js';

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
