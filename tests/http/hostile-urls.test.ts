/**
 * The same in a URL and in headers: nothing that is not meant gets an answer, or leads anywhere.
 */

import { describe, expect, test } from 'vitest';
import { FIT, json, refused, rigOf } from './fixture.js';

const rig = rigOf();

describe('a URL', () => {
  const cases: readonly (readonly [string, string, string])[] = [
    ['part=box-a', 'part', 'repeated-parameter'],
    ['vehicle', 'vehicle', 'repeated-parameter'],
    ['PART=x', 'PART', 'unknown-parameter'],
    ['__proto__=x', '__proto__', 'unknown-parameter'],
    ['constructor=x', 'constructor', 'unknown-parameter'],
    ['with.__proto__=x', 'with.__proto__', 'unknown-parameter'],
    ['with.=x', 'with.', 'unknown-parameter'],
    ['with=x', 'with', 'unknown-parameter'],
    ['=x', '', 'unknown-parameter'],
    ['position=%00', 'position', 'not-a-place'],
    ['position=%ff', 'position', 'malformed-encoding'],
    ['position=%', 'position', 'malformed-encoding'],
    ['position=%ed%a0%80', 'position', 'malformed-encoding'],
    ['edition=0', 'edition', 'too-small'],
    ['edition=1.5', 'edition', 'wrong-type'],
    ['edition=1e1', 'edition', 'wrong-type'],
    ['edition=99999999999999999999', 'edition', 'wrong-type'],
    ['edition=', 'edition', 'wrong-type'],
    ['lang=../../etc', 'lang', 'not-a-language-tag'],
    ['changes=YES', 'changes', 'not-one-of'],
    ['ignorePresent=1', 'ignorePresent', 'wrong-type'],
    ['use=race', 'use', 'not-one-of'],
    ['fitted.engine=', 'fitted.engine', 'empty-text'],
    ['adapter.box-shaft=,', 'adapter.box-shaft', 'empty-text'],
    ['_method=DELETE', '_method', 'unknown-parameter'],
    ['x&'.repeat(3000), 'x', 'unknown-parameter'],
  ];

  test.each(cases)('…&%.40s', async (more, parameter, code) => {
    const { errors, ...problem } = await refused(await rig.app.request(`${FIT}&${more}`));
    expect([problem.status, problem.code]).toEqual([400, 'invalid-request']);
    expect(errors.find((fault) => fault.parameter === parameter)?.code).toBe(code);
    expect(problem.size).toBeLessThan(10_000);
  });

  test.each([
    '/../etc/passwd',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/problems/..%2f..%2fpackage.json',
    '/problems/__proto__',
    '/problems/constructor',
    '/openapi.json/',
    '/openapi/openapi.json',
    '/v1//fit',
    '/.git/config',
  ])('leads nowhere else: %s', async (path) => {
    expect((await refused(await rig.app.request(path))).status).toBe(404);
  });

  test('of another spelling has the same answer, under the one address', async () => {
    const { client } = rigOf();
    const plain = await client.get(FIT).expect(200);
    const escaped = await client.get(FIT.replace('fit', '%66it')).expect(200);
    expect(escaped.headers['content-location']).toBe(plain.headers['content-location']);
    expect(escaped.headers.etag).toBe(plain.headers.etag);
  });
});

test.each(['text/html', 'application/xml, text/*', 'application/json;q=0, */*', '*/*;q=0'])(
  'nobody is sent what they do not take: %s',
  async (accept) => {
    const { client } = rigOf();
    const response = await client.get(FIT).set('accept', accept);
    expect([response.status, json(response).code]).toEqual([406, 'not-acceptable']);
  },
);
