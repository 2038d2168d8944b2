/**
 * Telling receivers: one that fails in every way that there is, and addresses that are forbidden,
 * looked at where the connection asks for them.
 */

import { randomBytes } from 'node:crypto';
import type { LookupAddress } from 'node:dns';
import { Webhook } from 'standardwebhooks';
import { describe, expect, test } from 'vitest';
import type { Resolve } from '../../src/notify/attempt.js';
import { type Means, type Receiver, WAITS_MS, webhooks } from '../../src/notify/webhooks.js';
import {
  breaksOff,
  hangs,
  type Listening,
  receiver,
  says,
  saysWithoutEnd,
  stammers,
} from './receiver.js';

const MESSAGE = { id: 'edition-7-0123456789abcdef', body: '{"data":{"edition":7}}' };
const SECRET = randomBytes(32);

/** The waits that were asked for; nobody waits. */
const waited: number[] = [];

function means(more: Partial<Means> = {}): Means {
  waited.length = 0;
  return {
    resolve: found('127.0.0.1'),
    now: () => new Date(),
    wait: async (ms) => {
      waited.push(ms);
    },
    timeoutMs: 5000,
    ...more,
  };
}

/** Every name has these addresses. */
function found(...addresses: readonly string[]): Resolve {
  return (_, done) => {
    const known = addresses.map((address): LookupAddress => {
      return { address, family: address.includes(':') ? 6 : 4 };
    });
    done(null, known);
  };
}

function shop(url: string, more: Partial<Receiver> = {}): Receiver {
  return { name: 'shop', url: new URL(url), secrets: [SECRET], allowsPrivate: true, ...more };
}

async function tell(to: Receiver, by: Means = means()) {
  const [told] = await webhooks({ service: null, receivers: [to] }, by).tell(MESSAGE);
  return told;
}

/** Checks each message with a library that is not ours. */
function expectSigned({ got }: Listening, secret: Uint8Array = SECRET): void {
  const oracle = new Webhook(Buffer.from(secret).toString('base64'));
  for (const { headers, body } of got) {
    expect(oracle.verify(body, headers as Record<string, string>)).toEqual(JSON.parse(body));
    expect(headers['content-type']).toBe('application/cloudevents+json; charset=utf-8');
  }
}

describe('a receiver', () => {
  test('that takes it is told once, by a message that it can check', async () => {
    for (const status of [200, 201, 204, 299]) {
      const there = await receiver(says(status));
      const expected = { receiver: 'shop', failure: null, status, attempts: 1 };
      expect(await tell(shop(`${there.url}/hooks?of=us`))).toEqual(expected);
      expect(there.got.map(({ path, body }) => [path, body])).toEqual([
        ['/hooks?of=us', MESSAGE.body],
      ]);
      expectSigned(there);
      expect(waited).toEqual([]);
    }
  });

  test('that fails twice is told the third time, by the same id, signed anew', async () => {
    const there = await receiver(says(500), says(503), says(200));
    let now = Date.now() - 60_000;
    const later = () => {
      now += 10_000;
      return new Date(now);
    };
    const by = means({ now: later });
    const told = await tell(shop(there.url), by);
    expect(told).toEqual({ receiver: 'shop', failure: null, status: 200, attempts: 3 });
    expect(waited).toEqual(WAITS_MS.slice(0, 2));
    expectSigned(there);
    const of = (name: string) => there.got.map(({ headers }) => headers[name]);
    expect(new Set(of('webhook-id'))).toEqual(new Set([MESSAGE.id]));
    expect(new Set(of('webhook-timestamp')).size).toBe(3);
    expect(new Set(there.got.map(({ body }) => body)).size).toBe(1);
  });

  test.each([
    ['status', 500, [says(500)]],
    ['status', 404, [says(404)]],
    ['status', 429, [says(429)]],
    ['no-connection', null, [breaksOff]],
    ['no-connection', null, [stammers]],
    ['no-connection', null, [says(500), breaksOff]],
  ] as const)(
    'that fails for good is left in peace after a while: %s %s',
    async (why, status, by) => {
      const there = await receiver(...by);
      const told = await tell(shop(there.url));
      expect(told).toEqual({ receiver: 'shop', failure: why, status, attempts: 4 });
      expect(waited).toEqual([...WAITS_MS]);
      expect(there.got).toHaveLength(4);
    },
  );

  test('that hangs is waited for no longer than a while', async () => {
    const there = await receiver(hangs);
    const told = await tell(shop(there.url), means({ timeoutMs: 100 }));
    expect(told).toEqual({ receiver: 'shop', failure: 'timeout', status: null, attempts: 4 });
  });

  test('that was not there and comes is told', async () => {
    const there = await receiver(hangs, says(204));
    const told = await tell(shop(there.url), means({ timeoutMs: 200 }));
    expect(told).toMatchObject({ failure: null, attempts: 2 });
  });

  test('that says yes without an end is told', async () => {
    const there = await receiver(saysWithoutEnd);
    expect(await tell(shop(there.url))).toMatchObject({ failure: null, status: 200, attempts: 1 });
  });

  test('that leads elsewhere is not followed, nor asked again', async () => {
    const other = await receiver(says(200));
    for (const status of [301, 302, 303, 307, 308]) {
      const there = await receiver(says(status, { location: other.url }));
      const told = await tell(shop(there.url));
      expect(told).toEqual({ receiver: 'shop', failure: 'redirect', status, attempts: 1 });
    }
    expect(other.got).toEqual([]);
  });

  test('that wants no more is asked no more', async () => {
    const there = await receiver(says(410));
    expect(await tell(shop(there.url))).toEqual({
      receiver: 'shop',
      failure: 'gone',
      status: 410,
      attempts: 1,
    });
  });

  test('where nobody listens, or whose name nobody knows', async () => {
    const nobody = await tell(shop('http://127.0.0.1:1'));
    expect(nobody).toMatchObject({ failure: 'no-connection', status: null, attempts: 4 });
    const unknown: Resolve = (_, done) =>
      done(Object.assign(new Error('none'), { code: 'ENOTFOUND' }));
    const lost = await tell(shop('http://shop.example'), means({ resolve: unknown }));
    expect(lost).toMatchObject({ failure: 'unknown-host', status: null, attempts: 4 });
  });

  test('that speaks no TLS is told nothing over TLS', async () => {
    const there = await receiver(says(200));
    const told = await tell(shop(there.url.replace('http:', 'https:')));
    expect(told).toMatchObject({ failure: 'no-connection', attempts: 4 });
    expect(there.got).toEqual([]);
  });

  test('that replaces its secret can check by either', async () => {
    const there = await receiver(says(200));
    const old = randomBytes(24);
    await tell(shop(there.url, { secrets: [SECRET, old] }));
    expectSigned(there, SECRET);
    expectSigned(there, old);
    expect(String(there.got[0]?.headers['webhook-signature']).split(' ')).toHaveLength(2);
  });
});

test('one that fails keeps nothing from the others', async () => {
  const [good, bad, slow] = [
    await receiver(says(200)),
    await receiver(says(500)),
    await receiver(hangs),
  ];
  const receivers = [
    shop(slow.url, { name: 'slow' }),
    shop(bad.url, { name: 'bad' }),
    shop(good.url, { name: 'good' }),
  ];
  const told = await webhooks({ service: null, receivers }, means({ timeoutMs: 100 })).tell(
    MESSAGE,
  );
  expect(told.map((one) => [one.receiver, one.failure])).toEqual([
    ['slow', 'timeout'],
    ['bad', 'status'],
    ['good', null],
  ]);
});

describe('an address that not anybody can reach', () => {
  const FORBIDDEN = { failure: 'forbidden-address', status: null, attempts: 1 };
  const closed = { allowsPrivate: false };

  test.each([
    'http://127.0.0.1',
    'http://[::1]',
    'http://[::ffff:127.0.0.1]',
    'http://0x7f.1',
    'http://2130706433',
    'http://0',
    'http://169.254.169.254/latest',
    'http://[fd00:ec2::254]',
  ])('is not sent to where it is written out: %s', async (address) => {
    const there = await receiver(says(200));
    const { port } = new URL(there.url);
    const url = new URL(address);
    url.port = port;
    expect(await tell(shop(String(url), closed))).toMatchObject(FORBIDDEN);
    expect(there.got).toEqual([]);
  });

  test.each([
    ['alone', ['127.0.0.1']],
    ['beside one that anybody can reach', ['11.0.0.0', '127.0.0.1']],
    ['first of several', ['127.0.0.1', '11.0.0.0']],
    ['in IPv6', ['::1']],
    ['as IPv4 in IPv6', ['::ffff:127.0.0.1']],
  ])('is not sent to where a name leads to it: %s', async (_, addresses) => {
    const there = await receiver(says(200));
    const { port } = new URL(there.url);
    const by = means({ resolve: found(...addresses) });
    expect(await tell(shop(`http://shop.example:${port}`, closed), by)).toMatchObject(FORBIDDEN);
    expect(there.got).toEqual([]);
  });

  test('is looked at where it is connected to: a name has no second chance', async () => {
    const there = await receiver(says(200));
    const { port } = new URL(there.url);
    let asked = 0;
    const resolve: Resolve = (hostname, done) => {
      asked += 1;
      found('127.0.0.1')(hostname, done);
    };
    const by = means({ resolve });
    expect(await tell(shop(`http://shop.example:${port}`, closed), by)).toMatchObject(FORBIDDEN);
    // Had it been looked up once to check and once more to connect, it would be two.
    expect(asked).toBe(1);
    expect(await tell(shop(`http://shop.example:${port}`), by)).toMatchObject({ failure: null });
    expect(asked).toBe(2);
  });

  test('is not sent to either where only a later attempt leads to it', async () => {
    const there = await receiver(says(200));
    const { port } = new URL(there.url);
    let asked = 0;
    const resolve: Resolve = (hostname, done) => {
      asked += 1;
      if (asked > 1) found('127.0.0.1')(hostname, done);
      else done(Object.assign(new Error('later'), { code: 'EAI_AGAIN' }), []);
    };
    const told = await tell(shop(`http://shop.example:${port}`, closed), means({ resolve }));
    expect(told).toMatchObject({ failure: 'forbidden-address', attempts: 2 });
    expect(there.got).toEqual([]);
  });

  test('is sent to where that is allowed', async () => {
    const there = await receiver(says(200));
    expect(await tell(shop(there.url))).toMatchObject({ failure: null });
  });
});
