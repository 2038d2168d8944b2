/**
 * What nobody recorded: pattern and dowels are needed, the rest is compared where both have it.
 */

import { type Fixture, without } from '../fixture.js';
import { car, carHeld, full, held } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the name of the pattern: twelve holes on one circle are no proof',
    faces: [full, without(full, 'pattern')],
    outcome: 'open',
    checks: { ...held, 'equal-pattern': 'open not-recorded' },
    missing: ['right.pattern'],
  },
  {
    says: 'nothing at all on one end',
    faces: [{ kind: 'bell-housing' }, car],
    outcome: 'open',
    checks: {
      'equal-pattern': 'open not-recorded',
      'equal-dowels': 'open not-recorded',
      dowel: 'open not-recorded',
    },
    missing: ['left.pattern', 'left.dowels', 'left.dowel'],
  },
  {
    says: 'the dowels, which are forgotten most: bolts alone do not centre a gearbox',
    faces: [without(car, 'dowels', 'dowel'), car],
    outcome: 'open',
    checks: { ...carHeld, 'equal-dowels': 'open not-recorded', dowel: 'open not-recorded' },
    missing: ['left.dowels', 'left.dowel'],
  },
  {
    says: 'the diameter of the dowels',
    faces: [without(car, 'dowel'), car],
    outcome: 'open',
    checks: { ...carHeld, dowel: 'open not-recorded' },
    missing: ['left.dowel'],
  },
];
