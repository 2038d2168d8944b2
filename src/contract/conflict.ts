/**
 * Why a question has no route: demands that contradict each other, what breaks them, and what
 * would help.
 */

import type { ConflictView } from '../usecases/conflict-answer.js';
import { kitTotalsSchema } from './kit-line.js';
import { z } from './openapi-zod.js';
import { orNull, SAID, shownValueSchema } from './reason.js';
import { BY_CODE } from './reason-codes.js';
import { gradeSchema } from './route.js';
import type { Wire } from './wire.js';

const DEMAND = {
  demand: z.string().openapi({
    description:
      'What is demanded: `present`, `want`, `keep`, `avoid-part`, `avoid-supplier`, ' +
      '`avoid-condition`, `limit`, `torque`, `ruleset-keep`, `ruleset-check`, `ruleset-rest`, ' +
      '`unknowns`. Open.',
    example: 'keep',
  }),
  at: z.string().openapi({
    description: 'Where it stands in `question` of the answer.',
    example: 'keep.0',
  }),
  ...SAID,
};

const demandSchema = z
  .strictObject(DEMAND)
  .openapi('Demand', { description: 'One demand of the question.', ...BY_CODE });

const droppedSchema = z
  .strictObject({
    ...DEMAND,
    takes: orNull(shownValueSchema).openapi({
      description: 'Of a limit: what it takes; null of anything else, and where nobody knows it.',
    }),
  })
  .openapi('DroppedDemand', { description: 'A demand that is taken back.', ...BY_CODE });

const pathPartSchema = z
  .strictObject({
    position: z.string().nullable(),
    mating: z.string().nullable(),
    part: z.string(),
    name: z.string(),
  })
  .openapi('PathPart', { description: 'What would stand where to come so far.' });

const stepSchema = z
  .strictObject({
    constraint: z.string().openapi({ description: 'Id of the mating, the check or the rule.' }),
    state: z.enum(['fails', 'open']),
    changed: z.array(pathPartSchema).openapi({
      description: 'As few changes as the other steps allow; empty where all is as it is now.',
    }),
    ...SAID,
  })
  .openapi('PathStep', {
    description: 'One joint, check or rule that cannot hold together with the other steps.',
    ...BY_CODE,
  });

const relaxationSchema = z
  .strictObject({
    drop: z.array(droppedSchema),
    grade: orNull(gradeSchema).openapi({
      description: 'Of the best route then; null where none was found in time.',
    }),
    changes: z.array(z.string()),
    totals: orNull(kitTotalsSchema),
    ...SAID,
  })
  .openapi('Relaxation', {
    description: 'Demands whose dropping gives a way, and what that then comes to.',
    ...BY_CODE,
  });

export const conflictSchema = z
  .strictObject({
    demands: z.array(demandSchema).openapi({
      description: 'They contradict each other, and without any one of them the others do not.',
    }),
    smallest: z.boolean().openapi({ description: 'No fewer demands contradict each other.' }),
    path: orNull(z.array(stepSchema)).openapi({
      description:
        'What breaks them, from what is asked for onwards; none of it can be left out. Null ' +
        'where it was not found in time.',
    }),
    relaxations: z.array(relaxationSchema).openapi({
      description: 'The fewest demands first, then the cheapest.',
    }),
    more: z.boolean().openapi({ description: 'There are more ways out than are listed.' }),
  })
  .openapi('Conflict', {
    description:
      'A smallest set of demands of the question that cannot be met together. What is on the ' +
      'vehicle as it stands is never a part of it.',
  });

export type ConflictWire = Wire<ConflictView, z.infer<typeof conflictSchema>>;
