/**
 * Check values of gear ratios, of what decimals stand for, and of tooth pairs.
 */

import type { Vector } from '../vector.js';

const ARITHMETIC = {
  calculation: 'ratio',
  source: 'exact arithmetic or geometry',
  basis: 'arithmetic',
} as const;

type Row = Omit<Vector, keyof typeof ARITHMETIC> & Partial<Pick<Vector, 'source' | 'basis'>>;

const row = (one: Row): Vector => ({ ...ARITHMETIC, ...one });

const overall = (id: string, stages: string[], exactly: string): Vector =>
  row({ id, given: { stages }, output: 'overall', expected: { exactly } });

/** What a decimal stands for, and whether teeth may be behind it. */
const decimal = (
  id: string,
  given: { decimal: string; reading: string },
  { means, matches }: { means?: string; matches: string },
): Vector[] => [
  ...(means === undefined
    ? []
    : [row({ id, given, output: 'decimalMeans', expected: { exactly: means } })]),
  row({
    id: `${id} (teeth)`,
    given: { ...given, stages: ['39/11'] },
    output: 'decimalMatches',
    expected: { exactly: matches },
  }),
];

const pairs = (id: string, text: string, exactly: string[]): Vector =>
  row({
    id,
    given: { decimal: text, reading: 'rounded' },
    output: 'candidates',
    expected: { exactly },
  });

const transfer = { drivenTeeth: 36, drivingTeeth: 33 };

export const RATIO: readonly Vector[] = [
  overall('ratio-01', ['39/11'], '39/11'),
  row({
    id: 'ratio-01 (decimal)',
    given: { stages: ['39/11'] },
    output: 'overall',
    expected: { near: 3.5454545454545454, within: 1e-12 },
  }),
  overall('ratio-02', ['39/10', '10/11'], '39/11'),
  row({
    ...overall('ratio-04', ['51/15'], '17/5'),
    source: 'worked gear-ratio example',
    basis: 'read',
  }),
  row({
    ...overall('ratio-05', ['39/20'], '39/20'),
    source: 'published gear-pair list',
    basis: 'read',
  }),
  ...decimal(
    'ratio-07',
    { decimal: '3.545', reading: 'rounded' },
    { means: '7089/2000 to 7091/2000', matches: 'consistent' },
  ),
  ...decimal(
    'ratio-08',
    { decimal: '3.55', reading: 'rounded' },
    { means: '709/200 to 711/200', matches: 'consistent' },
  ),
  ...decimal('ratio-09', { decimal: '3.54', reading: 'rounded' }, { matches: 'does-not-match' }),
  ...decimal(
    'ratio-10',
    { decimal: '3.54', reading: 'truncated' },
    { means: '177/50 to 71/20', matches: 'consistent' },
  ),
  pairs('ratio-12', '3.55', ['39/11']),
  pairs('ratio-13', '3.545', ['39/11']),
  row({
    id: 'ratio-own-1',
    given: { ...transfer },
    output: 'nearest',
    expected: { exactly: ['35/34', '34/35'] },
    source: 'tooth sum of 69 on fixed centres, by hand: 34.5 teeth each do not exist',
  }),
  row({
    id: 'ratio-own-2',
    given: { ...transfer },
    output: 'nearestOff',
    expected: { near: [2.941176470588235, -2.857142857142857], within: 1e-12 },
    source: '100/34 and -100/35 per cent, by hand',
  }),
  row({
    id: 'ratio-own-3',
    given: { drivenTeeth: 46, drivingTeeth: 23, wishedRatio: '3/2' },
    output: 'nearest',
    // 69 teeth as 3:2 are fifths of 69, so no whole teeth: 27.6 driving.
    expected: { exactly: ['42/27', '41/28'] },
    source: 'fifths of 69 teeth, by hand',
  }),
  row({
    id: 'ratio-own-4',
    given: { decimal: '3.583', reading: 'either' },
    output: 'candidates',
    expected: { exactly: ['43/12'] },
    source: 'every quotient with 8 to 15 teeth below 60, written out by hand around 3.583',
  }),
  row({
    id: 'ratio-own-5',
    given: { stages: ['11/10', '39/11'], otherStages: ['39/10'] },
    output: 'comparison',
    expected: { exactly: 'equal' },
    source: 'cancelling 11 by hand',
  }),
];
