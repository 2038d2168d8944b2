/**
 * The judge against a second, naive one that shares no code with it, over random small catalogues
 * and questions.
 *
 * Held without exception: the judge says of no configuration that it holds unless the oracle says
 * so too, and of none that it fails where the oracle says that it holds. Held by count: both say
 * the same of the whole, and of every constraint. What is left to a count are shared choices,
 * where the judge leaves open more than it must and both may name other checks as one choice.
 *
 * FAYING_CASES sets how many cases are drawn, FAYING_SEED which.
 */

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Judgement } from '../../src/domain/judge/judge.js';
import { askOracle, type OracleAnswer } from '../oracle/judge.js';
import { differences } from './agreement.js';
import { askJudge, compiled } from './real-judge.js';
import { cases } from './small-document.js';

const CASES = Number(process.env.FAYING_CASES ?? 800);
const SEED = Number(process.env.FAYING_SEED ?? 1);

interface Compared {
  readonly index: number;
  readonly oracle: OracleAnswer;
  readonly judgement: Judgement;
  readonly differences: readonly string[];
}

const compared: Compared[] = [];
let tooWide = 0;

/** The oracle tries every world; it gives up where these are too many. */
function answerOf(one: Parameters<typeof askOracle>): OracleAnswer | null {
  try {
    return askOracle(...one);
  } catch (error) {
    if (error instanceof Error && /^more than \d+ worlds$/.test(error.message)) return null;
    throw error;
  }
}

beforeAll(() => {
  for (const [index, one] of fc.sample(cases(), { numRuns: CASES, seed: SEED }).entries()) {
    const judgement = askJudge(compiled(one.document), one.question);
    const oracle = answerOf([one.document, one.question]);
    if (oracle === null) tooWide += 1;
    else compared.push({ index, oracle, judgement, differences: differences(oracle, judgement) });
  }
}, 600_000);

function share(of: (one: Compared) => boolean): number {
  return compared.filter(of).length / compared.length;
}

describe('two judges', () => {
  it('the judge lets nothing hold that the oracle does not', () => {
    const found = compared.filter(
      ({ oracle, judgement }) => judgement.outcome === 'holds' && oracle.outcome !== 'holds',
    );
    expect(found.map((one) => [one.index, one.differences])).toEqual([]);
  });

  it('nor lets fail what the oracle lets hold', () => {
    const found = compared.filter(
      ({ oracle, judgement }) => judgement.outcome === 'fails' && oracle.outcome === 'holds',
    );
    expect(found.map((one) => [one.index, one.differences])).toEqual([]);
  });

  it('say the same of the whole in all but one of two hundred', () => {
    const same = share(({ oracle, judgement }) => oracle.outcome === judgement.outcome);
    expect(same).toBeGreaterThan(0.995);
  });

  it('say the same of every constraint in all but four of a hundred', () => {
    expect(share((one) => one.differences.length === 0)).toBeGreaterThan(0.96);
  });

  it('and of every one but shared choices in all but two of a hundred', () => {
    const isOfChoice = (text: string) => text.startsWith('choice ');
    expect(share((one) => one.differences.every(isOfChoice))).toBeGreaterThan(0.98);
  });

  it('the oracle gives up on few', () => {
    expect(tooWide / CASES).toBeLessThan(0.01);
  });
});

describe('the cases reach what they are for', () => {
  const FORMS = ['mating', 'check', 'choice', 'rule'] as const;
  const STATES = ['holds', 'open', 'fails', 'given'] as const;

  it.each(FORMS.flatMap((form) => STATES.map((state) => [form, state] as const)))(
    'a %s that is %s',
    (form, state) => {
      const reached = share(({ judgement }) =>
        judgement.constraints.some((one) => one.form === form && one.state === state),
      );
      expect(reached).toBeGreaterThan(form === 'choice' ? 0.002 : 0.02);
    },
  );

  it.each(['holds', 'open', 'fails'] as const)('a whole that %s', (outcome) => {
    expect(share(({ judgement }) => judgement.outcome === outcome)).toBeGreaterThan(0.03);
  });

  it.each(['as-built', 'stated', 'contradicts-as-built', 'evidence-too-weak', 'chain-broken'])(
    'the reason %s',
    (code) => {
      const reached = compared.some(({ judgement }) =>
        judgement.constraints.some((one) => one.code === code),
      );
      expect(reached).toBe(true);
    },
  );
});
