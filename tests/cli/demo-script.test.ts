/** `scripts/demo`: its usage, and that what it asks is in the demo catalogue. */

import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { freshDatabase, run } from './terminal.js';

const top = fileURLToPath(new URL('../..', import.meta.url));
const script = join(top, 'scripts/demo');

function demo(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(script, words, { encoding: 'utf8' });
  return { status, stdout, stderr };
}

describe('scripts/demo', () => {
  test('says how it is used', () => {
    const { status, stdout } = demo('--help');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Usage: scripts\/demo \[--once\] \[--port N\]/);
  });

  test.each([[['--twice']], [['--port', '65536']], [['--port', 'http']], [['--port']]])(
    'refuses %j before it does anything',
    (words) => {
      const { status, stdout, stderr } = demo(...words);
      expect([status === 0, stdout]).toEqual([false, '']);
      expect(stderr).toMatch(/^demo: \S/);
    },
  );

  test('asks what its catalogue can answer', async () => {
    const text = readFileSync(script, 'utf8');
    const names = ['catalogue', 'vehicle', 'part', 'routes'];
    const [catalogue = '', vehicle = '', part = '', routes = ''] = names.map(
      (name) => new RegExp(`^${name}='([^']+)'$`, 'm').exec(text)?.[1],
    );
    const database = freshDatabase();
    const files = { [catalogue]: readFileSync(join(top, catalogue)) };
    expect((await run(['publish', catalogue], { database, files })).code).toBe(0);
    const words = ['kits', vehicle, part, '--routes', routes, '--json'];
    const { code, out } = await run(words, { database });
    expect(code).toBe(0);
    const answer = JSON.parse(out) as { vehicle: string; routes: { grade: string }[] };
    expect(answer.vehicle).toBe(vehicle);
    expect(answer.routes.map(({ grade }) => grade)).toEqual(
      Array.from({ length: Number(routes) }, () => 'proven'),
    );
  });
});
