/**
 * Whether the random cases still reach what they are for, so that agreement on them means much: a
 * change of the generators that lets something fade away is found here.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Asked, REACHED } from './reach.js';
import { askJudge, compiled } from './real-judge.js';
import { type Case, cases } from './small-document.js';

const CASES = 300;

function questionsOf({ document, question, more }: Case): Asked[] {
  const catalogue = compiled(document);
  return [question, ...more].map((one) => {
    return { document, question: one, judgement: askJudge(catalogue, one) };
  });
}

describe('the random cases reach', () => {
  const asked = fc.sample(cases(), { numRuns: CASES, seed: 7 }).flatMap(questionsOf);

  it.each(REACHED.map(([name, least, test]) => ({ name, least, test })))(
    '$name in $least of a hundred questions',
    ({ least, test }) => {
      const share = (100 * asked.filter(test).length) / asked.length;
      expect(share).toBeGreaterThanOrEqual(least);
    },
  );
});
