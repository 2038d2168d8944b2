/**
 * Random kinds of interface: a few of a fixed set of parameters, and checks over them. Kinds
 * without sides have checks only that read the same from both ends.
 */

import fc from 'fast-check';
import type { KindRecord, ParameterRecord } from '../../src/domain/catalogue/document.js';

export const SIDES = ['stem', 'socket'] as const;

/** All that a face may record; `pin` and `bore` belong to one side. */
const PARAMETERS: Readonly<Record<string, ParameterRecord>> = {
  pattern: { type: 'code' },
  holes: { type: 'count' },
  circle: { type: 'designation', unit: 'mm' },
  width: { type: 'measured', unit: 'mm' },
  depth: { type: 'designation', unit: 'mm', optional: true },
  tag: { type: 'code', optional: true },
  turns: { type: 'ratio' },
};
const SIDED: Readonly<Record<string, ParameterRecord>> = {
  pin: { type: 'measured', unit: 'mm', of: 'stem' },
  bore: { type: 'measured', unit: 'mm', of: 'socket' },
};

type RawCheck = Readonly<Record<string, unknown>>;

/** Checks by their number, for the two sides' names. */
function checkMenu(a: string, b: string, isSided: boolean): RawCheck[] {
  const both = (parameter: string) => [`${a}.${parameter}`, `${b}.${parameter}`];
  const menu: RawCheck[] = [
    { id: 'pattern', equal: 'pattern' },
    { id: 'holes', equal: 'holes' },
    { id: 'circle', within: both('circle'), tolerance: '1 mm' },
    { id: 'width', within: both('width'), tolerance: '1 mm' },
    { id: 'depth', equal: 'depth' },
    { id: 'tag', equal: 'tag' },
    { id: 'same-circle', equal: 'circle', severity: 'caution' },
    { id: 'width-if-alike', within: both('width'), tolerance: '2 mm', when: { equal: 'pattern' } },
  ];
  const ofSides: RawCheck[] = [
    { id: 'play', clearance: [`${b}.bore`, `${a}.pin`], min: '0 mm', max: '1 mm' },
    { id: 'deep', 'at-least': [`${b}.depth`, `${a}.depth`] },
    { id: 'known', 'one-of': [`${a}.pattern`, ['a', 'b']] },
    { id: 'size', 'one-of': [`${a}.circle`, ['5 mm', '6 mm']] },
    {
      id: 'deep-if-a',
      'at-most': both('circle'),
      when: { 'one-of': [`${b}.pattern`, ['a']] },
    },
  ];
  return isSided ? [...menu, ...ofSides] : menu;
}

export interface KindPick {
  readonly isSided: boolean;
  readonly checks: readonly number[];
}

export function kinds(): fc.Arbitrary<KindPick> {
  return fc.record({
    isSided: fc.boolean(),
    checks: fc.array(fc.nat({ max: 12 }), { minLength: 1, maxLength: 3 }),
  });
}

export function kindOf({ isSided, checks }: KindPick, index: number): KindRecord {
  const [a, b] = isSided ? SIDES : (['a', 'b'] as const);
  const menu = checkMenu(a, b, isSided);
  const chosen = new Set(checks.map((check) => check % menu.length));
  return {
    id: `kind-${index}`,
    ...(isSided ? { sides: SIDES } : {}),
    parameters: isSided ? { ...PARAMETERS, ...SIDED } : PARAMETERS,
    checks: [...chosen].map((check) => menu[check] ?? {}),
  };
}
