/**
 * `faying kits VEHICLE WANT…`: what does the conversion take?
 */

import type { Command } from 'commander';
import { knownOf } from '../contract/known-vehicle.js';
import { resolveKitQuestion } from '../usecases/resolve-kits.js';
import { resolveKitsPartly } from '../usecases/resolve-kits-partly.js';
import { CommandFault } from './fault.js';
import { addKitOptions, type KitOptions, kitInput } from './kit-options.js';
import { sayKits } from './kit-text.js';
import { sayKitsPartly } from './partly-text.js';
import { replayFile, saveFile } from './saved-search.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { addKnownOptions, type KnownOptions, knownIn } from './show-vehicle.js';

interface Options extends KitOptions, StoreOptions, KnownOptions {
  readonly save?: string;
  readonly replay?: string;
}

const EXAMPLES = `
A wish is a part, with @ and a position behind it if need be; lot: and a lot; or load: and a load
of the vehicle with its least margin. Where --make, --model, --variant, --year or --built say what
is known of the vehicle, none is named. That there is no way is an answer: the exit code is 0.

Examples:
  $ faying kits lirren-1 gearbox-6-late
  $ faying kits lirren-1 gearbox-6-late@gearbox --keep rear-final-drive --labour-rate 60.00
  $ faying kits lirren-1 load:clutch-load=1.5
  $ faying kits --make Corrablyn --model Lirren gearbox-6-late
  $ faying kits vessimer-20 lot:rear-end-vessimer-28 --prefer labour-hours
`;

export function addKits(program: Command, session: Session): void {
  const command = program
    .command('kits')
    .summary('what does the conversion take?')
    .description('Finds the ways of doing a conversion: what to buy, to do and to take out, why.')
    .argument('[vehicle]', 'id of the vehicle')
    .argument('[wants...]', 'what is wished for')
    .option('--save <file>', 'save the search itself, to be run again anywhere')
    .option('--replay <file>', 'run a saved search again, and ask nothing');
  addStoreOptions(addKitOptions(addKnownOptions(command)))
    .addHelpText('after', EXAMPLES)
    .action(async (vehicle: string | undefined, wants: readonly string[], options: Options) => {
      const [known] = knownIn(options);
      if (options.replay !== undefined) {
        if (vehicle !== undefined) throw beside('--replay', 'a vehicle');
        if (known !== undefined) throw beside('--replay', `--${known}`);
        if (options.save !== undefined) throw beside('--replay', '--save');
        return replayFile(options.replay, options, session);
      }
      if (known !== undefined) {
        if (options.save !== undefined) throw beside('--save', `--${known}`);
        return askPartly(vehicle === undefined ? [] : [vehicle, ...wants], options, session);
      }
      if (vehicle === undefined) throw new CommandFault('bad-usage', 'No vehicle is named.', USAGE);
      const input = kitInput(vehicle, wants, options);
      if (options.save !== undefined) return saveFile(options.save, input, options, session);
      const answer = session.ask(options, (library) => resolveKitQuestion(library, input));
      return session.tell(answer, options, sayKits);
    });
}

/** Nothing but wishes is named. */
function askPartly(wants: readonly string[], options: Options, session: Session): void {
  const { vehicle: _, ...question } = kitInput('', wants, options);
  const asked = { ...question, known: knownOf(options) };
  const answer = session.ask(options, (library) => resolveKitsPartly(library, asked));
  session.tell(answer, options, sayKitsPartly);
}

const USAGE = { remedy: 'See faying kits --help.' };

function beside(one: string, other: string): CommandFault {
  return new CommandFault('bad-usage', `${one} does not stand beside ${other}.`, USAGE);
}
