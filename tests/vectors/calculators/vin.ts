/**
 * Check values of vehicle identification numbers. Samples are those that regulations print, and
 * numbers of one character alone, which nobody was given.
 */

import type { Vector } from '../vector.js';

const RULE = {
  calculation: 'vin',
  source: '49 CFR 565, tables III to V',
  basis: 'read',
} as const;

const YEAR = {
  ...RULE,
  output: 'modelYear',
  source: '49 CFR 565.15, model-year codes',
} as const;

const withCode = (place7: string, place10: string) => ({
  vin: `111111${place7}1*${place10}1111111`,
});

export const VIN: readonly Vector[] = [
  {
    ...RULE,
    id: 'vin-01 (sum)',
    given: { vin: '1G4AH59H*5G118341' },
    output: 'checkSum',
    expected: { exactly: '411' },
  },
  {
    ...RULE,
    id: 'vin-01',
    given: { vin: '1G4AH59H*5G118341' },
    output: 'checkDigit',
    expected: { exactly: '4' },
  },
  {
    ...RULE,
    id: 'vin-02 (sum)',
    given: { vin: '1M8GDM9A*KP042788' },
    output: 'checkSum',
    expected: { exactly: '351' },
  },
  {
    ...RULE,
    id: 'vin-02',
    given: { vin: '1M8GDM9A*KP042788' },
    output: 'checkDigit',
    expected: { exactly: 'X' },
  },
  {
    ...RULE,
    id: 'vin-03 (sum)',
    given: { vin: '11111111*11111111' },
    output: 'checkSum',
    expected: { exactly: '89' },
    basis: 'read, computed',
  },
  {
    ...RULE,
    id: 'vin-03',
    given: { vin: '1111-1111-1111 11111' },
    output: 'checkAgrees',
    expected: { exactly: 'holds' },
    basis: 'read, computed',
  },
  ...['I', 'O', 'Q'].map(
    (letter): Vector => ({
      ...RULE,
      id: `vin-04 (${letter})`,
      given: { vin: `${letter}1111111111111111` },
      output: 'isVin',
      expected: { exactly: 'fails' },
    }),
  ),
  { ...YEAR, id: 'vin-06', given: withCode('2', 'L'), expected: { exactly: ['1990'] } },
  { ...YEAR, id: 'vin-07', given: withCode('B', 'L'), expected: { exactly: ['2020'] } },
  { ...YEAR, id: 'vin-09', given: withCode('5', '1'), expected: { exactly: ['2001'] } },
  // The first and the last code of each round of thirty years.
  { ...YEAR, id: 'vin-own-1', given: withCode('5', 'A'), expected: { exactly: ['1980'] } },
  { ...YEAR, id: 'vin-own-2', given: withCode('B', 'Y'), expected: { exactly: ['2030'] } },
  { ...YEAR, id: 'vin-own-3', given: withCode('5', '9'), expected: { exactly: ['2009'] } },
  { ...YEAR, id: 'vin-own-4', given: withCode('*', 'A'), expected: { exactly: ['1980', '2010'] } },
];
