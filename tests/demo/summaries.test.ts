/**
 * A summary stands on a badge: at most 120 characters, in each language, for every part on every
 * vehicle of the demo, and where the names of places are as long as any.
 */

import { describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { KIT_CODES } from '../../src/domain/explain/reason.js';
import { SPOKEN, say } from '../../src/domain/explain/words.js';
import { demoDocument } from '../memory-store.js';
import { askFit } from './ask.js';

const MOST = 120;
const { vehicles = [], parts = [] } = demoDocument() as unknown as CatalogueDocument;
const current = vehicles.filter(({ replacedBy = [] }) => replacedBy.length === 0);

/** Made to fit, by works that somebody must sign for, and in no way. */
const changed = [
  ['gearbox-6-late', 'lirren-1'],
  ['front-hub-117', 'lirren-1'],
  ['prop-remade', 'lirren-1'],
] as const;

const CHANGED_CODES = [
  'fits-with-changes',
  'fits-unless-alone',
  'may-fit-with-changes',
  'search-cut-short',
  'does-not-fit',
] as const;

describe.each(SPOKEN)('in %s', (lang) => {
  test.each(current.map(({ id }) => id))('of every seventh part on %s', (vehicle) => {
    const some = parts.filter((_, index) => index % 7 === 0);
    const said = some.map(({ id }) => askFit(vehicle, id)(lang).summary.text);
    expect(said.length).toBeGreaterThan(40);
    expect(said.filter((text) => text.length > MOST)).toEqual([]);
  });

  test.each(changed)('of %s on %s with changes around it, and of its kit', (part, vehicle) => {
    const { summary, kit } = askFit(vehicle, part, { changes: 'yes' })(lang);
    expect(summary.text.length).toBeLessThanOrEqual(MOST);
    expect(kit?.summary.text.length ?? 0).toBeLessThanOrEqual(MOST);
  });

  test.each([...KIT_CODES, ...CHANGED_CODES])('%s, with all that can be said', (code) => {
    const price = { text: '12345.50 EUR', low: '12345.50', high: '12345.50' };
    const names = ['Crown wheel and pinion of the front axle', 'Hinterer Bremsschlauch, rechts'];
    const told = { places: 18, facts: 12, unpriced: 14, price: { ...price, unit: 'EUR' } };
    const ways = { count: 20, more: true as const };
    for (const own of [{ names }, { text: 'engineer' }, {}]) {
      const text = say({ code, data: { ...told, ...ways, ...own } }, lang);
      expect([text, text.length <= MOST]).toEqual([text, true]);
    }
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
