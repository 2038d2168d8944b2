/**
 * What a kit question wishes for, and what it will not have. Whether there is such a part or lot,
 * and what a condition has wrong, is for the use-case to say.
 */

import { PRICE_PATTERN } from '../domain/catalogue/grammar.js';
import { atMost } from './limits.js';
import { z } from './openapi-zod.js';
import { nameOf, partField, positionField } from './question.js';
import { handSchema } from './reason.js';

/** A list of a kit question. */
export const few = <Item extends z.ZodType>(item: Item) =>
  z.array(item).max(...atMost('kitEntries'));

export const position = positionField.unwrap().openapi({ example: 'gearbox' });

export const part = partField.openapi({ example: 'gearbox-6-late' });

export const lot = nameOf().openapi({ description: 'Id of a lot.', example: 'clutch-kit-215' });

export const money = (description: string, example: string) =>
  nameOf('valueCharacters').openapi({
    description: `${description} In the currency of the catalogue, without tax.`,
    pattern: PRICE_PATTERN.source,
    example,
  });

const CONDITION = {
  position,
  condition: z.record(z.string(), z.unknown()).openapi({
    description:
      'What must hold of what stands there, in the language of checks that rules are written in, ' +
      'with the words of the layout.',
    example: { 'at-least': ['gearbox.gear-count', 6] },
  }),
};

export const conditionSchema = z.strictObject(CONDITION).openapi('PlaceCondition', {
  description: 'A condition at a position.',
});

const whole = z.boolean().openapi({
  description:
    'Whether all of the lot that has a place on the vehicle is put in; else one piece of it at ' +
    'least is, and what has no use is left over. Where this is left out, it is true if the ' +
    'vehicle can take the lot whole, whatever else the question demands.',
});

export const lotWantedSchema = z
  .strictObject({ lot, whole: whole.optional() })
  .openapi('WantedLot', { description: 'A lot. It is bought whole.' });

export const askedLotSchema = z.strictObject({ lot, whole }).openapi('AskedLot');

export const loadWantedSchema = z
  .strictObject({
    load: nameOf().openapi({
      description: "Id of a load: a `carries` among the checks of the vehicle's layout.",
      example: 'clutch-load',
    }),
    atLeast: nameOf('valueCharacters').openapi({
      description: 'The least that its rating is over its demand, a decimal.',
      pattern: '^[0-9]{1,3}(\\.[0-9]{1,4})?$',
      example: '1.25',
    }),
  })
  .openapi('WantedLoad', {
    description:
      'A margin of a load, by the records, whether anything of it is changed or not. Where ' +
      'nothing carries the load it is not met.',
  });

const wantedParts = z
  .union([
    part,
    z
      .array(part)
      .min(1)
      .max(...atMost('wants')),
  ])
  .openapi({ description: 'A part, or several of which one is wanted.' });

export const WANTED = {
  part: wantedParts,
  position: position.optional().openapi({
    description: 'Where it is wanted; any one place that takes it where this is left out.',
  }),
  hand: handSchema.optional().openapi({ description: 'Only there, of a left and a right piece.' }),
  renew: z.boolean().optional().openapi({
    description: 'Buy a new piece, even where the same article is there already.',
  }),
};

export const wantSchema = z
  .union([
    z.strictObject(WANTED).openapi('WantedPart', { description: 'A part that is to be there.' }),
    lotWantedSchema,
    loadWantedSchema,
    conditionSchema,
  ])
  .openapi('Want', { description: 'One thing that the change must bring about.' });

export const avoidSchema = z
  .union([
    z.strictObject({ part }).openapi('AvoidedPart', {
      description: 'A part that is not to be added; where it is already, it may stay.',
    }),
    z
      .strictObject({ supplier: nameOf().openapi({ example: 'Fennuld Spares' }) })
      .openapi('AvoidedSupplier', {
        description: 'A supplier, as offers name it, of whom nothing is to be bought.',
      }),
    conditionSchema,
  ])
  .openapi('Avoid', { description: 'One thing that must not be added.' });
