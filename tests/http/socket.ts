/**
 * The service on a port, spoken to in bytes: for what a client of Node would not send.
 */

import { connect, type Socket } from 'node:net';
import { afterEach } from 'vitest';
import { type RunningServer, type ServerOptions, startServer } from '../../src/http/server.js';
import { type Rig, type RigOptions, rigOf } from './fixture.js';

const running: RunningServer[] = [];

afterEach(async () => {
  await Promise.all(running.splice(0).map((server) => server.close()));
});

/** Listens until the test is over. */
export async function serve(
  options: RigOptions & Partial<ServerOptions> = {},
): Promise<{ rig: Rig; server: RunningServer }> {
  const rig = rigOf(options);
  const { log } = rig;
  const server = await startServer(rig.app, { port: 0, host: '127.0.0.1', ...options, log });
  running.push(server);
  return { rig, server };
}

/** Sends bytes as they are, and gives everything that comes back until the other side ends. */
export function raw(server: RunningServer, bytes: string | Buffer): Promise<string> {
  return send(server, bytes).answer;
}

/** The same where more is to be sent later. */
export function send(
  { url }: RunningServer,
  bytes: string | Buffer,
): { socket: Socket; answer: Promise<string> } {
  const { hostname, port } = new URL(url);
  const socket = connect(Number(port), hostname, () => socket.write(bytes));
  const answer = new Promise<string>((resolve, reject) => {
    let text = '';
    socket.setEncoding('utf8').on('data', (chunk: string) => {
      text += chunk;
    });
    socket.on('end', () => resolve(text));
    // Whoever refuses a request before all of it has come may cut it off, having said so.
    socket.on('error', (error) => (text === '' ? reject(error) : resolve(text)));
  });
  return { socket, answer };
}

export function parts(response: string) {
  const [head = '', ...body] = response.split('\r\n\r\n');
  const [first = '', ...headers] = head.split('\r\n');
  return { status: Number(first.split(' ')[1]), headers, body: body.join('\r\n\r\n') };
}
