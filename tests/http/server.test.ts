/**
 * The server itself, on a port: what never becomes a request is refused in the same form as all
 * else, and stopping cuts nobody short.
 */

import { connect } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { problemSchema } from '../../src/contract/problem.js';
import { parts, raw, send, serve } from './socket.js';

const json = 'POST /v1/inspect HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\n';
const close = 'host: x\r\nconnection: close\r\n\r\n';

describe('what never becomes a request', () => {
  const late: readonly (readonly [string, string])[] = [
    ['nothing, for too long', ''],
    ['headers that stop half-way', 'GET /livez HTTP/1.1\r\nhost: x\r\n'],
    ['a body that stops half-way', `${json}content-length: 99\r\n\r\n{`],
  ];

  test.each(late)('%s', async (_, bytes) => {
    const { server, rig } = await serve({ limits: { arrivalMs: 200 } });
    const answer = parts(await raw(server, bytes));
    const problem = problemSchema.parse(JSON.parse(answer.body));
    expect([answer.status, problem.code]).toEqual([408, 'request-timeout']);
    expect(answer.headers).toContain('content-type: application/problem+json');
    expect(answer.headers).toContain('connection: close');
    const lines = rig.lines.filter(({ msg }) => msg === 'answered');
    expect(lines).toContainEqual(
      expect.objectContaining({ status: 408, requestId: problem.instance }),
    );
  });

  test.each([
    ['garbage', 'garbage\r\n\r\n'],
    ['a tunnel', `CONNECT x:1 HTTP/1.1\r\n${close}`],
  ])('%s behind questions has its answer behind theirs', async (_, bytes) => {
    const { server } = await serve();
    const live = 'GET /livez HTTP/1.1\r\nhost: x\r\n\r\n';
    const asked = `${json}content-length: 20\r\n\r\n{"vehicle":"cart-1"}`;
    const text = await raw(server, `${asked}${live}${bytes}`);
    const statuses = [...text.matchAll(/HTTP\/1\.1 (\d{3}) /g)].map(([, status]) => status);
    expect(statuses).toEqual(['200', '200', '400']);
    expect(text).toContain('"code":"malformed-request"');
    expect((await fetch(`${server.url}/livez`)).status).toBe(200);
  });

  test('garbage in many pieces is refused once', async () => {
    const { server, rig } = await serve();
    const { socket, answer } = send(server, 'garbage\r\n\r\n');
    const more = setInterval(() => socket.write('garbage\r\n\r\n'), 1);
    const text = await answer.finally(() => clearInterval(more));
    expect(parts(text).status).toBe(400);
    expect(rig.lines.filter(({ status }) => status === 400)).toHaveLength(1);
  });

  test('a tunnel whose client is gone at once does not end the service', async () => {
    const { server } = await serve();
    const { hostname, port } = new URL(server.url);
    for (let again = 0; again < 20; again += 1) {
      const socket = connect(Number(port), hostname, () => {
        socket.write('CONNECT x:1 HTTP/1.1\r\nhost: x\r\n\r\n');
        socket.resetAndDestroy();
      });
      socket.on('error', () => socket.destroy());
    }
    await sleep(100);
    expect((await fetch(`${server.url}/livez`)).status).toBe(200);
  });

  test('a body that is too large is refused before it has come', async () => {
    const { server } = await serve();
    const announced = await raw(server, `${json}content-length: 99999999999\r\n\r\n`);
    expect(parts(announced).status).toBe(413);
    const piece = `20000\r\n${'x'.repeat(0x20000)}\r\n`;
    const streamed = await raw(
      server,
      `${json}transfer-encoding: chunked\r\n\r\n${piece.repeat(9)}`,
    );
    expect([parts(streamed).status, JSON.parse(parts(streamed).body)]).toEqual([
      413,
      expect.objectContaining({
        code: 'body-too-large',
        limit: { name: 'bodyBytes', value: 1_000_000 },
      }),
    ]);
  });
});

describe('stopping', () => {
  test('is said to those who ask whether it is ready, before it takes no more', async () => {
    const { server } = await serve({ drainMs: 200 });
    const closing = server.close();
    const ready = await fetch(`${server.url}/readyz`);
    expect(ready.status).toBe(503);
    expect(await ready.json()).toMatchObject({ code: 'stopping' });
    const fit = await fetch(`${server.url}/v1/fit?vehicle=cart-1&part=box-c`);
    expect(fit.status).toBe(200);
    await closing;
    await expect(fetch(`${server.url}/livez`)).rejects.toThrow();
  });

  test('waits for a body that is still on its way', async () => {
    const { server } = await serve();
    const body = JSON.stringify({ vehicle: 'cart-1' });
    const { hostname, port } = new URL(server.url);
    const socket = connect(Number(port), hostname);
    const head = `POST /v1/inspect HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\n`;
    socket.write(`${head}content-length: ${body.length}\r\n\r\n${body.slice(0, 5)}`);
    await sleep(50);
    const closing = server.close();
    await sleep(50);
    const answered = new Promise<string>((resolve) => {
      let text = '';
      socket.setEncoding('utf8').on('data', (chunk: string) => {
        text += chunk;
      });
      socket.on('end', () => resolve(text));
    });
    socket.write(body.slice(5));
    expect(parts(await answered).status).toBe(200);
    await closing;
  });

  test('does not wait for ever', async () => {
    const { server, rig } = await serve({ deadlineMs: 100 });
    const { hostname, port } = new URL(server.url);
    const socket = connect(Number(port), hostname);
    socket.on('error', () => socket.destroy());
    socket.write('POST /v1/inspect HTTP/1.1\r\nhost: x\r\ncontent-length: 9\r\n\r\n{');
    await sleep(50);
    await server.close();
    expect(rig.lines.map(({ msg }) => msg)).toContain('connections are cut: the deadline is over');
  });

  test('a second time waits for the same end', async () => {
    const { server } = await serve();
    await Promise.all([server.close(), server.close()]);
  });
});
