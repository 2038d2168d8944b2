/**
 * Documents made ready to be published, and the days on which they are.
 */

import { type PreparedEdition, prepareEdition } from '../../src/usecases/publish-edition.js';
import { CART } from '../cli/catalogue.js';
import { demoDocument, sha256 } from '../memory-store.js';

export const FIRST_DAY = '2026-01-01T00:00:00.000Z';
export const NEXT_DAY = '2026-01-02T00:00:00.000Z';

export type Document = Readonly<Record<string, unknown>>;

export const demo: PreparedEdition = prepareEdition(demoDocument(), sha256);

/** The cart of the tests of the command line, with parts replaced; undefined ones are left out. */
export function cart(changes: Document = {}): PreparedEdition {
  const document: Document = { ...CART, ...changes };
  const fields = Object.entries(document).filter(([, value]) => value !== undefined);
  return prepareEdition(Object.fromEntries(fields), sha256);
}

/**
 * Another state of the cart, which differs in each way that a publish knows: one part is changed,
 * one is gone, one is new, a vehicle and a statement are new, and the offers are others.
 */
export function changedCart(): PreparedEdition {
  const [motor, , ...others] = CART.parts;
  const boxA = CART.parts[1] as object;
  return cart({
    parts: [
      motor,
      { ...boxA, name: 'box a, bored again' },
      ...others.filter(({ id }) => id !== 'box-c'),
      { ...boxA, id: 'box-e', name: 'box e' },
    ],
    vehicles: [
      ...CART.vehicles,
      {
        id: 'cart-2',
        make: 'Wainer',
        model: 'Cart with a plate',
        layout: 'cart',
        fitted: {
          engine: 'motor',
          gearbox: 'box-b',
          'prop-shaft': 'shaft-a',
          matings: { 'box-shaft': 'plate-ab' },
        },
      },
    ],
    statements: [
      {
        id: 'list-box-d',
        part: 'box-d',
        position: 'gearbox',
        vehicles: ['cart-1'],
        verdict: 'fits',
        evidence: { basis: 'reported', source: 'a list' },
      },
    ],
    offers: [
      { id: 'offer-1', for: 'box-b', price: '90.00' },
      { id: 'offer-2', for: 'box-d', price: '250.00', stock: 3 },
    ],
  });
}
