/**
 * What nobody recorded keeps a bolted joint open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { bolt, held, joint } from './fits.js';

function openAt(...checks: readonly string[]): Expected {
  return { ...held, ...Object.fromEntries(checks.map((check) => [check, 'open not-recorded'])) };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'the length of the bolt',
    faces: [without(bolt, 'length'), joint],
    outcome: 'open',
    checks: openAt('shank', 'bottom', 'reach-in-casting'),
    missing: ['left.length'],
  },
  {
    says: 'the length of its thread',
    faces: [without(bolt, 'thread-length'), joint],
    outcome: 'open',
    checks: openAt('shank'),
    missing: ['left.thread-length'],
  },
  {
    says: 'the class: a bolt without a mark on its head',
    faces: [without(bolt, 'strength-class'), joint],
    outcome: 'open',
    checks: {
      ...openAt('strength-class', 'harder'),
      'bolt-class': 'open not-recorded',
    },
    missing: ['left.strength-class'],
  },
  {
    says: 'the class that the works used',
    faces: [bolt, without(joint, 'strength-class')],
    outcome: 'open',
    checks: {
      ...openAt('strength-class', 'harder'),
      'joint-class': 'open not-recorded',
      // A bolt of 8.8 is none of 5.6, so whether 4.8 was asked makes no difference.
      yield: 'holds',
    },
    missing: ['right.strength-class'],
  },
  {
    says: 'the grip',
    faces: [bolt, without(joint, 'grip')],
    outcome: 'open',
    checks: openAt('shank', 'bottom', 'reach-in-casting'),
    missing: ['right.grip'],
  },
  {
    says: 'the depth of the thread',
    faces: [bolt, without(joint, 'thread-depth')],
    outcome: 'open',
    checks: openAt('bottom', 'depth-in-casting'),
    missing: ['right.thread-depth'],
  },
  {
    says: 'whether the hole is blind, for a bolt that would bottom in it',
    faces: [{ ...bolt, length: '55.0 mm', 'thread-length': '32.0 mm' }, without(joint, 'hole')],
    outcome: 'open',
    checks: { ...openAt('known-hole'), bottom: 'open may-not-apply' },
    missing: ['right.hole'],
  },
  {
    says: 'the material that the thread is cut in',
    faces: [{ ...bolt, length: '38.0 mm' }, without(joint, 'material')],
    outcome: 'open',
    checks: {
      ...openAt('known-material'),
      'reach-in-steel': 'holds',
      'depth-in-steel': 'holds',
      'reach-in-casting': 'open may-not-apply',
      'reach-in-magnesium': 'open may-not-apply',
      'depth-in-magnesium': 'holds',
      'through-the-nut': 'open may-not-apply',
    },
    missing: ['right.material'],
  },
  {
    says: 'the thread of the hole',
    faces: [bolt, without(joint, 'thread')],
    outcome: 'open',
    checks: openAt('equal-thread'),
    missing: ['right.thread'],
  },
  {
    says: 'the height of the head without the room for it is not compared',
    faces: [{ ...bolt, 'head-height': '10.0 mm', 'head-diameter': '20 mm' }, joint],
    outcome: 'holds',
    checks: held,
  },
];
