/**
 * What the judge asks to have measured, over random small catalogues: with every number that is
 * asked for an open constraint known exactly at its best estimate, it is decided; and where there
 * are several, with any one of them left out it stays open: none is asked for in vain.
 *
 * Left out: what nobody recorded or identified, what is to be confirmed, and what shares an article
 * or a choice with another constraint. Where no tolerance is certain, the best estimate is an edge;
 * there, being decided is enough.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../../src/domain/catalogue/catalogue.js';
import { FaultList } from '../../src/domain/catalogue/faults.js';
import { withReading } from '../../src/domain/catalogue/laid-reading.js';
import { LostNames } from '../../src/domain/catalogue/lost-names.js';
import type { Judgement } from '../../src/domain/judge/judge.js';
import { type Measure, measureFor } from '../../src/domain/judge/measure.js';
import { middle } from '../../src/domain/quantity/interval.js';
import { exactText } from '../../src/domain/quantity/rational.js';
import { baseSymbol } from '../../src/domain/quantity/unit.js';
import type { Question } from '../oracle/scene.js';
import { askJudge, compiled } from './real-judge.js';
import { cases } from './small-document.js';

const RUNS = { numRuns: 900, seed: 7 };

/** The number at its best estimate, as a record would write it; null where there is none. */
function estimate({ reading }: Measure): string | null {
  if (reading?.form !== 'number' || !reading.recorded) return null;
  const middlemost = middle(reading.domain);
  if (middlemost === null) return null;
  const symbol = baseSymbol(reading.dimension);
  return symbol === '1' || symbol === '' ? null : `${exactText(middlemost)} ±0 ${symbol}`;
}

/** The catalogue with these numbers known; null where one of them cannot be written. */
function known(catalogue: Catalogue, facts: readonly Measure[]): Catalogue | null {
  const parts = new Map(catalogue.parts);
  for (const fact of facts) {
    const { part, interface: face, parameter } = fact.address;
    const record = estimate(fact);
    const own = part === null ? undefined : parts.get(part);
    if (own === undefined || parameter === null || record === null) return null;
    const list = new FaultList(LostNames.none(), 0);
    const read = withReading(own, { interface: face, parameter, record }, catalogue, list);
    if (read === null) return null;
    parts.set(own.id, read);
  }
  return { ...catalogue, parts };
}

interface Found {
  readonly constraint: string;
  readonly count: number;
  readonly isCertain: boolean;
  readonly after: string;
  /** With each of them left out. */
  readonly without: readonly string[];
}

function openOnes(catalogue: Catalogue, question: Question): Found[] {
  const judgement = askJudge(catalogue, question);
  if (judgement.suppositions.length > 0) return [];
  const measure = measureFor(judgement);
  const open = judgement.constraints.filter(
    ({ state, severity }) => state === 'open' && severity === 'must',
  );
  return open.flatMap(({ id, hand, form }) => {
    if (form !== 'mating' && form !== 'check') return [];
    const facts = measure.filter(({ touches }) => touches.includes(id));
    if (facts.length === 0 || facts.some(({ purpose }) => purpose !== 'to-decide')) return [];
    const stateWith = (some: readonly Measure[]): string | null => {
      const laid = known(catalogue, some);
      return laid === null ? null : stateIn(askJudge(laid, question), id, hand);
    };
    const after = stateWith(facts);
    if (after === null) return [];
    const without = facts.map((one) => stateWith(facts.filter((other) => other !== one)) ?? '?');
    const isCertain = facts.every(({ needed }) => needed !== null);
    return [{ constraint: `${form} ${id}`, count: facts.length, isCertain, after, without }];
  });
}

function stateIn({ constraints }: Judgement, id: string, hand: string | null): string {
  return constraints.find((one) => one.id === id && one.hand === hand)?.state ?? 'none';
}

const found: Found[] = fc.sample(cases(), RUNS).flatMap(({ document, question, more }) => {
  const catalogue = compiled(document);
  return [question, ...more].flatMap((one) => openOnes(catalogue, one));
});

describe('the facts asked for an open constraint', () => {
  it('are found in numbers', () => {
    expect(found.length).toBeGreaterThan(20);
    expect(found.filter(({ count }) => count > 1).length).toBeGreaterThan(3);
  });

  it('decide it, all of them known', () => {
    expect(found.filter(({ after }) => after === 'open')).toEqual([]);
  });

  it('are none in vain where they are certain: without any one of them it stays open', () => {
    const vain = found.filter(
      ({ isCertain, without }) => isCertain && without.some((state) => state !== 'open'),
    );
    expect(vain).toEqual([]);
  });
});
