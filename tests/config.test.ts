/** What the environment tells the service: read once, and refused with every fault at once. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { type Config, ConfigFault, readConfig, readWebhooks } from '../src/config.js';

/** What is said of each variable that is refused. */
function faultsOf(
  env: Record<string, string>,
  read: (env: Record<string, string>) => unknown = readConfig,
): readonly string[] {
  try {
    read(env);
    return [];
  } catch (error) {
    if (error instanceof ConfigFault) return error.faults;
    throw error;
  }
}

describe('the environment', () => {
  test('that says nothing, or nothing but space, leaves what is usual', () => {
    const usual: Config = {
      port: 8080,
      host: '127.0.0.1',
      database: './faying.sqlite',
      corsOrigins: [],
      open: ['public'],
      logLevel: 'info',
      answerCacheBytes: 64_000_000,
    };
    expect(readConfig({})).toEqual(usual);
    expect(readConfig({ FAYING_PORT: '', FAYING_ANSWER_CACHE_BYTES: ' ' })).toEqual(usual);
    expect(readConfig({ PORT: '1', FAYING_OTHER: 'x' })).toEqual(usual);
  });

  test('is read', () => {
    const env = {
      FAYING_PORT: '0',
      FAYING_HOST: '::1',
      FAYING_DATABASE: '/srv/a.sqlite',
      FAYING_CORS_ORIGINS: 'https://shop.example, http://localhost:3000,https://shop.example',
      FAYING_OPEN: 'batch, full',
      FAYING_LOG_LEVEL: 'silent',
      FAYING_ANSWER_CACHE_BYTES: '0',
    };
    expect(readConfig(env)).toEqual({
      port: 0,
      host: '::1',
      database: '/srv/a.sqlite',
      corsOrigins: ['https://shop.example', 'http://localhost:3000'],
      open: ['full', 'batch'],
      logLevel: 'silent',
      answerCacheBytes: 0,
    });
  });

  test('cannot be changed afterwards', () => {
    const config = readConfig({ FAYING_CORS_ORIGINS: 'https://shop.example' });
    expect(Object.isFrozen(config)).toBe(true);
    expect(Object.isFrozen(config.corsOrigins)).toBe(true);
  });

  test.each([
    ['FAYING_PORT', ['-1', '65536', '80.0', 'http', '123456']],
    ['FAYING_HOST', ['a b', 'http://x', 'x:80', '[::1]', '-x']],
    ['FAYING_OPEN', ['all', 'publish', 'none,public', 'public,', 'trade trade', 'full,full']],
    ['FAYING_CORS_ORIGINS', ['*', 'shop.example', 'https://shop.example/', 'ftp://x', ',']],
    ['FAYING_LOG_LEVEL', ['loud', 'INFO']],
    ['FAYING_ANSWER_CACHE_BYTES', ['-1', '64MB', '1e6', '0.5', 'off', '1234567890123']],
  ])('%s is refused where it is no such thing', (name, values) => {
    for (const value of values) {
      expect(faultsOf({ [name]: value })).toEqual([
        expect.stringMatching(new RegExp(`^${name} is ".*"; it is (a|one) .+\\.$`)),
      ]);
    }
  });

  test('with several faults has all of them told', () => {
    expect(faultsOf({ FAYING_PORT: 'x', FAYING_ANSWER_CACHE_BYTES: 'x' })).toHaveLength(2);
  });
});

describe('who is told of what is published', () => {
  const folder = mkdtempSync(join(tmpdir(), 'faying-config-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const path = join(folder, 'webhooks.json');
  const env = { FAYING_WEBHOOKS: path };
  const KEY = Buffer.alloc(32, 7);
  const SECRET = `whsec_${KEY.toString('base64')}`;

  function write(value: unknown): void {
    writeFileSync(path, typeof value === 'string' ? value : JSON.stringify(value));
  }

  const shop = { name: 'shop', url: 'https://shop.example/hooks', secrets: [SECRET] };

  test('is nobody where the environment names no file', () => {
    expect(readWebhooks({})).toBeNull();
    expect(readWebhooks({ FAYING_WEBHOOKS: ' ' })).toBeNull();
  });

  test('is read', () => {
    const own = { ...shop, name: 'own', url: 'http://10.0.0.1:81/', allowPrivate: true };
    write({ service: 'https://fits.example/faying', receivers: [shop, own] });
    expect(readWebhooks(env)).toEqual({
      service: 'https://fits.example/faying',
      receivers: [
        {
          name: 'shop',
          url: new URL(shop.url),
          secrets: [new Uint8Array(KEY)],
          allowsPrivate: false,
        },
        {
          name: 'own',
          url: new URL(own.url),
          secrets: [new Uint8Array(KEY)],
          allowsPrivate: true,
        },
      ],
    });
    write({ receivers: [] });
    expect(readWebhooks(env)).toEqual({ service: null, receivers: [] });
  });

  test.each([
    [{ receivers: [{ ...shop, url: 'http://shop.example' }] }, 'receivers[0].url'],
    [{ receivers: [{ ...shop, url: 'ftp://x', allowPrivate: true }] }, 'receivers[0].url'],
    [{ receivers: [{ ...shop, url: 'https://a:b@shop.example' }] }, 'receivers[0].url'],
    [{ receivers: [{ ...shop, url: 'shop' }] }, 'receivers[0].url'],
    [{ receivers: [{ ...shop, name: 'a b' }] }, 'receivers[0].name'],
    [{ receivers: [{ ...shop, secrets: [] }] }, 'receivers[0].secrets'],
    [{ receivers: [{ ...shop, secrets: SECRET }] }, 'receivers[0].secrets'],
    [{ receivers: [{ ...shop, secrets: [SECRET, `${SECRET}!`] }] }, 'receivers[0].secrets[1]'],
    [{ receivers: [{ ...shop, secrets: [SECRET.slice(6)] }] }, 'receivers[0].secrets[0]'],
    [
      { receivers: [{ ...shop, secrets: [`whsec_${btoa('too short')}`] }] },
      'receivers[0].secrets[0]',
    ],
    [{ receivers: [{ ...shop, secrets: [`whsec_${'A'.repeat(96)}`] }] }, 'receivers[0].secrets[0]'],
    [{ receivers: [{ ...shop, allowPrivate: 'yes' }] }, 'receivers[0].allowPrivate'],
    [{ receivers: [{ ...shop, secret: SECRET }] }, 'receivers[0]'],
    [{ receivers: [shop, shop] }, 'receivers'],
    [{ receivers: shop }, 'receivers'],
    [{ service: 'fits.example', receivers: [shop] }, 'service'],
    [{ service: 'https://fits.example/', receivers: [shop] }, 'service'],
    [{}, 'receivers'],
    [{ receivers: [shop], more: SECRET }, 'the file'],
    [[], 'the file'],
  ])('is refused where it cannot be, and no value is repeated: %j', (value, at) => {
    write(value);
    const faults = faultsOf(env, readWebhooks);
    expect(faults).toEqual([expect.stringContaining(`FAYING_WEBHOOKS: ${at} `)]);
    expect(faults.join()).not.toContain(SECRET.slice(6, 20));
    expect(faults.join()).not.toContain('shop.example');
  });

  test('is refused with every fault at once', () => {
    const faulty = { name: '', url: 'x', secrets: ['x'], allowPrivate: 1 };
    write({ service: 1, receivers: [faulty, { ...shop, name: 2, url: 'http://shop.example' }] });
    const places = faultsOf(env, readWebhooks).map((fault) => fault.split(' ')[1] ?? '');
    expect(places.sort()).toEqual([
      'receivers[0].allowPrivate',
      'receivers[0].name',
      'receivers[0].secrets[0]',
      'receivers[0].url',
      'receivers[1].name',
      'receivers[1].url',
      'service',
    ]);
  });

  test('is refused where there is no such file, or no JSON in it', () => {
    write(`{"receivers": [{"secrets": ["${SECRET}"`);
    expect(faultsOf(env, readWebhooks)).toEqual([`FAYING_WEBHOOKS: ${path} is no JSON.`]);
    const none = { FAYING_WEBHOOKS: join(folder, 'none') };
    expect(faultsOf(none, readWebhooks)).toEqual([
      `FAYING_WEBHOOKS: ${join(folder, 'none')} cannot be read (ENOENT).`,
    ]);
  });
});
