/**
 * What nobody recorded keeps a clutch release open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { actuator, cover, held } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'push or pull of the cover',
    faces: [without(cover, 'type'), actuator],
    outcome: 'open',
    checks: { ...held, 'equal-type': 'open not-recorded', 'known-type': 'open not-recorded' },
    missing: ['left.type'],
  },
  {
    says: 'push or pull of the release',
    faces: [cover, without(actuator, 'type')],
    outcome: 'open',
    checks: { ...held, 'equal-type': 'open not-recorded' },
    missing: ['right.type'],
  },
  {
    says: 'the travel that the clutch needs',
    faces: [without(cover, 'travel-needed'), actuator],
    outcome: 'open',
    checks: { ...held, travel: 'open not-recorded' },
    missing: ['left.travel-needed'],
  },
  {
    says: 'the travel that there is',
    faces: [cover, without(actuator, 'travel')],
    outcome: 'open',
    checks: { ...held, travel: 'open not-recorded' },
    missing: ['right.travel'],
  },
  {
    says: 'a type that differs is decided without the travel',
    faces: [without(cover, 'travel-needed'), { ...actuator, type: 'pull' }],
    outcome: 'fails',
    checks: { ...held, 'equal-type': 'fails not-equal', travel: 'open not-recorded' },
    missing: ['left.travel-needed'],
  },
  {
    says: 'a bearing without the guide tube and tips without the bearing are not compared',
    faces: [
      { ...cover, 'bearing-bore': '35.1 mm', 'tips-inner': '38 mm', 'tips-outer': '60 mm' },
      actuator,
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a guide tube without the bearing is not compared',
    faces: [cover, { ...actuator, quill: '35 mm' }],
    outcome: 'holds',
    checks: held,
  },
];
