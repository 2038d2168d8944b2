/**
 * Each way in which a mount cannot be bolted on, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { body, held, mount } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'two holes on a pattern of four',
    faces: [{ ...mount, holes: 2 }, body],
    outcome: 'fails',
    checks: { ...held, 'equal-holes': 'fails not-equal' },
  },
  {
    says: 'six holes whose corners agree: what lies between them was not compared, a caution',
    faces: [
      { ...mount, holes: 6 },
      { ...body, holes: 6 },
    ],
    outcome: 'holds',
    checks: { ...held, 'outer-holes': 'fails only-outer-holes-compared' },
  },
  {
    says: 'bolts of M10x1.5 in threads of M10x1.25: they start and strip',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [{ ...mount, bolt: 'M10x1.5' }, body],
    outcome: 'fails',
    checks: { ...held, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'bolts of 12 in a cross-member drilled for 10',
    faces: [mount, { ...body, hole: '12 ±0 mm', bolt: 'M12x1.25', 'bolt-diameter': '12 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'equal-bolt': 'fails not-equal',
      'mount-hole': 'fails mount-hole-too-small',
    },
  },
  {
    says: 'bolts of 10 in threads of 8',
    faces: [mount, { ...body, hole: '8 ±0 mm', bolt: 'M8', 'bolt-diameter': '8 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'equal-bolt': 'fails not-equal',
      'body-hole': 'fails body-hole-too-small',
    },
  },
  {
    says: 'holes 10 mm closer along the car: slotting them is an engineered change',
    faces: [{ ...mount, along: '70.0 mm' }, body],
    outcome: 'fails',
    checks: {
      ...held,
      along: 'fails spacing-differs-along',
      'both-ways': 'fails spacing-differs-both-ways',
    },
  },
  {
    says: 'slots along do not help across',
    faces: [
      { ...mount, 'slot-along': '12 ±0.1 mm' },
      { ...body, across: '430.0 mm' },
    ],
    outcome: 'fails',
    checks: {
      ...held,
      across: 'fails spacing-differs-across',
      'both-ways': 'fails spacing-differs-both-ways',
    },
  },
  {
    says: 'each way by itself within 1 mm of play, and both at once not',
    source: 'arithmetic: 0.8 and 0.8 mm across corners are 1.13 mm',
    faces: [
      { ...mount, hole: '11 ±0 mm', along: '80 ±0 mm', across: '420 ±0 mm' },
      { ...body, along: '80.8 ±0 mm', across: '420.8 ±0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'both-ways': 'fails spacing-differs-both-ways' },
  },
  {
    says: 'a bush of 59 in an eye of 60',
    faces: [
      { ...mount, bush: '59.00 ±0.02 mm' },
      { ...body, eye: '60.00 ±0.02 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'bush-holds': 'fails bush-loose', 'bush-goes-in': 'holds' },
  },
  {
    says: 'a bush of 61 in an eye of 60',
    faces: [
      { ...mount, bush: '61.00 ±0.02 mm' },
      { ...body, eye: '60.00 ±0.02 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'bush-holds': 'holds', 'bush-goes-in': 'fails bush-too-large' },
  },
];
