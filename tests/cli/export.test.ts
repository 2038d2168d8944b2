/**
 * `faying export fits`: to the standard output and into a file, byte for byte what the service
 * gives over HTTP; a run that is broken off leaves nothing of it.
 */

import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rigOf } from '../http/fixture.js';
import { CART } from './catalogue.js';
import { freshDatabase, type Run, run as runIn, type Setting } from './terminal.js';

const folder = mkdtempSync(join(tmpdir(), 'faying-export-'));
afterAll(() => rmSync(folder, { recursive: true }));

const LESS = { ...CART, parts: CART.parts.filter(({ id }) => id !== 'box-d') };

const database = freshDatabase();
beforeAll(async () => {
  for (const document of [CART, LESS]) {
    const input = JSON.stringify(document);
    expect((await runIn(['publish', '-'], { database, input })).code).toBe(0);
  }
});

/** Where no signal comes. */
function run(words: readonly string[], setting: Setting = {}): Promise<Run> {
  const untilStopped = () => new Promise<string>(() => undefined);
  return runIn(['export', 'fits', ...words], {
    database,
    ...setting,
    world: { untilStopped, ...setting.world },
  });
}

describe('it is what the service gives', () => {
  const rig = rigOf({ documents: [CART, LESS] });

  test.each([
    ['latest/fits', []],
    ['1/fits?lang=en', ['--edition', '1']],
    ['2/fits?from=1', ['--from', '1']],
    ['2/fits?from=1&form=ranges&lang=de', ['--from', '1', '--form', 'ranges', '--lang', 'de']],
    ['2/fits?role=gearbox&alone=open,holds', ['--role', 'gearbox', '--alone', 'open,holds']],
    ['1/fits?part=box-d,box-a', ['--edition', '1', '--part', 'box-d, box-a']],
    ['2/fits?vehicle=cart-1', ['--vehicle', 'cart-1']],
  ])('%s', async (target, words) => {
    for (const [format, accept] of [
      ['ndjson', 'application/x-ndjson'],
      ['csv', 'text/csv'],
    ] as const) {
      const response = await rig.app.request(`/v1/editions/${target}`, { headers: { accept } });
      expect(response.status).toBe(200);
      const text = await response.text();
      const done = await run([...words, '--format', format]);
      expect([done.out, done.err, done.code, done.leftOpen]).toEqual([text, '', 0, 0]);
      const file = join(folder, 'same');
      const told = await run([...words, '--format', format, '--output', file, '--force']);
      expect([told.code, told.err]).toEqual([0, '']);
      expect(readFileSync(file, 'utf8')).toBe(text);
    }
  });
});

describe('a file', () => {
  test('is told of, in words or as JSON', async () => {
    const file = join(folder, 'told.ndjson');
    const done = await run(['--from', '1', '--output', file]);
    expect(done.out).toBe(`${file} has 1 line of edition 2, 1 of them of what is gone.\n`);
    const json = await run(['--output', file, '--force', '--json']);
    expect(JSON.parse(json.out)).toMatchObject({ output: file, edition: 2, gone: 0 });
  });

  test('that is there is left alone, unless it is said', async () => {
    const file = join(folder, 'mine.txt');
    writeFileSync(file, 'mine');
    const done = await run(['--output', file]);
    expect([done.code, done.out]).toEqual([2, '']);
    expect(done.err).toContain('mine.txt is there already.');
    expect(done.err).toContain('--force');
    expect(readFileSync(file, 'utf8')).toBe('mine');
    expect((await run(['--output', file, '--force'])).code).toBe(0);
    expect(readFileSync(file, 'utf8')).toContain('"end"');
  });

  test.each([
    ['a folder', folder, 'is a folder'],
    ['nowhere', join(folder, 'none', 'x'), 'is in no folder that there is'],
  ])('that cannot be: %s', async (_, file, says) => {
    const done = await run(['--output', file, '--force']);
    expect([done.code, done.out]).toEqual([2, '']);
    expect(done.err).toContain(says);
  });

  test('is as it was where the run is stopped, and nothing lies beside it', async () => {
    const own = mkdtempSync(join(folder, 'own-'));
    const file = join(own, 'fits.ndjson');
    writeFileSync(file, 'of yesterday');
    const stopped = await run(['--output', file, '--force'], {
      world: { untilStopped: () => Promise.resolve('SIGTERM') },
    });
    expect([stopped.code, stopped.out]).toEqual([4, '']);
    expect(stopped.err).toContain('Stopped by SIGTERM.');
    expect(readFileSync(file, 'utf8')).toBe('of yesterday');
    expect(readdirSync(own)).toEqual(['fits.ndjson']);
  });

  test('is not begun where the question has a fault', async () => {
    const own = mkdtempSync(join(folder, 'own-'));
    const done = await run(['--part', 'box-z', '--output', join(own, 'fits.ndjson')]);
    expect([done.code, readdirSync(own)]).toEqual([2, []]);
    expect(done.err).toContain('box-z');
  });
});

test('how far it has come is shown to whoever reads along, and wiped', async () => {
  const done = await run([], { isTerminal: true });
  expect(done.err).toContain('100 %, ');
  expect(done.err.endsWith('\r\u001b[2K')).toBe(true);
});

test('a reader that has seen enough breaks it off', async () => {
  const writeOut = () => Promise.reject(Object.assign(new Error('EPIPE'), { code: 'EPIPE' }));
  const done = await run([], { world: { writeOut } });
  expect([done.code, done.leftOpen]).toEqual([4, 0]);
  expect(done.err).toContain('Nobody reads the answers any more.');
});

test.each([
  [['--form', 'ranges', '--vehicle', 'cart-1'], '--vehicle names vehicles'],
  [['--alone', 'fits'], 'which is no outcome'],
  [['--from', '0'], 'whole number from 1'],
  [['--from', '7'], 'edition 7'],
  [['--format', 'xml'], 'Allowed choices are ndjson, csv'],
])('what cannot be is refused: %j', async (words, says) => {
  const done = await run(words);
  expect([done.code, done.out]).toEqual([2, '']);
  expect(done.err.replaceAll(/\s+/g, ' ')).toContain(says);
});
