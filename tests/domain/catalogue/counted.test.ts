/**
 * Documents that are little but faults: so many are listed, all are counted, and saying them takes
 * no longer than in proportion to the document.
 */

import { describe, expect, it } from 'vitest';
import { MOST_LISTED } from '../../../src/domain/catalogue/faults.js';
import { changed, from, saidOf } from './sample-document.js';

function many<Item>(count: number, item: (index: number) => Item): Item[] {
  return Array.from({ length: count }, (_, index) => item(index));
}

describe('faults', () => {
  const faultsOf = (count: number) =>
    saidOf(changed({ '/offers': many(count, () => 5) })).faults.map(({ code, pointer, text }) => {
      return `${code} ${pointer} ${text}`;
    });

  it('are all listed, as many as the longest list holds', () => {
    const faults = faultsOf(MOST_LISTED);
    expect(faults).toHaveLength(MOST_LISTED);
    expect(new Set(faults).size).toBe(MOST_LISTED);
    expect(faults.at(-1)).toMatch(`not-an-object /offers/${MOST_LISTED - 1} `);
  });

  it('beyond that are counted, and one fault says how many', () => {
    const faults = faultsOf(MOST_LISTED + 1);
    expect(faults).toHaveLength(MOST_LISTED + 1);
    expect(faults.at(-1)).toBe(
      'too-many-faults  There are more faults, 1 of them, that are not listed.',
    );
    expect(faultsOf(MOST_LISTED + 2345).at(-1)).toMatch('2345 of them');
  });

  it('refuse the document even where only those that are not listed do', () => {
    // The whole list is faulty, so what comes after it is never listed, but counted.
    const offers = many(MOST_LISTED, () => 5);
    const { faults } = saidOf(changed({ '/facts': offers, '/offers': offers }));
    expect(faults.at(-1)?.text).toMatch(`${MOST_LISTED} of them`);
  });
});

describe('doubts', () => {
  it('are listed and counted likewise, and refuse nothing', () => {
    const face = { kind: 'spline', side: 'shaft', teeth: 9 };
    const shafts = many(MOST_LISTED + 7, (index) => {
      return { id: `shaft-${index}`, roles: ['adapter'], name: 'Shaft', interfaces: { one: face } };
    });
    const parts = [...(from('/parts') as unknown[]), ...shafts];
    const { faults, warnings } = saidOf(changed({ '/parts': parts }));
    expect(faults).toEqual([]);
    expect(warnings).toHaveLength(MOST_LISTED + 1);
    expect(warnings.at(-1)).toEqual({
      pointer: '',
      code: 'too-many-doubts',
      text: 'There are more doubts, 7 of them, that are not listed.',
    });
  });
});

describe('names that nothing has', () => {
  const offer = { price: '1.00' };
  const said = (count: number) => {
    const offers = many(count, (index) => ({ ...offer, id: `o-${index}`, for: `gb5-${index}` }));
    const parts = many(count, (index) => {
      return { id: `gb6-${index}`, roles: ['adapter'], name: 'Adapter' };
    });
    const whole = [...(from('/parts') as unknown[]), ...parts];
    return saidOf(changed({ '/parts': whole, '/offers': offers })).faults;
  };

  it('are compared with those that there are only as long as it helps', () => {
    const faults = said(3000);
    expect(faults).toHaveLength(3000);
    expect(faults.filter(({ text }) => text.includes('Did you mean'))).toHaveLength(1000);
    expect(faults[0]?.text).toBe('There is no part, lot or work "gb5-0". Did you mean \'gb5-a\'?');
    expect(faults.at(-1)?.text).toBe('There is no part, lot or work "gb5-2999".');
  });
});
