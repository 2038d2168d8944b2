/**
 * Which parts fit this vehicle: all of the catalogue, those at one place or of one role, those of
 * another vehicle that is taken apart, or those that are named.
 */

import type { Catalogue, Part, Position, Vehicle } from '../domain/catalogue/catalogue.js';
import { OUTCOMES, type Outcome } from '../domain/check/state.js';
import type { Recipient } from '../domain/fits/around.js';
import { type FitsAt, fitsIndex } from '../domain/fits/fits-index.js';
import { asBuilt, handsOf, seatAt } from '../domain/judge/configuration.js';
import { type Fit, judgeFit } from '../domain/judge/fit.js';
import { AskedParts, type NamingInput } from './asked-parts.js';
import { checkFit, companionsOf } from './check-fit.js';
import { donorKit } from './donor-kit.js';
import { Faults } from './faults.js';
import { countsOf, fitsOf, fitsView, type Searched } from './fits-entries.js';
import type { FitsListAnswer, FittingPartEntry, NamedFittingPart } from './fits-view.js';
import { withHead } from './head.js';
import type { Edition, Library } from './library.js';
import { type ListInput, pageOfSorted } from './listing.js';
import { partDirectory } from './part-directory.js';
import type { LostPart } from './part-view.js';
import { asRecorded, positionOf, type VehicleInput, vehicleOf } from './question.js';
import type { QuestionFault } from './question-fault.js';
import { checkOne } from './read-one.js';
import { Speaker } from './speaker.js';
import { vehicleLabel } from './vehicle-label.js';

export interface FittingPartsInput extends ListInput, NamingInput {
  /** Id of the vehicle. */
  readonly id: string;
  /** Only at this place. */
  readonly position: string | null;
  /** Only parts of this role. */
  readonly role: string | null;
  /** These parts in place of the list, by any of their names. */
  readonly names: readonly string[] | null;
  /** Only what the works fitted to this vehicle. */
  readonly donor: string | null;
  /** Only those of these outcomes; all where it is left open. */
  readonly alone: readonly Outcome[] | null;
  /** Parts fitted beside each of them, by position. */
  readonly with: Readonly<Record<string, string>>;
  readonly facts: Readonly<Record<string, string>>;
  /** Whether changes around each part of the page are looked for. */
  readonly changes: 'yes' | 'no';
}

export type FittingPartItem = FittingPartEntry | NamedFittingPart | LostPart<QuestionFault>;

export interface FittingPartsAnswer extends FitsListAnswer<FittingPartItem> {
  vehicle: string;
  label: string;
  /** Of the price and stock list, where an order code was looked up in it; else null. */
  offers: number | null;
}

/** In the order of the ids of the parts; those that are named in the order of their names. */
export function listFittingParts(library: Library, input: FittingPartsInput): FittingPartsAnswer {
  const asked = askedOf(library, input);
  const { edition, vehicle, parts, speaker } = asked;
  const { items, counts, next } = input.names === null ? listed(asked) : named(asked, input.names);
  return withHead(edition, speaker, {
    vehicle: vehicle.id,
    label: vehicleLabel(vehicle, speaker.lang),
    offers: parts.offers,
    items,
    next,
    counts,
  });
}

/** The question with its names resolved. */
interface Asked {
  readonly library: Library;
  readonly input: FittingPartsInput;
  readonly edition: Edition;
  readonly vehicle: Vehicle;
  /** Where each part stands on the donor; null where there is none. */
  readonly onDonor: ReadonlyMap<string, readonly Position[]> | null;
  readonly parts: AskedParts;
  readonly faults: Faults;
  readonly speaker: Speaker;
  readonly recipient: Recipient;
  readonly placesOf: (part: Part) => readonly FitsAt[];
}

function askedOf(library: Library, input: FittingPartsInput): Asked {
  const edition = library.edition(input.edition);
  const { catalogue: recorded } = edition;
  const { id, position, role, lang, facts } = input;
  const faults = new Faults();
  const names = [...(input.names ?? []), ...Object.values(input.with)];
  const parts = new AskedParts({ library, edition, input }, names, faults);
  const { catalogue } = parts;
  const vehicle = vehicleOf(edition, { vehicle: id, facts, lang }, faults, 'id');
  if (vehicle === null) return faults.end();
  if (position !== null) positionOf(vehicle, position, 'position', faults);
  if (role !== null) checkOne(recorded.roles, 'role', { id: role, at: 'role' }, faults);
  const donor =
    input.donor === null
      ? null
      : vehicleOf(edition, { vehicle: input.donor, facts: {}, lang }, faults, 'donor');
  const beside = companionsOf(parts, vehicle, input, faults);
  if (position !== null && beside.has(position)) {
    faults.add(`with.${position}`, 'place-of-the-part', { position });
  }
  faults.endIfAny();
  const index = fitsIndex(recorded, edition.index);
  const isAsRecorded = vehicle === recorded.vehicles.get(id) && beside.size === 0;
  const recipient = { catalogue, vehicle, beside };
  const placesOf = isAsRecorded
    ? (part: Part) => index.at(part, vehicle)
    : index.askedOf(recipient);
  const speaker = new Speaker({ catalogue, layout: vehicle.layout, lang });
  const onDonor = donor === null ? null : placesOn(donor);
  return { library, input, edition, vehicle, onDonor, parts, faults, speaker, recipient, placesOf };
}

type Found = Pick<FittingPartsAnswer, 'items' | 'counts' | 'next'>;

function listed(asked: Asked): Found {
  const { input, vehicle, speaker } = asked;
  const wanted = new Set<Outcome>(input.alone ?? OUTCOMES);
  const found = partsFor(asked)
    .map((part) => fitsOf(part, vehicle, placesIn(asked, part)))
    .filter(({ places }) => places.length > 0);
  const rows = found.filter(({ alone }) => wanted.has(alone));
  const page = pageOfSorted(rows, ({ part }) => [part.id], input);
  const outcomes = found.map(({ alone }) => alone);
  return {
    items: page.rows.map((fits) => {
      const { id } = fits.part;
      const view = fitsView(fits, searchedFor(asked, id), speaker);
      return { ...entryOf(asked, fits.part), kit: kitOf(asked, id), ...view };
    }),
    counts: countsOf(outcomes, wanted),
    next: page.next,
  };
}

/** Each name by itself: one that leads nowhere takes nothing from the others. */
function named(asked: Asked, names: readonly string[]): Found {
  const { vehicle, parts, faults, speaker } = asked;
  const items = names.map((name): FittingPartItem => {
    const before = faults.found.length;
    const found = parts.find(name, 'part');
    if (found === null) return { asked: name, faults: faults.found.slice(before) };
    const { part, resolvedBy } = found;
    const fit = fitOf(asked, part);
    const searched = searchedFor(asked, name) ?? { verdict: fit.verdict, complete: true };
    const view = fitsView(fitsOf(part, vehicle, fit.positions), searched, speaker);
    return { asked: name, resolvedBy, ...entryOf(asked, part), kit: null, ...view };
  });
  const outcomes = items.flatMap((one) => ('alone' in one ? one.alone : []));
  const counts = countsOf(outcomes, new Set(OUTCOMES));
  return { items, counts: { ...counts, total: items.length }, next: null };
}

/** Of a part that is named: it may be a worked one, or asked at a place that takes no such part. */
function fitOf(
  { input, recipient }: Asked,
  part: Part,
): { readonly positions: readonly FitsAt[]; readonly verdict: Fit['verdict'] } {
  const { catalogue, vehicle, beside } = recipient;
  return judgeFit(catalogue, {
    vehicle,
    part,
    position: input.position,
    with: beside,
    said: { seats: new Map(), adapters: new Map() },
    torque: null,
    use: null,
    ignorePresent: false,
  });
}

function placesIn({ input, placesOf }: Asked, part: Part): readonly FitsAt[] {
  const places = placesOf(part);
  return input.position === null
    ? places
    : places.filter(({ position }) => position.id === input.position);
}

/** In the order of their ids. */
function partsFor({ edition, onDonor, vehicle, input }: Asked): readonly Part[] {
  const { catalogue } = edition;
  if (onDonor === null) return takenBy(catalogue, vehicle, input);
  const own = [...onDonor.keys()].sort().flatMap((id) => catalogue.parts.get(id) ?? []);
  return own.filter(({ roles }) => input.role === null || roles.includes(input.role));
}

/** The parts of the roles that places of the vehicle take, in the order of their ids. */
function takenBy(
  catalogue: Catalogue,
  { layout }: Vehicle,
  { position, role }: FittingPartsInput,
): readonly Part[] {
  const places = [...layout.positions.values()].filter(({ id }) => (position ?? id) === id);
  const roles = new Set(places.flatMap((place) => place.roles));
  const asked = role === null ? roles : new Set([...roles].filter((one) => one === role));
  const directory = partDirectory(catalogue);
  const found = new Set([...asked].flatMap((one) => directory.ofRole(one)));
  const parts = [...found];
  return asked.size > 1 ? parts.sort((a, b) => (a.id < b.id ? -1 : 1)) : parts;
}

function entryOf({ onDonor, speaker }: Asked, part: Part) {
  const { id, name, maker, numbers, supersededBy } = part;
  const places = onDonor?.get(id) ?? [];
  return {
    part: id,
    name: speaker.text(name),
    maker,
    numbers: numbers.map(({ number, of }) => ({ number, of })),
    supersededBy,
    donor: places.map((place) => ({ position: place.id, name: speaker.text(place.name) })),
  };
}

/** Where each part stands that the works fitted to a vehicle. */
function placesOn(vehicle: Vehicle): Map<string, Position[]> {
  const built = asBuilt(vehicle);
  const found = new Map<string, Position[]>();
  for (const position of vehicle.layout.positions.values()) {
    const occupants = handsOf(position).map((hand) => seatAt(built, position.id, hand)?.occupant);
    const here = new Set(occupants.flatMap((one) => (one?.is === 'part' ? [one.part] : [])));
    for (const id of here) found.set(id, [...(found.get(id) ?? []), position]);
  }
  return found;
}

function searchedFor({ library, input }: Asked, name: string): Searched {
  if (input.changes === 'no') return null;
  const { position, with: beside } = input;
  const vehicle = vehicleInputOf(input);
  return checkFit(library, { ...vehicle, part: name, position, with: beside, changes: 'yes' });
}

function kitOf({ library, edition, input, onDonor, speaker }: Asked, part: string) {
  if (onDonor === null || input.changes === 'no') return null;
  const vehicle = vehicleInputOf(input);
  const { position } = input;
  return donorKit({ library, edition, vehicle, part, position, onDonor }, speaker);
}

function vehicleInputOf({ id, facts, edition, lang, offers }: FittingPartsInput): VehicleInput {
  const naming = { edition, lang, ...(offers === undefined ? {} : { offers }) };
  return { ...naming, ...asRecorded({ vehicle: id, facts }) };
}
