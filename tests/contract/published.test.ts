/**
 * Real answers against the published document, by a validator that is not ours: the demo's answers
 * to every question, what each operation says over HTTP with its headers, and its problems. The
 * schemas let nothing else be in an answer, so a field that nobody declared is found however deep.
 */

import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { addressOf, EXAMPLE_REQUESTS, type ExampleRequest } from '../../src/contract/examples.js';
import { OPERATIONS } from '../../src/contract/operations.js';
import { fits, inspections, matings } from '../demo/questions.js';
import { rigOf } from '../http/fixture.js';
import { PROVOCATIONS, type Provocation, provoke } from '../http/provocations.js';
import { demoDocument } from '../memory-store.js';

interface Media {
  readonly examples?: Readonly<Record<string, { readonly value: unknown }>>;
}
type Content = Readonly<Record<string, Media>>;
interface Answered {
  readonly headers?: Readonly<Record<string, unknown>>;
  readonly content?: Content;
}
interface Described {
  readonly requestBody?: { readonly content: Content };
  readonly responses: Readonly<Record<string, Answered>>;
}
interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Described>>>>;
}

const file = new URL('../../openapi/openapi.json', import.meta.url);
const document = JSON.parse(readFileSync(file, 'utf8')) as Document;

const ajv = new Ajv2020({ strictSchema: true, allErrors: true, validateFormats: false });
// Words of OpenAPI: one that stands in schemas and decides nothing, and those around the schemas.
ajv.addVocabulary(['example', ...Object.keys(document)]);
ajv.addSchema(document, 'published', false, false);

/** The schema at a place of the document. */
function schemaAt(...path: string[]): ValidateFunction {
  const steps = path.map((one) =>
    encodeURIComponent(one.replaceAll('~', '~0').replaceAll('/', '~1')),
  );
  return ajv.compile({ $ref: `published#/${steps.join('/')}` });
}

function complaints(validate: ValidateFunction, value: unknown): unknown[] {
  validate(JSON.parse(JSON.stringify(value)));
  return (validate.errors ?? []).map(({ instancePath, message, params }) => [
    instancePath,
    message,
    params,
  ]);
}

function describedOf(operationId: string): { path: string; method: string; said: Described } {
  const operation = OPERATIONS.find((one) => one.operationId === operationId);
  const { path = '', method = '' } = operation ?? {};
  const said = document.paths[path]?.[method];
  if (said === undefined) throw new Error(`nothing is published of ${operationId}`);
  return { path, method, said };
}

function responseSchema(operationId: string, status: number, mediaType: string): ValidateFunction {
  const { path, method } = describedOf(operationId);
  const at = ['paths', path, method, 'responses', String(status), 'content', mediaType, 'schema'];
  return schemaAt(...at);
}

describe.each([
  ['FitAnswer', fits],
  ['InspectAnswer', inspections],
  ['MateAnswer', matings],
])('%s', (name, questions) => {
  const validate = schemaAt('components', 'schemas', name);

  test.each(Object.entries(questions))('%s', (_, ask) => {
    expect(complaints(validate, ask())).toEqual([]);
  });

  test('has no place for anything else, however deep', () => {
    const [ask] = Object.values(questions);
    let spoilt = 0;
    const answer = JSON.parse(JSON.stringify(ask?.())) as object;
    for (const inner of objectsIn(answer)) {
      Reflect.set(inner, 'nobody-declared-this', 1);
      expect(validate(answer)).toBe(false);
      Reflect.deleteProperty(inner, 'nobody-declared-this');
      spoilt += 1;
    }
    expect(spoilt).toBeGreaterThan(20);
    expect(validate(answer)).toBe(true);
  });
});

function objectsIn(value: unknown): object[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(objectsIn);
  return Array.isArray(value) ? inner : [value, ...inner];
}

describe('over HTTP', () => {
  const demo = rigOf({ documents: [demoDocument()] });

  function ask(request: ExampleRequest): Promise<Response> {
    const { operationId, body } = request;
    const { path, method } = describedOf(operationId);
    const url = addressOf(request, { path });
    const headers = { 'content-type': 'application/json' };
    const posted = { method: 'POST', headers, body: JSON.stringify(body) };
    return Promise.resolve(demo.app.request(url, method === 'post' ? posted : {}));
  }

  test('every operation is asked', () => {
    const asked = new Set(EXAMPLE_REQUESTS.map(({ operationId }) => operationId));
    expect(asked).toEqual(new Set(OPERATIONS.map(({ operationId }) => operationId)));
  });

  test.each(EXAMPLE_REQUESTS.map((one) => [one.operationId, one.name, one] as const))(
    '%s: %s',
    async (operationId, _, request) => {
      const response = await ask(request);
      expect(response.status).toBe(200);
      const validate = responseSchema(operationId, 200, 'application/json');
      expect(complaints(validate, await response.json())).toEqual([]);
      const { headers = {} } = describedOf(operationId).said.responses[200] ?? {};
      const promised = Object.keys(headers);
      expect(promised).toContain('X-Request-Id');
      for (const name of promised) expect([name, response.headers.has(name)]).toEqual([name, true]);
    },
  );

  const provoked = Object.entries(PROVOCATIONS).flatMap(([operationId, some]) =>
    some.map((one) => [operationId, one.code, one] as const),
  );

  test.each(provoked)('%s: %s', async (operationId, code, one: Provocation) => {
    const response = await provoke(one);
    const validate = responseSchema(operationId, response.status, 'application/problem+json');
    const problem: unknown = await response.json();
    expect(complaints(validate, problem)).toEqual([]);
    expect(problem).toMatchObject({ code });
    expect(complaints(validate, { ...(problem as object), code: 'other' })).not.toEqual([]);
  });
});

describe('the examples', () => {
  test.each(OPERATIONS.map(({ operationId }) => operationId))('of %s', (operationId) => {
    const { path, method, said } = describedOf(operationId);
    const answers = said.responses[200]?.content?.['application/json']?.examples ?? {};
    expect(Object.keys(answers).length).toBeGreaterThan(0);
    const validate = responseSchema(operationId, 200, 'application/json');
    for (const { value } of Object.values(answers)) {
      expect(complaints(validate, value)).toEqual([]);
    }
    const questions = said.requestBody?.content['application/json']?.examples ?? {};
    expect(Object.keys(questions).length > 0).toBe(method === 'post');
    for (const { value } of Object.values(questions)) {
      const at = ['paths', path, method, 'requestBody', 'content', 'application/json', 'schema'];
      expect(complaints(schemaAt(...at), value)).toEqual([]);
    }
  });
});
