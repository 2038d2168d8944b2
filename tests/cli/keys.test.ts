/**
 * `faying keys`: a key is printed once, and known again by nothing but itself.
 */

import { describe, expect, test } from 'vitest';
import { openStore } from '../../src/store/sqlite.js';
import { freshDatabase, NOW, run } from './terminal.js';

const KEY = /^(fyp?_[a-z2-7]{8}_[A-Za-z0-9_-]{43})\n/;

describe('faying keys', () => {
  test('makes a key that the service knows, lists it without its text, and ends it', async () => {
    const database = freshDatabase();
    const words = ['keys', 'add', 'Workshop', '--scope', 'batch', '--scope', 'trade'];
    const made = await run(words, { database });
    expect([made.code, made.err, made.leftOpen]).toEqual([0, '', 0]);
    const [, text = ''] = KEY.exec(made.out) ?? [];
    const store = openStore(database, { mode: 'read-only' });
    const key = store.recognise(text);
    expect(key).toMatchObject({ name: 'Workshop', scopes: ['trade', 'batch'], madeAt: NOW });
    const list = await run(['keys', 'list'], { database });
    expect(list.out).toContain(`${key?.id}  Workshop\n  scopes trade, batch\n  made ${NOW}\n`);
    expect(list.out).not.toContain(text);
    const ended = await run(['keys', 'end', key?.id ?? ''], { database });
    expect(ended.out).toBe(`Ended ${key?.id}, Workshop.\n`);
    expect(store.recognise(text)).toBeNull();
    store.close();
    const json = await run(['keys', 'list', '--json'], { database });
    expect(JSON.parse(json.out)).toEqual([{ ...key, endedAt: NOW }]);
    const again = await run(['keys', 'end', key?.id ?? ''], { database });
    expect([again.code, again.err]).toEqual([2, expect.stringContaining(`ended on ${NOW}`)]);
  });

  test('makes a key for pages', async () => {
    const database = freshDatabase();
    const words = ['keys', 'add', 'Shop', '--scope', 'public', '--json'];
    const origins = ['https://shop.example', 'http://localhost:3000'];
    const flags = origins.flatMap((origin) => ['--origin', origin]);
    const { code, out } = await run([...words, ...flags], { database });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      key: { origins },
      text: expect.stringMatching(/^fyp_/),
    });
  });

  test.each([
    [['Shop'], 'no-scope'],
    [[' ', '--scope', 'full'], 'no-name'],
    [['Shop', '--scope', 'public', '--origin', 'shop.example'], 'not-an-origin'],
    [['Shop', '--scope', 'trade', '--origin', 'https://shop.example'], 'more-than-public'],
  ])('refuses %j: %s', async (words, fault) => {
    const database = freshDatabase();
    const { code, err } = await run(['keys', 'add', ...words, '--json'], { database });
    expect(code).toBe(2);
    expect(JSON.parse(err)).toMatchObject({ code: 'bad-key', errors: [{ code: fault }] });
    expect((await run(['keys', 'list', '--json'], { database })).out).toBe('[]\n');
  });

  test('knows no other scopes, and no keys that are not there', async () => {
    const database = freshDatabase();
    const scope = await run(['keys', 'add', 'x', '--scope', 'everything'], { database });
    expect([scope.code, scope.err]).toEqual([2, expect.stringContaining('public, trade, full')]);
    const end = await run(['keys', 'end', 'nobodyyy'], { database });
    expect([end.code, end.err]).toEqual([2, expect.stringContaining('There is no key')]);
  });
});
