/**
 * `faying editions`: what has been published.
 */

import type { Command } from 'commander';
import { type EditionsAnswer, listEditions } from '../usecases/list-editions.js';
import { countsText } from './counts.js';
import type { Page } from './page.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';

const EXAMPLES = `
Examples:
  $ faying editions
  $ faying editions --database /srv/faying.sqlite --json
`;

export function addEditions(program: Command, session: Session): void {
  const command = program
    .command('editions')
    .summary('what has been published?')
    .description('Lists the editions of the database, the newest first.');
  addStoreOptions(command)
    .addHelpText('after', EXAMPLES)
    .action((options: StoreOptions) => {
      const all = { newest: null, before: null, limit: Number.MAX_SAFE_INTEGER };
      const answer = session.ask(options, (library) => listEditions(library, all));
      session.tell(answer, options, sayEditions);
    });
}

function sayEditions({ items }: EditionsAnswer, page: Page): void {
  if (items.length === 0) page.say('Nothing has been published yet: faying publish FILE.');
  for (const { number, publishedAt, hash, note, counts } of items) {
    page.say(`Edition ${number}, published ${publishedAt}.`, { tone: 'strong' });
    if (note !== null) page.say(note, { indent: 2 });
    page.say(countsText(counts), { indent: 2 });
    page.say(hash, { indent: 2, tone: 'faint' });
  }
}
