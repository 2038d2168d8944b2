/**
 * Each way in which two straight-sided splines do not go together.
 */

import type { Fixture } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

const sizes = 'ISO 14:1982, sizes read in a secondary table';

export const fixtures: readonly Fixture[] = [
  {
    says: 'six splines in a hub of eight grooves',
    faces: [shaft, { ...hub, splines: 8 }],
    outcome: 'fails',
    checks: { ...held, 'equal-splines': 'fails not-equal' },
  },
  {
    says: '6 x 23 x 26 in 6 x 26 x 30: six splines of 6 mm both, and the shaft turns freely',
    source: sizes,
    faces: [shaft, { ...hub, 'inner-diameter': '26 H7', 'outer-diameter': '30 H10' }],
    outcome: 'fails',
    checks: {
      ...held,
      reach: 'fails splines-do-not-reach',
      // Splines that do not reach the grooves have no flanks to centre by, whatever their width.
      centring: 'open not-precise-enough',
      'centring-diameter': 'fails centred-by-flanks',
    },
  },
  {
    says: '6 x 26 x 30 does not go into 6 x 23 x 26',
    source: sizes,
    faces: [{ ...shaft, 'inner-diameter': '26 f7', 'outer-diameter': '30 -0.30/-0.43 mm' }, hub],
    outcome: 'fails',
    checks: {
      ...held,
      'inner-diameter': 'fails bore-too-small',
      'outer-diameter': 'fails splines-too-high',
    },
  },
  {
    says: 'a medium shaft 6 x 23 x 28 does not go into a light hub 6 x 23 x 26',
    source: sizes,
    faces: [{ ...shaft, 'outer-diameter': '28 -0.30/-0.43 mm' }, hub],
    outcome: 'fails',
    checks: { ...held, 'outer-diameter': 'fails splines-too-high' },
  },
  {
    says: 'splines of 7 mm in grooves of 6 mm',
    faces: [{ ...shaft, width: '7 d10' }, hub],
    outcome: 'fails',
    checks: { ...held, width: 'fails splines-too-wide' },
  },
  {
    says: 'splines of 5 mm in grooves of 6 mm knock',
    faces: [{ ...shaft, width: '5 d10' }, hub],
    outcome: 'fails',
    checks: { ...held, 'flank-play': 'fails loose-on-flanks' },
  },
  {
    says: 'a worn shaft that neither diameter nor flanks hold in the middle',
    faces: [{ ...shaft, 'inner-diameter': '22.6 ±0.02 mm', width: '5.86 ±0.01 mm' }, hub],
    outcome: 'fails',
    checks: {
      ...held,
      centring: 'fails not-centred',
      'centring-diameter': 'fails centred-by-flanks',
    },
  },
];
