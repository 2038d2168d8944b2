/**
 * The published schema of catalogue documents, as a validator that is not ours reads it: it takes
 * what the reader takes, and refuses what is no quantity where one is wanted.
 */

import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { quantityPattern } from '../../src/domain/quantity/quantity-pattern.js';
import { lintDocument } from '../../src/usecases/publish-edition.js';
import { CART } from '../cli/catalogue.js';
import { demoDocument, exampleDocument } from '../memory-store.js';
import { schemaAt } from './published-document.js';

const file = new URL('../../openapi/catalogue.schema.json', import.meta.url);
const ajv = new Ajv2020({ strictSchema: true, strictTypes: false, allErrors: true });
ajv.addSchema(JSON.parse(readFileSync(file, 'utf8')), 'catalogue');

const isDocument = ajv.compile({ $ref: 'catalogue#' });
const isScalar = ajv.compile({ $ref: 'catalogue#/$defs/scalar' });
const isQuantity = ajv.compile({ $ref: 'catalogue#/$defs/quantity' });
const isAmount = ajv.compile({ $ref: 'catalogue#/$defs/amount' });

describe('the schema of a catalogue document', () => {
  test.each([
    ['the demo', demoDocument()],
    ['the example of the author’s page', exampleDocument()],
    ['the cart', CART],
  ])('takes %s, as the reader does', (_, document) => {
    isDocument(document);
    expect(isDocument.errors).toBeNull();
    expect(lintDocument(document).faults).toEqual([]);
  });

  test.each(['-10.0, 0.0 mm', '120.5 ±0.1, -45 ±0.1 mm', '56.10 ±0.05 mm', 'M12x1.25', 24])(
    'takes %s as a recorded value',
    (value) => {
      expect(isScalar(value)).toBe(true);
    },
  );

  test.each(['56,1 ±0,1 mm', '±5 mm', '-5 furlong', '1/0 "', 3.5])(
    'refuses %s as a recorded value',
    (value) => {
      expect(isScalar(value)).toBe(false);
    },
  );

  test('publishes the pattern that is held against the reader', () => {
    expect(isQuantity('56.1 mm')).toBe(true);
    expect(isQuantity('56.1 furlong')).toBe(false);
    const { $defs } = JSON.parse(readFileSync(file, 'utf8'));
    expect($defs.quantity.pattern).toBe(quantityPattern().source);
  });

  test.each([
    ['6 h', true],
    ['1.5 l', true],
    [2, true],
    ['6 to 8 h', false],
    ['six hours', false],
  ])('says whether %s is an amount: %s', (value, is) => {
    expect(isAmount(value)).toBe(is);
  });
});

describe('the torque of a question', () => {
  const isQuestion = schemaAt('components', 'schemas', 'InspectQuestion');

  test.each([
    ['400 N.m', true],
    ['400 ±5 Nm', true],
    ['295 lbf.ft', true],
    ['400', false],
    ['90 kW', false],
    ['400 to 450 N.m', false],
    ['400,5 N.m', false],
  ])('%s: %s', (torque, is) => {
    expect(isQuestion({ vehicle: 'cart-1', torque })).toBe(is);
  });
});
