/**
 * A vehicle that more exact ones took the place of, over HTTP: whoever has kept its id is led on.
 */

import { describe, expect, test } from 'vitest';
import { json, rigOf } from './fixture.js';
import { NAMED } from './named-parts.js';

const rig = rigOf({ documents: [NAMED] });

describe('a vehicle that others took the place of', () => {
  const rough = (search = '') => `/v1/fit?vehicle=cart-rough&part=box-a${search}`;

  test('is gone, and tells those that are kept up now and what to ask', async () => {
    const problem = json(await rig.client.get(rough()).expect(410));
    expect(problem).toMatchObject({
      code: 'vehicle-replaced',
      errors: [
        {
          parameter: 'vehicle',
          code: 'vehicle-replaced',
          data: {
            name: 'cart-rough',
            candidates: [
              { vehicle: 'cart-1', label: 'Wainer Cart' },
              { vehicle: 'cart-l', label: 'Wainer Cart, long' },
              { vehicle: 'cart-s', label: 'Wainer Cart, short' },
            ],
          },
        },
      ],
      ask: [
        {
          field: 'variant',
          values: [
            { value: 'long', count: 2 },
            { value: 'short', count: 2 },
          ],
        },
      ],
    });
    const german = json(await rig.client.get(rough('&lang=de')).expect(410));
    expect(german.ask).toMatchObject([{ name: 'Ausführung' }]);
  });

  test('wherever it is asked about', async () => {
    await rig.client.post('/v1/fit').send({ vehicle: 'cart-rough', part: 'box-a' }).expect(410);
    await rig.client.post('/v1/inspect').send({ vehicle: 'cart-rough' }).expect(410);
    const read = json(await rig.client.get('/v1/vehicles/cart-rough').expect(410));
    expect(read).toMatchObject({ errors: [{ parameter: 'id' }], ask: [{ field: 'variant' }] });
  });

  test('answers still in an edition in which none had', async () => {
    const before = {
      ...NAMED,
      vehicles: [{ ...NAMED.vehicles[0], id: 'cart-rough' }, ...NAMED.vehicles.slice(0, 1)],
    };
    const own = rigOf({ documents: [before, NAMED] });
    await own.client.get(rough('&edition=1')).expect(200);
    await own.client.get(rough('&edition=2')).expect(410);
    await own.client.get(rough()).expect(410);
  });
});
