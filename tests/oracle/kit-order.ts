/**
 * Which of the ways of doing it are shown as routes: of those that touch the same positions the
 * best, and nothing open where the same is to be had proven for no more.
 */

import { compare, type Fraction } from './fraction.js';
import type { KitAsk } from './kit-ask.js';
import type { Cost } from './kit-bill.js';
import type { Change } from './kit-change.js';

export type Grade = 'proven' | 'open';

export interface Candidate {
  readonly change: Change;
  readonly grade: Grade;
  readonly changed: readonly string[];
  /** Those and the positions at which the same is put in anew. */
  readonly touched: readonly string[];
  readonly cost: Cost;
  /** Names of what is open in it. */
  readonly open: ReadonlySet<string>;
  /** Positions that are emptied. */
  readonly emptied: readonly string[];
  readonly usesUp: boolean;
}

/** The cheapest of those that touch the same positions; several where they cost the same. */
export interface KitRoute {
  readonly grade: Grade;
  readonly touched: readonly string[];
  readonly best: readonly Candidate[];
}

/** What counts, the first first. */
export function ranked({ cost, changed }: Candidate, ask: KitAsk): Fraction[] {
  const whole = (number: number): Fraction => ({ top: BigInt(number), bottom: 1n });
  const money = [whole(cost.unpriced), whole(cost.money)];
  const changes = whole(changed.length);
  switch (ask.prefer) {
    case 'cost':
      return [...money, changes];
    case 'changed-positions':
      return [changes, ...money];
    case 'labour-hours':
      return [cost.hours, ...money, changes];
  }
}

export function compareRanks(a: readonly Fraction[], b: readonly Fraction[]): number {
  const [difference = 0] = a.flatMap((one, index) => {
    const other = b[index];
    const compared = other === undefined ? 0 : compare(one, other);
    return compared === 0 ? [] : [compared];
  });
  return difference;
}

export function grouped(candidates: readonly Candidate[], ask: KitAsk): KitRoute[] {
  const groups = new Map<string, Candidate[]>();
  for (const one of candidates) {
    const name = `${one.grade} ${one.touched.join()}`;
    groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  return [...groups.values()].flatMap((group) => {
    const ranks = group.map((one) => ranked(one, ask));
    const [first, ...others] = ranks;
    if (first === undefined) return [];
    const least = others.reduce((a, b) => (compareRanks(a, b) <= 0 ? a : b), first);
    const best = group.filter((_, index) => compareRanks(ranks[index] ?? [], least) === 0);
    return best.slice(0, 1).map(({ grade, touched }) => ({ grade, touched, best }));
  });
}

/** An open route where the same change of positions is to be had proven and no dearer. */
export function isHidden({ grade, touched, best }: KitRoute, routes: readonly KitRoute[]): boolean {
  if (grade === 'proven') return false;
  const proven = routes.find(
    (other) => other.grade === 'proven' && other.touched.join() === touched.join(),
  );
  const [own, other] = [best[0]?.cost, proven?.best[0]?.cost];
  if (own === undefined || other === undefined) return false;
  return other.unpriced === own.unpriced ? other.money <= own.money : other.unpriced < own.unpriced;
}
