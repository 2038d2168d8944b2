/**
 * `Accept` and `Accept-Language`, read as RFC 9110 section 12.5 says.
 */

import { describe, expect, test } from 'vitest';
import { accepts, wishedLanguage } from '../../src/http/negotiation.js';

describe('JSON is taken', () => {
  test.each<[string | null]>([
    [null],
    ['*/*'],
    ['application/json'],
    ['APPLICATION/JSON'],
    ['application/*'],
    ['text/html, application/xhtml+xml, */*;q=0.8'],
    ['application/json;charset=utf-8;q=0.001'],
    ['text/html;q=0, application/json'],
    ['application/json, */*;q=0'],
    [''],
    ['no media range'],
    [`${'text/html,'.repeat(200)}application/json, */*`.slice(-30)],
  ])('%s', (header) => {
    expect(accepts(header, 'application/json')).toBe(true);
  });
});

describe('JSON is not taken', () => {
  test.each([
    ['text/html'],
    ['application/problem+json'],
    ['application/json;q=0'],
    ['application/json;q=0.000, */*'],
    ['application/*;q=0, */*;q=0.5'],
    ['text/*'],
    ['text/html, rubbish'],
  ])('%s', (header) => {
    expect(accepts(header, 'application/json')).toBe(false);
  });
});

describe('the wished language', () => {
  test.each<[string | null, string]>([
    [null, 'en'],
    ['en', 'en'],
    ['en-AU, en;q=0.5', 'en'],
    ['de', 'de'],
    ['de-AT', 'de'],
    ['DE-ch-1996', 'de'],
    ['fr, de;q=0.7, en;q=0.3', 'de'],
    ['de;q=0.7, en;q=0.8', 'en'],
    ['de, en', 'de'],
    ['en, de', 'en'],
    ['de;q=0, *', 'en'],
    ['den', 'en'],
    ['tlh', 'en'],
    ['*', 'en'],
    ['en;q=0', 'en'],
    ['en;q=7', 'en'],
    ['', 'en'],
    [';;;,,,=', 'en'],
  ])('%s: %s', (header, language) => {
    expect(wishedLanguage(header)).toBe(language);
  });
});
