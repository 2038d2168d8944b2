/** What the environment tells the service: read once, and refused with every fault at once. */

import { describe, expect, test } from 'vitest';
import { type Config, ConfigFault, readConfig } from '../src/config.js';

/** What is said of each variable that is refused. */
function faultsOf(env: Record<string, string>): readonly string[] {
  try {
    readConfig(env);
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
