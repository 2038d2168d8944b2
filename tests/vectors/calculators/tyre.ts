/**
 * Check values of tyres by their designation.
 */

import type { Vector } from '../vector.js';

const GEOMETRY = {
  calculation: 'tyre',
  source: 'exact arithmetic or geometry',
  basis: 'arithmetic',
} as const;

const ETRTO = {
  calculation: 'tyre',
  source: 'ETRTO convention, rolling circumference = F x free diameter',
  basis: 'read, computed',
} as const;

const ISO = {
  calculation: 'tyre',
  source: 'ISO 4000-1 load index and speed symbol',
} as const;

const load = (index: number, kg: string, basis: Vector['basis']): Vector => ({
  ...ISO,
  basis,
  id: `tyre-07 (${index})`,
  given: { designation: '205/55R16', loadIndex: index },
  output: 'load',
  expected: { exactly: kg },
});

const speed = (symbol: string, kmh: string): Vector => ({
  ...ISO,
  basis: 'read',
  id: `tyre-08 (${symbol})`,
  given: { designation: `205/55R16 91${symbol}` },
  output: 'speed',
  expected: { exactly: kmh },
});

export const TYRE: readonly Vector[] = [
  {
    ...GEOMETRY,
    id: 'tyre-01',
    given: { designation: '185/75R14' },
    output: 'sectionHeight',
    expected: { near: 138.75, within: 1e-9 },
    source: 'course paper on gearing arithmetic, worked value',
    basis: 'read',
  },
  {
    ...GEOMETRY,
    id: 'tyre-03',
    given: { designation: '205/55R16', rimDiameter: 'inch' },
    output: 'freeDiameter',
    expected: { near: 631.9, within: 0.05 },
  },
  {
    ...GEOMETRY,
    id: 'tyre-03 (UN R30)',
    given: { designation: '205/55R16', rimDiameter: 'whole' },
    output: 'freeDiameter',
    expected: { exactly: '1263/2' },
    source: 'UN Regulation 30, rim of code 16 as 406 mm',
    basis: 'from memory',
  },
  {
    ...GEOMETRY,
    id: 'tyre-own-1',
    given: { designation: '215/55R16' },
    output: 'freeDiameter',
    expected: { near: 25.311 * 25.4, within: 0.0005 * 25.4 },
    source: 'published size in inches, 25.311',
    basis: 'read',
  },
  {
    ...GEOMETRY,
    id: 'loop-02 (front)',
    given: { designation: '205/55R16' },
    output: 'freeDiameter',
    expected: { exactly: '6319/10' },
  },
  {
    ...GEOMETRY,
    id: 'loop-02 (rear)',
    given: { designation: '225/50R16' },
    output: 'freeDiameter',
    expected: { exactly: '3157/5' },
  },
  {
    ...ETRTO,
    id: 'tyre-04',
    given: { designation: '205/55R16' },
    output: 'rollingCircumference',
    expected: { near: 1927.2949999999998, within: 0.5 },
  },
  {
    ...ETRTO,
    id: 'tyre-06',
    given: { designation: '205/55R16' },
    output: 'rollingRadius',
    expected: { near: 306.7385260462944, within: 0.05 },
  },
  {
    ...ETRTO,
    id: 'tyre-own-2',
    given: { designation: '205/55-16' },
    output: 'rollingCircumference',
    expected: { near: 2.99 * 631.9, within: 1e-9 },
  },
  {
    ...GEOMETRY,
    id: 'tyre-own-3',
    given: { designation: '195/60R15' },
    output: 'rollingCircumference',
    expected: { near: 1875.75, within: 1e-9 },
    source: 'the invented demonstration conversion: a free diameter of 615 mm',
  },
  {
    ...GEOMETRY,
    id: 'tyre-own-4',
    given: { designation: '205/55R16', formerTyre: '195/65R15' },
    output: 'circumferenceChange',
    expected: { near: (100 * (631.9 - 634.5)) / 634.5, within: 1e-9 },
    source: '631.9 and 634.5 mm, by hand',
  },
  load(91, '615', 'read'),
  load(95, '690', 'read'),
  // A public copy prints 857, two digits turned round.
  load(103, '875', 'from memory'),
  load(80, '450', 'from memory'),
  load(100, '800', 'from memory'),
  speed('Q', '160'),
  speed('T', '190'),
  speed('H', '210'),
  speed('V', '240'),
  speed('W', '270'),
  speed('Y', '300'),
];
