/**
 * Random faces: mostly recorded and mostly alike, so that things do meet; with alternatives, with
 * choices, and with every way in which a record may be missing, weak or coarse.
 */

import fc from 'fast-check';
import type {
  InterfaceRecord,
  KindRecord,
  ValueRecord,
} from '../../src/domain/catalogue/document.js';
import { SIDES } from './small-kind.js';
import { type Basis, bases, evidenceOf, recorded, weighted } from './small-value.js';

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
