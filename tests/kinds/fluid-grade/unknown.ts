/**
 * What nobody recorded keeps a fluid open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import {
  brakeCan,
  brakeCircuit,
  gearbox,
  gearOil,
  heldAboveClass,
  heldByName,
  heldInBrakes,
  heldWithBrass,
  mineralCan,
  mineralCircuit,
} from './fits.js';

function open(all: Expected, ...checks: readonly string[]): Expected {
  return { ...all, ...Object.fromEntries(checks.map((check) => [check, 'open not-recorded'])) };
}

const { 'no-friction-modifier': _, ...heldBesideModifier } = heldWithBrass;

export const fixtures: readonly Fixture[] = [
  {
    says: 'a can without a base: a boiling point is no proof that it is glycol',
    faces: [without(brakeCan, 'base'), brakeCircuit],
    outcome: 'open',
    checks: open(heldInBrakes, 'equal-base'),
    missing: ['left.base'],
  },
  {
    says: 'the wet boiling point',
    faces: [without(brakeCan, 'wet-boiling-point'), brakeCircuit],
    outcome: 'open',
    checks: open(heldInBrakes, 'wet-boiling-point'),
    missing: ['left.wet-boiling-point'],
  },
  {
    says: 'the dry boiling point that the circuit asks for',
    faces: [brakeCan, without(brakeCircuit, 'dry-boiling-point')],
    outcome: 'open',
    checks: open(heldInBrakes, 'dry-boiling-point'),
    missing: ['right.dry-boiling-point'],
  },
  {
    says: 'the synchronisers, for an oil of GL-5',
    faces: [{ ...gearOil, 'gear-oil-class': '5' }, without(gearbox, 'synchroniser')],
    outcome: 'open',
    checks: {
      ...open(heldAboveClass, 'known-synchroniser'),
      'spare-friction-modifier': 'holds',
      synchroniser: 'open may-not-apply',
    },
    missing: ['right.synchroniser'],
  },
  {
    says: 'the class of a gear oil',
    faces: [without(gearOil, 'gear-oil-class'), gearbox],
    outcome: 'open',
    checks: {
      ...open(heldWithBrass, 'gear-oil-class', 'synchroniser'),
      'known-synchroniser': 'holds',
    },
    missing: ['left.gear-oil-class'],
  },
  {
    says: 'the grade that a gearbox asks for',
    faces: [gearOil, without(gearbox, 'sae-grade')],
    outcome: 'open',
    checks: open(heldWithBrass, 'sae-grade', 'thicker'),
    missing: ['right.sae-grade'],
  },
  {
    says: 'whether the part wants a friction modifier',
    faces: [gearOil, without(gearbox, 'friction-modifier')],
    outcome: 'open',
    checks: {
      ...open(heldBesideModifier, 'no-friction-modifier'),
      'friction-modifier': 'open may-not-apply',
    },
    missing: ['right.friction-modifier'],
  },
  {
    says: 'the specification of a mineral oil',
    faces: [without(mineralCan, 'specification'), mineralCircuit],
    outcome: 'open',
    checks: open(heldByName, 'equal-specification'),
    missing: ['left.specification'],
  },
  {
    says: 'a winter grade on one end only is not compared',
    faces: [{ ...gearOil, 'winter-grade': '85' }, gearbox],
    outcome: 'holds',
    checks: heldWithBrass,
  },
];
