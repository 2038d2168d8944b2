/**
 * The cart with parts that go by several names: numbers of two makers, order codes, a part that
 * another one took the place of, a work, and a vehicle that two others took the place of.
 */

import { CART } from '../cli/catalogue.js';

const flange = { kind: 'cart-flange', side: 'spigot', pattern: 'f1' };

export const NAMED = {
  ...CART,
  parts: [
    ...CART.parts,
    {
      id: 'strong-box',
      roles: ['gearbox'],
      name: { en: 'strong gearbox', de: 'Getriebe, verstärkt' },
      maker: 'Wainer & Söhne',
      numbers: [
        { number: '44/10-077', of: 'maker' },
        { number: 'W.9, 120', of: 'Fennuld Spares' },
        { number: 'S+7', of: 'maker' },
      ],
      interfaces: { rear: flange },
      values: { torque: '300 N.m' },
    },
    {
      id: 'old-box',
      roles: ['gearbox'],
      name: 'old gearbox',
      maker: 'Wainer & Söhne',
      numbers: [{ number: '44/10-070', of: 'maker' }],
      supersededBy: 'strong-box',
      interfaces: { rear: flange },
    },
    {
      id: 'hook',
      roles: ['plate'],
      name: 'hook',
      maker: 'Fennuld Spares',
      numbers: [
        { number: '44 10 077', of: 'maker' },
        { number: '44/10077', of: 'maker' },
      ],
    },
  ],
  works: [
    {
      id: 'polish',
      name: { en: 'polished', de: 'poliert' },
      on: { 'one-of': ['part', ['strong-box']] },
      gives: { values: { torque: '310 N.m' } },
    },
  ],
  lots: [{ id: 'crate', name: 'crate', contains: [{ part: 'strong-box', quantity: 1 }] }],
  vehicles: [
    ...CART.vehicles,
    { ...CART.vehicles[0], id: 'cart-rough', replacedBy: ['cart-rough-2', 'cart-s'] },
    { ...CART.vehicles[0], id: 'cart-rough-2', replacedBy: ['cart-1', 'cart-l'] },
    { ...CART.vehicles[0], id: 'cart-s', variant: 'short' },
    { ...CART.vehicles[0], id: 'cart-l', variant: 'long' },
  ],
  offers: [
    { id: 'o-1', for: 'strong-box', price: '100.00', sku: 'GB-7700' },
    { id: 'o-2', for: 'strong-box', price: '90.00', sku: 'GB-7700' },
    { id: 'o-3', for: 'crate', price: '190.00', sku: 'C-1' },
    { id: 'o-4', for: 'polish', price: '20.00', sku: 'P,1+' },
    { id: 'o-5', for: 'old-box', price: '20.00', sku: 'X' },
    { id: 'o-6', for: 'hook', price: '20.00', sku: 'X' },
  ],
};

/** The same with another price and stock list: `GB-7700` is now the code of the old gearbox. */
export const OFFERED_ANEW = {
  ...NAMED,
  offers: [{ id: 'o-1', for: 'old-box', price: '100.00', sku: 'GB-7700' }],
};
