/**
 * What every route has to keep, on questions to the demo catalogue: its lines add up, each of them
 * says why it is there in a cascade from the wish, no group of its changes could be left out, and
 * a vehicle that has been changed as it says needs nothing more.
 */

import { describe, expect, test } from 'vitest';
import type { Adapters, Seats } from '../../../src/domain/judge/configuration.js';
import { judge } from '../../../src/domain/judge/judge.js';
import type { Basket, Line } from '../../../src/domain/kit/basket.js';
import { resolveKits } from '../../../src/domain/kit/resolve.js';
import type { Route } from '../../../src/domain/kit/route.js';
import { add, ZERO } from '../../../src/domain/quantity/rational.js';
import { demoQuestion, demoWishes } from './demo-question.js';

describe.each(demoWishes(83))('$part at the $position of $vehicle', (wish) => {
  const question = demoQuestion(wish, { routes: 2, steps: 4000 });
  const { routes } = resolveKits(question);

  test('the routes keep what they promise', () => {
    for (const route of routes) {
      expectSums(route.basket);
      expectCascade(route);
      expectNothingToSpare(route, wish.part);
    }
  });

  test('changed as the first route says, the vehicle needs nothing more', () => {
    const [first] = routes;
    if (first?.grade !== 'proven') return;
    const { judged } = first.judgement.configuration;
    const seats = new Map([...judged.seats].map(([id, own]) => [id, saidOf(own)] as const));
    const adapters = new Map(
      [...judged.adapters].map(([id, { parts }]): [string, Adapters] => [
        id,
        { parts, origin: 'said' },
      ]),
    );
    const again = resolveKits({ ...question, said: { seats, adapters } });
    expect(again.routes[0]?.grade).toBe('proven');
    expect(again.routes[0]?.changes).toEqual([]);
    expect(again.routes[0]?.basket.lines).toEqual([]);
  });
});

function saidOf(seats: Seats): Seats {
  if (!seats.hands) return { hands: false, seat: { ...seats.seat, origin: 'said' } };
  const { left, right } = seats;
  return { hands: true, left: { ...left, origin: 'said' }, right: { ...right, origin: 'said' } };
}

function expectSums({ lines, totals }: Basket): void {
  const bought = lines.filter(({ action }) => action !== 'work');
  const works = lines.filter(({ action }) => action === 'work');
  const sumOf = (of: readonly Line[]) => of.reduce((sum, { price }) => sum + (price ?? 0), 0);
  expect(totals.parts).toBe(sumOf(bought));
  expect(totals.works).toBe(sumOf(works));
  const hours = lines.reduce((sum, { labourHours }) => add(sum, labourHours ?? ZERO), ZERO);
  expect(totals.labourHours.equals(hours)).toBe(true);
  expect(totals.cost).toBe(totals.parts + totals.works + (totals.labour ?? 0));
  const unpriced = lines.filter(({ price }) => price === null).map(({ key }) => key);
  expect(totals.unpriced).toEqual(unpriced);
}

/** Each line goes back, line by line, to one that the wish itself made necessary. */
function expectCascade({ basket, why }: Route): void {
  const before = new Map(
    basket.lines.map(({ key }) => [key, why.get(key)?.[0]?.after ?? null] as const),
  );
  for (const { key } of basket.lines) {
    expect(why.get(key)?.length ?? 0, key).toBeGreaterThan(0);
    const seen = new Set<string>();
    let at: string | null = key;
    while (at !== null) {
      expect(seen.has(at), `${key} goes in a ring at ${at}`).toBe(false);
      seen.add(at);
      expect(before.has(at), `${at} is a line`).toBe(true);
      at = before.get(at) ?? null;
    }
  }
}

/** Put any one or two changes back, and something fails, or opens that was not open. */
function expectNothingToSpare({ judgement, changes }: Route, wanted: string): void {
  const { configuration } = judgement;
  const open = openIn(judgement);
  const own = changes.filter((id) => !holds(configuration.judged.seats.get(id), wanted));
  for (const group of own.flatMap((a, index) => own.slice(index).map((b) => [a, b]))) {
    const seats = new Map(configuration.judged.seats);
    for (const id of group) {
      const now = configuration.present.seats.get(id);
      if (now !== undefined) seats.set(id, now);
    }
    const adapters = new Map(configuration.judged.adapters);
    for (const mating of configuration.layout.matings.values()) {
      const touches = mating.ends.some(({ position }) => group.includes(position));
      if (touches) adapters.set(mating.id, { parts: [], origin: 'chosen' });
    }
    const back = judge({ ...configuration, judged: { seats, adapters } });
    const isOpened = [...openIn(back)].some((id) => !open.has(id));
    expect(back.outcome === 'fails' || isOpened, `without ${group.join(' and ')}`).toBe(true);
  }
}

function openIn({ constraints }: Route['judgement']): Set<string> {
  const open = constraints.filter(({ state, severity }) => state === 'open' && severity === 'must');
  return new Set(open.map(({ form, id, hand }) => `${form} ${id} ${hand ?? ''}`));
}

/** The place that the wish is about: putting that back is no way of doing it. */
function holds(seats: Seats | undefined, part: string): boolean {
  if (seats === undefined) return false;
  const own = seats.hands ? [seats.left, seats.right] : [seats.seat];
  return own.some(({ occupant }) => occupant.is === 'part' && occupant.part === part);
}
