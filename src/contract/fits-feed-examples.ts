/**
 * Example requests for all that fits, of the demo catalogue, answered and refused.
 */

import type { ExampleRequest } from './examples.js';
import { CSV_TYPE, NDJSON_TYPE } from './fit-batch.js';
import type { RefusedQuestion } from './refused-questions.js';

export const FITS_FEED_EXAMPLES: readonly ExampleRequest[] = [
  {
    operationId: 'exportFits',
    name: 'pairs',
    summary: 'Gearboxes where they fit, or may fit, as it stands',
    segment: 'latest',
    search: 'role=gearbox&alone=holds,open',
    lines: { accept: NDJSON_TYPE },
  },
  {
    operationId: 'exportFits',
    name: 'ranges',
    summary: 'One part, as a table of models shows it',
    segment: '1',
    search: 'part=gearbox-6-late&form=ranges&lang=de',
    lines: { accept: CSV_TYPE },
  },
];

export const FITS_FEED_REFUSED = {
  'unknown-edition': { summary: 'An edition to come', segment: '999' },
  'unknown-role': {
    summary: 'A role with a letter missing',
    segment: '1',
    search: 'role=gearbo',
  },
  'unknown-part': {
    summary: 'A part with a letter missing',
    segment: '1',
    search: 'part=gearbox-6-lat',
  },
  'unknown-vehicle': {
    summary: 'A vehicle that is not in the catalogue',
    segment: '1',
    search: 'vehicle=lirren-9',
  },
  'vehicle-replaced': {
    summary: 'A vehicle that was recorded roughly, until two took its place',
    segment: '1',
    search: 'vehicle=lirren',
  },
  'invalid-question': {
    summary: 'Two things at once that there are not',
    segment: '1',
    search: 'role=gearbo&part=gearbox-6-lat',
  },
} as const satisfies Readonly<Record<string, RefusedQuestion>>;
