/**
 * A small catalogue of vehicles that differ in what a chooser asks for; every name is invented.
 */

import type { VehicleRecord } from '../../src/domain/catalogue/document.js';
import { CART } from '../cli/catalogue.js';

const FITTED = { engine: 'motor', gearbox: 'box-a', 'prop-shaft': 'shaft-a' };

const vehicle = (id: string, model: string, more: Partial<VehicleRecord>): VehicleRecord => ({
  id,
  make: 'Tärn',
  model,
  layout: 'cart',
  fitted: FITTED,
  ...more,
});

export const GARAGE = {
  ...CART,
  facts: [
    {
      id: 'axle-tag',
      name: { en: 'Tag on the axle', de: 'Schild an der Achse' },
      how: { en: 'Read the tag.', de: 'Das Schild lesen.' },
      values: [
        { id: 'a', name: { en: 'letter A', de: 'Buchstabe A' } },
        { id: 'b', name: { en: 'letter B', de: 'Buchstabe B' } },
        { id: 'c', name: 'C' },
      ],
    },
  ],
  layouts: [...CART.layouts, { ...CART.layouts[0], id: 'sledge' }],
  vehicles: [
    ...CART.vehicles,
    vehicle('t2-late', '200', {
      variant: 'late',
      built: ['2005-09', null],
      facts: { 'axle-tag': 'b' },
    }),
    vehicle('t2-early', '200', {
      variant: 'early',
      built: ['2002-09', '2005-08'],
      facts: { 'axle-tag': 'a' },
    }),
    vehicle('t2-any', '200', { built: ['2002-09', '2008-01'] }),
    vehicle('t3', '300', { variant: 'late', built: [null, '1999-12'] }),
    vehicle('t2-rough', '200', { replacedBy: ['t2-early', 't2-late'] }),
    vehicle('s1', 'Sledge', { make: 'Ordale', layout: 'sledge' }),
  ],
};
