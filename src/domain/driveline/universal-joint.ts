/**
 * Universal joints with a cross: how unevenly one turns what it drives, what two leave of it, and
 * whether the working angles keep to the rule of practice.
 *
 * A joint at an angle drives its output at 1/cos b to cos b times the speed of its input, twice a
 * turn each. Two joints whose inner yokes lie in one plane undo each other as far as their angles
 * are equal; what is left is that of one joint at the residual angle, for small angles. Inner yokes
 * a quarter turn apart add up instead.
 *
 * Left out: joints whose axes do not lie in one plane (offset yokes), the torque ripple from the
 * mass of the shaft, and constant-velocity joints.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf, type Outcome } from '../check/state.js';
import {
  arcCosineInterval,
  arcTangentInterval,
  cosineInterval,
  rootInterval,
  sineInterval,
  tangentInterval,
} from '../quantity/enclosure.js';
import {
  absoluteInterval,
  addIntervals,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  powerInterval,
  reciprocalInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { notAbove } from './compare.js';

const TWO = point(rational(2));
const FOUR = point(rational(4));

/** Practice, in degrees: no working angle above, no greater difference, and enough for needles. */
export const WORKING_ANGLE = {
  most: point(rational(6)),
  difference: point(rational('1.5')),
  least: point(rational('0.5')),
  /** A residual angle whose irregularity, 0.0027, is the usual bound. */
  residual: point(rational(3)),
} as const;

/** The slowest output speed over that of the input; the fastest is one by it. */
export function slowestShare(angle: Interval): Interval {
  return cosineInterval(angle);
}

/** The speed range of the output over the speed of the input, angles from 0 to below 90 deg. */
export function irregularity(angle: Interval): Interval {
  // Both factors rise with the angle, so that it may stand twice.
  return multiplyIntervals(tangentInterval(angle), sineInterval(angle));
}

/** The angle at which the output speed ranges over this share of the input speed, in degrees. */
export function angleOfIrregularity(share: Interval): Interval {
  // From 1/c - c = share, written so that both places of the share rise together.
  const root = rootInterval(addIntervals(powerInterval(share, 2), FOUR), 2);
  return arcCosineInterval(divideIntervals(TWO, addIntervals(share, root)));
}

/** The working angle of what is seen from the side and from above, in degrees. */
export function compoundAngle(side: Interval, plan: Interval): Interval {
  const squares = [side, plan].map((view) => powerInterval(tangentInterval(view), 2));
  return arcTangentInterval(rootInterval(squares.reduce(addIntervals), 2));
}

export type Phasing = 'one-plane' | 'quarter-turn';

/** The angle of one joint that drives as unevenly as both together, in degrees. */
export function residualAngle(first: Interval, second: Interval, phasing: Phasing): Interval {
  const [a, b] = [powerInterval(first, 2), powerInterval(second, 2)];
  const left = phasing === 'one-plane' ? absoluteInterval(subtractIntervals(a, b)) : null;
  return rootInterval(left ?? addIntervals(a, b), 2);
}

const ANGLES = {
  type: 'quantity',
  dimension: 'angle',
  optional: true,
  most: 2,
  greatest: '75 deg',
} as const;
const SPEED = { type: 'quantity', dimension: 'rotation' } as const;
const SHARES = { type: 'quantity', dimension: '1', decimal: true, list: true } as const;

export const universalJoint = calculation({
  name: 'universal-joint',
  title: { en: 'Universal joints', de: 'Kreuzgelenke' },
  about: {
    en: 'How unevenly do one or two universal joints drive, and are their angles in order?',
    de: 'Wie ungleichförmig treiben ein oder zwei Kreuzgelenke, und stimmen ihre Beugewinkel?',
  },
  inputs: {
    angle: {
      ...ANGLES,
      least: '0 deg',
      name: { en: 'working angle, joint by joint', de: 'Beugewinkel, Gelenk für Gelenk' },
    },
    sideAngle: {
      ...ANGLES,
      least: '-75 deg',
      name: { en: 'angle in side view, joint by joint', de: 'Winkel von der Seite, je Gelenk' },
    },
    planAngle: {
      ...ANGLES,
      least: '-75 deg',
      name: { en: 'angle in plan view, joint by joint', de: 'Winkel von oben, je Gelenk' },
    },
    speed: {
      ...SPEED,
      optional: true,
      above: '0 rpm',
      name: { en: 'speed of the driving shaft', de: 'Drehzahl der treibenden Welle' },
    },
    fluctuation: {
      ...SPEED,
      optional: true,
      least: '0 rpm',
      name: {
        en: 'from the slowest to the fastest speed of the driven shaft',
        de: 'von der kleinsten zur größten Drehzahl der getriebenen Welle',
      },
    },
    phasing: {
      type: 'code',
      optional: true,
      name: {
        en: 'how the inner yokes stand, in one plane if not told',
        de: 'Stellung der inneren Gabeln, sonst in einer Ebene',
      },
      codes: {
        'one-plane': { en: 'in one plane', de: 'in einer Ebene' },
        'quarter-turn': { en: 'a quarter turn apart', de: 'um eine Vierteldrehung versetzt' },
      },
    },
  },
  outputs: {
    workingAngle: {
      type: 'quantity',
      dimension: 'angle',
      list: true,
      name: { en: 'working angle of each joint', de: 'Beugewinkel jedes Gelenks' },
    },
    slowestShare: {
      ...SHARES,
      name: {
        en: 'slowest output speed of each joint over its input speed',
        de: 'kleinste Abtriebsdrehzahl jedes Gelenks zur Antriebsdrehzahl',
      },
    },
    fastestShare: {
      ...SHARES,
      name: {
        en: 'fastest output speed of each joint over its input speed',
        de: 'größte Abtriebsdrehzahl jedes Gelenks zur Antriebsdrehzahl',
      },
    },
    irregularity: {
      ...SHARES,
      name: { en: 'irregularity of each joint', de: 'Ungleichförmigkeitsgrad jedes Gelenks' },
    },
    slowest: {
      ...SPEED,
      list: true,
      needs: ['speed'],
      name: { en: 'slowest output speed of each joint', de: 'kleinste Drehzahl hinter dem Gelenk' },
    },
    fastest: {
      ...SPEED,
      list: true,
      needs: ['speed'],
      name: { en: 'fastest output speed of each joint', de: 'größte Drehzahl hinter dem Gelenk' },
    },
    residualAngle: {
      type: 'quantity',
      dimension: 'angle',
      name: {
        en: 'residual angle of all joints together',
        de: 'resultierender Beugewinkel aller Gelenke',
      },
    },
    residualIrregularity: {
      type: 'quantity',
      dimension: '1',
      decimal: true,
      name: {
        en: 'irregularity that is left behind the last joint',
        de: 'Ungleichförmigkeit hinter dem letzten Gelenk',
      },
    },
    keepsRule: {
      type: 'outcome',
      name: {
        en: 'No angle is above 6 deg, and two differ by 1.5 deg at most.',
        de: 'Kein Winkel liegt über 6°, und zwei weichen höchstens 1,5° voneinander ab.',
      },
    },
  },
  formulas: [
    'slowestShare = cos(workingAngle),   fastestShare = 1 / cos(workingAngle)',
    'irregularity = tan(workingAngle) · sin(workingAngle) = fluctuation / speed',
    'tan²(workingAngle) = tan²(sideAngle) + tan²(planAngle)',
    'residualAngle² = |angle₁² − angle₂²|   (one plane)   or   angle₁² + angle₂²   (quarter turn)',
    'residualIrregularity = tan(residualAngle) · sin(residualAngle)',
  ],
  assumptions: [
    {
      en: 'Joints with one cross each; their angles lie in one plane, as a W or as a Z.',
      de: 'Einfache Kreuzgelenke; ihre Winkel liegen in einer Ebene, als W oder als Z.',
    },
    {
      en: 'The driving shaft turns evenly.',
      de: 'Die treibende Welle dreht gleichförmig.',
    },
    {
      en: 'A single joint leaves all of its own irregularity.',
      de: 'Ein einzelnes Gelenk lässt seine ganze Ungleichförmigkeit stehen.',
    },
  ],
  validity: [
    {
      en: 'The residual angle is for small working angles, to about 15 deg.',
      de: 'Der resultierende Winkel gilt für kleine Beugewinkel, bis etwa 15°.',
    },
    {
      en: 'Angles in different planes seen from the side and above cancel less than is said here.',
      de: 'Liegen die Winkel nicht in einer Ebene, heben sie sich weniger auf als hier gesagt.',
    },
    {
      en: 'Not for constant-velocity joints and double joints.',
      de: 'Nicht für Gleichlauf- und Doppelgelenke.',
    },
  ],
  sources: [
    { title: 'kinematics of the universal joint, 1/cos b and cos b', basis: 'read' },
    { title: 'driveline working-angle practice, 6 and 1.5 degrees', basis: 'read' },
    {
      title: 'Universal Joints and Driveshafts (handbook), residual angle of two joints',
      basis: 'from-memory',
    },
    { title: 'compound angle of two views', basis: 'arithmetic' },
    { title: 'at least 0.5 degrees, so that the needles turn', basis: 'common-practice' },
  ],
  warnings: {
    'above-working-angle': {
      en: 'A working angle is, or may be, above 6 deg: bearings wear and the shaft shakes.',
      de: 'Ein Beugewinkel liegt über 6° oder kann es: Lager verschleißen, die Welle schüttelt.',
    },
    'angles-differ': {
      en: 'The two angles differ, or may differ, by more than 1.5 deg.',
      de: 'Die beiden Winkel weichen um mehr als 1,5° voneinander ab oder können es.',
    },
    'needles-stand': {
      en: 'A working angle is, or may be, below 0.5 deg: needles that do not turn mark the cross.',
      de: 'Ein Beugewinkel liegt unter 0,5° oder kann es: Stehende Nadeln drücken sich ein.',
    },
    'out-of-phase': {
      en: 'With the inner yokes a quarter turn apart the joints add up: turn one yoke.',
      de: 'Um eine Vierteldrehung versetzte Gabeln verstärken sich: eine Gabel umsetzen.',
    },
    'uneven-drive': {
      en: 'The residual angle is, or may be, above 3 deg: noise and torsional vibration follow.',
      de: 'Der resultierende Winkel liegt über 3° oder kann es: Geräusch und Drehschwingungen.',
    },
    'beyond-small-angles': {
      en: 'The residual angle is a rough one, as a working angle is or may be above 15 deg.',
      de: 'Der resultierende Winkel ist nur grob, da ein Beugewinkel über 15° liegt oder kann.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'two-joints',
      summary: 'A shaft with 2.1 and 1.4 degrees at 6000 rpm, yokes in one plane',
      given: { angle: ['2.1 ±0.1 deg', '1.4 ±0.1 deg'], speed: '6000 rpm', phasing: 'one-plane' },
    },
    {
      name: 'two-views',
      summary: 'Angles as seen from the side and from above',
      given: { sideAngle: ['3 deg', '3.5 deg'], planAngle: ['2 deg', '2 deg'] },
    },
    {
      name: 'from-fluctuation',
      summary: 'The angle of a joint that lets 1200 rpm range over 100 rpm',
      given: { speed: '1200 rpm', fluctuation: '100 rpm' },
    },
  ],
  calculate: (given) => {
    const angles = anglesOf(given);
    if ('input' in angles) return { found: {}, warnings: [], faults: [angles] };
    const { speed } = given;
    const phasing = given.phasing ?? 'one-plane';
    const [first, second] = angles;
    const residual = second === undefined ? first : residualAngle(first, second, phasing);
    const slow = angles.map(slowestShare);
    const fast = slow.map(reciprocalInterval);
    const rule = ruleOf(angles);
    return {
      found: {
        workingAngle: angles,
        slowestShare: slow,
        fastestShare: fast,
        irregularity: angles.map(irregularity),
        slowest: speed === null ? undefined : slow.map((share) => multiplyIntervals(speed, share)),
        fastest: speed === null ? undefined : fast.map((share) => multiplyIntervals(speed, share)),
        residualAngle: residual,
        residualIrregularity: irregularity(residual),
        keepsRule: allOf([rule.most, rule.difference]),
      },
      warnings: warningsOf(angles, { rule, residual, phasing }),
    };
  },
});

type Angles = readonly [Interval, ...Interval[]];

interface GivenAngles {
  readonly angle: readonly Interval[] | null;
  readonly sideAngle: readonly Interval[] | null;
  readonly planAngle: readonly Interval[] | null;
  readonly speed: Interval | null;
  readonly fluctuation: Interval | null;
}

function anglesOf({ angle, sideAngle, planAngle, speed, fluctuation }: GivenAngles) {
  const ways = [angle, sideAngle ?? planAngle, fluctuation].filter((way) => way !== null);
  if (ways.length !== 1) return ONE_WAY;
  if (angle !== null) return atLeastOne(angle);
  if (fluctuation !== null) {
    if (speed === null) return SPEED_MISSING;
    return atLeastOne([angleOfIrregularity(divideIntervals(fluctuation, speed))]);
  }
  if (sideAngle === null || planAngle?.length !== sideAngle.length) return VIEWS_DIFFER;
  return atLeastOne(
    sideAngle.flatMap((side, index) => {
      const plan = planAngle[index];
      return plan === undefined ? [] : [compoundAngle(side, plan)];
    }),
  );
}

function atLeastOne([first, ...more]: readonly Interval[]): Angles | GivenFault {
  return first === undefined ? ONE_WAY : [first, ...more];
}

interface Rule {
  readonly most: Outcome;
  readonly difference: Outcome;
}

function ruleOf([first, second]: Angles): Rule {
  const angles = second === undefined ? [first] : [first, second];
  return {
    most: allOf(angles.map((angle) => notAbove(angle, WORKING_ANGLE.most))),
    difference:
      second === undefined
        ? 'holds'
        : notAbove(absoluteInterval(subtractIntervals(first, second)), WORKING_ANGLE.difference),
  };
}

const SMALL_ANGLE = point(rational(15));

function warningsOf(
  angles: Angles,
  {
    rule,
    residual,
    phasing,
  }: { readonly rule: Rule; readonly residual: Interval; readonly phasing: Phasing },
): string[] {
  const isPair = angles.length > 1;
  const small = allOf(angles.map((angle) => notAbove(angle, SMALL_ANGLE)));
  const turns = allOf(angles.map((angle) => notAbove(WORKING_ANGLE.least, angle)));
  const said = [
    ['above-working-angle', rule.most !== 'holds'],
    ['angles-differ', rule.difference !== 'holds'],
    ['needles-stand', turns !== 'holds'],
    ['out-of-phase', isPair && phasing === 'quarter-turn'],
    ['uneven-drive', notAbove(residual, WORKING_ANGLE.residual) !== 'holds'],
    ['beyond-small-angles', isPair && small !== 'holds'],
  ] as const;
  return said.flatMap(([code, isSaid]) => (isSaid ? [code] : []));
}

const ONE_WAY: GivenFault = {
  input: 'angle',
  text: {
    en: 'Tell the working angles, or both views of them, or the speed and its fluctuation.',
    de: 'Die Beugewinkel nennen, oder beide Ansichten, oder Drehzahl und Schwankung.',
  },
};
const SPEED_MISSING: GivenFault = {
  input: 'speed',
  text: {
    en: 'A fluctuation tells the angle only with the speed of the driving shaft.',
    de: 'Aus der Schwankung folgt der Winkel nur mit der Drehzahl der treibenden Welle.',
  },
};
const VIEWS_DIFFER: GivenFault = {
  input: 'planAngle',
  text: {
    en: 'Tell as many angles in plan view as in side view, joint by joint.',
    de: 'Von oben so viele Winkel nennen wie von der Seite, Gelenk für Gelenk.',
  },
};
