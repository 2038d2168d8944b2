/**
 * What must be true of the routes of any question where what is recorded changes: one part more,
 * values known more narrowly, or the kit itself put on the vehicle.
 *
 * Each law takes as many random questions as CASES says, and must be met by some that can show it.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Occupant } from '../../src/domain/catalogue/catalogue.js';
import type { CatalogueDocument, PartRecord } from '../../src/domain/catalogue/document.js';
import type { Seats } from '../../src/domain/judge/configuration.js';
import { judgeFit } from '../../src/domain/judge/fit.js';
import { judge } from '../../src/domain/judge/judge.js';
import { resolveKits } from '../../src/domain/kit/resolve.js';
import type { Kits, Route } from '../../src/domain/kit/route.js';
import { Scene } from '../../src/domain/kit/scene.js';
import type { KitAsk, KitWish } from '../oracle/kit-ask.js';
import type { Placed } from '../oracle/scene.js';
import { type KitCase, kitCases } from './kit-case.js';
import { expectNoDearer, told } from './kit-told.js';
import { questionOf } from './real-kits.js';

const CASES = 48;
const SEED = 12;

const cases = fc.sample(kitCases(), { numRuns: CASES, seed: SEED });

function ask(one: KitCase): Kits {
  return resolveKits(questionOf(one));
}

describe('the best of each grade and of all', { timeout: 120_000 }, () => {
  it('is never dearer for a part more in the catalogue', () => {
    for (const [index, { document, ask: asked }] of cases.entries()) {
      const before = ask({ document, ask: asked });
      const after = ask({ document: withOneMore(document, index), ask: asked });
      // Of more routes than are listed the best of all need not be among them.
      if (!after.hasMore) expectNoDearer(after, before, asked.prefer);
    }
  });
});

/** A part more of the roles of one, which has the values of one and the faces of another. */
function withOneMore(document: CatalogueDocument, index: number): CatalogueDocument {
  const parts = document.parts ?? [];
  const like = parts[index % parts.length];
  const other = parts.findLast((part) => part.roles.join() === like?.roles.join());
  if (like === undefined || other === undefined) throw new Error('there are parts');
  const more: PartRecord = { ...like, interfaces: other.interfaces ?? {}, id: 'one-more' };
  const offer = { id: 'one-more', for: 'one-more', price: '1.00' };
  return { ...document, parts: [...parts, more], offers: [...(document.offers ?? []), offer] };
}

/** In the form in which random catalogues have them. */
const NARROWER: readonly (readonly [RegExp, string])[] = [
  [/^"9 to 11 mm"/, '"10 ±0 mm"'],
  [/^"10 ±1 mm"/, '"10 ±0 mm"'],
  [/^"399.5 to 400.5 N.m"/, '"400 ±0 N.m"'],
  [/^"2.0"/, '"2"'],
];

/** Everywhere where it says a range, the middle of it; of choices nothing is narrower. */
function narrowed(document: CatalogueDocument): CatalogueDocument {
  const parts = JSON.stringify(document.parts).replaceAll(/"[^"]*"/g, (text) =>
    NARROWER.reduce((one, [from, to]) => one.replace(from, to), text),
  );
  return { ...document, parts: JSON.parse(parts) as PartRecord[] };
}

describe('where a record is narrower', { timeout: 120_000 }, () => {
  /**
   * What is proven stays so unless the records now contradict what the works built or somebody
   * stated. As a route it may vanish: where less of its change is proven by now, that is no
   * dearer. It is asked of vehicles as recorded, since what a question only says of one is given
   * for as long as it is open, and no longer where it fails.
   */
  it('what was proven stays proven, or less of it is', () => {
    let shown = 0;
    for (const { document, ask: asked } of cases) {
      const recorded = { ...asked, said: {}, saidAdapters: {} };
      const finer = { document: narrowed(document), ask: recorded };
      const before = ask({ document, ask: recorded });
      const after = ask(finer);
      if (after.hasMore) continue;
      for (const route of before.routes.filter(({ grade }) => grade === 'proven')) {
        const { constraints, outcome } = judgedIn(finer, route);
        if (constraints.some(({ code }) => code.startsWith('contradicts-'))) continue;
        shown += 1;
        expect(outcome).toBe('holds');
        expect(after.routes.filter((one) => isOfNoMore(one, route)).map(told)).not.toEqual([]);
      }
    }
    expect(shown).toBeGreaterThan(CASES / 4);
  });
});

/** What the route leads to, as judged by other records. */
function judgedIn(one: KitCase, { judgement: { configuration } }: Route) {
  const scene = new Scene(questionOf(one));
  const { catalogue, question } = scene;
  const { vehicle, pairsOf } = question;
  return judge({ ...configuration, catalogue, pairsOf, vehicle, layout: vehicle.layout });
}

/** Proven, no dearer, and nothing is changed that the other leaves as it is. */
function isOfNoMore(one: Route, other: Route): boolean {
  if (one.grade !== 'proven') return false;
  const [a, b] = [one.basket.totals, other.basket.totals];
  if (!one.changes.every((id) => other.changes.includes(id))) return false;
  const lines = a.unpriced.length - b.unpriced.length;
  return lines < 0 || (lines === 0 && a.cost <= b.cost);
}

describe('where the first route is put on the vehicle', { timeout: 120_000 }, () => {
  /**
   * Nothing is left to do, and each part that was wanted fits. It is asked again without what can
   * only be met by a change: a part anew, a lot, a condition. Four things keep it from being so,
   * and are left out. What was given only because the change left its values as they were, though
   * by the records it fails, fails once it is only said to be there. What a ruleset demands, or
   * a torque that is asked of it, is open for as long as it is open: then so is the whole. And
   * what speaks of the change itself says something else where nothing is changed.
   */
  it('nothing is left to do, and what was wanted fits', () => {
    let shown = 0;
    for (const { document, ask: asked } of cases) {
      const [first] = ask({ document, ask: asked }).routes;
      if (first === undefined || !isBorneByRecords(first) || speaksOfChange(document)) continue;
      const isJudgedAnew = asked.ruleset !== null || asked.torque !== null;
      if (first.grade === 'open' && isJudgedAnew) continue;
      const applied = { document, ask: appliedTo(asked, first) };
      const [again] = ask(applied).routes;
      expect(again && [again.grade, again.basket.lines.length]).toEqual(['proven', 0]);
      for (const verdict of verdictsOf(applied)) expect(verdict).toBe('fits');
      shown += first.basket.lines.length > 0 ? 1 : 0;
    }
    expect(shown).toBeGreaterThan(CASES / 4);
  });
});

/** Whether a rule that decides, or a check, asks what is changed, kept or opened. */
function speaksOfChange({ layouts = [], rules = [] }: CatalogueDocument): boolean {
  const deciding = rules.filter(({ needs, excludes }) => (needs ?? excludes) !== undefined);
  const asked = [...deciding, ...layouts.map(({ checks }) => checks)];
  return /"(changed|kept|opened)":/.test(JSON.stringify(asked));
}

/** Nothing that speaks of a changed place is given against the records. */
function isBorneByRecords({ changes, judgement }: Route): boolean {
  return judgement.constraints.every(
    ({ severity, state, computed, positions }) =>
      severity !== 'must' ||
      computed !== 'fails' ||
      (state === 'given' && !positions.some((id) => changes.includes(id))),
  );
}

function appliedTo(asked: KitAsk, { judgement: { configuration } }: Route): KitAsk {
  const { judged, layout } = configuration;
  const said = [...judged.seats].map(([id, seats]) => [id, placedAs(seats)] as const);
  const rows = [...layout.matings.keys()].map(
    (id) => [id, judged.adapters.get(id)?.parts ?? []] as const,
  );
  const wants = asked.wants.flatMap((want): KitWish[] =>
    want.is === 'part' ? [{ ...want, renews: false }] : [],
  );
  return {
    ...asked,
    wants,
    said: { ...asked.said, ...Object.fromEntries(said) },
    saidAdapters: Object.fromEntries(rows),
  };
}

function placedAs(seats: Seats): Placed {
  if (!seats.hands) return wordOf(seats.seat.occupant);
  return { left: wordOf(seats.left.occupant), right: wordOf(seats.right.occupant) };
}

function wordOf(occupant: Occupant): string | null {
  if (occupant.is === 'part') return occupant.part;
  return occupant.is === 'empty' ? null : '?';
}

/** Of each wanted part, where it stands now. */
function verdictsOf(one: KitCase): (string | null)[] {
  const { catalogue, vehicle, said, torque, use, ignorePresent } = questionOf(one);
  return one.ask.wants.flatMap((want) => {
    if (want.is !== 'part') return [];
    return want.parts.flatMap((id) => {
      const part = catalogue.parts.get(id);
      if (part === undefined) throw new Error(`there is no ${id}`);
      const own = { vehicle, part, position: want.position, with: new Map(), said };
      const { positions } = judgeFit(catalogue, { ...own, torque, use, ignorePresent });
      return positions.filter(({ isPresent }) => isPresent).map(({ verdict }) => verdict);
    });
  });
}
