/**
 * `faying serve`: answers over HTTP until it is told to stop.
 */

import type { Command } from 'commander';
import { Page } from './page.js';
import { wholeNumber } from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';

interface ServeOptions extends StoreOptions {
  readonly port?: number;
  readonly host?: string;
  readonly readOnly?: true;
}

const EXAMPLES = `
SIGINT (Ctrl-C) and SIGTERM let it finish what it is answering, and end it with exit code 0.

Examples:
  $ faying serve --port 8080
  $ faying serve --port 8080 --host 0.0.0.0 --read-only --database /srv/faying.sqlite
`;

export function addServe(program: Command, session: Session): void {
  const port = (text: string) => wholeNumber(text, { least: 0, most: 65_535 });
  const command = program
    .command('serve')
    .summary('answer over HTTP')
    .description('Answers the same questions over HTTP, until it is told to stop.')
    .option('--port <n>', 'port to listen on, 0 for any that is free', port)
    .option('--host <host>', 'address to listen on')
    .option('--read-only', 'open the database for reading only');
  addStoreOptions(command)
    .addHelpText('after', EXAMPLES)
    .action((options: ServeOptions) => serve(options, session));
}

async function serve(options: ServeOptions, session: Session): Promise<void> {
  const { world } = session;
  // Before the start, so that a signal in the middle of it is not lost.
  const stopped = world.untilStopped();
  const service = await world.startService({
    database: session.databasePath(options),
    port: options.port ?? null,
    host: options.host ?? null,
    readOnly: options.readOnly ?? false,
  });
  const { url, edition } = service;
  session.tell({ url, edition }, options, sayService);
  const signal = await stopped;
  await service.stop();
  new Page(world.err, world.env).say(`Stopped by ${signal}.`, { tone: 'faint' });
}

function sayService({ url, edition }: { url: string; edition: number | null }, page: Page): void {
  if (edition === null) page.say('Nothing has been published yet: faying publish FILE.');
  else page.say(`Edition ${edition}.`);
  page.say(`Answering at ${url} until Ctrl-C.`);
}
