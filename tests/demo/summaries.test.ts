/**
 * A summary stands on a badge: at most 120 characters, in each language, for every part on every
 * vehicle of the demo, and where the names of places are as long as any.
 */

import { describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { SPOKEN, say } from '../../src/domain/explain/words.js';
import { demoDocument } from '../memory-store.js';
import { askFit } from './ask.js';

const MOST = 120;
const { vehicles = [], parts = [] } = demoDocument() as unknown as CatalogueDocument;
const current = vehicles.filter(({ replacedBy = [] }) => replacedBy.length === 0);

describe.each(SPOKEN)('in %s', (lang) => {
  test.each(current.map(({ id }) => id))('of every seventh part on %s', (vehicle) => {
    const some = parts.filter((_, index) => index % 7 === 0);
    const said = some.map(({ id }) => askFit(vehicle, id)(lang).summary.text);
    expect(said.length).toBeGreaterThan(40);
    expect(said.filter((text) => text.length > MOST)).toEqual([]);
  });

  test.each(['fits', 'fits-made-to-order', 'fits-already-there', 'unknown', 'goes-between'])(
    '%s, with long names of several places',
    (code) => {
      const names = ['Crown wheel and pinion of the front axle', 'Hinterer Bremsschlauch, rechts'];
      const text = say({ code, data: { names, count: 12 } }, lang);
      expect(text.length).toBeLessThanOrEqual(MOST);
      const one = say({ code, data: { names: ['rear hose'], count: 12 } }, lang);
      expect(one.length).toBeLessThanOrEqual(MOST);
      if (code !== 'goes-between') expect(one).toContain('rear hose');
    },
  );
});
