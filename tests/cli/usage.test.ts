/** What holds for every command: help, usage, exit codes, the database, colour, width, bugs. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { CommandFault } from '../../src/cli/fault.js';
import { harmless } from '../../src/cli/page.js';
import { StoreFault } from '../../src/usecases/errors.js';
import { cartDatabase, freshDatabase, run } from './terminal.js';

const SHOWN = ['part', 'vehicle', 'kind', 'role', 'layout'].map((word) => `show ${word}`);
const COMMANDS = ['lint', 'publish', 'serve', 'fit', 'inspect', 'mate', ...SHOWN, 'editions'];

/** The command lines that a help text shows. */
function examplesOf(help: string): string[] {
  return [...help.matchAll(/^ {2}\$ (.+)$/gm)].map(([, line = '']) => line);
}

/** The words of a command line; quotes hold together what has spaces. */
function wordsOf(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word);
}

describe('help', () => {
  test.each(COMMANDS)('%s --help has two examples or more and the options of all', async (name) => {
    const { code, out, err } = await run([...name.split(' '), '--help']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(new RegExp(`^Usage: faying ${name}`));
    expect(out).toContain('--database <path>');
    expect(out).toContain('--json');
    const examples = examplesOf(out);
    expect(examples.length).toBeGreaterThanOrEqual(2);
    for (const example of examples) expect(example).toContain(`faying ${name}`);
  });

  test('of the program names every command; its examples are two', async () => {
    const { code, out } = await run(['--help']);
    expect(code).toBe(0);
    for (const name of COMMANDS) expect(out).toMatch(new RegExp(`^  ${name.split(' ')[0]} `, 'm'));
    expect(examplesOf(out)).toHaveLength(2);
    expect((await run(['help', 'fit'])).out).toBe((await run(['fit', '--help'])).out);
  });

  const path = fileURLToPath(new URL('../../db/demo/catalogue.ndjson', import.meta.url));
  const files = { 'catalogue.json': readFileSync(path) };
  const database = freshDatabase();
  // The program's own come first: they publish the demo that the others ask.
  const asking = ['', 'fit', 'kits', 'inspect', 'mate', 'show', ...SHOWN];

  test.each(asking)(
    'the examples of %j are answered by the demo',
    async (name) => {
      const { out } = await run([...name.split(' '), '--help'].filter(Boolean));
      const lines = examplesOf(out);
      expect(lines.length).toBeGreaterThan(1);
      for (const line of lines) {
        const { code, err } = await run(wordsOf(line).slice(1), { database, files });
        expect([line, code, err]).toEqual([line, 0, '']);
      }
    },
    120_000,
  );

  test('and the version', async () => {
    const { code, out } = await run(['--version']);
    expect([code, out]).toEqual([0, '9.9.9\n']);
  });
});

describe('usage', () => {
  test('the bare name shows the help, as a fault', async () => {
    const { code, out, err } = await run([]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^Usage: faying/);
  });

  test.each([
    [['kitz', 'a', 'b'], "Unknown command 'kitz'. Did you mean kits?", 'See faying --help.'],
    [['inspect'], "Missing required argument 'vehicle'.", 'See faying inspect --help.'],
    [['inspect', 'a', 'b'], 'Too many arguments', 'See faying inspect --help.'],
    [['fit', 'cart-1'], 'Which vehicle it is is not said.', 'Name it before the part'],
    [['fit', 'a', 'b', 'c'], 'One vehicle and one part', 'Leave out the rest.'],
    [['fit', '--make', 'Tarn', 'a', 'b'], '--make finds a vehicle', 'Leave out one of the two.'],
    [['fits', 'vehicle', 'cart-1', '--alone', 'x'], '“x”, which is no outcome', 'Name some of'],
    [['fits', 'part', 'box-a', '--changes', 'yes'], 'lists 20 entries', 'Add --limit 20.'],
    [
      ['editions', '--jsn'],
      "Unknown option '--jsn'. Did you mean --json?",
      'See faying editions --help.',
    ],
    [['fit', 'a', 'b', '--with', 'gearbox'], 'Write it as name=value.', '--help'],
    [['fit', 'a', 'b', '--with', '=box'], 'Write it as name=value.', '--help'],
    [['fit', 'a', 'b', '--with', 'gearbox='], 'Write it as name=value.', '--help'],
    [['fit', 'a', 'b', '--edition', '0'], 'It is a whole number from 1.', '--help'],
    [['fit', 'a', 'b', '--edition', '1e3'], 'It is a whole number from 1.', '--help'],
    [['fit', 'a', 'b', '--use', 'moon'], 'Allowed choices are road, off-road', '--help'],
    [['show', 'prat'], "Unknown command 'prat'. Did you mean part?", 'See faying show --help.'],
    [['show', 'part', '--rol', 'x'], 'Did you mean --role?', 'See faying show part --help.'],
    [['show', 'part', 'a', 'b'], 'Too many arguments', 'See faying show part --help.'],
    [['show', 'part', 'a', '--role', 'x'], '--role narrows a list', 'Leave out one'],
    [['show', 'kind', 'a', '--limit', '2'], '--limit narrows a list', 'Leave out one'],
    [['show', 'vehicle', '--year', '04-2'], 'It is a whole number from 0 to 9999.', '--help'],
    [['show', 'vehicle', '--built', '2004-13'], 'It is a month such as 2004-06.', '--help'],
    [['show', 'vehicle', '--fact', 'x=a', '--fact', 'x=b'], '--fact names x twice', 'once'],
    [['show', 'part', '--superseded', 'yes'], 'Allowed choices are true, false', '--help'],
    [['show', 'role', '--limit', '0'], 'It is a whole number from 1.', '--help'],
    [['serve', '--port', '65536'], 'It is a whole number from 0 to 65535.', '--help'],
    [['serve', '--port', '-1'], 'It is a whole number from 0 to 65535.', '--help'],
    [['fit', 'a', 'b', '--fitted', 'x=a', '--fitted', 'x=b'], 'names x twice', 'once'],
    [['fit', 'a', 'b', '--with', 'x=a', '--with', 'x=b'], '--with names x twice', 'once'],
    [['fit', 'a', 'b', '--fitted', 'x.left=a'], 'not the right one', 'x.right=unknown'],
    [['fit', 'a', 'b', '--fitted', 'x.right=a'], 'not the left one', 'x.left=unknown'],
    [['fit', 'a', 'b', '--with', 'x.right=a'], 'not the left one', '--with x.left=<part>'],
    [
      ['fit', 'a', 'b', '--fitted', 'x=a', '--fitted', 'x.left=a', '--fitted', 'x.right=a'],
      '--fitted names x twice',
      'once',
    ],
  ])('%j', async (words, text, remedy) => {
    const { code, out, err, opened } = await run(words);
    expect([code, out, opened]).toEqual([2, '', []]);
    expect(err).toMatch(/^faying: /);
    expect(err).toContain(text);
    expect(err).toContain(remedy);
  });

  test('is a problem too, where JSON is asked for', async () => {
    const { code, out, err } = await run(['fit', '--json', '--nonsense']);
    expect([code, out]).toEqual([2, '']);
    expect(JSON.parse(err)).toMatchObject({ code: 'bad-usage', errors: [] });
    expect((await run(['fit', '--', '--json'])).err).toMatch(/^faying: /);
  });
});

describe('the database', () => {
  test.each([
    [[], {}, './faying.sqlite read'],
    [[], { FAYING_DATABASE: '' }, './faying.sqlite read'],
    [[], { FAYING_DATABASE: '/srv/a.sqlite' }, '/srv/a.sqlite read'],
    [['--database', 'b.sqlite'], { FAYING_DATABASE: '/srv/a.sqlite' }, 'b.sqlite read'],
  ])('%j with %j', async (options, env, opened) => {
    const database = await cartDatabase();
    const asked = await run(['editions', ...options], { database, env });
    expect([asked.code, asked.opened]).toEqual([0, [opened]]);
  });

  test('that cannot be used is a fault with its remedy', async () => {
    const openStore = () => {
      throw new StoreFault('x.sqlite is no catalogue', 'restore it from a backup');
    };
    const plain = await run(['editions'], { world: { openStore } });
    expect([plain.code, plain.out]).toEqual([2, '']);
    expect(plain.err).toBe('faying: x.sqlite is no catalogue.\nRestore it from a backup.\n');
    const json = await run(['editions', '--json'], { world: { openStore } });
    expect(JSON.parse(json.err)).toMatchObject({
      code: 'store-fault',
      remedy: 'Restore it from a backup.',
    });
  });
});

describe('serve', () => {
  test('hands its options on, says where it answers, and stops when it is told to', async () => {
    const stopped: string[] = [];
    const startService = async () => ({
      url: 'http://[::1]:4000',
      edition: null,
      stop: async () => void stopped.push('stopped'),
    });
    const { code, out, err } = await run(['serve', '--port', '0'], { world: { startService } });
    expect([code, stopped]).toEqual([0, ['stopped']]);
    expect(out).toBe(
      'Nothing has been published yet: faying publish FILE.\n' +
        'Answering at http://[::1]:4000 until Ctrl-C.\n',
    );
    expect(err).toBe('Stopped by SIGTERM.\n');
  });

  test('with what was said, and with what is configured', async () => {
    const said = ['serve', '--port', '81', '--host', '::', '--read-only', '--database', 'd.sqlite'];
    expect((await run(said)).services).toEqual([
      { catalogue: { database: 'd.sqlite', readOnly: true }, port: 81, host: '::' },
    ]);
    expect((await run(['serve'])).services).toEqual([
      { catalogue: { database: './faying.sqlite', readOnly: false }, port: null, host: null },
    ]);
  });

  test('prints its address as JSON', async () => {
    const { out } = await run(['serve', '--json']);
    expect(JSON.parse(out)).toEqual({ url: 'http://127.0.0.1:4242', edition: 1, demo: false });
  });

  test('a port that is taken is a fault', async () => {
    const startService = () => Promise.reject(new CommandFault('port-not-free', 'Taken.'));
    const { code, err } = await run(['serve'], { world: { startService } });
    expect([code, err]).toEqual([2, 'faying: Taken.\n']);
  });
});

describe('a bug of the program', () => {
  const openStore = () => {
    throw new TypeError('secret of the inside', { cause: new Error('deeper') });
  };

  test('is masked, and is the only thing that exits with 1', async () => {
    const { code, out, err } = await run(['editions'], { world: { openStore } });
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('FAYING_DEBUG=1');
    expect(err).not.toContain('secret');
    const json = await run(['editions', '--json'], { world: { openStore } });
    expect(JSON.parse(json.err)).toMatchObject({ code: 'internal-error' });
    expect(json.err).not.toContain('secret');
  });

  test('shows where it is with FAYING_DEBUG=1', async () => {
    const env = { FAYING_DEBUG: '1' };
    const { code, err } = await run(['editions'], { env, world: { openStore } });
    expect(code).toBe(1);
    expect(err).toContain('TypeError: secret of the inside');
    expect(err).toContain('usage.test.ts');
    expect(err).toContain('Caused by: Error: deeper');
  });
});

describe('the page', () => {
  const ESCAPE = String.fromCharCode(0x1b);

  test('has colour on a terminal only, and not against the wish of its reader', async () => {
    const database = await cartDatabase();
    const words = ['fit', 'cart-1', 'box-b'];
    const coloured = await run(words, { database, isTerminal: true });
    expect(coloured.out).toContain(`${ESCAPE}[1;32mFits, with more parts`);
    const alone = await run([...words, '--changes', 'no'], { database, isTerminal: true });
    expect(alone.out).toContain(`${ESCAPE}[1;31mDoes not fit`);
    const plain = await run(words, { database });
    expect(plain.out).not.toContain(ESCAPE);
    expect(coloured.out.replaceAll(new RegExp(`${ESCAPE}\\[[\\d;]+m`, 'g'), '')).toBe(plain.out);
    for (const env of [{ NO_COLOR: '1' }, { TERM: 'dumb' }]) {
      expect((await run(words, { database, isTerminal: true, env })).out).toBe(plain.out);
    }
    const empty = await run(words, { database, isTerminal: true, env: { NO_COLOR: '' } });
    expect(empty.out).toBe(coloured.out);
  });

  test.each([40, 72, 100, 300])('keeps within %i columns', async (columns) => {
    const database = await cartDatabase();
    const { out } = await run(['fit', 'cart-1', 'box-c'], { database, columns, isTerminal: false });
    const widths = out.split('\n').map((line) => Array.from(line).length);
    expect(Math.max(...widths)).toBeLessThanOrEqual(Math.min(columns, 100));
    expect(Math.max(...widths)).toBeGreaterThan(Math.min(columns, 100) - 15);
    const words = (text: string) => text.split(/\s+/).join(' ');
    const wide = await run(['fit', 'cart-1', 'box-c'], { database });
    expect(words(out)).toBe(words(wide.out));
  });

  test('a column too narrow for a word breaks no word', async () => {
    const { out } = await run(['fit', 'cart-1', 'box-c'], {
      database: await cartDatabase(),
      columns: 5,
    });
    expect(out).toContain('question');
  });

  test('texts of others cannot steer the terminal', async () => {
    expect(harmless(`red ${ESCAPE}[31m\u009b2J\u202e\u0000`)).toBe(
      'red \ufffd[31m\ufffd2J\ufffd\ufffd',
    );
    expect(harmless('a\tb\nc – ±0.02 “ü”')).toBe('a b c – ±0.02 “ü”');
    const { err } = await run(['lint', `x${ESCAPE}[2J`]);
    expect(err).toContain('x\ufffd[2J is not there.');
  });
});
