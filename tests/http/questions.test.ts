/**
 * Questions over HTTP: what the door makes of them for the use-case, and that every answer has
 * the shape that the contract gives it.
 */

import { describe, expect, test } from 'vitest';
import { fitAnswerSchema } from '../../src/contract/fit-answer.js';
import { liveAnswerSchema, readyAnswerSchema } from '../../src/contract/health.js';
import { inspectAnswerSchema } from '../../src/contract/inspect.js';
import { mateAnswerSchema } from '../../src/contract/mate.js';
import { USE_CASES } from '../../src/http/service.js';
import type { FitInput } from '../../src/usecases/check-fit.js';
import type { MateInput } from '../../src/usecases/mate-faces.js';
import type { VehicleInput } from '../../src/usecases/question.js';
import { json, rigOf } from './fixture.js';

describe('does this part fit this vehicle?', () => {
  test.each([
    ['box-a', 'fits', 'holds'],
    ['box-c', 'unknown', 'open'],
    ['box-b', 'fits-with-changes', 'fails'],
    ['plate-ab', null, 'fails'],
  ])('%s: %s', async (part, verdict, alone) => {
    const { client } = rigOf();
    const response = await client.get(`/v1/fit?vehicle=cart-1&part=${part}`).expect(200);
    const answer = fitAnswerSchema.parse(response.body);
    expect(answer).toMatchObject({ vehicle: 'cart-1', part, verdict, alone, edition: 1 });
    expect(response.headers).toMatchObject({
      'content-type': 'application/json',
      'faying-edition': '1',
      'content-language': 'en',
      'x-content-type-options': 'nosniff',
      'content-security-policy': "default-src 'none'",
    });
  });

  test('the same question in a body has the same answer', async () => {
    const { client } = rigOf();
    const url = '/v1/fit?vehicle=cart-1&part=box-b&adapter.box-shaft=plate-ab&torque=90%20N.m';
    const body = {
      vehicle: 'cart-1',
      part: 'box-b',
      adapters: { 'box-shaft': ['plate-ab'] },
      torque: '90 N.m',
    };
    const inUrl = await client.get(url).expect(200);
    const inBody = await client.post('/v1/fit').send(body).expect(200);
    expect(inBody.body).toEqual(inUrl.body);
    expect(inBody.headers['cache-control']).toBe('no-store');
    expect(inBody.headers.etag).toBeUndefined();
  });

  test('a URL becomes the input of the use-case, field by field', async () => {
    const search = [
      'vehicle=cart-1&part=box-b&position=gearbox&with.prop-shaft=shaft-a&fact.gate=wide',
      'fitted.engine=unknown&fitted.wheel-shaft=none&adapter.box-shaft=plate-ab,plate-ab',
      'torque=400+N.m&use=off-road&ignorePresent=true&changes=no&edition=1',
      'lang=en-GB&units=imperial',
    ].join('&');
    expect(await fitInput({ search })).toEqual({
      edition: 1,
      lang: 'en',
      units: 'imperial',
      vehicle: 'cart-1',
      part: 'box-b',
      position: 'gearbox',
      with: { 'prop-shaft': 'shaft-a' },
      facts: { gate: 'wide' },
      fitted: { engine: 'unknown', 'wheel-shaft': 'none' },
      adapters: { 'box-shaft': ['plate-ab', 'plate-ab'] },
      measured: [],
      torque: '400 N.m',
      use: 'off-road',
      ignorePresent: true,
      changes: 'no',
    });
  });

  test('what a question leaves out is filled in, or said to be left out', async () => {
    const bare = {
      edition: 1,
      lang: 'en',
      units: 'recorded',
      vehicle: 'cart-1',
      part: 'box-b',
      position: null,
      with: {},
      facts: {},
      fitted: {},
      adapters: {},
      measured: [],
      torque: null,
      use: null,
      ignorePresent: false,
      changes: 'yes',
      // The kit of an answer has prices.
      offers: 1,
    };
    expect(await fitInput({ search: 'vehicle=cart-1&part=box-b' })).toEqual(bare);
    expect(await fitInput({ body: { vehicle: 'cart-1', part: 'box-b' } })).toEqual(bare);
  });

  test('a body may tell the hands apart', async () => {
    const fitted = { 'wheel-shaft': { left: 'none', right: 'wheel-shaft-r' } };
    const input = await fitInput({ body: { vehicle: 'cart-1', part: 'box-b', fitted } });
    expect(input.fitted).toEqual(fitted);
  });
});

/** The input that the use-case gets for a question. */
async function fitInput(asked: { search?: string; body?: object }): Promise<FitInput> {
  const inputs: FitInput[] = [];
  const checkFit: typeof USE_CASES.checkFit = (library, input) => {
    inputs.push(input);
    return USE_CASES.checkFit(library, { ...input, facts: {}, fitted: {}, adapters: {}, with: {} });
  };
  const { client } = rigOf({ useCases: { checkFit } });
  if (asked.body === undefined) await client.get(`/v1/fit?${asked.search ?? ''}`).expect(200);
  else await client.post('/v1/fit').send(asked.body).expect(200);
  const [input] = inputs;
  if (input === undefined) throw new Error('the use-case was not asked');
  return input;
}

describe('is this vehicle right as it stands?', () => {
  test.each([
    [{}, 'holds'],
    [{ fitted: { gearbox: 'box-b' } }, 'fails'],
  ])('%j: %s', async (more, state) => {
    const { client } = rigOf();
    const response = await client.post('/v1/inspect').send({ vehicle: 'cart-1', ...more });
    expect(response.status).toBe(200);
    expect(inspectAnswerSchema.parse(response.body)).toMatchObject({ vehicle: 'cart-1', state });
    expect(response.headers['faying-edition']).toBe('1');
  });

  test('takes what was measured, and what stands there', async () => {
    const { client } = rigOf();
    const inspect = async (measured: unknown[]) => {
      const response = await client.post('/v1/inspect').send({ vehicle: 'cart-1', measured });
      return inspectAnswerSchema.parse(response.body).state;
    };
    const on = { position: 'gearbox', part: null, interface: null, parameter: null, fact: null };
    expect(await inspect([{ on, value: 'box-b' }])).toBe('fails');
    expect(await inspect([{ on, value: 'box-a' }])).toBe('holds');
    const read = { on: { part: 'box-a', parameter: 'torque' }, value: '210 N.m' };
    expect(await inspect([read])).toBe('holds');
  });

  test('the use-case gets every field', async () => {
    const inputs: VehicleInput[] = [];
    const inspectVehicle: typeof USE_CASES.inspectVehicle = (library, input) => {
      inputs.push(input);
      return USE_CASES.inspectVehicle(library, input);
    };
    const { client } = rigOf({ useCases: { inspectVehicle } });
    const body = {
      vehicle: 'cart-1',
      fitted: { gearbox: 'box-c' },
      torque: '90 N.m',
      use: 'road',
      ignorePresent: true,
      facts: {},
      edition: 1,
      lang: 'en',
      units: 'imperial',
    };
    await client.post('/v1/inspect').send(body).expect(200);
    expect(inputs).toEqual([{ ...body, adapters: {}, measured: [] }]);
  });
});

describe('do these two faces meet?', () => {
  test.each([
    ['a=box-a&a.face=rear&b=shaft-a&b.face=front', 'holds'],
    ['a=box-b&b=shaft-a', 'fails'],
    ['a=box-c&b=shaft-a', 'open'],
    ['a=box-b&b=shaft-a&adapter=plate-ab', 'holds'],
  ])('%s: %s', async (search, state) => {
    const { client } = rigOf();
    const response = await client.get(`/v1/mate?${search}`).expect(200);
    expect(mateAnswerSchema.parse(response.body)).toMatchObject({ state, edition: 1 });
  });

  test('a face that the question writes out', async () => {
    const { client } = rigOf();
    const inline = {
      kind: 'cart-flange',
      side: 'recess',
      pattern: 'f1',
      register: '60.05 ±0.02 mm',
    };
    const response = await client
      .post('/v1/mate')
      .send({ a: { part: 'box-a', interface: 'rear' }, b: { inline } })
      .expect(200);
    expect(mateAnswerSchema.parse(response.body).state).toBe('holds');
  });

  test('the use-case gets the ends and the adapters in their order', async () => {
    const inputs: MateInput[] = [];
    const mateFaces: typeof USE_CASES.mateFaces = (library, input) => {
      inputs.push(input);
      return USE_CASES.mateFaces(library, { ...input, adapters: [] });
    };
    const { client } = rigOf({ useCases: { mateFaces } });
    const search = 'b=shaft-a&a=box-b&a.face=rear&adapter=plate-ab,box-b&use=road';
    await client.get(`/v1/mate?${search}`).expect(200);
    expect(inputs).toEqual([
      {
        edition: 1,
        lang: 'en',
        units: 'recorded',
        a: { part: 'box-b', interface: 'rear' },
        b: { part: 'shaft-a', interface: null },
        adapters: ['plate-ab', 'box-b'],
        use: 'road',
      },
    ]);
  });
});

describe('the service itself', () => {
  test('lives and is ready', async () => {
    const { client } = rigOf();
    const live = await client.get('/livez').expect(200);
    const ready = await client.get('/readyz').expect(200);
    liveAnswerSchema.parse(live.body);
    expect(readyAnswerSchema.parse(ready.body).edition).toBe(1);
    expect(live.headers['cache-control']).toBe('no-store');
  });

  test('lives without an edition, but is not ready', async () => {
    const { client } = rigOf({ documents: [] });
    await client.get('/livez').expect(200);
    const response = await client.get('/readyz').expect(503);
    expect(json(response).code).toBe('no-edition');
  });

  test('gives its contract', async () => {
    const { client } = rigOf();
    const response = await client.get('/openapi.json').expect(200);
    expect(json(response).openapi).toBe('3.1.0');
    const etag = response.headers.etag ?? '';
    await client.get('/openapi.json').set('if-none-match', etag).expect(304);
  });

  test('HEAD is GET without the body', async () => {
    const { client } = rigOf();
    const url = '/v1/fit?vehicle=cart-1&part=box-c';
    const got = await client.get(url).expect(200);
    const head = await client.head(url).expect(200);
    expect(head.text || null).toBeNull();
    for (const name of ['etag', 'content-type', 'content-location', 'cache-control', 'vary']) {
      expect(head.headers[name]).toBe(got.headers[name]);
    }
    await client.head('/v1/fit').expect(400);
  });
});
