/**
 * Each way in which a cross and a yoke do not go together, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { cross, held, heldWings, wingedCross, wingedYoke, yoke } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'rings inside and a yoke with grooves for rings outside',
    faces: [{ ...cross, retention: 'inside-ring' }, yoke],
    outcome: 'fails',
    checks: { ...held, 'equal-retention': 'fails not-equal' },
  },
  {
    says: 'caps of 30 mm in a yoke of 27 mm',
    faces: [{ ...cross, cap: '30.00 ±0.01 mm' }, yoke],
    outcome: 'fails',
    checks: { ...held, 'cap-goes-in': 'fails cap-too-large' },
  },
  {
    says: 'caps of 27 mm in a yoke of 28 mm move in it',
    faces: [cross, { ...yoke, bore: '28.00 ±0.01 mm' }],
    outcome: 'fails',
    checks: { ...held, 'cap-sits': 'fails cap-loose' },
  },
  {
    says: 'equal caps of a longer series do not go between the rings',
    faces: [{ ...cross, span: '81.75 ±0.01 mm' }, yoke],
    outcome: 'fails',
    checks: { ...held, span: 'fails span-differs' },
  },
  {
    says: 'equal caps of a shorter series have more play than any ring takes up',
    faces: [cross, { ...yoke, span: '81.78 ±0.01 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      span: 'fails span-differs',
      'end-play': 'fails needs-thicker-rings',
    },
  },
  {
    says: 'wings whose holes do not meet those of the yoke',
    faces: [wingedCross, { ...wingedYoke, 'hole-spacing': '49.2 mm' }],
    outcome: 'fails',
    checks: { ...heldWings, 'hole-spacing': 'fails holes-do-not-meet' },
  },
  {
    says: 'bolts of M8x1.25 and a yoke cut for M8x1',
    faces: [wingedCross, { ...wingedYoke, bolt: 'M8x1' }],
    outcome: 'fails',
    checks: { ...heldWings, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'wings and a yoke with bores',
    faces: [wingedCross, { ...yoke, span: '90.03 ±0.01 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'equal-retention': 'fails not-equal',
      'cap-goes-in': 'open not-recorded',
      'cap-sits': 'open not-recorded',
    },
    missing: ['left.cap'],
  },
  {
    says: 'plain caps and a yoke for wings',
    faces: [cross, { ...wingedYoke, span: '74.53 ±0.01 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'equal-retention': 'fails not-equal',
      'cap-goes-in': 'open not-recorded',
      'cap-sits': 'open not-recorded',
    },
    missing: ['right.bore'],
  },
];
