/**
 * Laws of the judge over what records allow: what holds of a record holds of every value in it,
 * what fails fails of every one; equal articles cancel, whatever their records say.
 *
 * FAYING_CASES sets how many catalogues are drawn for each law, FAYING_SEED which.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import type { Judgement } from '../../src/domain/judge/judge.js';
import { fraction, plus } from '../oracle/fraction.js';
import { askJudge, compiled } from './real-judge.js';
import { type Dice, diceOf, sampled, within } from './restated.js';
import { type Case, cases } from './small-document.js';

const RUNS = {
  numRuns: Number(process.env.FAYING_CASES ?? 100),
  seed: Number(process.env.FAYING_SEED ?? 5),
};
const timeout = 30_000 + RUNS.numRuns * 200;

const throwsOfDice = fc.array(fc.nat({ max: 4 }), { minLength: 40, maxLength: 40 });

/** What the records alone decide, by constraint; choices among several may be picked anew. */
function decided(judgement: Judgement): Map<string, string> {
  const picked = new Set(
    judgement.bench.plan.groups.flat().map((index) => {
      const planned = judgement.bench.plan.checks[index];
      return planned?.joint?.plan.mating.id ?? planned?.check.id;
    }),
  );
  const own = judgement.constraints.filter(({ id, form }) => {
    return (form === 'mating' || form === 'check') && !picked.has(id);
  });
  return new Map(own.map(({ form, id, hand, computed }) => [`${form} ${id} ${hand}`, computed]));
}

/** Where something that was decided came out the other way; how much was decided at all. */
function reversals(
  { document, question }: Case,
  narrow: (document: CatalogueDocument) => CatalogueDocument,
): { readonly reversed: string[]; readonly kept: number } {
  const before = askJudge(compiled(document), question);
  const after = askJudge(compiled(narrow(document)), question);
  const later = decided(after);
  const opposite = { holds: 'fails', fails: 'holds' } as const;
  const outcomes = [...decided(before)].filter(([name]) => later.has(name));
  const reversed = outcomes.filter(([name, outcome]) => {
    return outcome !== 'open' && later.get(name) !== outcome;
  });
  // What is open in what is only said of the vehicle is as found on it, until it is known to fail.
  const { said, saidAdapters } = question;
  const isSaid = Object.keys({ ...said, ...saidAdapters }).length > 0;
  const whole = before.outcome === 'open' || isSaid ? null : opposite[before.outcome];
  return {
    reversed: [
      ...reversed.map(([name, outcome]) => `${name}: ${outcome}, then ${later.get(name)}`),
      ...(after.outcome === whole ? [`the whole: ${before.outcome}, then ${whole}`] : []),
    ],
    kept: outcomes.length - reversed.length,
  };
}

describe('what a record decides', { timeout }, () => {
  it('every value in it decides the same', () => {
    let kept = 0;
    const all = fc.property(cases(), throwsOfDice, (one, throws) => {
      const found = reversals(one, (document) => sampled(document, diceOf(throws)));
      kept += found.kept;
      expect(found.reversed).toEqual([]);
    });
    fc.assert(all, RUNS);
    expect(kept).toBeGreaterThan(RUNS.numRuns);
  });

  it('but values beyond it may not', () => {
    const beyond = (document: CatalogueDocument, dice: Dice) =>
      sampled(document, dice, (span, at) => plus(within(span, at), fraction(3n)));
    const all = fc.property(cases(), throwsOfDice, (one, throws) => {
      return reversals(one, (document) => beyond(document, diceOf(throws))).reversed.length === 0;
    });
    const once = { seed: RUNS.seed, numRuns: 400, endOnFailure: true };
    expect(fc.check(all, once).failed).toBe(true);
  });
});

/** Two axles with articles of these ratios behind one box, and the lengths of their covers. */
function axles(front: string, rear: string, ratio: unknown, length: unknown): CatalogueDocument {
  const value = (one: unknown) => (one === null ? {} : one);
  const axle = (id: string) => ({
    id,
    name: id,
    roles: ['axle'],
    values: {
      ...(ratio === null ? {} : { ratio: value(ratio) }),
      ...(length === null ? {} : { length: value(length) }),
    },
  });
  return {
    catalogue: 1,
    lang: 'en',
    evidence: { basis: 'maker' },
    roles: [
      {
        id: 'axle',
        name: 'Axle',
        values: { ratio: { type: 'ratio' }, length: { type: 'measured', unit: 'mm' } },
      },
      { id: 'box', name: 'Box', values: { drive: { type: 'ratio' }, coupling: { type: 'code' } } },
    ],
    parts: [
      axle('one'),
      axle('other'),
      { id: 'box', name: 'Box', roles: ['box'], values: { drive: '12/11', coupling: 'locked' } },
    ],
    layouts: [
      {
        id: 'row',
        positions: [
          { id: 'box', name: 'Box', roles: ['box'] },
          { id: 'front', name: 'Front axle', roles: ['axle'] },
          { id: 'rear', name: 'Rear axle', roles: ['axle'] },
        ],
        checks: [
          {
            id: 'ratios',
            agree: [
              ['box.drive', 'front.ratio'],
              ['box.drive', 'rear.ratio'],
            ],
            coupling: 'box.coupling',
          },
          { id: 'lengths', within: ['front.length', 'rear.length'], tolerance: '0.1 mm' },
        ],
      },
    ],
    vehicles: [
      { id: 'car', make: 'Marl', model: 'Row', layout: 'row', fitted: { front, rear, box: 'box' } },
    ],
  } as CatalogueDocument;
}

describe('two pieces of one article', () => {
  const ratios = fc.oneof(
    fc.constant(null),
    fc.integer({ min: 100, max: 599 }).map((hundredths) => (hundredths / 100).toFixed(2)),
    fc
      .tuple(fc.integer({ min: 9, max: 60 }), fc.integer({ min: 9, max: 60 }))
      .map((teeth) => teeth.join('/')),
    fc.integer({ min: 2, max: 5 }).map((tenths) => `3.${tenths} ±0.4`),
  );
  const bases = fc.constantFrom('measured', 'maker', 'inferred', 'reported');
  const lengths = fc.constantFrom(null, '600 mm', '600 ±2 mm', '598 to 602 mm');

  const computed = (document: CatalogueDocument): Record<string, string> => {
    const nothing = { said: {}, chosen: {}, saidAdapters: {}, chosenAdapters: {}, torque: null };
    const question = { ...nothing, vehicle: 'car', use: null, ignorePresent: false };
    const { constraints } = askJudge(compiled(document), question);
    return Object.fromEntries(constraints.map((one) => [one.id, one.computed]));
  };

  it('cancel in a loop whatever their ratio is; their lengths do not', () => {
    const all = fc.property(ratios, bases, lengths, (text, basis, length) => {
      const ratio = text === null ? null : { is: text, evidence: { basis } };
      const outcomes = computed(axles('one', 'one', ratio, length));
      expect(outcomes).toEqual({ ratios: 'holds', lengths: 'open' });
    });
    fc.assert(all, { ...RUNS, numRuns: 200 });
  });

  it('two articles with the same record do not, unless it is exact', () => {
    expect(computed(axles('one', 'other', '3.5', '600 mm'))).toMatchObject({ ratios: 'open' });
    expect(computed(axles('one', 'other', null, '600 mm'))).toMatchObject({ ratios: 'open' });
    expect(computed(axles('one', 'other', '39/11', '600 mm'))).toMatchObject({ ratios: 'holds' });
  });
});
