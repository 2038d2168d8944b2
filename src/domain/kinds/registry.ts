/**
 * The one list of built-in kinds. A new kind is a file beside this one and a line here.
 */

import type { BuiltInKind } from './kind.js';
import { propshaftFlange } from './propshaft-flange.js';

export const BUILT_IN_KINDS: readonly BuiltInKind[] = [propshaftFlange];
