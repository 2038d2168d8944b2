/**
 * Keys in the database: known again by what is shown, and by nothing that is kept.
 */

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { openStore } from '../../src/store/sqlite.js';
import { StoreFault } from '../../src/usecases/ports.js';
import { freshDatabase } from '../cli/terminal.js';

const MADE_AT = '2026-01-01T00:00:00.000Z';
const ENDED_AT = '2026-02-01T00:00:00.000Z';
const TRADE = { name: 'workshop', scopes: ['trade', 'batch'], origins: [] } as const;
const PAGE = { name: 'shop', scopes: ['public'], origins: ['https://shop.example'] } as const;

function made() {
  const path = freshDatabase();
  const store = openStore(path, { mode: 'create' });
  return { path, store, trade: store.addKey(TRADE, MADE_AT), page: store.addKey(PAGE, MADE_AT) };
}

describe('a key', () => {
  test('has 256 bits that nobody guesses, and says whether pages may have it', () => {
    const { store, trade, page } = made();
    expect(trade.text).toMatch(/^fy_[a-z2-7]{8}_[A-Za-z0-9_-]{43}$/);
    expect(page.text).toMatch(/^fyp_[a-z2-7]{8}_[A-Za-z0-9_-]{43}$/);
    expect(trade.text.slice(3, 11)).toBe(trade.key.id);
    expect(Buffer.from(trade.text.slice(12), 'base64url')).toHaveLength(32);
    const many = Array.from({ length: 50 }, () => store.addKey(TRADE, MADE_AT).text);
    expect(new Set(many).size).toBe(50);
    store.close();
  });

  test('is known by its whole text alone', () => {
    const { store, trade, page } = made();
    expect(store.recognise(trade.text)).toEqual({
      ...TRADE,
      id: trade.key.id,
      madeAt: MADE_AT,
      endedAt: null,
    });
    expect(store.recognise(page.text)?.origins).toEqual(PAGE.origins);
    const last = trade.text.endsWith('A') ? 'B' : 'A';
    for (const wrong of [
      '',
      trade.key.id,
      trade.text.slice(0, -1),
      `${trade.text}A`,
      `${trade.text.slice(0, -1)}${last}`,
      trade.text.replace(/^fy_/, 'fyp_'),
      trade.text.replace(trade.key.id, page.key.id),
      trade.text.toUpperCase(),
      ` ${trade.text}`,
    ]) {
      expect([wrong, store.recognise(wrong)]).toEqual([wrong, null]);
    }
    store.close();
  });

  test('is not in the file, but its SHA-256 is', () => {
    const { path, store, trade } = made();
    store.close();
    const connection = new Database(path, { readonly: true });
    const row = connection.prepare('SELECT sha256 FROM keys WHERE id = ?').get(trade.key.id);
    const expected = createHash('sha256').update(trade.text).digest();
    expect(row).toEqual({ sha256: expected });
    connection.close();
    expect(readFileSync(path).includes(trade.text.slice(12))).toBe(false);
  });

  test('opens nothing once it has ended, and stays in the list', () => {
    const { store, trade, page } = made();
    store.endKey(trade.key.id, ENDED_AT);
    expect(store.recognise(trade.text)).toBeNull();
    expect(store.recognise(page.text)).not.toBeNull();
    const ended = store.keys().find(({ id }) => id === trade.key.id);
    expect(ended).toEqual({ ...trade.key, endedAt: ENDED_AT });
    store.close();
  });
});

describe('the table of keys', () => {
  test('lets no key be changed, begun again or deleted', () => {
    const { path, store, trade } = made();
    store.endKey(trade.key.id, ENDED_AT);
    store.close();
    const connection = new Database(path);
    for (const sql of [
      `UPDATE keys SET scopes = '["admin"]'`,
      `UPDATE keys SET sha256 = zeroblob(32)`,
      `UPDATE keys SET ended_at = NULL WHERE ended_at IS NOT NULL`,
      `UPDATE keys SET ended_at = '2027-01-01T00:00:00.000Z' WHERE ended_at IS NOT NULL`,
      'DELETE FROM keys',
    ]) {
      expect(() => connection.exec(sql), sql).toThrow(/a key (never changes|ends once|is never)/);
    }
    connection.close();
  });

  test('is not written to where the database is opened for reading', () => {
    const { path, store, trade } = made();
    store.close();
    const reading = openStore(path, { mode: 'read-only' });
    expect(() => reading.addKey(TRADE, MADE_AT)).toThrow(StoreFault);
    expect(() => reading.endKey(trade.key.id, ENDED_AT)).toThrow(StoreFault);
    expect(reading.recognise(trade.text)).not.toBeNull();
    reading.close();
  });

  test('with a scope of a program to come opens nothing by it, and can be ended', () => {
    const { path, store, trade, page } = made();
    store.close();
    const connection = new Database(path);
    connection.exec('DROP TRIGGER keys_changed');
    connection.exec(`UPDATE keys SET scopes = '["everything"]' WHERE id = '${trade.key.id}'`);
    connection.close();
    const again = openStore(path, { mode: 'create' });
    expect(again.recognise(trade.text)?.scopes).toEqual([]);
    expect(again.recognise(page.text)?.scopes).toEqual(['public']);
    again.endKey(trade.key.id, ENDED_AT);
    expect(again.recognise(trade.text)).toBeNull();
    again.close();
  });

  test('that is no row of ours is a fault of whoever shows it, and of nobody else', () => {
    const { path, store, trade, page } = made();
    store.close();
    const connection = new Database(path);
    connection.exec('DROP TRIGGER keys_changed');
    connection.exec(`UPDATE keys SET scopes = '[1]' WHERE id = '${trade.key.id}'`);
    connection.close();
    const reading = openStore(path, { mode: 'read-only' });
    expect(() => reading.recognise(trade.text)).toThrow(StoreFault);
    expect(reading.recognise(page.text)?.id).toBe(page.key.id);
    expect(reading.pages()).toEqual(PAGE.origins);
    reading.close();
  });

  test('tells which pages have a key that stands', () => {
    const { store, page } = made();
    expect(store.pages()).toEqual(PAGE.origins);
    store.endKey(page.key.id, ENDED_AT);
    expect(store.pages()).toEqual([]);
    store.close();
  });
});
