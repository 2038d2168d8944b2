/**
 * Offers lie beside the editions: what they cost today, with a counter of their own, which grows
 * exactly when one of them changes.
 */

import { describe, expect, test } from 'vitest';
import type { OfferRecord } from '../../src/domain/catalogue/document.js';
import { connect, everything, freshPath, open, publish } from './database.js';
import { cart, demo, FIRST_DAY, NEXT_DAY } from './prepared.js';
import { refusalOf } from './some-files.js';

const plain: OfferRecord = { id: 'offer-1', for: 'box-b', price: '100.00' };
const full: OfferRecord = {
  id: 'offer-2',
  for: 'box-d',
  price: '0.10',
  condition: 'used',
  stock: 0,
  leadDays: 12,
  supplier: 'a shop',
  sku: '007',
  pack: '2 piece',
};
const withOffers = (...offers: readonly OfferRecord[]) => cart({ offers });

describe('offers', () => {
  test('are none before there are any', () => {
    const store = open(freshPath());
    expect(store.offersHead()).toEqual({ number: 0, publishedAt: null });
    expect(store.offers().records).toEqual([]);
  });

  test('come back as they were written, in the order of their ids', () => {
    const store = open(freshPath());
    publish(store, withOffers(full, plain));
    expect(store.offers().records).toEqual([plain, full]);
    expect(store.offersHead()).toEqual({ number: 1, publishedAt: FIRST_DAY });
  });

  test('of the demo come back too', () => {
    const store = open(freshPath());
    publish(store, demo);
    const { offers } = demo.content;
    expect(offers?.length).toBeGreaterThan(20);
    expect(store.offers().records).toEqual(offers?.toSorted((a, b) => (a.id < b.id ? -1 : 1)));
  });

  test('are in no edition: a price makes none, and is under no hash', () => {
    const store = open(freshPath());
    const dear = publish(store, withOffers(plain));
    const cheap = publish(store, withOffers({ ...plain, price: '1.00' }), {
      publishedAt: NEXT_DAY,
    });
    expect(cheap).toEqual({
      edition: dear.edition,
      isNew: false,
      offers: { number: 2, publishedAt: NEXT_DAY },
    });
    expect(store.load(1).document).not.toHaveProperty('offers');
    expect(store.offers().records).toEqual([{ ...plain, price: '1.00' }]);
  });

  test('stay as they are where a document says nothing of them', () => {
    const store = open(freshPath());
    publish(store, withOffers(plain));
    const silent = publish(store, cart({ offers: undefined, currency: 'CHF' }));
    expect(silent).toMatchObject({ isNew: true, edition: { number: 2 }, offers: { number: 1 } });
    expect(store.offers().records).toEqual([plain]);
  });

  test('end where a document says that there are none', () => {
    const store = open(freshPath());
    publish(store, withOffers(plain, full));
    const empty = publish(store, withOffers(), { publishedAt: NEXT_DAY });
    expect(empty).toMatchObject({ isNew: false, offers: { number: 2, publishedAt: NEXT_DAY } });
    expect(store.offers().records).toEqual([]);
    expect(publish(store, withOffers()).offers.number).toBe(2);
  });
});

test('the counter grows exactly when an offer changes', () => {
  const path = freshPath();
  const store = open(path);
  const numbers: number[] = [];
  const states: readonly (readonly OfferRecord[])[] = [
    [],
    [plain],
    [plain],
    [plain, full],
    [full, plain],
    [plain, { ...full, stock: 1 }],
    [plain, { ...full, stock: 1, supplier: 'another' }],
    [plain],
    [{ ...plain, for: 'box-d' }],
    [],
    [],
    [plain],
  ];
  for (const offers of states) {
    numbers.push(publish(store, withOffers(...offers)).offers.number);
    expect(store.offers().records).toEqual(offers.toSorted((a, b) => (a.id < b.id ? -1 : 1)));
  }
  expect(numbers).toEqual([0, 1, 1, 2, 2, 3, 4, 5, 6, 7, 7, 8]);
  expect(store.editions()).toHaveLength(1);
  expect(open(path, 'read-only').offersHead().number).toBe(8);
});

test('an offer that did not change keeps the state that brought it', () => {
  const path = freshPath();
  const store = open(path);
  publish(store, withOffers(plain, full));
  publish(store, withOffers({ ...plain, price: '90.00' }, full));
  const rows = connect(path).prepare('SELECT id, price, from_offers FROM offers ORDER BY id');
  expect(rows.raw().all()).toEqual([
    ['offer-1', '90.00', 2],
    ['offer-2', '0.10', 1],
  ]);
});

describe('in SQL, past the program', () => {
  const path = freshPath();
  const store = open(path);
  publish(store, withOffers(plain, full));
  publish(store, withOffers(plain, full, { ...plain, id: 'offer-3' }));
  const connection = connect(path);

  test('every field is a column', () => {
    const columns = '"for", price, condition, stock, lead_days, supplier, sku, pack';
    const row = connection.prepare(`SELECT ${columns} FROM offers WHERE id = 'offer-2'`).get();
    const { leadDays: lead_days, id: _, ...others } = full;
    expect(row).toEqual({ lead_days, ...others });
  });

  test.each([
    'UPDATE offers_state SET number = number',
    'UPDATE offers_state SET number = 1',
    'DELETE FROM offers_state',
    `INSERT OR REPLACE INTO offers_state VALUES (1, 1, '${FIRST_DAY}')`,
    `INSERT INTO offers_state VALUES (2, 9, '${FIRST_DAY}')`,
  ])('the counter only grows: %s', (sql) => {
    const asItWas = everything(path);
    expect(() => connection.exec(sql)).toThrow(/counter of the offers/);
    expect(everything(path)).toEqual(asItWas);
  });

  test.each([
    ['for', "'box-b'"],
    ['price', "'0.1'"],
    ['condition', 'NULL'],
    ['stock', '5'],
    ['lead_days', 'NULL'],
    ['supplier', "'a Shop'"],
    ['sku', "'7'"],
    ['pack', "'3 piece'"],
  ])('a column that says other than its record is found: %s', (column, value) => {
    connection.exec(`BEGIN; UPDATE offers SET "${column}" = ${value} WHERE id = 'offer-2'; COMMIT`);
    const fault = refusalOf(() => store.offers());
    expect(fault.message).toBe('the offer offer-2 does not agree with its record');
    expect(store.verify().disagreements).toEqual([fault.message]);
    connection
      .prepare(`UPDATE offers SET "${column}" = ? WHERE id = 'offer-2'`)
      .run(full[(COLUMN_FIELDS[column] ?? column) as keyof OfferRecord]);
    expect(store.verify().disagreements).toEqual([]);
  });
});

const COLUMN_FIELDS: Readonly<Record<string, string>> = { lead_days: 'leadDays' };
