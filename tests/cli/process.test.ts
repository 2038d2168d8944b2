/**
 * The program as a process, with real files, pipes and signals. Slow, so few: what the other
 * tests cannot see because they bring their own streams and their own service.
 */

import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer as createHttpServer } from 'node:http';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cartText } from './catalogue.js';
import {
  type Ended,
  type ProcessOptions,
  type Started,
  startProgram,
  urlOf,
} from './program-process.js';

const folder = mkdtempSync(join(tmpdir(), 'faying-'));
const database = join(folder, 'cart.sqlite');
const env = { FAYING_DATABASE: database, FAYING_LOG_LEVEL: 'warn', FAYING_OPEN: 'full' };

function start(words: readonly string[], own: Partial<ProcessOptions> = {}): Started {
  return startProgram(words, { ...own, env: { ...env, ...own.env } });
}

function faying(words: readonly string[], input = ''): Promise<Ended> {
  const { child, ended } = start(words);
  child.stdin?.end(input);
  return ended;
}

beforeAll(async () => {
  const published = await faying(['publish', '-'], cartText());
  expect(published).toMatchObject({ code: 0, err: '' });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));

describe('a process', () => {
  test('answers from the database that was published into', async () => {
    const [fits, fails] = await Promise.all([
      faying(['fit', 'cart-1', 'box-d']),
      faying(['fit', 'cart-1', 'box-b', '--json']),
    ]);
    expect(fits).toMatchObject({ code: 0, err: '' });
    expect(fits.out).toMatch(/^Fits\.\n/);
    expect(fails.code).toBe(0);
    expect(JSON.parse(fails.out)).toMatchObject({ edition: 1, alone: 'fails' });
  });

  test('tells those whom its environment names', async () => {
    const secret = `whsec_${Buffer.alloc(32, 7).toString('base64')}`;
    const got: string[] = [];
    const there = createHttpServer((request, response) => {
      got.push(String(request.headers['webhook-id']));
      response.writeHead(204).end();
    });
    await new Promise<void>((resolve) => there.listen(0, '127.0.0.1', resolve));
    const { port } = there.address() as AddressInfo;
    const path = join(folder, 'webhooks.json');
    const notify = (receiver: object) => {
      writeFileSync(path, JSON.stringify({ receivers: [{ secrets: [secret], ...receiver }] }));
      return start(['notify', '--json'], { env: { FAYING_WEBHOOKS: path } }).ended;
    };
    const url = `http://127.0.0.1:${port}`;
    const told = await notify({ name: 'shop', url, allowPrivate: true });
    const closed = await notify({ name: 'shop', url: url.replace('http:', 'https:') });
    const faulty = await notify({ name: 'shop', url });
    there.close();
    expect(told).toMatchObject({ code: 0, err: '' });
    expect(got).toEqual([expect.stringMatching(/^edition-1-/)]);
    expect(closed.code).toBe(3);
    expect(JSON.parse(closed.out)).toMatchObject({ told: [{ failure: 'forbidden-address' }] });
    expect([faulty.code, faulty.out]).toEqual([2, '']);
    expect(JSON.parse(faulty.err)).toMatchObject({ code: 'bad-configuration' });
    const said = [told, closed, faulty].map(({ out, err }) => out + err).join('');
    expect(said).not.toContain(secret.slice(6));
  });

  test('keeps its streams and exit codes apart', async () => {
    const file = join(folder, 'cart.json');
    writeFileSync(file, cartText({ lang: 3 }));
    const [linted, unknown] = await Promise.all([
      faying(['lint', file]),
      faying(['fit', 'cart-1', 'nothing']),
    ]);
    expect([linted.code, linted.err]).toEqual([2, '']);
    expect(linted.out).toContain(`${file}: 1 fault, `);
    expect([unknown.code, unknown.out]).toEqual([2, '']);
  });

  test('says what is wrong with a database, and leaves it alone', async () => {
    const broken = join(folder, 'broken.sqlite');
    const text = 'This is a letter, and it is much longer than the header of a database. '.repeat(
      20,
    );
    writeFileSync(broken, text);
    const [letter, missing] = await Promise.all([
      faying(['publish', '-', '--database', broken], cartText()),
      faying(['editions', '--database', join(folder, 'none.sqlite')]),
    ]);
    expect([letter.code, letter.out]).toEqual([2, '']);
    expect(letter.err).toMatch(/^faying: .*broken\.sqlite .*\n\S.*\.\n$/);
    expect(readFileSync(broken, 'utf8')).toBe(text);
    expect([missing.code, missing.out]).toEqual([2, '']);
    expect(missing.err).toMatch(/^faying: .*none\.sqlite.*\n\S.*\.\n$/);
  });

  test('does not mind a reader that has seen enough', async () => {
    const { child, ended } = start(['fit', 'cart-1', 'box-b', '--json']);
    child.stdout?.destroy();
    expect(await ended).toMatchObject({ code: 0, err: '' });
  });
});

describe('the service as a process', () => {
  test.each(['SIGTERM', 'SIGINT'] as const)(
    'answers until %s, and ends in order',
    async (signal) => {
      const { child, ended } = start(['serve', '--port', '0', '--json', '--read-only']);
      const url = await urlOf(child);
      expect((await fetch(`${url}/readyz`)).status).toBe(200);
      const asked = await fetch(`${url}/v1/fit?vehicle=cart-1&part=box-b`);
      const said = await faying(['fit', 'cart-1', 'box-b', '--json']);
      expect(said.out).toBe(`${await asked.text()}\n`);
      child.kill(signal);
      expect(await ended).toMatchObject({ code: 0, err: `Stopped by ${signal}.\n` });
    },
  );

  test('answers from the demo without any database, and leaves nothing behind', async () => {
    const cwd = mkdtempSync(join(folder, 'empty-'));
    const words = ['serve', '--demo', '--read-only', '--port', '0', '--json'];
    const { child, ended } = start(words, { cwd, env: { TMPDIR: cwd } });
    const url = await urlOf(child);
    const question = `${url}/v1/fit?vehicle=lirren&part=bracket-20`;
    expect((await fetch(question)).status).toBe(410);
    expect((await fetch(`${question}&edition=1`)).status).toBe(200);
    child.kill('SIGTERM');
    expect(await ended).toMatchObject({ code: 0 });
    // But for what runs TypeScript here, which the package does without.
    expect(readdirSync(cwd).filter((name) => !name.startsWith('tsx-'))).toEqual([]);
  });

  test('says that a port is taken', async () => {
    const server = createServer();
    const port = await new Promise<number>((resolve) => {
      server.listen(0, '127.0.0.1', () => {
        const address = server.address();
        resolve(typeof address === 'object' && address !== null ? address.port : 0);
      });
    });
    const { code, out, err } = await faying(['serve', '--port', String(port)]);
    server.close();
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(new RegExp(`^faying: .*${port}.*\\n\\S.*--port`));
  });
});
