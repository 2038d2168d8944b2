/**
 * What nobody recorded keeps a spline open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

const NOBODY_KNOWS: Expected = {
  ...held,
  'equal-family': 'open not-recorded',
  'equal-reference-diameter': 'open not-recorded',
  'known-family': 'open not-recorded',
};

export const fixtures: readonly Fixture[] = [
  {
    says: '24 teeth of module 1 at 30 degrees exist in several systems: without the family, open',
    faces: [without(shaft, 'family'), without(hub, 'family')],
    outcome: 'open',
    checks: NOBODY_KNOWS,
    missing: ['left.family', 'right.family', 'left.reference-diameter', 'right.reference-diameter'],
  },
  {
    says: 'and even then other teeth are another spline',
    faces: [{ ...without(shaft, 'family'), teeth: 23 }, without(hub, 'family')],
    outcome: 'fails',
    checks: { ...NOBODY_KNOWS, 'equal-teeth': 'fails not-equal' },
    missing: ['left.family', 'right.family', 'left.reference-diameter', 'right.reference-diameter'],
  },
  {
    says: 'the family of the hub',
    faces: [shaft, without(hub, 'family')],
    outcome: 'open',
    checks: { ...held, 'equal-family': 'open not-recorded' },
    missing: ['right.family'],
  },
  {
    says: 'the teeth of the shaft',
    faces: [without(shaft, 'teeth'), hub],
    outcome: 'open',
    checks: { ...held, 'equal-teeth': 'open not-recorded' },
    missing: ['left.teeth'],
  },
  {
    says: 'the module of the hub',
    faces: [shaft, without(hub, 'module')],
    outcome: 'open',
    checks: { ...held, 'equal-module': 'open not-recorded' },
    missing: ['right.module'],
  },
  {
    says: 'the angle of the shaft',
    faces: [without(shaft, 'pressure-angle'), hub],
    outcome: 'open',
    checks: { ...held, 'equal-pressure-angle': 'open not-recorded' },
    missing: ['left.pressure-angle'],
  },
  {
    says: 'a blocked space, and nobody looked at the teeth of the shaft',
    faces: [shaft, { ...hub, 'blocked-tooth': 'one' }],
    outcome: 'open',
    checks: { ...held, 'blocked-tooth': 'open not-recorded' },
    missing: ['left.missing-tooth'],
  },
  {
    says: 'a diameter on one end only is not compared',
    faces: [{ ...shaft, 'major-diameter': '24.95 mm' }, hub],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'nor a tooth thickness without the space width',
    faces: [{ ...shaft, 'tooth-thickness': '1.52 mm' }, hub],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'nor a space width without the tooth thickness',
    faces: [shaft, { ...hub, 'space-width': '1.60 mm' }],
    outcome: 'holds',
    checks: held,
  },
];
