/**
 * What nobody recorded: only the pattern is needed, the rest is compared where both ends have it.
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
    checks: { 'equal-pattern': 'open not-recorded' },
    missing: ['left.pattern'],
  },
  {
    says: 'dowels on one end only are not compared',
    faces: [{ ...car, dowel: '12 mm' }, car],
    outcome: 'holds',
    checks: carHeld,
  },
];
