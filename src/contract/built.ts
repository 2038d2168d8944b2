/**
 * When something was built, wherever a vehicle or a part is shown.
 */

import { z } from './openapi-zod.js';
import { A_MONTH } from './problems/rules.js';

/** As people read it. */
export { sayBuilt } from '../domain/explain/words.js';

const MONTH = /^[0-9]{4}-(0[1-9]|1[0-2])$/;

export const monthField = z
  .string()
  .regex(MONTH, { error: A_MONTH.code })
  .openapi({ example: '2004-06' });

export const builtField = z.array(monthField.nullable()).min(2).max(2).openapi({
  description: 'First and last month of building; null is not known, or still going on.',
});
