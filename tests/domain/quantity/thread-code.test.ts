/** Metric threads by name. */

import { describe, expect, test } from 'vitest';
import { canonicalThread } from '../../../src/domain/quantity/thread-code.js';

describe('a metric thread has one name', () => {
  // ISO 261, coarse pitches; from memory.
  test.each([
    ['M10x1', 'm10x1'],
    ['m10x1.0', 'm10x1'],
    ['M10 x 1', 'm10x1'],
    ['M10×1.00', 'm10x1'],
    ['M 12x1.25', 'm12x1.25'],
    ['M8', 'm8x1.25'],
    ['m8x1.250', 'm8x1.25'],
    ['M12', 'm12x1.75'],
    ['M100', 'm100'],
  ])('%s is %s', (written, name) => {
    expect(canonicalThread(written)).toBe(name);
  });

  test.each(['M12x1.25 LH', '3/8-16', 'mb-3', 'm', 'm10xl', 'cone', 'M10x1-6g', '10x1'])(
    'and %s is none',
    (text) => {
      expect(canonicalThread(text)).toBe(text);
    },
  );

  test('fine and coarse of one size are two threads', () => {
    expect(canonicalThread('M12x1.5')).not.toBe(canonicalThread('M12x1.25'));
    expect(canonicalThread('M12')).not.toBe(canonicalThread('M12x1.25'));
  });
});
