/**
 * What nobody recorded keeps a thread open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { external, held, internal } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the pitch of the nut: twelve millimetres alone say too little',
    faces: [external, without(internal, 'pitch')],
    outcome: 'open',
    checks: { ...held, 'equal-pitch': 'open not-recorded' },
    missing: ['right.pitch'],
  },
  {
    says: 'the diameter of the stud',
    faces: [without(external, 'diameter'), internal],
    outcome: 'open',
    checks: { ...held, 'equal-diameter': 'open not-recorded' },
    missing: ['left.diameter'],
  },
  {
    says: 'the form of the stud',
    faces: [without(external, 'form'), internal],
    outcome: 'open',
    checks: { ...held, 'equal-form': 'open not-recorded', 'known-form': 'open not-recorded' },
    missing: ['left.form'],
  },
  {
    says: 'the hand of the nut is not right-hand because nobody said so',
    faces: [external, without(internal, 'hand')],
    outcome: 'open',
    checks: { ...held, 'equal-hand': 'open not-recorded' },
    missing: ['right.hand'],
  },
  {
    says: 'a length on one end only is not compared',
    faces: [{ ...external, length: '5 mm' }, internal],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'nor a pitch diameter without the other',
    faces: [{ ...external, 'pitch-diameter': '11.3 mm' }, internal],
    outcome: 'holds',
    checks: held,
  },
];
