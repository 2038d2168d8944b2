/**
 * A problem is told in the language of its question: `lang` where it can be read, else what the
 * client wishes for, else English. Caches are told what decided it.
 */

import { describe, expect, test } from 'vitest';
import { problemSchema } from '../../src/contract/problem.js';
import { rigOf } from './fixture.js';
import { raw, serve } from './socket.js';

const { app } = rigOf();
const URL = '/v1/fit?vehicle=cart-1&part=box-aa';

interface Asked {
  readonly header?: string;
  readonly body?: string;
  readonly method?: string;
}

async function ask(url: string, { header, body, method = 'POST' }: Asked = {}) {
  const headers: Record<string, string> = { 'content-type': 'application/json' };
  if (header !== undefined) headers['accept-language'] = header;
  const response = await app.request(
    url,
    body === undefined ? { headers } : { method, headers, body },
  );
  const { lang, title, detail, errors } = problemSchema.parse(await response.json());
  expect(response.headers.get('content-language')).toBe(lang);
  const [first] = errors;
  return { lang, title, detail, errors, first, vary: response.headers.get('vary') };
}

const ENGLISH = 'There is no part "box-aa". Did you mean \'box-a\'?';
const GERMAN = 'Es gibt kein Teil „box-aa“. War „box-a“ gemeint?';

describe('a problem of a question in a URL', () => {
  test.each([
    ['', undefined, 'en', 'Accept-Language'],
    ['', 'de', 'de', 'Accept-Language'],
    ['', 'fr, de;q=0.5, en;q=0.1', 'de', 'Accept-Language'],
    ['', 'fr', 'en', 'Accept-Language'],
    ['&lang=de', 'en', 'de', null],
    ['&lang=de-AT', 'en', 'de', null],
    ['&lang=%64e', 'en', 'de', null],
    // A language that is not spoken gets English, whatever the client wishes for besides.
    ['&lang=fr', 'de', 'en', null],
  ])('…%s, for a client that wishes for %s: %s', async (more, header, lang, vary) => {
    const asked = await ask(`${URL}${more}`, header === undefined ? {} : { header });
    expect(asked).toMatchObject({ lang, vary });
    expect(asked.detail).toBe(lang === 'de' ? GERMAN : ENGLISH);
    expect(asked.first?.text).toBe(asked.detail);
    expect(asked.title).toBe(lang === 'de' ? 'Dieses Teil gibt es nicht' : 'There is no such part');
  });

  test.each([
    ['lang=de_DE', 'not-a-language-tag'],
    ['lang=', 'not-a-language-tag'],
    ['lang=en&lang=en', 'repeated-parameter'],
    ['lang=%ff', 'malformed-encoding'],
  ])('that cannot be read: %s', async (search, code) => {
    const asked = await ask(`${URL}&${search}`, { header: 'de' });
    expect(asked).toMatchObject({ lang: 'de', vary: 'Accept-Language' });
    expect(asked.errors.map((fault) => fault.code)).toEqual([code]);
  });

  test('that has other faults besides', async () => {
    const asked = await ask(`${URL}&x=1&lang=de`);
    expect(asked).toMatchObject({ lang: 'de', vary: null });
    expect(asked.detail).toBe('x: Hier gibt es keinen Parameter „x“.');
  });

  test('nobody answers at all', async () => {
    const asked = await ask('/nowhere?lang=de');
    expect(asked.detail).toBe('Unter /nowhere gibt es nichts.');
    expect(asked.vary).toBeNull();
  });
});

test('what a shared cache keeps for one client is not given to another', async () => {
  const texts: string[] = [];
  for (const header of ['de', 'en']) {
    const response = await app.request(URL, { headers: { 'accept-language': header } });
    expect(response.headers.get('cache-control')).toBe('public, max-age=30');
    expect(response.headers.get('vary')).toBe('Accept-Language');
    texts.push(await response.text());
  }
  expect(new Set(texts).size).toBe(2);
});

describe('a problem of a question in a body', () => {
  const body = (more: object) => JSON.stringify({ vehicle: 'cart-1', part: 'box-aa', ...more });

  test.each(['POST', 'QUERY'])('by %s', async (method) => {
    const asked = await ask('/v1/fit', { body: body({ lang: 'de' }), header: 'en', method });
    expect(asked).toMatchObject({ lang: 'de', detail: GERMAN, vary: null });
    const wished = await ask('/v1/fit', { body: body({}), header: 'de', method });
    expect(wished).toMatchObject({ lang: 'de', detail: GERMAN, vary: 'Accept-Language' });
  });

  test('of which the form is at fault', async () => {
    const asked = await ask('/v1/fit', { body: body({ lang: 'de', x: 1 }) });
    expect(asked).toMatchObject({ lang: 'de', detail: '/x: Hier gibt es kein Feld „x“.' });
  });

  test.each([7, null, '', '../../etc'])('with a language that is none: %j', async (lang) => {
    const asked = await ask('/v1/fit', { body: body({ lang }), header: 'de' });
    expect(asked).toMatchObject({ lang: 'de', vary: 'Accept-Language' });
  });

  test.each(['[]', 'null', '"de"', '{"lang": "de"'])('that is no question: %s', async (text) => {
    const asked = await ask('/v1/fit', { body: text, header: 'de' });
    expect(asked).toMatchObject({ lang: 'de', vary: 'Accept-Language' });
  });

  test('what the domain says of a face keeps its own language, and says so', async () => {
    const inline = { kind: 'cart-flang', side: 'recess' };
    const face = JSON.stringify({ a: { part: 'box-a' }, b: { inline }, lang: 'de' });
    const { lang, first } = await ask('/v1/mate', { body: face });
    expect(lang).toBe('de');
    expect(first).toMatchObject({ code: 'face-at-fault', data: { because: 'unknown-kind' } });
    expect(first).toMatchObject({
      lang: 'en',
      text: expect.stringContaining("Did you mean 'cart-"),
    });
  });
});

describe('the pages of problems', () => {
  test.each([
    ['', 'de', 'de', 'Accept-Language'],
    ['?lang=de', 'en', 'de', null],
    ['', '', 'en', 'Accept-Language'],
  ])('%s, for a client that wishes for "%s": %s', async (search, header, lang, vary) => {
    const title = lang === 'de' ? 'Dieses Teil gibt es nicht' : 'There is no such part';
    for (const path of ['/problems', '/problems/unknown-part']) {
      const page = await app.request(`${path}${search}`, {
        headers: { 'accept-language': header },
      });
      expect(page.status).toBe(200);
      expect(page.headers.get('content-language')).toBe(lang);
      expect(page.headers.get('vary')).toBe(vary);
      expect(await page.text()).toContain(title);
    }
  });

  test('take nothing else', async () => {
    expect(await ask('/problems?lang=de&x=1')).toMatchObject({ lang: 'de' });
    expect(await ask('/problems/nope?lang=de')).toMatchObject({
      detail: 'Es gibt keine Art von Problem /problems/nope.',
    });
  });
});

test('what goes to no route is refused in English, or as the client wishes', async () => {
  const { server } = await serve();
  const expecting =
    'GET /livez?lang=de HTTP/1.1\r\nhost: x\r\nexpect: more\r\nconnection: close\r\n';
  expect(await raw(server, `${expecting}\r\n`)).toContain('content-language: de');
  const wishing = expecting.replace('?lang=de', '').concat('accept-language: de\r\n\r\n');
  expect(await raw(server, wishing)).toContain('"lang":"de"');
  expect(await raw(server, 'garbage\r\n\r\n')).toContain('content-language: en');
});
