/**
 * Compiles vehicles, and the statements that speak of them.
 */

import type {
  Evidence,
  Fact,
  FittedHere,
  Layout,
  Occupant,
  Part,
  Position,
  Statement,
  Vehicle,
} from './catalogue.js';
import type { FittedAdapters, FittedRecord, StatementRecord, VehicleRecord } from './document.js';
import { at, type FaultList, hint } from './faults.js';

export interface VehicleNames {
  readonly layouts: ReadonlyMap<string, Layout>;
  readonly layoutIds: ReadonlySet<string>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly partIds: ReadonlySet<string>;
  readonly facts: ReadonlyMap<string, Fact>;
}

export function compileVehicle(
  record: VehicleRecord,
  names: VehicleNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Vehicle | null {
  const layout = names.layouts.get(record.layout);
  if (layout === undefined) {
    if (!names.layoutIds.has(record.layout)) {
      const text = `There is no layout "${record.layout}".${hint(record.layout, names.layoutIds)}`;
      list.fault(at(pointer, 'layout'), 'unknown-layout', text);
    }
    return null;
  }
  const { id, make, model } = record;
  const place = at(pointer, 'fitted');
  const [from = null, until = null] = record.built ?? [];
  if (from !== null && until !== null && from > until) {
    list.fault(at(pointer, 'built'), 'empty-range', 'The first month comes first.');
  }
  const { matings = {}, ...fitted } = record.fitted;
  return {
    id,
    make,
    model,
    variant: record.variant ?? null,
    built: [from, until],
    facts: compileFacts(record, names, at(pointer, 'facts'), list),
    layout,
    evidence: { ...inherited, ...record.evidence },
    fitted: compileFitted(fitted as Record<string, FittedRecord>, layout, names, place, list),
    adapters: compileAdapters(matings as FittedAdapters, layout, names, at(place, 'matings'), list),
  };
}

function compileFacts(
  record: VehicleRecord,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, string> {
  const facts = new Map<string, string>();
  for (const [id, value] of Object.entries(record.facts ?? {})) {
    const fact = names.facts.get(id);
    if (fact === undefined) {
      const text = `There is no fact "${id}".${hint(id, names.facts.keys())}`;
      list.fault(at(pointer, id), 'unknown-fact', text);
    } else if (!fact.values.has(value)) {
      const text = `"${id}" cannot be "${value}".${hint(value, fact.values.keys())}`;
      list.fault(at(pointer, id), 'unknown-value', text);
    } else facts.set(id, value);
  }
  return facts;
}

function compileFitted(
  records: Readonly<Record<string, FittedRecord>>,
  layout: Layout,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, FittedHere> {
  const fitted = new Map<string, FittedHere>();
  for (const [id, raw] of Object.entries(records)) {
    const place = at(pointer, id);
    const position = layout.positions.get(id);
    if (position === undefined) {
      const text = `"${layout.id}" has no position "${id}".${hint(id, layout.positions.keys())}`;
      list.fault(place, 'unknown-position', text);
      continue;
    }
    const here = compileFittedHere(raw, position, names, place, list);
    if (here !== null) fitted.set(id, here);
  }
  checkSpans(fitted, layout, names, pointer, list);
  return fitted;
}

function compileFittedHere(
  raw: FittedRecord,
  position: Position,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): FittedHere | null {
  const isPair = typeof raw === 'object' && raw !== null;
  if (isPair && !position.isHanded) {
    const text = `"${position.id}" has no left and right; name one part.`;
    list.fault(pointer, 'not-handed', text);
    return null;
  }
  const read = (part: string | null, place: string, hand: 'left' | 'right' | null) =>
    compileOccupant(part, position, hand, names, place, list);
  if (!position.isHanded) {
    const occupant = read(raw as string | null, pointer, null);
    return occupant === null ? null : { hands: false, occupant };
  }
  const left = read(isPair ? raw.left : raw, isPair ? at(pointer, 'left') : pointer, 'left');
  const right = read(isPair ? raw.right : raw, isPair ? at(pointer, 'right') : pointer, 'right');
  return left === null || right === null ? null : { hands: true, left, right };
}

function compileOccupant(
  id: string | null,
  position: Position,
  hand: 'left' | 'right' | null,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Occupant | null {
  if (id === null) return { is: 'empty' };
  const part = names.parts.get(id);
  if (part === undefined) {
    if (!names.partIds.has(id)) {
      const text = `There is no part "${id}".${hint(id, names.partIds)}`;
      list.fault(pointer, 'unknown-part', text);
    }
    return null;
  }
  if (!part.roles.some((role) => position.roles.includes(role))) {
    const wanted = position.roles.map((role) => `"${role}"`).join(' or ');
    const text = `"${id}" is no ${wanted}, so it cannot stand at "${position.id}".`;
    list.fault(pointer, 'wrong-role', text);
  } else if (hand !== null && part.hand !== null && part.hand !== hand) {
    list.fault(pointer, 'wrong-hand', `"${id}" is made for the ${part.hand} side.`);
  }
  return { is: 'part', part: id };
}

/** A part that spans positions fills all of them. */
function checkSpans(
  fitted: ReadonlyMap<string, FittedHere>,
  layout: Layout,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): void {
  for (const [id, here] of fitted) {
    const occupant = here.hands ? here.left : here.occupant;
    if (occupant.is !== 'part') continue;
    const spans = names.parts.get(occupant.part)?.spans ?? null;
    if (spans === null || !spans.includes(id)) continue;
    for (const other of spans) {
      if (!layout.positions.has(other)) {
        const text = `"${occupant.part}" also fills "${other}", which "${layout.id}" lacks.`;
        list.fault(at(pointer, id), 'unknown-position', text);
        continue;
      }
      const there = fitted.get(other);
      const same = there !== undefined && !there.hands && there.occupant.is === 'part';
      if (same && there.occupant.part === occupant.part) continue;
      const text = `"${occupant.part}" fills "${other}" too; name it there as well.`;
      list.fault(at(pointer, id), 'span-not-filled', text);
    }
  }
}

function compileAdapters(
  records: FittedAdapters,
  layout: Layout,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, readonly string[]> {
  const adapters = new Map<string, readonly string[]>();
  for (const [id, raw] of Object.entries(records)) {
    const place = at(pointer, id);
    const mating = layout.matings.get(id);
    if (mating === undefined) {
      const text = `"${layout.id}" has no mating "${id}".${hint(id, layout.matings.keys())}`;
      list.fault(place, 'unknown-mating', text);
      continue;
    }
    const parts = typeof raw === 'string' ? [raw] : raw;
    if (parts.length > mating.adapters) {
      const text = `"${id}" takes ${mating.adapters} adapters in a row at most.`;
      list.fault(place, 'too-many-adapters', text);
    }
    for (const part of parts) {
      const faces = names.parts.get(part)?.faces.size;
      if (!names.partIds.has(part)) {
        const text = `There is no part "${part}".${hint(part, names.partIds)}`;
        list.fault(place, 'unknown-part', text);
      } else if (faces !== undefined && faces !== 2) {
        list.fault(place, 'not-an-adapter', `"${part}" is no adapter: it has not two faces.`);
      }
    }
    adapters.set(id, parts);
  }
  return adapters;
}

export function compileStatement(
  record: StatementRecord,
  names: VehicleNames & {
    readonly vehicles: ReadonlyMap<string, Vehicle>;
    readonly vehicleIds: ReadonlySet<string>;
  },
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Statement {
  const { id, part, vehicles, position, verdict } = record;
  const companions = new Map(Object.entries(record.with ?? {}));
  if (!names.partIds.has(part)) {
    const text = `There is no part "${part}".${hint(part, names.partIds)}`;
    list.fault(at(pointer, 'part'), 'unknown-part', text);
  }
  for (const [index, vehicle] of vehicles.entries()) {
    const place = at(at(pointer, 'vehicles'), index);
    if (!names.vehicleIds.has(vehicle)) {
      const text = `There is no vehicle "${vehicle}".${hint(vehicle, names.vehicleIds)}`;
      list.fault(place, 'unknown-vehicle', text);
      continue;
    }
    const layout = names.vehicles.get(vehicle)?.layout;
    if (layout === undefined) continue;
    for (const [key, place_] of [
      [position, at(pointer, 'position')],
      ...[...companions.keys()].map((other) => [other, at(at(pointer, 'with'), other)]),
    ] as [string, string][]) {
      if (layout.positions.has(key)) continue;
      const text = `"${vehicle}" has no position "${key}".${hint(key, layout.positions.keys())}`;
      list.fault(place_, 'unknown-position', text);
    }
  }
  for (const [key, other] of companions) {
    if (names.partIds.has(other)) continue;
    const text = `There is no part "${other}".${hint(other, names.partIds)}`;
    list.fault(at(at(pointer, 'with'), key), 'unknown-part', text);
  }
  const evidence = { ...inherited, ...record.evidence };
  return { id, part, vehicles, position, with: companions, verdict, evidence };
}
