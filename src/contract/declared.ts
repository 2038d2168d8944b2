/**
 * What kinds, roles and layouts declare, as answers show it.
 */

import type { DeclaredCheckView } from '../usecases/catalogue-view.js';
import { severitySchema } from './judged.js';
import { z } from './openapi-zod.js';
import { orNull, shownValueSchema } from './reason.js';
import type { Wire } from './wire.js';

export const declaredCheckSchema = z
  .strictObject({
    check: z.string(),
    primitive: z.string(),
    severity: severitySchema,
    text: z.string().nullable().openapi({ description: 'What it says of itself.' }),
  })
  .openapi('DeclaredCheck', { description: 'A check before any value is put in.' });

export type DeclaredCheckWire = Wire<DeclaredCheckView, z.infer<typeof declaredCheckSchema>>;

export const cautionGroupField = z.string().nullable().openapi({
  description: 'The group of its cautions. Open: groups may be added.',
});

/** What is wanted of a value. */
export const SPEC_FIELDS = {
  name: z.string(),
  type: z.string().openapi({
    description:
      '`code`, `count`, `designation`, `ratio`, `measured` or `points`. Open: types may be added.',
  }),
  unit: z.string().openapi({
    description: 'Empty for pure numbers and codes. Open: units may be added.',
    example: 'mm',
  }),
  tool: z.string().nullable().openapi({ description: 'Id of the tool that usually tells it.' }),
  toolName: z.string().nullable(),
  usual: orNull(shownValueSchema).openapi({
    description: 'Outside of it a value is doubtful, not wrong; null where nothing is said.',
  }),
};
