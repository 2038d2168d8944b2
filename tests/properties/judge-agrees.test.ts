/**
 * The judge against a second, naive one that shares no code with it, over random small catalogues
 * with three questions each.
 *
 * Held without exception: the judge says of no configuration that it holds unless the oracle says
 * so too, and of none that it fails where the oracle says that it holds. Held by count: both say
 * the same of the whole, and of every constraint. What is left to a count are shared choices,
 * where the judge leaves open more than it must and both may name other checks as one choice.
 *
 * FAYING_CASES sets how many catalogues are drawn, FAYING_SEED which:
 *
 *   FAYING_CASES=7000 FAYING_SEED=3 npx vitest run tests/properties/judge-agrees.test.ts
 */

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import type { Outcome } from '../../src/domain/check/state.js';
import { TooManyWorlds } from '../oracle/decide.js';
import { askOracle, type OracleAnswer } from '../oracle/judge.js';
import type { Question } from '../oracle/scene.js';
import { differences } from './agreement.js';
import { askJudge, compiled } from './real-judge.js';
import { type Case, cases } from './small-document.js';

const CASES = Number(process.env.FAYING_CASES ?? 350);
const SEED = Number(process.env.FAYING_SEED ?? 1);

interface Compared {
  /** The number of the catalogue and that of the question to it. */
  readonly at: string;
  readonly oracle: Outcome;
  readonly judge: Outcome;
  readonly differences: readonly string[];
}

const compared: Compared[] = [];
let tooWide = 0;

/** The oracle tries every world; it gives up where these are too many. */
function answerOf(document: CatalogueDocument, question: Question): OracleAnswer | null {
  try {
    return askOracle(document, question);
  } catch (error) {
    if (error instanceof TooManyWorlds) return null;
    throw error;
  }
}

/** Drawn by the hundred, so that a long run need not hold all of them at once. */
function* drawn(): Generator<readonly [string, Case]> {
  for (let first = 0; first < CASES; first += 100) {
    const numRuns = Math.min(100, CASES - first);
    const some = fc.sample(cases(), { numRuns, seed: SEED * 1000 + first / 100 });
    for (const [index, one] of some.entries()) yield [`${first + index}`, one];
  }
}

beforeAll(() => {
  for (const [at, { document, question, more }] of drawn()) {
    const catalogue = compiled(document);
    for (const [number, one] of [question, ...more].entries()) {
      const judgement = askJudge(catalogue, one);
      const oracle = answerOf(document, one);
      if (oracle === null) tooWide += 1;
      else {
        compared.push({
          at: `${at}.${number}`,
          oracle: oracle.outcome,
          judge: judgement.outcome,
          differences: differences(oracle, judgement),
        });
      }
    }
  }
}, 3_600_000);

function share(of: (one: Compared) => boolean): number {
  return compared.filter(of).length / compared.length;
}

describe('two judges', () => {
  it('the judge lets nothing hold that the oracle does not', () => {
    const found = compared.filter(({ oracle, judge }) => judge === 'holds' && oracle !== 'holds');
    expect(found).toEqual([]);
  });

  it('nor lets fail what the oracle lets hold', () => {
    const found = compared.filter(({ oracle, judge }) => judge === 'fails' && oracle === 'holds');
    expect(found).toEqual([]);
  });

  it('say the same of the whole in all but one of two hundred', () => {
    const same = share(({ oracle, judge }) => oracle === judge);
    expect(same).toBeGreaterThan(0.995);
  });

  it('say the same of every constraint in all but five of two hundred', () => {
    expect(share((one) => one.differences.length === 0)).toBeGreaterThan(0.975);
  });

  it('and of every one but shared choices in all but three of two hundred', () => {
    const isOfChoice = (text: string) => text.startsWith('choice ');
    expect(share((one) => one.differences.every(isOfChoice))).toBeGreaterThan(0.985);
  });

  it('the oracle gives up on few', () => {
    expect(tooWide / (3 * CASES)).toBeLessThan(0.01);
  });

  it('and a judge that errs is found out', () => {
    const [first] = fc.sample(cases(), { numRuns: 1, seed: SEED });
    if (first === undefined) throw new Error('one is drawn');
    const { document, question } = first;
    const judgement = askJudge(compiled(document), question);
    const oracle = askOracle(document, question);
    expect(differences(oracle, judgement)).toEqual([]);
    const [constraint, ...others] = judgement.constraints;
    if (constraint === undefined) throw new Error('there is something to judge');
    expect(differences(oracle, { ...judgement, constraints: others })).toHaveLength(1);
    const state = constraint.state === 'open' ? 'holds' : 'open';
    const wrong = { ...judgement, constraints: [{ ...constraint, state } as const, ...others] };
    expect(differences(oracle, wrong)).toHaveLength(1);
    const outcome = judgement.outcome === 'open' ? 'holds' : 'open';
    expect(differences(oracle, { ...judgement, outcome })).toHaveLength(1);
  });
});
