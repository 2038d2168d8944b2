/**
 * What a route takes, line by line, and what that comes to.
 */

import type { KitLineView, KitTotalsView, QuantityView } from '../usecases/kit-answer.js';
import { z } from './openapi-zod.js';
import { handSchema, orNull, SAID } from './reason.js';
import { BY_CODE } from './reason-codes.js';
import type { Wire } from './wire.js';

/** A decimal with at least two places. */
export const moneyField = z.string().openapi({ example: '1850.00' });

const moneyOrNull = z.string().nullable();

export const quantitySchema = z
  .strictObject({
    value: z.string().nullable().openapi({
      description:
        'A decimal, or a fraction where no decimal says it in full; null where nobody knows it.',
      example: '3.5',
    }),
    unit: z.string().openapi({
      description: '`piece`, `l`, `kg` or `mm`. Open: units may be added.',
      example: 'l',
    }),
  })
  .openapi('Quantity', { description: 'So much of something.' });

const offerSchema = z
  .strictObject({
    id: z.string().openapi({
      description: "Id of the offer; in brackets where it is the question's own.",
    }),
    sku: z.string().nullable(),
    pack: quantitySchema.openapi({ description: 'What one price buys.' }),
    packs: z.int().nullable().openapi({
      description: 'How many are bought; null where nobody knows how much it takes.',
    }),
    over: orNull(quantitySchema).openapi({
      description: 'What of the packs has no use here; null where nothing is left.',
    }),
    supplier: z.string().nullable(),
    condition: z.string().nullable(),
    stock: z.int().nullable(),
    leadDays: z.int().nullable(),
  })
  .openapi('LineOffer', { description: 'What the goods of a line are bought by.' });

const whySchema = z
  .strictObject({
    after: z.string().nullable().openapi({
      description: 'Key of the line that made it necessary; null where the wish itself did.',
    }),
    constraint: z.string().nullable().openapi({
      description: 'The mating, the check or the rule that would not hold without it.',
    }),
    ...SAID,
  })
  .openapi('Why', { description: 'Why a line is there.', ...BY_CODE });

const otherPartSchema = z
  .strictObject({
    part: z.string(),
    name: z.string(),
    priceDifference: z.string().nullable().openapi({
      description:
        'Dearer by so much; below zero where it is cheaper, null where a price is not known.',
      example: '-120.00',
    }),
    openPoints: z.int(),
    ...SAID,
  })
  .openapi('OtherPart', {
    description: 'Another part that would do, all else as it is.',
    ...BY_CODE,
  });

const substituteSchema = z
  .strictObject({ part: z.string(), name: z.string(), ...SAID })
  .openapi('Substitute', { description: 'A part alike in everything that counts.', ...BY_CODE });

const leftOverSchema = z
  .strictObject({ part: z.string(), name: z.string(), quantity: quantitySchema })
  .openapi('LeftOver', { description: 'What of a lot has no use here. It is not credited.' });

const signOffField = z.string().nullable().openapi({
  description: 'Who must sign for it: `workshop` or `engineer`; null where nobody need.',
});

export const kitLineSchema = z
  .strictObject({
    key: z.string().openapi({
      description: 'The same for the same thing done, in every route, edition and language.',
      example: 'add:gearbox:gearbox-6-late',
    }),
    action: z.string().openapi({
      description:
        '`add`, `adapter`, `lot`, `work`, `extra`, `remove`, or `open`, which is only to get at ' +
        'something. Open: actions may be added.',
      example: 'add',
    }),
    position: z.string().nullable(),
    positionName: z.string().nullable(),
    mating: z.string().nullable(),
    hand: handSchema.nullable(),
    part: z
      .string()
      .nullable()
      .openapi({
        description:
          'Null for a lot, and for what is only opened. `donor:` with a lot and a position is ' +
          'what nobody recorded of a vehicle that is taken apart: it is in that lot alone.',
      }),
    lot: z.string().nullable(),
    work: z.string().nullable(),
    name: z.string(),
    maker: z.string().nullable(),
    skus: z.array(z.string()),
    numbers: z.array(z.string()),
    quantity: quantitySchema,
    unitPrice: moneyOrNull.openapi({ description: 'Of one pack.' }),
    price: moneyOrNull.openapi({
      description: 'Null where it is not known, and never 0 for that.',
    }),
    offer: orNull(offerSchema),
    source: z.string().nullable().openapi({
      description:
        '`offer`, `owned`, `lot`, `present`, `unpriced`; null for lines of no goods. Open.',
    }),
    fromLot: z.string().nullable().openapi({ description: 'The lot that its goods come out of.' }),
    labourHours: z.string().nullable().openapi({
      description: 'A decimal; null where nobody recorded it.',
    }),
    labour: moneyOrNull.openapi({ description: 'Null without a rate, or without hours.' }),
    why: z.array(whySchema),
    substitutes: z.array(substituteSchema).openapi({
      description: 'Parts that are alike in everything, the cheapest first.',
    }),
    alternatives: z.array(otherPartSchema),
    leftOver: z.array(leftOverSchema),
    signOff: signOffField,
    reversible: z.boolean(),
  })
  .openapi('KitLine', { description: 'One thing to buy, to do or to take out.' });

export const kitTotalsSchema = z
  .strictObject({
    parts: moneyField.openapi({ description: 'All that is bought, as far as prices are known.' }),
    works: moneyField,
    labourHours: z.string(),
    labour: moneyOrNull.openapi({ description: 'Null without a rate.' }),
    cost: moneyField.openapi({ description: 'Parts, works and labour.' }),
    unpriced: z.array(z.string()).openapi({
      description: 'Keys of the lines whose price is not known: the sums are without them.',
    }),
    untimed: z.array(z.string()).openapi({
      description: 'Keys of the lines whose labour nobody recorded.',
    }),
    changedPositions: z.int(),
    leadDays: z.int().nullable().openapi({
      description: 'Until all is there; null where it is not known of something.',
    }),
    unknownLimits: z.array(z.string()).openapi({
      description:
        'Limits of which nobody can tell whether they are kept: `cost`, `labourHours`, `leadDays`.',
    }),
    signOff: signOffField,
    reversible: z.boolean().openapi({
      description: 'Everything can be made again what it was.',
    }),
  })
  .openapi('KitTotals', { description: 'The sums of the lines.' });

export type QuantityWire = Wire<QuantityView, z.infer<typeof quantitySchema>>;
export type KitLineWire = Wire<KitLineView, z.infer<typeof kitLineSchema>>;
export type KitTotalsWire = Wire<KitTotalsView, z.infer<typeof kitTotalsSchema>>;
