/**
 * What nobody recorded keeps an outer end open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

/** The parameter, and the checks that it leaves open. */
const ofShaft: readonly (readonly [string, readonly string[]])[] = [
  ['family', ['equal-family', 'known-family']],
  ['teeth', ['equal-teeth']],
  ['module', ['equal-module']],
  ['nut-thread', ['equal-nut-thread']],
  ['shoulder', ['shoulder-on-ring', 'shoulder-in-seal']],
  ['stem-length', ['nut-engages']],
  ['thread-start', ['nut-clamps']],
];
const ofHub: typeof ofShaft = [
  ['nut-thread', ['equal-nut-thread']],
  ['ring-bore', ['shoulder-on-ring']],
  ['ring-face', ['shoulder-in-seal']],
  ['clamped-length', ['nut-engages', 'nut-clamps']],
  ['nut-height', ['nut-engages']],
];

function open(checks: readonly string[]): Expected {
  return { ...held, ...Object.fromEntries(checks.map((check) => [check, 'open not-recorded'])) };
}

export const fixtures: readonly Fixture[] = [
  ...ofShaft.map(([name, checks]): Fixture => {
    return {
      says: `${name} of the shaft`,
      faces: [without(shaft, name), hub],
      outcome: 'open',
      checks: open(checks),
      missing: [`left.${name}`],
    };
  }),
  ...ofHub.map(([name, checks]): Fixture => {
    return {
      says: `${name} of the hub`,
      faces: [shaft, without(hub, name)],
      outcome: 'open',
      checks: open(checks),
      missing: [`right.${name}`],
    };
  }),
  {
    says: 'a sensor in the hub, and nobody counted the ring of the shaft',
    faces: [shaft, { ...hub, 'speed-ring': 48 }],
    outcome: 'open',
    checks: { ...held, 'equal-speed-ring': 'open not-recorded' },
    missing: ['left.speed-ring'],
  },
  {
    says: 'whether the hub has a sensor',
    faces: [{ ...shaft, 'speed-ring': 48 }, without(hub, 'speed-ring')],
    outcome: 'open',
    checks: { ...held, 'equal-speed-ring': 'open not-recorded' },
    missing: ['right.speed-ring'],
  },
];
