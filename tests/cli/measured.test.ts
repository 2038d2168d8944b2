/** `--measured`: one way of saying what was measured, to fit, inspect and kits. */

import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenedStore, openStore } from '../../src/store/sqlite.js';
import { checkFit } from '../../src/usecases/check-fit.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import { USUAL_KIT } from '../../src/usecases/kit-input.js';
import { Library } from '../../src/usecases/library.js';
import { resolveKitQuestion } from '../../src/usecases/resolve-kits.js';
import { sha256 } from '../memory-store.js';
import { cartDatabase, run } from './terminal.js';

let database: string;
let store: OpenedStore;
beforeAll(async () => {
  database = await cartDatabase();
  store = openStore(database, { mode: 'read-only' });
});
afterAll(() => store.close());

const anew = {
  edition: null,
  lang: 'en',
  units: 'recorded' as const,
  facts: {},
  fitted: {},
  adapters: {},
  torque: null,
  use: null,
  ignorePresent: false,
};

test('what was measured is said in one way to fit, inspect and kits', async () => {
  const words = [
    ['--measured', 'gearbox.rear.register=60.01 ±0.01 mm'],
    ['--measured', 'part:box-c.torque=190 N.m'],
    ['--measured', 'wheel-shaft.left=none'],
  ].flat();
  const nowhere = { position: null, hand: null, part: null, interface: null, parameter: null };
  const on = (more: object) => ({ ...nowhere, fact: null, ...more });
  const measured = [
    {
      on: on({ position: 'gearbox', interface: 'rear', parameter: 'register' }),
      value: '60.01 ±0.01 mm',
      tool: null,
    },
    { on: on({ part: 'box-c', parameter: 'torque' }), value: '190 N.m', tool: null },
    { on: on({ position: 'wheel-shaft', hand: 'left' }), value: 'none', tool: null },
  ];
  const library = new Library(store, sha256);
  const input = { ...anew, vehicle: 'cart-1', measured };
  const beside = { part: 'box-c', position: null, with: {}, changes: null };
  const want = [{ part: 'box-c', position: null, hand: null, renew: false }];
  const answers = {
    inspect: inspectVehicle(library, input),
    fit: checkFit(library, { ...input, ...beside }),
    kits: resolveKitQuestion(library, { ...input, ...USUAL_KIT, want }),
  };
  for (const [name, answer] of Object.entries(answers)) {
    const parts = name === 'inspect' ? [] : ['box-c'];
    const { out } = await run([name, 'cart-1', ...parts, '--json', ...words], { database });
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(answer)));
  }
});

test.each(['part:box-a', 'gearbox.rear.register.x', 'gearbox..register', 'gearbox.left.a.b.c'])(
  '%s names no value',
  async (place) => {
    const { code, err } = await run(['inspect', 'cart-1', '--measured', `${place}=9 mm`], {
      database,
    });
    expect([code, err]).toEqual([2, expect.stringContaining(place)]);
  },
);
