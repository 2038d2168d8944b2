/**
 * Laws of the judge over random small catalogues and questions: what may be restated, deleted or
 * added without another answer. Below each stands what breaks it when it is broken on purpose, so
 * that no law here is an idle one.
 *
 * FAYING_CASES sets how many catalogues are drawn for each law, FAYING_SEED which.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CatalogueDocument, VehicleRecord } from '../../src/domain/catalogue/document.js';
import type { Question } from '../oracle/scene.js';
import { linesOf } from './agreement.js';
import { askJudge, compiled } from './real-judge.js';
import { turned } from './restated.js';
import { type Case, cases } from './small-document.js';
import { imperial, metric } from './units.js';

const RUNS = {
  numRuns: Number(process.env.FAYING_CASES ?? 60),
  seed: Number(process.env.FAYING_SEED ?? 5),
};
const timeout = 30_000 + RUNS.numRuns * 200;

type Law = (one: Case) => boolean;

function holds(law: Law): void {
  fc.assert(fc.property(cases(), law), RUNS);
}

/** Drawn until something breaks it, which is soon. */
function breaks(law: Law): void {
  const once = { seed: RUNS.seed, numRuns: 400, endOnFailure: true };
  expect(fc.check(fc.property(cases(), law), once).failed).toBe(true);
}

function told(document: CatalogueDocument, question: Question): string {
  return linesOf(askJudge(compiled(document), question)).join('\n');
}

describe('a vehicle as the works built it', { timeout }, () => {
  const untouched = { said: {}, chosen: {}, saidAdapters: {}, chosenAdapters: {}, torque: null };

  const statesAsBuilt = (document: CatalogueDocument) => {
    const catalogue = compiled(document);
    return [...catalogue.vehicles.keys()].flatMap((vehicle) => {
      const question = { ...untouched, vehicle, use: null, ignorePresent: false };
      return askJudge(catalogue, question).constraints;
    });
  };

  it('is given, whichever record is deleted', () => {
    const all = fc.property(cases(), fc.nat(), ({ document }, at) => {
      const states = statesAsBuilt(without(document, at)).map(({ state }) => state);
      expect([...new Set(states)].filter((state) => state !== 'given')).toEqual([]);
    });
    fc.assert(all, RUNS);
  });

  it('though by the records alone it need not hold', () => {
    breaks(({ document }) => {
      return statesAsBuilt(document).every(({ computed }) => computed === 'holds');
    });
  });
});

describe('which end of a mating comes first', { timeout }, () => {
  /** Null where an adapter has a way of being turned that only shared choices tell from another. */
  const linesOfEnds = (document: CatalogueDocument, question: Question): string | null => {
    const judgement = askJudge(compiled(document), question);
    const { configuration, bench } = judgement;
    const rows = [...configuration.judged.adapters.values()];
    if (rows.every(({ parts }) => parts.length === 0)) return linesOf(judgement).join('\n');
    if (bench.plan.groups.some(({ length }) => length > 1)) return null;
    return linesOf(judgement)
      .filter((line) => !line.startsWith('choice '))
      .join('\n');
  };

  const isSame =
    (turnsRow: boolean): Law =>
    ({ document, question }) => {
      const one = linesOfEnds(document, question);
      const turnedRound = turned(document, question, turnsRow);
      const other = linesOfEnds(turnedRound.document, turnedRound.question);
      return one === null || other === null || one === other;
    };

  it('does not matter', () => {
    holds(isSame(true));
  });

  it('but for adapters that are not turned with it', () => {
    breaks(isSame(false));
  });
});

describe('inches and millimetres, pound-feet and newton metres', { timeout }, () => {
  const agree =
    (factors?: Parameters<typeof metric>[2]): Law =>
    ({ document, question }) => {
      const one = imperial(document, question);
      const other = metric(document, question, factors);
      return told(one.document, one.question) === told(other.document, other.question);
    };

  it('agree', () => {
    holds(agree());
  });

  it('but not records with an inch of 25 mm', () => {
    breaks(agree({ in: '25', 'lbf.ft': '1.3558179483314004' }));
  });
});

describe('what has nothing to do with a question', { timeout }, () => {
  const changesNothing =
    (add: (document: CatalogueDocument) => CatalogueDocument): Law =>
    ({ document, question }) =>
      told(document, question) === told(add(document), question);

  it('changes nothing: parts of their own on a vehicle of its own', () => {
    holds(changesNothing(withStrangers));
  });

  it('but a vehicle that the works built of the very same parts may', () => {
    breaks(({ document, question }) => {
      const { vehicle, chosen, chosenAdapters } = question;
      const [built] = (document.vehicles ?? []).filter(({ id }) => id === vehicle);
      if (built === undefined) throw new Error('the vehicle is in the document');
      const fitted = { ...built.fitted, ...chosen };
      const twin = { ...built, id: 'twin', fitted } as VehicleRecord;
      const isDirect = Object.keys(chosenAdapters).length === 0;
      const more = isDirect ? [twin] : [];
      return changesNothing((one) => ({ ...one, vehicles: [...(one.vehicles ?? []), ...more] }))({
        document,
        question,
        more: [],
      });
    });
  });
});

const NO_RECORDS = ['kind', 'side', 'optional', 'absent', 'alternatives', 'evidence'];

/** One record less: a value, a face, one of its parameters, what is fitted somewhere, a fact. */
function without(document: CatalogueDocument, at: number): CatalogueDocument {
  const copy = structuredClone(document);
  const { parts = [], vehicles = [] } = copy;
  const faces = parts.flatMap(({ interfaces = {} }) => Object.values(interfaces));
  const holders = [
    ...parts.map(({ values }) => values),
    // An adapter without one of its faces is none.
    ...parts.flatMap(({ roles, interfaces }) => (roles.includes('adapter') ? [] : [interfaces])),
    ...faces,
    ...vehicles.flatMap(({ fitted, facts }) => [fitted, facts]),
  ];
  const records = holders.flatMap((holder = {}) =>
    Object.keys(holder)
      .filter((key) => !NO_RECORDS.includes(key))
      .map((key) => [holder, key] as const),
  );
  const [holder, key] = records[at % Math.max(records.length, 1)] ?? [];
  if (holder !== undefined && key !== undefined) Reflect.deleteProperty(holder, key);
  return copy;
}

/** Each part once more under another name, and a vehicle of these. */
function withStrangers(document: CatalogueDocument): CatalogueDocument {
  const { parts = [], vehicles = [] } = document;
  const [first] = vehicles;
  if (first === undefined) throw new Error('a document has a vehicle');
  const strange = <Fitted>(fitted: Fitted): Fitted => {
    if (typeof fitted === 'string') return `strange-${fitted}` as Fitted;
    if (typeof fitted !== 'object' || fitted === null) return fitted;
    if (Array.isArray(fitted)) return fitted.map(strange) as Fitted;
    // A fact is called the same on every vehicle.
    const entries = Object.entries(fitted).map(([key, one]): [string, unknown] => [
      key,
      key === 'by' ? one : strange(one),
    ]);
    return Object.fromEntries(entries) as Fitted;
  };
  const strangers = parts.map((part) => ({ ...part, id: `strange-${part.id}` }));
  const other = { ...first, id: 'other', fitted: strange(first.fitted ?? {}) };
  return { ...document, parts: [...strangers, ...parts], vehicles: [other, ...vehicles] };
}
