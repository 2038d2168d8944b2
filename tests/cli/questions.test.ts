/** `fit`, `inspect`, `mate`, `editions`: what people read, what programs read, what is refused. */

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { editionsAnswerSchema } from '../../src/contract/editions.js';
import { type OpenedStore, openStore } from '../../src/store/sqlite.js';
import { checkFit } from '../../src/usecases/check-fit.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import { Library } from '../../src/usecases/library.js';
import { mateFaces } from '../../src/usecases/mate-faces.js';
import { sha256 } from '../memory-store.js';
import { cartDatabase, freshDatabase, NOW, type Run, run } from './terminal.js';

let database: string;
let store: OpenedStore;
beforeAll(async () => {
  database = await cartDatabase();
  store = openStore(database, { mode: 'read-only' });
});
afterAll(() => store.close());

const ask = (line: string): Promise<Run> => run(line.split(' '), { database });

/** The lines of a page from one heading to the next empty line. */
function below(heading: string, text: string): string[] {
  const lines = text.split('\n');
  const from = lines.findIndex((line) => line.trim() === heading);
  if (from < 0) return [];
  const rest = lines.slice(from + 1);
  const indent = /^ */.exec(lines[from] ?? '')?.[0].length ?? 0;
  const end = rest.findIndex((line) => (/^ */.exec(line)?.[0].length ?? 0) <= indent);
  return rest.slice(0, end).map((line) => line.trim());
}

describe('fit, for people', () => {
  test('begins with the verdict and ends with edition and engine', async () => {
    const { code, out, err } = await ask('fit cart-1 box-d');
    expect([code, err]).toEqual([0, '']);
    const lines = out.trimEnd().split('\n');
    expect(lines.slice(0, 2)).toEqual(['Fits.', '“box d” (box-d) on cart-1.']);
    expect(lines.at(-1)).toMatch(/^Edition 1, engine \d+\.\d+\.\d+\.$/);
    expect(out).toContain(
      'Gearbox: replaces box-a. With nothing changed but what the question names, it goes in.',
    );
  });

  test('a part that does not fit alone is an answer, with both values of what fails', async () => {
    const { code, out, err } = await ask('fit cart-1 box-b');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Fits, with more parts and no other place changed\./);
    const alone = await ask('fit cart-1 box-b --changes no');
    expect(alone.out).toMatch(/^Does not fit the vehicle as it stands/);
    const fails = below('Fails:', out).join(' ');
    const values = ['f2', 'f1', '60.10 ±0.02 mm', '70.00 ±0.02 mm'];
    for (const said of [...values, 'box b', 'long shaft a']) expect(fails).toContain(said);
    expect(below('Holds:', out).join(' ')).toContain('200 N.m');
    expect(out.indexOf('Fails:')).toBeLessThan(out.indexOf('Holds:'));
  });

  test('the search for changes may take so many steps', async () => {
    const { out } = await ask('fit cart-1 box-b --steps 1');
    expect(out).not.toMatch(/^Fits, with more parts/);
    expect(out).toMatch(/^Not known/);
    const { code, err } = await ask('fit cart-1 box-b --steps 0');
    expect([code, err]).toEqual([2, expect.stringContaining('--steps')]);
  });

  test('what is not known is neither fitting nor failing, and says what to measure', async () => {
    const { code, out } = await ask('fit cart-1 box-c');
    expect(code).toBe(0);
    expect(out).toMatch(/^Not known whether it fits/);
    expect(below('Fails:', out)).toEqual([]);
    expect(below('Open:', out).join(' ')).toContain('60.10 ±0.02 mm');
    const measure = below('To measure or find out:', out).join(' ');
    expect(measure).toMatch(/^1\. Measure .*register .*“box c”.* vernier caliper to ±\d/);
    expect(below('Not looked at:', out).join(' ')).toContain('length of the bolts');
    expect(below('Cautions:', out).join(' ')).toContain('Driveline:');
  });

  test('the sections come in the order in which one reads them', async () => {
    const { out } = await ask('fit cart-1 box-c');
    const order = [
      'Gearbox:',
      'Open:',
      'Holds:',
      'To measure',
      'Not looked',
      'Cautions',
      'Edition',
    ];
    const places = order.map((word) => out.indexOf(word));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });

  test('a part that is there already, and one that has no place', async () => {
    expect((await ask('fit cart-1 box-a')).out).toContain('Gearbox: it is there already.');
    expect((await ask('fit cart-1 plate-ab')).out).toMatch(/^This part goes between two others/);
  });

  test('an adapter and a companion change the answer', async () => {
    const adapted = await ask('fit cart-1 box-b --adapter box-shaft=plate-ab');
    expect(adapted.out).toMatch(/^Fits/);
    expect(below('Cautions:', adapted.out).join(' ')).toContain('An old pattern.');
    const torque = await ask('fit cart-1 box-d --fitted engine=none');
    expect(torque.out).not.toContain('Strong enough');
  });
});

describe('the same questions, for programs', () => {
  const common = { edition: null, lang: 'en', units: 'recorded' as const };
  const empty = { facts: {}, fitted: {}, adapters: {}, measured: [] };
  const said = { ...empty, torque: null, use: null, ignorePresent: false };

  test('fit prints exactly the answer of the use-case', async () => {
    const { code, out, err } = await ask(
      'fit cart-1 box-b --json --position gearbox --adapter box-shaft=plate-ab --use off-road ' +
        '--fitted wheel-shaft.left=none --fitted wheel-shaft.right=unknown --fitted engine=motor ' +
        '--with prop-shaft=shaft-a --ignore-present --edition 1 --lang de --units imperial',
    );
    const fitted = { engine: 'motor', 'wheel-shaft': { left: 'none', right: 'unknown' } };
    const answer = checkFit(new Library(store, sha256), {
      vehicle: 'cart-1',
      part: 'box-b',
      position: 'gearbox',
      with: { 'prop-shaft': 'shaft-a' },
      facts: {},
      fitted,
      adapters: { 'box-shaft': ['plate-ab'] },
      measured: [],
      torque: null,
      use: 'off-road',
      ignorePresent: true,
      edition: 1,
      lang: 'de',
      units: 'imperial',
      changes: null,
    });
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(answer)));
  });

  test('inspect does', async () => {
    const { out } = await run(
      ['inspect', 'cart-1', '--json', '--fitted', 'gearbox=box-b', '--torque', '90 N.m'],
      { database },
    );
    const more = { ...said, fitted: { gearbox: 'box-b' }, torque: '90 N.m' };
    const answer = inspectVehicle(new Library(store, sha256), {
      ...common,
      vehicle: 'cart-1',
      ...more,
    });
    expect(answer.state).toBe('fails');
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(answer)));
  });

  test('mate does, with and without named faces', async () => {
    const { out } = await ask(
      'mate box-b shaft-a --a-face rear --adapter plate-ab --use road --json',
    );
    const answer = mateFaces(new Library(store, sha256), {
      ...common,
      a: { part: 'box-b', interface: 'rear' },
      b: { part: 'shaft-a', interface: null },
      adapters: ['plate-ab'],
      use: 'road',
    });
    expect(answer.state).toBe('holds');
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(answer)));
  });

  test('editions lists the heads as the store has them', async () => {
    const { out } = await ask('editions --json');
    const answer: unknown = JSON.parse(out);
    expect(answer).toEqual({
      edition: 1,
      engine: expect.any(String),
      items: store.editions(),
      next: null,
      counts: { total: 1 },
    });
    expect(editionsAnswerSchema.parse(answer)).toEqual(answer);
    expect(store.editions()).toMatchObject([{ number: 1, publishedAt: NOW }]);
  });
});

describe('inspect, mate and editions, for people', () => {
  test('inspect counts what is as built, and lists what is not', async () => {
    const asBuilt = await ask('inspect cart-1');
    expect(asBuilt.out).toMatch(/^Nothing speaks against the vehicle as it stands/);
    expect(asBuilt.out).toContain('As the works built it: 2 places.');
    const mixed = await ask('inspect cart-1 --fitted gearbox=box-b');
    expect(mixed.code).toBe(0);
    expect(below('Fails:', mixed.out).join(' ')).toContain('Pattern differs');
  });

  test('mate names both faces, every check and the adapter', async () => {
    const apart = await ask('mate box-b shaft-a --a-face rear --b-face front');
    expect(apart.code).toBe(0);
    expect(apart.out).toMatch(/^The two faces do not meet/);
    expect(apart.out).toContain('Face rear of “box b” (box-b), with Face front of');
    expect(below('Fails:', apart.out).length).toBeGreaterThanOrEqual(2);
    const adapted = await ask('mate box-b shaft-a --a-face rear --b-face front --adapter plate-ab');
    expect(adapted.out).toContain('through “plate f2 to f1” (plate-ab)');
    expect(below('Fails:', adapted.out)).toEqual([]);
  });

  test('editions, and none', async () => {
    const { out } = await ask('editions');
    expect(out).toContain(`Edition 1, published ${NOW}.`);
    expect(out).toContain('9 parts, 1 vehicle, 1 layout');
    const empty = freshDatabase();
    openStore(empty, { mode: 'create' }).close();
    const none = await run(['editions'], { database: empty });
    expect([none.code, none.out]).toEqual([
      0,
      'Nothing has been published yet: faying publish FILE.\n',
    ]);
    const json = await run(['editions', '--json'], { database: empty });
    expect(JSON.parse(json.out)).toMatchObject({ edition: null, items: [] });
  });
});

describe('a question that cannot be answered', () => {
  test.each([
    ['fit cart-1 box-bb', `There is no part "box-bb". Did you mean 'box-b'?`],
    ['fit cart-2 box-b', `There is no vehicle "cart-2". Did you mean 'cart-1'?`],
    ['fit cart-1 box-b --position roof', '"cart-1" has no position "roof".'],
    ['fit cart-1 box-b --edition 7', 'There is no edition 7.'],
    ['fit cart-1 box-b --with gearbox=nothing', 'There is no part "nothing".'],
    [
      'inspect cart-1 --fitted gearbox.left=box-a --fitted gearbox.right=box-b',
      'no left and right',
    ],
    ['inspect cart-1 --adapter roof=plate-ab', '"cart-1" has no mating "roof".'],
    ['mate box-a shaft-a --a-face top', '"box-a" has no recorded face "top".'],
    ['mate box-a shaft-a --adapter box-b', '"box-b" is no adapter'],
  ])('%s', async (line, text) => {
    const { code, out, err } = await ask(line);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(text);
  });

  test('all its faults are said at once, each at its place', async () => {
    const { code, err } = await ask('fit cart-1 box-b --with roof=box-a --fitted door=none');
    expect(code).toBe(2);
    expect(err.split('\n')).toEqual([
      'faying: "cart-1" has no position "roof".',
      'with.roof: "cart-1" has no position "roof".',
      'fitted.door: "cart-1" has no position "door".',
      '',
    ]);
  });

  test('as problem details for programs, on the standard error', async () => {
    const { code, out, err } = await ask('fit cart-1 nothing --json');
    expect([code, out]).toEqual([2, '']);
    const { code: word, type, title, detail, errors } = JSON.parse(err);
    expect([word, type]).toEqual(['unknown-part', expect.stringMatching(/[:/]unknown-part$/)]);
    expect(title).not.toBe('');
    expect(detail).toBe('There is no part "nothing".');
    const data = { name: 'nothing', meant: null };
    expect(errors).toEqual([{ parameter: 'part', code: 'unknown-part', data, text: detail }]);
  });

  test.each(['--lang de', '--lang=de-AT', '--lang en --lang DE'])(
    'in the language that is asked for: %s',
    async (option) => {
      const { err } = await ask(`fit cart-1 nothing ${option}`);
      expect(err).toBe('faying: Es gibt kein Teil „nothing“.\n');
      const told = JSON.parse((await ask(`fit cart-1 nothing --json ${option}`)).err);
      expect(told).toMatchObject({ lang: 'de', title: 'Dieses Teil gibt es nicht' });
    },
  );

  test('but the usage of the command in its own', async () => {
    const { err } = await ask('fit cart-1 --lang de --json');
    expect(JSON.parse(err)).toMatchObject({ lang: 'en', code: 'bad-usage' });
  });

  test('with nothing published', async () => {
    const empty = freshDatabase();
    openStore(empty, { mode: 'create' }).close();
    const { code, err } = await run(['fit', 'cart-1', 'box-b'], { database: empty });
    expect([code, err]).toEqual([2, 'faying: Nothing has been published yet.\n']);
  });

  test.each(['fit cart-1 box-b', 'fit cart-1 nothing', 'editions', 'mate box-a box-b'])(
    'the database is opened for reading and closed again: %s',
    async (line) => {
      const { opened, leftOpen } = await ask(line);
      expect([opened, leftOpen]).toEqual([['./faying.sqlite read'], 0]);
    },
  );
});
