/**
 * How messages are signed: the worked example of Standard Webhooks, and its own library as the
 * judge of any other.
 */

import { randomBytes } from 'node:crypto';
import fc from 'fast-check';
import { Webhook } from 'standardwebhooks';
import { expect, test } from 'vitest';
import { signedHeaders } from '../../src/notify/signature.js';

const keyOf = (text: string) => new Uint8Array(Buffer.from(text, 'base64'));

test('the example of the specification is signed as it says', () => {
  const message = { id: 'msg_p5jXN8AQM9LWM0D4loKWxJek', body: '{"test": 2432232314}' };
  const secret = keyOf('MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw');
  expect(signedHeaders(message, [secret], new Date(1_614_265_330_999))).toEqual({
    'webhook-id': 'msg_p5jXN8AQM9LWM0D4loKWxJek',
    'webhook-timestamp': '1614265330',
    'webhook-signature': 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
  });
});

test('whatever is signed, whoever knows one of its secrets can check, and nobody else', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.uint8Array({ minLength: 24, maxLength: 64 }), {
        minLength: 1,
        maxLength: 3,
        selector: (key) => Buffer.from(key).toString('base64'),
      }),
      fc.json(),
      fc.stringMatching(/^[\w-]{1,30}$/),
      (keys, body, id) => {
        const headers = { ...signedHeaders({ id, body }, keys, new Date()) };
        for (const key of keys) {
          const oracle = new Webhook(Buffer.from(key).toString('base64'));
          oracle.verify(body, headers);
          expect(() => oracle.verify(`${body} `, headers)).toThrow();
          expect(() => oracle.verify(body, { ...headers, 'webhook-id': `${id}x` })).toThrow();
        }
        const other = new Webhook(randomBytes(32).toString('base64'));
        expect(() => other.verify(body, headers)).toThrow();
      },
    ),
    { numRuns: 50 },
  );
});

test('what was signed long ago is not taken any more', () => {
  const secret = randomBytes(32);
  const message = { id: 'edition-1', body: '{}' };
  const headers = signedHeaders(message, [secret], new Date(Date.now() - 600_000));
  const oracle = new Webhook(secret.toString('base64'));
  expect(() => oracle.verify('{}', { ...headers })).toThrow('too old');
});
