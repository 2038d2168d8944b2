/**
 * Just inside, exactly on and just outside each limit of a bolted joint.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import { bolt, held, heldInMagnesium, heldInNut, heldInSteel, joint, nut } from './fits.js';

const exactBolt = { ...bolt, length: '45 ±0 mm', 'thread-length': '26 ±0 mm' };
const exactJoint = {
  ...joint,
  grip: '25 ±0 mm',
  'thread-depth': '22 ±0 mm',
};

function row(says: string, faces: Fixture['faces'], checks: Expected): Fixture {
  const outcome: Outcome = Object.values(checks).some((verdict) => verdict.startsWith('fails'))
    ? 'fails'
    : 'holds';
  return { says, faces, outcome, checks };
}

interface Limit {
  readonly check: string;
  readonly code: string;
  /** The size at which the check just holds; it may be larger (1), or smaller (-1). */
  readonly limitMm: number;
  readonly towards: 1 | -1;
  readonly held: Expected;
  readonly faces: (size: string) => Fixture['faces'];
}

function threeRows({ check, code, limitMm, towards, held: all, faces }: Limit): Fixture[] {
  const sizeOf = (microns: number) => `${(limitMm * 1000 + microns * towards) / 1000} ±0 mm`;
  return [
    row(`${check}: just inside`, faces(sizeOf(1)), { ...all, [check]: 'holds' }),
    row(`${check}: exactly on`, faces(sizeOf(0)), { ...all, [check]: 'holds' }),
    row(`${check}: just outside`, faces(sizeOf(-1)), { ...all, [check]: `fails ${code}` }),
  ];
}

/** How far a bolt must reach, and how deep the thread must be, in one material. */
function engagedIn(material: string, named: string, diametersMm: number, all: Expected): Limit[] {
  const deep = { ...exactJoint, material, 'thread-depth': '30 ±0 mm' };
  return [
    {
      check: `reach-in-${named}`,
      code: 'stays-short',
      limitMm: 25 + diametersMm,
      towards: 1,
      held: all,
      faces: (size) => [{ ...exactBolt, length: size }, deep],
    },
    {
      check: `depth-in-${named}`,
      code: 'too-little-thread',
      limitMm: diametersMm,
      towards: 1,
      held: throughIn(all),
      faces: (size) => [
        { ...exactBolt, length: '46 ±0 mm' },
        { ...deep, hole: 'through', 'thread-depth': size },
      ],
    },
  ];
}

function throughIn({ bottom: _, ...all }: Expected): Expected {
  return all;
}

const limits: readonly Limit[] = [
  {
    check: 'shank',
    code: 'runs-out-of-thread',
    limitMm: 20,
    towards: 1,
    held,
    faces: (size) => [{ ...exactBolt, 'thread-length': size }, exactJoint],
  },
  {
    check: 'bottom',
    code: 'bottoms',
    limitMm: 47,
    towards: -1,
    held,
    faces: (size) => [{ ...exactBolt, length: size }, exactJoint],
  },
  ...engagedIn('steel', 'steel', 10, heldInSteel),
  ...engagedIn('aluminium', 'casting', 15, held),
  ...engagedIn('magnesium', 'magnesium', 20, heldInMagnesium),
  {
    check: 'through-the-nut',
    code: 'nut-not-filled',
    limitMm: 33.4,
    towards: 1,
    held: heldInNut,
    faces: (size) => [
      { ...exactBolt, length: size },
      { ...nut, grip: '25 ±0 mm', 'thread-depth': '8.4 ±0 mm' },
    ],
  },
  {
    check: 'clearance-hole',
    code: 'bolt-does-not-pass',
    limitMm: 10,
    towards: 1,
    held,
    faces: (size) => [bolt, { ...joint, 'clearance-hole': size }],
  },
  {
    check: 'head-seat',
    code: 'head-does-not-sit',
    limitMm: 20,
    towards: 1,
    held,
    faces: (size) => [
      { ...bolt, 'head-diameter': '20 ±0 mm' },
      { ...joint, 'seat-diameter': size },
    ],
  },
  {
    check: 'head-room',
    code: 'head-fouls',
    limitMm: 8,
    towards: 1,
    held,
    faces: (size) => [
      { ...bolt, 'head-height': '8 ±0 mm' },
      { ...joint, 'head-room': size },
    ],
  },
];

export const fixtures: readonly Fixture[] = [
  ...limits.flatMap(threeRows),
  row(
    'class: 8.8 where 9.8 is asked, the next one up',
    [bolt, { ...joint, 'strength-class': '9.8' }],
    { ...held, 'strength-class': 'fails weaker-than-original' },
  ),
  {
    says: 'a grip by the tape does not tell whether the bolt bottoms',
    faces: [
      { ...bolt, length: '46.5 mm', 'thread-length': '32.0 mm' },
      { ...joint, grip: { is: '25 mm', tool: 'tape' } },
    ],
    outcome: 'open',
    checks: { ...held, bottom: 'open not-precise-enough' },
  },
];
