/**
 * `faying export fits`: what fits what, over a whole edition, as the service gives it over HTTP;
 * into a file, or to the standard output.
 */

import { type Command, Option } from 'commander';
import { FeedLines } from '../batch/feed-lines.js';
import { inTurns } from '../batch/stream.js';
import { type FitsFeedEnd, fitsFeedFilters, USUAL_FORM } from '../contract/fits-feed.js';
import { type FeedForm, type FitsFeed, startFitsFeed } from '../usecases/fits-feed.js';
import { Library } from '../usecases/library.js';
import { type Form, TYPES } from './batch.js';
import { CommandFault, EXIT } from './fault.js';
import { outcomes } from './fits.js';
import { writable } from './output-file.js';
import { Page } from './page.js';
import { pour } from './pour.js';
import { Progress } from './progress.js';
import {
  addCommonOptions,
  type CommonOptions,
  commonInput,
  wholeNumber,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { counted } from './words/english-show.js';

interface ExportOptions extends CommonOptions, StoreOptions {
  readonly from?: number;
  readonly role?: string;
  readonly alone?: ReturnType<typeof outcomes>;
  readonly part?: string[];
  readonly vehicle?: string[];
  readonly form: FeedForm;
  readonly format: Form;
  readonly output?: string;
  readonly force?: true;
}

const EXAMPLES = `
The first line is "start", the last one "end", with the counts: what has no "end" was broken off,
and the exit code is 4. With --from only what is different from that edition comes, and what is
gone.

Examples:
  $ faying export fits --alone holds,open --output fits.ndjson
  $ faying export fits --from 11 --format csv
  $ faying export fits --form ranges --role gearbox --lang de --output tables.ndjson --force
`;

export function addExport(program: Command, session: Session): void {
  const group = program
    .command('export')
    .summary('all that fits, for whoever keeps a copy')
    .description('Writes answers over a whole edition.');
  const edition = (text: string) => wholeNumber(text, { least: 1, most: Number.MAX_SAFE_INTEGER });
  const command = group
    .command('fits')
    .summary('what fits what, all of it')
    .description('Writes a line for every place of every vehicle that takes a part.')
    .option('--from <n>', 'only what is different from this edition', edition)
    .option('--role <id>', 'only parts of this role')
    .option('--alone <outcomes>', 'only these outcomes: holds, open, fails', outcomes)
    .option('--part <ids>', 'only these parts, with commas between', ids)
    .option('--vehicle <ids>', 'only these vehicles, with commas between', ids);
  const form = new Option('--form <form>', 'vehicle by vehicle, or in ranges of models');
  const format = new Option('--format <format>', 'what the lines are');
  command
    .addOption(form.choices(['pairs', 'ranges']).default(USUAL_FORM))
    .addOption(format.choices(Object.keys(TYPES)).default('ndjson'))
    .option('--output <file>', 'the file to write; the standard output where left out')
    .option('--force', 'write over a file that is there');
  addStoreOptions(addCommonOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((options: ExportOptions) => runExport(options, session));
}

function ids(text: string): string[] {
  return text.split(',').map((one) => one.trim());
}

async function runExport(options: ExportOptions, session: Session): Promise<void> {
  const { form, vehicle } = options;
  if (form === 'ranges' && vehicle !== undefined) {
    const text = '--vehicle names vehicles, and --form ranges has none of their own.';
    throw new CommandFault('bad-usage', text, { remedy: 'Leave one of the two out.' });
  }
  const { world } = session;
  // Before the start, so that a signal in the middle of it is not lost.
  const stopped = world.untilStopped();
  const store = world.openStore(session.databasePath(options), 'read');
  try {
    const library = new Library(store, world.digest);
    const feed = startFitsFeed(library, { ...commonInput(options), ...fitsFeedFilters(options) });
    const run = { feed, lines: new FeedLines(feed, TYPES[options.format]), stopped };
    if (options.output === undefined) {
      const why = await poured(run, (piece) => world.writeOut(piece), session);
      if (why !== null) breakOff(why, session);
    } else await intoFile(run, options.output, options, session);
  } finally {
    store.close();
  }
}

interface Run {
  readonly feed: FitsFeed;
  readonly lines: FeedLines;
  readonly stopped: Promise<string>;
}

async function intoFile(
  run: Run,
  output: string,
  options: ExportOptions,
  session: Session,
): Promise<void> {
  const placing = { replaces: options.force === true };
  const file = await writable(output, () => session.world.openOutput(output, placing));
  try {
    const why = await writable(output, () => poured(run, (piece) => file.write(piece), session));
    if (why !== null) {
      breakOff(`${why} ${output} is as it was.`, session);
      return;
    }
    await writable(output, () => file.keep());
  } finally {
    await file.drop();
  }
  const { edition } = run.feed.start;
  session.tell({ output, edition, ...run.lines.counts }, options, sayWritten);
}

/** Why it was broken off; null where it was not. */
async function poured(
  { feed, lines, stopped }: Run,
  write: (piece: string) => Promise<void>,
  { world }: Session,
): Promise<string | null> {
  const progress = new Progress(world, () => {
    const { parts, told } = feed;
    return { share: parts === 0 ? 1 : told / parts, text: counted(lines.counts.lines, 'line') };
  });
  try {
    const onWritten = () => progress.show();
    return await pour(inTurns(lines.pieces()), { write, stopped, onWritten });
  } finally {
    progress.clear();
  }
}

function breakOff(why: string, session: Session): void {
  const { err, env } = session.world;
  new Page(err, env).say(why, { tone: 'faint' });
  session.exitCode = EXIT.brokenOff;
}

interface Written extends FitsFeedEnd {
  readonly output: string;
  readonly edition: number;
}

function sayWritten({ output, edition, lines, gone }: Written, page: Page): void {
  const ended = gone === 0 ? '' : `, ${gone} of them of what is gone`;
  page.say(`${output} has ${counted(lines, 'line')} of edition ${edition}${ended}.`, {
    tone: 'good',
  });
}
