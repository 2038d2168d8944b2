/**
 * `faying notify`: tells those whom the environment names of an edition, once more. A receiver that
 * was told already knows the message by its id.
 */

import type { Command } from 'commander';
import { Library } from '../usecases/library.js';
import { notifyEdition } from '../usecases/notify-edition.js';
import type { NotTold, Telling } from '../usecases/ports.js';
import { CommandFault, EXIT } from './fault.js';
import { Page } from './page.js';
import { wholeNumber } from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { counted } from './words/english-show.js';

const EXAMPLES = `
Those who are told stand in the file that FAYING_WEBHOOKS names. The exit code is 3 where one of
them could not be told.

Examples:
  $ faying notify
  $ faying notify 12 --json
`;

export function addNotify(program: Command, session: Session): void {
  const edition = (text: string) => wholeNumber(text, { least: 1, most: Number.MAX_SAFE_INTEGER });
  const command = program
    .command('notify')
    .summary('tell receivers of an edition, once more')
    .description('Tells receivers that an edition has been published, as publishing it did.')
    .argument('[edition]', 'its number; the newest where left out', edition);
  addStoreOptions(command)
    .addHelpText('after', EXAMPLES)
    .action(async (number: number | undefined, options: StoreOptions) => {
      const { world } = session;
      const notifier = await world.openNotifier();
      if (notifier === null) {
        const remedy = 'Name a file of them in FAYING_WEBHOOKS.';
        throw new CommandFault('bad-configuration', 'There is nobody to be told.', { remedy });
      }
      const answer = await session.withStore(options, 'read', (store) =>
        notifyEdition(new Library(store, world.digest), number ?? null, notifier),
      );
      if (answer.told.some(({ failure }) => failure !== null)) session.exitCode = EXIT.notTold;
      if (options.json === true) session.tell(answer, options, () => undefined);
      else sayTold(answer.told, answer.edition, session);
    });
}

const WHY: Readonly<Record<NotTold, string>> = {
  'forbidden-address': 'its address is not a public one, and allowPrivate is not set',
  'unknown-host': 'nobody knows its host',
  'no-connection': 'the connection failed',
  timeout: 'it did not answer in time',
  redirect: 'it leads elsewhere, which is not followed',
  gone: 'it wants to be told no more',
  status: 'it did not take it',
};

/** Whom it could not tell is a warning, beside what was answered. */
export function sayTold(told: readonly Telling[], edition: number, { world }: Session): void {
  const { out, err, env } = world;
  for (const { receiver, failure, status, attempts } of told) {
    if (failure === null) new Page(out, env).say(`Told ${receiver}.`);
    else {
      const by = status === null ? '' : ` (status ${status})`;
      const tried = `after ${counted(attempts, 'attempt')}`;
      const what = `${receiver} was not told of edition ${edition}, ${tried}`;
      new Page(err, env).say(`${what}: ${WHY[failure]}${by}.`, { tone: 'doubtful' });
    }
  }
  if (told.every(({ failure }) => failure === null)) return;
  new Page(err, env).say(`Tell again with faying notify ${edition}.`, { tone: 'faint' });
}
