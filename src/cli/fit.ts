/**
 * `faying fit VEHICLE PART`: does this part fit this vehicle?
 */

import { type Command, Option } from 'commander';
import { knownOf } from '../contract/known-vehicle.js';
import { LIMITS } from '../contract/limits.js';
import type { FitAnswer, FitPositionView } from '../usecases/answer.js';
import { checkFit, type FitInput } from '../usecases/check-fit.js';
import {
  checkFitPartly,
  type PartlyFitAnswer,
  type PartlyVerdict,
} from '../usecases/check-fit-partly.js';
import {
  called,
  place,
  sayAsides,
  sayNames,
  sayOrders,
  sayOrigin,
  sayTexts,
  sayVerdict,
  textsOf,
} from './answer-text.js';
import { sayConflict } from './conflict-text.js';
import { CommandFault } from './fault.js';
import { cautionTexts, sayFindings } from './finding.js';
import { upTo } from './kit-options.js';
import { sayKit } from './kit-text.js';
import type { Page } from './page.js';
import { sayMeant, sayQuestions } from './partly-text.js';
import {
  addPair,
  addVehicleOptions,
  type Pair,
  partsByPlace,
  type VehicleOptions,
  vehicleInput,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { addKnownOptions, type KnownOptions, knownIn } from './show-vehicle.js';
import type { CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

interface FitOptions extends VehicleOptions, StoreOptions, KnownOptions {
  readonly position?: string;
  readonly with?: readonly Pair[];
  readonly changes?: 'yes' | 'no';
  readonly steps?: number;
}

const EXAMPLES = `
That a part does not fit is an answer: the exit code is 0.

Examples:
  $ faying fit lirren-1 gearbox-6-late
  $ faying fit --make Corrablyn --model Lirren --year 2004 gearbox-6-late
  $ faying fit lirren-1 "number:cbl 2k240@corrablyn"
  $ faying fit lirren-1 gearbox-6-late --with clutch=clutch-late --fitted prop-shaft=unknown
  $ faying fit lirren-1 front-hub-used --measured "part:front-hub-used.wheel.spigot=56.1 ±0.05 mm"
`;

export function addFit(program: Command, session: Session): void {
  const command = program
    .command('fit')
    .summary('does this part fit this vehicle, and what else is needed?')
    .description(
      'Says whether a part fits a vehicle, why or why not, and what must change with it.',
    )
    .usage('[options] [vehicle] <part>')
    .argument('<names...>', 'id of the vehicle, and the part: its id, number:… or sku:…');
  addKnownOptions(command)
    .option('--position <position>', 'only at this position of the vehicle')
    .option('--with <position=part>', 'a part that is fitted beside it (repeatable)', addPair);
  const changes = new Option('--changes <changes>', 'whether to look for changes around it');
  command
    .addOption(changes.choices(['yes', 'no']))
    .option('--steps <n>', 'how many steps the search may take', upTo(1, LIMITS.kitSteps.value));
  addStoreOptions(addVehicleOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((names: readonly string[], options: FitOptions) => {
      const { vehicle, part } = namesOf(names, options);
      const input = fitInput(vehicle ?? '', part, options);
      if (vehicle === null) {
        const { vehicle: _, ...question } = input;
        const asked = { ...question, known: knownOf(options) };
        const answer = session.ask(options, (library) => checkFitPartly(library, asked));
        session.tell(answer, options, sayPartly);
        return;
      }
      const answer = session.ask(options, (library) => checkFit(library, input));
      session.tell(answer, options, sayFit);
    });
}

/** The vehicle is named, or something is known of it; not both. */
function namesOf(names: readonly string[], options: FitOptions) {
  const known = knownIn(options);
  const [first = '', second, ...others] = names;
  if (others.length > 0) {
    const text = 'One vehicle and one part are asked about at a time.';
    throw new CommandFault('bad-usage', text, { remedy: 'Leave out the rest.' });
  }
  if (second === undefined && known.length === 0) {
    throw new CommandFault('bad-usage', 'Which vehicle it is is not said.', {
      remedy: 'Name it before the part, or say with --make, --model or --year what is known of it.',
    });
  }
  if (second !== undefined && known.length > 0) {
    throw new CommandFault('bad-usage', `--${known[0] ?? ''} finds a vehicle, and one is named.`, {
      remedy: 'Leave out one of the two.',
    });
  }
  return second === undefined ? { vehicle: null, part: first } : { vehicle: first, part: second };
}

function fitInput(vehicle: string, part: string, options: FitOptions): FitInput {
  return {
    ...vehicleInput(vehicle, options),
    part,
    position: options.position ?? null,
    with: partsByPlace(options.with ?? [], '--with'),
    changes: options.changes ?? null,
    ...(options.steps === undefined ? {} : { steps: options.steps }),
  };
}

/** Of all that may be meant: what each comes to, and what settles it. */
function sayPartly(answer: PartlyFitAnswer, page: Page): void {
  const { summary, verdict, name, part, vehicles, ask, fit, counts } = answer;
  if (fit !== null) {
    sayFit(fit, page);
    return;
  }
  const words = wordsIn(answer.lang);
  const isKnown = verdict !== null && verdict !== 'depends';
  sayVerdict(summary, isKnown ? OUTCOMES[verdict] : 'open', page);
  page.say(words.fits.meant(called(name, part, words), counts.total), { tone: 'faint' });
  const each = vehicles.map(({ vehicle, label, verdict: own }) => {
    return { vehicle, label, text: `${verdictText(own, words)}.` };
  });
  sayMeant(each, page, words);
  sayQuestions(ask, ({ verdict: own }) => verdictText(own, words), page, words);
  sayTexts(words.answer.cautions, textsOf(answer.cautions), page);
  sayOrigin(answer, page);
}

function verdictText(verdict: PartlyVerdict, { fits }: CliWords): string {
  return verdict === null ? fits.notAlone : fits.verdicts[verdict];
}

/** A verdict is as good as a check that comes to this. */
const OUTCOMES = {
  fits: 'holds',
  'fits-with-changes': 'holds',
  unknown: 'open',
  'does-not-fit': 'fails',
} as const;

function sayFit(answer: FitAnswer, page: Page): void {
  const { summary, alone, verdict, name, part, supersededBy, vehicle, positions, at } = answer;
  const words = wordsIn(answer.lang);
  sayVerdict(summary, verdict === null ? alone : OUTCOMES[verdict], page);
  page.say(words.fit.on(called(name, part, words), vehicle), { tone: 'faint' });
  if (supersededBy !== null) page.say(words.names.superseded(part, supersededBy));
  sayNames(answer, page, words);
  if (answer.ambiguous) {
    const best = positions.filter(({ position }) => at.includes(position));
    page.say(words.fit.best(best.map((one) => place(one.name, one.position))));
  }
  for (const position of positions) sayPosition(position, page, words);
  if (answer.kit !== null) sayKit(answer.kit, answer.currency, page, words);
  if (answer.conflict !== null) sayConflict(answer.conflict, page, words.kits);
  const others = positions.filter(({ position }) => !at.includes(position));
  const further = [...positions.filter((one) => !others.includes(one)), ...others];
  sayAsides(
    answer,
    page,
    further.flatMap((one) => cautionTexts(one, words)),
  );
}

function sayPosition(view: FitPositionView, page: Page, words: CliWords): void {
  const { position, name, alone, order, present, replaces } = view;
  const { fit } = words;
  const instead = present ? fit.present : fit.replaces(replaces);
  page.gap();
  page.say(`${place(name, position)}: ${instead}. ${fit.alone[alone]}`, { tone: 'strong' });
  sayFindings(view, page, words, 2);
  // Nobody should order for a place where it does not go in.
  if (alone !== 'fails') sayOrders(order, page, words, 2);
}
