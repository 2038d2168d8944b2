/**
 * Check values of axle loops and of planetary centres.
 */

import type { Vector } from '../vector.js';

const LOOP = {
  calculation: 'axle-loop',
  source: 'exact arithmetic or geometry',
  basis: 'arithmetic',
} as const;

const DEMO = { ...LOOP, source: 'the invented demonstration conversion' } as const;

interface Expectation {
  /** Exactly, in per cent. */
  readonly exactly: string;
  readonly near: number;
  readonly sense: string;
}

const loop = (
  shared: Omit<Vector, 'id' | 'given' | 'output' | 'expected'>,
  id: string,
  given: Vector['given'],
  { exactly, near, sense }: Expectation,
): Vector[] => [
  { ...shared, id: `${id} (exact)`, given, output: 'mismatch', expected: { exactly } },
  { ...shared, id, given, output: 'mismatch', expected: { near, within: 1e-9 } },
  { ...shared, id: `${id} (sense)`, given, output: 'sense', expected: { exactly: sense } },
];

const NOTHING: Expectation = { exactly: '0', near: 0, sense: 'equal' };

const CENTRE = {
  calculation: 'planetary-centre',
  source: 'planetary gear kinematics (Willis equation)',
  basis: 'read, computed',
} as const;

const TWO_TO_ONE = { ringTeeth: 100, sunTeeth: 50 };

export const AXLE_LOOP: readonly Vector[] = [
  ...loop(LOOP, 'ratio-03', { frontStages: ['39/10'], rearStages: ['11/10', '39/11'] }, NOTHING),
  ...loop(DEMO, 'demo-01', { frontStages: ['43/11'], rearStages: ['12/11', '43/12'] }, NOTHING),
  ...loop(
    LOOP,
    'loop-01',
    { frontStages: ['39/10'], rearStages: ['39/11'] },
    { exactly: '-100/11', near: -9.090909090909093, sense: 'front-slower' },
  ),
  ...loop(
    DEMO,
    'demo-02',
    { frontStages: ['43/11'], rearStages: ['12/11', '43/11'] },
    { exactly: '100/11', near: 9.090909090909083, sense: 'front-faster' },
  ),
  ...loop(
    DEMO,
    'demo-06',
    { frontStages: ['43/11'], rearStages: ['35/34', '43/11'] },
    { exactly: '50/17', near: 2.941176470588225, sense: 'front-faster' },
  ),
  {
    ...LOOP,
    id: 'loop-02',
    given: {
      frontStages: ['39/10'],
      rearStages: ['39/10'],
      frontTyre: '205/55R16',
      rearTyre: '225/50R16',
    },
    output: 'mismatch',
    expected: { near: 0.07918910357935793, within: 1e-4 },
  },
  {
    ...LOOP,
    id: 'loop-own-1',
    // 6 mm of tread less on a free diameter of 631.9 mm: 12 mm of it.
    given: {
      frontStages: ['39/10'],
      rearStages: ['39/10'],
      frontTyre: '205/55R16',
      frontWear: '6 mm',
      rearTyre: '205/55R16',
    },
    output: 'mismatch',
    expected: { near: -1.8990346573825, within: 1e-9 },
    source: '-12 / 631.9 in per cent, by hand',
  },
  {
    ...LOOP,
    id: 'loop-04',
    given: { frontStages: ['39/10'], rearStages: ['11/10', '3.545'] },
    output: 'mismatch',
    // From -7/260 to 1/780 per cent: 11/10 by 3.5445 and by 3.5455, by 3.9, less one.
    expected: { exactly: '-7/260 to 1/780' },
  },
  {
    ...LOOP,
    id: 'loop-04 (contains 0)',
    given: { frontStages: ['39/10'], rearStages: ['11/10', '3.545'] },
    output: 'sense',
    expected: { exactly: 'undecided' },
  },
  {
    ...LOOP,
    id: 'loop-05',
    given: { rearTurns: '10', frontTurns: '13.5' },
    output: 'measuredRatio',
    expected: { near: 1.35, within: 1e-12 },
  },
  {
    ...LOOP,
    id: 'loop-own-2',
    given: { frontStages: ['43/11'] },
    output: 'matchingRearRatio',
    expected: { exactly: '43/11' },
    source: 'equal tyres: both paths are alike',
  },
  {
    ...LOOP,
    id: 'loop-own-3',
    given: { frontStages: ['39/10'], frontCircumference: '1950 mm', rearCircumference: '1900 mm' },
    output: 'matchingRearRatio',
    expected: { exactly: '19/5' },
    source: '39/10 by 1900/1950, by hand',
  },
  {
    ...CENTRE,
    id: 'loop-07',
    given: { ...TWO_TO_ONE, carrierSpeed: '1000 rpm', ringSpeed: '1000 rpm' },
    output: 'sunSpeed',
    expected: { near: 1000, within: 1e-9 },
  },
  {
    ...CENTRE,
    id: 'planetary-own-3',
    given: { ...TWO_TO_ONE },
    output: 'ringShare',
    expected: { exactly: '200/3' },
    source: 'torque of ring and sun as their teeth: 100 and 50 are two thirds and one',
  },
  {
    ...CENTRE,
    id: 'planetary-own-4',
    given: { ...TWO_TO_ONE },
    output: 'sunShare',
    expected: { exactly: '100/3' },
    source: 'torque of ring and sun as their teeth: 100 and 50 are two thirds and one',
  },
  {
    ...CENTRE,
    id: 'planetary-own-1',
    given: { ...TWO_TO_ONE, carrierSpeed: '1000 rpm', ringSpeed: '0 rpm' },
    output: 'sunSpeed',
    expected: { exactly: '3000' },
    source: 'ring held: the sun turns 1 + 100/50 times as fast as the carrier, by hand',
  },
  {
    ...CENTRE,
    id: 'planetary-own-2',
    given: { ...TWO_TO_ONE, carrierSpeed: '0 rpm', ringSpeed: '1000 rpm' },
    output: 'sunSpeed',
    expected: { exactly: '-2000' },
    source: 'carrier held: the sun turns back twice as fast as the ring, by hand',
  },
];
