/**
 * `faying kits`: the routes as people read them, what programs read, and the search behind them in
 * a file.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import { kitAnswerSchema } from '../../src/contract/kit-answer.js';
import { NAMED } from '../http/named-parts.js';
import { CART } from './catalogue.js';
import { freshDatabase, type Run, run } from './terminal.js';

const CATALOGUE = JSON.stringify({
  ...NAMED,
  parts: NAMED.parts.map((part) =>
    part.id === 'strong-box'
      ? {
          ...part,
          interfaces: {
            rear: {
              kind: 'cart-flange',
              side: 'spigot',
              pattern: 'f1',
              register: '60.00 ±0.02 mm',
            },
          },
        }
      : part,
  ),
  layouts: NAMED.layouts.map((layout) => ({
    ...layout,
    positions: layout.positions.map((position) =>
      position.id === 'gearbox' ? { ...position, labour: '2.5 h' } : position,
    ),
  })),
});

const database = freshDatabase();
beforeAll(async () => {
  await run(['publish', 'named.json'], { database, files: { 'named.json': CATALOGUE } });
});

const ask = (line: string, columns?: number): Promise<Run> =>
  run(line.split(' '), { database, ...(columns === undefined ? {} : { columns }) });

/** Without the version of the program, which grows. */
function unversioned(page: string): string {
  return page.replace(/\d+\.\d+\.\d+(?=\. )/, 'x.y.z');
}

describe('for people', () => {
  test('stands what it comes to, the ways side by side, then each with its lines', async () => {
    const { code, out, err } = await ask('kits cart-1 strong-box --labour-rate 60.00');
    expect([code, err]).toEqual([0, '']);
    await expect(unversioned(out)).toMatchFileSnapshot('kits.en.txt');
  });

  test('in German', async () => {
    const { out } = await ask('kits cart-1 strong-box --labour-rate 60.00 --lang de');
    await expect(unversioned(out)).toMatchFileSnapshot('kits.de.txt');
  });

  test('ways that do not stand side by side stand below one another', async () => {
    const wide = await ask('kits cart-1 box-b@gearbox --routes 5', 100);
    const narrow = await ask('kits cart-1 box-b@gearbox --routes 5', 60);
    for (const { out } of [wide, narrow]) expect(out).toContain('Way 1');
    expect(Math.max(...narrow.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(60);
  });

  test('which limits a way is not known to keep stands below its sums, and why', async () => {
    const bolts = { part: 'plate-ab', quantity: '1' };
    const rule = { id: 'bolts', when: { changed: 'gearbox' }, consumes: bolts, because: 'So.' };
    const offers = [{ id: 'o-1', for: 'box-d', price: '5.00', leadDays: 1 }];
    const bare = { database: freshDatabase(), columns: 200 };
    const files = { 'bare.json': JSON.stringify({ ...CART, rules: [rule], offers }) };
    await run(['publish', 'bare.json'], { ...bare, files });
    const askBare = (text: string) => run(text.split(' '), bare);
    const line = 'kits cart-1 box-d --max-hours 9.5 --max-cost 900 --max-lead-days 9';
    const { out } = await askBare(line);
    expect(out).toContain('  Not known to keep the limit of cost: 1 line without a price.\n');
    expect(out).toContain('  Not known to keep the limit of labour: 1 line without hours.\n');
    expect(out).toContain(
      '  Not known to keep the limit of days: nobody knows when all of it is there.\n',
    );
    const { out: paid } = await askBare(`${line} --labour-rate 60.00 --lang de`);
    expect(paid).toContain(
      '  Nicht bekannt, ob die Grenze der Kosten eingehalten wird: 1 Zeile ohne Preis, ' +
        '1 Zeile ohne\n  Stunden.\n',
    );
    const { out: free } = await askBare('kits cart-1 box-d');
    expect(free).not.toContain('Not known to keep');
  });

  test('that there is none is an answer, and so is that nothing need be done', async () => {
    const none = await ask('kits cart-1 strong-box --keep gearbox');
    expect([none.code, none.err]).toEqual([0, '']);
    expect(none.out).toMatch(
      /^Not all of this can be had together: two demands contradict each other\.\n/,
    );
    const nothing = await ask('kits cart-1 box-a');
    expect(nothing.out).not.toContain('Cost, net');
    expect(nothing.out).toMatch(/^Nothing needs to be changed\.\n\S/);
  });
});

describe('for programs', () => {
  test('every option is part of the question', async () => {
    const { out, code } = await ask(
      'kits cart-1 strong-box@gearbox lot:crate --keep engine --keep prop-shaft --avoid box-b ' +
        '--owned box-d=2 --owned hook --offer strong-box=70.5 --lots crate --work-up-to none ' +
        '--max-cost 900 --max-changed 3 --max-hours 9.5 --max-lead-days 9 --in-stock ' +
        '--labour-rate 60 --unknowns refuse --from offered --prefer lead-days --routes 2 ' +
        '--undominated --steps 99 --fitted gearbox=box-c --ignore-present --use road --json',
    );
    expect(code).toBe(0);
    const { question } = kitAnswerSchema.parse(JSON.parse(out));
    expect(question).toEqual({
      edition: 1,
      lang: 'en',
      units: 'recorded',
      vehicle: 'cart-1',
      facts: {},
      fitted: { gearbox: 'box-c' },
      adapters: {},
      use: 'road',
      ignorePresent: true,
      want: [
        { part: ['strong-box'], position: 'gearbox', renew: false },
        { lot: 'crate', whole: true },
      ],
      keep: ['engine', 'prop-shaft'],
      avoid: [{ part: 'box-b' }],
      owned: [
        { part: 'box-d', quantity: 2 },
        { part: 'hook', quantity: 1 },
      ],
      lots: ['crate'],
      workUpTo: 'none',
      limits: {
        cost: '900.00',
        changedPositions: 3,
        labourHours: '9.5',
        leadDays: 9,
        inStock: true,
      },
      labourRate: '60.00',
      unknowns: 'refuse',
      from: 'offered',
      offers: [{ part: 'strong-box', price: '70.50' }],
      offersMode: 'over',
      measured: [],
      prefer: 'lead-days',
      routes: 2,
      undominated: true,
      steps: 99,
    });
  });

  test('faults are told at their fields, all of them at once', async () => {
    const { code, out, err } = await ask('kits cart-1 box-z --keep geer --max-cost cheap --json');
    expect([code, out]).toEqual([2, '']);
    const { errors } = JSON.parse(err);
    expect(errors.map((one: { parameter: string }) => one.parameter).sort()).toEqual([
      'keep.0',
      'limits.cost',
      'want.0.part',
    ]);
  });

  test.each([
    ['kits', /No vehicle is named/],
    ['kits cart-1 box-d --routes 21', /whole number from 1 to 20/],
    ['kits cart-1 box-d --prefer beauty', /Allowed choices are/],
    ['kits cart-1 --replay x.json', /does not stand beside a vehicle/],
    ['kits --save y.json --replay x.json', /does not stand beside --save/],
    ['kits --replay x.json', /x\.json is not there/],
  ])('%s is not how it is used', async (line, says) => {
    const { code, err } = await ask(line);
    expect(code).toBe(2);
    expect(err).toMatch(says);
  });
});

describe('the search in a file', () => {
  test('is saved, and goes the same way again without a database', async () => {
    const saved = await ask('kits cart-1 strong-box --save search.json');
    expect([saved.code, saved.err]).toEqual([0, '']);
    expect(saved.out).toMatch(
      /^The search is saved in search\.json\.\nOn cart-1: 1 way, in \d+ step/,
    );
    const again = await run(['kits', '--replay', 'search.json'], { files: saved.written });
    expect([again.code, again.err, again.opened]).toEqual([0, '', []]);
    expect(again.out.split('\n')).toEqual([
      'It went as it did when it was saved.',
      ...saved.out.split('\n').slice(1),
    ]);
    const told = await run(['kits', '--replay', 'search.json', '--json'], { files: saved.written });
    expect(JSON.parse(told.out)).toMatchObject({ vehicle: 'cart-1', isSame: true });
  });

  test('that was found otherwise says so', async () => {
    const { written } = await ask('kits cart-1 strong-box --save search.json');
    const { outcome, ...rest } = JSON.parse(written['search.json'] ?? '');
    const changed = JSON.stringify({ ...rest, outcome: { ...outcome, stepsTaken: 0 } });
    const again = await run(['kits', '--replay', 's'], { files: { s: changed } });
    expect(again.out).toMatch(/^It went another way than when it was saved\./);
  });

  test('that lacks what is asked, or is none, is a fault of the file', async () => {
    const { written } = await ask('kits cart-1 strong-box --save search.json');
    const whole = JSON.parse(written['search.json'] ?? '');
    const bare = { ...whole, problem: { ...whole.problem, exacts: [] } };
    const files = { bare: JSON.stringify(bare), other: '{"saved":2}', list: '[]' };
    for (const [file, says] of [
      ['bare', /bare lacks what this program asks\. It was saved by engine/],
      ['other', /other is no saved search/],
      ['list', /list is no saved search/],
    ] as const) {
      const { code, err } = await run(['kits', '--replay', file], { files });
      expect([file, code]).toEqual([file, 2]);
      expect(err).toMatch(says);
    }
  });

  test('that cannot be written says why', async () => {
    const writeFile = () => Promise.reject(Object.assign(new Error('no'), { code: 'EROFS' }));
    const { code, err } = await run(['kits', 'cart-1', 'box-d', '--save', '/s'], {
      database,
      world: { writeFile },
    });
    expect(code).toBe(2);
    expect(err).toContain('/s is on a disk that takes nothing.');
  });
});
