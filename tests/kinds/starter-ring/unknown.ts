/**
 * What nobody recorded keeps a starter and its ring gear open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { held, ring, starter } from './fits.js';

const MESH = ['mesh', 'depth-of-mesh', 'backlash'];

/** The end, the parameter, and the checks that it leaves open. */
const rows: readonly (readonly ['ring' | 'starter', string, readonly string[]])[] = [
  ['ring', 'module', ['equal-module', ...MESH]],
  ['ring', 'height-module', ['equal-height-module']],
  ['ring', 'blank-teeth', MESH],
  ['ring', 'face-distance', ['rest']],
  ['ring', 'rotation', ['equal-rotation']],
  ['starter', 'blank-teeth', MESH],
  ['starter', 'centre-distance', MESH],
  ['starter', 'rest-distance', ['rest']],
];

function open(checks: readonly string[]): Expected {
  return { ...held, ...Object.fromEntries(checks.map((check) => [check, 'open not-recorded'])) };
}

export const fixtures: readonly Fixture[] = [
  ...rows.map(([end, name, checks]): Fixture => {
    const isRing = end === 'ring';
    return {
      says: `${name} of the ${end}`,
      faces: [isRing ? without(ring, name) : ring, isRing ? starter : without(starter, name)],
      outcome: 'open',
      checks: open(checks),
      missing: [`${isRing ? 'left' : 'right'}.${name}`],
    };
  }),
  {
    says: 'a ring whose width nobody measured: the engagement is not compared',
    faces: [ring, { ...starter, 'thrown-distance': '30 mm' }],
    outcome: 'holds',
    checks: held,
  },
];
