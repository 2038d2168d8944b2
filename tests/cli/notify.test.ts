/**
 * Who is told when an edition is published, and told again: what they get, what is said of it, and
 * that nothing of it holds up or fails the publishing.
 */

import { randomBytes } from 'node:crypto';
import { Webhook } from 'standardwebhooks';
import { beforeEach, describe, expect, test } from 'vitest';
import { CommandFault } from '../../src/cli/fault.js';
import { editionEventSchema } from '../../src/contract/edition-event.js';
import { ENGINE } from '../../src/domain/engine.js';
import { resolveBySystem } from '../../src/notify/attempt.js';
import { type Receiver, webhooks } from '../../src/notify/webhooks.js';
import { receiver, says } from '../notify/receiver.js';
import { CART, cartText } from './catalogue.js';
import { freshDatabase, NOW, type Run, run as runIn } from './terminal.js';

const SECRET = randomBytes(32);
const TOKEN = 'a-path-that-nobody-else-knows';

let database = '';
beforeEach(() => {
  database = freshDatabase();
});

function shop(url: string, name = 'shop'): Receiver {
  return { name, url: new URL(`${url}/${TOKEN}`), secrets: [SECRET], allowsPrivate: true };
}

function run(
  words: readonly string[],
  receivers: readonly Receiver[],
  { input = cartText(), service = null }: { input?: string; service?: string | null } = {},
): Promise<Run> {
  const means = {
    resolve: resolveBySystem,
    now: () => new Date(),
    wait: async () => undefined,
    timeoutMs: 5000,
  };
  const openNotifier = async () => webhooks({ service, receivers }, means);
  return runIn(words, { database, input, world: { openNotifier } });
}

/** Neither a secret nor what may be one is in anything that was said. */
function expectDiscreet({ out, err }: Run): void {
  for (const secret of [SECRET.toString('base64'), SECRET.toString('hex'), 'whsec_', TOKEN]) {
    expect(out + err).not.toContain(secret);
  }
}

describe('publishing', () => {
  test('tells each receiver what there is, in a form that it can check', async () => {
    const there = await receiver(says(204));
    const service = 'https://fits.example';
    const first = await run(['publish', '-'], [shop(there.url)], { service });
    expect([first.code, first.err]).toEqual([0, '']);
    expect(first.out).toMatch(/^Published edition 1\.\n[\s\S]*\nTold shop\.\n$/);
    expectDiscreet(first);
    const larger = { parts: [...CART.parts, { id: 'box-e', name: 'e', roles: ['gearbox'] }] };
    await run(['publish', '-'], [shop(there.url)], { service, input: cartText(larger) });
    const oracle = new Webhook(SECRET.toString('base64'));
    const events = there.got.map(({ headers, body }) => {
      const event = oracle.verify(body, headers as Record<string, string>);
      const read = editionEventSchema.parse(event);
      expect(headers['webhook-id']).toBe(read.id);
      return read;
    });
    const counts = expect.objectContaining({ vehicles: 1 });
    const source = `${service}/v1/editions`;
    expect(events).toEqual([
      {
        specversion: '1.0',
        id: expect.stringMatching(/^edition-1-[0-9a-f]{16}$/),
        source,
        type: 'faying.edition.published',
        time: NOW,
        datacontenttype: 'application/json',
        data: { edition: 1, from: null, engine: ENGINE, counts, fits: `${source}/1/fits` },
      },
      expect.objectContaining({
        id: expect.stringMatching(/^edition-2-[0-9a-f]{16}$/),
        data: { edition: 2, from: 1, engine: ENGINE, counts, fits: `${source}/2/fits?from=1` },
      }),
    ]);
  });

  test('is done, whatever a receiver does; only a warning says so', async () => {
    const bad = await receiver(says(500));
    const moved = await receiver(says(302, { location: bad.url }));
    const done = await run(['publish', '-'], [shop(bad.url, 'bad'), shop(moved.url, 'moved')]);
    expect(done.code).toBe(0);
    expect(done.out).toContain('Published edition 1.');
    expect(done.err).toBe(
      'bad was not told of edition 1, after 4 attempts: it did not take it (status 500).\n' +
        'moved was not told of edition 1, after 1 attempt: it leads elsewhere, which is not ' +
        'followed (status\n302).\nTell again with faying notify 1.\n',
    );
    expectDiscreet(done);
    expect((await runIn(['editions', '--json'], { database })).out).toContain('"edition":1');
  });

  test('is done before anybody is told', async () => {
    let seen = '';
    const openNotifier = async () => ({
      service: null,
      tell: async () => {
        seen = (await runIn(['editions', '--json'], { database })).out;
        return [];
      },
    });
    const input = cartText();
    const done = await runIn(['publish', '-'], { database, input, world: { openNotifier } });
    expect([done.code, done.leftOpen]).toEqual([0, 0]);
    expect(JSON.parse(seen)).toMatchObject({ edition: 1 });
  });

  test('tells nobody where there is nothing new', async () => {
    const there = await receiver(says(204));
    await run(['publish', '-'], []);
    const again = await run(['publish', '-'], [shop(there.url)]);
    expect(again.out).toContain('Nothing new');
    expect(there.got).toEqual([]);
  });

  test('says as JSON who was told', async () => {
    const there = await receiver(says(410));
    const done = await run(['publish', '-', '--json'], [shop(there.url)]);
    expect([done.code, done.err]).toEqual([0, '']);
    expect(JSON.parse(done.out)).toMatchObject({
      edition: { number: 1 },
      isNew: true,
      told: [{ receiver: 'shop', failure: 'gone', status: 410, attempts: 1 }],
    });
    expectDiscreet(done);
  });

  test('is not begun where who is to be told has faults', async () => {
    const openNotifier = () => Promise.reject(new CommandFault('bad-configuration', 'It is x.'));
    const input = cartText();
    const done = await runIn(['publish', '-'], { database, input, world: { openNotifier } });
    expect([done.code, done.out, done.opened]).toEqual([2, '', []]);
    expect(done.err).toContain('It is x.');
  });
});

describe('telling again', () => {
  test('says the same, by the same id', async () => {
    const there = await receiver(says(500), says(500), says(500), says(500), says(200));
    await run(['publish', '-'], [shop(there.url)]);
    const again = await run(['notify'], [shop(there.url)]);
    expect([again.code, again.out, again.err]).toEqual([0, 'Told shop.\n', '']);
    const by = await run(['notify', '1', '--json'], [shop(there.url)]);
    expect(JSON.parse(by.out)).toEqual({
      edition: 1,
      told: [{ receiver: 'shop', failure: null, status: 200, attempts: 1 }],
    });
    expect(there.got).toHaveLength(6);
    expect(new Set(there.got.map(({ body }) => body)).size).toBe(1);
    expect(new Set(there.got.map(({ headers }) => headers['webhook-id'])).size).toBe(1);
  });

  test('ends with 3 where somebody was not told', async () => {
    const there = await receiver(says(503));
    await run(['publish', '-'], []);
    const done = await run(['notify'], [shop(there.url)]);
    expect([done.code, done.out]).toEqual([3, '']);
    expect(done.err).toContain('shop was not told of edition 1, after 4 attempts');
    expectDiscreet(done);
  });

  test('needs somebody to tell, and an edition to tell of', async () => {
    await run(['publish', '-'], []);
    const nobody = await runIn(['notify'], { database });
    expect([nobody.code, nobody.out]).toEqual([2, '']);
    expect(nobody.err).toContain('FAYING_WEBHOOKS');
    const none = await run(['notify', '9'], []);
    expect(none.code).toBe(2);
    expect(none.err).toContain('edition 9');
  });
});
