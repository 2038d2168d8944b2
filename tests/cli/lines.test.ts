/**
 * Documents in lines (NDJSON): the same content as one JSON value, to the hash; and what is said
 * of lines that are wrong, each once, with the number of its line.
 */

import { describe, expect, test } from 'vitest';
import { LINE_FAULT_CODES, LONGEST_LINE } from '../../src/contract/ndjson-text.js';
import { demoDocument } from '../memory-store.js';
import { CART, cartText } from './catalogue.js';
import { freshDatabase, run } from './terminal.js';

type Row = Readonly<Record<string, unknown>>;

/** A document as its lines: the head, then the entities of one list after the other. */
function linesOf(document: object): string[] {
  const fields = Object.entries(document);
  const head = fields.filter(([, value]) => !Array.isArray(value));
  const entities = fields.flatMap(([list, value]) =>
    Array.isArray(value)
      ? (value as Row[]).map((one) => ({ entity: list.replace(/s$/, ''), ...one }))
      : [],
  );
  return [{ entity: 'head', ...Object.fromEntries(head) }, ...entities].map((one) =>
    JSON.stringify(one),
  );
}

const CART_LINES = linesOf(CART);

/** The line, counted from 1, on which the cart defines something. */
function lineOf(id: string): number {
  return 1 + CART_LINES.findIndex((line) => line.includes(`"id":"${id}"`));
}

async function lint(lines: readonly string[], file = 'a.ndjson') {
  const { code, out, err } = await run(['lint', file], { files: { [file]: lines.join('\n') } });
  expect(err).toBe('');
  return { code, said: out.trimEnd().split('\n') };
}

/** The cart with one line replaced. */
function withLine(line: number, text: string): string[] {
  return CART_LINES.with(line - 1, text);
}

/** The cart with one thing in it replaced. */
function edited(id: string, change: (text: string) => string): string[] {
  const line = lineOf(id);
  return withLine(line, change(CART_LINES[line - 1] ?? ''));
}

describe('a document in lines', () => {
  test.each([
    ['the cart', CART],
    ['the demo', demoDocument()],
  ])('%s has the content of its other form, whatever order its lines have', async (_, document) => {
    const [head = '', ...others] = linesOf(document);
    const publish = async (file: string, text: string) => {
      const files = { [file]: text };
      const database = freshDatabase();
      const { code, out } = await run(['publish', file, '--json'], { files, database });
      expect(code).toBe(0);
      return JSON.parse(out) as { edition: { hash: string; counts: object }; warnings: unknown };
    };
    const whole = await publish('a.json', JSON.stringify(document));
    for (const lines of [others, others.toReversed()]) {
      const { edition, warnings } = await publish('a.ndjson', [head, ...lines, ''].join('\n'));
      expect(edition.hash).toBe(whole.edition.hash);
      expect(edition.counts).toEqual(whole.edition.counts);
      expect(warnings).toEqual(whole.warnings);
    }
  });

  test('is known by its first line where its name does not say so', async () => {
    for (const end of ['\n', '\r\n', '\n\n  \n']) {
      const { code, out } = await run(['lint', '-'], { input: `\n${CART_LINES.join(end)}${end}` });
      expect([code, out]).toEqual([
        0,
        'standard input: 0 faults, 0 warnings\n' +
          '9 parts, 1 vehicle, 1 layout, 5 roles, 1 kind, 1 offer.\n',
      ]);
    }
  });

  test('and one JSON value in one line is that, not lines', async () => {
    const input = JSON.stringify(JSON.parse(cartText()));
    const { code, out } = await run(['lint', '-'], { input });
    expect([code, out.split('\n')[0]]).toEqual([0, 'standard input: 0 faults, 0 warnings']);
  });
});

describe('what is wrong is said by line', () => {
  test('in the entity of the line', async () => {
    const line = lineOf('box-a');
    const lines = edited('box-a', (text) => text.replace('"60.00 ±0.02 mm"', '"60 kg"'));
    const { code, said } = await lint(lines);
    expect(code).toBe(2);
    expect(said).toEqual([
      'a.ndjson: 1 fault, 0 warnings',
      `line ${line}: /interfaces/rear/register: “kg” is the unit of a mass. ` +
        'A length is wanted, in mm, cm, m, in, ft.',
    ]);
  });

  test('in the head, and of all that is wrong in the order of the lines', async () => {
    const lines = edited('box-a', (text) => text.replace('"gearbox"', '"gearbx"'));
    lines.reverse();
    lines.unshift((lines.pop() ?? '').replace('"EUR"', '"euro"'));
    const { said } = await lint(lines);
    const line = 1 + lines.findIndex((text) => text.includes('"id":"box-a"'));
    expect(said).toEqual([
      'a.ndjson: 2 faults, 0 warnings',
      'line 1: /currency: "euro" is not a currency by ISO 4217, such as "EUR".',
      `line ${line}: /roles/0: There is no role "gearbx". Did you mean 'gearbox'?`,
    ]);
  });

  test('in the answer for programs, and when it is published', async () => {
    const files = { 'a.ndjson': edited('box-c', (text) => text.replace('"f1"', '5.5')).join('\n') };
    const wanted = { line: lineOf('box-c'), pointer: '/interfaces/rear/pattern' };
    const { out } = await run(['lint', 'a.ndjson', '--json'], { files });
    expect(JSON.parse(out).faults).toMatchObject([{ ...wanted, code: 'not-a-value' }]);
    const database = freshDatabase();
    const { code, err } = await run(['publish', 'a.ndjson', '--json'], { files, database });
    expect(code).toBe(2);
    expect(JSON.parse(err).errors).toMatchObject([{ ...wanted, code: 'not-a-value' }]);
  });

  test('of a doubt as well', async () => {
    const lines = edited('cart-1', (text) => text.replace('"box-a"', '"box-b"'));
    const { code, said } = await lint(lines);
    expect(code).toBe(0);
    expect(said.slice(0, 3)).toEqual([
      'a.ndjson: 0 faults, 1 warning',
      'Warnings:',
      expect.stringMatching(`^line ${lineOf('cart-1')}: /fitted: As the works built it: `),
    ]);
  });
});

const motor = lineOf('motor');
const MOTOR = CART_LINES[motor - 1] ?? '';
const [CART_HEAD = '', ...CART_REST] = CART_LINES;

/** What is wrong, the lines, and the one thing that is said of them, by its code. */
const WRONG: readonly (readonly [string, readonly string[], number | null, string])[] = [
  ['a line that stops', withLine(motor, MOTOR.slice(0, -3)), motor, 'malformed-line'],
  ['a line that is no object', withLine(motor, '["motor"]'), motor, 'not-an-object'],
  [
    'a line of nothing that there is',
    withLine(motor, MOTOR.replace('"part"', '"prat"')),
    motor,
    'unknown-entity',
  ],
  [
    'a line that does not say what it is',
    withLine(motor, MOTOR.replace('"entity":"part",', '')),
    motor,
    'missing-entity',
  ],
  [
    'a line that is a number of something',
    withLine(motor, MOTOR.replace('"part"', '5')),
    motor,
    'missing-entity',
  ],
  [
    'a name that stands twice',
    withLine(motor, MOTOR.replace('{', '{"name":"m",')),
    motor,
    'repeated-name',
  ],
  [
    'a line too long',
    withLine(motor, `${MOTOR}${' '.repeat(LONGEST_LINE)}`),
    motor,
    'line-too-long',
  ],
  ['no head', CART_REST, null, 'missing-head'],
  ['two heads', [CART_HEAD, ...CART_LINES], 2, 'repeated-head'],
  [
    'a head that is not the first',
    [CART_REST[0] ?? '', CART_HEAD, ...CART_REST.slice(1)],
    2,
    'late-head',
  ],
  ['a head that cannot be read', withLine(1, CART_HEAD.slice(0, -2)), 1, 'malformed-line'],
  [
    'a head with a list in it',
    withLine(1, CART_HEAD.replace('{', '{"lots":[],')),
    1,
    'not-in-head',
  ],
];

describe('lines that are wrong', () => {
  test.each(WRONG)('%s: that, and nothing else', async (_, lines, line, code) => {
    const files = { 'a.ndjson': lines.join('\n') };
    const { out, code: exit } = await run(['lint', 'a.ndjson', '--json'], { files });
    const { faults, counts } = JSON.parse(out) as { faults: Row[]; counts: unknown };
    expect(exit).toBe(2);
    expect(faults.map((fault) => [fault.line, fault.code])).toEqual([[line, code]]);
    expect(counts).toBeNull();
  });

  test('no code is without a row', () => {
    const reached = new Set(WRONG.map(([, , , code]) => code));
    for (const code of LINE_FAULT_CODES) expect(reached).toContain(code);
  });

  test('whoever uses a name that a lost line may have defined is told of no fault', async () => {
    const line = lineOf('gearbox');
    const { said } = await lint(withLine(line, 'lost'));
    expect(said).toEqual([
      'a.ndjson: 1 fault, 0 warnings',
      `line ${line}: Column 1: a value is expected, not "lost".`,
    ]);
  });

  test('all that is wrong is said at once, in the rest too', async () => {
    const lines = edited('box-a', (text) => text.replace('"gearbox"', '"gearbx"'));
    lines.splice(1, 0, '{"entity": "offer", none}', '{"entity": "prat"}');
    const { said } = await lint(lines);
    expect(said).toEqual([
      'a.ndjson: 3 faults, 0 warnings',
      'line 2: Column 21: a name in double quotes is expected, not "none".',
      expect.stringMatching(
        /^line 3: \/entity: There is no entity "prat"\. Did you mean 'part'\?$/,
      ),
      expect.stringMatching(/^line \d+: \/roles\/0: There is no role "gearbx"/),
    ]);
  });
});
