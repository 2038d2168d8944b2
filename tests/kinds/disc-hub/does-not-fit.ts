/**
 * Each way in which a disc does not go on a hub, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { disc, held, hub } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a disc for four studs on a hub with five',
    faces: [hub, { ...disc, holes: 4 }],
    outcome: 'fails',
    checks: { ...held, 'equal-holes': 'fails not-equal' },
  },
  {
    says: 'a disc of 5 x 117 on a hub of 5 x 106',
    faces: [hub, { ...disc, pcd: '117 mm' }],
    outcome: 'fails',
    checks: { ...held, pcd: 'fails pcd-differs' },
  },
  {
    says: 'studs of 14 in holes of 13',
    faces: [
      { ...hub, stud: '14 mm' },
      { ...disc, 'stud-hole': '13.0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'stud-hole': 'fails studs-do-not-pass' },
  },
  {
    says: 'a bore of 57.1 on a pilot of 62',
    faces: [{ ...hub, pilot: '61.95 ±0.01 mm' }, disc],
    outcome: 'fails',
    checks: { ...held, bore: 'fails bore-too-small' },
  },
  {
    says: 'a bore of 62 on a pilot of 57.1: the studs do not centre a disc',
    faces: [hub, { ...disc, bore: '62.00 ±0.01 mm' }],
    outcome: 'fails',
    checks: { ...held, centring: 'fails not-centred' },
  },
  {
    says: 'equal overall height and a ring 4 mm thicker: its middle is 2 mm further in',
    source: 'arithmetic: overall height less half the thickness, 46 - 10 against 46 - 12',
    faces: [hub, { ...disc, hat: '34.0 ±0.05 mm' }],
    outcome: 'fails',
    checks: { ...held, hat: 'fails disc-not-centred' },
  },
  {
    says: 'a disc of 280 where the caliper is made for 266',
    faces: [hub, { ...disc, diameter: '280 mm' }],
    outcome: 'fails',
    checks: { ...held, diameter: 'fails diameter-differs' },
  },
  {
    says: 'a disc of 22 in a caliper for 20',
    faces: [hub, { ...disc, thickness: '22.0 ±0.05 mm' }],
    outcome: 'fails',
    checks: { ...held, 'thick-disc': 'fails disc-too-thick' },
  },
  {
    says: 'a used disc below its stamped minimum',
    source: '49 CFR 570.59: not below the limit that its maker gives, read in an excerpt',
    faces: [hub, { ...disc, thickness: '17.8 ±0.05 mm' }],
    outcome: 'fails',
    checks: { ...held, 'worn-disc': 'fails disc-worn-out' },
  },
  {
    says: 'a used disc above its own minimum and below what the caliper bears',
    faces: [hub, { ...disc, thickness: '17.2 ±0.05 mm', 'minimum-thickness': '17 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'thin-disc': 'fails disc-too-thin',
      'wear-limit': 'fails wears-past-the-caliper',
    },
  },
];
