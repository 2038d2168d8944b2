/**
 * The element for pages that load it by one script: the build makes one file of this and of all
 * that it imports.
 */

import { defineFayingFit } from './element.js';

defineFayingFit();
