/**
 * Random questions: what is said of a vehicle, what is put in, and with what torque and use; and
 * the statements that may answer them.
 */

import fc from 'fast-check';
import type { PositionRecord, StatementRecord } from '../../src/domain/catalogue/document.js';
import type { Placed, Question } from '../oracle/scene.js';
import { type Frame, MOST_PLACES, PARTS_A_ROLE, type Picked, partsFor } from './small-frame.js';
import { bases, evidenceOf, weighted } from './small-value.js';
import { placedAt, rowOf, rowPicks, type SeatPick, seatPicks } from './small-vehicle.js';

export const questionPicks = fc.record({
  vehicle: fc.nat({ max: 2 }),
  chosen: fc.array(
    fc.tuple(fc.nat({ max: MOST_PLACES - 1 }), seatPicks, weighted([15, false], [1, true])),
    {
      maxLength: 3,
    },
  ),
  said: fc.oneof(
    { weight: 4, arbitrary: fc.constant<[number, SeatPick][]>([]) },
    {
      weight: 1,
      arbitrary: fc.array(fc.tuple(fc.nat({ max: MOST_PLACES - 1 }), seatPicks), { maxLength: 2 }),
    },
  ),
  chosenRow: fc.option(fc.tuple(fc.nat({ max: MOST_PLACES - 1 }), rowPicks), { freq: 4 }),
  saidRow: fc.option(fc.tuple(fc.nat({ max: MOST_PLACES - 1 }), rowPicks), { freq: 15 }),
  torque: weighted<string | null>([8, null], [1, '300 ±0 N.m'], [1, '50 to 150 N.m']),
  use: weighted<'road' | 'off-road' | null>([2, null], [1, 'road'], [1, 'off-road']),
  ignorePresent: weighted([6, false], [1, true]),
});

type QuestionPick = Picked<typeof questionPicks>;

export function questionOf(question: QuestionPick, vehicleCount: number, frame: Frame): Question {
  const { positions, matings } = frame;
  const at = (index: number) => positions[index % positions.length] as PositionRecord;
  const misplaced = (index: number, seat: SeatPick): Placed => {
    const part = frame.parts[seat.left]?.id ?? null;
    return at(index).handed ? { left: part, right: part } : part;
  };
  const chosen = question.chosen.map(([index, seat, isMisplaced]) => {
    const placed = isMisplaced ? misplaced(index, seat) : placedAt(seat, at(index), frame);
    // A change puts something there, or nothing; never what nobody knows.
    return [at(index).id, placed === '?' ? null : placed] as const;
  });
  const said = question.said.map(([index, seat]) => [
    at(index).id,
    placedAt(seat, at(index), frame),
  ]);
  const rows = (row: readonly [number, number[]] | null) =>
    row === null ? {} : { [matings[row[0] % matings.length] ?? 'm0']: rowOf(row[1]) };
  return {
    vehicle: `v${question.vehicle % vehicleCount}`,
    said: Object.fromEntries(said),
    chosen: Object.fromEntries(chosen),
    saidAdapters: rows(question.saidRow),
    chosenAdapters: rows(question.chosenRow),
    torque: question.torque,
    use: question.use,
    ignorePresent: question.ignorePresent,
  };
}

export const statementPicks = fc.record({
  place: fc.nat({ max: MOST_PLACES - 1 }),
  part: fc.nat({ max: PARTS_A_ROLE - 1 }),
  beside: fc.option(fc.tuple(fc.nat({ max: MOST_PLACES - 1 }), fc.nat({ max: PARTS_A_ROLE - 1 })), {
    freq: 3,
  }),
  isFit: weighted([3, true], [1, false]),
  basis: bases(),
});

export function statementOf(
  { place, part, beside, isFit, basis }: Picked<typeof statementPicks>,
  index: number,
  vehicleCount: number,
  frame: Frame,
): StatementRecord {
  const position = frame.positions[place % frame.positions.length] as PositionRecord;
  const partId = (at: PositionRecord, which: number) => {
    const parts = partsFor(frame, at, null);
    return parts[which % parts.length]?.id ?? frame.words.part(which);
  };
  const other = frame.positions[(beside?.[0] ?? 0) % frame.positions.length] as PositionRecord;
  return {
    id: `statement-${index}`,
    part: partId(position, part),
    vehicles: Array.from({ length: vehicleCount }, (_, at) => `v${at}`),
    position: position.id,
    ...(beside === null ? {} : { with: { [other.id]: partId(other, beside[1]) } }),
    verdict: isFit ? 'fits' : 'does-not-fit',
    ...evidenceOf(basis),
  };
}
