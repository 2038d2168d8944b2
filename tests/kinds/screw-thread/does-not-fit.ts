/**
 * Each way in which two threads do not go together, one at a time, and what is only a caution.
 */

import type { Fixture } from '../fixture.js';
import { external, held, internal } from './fits.js';

const { 'equal-form': _, ...heldAsUnified } = held;

const quarter = { diameter: '1/4 in', pitch: '1/20 in' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'm12x1.25 into m12x1.5: starts and strips',
    faces: [external, { ...internal, pitch: '1.5 mm' }],
    outcome: 'fails',
    checks: { ...held, 'equal-pitch': 'fails starts-and-strips' },
  },
  {
    says: 'a hand that is neither right nor left',
    faces: [
      { ...external, hand: 'both' },
      { ...internal, hand: 'both' },
    ],
    outcome: 'fails',
    checks: { ...held, 'known-hand': 'fails neither-right-nor-left' },
  },
  {
    says: 'm12x1.25 on a nut of 1/2-20: the pitches differ by two hundredths',
    source: 'arithmetic: 25.4 / 20 = 1.27 mm',
    faces: [external, { ...internal, form: 'unf', diameter: '1/2 in', pitch: '1/20 in' }],
    outcome: 'fails',
    checks: {
      ...held,
      'equal-form': 'fails not-equal',
      'equal-diameter': 'fails not-equal',
      'equal-pitch': 'fails starts-and-strips',
    },
  },
  {
    says: '1/2-13 into 1/2-20: both unified, another series',
    faces: [
      { ...external, form: 'unc', diameter: '1/2 in', pitch: '1/13 in' },
      { ...internal, form: 'unf', diameter: '1/2 in', pitch: '1/20 in' },
    ],
    outcome: 'fails',
    checks: { ...heldAsUnified, 'equal-pitch': 'fails starts-and-strips' },
  },
  {
    says: '1/4-20 of 60 degrees into 1/4-20 of 55: diameter and pitch agree, the flanks do not',
    source: 'ASME B1.1 and BS 84, from memory',
    faces: [
      { ...external, ...quarter, form: 'unc' },
      { ...internal, ...quarter, form: 'whitworth' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-form': 'fails not-equal' },
  },
  {
    says: 'm14 into m12 of the same pitch',
    faces: [{ ...external, diameter: '14 mm' }, internal],
    outcome: 'fails',
    checks: { ...held, 'equal-diameter': 'fails not-equal' },
  },
  {
    says: 'a left-hand stub in a right-hand nut',
    faces: [{ ...external, hand: 'left' }, internal],
    outcome: 'fails',
    checks: { ...held, 'equal-hand': 'fails not-equal' },
  },
  {
    says: 'a form that no standard here vouches for goes by its name, with a caution',
    faces: [
      { ...external, ...quarter, form: 'whitworth' },
      { ...internal, ...quarter, form: 'whitworth' },
    ],
    outcome: 'holds',
    checks: { ...held, 'known-form': 'fails not-a-standard-form' },
  },
  {
    says: 'a stud with an interference thread goes in by force: a caution',
    faces: [
      { ...external, class: 'sk6' },
      { ...internal, class: '6H' },
    ],
    outcome: 'holds',
    checks: { ...held, 'external-class': 'fails may-bind', 'internal-class': 'holds' },
  },
  {
    says: 'a nut that was tapped oversize for galvanized bolts',
    source: 'ISO 965-5, read in a secondary copy: 6AZ is tapped well over the basic size',
    faces: [
      { ...external, class: '6g' },
      { ...internal, class: '6AZ' },
    ],
    outcome: 'holds',
    checks: { ...held, 'external-class': 'holds', 'internal-class': 'fails not-a-standard-class' },
  },
  {
    says: 'a plated thread whose flanks are thicker than the nut leaves',
    faces: [
      { ...external, 'pitch-diameter': '11.24 ±0.01 mm' },
      { ...internal, 'pitch-diameter': '11.20 ±0.01 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, flanks: 'fails flanks-bind' },
  },
  {
    says: 'a core hole that was drilled too small',
    faces: [
      { ...external, 'minor-diameter': '10.45 mm' },
      { ...internal, 'minor-diameter': '10.20 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, crests: 'fails crests-touch-roots' },
  },
  {
    says: 'ten millimetres of m12 in steel',
    faces: [
      { ...external, length: '10 mm' },
      { ...internal, 'length-in-steel': '20 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'engaged-in-steel': 'fails too-little-thread' },
  },
  {
    says: 'what is enough in steel pulls out of an aluminium housing',
    faces: [
      { ...external, length: '14 mm' },
      { ...internal, 'length-in-casting': '20 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'engaged-in-casting': 'fails pulls-out-of-the-casting' },
  },
  {
    says: 'a stud that ends within its nut',
    faces: [
      { ...external, length: '8 mm' },
      { ...internal, 'nut-height': '10.5 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'through-the-nut': 'fails nut-not-filled' },
  },
];
