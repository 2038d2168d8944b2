/** Wishes as texts: read, and written so that they are read as what they were. */

import { expect, test } from 'vitest';
import { wantIn, wantText } from '../../src/contract/wish-text.js';

const isWhole = (text: string) => text.startsWith('number:');

test.each([
  ['box-a', { part: 'box-a' }],
  ['box-a@gearbox', { part: 'box-a', position: 'gearbox' }],
  ['lot:crate', { lot: 'crate' }],
  ['load:clutch-load=1.25', { load: 'clutch-load', atLeast: '1.25' }],
  ['load:clutch-load', { load: 'clutch-load', atLeast: '' }],
  ['number:a@b', { part: 'number:a@b' }],
])('%s', (text, want) => {
  expect(wantIn(text, isWhole)).toEqual(want);
});

test('a wish is written as it is read, and one that has no such text is not written', () => {
  const load = { load: 'clutch-load', atLeast: '1.25' };
  expect(wantText(load, isWhole)).toBe('load:clutch-load=1.25');
  expect(wantText({ load: 'a=b', atLeast: '1' }, isWhole)).toBeNull();
  expect(wantText({ part: ['a', 'b'] }, isWhole)).toBeNull();
});
