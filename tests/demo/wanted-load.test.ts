/**
 * A margin of a load as a wish, on the demo catalogue: a stronger part is put in because it is
 * asked for, and never otherwise.
 */

import { describe, expect, test } from 'vitest';
import { sayFault } from '../../src/contract/problems/words.js';
import { QuestionError } from '../../src/usecases/errors.js';
import { askKits } from './ask.js';

const wishing = (load: string, atLeast: string) =>
  askKits('lirren-1', [], { routes: 3, want: [{ load, atLeast }] });

describe('a margin that is wished for', () => {
  test('takes a stronger part where the one that is there leaves less', () => {
    const { routes, question } = wishing('clutch-load', '1.50')();
    expect(question.want).toEqual([{ load: 'clutch-load', atLeast: '1.5' }]);
    expect(routes.map(({ grade, changes }) => [grade, changes])).toEqual([['proven', ['clutch']]]);
    const [route] = routes;
    const line = route?.lines.find(({ key }) => key === 'add:clutch:clutch-strong');
    expect(line?.why.map(({ code }) => code)).toEqual(['wanted']);
  });

  test('changes nothing where the vehicle leaves so much already', () => {
    const { routes, summary } = wishing('clutch-load', '1.1')();
    expect(summary.code).toBe('nothing-to-change');
    expect(routes.map(({ changes }) => changes)).toEqual([[]]);
  });

  test('nothing is stronger than the strongest part on record', () => {
    const { routes, complete, conflict } = wishing('clutch-load', '9')();
    expect([routes, complete]).toEqual([[], true]);
    expect(conflict?.demands.map(({ at, text }) => [at, text])).toEqual([
      [
        'want.0',
        'With a margin of 9 at least: The clutch must hold 1.2 times the torque of the engine.',
      ],
    ]);
  });
});

test('a load that there is not, and a margin that is none, are faults of the question', () => {
  const faultsOf = (ask: () => unknown) => {
    try {
      ask();
    } catch (error) {
      if (error instanceof QuestionError) {
        return error.faults.map((fault) => [fault.at, fault.code, sayFault(fault, 'en')]);
      }
      throw error;
    }
    return [];
  };
  expect(faultsOf(wishing('clutch-laod', '0'))).toEqual([
    [
      'want.0.load',
      'unknown-load',
      `"lirren-1" has no load "clutch-laod". Did you mean 'clutch-load'?`,
    ],
    ['want.0.atLeast', 'not-a-margin', 'It is no margin such as 1.25: a decimal above zero.'],
  ]);
  // A check of the layout that is no load.
  expect(faultsOf(wishing('axle-match', '1.25')).map(([at]) => at)).toEqual(['want.0.load']);
});
