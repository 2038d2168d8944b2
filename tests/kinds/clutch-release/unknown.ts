/**
 * What nobody recorded keeps a clutch release open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { actuator, cover, held } from './fits.js';

const unread = 'open not-recorded';
const openOnQuill = { quill: unread, 'quill-play': unread };
const openOnTips = { 'contact-inner': unread, 'contact-outer': unread };

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
    says: 'a cover and a fork, and no word of the bearing between them',
    faces: [without(cover, 'tips-inner', 'tips-outer'), without(actuator, 'contact-diameter')],
    outcome: 'open',
    checks: { ...held, ...openOnQuill, ...openOnTips },
    missing: [
      'left.bearing-bore',
      'left.tips-inner',
      'left.tips-outer',
      'right.contact-diameter',
      'right.quill',
    ],
  },
  {
    says: 'a cover that comes with its bearing, and a guide tube that nobody measured',
    faces: [
      { ...without(cover, 'tips-inner', 'tips-outer'), 'bearing-bore': '35.1 mm' },
      without(actuator, 'contact-diameter'),
    ],
    outcome: 'open',
    checks: { ...held, ...openOnQuill, ...openOnTips },
    missing: ['left.tips-inner', 'left.tips-outer', 'right.contact-diameter', 'right.quill'],
  },
  {
    says: 'a guide tube is no matter where the bearing on the tips is known',
    faces: [cover, { ...actuator, quill: '35 mm' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the latch of a pull bearing',
    faces: [
      { ...cover, type: 'pull', latch: 'snap-ring-52' },
      { ...actuator, type: 'pull' },
    ],
    outcome: 'open',
    checks: { ...held, 'equal-latch': 'open not-recorded' },
    missing: ['right.latch'],
  },
];
