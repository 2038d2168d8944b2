/**
 * What kinds and layouts declare, as answers show it.
 */

import type { DeclaredCheckView } from '../usecases/catalogue-view.js';
import { severitySchema } from './judged.js';
import { z } from './openapi-zod.js';
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
