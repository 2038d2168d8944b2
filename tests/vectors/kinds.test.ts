/**
 * Check values of tyres, threads and boundary sizes, as a role's terms and the built-in kinds use
 * them: what is equal within a thousandth of a millimetre is taken for the value.
 */

import { describe, expect, it } from 'vitest';
import { meet } from '../kinds/bench.js';
import { world } from '../rules/sketch.js';
import { judged, stateOf } from '../rules/world.js';

/** Tyres by their designations, with one term over their sizes and the value it must have. */
const tyres = (expected: string, term: unknown) =>
  world({
    roles: {
      tyre: {
        width: { type: 'designation', unit: 'mm' },
        aspect: 'ratio',
        rim: { type: 'designation', unit: 'in' },
      },
    },
    places: ['tyre'],
    terms: { value: term },
    checks: [{ id: 'value', within: ['value', expected], tolerance: '0.0005 mm' }],
    parts: {
      'tyre-185': { width: '185 mm', aspect: '75/100', rim: '14 in' },
      'tyre-205': { width: '205 mm', aspect: '55/100', rim: '16 in' },
    },
    cars: { car: {} },
  });

describe('a tyre by its designation', () => {
  const diameter = { sum: ['tyre.rim', ['2', 'tyre.width', 'tyre.aspect']] };

  it.each([
    [
      'tyre-01 (course paper on gearing arithmetic)',
      'tyre-185',
      '138.75 mm',
      ['tyre.width', 'tyre.aspect'],
    ],
    ['tyre-03 (exact arithmetic)', 'tyre-205', '631.9 mm', diameter],
    ['tyre-04 (ETRTO: 3.05 x diameter)', 'tyre-205', '1927.295 mm', ['61/20', diameter]],
  ])('%s', (_, part, expected, term) => {
    const put = { put: { tyre: part } };
    expect(stateOf(judged(tyres(expected, term), put), 'value')).toBe('holds clears');
    expect(stateOf(judged(tyres('1 mm', term), put), 'value')).toBe('fails too-large');
  });
});

describe('threads and boundary sizes', () => {
  const thread = (side: string, pitch: string) => ({
    kind: 'screw-thread',
    side,
    form: 'iso-metric',
    diameter: '12 mm',
    pitch,
    hand: 'right',
  });

  it('thread-04 (ISO 965, from memory): M12x1.25 into M12x1.5 does not go', () => {
    const trap = meet(thread('external', '1.25 mm'), thread('internal', '1.5 mm'));
    expect(trap.outcome).toBe('fails');
    expect([...trap.checks.values()].map(({ code }) => code)).toContain('starts-and-strips');
    expect(meet(thread('external', '1.25 mm'), thread('internal', '1.25 mm')).outcome).toBe(
      'holds',
    );
  });

  it('std-01 (SAE J617): size 4 is 361.95 mm, 381.00 mm, 12 holes; in inches the same', () => {
    const face = { kind: 'bell-housing', pattern: 'size-4', holes: 12, dowels: 2, dowel: '12 mm' };
    const metric = { ...face, pilot: '361.95 mm', pcd: '381.00 mm' };
    const inches = { ...face, pilot: '14.25 in', pcd: '15 in' };
    expect(meet(metric, inches).outcome).toBe('holds');
    expect(meet(metric, { ...inches, pcd: '18.375 in' }).outcome).toBe('fails');
  });
});
