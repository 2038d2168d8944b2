/**
 * A batch as it goes over a line: answers before the question has ended, held up by whoever does
 * not read, ended by whoever goes away, and never late.
 */

import { connect, type Socket } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import type { RunningServer } from '../../src/http/server.js';
import { parts, send, serve } from './socket.js';

const HEAD =
  'POST /v1/fit/batch HTTP/1.1\r\nhost: x\r\ncontent-type: application/x-ndjson\r\n' +
  'transfer-encoding: chunked\r\nconnection: close\r\n\r\n';
const QUESTION = '{"vehicle":"cart-1","part":"box-a"}\n';

function chunk(text: string): string {
  return `${Buffer.byteLength(text).toString(16)}\r\n${text}\r\n`;
}

const END = '0\r\n\r\n';

function opened({ url }: RunningServer): Promise<Socket> {
  const { hostname, port } = new URL(url);
  return new Promise((resolve) => {
    const socket: Socket = connect(Number(port), hostname, () => resolve(socket));
  });
}

/** Waits until it is so; a machine at work takes its time. */
async function until(isSo: () => boolean): Promise<void> {
  for (let count = 0; !isSo(); count += 1) {
    if (count > 400) throw new Error('it never came to that');
    await sleep(25);
  }
}

describe('a batch', () => {
  test('is answered while it is being asked', async () => {
    const { server } = await serve();
    const { socket, answer } = send(server, HEAD + chunk(QUESTION));
    let text = '';
    socket.on('data', (some: string) => {
      text += some;
    });
    await until(() => text.includes('"line":1'));
    expect(text).not.toContain('"line":2');
    socket.write(chunk(QUESTION));
    await until(() => text.includes('"line":2'));
    socket.write(END);
    expect(await answer).toContain('"end":{"lines":2,');
  });

  test('takes longer than a body may, where it goes on', { timeout: 20_000 }, async () => {
    const { server } = await serve({ limits: { arrivalMs: 300 } });
    const { socket, answer } = send(server, HEAD + chunk(QUESTION));
    for (let count = 0; count < 8; count += 1) {
      await sleep(200);
      socket.write(chunk(QUESTION));
    }
    socket.write(END);
    expect(await answer).toContain('"end":{"lines":9,');
  });

  test('that stalls is cut off, without an end', { timeout: 20_000 }, async () => {
    const { server } = await serve({ limits: { arrivalMs: 300, stallMs: 600 } });
    const text = await send(server, HEAD + chunk(QUESTION)).answer;
    expect(parts(text).status).toBe(200);
    expect(text).not.toContain('"end"');
  });
});

describe('whoever does not read', () => {
  test('is read from no more, and then as before', { timeout: 60_000 }, async () => {
    const { server } = await serve();
    const socket = await opened(server);
    socket.pause();
    socket.write(HEAD);
    const some = chunk(QUESTION.repeat(2000));
    let isTaken = true;
    let sent = 0;
    const before = process.memoryUsage().rss;
    const most = 100_000_000;
    // What the other side has not taken stays here.
    while (isTaken && sent < most) {
      socket.write(some);
      sent += some.length;
      for (let wait = 0; wait < 40 && socket.writableLength > 0; wait += 1) await sleep(25);
      isTaken = socket.writableLength === 0;
    }
    expect(isTaken).toBe(false);
    // Buffers of the line on both sides, and a chunk or two in between.
    expect(sent).toBeLessThan(40_000_000);
    expect(process.memoryUsage().rss - before).toBeLessThan(200_000_000);
    let text = '';
    socket.setEncoding('utf8').on('data', (piece: string) => {
      text = text.slice(-2000) + piece;
    });
    socket.resume();
    socket.write(END);
    await new Promise((resolve) => socket.once('end', resolve));
    const lines = (sent / some.length) * 2000;
    expect(text).toContain(`"end":{"lines":${lines},"answers":${lines},"errors":0`);
  });
});

describe('whoever goes away', () => {
  test('is worked for no more', { timeout: 60_000 }, async () => {
    const { server, rig } = await serve();
    const socket = await opened(server);
    const other = 3000;
    // None of them is asked twice, so that each is judged.
    const lines = Array.from({ length: other }, (_, index) => {
      return `{"vehicle":"cart-1","part":"box-a","torque":"${index + 1} N.m"}\n`;
    });
    socket.write(HEAD + chunk(lines.join('')));
    await new Promise((resolve) => socket.once('data', resolve));
    socket.destroy();
    await until(() => rig.lines.some(({ msg }) => msg === 'batch ended'));
    const ended = rig.lines.find(({ msg }) => msg === 'batch ended');
    expect(Number(ended?.answers)).toBeGreaterThan(0);
    expect(Number(ended?.answers)).toBeLessThan(other);
    // It answers others as before.
    const live = await fetch(`${server.url}/livez`);
    expect(live.status).toBe(200);
  });
});

describe('whoever asks something else meanwhile', () => {
  test('is answered in between', { timeout: 60_000 }, async () => {
    const { server } = await serve();
    const lines = Array.from({ length: 2000 }, (_, index) => {
      return `{"vehicle":"cart-1","part":"box-b","torque":"${index + 1} N.m"}\n`;
    });
    const { answer } = send(server, HEAD + chunk(lines.join('')) + END);
    let asked = 0;
    const over = answer.then(() => 'over');
    for (;;) {
      const next = fetch(`${server.url}/livez`).then((live) => live.text());
      if ((await Promise.race([over, next])) === 'over') break;
      asked += 1;
    }
    expect(await answer).toContain('"end":{"lines":2000,');
    expect(asked).toBeGreaterThan(3);
  });
});
