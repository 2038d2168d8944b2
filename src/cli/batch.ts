/**
 * `faying batch FILE`: a fit question a line, an answer a line. It answers as the service does over
 * HTTP, and as far as it came it can be gone on with.
 */

import { type Command, Option } from 'commander';
import { FitLines } from '../batch/fit-lines.js';
import { type LinePlace, LineRefused } from '../batch/line-refused.js';
import { answersTo } from '../batch/stream.js';
import { CSV_TYPE, type LineType, NDJSON_TYPE } from '../contract/fit-batch.js';
import { spokenFor } from '../contract/language.js';
import { QuestionError } from '../usecases/errors.js';
import { startFitBatch } from '../usecases/fit-batch.js';
import { Library } from '../usecases/library.js';
import { readable } from './document.js';
import { CommandFault, EXIT, refusedProblem } from './fault.js';
import { Page } from './page.js';
import { pour } from './pour.js';
import { Progress } from './progress.js';
import {
  addValuesOptions,
  type ValuesOptions,
  valuesInput,
  wholeNumber,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import type { Input, OpenStore, World } from './world.js';

/** What lines are, as options name it. */
export type Form = 'ndjson' | 'csv';

interface BatchOptions extends ValuesOptions, StoreOptions {
  readonly in?: Form;
  readonly out?: Form;
  readonly changes: 'yes' | 'no';
  readonly form: 'short' | 'full';
  readonly fromLine: number;
}

export const TYPES: Readonly<Record<Form, LineType>> = { ndjson: NDJSON_TYPE, csv: CSV_TYPE };

const EXAMPLES = `
The first line that comes out is "start", the last one "end", with the counts: what has no "end"
was broken off. The exit code is 3 where some lines have faults, 4 where it was broken off.

Examples:
  $ faying batch price-list.csv > answers.csv
  $ faying batch pairs.ndjson --out csv --lang de
  $ faying batch pairs.ndjson --from-line 120001 >> answers.ndjson
`;

export function addBatch(program: Command, session: Session): void {
  const line = (text: string) => wholeNumber(text, { least: 1, most: Number.MAX_SAFE_INTEGER });
  const command = program
    .command('batch')
    .summary('does this part fit this vehicle, a question a line')
    .description('Answers a fit question a line, as they come, in order.')
    .argument('<file>', 'the questions, as NDJSON or CSV; - for the standard input')
    .addOption(form('--in <form>', 'what the questions are, where the name does not tell'))
    .addOption(form('--out <form>', 'what the answers are; as the questions where left out'));
  const changes = new Option('--changes <changes>', 'whether to look for changes around parts');
  const answers = new Option('--form <form>', 'whole answers, or what a program goes by');
  command
    .addOption(changes.choices(['yes', 'no']).default('no'))
    .addOption(answers.choices(['short', 'full']).default('short'))
    .option('--from-line <n>', 'go on with this line of the questions', line, 1);
  addStoreOptions(addValuesOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((file: string, options: BatchOptions) => runBatch(file, options, session));
}

function form(flags: string, description: string): Option {
  return new Option(flags, description).choices(Object.keys(TYPES));
}

async function runBatch(file: string, options: BatchOptions, session: Session): Promise<void> {
  const { world } = session;
  const questions = TYPES[options.in ?? formOf(file)];
  const answers = options.out === undefined ? questions : TYPES[options.out];
  // Before the start, so that a signal in the middle of it is not lost.
  const stopped = world.untilStopped();
  const input = await readable(file, () => world.openInput(file));
  const store = world.openStore(session.databasePath(options), 'read');
  try {
    const lines = linesOf(store, { questions, answers }, options, world);
    session.exitCode = await written(lines, input, stopped, world);
  } finally {
    store.close();
  }
}

function formOf(file: string): Form {
  const [, ending = ''] = /\.([^.]*)$/.exec(file) ?? [];
  switch (ending.toLowerCase()) {
    case 'csv':
      return 'csv';
    case 'ndjson':
    case 'jsonl':
      return 'ndjson';
    default: {
      const text = `The name "${file}" does not tell what the questions are.`;
      throw new CommandFault('bad-usage', text, { remedy: 'Say it with --in ndjson or --in csv.' });
    }
  }
}

function linesOf(
  store: OpenStore,
  types: { readonly questions: LineType; readonly answers: LineType },
  options: BatchOptions,
  world: World,
): FitLines {
  const { changes, form, fromLine } = options;
  const library = new Library(store, world.digest);
  const batch = startFitBatch(library, { ...valuesInput(options), changes, form });
  const lang = spokenFor(options.lang);
  const problemOf = (error: unknown, placeOf: (at: string) => LinePlace) =>
    refusedProblem(faultsIn(error, placeOf), lang);
  return new FitLines({ batch, ...types, problemOf, fromLine });
}

/** What is wrong with a line; a mistake of the program ends the batch. */
function faultsIn(error: unknown, placeOf: (at: string) => LinePlace) {
  if (error instanceof LineRefused) return error;
  if (!(error instanceof QuestionError)) throw error;
  const faults = error.faults.map(({ at, ...fault }) => ({
    ...(at === null ? {} : placeOf(at)),
    ...fault,
  }));
  return { code: error.code, faults, ask: error.ask };
}

/** The exit code, when all is out or nobody takes any more. */
async function written(
  lines: FitLines,
  input: Input,
  stopped: Promise<string>,
  world: World,
): Promise<number> {
  const read = { bytes: 0 };
  const progress = new Progress(world, () => {
    const { errors } = lines.counts;
    const faulty = errors === 0 ? '' : `, ${errors} with faults`;
    const share = input.bytes === null ? null : read.bytes / input.bytes;
    return { share, text: `${lines.next - 1} lines${faulty}` };
  });
  // A line is done when its answer is out, and not when it was read.
  let next = lines.next;
  const why = await pour(answersTo(counted(input, read), lines), {
    write: (piece) => world.writeOut(piece),
    stopped,
    // It may be waited for, and nobody may be writing any more.
    onStopped: () => input.close(),
    onWritten: () => {
      next = lines.next;
      progress.show();
    },
  });
  progress.clear();
  if (why === null) return lines.counts.errors === 0 ? EXIT.answered : EXIT.faultyLines;
  const { err, env } = world;
  new Page(err, env).say(`${why} Go on with --from-line ${next}.`, { tone: 'faint' });
  return EXIT.brokenOff;
}

/** The chunks of the input, counted as they are read. */
async function* counted({ chunks }: Input, read: { bytes: number }): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) {
    read.bytes += chunk.length;
    yield chunk;
  }
}
