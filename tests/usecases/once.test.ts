/**
 * What is said twice is said once; in other units too it is the records that tell.
 */

import { expect, test } from 'vitest';
import { once } from '../../src/usecases/cautions.js';

const said = (...texts: string[]) => texts.map((text) => ({ text }));

test('the first of those that read alike is kept', () => {
  expect(once(said('a', 'b', 'a'))).toEqual(said('a', 'b'));
});

test('what reads alike in other units alone is kept, and what is recorded alike is not', () => {
  const converted = said('2.2 in', '2.2 in', '2.3 in');
  expect(once(converted, said('56.0 mm', '56.1 mm', '58 mm'))).toEqual(converted);
  expect(once(converted, said('56.0 mm', '56.0 mm', '58 mm'))).toEqual(said('2.2 in', '2.3 in'));
});
