/**
 * `faying identify`: which vehicle is this?
 */

import type { Command } from 'commander';
import { knownOf } from '../contract/known-vehicle.js';
import { type IdentifyAnswer, identifyVehicle } from '../usecases/identify-vehicle.js';
import { called, sayOrigin, sayTexts, textsOf } from './answer-text.js';
import { CommandFault } from './fault.js';
import type { Page } from './page.js';
import {
  addCommonOptions,
  addPair,
  type CommonOptions,
  commonInput,
  factsOf,
  type Pair,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { addKnownOptions, type KnownOptions } from './show-vehicle.js';
import { wordsIn } from './words/words.js';

interface IdentifyOptions extends CommonOptions, StoreOptions, KnownOptions {
  readonly vin?: string;
  readonly fact?: readonly Pair[];
}

const EXAMPLES = `
A number on the standard input (--vin -) stands in no list of commands that a shell keeps.

Examples:
  $ faying identify --vin 0CBLRA00030000017
  $ faying identify --make Corrablyn --year 2005 --fact brake-pack=small
  $ faying identify --vin - < number.txt
`;

/** What stands for the standard input. */
const INPUT = '-';

export function addIdentify(program: Command, session: Session): void {
  const command = program
    .command('identify')
    .summary('which vehicle is this?')
    .description('Lists the vehicles that may be meant, why each may be, and what to ask next.')
    .option('--vin <number>', 'its identification number, * for what is unread; - to read it')
    .option('--fact <fact=value>', 'what is known of the vehicle (repeatable)', addPair);
  addStoreOptions(addCommonOptions(addKnownOptions(command)))
    .addHelpText('after', EXAMPLES)
    .action(async ({ fact, vin, ...options }: IdentifyOptions) => {
      const input = {
        ...commonInput(options),
        ...knownOf(options),
        vin: vin === INPUT ? await readNumber(session) : (vin ?? null),
        facts: factsOf(fact ?? []),
      };
      const answer = session.ask(options, (library) => identifyVehicle(library, input));
      session.tell(answer, options, sayCandidates);
    });
}

async function readNumber({ world }: Session): Promise<string> {
  const text = new TextDecoder().decode(await world.readInput()).trim();
  if (text !== '') return text;
  throw new CommandFault('bad-usage', 'The standard input has no number.', {
    remedy: 'Write the identification number to it, on one line.',
  });
}

function sayCandidates(answer: IdentifyAnswer, page: Page): void {
  const { candidates, counts, excluded, ask, warnings } = answer;
  const words = wordsIn(answer.lang);
  const { identify, names } = words;
  page.say(identify.left(counts.total), { tone: 'strong' });
  for (const { id, label, why } of candidates) {
    page.gap();
    page.say(called(label, id, words));
    for (const { text } of why) page.say(text, { indent: 2, marker: '- ' });
  }
  const out = excluded.map(({ name, count }) => identify.excluded(name, count));
  sayTexts(identify.leftOut, out, page);
  const [best] = ask;
  if (best !== undefined) {
    const labels = best.values.map(({ label, count }) => `${label} (${count})`);
    sayTexts(names.ask, [names.question(best.name, labels, best.how)], page);
  }
  sayTexts(identify.warnings, textsOf(warnings), page);
  sayTexts(words.answer.cautions, textsOf(answer.cautions), page);
  sayOrigin(answer, page);
}
