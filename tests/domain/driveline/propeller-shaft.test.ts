/**
 * The critical speed of propeller shafts: what is refused, what is warned of, and the verdict.
 */

import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { asked } from './asked.js';

const shaft = (given: GivenTexts) =>
  asked('propeller-shaft', { outerDiameter: '76 mm', length: ['1400 mm'], ...given });

describe('a tube of 76 mm', () => {
  test.each(['76 mm', '176 mm', '76 to 80 mm'])('has no bore of %s', (innerDiameter) => {
    expect(() => shaft({ innerDiameter })).toThrow(/smaller than its outer/);
  });

  test.each([
    ['75.9 mm', []],
    ['75.9 ±0.1 mm', ['inner-not-smaller']],
    ['0 mm', []],
  ])('may have one of %s', (innerDiameter, warnings) => {
    expect(shaft({ innerDiameter }).warnings).toEqual(warnings);
  });

  // With a bore of 70.8 mm it may turn at 4488.6 rpm.
  test.each([
    ['4488 rpm', 'holds'],
    ['4489 rpm', 'fails'],
    ['4488 to 4489 rpm', 'open'],
  ])('at %s: %s', (speed, outcome) => {
    expect(shaft({ innerDiameter: '70.8 mm', speed }).outcome('staysBelow')).toBe(outcome);
  });
});
