/**
 * The options that questions share, and how their texts become the input of a use-case. Places
 * stand before the equals sign: `--with clutch=c-240`, `--fitted rear-shaft.left=none`.
 */

import { type Command, InvalidArgumentError, Option } from 'commander';
import { unitsSchema } from '../contract/units.js';
import type { FitInput } from '../usecases/check-fit.js';
import type { CommonInput, FittedInput, ValuesInput, VehicleInput } from '../usecases/question.js';
import { CommandFault } from './fault.js';
import { measuredOf } from './measured-option.js';

export interface CommonOptions {
  readonly edition?: number;
  readonly lang: string;
}

export interface ValuesOptions extends CommonOptions {
  readonly units: ValuesInput['units'];
}

export interface VehicleOptions extends ValuesOptions {
  readonly fact?: readonly Pair[];
  readonly fitted?: readonly Pair[];
  readonly adapter?: readonly Pair[];
  readonly measured?: readonly Pair[];
  readonly torque?: string;
  readonly use?: NonNullable<FitInput['use']>;
  readonly ignorePresent?: true;
}

/** `key=value`, as given. */
export interface Pair {
  readonly key: string;
  readonly value: string;
}

export function addCommonOptions(command: Command): Command {
  return addLanguageOption(
    command.option('--edition <n>', 'ask this edition instead of the newest', editionNumber),
  );
}

export function addLanguageOption(command: Command): Command {
  const language = 'language of the sentences, where there are any in it';
  return command.option('--lang <tag>', language, 'en');
}

/** Of questions whose answers show values. */
export function addValuesOptions(command: Command): Command {
  return addUnitsOption(addCommonOptions(command));
}

export function addUnitsOption(command: Command): Command {
  const units = new Option('--units <units>', 'units of the values in the sentences');
  return command.addOption(units.choices(unitsSchema.options).default('recorded'));
}

export function addVehicleOptions(command: Command): Command {
  const fitted = 'what is on this vehicle: a part, "none" or "unknown" (repeatable)';
  const adapter = 'an adapter that is in a mating; several in a row, in this order (repeatable)';
  const measured =
    'what was measured or found out since, by position[.face].parameter (repeatable)';
  const torque = 'engine torque to judge by, such as "400 N.m"';
  const present = 'do not count against the answer what fails on the vehicle already';
  return addValuesOptions(command)
    .option('--fact <fact=value>', 'what is known of this vehicle (repeatable)', addPair)
    .option('--fitted <position=part>', fitted, addPair)
    .option('--adapter <mating=part>', adapter, addPair)
    .option('--measured <place=value>', measured, addPair)
    .option('--torque <torque>', torque)
    .addOption(useOption())
    .option('--ignore-present', present);
}

export function useOption(): Option {
  const uses: readonly NonNullable<FitInput['use']>[] = ['road', 'off-road', 'competition'];
  return new Option('--use <use>', 'what the vehicle is used for').choices(uses);
}

export function addPair(text: string, before: readonly Pair[] = []): Pair[] {
  const split = text.indexOf('=');
  const key = text.slice(0, Math.max(0, split)).trim();
  const value = text.slice(split + 1).trim();
  if (split < 0 || key === '' || value === '') {
    throw new InvalidArgumentError('Write it as name=value.');
  }
  return [...before, { key, value }];
}

/** Editions are counted 1, 2, 3 … */
function editionNumber(text: string): number {
  return wholeNumber(text, { least: 1, most: Number.MAX_SAFE_INTEGER });
}

export function wholeNumber(text: string, limits: { least: number; most: number }): number {
  const number = /^\d{1,16}$/.test(text) ? Number(text) : Number.NaN;
  if (number >= limits.least && number <= limits.most) return number;
  const range =
    limits.most === Number.MAX_SAFE_INTEGER
      ? `from ${limits.least}`
      : `from ${limits.least} to ${limits.most}`;
  throw new InvalidArgumentError(`It is a whole number ${range}.`);
}

export function commonInput({ edition, lang }: CommonOptions): CommonInput {
  return { edition: edition ?? null, lang };
}

export function valuesInput({ units, ...options }: ValuesOptions): ValuesInput {
  return { ...commonInput(options), units };
}

export function vehicleInput(vehicle: string, options: VehicleOptions): VehicleInput {
  const { torque, use, ignorePresent } = options;
  return {
    ...valuesInput(options),
    vehicle,
    facts: factsOf(options.fact ?? []),
    fitted: partsByPlace(options.fitted ?? [], '--fitted'),
    adapters: adaptersOf(options.adapter ?? []),
    measured: measuredOf(options.measured ?? []),
    torque: torque ?? null,
    use: use ?? null,
    ignorePresent: ignorePresent ?? false,
  };
}

/**
 * One part for each place, or one for each hand of it; a place that is named twice would hide one
 * of the two.
 */
export function partsByPlace(
  pairs: readonly Pair[],
  option: '--fitted' | '--with',
): Record<string, FittedInput> {
  const found = new Map<string, FittedInput>();
  const hands = new Map<string, { left?: string; right?: string }>();
  for (const { key, value } of pairs) {
    const [, position = key, hand] = /^(.+)\.(left|right)$/.exec(key) ?? [];
    const known = hands.get(position);
    if (hand === undefined) {
      if (found.has(position)) throw twice(option, position);
      found.set(position, value);
    } else if (known !== undefined && hand in known) throw twice(option, key);
    else hands.set(position, { ...known, [hand]: value });
  }
  for (const [position, { left, right }] of hands) {
    if (found.has(position)) throw twice(option, position);
    if (left === undefined || right === undefined) throw oneHand(position, left, option);
    found.set(position, { left, right });
  }
  return Object.fromEntries(found);
}

export function factsOf(pairs: readonly Pair[]): Record<string, string> {
  const found = new Map<string, string>();
  for (const { key, value } of pairs) {
    if (found.has(key)) throw twice('--fact', key);
    found.set(key, value);
  }
  return Object.fromEntries(found);
}

function oneHand(position: string, left: string | undefined, option: string): CommandFault {
  const [has, lacks] = left === undefined ? ['right', 'left'] : ['left', 'right'];
  const text = `${option} names the ${has} ${position}, and not the ${lacks} one.`;
  const remedy =
    option === '--fitted'
      ? `Add --fitted ${position}.${lacks}=unknown if nobody knows.`
      : `Add ${option} ${position}.${lacks}=<part>.`;
  return new CommandFault('bad-usage', text, { remedy });
}

function twice(option: string, place: string): CommandFault {
  return new CommandFault('bad-usage', `${option} names ${place} twice.`, {
    remedy: 'Name each place once.',
  });
}

function adaptersOf(pairs: readonly Pair[]): Record<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { key, value } of pairs) found.set(key, [...(found.get(key) ?? []), value]);
  return Object.fromEntries(found);
}
