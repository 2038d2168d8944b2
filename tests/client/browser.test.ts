/**
 * The client needs nothing that browsers have not: it is bundled for one, and runs in a world
 * that has what the Web has and nothing of Node.
 */

import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';

/** One script of an entry, as a page would have it; warnings and Node's own modules are refused. */
async function scriptOf(entry: string): Promise<string> {
  const { outputFiles, warnings } = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    globalName: 'faying',
    target: 'es2022',
    logLevel: 'silent',
  });
  expect(warnings).toEqual([]);
  return outputFiles.map(({ text }) => text).join('');
}

/** What the client uses of the Web, and no more: there is no `process`, `Buffer` or `require`. */
const WEB = {
  AbortController,
  AbortSignal,
  DOMException,
  Headers,
  ReadableStream,
  Request,
  Response,
  FormData,
  TextDecoder,
  TextEncoder,
  URL,
  URLSearchParams,
  clearTimeout,
  setTimeout,
};

interface Faying {
  readonly FayingClient: new (
    options: object,
  ) => {
    get(path: string, init: object): Promise<{ readonly verdict: string }>;
  };
  readonly readQuantity: (text: string, options: object) => object;
}

describe('in a world without Node', () => {
  test('quantities are read exactly', async () => {
    const script = `${await scriptOf('src/client/client.ts')};faying`;
    const { readQuantity } = runInNewContext(script, { ...WEB }) as Faying;
    const read = readQuantity('43/12', { type: 'ratio', dimension: '1' });
    expect({ ...read }).toEqual({ ok: true, text: '43/12', low: '43/12', high: '43/12', unit: '' });
  });

  test('questions are asked by the fetch of the page', async () => {
    const asked: string[] = [];
    const fetch = async ({ url }: Request) => {
      asked.push(url);
      return Response.json({ verdict: 'fits' });
    };
    const script = `${await scriptOf('src/client/client.ts')};faying`;
    const { FayingClient } = runInNewContext(script, { ...WEB, fetch }) as Faying;
    const client = new FayingClient({ baseUrl: 'http://fits.example' });
    const query = { vehicle: 'lirren-1', part: 'bracket-20' };
    expect(await client.get('/v1/fit', { params: { query } })).toEqual({ verdict: 'fits' });
    expect(asked).toEqual(['http://fits.example/v1/fit?vehicle=lirren-1&part=bracket-20']);
  });

  test('and what is bundled with a module of Node is caught', async () => {
    await expect(scriptOf('tests/client/running-service.ts')).rejects.toThrow(/node:/);
  });
});

test('the script of the element is one file, and small', async () => {
  const script = await scriptOf('src/client/element-script.ts');
  expect(script).not.toMatch(/\bimport\s*\(|\brequire\(/);
  expect(script.length).toBeLessThan(60_000);
});
