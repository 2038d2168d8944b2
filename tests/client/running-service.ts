/**
 * The service over the demo catalogue on a port of its own, and servers that behave as the test
 * says, for the client to be tried against.
 */

import { createServer, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { startServer } from '../../src/http/server.js';
import type { EditionStore } from '../../src/usecases/ports.js';
import { rigOf } from '../http/fixture.js';
import { demoDocument } from '../memory-store.js';

export interface Running {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

export interface RunningService extends Running {
  readonly store: EditionStore;
}

/** Over the demo catalogue, or another. */
export async function runningService(document = demoDocument()): Promise<RunningService> {
  const { app, store, log } = rigOf({ documents: [document] });
  const server = await startServer(app, { port: 0, host: '127.0.0.1', log, deadlineMs: 100 });
  return { url: server.url, stop: () => server.close(), store };
}

/** A server that answers as it is told. */
export async function serving(listener: RequestListener): Promise<Running> {
  const server = createServer(listener);
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}`, stop: () => stopped(server) };
}

function stopped(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((resolve) => {
    server.close(() => resolve());
  });
}
