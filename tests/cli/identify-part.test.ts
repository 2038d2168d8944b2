/**
 * `faying identify-part`: how places are written, and what a person reads.
 */

import { describe, expect, test } from 'vitest';
import { openStore } from '../../src/store/sqlite.js';
import { publish } from '../http/fixture.js';
import { demoDocument } from '../memory-store.js';
import { freshDatabase, run } from './terminal.js';

const database = freshDatabase();
publish(openStore(database, { mode: 'create' }), demoDocument());

function asked(...words: string[]) {
  return run(['identify-part', ...words], { database });
}

describe('identify-part', () => {
  test('lists what is left, why, what is left out, and what to read next', async () => {
    const { out, code } = await asked('--role', 'gearbox', '--measured', 'gear-count=6');
    expect(code).toBe(0);
    expect(out).toContain('It can be any of 2 recorded parts.');
    expect(out).toContain('- Number of gears: measured 6, recorded 6.');
    expect(out).toContain('- gear-count: 3 parts.');
    expect(out).toContain('Read a number off it. CBL-2G-6 (1); CBL-2G-6C (1).');
    expect(out).toContain('proves no identity');
  });

  test('reads a face by its name and by its kind, with side and which', async () => {
    const places = [
      'outer.teeth=25',
      'kind:involute-spline.teeth=25',
      'kind:involute-spline.shaft.teeth=25',
      'kind:involute-spline:2.teeth=25',
    ];
    for (const place of places) {
      const { out } = await asked('--role', 'rear-half-shaft', '--measured', place, '--json');
      expect([place, (JSON.parse(out) as { counts: object }).counts]).toEqual([
        place,
        { total: 5 },
      ]);
    }
  });

  test('takes the tool of a reading, and that there is no such face', async () => {
    const length = ['--role', 'gearbox', '--measured', 'length=575.5 mm'];
    expect((await asked(...length)).out).toContain('It is none of the recorded parts');
    expect((await asked(...length, '--tool', 'length=tape')).out).toContain('2 recorded parts');
    const none = await asked('--role', 'gearbox', '--measured', 'control=none', '--lang', 'de');
    expect(none.out).toContain('Es kann jedes von 3 erfassten Teilen sein.');
  });

  test.each([
    [['--measured', 'a.b.c=1'], 'does not name one value: a.b.c'],
    [['--measured', 'kind:x=1'], 'does not name one value: kind:x'],
    [['--measured', 'kind:x.y.z.q=1'], 'does not name one value'],
    [['--tool', 'length=tape'], '--tool names what was not read: length'],
    [['--limit', '0'], 'whole number'],
    [['--role', 'box'], 'There is no role "box"'],
  ])('refuses %j', async (words, text) => {
    const { code, err } = await asked(...words);
    expect(code).toBe(2);
    expect(err).toContain(text);
  });
});
