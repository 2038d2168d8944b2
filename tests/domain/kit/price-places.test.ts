/**
 * What is done at places, worked out by hand: what goes in and comes out, hands, labour, what is
 * opened. The arithmetic stands beside each.
 */

import { describe, expect, test } from 'vitest';
import { moneyText } from '../../../src/domain/kit/money.js';
import { exactText } from '../../../src/domain/quantity/rational.js';
import { OFFERS, priced, shown } from './garage.js';
import { bill, change, pair, shop } from './shop.js';

describe('a part that takes the place of another', () => {
  test('is added, and the other removed; its labour stands on what is added', () => {
    const { asked, basket } = priced({ offers: OFFERS, labourRate: '60.00' });
    const found = basket(bill(change(asked, 'box', ['box-a', 'box-b'])));
    expect(shown(found)).toEqual([
      'add:box:box-b 1 offer 900.00 6h',
      'remove:box:box-a 1 - 0.00 0h',
    ]);
    // 900 + 6 x 60.
    expect(moneyText(found!.totals.cost)).toBe('1260.00');
    expect(found!.totals).toMatchObject({ changedPositions: 1, leadDays: 3, untimed: [] });
  });

  test('costs each so many times as there are pieces', () => {
    const { asked, basket } = priced({ offers: OFFERS });
    const found = basket(bill(change(asked, 'wheel', ['wheel-b', 'wheel-a'])));
    // 4 x 60, and 4 x 0.25 h; without a rate, labour has no price.
    expect(shown(found)[0]).toBe('add:wheel:wheel-a 4 offer 240.00 1h');
    expect(found!.totals.labour).toBeNull();
    expect(moneyText(found!.totals.cost)).toBe('240.00');
  });

  test('comes alone where nothing, or nothing recorded, was there', () => {
    const { asked, basket } = priced({ offers: OFFERS });
    const lines = ['add:box:box-b 1 offer 900.00 6h'];
    expect(shown(basket(bill(change(asked, 'box', [null, 'box-b']))))).toEqual(lines);
    expect(shown(basket(bill(change(asked, 'box', ['?', 'box-b']))))).toEqual(lines);
  });

  test('goes out alone where nothing goes in, with the labour of it', () => {
    const { asked, basket } = priced();
    const out = (now: string) => shown(basket(bill(change(asked, 'box', [now, null]))));
    expect(out('box-a')).toEqual(['remove:box:box-a 1 - 0.00 6h']);
    expect(out('?')).toEqual(['remove:box 1 - 0.00 6h']);
  });

  test('may be the same article anew, which is no changed position', () => {
    const { asked, basket } = priced({ offers: OFFERS });
    const found = basket(bill(change(asked, 'box', ['box-b', 'box-b'])));
    expect(shown(found)).toEqual([
      'add:box:box-b 1 offer 900.00 6h',
      'remove:box:box-b 1 - 0.00 0h',
    ]);
    expect(found!.totals.changedPositions).toBe(0);
  });

  test('has labour that nobody recorded', () => {
    const { asked, basket } = priced({ offers: OFFERS, labourRate: '60.00' });
    const found = basket(bill(change(asked, 'trim', [null, 'trim-a'])));
    expect(shown(found)).toEqual(['add:trim:trim-a 1 offer 9.99 ?']);
    expect(found!.totals.untimed).toEqual(['add:trim:trim-a']);
    expect(found!.lines[0]!.labourPrice).toBeNull();
  });
});

describe('the two hands of a place', () => {
  const offers = ['shaft-a 100.00', 'shaft-b 120.00'];

  test('have one line where they take the same', () => {
    const { asked, basket } = priced({ offers });
    expect(shown(basket(bill(...pair(asked, 'shaft', ['shaft-b', 'shaft-a']))))).toEqual([
      'add:shaft:shaft-a 2 offer 200.00 1.6h',
      'remove:shaft:shaft-b 2 - 0.00 0h',
    ]);
  });

  test('have a line each where they differ, named after the hand', () => {
    const { asked, basket } = priced({ offers });
    const found = basket(bill(...pair(asked, 'shaft', ['?', 'shaft-a'], ['shaft-a', 'shaft-b'])));
    expect(shown(found)).toEqual([
      'add:shaft:shaft-a:left 1 offer 100.00 0.8h',
      'add:shaft:shaft-b:right 1 offer 120.00 0.8h',
      'remove:shaft:shaft-a:right 1 - 0.00 0h',
    ]);
    expect(found!.totals.changedPositions).toBe(1);
    expect(found!.lines.map(({ hand }) => hand)).toEqual(['left', 'right', 'right']);
  });

  test('have one named after the hand where only that is changed', () => {
    const { asked, basket } = priced({ offers });
    expect(shown(basket(bill(change(asked, 'shaft', [null, 'shaft-a'], 'right'))))).toEqual([
      'add:shaft:shaft-a:right 1 offer 100.00 0.8h',
    ]);
  });

  test('share the time to get the place out of the way where that is longer', () => {
    const catalogue = shop({ places: ['shaft<> 0.8h /1.5h'], parts: ['shaft-a', 'shaft-b'] });
    const { asked, basket } = priced({}, catalogue);
    const hours = (...changes: ReturnType<typeof pair>) =>
      basket(bill(...changes))!.lines.map(({ labourHours }) => exactText(labourHours!));
    // One hand: 1.5 rather than 0.8; both: 1.6 rather than 1.5.
    expect(hours(change(asked, 'shaft', [null, 'shaft-a'], 'left'))).toEqual(['1.5']);
    expect(hours(...pair(asked, 'shaft', [null, 'shaft-a']))).toEqual(['1.6']);
    expect(hours(...pair(asked, 'shaft', [null, 'shaft-a'], [null, 'shaft-b']))).toEqual([
      '1.6',
      '0',
    ]);
  });
});

describe('a place that is opened', () => {
  test('has a line with the time to get it out of the way', () => {
    const { asked, basket } = priced({ offers: OFFERS, labourRate: '60.00' });
    const prop = asked.vehicle.layout.positions.get('prop')!;
    const found = basket({ ...bill(change(asked, 'box', [null, 'box-b'])), opened: [prop] });
    expect(shown(found)).toEqual(['add:box:box-b 1 offer 900.00 6h', 'open:prop 1 - 0.00 0.5h']);
    // 900 + 6 x 60 + 0.5 x 60; the opened place is not changed.
    expect(moneyText(found!.totals.cost)).toBe('1290.00');
    expect(found!.totals.changedPositions).toBe(1);
  });

  test('takes the longer of both times where it is changed itself', () => {
    const catalogue = shop({ places: ['box 1h /4h', 'trim /2h'], parts: ['box-a', 'trim-a'] });
    const { asked, basket } = priced({}, catalogue);
    const found = basket(
      bill(change(asked, 'box', [null, 'box-a']), change(asked, 'trim', [null, 'trim-a'])),
    );
    expect(shown(found)).toEqual([
      'add:box:box-a 1 unpriced ? 4h',
      // Nobody recorded how long the change takes; but no less than this.
      'add:trim:trim-a 1 unpriced ? 2h',
    ]);
    expect(found!.totals.untimed).toEqual(['add:trim:trim-a']);
    expect(exactText(found!.totals.labourHours)).toBe('6');
  });
});
