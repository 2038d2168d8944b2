/**
 * What nobody recorded keeps a disc open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { disc, held, hub } from './fits.js';

const unread = 'open not-recorded';

/** The end that does not record it, the parameter, and the checks that stay open. */
const rows: readonly (readonly ['left' | 'right', string, string, readonly string[]])[] = [
  ['right', 'holes', 'the number of holes', ['equal-holes']],
  ['left', 'pcd', 'the pitch circle of the hub', ['pcd']],
  ['left', 'pilot', 'the pilot of the hub', ['bore', 'centring']],
  ['right', 'bore', 'the bore of the disc', ['bore', 'centring']],
  ['right', 'hat', 'the hat of the disc', ['hat']],
  ['left', 'diameter', 'the disc that the caliper is made for', ['diameter']],
  ['right', 'thickness', 'how thick the disc is today', ['thick-disc', 'worn-disc', 'thin-disc']],
  ['right', 'minimum-thickness', 'the stamped minimum', ['worn-disc', 'wear-limit']],
  ['left', 'thickest-disc', 'the thickest disc of the caliper', ['thick-disc']],
  ['left', 'wear-limit', 'how far the caliper lets a disc wear', ['thin-disc', 'wear-limit']],
];

export const fixtures: readonly Fixture[] = [
  ...rows.map(([end, parameter, says, checks]) => ({
    says,
    faces: [
      end === 'left' ? without(hub, parameter) : hub,
      end === 'right' ? without(disc, parameter) : disc,
    ] as const,
    outcome: 'open' as const,
    checks: { ...held, ...Object.fromEntries(checks.map((check) => [check, unread])) },
    missing: [`${end}.${parameter}`],
  })),
  {
    says: 'studs without their holes are not compared, nor a ring of one end alone',
    faces: [{ ...hub, stud: '12 mm', ring: 'vented' }, disc],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'nor holes without the studs',
    faces: [hub, { ...disc, 'stud-hole': '13.0 mm' }],
    outcome: 'holds',
    checks: held,
  },
];
