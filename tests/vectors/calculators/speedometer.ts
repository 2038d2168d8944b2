/**
 * Check values of speedometers by UN Regulation 39.
 */

import type { Vector } from '../vector.js';

const R39 = {
  calculation: 'speedometer',
  source: 'UN Regulation 39, 5.3',
} as const;

const SPEEDS = ['50 km/h', '70 km/h', '90 km/h', '110 km/h', '130 km/h'];

const at100 = (id: string, shownSpeed: string, outcome: string, finding: string): Vector[] => {
  const given = { trueSpeed: ['100 km/h'], shownSpeed: [shownSpeed] };
  const shared = { ...R39, given, basis: 'read, computed' } as const;
  return [
    { ...shared, id, output: 'isInBand', expected: { exactly: outcome } },
    { ...shared, id: `${id} (why)`, output: 'finding', expected: { exactly: finding } },
  ];
};

export const SPEEDOMETER: readonly Vector[] = [
  {
    ...R39,
    id: 'speedo-01 (least)',
    given: { trueSpeed: SPEEDS },
    output: 'leastShown',
    expected: { exactly: ['50', '70', '90', '110', '130'] },
    basis: 'read',
  },
  {
    ...R39,
    id: 'speedo-01 (most)',
    given: { trueSpeed: SPEEDS },
    output: 'mostShown',
    expected: { exactly: ['59', '81', '103', '125', '147'] },
    basis: 'read',
  },
  ...at100('speedo-02', '98 km/h', 'fails', 'under-reads'),
  ...at100('speedo-03', '114 km/h', 'holds', 'within'),
  ...at100('speedo-04', '114.1 km/h', 'fails', 'over-reads'),
  {
    ...R39,
    id: 'speedo-own-1',
    given: {
      trueSpeed: ['100 km/h'],
      shownSpeed: ['104 km/h'],
      drivenRatio: '39/10',
      newDrivenRatio: '39/11',
    },
    output: 'shownAfter',
    // What drives it turns 10/11 times as often.
    expected: { exactly: '1040/11' },
    source: '104 by 10/11, by hand',
    basis: 'arithmetic',
  },
  {
    ...R39,
    id: 'speedo-own-2',
    given: {
      trueSpeed: ['100 km/h'],
      shownSpeed: ['104 km/h'],
      circumference: '2000 mm',
      newCircumference: '1900 mm',
    },
    output: 'changeOfShown',
    expected: { exactly: '100/19' },
    source: '2000/1900 less one in per cent, by hand',
    basis: 'arithmetic',
  },
  {
    ...R39,
    id: 'speedo-own-3',
    given: { trueSpeed: ['40 km/h', '80 km/h', '120 km/h'] },
    output: 'mostShown',
    expected: { exactly: ['48', '92', '136'] },
    source: 'UN Regulation 39, speeds of the test',
    basis: 'from memory',
  },
];
