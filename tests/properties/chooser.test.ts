/**
 * What holds of every chooser: whoever answers truly finds his vehicle, no question is asked in
 * vain, and each answer leaves what it says it leaves. Over random small catalogues, and over all
 * paths of the demo.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import type { VehicleRecord } from '../../src/domain/catalogue/document.js';
import { type Ask, asksFor } from '../../src/domain/identify/ask.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { vehicleDirectory } from '../../src/usecases/vehicle-directory.js';
import { demoDocument } from '../memory-store.js';
import { type Answer, FACTS, garages, mayBe } from './small-garage.js';

const RUNS = { numRuns: 200, seed: 11 };

const LATEST_YEAR = 2026;

interface Left {
  readonly ids: readonly string[];
  readonly total: number;
  readonly ask: readonly Ask[];
}

function compiled(document: object): Catalogue {
  const { catalogue, faults } = compileDocument(document, BUILT_IN_KINDS);
  if (catalogue === null) throw new Error(JSON.stringify(faults[0]));
  return catalogue;
}

/** What is left once these answers are given, and what to ask next: as lists have it. */
function listed(catalogue: Catalogue, answers: readonly Answer[]): Left {
  const valueFor = (field: string) => answers.find((one) => one.field === field)?.value ?? null;
  const told = valueFor('year');
  const year = told === null ? null : Number(told);
  const built = valueFor('built');
  const facts = new Map(
    answers.flatMap(({ fact, value }) => (fact === null ? [] : [[fact, value] as const])),
  );
  const filter = {
    make: valueFor('make'),
    model: valueFor('model'),
    variant: valueFor('variant'),
    text: null,
    year,
    built,
    layout: null,
    facts,
  };
  const found = vehicleDirectory(catalogue).find(filter, { isReplacedToo: false });
  const known = { year, built, facts };
  const ask = asksFor(found, { facts: catalogue.facts, known, latestYear: LATEST_YEAR });
  return { ids: found.map(({ vehicle }) => vehicle.id), total: found.length, ask };
}

const answersOf = ({ field, fact, values }: Ask): Answer[] =>
  values.map(({ value }) => ({ field, fact, value }));

const isSure = ({ values }: Ask, total: number) => values.every(({ count }) => count < total);

/** What holds of one list, whatever was answered before; `current` are all vehicles there are. */
function checkLeft(left: Left, current: readonly VehicleRecord[], answers: readonly Answer[]) {
  const { ids, total, ask } = left;
  const could = current.filter((one) => answers.every((answer) => mayBe(one, answer)));
  expect([...ids].sort()).toEqual(could.map(({ id }) => id).sort());
  expect(total).toBe(ids.length);
  for (const { values } of ask) {
    expect(values.length).toBeGreaterThan(1);
    expect(values.some(({ count }) => count < total)).toBe(true);
  }
  const [first] = ask;
  // The first one narrows with every answer, unless none does.
  if (first !== undefined && !isSure(first, total)) {
    expect(ask.filter((one) => isSure(one, total))).toEqual([]);
  }
  const asked = ask.map(({ field, fact }) => `${field} ${fact}`);
  expect(new Set(asked).size).toBe(asked.length);
  const before = answers.map(({ field, fact }) => `${field} ${fact}`);
  expect(asked.filter((one) => before.includes(one))).toEqual([]);
  if (ask.length === 0) checkNothingTells(could, answers);
}

/** No name, no value of a fact and no year of any of them is true of some and not of others. */
function checkNothingTells(could: readonly VehicleRecord[], answers: readonly Answer[]) {
  const known = new Set(answers.map(({ field, fact }) => fact ?? field));
  const years = could.flatMap(({ built = [] }) => built.flatMap((month) => month ?? []));
  const open: Answer[] = [
    ...could.flatMap(({ make, model }) => [
      { field: 'make', fact: null, value: make },
      { field: 'model', fact: null, value: model },
    ]),
    ...FACTS.flatMap(({ id, values }) =>
      values.map((value) => ({ field: 'fact', fact: id, value: value.id })),
    ),
    ...years.map((month) => ({ field: 'year', fact: null, value: month.slice(0, 4) })),
    { field: 'year', fact: null, value: String(LATEST_YEAR) },
  ].filter(
    ({ field, fact }) => !known.has(fact ?? field) && !(field === 'year' && known.has('built')),
  );
  // Where every end is not known, so is every year.
  const told = years.length === 0 ? open.filter(({ field }) => field !== 'year') : open;
  for (const answer of told) {
    const count = could.filter((one) => mayBe(one, answer)).length;
    expect([answer, [0, could.length].includes(count)]).toEqual([answer, true]);
  }
}

describe('over random small catalogues', () => {
  test('every answer leaves so many as it says, whichever questions are answered', () => {
    fc.assert(
      fc.property(garages, fc.infiniteStream(fc.nat()), ({ document, current }, picks) => {
        const catalogue = compiled(document);
        const answers: Answer[] = [];
        for (;;) {
          const left = listed(catalogue, answers);
          checkLeft(left, current, answers);
          for (const ask of left.ask) {
            for (const [index, answer] of answersOf(ask).entries()) {
              const { total } = listed(catalogue, [...answers, answer]);
              expect([answer, total]).toEqual([answer, ask.values[index]?.count]);
              expect(total).toBeGreaterThan(0);
            }
          }
          const ask = picked(left.ask, picks);
          if (ask === undefined) return;
          answers.push(picked(answersOf(ask), picks) as Answer);
        }
      }),
      RUNS,
    );
  });

  test('whoever answers truly finds his vehicle, whichever questions he answers', () => {
    fc.assert(
      fc.property(garages, fc.infiniteStream(fc.nat()), ({ document, current }, picks) => {
        const catalogue = compiled(document);
        for (const vehicle of current) {
          const answers: Answer[] = [];
          for (;;) {
            const { ids, ask } = listed(catalogue, answers);
            expect(ids).toContain(vehicle.id);
            const next = picked(ask, picks);
            if (next === undefined) break;
            const truths = answersOf(next).filter((one) => mayBe(vehicle, one));
            // What is recorded of a vehicle is among the answers that are offered.
            expect([next.field, truths.length > 0]).toEqual([next.field, true]);
            answers.push(picked(truths, picks) as Answer);
          }
        }
      }),
      RUNS,
    );
  });
});

function picked<Item>(items: readonly Item[], picks: Iterator<number>): Item | undefined {
  if (items.length === 0) return undefined;
  return items[(picks.next().value as number) % items.length];
}

describe('over the demo', () => {
  test('each path of answers to the first question has an end; all vehicles are reached', () => {
    const document = demoDocument();
    const catalogue = compiled(document);
    const ends = new Set<string>();
    let longest = 0;
    const walk = (answers: readonly Answer[], expected: number | null): void => {
      const { ids, total, ask } = listed(catalogue, answers);
      longest = Math.max(longest, answers.length);
      expect([answers, total]).toEqual([answers, expected ?? total]);
      const [first] = ask;
      if (first === undefined) {
        expect(ids.length).toBeGreaterThan(0);
        for (const id of ids) ends.add(id);
        return;
      }
      expect(isSure(first, total)).toBe(true);
      for (const [index, answer] of answersOf(first).entries()) {
        walk([...answers, answer], first.values[index]?.count ?? -1);
      }
    };
    walk([], null);
    const vehicles = document.vehicles as readonly VehicleRecord[];
    const current = vehicles.filter(({ replacedBy = [] }) => replacedBy.length === 0);
    expect([...ends].sort()).toEqual(current.map(({ id }) => id).sort());
    expect(longest).toBeLessThan(5);
  });
});
