/**
 * How far the two paths of a loop may differ, by what couples them: the limits for cars that
 * common practice gives (no source), and those that the document declares.
 */

import type { BandRecord, CatalogueDocument } from '../../src/domain/catalogue/document.js';

const OPEN: BandRecord = { pass: '1 %', warn: '3 %', refuse: '3 %' };
const LOCKING: BandRecord = { pass: '0.5 %', warn: '1 %', refuse: '2 %' };

export function bandsOf(document: CatalogueDocument): ReadonlyMap<string, BandRecord> {
  return new Map([
    ['open', OPEN],
    ['planetary', OPEN],
    ...['locked', 'part-time', 'viscous', 'clutch'].map((id) => [id, LOCKING] as const),
    ...Object.entries(document.couplings ?? {}),
  ]);
}
