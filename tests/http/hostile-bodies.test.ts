/**
 * What the table of hostile inputs does not tell of bodies: what is not done for them, and how that
 * which is not to be seen is shown.
 */

import { expect, test } from 'vitest';
import { refused, rigOf, zeros } from './fixture.js';
import { FIELDS } from './hostile-inputs/bodies.js';
import { answeredIn } from './sending.js';
import { raw, serve } from './socket.js';

test.each(['6000 sizes to choose among', '6000 positions', '6000 adapters in a row'])(
  '%s are not looked at one by one',
  async (sent) => {
    const { server, rig } = await serve();
    const { status } = answeredIn(await raw(server, FIELDS[sent] ?? ''));
    expect(status).toBe('400');
    expect(rig.judged).toEqual(zeros());
  },
);

test('what is not to be seen is shown by a sign, what is a pointer stays exact', async () => {
  const { app } = rigOf();
  const headers = { 'content-type': 'application/json' };
  const body = '{"vehicle":"cart-1","a\\u001b[31m\\u202e\\u200b":1}';
  const problem = await refused(
    await app.request('/v1/inspect', { method: 'POST', headers, body }),
  );
  expect(problem.errors[0]).toMatchObject({
    pointer: '/a\u001b[31m\u202e\u200b',
    text: 'There is no field "a\ufffd[31m\ufffd\ufffd" here.',
  });
});
