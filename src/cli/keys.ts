/**
 * `faying keys`: who may be shown more than everybody, and ask more. A key is printed once, when it
 * is made; the database has no way to say it again.
 */

import { type Command, InvalidArgumentError } from 'commander';
import { SCOPES, type Scope } from '../contract/view.js';
import { addKey, endKey, KeyFault, type KeyRecord, type MadeKey } from '../usecases/keys.js';
import { CommandFault } from './fault.js';
import type { Page } from './page.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';

interface AddOptions extends StoreOptions {
  readonly scope?: readonly Scope[];
  readonly origin?: readonly string[];
}

const ABOUT = `
Scopes: public, trade and full say how much of an answer is shown, each with all before it; batch
opens questions of many lines. report, draft, publish and admin open nothing over HTTP yet. What
needs no key, FAYING_OPEN says where the service is started: public, if it does not.

A key is sent as "Authorization: Bearer <key>". To change keys without a gap, make the new one, hand
it out, and then end the old one.
`;

const ADD_EXAMPLES = `
A key with --origin is for pages on the web: whoever reads the page can read it, so that its only
scope is public, and it is good in pages of those origins alone.

Examples:
  $ faying keys add "Workshop on the hill" --scope trade
  $ faying keys add "Nightly list" --scope full --scope batch --json
  $ faying keys add "Shop window" --scope public --origin https://shop.example
`;

export function addKeys(program: Command, session: Session): void {
  const keys = program
    .command('keys')
    .summary('who may be shown more, and ask more?')
    .description('Makes, lists and ends the keys of the service over this database.')
    .addHelpText('after', ABOUT);
  addStoreOptions(
    keys
      .command('add')
      .summary('make a key')
      .description('Makes a key and prints it. It cannot be printed again.')
      .argument('<name>', 'what you call it: whose it is, or what it is for')
      .option('--scope <scope>', `one of ${SCOPES.join(', ')}; may be repeated`, collectScope)
      .option('--origin <origin>', 'of pages that may use it; may be repeated', collectText),
  )
    .addHelpText('after', ADD_EXAMPLES)
    .action((name: string, options: AddOptions) => {
      const { scope: scopes = [], origin: origins = [] } = options;
      const made = withKeys(session, options, (world) => addKey(world, { name, scopes, origins }));
      session.tell(made, options, sayMade);
    });
  addStoreOptions(keys.command('list').summary('which keys are there?').description(LIST)).action(
    (options: StoreOptions) => {
      const all = session.withStore(options, 'read', (store) => store.keys());
      session.tell(all, options, sayKeys);
    },
  );
  addStoreOptions(
    keys
      .command('end')
      .summary('end a key')
      .description('Ends a key: from now on it opens nothing. It stays in the list.')
      .argument('<id>', 'the eight letters and digits that the list shows'),
  ).action((id: string, options: StoreOptions) => {
    const ended = withKeys(session, options, (world) => endKey(world, id));
    session.tell(ended, options, (key, page) => page.say(`Ended ${key.id}, ${key.name}.`));
  });
}

const LIST = 'Lists the keys, the oldest first, and those that have ended too. None is printed.';

function collectScope(text: string, before: readonly Scope[] = []): readonly Scope[] {
  const scope = SCOPES.find((one) => one === text);
  if (scope === undefined) throw new InvalidArgumentError(`It is one of ${SCOPES.join(', ')}.`);
  return [...before, scope];
}

function collectText(text: string, before: readonly string[] = []): readonly string[] {
  return [...before, text];
}

type KeyWorld = Parameters<typeof addKey>[0];

function withKeys<Result>(
  session: Session,
  options: StoreOptions,
  ask: (world: KeyWorld) => Result,
): Result {
  const { clock } = session.world;
  try {
    return session.withStore(options, 'write', (keys) => ask({ keys, clock }));
  } catch (error) {
    if (!(error instanceof KeyFault)) throw error;
    const places = [{ code: error.code, text: error.message }];
    throw new CommandFault('bad-key', error.message, { places, cause: error });
  }
}

function sayMade({ key, text }: MadeKey, page: Page): void {
  page.verbatim(text, 'strong');
  page.say(`This is ${key.id}, ${key.name}, for ${key.scopes.join(', ')}.`);
  page.say('Keep it now: it is not kept here, and cannot be shown again.');
}

function sayKeys(keys: readonly KeyRecord[], page: Page): void {
  if (keys.length === 0) page.say('There are no keys: faying keys add.');
  for (const { id, name, scopes, origins, madeAt, endedAt } of keys) {
    page.say(`${id}  ${name}`, { tone: endedAt === null ? 'strong' : 'faint' });
    page.say(`scopes ${scopes.join(', ')}`, { indent: 2 });
    if (origins.length > 0) page.say(`in pages of ${origins.join(', ')}`, { indent: 2 });
    page.say(`made ${madeAt}${endedAt === null ? '' : `, ended ${endedAt}`}`, { indent: 2 });
  }
}
