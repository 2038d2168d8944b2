/**
 * Which parts fit a vehicle? Question and answer.
 */

import type { FittingPartEntry } from '../usecases/fits-view.js';
import type { FittingPartsInput } from '../usecases/list-fitting-parts.js';
import type { ListInput } from '../usecases/listing.js';
import {
  COMMON_FITS,
  checkSolved,
  FITS_FIELDS,
  FITS_PARAMETERS,
  fitsCountsSchema,
} from './fits.js';
import { listFields } from './list.js';
import {
  askedField,
  lostNameSchema,
  namedBySchema,
  offersField,
  partNamesField,
  supersededByField,
} from './naming.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { FACT_GROUP, parameter, type QueryGrammar, WITH_GROUP } from './parameters.js';
import { partNumberSchema } from './parts.js';
import { NOT_BESIDE_NAMES } from './problems/rules.js';
import { byPlace, nameOf, refuseBeside } from './question.js';
import { orNull } from './reason.js';
import type { Wire } from './wire.js';

const donorPlaceSchema = z
  .strictObject({ position: z.string(), name: z.string() })
  .openapi('DonorPlace', { description: 'A place of the donor at which the part stands.' });

const kitPieceSchema = z
  .strictObject({
    position: z.string().nullable(),
    mating: z.string().nullable(),
    part: z.string(),
    name: z.string(),
  })
  .openapi('KitPiece', { description: 'A part, and the position or mating that it goes into.' });

const donorKitSchema = z
  .strictObject({
    comesWith: z.array(kitPieceSchema).openapi({ description: 'Other pieces of the donor.' }),
    alsoNeeded: z.array(kitPieceSchema).openapi({ description: 'What the donor has not.' }),
  })
  .openapi('DonorKit', {
    description: 'What the best way of using a part takes, where the donor costs nothing more.',
  });

const PART_ENTRY = {
  part: z.string().openapi({ description: 'Its id.' }),
  name: z.string(),
  maker: z.string().nullable(),
  numbers: z.array(partNumberSchema),
  supersededBy: supersededByField,
  donor: z.array(donorPlaceSchema).openapi({
    description: 'Where it stands on the donor; empty where none was asked about.',
  }),
  kit: orNull(donorKitSchema).openapi({
    description:
      'What comes with it. Null where no `donor` was asked about, without `changes=yes`, and ' +
      'where no way is known.',
  }),
  ...FITS_FIELDS,
};

const fittingPartSchema = z
  .strictObject(PART_ENTRY)
  .openapi('FittingPart', { description: 'A part, and what comes of it on the vehicle.' });

export type FittingPartWire = Wire<FittingPartEntry, z.infer<typeof fittingPartSchema>>;

const namedFittingPartSchema = z
  .strictObject({ asked: askedField, resolvedBy: namedBySchema, ...PART_ENTRY })
  .openapi('NamedFittingPart', { description: 'What comes of a part that was named.' });

export const fittingPartsAnswerSchema = z
  .strictObject({
    ...listFields(
      z.union([fittingPartSchema, namedFittingPartSchema, lostNameSchema]),
      'In the order of the ids of the parts; those that are named in the order of the question.',
    ),
    counts: fitsCountsSchema,
    vehicle: z.string(),
    label: z.string().openapi({ description: 'The vehicle, for people.' }),
    offers: offersField,
  })
  .openapi('FittingPartList', { description: 'Parts, and what comes of each on the vehicle.' });

const name = nameOf().optional();

const PARTS_FIELDS = {
  position: name.openapi({ description: 'Only at this position.', example: 'gearbox' }),
  role: name.openapi({ description: 'Only parts of this role, by its id.', example: 'gearbox' }),
  part: partNamesField('These parts in place of the list'),
  donor: name.openapi({
    description: 'Only what the works fitted to this vehicle, which is taken apart.',
    example: 'lirren-2',
  }),
  with: byPlace(nameOf()).optional(),
  facts: byPlace(nameOf()).optional(),
  ...COMMON_FITS,
};

/** What makes no difference to parts that are named one by one. */
const OF_LISTS = ['role', 'donor', 'alone', 'limit', 'cursor'] as const;

export const fittingPartsQuestionSchema = z
  .strictObject(PARTS_FIELDS)
  .superRefine((question, context) => {
    checkSolved(question, context);
    if (question.part !== undefined) refuseBeside(OF_LISTS, question, context, NOT_BESIDE_NAMES);
  });

export type FittingPartsQuestion = z.infer<typeof fittingPartsQuestionSchema>;

export function fittingPartsFilters(
  question: FittingPartsQuestion,
): Omit<FittingPartsInput, keyof ListInput | 'id'> {
  const { position, role, part, donor, alone, facts, changes } = question;
  return {
    position: position ?? null,
    role: role ?? null,
    names: part ?? null,
    donor: donor ?? null,
    alone: alone ?? null,
    with: question.with ?? {},
    facts: facts ?? {},
    changes: changes ?? 'no',
  };
}

const PARTS_QUERY: QueryGrammar = {
  parameters: [
    parameter('position', PARTS_FIELDS.position),
    parameter('role', PARTS_FIELDS.role),
    parameter('part', PARTS_FIELDS.part, 'list'),
    parameter('donor', PARTS_FIELDS.donor),
    ...FITS_PARAMETERS,
  ],
  groups: [WITH_GROUP, FACT_GROUP],
};

export const listFittingPartsOperation: Operation = {
  method: 'get',
  path: '/v1/vehicles/{id}/fits',
  operationId: 'listFittingParts',
  tag: 'fit',
  summary: 'Which parts fit this vehicle?',
  description:
    'Every part that has a place on the vehicle, with what comes of it on the vehicle as it is; ' +
    'only at one position, of one role, out of one donor; or the parts of a page of a shop, by ' +
    'name. `counts` are of the whole list, whatever the page. Nothing is said of reasons: the ' +
    'fit question of one part gives them.',
  segment: { name: 'id', description: 'Id of the vehicle.', example: 'lirren-1' },
  query: PARTS_QUERY,
  body: null,
  answer: { schema: fittingPartsAnswerSchema, description: 'A page of the list.' },
  errors: [
    'unknown-edition',
    'no-edition',
    'unknown-vehicle',
    'vehicle-replaced',
    'unknown-part',
    'ambiguous-part',
    'unknown-position',
    'unknown-role',
    'invalid-question',
  ],
};
