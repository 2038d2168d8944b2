/**
 * Random catalogues in which conversions are to be had: places in a row, each with a few parts of
 * its own role, whose faces meet or do not meet by a pattern, and adapters from one pattern to
 * another. What the judge weighs otherwise is in there more thinly.
 */

import fc from 'fast-check';
import type {
  CatalogueDocument,
  InterfaceRecord,
  KindRecord,
  LayoutRecord,
  PartRecord,
  PositionRecord,
  RoleRecord,
  ValueRecord,
} from '../../src/domain/catalogue/document.js';
import type { Question } from '../oracle/scene.js';
import { type Frame, MOST_PLACES, PARTS_A_ROLE, type Picked } from './small-frame.js';
import { type PartPick, partPicks, ROLE_VALUES } from './small-part.js';
import { questionOf, questionPicks, statementOf, statementPicks } from './small-question.js';
import { checkOf, checkPicks, ruleOf, rulePicks, TERMS, type Vocabulary } from './small-rule.js';
import { weighted } from './small-value.js';
import { vehicleOf, vehiclePicks } from './small-vehicle.js';

const MOST_ADAPTERS = 2;

const some = <Value>(one: fc.Arbitrary<Value>, length: number) =>
  fc.array(one, { minLength: length, maxLength: length });

const facePicks = fc.record({
  is: weighted<'recorded' | 'optional' | 'absent' | 'missing'>(
    [20, 'recorded'],
    [3, 'optional'],
    [1, 'absent'],
    [1, 'missing'],
  ),
  pattern: weighted<string | null>([6, 'a'], [5, 'b'], [1, 'c'], [1, null]),
  isEither: weighted([12, false], [1, true]),
  width: weighted<ValueRecord | null>(
    [6, '10 ±0 mm'],
    [2, '12 ±0 mm'],
    [2, '9 to 11 mm'],
    [2, { choose: ['8 mm', '12 mm'] }],
    [1, { choose: { of: ['8 mm', '10 mm'] } }],
    [1, null],
  ),
});

const kindPicks = fc.record({
  isSided: fc.boolean(),
  width: weighted<'none' | 'must' | 'caution'>([3, 'none'], [2, 'must'], [1, 'caution']),
});

const placePicks = fc.record({
  isOptional: weighted([4, false], [1, true]),
  isHanded: weighted([9, false], [1, true]),
  isPair: weighted([6, false], [1, true]),
});

const picks = fc.record({
  placeCount: weighted([2, 3], [2, 4], [1, 2]),
  roleCount: weighted([3, MOST_PLACES], [1, 2]),
  isRing: weighted([4, false], [1, true]),
  kind: kindPicks,
  places: some(placePicks, MOST_PLACES),
  parts: some(fc.tuple(partPicks(), facePicks, facePicks), MOST_PLACES * PARTS_A_ROLE),
  adapters: some(fc.tuple(partPicks(), facePicks, facePicks), MOST_ADAPTERS),
  partsARole: weighted([1, 2], [2, PARTS_A_ROLE]),
  isFirm: weighted([3, true], [1, false]),
  termAt: fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 4 }), fc.nat({ max: 4 })),
  checks: fc.array(checkPicks(), { maxLength: 2 }),
  rules: fc.array(rulePicks(), { maxLength: 1 }),
  vehicles: fc.array(vehiclePicks, { minLength: 1, maxLength: 2 }),
  statements: weighted([3, 0], [1, 1]).chain((length) => some(statementPicks, length)),
  question: questionPicks,
});

type Picks = Picked<typeof picks>;

export interface Row {
  readonly document: CatalogueDocument;
  /** What is said of the vehicle; what it puts there is of no matter here. */
  readonly question: Question;
}

export function rows(): fc.Arbitrary<Row> {
  return picks.map((drawn) => {
    const frame = frameOf(drawn);
    const { vehicles, statements, rules } = drawn;
    const document: CatalogueDocument = {
      catalogue: 1,
      lang: 'en',
      evidence: { basis: 'maker' },
      couplings: { tight: { pass: '0.1 %', warn: '0.5 %', refuse: '0.5 %' } },
      facts: [
        { id: 'trim', name: 'Trim', values: ['x', 'y', 'z'].map((id) => ({ id, name: id })) },
      ],
      kinds: frame.kinds,
      roles: frame.roles,
      parts: frame.parts,
      layouts: [layoutOf(drawn, frame)],
      vehicles: vehicles.map((pick, index) => vehicleOf(pick, index, frame)),
      rules: rules.map((pick, index) => ruleOf(pick, frame.words, index)),
      statements: statements.map((pick, index) => statementOf(pick, index, vehicles.length, frame)),
    };
    return { document, question: questionOf(drawn.question, vehicles.length, frame) };
  });
}

function frameOf(drawn: Picks): Frame {
  const { placeCount, roleCount, places } = drawn;
  const roleOf = (index: number) => `role-${index % Math.min(roleCount, placeCount)}`;
  const isRing = drawn.isRing && placeCount > 2;
  const positions = places.slice(0, placeCount).map((pick, index): PositionRecord => {
    return {
      id: `p${index}`,
      name: `Place ${index}`,
      roles: [roleOf(index)],
      ...(pick.isHanded ? { handed: true } : {}),
      ...(pick.isPair && !pick.isHanded ? { count: 2 } : {}),
      ...(pick.isOptional ? { optional: true } : {}),
    };
  });
  const roles = [...new Set(positions.flatMap((position) => position.roles))].map(
    (id): RoleRecord => ({
      id,
      name: id,
      faces: ['left', 'right'],
      values: ROLE_VALUES,
    }),
  );
  const kind = kindOf(drawn);
  const parts = roles.flatMap((role, at) =>
    drawn.parts
      .slice(at * PARTS_A_ROLE, at * PARTS_A_ROLE + drawn.partsARole)
      .map((pick, index) => partOf(pick, `part-${at}-${index}`, role, kind, drawn)),
  );
  const adapterRole: RoleRecord = {
    id: 'adapter',
    name: 'adapter',
    faces: ['left', 'right'],
    values: ROLE_VALUES,
  };
  const adapters = drawn.adapters.map(([pick, left, right], index) => {
    const recorded = [left, right].map((face) => ({ ...face, is: 'recorded' as const }));
    const faces = [recorded[0] ?? left, recorded[1] ?? right] as const;
    return partOf([pick, ...faces], `adapter-${index}`, adapterRole, kind, drawn);
  });
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
  return { positions, matings, kinds: [kind], roles: [...roles, adapterRole], parts: all, words };
}

function kindOf({ kind: { isSided, width } }: Picks): KindRecord {
  const sides = isSided ? (['stem', 'socket'] as const) : null;
  const [a, b] = sides ?? ['a', 'b'];
  const within = {
    id: 'width',
    within: [`${a}.width`, `${b}.width`],
    tolerance: '1 mm',
    ...(width === 'caution' ? { severity: 'caution' } : {}),
  };
  return {
    id: 'joint',
    ...(sides === null ? {} : { sides }),
    parameters: {
      pattern: { type: 'code' },
      width: { type: 'measured', unit: 'mm' },
      circle: { type: 'designation', unit: 'mm', optional: true },
      holes: { type: 'count', optional: true },
      turns: { type: 'ratio' },
    },
    checks: [{ id: 'pattern', equal: 'pattern' }, ...(width === 'none' ? [] : [within])],
  };
}

function partOf(
  [pick, left, right]: readonly [PartPick, FacePick, FacePick],
  id: string,
  role: RoleRecord,
  kind: KindRecord,
  { isFirm }: Picks,
): PartRecord {
  const picked = [
    ['left', faceOf(left, kind, 1)],
    ['right', faceOf(right, kind, 0)],
  ] as const;
  const interfaces = picked.filter(([name, face]) => face !== null && role.faces?.includes(name));
  const values = Object.entries(pick.values).filter(([, value]) => value !== null);
  return {
    id,
    name: id,
    roles: [role.id],
    ...(pick.basis === null || isFirm ? {} : { evidence: { basis: pick.basis } }),
    ...(pick.hand === null || role.id === 'adapter' ? {} : { hand: pick.hand }),
    interfaces: Object.fromEntries(interfaces) as Record<string, InterfaceRecord>,
    values: Object.fromEntries(values) as Record<string, ValueRecord>,
  };
}

type FacePick = Picked<typeof facePicks>;

function faceOf(
  { is, pattern, isEither, width }: FacePick,
  { id, sides }: KindRecord,
  end: 0 | 1,
): InterfaceRecord | null {
  if (is === 'missing') return null;
  if (is === 'absent') return { absent: true };
  const own = isEither || pattern === null ? {} : { pattern };
  return {
    kind: id,
    ...(sides === undefined ? {} : { side: sides[end] }),
    ...(is === 'optional' ? { optional: true } : {}),
    ...own,
    ...(width === null ? {} : { width }),
    ...(isEither ? { alternatives: [{ pattern: 'a' }, { pattern: 'b' }] } : {}),
  };
}

function layoutOf({ checks, termAt, placeCount }: Picks, frame: Frame): LayoutRecord {
  const { positions, matings, words } = frame;
  return {
    id: 'row',
    positions,
    matings: matings.map((id, index) => ({
      id,
      between: [`p${index}.right`, `p${(index + 1) % placeCount}.left`] as const,
      adapters: 1,
    })),
    terms: TERMS(words, termAt),
    checks: checks.map((pick, index) => checkOf(pick, words, index)),
    unmated: 'ignore',
  };
}
