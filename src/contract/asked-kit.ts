/**
 * A kit question in its one form, as an answer repeats it.
 */

import type { AskedKit } from '../usecases/asked-kit.js';
import { lotsSchema, ownedSchema, ownOfferSchema } from './kit-goods.js';
import {
  fromSchema,
  LIMIT_FIELDS,
  preferSchema,
  unknownsSchema,
  workUpToSchema,
} from './kit-question.js';
import {
  askedLotSchema,
  avoidSchema,
  conditionSchema,
  loadWantedSchema,
  WANTED,
} from './kit-wishes.js';
import { LIMITS } from './limits.js';
import { z } from './openapi-zod.js';
import { handSchema } from './reason.js';
import { unitsSchema } from './units.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';
import type { Wire } from './wire.js';

const fittedHere = z.record(z.string(), VEHICLE_FIELDS.fitted.unwrap().valueType);

const askedReading = z
  .strictObject({
    on: z.strictObject({
      part: z.string(),
      interface: z.string().optional(),
      parameter: z.string(),
    }),
    value: z.union([z.string(), z.array(z.string())]),
    tool: z.string().optional(),
  })
  .openapi('AskedMeasured', { description: 'A value of a part.' });

const askedIdentity = z
  .strictObject({
    on: z.strictObject({ position: z.string(), hand: handSchema.optional() }),
    value: z.string(),
  })
  .openapi('AskedIdentity', { description: 'What stands at a position: a part, or `none`.' });

/** The same fields, with those filled in that have a default. */
export const askedKitSchema = z
  .strictObject({
    edition: z.int().min(1),
    lang: z.string(),
    units: unitsSchema,
    vehicle: z.string(),
    facts: z.record(z.string(), z.string()),
    fitted: fittedHere,
    adapters: z.record(z.string(), z.array(z.string())),
    torque: z.string().optional(),
    use: VEHICLE_FIELDS.use,
    ignorePresent: z.boolean(),
    want: z.array(
      z.union([
        z
          .strictObject({ ...WANTED, part: z.array(z.string()), renew: z.boolean() })
          .openapi('AskedPart'),
        askedLotSchema,
        loadWantedSchema,
        conditionSchema,
      ]),
    ),
    keep: z.array(z.string()),
    avoid: z.array(avoidSchema),
    owned: z.array(ownedSchema.required()),
    lots: lotsSchema,
    workUpTo: workUpToSchema,
    limits: z.strictObject({ ...LIMIT_FIELDS, inStock: z.boolean() }).openapi('AskedLimits'),
    labourRate: z.string().optional(),
    ruleset: z.string().optional(),
    unknowns: unknownsSchema,
    from: fromSchema,
    offers: z.array(ownOfferSchema),
    offersMode: z.enum(['over', 'replace']),
    measured: z.array(z.union([askedReading, askedIdentity])),
    prefer: preferSchema,
    routes: z.int().min(1).max(LIMITS.routes.value),
    undominated: z.boolean(),
    steps: z.int().min(1),
  })
  .openapi('AskedKit', {
    description:
      'The question in its one form: its defaults filled in, its parts by their ids. Sent to ' +
      '`POST /v1/kits`, it has the same answer as long as the price and stock list is the same.',
  });

export type AskedKitWire = Wire<AskedKit, z.infer<typeof askedKitSchema>>;
