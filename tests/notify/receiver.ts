/**
 * A receiver on a port of this machine, which does with each message what it is told to.
 */

import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach } from 'vitest';

export interface Got {
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
  readonly path: string;
}

type Reply = (response: ServerResponse) => void;

export interface Listening {
  readonly url: string;
  /** Every message that came, in order. */
  readonly got: readonly Got[];
}

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

/** Answers the first message by the first of these, and all after the last by the last. */
export async function receiver(...replies: readonly Reply[]): Promise<Listening> {
  const got: Got[] = [];
  const server = createServer((request, response) => {
    let body = '';
    request.setEncoding('utf8').on('data', (some: string) => {
      body += some;
    });
    request.on('end', () => {
      got.push({ headers: request.headers, body, path: request.url ?? '' });
      const reply = replies[Math.min(got.length, replies.length) - 1];
      reply?.(response);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  closing.push(() => {
    server.closeAllConnections();
    server.close();
  });
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}`, got };
}

export const says =
  (status: number, headers: Readonly<Record<string, string>> = {}): Reply =>
  (response) => {
    response.writeHead(status, headers).end('thank you');
  };

/** Says that it took it, and then goes on and on. */
export const saysWithoutEnd: Reply = (response) => {
  response.writeHead(200);
  const more = () => {
    if (!response.destroyed) response.write('x'.repeat(1000), () => setImmediate(more));
  };
  more();
};

export const hangs: Reply = () => undefined;

export const breaksOff: Reply = (response) => {
  response.destroy();
};

/** Closes in the middle of its headers. */
export const stammers: Reply = (response) => {
  response.socket?.end('HTTP/1.1 20');
};
