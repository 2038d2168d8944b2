/**
 * `faying fits`: which parts fit this vehicle, and which vehicles does this part fit?
 */

import { type Command, Option } from 'commander';
import {
  type FittedVehiclesQuestion,
  fittedVehiclesFilters,
  listFittedVehiclesOperation,
} from '../contract/fitted-vehicles.js';
import {
  type FittingPartsQuestion,
  fittingPartsFilters,
  listFittingPartsOperation,
} from '../contract/fitting-parts.js';
import { LIMITS } from '../contract/limits.js';
import type { FitsCounts, FitsView, FittingPartEntry } from '../usecases/fits-view.js';
import { listFittedVehicles } from '../usecases/list-fitted-vehicles.js';
import { listFittingParts } from '../usecases/list-fitting-parts.js';
import { CommandFault } from './fault.js';
import type { Page } from './page.js';
import { addCommonOptions, addPair, factsOf, type Pair, partsByPlace } from './question-options.js';
import { addStoreOptions, type Session } from './session.js';
import { entries, type Line, type ShowOptions, tellList } from './show.js';
import { addVehicleFilters, type VehicleFilterOptions } from './show-vehicle.js';
import type { CliWords } from './words/cli-words.js';

interface FitsOptions extends ShowOptions {
  readonly alone?: FittingPartsQuestion['alone'];
  readonly changes?: 'yes' | 'no';
}

interface PartsOptions extends FitsOptions {
  readonly position?: string;
  readonly role?: string;
  readonly donor?: string;
  readonly with?: readonly Pair[];
  readonly fact?: readonly Pair[];
}

interface VehiclesOptions extends FitsOptions, Omit<VehicleFilterOptions, 'replaced'> {
  readonly group?: FittedVehiclesQuestion['group'];
}

const EXAMPLES = `
Examples:
  $ faying fits vehicle lirren-1 --position gearbox
  $ faying fits vehicle lirren-1 --donor lirren-2 --changes yes
  $ faying fits part gearbox-6-late --group model
`;

export function addFits(program: Command, session: Session): void {
  const fits = program
    .command('fits')
    .summary('which parts fit a vehicle, which vehicles does a part fit?')
    .description('Lists, over the whole catalogue, what fits what as it stands.')
    .addHelpText('after', EXAMPLES);
  addVehicle(fits, session);
  addPart(fits, session);
}

function addVehicle(fits: Command, session: Session): void {
  const command = fits
    .command('vehicle')
    .summary('which parts fit this vehicle?')
    .description('Lists every part that has a place on a vehicle, and what comes of it.')
    .argument('<id>', 'id of the vehicle')
    .option('--position <id>', 'only at this position')
    .option('--role <id>', 'only parts of this role')
    .option('--donor <id>', 'only what the works fitted to this vehicle')
    .option('--with <position=part>', 'a part that is fitted beside it (repeatable)', addPair)
    .option('--fact <fact=value>', 'what is known of the vehicle (repeatable)', addPair);
  addFitsOptions(command).action((id: string, options: PartsOptions) => {
    checkSolved(options);
    tellList(session, options, {
      operation: listFittingPartsOperation,
      filters: ({ fact, with: beside, alone, changes, position, role, donor }: PartsOptions) => {
        const known = { alone, changes, position, role, donor, facts: factsOf(fact ?? []) };
        const filters = fittingPartsFilters(known);
        return { ...filters, with: onePartEach(partsByPlace(beside ?? [], '--with')), id };
      },
      list: listFittingParts,
      lines: ({ items }, words) =>
        items.flatMap((one) => ('alone' in one ? lineOf(one.part, one.name, one, words) : [])),
      sayBelow: ({ counts, items }, page, words) => {
        for (const item of items) if ('alone' in item) sayKit(item, page, words);
        sayCounts(counts, page, words);
      },
    });
  });
}

function addPart(fits: Command, session: Session): void {
  const command = fits
    .command('part')
    .summary('which vehicles does this part fit?')
    .description('Lists every vehicle that has a place for a part, and what comes of it there.')
    .argument('<id>', 'id of the part')
    .addOption(new Option('--group <by>', 'an entry for each model').choices(['model']));
  addFitsOptions(addVehicleFilters(command)).action((id: string, options: VehiclesOptions) => {
    checkSolved(options);
    tellList(session, options, {
      operation: listFittedVehiclesOperation,
      filters: ({ fact, ...known }: VehiclesOptions) => {
        return { ...fittedVehiclesFilters({ ...known, facts: factsOf(fact ?? []) }), id };
      },
      list: listFittedVehicles,
      lines: ({ items }, words) =>
        items.flatMap((one): Line[] => {
          if ('faults' in one) return [];
          if ('alone' in one) return [lineOf(one.vehicle, one.label, one, words)];
          return [{ id: one.label, name: words.fits.counts(one.counts) }];
        }),
      sayBelow: ({ counts }, page, words) => sayCounts(counts, page, words),
    });
  });
}

function addFitsOptions(command: Command): Command {
  const alone = 'only those of these outcomes, with commas between: holds, open, fails';
  const changes = new Option('--changes <yes|no>', 'look for changes that would make each fit');
  return addStoreOptions(
    addCommonOptions(
      command
        .option('--alone <outcomes>', alone, outcomes)
        .addOption(changes.choices(['yes', 'no']))
        .option('--limit <n>', 'list so many at most; all where left out', entries),
    ),
  ).addHelpText('after', EXAMPLES);
}

export function outcomes(text: string): NonNullable<FitsOptions['alone']> {
  return text.split(',').map((word) => {
    if (word === 'holds' || word === 'open' || word === 'fails') return word;
    throw new CommandFault('bad-usage', `--alone names “${word}”, which is no outcome.`, {
      remedy: 'Name some of holds, open and fails, with commas between.',
    });
  });
}

/** Each entry is a search of its own. */
function checkSolved({ changes, limit }: FitsOptions): void {
  const most = LIMITS.fitsSolved.value;
  if (changes !== 'yes' || (limit ?? Infinity) <= most) return;
  const text = `--changes yes lists ${most} entries at most.`;
  throw new CommandFault('bad-usage', text, { remedy: `Add --limit ${most}.` });
}

function onePartEach(beside: ReturnType<typeof partsByPlace>): Record<string, string> {
  const pairs = Object.entries(beside).map(([position, part]): [string, string] => {
    if (typeof part === 'string') return [position, part];
    throw new CommandFault('bad-usage', `--with names a part for each hand of ${position}.`, {
      remedy: 'Name one part for both hands.',
    });
  });
  return Object.fromEntries(pairs);
}

function lineOf(id: string, name: string, { verdict }: FitsView, { fits }: CliWords): Line {
  const outcome = verdict === null ? fits.notAlone : fits.verdicts[verdict];
  return { id, name: `${outcome}  ${name}` };
}

function sayKit({ name, kit }: FittingPartEntry, page: Page, { fits, quoted }: CliWords): void {
  if (kit === null) return;
  const names = (pieces: typeof kit.comesWith) => [
    ...new Set(pieces.map((piece) => quoted(piece.name))),
  ];
  const [along, besides] = [names(kit.comesWith), names(kit.alsoNeeded)];
  const texts = [
    ...(along.length === 0 ? [] : [fits.comesWith(along)]),
    ...(besides.length === 0 ? [] : [fits.alsoNeeded(besides)]),
  ];
  if (texts.length > 0) page.say(`${quoted(name)}: ${texts.join('; ')}.`, { indent: 2 });
}

function sayCounts(counts: FitsCounts, page: Page, { fits }: CliWords): void {
  page.say(fits.counts(counts), { tone: 'strong' });
}
