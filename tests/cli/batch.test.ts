/**
 * `faying batch`: a question a line, an answer a line, broken off and gone on with.
 */

import { execFile, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cartDatabase, type Run, run as runIn, type Setting } from './terminal.js';

let database = '';
beforeAll(async () => {
  database = await cartDatabase();
});

/** Where no signal comes. */
function run(words: readonly string[], setting: Setting): Promise<Run> {
  const untilStopped = () => new Promise<string>(() => undefined);
  return runIn(words, { ...setting, world: { untilStopped, ...setting.world } });
}

const GOOD = '{"ref":"a","vehicle":"cart-1","part":"box-a"}';
const BAD = '{"ref":"b","vehicle":"cart-1","part":"box-z"}';

function batch(text: string, ...words: string[]): Promise<Run> {
  return run(['batch', 'x.ndjson', ...words], { database, files: { 'x.ndjson': text } });
}

function objects({ out }: Run): Record<string, unknown>[] {
  return out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);
}

describe('a batch', () => {
  test('is answered line by line, in order, and ends with the counts', async () => {
    const done = await batch(`${GOOD}\n\n${BAD}\n${GOOD}`);
    const [start, first, second, third, end] = objects(done);
    expect(start).toMatchObject({ start: { edition: 1, lang: 'en', changes: 'no' } });
    expect(first).toMatchObject({ ref: 'a', line: 1, part: 'box-a', alone: 'holds' });
    expect(second).toMatchObject({ ref: 'b', line: 3, error: { code: 'unknown-part' } });
    expect(third).toMatchObject({ ref: 'a', line: 4 });
    expect(end).toMatchObject({ end: { lines: 4, answers: 2, errors: 1 } });
    expect([done.code, done.err, done.leftOpen]).toEqual([3, '', 0]);
  });

  test('without a fault ends with 0', async () => {
    expect((await batch(GOOD)).code).toBe(0);
  });

  test('has the form that its name or an option says, and is answered in either', async () => {
    const rows = 'ref,vehicle,part\na,cart-1,box-a\n';
    const files = { 'x.CSV': rows };
    const same = await run(['batch', 'x.CSV'], { database, files });
    expect(same.out.split('\r\n')[2]).toBe('answer,2,a,cart-1,box-a,holds,fits,,,,');
    const other = await run(['batch', '-', '--in', 'csv', '--out', 'ndjson'], {
      database,
      input: rows,
    });
    expect(objects(other)[1]).toMatchObject({ ref: 'a', line: 2, alone: 'holds' });
    const neither = await run(['batch', 'list'], { database, files: { list: rows } });
    expect([neither.code, neither.out]).toEqual([2, '']);
    expect(neither.err).toContain('--in ndjson or --in csv');
  });

  test('in full and in German', async () => {
    const [, answer, error] = objects(
      await batch(`${GOOD}\n${BAD}`, '--form', 'full', '--lang', 'de'),
    );
    expect(answer).toMatchObject({ answer: { summary: { text: expect.any(String) }, lang: 'de' } });
    expect(error).toMatchObject({ error: { lang: 'de' } });
  });

  test('goes on with any line, and counts as the file does', async () => {
    const lines = [GOOD, BAD, '', GOOD, GOOD];
    const whole = objects(await batch(lines.join('\n'))).slice(1, -1);
    for (const from of [1, 2, 3, 4, 5, 6]) {
      const rest = objects(await batch(lines.join('\n'), '--from-line', String(from))).slice(1, -1);
      expect(rest).toEqual(whole.filter(({ line }) => Number(line) >= from));
    }
    const rows = 'vehicle,part\ncart-1,box-a\ncart-1,box-b\n';
    const csv = { database, files: { 'x.csv': rows } };
    const { out } = await run(['batch', 'x.csv', '--from-line', '3'], csv);
    expect(out.split('\r\n').map((row) => row.slice(0, 8))).toEqual([
      'kind,lin',
      'start,,,',
      'answer,3',
      'end,,,,,',
      '',
    ]);
  });

  test('with names of columns that nothing has is refused as a whole', async () => {
    const files = { 'x.csv': 'vehicle,colour\n' };
    const { code, out, err } = await run(['batch', 'x.csv', '--json'], { database, files });
    expect([code, out]).toEqual([2, '']);
    expect(JSON.parse(err)).toMatchObject({
      code: 'invalid-request',
      errors: [{ code: 'unknown-column' }, { code: 'missing', parameter: 'part' }],
    });
  });

  test('of a file that is not there, or an edition that is not', async () => {
    expect((await run(['batch', 'no.csv'], { database })).code).toBe(2);
    const missing = await batch(GOOD, '--edition', '7');
    expect([missing.code, missing.out]).toEqual([2, '']);
  });

  test('shows how far it is on a terminal alone, and wipes that', async () => {
    const files = { 'x.ndjson': `${GOOD}\n`.repeat(20) };
    const shown = await run(['batch', 'x.ndjson'], { database, files, isTerminal: true });
    expect(shown.err).toMatch(/\[#+\.*\] \d+ %, \d+ lines/);
    expect(shown.err.endsWith('\r\u001b[2K')).toBe(true);
    expect((await batch(GOOD)).err).toBe('');
  });
});

describe('a batch that is broken off', () => {
  const many = `${GOOD}\n`.repeat(3000);

  test('by a signal says where to go on, and what follows is the rest', async () => {
    let pieces = 0;
    let stop = (_: string): void => undefined;
    const untilStopped = () =>
      new Promise<string>((resolve) => {
        stop = resolve;
      });
    let out = '';
    const writeOut = async (text: string) => {
      out += text;
      pieces += 1;
      if (pieces === 3) stop('SIGINT');
    };
    const files = { 'x.ndjson': many };
    const first = await run(['batch', 'x.ndjson'], {
      database,
      files,
      world: { untilStopped, writeOut },
    });
    expect(first.code).toBe(4);
    expect(out).not.toContain('"end"');
    const [, from = ''] =
      /^Stopped by SIGINT\. Go on with --from-line (\d+)\.$/m.exec(first.err) ?? [];
    expect(Number(from)).toBe(out.split('\n').length - 1);
    const rest = await run(['batch', 'x.ndjson', '--from-line', from], { database, files });
    const whole = await run(['batch', 'x.ndjson'], { database, files });
    const answers = (text: string) => text.split('\n').filter((line) => /"line"/.test(line));
    expect([...answers(out), ...answers(rest.out)]).toEqual(answers(whole.out));
  });

  test('since nobody reads any more', async () => {
    const writeOut = () => Promise.reject(Object.assign(new Error('EPIPE'), { code: 'EPIPE' }));
    const broken = await run(['batch', 'x.ndjson'], {
      database,
      files: { 'x.ndjson': many },
      world: { writeOut },
    });
    expect([broken.code, broken.leftOpen]).toEqual([4, 0]);
    expect(broken.err).toContain('Go on with --from-line 1.');
  });

  test('by a mistake of the program ends with 1, whatever was answered', async () => {
    const writeOut = () => Promise.reject(new TypeError('a mistake'));
    const broken = await run(['batch', 'x.ndjson'], {
      database,
      files: { 'x.ndjson': many },
      world: { writeOut },
    });
    expect(broken.code).toBe(1);
  });
});

describe('the program itself', () => {
  const folder = mkdtempSync(join(tmpdir(), 'faying-batch-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const program = (words: readonly string[]) => [
    '--import',
    'tsx',
    'src/cli/main.ts',
    'batch',
    ...words,
    '--database',
    database,
  ];

  test('stops where `head` has seen enough', { timeout: 60_000 }, async () => {
    const file = join(folder, 'x.ndjson');
    writeFileSync(file, `${GOOD}\n`.repeat(200_000));
    const words = program([file]).map((word) => `'${word}'`);
    const text = `node ${words.join(' ')} | head -n 2; echo "\${PIPESTATUS[0]}"`;
    const { out, err } = await new Promise<{ out: string; err: string }>((resolve) => {
      execFile('bash', ['-c', text], (_, out, err) => resolve({ out, err }));
    });
    expect(out.trim().split('\n').at(-1)).toBe('4');
    expect(err).toMatch(/Nobody reads the answers any more\. Go on with --from-line \d+\./);
  });

  test('stops at a signal although nobody writes', { timeout: 60_000 }, async () => {
    const child = spawn('node', program(['-', '--in', 'ndjson']), { stdio: 'pipe' });
    let err = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    child.stdin.write(`${GOOD}\n`);
    await new Promise((resolve) => child.stdout.once('data', resolve));
    child.kill('SIGINT');
    const code = await new Promise((resolve) => child.once('exit', resolve));
    expect([code, err]).toEqual([4, 'Stopped by SIGINT. Go on with --from-line 2.\n']);
  });
});
