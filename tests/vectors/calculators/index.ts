/**
 * The check values of all calculators.
 */

import type { Vector } from '../vector.js';
import { PROPELLER_SHAFT } from './propeller-shaft.js';

export const VECTORS: readonly Vector[] = [PROPELLER_SHAFT].flat();
