/**
 * A round shaft in torsion: stress, twist, and the torque that it bears.
 *
 * Elastic torsion of a straight round bar or tube of one diameter. A splined or grooved end bears
 * less than the plain shaft; how much less is the notch factor, which is an input. No standard
 * governs this; it is mechanics of materials.
 *
 * Left out: bending, fatigue, plastic torsion, tubes so thin that they buckle.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { overCorners, PI } from '../quantity/enclosure.js';
import {
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  powerInterval,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { divide, ONE, rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove } from './compare.js';

const HALF_TURN = rational(180);
const THIRTY_SECOND = divide(ONE, rational(32));
const SIXTEENTH = divide(ONE, rational(16));
const MM_A_METRE = rational(1000);
const A_MM_IN_METRES = divide(ONE, MM_A_METRE);

/** In mm; the bore is smaller, and 0 of a solid shaft. */
export interface RoundShaft {
  readonly outer: Interval;
  readonly inner: Interval;
}

/** The polar second moment of area, in mm4: pi (D4 - d4) / 32. */
export function polarMoment({ outer, inner }: RoundShaft): Interval {
  const fourths = subtractIntervals(powerInterval(outer, 4), powerInterval(inner, 4));
  return scaleInterval(multiplyIntervals(PI, fourths), THIRTY_SECOND);
}

/** Torque over the stress at the surface, in mm3: pi (D4 - d4) / (16 D). */
export function torsionModulus({ outer, inner }: RoundShaft): Interval {
  // D twice: D3 - d4 / D rises with the outer diameter and falls with the inner one.
  const rest = overCorners([outer, inner], (big, small) =>
    subtractIntervals(powerInterval(big, 3), divideIntervals(powerInterval(small, 4), big)),
  );
  return scaleInterval(multiplyIntervals(PI, rest), SIXTEENTH);
}

/** At the surface of the plain shaft, in MPa; `torque` is in N.m. */
export function torsionStress(torque: Interval, shaft: RoundShaft): Interval {
  return divideIntervals(scaleInterval(torque, MM_A_METRE), torsionModulus(shaft));
}

/** The torque at which the surface of the plain shaft has a stress in MPa, in N.m. */
export function torsionTorque(stress: Interval, shaft: RoundShaft): Interval {
  return scaleInterval(multiplyIntervals(stress, torsionModulus(shaft)), A_MM_IN_METRES);
}

/** In degrees, over a length in mm; `shearModulus` is in MPa. */
export function twist(
  torque: Interval,
  shaft: RoundShaft,
  { length, shearModulus }: { readonly length: Interval; readonly shearModulus: Interval },
): Interval {
  const stiffness = [polarMoment(shaft), PI].reduce(multiplyIntervals, shearModulus);
  const turned = scaleInterval(multiplyIntervals(torque, length), MM_A_METRE);
  return scaleInterval(divideIntervals(turned, stiffness), HALF_TURN);
}

/** Steel, in MPa. */
export const STEEL_SHEAR_MODULUS = point(rational(80_000));

export const shaft = calculation({
  name: 'shaft',
  title: { en: 'Torsion of a round shaft', de: 'Torsion einer runden Welle' },
  about: {
    en: 'How much torque does a round shaft bear, and how far does it twist?',
    de: 'Wie viel Drehmoment trägt eine runde Welle, und wie weit verdreht sie sich?',
  },
  inputs: {
    outerDiameter: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      usual: ['15 mm', '110 mm'],
      name: {
        en: 'outer diameter at the thinnest place',
        de: 'Außendurchmesser an der dünnsten Stelle',
      },
    },
    innerDiameter: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      least: '0 mm',
      usual: ['0 mm', '106 mm'],
      name: { en: 'inner diameter of a tube, else 0', de: 'Innendurchmesser eines Rohrs, sonst 0' },
    },
    torque: {
      type: 'quantity',
      dimension: 'torque',
      optional: true,
      above: '0 N.m',
      usual: ['50 N.m', '6000 N.m'],
      name: { en: 'torque in the shaft', de: 'Drehmoment in der Welle' },
    },
    length: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      above: '0 mm',
      usual: ['50 mm', '2000 mm'],
      name: { en: 'length that twists', de: 'Länge, die sich verdreht' },
    },
    shearModulus: {
      type: 'quantity',
      dimension: 'pressure',
      optional: true,
      above: '0 MPa',
      usual: ['25000 MPa', '85000 MPa'],
      name: {
        en: 'shear modulus, 80 000 MPa of steel if not told',
        de: 'Schubmodul, sonst 80 000 MPa von Stahl',
      },
    },
    allowableStress: {
      type: 'quantity',
      dimension: 'pressure',
      optional: true,
      above: '0 MPa',
      usual: ['100 MPa', '900 MPa'],
      name: {
        en: 'shear stress that the material bears',
        de: 'Schubspannung, die der Werkstoff trägt',
      },
    },
    notchFactor: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      least: '1',
      usual: ['1.5', '2.5'],
      name: {
        en: 'notch factor of splined or grooved ends, 1 of a plain shaft if not told',
        de: 'Kerbfaktor verzahnter oder genuteter Enden, sonst 1 der glatten Welle',
      },
    },
  },
  outputs: {
    polarMoment: {
      type: 'quantity',
      dimension: 'length^4',
      name: { en: 'polar second moment of area', de: 'polares Flächenmoment' },
    },
    stress: {
      type: 'quantity',
      dimension: 'pressure',
      needs: ['torque'],
      name: { en: 'shear stress of the plain shaft', de: 'Schubspannung der glatten Welle' },
    },
    peakStress: {
      type: 'quantity',
      dimension: 'pressure',
      needs: ['torque'],
      name: { en: 'shear stress at the notch', de: 'Schubspannung an der Kerbe' },
    },
    twist: {
      type: 'quantity',
      dimension: 'angle',
      needs: ['torque', 'length'],
      name: { en: 'twist over the length', de: 'Verdrehung über die Länge' },
    },
    allowableTorque: {
      type: 'quantity',
      dimension: 'torque',
      needs: ['allowableStress'],
      name: { en: 'torque that it bears', de: 'Drehmoment, das sie trägt' },
    },
    holds: {
      type: 'outcome',
      needs: ['torque', 'allowableStress'],
      name: { en: 'The shaft bears the torque.', de: 'Die Welle trägt das Drehmoment.' },
    },
  },
  formulas: [
    'polarMoment = π / 32 · (outerDiameter⁴ − innerDiameter⁴)',
    'stress = torque · outerDiameter / 2 / polarMoment',
    'peakStress = notchFactor · stress',
    'twist = torque · length / (shearModulus · polarMoment) · 180 / π   (°)',
    'allowableTorque = allowableStress · polarMoment / (outerDiameter / 2) / notchFactor',
  ],
  assumptions: [
    {
      en: 'A straight round shaft of one diameter and one material, in pure torsion.',
      de: 'Eine gerade runde Welle von einem Durchmesser und Werkstoff, nur verdreht.',
    },
    {
      en: 'Elastic: what it bears is the stress that is given, with nothing in reserve.',
      de: 'Elastisch: Sie trägt bis zur angegebenen Spannung, ohne Reserve.',
    },
  ],
  validity: [
    {
      en: 'Not for bending, fatigue, or tubes so thin that they buckle.',
      de: 'Nicht für Biegung, Ermüdung oder Rohre, die so dünn sind, dass sie beulen.',
    },
    {
      en: 'Take the diameter at the root of a spline, or in the groove of a clip.',
      de: 'Am Fuß einer Verzahnung oder im Grund einer Nut messen.',
    },
    {
      en: 'A rating that the maker of the shaft states counts before this one.',
      de: 'Nennt der Hersteller der Welle ein Drehmoment, so gilt jenes vor diesem.',
    },
  ],
  sources: [
    { title: 'Mechanics of Materials, elastic torsion of round shafts', basis: 'read' },
    { title: 'shear modulus of steel, 80 GPa', basis: 'from-memory' },
    {
      title: 'splined or grooved ends bear 1.5 to 2.5 times less',
      basis: 'common-practice',
    },
  ],
  warnings: {
    'no-notch': {
      en: 'No notch is counted: a splined or grooved end bears 1.5 to 2.5 times less.',
      de: 'Keine Kerbe gerechnet: Verzahnte oder genutete Enden tragen 1,5- bis 2,5-mal weniger.',
    },
    'thin-tube': {
      en: 'The wall is, or may be, thinner than a fortieth of the diameter: it may buckle.',
      de: 'Die Wand ist dünner als ein Vierzigstel des Durchmessers oder kann es sein: Sie beult.',
    },
    overloaded: {
      en: 'The stress is, or may be, more than the material bears.',
      de: 'Die Spannung ist größer, als der Werkstoff trägt, oder kann es sein.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'half-shaft',
      summary: 'A solid half-shaft of 26 mm with splined ends',
      given: {
        outerDiameter: '26 mm',
        torque: '1200 N.m',
        length: '400 mm',
        allowableStress: '600 MPa',
        notchFactor: '1.5',
      },
    },
    {
      name: 'tube',
      summary: 'A measured tube that is welded to plain ends',
      given: {
        outerDiameter: '76 ±0.2 mm',
        innerDiameter: '70.8 ±0.2 mm',
        torque: '640 N.m',
        length: '1374 mm',
        shearModulus: '79000 to 81000 MPa',
      },
    },
  ],
  calculate: (given) => {
    const { outerDiameter, torque, length, allowableStress } = given;
    const inner = given.innerDiameter ?? point(ZERO);
    const round = { outer: outerDiameter, inner };
    const faults = faultsOf(round);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const notch = given.notchFactor ?? point(ONE);
    const stress = torque === null ? undefined : torsionStress(torque, round);
    const allowable =
      allowableStress && divideIntervals(torsionTorque(allowableStress, round), notch);
    const holds = torque && allowable ? notAbove(torque, allowable) : undefined;
    const shearModulus = given.shearModulus ?? STEEL_SHEAR_MODULUS;
    return {
      found: {
        polarMoment: polarMoment(round),
        stress,
        peakStress: stress && multiplyIntervals(stress, notch),
        twist: torque && length ? twist(torque, round, { length, shearModulus }) : undefined,
        allowableTorque: allowable ?? undefined,
        holds,
      },
      warnings: [
        ...(given.notchFactor === null ? ['no-notch'] : []),
        ...(isThin(round) ? ['thin-tube'] : []),
        ...(holds === undefined || holds === 'holds' ? [] : ['overloaded']),
      ],
    };
  },
});

/** The wall in diameters below which a tube may buckle in torsion: a guard, no standard. */
const THIN = rational('1/20');

function isThin({ outer, inner }: RoundShaft): boolean {
  const wall = subtractIntervals(point(ONE), divideIntervals(inner, outer));
  return isBelow(wall, point(THIN)) !== 'fails';
}

function faultsOf({ outer, inner }: RoundShaft): GivenFault[] {
  if (isBelow(inner, outer) === 'holds') return [];
  const text = {
    en: 'The inner diameter must be smaller than the outer one.',
    de: 'Der Innendurchmesser muss kleiner sein als der Außendurchmesser.',
  };
  return [{ input: 'innerDiameter', text }];
}
