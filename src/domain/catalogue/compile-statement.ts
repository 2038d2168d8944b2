/**
 * Compiles statements: what a maker or a shop asserts of a part at a position of vehicles.
 */

import type { Evidence, Layout, Statement, Vehicle } from './catalogue.js';
import { checkRole } from './compile-fitted.js';
import type { VehicleNames } from './compile-vehicle.js';
import type { StatementRecord } from './document.js';
import { evidenceWithin } from './evidence-within.js';
import { at, type FaultList, quoted } from './faults.js';
import { namedEntries, present } from './holes.js';
import { inside } from './lost-names.js';

export interface StatementNames extends VehicleNames {
  readonly vehicles: ReadonlyMap<string, Vehicle>;
  readonly vehicleIds: ReadonlySet<string>;
}

export function compileStatement(
  record: StatementRecord,
  names: StatementNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Statement {
  const { id, part, position, verdict } = record;
  checkPart(part, names, at(pointer, 'part'), list);
  const layouts = compileVehicles(record, names, at(pointer, 'vehicles'), list);
  const companions = new Map<string, string>();
  const places: PlacedPart[] = [{ position, part, pointer: at(pointer, 'position') }];
  for (const [key, other = '', place] of namedEntries(record.with ?? {}, at(pointer, 'with'))) {
    checkPart(other, names, place, list);
    companions.set(key, other);
    places.push({ position: key, part: other, pointer: place });
  }
  for (const placed of places) checkPlaces(placed, layouts, names, list);
  const vehicles = [...present(record.vehicles, '')].map(([vehicle]) => vehicle);
  const evidence = evidenceWithin(inherited, record.evidence);
  return { id, part, vehicles, position, with: companions, verdict, evidence };
}

interface PlacedPart {
  readonly position: string;
  readonly part: string;
  readonly pointer: string;
}

function checkPart(part: string, names: StatementNames, pointer: string, list: FaultList): void {
  if (names.partIds.has(part)) return;
  list.unknown(part, { sort: 'parts', pointer, known: names.partIds });
}

/** The layouts of the vehicles, each once. */
function compileVehicles(
  record: StatementRecord,
  names: StatementNames,
  pointer: string,
  list: FaultList,
): Set<Layout> {
  const layouts = new Set<Layout>();
  for (const [vehicle, place] of present(record.vehicles, pointer)) {
    if (!names.vehicleIds.has(vehicle)) {
      list.unknown(vehicle, { sort: 'vehicles', pointer: place, known: names.vehicleIds });
    }
    const layout = names.vehicles.get(vehicle)?.layout;
    if (layout !== undefined) layouts.add(layout);
  }
  return layouts;
}

/** Each vehicle has the position, and the part may stand there. */
function checkPlaces(
  { position: id, part, pointer }: PlacedPart,
  layouts: ReadonlySet<Layout>,
  names: StatementNames,
  list: FaultList,
): void {
  const stated = names.parts.get(part);
  for (const layout of layouts) {
    const position = layout.positions.get(id);
    const before = list.faults.length;
    if (position === undefined) {
      const text = `"${layout.id}" has no position ${quoted(id)}.`;
      const space = inside('layouts', layout.id, 'positions');
      const known = layout.positions.keys();
      list.unknown(id, { sort: 'positions', space, pointer, known, text });
    } else if (stated !== undefined) checkRole(stated, position, layout, pointer, list);
    // One fault for one place: of the other layouts the same would be said.
    if (list.faults.length > before) return;
  }
}
