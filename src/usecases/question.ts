/**
 * What questions have in common: naming a vehicle, parts, places and what is fitted. Every
 * fault of a question is said at once, at the field that has it.
 */

import type { Catalogue, Part, Position, Vehicle } from '../domain/catalogue/catalogue.js';
import { FAULT_LANGUAGE, nearest } from '../domain/catalogue/faults.js';
import type { Use } from '../domain/check/coupling.js';
import type { Adapters, Seat, Seats } from '../domain/judge/configuration.js';
import type { Said } from '../domain/judge/fit.js';
import { withFacts } from '../domain/judge/told-facts.js';
import { articleOf, type WorkReason, withArticles } from '../domain/judge/worked-part.js';
import type { Interval } from '../domain/quantity/interval.js';
import { isFault, parseQuantity } from '../domain/quantity/quantity.js';
import { sign } from '../domain/quantity/rational.js';
import type { ShownUnits } from '../domain/quantity/unit.js';
import { QuestionError } from './errors.js';
import type { QuestionFault, QuestionFaultCode, QuestionFaultData } from './question-fault.js';

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

export interface VehicleInput extends ValuesInput {
  readonly vehicle: string;
  readonly fitted: Readonly<Record<string, FittedInput>>;
  /** Adapters on matings, in a row. */
  readonly adapters: Readonly<Record<string, readonly string[]>>;
  /** What is known of this vehicle, by fact. */
  readonly facts: Readonly<Record<string, string>>;
  readonly torque: string | null;
  readonly use: Use | null;
  readonly ignorePresent: boolean;
}

export interface Torque {
  readonly interval: Interval;
  readonly text: string;
}

/** Collects faults, to throw one error that names them all. */
export class Faults {
  readonly #found: QuestionFault[] = [];

  add<Code extends QuestionFaultCode>(
    at: string | null,
    code: Code,
    data: QuestionFaultData[Code],
  ): void {
    // The compiler does not see that code and data of one call belong together.
    this.#found.push({ at, code, data } as QuestionFault);
  }

  endIfAny(): void {
    if (this.#found.length > 0) this.end();
  }

  /** Throws all faults as one. */
  end(): never {
    const [first, ...others] = this.#found;
    if (first === undefined) throw new Error('a question ends early only for a fault');
    throw new QuestionError([first, ...others]);
  }
}

/** The vehicle of a question, with what the question knows of it. */
export function vehicleOf(
  catalogue: Catalogue,
  { vehicle: id, facts }: Pick<VehicleInput, 'vehicle' | 'facts'>,
  faults: Faults,
): Vehicle | null {
  const vehicle = catalogue.vehicles.get(id);
  const said = factsOf(catalogue, facts, faults);
  if (vehicle !== undefined) return withFacts(vehicle, said);
  const meant = nearest(id, catalogue.vehicles.keys());
  faults.add('vehicle', 'unknown-vehicle', { name: id, meant });
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

export function partOf(catalogue: Catalogue, id: string, at: string, faults: Faults): Part | null {
  const part = catalogue.parts.get(id);
  if (part !== undefined) return part;
  addArticleFault(catalogue, id, at, faults);
  return null;
}

/** What is wrong with the name of a part, or of one that is worked: `hub-a+redrill`. */
function addArticleFault(catalogue: Catalogue, id: string, at: string, faults: Faults): void {
  const { fault } = articleOf(id, catalogue);
  if (fault === null) throw new Error(`"${id}" is an article, but not in the catalogue asked`);
  if (fault.code === 'work-not-for-part') {
    addWorkFault(fault.work.id, fault.reason, at, faults);
    return;
  }
  const { name } = fault;
  if (fault.code === 'unknown-work') {
    faults.add(at, 'unknown-work', { name, meant: nearest(name, catalogue.works.keys()) });
    return;
  }
  // A plus sign in a URL is a space.
  const written = name.replaceAll(' ', '+');
  if (written !== name && articleOf(written, catalogue).part) {
    faults.add(at, 'plus-read-as-space', { name, meant: written });
  } else {
    faults.add(at, 'unknown-part', { name, meant: nearest(name, catalogue.parts.keys()) });
  }
}

function addWorkFault(work: string, reason: WorkReason, at: string, faults: Faults): void {
  switch (reason.code) {
    case 'not-for-this-part':
      faults.add(at, 'work-not-for-part', { work });
      return;
    case 'not-known-to-apply':
      faults.add(at, 'work-may-not-apply', { work });
      return;
    case 'nothing-to-change':
      faults.add(at, 'work-changes-nothing', { work, what: reason.what });
  }
}

/** The catalogue with the worked parts that a question about a vehicle names. */
export function askedCatalogue(
  catalogue: Catalogue,
  { fitted, adapters }: Pick<VehicleInput, 'fitted' | 'adapters'>,
  others: readonly (string | { readonly left: string; readonly right: string })[] = [],
): Catalogue {
  const named = [...Object.values(fitted), ...others].flatMap((one) =>
    typeof one === 'string' ? [one] : [one.left, one.right],
  );
  return withArticles(catalogue, [...named, ...Object.values(adapters).flat()]);
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

/** What the question says is on the vehicle, resolved. */
export function saidOf(
  catalogue: Catalogue,
  vehicle: Vehicle,
  input: Pick<VehicleInput, 'fitted' | 'adapters'>,
  faults: Faults,
): Said {
  const seats = new Map<string, Seats>();
  for (const [id, fitted] of Object.entries(input.fitted)) {
    const at = `fitted.${id}`;
    const position = positionOf(vehicle, id, at, faults);
    if (position === null) continue;
    const said = seatsOf(catalogue, position, fitted, at, faults);
    if (said !== null) placeSaid(seats, catalogue, vehicle, id, said);
  }
  return { seats, adapters: saidAdapters(catalogue, vehicle, input.adapters, faults) };
}

/** A part that spans positions is in all of them, unless the question says otherwise. */
function placeSaid(
  seats: Map<string, Seats>,
  catalogue: Catalogue,
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
  catalogue: Catalogue,
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
    const left = seatOf(catalogue, fitted.left, `${at}.left`, faults);
    const right = seatOf(catalogue, fitted.right, `${at}.right`, faults);
    return left === null || right === null ? null : { hands: true, left, right };
  }
  const seat = seatOf(catalogue, fitted, at, faults);
  if (seat === null) return null;
  return position.isHanded ? { hands: true, left: seat, right: seat } : { hands: false, seat };
}

function seatOf(catalogue: Catalogue, word: string, at: string, faults: Faults): Seat | null {
  const origin = 'said';
  if (word === 'none') return { occupant: { is: 'empty' }, origin };
  if (word === 'unknown') return { occupant: { is: 'as-found' }, origin };
  const part = partOf(catalogue, word, at, faults);
  return part === null ? null : { occupant: { is: 'part', part: part.id }, origin };
}

function saidAdapters(
  catalogue: Catalogue,
  vehicle: Vehicle,
  input: Readonly<Record<string, readonly string[]>>,
  faults: Faults,
): Map<string, Adapters> {
  const adapters = new Map<string, Adapters>();
  for (const [id, parts] of Object.entries(input)) {
    const at = `adapters.${id}`;
    const mating = vehicle.layout.matings.get(id);
    if (mating === undefined) {
      const meant = nearest(id, vehicle.layout.matings.keys());
      faults.add(at, 'unknown-mating', { vehicle: vehicle.id, name: id, meant });
      continue;
    }
    if (parts.length > mating.adapters) {
      faults.add(at, 'too-many-adapters', { mating: id, most: mating.adapters });
    }
    for (const part of parts) checkAdapter(catalogue, part, at, faults);
    adapters.set(id, { parts, origin: 'said' });
  }
  return adapters;
}

export function checkAdapter(catalogue: Catalogue, id: string, at: string, faults: Faults): void {
  const part = partOf(catalogue, id, at, faults);
  if (part === null || part.faces.size === 2) return;
  faults.add(at, 'not-an-adapter', { part: id });
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
