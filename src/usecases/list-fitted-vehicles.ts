/**
 * Which vehicles does this part fit: all that a catalogue has, those of which somebody knows
 * something, or those that are named; one by one, or a model at a time.
 */

import type { Part, Vehicle } from '../domain/catalogue/catalogue.js';
import { OUTCOMES, type Outcome } from '../domain/check/state.js';
import { sayBuilt } from '../domain/explain/words.js';
import { fitsIndex } from '../domain/fits/fits-index.js';
import type { Candidate, VehicleFilter } from '../domain/identify/candidate.js';
import { checkFit } from './check-fit.js';
import { Faults } from './faults.js';
import { countsOf, type Fits, fitsOf, fitsView, type Searched } from './fits-entries.js';
import type { FitsListAnswer, FittedModelEntry, FittedVehicleEntry } from './fits-view.js';
import { withHead } from './head.js';
import type { Edition, Library } from './library.js';
import { type ListInput, pageOfSorted } from './listing.js';
import { asRecorded, factsOf, vehicleOf } from './question.js';
import type { QuestionFault } from './question-fault.js';
import { checkOne, oneOf } from './read-one.js';
import { Speaker } from './speaker.js';
import { keyOf, vehicleDirectory } from './vehicle-directory.js';
import { vehicleLabel } from './vehicle-label.js';

export interface FittedVehiclesInput extends ListInput, Omit<VehicleFilter, 'facts'> {
  /** Id of the part. */
  readonly id: string;
  /** Values by fact: of the vehicles that are listed, and told of each of them. */
  readonly facts: Readonly<Record<string, string>>;
  /** Ids of vehicles in place of the list. */
  readonly vehicles: readonly string[] | null;
  /** Only those of these outcomes; all where it is left open. */
  readonly alone: readonly Outcome[] | null;
  readonly group: 'model' | null;
  /** Whether changes around the part are looked for on each vehicle of the page. */
  readonly changes: 'yes' | 'no';
}

/** A vehicle that was named and is not there, or was replaced. */
export interface LostVehicle {
  asked: string;
  faults: readonly QuestionFault[];
}

export type FittedVehicleItem = FittedVehicleEntry | FittedModelEntry | LostVehicle;

export interface FittedVehiclesAnswer extends FitsListAnswer<FittedVehicleItem> {
  part: string;
  name: string;
}

/** In the order of `GET /v1/vehicles`; those that are named in the order of their names. */
export function listFittedVehicles(
  library: Library,
  input: FittedVehiclesInput,
): FittedVehiclesAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const part = oneOf(catalogue.parts, 'part', input);
  const faults = new Faults();
  const facts = factsOf(catalogue, input.facts, faults);
  const { layout } = input;
  if (layout !== null) checkOne(catalogue.layouts, 'layout', { id: layout, at: 'layout' }, faults);
  faults.endIfAny();
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang });
  const asked: Asked = { library, input, edition, part, facts, speaker };
  const { items, counts, next } =
    input.vehicles === null ? listed(asked) : named(asked, input.vehicles);
  const name = speaker.text(part.name);
  return withHead(edition, speaker, { part: part.id, name, items, next, counts });
}

interface Asked {
  readonly library: Library;
  readonly input: FittedVehiclesInput;
  readonly edition: Edition;
  readonly part: Part;
  readonly facts: ReadonlyMap<string, string>;
  readonly speaker: Speaker;
}

type Found = Pick<FittedVehiclesAnswer, 'items' | 'counts' | 'next'>;

interface Row {
  readonly candidate: Candidate;
  readonly fits: Fits;
}

function listed(asked: Asked): Found {
  const { edition, input, facts } = asked;
  const wanted = new Set<Outcome>(input.alone ?? OUTCOMES);
  const found = vehicleDirectory(edition.catalogue).find(
    { ...input, facts },
    { isReplacedToo: false },
  );
  const all = found
    .map((candidate): Row => ({ candidate, fits: fitsOn(asked, told(asked, candidate.vehicle)) }))
    .filter(({ fits }) => fits.places.length > 0);
  const rows = all.filter(({ fits }) => wanted.has(fits.alone));
  const counts = countsOf(
    all.map(({ fits }) => fits.alone),
    wanted,
  );
  if (input.group === 'model') return grouped(rows, counts, asked);
  const page = pageOfSorted(rows, ({ candidate }) => keyOf(candidate), input);
  return { items: page.rows.map(({ fits }) => entryOf(fits, asked)), counts, next: page.next };
}

function named(asked: Asked, ids: readonly string[]): Found {
  const { edition, input } = asked;
  const items = ids.map((id): FittedVehicleEntry | LostVehicle => {
    const faults = new Faults();
    const { facts, lang } = input;
    const vehicle = vehicleOf(edition, { vehicle: id, facts, lang }, faults);
    if (vehicle === null) return { asked: id, faults: faults.found };
    return entryOf(fitsOn(asked, vehicle), asked);
  });
  const outcomes = items.flatMap((one) => ('alone' in one ? one.alone : []));
  const counts = countsOf(outcomes, new Set(OUTCOMES));
  return { items, counts: { ...counts, total: items.length }, next: null };
}

/** The vehicle as the question knows it. */
function told({ edition, input, facts }: Asked, vehicle: Vehicle): Vehicle {
  if (facts.size === 0) return vehicle;
  const question = { vehicle: vehicle.id, facts: input.facts, lang: input.lang };
  return vehicleOf(edition, question, new Faults()) ?? vehicle;
}

function fitsOn({ edition, part }: Asked, vehicle: Vehicle): Fits {
  const { catalogue } = edition;
  const index = fitsIndex(catalogue, edition.index);
  const isAsRecorded = catalogue.vehicles.get(vehicle.id) === vehicle;
  const places = isAsRecorded
    ? index.at(part, vehicle)
    : index.askedOf({ catalogue, vehicle, beside: new Map() })(part);
  return fitsOf(part, vehicle, places);
}

function entryOf(fits: Fits, asked: Asked): FittedVehicleEntry {
  const { speaker } = asked;
  const { id, make, model, variant, built } = fits.vehicle;
  return {
    vehicle: id,
    label: vehicleLabel(fits.vehicle, speaker.lang),
    make,
    model,
    variant,
    built: [...built],
    ...fitsView(fits, searchedFor(fits.vehicle, asked), speaker),
  };
}

function searchedFor({ id }: Vehicle, { library, input, part }: Asked): Searched {
  if (input.changes === 'no') return null;
  const { edition, lang, facts } = input;
  const vehicle = { edition, lang, ...asRecorded({ vehicle: id, facts }) };
  return checkFit(library, {
    ...vehicle,
    part: part.id,
    position: null,
    with: {},
    changes: 'yes',
  });
}

/** The rows stand in the order of make and model already. */
function grouped(rows: readonly Row[], counts: Found['counts'], asked: Asked): Found {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = JSON.stringify(modelKey(row));
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  const page = pageOfSorted([...groups.values()], ([first]) => modelKey(first), asked.input);
  return {
    items: page.rows.map((group) => modelEntry(group, asked)),
    counts: { ...counts, total: groups.size },
    next: page.next,
  };
}

function modelKey(row: Row | undefined): [string, string] {
  return [row?.candidate.make ?? '', row?.candidate.model ?? ''];
}

function modelEntry(rows: readonly Row[], { speaker }: Asked): FittedModelEntry {
  const [first] = rows;
  if (first === undefined) throw new RangeError('a model has a vehicle at least');
  const { make, model } = first.candidate.vehicle;
  const built = spanOf(rows.filter(({ fits }) => fits.alone !== 'fails'));
  const outcomes = rows.map(({ fits }) => fits.alone);
  const label = [`${make} ${model}`, sayBuilt(built, speaker.lang)].filter((one) => one !== null);
  return {
    make,
    model,
    label: label.join(', '),
    built,
    counts: countsOf(outcomes, new Set(OUTCOMES)),
  };
}

/** From the first month of any to the last of any; not known where one of them has none. */
function spanOf(rows: readonly Row[]): [string | null, string | null] {
  const spans = rows.map(({ candidate }) => candidate.vehicle.built);
  const inOrder = (months: readonly (string | null)[]) =>
    months.includes(null) ? [] : months.toSorted((a, b) => ((a ?? '') < (b ?? '') ? -1 : 1));
  const [first = null] = inOrder(spans.map(([from]) => from));
  const last = inOrder(spans.map(([, until]) => until)).at(-1) ?? null;
  return [first, last];
}
