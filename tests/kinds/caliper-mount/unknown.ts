/**
 * What nobody recorded keeps a caliper open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { caliper, held, knuckle } from './fits.js';

const unread = 'open not-recorded';

/** The end that does not record it, the parameter, and the checks that stay open. */
const rows: readonly (readonly ['left' | 'right', string, string, readonly string[]])[] = [
  ['left', 'mounting', 'which way the bolts go', ['equal-mounting', 'known-mounting']],
  ['right', 'spacing', 'the spacing of the bolts', ['spacing']],
  ['left', 'hole', 'the holes of the ears', ['knuckle-hole', 'knuckle-play', 'spacing']],
  [
    'right',
    'bolt-diameter',
    'the diameter of the bolts',
    ['knuckle-hole', 'knuckle-play', 'spacing'],
  ],
  ['right', 'bolt', 'the thread of the carrier', ['equal-bolt']],
  ['left', 'radius', 'the radius: equal spacing proves no fit', ['radius']],
  ['right', 'offset', 'where the caliper needs its mount', ['offset']],
  ['right', 'disc-diameter', 'the disc that the caliper is made for', ['disc-diameter']],
  ['left', 'disc-thickness', 'the thickness of the disc', ['thick-disc', 'thin-disc']],
  ['right', 'thickest-disc', 'the thickest disc of the caliper', ['thick-disc']],
  ['right', 'thinnest-disc', 'the thinnest disc of the caliper', ['thin-disc']],
];

export const fixtures: readonly Fixture[] = [
  ...rows.map(([end, parameter, says, checks]) => ({
    says,
    faces: [
      end === 'left' ? without(knuckle, parameter) : knuckle,
      end === 'right' ? without(caliper, parameter) : caliper,
    ] as const,
    outcome: 'open' as const,
    checks: { ...held, ...Object.fromEntries(checks.map((check) => [check, unread])) },
    missing: [`${end}.${parameter}`],
  })),
  {
    says: 'the place of one end alone is not compared',
    faces: [{ ...knuckle, place: 'behind' }, caliper],
    outcome: 'holds',
    checks: held,
  },
];
