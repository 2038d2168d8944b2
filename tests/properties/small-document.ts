/**
 * Random catalogue documents, small but with everything in them that a judge has to weigh, and
 * questions to each: an invented drivetrain of two to five places in a row, of which each meets
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
} from '../../src/domain/catalogue/document.js';
import type { Question } from '../oracle/scene.js';
import { type Frame, five, MOST_PLACES, PARTS_A_ROLE, type Picked } from './small-frame.js';
import { type KindPick, kindOf, kinds } from './small-kind.js';
import { adapterOf, type PartPick, partOf, partPicks, ROLE_VALUES } from './small-part.js';
import { questionOf, questionPicks, statementOf, statementPicks } from './small-question.js';
import {
  type CheckPick,
  checkOf,
  checkPicks,
  ruleOf,
  rulePicks,
  TERMS,
  type Vocabulary,
} from './small-rule.js';
import { weighted } from './small-value.js';
import { vehicleOf, vehiclePicks } from './small-vehicle.js';

export interface Case {
  readonly document: CatalogueDocument;
  readonly question: Question;
  /** Others to the same document. */
  readonly more: readonly Question[];
}

const MOST_ROLES = 4;

const placePicks = fc.record({
  isHanded: weighted([7, false], [1, true]),
  isOptional: weighted([3, false], [1, true]),
  isPair: weighted([12, false], [1, true]),
  isBehind: weighted([6, false], [1, true]),
  hasOtherRole: weighted([12, false], [1, true]),
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
  more: fc.array(questionPicks, { minLength: 2, maxLength: 2 }),
});

type Picks = Picked<typeof picks>;

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
    statements: drawn.statements.map((pick, index) =>
      statementOf(pick, index, drawn.vehicles.length, frame),
    ),
  };
  const ask = (pick: Picks['question']) => questionOf(pick, drawn.vehicles.length, frame);
  return { document, question: ask(drawn.question), more: drawn.more.map(ask) };
}

/** Where a row is closed to a ring, the parts at its two ends have the face that closes it. */
function facesOfRoles({ roleFaces, roleCount, placeCount, isRing }: Picks): Picks['roleFaces'] {
  const ends = [0, (placeCount - 1) % roleCount];
  const isOnEnd = (role: number) => isRing && ends.includes(role);
  return roleFaces.map((faces, role) => (faces === 'few' && isOnEnd(role) ? 'listed' : faces));
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
