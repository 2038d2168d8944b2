/**
 * Finds the routes of a kit question: every way of doing the conversion that leaves nothing out
 * and has nothing in it that could be left out, the best first.
 */

import type { KitQuestion } from './question.js';
import type { Kits } from './route.js';

export function resolveKits(question: KitQuestion): Kits {
  throw new Error(`no routes are searched yet for ${question.vehicle.id}`);
}
