/**
 * Documents made ready to be published, and the days on which they are.
 */

import { type PreparedEdition, prepareEdition } from '../../src/usecases/publish-edition.js';
import { CART } from '../cli/catalogue.js';
import { demoDocument, exampleDocument, sha256 } from '../memory-store.js';

export const FIRST_DAY = '2026-01-01T00:00:00.000Z';
export const NEXT_DAY = '2026-01-02T00:00:00.000Z';

export type Document = Readonly<Record<string, unknown>>;

export const demo: PreparedEdition = prepareEdition(demoDocument(), sha256);

/** The small document that has every field there is. */
export const example: PreparedEdition = prepareEdition(exampleDocument(), sha256);

/** The cart of the tests of the command line, with parts replaced; undefined ones are left out. */
export function cart(changes: Document = {}): PreparedEdition {
  const document: Document = { ...CART, ...changes };
  const fields = Object.entries(document).filter(([, value]) => value !== undefined);
  return prepareEdition(Object.fromEntries(fields), sha256);
}

/** One of each that the cart itself has not. */
const TRADE = {
  facts: [
    {
      id: 'gate',
      name: 'Gate at the back',
      values: [
        { id: 'wide', name: 'wide' },
        { id: 'narrow', name: 'narrow' },
      ],
    },
  ],
  rules: [
    {
      id: 'bolts',
      when: { opened: 'gearbox' },
      recommends: { position: 'prop-shaft', part: 'plate-ab', quantity: '2' },
      consumes: { part: 'plate-ab', quantity: { sum: ['1', '2'] } },
      because: 'The bolts stretch.',
    },
  ],
  lots: [
    {
      id: 'axle-end',
      name: 'what a cart is driven by',
      contains: [
        { part: 'plate-ab', quantity: '2' },
        { vehicle: 'cart-2', position: 'wheel-shaft' },
      ],
    },
  ],
  works: [
    {
      id: 'bore',
      name: 'bored',
      on: { 'one-of': ['role', ['gearbox']] },
      gives: {
        interfaces: { rear: { register: { choose: { of: ['61 mm', '62 mm'] } } } },
        values: { torque: '190 N.m' },
      },
      labour: '90 min',
      signOff: 'engineer',
    },
  ],
  rulesets: [
    {
      id: 'fair',
      name: 'rules of the fair',
      valid: ['2020-01', null],
      cite: 'Wainer fair, rule 3',
      demands: {
        keep: ['engine'],
        checks: [{ 'at-most': ['gearbox.torque', '250 N.m'] }],
      },
    },
  ],
};

/**
 * Another state of the cart, which differs in each way that a publish knows: one part is changed,
 * one is gone, one is new, vehicles and a statement are new, and so is all that can be bought, done
 * and demanded; and the offers are others.
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
      {
        id: 'cart-3',
        make: 'Wainer',
        model: 'Cart with a gate',
        vin: ['XCA**************', { pattern: 'XCB**************', from: '0100', to: '0199' }],
        like: 'cart-1',
        replacedBy: ['cart-2'],
        fitted: { gearbox: { by: 'gate', wide: 'box-b', narrow: 'box-a' } },
      },
    ],
    ...TRADE,
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
      { id: 'offer-3', for: 'axle-end', price: '300.00', pack: '1' },
      { id: 'offer-4', for: 'bore', price: '40.00' },
      { id: 'offer-2', for: 'box-d', price: '250.00', stock: 3 },
    ],
  });
}
