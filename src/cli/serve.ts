/**
 * `faying serve`: answers over HTTP until it is told to stop.
 */

import { type Command, Option } from 'commander';
import { demoEditions } from './demo.js';
import { Page } from './page.js';
import { wholeNumber } from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import type { RunningService } from './world.js';

interface ServeOptions extends StoreOptions {
  readonly port?: number;
  readonly host?: string;
  readonly readOnly?: true;
  readonly demo?: true;
}

const EXAMPLES = `
SIGINT (Ctrl-C) and SIGTERM let it finish what it is answering, and end it with exit code 0.
With --demo it answers from two editions of an invented catalogue, which are in memory alone: no
database is read or made, nothing stays behind, and everything is open to whoever asks.

Examples:
  $ faying serve --port 8080
  $ faying serve --port 8080 --host 0.0.0.0 --read-only --database /srv/faying.sqlite
  $ faying serve --demo --read-only --port 0
`;

export function addServe(program: Command, session: Session): void {
  const port = (text: string) => wholeNumber(text, { least: 0, most: 65_535 });
  const demo = new Option('--demo', 'answer from the demo catalogue, without a database');
  demo.conflicts('database');
  const command = program
    .command('serve')
    .summary('answer over HTTP')
    .description('Answers the same questions over HTTP, until it is told to stop.')
    .option('--port <n>', 'port to listen on, 0 for any that is free', port)
    .option('--host <host>', 'address to listen on')
    .option('--read-only', 'open the database for reading only')
    .addOption(demo);
  addStoreOptions(command)
    .addHelpText('after', EXAMPLES)
    .action((options: ServeOptions) => serve(options, session));
}

async function serve(options: ServeOptions, session: Session): Promise<void> {
  const { world } = session;
  // Before the start, so that a signal in the middle of it is not lost.
  const stopped = world.untilStopped();
  const demo = options.demo ?? false;
  const database = session.databasePath(options);
  const service = await world.startService({
    catalogue: demo ? await demoEditions(world) : { database, readOnly: options.readOnly ?? false },
    port: options.port ?? null,
    host: options.host ?? null,
  });
  const { url, edition } = service;
  session.tell({ url, edition, demo }, options, sayService);
  const signal = await stopped;
  await service.stop();
  new Page(world.err, world.env).say(`Stopped by ${signal}.`, { tone: 'faint' });
}

interface Started extends Pick<RunningService, 'url' | 'edition'> {
  readonly demo: boolean;
}

function sayService({ url, edition, demo }: Started, page: Page): void {
  if (demo) {
    page.say('This is the demo: its catalogue is invented, in memory, and gone when it ends.');
  }
  if (edition === null) page.say('Nothing has been published yet: faying publish FILE.');
  else page.say(`Edition ${edition}.`);
  page.say(`Answering at ${url} until Ctrl-C.`);
}
