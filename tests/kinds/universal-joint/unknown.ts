/**
 * What nobody recorded keeps a universal joint open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { cross, held, heldWings, wingedCross, wingedYoke, yoke } from './fits.js';

function open(all: Expected, ...checks: string[]): Expected {
  return { ...all, ...Object.fromEntries(checks.map((check) => [check, 'open not-recorded'])) };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'the diameter of the caps',
    faces: [without(cross, 'cap'), yoke],
    outcome: 'open',
    checks: open(held, 'cap-goes-in', 'cap-sits'),
    missing: ['left.cap'],
  },
  {
    says: 'the bore of the yoke',
    faces: [cross, without(yoke, 'bore')],
    outcome: 'open',
    checks: open(held, 'cap-goes-in', 'cap-sits'),
    missing: ['right.bore'],
  },
  {
    says: 'the span: caps of one size prove no series',
    faces: [cross, without(yoke, 'span')],
    outcome: 'open',
    checks: open(held, 'span', 'end-play'),
    missing: ['right.span'],
  },
  {
    says: 'how the yoke holds the caps: wings would need holes and bolts too',
    faces: [cross, without(yoke, 'retention')],
    outcome: 'open',
    checks: open(held, 'equal-retention', 'known-retention'),
    missing: ['right.retention'],
  },
  {
    says: 'the holes of the wings',
    faces: [without(wingedCross, 'hole-spacing'), wingedYoke],
    outcome: 'open',
    checks: open(heldWings, 'hole-spacing'),
    missing: ['left.hole-spacing'],
  },
  {
    says: 'the bolts of the wings',
    faces: [wingedCross, without(wingedYoke, 'bolt')],
    outcome: 'open',
    checks: open(heldWings, 'equal-bolt'),
    missing: ['right.bolt'],
  },
];
