/**
 * Each way in which a release does not suit a clutch, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { actuator, cover, held } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a push bearing on a pull cover',
    faces: [
      { ...cover, type: 'pull', 'bearing-bore': '35.10 mm', 'travel-limit': '11 mm' },
      { ...actuator, quill: '34.95 mm' },
    ],
    outcome: 'fails',
    checks: {
      ...held,
      'over-travel': 'holds',
      quill: 'holds',
      'quill-play': 'holds',
      'equal-type': 'fails not-equal',
    },
  },
  {
    says: 'a word for the type that is neither push nor pull is no proof, though both have it',
    faces: [
      { ...cover, type: 'hydraulic' },
      { ...actuator, type: 'hydraulic' },
    ],
    outcome: 'fails',
    checks: { ...held, 'known-type': 'fails neither-push-nor-pull' },
  },
  {
    says: 'a release that moves less than the clutch needs',
    faces: [cover, { ...actuator, travel: '7.0 mm' }],
    outcome: 'fails',
    checks: { ...held, travel: 'fails too-little-travel' },
  },
  {
    says: 'a release that moves further than the cover bears needs a stop',
    faces: [
      { ...cover, 'travel-limit': '10 mm' },
      { ...actuator, travel: '12 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'over-travel': 'fails needs-stop' },
  },
  {
    says: 'a bearing that does not go on the guide tube',
    faces: [
      { ...cover, 'bearing-bore': '35.0 mm' },
      { ...actuator, quill: '38.0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, quill: 'fails bearing-does-not-go-on', 'quill-play': 'holds' },
  },
  {
    says: 'a bearing that is loose on the guide tube',
    faces: [
      { ...cover, 'bearing-bore': '38.0 mm' },
      { ...actuator, quill: '35.0 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, quill: 'holds', 'quill-play': 'fails loose-on-quill' },
  },
  {
    says: 'a bearing that passes between the fingers',
    faces: [
      { ...cover, 'tips-inner': '50 mm', 'tips-outer': '70 mm' },
      { ...actuator, 'contact-diameter': '44 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'contact-inner': 'fails misses-the-tips', 'contact-outer': 'holds' },
  },
  {
    says: 'a bearing that touches the fingers too far out',
    faces: [
      { ...cover, 'tips-inner': '38 mm', 'tips-outer': '56 mm' },
      { ...actuator, 'contact-diameter': '64 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'contact-inner': 'holds', 'contact-outer': 'fails outside-the-tips' },
  },
  {
    says: 'pull bearings with two kinds of latch',
    faces: [
      { ...cover, type: 'pull', latch: 'snap-ring-52' },
      { ...actuator, type: 'pull', latch: 'snap-ring-48' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-latch': 'fails not-equal' },
  },
];
