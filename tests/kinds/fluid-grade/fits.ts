/**
 * Fluids that suit what they fill, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const fmvss = 'FMVSS 116, read in published copies: minimum boiling points, dry and wet';

const kind = 'fluid-grade';

function brakeFluid(base: string, dry: number, wet: number) {
  return {
    base,
    'dry-boiling-point': `${dry} degC`,
    'wet-boiling-point': `${wet} degC`,
  };
}

export const dot3 = brakeFluid('glycol', 205, 140);
export const dot4 = brakeFluid('glycol', 230, 155);
export const dot51 = brakeFluid('glycol', 260, 180);
export const dot5 = brakeFluid('silicone', 260, 180);

export const brakeCan = { kind, side: 'fluid', ...dot4 };
export const brakeCircuit = { kind, side: 'part', ...dot4 };

export const heldInBrakes: Expected = {
  'equal-base': 'holds',
  'dry-boiling-point': 'holds',
  'wet-boiling-point': 'holds',
};

const oil = { base: 'gear-oil', 'sae-grade': '90', 'gear-oil-class': '4' };

export const gearOil = { kind, side: 'fluid', ...oil, 'friction-modifier': 'none' };
export const gearbox = {
  kind,
  side: 'part',
  ...oil,
  synchroniser: 'brass',
  'friction-modifier': 'none',
};

export const heldInGears: Expected = {
  'equal-base': 'holds',
  'sae-grade': 'holds',
  thicker: 'holds',
  'gear-oil-class': 'holds',
  'no-friction-modifier': 'holds',
};

export const heldWithBrass: Expected = { ...heldInGears, synchroniser: 'holds' };

/** More additive than asked: the synchronisers must be known to bear it. */
export const heldAboveClass: Expected = { ...heldInGears, 'known-synchroniser': 'holds' };

const { 'no-friction-modifier': _, ...heldBesideModifier } = heldInGears;

export const heldInAxle: Expected = { ...heldBesideModifier, 'spare-friction-modifier': 'holds' };

export const heldInLimitedSlip: Expected = { ...heldBesideModifier, 'friction-modifier': 'holds' };

export const axle = {
  kind,
  side: 'part',
  base: 'gear-oil',
  'sae-grade': '90',
  'gear-oil-class': '5',
  synchroniser: 'none',
  'friction-modifier': 'none',
};

const mineral = { kind, base: 'mineral', specification: 'iso-7308' };

export const mineralCan = { ...mineral, side: 'fluid' };
export const mineralCircuit = { ...mineral, side: 'part' };

export const heldByName: Expected = { 'equal-base': 'holds', 'equal-specification': 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'DOT 4 where DOT 4 is asked',
    source: fmvss,
    faces: [brakeCan, brakeCircuit],
    outcome: 'holds',
    checks: heldInBrakes,
  },
  {
    says: 'DOT 5.1 where DOT 4 is asked: both glycol, and it boils later',
    source: fmvss,
    faces: [{ ...brakeCan, ...dot51 }, brakeCircuit],
    outcome: 'holds',
    checks: heldInBrakes,
  },
  {
    says: 'DOT 4 where DOT 3 is asked',
    source: fmvss,
    faces: [brakeCan, { ...brakeCircuit, ...dot3 }],
    outcome: 'holds',
    checks: heldInBrakes,
  },
  {
    says: 'a thin fluid for stability control',
    source: 'ISO 4925 class 6, from memory: 750 mm2/s at -40 degrees Celsius',
    faces: [
      { ...brakeCan, 'cold-viscosity': '700 mm2/s' },
      { ...brakeCircuit, 'cold-viscosity': '750 mm2/s' },
    ],
    outcome: 'holds',
    checks: { ...heldInBrakes, 'cold-viscosity': 'holds' },
  },
  {
    says: 'GL-4 in a gearbox with brass synchronisers',
    faces: [gearOil, gearbox],
    outcome: 'holds',
    checks: heldWithBrass,
  },
  {
    says: 'GL-5 in an axle without synchronisers',
    faces: [{ ...gearOil, 'gear-oil-class': '5' }, axle],
    outcome: 'holds',
    checks: heldInAxle,
  },
  {
    says: 'GL-5 where synchronisers of molybdenum ask for GL-4',
    faces: [
      { ...gearOil, 'gear-oil-class': '5' },
      { ...gearbox, synchroniser: 'molybdenum' },
    ],
    outcome: 'holds',
    checks: heldAboveClass,
  },
  {
    says: '75W-90 where 80W-90 is asked: it flows earlier and is as thick when hot',
    source: 'SAE J306, from memory',
    faces: [
      { ...gearOil, 'winter-grade': '75' },
      { ...gearbox, 'winter-grade': '80' },
    ],
    outcome: 'holds',
    checks: { ...heldWithBrass, 'winter-grade': 'holds' },
  },
  {
    says: 'a limited-slip differential with plates gets its friction modifier',
    faces: [
      { ...gearOil, 'gear-oil-class': '5', 'friction-modifier': 'limited-slip' },
      { ...axle, 'friction-modifier': 'limited-slip' },
    ],
    outcome: 'holds',
    checks: heldInLimitedSlip,
  },
  {
    says: 'a mineral hydraulic oil goes by its specification',
    faces: [mineralCan, mineralCircuit],
    outcome: 'holds',
    checks: heldByName,
  },
  {
    says: 'silicone in a circuit for silicone, thin in the cold',
    source: `${fmvss}; 900 mm2/s from memory`,
    faces: [
      { ...brakeCan, ...dot5, 'cold-viscosity': '900 mm2/s' },
      { ...brakeCircuit, ...dot5, 'cold-viscosity': '900 mm2/s' },
    ],
    outcome: 'holds',
    checks: { ...heldInBrakes, 'cold-viscosity': 'holds' },
  },
  {
    says: 'GL-4 in a gearbox with bronze synchronisers',
    faces: [gearOil, { ...gearbox, synchroniser: 'bronze' }],
    outcome: 'holds',
    checks: heldWithBrass,
  },
  {
    says: 'GL-5 on synchronisers lined with carbon',
    faces: [
      { ...gearOil, 'gear-oil-class': '5' },
      { ...gearbox, synchroniser: 'carbon' },
    ],
    outcome: 'holds',
    checks: heldAboveClass,
  },
  {
    says: 'GL-5 on brass in a gearbox with a hypoid final drive, whose maker asks for it',
    source: 'common practice, no source',
    faces: [
      { ...gearOil, 'gear-oil-class': '5' },
      { ...gearbox, 'gear-oil-class': '5' },
    ],
    outcome: 'holds',
    checks: heldWithBrass,
  },
  {
    says: 'the class that is asked for, on a synchroniser that nobody here has heard of',
    faces: [gearOil, { ...gearbox, synchroniser: 'cork' }],
    outcome: 'holds',
    checks: heldInGears,
  },
  {
    says: 'an oil for limited-slip differentials in an axle with an open one',
    source: 'common practice, no source',
    faces: [{ ...gearOil, 'gear-oil-class': '5', 'friction-modifier': 'limited-slip' }, axle],
    outcome: 'holds',
    checks: { ...heldInAxle, 'spare-friction-modifier': 'fails friction-modifier-to-spare' },
  },
  {
    says: 'what is marked on a can and no matter of its base is not compared',
    faces: [
      { ...gearOil, 'cold-viscosity': '1800 mm2/s', specification: 'axle-oil' },
      { ...gearbox, 'cold-viscosity': '750 mm2/s', specification: 'gearbox-oil' },
    ],
    outcome: 'holds',
    checks: heldWithBrass,
  },
  {
    says: 'nor a winter grade in brakes',
    faces: [
      { ...brakeCan, 'winter-grade': '85', specification: 'one' },
      { ...brakeCircuit, 'winter-grade': '75', specification: 'two' },
    ],
    outcome: 'holds',
    checks: heldInBrakes,
  },
];
