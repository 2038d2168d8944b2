/**
 * Compiles vehicles: what the works fitted where, in the words of their layout.
 */

import type {
  Evidence,
  Fact,
  FittedHere,
  Layout,
  Occupant,
  Part,
  Position,
  Vehicle,
} from './catalogue.js';
import { checkMonths } from './compile-part.js';
import type { FittedAdapters, FittedRecord, VehicleRecord } from './document.js';
import { at, type FaultList } from './faults.js';
import { namedEntries, present } from './holes.js';
import { inside } from './lost-names.js';

export interface VehicleNames {
  readonly layouts: ReadonlyMap<string, Layout>;
  readonly layoutIds: ReadonlySet<string>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly partIds: ReadonlySet<string>;
  readonly facts: ReadonlyMap<string, Fact>;
}

/** Null where its layout cannot be used; what does not hang on the layout is looked at even so. */
export function compileVehicle(
  record: VehicleRecord,
  names: VehicleNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Vehicle | null {
  const layout = names.layouts.get(record.layout) ?? null;
  if (layout === null && !names.layoutIds.has(record.layout)) {
    const place = at(pointer, 'layout');
    list.unknown(record.layout, { sort: 'layouts', pointer: place, known: names.layoutIds });
  }
  checkMonths(record.built, at(pointer, 'built'), list);
  const { id, make, model, variant = null } = record;
  const place = at(pointer, 'fitted');
  const { matings = {}, ...positions } = record.fitted;
  const facts = compileFacts(record, names, at(pointer, 'facts'), list);
  const records = positions as Readonly<Record<string, FittedRecord>>;
  const fitted = compileFitted(records, layout, names, place, list);
  const adapterRecords = matings as FittedAdapters;
  const adapters = compileAdapters(adapterRecords, layout, names, at(place, 'matings'), list);
  if (layout === null) return null;
  const [from = null, until = null] = record.built ?? [];
  const evidence = { ...inherited, ...record.evidence };
  const built = [from, until] as const;
  return { id, make, model, variant, built, facts, layout, evidence, fitted, adapters };
}

function compileFacts(
  record: VehicleRecord,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, string> {
  const facts = new Map<string, string>();
  for (const [id, value, place] of namedEntries(record.facts ?? {}, pointer)) {
    const fact = names.facts.get(id);
    if (fact === undefined) {
      list.unknown(id, { sort: 'facts', pointer: place, known: names.facts.keys() });
    } else if (value !== undefined && !fact.values.has(value)) {
      const text = `"${id}" cannot be "${value}".`;
      const known = fact.values.keys();
      const space = inside('facts', id, 'values');
      list.unknown(value, { sort: 'values', space, pointer: place, known, text });
    } else if (value !== undefined) facts.set(id, value);
  }
  return facts;
}

function compileFitted(
  records: Readonly<Record<string, FittedRecord>>,
  layout: Layout | null,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, FittedHere> {
  const fitted = new Map<string, FittedHere>();
  for (const [id, raw, place] of namedEntries(records, pointer)) {
    const position = layout?.positions.get(id) ?? null;
    if (layout !== null && position === null) {
      const text = `"${layout.id}" has no position "${id}".`;
      const space = inside('layouts', layout.id, 'positions');
      const known = layout.positions.keys();
      list.unknown(id, { sort: 'positions', space, pointer: place, known, text });
    }
    if (raw === undefined) continue;
    const here = compileFittedHere(raw, position, { ...names, layout }, place, list);
    if (here !== null) fitted.set(id, here);
  }
  if (layout !== null) checkSpans(records, fitted, { ...names, layout }, pointer, list);
  return fitted;
}

interface NamesHere extends VehicleNames {
  readonly layout: Layout | null;
}

/** What stands at a position; where there is no such position, only whether the parts exist. */
function compileFittedHere(
  raw: FittedRecord,
  position: Position | null,
  names: NamesHere,
  pointer: string,
  list: FaultList,
): FittedHere | null {
  const isPair = typeof raw === 'object' && raw !== null;
  const hands = inside('layouts', names.layout?.id ?? '', 'hands');
  const isSaid = position === null || list.lost.has(hands, position.id);
  if (isPair && !isSaid && !position.isHanded) {
    const text = `"${position.id}" has no left and right; name one part.`;
    list.fault(pointer, 'not-handed', text);
  }
  const read = (part: string | null, hand: 'left' | 'right' | null, place = pointer) =>
    compileOccupant(part, position, hand, names, place, list);
  const isHanded = isSaid ? isPair : position.isHanded;
  if (!isPair && !isHanded) {
    const occupant = read(raw, null);
    return occupant === null ? null : { hands: false, occupant };
  }
  const before = list.faults.length;
  const left = isPair ? read(raw.left, 'left', at(pointer, 'left')) : read(raw, 'left');
  // One name for both hands has its faults once.
  if (!isPair && list.faults.length > before) return null;
  const right = isPair ? read(raw.right, 'right', at(pointer, 'right')) : read(raw, 'right');
  return left === null || right === null ? null : { hands: true, left, right };
}

function compileOccupant(
  id: string | null,
  position: Position | null,
  hand: 'left' | 'right' | null,
  names: NamesHere,
  pointer: string,
  list: FaultList,
): Occupant | null {
  if (id === null) return { is: 'empty' };
  const part = names.parts.get(id);
  if (part === undefined) {
    if (!names.partIds.has(id)) {
      list.unknown(id, { sort: 'parts', pointer, known: names.partIds });
    }
    return null;
  }
  if (position === null) return null;
  const isMisplaced = checkRole(part, position, names.layout, pointer, list);
  if (!isMisplaced && hand !== null && part.hand !== null && part.hand !== hand) {
    list.fault(pointer, 'wrong-hand', `"${id}" is made for the ${part.hand} side.`);
  }
  return { is: 'part', part: id };
}

/** Whether a part has none of the roles of a position; says so. */
export function checkRole(
  part: Part,
  position: Position,
  layout: Layout | null,
  pointer: string,
  list: FaultList,
): boolean {
  if (part.roles.some((role) => position.roles.includes(role))) return false;
  const isSaid =
    list.lost.has(inside('layouts', layout?.id ?? '', 'roles'), position.id) ||
    list.lost.hasAny(inside('parts', part.id, 'roles'));
  if (isSaid) return true;
  const wanted = position.roles.map((role) => `"${role}"`).join(' or ');
  const text = `"${part.id}" is no ${wanted}, so it cannot stand at "${position.id}".`;
  list.fault(pointer, 'wrong-role', text);
  return true;
}

/** A part that spans positions fills all of them. */
function checkSpans(
  records: Readonly<Record<string, FittedRecord>>,
  fitted: ReadonlyMap<string, FittedHere>,
  names: VehicleNames & { readonly layout: Layout },
  pointer: string,
  list: FaultList,
): void {
  const { layout } = names;
  for (const [id, here] of fitted) {
    const place = at(pointer, id);
    for (const part of partsOf(here)) {
      const spans = names.parts.get(part)?.spans ?? null;
      if (spans === null || !spans.includes(id)) continue;
      for (const other of spans) {
        if (!layout.positions.has(other)) {
          const text = `"${part}" also fills "${other}", which "${layout.id}" lacks.`;
          const space = inside('layouts', layout.id, 'positions');
          list.unknown(other, { sort: 'positions', space, pointer: place, known: [], text });
          continue;
        }
        const there = fitted.get(other);
        const isUnread = there === undefined && Object.hasOwn(records, other);
        if (isUnread || (there !== undefined && partsOf(there).includes(part))) continue;
        const text = `"${part}" fills "${other}" too; name it there as well.`;
        list.fault(place, 'span-not-filled', text);
      }
    }
  }
}

/** The parts at a position, each once. */
function partsOf(here: FittedHere): string[] {
  const occupants = here.hands ? [here.left, here.right] : [here.occupant];
  const parts = occupants.flatMap((one) => (one.is === 'part' ? [one.part] : []));
  return [...new Set(parts)];
}

function compileAdapters(
  records: FittedAdapters,
  layout: Layout | null,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, readonly string[]> {
  const adapters = new Map<string, readonly string[]>();
  for (const [id, raw = [], place] of namedEntries(records, pointer)) {
    const parts = typeof raw === 'string' ? [[raw, place] as const] : [...present(raw, place)];
    if (layout !== null) checkMating(id, parts.length, layout, place, list);
    for (const [part, partPlace] of parts) checkAdapter(part, names, partPlace, list);
    adapters.set(
      id,
      parts.map(([part]) => part),
    );
  }
  return adapters;
}

function checkMating(
  id: string,
  count: number,
  layout: Layout,
  pointer: string,
  list: FaultList,
): void {
  const mating = layout.matings.get(id);
  if (mating === undefined) {
    const text = `"${layout.id}" has no mating "${id}".`;
    const space = inside('layouts', layout.id, 'matings');
    list.unknown(id, { sort: 'matings', space, pointer, known: layout.matings.keys(), text });
  } else if (
    count > mating.adapters &&
    !list.lost.has(inside('layouts', layout.id, 'adapters'), id)
  ) {
    const most = mating.adapters;
    const text = most === 0 ? 'no adapter' : `not ${count} adapters in a row, but ${most} at most`;
    list.fault(pointer, 'too-many-adapters', `"${id}" takes ${text}.`);
  }
}

/** An adapter is a part with two faces, between which it sits. */
function checkAdapter(id: string, names: VehicleNames, pointer: string, list: FaultList): void {
  const part = names.parts.get(id);
  if (part === undefined) {
    if (names.partIds.has(id)) return;
    list.unknown(id, { sort: 'parts', pointer, known: names.partIds });
  } else if (part.faces.size !== 2 && !list.lost.hasAny(inside('parts', id, 'faces'))) {
    const text = `"${id}" is no adapter: it has ${part.faces.size} faces on record, not two.`;
    list.fault(pointer, 'not-an-adapter', text);
  }
}
