/**
 * Every problem that a route says it can answer with, provoked on that route, and nothing else:
 * the table here and the contract name the same codes. What is refused before there is a route
 * comes at the end, what never becomes a request is for the server's own test.
 */

import { describe, expect, test } from 'vitest';
import { OPERATIONS } from '../../src/contract/operations.js';
import { type ProblemWire, problemSchema } from '../../src/contract/problem.js';
import type { FaultCode } from '../../src/contract/problems/fault.js';
import type { ProblemCode } from '../../src/contract/problems/problem-type.js';
import { problemWords } from '../../src/contract/problems/words.js';
import { PROBLEM_OF_FAULT } from '../../src/http/fault-problems.js';
import { problemsOf } from '../../src/http/openapi-responses.js';
import { PROBLEM_CODES, PROBLEMS } from '../../src/http/problem.js';
import { json, rigOf } from './fixture.js';
import { buggy, damaged, failing, LONG, PROVOCATIONS, provoke, SECRET } from './provocations.js';

/** The type that the faults of a problem are of; faults of several make a question invalid. */
function typeOfFaults({ errors }: ProblemWire): ProblemCode | undefined {
  const [first, ...others] = new Set(errors.map(({ code }) => PROBLEM_OF_FAULT[code as FaultCode]));
  return others.length > 0 ? 'invalid-question' : first;
}

describe.each(Object.entries(PROVOCATIONS))('%s', (operationId, provocations) => {
  test.each(provocations.map((one) => [one.code, one.url.slice(0, 60), one] as const))(
    '%s: %s',
    async (code, _, provocation) => {
      const rig = rigOf(provocation.rig);
      const response = await provoke(provocation, rig);
      const problem = problemSchema.parse(await response.json());
      const { status, retry } = PROBLEMS[code];
      const { title } = problemWords('en').problems[code];
      expect(problem).toMatchObject({ code, status, title, retry, ...provocation.says });
      expect(problem.type).toBe(`/problems/${code}`);
      expect(typeOfFaults(problem) ?? code).toBe(code);
      expect(response.status).toBe(status);
      expect(response.headers.get('content-type')).toBe('application/problem+json');
      expect(response.headers.get('x-request-id')).toBe(problem.instance);
      expect(response.headers.get('retry-after')).toBe(status === 503 ? '5' : null);
      expect(JSON.stringify(problem)).not.toContain(SECRET);
      const isLogged = rig.lines.some((line) => JSON.stringify(line).includes(SECRET));
      expect(isLogged).toBe([damaged, buggy, failing].some((one) => one === provocation.rig));
    },
  );

  test('these are the problems that the contract names', () => {
    const operation = OPERATIONS.find((one) => one.operationId === operationId);
    if (operation === undefined) throw new Error('no such operation');
    const named = new Set(provocations.map(({ code }) => code));
    expect([...named].sort()).toEqual([...problemsOf(operation)].sort());
  });
});

test('every operation is in the table', () => {
  const ids = OPERATIONS.map(({ operationId }) => operationId);
  expect(Object.keys(PROVOCATIONS).sort()).toEqual(ids.sort());
});

describe('whatever path is asked', () => {
  test('one that is not there', async () => {
    const { client } = rigOf();
    for (const path of [
      '/',
      '/v1',
      '/v1/fit/',
      '/V1/fit',
      '/v1/fits',
      '/__proto__',
      '/%00',
      '/%',
    ]) {
      const response = await client.get(path);
      expect([path, response.status]).toEqual([path, 404]);
      expect(problemSchema.parse(json(response)).code).toBe('unknown-path');
    }
    const long = await client.get(`/${LONG}`);
    expect([long.status, json(long).code]).toEqual([414, 'url-too-long']);
  });

  test.each([
    ['put', '/v1/fit', 'GET, HEAD, POST, QUERY, OPTIONS'],
    ['delete', '/v1/mate', 'GET, HEAD, POST, QUERY, OPTIONS'],
    ['get', '/v1/inspect', 'POST, QUERY, OPTIONS'],
    ['patch', '/v1/inspect', 'POST, QUERY, OPTIONS'],
    ['post', '/v1/editions', 'GET, HEAD, OPTIONS'],
    ['post', '/livez', 'GET, HEAD, OPTIONS'],
    ['trace', '/readyz', 'GET, HEAD, OPTIONS'],
    ['post', '/openapi.json', 'GET, HEAD, OPTIONS'],
    ['post', '/problems', 'GET, HEAD, OPTIONS'],
  ] as const)('a method that it does not take: %s %s', async (method, path, allow) => {
    const { client } = rigOf();
    const response = await client[method](path);
    expect([response.status, response.headers.allow]).toEqual([405, allow]);
    expect(problemSchema.parse(json(response)).code).toBe('method-not-allowed');
    const options = await client.options(path);
    expect([options.status, options.headers.allow, options.text]).toEqual([204, allow, '']);
  });
});

test('every type of problem is provoked somewhere', () => {
  const routed = Object.values(PROVOCATIONS).flatMap((some) => some.map(({ code }) => code));
  const here = ['unknown-path', 'method-not-allowed', 'unknown-problem', 'unknown-calculation'];
  // What never becomes a request: see the test of the server.
  const early = ['request-timeout', 'expectation-failed', 'headers-too-large'];
  expect([...new Set([...routed, ...here, ...early])].sort()).toEqual([...PROBLEM_CODES].sort());
});
