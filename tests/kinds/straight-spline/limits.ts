/**
 * Just inside, exactly on and just outside each limit of a straight-sided spline.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

/** Sizes without tolerance: 0.020 mm of play inside, 0.030 mm on the flanks. */
const exactShaft = {
  ...shaft,
  'inner-diameter': '22.98 ±0 mm',
  'outer-diameter': '25.7 ±0 mm',
  width: '5.97 ±0 mm',
};
const exactHub = {
  ...hub,
  'inner-diameter': '23 ±0 mm',
  'outer-diameter': '26 ±0 mm',
  width: '6 ±0 mm',
};
/** Neither diameter centres. */
const loose = { 'inner-diameter': '22.5 ±0 mm', 'outer-diameter': '25.5 ±0 mm' };

type Row = readonly [string, object, Expected, Outcome];

/** What it says, what the shaft has instead, what becomes of which checks. */
const rows: readonly Row[] = [
  ['bore: a thousandth over the shaft', inner('22.999'), {}, 'holds'],
  ['bore: the size of the shaft', inner('23.000'), {}, 'holds'],
  [
    'bore: a thousandth under the shaft',
    inner('23.001'),
    { 'inner-diameter': 'fails bore-too-small' },
    'fails',
  ],
  ['splines: a thousandth lower than the grooves', outer('25.999'), {}, 'holds'],
  ['splines: as high as the grooves', outer('26.000'), {}, 'holds'],
  [
    'splines: a thousandth higher than the grooves',
    outer('26.001'),
    { 'outer-diameter': 'fails splines-too-high' },
    'fails',
  ],
  ['splines: a thousandth narrower than the grooves', width('5.999'), {}, 'holds'],
  ['splines: as wide as the grooves', width('6.000'), {}, 'holds'],
  [
    'splines: a thousandth wider than the grooves',
    width('6.001'),
    { width: 'fails splines-too-wide' },
    'fails',
  ],
  ['flanks: 0.229 mm of play', width('5.771'), {}, 'holds'],
  ['flanks: 0.230 mm of play', width('5.770'), {}, 'holds'],
  ['flanks: 0.231 mm of play', width('5.769'), { 'flank-play': 'fails loose-on-flanks' }, 'fails'],
  ['reach: 1.001 mm', outer('24.001'), {}, 'holds'],
  ['reach: 1.000 mm', outer('24.000'), {}, 'holds'],
  ['reach: 0.999 mm', outer('23.999'), { reach: 'fails splines-do-not-reach' }, 'fails'],
  ['inner diameter: 0.105 mm of play', { ...loose, ...inner('22.895') }, {}, 'holds'],
  ['inner diameter: 0.106 mm of play', { ...loose, ...inner('22.894') }, {}, 'holds'],
  [
    'inner diameter: 0.107 mm of play, so the flanks centre',
    { ...loose, ...inner('22.893') },
    { 'centring-diameter': 'fails centred-by-flanks' },
    'holds',
  ],
  ['outer diameter: 0.105 mm of play', { ...loose, ...outer('25.895') }, {}, 'holds'],
  ['outer diameter: 0.106 mm of play', { ...loose, ...outer('25.894') }, {}, 'holds'],
  [
    'outer diameter: 0.107 mm of play, so the flanks centre',
    { ...loose, ...outer('25.893') },
    { 'centring-diameter': 'fails centred-by-flanks' },
    'holds',
  ],
  ...flanks('5.895', 'holds'),
  ...flanks('5.894', 'holds'),
  ...flanks('5.893', 'fails not-centred'),
  [
    'splines: read with a vernier caliper',
    { width: { is: '5.97 mm', tool: 'caliper' } },
    { width: 'open not-precise-enough' },
    'open',
  ],
];

function inner(size: string) {
  return { 'inner-diameter': `${size} ±0 mm` };
}

function outer(size: string) {
  return { 'outer-diameter': `${size} ±0 mm` };
}

function width(size: string) {
  return { width: `${size} ±0 mm` };
}

function flanks(size: string, verdict: string): Row[] {
  const expected = { centring: verdict, 'centring-diameter': 'fails centred-by-flanks' };
  const outcome = verdict.split(' ')[0] as Outcome;
  return [
    [`flanks alone centre splines of ${size} mm`, { ...loose, ...width(size) }, expected, outcome],
  ];
}

export const fixtures: readonly Fixture[] = rows.map(([says, onShaft, expected, outcome]) => ({
  says,
  faces: [{ ...exactShaft, ...onShaft }, exactHub],
  outcome,
  checks: { ...held, ...expected },
}));
