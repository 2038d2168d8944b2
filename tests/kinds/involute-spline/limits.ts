/**
 * Just inside, exactly on and just outside each limit of a spline.
 */

import type { Fixture } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

function pair(check: string, onShaft: object, onHub: object, verdict: string) {
  const outcome = verdict === 'holds' || check === 'engaged-length' ? 'holds' : 'fails';
  return {
    faces: [
      { ...shaft, ...onShaft },
      { ...hub, ...onHub },
    ],
    outcome,
    checks: { ...held, [check]: verdict },
  } as const;
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'major diameter: the hub has a thousandth of room',
    ...pair(
      'major-diameter',
      { 'major-diameter': '25.00 ±0 mm' },
      { 'major-diameter': '25.001 ±0 mm' },
      'holds',
    ),
  },
  {
    says: 'major diameter: equal, as in a major-diameter fit',
    ...pair(
      'major-diameter',
      { 'major-diameter': '25.00 ±0 mm' },
      { 'major-diameter': '25.000 ±0 mm' },
      'holds',
    ),
  },
  {
    says: 'major diameter: the hub is a thousandth too small',
    ...pair(
      'major-diameter',
      { 'major-diameter': '25.00 ±0 mm' },
      { 'major-diameter': '24.999 ±0 mm' },
      'fails tips-touch-hub',
    ),
  },
  {
    says: 'minor diameter: the shaft leaves a thousandth of room',
    ...pair(
      'minor-diameter',
      { 'minor-diameter': '22.499 ±0 mm' },
      { 'minor-diameter': '22.50 ±0 mm' },
      'holds',
    ),
  },
  {
    says: 'minor diameter: equal',
    ...pair(
      'minor-diameter',
      { 'minor-diameter': '22.50 ±0 mm' },
      { 'minor-diameter': '22.50 ±0 mm' },
      'holds',
    ),
  },
  {
    says: 'minor diameter: the shaft is a thousandth too large',
    ...pair(
      'minor-diameter',
      { 'minor-diameter': '22.501 ±0 mm' },
      { 'minor-diameter': '22.50 ±0 mm' },
      'fails tips-touch-shaft',
    ),
  },
  {
    says: 'flanks: a thousandth of play at the worst',
    ...pair(
      'flank-play',
      { 'tooth-thickness': '1.55 ±0.02 mm' },
      { 'space-width': '1.591 ±0.02 mm' },
      'holds',
    ),
  },
  {
    says: 'flanks: no play at the worst',
    ...pair(
      'flank-play',
      { 'tooth-thickness': '1.55 ±0.02 mm' },
      { 'space-width': '1.59 ±0.02 mm' },
      'holds',
    ),
  },
  {
    says: 'flanks: tight even at the best',
    ...pair(
      'flank-play',
      { 'tooth-thickness': '1.55 ±0.02 mm' },
      { 'space-width': '1.509 ±0.02 mm' },
      'fails tight-on-flanks',
    ),
  },
  {
    says: 'flanks: tight or not, by a thousandth that nobody measured',
    ...pair(
      'flank-play',
      { 'tooth-thickness': '1.55 ±0.02 mm' },
      { 'space-width': '1.589 ±0.02 mm' },
      'open not-precise-enough',
    ),
    outcome: 'open',
  },
  {
    says: 'length: a thousandth over one pitch diameter of 24 mm',
    ...pair('engaged-length', { length: '30 ±0 mm' }, { length: '24.001 ±0 mm' }, 'holds'),
  },
  {
    says: 'length: exactly one pitch diameter',
    ...pair('engaged-length', { length: '24 ±0 mm' }, { length: '30 ±0 mm' }, 'holds'),
  },
  {
    says: 'length: a thousandth short, which is a caution and no refusal',
    ...pair(
      'engaged-length',
      { length: '30 ±0 mm' },
      { length: '23.999 ±0 mm' },
      'fails short-engagement',
    ),
  },
];
