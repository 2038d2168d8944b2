/**
 * Asking again: what is asked again and what is not, after how long, how often at most, and until
 * when. The servers are real and the waits are not: a clock tells what was waited for.
 */

import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http';
import { afterEach, describe, expect, test } from 'vitest';
import { type Clock, FayingClient, type RetryOptions } from '../../src/client/client.js';
import { fetchRepeatedly, retryAfterMs, SYSTEM_CLOCK } from '../../src/client/retry.js';
import { type Running, serving } from './running-service.js';

/** A Saturday, so that a date can be told. */
const NOW = Date.UTC(2026, 0, 3, 12, 0, 0);

/** A clock that moves only when somebody waits. */
class ToldClock implements Clock {
  readonly waits: number[] = [];
  readonly #meanwhile: () => void;
  #now = NOW;

  constructor(meanwhile: () => void = () => undefined) {
    this.#meanwhile = meanwhile;
  }

  now(): number {
    return this.#now;
  }

  async wait(ms: number, signal: AbortSignal): Promise<void> {
    this.waits.push(ms);
    this.#meanwhile();
    signal.throwIfAborted();
    this.#now += ms;
  }

  random(): number {
    return 0.5;
  }
}

const BUSY = {
  type: '/problems/busy',
  title: 'Busy',
  detail: 'Too many questions.',
  lang: 'en',
  code: 'busy',
  retry: 'later',
  errors: [],
  instance: '1',
};

type Answering = (response: ServerResponse) => void;

const fine: Answering = (response) => {
  response.setHeader('content-type', 'application/json').end('{"status":"alive"}');
};

function busy(status: number, retryAfter?: string): Answering {
  return (response) => {
    if (retryAfter !== undefined) response.setHeader('retry-after', retryAfter);
    response.statusCode = status;
    response.setHeader('content-type', 'application/problem+json');
    response.end(JSON.stringify({ ...BUSY, status }));
  };
}

const cut: Answering = (response) => {
  response.socket?.destroy();
};

let server: Running | null = null;
afterEach(async () => {
  await server?.stop();
  server = null;
});

interface Tried {
  readonly client: FayingClient;
  readonly clock: ToldClock;
  /** What the server has been asked, method and body. */
  readonly asked: string[];
}

/** A client of a server that answers so, one after the other, and then as the last time. */
async function tried(
  answers: readonly Answering[],
  options: { retry?: RetryOptions; clock?: ToldClock } = {},
): Promise<Tried> {
  const asked: string[] = [];
  const answer: RequestListener = (request, response) => {
    void bodyOf(request).then((body) => {
      asked.push(`${request.method} ${body}`.trim());
      answers[Math.min(asked.length, answers.length) - 1]?.(response);
    });
  };
  server = await serving(answer);
  const { clock = new ToldClock(), retry } = options;
  const client = new FayingClient({ baseUrl: server.url, clock, ...(retry ? { retry } : {}) });
  return { client, clock, asked };
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  let body = '';
  for await (const piece of request) body += String(piece);
  return body;
}

describe('the wait before the next try', () => {
  test.each<[string, string | undefined, number]>([
    ['the seconds that are said', '7', 7000],
    ['none where none are said', '0', 0],
    ['until the date that is said', 'Sat, 03 Jan 2026 12:00:09 GMT', 9000],
    ['none where that has gone by', 'Sat, 03 Jan 2026 11:00:00 GMT', 0],
    ['its own where nothing is said', undefined, 375],
    ['its own where it is not understood', 'soon', 375],
  ])('is %s', async (_, said, ms) => {
    for (const status of [429, 503]) {
      const { client, clock, asked } = await tried([busy(status, said), fine]);
      expect(await client.get('/livez')).toEqual({ status: 'alive' });
      expect([clock.waits, asked]).toEqual([[ms], ['GET', 'GET']]);
      await server?.stop();
    }
  });

  test('doubles where nobody says how long', async () => {
    const { client, clock } = await tried([busy(503), cut, busy(429), fine]);
    await client.get('/livez');
    expect(clock.waits).toEqual([375, 750, 1500]);
  });
});

describe('what is asked again', () => {
  test('is a question in a body, with the same body', async () => {
    const { client, asked } = await tried([busy(503, '1'), fine]);
    const body = { vehicle: 'lirren-1', part: 'bracket-20' };
    await client.post('/v1/fit', { body });
    const sent = `POST ${JSON.stringify(body)}`;
    expect(asked).toEqual([sent, sent]);
  });

  test('is what met a connection that broke, and one that nobody takes', async () => {
    const { client, clock, asked } = await tried([cut, fine]);
    await client.get('/livez');
    expect([clock.waits.length, asked]).toEqual([1, ['GET', 'GET']]);
    await server?.stop();
    server = null;
    await expect(client.get('/livez')).rejects.toThrow(TypeError);
    expect(clock.waits.length).toBe(4);
  });

  test('is nothing that was answered otherwise', async () => {
    for (const status of [400, 404, 500, 502]) {
      const { client, clock, asked } = await tried([busy(status, '1'), fine]);
      await expect(client.get('/livez')).rejects.toMatchObject({ code: 'busy', status });
      expect([clock.waits, asked.length]).toEqual([[], 1]);
      await server?.stop();
    }
  });

  test('is nothing that the contract does not say may be', async () => {
    const { client, clock, asked } = await tried([busy(503, '1'), fine]);
    // A path of which the client knows nothing, as one that is to come would be to this one.
    const unknown = client.post.bind(client) as (path: string, init: object) => Promise<unknown>;
    await expect(unknown('/v1/orders', { body: {} })).rejects.toMatchObject({ code: 'busy' });
    expect([clock.waits, asked.length]).toEqual([[], 1]);
  });

  test('is an array of lines, and no stream of them', async () => {
    const lines: Answering = (response) => response.end('{"start":{}}\n{"end":{}}\n');
    const question = { vehicle: 'lirren-1', part: 'bracket-20' };
    const array = await tried([busy(503, '1'), lines]);
    for await (const _ of array.client.askBatch([question]));
    const sent = `POST ${JSON.stringify(question)}`;
    expect(array.asked).toEqual([sent, sent]);
    await server?.stop();
    const stream = await tried([busy(503, '1'), lines]);
    const asking = stream.client.askBatch(new Set([question]))[Symbol.asyncIterator]();
    await expect(asking.next()).rejects.toMatchObject({ code: 'busy', retryAfterMs: 1000 });
    expect(stream.asked).toEqual([sent]);
  });
});

describe('it ends', () => {
  test('after so many tries, with the last answer', async () => {
    const { client, clock, asked } = await tried([busy(503, '1'), busy(429, '2')]);
    await expect(client.get('/livez')).rejects.toMatchObject({ status: 429, retryAfterMs: 2000 });
    expect([clock.waits, asked.length]).toEqual([[1000, 2000, 2000], 4]);
  });

  test.each([1, 2])('after %d where it is told so', async (tries) => {
    const { client, asked } = await tried([busy(503, '1')], { retry: { tries } });
    await expect(client.get('/livez')).rejects.toMatchObject({ status: 503 });
    expect(asked.length).toBe(tries);
  });

  test('at once where the wait would take too long', async () => {
    const retry = { totalMs: 10_000 };
    const { client, clock, asked } = await tried([busy(503, '6'), busy(503, '5')], { retry });
    await expect(client.get('/livez')).rejects.toMatchObject({ retryAfterMs: 5000 });
    expect([clock.waits, asked.length]).toEqual([[6000], 2]);
  });

  test('with the reason of the signal, in the middle of a wait', async () => {
    const given = new AbortController();
    const reason = new Error('the page was left');
    const clock = new ToldClock(() => given.abort(reason));
    const { client, asked } = await tried([busy(503, '1'), fine], { clock });
    await expect(client.get('/livez', { signal: given.signal })).rejects.toBe(reason);
    expect(asked.length).toBe(1);
  });
});

describe('the clock of the machine', () => {
  test('waits, and no longer than the signal lets it', async () => {
    const given = new AbortController();
    const before = SYSTEM_CLOCK.now();
    await SYSTEM_CLOCK.wait(5, given.signal);
    expect(SYSTEM_CLOCK.now() - before).toBeGreaterThanOrEqual(4);
    const reason = new Error('the page was left');
    const waiting = SYSTEM_CLOCK.wait(60_000, given.signal);
    given.abort(reason);
    await expect(waiting).rejects.toBe(reason);
    await expect(SYSTEM_CLOCK.wait(60_000, given.signal)).rejects.toBe(reason);
    expect(SYSTEM_CLOCK.random()).toBeLessThan(1);
  });

  test('is not asked where the first try has an answer', async () => {
    const clock = new ToldClock();
    const fetch = async () => new Response('fine');
    const request = new Request('http://nowhere.example/livez');
    const response = await fetchRepeatedly(request, { fetch, clock, tries: 4, totalMs: 0 });
    expect([await response.text(), clock.waits]).toEqual(['fine', []]);
    expect(retryAfterMs(response, NOW)).toBeNull();
  });
});
