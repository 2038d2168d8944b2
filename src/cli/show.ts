/**
 * `faying show`: what is in the catalogue, as a list and one thing whole. What is shown stands in a
 * file of its own for each sort; here is what all of them do alike.
 */

import type { Command } from 'commander';
import { listName, withCursor } from '../contract/cursor.js';
import type { Operation } from '../contract/operation.js';
import type { AnswerHead } from '../usecases/answer.js';
import type { Library } from '../usecases/library.js';
import type { ListInput } from '../usecases/listing.js';
import type { EditionHead } from '../usecases/ports.js';
import type { ReadValuesInput } from '../usecases/read-one.js';
import { sayOrigin } from './answer-text.js';
import { CommandFault } from './fault.js';
import type { Page } from './page.js';
import {
  addCommonOptions,
  addValuesOptions,
  commonInput,
  type ValuesOptions,
  wholeNumber,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import type { CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

/** Only one thing that has values has units. */
export interface ShowOptions extends Omit<ValuesOptions, 'units'>, StoreOptions {
  readonly units?: ValuesOptions['units'];
  readonly limit?: number;
}

/** An entry of a list, as one line has it. */
export interface Line {
  readonly id: string;
  readonly name: string | null;
}

interface ListAnswer extends AnswerHead {
  readonly next: readonly string[] | null;
  readonly counts: { readonly total: number };
}

/** A sort of thing that the catalogue has. */
export interface Sort<Options extends ShowOptions, Filters extends object, List, Whole> {
  readonly word: string;
  /** One of them shows values. */
  readonly hasValues: boolean;
  readonly summary: string;
  readonly examples: string;
  /** That lists them over HTTP: its cursors lead on from here. */
  readonly operation: Operation;
  /** The filters of the list, as options. */
  readonly addFilters: (command: Command) => Command;
  readonly filters: (options: Options) => Filters;
  readonly list: (library: Library, input: Filters & ListInput, head: EditionHead) => List;
  readonly read: (library: Library, input: ReadValuesInput) => Whole;
  readonly lines: (answer: List) => readonly Line[];
  /** What stands below the lines of a list. */
  readonly sayBelow?: (answer: List, page: Page, words: CliWords) => void;
  readonly sayOne: (answer: Whole, page: Page, words: CliWords) => void;
}

/** The command that the sorts are commands of. */
export function addShow(program: Command): Command {
  return program
    .command('show')
    .summary('what is in the catalogue?')
    .description(
      'Lists what the catalogue has, or shows one thing with all that is recorded of it.',
    )
    .addHelpText('after', EXAMPLES);
}

const EXAMPLES = `
Examples:
  $ faying show vehicle
  $ faying show part gearbox-6-late
`;

export function addSort<
  Options extends ShowOptions,
  Filters extends object,
  List extends ListAnswer,
  Whole extends AnswerHead,
>(show: Command, session: Session, sort: Sort<Options, Filters, List, Whole>): void {
  const { word, summary, examples, hasValues, addFilters, read, sayOne } = sort;
  const addOptions = hasValues ? addValuesOptions : addCommonOptions;
  const command = show
    .command(word)
    .summary(summary)
    .description(`Lists every ${word} of the catalogue by id and name, or shows one whole.`)
    .argument('[id]', `id of one ${word}; all are listed where it is left out`)
    .option('--limit <n>', 'list so many at most; all where left out', entries);
  addStoreOptions(addOptions(addFilters(command)))
    .addHelpText('after', examples)
    .action((id: string | undefined, options: Options) => {
      if (id === undefined) {
        tellList(session, options, sort);
        return;
      }
      refuseFilters(word, options);
      const input = { ...commonInput(options), units: options.units ?? 'recorded', id } as const;
      const answer = session.ask(options, (library) => read(library, input));
      session.tell(answer, options, (whole, page) => sayOne(whole, page, wordsIn(whole.lang)));
    });
}

/** How many entries a list is to have at most. */
export function entries(text: string): number {
  return wholeNumber(text, { least: 1, most: Number.MAX_SAFE_INTEGER });
}

/** The options that one thing takes as its list does. */
const OF_ONE: ReadonlySet<string> = new Set(['edition', 'lang', 'units', 'database', 'json']);

/** A filter beside an id would be looked at by nobody. */
function refuseFilters(word: string, options: object): void {
  const filter = Object.keys(options).find((name) => !OF_ONE.has(name));
  if (filter === undefined) return;
  const text = `--${filter} narrows a list, and an id names one ${word}.`;
  throw new CommandFault('bad-usage', text, { remedy: 'Leave out one of the two.' });
}

/** What is needed to list something. */
export type Listed<Options extends ShowOptions, Filters extends object, List> = Pick<
  Sort<Options, Filters, List, unknown>,
  'operation' | 'filters' | 'list' | 'sayBelow'
> & { readonly lines: (answer: List, words: CliWords) => readonly Line[] };

export function tellList<
  Options extends ShowOptions,
  Filters extends object,
  List extends ListAnswer,
>(session: Session, options: Options, listed: Listed<Options, Filters, List>): void {
  const { operation, filters: filtersOf, list, lines: linesOf, sayBelow } = listed;
  const filters = filtersOf(options);
  const { edition, lang } = commonInput(options);
  const { limit = Number.MAX_SAFE_INTEGER } = options;
  const [answer, head] = session.ask(options, (library) => {
    const asked = library.head(edition);
    const page = { edition: asked.number, lang, limit, after: null };
    return [list(library, { ...filters, ...page }, asked), asked] as const;
  });
  const told = withCursor(answer, head, listName(operation, filters));
  session.tell(told, options, (_, page) => {
    const words = wordsIn(answer.lang);
    const lines = linesOf(answer, words);
    const { total } = answer.counts;
    sayLines(lines, page, words);
    if (lines.length < total) {
      page.say(words.show.shownOf(lines.length, total), { tone: 'faint' });
    }
    sayBelow?.(answer, page, words);
    sayOrigin(answer, page);
  });
}

/** Each on one line, however long: for searching, and for programs that take the first word. */
function sayLines(lines: readonly Line[], page: Page, { show }: CliWords): void {
  if (lines.length === 0) page.say(show.none);
  const width = lines.reduce((widest, { id }) => Math.max(widest, id.length), 0);
  for (const { id, name } of lines) {
    page.verbatim(name === null ? id : `${id.padEnd(width)}  ${name}`);
  }
}
