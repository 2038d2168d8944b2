/**
 * What does the conversion take? The routes, the best first.
 */

import { resolveKits } from '../domain/kit/resolve.js';
import type { Kits } from '../domain/kit/route.js';
import { Faults } from './faults.js';
import type { KitInput } from './kit-input.js';
import { kitQuestionOf } from './kit-question.js';
import type { Library } from './library.js';

export function resolveKitQuestion(library: Library, input: KitInput): Kits {
  const edition = library.edition(input.edition);
  const { question } = kitQuestionOf({ library, edition, input }, new Faults());
  return resolveKits(question);
}
