/**
 * Composition root of the service: reads the configuration, opens the store, loads the newest
 * edition, mounts the doors and listens. It holds no logic.
 */

import { pino } from 'pino';
import { CommandFault } from './cli/fault.js';
import type { RunningService, ServiceRequest } from './cli/world.js';
import { type Config, ConfigFault, readConfig } from './config.js';
import { fitsIndex } from './domain/fits/fits-index.js';
import { createApp } from './http/app.js';
import { type RunningServer, startServer } from './http/server.js';
import { type OpenedStore, openStore } from './store/sqlite.js';
import { type Edition, Library } from './usecases/library.js';
import type { Digest } from './usecases/ports.js';
import { publishEdition } from './usecases/publish-edition.js';

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Starts the service; what the request leaves out is read from the environment.
 *
 * @throws StoreFault where the database cannot be used, CommandFault where the environment has
 * faults or the address cannot be had.
 */
export async function startService(
  request: ServiceRequest,
  env: Environment,
  digest: Digest,
): Promise<RunningService> {
  const { catalogue, port, host } = request;
  const told = configOf(env);
  // A catalogue that is invented keeps nothing from anybody.
  const config = 'database' in catalogue ? told : { ...told, open: EVERYTHING };
  const store = storeOf(catalogue);
  try {
    const library = new Library(store, digest);
    const latest = store.latest();
    // Compiled before the first question; a damaged edition is found before anybody asks.
    if (latest !== null) warm(library.edition(latest.number));
    // The log goes to the standard error: the standard output has the command's own answer.
    const log = pino({ level: config.logLevel }, pino.destination(2));
    const address = { port: port ?? config.port, host: host ?? config.host };
    const server = await listen(createApp({ library, keys: store, log, config }), {
      ...address,
      log,
    });
    const stop = async () => {
      await server.close();
      store.close();
    };
    return { url: server.url, edition: latest?.number ?? null, stop };
  } catch (error) {
    store.close();
    throw error;
  }
}

const EVERYTHING: Config['open'] = ['full', 'batch'];

function storeOf(catalogue: ServiceRequest['catalogue']): OpenedStore {
  if ('database' in catalogue) {
    return openStore(catalogue.database, { mode: catalogue.readOnly ? 'read-only' : 'create' });
  }
  const store = openStore(':memory:', { mode: 'create' });
  for (const { prepared, publishedAt, note } of catalogue) {
    publishEdition({ store, clock: () => publishedAt }, prepared, note);
  }
  return store;
}

/** What lists of fits are read from is made before anybody waits for it. */
function warm({ catalogue, index }: Edition): void {
  fitsIndex(catalogue, index);
}

function configOf(env: Environment): Config {
  try {
    return readConfig(env);
  } catch (error) {
    if (!(error instanceof ConfigFault)) throw error;
    throw new CommandFault('bad-configuration', error.message, { cause: error });
  }
}

/** Why an address cannot be listened on, and what to do, by Node's error code. */
const REFUSED: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['EADDRINUSE', ['is taken', 'End what listens there, or choose another with --port.']],
  ['EACCES', ['may not be listened on by you', 'Choose one from 1024 up with --port.']],
  ['EADDRNOTAVAIL', ['is none of this machine', 'Choose another with --host.']],
  ['ENOTFOUND', ['is not known', 'Choose another with --host.']],
  ['EAI_AGAIN', ['is not known', 'Choose another with --host.']],
]);

async function listen(...[app, options]: Parameters<typeof startServer>): Promise<RunningServer> {
  try {
    return await startServer(app, options);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    const known = REFUSED.get(code);
    if (known === undefined) throw error;
    const [what, remedy] = known;
    const text = `Port ${options.port} of ${options.host} ${what}.`;
    throw new CommandFault('port-not-free', text, { remedy, cause: error });
  }
}
