/**
 * What somebody types into a field: the client reads it as the service does, and says the same.
 */

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FayingClient, readQuantity } from '../../src/client/client.js';
import { CART } from '../cli/catalogue.js';
import { type RunningService, runningService } from './running-service.js';

describe('a text that is a quantity', () => {
  test.each([
    ['56.1', ' mm', {}, { text: '56.1 mm', low: '56.05', high: '56.15', unit: 'mm' }],
    ['4 1/2', ' in', { type: 'designation' }, null],
    ['4.5', ' in', { type: 'designation' }, { low: '114.3', high: '114.3', unit: 'mm' }],
    ['43/12', '', { type: 'ratio', dimension: '1' }, { low: '43/12', high: '43/12', unit: '' }],
    ['400 ±5', ' N.m', { dimension: 'torque' }, { low: '395', high: '405', unit: 'N.m' }],
    ['1412', ' mm', { tool: 'tape' }, { low: '1411', high: '1413', unit: 'mm' }],
    ['50', ' H7', {}, { text: '50 H7', low: '50', high: '50.025', unit: 'mm' }],
  ] as const)('%s%s', (value, unit, options, said) => {
    const read = readQuantity(`${value}${unit}`, options);
    if (said === null) expect(read).toMatchObject({ ok: false });
    else expect(read).toMatchObject({ ok: true, ...said });
  });
});

test.each([
  ['56.1', {}, 'missing-unit'],
  ['56.1 kg', {}, 'wrong-dimension'],
  ['many mm', {}, 'malformed'],
  ['4.5', { type: 'count', dimension: '1' }, 'not-a-count'],
] as const)('%s is none, and what is wrong is said', (text, options, code) => {
  const read = readQuantity(text, options);
  expect(read).toMatchObject({ ok: false, code });
  expect(read.text.length).toBeGreaterThan(20);
});

describe('the service says the same', () => {
  let service: RunningService;
  let client: FayingClient;
  beforeAll(async () => {
    service = await runningService(CART);
    client = new FayingClient({ baseUrl: service.url });
  });
  afterAll(() => service.stop());

  const torque = (text: string) =>
    client.get('/v1/fit', {
      params: { query: { vehicle: 'cart-1', part: 'box-c', changes: 'no', torque: text } },
    });

  test.each(['400 N.m', '295 lbf.ft', '400 ±5 N.m'])('to take %s', async (text) => {
    expect(readQuantity(text, { type: 'designation', dimension: 'torque' }).ok).toBe(true);
    expect(await torque(text)).toMatchObject({ part: 'box-c' });
  });

  test.each(['400', '400 mm', 'strong'])('to refuse %s', async (text) => {
    const read = readQuantity(text, { type: 'designation', dimension: 'torque' });
    expect(read.ok).toBe(false);
    await expect(torque(text)).rejects.toMatchObject({ name: 'FayingProblem', status: 422 });
  });
});
