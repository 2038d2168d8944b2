/**
 * A law of the judge over random small catalogues and questions: a finer record may decide what
 * was open, and never turns round what was decided. The laws of single kinds (sampled values,
 * inches and millimetres, the order of the ends) stand with the kinds.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { askJudge, compiled } from './real-judge.js';
import { cases } from './small-document.js';

const RUNS = { numRuns: 400, seed: 7 };

type Records = Record<string, unknown>;

/** Every object below a part that has values, faces and their alternatives included. */
function holdersOf(value: unknown): Records[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(holdersOf);
  return Array.isArray(value) ? inner : [value as Records, ...inner];
}

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
