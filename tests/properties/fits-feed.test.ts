/**
 * The feed of all that fits against the question of one pair, pair by pair, and against itself:
 * what is different from another edition, applied to the lines of that one, gives the lines of this
 * one. Over the demo and over random small catalogues.
 *
 * FAYING_CASES sets how many catalogues are drawn, FAYING_SEED which.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitsIndex } from '../../src/domain/fits/fits-index.js';
import { checkFit } from '../../src/usecases/check-fit.js';
import {
  type FeedForm,
  type FeedLine,
  type FitsPair,
  startFitsFeed,
} from '../../src/usecases/fits-feed.js';
import type { Library } from '../../src/usecases/library.js';
import { asRecorded } from '../../src/usecases/question.js';
import { CART } from '../cli/catalogue.js';
import { demoDocument, libraryOf } from '../memory-store.js';
import { cases } from './small-document.js';

const CASES = Number(process.env.FAYING_CASES ?? 40);
const SEED = Number(process.env.FAYING_SEED ?? 1);

const ALL = { role: null, alone: null, parts: null, vehicles: null, lang: 'en' } as const;

interface Asked {
  readonly edition: number;
  readonly from?: number;
  readonly form?: FeedForm;
  readonly alone?: readonly ['holds', 'open'];
}

function feedOf(library: Library, { edition, from, form = 'pairs', alone }: Asked): FeedLine[] {
  const input = { ...ALL, alone: alone ?? null, edition, from: from ?? null, form };
  return [...startFitsFeed(library, input).lines()].flat();
}

/** What `GET /v1/fit` says of each part on each vehicle, one in so many. */
function compare(library: Library, name: string, oneIn: number): Set<string> {
  const { catalogue } = library.edition(1);
  const lines = new Map<string, FitsPair[]>();
  for (const line of feedOf(library, { edition: 1 }) as FitsPair[]) {
    const key = `${line.part} on ${line.vehicle}`;
    lines.set(key, [...(lines.get(key) ?? []), line]);
  }
  const seen = new Set<string>();
  let asked = 0;
  for (const part of catalogue.parts.keys()) {
    for (const { id, replacedBy } of catalogue.vehicles.values()) {
      if (replacedBy.length > 0) continue;
      asked += 1;
      const key = `${part} on ${id}`;
      const own = lines.get(key) ?? [];
      lines.delete(key);
      if (asked % oneIn !== 0) continue;
      const answer = checkFit(library, {
        ...asRecorded({ vehicle: id, facts: {} }),
        edition: 1,
        lang: 'en',
        part,
        position: null,
        with: {},
        changes: 'no',
      });
      const expected = answer.positions
        .map(({ position, alone, verdict }) => ({ part, vehicle: id, position, alone, verdict }))
        .sort((a, b) => (a.position < b.position ? -1 : 1));
      expect(own, `${name}: ${key}`).toEqual(expected);
      for (const { alone } of own) seen.add(alone);
    }
  }
  // Nothing is left that is of no pair.
  expect([...lines.keys()], name).toEqual([]);
  return seen;
}

test('over the demo it is what the question of one pair says', () => {
  const seen = compare(libraryOf(demoDocument()), 'demo', 12);
  expect([...seen].sort()).toEqual(['fails', 'holds', 'open']);
}, 600_000);

test('over random catalogues it is what the question of one pair says', () => {
  const seen = new Set<string>();
  const some = fc.sample(cases(), { numRuns: CASES, seed: SEED });
  for (const [index, { document }] of some.entries()) {
    for (const alone of compare(libraryOf(document), `case ${index}`, 1)) seen.add(alone);
  }
  expect(seen.size).toBe(3);
}, 3_600_000);

test('what nothing tells apart is judged once, however many lines there are', () => {
  const [cart] = CART.vehicles as [(typeof CART.vehicles)[number]];
  const box = CART.parts.find(({ id }) => id === 'box-b');
  const workFor = (vehicles: number, boxes: number) => {
    const many = <One>(count: number, one: One, name: string) =>
      Array.from({ length: count }, (_, index) => ({ ...one, id: `${name}-${index}` }));
    const library = libraryOf({
      ...CART,
      parts: [...CART.parts, ...many(boxes, box, 'box')],
      vehicles: many(vehicles, cart, 'cart'),
    });
    const lines = feedOf(library, { edition: 1 }).length;
    const { catalogue, index } = library.edition(1);
    return { lines, judged: fitsIndex(catalogue, index).judged };
  };
  const [few, more] = [workFor(1, 1), workFor(60, 40)];
  expect(few.judged).toBeGreaterThan(3);
  expect(more.lines).toBeGreaterThan(100 * few.lines);
  expect(more.judged).toBe(few.judged);
});

/** What tells a line apart, by the form. */
function keyOf(line: FeedLine): string {
  if ('vehicle' in line) return JSON.stringify([line.part, line.vehicle, line.position]);
  const { part, make, model, variant, built, position, alone } = line;
  return JSON.stringify([part, make, model, variant, built, position, alone]);
}

function applied(before: readonly FeedLine[], differences: readonly FeedLine[]): FeedLine[] {
  const lines = new Map(before.map((line) => [keyOf(line), line]));
  for (const line of differences) {
    if ('gone' in line) expect(lines.delete(keyOf(line))).toBe(true);
    else {
      expect(lines.get(keyOf(line))).not.toEqual(line);
      lines.set(keyOf(line), line);
    }
  }
  return [...lines.values()];
}

const byKey = (lines: readonly FeedLine[]) =>
  lines.toSorted((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));

test('the differences lead from the lines of one edition to those of another', () => {
  const some = fc.sample(cases(), { numRuns: 2 * CASES, seed: SEED + 1000 });
  const counts = { gone: 0, set: 0, kept: 0 };
  for (let at = 0; at + 1 < some.length; at += 2) {
    // Documents that are drawn apart have names in common, and little else.
    const library = libraryOf(some[at]?.document, some[at + 1]?.document, less(some[at]?.document));
    for (const [from, edition] of [
      [1, 2],
      [1, 3],
      [3, 1],
    ] as const) {
      for (const form of ['pairs', 'ranges'] as const) {
        for (const more of [{}, { alone: ['holds', 'open'] }] as const) {
          const asked = { form, ...more };
          const before = feedOf(library, { edition: from, ...asked });
          const after = feedOf(library, { edition, ...asked });
          const differences = feedOf(library, { edition, from, ...asked });
          expect(byKey(applied(before, differences))).toEqual(byKey(after));
          const gone = differences.filter((line) => 'gone' in line).length;
          counts.gone += gone;
          counts.set += differences.length - gone;
          counts.kept += after.length - (differences.length - gone);
        }
      }
    }
  }
  expect(Math.min(counts.gone, counts.set, counts.kept)).toBeGreaterThan(100);
}, 3_600_000);

/** Without what is recorded of one place of each vehicle, and without the last vehicle. */
function less(document: unknown): object {
  const {
    vehicles = [],
    statements: _,
    ...rest
  } = document as {
    readonly vehicles?: readonly { readonly fitted?: object }[];
    readonly statements?: unknown;
  };
  const fewer = vehicles.length > 1 ? vehicles.slice(0, -1) : vehicles;
  return {
    ...rest,
    vehicles: fewer.map((vehicle) => {
      const [, ...fitted] = Object.entries(vehicle.fitted ?? {});
      return { ...vehicle, fitted: Object.fromEntries(fitted) };
    }),
  };
}
