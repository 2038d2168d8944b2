/**
 * The README is true: what it quotes of answers is what the program says today, the commands and
 * variables that it names are there, and its links lead somewhere.
 */

import { existsSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { OPERATIONS } from '../src/contract/operations.js';
import { freshDatabase, run } from './cli/terminal.js';
import { fits } from './demo/questions.js';
import { rigOf } from './http/fixture.js';
import { demoDocument } from './memory-store.js';

const folder = new URL('../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, folder), 'utf8');
const readme = read('README.md');

/** Runs of text without regard to where lines break. */
function flat(text: string): string {
  return text.replaceAll(/\s+/g, ' ').trim();
}

/** What stands between the first pair of these in the README. */
function between(from: string, to: string): string {
  const start = readme.indexOf(from);
  const end = readme.indexOf(to, start);
  expect([from, start >= 0, to, end > start]).toEqual([from, true, to, true]);
  return readme.slice(start, end);
}

describe('the README', () => {
  test('quotes the answer to the main question, and the publishing', async () => {
    const database = freshDatabase();
    const files = { 'demo.ndjson': read('db/demo/catalogue.ndjson') };
    const published = await run(['publish', 'demo.ndjson'], { files, database });
    const words = ['kits', 'lirren-1', 'gearbox-6-late', '--routes', '6'];
    const { out } = await run(words, { database, columns: 100 });
    const said = flat(`${published.out} ${out}`);
    const quoted = between('Published edition 1.', 'demo: the service has stopped').split('[...]');
    expect(quoted.length).toBeGreaterThan(3);
    for (const passage of quoted) expect(said).toContain(flat(passage));
  });

  test('quotes the answer that is unknown', () => {
    const answer = fits['used-hub']();
    const quoted: unknown = JSON.parse(between('{\n  "verdict"', '```'));
    expect(quoted).toEqual({
      verdict: answer.verdict,
      summary: answer.summary.text,
      measure: answer.measure.map(({ text }) => text),
    });
  });

  test('quotes what commands say', async () => {
    const database = freshDatabase();
    const files = { 'demo.ndjson': read('db/demo/catalogue.ndjson') };
    await run(['publish', 'demo.ndjson'], { files, database });
    const commands = [
      'faying driveline lirren-1',
      'faying calculate propeller-shaft',
      'faying fit --make',
      'faying fits vehicle',
    ];
    for (const command of commands) {
      const [typed = '', ...quoted] = between(command, '```').split('\n');
      const words = typed.split(' ').slice(1);
      const { out } = await run(words, { database, columns: 100 });
      for (const passage of quoted.join('\n').split('[...]')) {
        expect(flat(out)).toContain(flat(passage));
      }
    }
  });

  test('quotes a question in GraphQL, and the answer to it', async () => {
    const { client } = rigOf({ documents: [demoDocument()] });
    const [, body = '', quoted = ''] =
      /\/graphql [^\n]*'(\{"query":[^']*)'[^{]*(\{[^`]*)`/.exec(readme) ?? [];
    const asked = JSON.parse(body.replaceAll(/\s+/g, ' ')) as { query: string };
    const answered = await client.post('/graphql').send(asked);
    const { data } = answered.body as { data: unknown };
    expect(data).toEqual(JSON.parse(quoted));
  });

  test('quotes a batch', async () => {
    const database = freshDatabase();
    const files = { 'demo.ndjson': read('db/demo/catalogue.ndjson') };
    await run(['publish', 'demo.ndjson'], { files, database });
    const [, lines = ''] = /printf '%s\\n' (.*) \|/.exec(readme) ?? [];
    const input = [...lines.matchAll(/'([^']*)'/g)].map(([, line]) => `${line}\n`).join('');
    const world = { untilStopped: () => new Promise<string>(() => undefined) };
    const { out } = await run(['batch', '-', '--in', 'csv'], { database, input, world });
    const cut = out.split('\r\n').map((row) => row.split(',').slice(0, 10).join(','));
    expect(between('kind,line,ref', '```')).toBe(cut.join('\n'));
  });

  test('quotes all that fits', async () => {
    const { app } = rigOf({ documents: [demoDocument()] });
    const [, target = ''] =
      /"http:\/\/127\.0\.0\.1:8080(\/v1\/editions\/1\/fits[^"]*)"/.exec(readme) ?? [];
    const said = await (await app.request(target)).text();
    for (const passage of between('{"start":{"edition":1,', '```').split('[...]}}')) {
      expect(said).toContain(passage.trim());
    }
  });

  test('quotes the answer where there is no way', () => {
    const page = read('tests/demo/golden/kits/long-awd/late-gearbox-and-old-axle.txt');
    const quoted = between('Not all of this can be had together', '[...]');
    expect(page.startsWith(quoted)).toBe(true);
  });

  test('quotes what the sandbox says of itself', async () => {
    const started = { url: 'http://127.0.0.1:8080', edition: 2, stop: async () => undefined };
    const world = { readFile: (path: string) => readFile(path), startService: async () => started };
    const { out } = await run(['serve', '--demo', '--read-only'], { world });
    expect(between('This is the demo', '```')).toBe(out);
  });

  test('names the commands that there are', async () => {
    const { out } = await run(['--help']);
    const commands = [...out.matchAll(/^ {2}(\w+) \[/gm)].map(([, name]) => name);
    expect(commands.length).toBeGreaterThan(5);
    for (const name of commands) expect(readme).toContain(`faying ${name}`);
  });

  test('names the paths that there are', () => {
    const told = OPERATIONS.map(({ path, tag }) =>
      tag === 'calculate' ? path.replace(/calculate\/.*$/, 'calculate/{name}') : path,
    );
    for (const path of told) expect(readme).toContain(path);
  });

  test('names every variable of the environment', () => {
    const variables = new Set(read('src/config.ts').match(/FAYING_[A-Z_]+/g));
    expect(variables.size).toBeGreaterThan(3);
    for (const variable of variables) expect(readme).toContain(`\`${variable}\``);
  });

  test.each([...readme.matchAll(/\]\(([^)]+)\)/g)].map(([, path = '']) => path))(
    'links to %s',
    (path) => {
      expect(existsSync(new URL(path, folder))).toBe(true);
    },
  );
});
