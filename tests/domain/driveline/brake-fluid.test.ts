/**
 * Brake fluids by their grades.
 */

import { describe, expect, test } from 'vitest';
import { BRAKE_FLUIDS, servesAs } from '../../../src/domain/driveline/brake-fluid.js';
import { asked } from './asked.js';

const fluid = (given: Parameters<typeof asked>[1]) => asked('brake-fluid', given);

describe('a grade', () => {
  test.each([
    ['dot-3', ['dot-3']],
    ['dot-4', ['dot-3', 'dot-4']],
    ['dot-5', ['dot-5']],
    ['dot-5-1', ['dot-3', 'dot-4', 'dot-5-1']],
  ] as const)('%s serves as %j', (grade, expected) => {
    const all = ['dot-3', 'dot-4', 'dot-5', 'dot-5-1'] as const;
    expect(all.filter((one) => servesAs(grade, one) === 'holds')).toEqual(expected);
    expect(fluid({ grades: [grade], asked: grade }).outcome('serves')).toBe('holds');
  });

  test('boils higher dry than wet, and DOT 5.1 not at what an old article printed', () => {
    for (const { dry, wet } of Object.values(BRAKE_FLUIDS)) {
      expect((dry.low?.valueOf() ?? 0) > (wet.low?.valueOf() ?? 0)).toBe(true);
    }
    const { dry, wet } = BRAKE_FLUIDS['dot-5-1'];
    expect([dry.low?.valueOf(), wet.low?.valueOf()]).not.toEqual([270, 190]);
  });

  test('serves with others only where each does', () => {
    expect(fluid({ grades: ['dot-4', 'dot-5-1'], asked: 'dot-4' }).outcome('serves')).toBe('holds');
    expect(fluid({ grades: ['dot-3', 'dot-5-1'], asked: 'dot-4' }).outcome('serves')).toBe('fails');
  });

  test('of another base is warned of', () => {
    expect(fluid({ grades: ['dot-5'], asked: 'dot-4' }).warnings).toEqual(['other-base']);
    expect(fluid({ grades: ['dot-5', 'dot-3'] }).warnings).toEqual(['other-base']);
    expect(fluid({ grades: ['dot-3', 'dot-5-1'] }).warnings).toEqual([]);
  });
});

test.each([
  ['155 degC', 'holds', []],
  ['154 degC', 'fails', ['change-fluid']],
  ['157 ±5 degC', 'open', ['change-fluid']],
])('DOT 4 that boils at %s: %s', (measured, outcome, warnings) => {
  const system = fluid({ grades: ['dot-4'], measured });
  expect(system.outcome('isStillGood')).toBe(outcome);
  expect(system.warnings).toEqual(warnings);
});
