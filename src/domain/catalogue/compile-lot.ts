/**
 * Compiles lots: what is bought whole, out of parts and of what stands on vehicles that are taken
 * apart.
 */

import { ONE } from '../quantity/rational.js';
import { type Amount, readAmount } from './amount.js';
import type { Part, Vehicle } from './catalogue.js';
import type { LotItemRecord, LotRecord } from './document.js';
import { at, type FaultList, quoted } from './faults.js';
import { present } from './holes.js';
import { inside } from './lost-names.js';
import type { Lot, LotItem } from './trade.js';

export interface LotNames {
  readonly parts: ReadonlyMap<string, Part>;
  readonly partIds: ReadonlySet<string>;
  readonly vehicles: ReadonlyMap<string, Vehicle>;
  readonly vehicleIds: ReadonlySet<string>;
}

export function compileLot(
  record: LotRecord,
  names: LotNames,
  pointer: string,
  list: FaultList,
): Lot {
  const contains: LotItem[] = [];
  const places = new Set<string>();
  for (const [item, place] of present(record.contains, at(pointer, 'contains'))) {
    const compiled = compileItem(item, names, place, list);
    if (compiled?.is === 'position') {
      const { vehicle, position } = compiled;
      const key = `${vehicle}/${position}`;
      if (places.has(key)) {
        const text = `There is one "${position}" on "${vehicle}"; it is in this lot already.`;
        list.fault(at(place, 'position'), 'twice-in-lot', text);
      }
      places.add(key);
    }
    if (compiled !== null) contains.push(compiled);
  }
  return { id: record.id, name: record.name ?? null, contains };
}

const ONE_PIECE: Amount = { value: ONE, dimension: '1', text: '1' };

function compileItem(
  item: LotItemRecord,
  names: LotNames,
  pointer: string,
  list: FaultList,
): LotItem | null {
  if ('part' in item) {
    const { part, quantity } = item;
    const isKnown = names.partIds.has(part);
    if (!isKnown) {
      list.unknown(part, { sort: 'parts', pointer: at(pointer, 'part'), known: names.partIds });
    }
    const amount =
      quantity === undefined ? ONE_PIECE : readAmount(quantity, at(pointer, 'quantity'), list);
    return isKnown && amount !== null ? { is: 'part', part, amount } : null;
  }
  const { vehicle: id, position } = item;
  const vehicle = names.vehicles.get(id);
  if (vehicle === undefined) {
    if (!names.vehicleIds.has(id)) {
      const place = at(pointer, 'vehicle');
      list.unknown(id, { sort: 'vehicles', pointer: place, known: names.vehicleIds });
    }
    return null;
  }
  const { layout } = vehicle;
  if (layout.positions.has(position)) return { is: 'position', vehicle: id, position };
  const known = layout.positions.keys();
  const space = inside('layouts', layout.id, 'positions');
  const text = `${quoted(id)} has no position ${quoted(position)}.`;
  const place = at(pointer, 'position');
  list.unknown(position, { sort: 'positions', space, pointer: place, known, text });
  return null;
}
