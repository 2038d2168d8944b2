/** Parts by any of their names on a terminal, and what a name leads to. */

import { beforeAll, describe, expect, test } from 'vitest';
import { NAMED } from '../http/named-parts.js';
import { freshDatabase, run } from './terminal.js';

let database: string;
beforeAll(async () => {
  database = freshDatabase();
  const files = { 'named.json': JSON.stringify(NAMED) };
  const { code } = await run(['publish', 'named.json'], { database, files });
  expect(code).toBe(0);
});

const ask = (...words: string[]) => run(words, { database });

describe('a part may be named', () => {
  test('by a number or an order code, wherever a command takes one', async () => {
    const fit = await ask('fit', 'cart-1', 'sku:GB-7700', '--fitted', 'gearbox=44/10-070');
    expect([fit.code, fit.err]).toEqual([0, '']);
    expect(fit.out.split('\n').slice(1, 4)).toEqual([
      '“strong gearbox” (strong-box) on cart-1.',
      '“44/10-070” is “old gearbox” (old-box).',
      'old-box has been superseded by strong-box.',
    ]);
    const inspect = await ask('inspect', 'cart-1', '--fitted', 'gearbox=number:s+7', '--lang=de');
    expect(inspect.out).toContain('„number:s+7“ ist „Getriebe, verstärkt“ (strong-box).');
    const mate = await ask('mate', 'sku:GB-7700', 'shaft-a', '--a-face', 'rear');
    expect(mate.out).toContain('“sku:GB-7700” is “strong gearbox” (strong-box).');
  });

  test('where one is shown, with all that is recorded of it', async () => {
    const { out } = await ask('show', 'part', 'sku:GB-7700');
    expect(out).toBe((await ask('show', 'part', 'strong-box')).out);
    expect(out).toContain('44/10-077');
    const { code, err } = await ask('show', 'part', '44/10 077');
    expect([code, err.slice(0, 41)]).toEqual([2, 'faying: "44/10 077" is of more than one p']);
    const worked = await ask('show', 'part', 'strong-box+polish');
    expect(worked.code).toBe(2);
  });

  test('and one that is superseded says so', async () => {
    const { out } = await ask('fit', 'cart-1', 'number:44/10 070');
    expect(out.split('\n').slice(1, 3)).toEqual([
      '“old gearbox” (old-box) on cart-1.',
      'old-box has been superseded by strong-box.',
    ]);
    const { out: told } = await ask('fit', 'cart-1', 'number:44/10 070', '--json');
    expect(JSON.parse(told)).toMatchObject({ asked: 'number:44/10 070', resolvedBy: 'number' });
  });
});

describe('a name is refused', () => {
  test('that is of several parts, with all of them', async () => {
    const { code, out, err } = await ask('fit', 'cart-1', '44/10 077');
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(
      'faying: "44/10 077" is of more than one part: hook (Fennuld Spares), strong-box ' +
        '(Wainer & Söhne). Name the part by its id.\n',
    );
  });

  test('of a vehicle that others took the place of, with what to ask', async () => {
    const { code, err } = await ask('fit', 'cart-rough', 'box-a', '--lang', 'de');
    expect(code).toBe(2);
    expect(err.split('\n')).toEqual([
      'faying: „cart-rough“ wird nicht mehr gepflegt: An die Stelle traten cart-1, cart-l, cart-s.',
      'Um herauszufinden, welches es ist:',
      '  - Ausführung: long; oder short.',
      '',
    ]);
    const told = JSON.parse((await ask('inspect', 'cart-rough', '--json')).err);
    expect(told).toMatchObject({ code: 'vehicle-replaced', ask: [{ field: 'variant' }] });
  });
});
