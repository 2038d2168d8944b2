/**
 * `faying mate PART[:FACE] PART[:FACE]`: do these two faces meet?
 */

import type { Command } from 'commander';
import type { EndView, MateAnswer } from '../usecases/answer.js';
import { type MateEndInput, type MateInput, mateFaces } from '../usecases/mate-faces.js';
import { called, sayAsides, sayVerdict } from './answer-text.js';
import { CommandFault } from './fault.js';
import { sayMeeting } from './finding.js';
import type { Page } from './page.js';
import {
  addValuesOptions,
  useOption,
  type ValuesOptions,
  valuesInput,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import type { CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

interface MateOptions extends ValuesOptions, StoreOptions {
  readonly adapter?: readonly string[];
  readonly use?: NonNullable<MateInput['use']>;
}

const EXAMPLES = `
Without a face, the pair of faces that comes out best is judged.

Examples:
  $ faying mate gearbox-6-late:rear prop-late:front
  $ faying mate gearbox-6-late:rear prop-early:front --adapter adapter-70-65
`;

export function addMate(program: Command, session: Session): void {
  const adapter = 'an adapter between the two; several in a row, in this order (repeatable)';
  const command = program
    .command('mate')
    .summary('do these two parts meet?')
    .description('Says whether two parts meet, face to face, and why or why not.')
    .argument('<a>', 'id of a part, with the name of its face: part:face')
    .argument('<b>', 'id of the other part, likewise')
    .option('--adapter <part>', adapter, addPart)
    .addOption(useOption());
  addStoreOptions(addValuesOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((a: string, b: string, options: MateOptions) => {
      const { adapter: adapters = [], use = null } = options;
      const input = { ...valuesInput(options), a: endOf(a), b: endOf(b), adapters, use };
      const answer = session.ask(options, (library) => mateFaces(library, input));
      session.tell(answer, options, sayMate);
    });
}

function addPart(part: string, before: readonly string[] | undefined): readonly string[] {
  return [...(before ?? []), part];
}

function endOf(text: string): MateEndInput {
  const [part = '', face = null, ...rest] = text.split(':');
  if (part !== '' && face !== '' && rest.length === 0) return { part, interface: face };
  const remedy = 'Write it as part, or as part:face.';
  throw new CommandFault('bad-usage', `"${text}" names no part with a face.`, { remedy });
}

function sayMate(answer: MateAnswer, page: Page): void {
  const { summary, state, mating } = answer;
  const words = wordsIn(answer.lang);
  sayVerdict(summary, state, page);
  const [a = '', b = ''] = mating.ends.map((end) => endText(end, words));
  const adapters = mating.adapters.map(({ name, part }) => called(name, part, words));
  page.say(words.mate.ends(a, b, adapters), { tone: 'faint' });
  page.gap();
  sayMeeting(mating, page, words);
  sayAsides(answer, page);
}

function endText({ name, part, interface: face }: EndView, words: CliWords): string {
  return words.mate.face(face, part === null ? null : called(name, part, words));
}
