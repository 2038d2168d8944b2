/**
 * The demo in German: all of its texts are, so that no answer has to say one in another language,
 * and how answers read, in sentences that somebody has read.
 */

import { describe, expect, test } from 'vitest';
import { readKind } from '../../src/usecases/list-kinds.js';
import { readLayout } from '../../src/usecases/list-layouts.js';
import { readRole } from '../../src/usecases/list-roles.js';
import { readPart } from '../../src/usecases/read-part.js';
import { readVehicle } from '../../src/usecases/read-vehicle.js';
import { demoDocument, libraryOf } from '../memory-store.js';
import { frame4x4 } from './frame-4x4.js';
import { fits, inspections, matings } from './questions.js';
import { rearIrs } from './rear-irs.js';
import type { Answer } from './told.js';
import { transcript } from './transcript.js';
import { transverse } from './transverse.js';

const questions: Readonly<Record<string, (lang: string) => Answer>> = Object.fromEntries([
  ...Object.entries({ ...fits, ...inspections, ...matings }),
  ...Object.entries({ 'frame-4x4': frame4x4, 'rear-irs': rearIrs, transverse }).flatMap(
    ([layout, told]) => Object.entries(told).map(([id, { ask }]) => [`${layout}/${id}`, ask]),
  ),
]);
/** Those that have a transcript in English too. */
const READ = [
  'clutch-for-400',
  'gap-in-the-records',
  'larger-wheel-and-tyre',
  'late-gearbox',
  'late-gearbox-and-rear-end',
  'stated-clutch',
  'used-hub',
  'wheel-on-dual-drilled-hub',
  'frame-4x4/one-axle-geared',
  'rear-irs/limited-slip-made-to-order',
  'transverse/four-wheel-drive',
  'flanges-with-plate',
];

describe('every answer of the demo is German through and through', () => {
  test.each(Object.entries(questions))('%s', (_, ask) => {
    expect(ask('de')).toMatchObject({ lang: 'de', textLang: [] });
  });

  test('and so is everything that is read of the catalogue', () => {
    const library = libraryOf(demoDocument());
    const common = { edition: null, lang: 'de', units: 'recorded' } as const;
    const { catalogue } = library.edition(null);
    const whole = [
      ...[...catalogue.parts.keys()].map((id) => readPart(library, { ...common, id })),
      ...[...catalogue.kinds.keys()].map((id) => readKind(library, { ...common, id })),
      ...[...catalogue.roles.keys()].map((id) => readRole(library, { ...common, id })),
      ...[...catalogue.layouts.keys()].map((id) => readLayout(library, { ...common, id })),
      ...[...catalogue.vehicles.values()]
        .filter(({ replacedBy }) => replacedBy.length === 0)
        .map(({ id }) => readVehicle(library, { ...common, id })),
    ];
    expect(whole.length).toBeGreaterThan(400);
    expect(whole.filter(({ textLang }) => textLang.length > 0).map(({ id }) => id)).toEqual([]);
  });
});

describe('the sentences', () => {
  test.each(READ)('of %s', async (id) => {
    const ask = questions[id];
    if (ask === undefined) throw new Error(`nobody asks ${id}`);
    await expect(transcript(ask('de'))).toMatchFileSnapshot(`golden/de/${id}.txt`);
  });

  test.each(READ)('of %s have no name of a term in English', (id) => {
    const text = questions[id] === undefined ? '' : transcript(questions[id]('de'));
    expect(text).not.toMatch(/\b(path|length|torque|demand|braking|tyre|shaft|axle)\b/);
  });
});
