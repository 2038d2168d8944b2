/**
 * Bodies of somebody who means no good, or whose program has gone wrong: each gets a problem that
 * says what and where, in few words however many there were in the question.
 */

import { describe, expect, test } from 'vitest';
import { type Rig, refused, rigOf, zeros } from './fixture.js';

const rig = rigOf();

async function post(path: string, body: string | Uint8Array<ArrayBuffer>, by: Rig = rig) {
  const headers = { 'content-type': 'application/json' };
  return refused(await by.app.request(path, { method: 'POST', headers, body }));
}

const first = async (asked: ReturnType<typeof refused>) => {
  const { status, code, errors } = await asked;
  return [status, code, errors[0]?.pointer ?? errors[0]?.parameter, errors[0]?.code];
};

const CART = '"vehicle":"cart-1"';
const asFace = (face: string) => `{"a":{"part":"box-a"},"b":{"inline":${face}}}`;
const FLANGE = '"kind":"cart-flange","side":"recess"';

describe('a body', () => {
  const INVALID = 'invalid-request';
  const UNSEEN = 'unseen-characters';
  const cases: readonly (readonly [string, string, string, string, string, string])[] = [
    ['null', '/v1/inspect', 'null', INVALID, '', 'wrong-type'],
    ['a list', '/v1/inspect', '[]', INVALID, '', 'wrong-type'],
    ['NUL', '/v1/inspect', '{"vehicle":"a\\u0000"}', INVALID, '/vehicle', UNSEEN],
    ['half a character', '/v1/inspect', '{"vehicle":"\\ud800"}', INVALID, '/vehicle', UNSEEN],
    [
      'a field named by half a character',
      '/v1/inspect',
      `{${CART},"\\ud800":1}`,
      INVALID,
      '/\ud800',
      'unknown-field',
    ],
    [
      'a field twice',
      '/v1/inspect',
      `{"vehicle":"x",${CART}}`,
      INVALID,
      '/vehicle',
      'repeated-name',
    ],
    [
      '__proto__',
      '/v1/inspect',
      `{${CART},"__proto__":{}}`,
      INVALID,
      '/__proto__',
      'reserved-name',
    ],
    [
      '__proto__ inside',
      '/v1/inspect',
      `{${CART},"fitted":{"__proto__":"x"}}`,
      INVALID,
      '/fitted/__proto__',
      'reserved-name',
    ],
    [
      '__proto__ of a face',
      '/v1/mate',
      asFace(`{${FLANGE},"__proto__":{"pattern":"f1"}}`),
      INVALID,
      '/b/inline/__proto__',
      'reserved-name',
    ],
    [
      'the name of a method as a kind',
      '/v1/mate',
      asFace('{"kind":"constructor","side":"recess"}'),
      'invalid-question',
      '/b/inline/kind',
      'face-at-fault',
    ],
    [
      'the name of a method as a parameter',
      '/v1/mate',
      asFace(`{${FLANGE},"constructor":"x"}`),
      'invalid-question',
      '/b/inline/constructor',
      'face-at-fault',
    ],
    [
      'the name of a method as a place',
      '/v1/inspect',
      `{${CART},"fitted":{"constructor":"none"}}`,
      'unknown-position',
      '/fitted/constructor',
      'unknown-position',
    ],
    [
      'a number that is none',
      '/v1/mate',
      asFace(`{${FLANGE},"register":1e400}`),
      'invalid-question',
      '/b/inline/register',
      'face-at-fault',
    ],
    [
      'a part and a face in one end',
      '/v1/mate',
      '{"a":{"part":"box-a","inline":{}},"b":{"part":"shaft-a"}}',
      INVALID,
      '/a/inline',
      'unknown-field',
    ],
  ];

  test.each(cases)('%s', async (_, path, body, code, pointer, fault) => {
    const status = code === INVALID ? 400 : 422;
    const found = await first(post(path, body));
    expect(found).toEqual([status, code, pointer, fault]);
  });

  test('in no UTF-8', async () => {
    const problem = await post('/v1/inspect', new Uint8Array([0x22, 0xff, 0x22]));
    expect([problem.status, problem.code]).toEqual([400, 'malformed-json']);
    expect(problem.detail).toBe('The body is no text in UTF-8.');
  });

  test.each([
    ['', 'line 1, column 1'],
    ['{"vehicle":"cart-1"', 'line 1, column 20'],
    ['{"vehicle":\n"cart-1",}', 'line 2, column 10'],
    ['{"vehicle":"cart-1"} x', 'line 1, column 22'],
    ['{"vehicle":"a\u0000"}', 'line 1, column 14'],
  ])('that is no JSON: %j', async (body, where) => {
    const problem = await post('/v1/inspect', body);
    expect([problem.status, problem.code]).toEqual([400, 'malformed-json']);
    expect(problem.detail).toContain(where);
  });

  test.each([
    [undefined, 'unsupported-media-type'],
    ['text/plain', 'unsupported-media-type'],
    ['application/vnd.api+json', 'unsupported-media-type'],
    ['application/json; charset=iso-8859-1', 'unsupported-media-type'],
    ['multipart/form-data; boundary=x', 'unsupported-media-type'],
  ])('of type %s', async (type, code) => {
    const headers: Record<string, string> = type === undefined ? {} : { 'content-type': type };
    const body = new TextEncoder().encode(`{${CART}}`);
    const response = await rig.app.request('/v1/inspect', { method: 'POST', headers, body });
    expect(response.headers.get('accept')).toBe('application/json');
    expect(await refused(response)).toMatchObject({ status: 415, code });
  });

  test('that is packed', async () => {
    const headers = { 'content-type': 'application/json', 'content-encoding': 'gzip' };
    const response = await rig.app.request('/v1/inspect', { method: 'POST', headers, body: '{}' });
    expect(response.headers.get('accept-encoding')).toBe('identity');
    expect((await refused(response)).code).toBe('unsupported-media-type');
  });
});

describe('more of it than anybody reads', () => {
  const many = (count: number, name: (index: number) => string) =>
    Array.from({ length: count }, (_, index) => `"${name(index)}":0`).join(',');
  const own = rigOf();

  test.each([
    [10, 'wrong-type', 422],
    [2000, 'too-deep', 400],
    [100_000, 'too-many-values', 400],
  ])('nested %i deep', async (depth, fault, status) => {
    const nested = `${'['.repeat(depth)}${']'.repeat(depth)}`;
    const problem = await post('/v1/inspect', `{"vehicle":${nested}}`);
    expect([problem.code, problem.errors[0]?.code]).toEqual(['invalid-request', fault]);
    const face = await post('/v1/mate', asFace(`{${FLANGE},"register":${nested}}`));
    expect(face.status).toBe(status);
  });

  test.each([
    ['fields', `{${CART},${many(6000, String)}}`],
    ['places', `{${CART},"fitted":{${many(6000, (n) => `p${n}`)}}}`],
    ['adapters', `{${CART},"adapters":{"box-shaft":[${'"x",'.repeat(6000)}"x"]}}`],
    ['values', asFace(`{${FLANGE},"register":{"choose":{"of":[${'1,'.repeat(6000)}1]}}}`)],
  ])('too many %s to be looked at one by one', async (_, body) => {
    const path = body.includes('inline') ? '/v1/mate' : '/v1/inspect';
    const problem = await post(path, body, own);
    expect(problem).toMatchObject({ code: 'invalid-request', errors: [{ pointer: '' }] });
    expect(problem.errors[0]).toMatchObject({ code: 'too-many-values' });
    expect(problem.detail).toBe('There are more than 5000 values in it.');
    expect(own.judged).toEqual(zeros());
  });

  test('only the first faults are told', async () => {
    const problem = await post('/v1/inspect', `{${CART},${many(4000, String)}}`);
    expect(problem.errors).toHaveLength(50);
    expect(problem.detail).toBe('/0: There is no field "0" here. And more than 49 others.');
    const faces = await post('/v1/mate', asFace(`{${FLANGE},${many(4000, (n) => `a${n}`)}}`));
    expect(faces.errors).toHaveLength(50);
    const few = await post('/v1/inspect', `{${CART},${many(3, String)}}`);
    expect(few.detail).toContain('And 2 more faults.');
  });

  test('long names deep inside are not repeated for each fault', async () => {
    const outer = Array.from({ length: 28 }, (_, depth) => `{"${String(depth).repeat(5000)}":`);
    const inner = `{${'"a":0,'.repeat(4000)}"a":0}${'}'.repeat(28)}`;
    const problem = await post('/v1/inspect', `{${CART},"x":${outer.join('')}${inner}}`);
    expect(problem.errors[0]).toMatchObject({ pointer: '/x', code: 'repeated-name' });
    expect(problem.size).toBeLessThan(10_000);
  });

  test.each([
    ['/v1/inspect', `{${CART},"${'x'.repeat(500_000)}":0}`, ''],
    ['/v1/inspect', `{${CART},"fitted":{"${'X'.repeat(500_000)}":"none"}}`, '/fitted'],
    ['/v1/mate', asFace(`{${FLANGE},"${'X'.repeat(500_000)}":0}`), '/b/inline'],
    ['/v1/mate', asFace(`{"kind":"${'x'.repeat(500_000)}"}`), '/b/inline/kind'],
    ['/v1/inspect', `{"vehicle":"${'x'.repeat(500_000)}"}`, '/vehicle'],
    ['/v1/inspect', `{${CART},"torque":"${'9'.repeat(500_000)} N.m"}`, '/torque'],
  ])('nor are long ones: %s %.40s', async (path, body, pointer) => {
    const problem = await post(path, body);
    expect(problem.errors[0]?.pointer).toBe(pointer);
    expect(problem.size).toBeLessThan(2000);
  });
});

test('what is not to be seen is shown by a sign, what is a pointer stays exact', async () => {
  const problem = await post('/v1/inspect', `{${CART},"a\\u001b[31m\\u202e":1}`);
  expect(problem.errors[0]).toMatchObject({
    pointer: '/a\u001b[31m\u202e',
    text: 'There is no field "a\ufffd[31m\ufffd" here.',
  });
  expect(problem.detail).not.toMatch(/[\p{Cc}\p{Bidi_Control}]/u);
});
