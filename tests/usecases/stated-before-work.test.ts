/**
 * What is stated of a part before a work has been done on it.
 */

import { describe, expect, test } from 'vitest';
import { checkFit } from '../../src/usecases/check-fit.js';
import { CART } from '../cli/catalogue.js';
import { libraryOf } from '../memory-store.js';

const gearbox = { 'one-of': ['role', ['gearbox']] };

function question(part: string) {
  const vehicle = {
    vehicle: 'cart-1',
    fitted: {},
    adapters: {},
    measured: [],
    facts: {},
    with: {},
  };
  const asked = {
    edition: null,
    lang: 'en',
    units: 'recorded' as const,
    torque: null,
    use: null,
    ignorePresent: false,
  };
  return { ...vehicle, ...asked, part, position: null, changes: 'no' as const };
}

describe('that a part does not fit', () => {
  const denied = (basis: string, wide: object = {}) => {
    const statement = { id: 'list', part: 'box-d', vehicles: ['cart-1'], position: 'gearbox' };
    const statements = [{ ...statement, verdict: 'does-not-fit', evidence: { basis: 'maker' } }];
    const gives = { interfaces: { rear: { pattern: 'f1' } } };
    const works = [{ id: 'paint', name: 'painted', on: gearbox, gives }];
    return libraryOf({ ...CART, evidence: { basis }, statements, works, ...wide });
  };
  const found = (library: ReturnType<typeof denied>, part: string) => {
    const { alone, positions } = checkFit(library, question(part));
    return [alone, ...positions.flatMap((one) => one.statements.map(({ code }) => code))];
  };

  test('is open of what a work makes of it, until all of that is measured', () => {
    const listed = denied('maker');
    expect(found(listed, 'box-d')).toEqual(['open', 'contradicts-statement']);
    expect(found(listed, 'box-d+paint')).toEqual(['open', 'stated-before-work']);
    expect(found(listed, 'box-a+paint')).toEqual(['holds']);
    expect(found(denied('measured'), 'box-d+paint')).toEqual(['holds']);
  });
});
