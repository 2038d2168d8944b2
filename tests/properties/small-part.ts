/**
 * Random values, faces and parts: mostly recorded and mostly alike, so that things do meet; and
 * every way in which a record may be missing, weak, coarse or a choice.
 */

import fc from 'fast-check';
import type {
  EvidenceRecord,
  InterfaceRecord,
  KindRecord,
  PartRecord,
  RoleRecord,
  ValueRecord,
} from '../../src/domain/catalogue/document.js';
import { SIDES } from './small-kind.js';

type Basis = NonNullable<EvidenceRecord['basis']>;

/** One of several by weight; the first of them where a document shrinks. */
export function weighted<Value>(
  ...options: readonly (readonly [number, Value])[]
): fc.Arbitrary<Value> {
  return fc.oneof(...options.map(([weight, value]) => ({ weight, arbitrary: fc.constant(value) })));
}

export function bases(): fc.Arbitrary<Basis | null> {
  return weighted<Basis | null>(
    [20, null],
    [2, 'measured'],
    [1, 'built'],
    [1, 'drawing'],
    [2, 'inferred'],
    [2, 'reported'],
  );
}

export function evidenceOf(basis: Basis | null): { evidence?: EvidenceRecord } {
  return basis === null ? {} : { evidence: { basis } };
}

/** A value as it stands, or null where it is not recorded; now and then with its own evidence. */
function recorded(values: fc.Arbitrary<ValueRecord | null>): fc.Arbitrary<ValueRecord | null> {
  return fc.tuple(values, bases()).map(([value, basis]) => {
    if (value === null || basis === null) return value;
    if (typeof value === 'object' && !Array.isArray(value)) {
      return { ...value, evidence: { basis } } as ValueRecord;
    }
    return { is: value, evidence: { basis } } as ValueRecord;
  });
}

const VALUES = {
  pattern: weighted<ValueRecord | null>(
    [8, 'a'],
    [3, 'b'],
    [1, 'c'],
    [2, null],
    [1, { choose: { of: ['a', 'c'] } }],
  ),
  holes: weighted<ValueRecord | null>([8, 4], [2, 5], [2, null]),
  circle: weighted<ValueRecord | null>(
    [8, '5 mm'],
    [3, '6 mm'],
    [1, '8 mm'],
    [1, '5 ±1 mm'],
    [2, null],
    [1, { choose: { of: ['5 mm', '7 mm'] } }],
    [1, { choose: ['4 mm', '6 mm'] }],
  ),
  width: weighted<ValueRecord | null>(
    [5, '10 ±0 mm'],
    [4, '10 mm'],
    [2, { is: '10 mm', tool: 'tape' }],
    [2, '9 to 11 mm'],
    [2, '12 ±0 mm'],
    [2, null],
    [1, { choose: ['8 mm', '12 mm'] }],
    [1, { choose: { of: ['8 mm', '10 mm'] } }],
  ),
  depth: weighted<ValueRecord | null>([5, null], [4, '3 mm'], [2, '4 mm']),
  tag: weighted<ValueRecord | null>([5, null], [3, 'x'], [2, 'y']),
  turns: weighted<ValueRecord | null>([6, '2'], [2, '201/100'], [1, null]),
  pin: weighted<ValueRecord | null>(
    [6, '6 ±0 mm'],
    [3, '6 mm'],
    [2, '7 ±0 mm'],
    [1, null],
    [1, { choose: ['4 mm', '8 mm'] }],
  ),
  bore: weighted<ValueRecord | null>(
    [5, '7 ±0 mm'],
    [3, '7 mm'],
    [2, '8 ±0 mm'],
    [1, null],
    [1, { choose: ['5 mm', '9 mm'] }],
  ),
} as const;

/** What alternatives of a face lay over its common values: exact ones only. */
const ALTERNATIVES: readonly (readonly Readonly<Record<string, ValueRecord>>[])[] = [
  [{ circle: '5 mm' }, { circle: '7 mm' }],
  [{ pattern: 'a' }, { pattern: 'b', circle: '8 mm' }],
  [{ circle: '4 mm' }, { circle: '6 mm' }, { circle: '8 mm' }],
  [
    { pattern: 'b', holes: 5 },
    { pattern: 'a', holes: 4, depth: '3 mm' },
  ],
  [{ width: '9 ±0 mm' }, { width: '11 ±0 mm', tag: 'x' }],
];

export type FacePick = {
  readonly is: 'recorded' | 'optional' | 'absent' | 'missing';
  readonly isOdd: boolean;
  readonly basis: Basis | null;
  readonly alternatives: number | null;
  readonly values: { readonly [Parameter in keyof typeof VALUES]: ValueRecord | null };
};

export function facePicks(): fc.Arbitrary<FacePick> {
  return fc.record({
    is: weighted<FacePick['is']>([14, 'recorded'], [4, 'optional'], [2, 'absent'], [4, 'missing']),
    isOdd: weighted([30, false], [1, true]),
    basis: bases(),
    alternatives: weighted<number | null>([40, null], [1, 0], [1, 1], [1, 2], [1, 3], [1, 4]),
    values: fc.record({
      pattern: recorded(VALUES.pattern),
      holes: recorded(VALUES.holes),
      circle: recorded(VALUES.circle),
      width: recorded(VALUES.width),
      depth: recorded(VALUES.depth),
      tag: recorded(VALUES.tag),
      turns: recorded(VALUES.turns),
      pin: recorded(VALUES.pin),
      bore: recorded(VALUES.bore),
    }),
  });
}

/** A face of a kind, on its first or second side; null where it is not recorded. */
export function faceOf(pick: FacePick, kind: KindRecord, end: 0 | 1): InterfaceRecord | null {
  const { is, basis, values, isOdd } = pick;
  if (is === 'missing') return null;
  if (is === 'absent') return { absent: true };
  const side = kind.sides === undefined ? undefined : SIDES[isOdd ? 1 - end : end];
  const own = Object.entries(values).filter(([id, value]) => {
    const parameter = kind.parameters[id];
    const isHere = parameter?.of === undefined || parameter.of === side;
    return value !== null && parameter !== undefined && isHere;
  });
  const alternatives = pick.alternatives === null ? undefined : ALTERNATIVES[pick.alternatives];
  return {
    kind: kind.id,
    ...(side === undefined ? {} : { side }),
    ...(is === 'optional' ? { optional: true } : {}),
    ...evidenceOf(basis),
    ...Object.fromEntries(own.filter(([id]) => alternatives?.[0]?.[id] === undefined)),
    ...(alternatives === undefined ? {} : { alternatives }),
  };
}

/** What every role's parts may have. */
export const ROLE_VALUES: NonNullable<RoleRecord['values']> = {
  length: { type: 'measured', unit: 'mm' },
  size: { type: 'designation', unit: 'mm' },
  ratio: { type: 'ratio' },
  style: { type: 'code' },
  coupling: { type: 'code' },
  gears: { type: 'ratio', list: true },
  'first-gear': { term: { max: 'gears' } },
  'gear-count': { term: { count: 'gears' } },
  rating: { type: 'measured', unit: 'N.m', rating: true },
  torque: { type: 'measured', unit: 'N.m', askedAs: 'torque' },
};

const PART_VALUES = {
  length: weighted<ValueRecord | null>(
    [6, '10 ±0 mm'],
    [3, '10 mm'],
    [2, '5 ±0 mm'],
    [2, '20 ±0 mm'],
    [2, '10 ±1 mm'],
    [1, { is: '10 mm', tool: 'tape' }],
    [2, null],
    [2, { choose: ['8 mm', '12 mm'] }],
    [1, { choose: { of: ['5 mm', '10 mm'] } }],
  ),
  size: weighted<ValueRecord | null>([6, '5 mm'], [2, '6 mm'], [2, null], [1, '5 ±1 mm']),
  ratio: weighted<ValueRecord | null>(
    [6, '2'],
    [3, '1'],
    [2, '2.0'],
    [2, '201/100'],
    [1, '41/20'],
    [2, '102/50'],
    [2, null],
    [1, { choose: { of: ['2', '4'] } }],
  ),
  style: weighted<ValueRecord | null>(
    [6, 'a'],
    [3, 'b'],
    [2, null],
    [1, { choose: { of: ['a', 'b'] } }],
  ),
  coupling: weighted<ValueRecord | null>([4, 'open'], [3, 'locked'], [1, 'tight'], [2, null]),
  gears: weighted<ValueRecord | null>([4, ['4', '2', '1']], [2, ['3', '2']], [2, null]),
  rating: weighted<ValueRecord | null>(
    [4, '900 N.m'],
    [3, '400 N.m'],
    [1, '399.5 to 400.5 N.m'],
    [2, null],
  ),
  torque: weighted<ValueRecord | null>([5, '100 ±0 N.m'], [2, '200 N.m'], [1, null]),
} as const;

export interface PartPick {
  readonly basis: Basis | null;
  readonly hand: 'left' | 'right' | null;
  readonly isDouble: boolean;
  readonly left: FacePick;
  readonly right: FacePick;
  readonly aux: FacePick;
  readonly values: { readonly [Value in keyof typeof PART_VALUES]: ValueRecord | null };
}

export function partPicks(): fc.Arbitrary<PartPick> {
  return fc.record({
    basis: bases(),
    hand: weighted<'left' | 'right' | null>([12, null], [1, 'left'], [1, 'right']),
    isDouble: weighted([20, false], [1, true]),
    left: facePicks(),
    right: facePicks(),
    aux: facePicks(),
    values: fc.record({
      length: recorded(PART_VALUES.length),
      size: recorded(PART_VALUES.size),
      ratio: recorded(PART_VALUES.ratio),
      style: recorded(PART_VALUES.style),
      coupling: recorded(PART_VALUES.coupling),
      gears: recorded(PART_VALUES.gears),
      rating: recorded(PART_VALUES.rating),
      torque: recorded(PART_VALUES.torque),
    }),
  });
}

/** What the document makes of a part: its role and the kinds of its faces. */
export interface PartFrame {
  readonly id: string;
  readonly roles: readonly string[];
  readonly faces: readonly string[];
  readonly kinds: Readonly<Record<'left' | 'right' | 'aux', KindRecord>>;
}

export function partOf(pick: PartPick, { id, roles, faces, kinds }: PartFrame): PartRecord {
  const picked = [
    ['left', faceOf(pick.left, kinds.left, 1)],
    ['right', faceOf(pick.right, kinds.right, 0)],
    ['aux', faceOf(pick.aux, kinds.aux, roles[0] === 'role-0' ? 0 : 1)],
  ] as const;
  const interfaces = picked.filter(([name, face]) => face !== null && faces.includes(name));
  const values = Object.entries(pick.values).filter(([, value]) => value !== null);
  return {
    id,
    name: id,
    roles,
    ...evidenceOf(pick.basis),
    ...(pick.hand === null ? {} : { hand: pick.hand }),
    interfaces: Object.fromEntries(interfaces) as Record<string, InterfaceRecord>,
    values: Object.fromEntries(values) as Record<string, ValueRecord>,
  };
}

/** An adapter meets on one side what the other part would meet, whichever face comes first. */
export function adapterOf(
  pick: PartPick,
  id: string,
  [near, far]: readonly [KindRecord, KindRecord],
  isTurned: boolean,
): PartRecord {
  const a = faceOf({ ...pick.left, is: 'recorded' }, near, 1);
  const b = faceOf(
    { ...pick.right, is: pick.right.is === 'absent' ? 'absent' : 'recorded' },
    far,
    0,
  );
  const faces = [
    ['near', a],
    ['far', b],
  ];
  const values = Object.entries(pick.values).filter(
    ([key, value]) => value !== null && ['length', 'rating'].includes(key),
  );
  return {
    id,
    name: id,
    roles: ['adapter'],
    ...evidenceOf(pick.basis),
    interfaces: Object.fromEntries(isTurned ? faces.reverse() : faces) as Record<
      string,
      InterfaceRecord
    >,
    values: Object.fromEntries(values) as Record<string, ValueRecord>,
  };
}
