/**
 * Random parts and adapters: their values, their faces, and what is wrong with the records.
 */

import fc from 'fast-check';
import type {
  InterfaceRecord,
  KindRecord,
  PartRecord,
  RoleRecord,
  ValueRecord,
} from '../../src/domain/catalogue/document.js';
import { type FacePick, faceOf, facePicks } from './small-face.js';
import { type Basis, bases, evidenceOf, recorded, weighted } from './small-value.js';

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
