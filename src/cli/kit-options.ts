/**
 * The options of a kit question, and how their texts become the input of the use-case. They are
 * called as the parameters of the URL are, with dashes.
 */

import { type Command, InvalidArgumentError, Option } from 'commander';
import { kitFields } from '../contract/kit-input.js';
import type { KitQuestion } from '../contract/kit-question.js';
import { LIMITS } from '../contract/limits.js';
import { wantIn } from '../contract/wish-text.js';
import { type KitInput, USUAL_KIT } from '../usecases/kit-input.js';
import { hasPrefix } from '../usecases/part-names.js';
import {
  addPair,
  addVehicleOptions,
  type Pair,
  type VehicleOptions,
  vehicleInput,
  wholeNumber,
} from './question-options.js';

export interface KitOptions extends VehicleOptions {
  readonly keep?: readonly string[];
  readonly avoid?: readonly string[];
  readonly owned?: readonly string[];
  readonly offer?: readonly Pair[];
  readonly lots?: string;
  readonly workUpTo?: KitInput['workUpTo'];
  readonly maxCost?: string;
  readonly maxChanged?: number;
  readonly maxHours?: string;
  readonly maxLeadDays?: number;
  readonly inStock?: true;
  readonly labourRate?: string;
  readonly ruleset?: string;
  readonly unknowns?: KitInput['unknowns'];
  readonly from?: KitInput['from'];
  readonly prefer?: KitInput['prefer'];
  readonly routes?: number;
  readonly undominated?: true;
  readonly steps?: number;
}

const PREFERENCES: readonly KitInput['prefer'][] = [
  'cost',
  'changed-positions',
  'labour-hours',
  'lead-days',
  'capacity',
];

function oneOf(flags: string, description: string, choices: readonly string[]): Option {
  return new Option(flags, description).choices(choices);
}

export function upTo(least: number, most: number): (text: string) => number {
  return (text) => wholeNumber(text, { least, most });
}

function addText(text: string, before: readonly string[] = []): string[] {
  if (text === '') throw new InvalidArgumentError('It is empty.');
  return [...before, text];
}

export function addKitOptions(command: Command): Command {
  const { routes, kitSteps, placesInBody, leadDays } = LIMITS;
  return addVehicleOptions(command)
    .option('--keep <position>', 'a position that stays as it is (repeatable)', addText)
    .option('--avoid <part>', 'a part that is not to be added (repeatable)', addText)
    .option('--owned <part[=n]>', 'what is at hand already, and how many (repeatable)', addText)
    .option('--offer <part=price>', "a price of one's own (repeatable)", addPair)
    .option('--lots <lots>', 'lots that may be bought: "all", "none" or ids with commas')
    .addOption(
      oneOf('--work-up-to <who>', 'works that may be done, by who must sign for them', [
        'none',
        'workshop',
        'engineer',
      ]),
    )
    .option('--max-cost <amount>', 'what it may cost at most, such as 2500.00')
    .option('--max-changed <n>', 'how many places may be changed', upTo(0, placesInBody.value))
    .option('--max-hours <hours>', 'how much labour it may take, such as 12.5')
    .option('--max-lead-days <days>', 'days until all is there', upTo(0, leadDays.value))
    .option('--in-stock', 'buy only what the stock of an offer covers')
    .option('--labour-rate <amount>', 'what an hour costs, such as 60.00')
    .option('--ruleset <ruleset>', 'what this ruleset demands must hold as well')
    .addOption(oneOf('--unknowns <rule>', 'ways that are not proven', ['allow', 'refuse']))
    .addOption(oneOf('--from <source>', 'what may be bought', ['recorded', 'offered']))
    .addOption(oneOf('--prefer <what>', 'by what ways are ordered first', PREFERENCES))
    .option('--routes <n>', 'how many ways are wanted', upTo(1, routes.value))
    .option('--undominated', 'leave out ways that another one beats on every count')
    .option('--steps <n>', 'how many steps the search may take', upTo(1, kitSteps.value));
}

/** @param vehicle empty where it is not named. */
export function kitInput(vehicle: string, wants: readonly string[], options: KitOptions): KitInput {
  const question: KitQuestion = {
    vehicle,
    want: wants.map((text) => wantIn(text, hasPrefix)),
    keep: [...(options.keep ?? [])],
    avoid: (options.avoid ?? []).map((part) => ({ part })),
    owned: (options.owned ?? []).map(ownedIn),
    offers: (options.offer ?? []).map(({ key, value }) => ({ part: key, price: value })),
    ...(options.lots === undefined ? {} : { lots: lotsIn(options.lots) }),
    workUpTo: options.workUpTo,
    limits: {
      cost: options.maxCost,
      changedPositions: options.maxChanged,
      labourHours: options.maxHours,
      leadDays: options.maxLeadDays,
      inStock: options.inStock,
    },
    labourRate: options.labourRate,
    ruleset: options.ruleset,
    unknowns: options.unknowns,
    from: options.from,
    prefer: options.prefer,
    routes: options.routes,
    undominated: options.undominated,
    steps: options.steps,
  };
  return { ...vehicleInput(vehicle, options), ...kitFields(question, USUAL_KIT) };
}

/** `hub-a`, or `hub-a=2`; a name may have an equals sign of its own. */
function ownedIn(text: string): { part: string; quantity?: number } {
  const [, part, count] = /^(.+)=(\d{1,4})$/.exec(text) ?? [];
  if (part === undefined || count === undefined) return { part: text };
  const quantity = Number(count);
  const most = LIMITS.ownedPieces.value;
  return quantity < 1 || quantity > most ? { part: text } : { part, quantity };
}

function lotsIn(text: string): NonNullable<KitQuestion['lots']> {
  return text === 'all' || text === 'none' ? text : text.split(',');
}
