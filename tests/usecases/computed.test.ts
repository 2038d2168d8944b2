/**
 * How people are shown what a formula gave: teeth as teeth, other quotients as decimals.
 */

import { expect, test } from 'vitest';
import { point } from '../../src/domain/quantity/interval.js';
import { rational } from '../../src/domain/quantity/rational.js';
import { computed } from '../../src/usecases/computed.js';
import { ValueWriter } from '../../src/usecases/value-writer.js';

const values = new ValueWriter({ lang: 'en', units: 'recorded' });
const shown = (text: string, decimal?: true) =>
  computed(point(rational(text)), { dimension: '1', ...(decimal && { decimal }) }, values);

test.each([
  ['39/11', '39/11', 'about 3.5455'],
  // Twelve digits of it end in a zero, and look like all that there are.
  ['35/27', '35/27', 'about 1.2963'],
  ['7/4', '1.75', '1.75'],
  ['4', '4', '4'],
])('%s is %s, or as a decimal %s', (given, teeth, decimal) => {
  expect(shown(given).text).toBe(teeth);
  expect(shown(given, true).text).toBe(decimal);
  // Programs are given the same of both.
  expect({ ...shown(given, true), text: '' }).toEqual({ ...shown(given), text: '' });
});
