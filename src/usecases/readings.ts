/**
 * What a question says was measured or found out: values that stand in place of the recorded ones,
 * for this question alone, as first-hand as a record of the catalogue that somebody measured; facts
 * of the vehicle; and parts that nobody had identified.
 *
 * A value is of an article, wherever it is named by the question: what is read on the one piece of
 * this vehicle is taken for all pieces of that article. What stands at a position is as if `fitted`
 * said it, and wins over that: it was found out since.
 */

import type { Catalogue, Part, Vehicle } from '../domain/catalogue/catalogue.js';
import type { ValueRecord } from '../domain/catalogue/document.js';
import { FAULT_LANGUAGE, nearest } from '../domain/catalogue/faults.js';
import { type LaidReading, withReading } from '../domain/catalogue/laid-reading.js';
import {
  asBuilt,
  handsOf,
  overlay,
  type Seat,
  sameOccupant,
  seatAt,
} from '../domain/judge/configuration.js';
import type { Said } from '../domain/judge/fit.js';
import type { AskedReading } from './asked-kit.js';
import type { AskedParts } from './asked-parts.js';
import type { Faults } from './faults.js';
import {
  isOfPlace,
  type MeasuredInput,
  placeSaid,
  positionOf,
  saidOf,
  seatOf,
  type VehicleInput,
} from './question.js';
import { faultList } from './quoted-faults.js';
import { checkOne } from './read-one.js';

/** What a question knows of its vehicle and of parts. */
export interface Known {
  readonly said: Said;
  /** With the parts as they were measured. */
  readonly catalogue: Catalogue;
  /** What was measured, in its one form; facts are beside it. */
  readonly measured: readonly AskedReading[];
}

interface Place {
  readonly parts: AskedParts;
  readonly vehicle: Vehicle;
  readonly faults: Faults;
}

export function knownOf(
  place: Place,
  input: Pick<VehicleInput, 'fitted' | 'adapters' | 'measured'>,
): Known {
  const { parts, vehicle, faults } = place;
  const { said, asked } = identified(input.measured, saidOf(parts, vehicle, input, faults), place);
  const laid = readingsOf(input.measured, said, place);
  const measured = [...asked, ...laid.asked];
  return { said, catalogue: parts.laidOver(laid.parts), measured };
}

/** What was found out of facts of the vehicle; those that there are not, are faults. */
export function factsMeasured(
  catalogue: Catalogue,
  measured: readonly MeasuredInput[],
  faults: Faults,
): Record<string, string> {
  const told = new Map<string, string>();
  for (const [index, { on, value }] of measured.entries()) {
    const { fact: id } = on;
    const at = `measured.${index}`;
    if (id === null) continue;
    if (typeof value !== 'string') {
      faults.add(at, 'reading-of-nothing', {});
      continue;
    }
    const fact = checkOne(catalogue.facts, 'fact', { id, at: `${at}.on.fact` }, faults);
    if (fact === undefined) continue;
    if (!fact.values.has(value)) {
      const meant = nearest(value, fact.values.keys());
      faults.add(`${at}.value`, 'not-a-value-of-fact', { fact: id, value, meant });
    } else if ((told.get(id) ?? value) !== value) faults.add(at, 'measured-twice', {});
    else told.set(id, value);
  }
  return Object.fromEntries(told);
}

/** What is on the vehicle, with the parts that were identified since. */
function identified(
  measured: readonly MeasuredInput[],
  said: Said,
  { parts, vehicle, faults }: Place,
): { said: Said; asked: AskedReading[] } {
  const seats = new Map(said.seats);
  const found = new Map<string, Seat>();
  const asked: AskedReading[] = [];
  for (const [index, { on, value }] of measured.entries()) {
    const at = `measured.${index}`;
    const { position: id, hand } = on;
    if (id === null || !isOfPlace(on)) continue;
    const position = positionOf(vehicle, id, `${at}.on.position`, faults);
    if (position === null) continue;
    if (hand !== null && !position.isHanded) {
      faults.add(`${at}.on.hand`, 'not-handed', { position: id });
      continue;
    }
    if (typeof value !== 'string' || value === 'unknown') {
      faults.add(`${at}.value`, 'reading-of-no-part', {});
      continue;
    }
    const seat = seatOf(parts, value, `${at}.value`);
    if (seat === null) continue;
    const pieces = (hand === null ? handsOf(position) : [hand]).map((one) => `${id}:${one}`);
    if (pieces.some((piece) => isOther(found.get(piece), seat))) {
      faults.add(at, 'measured-twice', {});
      continue;
    }
    for (const piece of pieces) found.set(piece, seat);
    const before = seats.get(id) ?? asBuilt(vehicle).seats.get(id);
    const here = before?.hands
      ? { ...before, ...byHand(hand, seat) }
      : ({ hands: false, seat } as const);
    placeSaid(seats, parts, vehicle, id, here);
    const { occupant } = seat;
    const own = occupant.is === 'part' ? occupant.part : 'none';
    asked.push({ on: { position: id, ...(hand === null ? {} : { hand }) }, value: own });
  }
  return { said: { ...said, seats }, asked };
}

function byHand(hand: 'left' | 'right' | null, seat: Seat) {
  return hand === null ? { left: seat, right: seat } : { [hand]: seat };
}

function isOther(one: Seat | undefined, { occupant }: Seat): boolean {
  return one !== undefined && !sameOccupant(one.occupant, occupant);
}

/** The measured parts as they then are, by id. */
function readingsOf(
  inputs: readonly MeasuredInput[],
  said: Said,
  place: Place,
): { parts: Map<string, Part>; asked: AskedReading[] } {
  const laid = new Map<string, Part>();
  const values = new Map<string, string>();
  const asked: AskedReading[] = [];
  for (const [index, input] of inputs.entries()) {
    const { on, value, tool } = input;
    const at = `measured.${index}`;
    if (on.fact !== null || isOfPlace(on)) continue;
    const named = partOf(input, at, said, place);
    const { parameter, interface: face } = on;
    if (named === null || parameter === null) {
      if (parameter === null) place.faults.add(at, 'reading-of-nothing', {});
      continue;
    }
    const part = laid.get(named.id) ?? named;
    if (face !== null && !hasFace(part, face, at, place.faults)) continue;
    const record = recordOf(value, tool);
    const read = laidOver(part, { interface: face, parameter, record }, at, place);
    if (read === null) continue;
    const [name, text] = [JSON.stringify([part.id, face, parameter]), JSON.stringify(record)];
    // Of one article, whichever piece was read.
    if ((values.get(name) ?? text) !== text) place.faults.add(at, 'measured-twice', {});
    values.set(name, text);
    laid.set(part.id, read);
    const of = { part: part.id, ...(face === null ? {} : { interface: face }), parameter };
    const own = typeof value === 'string' ? value : [...value];
    asked.push({ on: of, value: own, ...(tool === null ? {} : { tool }) });
  }
  return { parts: laid, asked };
}

function recordOf(value: MeasuredInput['value'], tool: string | null): ValueRecord {
  return tool === null ? value : { is: value, tool };
}

/** The part that was measured: the one that is named, else the one that stands at the place. */
function partOf(
  { on: { part, position: id, hand } }: MeasuredInput,
  at: string,
  said: Said,
  { parts, vehicle, faults }: Place,
): Part | null {
  if (part !== null) return parts.part(part, `${at}.on.part`);
  if (id === null) {
    faults.add(at, 'reading-of-nothing', {});
    return null;
  }
  if (positionOf(vehicle, id, `${at}.on.position`, faults) === null) return null;
  const present = overlay(asBuilt(vehicle), said.seats);
  const hands = hand === null ? (['left', 'right'] as const) : [hand];
  const found = hands.map((one) => seatAt(present, id, one)?.occupant);
  const ids = new Set(found.map((one) => (one?.is === 'part' ? one.part : null)));
  const [only = null, ...others] = ids;
  if (others.length > 0) faults.add(`${at}.on`, 'which-hand', { position: id });
  else if (only === null) faults.add(`${at}.on.position`, 'no-part-there', { position: id });
  return others.length > 0 || only === null ? null : (parts.catalogue.parts.get(only) ?? null);
}

function hasFace({ id, faces }: Part, name: string, at: string, faults: Faults): boolean {
  const face = faces.get(name);
  if (face !== undefined && face.kind !== null) return true;
  const meant = nearest(name, faces.keys());
  faults.add(`${at}.on.interface`, 'unknown-interface', { part: id, name, meant });
  return false;
}

function laidOver(
  part: Part,
  reading: LaidReading,
  at: string,
  { parts: { catalogue }, faults }: Place,
): Part | null {
  const list = faultList();
  const read = withReading(part, reading, catalogue, list);
  for (const { code: because, text } of list.faults) {
    faults.add(`${at}.value`, 'reading-at-fault', { because, text, lang: FAULT_LANGUAGE });
  }
  // A name that no value can have is passed over by whoever reads records.
  if (read === null && list.isClean) faults.add(at, 'reading-of-nothing', {});
  return read;
}
