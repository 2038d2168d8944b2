/**
 * The search behind a kit question, saved in a file and run again from there. It is for whoever
 * looks into the program, so it is told in English alone.
 */

import { savedSearchIn } from '../contract/saved-search.js';
import type { KitInput } from '../usecases/kit-input.js';
import {
  type Replayed,
  replaySearch,
  type SavedKits,
  saveSearch,
} from '../usecases/saved-search.js';
import { readDocument } from './document.js';
import { CommandFault } from './fault.js';
import { writable } from './output-file.js';
import type { Page } from './page.js';
import type { Session, StoreOptions } from './session.js';
import { counted } from './words/english-show.js';

/** What a search came to. */
interface Summary extends Replayed {
  readonly vehicle: string;
}

/** Writes the file, and tells what was found. */
export async function saveFile(
  file: string,
  input: KitInput,
  options: StoreOptions,
  session: Session,
): Promise<void> {
  const saved = session.ask(options, (library) => saveSearch(library, input));
  await writable(file, () => session.world.writeFile(file, `${JSON.stringify(saved)}\n`));
  session.tell(summaryOf(saved, { ...saved.outcome, isSame: true }), options, (summary, page) => {
    page.say(`The search is saved in ${file}.`, { tone: 'good' });
    saySearch(summary, page);
  });
}

export async function replayFile(
  file: string,
  options: StoreOptions,
  session: Session,
): Promise<void> {
  const { name, value, faults } = await readDocument(file, session.world);
  const saved = faults.length > 0 ? null : savedSearchIn(value);
  const remedy = 'Save one with faying kits VEHICLE WANT… --save FILE.';
  if (saved === null) {
    throw new CommandFault('unreadable-file', `${name} is no saved search.`, { remedy });
  }
  const replayed = replaySearch(saved);
  if (replayed === null) {
    const by = `It was saved by engine ${saved.engine}, and this is ${session.world.version}`;
    const text = `${name} lacks what this program asks. ${by}.`;
    throw new CommandFault('unreadable-file', text, { remedy });
  }
  session.tell(summaryOf(saved, replayed), options, (summary, page) => {
    const text = summary.isSame
      ? 'It went as it did when it was saved.'
      : 'It went another way than when it was saved.';
    page.say(text, { tone: summary.isSame ? 'good' : 'bad' });
    saySearch(summary, page);
  });
}

function summaryOf({ vehicle }: SavedKits, replayed: Replayed): Summary {
  return { vehicle, ...replayed };
}

/** Costs are those of the search: what counts first in the high digits. */
function saySearch({ vehicle, results, stepsTaken, isComplete }: Summary, page: Page): void {
  const found = counted(results.length, 'way');
  const end = isComplete ? '' : ', and then it had no more';
  page.say(`On ${vehicle}: ${found}, in ${counted(stepsTaken, 'step')}${end}.`);
  for (const { grade, cost, changes } of results) {
    page.say(`${grade}, at ${cost}: ${changes.length === 0 ? 'nothing' : changes.join(', ')}.`, {
      indent: 2,
      marker: '- ',
    });
  }
}
