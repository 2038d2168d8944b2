/**
 * Check values of gear ratios and axle loops, each with its source and how its figure was had.
 */

import { describe, expect, it } from 'vitest';
import { DEFAULT_COUPLINGS } from '../../src/domain/check/coupling.js';
import { contains } from '../../src/domain/quantity/interval.js';
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import {
  equals,
  exactText,
  fraction,
  multiply,
  ONE,
  rational,
  subtract,
} from '../../src/domain/quantity/rational.js';
import { roundedInterval, truncatedInterval } from '../../src/domain/quantity/rounding.js';
import { world } from '../rules/sketch.js';
import { found, judged } from '../rules/world.js';
import { judgeLoop, senseOf } from './axle-loop.js';

const ARITHMETIC = { source: 'exact arithmetic or geometry', basis: 'arithmetic' };
const TITLE = '$id ($source; $basis)';

function ratioOf(text: string, tool?: string) {
  const read = parseQuantity(text, { type: 'ratio', dimension: '1', tool });
  if (isFault(read)) throw new Error(read.text);
  return read.interval;
}

describe('tooth counts', () => {
  it.each([
    {
      id: 'ratio-01',
      teeth: '39/11',
      fraction: '39/11',
      decimal: 3.5454545454545454,
      ...ARITHMETIC,
    },
    {
      id: 'ratio-04',
      teeth: '51/15',
      fraction: '17/5',
      decimal: 3.4,
      source: 'worked gear-ratio example',
      basis: 'value read in the source',
    },
    {
      id: 'ratio-05',
      teeth: '39/20',
      fraction: '39/20',
      decimal: 1.95,
      source: 'published gear-pair list',
      basis: 'value read in the source',
    },
  ])(TITLE, (vector) => {
    const { low, high } = ratioOf(vector.teeth);
    if (low === null || high === null) throw new Error('tooth counts are exact');
    expect(equals(low, high)).toBe(true);
    expect(exactFraction(low)).toBe(vector.fraction);
    expect(Math.abs(low.valueOf() - vector.decimal)).toBeLessThan(1e-12);
  });

  it(`ratio-02 (${ARITHMETIC.source}; ${ARITHMETIC.basis}): 3.900 by 10/11 is 39/11`, () => {
    const chain = multiply(fraction(39n, 10n), fraction(10n, 11n));
    expect(exactFraction(chain)).toBe('39/11');
  });
});

describe('decimals', () => {
  it.each([
    {
      id: 'ratio-07',
      decimal: '3.545',
      mode: 'rounded',
      contains: true,
      interval: ['7089/2000', '7091/2000'],
      ...ARITHMETIC,
    },
    {
      id: 'ratio-08',
      decimal: '3.55',
      mode: 'rounded',
      contains: true,
      interval: ['709/200', '711/200'],
      ...ARITHMETIC,
    },
    {
      id: 'ratio-09',
      decimal: '3.54',
      mode: 'rounded',
      contains: false,
      interval: ['707/200', '709/200'],
      ...ARITHMETIC,
    },
    {
      id: 'ratio-10',
      decimal: '3.54',
      mode: 'truncated',
      contains: true,
      interval: ['177/50', '71/20'],
      ...ARITHMETIC,
    },
  ])(`${TITLE}: $decimal, $mode`, ({ decimal, mode, interval, ...vector }) => {
    const read = mode === 'rounded' ? roundedInterval(decimal) : truncatedInterval(decimal);
    expect(contains(read, rational('39/11'))).toBe(vector.contains);
    const [low = '', high = ''] = interval;
    expect(read).toEqual({
      low: rational(low),
      lowOpen: false,
      high: rational(high),
      highOpen: true,
    });
  });

  it('a ratio is read as rounded; read from a tag it may have been cut off too', () => {
    expect(ratioOf('3.55')).toEqual(roundedInterval('3.55'));
    expect(contains(ratioOf('3.54'), rational('39/11'))).toBe(false);
    expect(contains(ratioOf('3.54', 'tag'), rational('39/11'))).toBe(true);
  });

  it.each([
    { id: 'ratio-12', decimal: '3.55', pairs: [[39, 11]], ...ARITHMETIC },
    { id: 'ratio-13', decimal: '3.545', pairs: [[39, 11]], ...ARITHMETIC },
  ])(`${TITLE}: pinions of 8 to 15 and rings of up to 60, which is a choice`, (vector) => {
    const read = ratioOf(vector.decimal);
    const pairs: number[][] = [];
    for (let pinion = 8; pinion <= 15; pinion += 1) {
      for (let ring = 1; ring <= 60; ring += 1) {
        if (contains(read, fraction(BigInt(ring), BigInt(pinion)))) pairs.push([ring, pinion]);
      }
    }
    expect(pairs).toEqual(vector.pairs);
  });
});

describe('axle loops through the judge', () => {
  const DEMO = { source: 'the invented demonstration conversion', basis: 'arithmetic' };

  it.each([
    { id: 'ratio-03', front: ['39/10'], rear: ['11/10', '39/11'], ...ARITHMETIC },
    { id: 'demo-01', front: ['43/11'], rear: ['12/11', '43/12'], ...DEMO },
  ])(`${TITLE}: no mismatch`, ({ front, rear }) => {
    expect(judgeLoop({ front, rear })).toMatchObject({
      state: 'holds agrees',
      percent: ['0', '0'],
    });
  });

  it.each([
    {
      id: 'loop-01',
      front: ['39/10'],
      rear: ['39/11'],
      sense: 'front_slower',
      percent: -9.090909090909093,
      state: 'fails first-too-slow',
      ...ARITHMETIC,
    },
    {
      id: 'demo-02',
      front: ['43/11'],
      rear: ['12/11', '43/11'],
      sense: 'front_faster',
      percent: 9.090909090909083,
      state: 'fails first-too-fast',
      ...DEMO,
    },
    {
      id: 'demo-06',
      front: ['43/11'],
      rear: ['35/34', '43/11'],
      sense: 'front_faster',
      percent: 2.941176470588225,
      state: 'fails first-too-fast',
      ...DEMO,
    },
  ])(`${TITLE}: $percent per cent`, ({ front, rear, sense, percent, state }) => {
    const loop = judgeLoop({ front, rear });
    expect(loop.state).toBe(state);
    for (const end of loop.decimal) {
      expect(Math.abs(end - percent)).toBeLessThan(1e-9);
      expect(senseOf(end)).toBe(sense);
    }
  });

  it(`loop-02 (${ARITHMETIC.source}; ${ARITHMETIC.basis}): tyres of 631.9 and 631.4 mm`, () => {
    // 205/55R16 in front, 225/50R16 behind; the factor 3.05 of both circumferences cancels.
    const tyres = { front: [205, 55, 16], rear: [225, 50, 16] } as const;
    const loop = judgeLoop({ front: ['39/10'], rear: ['39/10'], tyres });
    expect(loop.percent[0]).toBe(
      exactText(multiply(subtract(rational('6319/6314'), ONE), rational(100))),
    );
    for (const end of loop.decimal) expect(Math.abs(end - 0.07918910357935793)).toBeLessThan(1e-4);
    expect(loop.state).toBe('holds agrees');
  });

  it(`loop-04 (${ARITHMETIC.source}; ${ARITHMETIC.basis}): a rounded ratio proves no match`, () => {
    const { decimal } = judgeLoop({ front: ['39/10'], rear: ['11/10', '3.545'] });
    const expected = [-0.026923076923079936, 0.0012820512820477248] as const;
    for (const [index, end] of decimal.entries()) {
      expect(Math.abs(end - (expected[index] ?? Number.NaN))).toBeLessThan(1e-9);
    }
    expect(decimal[0] <= 0 && decimal[1] >= 0).toBe(true);
  });
});

describe('turns by hand, tractors and planetary centres', () => {
  it(`loop-05 (${ARITHMETIC.source}; ${ARITHMETIC.basis}): 13.5 turns for 10 are 1.35`, () => {
    // Both axles are turned from one point: each turns as often as the other's total is great.
    const { decimal, state } = judgeLoop({ front: ['10/1'], rear: ['27/2'] });
    for (const end of decimal) expect(1 + end / 100).toBeCloseTo(1.35, 12);
    expect(state).toBe('fails first-too-fast');
  });

  it('loop-05b (tractor front-lead practice; value read in the source): no car tolerance', () => {
    const [least, most] = [1, 5];
    for (const coupling of DEFAULT_COUPLINGS.keys()) {
      const lead = judgeLoop({ front: ['1/1'], rear: [`${100 + most}/100`] }, coupling);
      expect(lead.decimal).toEqual([most, most]);
      expect(lead.state).toBe('fails first-too-fast');
      const { pass } = DEFAULT_COUPLINGS.get(coupling) ?? {};
      expect(pass?.compare(fraction(BigInt(least), 100n))).toBeLessThanOrEqual(0);
    }
  });

  it.each([
    { sun: '1000', outcome: 'holds' },
    { sun: '1001', outcome: 'fails' },
    { sun: '999', outcome: 'fails' },
  ])(
    'loop-07 (planetary gear kinematics, Willis equation; formula read, value computed): sun $sun',
    ({ sun, outcome }) => {
      // Teeth by speed of sun and ring together: all the teeth by the speed of the carrier.
      const centre = world({
        roles: {
          planetary: { ring: 'count', sun: 'count' },
          speeds: { ring: 'count', sun: 'count', carrier: 'count' },
        },
        places: ['planetary', 'speeds'],
        checks: [
          {
            id: 'willis',
            within: [
              {
                sum: [
                  ['planetary.sun', 'speeds.sun'],
                  ['planetary.ring', 'speeds.ring'],
                ],
              },
              ['speeds.carrier', { sum: ['planetary.sun', 'planetary.ring'] }],
            ],
            tolerance: '0',
          },
        ],
        parts: {
          'planetary-a': { ring: 100, sun: 50 },
          'speeds-a': { ring: 1000, sun: Number(sun), carrier: 1000 },
        },
        cars: { car: {} },
      });
      const turning = judged(centre, { put: { planetary: 'planetary-a', speeds: 'speeds-a' } });
      expect(found(turning, 'willis')?.state).toBe(outcome);
    },
  );
});

function exactFraction(value: ReturnType<typeof rational>): string {
  return value.toFraction();
}
