/**
 * Batches: questions streamed out and answers in, against the service as it runs and against
 * servers that break off.
 */

import type { ServerResponse } from 'node:http';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  BatchBrokenOff,
  FayingClient,
  type FitBatchAnswer,
  type FitLine,
} from '../../src/client/client.js';
import { CART } from '../cli/catalogue.js';
import { type RunningService, runningService, serving } from './running-service.js';

let service: RunningService;
let client: FayingClient;

beforeAll(async () => {
  service = await runningService(CART);
  client = new FayingClient({ baseUrl: service.url });
});
afterAll(() => service.stop());

const QUESTION: FitLine = { vehicle: 'cart-1', part: 'box-c' };

const numbered = (count: number): FitLine[] =>
  Array.from({ length: count }, (_, at) => ({ ...QUESTION, ref: `r${at}` }));

async function all(answers: AsyncIterable<FitBatchAnswer>): Promise<FitBatchAnswer[]> {
  const taken: FitBatchAnswer[] = [];
  for await (const answer of answers) taken.push(answer);
  return taken;
}

describe('a batch', () => {
  test('has an answer for each question, in order, and a problem of its own for one', async () => {
    const batch = client.askBatch([
      { ...QUESTION, ref: 'a' },
      { vehicle: 'nobody-knows', part: 'box-c' },
      QUESTION,
    ]);
    expect([batch.start, batch.end]).toEqual([null, null]);
    const answers = await all(batch);
    expect(answers).toMatchObject([
      { line: 1, ref: 'a', vehicle: 'cart-1', part: 'box-c' },
      { line: 2, error: { code: 'unknown-vehicle', retry: 'with-change' } },
      { line: 3, vehicle: 'cart-1' },
    ]);
    expect(batch.start).toMatchObject({ edition: 1, form: 'short', changes: 'no' });
    expect(batch.end).toMatchObject({ lines: 3, answers: 2, errors: 1 });
  });

  test('is the same sent as one piece and as a stream', async () => {
    const questions = numbered(5000);
    async function* slowly(): AsyncGenerator<FitLine> {
      yield* questions;
    }
    const inOnePiece = await all(client.askBatch(questions));
    expect(inOnePiece.length).toBe(5000);
    expect(await all(client.askBatch(new Set(questions)))).toEqual(inOnePiece);
    expect(await all(client.askBatch(slowly()))).toEqual(inOnePiece);
  });

  test('is answered while it is being asked', async () => {
    let hasAnswer: () => void = () => undefined;
    const order: string[] = [];
    async function* afterEachAnswer(): AsyncGenerator<FitLine> {
      for (const question of numbered(4)) {
        const answered = new Promise<void>((resolve) => {
          hasAnswer = resolve;
        });
        order.push(`asks ${question.ref}`);
        yield question;
        await answered;
      }
    }
    for await (const answer of client.askBatch(afterEachAnswer())) {
      order.push(`has ${answer.ref}`);
      hasAnswer();
    }
    const each = numbered(4).flatMap(({ ref }) => [`asks ${ref}`, `has ${ref}`]);
    expect(order).toEqual(each);
  });

  test('has whole answers where they are wished for, in the language of the client', async () => {
    const german = new FayingClient({ baseUrl: service.url, lang: 'de' });
    const batch = german.askBatch([QUESTION], { form: 'full', changes: 'yes' });
    const [answer] = await all(batch);
    const query = { vehicle: 'cart-1', part: 'box-c' };
    expect(answer).toEqual({
      line: 1,
      answer: await german.get('/v1/fit', { params: { query } }),
    });
    expect(batch.start).toMatchObject({ lang: 'de', changes: 'yes' });
  });

  test('of no questions has no answers', async () => {
    const batch = client.askBatch([]);
    expect(await all(batch)).toEqual([]);
    expect(batch.end).toMatchObject({ lines: 0 });
  });

  test('that is refused as a whole is a problem', async () => {
    await expect(all(client.at(99).askBatch([QUESTION]))).rejects.toMatchObject({
      name: 'FayingProblem',
      code: 'unknown-edition',
    });
  });
});

const START = '{"start":{"edition":1}}\n';
const ONE = '{"line":1,"alone":"holds","verdict":"fits","codes":[]}\n';

type Ending = (response: ServerResponse) => void;

describe('a batch that is broken off', () => {
  test.each<[string, string, number, Ending]>([
    ['before it began', '', 0, (response) => response.end()],
    ['by an end of the stream', START + ONE, 1, (response) => response.end()],
    ['in the middle of a line', `${START}${ONE}{"line":2`, 1, (response) => response.end()],
    ['in the middle of its last line', `${START}${ONE}{"end":{}}`, 1, (response) => response.end()],
    ['by the connection', START + ONE, 1, (response) => response.socket?.destroy()],
  ])('%s has no end', async (_, sent, lastLine, end) => {
    const broken = await serving((request, response) => {
      request.resume();
      response.write(sent, () => setImmediate(end, response));
      if (sent === '') end(response);
    });
    try {
      const batch = new FayingClient({ baseUrl: broken.url }).askBatch([QUESTION, QUESTION]);
      const taken: FitBatchAnswer[] = [];
      const reading = (async () => {
        for await (const answer of batch) taken.push(answer);
      })();
      const error: unknown = await reading.catch((reason: unknown) => reason);
      expect(error).toBeInstanceOf(BatchBrokenOff);
      expect([error, batch.end]).toMatchObject([{ lastLine }, null]);
      expect(taken.map(({ line }) => line)).toEqual(lastLine === 0 ? [] : [1]);
    } finally {
      await broken.stop();
    }
  });

  test('by the questions throws what they threw', async () => {
    const reason = new Error('the file cannot be read any further');
    async function* failing(): AsyncGenerator<FitLine> {
      yield QUESTION;
      await Promise.resolve();
      throw reason;
    }
    await expect(all(client.askBatch(failing()))).rejects.toBe(reason);
  });

  test('by who asks asks no further', async () => {
    let asked = 0;
    let isOver = false;
    async function* endless(): AsyncGenerator<FitLine> {
      try {
        for (;;) {
          asked += 1;
          yield QUESTION;
          await new Promise((resolve) => setImmediate(resolve));
        }
      } finally {
        isOver = true;
      }
    }
    for await (const answer of client.askBatch(endless())) if (answer.line > 2) break;
    await expect.poll(() => isOver).toBe(true);
    const before = asked;
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(asked).toBe(before);
  });

  test('by the signal has its reason', async () => {
    const given = new AbortController();
    const reason = new Error('the night is over');
    async function* endless(): AsyncGenerator<FitLine> {
      for (;;) {
        yield QUESTION;
        await new Promise((resolve) => setImmediate(resolve));
      }
    }
    const batch = client.askBatch(endless(), { signal: given.signal });
    const reading = (async () => {
      for await (const { line } of batch) if (line === 2) given.abort(reason);
    })();
    await expect(reading).rejects.toBe(reason);
  });
});
