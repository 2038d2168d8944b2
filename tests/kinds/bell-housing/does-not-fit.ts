/**
 * Each way in which a bell-housing does not go on, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { car, carHeld, full, held } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'another pattern',
    faces: [car, { ...car, pattern: 'h-1' }],
    outcome: 'fails',
    checks: { ...carHeld, 'equal-pattern': 'fails not-equal' },
  },
  {
    says: 'size 4 on size 2',
    source: 'SAE J617: 361.95 and 381.00 against 447.68 and 466.72; read in a secondary copy',
    faces: [
      full,
      {
        ...full,
        pattern: 'sae-2',
        pcd: '466.72 mm',
        pilot: '447.68 mm',
        'dowel-spacing': '466 mm',
      },
    ],
    outcome: 'fails',
    checks: {
      ...held,
      'equal-pattern': 'fails not-equal',
      pcd: 'fails pcd-differs',
      pilot: 'fails pilot-differs',
      'dowel-spacing': 'fails dowel-spacing-differs',
    },
  },
  {
    says: 'ten of twelve holes',
    faces: [full, { ...full, holes: 10 }],
    outcome: 'fails',
    checks: { ...held, 'equal-holes': 'fails not-equal' },
  },
  {
    says: 'inch bolts against metric ones, in one and the same size of housing',
    source: 'SAE J617 lists both threads for one size; read in a secondary copy',
    faces: [full, { ...full, bolt: 'M10x1.5' }],
    outcome: 'fails',
    checks: { ...held, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'a third dowel',
    faces: [full, { ...full, dowels: 3 }],
    outcome: 'fails',
    checks: { ...held, 'equal-dowels': 'fails not-equal' },
  },
  {
    says: 'dowels of 12 in holes of 14',
    faces: [full, { ...full, dowel: '14 mm' }],
    outcome: 'fails',
    checks: { ...held, dowel: 'fails dowel-differs' },
  },
  {
    says: 'the starter on the other side',
    faces: [full, { ...full, 'starter-side': 'right' }],
    outcome: 'fails',
    checks: { ...held, 'equal-starter-side': 'fails not-equal' },
  },
  {
    says: 'a depth that is 20 mm off is said as a caution: what it moves has limits of its own',
    faces: [full, { ...full, 'face-depth': '120.1 mm' }],
    outcome: 'holds',
    checks: { ...held, 'face-depth': 'fails depth-differs' },
  },
];
