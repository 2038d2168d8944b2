/**
 * Random vehicles: what the works fitted at each place and in each mating, and what nobody knows.
 */

import fc from 'fast-check';
import type {
  OptionRecord,
  PiecesRecord,
  PositionRecord,
  VehicleRecord,
} from '../../src/domain/catalogue/document.js';
import type { Placed } from '../oracle/scene.js';
import { type Frame, five, PARTS_A_ROLE, type Picked, partsFor } from './small-frame.js';
import { bases, evidenceOf, weighted } from './small-value.js';

/** What stands at a place: a part by number, none, or nobody knows; by hand where there are two. */
export const seatPicks = fc.record({
  is: weighted<'part' | 'empty' | 'unknown'>([12, 'part'], [2, 'empty'], [2, 'unknown']),
  left: fc.nat({ max: PARTS_A_ROLE - 1 }),
  right: fc.nat({ max: PARTS_A_ROLE - 1 }),
  isRightEmpty: weighted([12, false], [1, true]),
});

export const rowPicks = fc.array(fc.nat({ max: 1 }), { maxLength: 2 });

export type SeatPick = Picked<typeof seatPicks>;

/** At one place, what stands there where the trim is x, z, and perhaps y. */
const optionPicks = fc.record({
  place: fc.nat({ max: 4 }),
  x: seatPicks,
  z: seatPicks,
  isYTold: weighted([2, true], [1, false]),
});

export const vehiclePicks = fc.record({
  seats: five(seatPicks),
  rows: five(
    fc.oneof({ weight: 10, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: rowPicks }),
  ),
  basis: bases(),
  trim: weighted<'x' | 'z' | null>([3, 'x'], [2, 'z'], [2, null]),
  options: fc.oneof(
    { weight: 4, arbitrary: fc.constant<Picked<typeof optionPicks>[]>([]) },
    { weight: 1, arbitrary: fc.array(optionPicks, { minLength: 1, maxLength: 2 }) },
  ),
});

export function placedAt(
  pick: SeatPick,
  position: PositionRecord,
  frame: Pick<Frame, 'parts'>,
): Placed {
  if (pick.is === 'unknown') return '?';
  if (pick.is === 'empty') return null;
  const idOf = (index: number, hand: 'left' | 'right' | null): string | null => {
    const parts = partsFor(frame, position, hand);
    return parts[index % Math.max(parts.length, 1)]?.id ?? null;
  };
  if (position.handed !== true) return idOf(pick.left, null);
  const right = pick.isRightEmpty ? null : idOf(pick.right, 'right');
  return { left: idOf(pick.left, 'left'), right };
}

export function rowOf(row: readonly number[]): string[] {
  return row.map((index) => `adapter-${index}`);
}

export function vehicleOf(
  { seats, rows, basis, trim, options }: Picked<typeof vehiclePicks>,
  index: number,
  frame: Frame,
): VehicleRecord {
  const fitted = frame.positions.flatMap((position, at): [string, Placed][] => {
    const seat = seats[at];
    const placed = seat === undefined ? '?' : placedAt(seat, position, frame);
    return placed === '?' ? [] : [[position.id, placed]];
  });
  const adapters = frame.matings.flatMap((mating, at): [string, string[]][] => {
    const row = rows[at] ?? [];
    return row.length === 0 ? [] : [[mating, rowOf(row)]];
  });
  return {
    id: `v${index}`,
    make: 'Marl',
    model: 'Row',
    layout: 'row',
    ...evidenceOf(basis),
    ...(trim === null ? {} : { facts: { trim } }),
    fitted: {
      ...Object.fromEntries(fitted),
      ...Object.fromEntries(options.flatMap((option) => toldByTrim(option, frame))),
      ...(adapters.length === 0 ? {} : { matings: Object.fromEntries(adapters) }),
    },
  };
}

function toldByTrim(
  { place, x, z, isYTold }: Picked<typeof optionPicks>,
  frame: Frame,
): [string, OptionRecord][] {
  const position = frame.positions[place % frame.positions.length];
  if (position === undefined) return [];
  const told = ([value, pick]: readonly [string, SeatPick]): [string, PiecesRecord][] => {
    const placed = placedAt(pick, position, frame);
    return placed === '?' ? [] : [[value, placed]];
  };
  const ys = isYTold ? ([['y', x]] as const) : [];
  const values = ([['x', x], ...ys, ['z', z]] as const).flatMap(told);
  if (values.length === 0) return [];
  return [[position.id, { by: 'trim', ...Object.fromEntries(values) }]];
}
