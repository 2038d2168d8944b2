/**
 * What a name of a part costs to look up: counted, not timed.
 */

import { expect, test, vi } from 'vitest';
import { PartNames } from '../../src/usecases/part-names.js';
import { Skus } from '../../src/usecases/skus.js';
import { CART } from '../cli/catalogue.js';
import { libraryOf } from '../memory-store.js';

test('no more of its plus signs are tried than a code has', () => {
  const { catalogue } = libraryOf(CART).edition(null);
  const skus = new Skus(1, [{ id: 'o', for: 'box-a', price: '1.00', sku: 'a+b' }]);
  const find = vi.spyOn(skus, 'find');
  const names = new PartNames(catalogue, () => skus);
  expect(names.find(`sku:a+b${'+c'.repeat(90)}`)).toMatchObject({ works: Array(90).fill('c') });
  expect(names.find(`sku:a${'+c'.repeat(90)}`)).toMatchObject({ parts: [] });
  expect(find.mock.calls).toEqual([['a+b'], ['a+c'], ['a']]);
});
