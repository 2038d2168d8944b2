/**
 * What questions have in common: naming a vehicle, places and what is fitted.
 */

import type { Catalogue, Position, Vehicle } from '../domain/catalogue/catalogue.js';
import { donorArticles } from '../domain/catalogue/donor-article.js';
import { FAULT_LANGUAGE, nearest } from '../domain/catalogue/faults.js';
import type { Use } from '../domain/check/coupling.js';
import type { Hand } from '../domain/check/reading.js';
import type { Adapters, Seat, Seats } from '../domain/judge/configuration.js';
import type { Said } from '../domain/judge/fit.js';
import { withFacts } from '../domain/judge/told-facts.js';
import type { Interval } from '../domain/quantity/interval.js';
import { isFault, parseQuantity } from '../domain/quantity/quantity.js';
import { sign } from '../domain/quantity/rational.js';
import type { ShownUnits } from '../domain/quantity/unit.js';
import type { AskedParts, NamingInput } from './asked-parts.js';
import type { Faults } from './faults.js';
import type { Edition } from './library.js';
import { checkOne } from './read-one.js';
import { addReplaced } from './replaced-vehicle.js';

export interface CommonInput {
  /** Null for the newest. */
  readonly edition: number | null;
  readonly lang: string;
}

/** What a question takes whose answer shows values. */
export interface ValuesInput extends CommonInput {
  /** They change the texts of values and the sentences, and nothing else. */
  readonly units: ShownUnits;
}

/** What is on this vehicle: a part, `none`, `unknown`; or one for each hand. */
export type FittedInput = string | { readonly left: string; readonly right: string };

/**
 * Where a value was read; the same as what an answer asks to have measured. A position alone is
 * one of which it was found out what stands there.
 */
export interface MeasuredOn {
  readonly position: string | null;
  readonly hand: Hand | null;
  readonly part: string | null;
  readonly interface: string | null;
  readonly parameter: string | null;
  readonly fact: string | null;
}

/** What was read on this customer's vehicle, or of a part. */
export interface MeasuredInput {
  readonly on: MeasuredOn;
  readonly value: string | readonly string[];
  readonly tool: string | null;
}

export interface VehicleInput extends NamingInput, ValuesInput {
  readonly vehicle: string;
  readonly fitted: Readonly<Record<string, FittedInput>>;
  /** Adapters on matings, in a row. */
  readonly adapters: Readonly<Record<string, readonly string[]>>;
  /** What is known of this vehicle, by fact. */
  readonly facts: Readonly<Record<string, string>>;
  readonly measured: readonly MeasuredInput[];
  readonly torque: string | null;
  readonly use: Use | null;
  readonly ignorePresent: boolean;
}

/** A vehicle of which a question tells facts and nothing else. */
export function asRecorded(
  told: Pick<VehicleInput, 'vehicle' | 'facts'>,
): Omit<VehicleInput, keyof NamingInput> {
  return {
    ...told,
    units: 'recorded',
    fitted: {},
    adapters: {},
    measured: [],
    torque: null,
    use: null,
    ignorePresent: false,
  };
}

export interface Torque {
  readonly interval: Interval;
  readonly text: string;
}

/** The vehicle of a question, with what the question knows of it. */
export function vehicleOf(
  edition: Edition,
  {
    vehicle: id,
    facts: told,
    lang,
    guesses = true,
  }: Pick<VehicleInput, 'vehicle' | 'facts' | 'lang' | 'guesses'>,
  faults: Faults,
  at = 'vehicle',
): Vehicle | null {
  const { catalogue } = edition;
  const facts = factsOf(catalogue, told, faults);
  const vehicle = checkOne(catalogue.vehicles, 'vehicle', { id, at, guesses }, faults);
  if (vehicle === undefined) return null;
  if (vehicle.replacedBy.length === 0) return withFacts(vehicle, facts);
  addReplaced(edition, vehicle, { at, lang, facts }, faults);
  return null;
}

/** What a question says of facts, resolved. */
export function factsOf(
  catalogue: Catalogue,
  facts: VehicleInput['facts'],
  faults: Faults,
): Map<string, string> {
  const said = new Map<string, string>();
  for (const [id, value] of Object.entries(facts)) {
    const fact = catalogue.facts.get(id);
    if (fact === undefined) {
      const meant = nearest(id, catalogue.facts.keys());
      faults.add(`facts.${id}`, 'unknown-fact', { name: id, meant });
    } else if (!fact.values.has(value)) {
      const meant = nearest(value, fact.values.keys());
      faults.add(`facts.${id}`, 'not-a-value-of-fact', { fact: id, value, meant });
    } else said.set(id, value);
  }
  return said;
}

export function positionOf(
  vehicle: Vehicle,
  id: string,
  at: string,
  faults: Faults,
): Position | null {
  const { positions } = vehicle.layout;
  const position = positions.get(id);
  if (position !== undefined) return position;
  const meant = nearest(id, positions.keys());
  faults.add(at, 'unknown-position', { vehicle: vehicle.id, name: id, meant });
  return null;
}

/** The names of parts that a question about a vehicle has in these fields. */
export function namesIn({
  fitted,
  adapters,
  measured,
}: Pick<VehicleInput, 'fitted' | 'adapters' | 'measured'>): string[] {
  const found = measured.flatMap(({ on, value }) =>
    isOfPlace(on) && typeof value === 'string' ? value : [],
  );
  const seated = [...Object.values(fitted).flatMap(eachOf), ...found];
  return [
    ...seated.filter((word) => !WORDS.has(word)),
    ...Object.values(adapters).flat(),
    ...measured.flatMap(({ on }) => on.part ?? []),
  ];
}

/** Whether it is of what stands at a position, and not of a value or a fact. */
export function isOfPlace({ position, part, interface: face, parameter, fact }: MeasuredOn) {
  return position !== null && [part, face, parameter, fact].every((one) => one === null);
}

/** What stands there without being a part. */
const WORDS: ReadonlySet<string> = new Set(['none', 'unknown']);

/** One name, or that of each hand. */
export function eachOf(names: FittedInput): string[] {
  return typeof names === 'string' ? [names] : [names.left, names.right];
}

/** What the question says is on the vehicle, resolved. */
export function saidOf(
  parts: AskedParts,
  vehicle: Vehicle,
  input: Pick<VehicleInput, 'fitted' | 'adapters'>,
  faults: Faults,
): Said {
  const seats = new Map<string, Seats>();
  for (const [id, fitted] of Object.entries(input.fitted)) {
    const at = `fitted.${id}`;
    const position = positionOf(vehicle, id, at, faults);
    if (position === null) continue;
    const said = seatsOf(parts, position, fitted, at, faults);
    if (said !== null) placeSaid(seats, parts, vehicle, id, said);
  }
  return { seats, adapters: saidAdapters(parts, vehicle, input.adapters, faults) };
}

/** A part that spans positions is in all of them, unless the question says otherwise. */
export function placeSaid(
  seats: Map<string, Seats>,
  { catalogue }: AskedParts,
  vehicle: Vehicle,
  id: string,
  said: Seats,
): void {
  seats.set(id, said);
  if (said.hands || said.seat.occupant.is !== 'part') return;
  const spans = catalogue.parts.get(said.seat.occupant.part)?.spans ?? [];
  if (!spans.includes(id)) return;
  for (const other of spans) {
    if (vehicle.layout.positions.has(other) && !seats.has(other)) seats.set(other, said);
  }
}

function seatsOf(
  parts: AskedParts,
  position: Position,
  fitted: FittedInput,
  at: string,
  faults: Faults,
): Seats | null {
  if (typeof fitted !== 'string') {
    if (!position.isHanded) {
      faults.add(at, 'not-handed', { position: position.id });
      return null;
    }
    const left = seatOf(parts, fitted.left, `${at}.left`);
    const right = seatOf(parts, fitted.right, `${at}.right`);
    return left === null || right === null ? null : { hands: true, left, right };
  }
  const seat = seatOf(parts, fitted, at);
  if (seat === null) return null;
  return position.isHanded ? { hands: true, left: seat, right: seat } : { hands: false, seat };
}

/** What one word says to stand somewhere; null where it has a fault. */
export function seatOf(parts: AskedParts, word: string, at: string): Seat | null {
  const origin = 'said';
  if (word === 'none') return { occupant: { is: 'empty' }, origin };
  if (word === 'unknown') return { occupant: { is: 'as-found' }, origin };
  if (donorArticles(parts.catalogue).has(word)) {
    return { occupant: { is: 'part', part: word }, origin };
  }
  const part = parts.part(word, at);
  return part === null ? null : { occupant: { is: 'part', part: part.id }, origin };
}

export function saidAdapters(
  parts: AskedParts,
  vehicle: Vehicle,
  input: Readonly<Record<string, readonly string[]>>,
  faults: Faults,
): Map<string, Adapters> {
  const adapters = new Map<string, Adapters>();
  for (const [id, names] of Object.entries(input)) {
    const at = `adapters.${id}`;
    const mating = vehicle.layout.matings.get(id);
    if (mating === undefined) {
      const meant = nearest(id, vehicle.layout.matings.keys());
      faults.add(at, 'unknown-mating', { vehicle: vehicle.id, name: id, meant });
      continue;
    }
    if (names.length > mating.adapters) {
      faults.add(at, 'too-many-adapters', { mating: id, most: mating.adapters });
    }
    const found = names.map((name, index) => parts.adapter(name, `${at}.${index}`)?.id ?? '');
    adapters.set(id, { parts: found, origin: 'said' });
  }
  return adapters;
}

/** The torque that a question names, such as "400 N.m"; it is taken as exact. */
export function torqueOf(text: string | null, faults: Faults): Torque | null {
  if (text === null) return null;
  const read = parseQuantity(text, { type: 'designation', dimension: 'torque' });
  if (isFault(read)) {
    const { code: because, text } = read;
    faults.add('torque', 'not-a-torque', { because, text, lang: FAULT_LANGUAGE });
    return null;
  }
  const { low } = read.interval;
  if (low !== null && sign(low) < 0) {
    faults.add('torque', 'negative-torque', {});
    return null;
  }
  return { interval: read.interval, text: read.text };
}
