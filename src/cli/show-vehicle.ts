/**
 * `faying show vehicle [ID]`: which vehicle is it, and what did the works fit to one?
 */

import { type Command, InvalidArgumentError } from 'commander';
import { monthField } from '../contract/built.js';
import { listVehiclesOperation, vehiclesFilters } from '../contract/vehicles.js';
import { listVehicles } from '../usecases/list-vehicles.js';
import { readVehicle } from '../usecases/read-vehicle.js';
import { latestYearOf } from '../usecases/vehicle-directory.js';
import type {
  AskView,
  OccupantView,
  VehicleAnswer,
  VehicleFactView,
  VehiclePositionView,
  VehiclesAnswer,
  VinView,
} from '../usecases/vehicle-view.js';
import { called, place, sayOrigin, sayTexts, textsOf } from './answer-text.js';
import type { Page } from './page.js';
import { addPair, factsOf, type Pair, wholeNumber } from './question-options.js';
import { sayLabelled, sayTitle } from './record-text.js';
import type { Session } from './session.js';
import { addSort, type ShowOptions } from './show.js';
import type { CliWords } from './words/cli-words.js';

/** What may be known of a vehicle. */
export interface KnownOptions {
  readonly make?: string;
  readonly model?: string;
  readonly variant?: string;
  readonly year?: number;
  readonly built?: string;
}

/** Which of them are told. */
export function knownIn(options: KnownOptions): string[] {
  const names = ['make', 'model', 'variant', 'year', 'built'] as const;
  return names.filter((name) => options[name] !== undefined);
}

/** What narrows a list of vehicles. */
export interface VehicleFilterOptions extends KnownOptions {
  readonly text?: string;
  readonly layout?: string;
  readonly fact?: readonly Pair[];
  readonly replaced?: true;
}

interface VehicleShowOptions extends ShowOptions, VehicleFilterOptions {}

const EXAMPLES = `
Examples:
  $ faying show vehicle --make Corrablyn --year 2004
  $ faying show vehicle lirren-1
`;

export function addShowVehicle(show: Command, session: Session): void {
  addSort(show, session, {
    word: 'vehicle',
    hasValues: true,
    summary: 'which vehicle is it, and what did the works fit to one?',
    examples: EXAMPLES,
    operation: listVehiclesOperation,
    addFilters,
    filters: ({ fact, ...known }: VehicleShowOptions) =>
      vehiclesFilters({ ...known, facts: factsOf(fact ?? []) }),
    list: (library, input, head) =>
      listVehicles(library, { ...input, latestYear: latestYearOf(head) }),
    read: readVehicle,
    lines: ({ items }) => items.map(({ id, label }) => ({ id, name: label })),
    sayBelow: sayAsk,
    sayOne: sayVehicle,
  });
}

function addFilters(command: Command): Command {
  const replaced = 'also those that more exact ones took the place of';
  return addVehicleFilters(command).option('--replaced', replaced);
}

export function addKnownOptions(command: Command): Command {
  return command
    .option('--make <make>', 'only vehicles of this make')
    .option('--model <model>', 'only vehicles of this model')
    .option('--variant <variant>', 'only vehicles of this variant, or of none on record')
    .option('--year <year>', 'only vehicles that may have been built in this year', year)
    .option('--built <month>', 'only vehicles that may have been built in this month', month);
}

export function addVehicleFilters(command: Command): Command {
  return addKnownOptions(command)
    .option('--text <words>', 'only those with all these words in make, model or variant')
    .option('--layout <layout>', 'only those of this layout')
    .option('--fact <fact=value>', 'what is known of the vehicle (repeatable)', addPair);
}

function year(text: string): number {
  return wholeNumber(text, { least: 0, most: 9999 });
}

function month(text: string): string {
  if (monthField.safeParse(text).success) return text;
  throw new InvalidArgumentError('It is a month such as 2004-06.');
}

/** The best question of those that tell the listed vehicles apart. */
function sayAsk({ ask: [best] }: VehiclesAnswer, page: Page, { show }: CliWords): void {
  if (best === undefined) return;
  const { name, how, values } = best;
  const labels = values.map(({ label, value }) =>
    label === value ? value : `${label} (${value})`,
  );
  const texts = [
    `${name} (${optionOf(best)}): ${labels.join(', ')}.`,
    ...(how === null ? [] : [how]),
  ];
  sayTexts(show.headings.asks, [texts.join(' ')], page);
}

function optionOf({ field, fact }: AskView): string {
  return fact === null ? `--${field}` : `--fact ${fact}=…`;
}

function sayVehicle(vehicle: VehicleAnswer, page: Page, words: CliWords): void {
  const { id, label, layout, layoutName, like, vin, evidence } = vehicle;
  const { show } = words;
  sayTitle(label, id, page, words);
  sayLabelled('layout', [called(layoutName, layout, words)], page, words);
  sayLabelled('like', [like], page, words);
  sayLabelled('vin', vin.map(vinText), page, words);
  sayLabelled('evidence', [show.evidence(evidence)], page, words);
  sayTexts(show.headings.fitted, fittedTexts(vehicle, words), page);
  sayTexts(show.headings.adapters, adapterTexts(vehicle, words), page);
  const { namedFacts } = vehicle;
  const told = namedFacts.flatMap((fact) => toldFact(fact));
  sayTexts(show.headings.facts, told, page);
  const open = namedFacts.filter(({ value }) => value === null);
  sayTexts(show.headings.findOut, open.map(openFact), page);
  sayTexts(show.headings.askable, askableTexts(vehicle, words), page);
  sayTexts(words.answer.cautions, textsOf(vehicle.cautions), page);
  sayOrigin(vehicle, page);
}

function vinText({ pattern, serial }: VinView): string {
  return serial.length === 0 ? pattern : `${pattern} (${serial.join('–')})`;
}

/** A line for each position; one for each hand only where they differ. */
function fittedTexts({ positions, namedFacts }: VehicleAnswer, words: CliWords): string[] {
  const facts = new Map(namedFacts.map(({ fact, name }) => [fact, name]));
  const what = (piece: VehiclePositionView) => pieceText(piece, facts, words);
  return positions.flatMap((piece) => {
    const { position, name, hand } = piece;
    const other = positions.find((one) => one.position === position && one.hand !== hand);
    const isAlike = other !== undefined && what(other) === what(piece);
    if (isAlike && hand === 'right') return [];
    const side = hand === null || isAlike ? '' : `, ${words.hands[hand]}`;
    return [`${place(name, position)}${side}: ${what(piece)}`];
  });
}

function pieceText(
  { option, ...piece }: VehiclePositionView,
  facts: ReadonlyMap<string, string>,
  words: CliWords,
): string {
  if (piece.occupant !== 'as-found' || option === null) return occupantText(piece, words);
  const name = words.quoted(facts.get(option.fact) ?? option.fact);
  const by = option.by.map((one) => `${one.valueName}: ${occupantText(one, words)}`);
  return `${words.show.toldBy(name)} (${by.join('; ')})`;
}

function occupantText({ occupant, part, partName }: OccupantView, words: CliWords): string {
  if (occupant === 'part' && part !== null) return called(partName, part, words);
  return words.show.occupants[occupant === 'empty' ? 'empty' : 'as-found'];
}

function adapterTexts({ adapters }: VehicleAnswer, words: CliWords): string[] {
  return adapters.map(({ between, adapters: parts }) => {
    const names = parts.map(({ name, part }) => called(name, part, words));
    const { notes, and } = words.show;
    return `${and(between)}: ${names.length === 0 ? notes.noAdapters : names.join(', ')}`;
  });
}

function toldFact({ name, value, valueName }: VehicleFactView): string[] {
  return value === null ? [] : [`${name}: ${valueName ?? value}`];
}

function openFact({ fact, name, how, values }: VehicleFactView): string {
  const known = values.map((one) => `${one.name} (${one.value})`);
  return [`${name} (--fact ${fact}=…): ${known.join(', ')}.`, ...(how === null ? [] : [how])].join(
    ' ',
  );
}

function askableTexts({ positions, values }: VehicleAnswer, words: CliWords): string[] {
  const { show, hands } = words;
  return values.map(({ position, hand, name, askedAs, recorded }) => {
    const where = positions.find((one) => one.position === position)?.name ?? position;
    const side = hand === null ? '' : `, ${hands[hand]}`;
    const value = recorded?.value.text ?? show.occupants['as-found'];
    return `${place(where, position)}${side}, ${name}: ${value} (--${askedAs})`;
  });
}
