/**
 * Each way in which a nose, a bearing and a crankshaft do not go together.
 */

import type { Fixture } from '../fixture.js';
import { bareCrankshaft, bearing, crankshaft, nose, pressed, runs } from './fits.js';

const open = { 'equal-seat': 'fails bearing-belongs-between', 'known-seat': 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'a nose of 15 mm in the bearing of a gearbox with 12 mm',
    faces: [{ ...crankshaft, bore: '12 +0/-0.008 mm' }, nose],
    outcome: 'fails',
    checks: { ...runs, 'goes-in': 'fails nose-does-not-run' },
  },
  {
    says: 'a bare crankshaft and a nose: the bearing belongs between them',
    faces: [bareCrankshaft, nose],
    outcome: 'fails',
    checks: open,
  },
  {
    says: 'a bearing does not go into the bearing that is already in',
    faces: [crankshaft, bearing],
    outcome: 'fails',
    checks: open,
  },
  {
    says: 'a seat of another sort',
    faces: [
      { ...crankshaft, seat: 'glued' },
      { ...nose, seat: 'glued' },
    ],
    outcome: 'fails',
    checks: {
      'equal-seat': 'holds',
      'known-seat': 'fails neither-press-nor-running',
    },
  },
  {
    says: 'a nose of 12 mm in a bearing of 15 mm is not guided',
    faces: [crankshaft, { ...nose, diameter: '11.97 ±0.01 mm' }],
    outcome: 'fails',
    checks: { ...runs, guides: 'fails nose-not-guided' },
  },
  {
    says: 'a gearbox whose nose ends before the bearing',
    faces: [crankshaft, { ...nose, reach: '20.0 ±0.3 mm' }],
    outcome: 'fails',
    checks: { ...runs, reach: 'fails nose-too-short' },
  },
  {
    says: 'a gearbox without the adapter plate that its long nose needs',
    faces: [crankshaft, { ...nose, reach: '41.0 ±0.3 mm' }],
    outcome: 'fails',
    checks: { ...runs, bottom: 'fails nose-bottoms' },
  },
  {
    says: 'a bearing of 32 mm in a bore of 35 mm',
    faces: [{ ...bareCrankshaft, bore: '35 N7' }, bearing],
    outcome: 'fails',
    checks: { ...pressed, grip: 'fails loose-in-crankshaft' },
  },
  {
    says: 'a bearing of 35 mm in a bore of 32 mm',
    faces: [bareCrankshaft, { ...bearing, diameter: '35 +0/-0.011 mm' }],
    outcome: 'fails',
    checks: { ...pressed, press: 'fails too-tight-to-press' },
  },
];
