/**
 * The check values of all calculators.
 */

import type { Vector } from '../vector.js';
import { AXLE_LOOP } from './axle-loop.js';
import { PROPELLER_SHAFT } from './propeller-shaft.js';
import { RATIO } from './ratio.js';

export const VECTORS: readonly Vector[] = [PROPELLER_SHAFT, RATIO, AXLE_LOOP].flat();
