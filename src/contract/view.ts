/**
 * How much of an answer is shown to whom. A view takes whole fields away and changes none of those
 * that are left: the verdict is the same in each. Which fields are in which, `views/` says.
 */

import { VIEWS } from '../domain/access.js';
import { z } from './openapi-zod.js';

export { isWithin, SCOPES, type Scope, VIEWS, type View, widestView } from '../domain/access.js';

/** Of questions whose answers have fields that not everybody is shown. */
export const viewField = z
  .enum(VIEWS)
  .optional()
  .openapi({
    description:
      'How much of the answer is shown: `public`, what any visitor of a shop may see; `trade`, ' +
      'values, checks, margins and prices besides; `full`, suppliers, evidence and recorded ' +
      'faces besides. No more than the key of the request opens, and all of that where this is ' +
      'left out. It takes fields away and changes none.',
    example: 'public',
  });
