/**
 * What can come out of a reading: values that a tool cannot tell apart are one outcome.
 */

import { describe, expect, test } from 'vitest';
import type { Part } from '../../../src/domain/catalogue/catalogue.js';
import { type Has, meanLeft, outcomesOf, tells } from '../../../src/domain/identify/outcomes.js';
import { closed } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { asked, read } from './bench.js';

function part(id: string): Part {
  return { id } as unknown as Part;
}

function has(id: string, low: string | null, high = low, face: Has['face'] = 'there'): Has {
  const isOpen = low === null && face !== 'absent';
  const items =
    low === null || high === null
      ? []
      : [{ interval: closed(rational(low), rational(high)), code: null }];
  return { part: part(id), items, isOpen, face };
}

function idsOf({ outcomes }: ReturnType<typeof outcomesOf>): string[] {
  return outcomes.map(({ parts }) => parts.map(({ id }) => id).join(' '));
}

describe('outcomes', () => {
  const three = [has('c', '12', '13'), has('a', '10', '11'), has('b', '11', '11.5')];

  test('are values that do not overlap', () => {
    expect(idsOf(outcomesOf(three, null))).toEqual(['a b', 'c']);
  });

  test('are no more than the tool tells apart', () => {
    expect(idsOf(outcomesOf(three, rational('0.24')))).toEqual(['a b', 'c']);
    expect(idsOf(outcomesOf(three, rational('0.25')))).toEqual(['c a b']);
    expect(outcomesOf(three, rational('0.24')).gap?.valueOf()).toBe(0.5);
  });

  test('leave what is not recorded each time, and what has no such face apart', () => {
    const more = [...three, has('open', null), has('none', null, null, 'absent')];
    expect(idsOf(outcomesOf(more, null))).toEqual(['a b open', 'c open', 'none']);
    const unseen = [...more, has('unseen', null, null, 'not-recorded')];
    expect(idsOf(outcomesOf(unseen, null)).at(-1)).toBe('none unseen');
  });

  test('tell something where one leaves fewer, and are weighed by what they leave', () => {
    const { outcomes } = outcomesOf(three, null);
    expect(tells(outcomes, 3)).toBe(true);
    expect(meanLeft(outcomes)).toBeCloseTo(5 / 3);
    expect(tells(outcomesOf([has('a', '1'), has('b', '1')], null).outcomes, 2)).toBe(false);
  });
});

describe('what to find out next', () => {
  test('is the tool that tells the values apart, and how finely', () => {
    const [ask] = asked({ role: 'shaft' }).ask;
    expect(ask).toMatchObject({
      code: 'measure-next',
      on: { interface: 'near', parameter: 'major' },
      tool: 'caliper',
      values: [
        { range: { low: '19.995', high: '20.005' }, parts: ['shaft-a', 'shaft-b'] },
        { range: { low: '20.995', high: '21.005' }, parts: ['shaft-a', 'shaft-c'] },
      ],
    });
    expect(ask?.needed?.high).toBe('0.495');
  });

  test('is first the role where nothing is known', () => {
    const [ask] = asked({}).ask;
    expect(ask?.field).toBe('role');
    expect(ask?.values.map(({ value, count }) => [value, count])).toEqual([
      ['box', 3],
      ['odd', 3],
      ['shaft', 3],
    ]);
  });

  test('is nothing that was told, no rating, and nothing where one is left', () => {
    const { ask } = asked({ role: 'box' });
    expect(ask.length).toBeGreaterThan(2);
    expect(ask.map(({ on }) => on?.parameter)).not.toContain('torque');
    expect(ask.some(({ field }) => field === 'role')).toBe(false);
    const one = asked({ role: 'box', measured: [read({ interface: 'plug' }, 'none')] });
    expect(one.ask).toEqual([]);
  });
});
