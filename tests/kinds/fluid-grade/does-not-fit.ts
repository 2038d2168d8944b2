/**
 * Each way in which a fluid does not suit what it fills, one at a time.
 */

import type { Fixture } from '../fixture.js';
import {
  axle,
  brakeCan,
  brakeCircuit,
  dot3,
  dot5,
  fmvss,
  gearbox,
  gearOil,
  heldAboveClass,
  heldByName,
  heldInAxle,
  heldInBrakes,
  heldInGears,
  heldInLimitedSlip,
  heldWithBrass,
  mineralCan,
  mineralCircuit,
} from './fits.js';

const { base: _, ...oilOrBrake } = gearbox;

const everyMark = {
  ...dot3,
  'cold-viscosity': '900 mm2/s',
  'sae-grade': '90',
  'winter-grade': '75',
  'gear-oil-class': '4',
  'friction-modifier': 'limited-slip',
  specification: 'all-in-one',
};

/** Only the bases are compared where they differ, whatever else is recorded. */
function mixed(base: string, filled: string): Fixture {
  return {
    says: `${base} in a part for ${filled}, with every mark that there is`,
    faces: [
      { kind: 'fluid-grade', side: 'fluid', ...everyMark, base },
      { kind: 'fluid-grade', side: 'part', ...everyMark, base: filled, synchroniser: 'brass' },
    ],
    outcome: 'fails',
    checks: { 'equal-base': 'fails never-mixed' },
  };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'a part that is filled with one of two oils, and an oil of neither base',
    faces: [
      { kind: 'fluid-grade', side: 'fluid', base: 'silicone' },
      { ...oilOrBrake, alternatives: [{ base: 'gear-oil' }, { base: 'mineral' }] },
    ],
    outcome: 'fails',
    checks: { 'equal-base': 'fails never-mixed' },
  },
  {
    says: 'DOT 5 in a circuit for DOT 4: it boils later, and is never mixed',
    source: fmvss,
    faces: [{ ...brakeCan, ...dot5 }, brakeCircuit],
    outcome: 'fails',
    checks: { ...heldInBrakes, 'equal-base': 'fails never-mixed' },
  },
  {
    says: 'DOT 3 where DOT 4 is asked',
    source: fmvss,
    faces: [{ ...brakeCan, ...dot3 }, brakeCircuit],
    outcome: 'fails',
    checks: {
      ...heldInBrakes,
      'dry-boiling-point': 'fails boils-too-early',
      'wet-boiling-point': 'fails boils-too-early-when-wet',
    },
  },
  {
    says: 'a racing fluid that boils late when new and early when wet',
    faces: [
      { ...brakeCan, 'dry-boiling-point': '310 degC', 'wet-boiling-point': '150 degC' },
      brakeCircuit,
    ],
    outcome: 'fails',
    checks: { ...heldInBrakes, 'wet-boiling-point': 'fails boils-too-early-when-wet' },
  },
  {
    says: 'mineral oil in a brake circuit for glycol: the seals swell',
    faces: [mineralCan, brakeCircuit],
    outcome: 'fails',
    checks: { 'equal-base': 'fails never-mixed' },
  },
  {
    says: 'plain DOT 4 where stability control asks for a thin one',
    source: 'FMVSS 116 and ISO 4925 class 6, from memory: 1800 and 750 mm2/s',
    faces: [
      { ...brakeCan, 'cold-viscosity': '1800 mm2/s' },
      { ...brakeCircuit, 'cold-viscosity': '750 mm2/s' },
    ],
    outcome: 'fails',
    checks: { ...heldInBrakes, 'cold-viscosity': 'fails too-thick-in-the-cold' },
  },
  {
    says: 'GL-5 in a gearbox with brass synchronisers',
    source: 'common practice, no source',
    faces: [{ ...gearOil, 'gear-oil-class': '5' }, gearbox],
    outcome: 'fails',
    checks: { ...heldAboveClass, synchroniser: 'fails attacks-synchronisers' },
  },
  {
    says: 'GL-4 in a hypoid axle',
    faces: [gearOil, axle],
    outcome: 'fails',
    checks: { ...heldInAxle, 'gear-oil-class': 'fails too-little-additive' },
  },
  {
    says: 'a gearbox oil of grade 80 in an axle for 90',
    faces: [{ ...gearOil, 'gear-oil-class': '5', 'sae-grade': '80' }, axle],
    outcome: 'fails',
    checks: { ...heldInAxle, 'sae-grade': 'fails too-thin' },
  },
  {
    says: 'grade 140 for 90 is only a caution',
    faces: [{ ...gearOil, 'sae-grade': '140' }, gearbox],
    outcome: 'holds',
    checks: { ...heldWithBrass, thicker: 'fails thicker-than-asked' },
  },
  {
    says: '85W-90 where 75W-90 is asked',
    faces: [
      { ...gearOil, 'winter-grade': '85' },
      { ...gearbox, 'winter-grade': '75' },
    ],
    outcome: 'fails',
    checks: { ...heldWithBrass, 'winter-grade': 'fails too-thick-in-winter' },
  },
  {
    says: 'a limited-slip differential without its friction modifier',
    faces: [
      { ...gearOil, 'gear-oil-class': '5' },
      { ...axle, 'friction-modifier': 'limited-slip' },
    ],
    outcome: 'fails',
    checks: { ...heldInLimitedSlip, 'friction-modifier': 'fails plates-judder' },
  },
  {
    says: 'and its oil in a gearbox with synchronisers',
    faces: [{ ...gearOil, 'friction-modifier': 'limited-slip' }, gearbox],
    outcome: 'fails',
    checks: { ...heldWithBrass, 'no-friction-modifier': 'fails synchronisers-slip' },
  },
  {
    says: 'GL-5 for GL-4 on a synchroniser of a material that nobody here has heard of',
    faces: [
      { ...gearOil, 'gear-oil-class': '5' },
      { ...gearbox, synchroniser: 'cork' },
    ],
    outcome: 'fails',
    checks: { ...heldInGears, 'known-synchroniser': 'fails unheard-of-synchroniser' },
  },
  {
    says: 'mineral oils of two specifications',
    faces: [mineralCan, { ...mineralCircuit, specification: 'steering-oil' }],
    outcome: 'fails',
    checks: { ...heldByName, 'equal-specification': 'fails not-equal' },
  },
  {
    says: 'gear oil where a transmission fluid belongs',
    faces: [gearOil, { ...mineralCircuit, base: 'atf' }],
    outcome: 'fails',
    checks: { 'equal-base': 'fails never-mixed' },
  },
  mixed('glycol', 'gear-oil'),
  mixed('gear-oil', 'glycol'),
  mixed('silicone', 'mineral'),
  mixed('mineral', 'silicone'),
  mixed('glycol', 'mineral'),
  mixed('mineral', 'glycol'),
  mixed('gear-oil', 'mineral'),
  mixed('mineral', 'gear-oil'),
];
