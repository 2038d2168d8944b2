/**
 * Random kit questions: what is wished for, what may be used for it, and what must not be
 * exceeded; each of them on and off.
 */

import fc from 'fast-check';
import type { CatalogueDocument, PositionRecord } from '../../src/domain/catalogue/document.js';
import type { KitAsk, KitWish } from '../oracle/kit-ask.js';
import { byId } from '../oracle/scene.js';
import type { Picked } from './small-frame.js';
import { conditionOf, conditionPicks, type Vocabulary } from './small-rule.js';
import { weighted } from './small-value.js';

const wantPicks = fc.record({
  is: weighted<'part' | 'lot' | 'condition' | 'load'>(
    [12, 'part'],
    [2, 'lot'],
    [3, 'condition'],
    [1, 'load'],
  ),
  place: fc.nat({ max: 4 }),
  isPlaced: weighted([6, true], [1, false]),
  isNew: weighted([6, true], [1, false]),
  hand: weighted<'left' | 'right' | null>([4, null], [1, 'left'], [1, 'right']),
  part: fc.nat({ max: 5 }),
  others: fc.array(fc.nat({ max: 5 }), { maxLength: 1 }),
  renews: weighted([6, false], [1, true]),
  lot: fc.nat({ max: 1 }),
  condition: conditionPicks(),
  atLeast: weighted<string>([1, '1'], [1, '1.5'], [1, '2'], [1, '0.75']),
});

export const wishPicks = fc.record({
  wants: weighted([1, 0], [12, 1], [2, 2]).chain((length) =>
    fc.array(wantPicks, { minLength: length, maxLength: length }),
  ),
  keep: weighted<number[]>([12, []], [1, [0]], [1, [1]], [1, [2, 3]]),
  avoid: weighted<number[]>([8, []], [1, [0]], [1, [4, 7]]),
  owned: fc.array(fc.tuple(fc.nat({ max: 12 }), weighted([2, 1], [1, 2], [1, 3])), {
    maxLength: 2,
  }),
  lots: weighted<'all' | 'none' | 'one'>([3, 'all'], [1, 'none'], [1, 'one']),
  workUpTo: weighted<KitAsk['workUpTo']>([1, 'none'], [2, 'workshop'], [2, 'engineer']),
  costLimit: weighted<number | null>([20, null], [1, 1_500_000], [1, 2_500_000], [1, 500_000]),
  changesLimit: weighted<number | null>([15, null], [1, 2], [1, 1]),
  labourRate: weighted<number | null>([2, null], [2, 600_000], [2, 333_300]),
  hasRuleset: weighted([9, false], [1, true]),
  refusesUnknowns: weighted([9, false], [1, true]),
  from: weighted<KitAsk['from']>([5, 'recorded'], [1, 'offered']),
  prefer: weighted<KitAsk['prefer']>([4, 'cost'], [1, 'changed-positions'], [1, 'labour-hours']),
});

export interface Told {
  readonly vehicle: string;
  readonly said: KitAsk['said'];
  readonly saidAdapters: KitAsk['saidAdapters'];
  readonly torque: string | null;
  readonly use: KitAsk['use'];
  readonly ignorePresent: boolean;
}

export function askOf(
  picks: Picked<typeof wishPicks>,
  told: Told,
  document: CatalogueDocument,
  words: Vocabulary,
): KitAsk {
  const { positions } = document.layouts?.[0] ?? { positions: [] };
  const lots = (document.lots ?? []).map(({ id }) => id);
  const { costLimit, changesLimit, labourRate, refusesUnknowns, workUpTo, from, prefer } = picks;
  const owned = picks.owned.map(([index, pieces]) => [words.part(index), pieces] as const);
  return {
    ...told,
    wants: picks.wants.flatMap((pick) => wishOf(pick, told, document, words) ?? []),
    keep: picks.keep.flatMap((index) => positions[index]?.id ?? []),
    avoid: picks.avoid.map((index) => words.part(index)),
    owned: Object.fromEntries(owned),
    lots: picks.lots === 'all' ? lots : picks.lots === 'one' ? lots.slice(0, 1) : [],
    ruleset: picks.hasRuleset ? (document.rulesets?.[0]?.id ?? null) : null,
    costLimit,
    changesLimit,
    labourRate,
    refusesUnknowns,
    workUpTo,
    from,
    prefer,
  };
}

function wishOf(
  pick: Picked<typeof wantPicks>,
  told: Told,
  document: CatalogueDocument,
  words: Vocabulary,
): KitWish | null {
  const { fitted } = byId(document.vehicles, told.vehicle);
  const { positions } = document.layouts?.[0] ?? { positions: [] };
  const position = positions[pick.place % positions.length];
  if (position === undefined) return null;
  if (pick.is === 'condition') {
    return {
      is: 'condition',
      position: position.id,
      condition: conditionAt(pick, position, words),
    };
  }
  if (pick.is === 'load') {
    const loads = (document.layouts?.[0]?.checks ?? []).filter(
      (one) => 'carries' in (one as object),
    );
    const load = (loads as { readonly id: string }[])[pick.part % Math.max(1, loads.length)]?.id;
    return load === undefined ? null : { is: 'load', load, atLeast: pick.atLeast };
  }
  const lot = document.lots?.[pick.lot]?.id;
  if (pick.is === 'lot')
    return lot === undefined ? null : { is: 'lot', lot, whole: pick.part % 2 === 0 };
  const hand = position.handed ? pick.hand : null;
  const there = JSON.stringify([fitted?.[position.id], told.said[position.id]]);
  const fitting = (document.parts ?? []).filter(
    (part) =>
      part.roles.some((role) => position.roles.includes(role)) &&
      (hand === null || part.hand === undefined || part.hand === hand) &&
      (pick.renews || !pick.isNew || !there.includes(part.id)),
  );
  if (fitting.length === 0) return null;
  const parts = [pick.part, ...pick.others].map(
    (index) => fitting[index % fitting.length]?.id ?? '',
  );
  const isPlaced = pick.isPlaced || hand !== null;
  return {
    is: 'part',
    position: isPlaced ? position.id : null,
    hand: isPlaced ? hand : null,
    parts: [...new Set(parts)],
    renews: pick.renews,
  };
}

/** About what stands there, mostly by a value of it. */
function conditionAt(
  { condition }: Picked<typeof wantPicks>,
  { id }: PositionRecord,
  words: Vocabulary,
): unknown {
  const menu = [
    { 'one-of': [`${id}.style`, ['a']] },
    { 'at-least': [`${id}.size`, '5 mm'] },
    { 'at-least': [`${id}.gear-count`, 3] },
    { 'at-least': [`${id}.rating`, '500 N.m'] },
    { not: { 'one-of': [`${id}.part`, [words.part(condition.other)]] } },
    { changed: id },
  ];
  return menu[condition.which] ?? conditionOf(condition, words);
}
