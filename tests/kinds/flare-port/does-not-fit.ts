/**
 * Each way in which a pipe does not seal in a port, one at a time.
 */

import type { Fixture } from '../fixture.js';
import {
  bubblePipe,
  bubblePort,
  held,
  heldAsBubble,
  heldByName,
  heldInBubbleSeat,
  pipe,
  port,
} from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'thread right, seat wrong: an m10x1 nut on a bubble flare, in a port for a double one',
    faces: [bubblePipe, port],
    outcome: 'fails',
    checks: { ...heldAsBubble, 'equal-flare': 'fails another-flare' },
  },
  {
    says: 'and the other way round',
    faces: [pipe, bubblePort],
    outcome: 'fails',
    checks: { ...heldInBubbleSeat, 'equal-flare': 'fails another-flare' },
  },
  {
    says: 'a double flare of 37 degrees under the same nut, in a seat of 45',
    source: 'a web page on brake pipes: metric double flares of 37 degrees exist',
    faces: [{ ...pipe, 'flare-angle': '37 deg' }, port],
    outcome: 'fails',
    checks: { ...held, 'equal-flare-angle': 'fails another-angle' },
  },
  {
    says: 'a single flare in a seat for a double one splits',
    faces: [{ ...pipe, flare: 'single' }, port],
    outcome: 'fails',
    checks: { ...heldByName, 'equal-flare': 'fails another-flare' },
  },
  {
    says: 'a nut of 3/8-24 in a port of m10x1',
    source: 'arithmetic: 9.525 mm and 1.0583 mm against 10 mm and 1 mm',
    faces: [{ ...pipe, thread: '3/8-24' }, port],
    outcome: 'fails',
    checks: { ...held, 'equal-thread': 'fails not-equal' },
  },
  {
    says: 'two external threads',
    faces: [pipe, { ...port, 'nut-thread': 'inside' }],
    outcome: 'fails',
    checks: { ...held, 'equal-nut-thread': 'fails both-threads-outside-or-inside' },
  },
  {
    says: 'a nut whose thread is neither outside nor inside',
    faces: [
      { ...pipe, 'nut-thread': 'clip' },
      { ...port, 'nut-thread': 'clip' },
    ],
    outcome: 'fails',
    checks: { ...held, 'known-nut-thread': 'fails neither-outside-nor-inside' },
  },
  {
    says: 'a pipe of 6 mm under a nut for 4.75',
    faces: [{ ...pipe, 'pipe-diameter': '6 mm' }, port],
    outcome: 'fails',
    checks: { ...held, 'pipe-diameter': 'fails another-pipe' },
  },
  {
    says: 'a flare that has only a name goes by that name, with a caution',
    faces: [
      { ...pipe, flare: 'beaded' },
      { ...port, flare: 'beaded' },
    ],
    outcome: 'holds',
    checks: { ...heldByName, 'known-flare': 'fails other-flare-form' },
  },
  {
    says: 'a flat nut behind a double flare crushes it',
    faces: [{ ...pipe, 'nut-end': 'flat' }, port],
    outcome: 'fails',
    checks: { ...held, 'countersunk-nut': 'fails nut-crushes-flare' },
  },
  {
    says: 'a countersunk nut behind a bubble flare',
    faces: [{ ...bubblePipe, 'nut-end': 'countersunk' }, bubblePort],
    outcome: 'fails',
    checks: { ...heldAsBubble, 'flat-nut': 'fails nut-does-not-press' },
  },
  {
    says: 'a short nut in a deep port: the hexagon stands before the flare is clamped',
    faces: [
      { ...pipe, reach: '12.0 mm' },
      { ...port, 'seat-depth': '14.0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, reach: 'fails hexagon-stands-on-port' },
  },
];
