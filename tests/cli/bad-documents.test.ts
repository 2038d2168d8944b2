/**
 * Documents that should never have been sent: each is refused in words, by `lint` and by
 * `publish`, and what was published before stands as it stood.
 */

import { describe, expect, test } from 'vitest';
import { CART } from './catalogue.js';
import { cartDatabase, run } from './terminal.js';

const MILLION = 1_000_000;
const FIFTY_MEGABYTES = 50_000_000;

/** On one line, so that a row can name a piece of it. */
const CART_TEXT = JSON.stringify(CART);

const database = await cartDatabase();
const published = await run(['editions', '--json'], { database });

/** The cart with something in place of a text of it. */
function cartWith(from: string, to: string): string {
  if (!CART_TEXT.includes(from)) throw new Error(`the cart has no ${from}`);
  return CART_TEXT.replace(from, () => to);
}

/** The cart with a list of other things. */
function cartAnd(list: string, items: string): string {
  return CART_TEXT.replace(/\}$/, () => `,"${list}":[${items}]}`);
}

type Row = readonly [name: string, text: string, said: RegExp];

const rows: readonly Row[] = [
  [
    'a name of fifty megabytes',
    cartWith('"name":"motor"', `"name":"${'m'.repeat(FIFTY_MEGABYTES)}"`),
    /^\/parts\/0\/name: A text has 2000 characters at most\.$/m,
  ],
  [
    'a million faults, which are counted',
    cartAnd('rules', Array.from({ length: MILLION }, () => '5').join()),
    /^bad\.json: 10001 faults(.|\n)*There are more faults, 990000 of them, that are not listed\.$/m,
  ],
  [
    'lists in lists, a hundred thousand deep',
    cartAnd('rules', `${'['.repeat(100_000)}${']'.repeat(100_000)}`),
    /^\/rules\/0(\/0)*: .*deep/m,
  ],
  [
    'conditions in conditions',
    cartAnd(
      'rules',
      '{"id":"r","because":"b","note":"n","when":' +
        `${'{"not":'.repeat(20)}{"changed":"gearbox"}${'}'.repeat(20)}}`,
    ),
    /^\/rules\/0\/when(\/not)+: Conditions may nest 16 deep at most\.$/m,
  ],
  [
    'a name that would poison every object',
    cartWith('"name":"motor"', '"name":"motor","__proto__":{"lang":"xx"}'),
    /^\/parts\/0\/__proto__: /m,
  ],
  [
    'a constructor',
    cartWith('"name":"motor"', '"name":"motor","constructor":{"prototype":{"lang":"xx"}}'),
    /^\/parts\/0\/constructor: There is no field "constructor" here\.$/m,
  ],
  [
    'NUL in a name',
    cartWith('"name":"motor"', '"name":"mo\\u0000tor"'),
    /^\/parts\/0\/name: .*control character/m,
  ],
  [
    'half a character',
    cartWith('"name":"motor"', '"name":"mo\\ud800tor"'),
    /^\/parts\/0\/name: .*half a character/m,
  ],
  [
    'a number that no double holds',
    cartWith('"count":2', '"count":9007199254740993'),
    /^\/layouts\/0\/positions\/3\/count: Wanted here: a whole number, 1 to 100\.$/m,
  ],
  [
    'a value that no double holds',
    cartWith('"torque":"150 N.m"', '"torque":90071992547409931'),
    /^\/parts\/0\/values\/torque: Write numbers this large as text, so that no digit is lost\.$/m,
  ],
  [
    'an id with a space',
    cartWith('"id":"box-b"', '"id":"box b"'),
    /^\/parts\/2\/id: "box b" is no id: /m,
  ],
  [
    'an id twice',
    cartWith('"id":"box-b"', '"id":"box-a"'),
    /^\/parts\/2\/id: "box-a" is there twice\.$/m,
  ],
  [
    'a name twice in one object',
    cartWith('"name":"motor"', '"name":"motor","name":"engine"'),
    /^\/parts\/0\/name: /m,
  ],
  [
    'parts that took one another’s place',
    cartWith(
      '"id":"motor"',
      '"id":"motor-2","supersededBy":"motor","name":"m","roles":["engine"]},' +
        '{"id":"motor","supersededBy":"motor-2"',
    ),
    /^\/parts\/[01]\/supersededBy: These parts took one another's place: motor-2, motor, m/m,
  ],
  [
    'a vehicle of a layout that there is not',
    cartWith('"layout":"cart"', '"layout":"carts"'),
    /^\/vehicles\/0\/layout: There is no layout "carts"\. Did you mean 'cart'\?$/m,
  ],
  [
    'a term that names itself',
    cartWith(
      '"checks":[{"id":"box-torque"',
      '"terms":{"loop":{"sum":["loop","1 mm"]}},"checks":[{"id":"box-torque"',
    ),
    /^\/layouts\/0\/terms\/loop: "loop" is computed from itself\.$/m,
  ],
  [
    'a mating that names one position twice',
    cartWith(
      '"between":["gearbox.rear","prop-shaft.front"]',
      '"between":["gearbox.rear","gearbox.top"]',
    ),
    /^\/layouts\/0\/matings\/0\/between.*: /m,
  ],
  [
    'a list that ends too soon',
    CART_TEXT.slice(0, -20),
    /^.*line \d+, column \d+: .* is expected/m,
  ],
  ['no JSON', '%PDF-1.7', /line 1, column 1/],
];

describe.each(rows)('%s', (_, text, said) => {
  test('is refused in words', async () => {
    const { code, out, err } = await run(['lint', 'bad.json'], { files: { 'bad.json': text } });
    expect(code).toBe(2);
    expect(`${out}${err}`).toMatch(said);
    expect(`${out}${err}`).not.toMatch(/\bat .*\.[jt]s:\d+/);
  });

  test('and leaves what was published', async () => {
    const asked = ['publish', 'bad.json'];
    const { code } = await run(asked, { files: { 'bad.json': text }, database });
    expect(code).toBe(2);
    const after = await run(['editions', '--json'], { database });
    expect(after.out).toBe(published.out);
    const question = ['fit', 'cart-1', 'box-a', '--json'];
    expect((await run(question, { database })).code).toBe(0);
  });
});

test('a bore that is compared by equal is doubted, and published', async () => {
  const text = cartWith('{"equal":"pattern"}', '{"equal":"pattern"},{"equal":"register"}');
  const { code, out } = await run(['lint', 'a.json'], { files: { 'a.json': text } });
  expect(code).toBe(0);
  expect(out).toMatch(/^\/kinds\/0\/checks\/1\/equal: Two measures are never exactly equal/m);
});

test('nothing that was read has reached an object of the program', () => {
  expect(Object.hasOwn(Object.prototype, 'lang')).toBe(false);
});
