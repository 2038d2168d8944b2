/**
 * When something was built, wherever a vehicle or a part is shown.
 */

import { z } from './openapi-zod.js';

const month = z.string().regex(/^[0-9]{4}-(0[1-9]|1[0-2])$/);

export const builtField = z
  .array(month.nullable())
  .min(2)
  .max(2)
  .openapi({
    description: 'First and last month of building; null is not known, or still going on.',
    example: ['2002-09', null],
  });
