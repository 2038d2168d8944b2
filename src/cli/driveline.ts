/**
 * `faying driveline VEHICLE`: how does it drive, and does it hold, before and after a change?
 */

import type { Command } from 'commander';
import { type DrivelineAnswer, driveVehicle, type FigureRow } from '../usecases/drive-vehicle.js';
import type { FigureView } from '../usecases/figure-views.js';
import type { LineInput } from '../usecases/kit-change.js';
import { sayAsides, sayNames } from './answer-text.js';
import type { Page } from './page.js';
import {
  addPair,
  addVehicleOptions,
  type Pair,
  partsByPlace,
  type VehicleOptions,
  vehicleInput,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { sayTable } from './table.js';
import type { DrivelineWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

interface DrivelineOptions extends VehicleOptions, StoreOptions {
  readonly with?: readonly Pair[];
  readonly route?: readonly string[];
  readonly grip?: string;
}

const EXAMPLES = `
Figures that want something nobody recorded are not known; what it is stands below them. The key of
a route stands in the answer of "faying kits --json".

Examples:
  $ faying driveline lirren-1 --grip 0.9
  $ faying driveline lirren-1 --with gearbox=gearbox-6-late --torque "320 N.m"
`;

export function addDriveline(program: Command, session: Session): void {
  const put = 'a part that is put in, or "none" for what is taken out (repeatable)';
  const command = program
    .command('driveline')
    .summary('how does it drive, and does it hold?')
    .description('Tells gears, loops, loads, shafts, brakes and wheels, before and after a change.')
    .argument('<vehicle>', 'id of the vehicle')
    .option('--with <position=part>', put, addPair)
    .option('--route <key>', 'the key of a route that is put in (repeatable)', addKey)
    .option('--grip <friction>', 'friction of the tyres on the road, such as 0.9');
  addStoreOptions(addVehicleOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((vehicle: string, options: DrivelineOptions) => {
      const { with: pairs = [], route: routes = [], grip = null } = options;
      const lines = pairs.length === 0 ? null : linesOf(pairs);
      const input = { ...vehicleInput(vehicle, options), lines, routes, grip };
      const answer = session.ask(options, (library) => driveVehicle(library, input));
      session.tell(answer, options, sayDriveline);
    });
}

function addKey(key: string, before: readonly string[] = []): readonly string[] {
  return [...before, key];
}

function linesOf(pairs: readonly Pair[]): LineInput[] {
  return Object.entries(partsByPlace(pairs, '--with')).flatMap(([position, part]) => {
    if (typeof part === 'string') return [lineOf(position, null, part)];
    return (['left', 'right'] as const).map((hand) => lineOf(position, hand, part[hand]));
  });
}

function lineOf(position: string, hand: LineInput['hand'], part: string): LineInput {
  const isOut = part === 'none';
  const common = { position, hand, mating: null, work: null, source: null } as const;
  return { ...common, action: isOut ? 'remove' : 'add', part: isOut ? null : part };
}

function sayDriveline(answer: DrivelineAnswer, page: Page): void {
  const { vehicle, sections, figures } = answer;
  const words = wordsIn(answer.lang);
  page.say(words.vehicle(vehicle), { tone: 'strong' });
  sayNames(answer, page, words);
  if (figures.length === 0) page.say(words.driveline.noFigures);
  const changes = figures[0]?.after.length ?? 0;
  for (const { section, name } of sections) {
    page.gap();
    page.say(name, { tone: 'strong' });
    const rows = figures.filter((row) => row.section === section);
    sayTable(
      headingsOf(changes, words.driveline),
      rows.map((row) => ({ label: `  ${row.name}`, cells: cellsOf(row, words.driveline) })),
      page,
    );
  }
  sayAsides({ ...answer, notChecked: [] }, page);
}

function headingsOf(changes: number, words: DrivelineWords): string[] {
  const after = Array.from({ length: changes }, (_, index) => [
    words.after(changes === 1 ? null : index + 1),
    '',
  ]);
  return [words.before, ...after.flat()];
}

function cellsOf({ before, after, change }: FigureRow, words: DrivelineWords): string[] {
  const changed = after.map((view, index) => {
    const how = change[index] ?? null;
    return [figureText(view, words), how === null ? '' : words.changes[how]];
  });
  return [figureText(before, words), ...changed.flat()];
}

function figureText(view: FigureView | null, words: DrivelineWords): string {
  if (view === null) return '-';
  const { value, outcome } = view;
  const text = value?.text ?? words.unknown;
  const mark = outcome === null || value === null ? '' : words.outcomes[outcome];
  return mark === '' ? text : `${text} (${mark})`;
}
