/**
 * `faying publish FILE`: the whole document becomes the next edition, or nothing is stored.
 */

import type { Command } from 'commander';
import { DocumentRefused } from '../usecases/errors.js';
import { Library } from '../usecases/library.js';
import { notifyEdition } from '../usecases/notify-edition.js';
import type { Digest } from '../usecases/ports.js';
import {
  type PreparedEdition,
  type PublishAnswer,
  prepareEdition,
  publishEdition,
} from '../usecases/publish-edition.js';
import { countsText } from './counts.js';
import { type ReadDocument, readDocument } from './document.js';
import { sayPlaces } from './fault-text.js';
import { lintRead } from './lint.js';
import { sayTold } from './notify.js';
import type { Page } from './page.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { counted } from './words/english-show.js';

interface PublishOptions extends StoreOptions {
  readonly note?: string;
}

const EXAMPLES = `
The database is made where there is none yet. Content that the newest edition has already makes
no new one. Those whom FAYING_WEBHOOKS names are told of a new one; whom it could not tell is told
again with "faying notify".

Examples:
  $ faying publish catalogue.json --note "gearboxes measured on the bench"
  $ gunzip -c catalogue.json.gz | faying publish - --database /srv/faying.sqlite
`;

export function addPublish(program: Command, session: Session): void {
  const command = program
    .command('publish')
    .summary('make a catalogue document the next edition')
    .description('Checks a catalogue document and publishes it: all of it, or nothing.')
    .argument('<file>', 'the document, or - for the standard input')
    .option('--note <text>', 'what is new, for those who read the list of editions');
  addStoreOptions(command)
    .addHelpText('after', EXAMPLES)
    .action(async (file: string, options: PublishOptions) => {
      const document = await readDocument(file, session.world);
      if (document.faults.length > 0) {
        const { faults, warnings } = lintRead(document);
        throw new DocumentRefused(faults, warnings);
      }
      const { clock, digest } = session.world;
      // A document that is refused must not leave an empty database behind.
      const prepared = preparedOf(document, digest);
      // Its faults are told before anything is published, too.
      const notifier = await session.world.openNotifier();
      const { answer, telling } = session.withStore(options, 'write', (store) => {
        const published = publishEdition({ store, clock }, prepared, options.note ?? null);
        const { edition, isNew } = published;
        if (notifier === null || !isNew) return { answer: published, telling: null };
        const library = new Library(store, digest);
        return { answer: published, telling: notifyEdition(library, edition.number, notifier) };
      });
      // It is published, whatever becomes of those who are told.
      if (options.json !== true) session.tell(answer, options, sayPublished);
      const { told } = (await telling) ?? { told: [] };
      if (options.json === true) session.tell({ ...answer, told }, options, () => undefined);
      else sayTold(told, answer.edition.number, session);
    });
}

/** Says what is wrong with a document at its place in the text. */
function preparedOf({ value, placed }: ReadDocument, digest: Digest): PreparedEdition {
  try {
    const { content, warnings } = prepareEdition(value, digest);
    return { content, warnings: placed(warnings) };
  } catch (error) {
    if (!(error instanceof DocumentRefused)) throw error;
    throw new DocumentRefused(placed(error.faults), placed(error.warnings));
  }
}

function sayPublished({ edition, isNew, offers, warnings }: PublishAnswer, page: Page): void {
  const { number, hash, counts } = edition;
  if (isNew) page.say(`Published edition ${number}.`, { tone: 'good' });
  else page.say(`Nothing new: edition ${number} has this content already.`);
  page.say(countsText(counts));
  if (offers.number > 0) page.say(`Offers ${offers.number}.`);
  page.say(hash, { tone: 'faint' });
  if (warnings.length === 0) return;
  page.gap();
  page.say(`${counted(warnings.length, 'warning')}:`, { tone: 'doubtful' });
  sayPlaces(warnings, [], page);
}
