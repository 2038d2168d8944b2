/**
 * The server itself, on a port: what never becomes a request is refused in the same form as all
 * else, and stopping cuts nobody short.
 */

import { connect } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { problemSchema } from '../../src/contract/problem.js';
import type { ProblemCode } from '../../src/contract/problems/problem-type.js';
import { parts, raw, serve } from './socket.js';

describe('what never becomes a request', () => {
  const close = 'host: x\r\nconnection: close\r\n\r\n';
  const cases: readonly (readonly [string, string, number, ProblemCode])[] = [
    ['no HTTP at all', 'hello\r\n\r\n', 400, 'malformed-request'],
    ['a header without a name', `GET /livez HTTP/1.1\r\n: x\r\n${close}`, 400, 'malformed-request'],
    ['no host', 'GET /livez HTTP/1.1\r\nconnection: close\r\n\r\n', 400, 'malformed-request'],
    [
      'headers without end',
      `GET /livez HTTP/1.1\r\nx: ${'x'.repeat(20_000)}\r\n${close}`,
      431,
      'headers-too-large',
    ],
  ];

  test.each(cases)('%s', async (_, bytes, status, code) => {
    const { server, rig } = await serve();
    const answer = parts(await raw(server, bytes));
    const problem = problemSchema.parse(JSON.parse(answer.body));
    expect([answer.status, problem.status, problem.code]).toEqual([status, status, code]);
    expect(answer.headers).toContain('content-type: application/problem+json');
    expect(rig.lines.at(-1)).toMatchObject({ status, requestId: problem.instance });
  });

  const json = 'POST /v1/inspect HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\n';
  const late: readonly (readonly [string, string, number, ProblemCode])[] = [
    ['a tunnel', `CONNECT x:1 HTTP/1.1\r\n${close}`, 400, 'malformed-request'],
    ['TLS', '\u0016\u0003\u0001\u0000\u0005\u0001', 400, 'malformed-request'],
    ['the preface of HTTP/2', 'PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n', 400, 'malformed-request'],
    [
      'two lengths',
      `${json}content-length: 2\r\ntransfer-encoding: chunked\r\n\r\n`,
      400,
      'malformed-request',
    ],
    [
      'a chunk of no size',
      `${json}transfer-encoding: chunked\r\n\r\nzz\r\n`,
      400,
      'malformed-request',
    ],
    [
      'a control character in the URL',
      `GET /v1/fit\u0000 HTTP/1.1\r\n${close}`,
      400,
      'malformed-request',
    ],
    ['a URL that is none', `GET ? HTTP/1.1\r\n${close}`, 400, 'malformed-request'],
    ['nothing, for too long', '', 408, 'request-timeout'],
    ['headers that stop half-way', 'GET /livez HTTP/1.1\r\nhost: x\r\n', 408, 'request-timeout'],
    ['a body that stops half-way', `${json}content-length: 99\r\n\r\n{`, 408, 'request-timeout'],
  ];

  test.each(late)('%s', async (_, bytes, status, code) => {
    // Only those that wait are given little time: a machine at work may take as long for the rest.
    const { server } = await serve(status === 408 ? { arrivalMs: 200 } : {});
    const answer = parts(await raw(server, bytes));
    const problem = problemSchema.parse(JSON.parse(answer.body));
    expect([answer.status, problem.status, problem.code]).toEqual([status, status, code]);
    expect(answer.headers).toContain('content-type: application/problem+json');
    expect(answer.headers).toContain('connection: close');
  });

  test('garbage behind a question is not taken for its answer', async () => {
    const { server } = await serve();
    const good = 'GET /livez HTTP/1.1\r\nhost: x\r\n\r\n';
    const text = await raw(server, `${good}garbage\r\n\r\n`);
    expect(text).not.toMatch(/^HTTP\/1\.1 400/);
    expect((await fetch(`${server.url}/livez`)).status).toBe(200);
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

  test('an expectation that nobody meets', async () => {
    const { server } = await serve();
    const bytes = `GET /livez HTTP/1.1\r\nexpect: a-miracle\r\n${close}`;
    const answer = parts(await raw(server, bytes));
    expect(answer.status).toBe(417);
    expect(answer.body).toContain('"code":"expectation-failed"');
  });

  test('a refusal does not end the service', async () => {
    const { server } = await serve();
    await raw(server, 'hello\r\n\r\n');
    expect((await fetch(`${server.url}/livez`)).status).toBe(200);
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
