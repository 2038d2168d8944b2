/**
 * The program `faying`: its commands, and how a run ends. Answers go to the standard output and
 * exit with 0; faults go to the standard error and exit with 2; a bug is masked and exits with 1.
 */

import { Command, CommanderError } from 'commander';
import { type Language, spokenFor } from '../contract/language.js';
import { addBatch } from './batch.js';
import { addCalculate } from './calculate.js';
import { addCodes } from './codes.js';
import { addDriveline } from './driveline.js';
import { addEditions } from './editions.js';
import { addExport } from './export.js';
import { CommandFault, EXIT, maskedProblem, type Problem, problemOf } from './fault.js';
import { sayProblem } from './fault-text.js';
import { addFit } from './fit.js';
import { addFits } from './fits.js';
import { addIdentify } from './identify.js';
import { addIdentifyPart } from './identify-part.js';
import { addInspect } from './inspect.js';
import { addKeys } from './keys.js';
import { addKits } from './kits.js';
import { addLint } from './lint.js';
import { addMate } from './mate.js';
import { addNotify } from './notify.js';
import { Page } from './page.js';
import { addPublish } from './publish.js';
import { addServe } from './serve.js';
import { Session } from './session.js';
import { addShow } from './show.js';
import { addShowKind } from './show-kind.js';
import { addShowLayout } from './show-layout.js';
import { addShowPart } from './show-part.js';
import { addShowRole } from './show-role.js';
import { addShowVehicle } from './show-vehicle.js';
import type { Output, World } from './world.js';

const ENDING = `
Exit codes: 0 answered ("does not fit" is an answer), 2 the question, document, usage or database
is at fault, 3 some lines of a batch are or a receiver was not told, 4 many lines were broken off,
1 the program is at fault.
NO_COLOR turns colour off.

Examples:
  $ faying publish catalogue.json
  $ faying fit lirren-1 gearbox-6-late
`;

/** Runs one command line, without the program's own name, and gives its exit code. */
export async function runProgram(words: readonly string[], world: World): Promise<number> {
  const session = new Session(world);
  const program = programOf(session);
  try {
    await program.parseAsync(words, { from: 'user' });
    return session.exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return endOfUsage(error, { program, words, world });
    return endOfFault(error, words, world);
  }
}

function programOf(session: Session): Command {
  const { out, err, version } = session.world;
  const program = new Command('faying')
    .description('Does this part fit that vehicle, and why?')
    .version(version, '--version', 'print the version')
    .helpCommand('help [command]', 'print the help of a command')
    .exitOverride()
    .showSuggestionAfterError(true)
    .configureOutput({
      writeOut: (text) => out.write(text),
      writeErr: (text) => err.write(text),
      // What commander would print itself is told as every other fault is.
      outputError: () => undefined,
      getOutHelpWidth: () => helpWidth(out),
      getErrHelpWidth: () => helpWidth(err),
      getOutHasColors: () => false,
      getErrHasColors: () => false,
    })
    .addHelpText('after', ENDING);
  for (const add of [
    addLint,
    addPublish,
    addNotify,
    addServe,
    addFit,
    addFits,
    addKits,
    addInspect,
    addMate,
  ]) {
    add(program, session);
  }
  const show = addShow(program);
  for (const add of [addShowPart, addShowVehicle, addShowKind, addShowRole, addShowLayout]) {
    add(show, session);
  }
  addIdentify(program, session);
  addIdentifyPart(program, session);
  addBatch(program, session);
  addExport(program, session);
  addEditions(program, session);
  addDriveline(program, session);
  addCalculate(program, session);
  addCodes(program, session);
  addKeys(program, session);
  return program;
}

function helpWidth({ columns }: Output): number {
  return Math.min(columns ?? 100, 100);
}

interface Usage {
  readonly program: Command;
  readonly words: readonly string[];
  readonly world: World;
}

/** Help and version end well; the bare program name has asked nothing. */
function endOfUsage(error: CommanderError, { program, words, world }: Usage): number {
  if (error.exitCode === 0) return EXIT.answered;
  if (error.code === 'commander.help') return EXIT.fault;
  const detail = sentenceOf(error.message);
  const remedy = `See ${['faying', ...commandNames(program, words), '--help'].join(' ')}.`;
  return endOfFault(new CommandFault('bad-usage', detail, { remedy }), words, world);
}

/** The names that lead to the command which the words begin with. */
function commandNames(parent: Command, [word, ...rest]: readonly string[]): string[] {
  const command = parent.commands.find((one) => one.name() === word);
  return command === undefined ? [] : [command.name(), ...commandNames(command, rest)];
}

/** `error: unknown option '--x'\n(Did you mean --y?)` as one line of sentences. */
function sentenceOf(message: string): string {
  const [what = '', hint] = message.replace(/^error: /, '').split('\n');
  const stop = what.endsWith('.') ? '' : '.';
  const sentence = `${what.charAt(0).toUpperCase()}${what.slice(1)}${stop}`;
  return hint === undefined ? sentence : `${sentence} ${hint.replace(/^\((.*)\)$/, '$1')}`;
}

function endOfFault(error: unknown, words: readonly string[], world: World): number {
  const options = optionsIn(words);
  const problem = problemOf(error, languageIn(options));
  if (problem === null && (world.env.FAYING_DEBUG ?? '') === '1') {
    world.err.write(`${stackOf(error)}\n`);
  }
  tellProblem(problem ?? maskedProblem(), options, world);
  return problem === null ? EXIT.bug : EXIT.fault;
}

function stackOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const cause = error.cause === undefined ? '' : `\nCaused by: ${stackOf(error.cause)}`;
  return `${error.stack ?? error.message}${cause}`;
}

/** The options may not have been read at all, so the words themselves say how faults are told. */
function optionsIn(words: readonly string[]): readonly string[] {
  const end = words.indexOf('--');
  return end === -1 ? words : words.slice(0, end);
}

/** As commander reads it: `--lang de` or `--lang=de`, the last of several. */
function languageIn(options: readonly string[]): Language {
  const tags = options.flatMap((word, index) => {
    if (word === '--lang') return options.slice(index + 1, index + 2);
    return word.startsWith('--lang=') ? [word.slice('--lang='.length)] : [];
  });
  return spokenFor(tags.at(-1) ?? '');
}

function tellProblem(problem: Problem, options: readonly string[], { err, env }: World): void {
  if (options.includes('--json')) err.write(`${JSON.stringify(problem, null, 2)}\n`);
  else sayProblem(problem, new Page(err, env));
}
