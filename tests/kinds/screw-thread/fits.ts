/**
 * Threads that go together, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const external = {
  kind: 'screw-thread',
  side: 'external',
  form: 'iso-metric',
  diameter: '12 mm',
  pitch: '1.25 mm',
  hand: 'right',
} as const;

export const internal = { ...external, side: 'internal' } as const;

export const held: Expected = {
  'equal-form': 'holds',
  'equal-diameter': 'holds',
  'equal-pitch': 'holds',
  'equal-hand': 'holds',
  'known-hand': 'holds',
  'known-form': 'holds',
};

const { 'equal-form': _, ...heldAsUnified } = held;

const iso724 = 'ISO 724: d2 = d - 0.649519 P, D1 = d - 1.082532 P, d3 = d - 1.226869 P';

const unified = { form: 'unf', diameter: '1/2 in', pitch: '1/20 in' };

/** Classes as they stand on drawings, each outside with one inside. */
const METRIC =
  '3h4h-4H 4g-5G 4h-5H 5g6g-6G 5h4h-5H 5h6h-6H 6e-6H 6f-6H 6h-6H 7e6e-7G 7g6g-7H 7h6h-7H 8e-8G ' +
  '8g-8H 9e8e-8G 9g8g-8H';
const PAIRS = `${METRIC} 1A-1B 2A-2B 3A-3B`.split(' ');

function pairOfClasses(pair: string): Fixture {
  const [outside = '', inside = ''] = pair.split('-');
  return {
    says: `class ${outside} in ${inside} leaves play`,
    source: 'ISO 965-1 and ASME B1.1, from memory',
    faces: [
      { ...external, class: outside },
      { ...internal, class: inside },
    ],
    outcome: 'holds',
    checks: { ...held, 'external-class': 'holds', 'internal-class': 'holds' },
  };
}

function seriesOfUnified(form: string): Fixture {
  return {
    says: `${form} is one name of the unified form`,
    source: 'ASME B1.1, from memory',
    faces: [
      { ...external, ...unified, form },
      { ...internal, ...unified, form: 'unf' },
    ],
    outcome: 'holds',
    checks: heldAsUnified,
  };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'm12x1.25 in m12x1.25',
    faces: [external, internal],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a left-hand thread in a left-hand nut',
    faces: [
      { ...external, hand: 'left' },
      { ...internal, hand: 'left' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: '1/2-20: unf on the stud and un on the nut name one form',
    source: 'ASME B1.1, from memory: the series only chooses the pitch',
    faces: [
      { ...external, ...unified },
      { ...internal, ...unified, form: 'un' },
    ],
    outcome: 'holds',
    checks: heldAsUnified,
  },
  {
    says: 'a nominal size in inches and the same in millimetres',
    source: 'an inch is 25.4 mm: arithmetic',
    faces: [
      { ...external, ...unified },
      { ...internal, form: 'unf', diameter: '12.7 mm', pitch: '1.27 mm' },
    ],
    outcome: 'holds',
    checks: heldAsUnified,
  },
  {
    says: 'the usual pair of classes',
    source: 'ISO 965-1, from memory: 6g in 6H',
    faces: [
      { ...external, class: '6g' },
      { ...internal, class: '6H' },
    ],
    outcome: 'holds',
    checks: { ...held, 'external-class': 'holds', 'internal-class': 'holds' },
  },
  {
    says: 'm12x1.25 with the diameters of the standard, the external ones at or below them',
    source: iso724,
    faces: [
      { ...external, 'pitch-diameter': '11.188 +0/-0.1 mm', 'minor-diameter': '10.466 ±0.001 mm' },
      { ...internal, 'pitch-diameter': '11.188 +0.1/-0 mm', 'minor-diameter': '10.647 ±0.001 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, flanks: 'holds', crests: 'holds' },
  },
  {
    says: 'a bolt with room in a steel hub, and its thread long enough for steel',
    faces: [
      { ...external, length: '16 mm' },
      { ...internal, 'length-in-steel': '14 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'engaged-in-steel': 'holds' },
  },
  {
    says: 'one and a half diameters and more in aluminium',
    faces: [
      { ...external, length: '20 mm' },
      { ...internal, 'length-in-casting': '24 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'engaged-in-casting': 'holds' },
  },
  {
    says: 'a standard nut is lower than one diameter, and enough where it is filled',
    source: 'ISO 4032, from memory: a nut for M12 is 10.8 mm high at most',
    faces: [
      { ...external, length: '20 mm' },
      { ...internal, 'nut-height': '10.8 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'through-the-nut': 'holds' },
  },
  ...PAIRS.map(pairOfClasses),
  ...['un', 'unc', 'unef', 'uns'].map(seriesOfUnified),
  {
    says: 'uns on the stud, unef in the hole',
    faces: [
      { ...external, ...unified, form: 'uns' },
      { ...internal, ...unified, form: 'unef' },
    ],
    outcome: 'holds',
    checks: heldAsUnified,
  },
  {
    says: 'unf on the stud, uns in the hole',
    faces: [
      { ...external, ...unified },
      { ...internal, ...unified, form: 'uns' },
    ],
    outcome: 'holds',
    checks: heldAsUnified,
  },
];
