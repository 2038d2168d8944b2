/**
 * The table of `hostile-table.md`, row by row, over a socket: what is sent, and the status, the
 * code and the fault with which it is answered. The bytes of each row are in `hostile-inputs/`, by
 * its words.
 */

import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type ProblemWire, problemSchema } from '../../src/contract/problem.js';
import type { ProblemCode } from '../../src/contract/problems/problem-type.js';
import { problemWords } from '../../src/contract/problems/words.js';
import { PROBLEMS } from '../../src/http/problem.js';
import { type RunningServer, startServer } from '../../src/http/server.js';
import { CART } from '../cli/catalogue.js';
import { LARGER_CART, rigOf } from './fixture.js';
import { BATCHES } from './hostile-inputs/batches.js';
import { FIELDS, JSON_TEXTS, TYPES } from './hostile-inputs/bodies.js';
import { FIT, type Inputs } from './hostile-inputs/bytes.js';
import { CALCULATORS, DRIVELINES } from './hostile-inputs/figures.js';
import { KITS } from './hostile-inputs/kits.js';
import { NAMES } from './hostile-inputs/names.js';
import { PIECES } from './hostile-inputs/pieces.js';
import { REQUEST_LINES } from './hostile-inputs/request-lines.js';
import { NUMBERS, PARAMETERS, PATHS } from './hostile-inputs/urls.js';
import { ACCEPTED, CONDITIONS, CURSORS } from './hostile-inputs/wishes.js';
import { type Answered, answeredIn } from './sending.js';
import { raw } from './socket.js';

/** The inputs, by the headings of the table. */
const GROUPS: Readonly<Record<string, Inputs>> = {
  'Request lines and heads': REQUEST_LINES,
  Paths: PATHS,
  Parameters: PARAMETERS,
  Numbers: NUMBERS,
  Names: NAMES,
  'Texts of bodies': JSON_TEXTS,
  'Fields of bodies': FIELDS,
  'Types of bodies': TYPES,
  Batches: BATCHES,
  'Kit questions': KITS,
  Calculators: CALCULATORS,
  'Questions how a vehicle drives': DRIVELINES,
  'Pieces on a bench': PIECES,
  Wishes: ACCEPTED,
  Conditions: CONDITIONS,
  Cursors: CURSORS,
};

interface Row {
  readonly sent: string;
  readonly status: number;
  /** Of the problem; null where there is none. */
  readonly code: ProblemCode | null;
  /** The first fault that the problem names, and where, such as `too-long at part`. */
  readonly fault: string | null;
}

const LINE = /^\| (.+) \| (\d{3}) \| (\S+) \| (.+) \|$/;

/** The rows below each heading. */
function tables(text: string): Map<string, Row[]> {
  const found = new Map<string, Row[]>();
  let rows: Row[] = [];
  for (const line of text.split('\n')) {
    const heading = /^## (.+)$/.exec(line)?.[1];
    if (heading !== undefined) {
      rows = [];
      found.set(heading, rows);
    }
    const [, sent, status, code, fault = '-'] = LINE.exec(line) ?? [];
    if (sent === undefined) continue;
    rows.push({
      sent,
      status: Number(status),
      code: code === '-' ? null : (code as ProblemCode),
      fault: fault === '-' ? null : fault,
    });
  }
  return found;
}

const TABLE = readFileSync(new URL('hostile-table.md', import.meta.url), 'utf8');
const found = tables(TABLE);

/** Nobody is sent more than they can read. */
const LONGEST_PROBLEM = 10_000;

/** What nobody outside is to see: where the program is, and what it was doing. */
const INSIDE = /node_modules|file:\/\/|\.[jt]s:\d|\n\s+at |\/src\/http\//;

/** What a screen does not show, or shows by changing what stands around it. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u;

const rig = rigOf({ documents: [CART, LARGER_CART] });
let server: RunningServer;
let before: string;

const plain = async () => (await fetch(`${server.url}${FIT}`)).text();

beforeAll(async () => {
  server = await startServer(rig.app, { port: 0, host: '127.0.0.1', log: rig.log });
  before = await plain();
});
afterAll(() => server.close());

test('every row has an input, and every input a row', () => {
  const inputs = Object.entries(GROUPS).map(([heading, some]) => [heading, Object.keys(some)]);
  const rows = [...found].map(([heading, some]) => [heading, some.map(({ sent }) => sent)]);
  expect(rows).toEqual(inputs);
  expect(rows.flatMap(([, some]) => some).length).toBe(
    TABLE.match(/^\| .* \| \d{3} \| /gm)?.length,
  );
});

describe.each([...found])('%s', (heading, rows) => {
  test.each(rows.map((row) => [row.sent, row] as const))('%s', async (sent, row) => {
    const input = GROUPS[heading]?.[sent] ?? Buffer.from('');
    const answer = answeredIn(await raw(server, input));
    const problem = problemIn(answer);
    expect({
      sent,
      status: Number(answer.status),
      code: problem?.code ?? null,
      fault: firstFault(problem),
    }).toEqual(row);
    expect(row.status < 400).toBe(problem === null);
    expect(row.status).toBeLessThan(500);
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    if (problem !== null) checkProblem(problem, answer);
  });
});

function problemIn({ headers, body }: Answered): ProblemWire | null {
  if (headers.get('content-type') !== 'application/problem+json') return null;
  return problemSchema.parse(JSON.parse(body));
}

/** Longest place that the table repeats. */
const LONGEST_PLACE = 40;

function firstFault(problem: ProblemWire | null): string | null {
  const [fault] = problem?.errors ?? [];
  if (fault === undefined) return null;
  const place = fault.parameter ?? fault.pointer ?? '';
  if (place === '') return fault.code;
  const seen = place.replace(new RegExp(UNSEEN, 'gu'), '\ufffd');
  const cut = seen.length > LONGEST_PLACE ? `${seen.slice(0, LONGEST_PLACE)}…` : seen;
  return `${fault.code} at ${cut}`;
}

/** What some problems have to tell in a header. */
const TOLD: ReadonlyMap<number, readonly string[]> = new Map([
  [405, ['allow']],
  [415, ['accept', 'accept-encoding']],
]);

function checkProblem(problem: ProblemWire, { headers, body }: Answered): void {
  const { code, lang } = problem;
  const type = PROBLEMS[code as ProblemCode];
  const { title } = problemWords(lang === 'de' ? 'de' : 'en').problems[code as ProblemCode];
  expect(problem).toMatchObject({ type: `/problems/${code}`, title, ...type });
  expect(headers.get('x-request-id')).toBe(problem.instance);
  expect(headers.get('content-language')).toBe(lang);
  expect(headers.get('content-length')).toBe(String(Buffer.byteLength(body)));
  const told = TOLD.get(problem.status) ?? ['content-type'];
  expect(told.some((name) => headers.has(name))).toBe(true);
  expect(body.length).toBeLessThan(LONGEST_PROBLEM);
  expect(body).not.toMatch(INSIDE);
  const said = [problem.detail, ...problem.errors.map(({ text }) => text)];
  expect(said.filter((text) => text === '' || UNSEEN.test(text))).toEqual([]);
}

test('after all that, a plain question has the answer that it had, and nothing broke', async () => {
  expect(await plain()).toBe(before);
  const levels = rig.lines.map(({ level }) => level);
  expect(new Set(levels)).toEqual(new Set([30]));
  expect(rig.lines.filter(({ status }) => Number(status) >= 500)).toEqual([]);
});
