/**
 * The vehicles that a replaced one leads to, however long and however often the ways to them are:
 * on each of these a search along every way would not end, or not fit the stack.
 */

import { expect, test } from 'vitest';
import { QuestionError } from '../../src/usecases/errors.js';
import { readVehicle } from '../../src/usecases/read-vehicle.js';
import { CART } from '../cli/catalogue.js';
import { libraryOf } from '../memory-store.js';

/** So many steps, in each of which every one of so many vehicles is replaced by all of the next. */
function replacedInSteps(steps: number, wide: number): readonly object[] {
  const idsAt = (step: number) => Array.from({ length: wide }, (_, index) => `v-${step}-${index}`);
  return Array.from({ length: steps }, (_, step) => {
    const replacedBy = step + 1 < steps ? { replacedBy: idsAt(step + 1) } : {};
    return idsAt(step).map((id) => ({ ...CART.vehicles[0], id, ...replacedBy }));
  }).flat();
}

test.each([
  ['meet again and again', 60, 2, ['v-59-0', 'v-59-1']],
  ['are long', 8000, 1, ['v-7999-0']],
])('ways that %s', (_, steps, wide, ids) => {
  const vehicles = [...CART.vehicles, ...replacedInSteps(steps, wide)];
  const library = libraryOf({ ...CART, vehicles });
  const input = { edition: null, lang: 'en', units: 'recorded', id: 'v-0-0' } as const;
  const data = { name: 'v-0-0', candidates: ids.map((vehicle) => ({ vehicle })) };
  let refused: unknown = null;
  try {
    readVehicle(library, input);
  } catch (error) {
    refused = error;
  }
  expect(refused).toBeInstanceOf(QuestionError);
  expect(refused).toMatchObject({ faults: [{ at: 'id', code: 'vehicle-replaced', data }] });
});
