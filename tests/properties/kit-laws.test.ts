/**
 * What must be true of the routes of any question, whatever they are: that nothing hangs on the
 * order of a document, that a demand less never makes the best dearer, that a vehicle needs nothing
 * where nothing is wished, and that a search that is cut short says nothing wrong.
 *
 * Each law takes as many random questions as CASES says.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import type { KitQuestion } from '../../src/domain/kit/question.js';
import { resolveKits } from '../../src/domain/kit/resolve.js';
import type { Kits } from '../../src/domain/kit/route.js';
import { type KitAsk, NOTHING_ASKED } from '../oracle/kit-ask.js';
import { type KitCase, kitCases } from './kit-case.js';
import { expectNoDearer, told } from './kit-told.js';
import { questionOf } from './real-kits.js';

const CASES = 16;
const SEED = 11;

const cases = fc.sample(kitCases(), { numRuns: CASES, seed: SEED });

function toldAll({ routes, hasMore }: Kits): string[] {
  return [...routes.map(told), `more: ${hasMore}`];
}

function ask(one: KitCase, more: Partial<KitQuestion> = {}): Kits {
  return resolveKits(questionOf(one, more));
}

/** The same with its lists in another order; that of the works tells which is done first. */
function shuffled(document: CatalogueDocument): CatalogueDocument {
  const turned = <Item>(items: readonly Item[] | undefined): Item[] => [...(items ?? [])].reverse();
  return {
    ...document,
    facts: turned(document.facts),
    kinds: turned(document.kinds),
    roles: turned(document.roles),
    parts: turned(document.parts),
    vehicles: turned(document.vehicles),
    rules: turned(document.rules),
    statements: turned(document.statements),
    lots: turned(document.lots),
    offers: turned(document.offers),
  };
}

describe('routes', { timeout: 120_000 }, () => {
  it('do not hang on the order of the document', () => {
    for (const { document, ask: asked } of cases) {
      const turned = ask({ document: shuffled(document), ask: asked });
      expect(toldAll(turned)).toEqual(toldAll(ask({ document, ask: asked })));
    }
  });

  it('are the same where all that may stay is to be kept', () => {
    for (const one of cases) {
      const [first] = ask(one).routes;
      if (first === undefined) continue;
      const touched = first.basket.lines.map(({ position }) => position);
      const { positions } = first.judgement.configuration.layout;
      const keep = [...positions.keys()].filter((id) => !touched.includes(id));
      const kept = [...new Set([...one.ask.keep, ...keep])];
      const [again] = ask({ ...one, ask: { ...one.ask, keep: kept } }).routes;
      expect(again && told(again)).toEqual(told(first));
    }
  });
});

describe('the best', () => {
  it('is never dearer for a demand less', () => {
    for (const { document, ask: asked } of cases) {
      const less: readonly Partial<KitAsk>[] = [
        { wants: asked.wants.slice(1) },
        { keep: asked.keep.slice(1) },
        { avoid: [] },
        { costLimit: null },
        { changesLimit: null },
        { ruleset: null },
        { refusesUnknowns: false },
        { from: 'recorded' },
      ];
      const strict = ask({ document, ask: asked });
      for (const dropped of less) {
        const [key = ''] = Object.keys(dropped);
        const isDemand =
          JSON.stringify(dropped) !== JSON.stringify({ [key]: asked[key as keyof KitAsk] });
        if (!isDemand) continue;
        const free = ask({ document, ask: { ...asked, ...dropped } });
        expectNoDearer(free, strict, asked.prefer);
      }
    }
  });
});

describe('nothing is left to do', () => {
  it('on a vehicle as it is, whatever nobody has recorded', () => {
    for (const { document } of cases) {
      for (const { id: vehicle } of document.vehicles ?? []) {
        for (const lacking of [document, ...lackingOne(document)]) {
          const { routes } = ask(
            { document: lacking, ask: { ...NOTHING_ASKED, vehicle } },
            { routes: 1 },
          );
          expect(routes.map(({ grade, basket }) => [grade, basket.lines.length])).toEqual([
            ['proven', 0],
          ]);
        }
      }
    }
  });
});

/** Without one value of one part, and without one value of one face. */
function lackingOne(document: CatalogueDocument): CatalogueDocument[] {
  const parts = document.parts ?? [];
  return parts.slice(0, 2).flatMap((part, index) => {
    const [value] = Object.keys(part.values ?? {});
    const [face] = Object.keys(part.interfaces ?? {});
    const { [value ?? '']: _, ...values } = part.values ?? {};
    const { [face ?? '']: __, ...interfaces } = part.interfaces ?? {};
    return [
      { ...part, values },
      { ...part, interfaces },
    ].map((less) => ({ ...document, parts: parts.with(index, less) }));
  });
}

describe('a search that is cut short', () => {
  it('lists no wrong route first, and no bound above what is to be had', () => {
    let cut = 0;
    for (const one of cases.slice(0, CASES / 2)) {
      const question = questionOf(one);
      const whole = resolveKits(question);
      for (const steps of stepsUpTo(whole.steps)) {
        const kits = resolveKits({ ...question, steps });
        if (kits.isComplete) {
          expect(toldAll(kits)).toEqual(toldAll(whole));
          continue;
        }
        cut += 1;
        const [first] = kits.routes;
        if (first !== undefined) expect(told(first)).toBe(told(whole.routes[0] ?? first));
        expect(isBelow(kits, whole, one.ask)).toBe(true);
      }
    }
    expect(cut).toBeGreaterThan(CASES);
  });
});

/** All of them, or fewer further up. */
function stepsUpTo(most: number): number[] {
  const steps = [1, 2, 3, 5, 8, 13, 21, 34, 55, 89, 144, 233, 377].filter((step) => step < most);
  return [...steps, most - 1, most].filter((step) => step > 0);
}

/** Of routes with prices: what is not listed costs no less than the bound says. */
function isBelow(kits: Kits, whole: Kits, { prefer }: KitAsk): boolean {
  const { bound } = kits;
  if (bound === null) return false;
  if (prefer !== 'cost') return true;
  const listed = kits.routes.map(told);
  return whole.routes
    .filter((route) => route.grade === bound.grade && !listed.includes(told(route)))
    .filter(({ basket }) => basket.totals.unpriced.length === 0)
    .every(({ basket }) => basket.totals.cost >= bound.cost);
}
