/**
 * Laws of the judge, over random small catalogues and questions. Those of single kinds (sampled
 * values, inches and millimetres, the order of the ends) stand with the kinds.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { asBuilt } from '../../src/domain/judge/configuration.js';
import { judge } from '../../src/domain/judge/judge.js';
import { askJudge, compiled } from './real-judge.js';
import { cases } from './small-document.js';

const RUNS = { numRuns: 300, seed: 5 };

type Records = Record<string, unknown>;

/** Every object below a part that has values, faces and their alternatives included. */
function holdersOf(value: unknown): Records[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(holdersOf);
  return Array.isArray(value) ? inner : [value as Records, ...inner];
}

const KEPT = ['id', 'name', 'roles', 'kind', 'side', 'absent', 'optional', 'interfaces', 'values'];

/** Where something recorded can be deleted from the parts. */
function deletions(document: CatalogueDocument): [Records, string][] {
  return (document.parts ?? []).flatMap((part) =>
    [part.interfaces, part.values].flatMap(holdersOf).flatMap((holder) =>
      Object.keys(holder)
        .filter((key) => !KEPT.includes(key) && !['is', 'evidence', 'basis'].includes(key))
        .filter((key) => !['choose', 'of', 'tool', 'alternatives'].includes(key))
        .map((key): [Records, string] => [holder, key]),
    ),
  );
}

function outcomesAsBuilt(document: CatalogueDocument): string[] {
  const catalogue = compiled(document);
  return [...catalogue.vehicles.values()].map((vehicle) => {
    const present = asBuilt(vehicle);
    const { layout } = vehicle;
    const parts = { catalogue, pairsOf: catalogue, vehicle, layout, present, judged: present };
    return judge({ ...parts, torque: null, use: null, ignorePresent: false }).outcome;
  });
}

describe('a vehicle as the works built it is right', () => {
  it('whatever its records say or lack', () => {
    fc.assert(
      fc.property(cases(), fc.nat(), ({ document }, at) => {
        const copy = structuredClone(document);
        const places = deletions(copy);
        const [holder, key] = places[at % Math.max(places.length, 1)] ?? [];
        if (holder !== undefined && key !== undefined) Reflect.deleteProperty(holder, key);
        expect(new Set(outcomesAsBuilt(copy))).toEqual(new Set(['holds']));
      }),
      RUNS,
    );
  });

  it('though its records may fail by themselves: the law is no idle one', () => {
    const failing = fc.sample(cases(), RUNS).some(({ document, question }) => {
      const { constraints } = askJudge(compiled(document), { ...question, chosen: {} });
      return constraints.some((one) => one.state === 'given' && one.computed === 'fails');
    });
    expect(failing).toBe(true);
  });
});

/** Half the tolerance around the same middle, for each form that the drawn values have. */
function narrower(text: string): string | null {
  const rounded = /^(\d+) mm$/.exec(text);
  if (rounded !== null) return `${rounded[1]} ±0.25 mm`;
  const around = /^([\d.]+) ±([\d.]+) (\S+)$/.exec(text);
  if (around !== null) return `${around[1]} ±${Number(around[2]) / 2} ${around[3]}`;
  const range = /^([\d.]+) to ([\d.]+) (\S+)$/.exec(text);
  if (range === null) return null;
  const [low, high] = [Number(range[1]), Number(range[2])];
  return `${low + (high - low) / 4} to ${high - (high - low) / 4} ${range[3]}`;
}

const MEASURED = ['length', 'width', 'pin', 'bore'];

/** The same document with every measured value known twice as finely; how many there were. */
function finer(document: CatalogueDocument): { document: CatalogueDocument; count: number } {
  const copy = structuredClone(document);
  let count = 0;
  for (const holder of (copy.parts ?? []).flatMap(holdersOf)) {
    for (const key of MEASURED) {
      const record = holder[key];
      const isBare = typeof record === 'string';
      const at = isBare ? holder : (record as Records | undefined);
      const name = isBare ? key : 'is';
      const text = at?.[name];
      if (at === undefined || typeof text !== 'string' || at.tool !== undefined) continue;
      const known = narrower(text);
      if (known === null) continue;
      at[name] = known;
      count += 1;
    }
  }
  return { document: copy, count };
}

describe('a narrower record', () => {
  it('never turns what holds into what fails, nor the other way round', () => {
    let narrowed = 0;
    let decided = 0;
    fc.assert(
      fc.property(cases(), ({ document, question }) => {
        const sharper = finer(document);
        narrowed += sharper.count;
        const before = askJudge(compiled(document), question).outcome;
        const after = askJudge(compiled(sharper.document), question).outcome;
        if (before === 'open' && after !== 'open') decided += 1;
        expect([before, after]).not.toEqual(['holds', 'fails']);
        expect([before, after]).not.toEqual(['fails', 'holds']);
      }),
      RUNS,
    );
    expect(narrowed).toBeGreaterThan(RUNS.numRuns);
    expect(decided).toBeGreaterThan(0);
  });
});

describe('what has nothing to do with a question', () => {
  it('changes nothing in its answer', () => {
    fc.assert(
      fc.property(cases(), ({ document, question }) => {
        const more = structuredClone(document);
        const [role] = more.roles ?? [];
        const stranger = { id: 'stranger', name: 'Stranger', roles: [role?.id ?? ''] };
        const wider = { ...more, parts: [...(more.parts ?? []), stranger] } as CatalogueDocument;
        const told = (one: CatalogueDocument) =>
          askJudge(compiled(one), question).constraints.map(
            ({ form, id, hand, state, computed, code }) =>
              [form, id, hand, state, computed, code].join(' '),
          );
        expect(told(wider)).toEqual(told(document));
      }),
      { ...RUNS, numRuns: 100 },
    );
  });
});
