/**
 * Random catalogue documents, small but with everything in them that a judge has to weigh, and a
 * question to each: an invented drivetrain of two to five places in a row, of which each meets
 * the next and the last may meet the first.
 *
 * Everything is drawn independently and put together afterwards by number, so that a document
 * that breaks a property shrinks to little. Values keep to whole and half millimetres and to
 * ratios near powers of two, for which the oracle's trying is exact.
 */

import fc from 'fast-check';
import type {
  CatalogueDocument,
  KindRecord,
  LayoutRecord,
  PartRecord,
  PositionRecord,
  RoleRecord,
  StatementRecord,
  VehicleRecord,
} from '../../src/domain/catalogue/document.js';
import type { Placed, Question } from '../oracle/scene.js';
import { type KindPick, kindOf, kinds } from './small-kind.js';
import {
  adapterOf,
  bases,
  evidenceOf,
  type PartPick,
  partOf,
  partPicks,
  ROLE_VALUES,
  weighted,
} from './small-part.js';
import {
  type CheckPick,
  checkOf,
  checkPicks,
  ruleOf,
  rulePicks,
  TERMS,
  type Vocabulary,
} from './small-rule.js';

export interface Case {
  readonly document: CatalogueDocument;
  readonly question: Question;
}

const MOST_PLACES = 5;
const MOST_ROLES = 4;
const PARTS_A_ROLE = 3;

function five<Value>(one: fc.Arbitrary<Value>): fc.Arbitrary<Value[]> {
  return fc.array(one, { minLength: MOST_PLACES, maxLength: MOST_PLACES });
}

const placePicks = fc.record({
  isHanded: weighted([7, false], [1, true]),
  isOptional: weighted([3, false], [1, true]),
  isPair: weighted([12, false], [1, true]),
  isBehind: weighted([6, false], [1, true]),
  hasOtherRole: weighted([12, false], [1, true]),
});

/** What stands at a place: a part by number, none, or nobody knows; by hand where there are two. */
const seatPicks = fc.record({
  is: weighted<'part' | 'empty' | 'unknown'>([12, 'part'], [2, 'empty'], [2, 'unknown']),
  left: fc.nat({ max: PARTS_A_ROLE - 1 }),
  right: fc.nat({ max: PARTS_A_ROLE - 1 }),
  isRightEmpty: weighted([12, false], [1, true]),
});

const rowPicks = fc.array(fc.nat({ max: 1 }), { maxLength: 2 });

const vehiclePicks = fc.record({
  seats: five(seatPicks),
  rows: five(
    fc.oneof({ weight: 10, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: rowPicks }),
  ),
  basis: bases(),
  trim: weighted<'x' | 'z' | null>([3, 'x'], [2, 'z'], [2, null]),
});

const statementPicks = fc.record({
  place: fc.nat({ max: MOST_PLACES - 1 }),
  part: fc.nat({ max: PARTS_A_ROLE - 1 }),
  beside: fc.option(fc.tuple(fc.nat({ max: MOST_PLACES - 1 }), fc.nat({ max: PARTS_A_ROLE - 1 })), {
    freq: 3,
  }),
  isFit: weighted([3, true], [1, false]),
  basis: bases(),
});

const questionPicks = fc.record({
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

const picks = fc.record({
  placeCount: fc.integer({ min: 2, max: MOST_PLACES }),
  roleCount: fc.integer({ min: 2, max: MOST_ROLES }),
  places: five(placePicks),
  roleFaces: five(weighted<'listed' | 'few' | null>([2, null], [2, 'listed'], [1, 'few'])),
  kinds: fc.array(kinds(), { minLength: 1, maxLength: 3 }),
  isRing: weighted([2, false], [1, true]),
  unmated: weighted<'open' | 'ignore'>([2, 'open'], [1, 'ignore']),
  parts: fc.array(partPicks(), {
    minLength: MOST_ROLES * PARTS_A_ROLE,
    maxLength: MOST_ROLES * PARTS_A_ROLE,
  }),
  adapters: fc.array(fc.tuple(partPicks(), fc.boolean()), { minLength: 2, maxLength: 2 }),
  termAt: fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 4 }), fc.nat({ max: 4 })),
  checks: fc.array(checkPicks(), { maxLength: 3 }),
  rules: fc.array(rulePicks(), { maxLength: 2 }),
  vehicles: fc.array(vehiclePicks, { minLength: 1, maxLength: 3 }),
  statements: fc.array(statementPicks, { maxLength: 2 }),
  question: questionPicks,
});

type Picked<From> = From extends fc.Arbitrary<infer Value> ? Value : never;
type Picks = Picked<typeof picks>;
type SeatPick = Picked<typeof seatPicks>;

export function cases(): fc.Arbitrary<Case> {
  return picks.map(caseOf);
}

function caseOf(picked: Picks): Case {
  const drawn = { ...picked, roleFaces: facesOfRoles(picked) };
  const frame = frameOf(drawn);
  const document: CatalogueDocument = {
    catalogue: 1,
    lang: 'en',
    evidence: { basis: 'maker' },
    couplings: { tight: { pass: '0.1 %', warn: '0.5 %', refuse: '0.5 %' } },
    facts: [{ id: 'trim', name: 'Trim', values: ['x', 'y', 'z'].map((id) => ({ id, name: id })) }],
    kinds: frame.kinds,
    roles: frame.roles,
    parts: frame.parts,
    layouts: [layoutOf(drawn, frame)],
    vehicles: drawn.vehicles.map((pick, index) => vehicleOf(pick, index, frame)),
    rules: drawn.rules.map((pick, index) => ruleOf(pick, frame.words, index)),
    statements: drawn.statements.map((pick, index) => statementOf(pick, index, drawn, frame)),
  };
  return { document, question: questionOf(drawn, frame) };
}

/** Where a row is closed to a ring, the parts at its two ends have the face that closes it. */
function facesOfRoles({ roleFaces, roleCount, placeCount, isRing }: Picks): Picks['roleFaces'] {
  const ends = [0, (placeCount - 1) % roleCount];
  const isOnEnd = (role: number) => isRing && ends.includes(role);
  return roleFaces.map((faces, role) => (faces === 'few' && isOnEnd(role) ? 'listed' : faces));
}

interface Frame {
  readonly positions: readonly PositionRecord[];
  readonly matings: readonly string[];
  readonly kinds: readonly KindRecord[];
  readonly roles: readonly RoleRecord[];
  readonly parts: readonly PartRecord[];
  readonly words: Vocabulary;
}

function frameOf(drawn: Picks): Frame {
  const { placeCount, roleCount, places } = drawn;
  const kindRecords = drawn.kinds.map((pick: KindPick, index) => kindOf(pick, index));
  const roles = drawn.roleFaces.slice(0, roleCount).map((faces, index) => roleOf(faces, index));
  const positions = places.slice(0, placeCount).map((pick, index): PositionRecord => {
    const role = `role-${index % roleCount}`;
    return {
      id: `p${index}`,
      name: `Place ${index}`,
      roles: pick.hasOtherRole ? [role, `role-${(index + 1) % roleCount}`] : [role],
      ...(pick.isHanded ? { handed: true } : {}),
      ...(pick.isPair && !pick.isHanded ? { count: 2 } : {}),
      ...(pick.isOptional ? { optional: true } : {}),
      ...(pick.isBehind && index > 0 ? { behind: [`p${index - 1}`] } : {}),
    };
  });
  const parts = drawn.parts
    .slice(0, roleCount * PARTS_A_ROLE)
    .map((pick, index) => partIn(pick, index, drawn, kindRecords));
  const adapters = drawn.adapters.map(([pick, isTurned], index) =>
    adapterOf(
      pick,
      `adapter-${index}`,
      [kindAt(kindRecords, index), kindAt(kindRecords, index)],
      isTurned,
    ),
  );
  const isRing = drawn.isRing && placeCount > 2;
  const matings = positions.slice(isRing ? 0 : 1).map((_, index) => `m${index}`);
  const all = [...parts, ...adapters];
  const take = <Item>(items: readonly Item[], index: number): Item =>
    items[index % items.length] as Item;
  const words: Vocabulary = {
    place: (index) => take(positions, index).id,
    part: (index) => take(parts, index).id,
    mating: (index) => take(matings, index),
    adapter: (index) => take(adapters, index).id,
  };
  const adapterRole: RoleRecord = { ...roleOf(null, 0), id: 'adapter' };
  return {
    positions,
    matings,
    kinds: kindRecords,
    roles: [...roles, adapterRole],
    parts: all,
    words,
  };
}

function roleOf(faces: 'listed' | 'few' | null, index: number): RoleRecord {
  const listed = faces === 'few' ? ['left', 'right'] : ['left', 'right', 'aux'];
  const id = `role-${index}`;
  return { id, name: id, ...(faces === null ? {} : { faces: listed }), values: ROLE_VALUES };
}

function kindAt(all: readonly KindRecord[], index: number): KindRecord {
  const kind = all[index % all.length];
  if (kind === undefined) throw new Error('there is always a kind');
  return kind;
}

/** The right face of a role's parts is of the kind of the left face of the next role's. */
function partIn(
  pick: PartPick,
  index: number,
  { roleCount, roleFaces }: Picks,
  all: readonly KindRecord[],
): PartRecord {
  const role = index % roleCount;
  const roles = [`role-${role}`];
  if (pick.isDouble) roles.push(`role-${(role + 1) % roleCount}`);
  const isFew = roles.every((id) => roleFaces[Number(id.slice(-1))] === 'few');
  return partOf(pick, {
    id: `part-${role}-${Math.floor(index / roleCount)}`,
    roles,
    faces: isFew ? ['left', 'right'] : ['left', 'right', 'aux'],
    kinds: {
      left: kindAt(all, (role + roleCount - 1) % roleCount),
      right: kindAt(all, role),
      aux: kindAt(all, 0),
    },
  });
}

function layoutOf({ checks, termAt, unmated }: Picks, frame: Frame): LayoutRecord {
  const { positions, matings, words } = frame;
  const last = positions.length - 1;
  return {
    id: 'row',
    positions,
    matings: matings.map((id, index) => ({
      id,
      between:
        index === last
          ? ([`p${last}.aux`, 'p0.aux'] as const)
          : ([`p${index}.right`, `p${index + 1}.left`] as const),
      adapters: 2,
    })),
    terms: TERMS(words, termAt),
    checks: checks.map((pick: CheckPick, index) => checkOf(pick, words, index)),
    unmated,
  };
}

/** The parts that may stand at a place, for a hand. */
function partsFor(frame: Frame, position: PositionRecord, hand: 'left' | 'right' | null) {
  return frame.parts.filter(
    (part) =>
      part.roles.some((role) => position.roles.includes(role)) &&
      (hand === null || part.hand === undefined || part.hand === hand),
  );
}

function placedAt(pick: SeatPick, position: PositionRecord, frame: Frame): Placed {
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

function rowOf(row: readonly number[]): string[] {
  return row.map((index) => `adapter-${index}`);
}

function vehicleOf(
  { seats, rows, basis, trim }: Picks['vehicles'][number],
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
      ...(adapters.length === 0 ? {} : { matings: Object.fromEntries(adapters) }),
    },
  };
}

function statementOf(
  { place, part, beside, isFit, basis }: Picks['statements'][number],
  index: number,
  { vehicles }: Picks,
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
    vehicles: vehicles.map((_, at) => `v${at}`),
    position: position.id,
    ...(beside === null ? {} : { with: { [other.id]: partId(other, beside[1]) } }),
    verdict: isFit ? 'fits' : 'does-not-fit',
    ...evidenceOf(basis),
  };
}

function questionOf({ question, vehicles }: Picks, frame: Frame): Question {
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
    vehicle: `v${question.vehicle % vehicles.length}`,
    said: Object.fromEntries(said),
    chosen: Object.fromEntries(chosen),
    saidAdapters: rows(question.saidRow),
    chosenAdapters: rows(question.chosenRow),
    torque: question.torque,
    use: question.use,
    ignorePresent: question.ignorePresent,
  };
}
