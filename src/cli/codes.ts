/**
 * `faying codes`: which codes can an answer carry, and how is each said? No database is asked.
 */

import { type Command, Option } from 'commander';
import { listedGroupSchema } from '../contract/codes.js';
import {
  type CodeEntry,
  type CodesAnswer,
  type CodesInput,
  listCodes,
} from '../usecases/list-codes.js';
import type { Page } from './page.js';
import { addLanguageOption } from './question-options.js';
import type { Session } from './session.js';
import { wordsIn } from './words/words.js';

interface CodesOptions {
  readonly lang: string;
  readonly group?: NonNullable<CodesInput['group']>;
  readonly json?: true;
}

const EXAMPLES = `
Below each code stand the fields of its data, in brackets those that may be missing, and an example.
No database is asked: a catalogue can give its checks codes of its own beside these.

Examples:
  $ faying codes
  $ faying codes --group measures --lang de
`;

export function addCodes(program: Command, session: Session): void {
  const groups = listedGroupSchema.options;
  const command = program
    .command('codes')
    .summary('which codes can an answer carry?')
    .description('Lists every code that an answer can carry, with its data and an example.')
    .addOption(new Option('--group <group>', 'only codes of this group').choices(groups));
  addLanguageOption(command)
    .option('--json', 'print the answer as JSON, and faults as problem details')
    .addHelpText('after', EXAMPLES)
    .action(({ lang, group, ...options }: CodesOptions) => {
      session.tell(listCodes({ lang, group: group ?? null }), options, sayCodes);
    });
}

function sayCodes({ items, lang, engine }: CodesAnswer, page: Page): void {
  const { codes: words } = wordsIn(lang);
  let last: CodeEntry['group'] | null = null;
  for (const entry of items) {
    if (entry.group !== last) {
      if (last !== null) page.gap();
      page.say(words.groups[entry.group], { tone: 'strong' });
      last = entry.group;
    }
    const of = entry.kind === null ? '' : ` (${words.ofKind(entry.kind)})`;
    page.verbatim(`${entry.code}${of}`);
    page.say(fieldsText(entry, words.noData), { indent: 2, tone: 'faint' });
    page.say(entry.example.text, { indent: 2 });
  }
  page.gap();
  page.say(words.from(engine), { tone: 'faint' });
}

function fieldsText({ always, perhaps }: CodeEntry, none: string): string {
  const fields = [...always, ...perhaps.map((name) => `(${name})`)];
  return fields.length === 0 ? none : fields.join(' ');
}
