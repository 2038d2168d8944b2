/**
 * One transcript for each type of problem, in `transcripts/`: the request as it was sent, what the
 * service said, and the same request mended with the first lines of its answer. Everything goes
 * over a socket as bytes, since some of it is nothing that a client of Node would send.
 */

import { readdirSync } from 'node:fs';
import { pino } from 'pino';
import { afterAll, describe, expect, test } from 'vitest';
import { exampleService } from '../../scripts/example-service.js';
import { ENGINE_VERSION } from '../../src/contract/answer-head.js';
import { problemSchema } from '../../src/contract/problem.js';
import { problemExample } from '../../src/contract/problem-examples.js';
import type { ProblemCode } from '../../src/contract/problems/problem-type.js';
import { problemWords } from '../../src/contract/problems/words.js';
import type { ServiceState } from '../../src/contract/refusals.js';
import { requestText, type SentRequest } from '../../src/contract/sent-request.js';
import { PROBLEM_CODES, PROBLEMS } from '../../src/http/problem.js';
import { startServer } from '../../src/http/server.js';
import { type Answered, send } from './sending.js';

const log = pino({ level: 'silent' });
const service = exampleService({ log });
afterAll(() => service.close());

const { problems, page } = problemWords('en');

/** Headers of which a transcript says what they were; the others are of every answer. */
const TOLD = [
  'content-type',
  'content-language',
  'cache-control',
  'vary',
  'allow',
  'accept',
  'accept-encoding',
  'retry-after',
  'www-authenticate',
];

/** Lines of an answer that show that it is one. */
const FIRST_LINES = 8;

/** Milliseconds: nobody should wait half a minute to see a request that is late. */
const ARRIVAL_MS = 200;

async function answerTo(request: SentRequest, state: ServiceState | null): Promise<Answered> {
  const isSilent = request.stops?.by === 'falling-silent';
  const server = await startServer(service.appIn(state), {
    port: 0,
    host: '127.0.0.1',
    log,
    drainMs: state === 'stopping' ? 500 : 0,
    ...(isSilent ? { limits: { arrivalMs: ARRIVAL_MS } } : {}),
  });
  const stopping = state === 'stopping' ? [server.close()] : [];
  try {
    return await send(server.url, request);
  } finally {
    await Promise.all([...stopping, server.close()]);
  }
}

function answerText({ status, headers, body }: Answered, lines: number): string {
  const told = TOLD.flatMap((name) => {
    const value = headers.get(name);
    return value === undefined ? [] : [`${name}: ${value}`];
  });
  const isJson = /\bjson\b/.test(headers.get('content-type') ?? '');
  const text = isJson ? JSON.stringify(JSON.parse(body), null, 2) : body.trimEnd();
  const all = text.split('\n');
  const shown = all.length > lines ? [...all.slice(0, lines), '…'] : all;
  return [`HTTP/1.1 ${status}`, ...told, '', ...shown].join('\n');
}

const STATES: Readonly<Record<ServiceState, string>> = {
  empty: 'nothing has been published.',
  unreadable: 'the database is damaged.',
  faulty: 'the program makes a mistake.',
  stopping: 'it has been told to stop.',
  guarded: 'it opens nothing to who shows no key.',
};

async function transcriptOf(code: ProblemCode): Promise<string> {
  const { refused, service: state, mended } = problemExample(code);
  const answered = await answerTo(refused, state);
  const problem = problemSchema.parse(JSON.parse(answered.body));
  expect([problem.code, answered.status]).toEqual([code, String(PROBLEMS[code].status)]);
  expect(answered.headers.get('x-request-id')).toBe(problem.instance);
  // What is refused before there is a request has an id by chance.
  const body = answered.body.replace(problem.instance, '00000000-0000-4000-8000-000000000001');
  const parts = [
    `# ${problems[code].title}`,
    ...(state === null ? [] : [`# State of the service: ${STATES[state]}`]),
    requestText(refused, page.request),
    answerText({ ...answered, body }, Number.POSITIVE_INFINITY),
  ];
  const { about } = problems[code];
  if (mended === null) parts.push(`# What to do\n${about}\n${page.again[PROBLEMS[code].retry]}`);
  else parts.push('# Mended', requestText(mended, page.request), await goodText(mended, state));
  return `${parts.join('\n\n')}\n`;
}

async function goodText(request: SentRequest, state: ServiceState | null): Promise<string> {
  const answered = await answerTo(request, state);
  expect(answered.status).toBe('200');
  // Of which version the program is, is another matter.
  const body = answered.body.replace(`"engine":"${ENGINE_VERSION}"`, '"engine":"…"');
  return answerText({ ...answered, body }, FIRST_LINES);
}

describe('a transcript of each type of problem', () => {
  test.each(PROBLEM_CODES)('%s', async (code) => {
    const transcript = await transcriptOf(code);
    await expect(transcript).toMatchFileSnapshot(`transcripts/${code}.txt`);
  });

  test('and of nothing else', () => {
    const files = readdirSync(new URL('transcripts/', import.meta.url));
    expect(files.sort()).toEqual(PROBLEM_CODES.map((code) => `${code}.txt`).sort());
  });

  test('what the client can mend is mended, all else is for those who run the service', () => {
    for (const code of PROBLEM_CODES) {
      const { service: state, mended } = problemExample(code);
      const isForClient = state === null || state === 'guarded';
      expect([code, mended === null]).toEqual([code, !isForClient]);
    }
  });
});
