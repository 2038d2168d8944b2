/**
 * Check values of involute splines. The diameters of each standard are written as a catalogue
 * would write them, as terms of a role over teeth, module and reference diameter; what comes out
 * is held against the published figures, and then recorded on two faces, which must meet.
 */

import { describe, expect, it } from 'vitest';
import { exactText } from '../../src/domain/quantity/rational.js';
import { meet, verdictOf } from '../kinds/bench.js';
import { world } from '../rules/sketch.js';
import { found, judged } from '../rules/world.js';

const LENGTH = { type: 'designation', unit: 'mm' };

/** A term for each diameter, in modules beside the teeth or beside the reference diameter. */
const DIAMETERS = {
  pitch: ['teeth', 'module'],
  'shaft-major': [{ sum: ['teeth', '1'] }, 'module'],
  'hub-minor': [{ sum: ['teeth', '-1'] }, 'module'],
  'inch-hub-major': [{ sum: ['teeth', '1.35'] }, 'module'],
  'metric-hub-major': [{ sum: ['teeth', '1.5'] }, 'module'],
  'metric-shaft-minor': [{ sum: ['teeth', '-1.5'] }, 'module'],
  'din-shaft-tip': { sum: ['reference', ['module', '-0.2']] },
  'din-hub-tip': { sum: ['reference', ['module', '-2']] },
};

type Diameter = keyof typeof DIAMETERS;
type Spline = Readonly<Record<'teeth' | 'module' | 'reference', string | number>>;

/** The exact diameter in mm. */
function diameterOf(spline: Partial<Spline>, diameter: Diameter) {
  const terms = Object.entries(DIAMETERS).map(([id, term]) => [id, { term }]);
  const splines = world({
    roles: {
      spline: {
        teeth: 'count',
        module: LENGTH,
        reference: LENGTH,
        ...Object.fromEntries(terms),
      },
    },
    places: ['spline'],
    checks: [{ id: 'read', 'at-least': [`spline.${diameter}`, '0 mm'] }],
    parts: { 'spline-a': { ...spline } },
    cars: { car: {} },
  });
  const judgement = judged(splines, { put: { spline: 'spline-a' } });
  const { low, high } = found(judgement, 'read')?.checks[0]?.left.interval ?? {};
  if (low == null || high == null) throw new Error(`the ${diameter} diameter is exact`);
  expect(exactText(low)).toBe(exactText(high));
  return low;
}

const INCH = { teeth: 24, module: '1/24 in' };
const METRIC = { teeth: 24, module: '1 mm' };
const DIN = { teeth: 38, module: '3 mm', reference: '120 mm' };

const B92_1 = {
  source: 'ANSI B92.1',
  basis: 'formula read in the source, value computed',
  unit: 25.4,
  within: 1e-6,
};
const B92_2M = { ...B92_1, source: 'ANSI B92.2M', unit: 1, within: 1e-9 };
const DIN_5480 = { ...B92_2M, source: 'DIN 5480-1:2006', basis: 'from memory' };

describe('diameters by their formulas', () => {
  it.each<typeof B92_1 & { id: string; spline: Partial<Spline>; of: Diameter; expected: number }>([
    // N/P, (N+1)/P, (N-1)/P and (N+1.35)/P, flat root, side fit, in inches.
    { id: 'spline-01', spline: INCH, of: 'pitch', expected: 1.0, ...B92_1 },
    { id: 'spline-01', spline: INCH, of: 'shaft-major', expected: 1.0416666666666667, ...B92_1 },
    { id: 'spline-01', spline: INCH, of: 'hub-minor', expected: 0.9583333333333334, ...B92_1 },
    { id: 'spline-01', spline: INCH, of: 'inch-hub-major', expected: 1.0562500000000001, ...B92_1 },
    // m Z, m (Z+1), m (Z+1.5) and m (Z-1.5), flat root, no deviation of the tooth thickness.
    { id: 'spline-02', spline: METRIC, of: 'pitch', expected: 24.0, ...B92_2M },
    { id: 'spline-02', spline: METRIC, of: 'shaft-major', expected: 25.0, ...B92_2M },
    { id: 'spline-02', spline: METRIC, of: 'metric-hub-major', expected: 25.5, ...B92_2M },
    { id: 'spline-02', spline: METRIC, of: 'metric-shaft-minor', expected: 22.5, ...B92_2M },
    // m z, dB - 0.2 m and dB - 2 m of 120 x 3 x 38.
    { id: 'spline-06', spline: DIN, of: 'pitch', expected: 114.0, ...DIN_5480 },
    { id: 'spline-06', spline: DIN, of: 'din-shaft-tip', expected: 119.4, ...DIN_5480 },
    { id: 'spline-06', spline: DIN, of: 'din-hub-tip', expected: 114.0, ...DIN_5480 },
  ])('$id ($source; $basis): $of', ({ spline, of, expected, unit, within }) => {
    expect(Math.abs(diameterOf(spline, of).valueOf() / unit - expected)).toBeLessThan(within);
  });
});

describe('the kind, given these diameters', () => {
  const common = { kind: 'involute-spline', 'pressure-angle': '30 deg' };
  const inch = { ...common, family: 'ansi-b92-1', ...INCH };
  const metric = { ...common, family: 'ansi-b92-2m', ...METRIC };
  const din = {
    ...common,
    family: 'din-5480',
    teeth: DIN.teeth,
    module: DIN.module,
    'reference-diameter': DIN.reference,
  };

  it.each([
    {
      id: 'spline-01',
      form: inch,
      shaft: { 'major-diameter': '1.041667 ±0 in' },
      hub: { 'major-diameter': '1.056250 ±0 in', 'minor-diameter': '0.958333 ±0 in' },
      play: { 'major-diameter': 0.014583 * 25.4 },
      ...B92_1,
    },
    {
      id: 'spline-02',
      form: metric,
      shaft: { 'major-diameter': '25 ±0 mm', 'minor-diameter': '22.5 ±0 mm' },
      hub: { 'major-diameter': '25.5 ±0 mm' },
      play: { 'major-diameter': 0.5 },
      ...B92_2M,
    },
    {
      id: 'spline-06',
      form: din,
      shaft: { 'major-diameter': '119.4 ±0 mm' },
      // The root of the hub is the reference diameter.
      hub: { 'major-diameter': '120 ±0 mm', 'minor-diameter': '114.0 ±0 mm' },
      play: { 'major-diameter': 0.6 },
      ...DIN_5480,
    },
  ])('$id ($source; $basis): lets them meet', ({ form, shaft, hub, play }) => {
    const { outcome, checks } = meet(
      { ...form, side: 'shaft', ...shaft },
      { ...form, side: 'hub', ...hub },
    );
    expect(outcome).toBe('holds');
    for (const [id, expected] of Object.entries(play)) {
      const { low, high } = checks.get(id)?.margin?.interval ?? {};
      for (const end of [low, high]) expect(end?.valueOf()).toBeCloseTo(expected, 9);
    }
  });

  it('wants as much engaged length as the pitch diameter that the standard computes', () => {
    for (const [form, pitch] of [
      [inch, 25.4],
      [metric, 24],
      [din, 114],
    ] as const) {
      const faces = (length: number) =>
        meet(
          { ...form, side: 'shaft', length: `${length} ±0 mm` },
          { ...form, side: 'hub', length: '200 ±0 mm' },
        ).checks.get('engaged-length');
      const [long, short] = [faces(pitch), faces(pitch - 0.001)];
      if (long === undefined || short === undefined) throw new Error('the lengths are compared');
      expect(verdictOf(long)).toBe('holds');
      expect(verdictOf(short)).toBe('fails short-engagement');
    }
  });

  it('spline-04 (ISO 4156; value read in the source): module 1.25 at 30 degrees is usual', () => {
    const form = { ...common, family: 'iso-4156', teeth: 24 };
    const warningsAt = (module: string) =>
      meet({ ...form, side: 'shaft', module }, { ...form, side: 'hub', module }).warnings;
    expect(warningsAt('1.25 mm')).toEqual([]);
    expect(warningsAt('0.2 mm')).toEqual([
      'unusual-value at /parts/0/interfaces/face/module',
      'unusual-value at /parts/1/interfaces/face/module',
    ]);
  });
});
