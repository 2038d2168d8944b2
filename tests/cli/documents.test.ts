/** `lint` and `publish`: documents that are in order, doubtful, faulty, and no documents at all. */

import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { counted } from '../../src/cli/words/english-show.js';
import { lintDocument } from '../../src/usecases/publish-edition.js';
import { CART, cartText } from './catalogue.js';
import { freshDatabase, NOW, run } from './terminal.js';

/** Wrong in six places, of five sorts. */
const faulty = {
  parts: [
    ...CART.parts,
    { id: 'Box', name: 'capital', roles: ['gearbox'] },
    { id: 'box-a', name: 'twice', roles: ['gearbox'] },
    { id: 'box-x', name: 'no such role', roles: ['gearbx'] },
    { id: 'box-y', name: 'no length', roles: ['gearbox'], values: { torque: '3 mm' } },
  ],
  vehicles: [{ id: 'cart-2', make: 'Wainer', model: 'Cart', layout: 'carrt', fitted: {} }],
};

/** The works cannot have built it so. */
const doubtful = {
  vehicles: [
    {
      ...CART.vehicles[0],
      fitted: { ...CART.vehicles[0]?.fitted, gearbox: 'box-b' },
    },
  ],
};

async function editionsOf(database: string): Promise<unknown[]> {
  const { out } = await run(['editions', '--json'], { database });
  return JSON.parse(out).items;
}

describe('lint', () => {
  test('counts what there is in a document that is in order', async () => {
    const { code, out, err } = await run(['lint', 'a.json'], { files: { 'a.json': cartText() } });
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')).toEqual([
      'a.json: 0 faults, 0 warnings',
      '9 parts, 1 vehicle, 1 layout, 5 roles, 1 kind, 1 offer.',
      '',
    ]);
  });

  test('reads the standard input, and opens no database', async () => {
    const { code, out, opened } = await run(['lint', '-'], { input: `\ufeff${cartText()}` });
    expect([code, opened]).toEqual([0, []]);
    expect(out).toMatch(/^standard input: 0 faults/);
  });

  test('says every fault at its pointer, and exits with 2', async () => {
    const files = { 'a.json': cartText(faulty) };
    const { code, out, err } = await run(['lint', 'a.json'], { files });
    const { faults, warnings } = lintDocument(JSON.parse(cartText(faulty)));
    expect([code, err]).toEqual([2, '']);
    expect(faults.length).toBeGreaterThanOrEqual(5);
    const [head, ...lines] = out.trimEnd().split('\n');
    expect(head).toBe(`a.json: ${faults.length} faults, ${counted(warnings.length, 'warning')}`);
    expect(lines.slice(0, faults.length)).toEqual(
      faults.map(({ pointer, text }) => `${pointer}: ${text}`),
    );
    expect(out).toContain('/parts/11/roles');
  });

  test('a document that is wrong as a whole', async () => {
    const { code, out } = await run(['lint', '-'], { input: '[]' });
    expect(code).toBe(2);
    expect(out).toMatch(/^standard input: 1 fault, 0 warnings\nthe whole document: \S/);
  });

  test('warnings come after the faults and refuse nothing', async () => {
    const { code, out } = await run(['lint', '-'], { input: cartText(doubtful) });
    expect(code).toBe(0);
    expect(out).toMatch(/^standard input: 0 faults, 1 warning\nWarnings:\n\/vehicles\/0\/fitted: /);
    expect(out).toMatch(/9 parts/);
  });

  test('prints the report of the use-case as JSON', async () => {
    const clean = await run(['lint', '-', '--json'], { input: cartText(doubtful) });
    expect(JSON.parse(clean.out)).toEqual(lintDocument(JSON.parse(cartText(doubtful))));
    const bad = await run(['lint', '-', '--json'], { input: cartText(faulty) });
    expect([bad.code, bad.err]).toEqual([2, '']);
    expect(JSON.parse(bad.out)).toEqual(lintDocument(JSON.parse(cartText(faulty))));
  });

  test('a name that stands twice is a fault, since one of the two would be lost', async () => {
    const input = cartText().replace('"lang": "en"', '"lang": "en", "lang": "de"');
    const { code, out } = await run(['lint', '-'], { input });
    expect(code).toBe(2);
    expect(out).toMatch(/^standard input: 1 fault, 0 warnings\n\/lang: "lang" stands here twice/);
    expect(out).not.toContain('9 parts');
  });
});

describe('a file that is no document', () => {
  test.each([
    ['{\n  "catalogue": 1,\n  "lang" "en"\n}', 'line 3, column 10', 'a colon'],
    ['{\n  "parts": [1, 2\n', 'line 3, column 1', 'a comma or "]"'],
    ["{'catalogue': 1}", 'line 1, column 2', 'a name in double quotes'],
    ['', 'line 1, column 1', 'a value'],
    ['{} {}', 'line 1, column 4', 'the end of the document'],
  ])('%j', async (input, place, expected) => {
    const { code, out, err } = await run(['lint', '-'], { input });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(`standard input, ${place}: ${expected} is expected`);
  });

  test('is a problem for programs', async () => {
    const { code, err } = await run(['publish', '-', '--json'], { input: '{' });
    expect(code).toBe(2);
    expect(JSON.parse(err)).toMatchObject({ code: 'malformed-json' });
  });

  test.each([
    ['nowhere.json', { code: 'ENOENT' }, 'nowhere.json is not there.'],
    ['folder', { code: 'EISDIR' }, 'folder is a folder.'],
    ['secret.json', { code: 'EACCES' }, 'secret.json may not be read by you.'],
  ])('%s', async (path, code, text) => {
    const readFile = () => Promise.reject(Object.assign(new Error('from the system'), code));
    const refused = await run(['lint', path], { world: { readFile } });
    expect(refused.code).toBe(2);
    expect(refused.err.split('\n')[0]).toBe(`faying: ${text}`);
    expect(refused.err).not.toContain('from the system');
  });

  test('is not text', async () => {
    const files = { 'a.json': Uint8Array.of(0x7b, 0xff, 0xfe, 0x7d) };
    const { code, err } = await run(['lint', 'a.json'], { files });
    expect([code, err]).toEqual([
      2,
      'faying: a.json is not text in UTF-8.\nSave it again as UTF-8.\n',
    ]);
  });

  test('a fault of the machine is no fault of the file', async () => {
    const readFile = () => Promise.reject(Object.assign(new Error('disk'), { code: 'EIO' }));
    expect((await run(['lint', 'a.json'], { world: { readFile } })).code).toBe(1);
  });
});

describe('publish', () => {
  test('makes the next edition, with its note', async () => {
    const database = freshDatabase();
    const words = ['publish', '-', '--note', 'as measured', '--database', 'x.sqlite'];
    const { code, out, err, opened, leftOpen } = await run(words, { database, input: cartText() });
    expect([code, err]).toEqual([0, '']);
    expect([opened, leftOpen]).toEqual([['x.sqlite write'], 0]);
    expect(out).toMatch(/^Published edition 1\.\n9 parts, 1 vehicle/);
    const heads = await editionsOf(database);
    expect(heads).toMatchObject([{ number: 1, note: 'as measured', publishedAt: NOW }]);
  });

  test('says that there is nothing new', async () => {
    const database = freshDatabase();
    await run(['publish', '-'], { database, input: cartText() });
    const { code, out } = await run(['publish', '-'], { database, input: cartText() });
    expect(code).toBe(0);
    expect(out).toMatch(/^Nothing new: edition 1 has this content already\./);
    expect(await editionsOf(database)).toHaveLength(1);
  });

  test('prints the answer of the use-case as JSON', async () => {
    const { out } = await run(['publish', '-', '--json'], { input: cartText(doubtful) });
    const { edition, isNew, offers, warnings } = JSON.parse(out);
    expect([edition.number, isNew, offers.number]).toEqual([1, true, 1]);
    expect(warnings).toEqual(lintDocument(JSON.parse(cartText(doubtful))).warnings);
  });

  test('shows its warnings', async () => {
    const { code, out } = await run(['publish', '-'], { input: cartText(doubtful) });
    expect(code).toBe(0);
    expect(out).toMatch(/1 warning:\n\/vehicles\/0\/fitted: /);
  });

  test.each([
    ['faults', cartText(faulty)],
    ['a name that stands twice', cartText().replace('"lang": "en"', '"lang": "en", "lang": "de"')],
  ])('refuses a document with %s as a whole', async (_, input) => {
    const database = freshDatabase();
    const { code, out, err, leftOpen } = await run(['publish', '-'], { database, input });
    expect([code, out, leftOpen]).toEqual([2, '', 0]);
    expect(err).toMatch(/^faying: The document has \d+ faults?; nothing of it was stored\.\n\//);
    expect(existsSync(database)).toBe(false);
  });

  test('gives the refusal as problem details, with pointers', async () => {
    const { err } = await run(['publish', '-', '--json'], { input: cartText(faulty) });
    const problem = JSON.parse(err);
    const { faults } = lintDocument(JSON.parse(cartText(faulty)));
    expect(problem).toMatchObject({ code: 'document-refused', errors: faults });
  });
});
