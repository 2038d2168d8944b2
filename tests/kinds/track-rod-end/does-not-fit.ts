/**
 * Each way in which a track-rod end does not fit, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { arm, end, held, heldAbove, heldNowhere, heldThread, rod, screwed } from './fits.js';

const above = { ...end, entry: 'from-above' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'a taper of 1 in 8 in an arm of 1 in 10 sits on a ring and works loose',
    faces: [{ ...end, taper: '1/8' }, arm],
    outcome: 'fails',
    checks: { ...held, 'equal-taper': 'fails not-equal' },
  },
  {
    says: 'a stem 1 mm thinner goes through the eye, and lies 10 mm too high',
    source: 'arithmetic: 1 mm of diameter are 10 mm of length at 1 in 10',
    faces: [{ ...end, 'large-end': '12.20 ±0.02 mm' }, arm],
    outcome: 'fails',
    checks: {
      ...held,
      'nut-draws': 'fails taper-passes-through',
      'height-below': 'fails steers-as-it-springs',
    },
  },
  {
    says: 'a stem 1 mm thicker carries at its tip alone, and lies 10 mm too low',
    source: 'arithmetic: 1 mm of diameter are 10 mm of length at 1 in 10',
    faces: [{ ...end, 'large-end': '14.20 ±0.02 mm' }, arm],
    outcome: 'fails',
    checks: {
      ...held,
      seat: 'fails too-little-seat',
      'height-below': 'fails steers-as-it-springs',
    },
  },
  {
    says: 'a short stem that sinks into a long eye',
    faces: [
      { ...end, 'seat-length': '12.0 ±0.1 mm' },
      { ...arm, 'large-end': '13.50 ±0.02 mm', height: '55.0 ±0.2 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'stem-length': 'fails taper-too-short' },
  },
  {
    says: 'an eye that is wide above, for a stem from below',
    faces: [end, { ...arm, entry: 'from-above' }],
    outcome: 'fails',
    checks: { ...heldNowhere, 'equal-entry': 'fails not-equal' },
  },
  {
    says: 'an eye that is wide below, for a stem from above',
    faces: [{ ...end, entry: 'from-above' }, arm],
    outcome: 'fails',
    checks: { ...heldNowhere, 'equal-entry': 'fails not-equal' },
  },
  {
    says: 'an eye that lies along the car has no height to compare',
    faces: [
      { ...end, entry: 'from-behind' },
      { ...arm, entry: 'from-behind' },
    ],
    outcome: 'fails',
    checks: { ...heldNowhere, 'known-entry': 'fails neither-above-nor-below' },
  },
  {
    says: 'a knuckle of another model, its arm 8 mm longer: slower steering, other angles',
    faces: [end, { ...arm, 'arm-length': '128.0 ±0.2 mm' }],
    outcome: 'fails',
    checks: { ...held, 'arm-length': 'fails arm-length-differs' },
  },
  {
    says: 'a knuckle of another model, its arm 12 mm higher: the wheels steer as they spring',
    faces: [end, { ...arm, height: '72.0 ±0.2 mm' }],
    outcome: 'fails',
    checks: { ...held, 'height-below': 'fails steers-as-it-springs' },
  },
  {
    says: 'the same with a stem from above',
    faces: [
      { ...end, entry: 'from-above', height: '62.0 ±0.2 mm' },
      { ...arm, entry: 'from-above', height: '72.0 ±0.2 mm' },
    ],
    outcome: 'fails',
    checks: { ...heldAbove, 'height-above': 'fails steers-as-it-springs' },
  },
  {
    says: 'a nut of M12x1.5 on a stem of M12x1.25: it starts and strips',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [
      { ...end, 'nut-thread': 'M12x1.25' },
      { ...arm, 'nut-thread': 'M12x1.5' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-nut-thread': 'fails not-equal' },
  },
  {
    says: 'a thread of M14x1.5 on a rod of M14x2',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [screwed, { ...rod, thread: 'M14x2' }],
    outcome: 'fails',
    checks: { ...heldThread, 'equal-thread': 'fails not-equal' },
  },
  {
    says: 'the end of the other hand: it does not even start',
    faces: [screwed, { ...rod, hand: 'left' }],
    outcome: 'fails',
    checks: { ...heldThread, 'equal-hand': 'fails not-equal' },
  },
  {
    says: 'a hand that is neither right nor left',
    faces: [
      { ...screwed, hand: 'both' },
      { ...rod, hand: 'both' },
    ],
    outcome: 'fails',
    checks: { ...heldThread, 'known-hand': 'fails neither-right-nor-left' },
  },
  {
    says: 'the stem is no thread',
    faces: [end, rod],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'the thread does not go into the arm',
    faces: [screwed, arm],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'a nut and a height are compared only where a stem meets an arm',
    faces: [
      { ...above, 'nut-thread': 'M12x1.25' },
      { ...rod, entry: 'from-above', 'nut-thread': 'M14x1.5' },
    ],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'and not the other way round either',
    faces: [
      { ...screwed, entry: 'from-above', 'nut-thread': 'M14x1.5' },
      { ...arm, entry: 'from-above', 'nut-thread': 'M12x1.25' },
    ],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'an end that is pinched in its arm is another thing',
    faces: [
      { ...screwed, form: 'pinch' },
      { ...rod, form: 'pinch' },
    ],
    outcome: 'fails',
    checks: { 'equal-form': 'holds', 'known-form': 'fails neither-taper-nor-thread' },
  },
];
