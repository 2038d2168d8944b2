/**
 * What the service says over HTTP against the published document, by a validator that is not ours:
 * status, body and every header of each answer, of each word that it still holds, and of each
 * problem that an operation names.
 */

import { pino } from 'pino';
import { afterAll, describe, expect, test } from 'vitest';
import { exampleService, refusedRequests } from '../../scripts/example-service.js';
import { needOf } from '../../src/contract/access.js';
import { EXAMPLE_REQUESTS } from '../../src/contract/examples.js';
import { OPERATIONS } from '../../src/contract/operations.js';
import { problemSchema } from '../../src/contract/problem.js';
import { isWithin, VIEWS } from '../../src/contract/view.js';
import { problemsOf } from '../../src/http/openapi-responses.js';
import { PROVOCATIONS, type Provocation, provoke } from '../http/provocations.js';
import { complaints, describedOf, headerComplaints, responseSchema } from './published-document.js';

const SHOP = 'https://shop.example';
const service = exampleService({ log: pino({ level: 'silent' }), corsOrigins: [SHOP] });
const alone = exampleService({ log: pino({ level: 'silent' }) });

afterAll(() => {
  service.close();
  alone.close();
});

const named = <Request extends { operationId: string; name: string }>(
  requests: readonly Request[],
) => requests.map((one) => [one.operationId, one.name, one] as const);

/** The same request to a service that lets no pages read, and of a page that may. */
const ASKED = [
  ['no page', alone, {}],
  ['a page', service, { origin: SHOP }],
] as const;

describe('an answer is as it is published', () => {
  test.each(named(EXAMPLE_REQUESTS))('%s: %s', async (operationId, _, request) => {
    const { said } = describedOf(operationId);
    for (const [who, { ask }, headers] of ASKED) {
      const response = await ask({ ...request, headers });
      expect([who, response.status]).toEqual([who, 200]);
      const type = request.lines?.accept ?? 'application/json';
      const validate = responseSchema(operationId, 200, type);
      const text = await response.text();
      expect(complaints(validate, request.lines ? text : JSON.parse(text))).toEqual([]);
      expect(headerComplaints(response, said.responses[200])).toEqual([]);
      const etag = response.headers.get('etag');
      expect(etag !== null).toBe('304' in said.responses);
      if (etag === null) continue;
      const again = await ask({ ...request, headers: { ...headers, 'if-none-match': etag } });
      expect([again.status, await again.text()]).toEqual([304, '']);
      expect(headerComplaints(again, said.responses[304])).toEqual([]);
    }
  });

  test('every operation is asked', () => {
    const asked = new Set(EXAMPLE_REQUESTS.map(({ operationId }) => operationId));
    expect(asked).toEqual(new Set(OPERATIONS.map(({ operationId }) => operationId)));
  });
});

/** The examples whose operation has views, in each narrower one that has the question. */
const VIEWED = EXAMPLE_REQUESTS.flatMap((request) => {
  const operation = OPERATIONS.find((one) => one.operationId === request.operationId);
  if (operation === undefined || operation.lines !== undefined) return [];
  const { path, query, body } = operation;
  const takesView = body !== null || query.parameters.some(({ name }) => name === 'view');
  const { view: least } = needOf(path);
  if (!takesView || least === null) return [];
  const views = VIEWS.filter((view) => view !== 'full' && isWithin(least, view));
  // Of a part the public is told the vehicles that are named.
  const isWhole = path === '/v1/parts/{id}/fits' && !request.search?.includes('vehicle=');
  return views
    .filter((view) => !(view === 'public' && isWhole))
    .map((view) => [request.operationId, request.name, view, request] as const);
});

describe('what a view leaves of an answer is as it is published', () => {
  test.each(VIEWED)('%s: %s, %s', async (operationId, _, view, request) => {
    const asked =
      request.body === undefined
        ? { ...request, search: `${request.search ?? ''}&view=${view}` }
        : { ...request, body: { ...request.body, view } };
    const response = await alone.ask(asked);
    const answer: unknown = await response.json();
    if (response.status === 403) {
      // A wish that would tell what the view does not show.
      const codes = new Set(problemSchema.parse(answer).errors.map(({ code }) => code));
      expect(codes).toEqual(new Set(['wish-not-in-view']));
      return;
    }
    expect([response.status, response.headers.get('faying-view')]).toEqual([200, view]);
    const validate = responseSchema(operationId, 200, 'application/json');
    expect(complaints(validate, answer)).toEqual([]);
    // Not in a sentence either, beside what the question itself says.
    if (view === 'public') expect(JSON.stringify(answer)).not.toMatch(/\d EUR\b/);
  });

  test('of every operation that has views', () => {
    const shown = new Set(VIEWED.map(([operationId]) => operationId));
    expect(shown.size).toBeGreaterThan(20);
  });
});

describe('a problem is as it is published', () => {
  test.each(named(refusedRequests()))('%s: %s', async (operationId, code, request) => {
    const { said } = describedOf(operationId);
    for (const [who, { ask }, headers] of ASKED) {
      const response = await ask({ ...request, headers: { ...request.headers, ...headers } });
      const { status } = response;
      const problem: unknown = await response.json();
      expect([who, problem]).toMatchObject([who, { code, status }]);
      const validate = responseSchema(operationId, status, 'application/problem+json');
      expect(complaints(validate, problem)).toEqual([]);
      expect(complaints(validate, { ...(problem as object), code: 'other' })).not.toEqual([]);
      expect(headerComplaints(response, said.responses[status])).toEqual([]);
    }
  });

  test('each that an operation names has an example there', () => {
    for (const operation of OPERATIONS) {
      const { responses } = describedOf(operation.operationId).said;
      const shown = Object.entries(responses).flatMap(([status, { content }]) => {
        const examples = content?.['application/problem+json']?.examples ?? {};
        return Number(status) < 400 ? [] : Object.keys(examples);
      });
      expect([...shown].sort()).toEqual([...problemsOf(operation)].sort());
    }
  });

  const provoked = Object.entries(PROVOCATIONS).flatMap(([operationId, some]) =>
    some.map((one) => [operationId, one.code, one] as const),
  );

  test.each(provoked)('over another catalogue too: %s: %s', async (operationId, code, one) => {
    const response = await provoke(one satisfies Provocation);
    const validate = responseSchema(operationId, response.status, 'application/problem+json');
    const problem: unknown = await response.json();
    expect(complaints(validate, problem)).toEqual([]);
    expect(problem).toMatchObject({ code });
    const { responses } = describedOf(operationId).said;
    expect(headerComplaints(response, responses[response.status])).toEqual([]);
  });
});
