/**
 * `faying mate PART PART`: do these two faces meet?
 */

import type { Command } from 'commander';
import type { EndView, MateAnswer } from '../usecases/answer.js';
import { type MateInput, mateFaces } from '../usecases/mate-faces.js';
import { called, sayAsides, sayNames, sayVerdict } from './answer-text.js';
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
  readonly aFace?: string;
  readonly bFace?: string;
  readonly adapter?: readonly string[];
  readonly use?: NonNullable<MateInput['use']>;
}

const EXAMPLES = `
Without a face, the pair of faces that comes out best is judged.

Examples:
  $ faying mate gearbox-6-late prop-late --a-face rear --b-face front
  $ faying mate gearbox-6-late prop-early --adapter adapter-70-65
  $ faying mate number:CBL-2G-6 prop-late --a-face rear
`;

export function addMate(program: Command, session: Session): void {
  const adapter = 'an adapter between the two; several in a row, in this order (repeatable)';
  const command = program
    .command('mate')
    .summary('do these two parts meet?')
    .description('Says whether two parts meet, face to face, and why or why not.')
    .argument('<a>', 'a part: its id, number:… or sku:…')
    .argument('<b>', 'the other part')
    .option('--a-face <face>', 'the face of the first part')
    .option('--b-face <face>', 'the face of the other part')
    .option('--adapter <part>', adapter, addPart)
    .addOption(useOption());
  addStoreOptions(addValuesOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((a: string, b: string, options: MateOptions) => {
      const { aFace = null, bFace = null, adapter: adapters = [], use = null } = options;
      const input: MateInput = {
        ...valuesInput(options),
        a: { part: a, interface: aFace },
        b: { part: b, interface: bFace },
        adapters,
        use,
      };
      const answer = session.ask(options, (library) => mateFaces(library, input));
      session.tell(answer, options, sayMate);
    });
}

function addPart(part: string, before: readonly string[] | undefined): readonly string[] {
  return [...(before ?? []), part];
}

function sayMate(answer: MateAnswer, page: Page): void {
  const { summary, state, mating } = answer;
  const words = wordsIn(answer.lang);
  sayVerdict(summary, state, page);
  const [a = '', b = ''] = mating.ends.map((end) => endText(end, words));
  const adapters = mating.adapters.map(({ name, part }) => called(name, part, words));
  page.say(words.mate.ends(a, b, adapters), { tone: 'faint' });
  sayNames(answer, page, words);
  page.gap();
  sayMeeting(mating, page, words);
  sayAsides(answer, page);
}

function endText({ name, part, interface: face }: EndView, words: CliWords): string {
  return words.mate.face(face, part === null ? null : called(name, part, words));
}
