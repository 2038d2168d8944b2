/**
 * How does this vehicle drive, and does it hold: as it stands, and after a kit?
 */

import {
  type Change,
  type Compared,
  changeOf,
  compared,
  type Figure,
  SECTIONS,
  type Section,
} from '../domain/driveline/figure.js';
import { FIGURE_WORDS } from '../domain/driveline/figure-words.js';
import { asItStands, figuresOf } from '../domain/driveline/figures.js';
import { spokenFor } from '../domain/explain/words.js';
import { asBuilt, type Configuration, overlay } from '../domain/judge/configuration.js';
import type { Interval } from '../domain/quantity/interval.js';
import { isFault, parseQuantity } from '../domain/quantity/quantity.js';
import { compare, rational, sign } from '../domain/quantity/rational.js';
import type { CautionView, NamingView, ValuesHead } from './answer.js';
import { AskedParts } from './asked-parts.js';
import { cautionsOf } from './cautions.js';
import { Faults } from './faults.js';
import { type FigureMeasureView, figureMeasures } from './figure-measures.js';
import { type FigureView, figureName, figureView } from './figure-views.js';
import { withValuesHead } from './head.js';
import {
  type AskedChange,
  changed,
  changeOfKey,
  changeOfLines,
  type LineInput,
  partsIn,
} from './kit-change.js';
import type { Library } from './library.js';
import { namesIn, torqueOf, type VehicleInput, vehicleOf } from './question.js';
import { factsMeasured, knownOf } from './readings.js';
import { Speaker } from './speaker.js';

export interface DrivelineInput extends VehicleInput {
  /** Lines of a kit that is put in; null where the vehicle is asked about as it stands. */
  readonly lines: readonly LineInput[] | null;
  /** Keys of routes, each of which is put in by itself. */
  readonly routes: readonly string[];
  /** Friction of the tyres on the road; null where it is not told. */
  readonly grip: string | null;
}

export interface FigureRow {
  section: Section;
  /** Stable: the same in every language and edition of the layout. */
  figure: string;
  /** For people. */
  name: string;
  before: FigureView | null;
  /** One for each change, in their order; null where the figure is gone. */
  after: (FigureView | null)[];
  change: Change[];
}

export interface DrivelineAnswer extends ValuesHead, NamingView {
  vehicle: string;
  sections: { section: Section; name: string }[];
  figures: FigureRow[];
  measure: FigureMeasureView[];
  cautions: CautionView[];
}

export function driveVehicle(library: Library, input: DrivelineInput): DrivelineAnswer {
  const edition = library.edition(input.edition);
  const faults = new Faults();
  const changes = changesOf(input, faults);
  const names = [...namesIn(input), ...changes.flatMap(partsIn)];
  const parts = new AskedParts({ library, edition, input }, names, faults);
  const facts = { ...input.facts, ...factsMeasured(edition.catalogue, input.measured, faults) };
  const vehicle = vehicleOf(edition, { ...input, facts }, faults);
  const torque = torqueOf(input.torque, faults);
  const grip = gripOf(input.grip, faults);
  if (vehicle === null) return faults.end();
  const { said, catalogue } = knownOf({ parts, vehicle, faults }, input);
  const present = overlay(asBuilt(vehicle), said.seats, said.adapters);
  const after = changes.map((change) => changed(change, present, { parts, vehicle, faults }));
  faults.endIfAny();
  const { layout } = vehicle;
  const { use, ignorePresent } = input;
  const common = { catalogue, pairsOf: catalogue, vehicle, layout, present, torque, use };
  const configurations = after.map((judged): Configuration => {
    return { ...common, judged, ignorePresent };
  });
  const stands = asItStands({ ...common, judged: present, ignorePresent });
  const speaker = new Speaker({ catalogue, layout, lang: input.lang, units: input.units });
  const old = figuresOf(stands, { grip });
  const fresh = configurations.map((one) => figuresOf(one, { grip }));
  const words = FIGURE_WORDS[spokenFor(speaker.lang)];
  const figures = rowsOf(old, fresh, speaker);
  const told = new Set(figures.map(({ section }) => section));
  return withValuesHead(edition, speaker, {
    vehicle: vehicle.id,
    offers: parts.offers,
    named: parts.namedViews(speaker),
    sections: SECTIONS.filter((section) => told.has(section)).map((section) => {
      return { section, name: words.sections[section] };
    }),
    figures,
    measure: figureMeasures([old, ...fresh].flat(), present, speaker),
    cautions: cautionsOf(['driveline', 'brakes', 'wheels'], speaker),
  });
}

function changesOf(input: DrivelineInput, faults: Faults): AskedChange[] {
  const { lines, routes, vehicle, fitted } = input;
  const keyed = routes.flatMap(
    (key, index) => changeOfKey(key, vehicle, `routes.${index}`, faults) ?? [],
  );
  return lines === null ? keyed : [changeOfLines(lines, fitted, faults), ...keyed];
}

const SLIPPERIEST = rational(2);

/** The friction of tyres that a question names, such as 0.9; it is taken as exact. */
function gripOf(text: string | null, faults: Faults): Interval | null {
  if (text === null) return null;
  const read = parseQuantity(text, { type: 'designation', dimension: '1' });
  const { low, high } = isFault(read) ? { low: null, high: null } : read.interval;
  const isGrip = low !== null && sign(low) > 0 && high !== null && compare(high, SLIPPERIEST) <= 0;
  if (isGrip && !isFault(read)) return read.interval;
  faults.add('grip', 'not-a-grip', {});
  return null;
}

/** Each figure of any of them once, beside what it is in each. */
function rowsOf(
  old: readonly Figure[],
  fresh: readonly (readonly Figure[])[],
  speaker: Speaker,
): FigureRow[] {
  const all = fresh.reduce<readonly Figure[]>(
    (known, some) => compared(known, some).flatMap((row) => row.before ?? row.after ?? []),
    compared(old, []).flatMap((row) => row.before ?? []),
  );
  return all.map((one) => {
    const before = old.find(({ key }) => key === one.key) ?? null;
    const pairs = fresh.map((some): Compared => {
      return { before, after: some.find(({ key }) => key === one.key) ?? null };
    });
    return {
      section: one.section,
      figure: one.key,
      name: figureName(one, speaker),
      before: figureView(before, speaker),
      after: pairs.map(({ after }) => figureView(after, speaker)),
      change: pairs.map(changeOf),
    };
  });
}
