/**
 * The critical speed of a propeller shaft: the speed at which its tube would whirl, and the speed
 * that it should stay below.
 *
 * A tube between two joints is taken for a beam that is held free to turn at both ends. The
 * constant is that of design practice for steel tubes; beam theory with 210 GPa and 7850 kg/m3
 * gives 1.219e8. A shaft of two pieces is as good as its longer piece, with the centre bearing
 * taken for stiff.
 *
 * Left out: dented tubes, tubes of two diameters, long yokes, soft mounts, composite tubes.
 *
 * Length: half of it says in two languages what is taken and given.
 */

import { allOf, type Outcome } from '../check/state.js';
import { PI, rootInterval } from '../quantity/enclosure.js';
import {
  addIntervals,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  powerInterval,
  scaleInterval,
} from '../quantity/interval.js';
import { ONE, rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove } from './compare.js';

/** Design practice for steel tubes, in mm and rpm: n = 1.21e8 sqrt(D2 + d2) / L2. */
const STEEL_TUBE: Interval = point(rational(121_000_000));

export interface Tube {
  /** Outer and inner diameter in mm. */
  readonly outer: Interval;
  readonly inner: Interval;
  /** Between the centres of the joints, in mm. */
  readonly length: Interval;
}

/** What a tube is made of: elastic modulus in MPa, density in kg/m3. */
export interface Material {
  readonly elasticModulus: Interval;
  readonly density: Interval;
}

const A_MPA_IN_PA = rational(1_000_000);
const A_METRE_IN_MM = rational(1000);
/** Of the first bending of a tube free to turn at its ends: 30/pi x pi2 x 1/4. */
const PINNED = rational('7.5');

/** The constant of beam theory for a material, in mm rpm: 7.5 pi times its speed of sound. */
export function beamConstant({ elasticModulus, density }: Material): Interval {
  const soundSquared = divideIntervals(scaleInterval(elasticModulus, A_MPA_IN_PA), density);
  const sound = scaleInterval(rootInterval(soundSquared, 2), A_METRE_IN_MM);
  return scaleInterval(multiplyIntervals(PI, sound), PINNED);
}

/** In rpm; without a constant of a material, by that of practice for steel. */
export function criticalSpeed({ outer, inner, length }: Tube, constant = STEEL_TUBE): Interval {
  const bore = addIntervals(powerInterval(outer, 2), powerInterval(inner, 2));
  const stiffness = rootInterval(bore, 2);
  return multiplyIntervals(divideIntervals(stiffness, powerInterval(length, 2)), constant);
}

/** The part of the critical speed that a shaft may reach: 0.7 in cars, 0.65 in industry. */
export const SHARE_OF_CRITICAL = { car: rational('0.7'), industrial: rational('0.65') } as const;

/** The longest piece at which a tube keeps below its limit at a speed, in mm. */
export function longestLength(
  { outer, inner }: Omit<Tube, 'length'>,
  speed: Interval,
  share = SHARE_OF_CRITICAL.car,
  constant = STEEL_TUBE,
): Interval {
  const one = criticalSpeed({ outer, inner, length: point(ONE) }, constant);
  const atOne = scaleInterval(one, share);
  return rootInterval(divideIntervals(atOne, speed), 2);
}

export const propellerShaft = calculation({
  name: 'propeller-shaft',
  title: { en: 'Critical speed of a propeller shaft', de: 'Kritische Drehzahl einer Gelenkwelle' },
  about: {
    en: 'How fast may a propeller shaft of this tube and length turn?',
    de: 'Wie schnell darf eine Gelenkwelle aus diesem Rohr und von dieser Länge drehen?',
  },
  inputs: {
    outerDiameter: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      usual: ['50 mm', '110 mm'],
      name: { en: 'outer diameter of the tube', de: 'Außendurchmesser des Rohrs' },
    },
    innerDiameter: {
      type: 'quantity',
      dimension: 'length',
      least: '0 mm',
      name: { en: 'inner diameter of the tube, 0 if solid', de: 'Innendurchmesser, 0 wenn voll' },
    },
    length: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      most: 3,
      usual: ['300 mm', '2000 mm'],
      name: {
        en: 'length between the joint centres, piece by piece',
        de: 'Länge zwischen den Gelenkmitten, Stück für Stück',
      },
    },
    elasticModulus: {
      type: 'quantity',
      dimension: 'pressure',
      optional: true,
      above: '0 MPa',
      usual: ['60000 MPa', '220000 MPa'],
      name: { en: 'elastic modulus, of another material', de: 'E-Modul eines anderen Stoffs' },
    },
    density: {
      type: 'quantity',
      dimension: 'density',
      optional: true,
      above: '0 kg/m3',
      usual: ['1500 kg/m3', '8000 kg/m3'],
      name: { en: 'density, of another material', de: 'Dichte eines anderen Stoffs' },
    },
    duty: {
      type: 'code',
      optional: true,
      name: { en: 'where it turns, a car if not told', de: 'wo sie dreht, sonst im Pkw' },
      codes: {
        car: { en: 'car: up to 0.7 of the critical speed', de: 'Pkw: bis 0,7 der kritischen' },
        industrial: { en: 'industry: up to 0.65 of it', de: 'Industrie: bis 0,65 der kritischen' },
      },
    },
    speed: {
      type: 'quantity',
      dimension: 'rotation',
      optional: true,
      above: '0 rpm',
      name: { en: 'greatest speed of the shaft', de: 'größte Drehzahl der Welle' },
    },
  },
  outputs: {
    criticalSpeed: {
      type: 'quantity',
      dimension: 'rotation',
      list: true,
      name: { en: 'critical speed of each piece', de: 'kritische Drehzahl jedes Stücks' },
    },
    limit: {
      type: 'quantity',
      dimension: 'rotation',
      list: true,
      name: { en: 'limit of each piece', de: 'Grenzdrehzahl jedes Stücks' },
    },
    constant: {
      type: 'quantity',
      dimension: '1',
      name: {
        en: 'constant of the material, in mm and rpm',
        de: 'Konstante des Stoffs, in mm und 1/min',
      },
    },
    longestLength: {
      type: 'quantity',
      dimension: 'length',
      needs: ['speed'],
      name: { en: 'longest piece at that speed', de: 'längstes Stück bei dieser Drehzahl' },
    },
    staysBelow: {
      type: 'outcome',
      needs: ['speed'],
      name: {
        en: 'Every piece stays below its limit.',
        de: 'Jedes Stück bleibt unter der Grenze.',
      },
    },
  },
  formulas: [
    'constant = 1.21e8 for steel; else 7.5 · π · √(elasticModulus / density)   (mm, rpm)',
    'criticalSpeed = constant · √(outerDiameter² + innerDiameter²) / length²',
    'limit = 0.7 · criticalSpeed   (car)   or   0.65 · criticalSpeed   (industrial)',
    'longestLength = √(share · constant · √(outerDiameter² + innerDiameter²) / speed)',
  ],
  assumptions: [
    {
      en: 'A straight tube of one diameter, free to turn at both joints; of steel if not told.',
      de: 'Ein gerades Rohr von einem Durchmesser, an den Gelenken frei; ohne Angabe aus Stahl.',
    },
    {
      en: 'The centre bearing of a shaft in pieces does not give way.',
      de: 'Das Mittellager einer geteilten Welle gibt nicht nach.',
    },
  ],
  validity: [
    {
      en: 'Not for dented tubes, tubes of two diameters, long yokes or layered materials.',
      de: 'Nicht für verbeulte Rohre, zwei Durchmesser, lange Gabeln oder Verbundstoffe.',
    },
    {
      en: 'Take the speed in the highest gear, which may turn the shaft faster than the engine.',
      de: 'Die Drehzahl im höchsten Gang nehmen, der schneller drehen kann als der Motor.',
    },
  ],
  sources: [
    {
      title: 'propeller-shaft design practice, n = 1.21e8 sqrt(D2 + d2) / L2 and the limit of 0.7',
      basis: 'read',
    },
    {
      title: 'pinned beam of handbooks of vibration: 1.219e8 with 210 GPa and 7850 kg/m3',
      basis: 'from-memory',
    },
  ],
  warnings: {
    'taken-for-steel': {
      en: 'A material takes both modulus and density: steel was taken.',
      de: 'Ein Stoff braucht E-Modul und Dichte: Genommen wurde Stahl.',
    },
    'inner-not-smaller': {
      en: 'The inner diameter may be as large as the outer one: measure both more closely.',
      de: 'Der Innendurchmesser kann so groß wie der äußere sein: beide genauer messen.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'one-piece',
      summary: 'A shaft of one piece at 6368 rpm: it would whirl',
      given: {
        outerDiameter: '76 mm',
        innerDiameter: '70.8 mm',
        length: ['1374 mm'],
        speed: '6368 rpm',
      },
    },
    {
      name: 'light-metal',
      summary: 'A tube of light metal: as fast as one of steel, since both are alike in this',
      given: {
        outerDiameter: '90 mm',
        innerDiameter: '84 mm',
        length: ['1400 mm'],
        elasticModulus: '70 GPa',
        density: '2700 kg/m3',
      },
    },
    {
      name: 'two-pieces',
      summary: 'The same in two pieces, measured to half a millimetre, in a machine',
      given: {
        outerDiameter: '76 mm',
        innerDiameter: '70.8 ±0.1 mm',
        length: ['734 ±0.5 mm', '640 ±0.5 mm'],
        duty: 'industrial',
        speed: '6368 rpm',
      },
    },
  ],
  calculate: (given) => {
    const { outerDiameter, innerDiameter, length, duty, speed } = given;
    const share = SHARE_OF_CRITICAL[duty ?? 'car'];
    const constant = constantOf(given);
    const tube = { outer: outerDiameter, inner: innerDiameter };
    const critical = length.map((piece) => criticalSpeed({ ...tube, length: piece }, constant));
    const limit = critical.map((one) => scaleInterval(one, share));
    const faults = boreFaults(tube);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const warnings = [
      ...(isBelow(innerDiameter, outerDiameter) === 'holds' ? [] : ['inner-not-smaller']),
      ...(isHalfTold(given) ? ['taken-for-steel'] : []),
    ];
    const always = { criticalSpeed: critical, limit, constant };
    if (speed === null) return { found: always, warnings };
    return {
      found: {
        ...always,
        longestLength: longestLength(tube, speed, share, constant),
        staysBelow: staysBelow(speed, limit),
      },
      warnings,
    };
  },
});

type GivenMaterial = { readonly [Name in keyof Material]: Interval | null };

/** Of a material that is told; else that of practice for steel. */
function constantOf({ elasticModulus, density }: GivenMaterial): Interval {
  if (elasticModulus === null || density === null) return STEEL_TUBE;
  return beamConstant({ elasticModulus, density });
}

function isHalfTold({ elasticModulus, density }: GivenMaterial): boolean {
  return (elasticModulus === null) !== (density === null);
}

/** A wall without thickness, or less, is no tube, however fast the formula says it turns. */
function boreFaults({ inner, outer }: Omit<Tube, 'length'>): GivenFault[] {
  if (isBelow(inner, outer) !== 'fails') return [];
  const text = {
    en: 'The inner diameter of a tube is smaller than its outer one.',
    de: 'Der Innendurchmesser eines Rohrs ist kleiner als sein Außendurchmesser.',
  };
  return [{ input: 'innerDiameter', text }];
}

function staysBelow(speed: Interval, limits: readonly Interval[]): Outcome {
  return allOf(limits.map((limit) => notAbove(speed, limit)));
}
