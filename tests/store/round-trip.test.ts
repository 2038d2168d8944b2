/**
 * What is published comes back: the same document to the byte, under the same hash, in any state
 * that it ever had, whether it is asked by the program that published or by another later.
 */

import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { canonicalDocument, canonicalJson } from '../../src/domain/catalogue/canonical.js';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import type { PreparedEdition } from '../../src/usecases/publish-edition.js';
import { demoDocument } from '../memory-store.js';
import { freshPath, open, publish } from './database.js';
import { cart, changedCart, demo, FIRST_DAY } from './prepared.js';

const sha256 = (bytes: string) => createHash('sha256').update(bytes).digest('hex');

describe.each<[string, PreparedEdition]>([
  ['the demo catalogue', demo],
  ['a small catalogue', cart()],
  ['one with lots, works, rulesets and options', changedCart()],
])('%s', (_, prepared) => {
  const path = freshPath();
  const writer = open(path);
  const published = publish(writer, prepared, { note: 'as measured' });
  writer.close();
  const reader = open(path, 'read-only');

  test('comes back as it was written, but for the order of its lists', () => {
    const { document } = reader.load(1);
    expect(document).toEqual(prepared.content.document);
    expect(canonicalJson(document)).toBe(canonicalJson(prepared.content.document));
  });

  test('has the hash of its canonical text', () => {
    const { head, document } = reader.load(1);
    expect(head.hash).toBe(`sha256-${sha256(canonicalJson(document))}`);
    expect(head.hash).toBe(prepared.content.hash);
  });

  test('has a head that says when, why and how much', () => {
    const { document } = prepared.content;
    const { head } = reader.load(1);
    expect(head).toEqual(published.edition);
    expect(head).toMatchObject({ number: 1, publishedAt: FIRST_DAY, note: 'as measured' });
    expect(head.counts.parts).toBe(document.parts?.length);
    expect(head.counts.vehicles).toBe(document.vehicles?.length);
    expect(Object.keys(head.counts)).not.toContain('offers');
    expect(reader.editions()).toEqual([head]);
    expect(reader.latest()).toEqual(head);
    expect(reader.edition(1)).toEqual(head);
  });

  test('has the columns of its compiled index', () => {
    const { columns } = reader.load(1);
    const byName = prepared.content.columns.toSorted((a, b) => (a.name < b.name ? -1 : 1));
    expect(columns.length).toBeGreaterThan(0);
    expect(columns).toEqual(byName);
  });

  test('compiles to the catalogue that was checked', () => {
    const { faults, catalogue } = compileDocument(reader.load(1).document, BUILT_IN_KINDS);
    expect(faults).toEqual([]);
    expect([...(catalogue?.parts.keys() ?? [])]).toEqual([
      ...prepared.content.catalogue.parts.keys(),
    ]);
  });

  test('is found well by a verification', () => {
    const { document } = prepared.content;
    const lists = Object.values(document).filter((value) => Array.isArray(value));
    // The head of the document is an entity as well.
    const entities = 1 + lists.reduce((sum, list: readonly unknown[]) => sum + list.length, 0);
    expect(reader.verify()).toEqual({ editions: 1, entities, disagreements: [] });
  });
});

test('the demo comes back as its author wrote it', () => {
  const store = open(freshPath());
  publish(store, demo);
  const author = canonicalDocument(demoDocument() as unknown as CatalogueDocument);
  expect(store.load(1).document).toEqual(JSON.parse(JSON.stringify(author)));
});

test('texts come back whatever is in them', () => {
  const texts = ["'; DROP TABLE parts; --", '"quoted"', 'ψ 鍵 🔧', 'é against é', '?1 :id $id @id'];
  const facts = texts.map((name, index) => ({
    id: `fact-${index}`,
    name,
    values: [
      { id: 'yes', name },
      { id: 'no', name: 'no' },
    ],
  }));
  const prepared = cart({ facts });
  const store = open(freshPath());
  publish(store, prepared);
  expect(store.load(1).document.facts).toEqual(prepared.content.document.facts);
  expect(store.load(1).document.facts?.map(({ name }) => name)).toEqual(texts);
  expect(store.verify().disagreements).toEqual([]);
});

test('each of many states comes back, long after it was replaced', () => {
  const path = freshPath();
  const states = [cart(), changedCart(), cart(), cart({ statements: [] }), demo, changedCart()];
  // The fourth is the third again: an empty list is none.
  const kept = states.filter((_, index) => index !== 3);
  const writer = open(path);
  for (const state of states) publish(writer, state);
  writer.close();
  const reader = open(path, 'read-only');
  const numbers = reader.editions().map(({ number }) => number);
  expect(numbers).toEqual([5, 4, 3, 2, 1]);
  for (const [index, { content }] of kept.entries()) {
    const { head, document, columns } = reader.load(index + 1);
    expect([head.number, head.hash]).toEqual([index + 1, content.hash]);
    expect(document).toEqual(content.document);
    expect(columns).toHaveLength(content.columns.length);
    for (const column of content.columns) expect(columns).toContainEqual(column);
  }
  expect(reader.verify().disagreements).toEqual([]);
});

test('a database in memory does the same, and is gone when it is closed', () => {
  const store = open(':memory:');
  publish(store, cart());
  expect(store.load(1).document).toEqual(cart().content.document);
  store.close();
  expect(open(':memory:').latest()).toBeNull();
});

test('an edition that was never published is a fault with a remedy', () => {
  const store = open(freshPath());
  expect(store.latest()).toBeNull();
  expect(store.edition(1)).toBeNull();
  expect(store.editions()).toEqual([]);
  publish(store, cart());
  for (const number of [0, 2, -1, 1.5, Number.MAX_SAFE_INTEGER]) {
    expect(store.edition(number)).toBeNull();
    expect(() => store.load(number)).toThrow(`there is no edition ${number}`);
  }
});
