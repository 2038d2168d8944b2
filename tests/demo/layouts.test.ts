/**
 * The questions to the three newer layouts of the demo catalogue: that each answer is the one told
 * by hand, and how the most telling ones read.
 */

import { describe, expect, test } from 'vitest';
import { frame4x4 } from './frame-4x4.js';
import { rearIrs } from './rear-irs.js';
import { expectTold, type Told } from './told.js';
import { transcript } from './transcript.js';
import { transverse } from './transverse.js';

const layouts: Readonly<Record<string, Readonly<Record<string, Told>>>> = {
  'frame-4x4': frame4x4,
  'rear-irs': rearIrs,
  transverse,
};

/** Questions whose sentences somebody has read: traps, clean conversions, tapes and works. */
const read = [
  'frame-4x4/one-axle-geared',
  'frame-4x4/both-axles-geared',
  'frame-4x4/tyres-in-front',
  'frame-4x4/large-tyres-on-spacers',
  'rear-irs/large-front-brakes-and-wheels',
  'rear-irs/limited-slip-made-to-order',
  'rear-irs/used-half-shaft',
  'transverse/drive-of-a-pellory',
  'transverse/four-wheel-drive',
  'transverse/hubs-of-a-pellory-turned',
];

describe.each(Object.entries(layouts))('%s answers as told by hand', (_, questions) => {
  test.each(Object.entries(questions))('%s', (__, told) => {
    expectTold(told.ask(), told);
  });
});

describe('the sentences', () => {
  test.each(read)('of %s', async (id) => {
    const [layout = '', question = ''] = id.split('/');
    const told = layouts[layout]?.[question];
    if (told === undefined) throw new Error(`nobody asks ${id}`);
    await expect(transcript(told.ask())).toMatchFileSnapshot(`golden/${id}.txt`);
  });
});
