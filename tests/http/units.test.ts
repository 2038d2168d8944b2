/**
 * The units of values over HTTP: wished in a URL or a body, said in the answer, part of what the
 * answer is known by, and nothing that decides it.
 */

import { describe, expect, test } from 'vitest';
import { FIT, json, rigOf } from './fixture.js';

const rig = rigOf();

async function ask(path: string) {
  const response = await rig.client.get(path).expect(200);
  const { etag, 'content-location': place } = response.headers;
  return { body: json(response), etag, place };
}

const TOLD = ['text', 'said', 'units'];

/** What is left of an answer without its texts. */
function untold(body: object): unknown {
  return JSON.parse(
    JSON.stringify(body, (key, value: unknown) => (TOLD.includes(key) ? undefined : value)),
  );
}

describe('an answer that shows values', () => {
  test.each([
    [FIT, '200 N.m', '147.14 to 147.89 lbf.ft'],
    ['/v1/mate?a=box-a&b=shaft-a', '60.00 ±0.02 mm', '2.3622 ±0.0008 in'],
    ['/v1/parts/box-b', '200 N.m', '147.14 to 147.89 lbf.ft'],
  ])('%s is told in the units that are wished', async (path, metric, imperial) => {
    const wish = `${path}${path.includes('?') ? '&' : '?'}units=`;
    const plain = await ask(path);
    expect(plain.body.units).toBe('recorded');
    expect(JSON.stringify(plain.body)).toContain(`"${metric}"`);
    expect(await ask(`${wish}recorded`)).toEqual(plain);

    const other = await ask(`${wish}imperial`);
    expect(other.body.units).toBe('imperial');
    expect(JSON.stringify(other.body)).toContain(`"${imperial}"`);
    expect(JSON.stringify(other.body)).not.toContain(`"${metric}"`);
    expect(untold(other.body)).toEqual(untold(plain.body));
    expect(other.etag).not.toBe(plain.etag);

    expect(plain.place).not.toContain('units');
    expect(other.place).toContain('units=imperial');
    expect(await ask(other.place ?? '')).toEqual(other);
  });

  test.each(['/v1/kinds/cart-flange', '/v1/roles/gearbox', '/v1/vehicles/cart-1'])(
    '%s says in which units it has any',
    async (path) => {
      expect((await ask(path)).body.units).toBe('recorded');
      expect((await ask(`${path}?units=metric`)).body.units).toBe('metric');
    },
  );

  test('takes the wish in a body too', async () => {
    const { client } = rig;
    const vehicle = { vehicle: 'cart-1', units: 'imperial' };
    const inspected = await client.post('/v1/inspect').send(vehicle).expect(200);
    expect(json(inspected).units).toBe('imperial');
    const question = { ...vehicle, part: 'box-c' };
    const asked = await client.post('/v1/fit').send(question).expect(200);
    expect(json(asked)).toEqual((await ask(`${FIT}&units=imperial`)).body);
    expect(asked.headers['content-location']).toContain('units=imperial');
  });
});

describe('a wish that cannot be met', () => {
  test('for units that nobody knows, is refused', async () => {
    const response = await rig.client.get(`${FIT}&units=ells`).expect(400);
    expect(json(response)).toMatchObject({
      code: 'invalid-request',
      errors: [{ parameter: 'units' }],
    });
  });

  test('where there are no values, is refused', async () => {
    for (const path of ['/v1/layouts/cart', '/v1/parts']) {
      const response = await rig.client.get(`${path}?units=metric`).expect(400);
      expect(json(response)).toMatchObject({ errors: [{ code: 'unknown-parameter' }] });
    }
  });
});
