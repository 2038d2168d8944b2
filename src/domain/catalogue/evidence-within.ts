/**
 * What a record rests on, where something around it says so too.
 */

import type { Evidence } from './catalogue.js';

/**
 * What is left out is taken from around. But who, when, where and how often is said of the basis
 * beside it: what rests on something else has none of that from around.
 */
export function evidenceWithin(around: Evidence, own: Partial<Evidence> | undefined): Evidence {
  const isOther = own?.basis !== undefined && own.basis !== around.basis;
  return { ...(isOther ? { basis: around.basis } : around), ...own };
}
