/**
 * What is said of a vehicle that is known in part, against asking about every vehicle that may be
 * meant, one by one: over random small catalogues, in which every vehicle has a double and another
 * of which less is recorded. Each answer to what is asked leads to what it says.
 *
 * FAYING_CASES sets how many catalogues are drawn, FAYING_SEED which.
 */

import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CatalogueDocument, VehicleRecord } from '../../src/domain/catalogue/document.js';
import type { Preference } from '../../src/domain/kit/question.js';
import { checkFit } from '../../src/usecases/check-fit.js';
import {
  checkFitPartly,
  type PartlyFitAnswer,
  type PartlyFitInput,
} from '../../src/usecases/check-fit-partly.js';
import { QuestionError } from '../../src/usecases/errors.js';
import type { KitAnswer } from '../../src/usecases/kit-answer.js';
import { USUAL_KIT } from '../../src/usecases/kit-input.js';
import type { Library } from '../../src/usecases/library.js';
import { resolveKitQuestion } from '../../src/usecases/resolve-kits.js';
import { type PartlyKitInput, resolveKitsPartly } from '../../src/usecases/resolve-kits-partly.js';
import { libraryOf } from '../memory-store.js';
import { ANY } from '../registry/partly-cases.js';
import { type KitCase, kitCases } from './kit-case.js';

const CASES = Number(process.env.FAYING_CASES ?? 30);
const SEED = Number(process.env.FAYING_SEED ?? 1);

/** Their variants tell vehicles apart, but for those that are doubles. */
function crowded({ document }: KitCase): CatalogueDocument {
  const { vehicles = [] } = document;
  const named = vehicles.map((vehicle, index) => {
    return { ...vehicle, variant: `variant ${index % 2}`, built: builtAs(index) };
  });
  const doubled = named.map((vehicle) => ({ ...vehicle, id: `${vehicle.id}-double` }));
  return { ...document, vehicles: [...named, ...doubled, ...named.map(withoutFirst)] };
}

function builtAs(index: number): [string, string | null] {
  return index % 2 === 0 ? ['2001-01', '2002-12'] : ['2002-06', null];
}

function withoutFirst({ variant: _, ...vehicle }: VehicleRecord): VehicleRecord {
  const [, ...fitted] = Object.entries(vehicle.fitted ?? {});
  return { ...vehicle, id: `${vehicle.id}-less`, fitted: Object.fromEntries(fitted) };
}

interface Leads {
  readonly field: string;
  readonly fact: string | null;
  readonly position: string | null;
  readonly value: string;
}

type Partly = Pick<PartlyFitInput, 'known' | 'facts' | 'fitted'>;

/** What is known once a question is answered so. */
function told<Input extends Partly>(input: Input, { field, fact, position, value }: Leads): Input {
  if (position !== null) return { ...input, fitted: { ...input.fitted, [position]: value } };
  if (fact !== null) return { ...input, facts: { ...input.facts, [fact]: value } };
  const known = { ...input.known, [field]: field === 'year' ? Number(value) : value };
  return { ...input, known };
}

/** Each way of answering all of them that leaves a vehicle. */
function waysOf<Input extends Partly>(input: Input, ask: PartlyFitAnswer['ask']): readonly Input[] {
  return ask.reduce<readonly Input[]>(
    (ways, one) =>
      ways.flatMap((way) => one.values.map(({ value }) => told(way, { ...one, value }))),
    [input],
  );
}

/** Answers that leave no vehicle when they are taken together settle nothing. */
function verdictUnlessNone(library: Library, input: PartlyFitInput): PartlyFitAnswer['verdict'] {
  try {
    return checkFitPartly(library, input).verdict;
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    const [{ code }] = error.faults;
    if (code === 'unknown-vehicle') return null;
    throw error;
  }
}

const reached = new Set<string>();

function compareFit(library: Library, part: string, changes: 'yes' | 'no'): void {
  const input: PartlyFitInput = { ...ANY, part, position: null, with: {}, changes };
  const answer = checkFitPartly(library, input);
  const { known: _, ...question } = input;
  const vehicles = answer.vehicles.map(({ vehicle }) => vehicle);
  const { catalogue } = library.edition(null);
  expect([...vehicles].sort()).toEqual([...catalogue.vehicles.keys()].sort());
  const alone = vehicles.map((vehicle) => checkFit(library, { ...question, vehicle }));
  expect(answer.vehicles).toMatchObject(
    alone.map(({ verdict, complete, alone: own }) => ({ verdict, complete, alone: own })),
  );
  const [first = null, ...others] = new Set(alone.map(({ verdict }) => verdict));
  const all = others.length > 0 ? 'depends' : first;
  expect(answer.verdict).toBe(all);
  reached.add(`fit ${all ?? 'null'}`);
  for (const ask of answer.ask) {
    for (const { value, verdict, count } of ask.values) {
      const next = checkFitPartly(library, told(input, { ...ask, value }));
      expect([next.verdict, next.counts.total], `${ask.field} ${value}`).toEqual([verdict, count]);
      reached.add(`fit ${ask.field} ${verdict ?? 'null'}`);
    }
  }
  const { settles, ask } = answer;
  if (settles && ask.length > 0) {
    for (const left of waysOf(input, ask)) {
      expect(verdictUnlessNone(library, left), 'it is settled').not.toBe('depends');
    }
    for (const { field } of ask) reached.add(`fit settled by ${field}`);
  }
}

/** What has to be the same for routes to be the same. */
function takenIn({ routes, complete }: KitAnswer): string {
  const taken = routes.map(({ grade, changes, lines, recommended, totals, order }) => {
    const [own, besides] = [lines, recommended].map((some) =>
      some.map(({ why: _w, substitutes: _s, alternatives: _a, ...line }) => line),
    );
    return { grade, changes, lines: own, recommended: besides, totals, order };
  });
  return JSON.stringify([taken, complete || routes.length > 0]);
}

function compareKits(library: Library, part: string, prefer: Preference): void {
  const want = [{ part, position: null, hand: null, renew: false }];
  const input: PartlyKitInput = { ...ANY, ...USUAL_KIT, want, prefer };
  const answer = resolveKitsPartly(library, input);
  const { known: _, ...question } = input;
  const alone = answer.vehicles.map(({ vehicle }) =>
    resolveKitQuestion(library, { ...question, vehicle }),
  );
  const gradeOf = ({ routes: [first], complete }: KitAnswer) =>
    first?.grade ?? (complete ? 'none' : null);
  expect(answer.vehicles).toMatchObject(
    alone.map((one) => ({ grade: gradeOf(one), complete: one.complete, summary: one.summary })),
  );
  const [first, ...others] = alone;
  const taken = alone.map(takenIn);
  const isSame = new Set(taken).size === 1;
  expect(answer.grade).toBe(isSame && first !== undefined ? gradeOf(first) : 'depends');
  expect(JSON.stringify([answer.routes, true])).toBe(isSame ? taken[0] : '[[],true]');
  if (answer.conflict !== null) {
    expect(others.every(({ conflict }) => conflict !== null)).toBe(true);
    expect(first?.conflict).toEqual(answer.conflict);
  }
  reached.add(`kits ${answer.grade ?? 'null'}`);
  for (const ask of answer.ask) {
    for (const { value, grade, count } of ask.values) {
      // The most that may be asked again was asked.
      if (grade === null) continue;
      const next = resolveKitsPartly(library, told(input, { ...ask, value }));
      expect([next.grade, next.counts.total]).toEqual([grade, count]);
      reached.add(`kits ${ask.field} ${grade}`);
    }
  }
}

describe('over random catalogues', () => {
  const different: string[] = [];

  beforeAll(() => {
    const some = fc.sample(kitCases(), { numRuns: CASES, seed: SEED });
    for (const [index, one] of some.entries()) {
      const library = libraryOf(crowded(one));
      const parts = [...library.edition(null).catalogue.parts.values()];
      const placed = parts.filter(({ roles }) => !roles.includes('adapter'));
      for (const part of [placed[0], placed.at(-1)]) {
        if (part === undefined) continue;
        try {
          compareFit(library, part.id, index % 3 === 0 ? 'yes' : 'no');
          if (index % 2 === 0) compareKits(library, part.id, one.ask.prefer);
        } catch (error) {
          different.push(`${SEED}/${index} ${part.id}: ${String(error)}`);
        }
      }
    }
  }, 3_600_000);

  test('it is what every vehicle that may be meant comes to', () => {
    expect(different).toEqual([]);
  });

  test('all of it is met', () => {
    expect([...reached]).toEqual(
      expect.arrayContaining([
        'fit depends',
        'fit fits',
        'fit year fits',
        'fit year does-not-fit',
        'fit year unknown',
        'fit settled by fact',
        'fit settled by fitted',
        'kits depends',
        'kits none',
        'kits open',
        'kits proven',
        'kits year open',
        'kits year proven',
      ]),
    );
  });
});
