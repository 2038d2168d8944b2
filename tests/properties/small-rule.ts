/**
 * Random checks of a layout, conditions and rules, over places and parts by their number.
 */

import fc from 'fast-check';
import type { RuleRecord } from '../../src/domain/catalogue/document.js';
import { bases, evidenceOf, weighted } from './small-value.js';

export type Raw = Readonly<Record<string, unknown>>;

/** The names that checks and conditions may use; numbers are taken in turn. */
export interface Vocabulary {
  readonly place: (index: number) => string;
  readonly part: (index: number) => string;
  readonly mating: (index: number) => string;
  readonly adapter: (index: number) => string;
}

export interface ConditionPick {
  readonly which: number;
  readonly at: number;
  readonly other: number;
  readonly isNegated: boolean;
  readonly join: 'all' | 'any' | null;
}

export function conditionPicks(): fc.Arbitrary<ConditionPick> {
  return fc.record({
    which: fc.nat({ max: 8 }),
    at: fc.nat({ max: 4 }),
    other: fc.nat({ max: 9 }),
    isNegated: weighted([6, false], [1, true]),
    join: weighted<'all' | 'any' | null>([6, null], [1, 'all'], [1, 'any']),
  });
}

export function conditionOf(pick: ConditionPick, words: Vocabulary): Raw {
  const single = singleCondition(pick.which, pick, words);
  const one = pick.isNegated ? { not: single } : single;
  if (pick.join === null) return one;
  const beside = singleCondition(pick.which + 3, { at: pick.other, other: pick.at }, words);
  return { [pick.join]: [one, beside] };
}

function singleCondition(
  which: number,
  { at, other }: Pick<ConditionPick, 'at' | 'other'>,
  { place, part, mating, adapter }: Vocabulary,
): Raw {
  const here = place(at);
  const menu: readonly Raw[] = [
    { changed: here },
    { 'one-of': [`${here}.part`, [part(other), part(other + 1)]] },
    { 'one-of': [`${here}.style`, ['a']] },
    { empty: here },
    { opened: here },
    { kept: here },
    { mating: mating(at), adapter: adapter(other) },
    { 'at-least': [`${here}.size`, '5 mm'] },
    { 'one-of': ['fact.trim', ['x']] },
  ];
  return menu[which % menu.length] ?? {};
}

export interface CheckPick {
  readonly which: number;
  readonly at: readonly [number, number, number];
  readonly isCaution: boolean;
  readonly when: ConditionPick | null;
}

export function checkPicks(): fc.Arbitrary<CheckPick> {
  return fc.record({
    which: fc.nat({ max: 17 }),
    at: fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 4 }), fc.nat({ max: 4 })),
    isCaution: weighted([12, false], [1, true]),
    when: fc.oneof(
      { weight: 5, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: conditionPicks() },
    ),
  });
}

/** The terms that the checks name. */
export const TERMS: (words: Vocabulary, at: readonly [number, number, number]) => Raw = (
  { place },
  [a, b, c],
) => ({
  front: [`${place(a)}.ratio`, `${place(b)}.ratio`],
  rear: [`${place(c)}.ratio`, `${place(b)}.ratio`],
  demand: [`${place(a)}.torque`, `${place(b)}.first-gear`, `${place(c)}.ratio`, '1/2'],
});

function checkMenu({ place, part, mating }: Vocabulary, at: CheckPick['at']): readonly Raw[] {
  const [a, b, c] = at.map(place) as [string, string, string];
  const coupling = `${c}.coupling`;
  const adapter = `${mating(at[0])}.adapter`;
  return [
    { within: [`${a}.length`, { sum: [`${b}.length`, `${c}.length`] }], tolerance: '2 mm' },
    { clearance: [`${a}.length`, `${b}.length`], min: '0 mm', max: '5 mm' },
    { 'at-most': [`${a}.length`, '10 mm'] },
    { equal: [`${a}.size`, `${b}.size`] },
    { equal: [`${a}.style`, `${b}.style`] },
    { 'one-of': [`${a}.part`, [part(at[1]), part(at[2]), part(at[2] + 2)]] },
    { agree: ['front', 'rear'], coupling },
    { agree: ['front', 'rear'], coupling, whenEmpty: { [a]: '1', [b]: '1' } },
    { agree: [`${a}.ratio`, `${b}.ratio`], coupling },
    { carries: `${a}.rating`, demand: 'demand' },
    { carries: `${adapter}.rating`, demand: 'demand' },
    { 'at-least': [`${a}.gear-count`, 3] },
    { within: [`${a}.length`, { sum: [`${b}.length`, `${adapter}.length`] }], tolerance: '2 mm' },
    { within: [`${a}.right.circle`, `${b}.left.circle`], tolerance: '1 mm' },
    { agree: [`${a}.right.turns`, `${b}.right.turns`], coupling },
    { 'at-most': [{ max: [`${a}.length`, `${b}.length`] }, '12 mm'] },
    { 'one-of': ['fact.trim', ['x', 'y']] },
    { 'one-of': [`${a}.size`, ['5 mm', '7 mm']] },
  ];
}

export function checkOf(pick: CheckPick, words: Vocabulary, index: number): Raw {
  const menu = checkMenu(words, pick.at);
  return {
    id: `check-${index}`,
    ...menu[pick.which % menu.length],
    ...(pick.isCaution ? { severity: 'caution' } : {}),
    ...(pick.when === null ? {} : { when: conditionOf(pick.when, words) }),
  };
}

export interface RulePick {
  readonly when: ConditionPick;
  readonly demand: ConditionPick;
  readonly effect: 'needs' | 'excludes' | 'note';
  readonly basis: ReturnType<typeof bases> extends fc.Arbitrary<infer Value> ? Value : never;
}

export function rulePicks(): fc.Arbitrary<RulePick> {
  return fc.record({
    when: conditionPicks(),
    demand: conditionPicks(),
    effect: weighted<RulePick['effect']>([4, 'needs'], [3, 'excludes'], [1, 'note']),
    basis: bases(),
  });
}

export function ruleOf(pick: RulePick, words: Vocabulary, index: number): RuleRecord {
  const { effect } = pick;
  return {
    id: `rule-${index}`,
    when: conditionOf(pick.when, words),
    ...(effect === 'note' ? { note: 'so it is' } : { [effect]: conditionOf(pick.demand, words) }),
    because: 'it is so',
    ...evidenceOf(pick.basis),
  };
}
