/**
 * Tractive effort and traction: what the engine pushes with at the tyres, and what the tyres can
 * put down, with the load that moves to the rear as the car speeds up.
 *
 * The car is a rigid body on a level road with one grip for all tyres. All wheels driven through a
 * locked centre use the whole weight, so that nothing hangs on where it rests; with a fixed share
 * of the weight on the driven wheels nothing is taken to move. No standard governs this; it is
 * statics of a body on two axles.
 *
 * Left out: drag and rolling resistance, slopes, the inertia of what turns, soft springs, a centre
 * that splits torque in another way than the weight.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { overCorners } from '../quantity/enclosure.js';
import {
  addIntervals,
  divideIntervals,
  type Interval,
  intersect,
  isWithin,
  minimumInterval,
  multiplyIntervals,
  POSITIVE,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { ONE, rational } from '../quantity/rational.js';
import { STANDARD_GRAVITY } from '../quantity/unit.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove } from './compare.js';
import { overallRatio } from './teeth.js';

const MM_A_METRE = rational(1000);

export interface Effort {
  /** In N.m. */
  readonly torque: Interval;
  /** From the engine to the wheels. */
  readonly ratio: Interval;
  readonly efficiency: Interval;
  /** In mm. */
  readonly radius: Interval;
}

/** In N. */
export function tractiveEffort({ torque, ratio, efficiency, radius }: Effort): Interval {
  const atWheels = [ratio, efficiency].reduce(multiplyIntervals, torque);
  return scaleInterval(divideIntervals(atWheels, radius), MM_A_METRE);
}

/** Where the weight rests, in mm. */
export interface Balance {
  readonly wheelbase: Interval;
  /** Of the centre of gravity over the road. */
  readonly height: Interval;
  /** From the front axle to the centre of gravity, behind it and before the rear axle. */
  readonly toFront: Interval;
}

interface Surface {
  readonly grip: Interval;
  /** In m/s2. */
  readonly gravity: Interval;
}

/** The most that front drive gives, in m/s2: grip g c / (L + grip h), c to the rear axle. */
export function frontDriveLimit(
  { wheelbase, height, toFront }: Balance,
  { grip, gravity }: Surface,
): Interval {
  // The wheelbase stands twice; with the centre of gravity between the axles it only adds to it.
  const part = overCorners([wheelbase, toFront, height, grip], (length, front, high, mu) => {
    const toRear = subtractIntervals(length, front);
    return divideIntervals(toRear, addIntervals(divideIntervals(length, mu), high));
  });
  return multiplyIntervals(part, gravity);
}

/** The acceleration at which the front wheels lift, in m/s2: g c / h, c to the rear axle. */
export function liftingLimit({ wheelbase, height, toFront }: Balance, gravity: Interval): Interval {
  const toRear = subtractIntervals(wheelbase, toFront);
  return multiplyIntervals(divideIntervals(toRear, height), gravity);
}

/**
 * The greatest acceleration of rear drive in m/s2: grip g b / (L - grip h), b to the front axle,
 * until the front wheels lift and there is no more weight to move.
 */
export function rearDriveLimit(balance: Balance, { grip, gravity }: Surface): Interval {
  const { wheelbase, height, toFront } = balance;
  // By the grip above and below, so that each value stands once.
  const arm = intersect(subtractIntervals(divideIntervals(wheelbase, grip), height), POSITIVE);
  const lifting = liftingLimit(balance, gravity);
  if (arm === null) return lifting;
  const slipping = multiplyIntervals(divideIntervals(toFront, arm), gravity);
  // Both grow with gravity and hang on the same lengths: where both may be it, the set is wide.
  return liftsFront(balance, grip) === 'fails' ? slipping : minimumInterval(slipping, lifting);
}

/** Whether the front wheels come off the road before the tyres slip: grip h > c. */
export function liftsFront({ wheelbase, height, toFront }: Balance, grip: Interval) {
  return isBelow(subtractIntervals(wheelbase, toFront), multiplyIntervals(grip, height));
}

/** All wheels driven with a locked centre, in m/s2. */
export function lockedDriveLimit(balance: Balance | null, { grip, gravity }: Surface): Interval {
  const slipping = multiplyIntervals(grip, gravity);
  if (balance === null || liftsFront(balance, grip) === 'fails') return slipping;
  return minimumInterval(slipping, liftingLimit(balance, gravity));
}

const PLACE = { type: 'quantity', dimension: 'length', optional: true, above: '0 mm' } as const;
const EFFORT = ['torque', 'stages', 'rollingRadius'];

export const traction = calculation({
  name: 'traction',
  title: { en: 'Tractive effort and traction', de: 'Zugkraft und Traktion' },
  about: {
    en: 'How hard does the engine push in this gear, and how much of it can the tyres put down?',
    de: 'Wie stark schiebt der Motor in diesem Gang, und wie viel davon bringen die Reifen auf?',
  },
  inputs: {
    drive: {
      type: 'code',
      name: { en: 'driven wheels', de: 'angetriebene Räder' },
      codes: {
        front: { en: 'front wheels', de: 'Vorderräder' },
        rear: { en: 'rear wheels', de: 'Hinterräder' },
        'all-locked': {
          en: 'all wheels with a locked centre',
          de: 'alle Räder mit gesperrter Mitte',
        },
        'fixed-share': {
          en: 'wheels that carry a fixed share of the weight',
          de: 'Räder, die einen festen Teil des Gewichts tragen',
        },
      },
    },
    grip: {
      type: 'quantity',
      dimension: '1',
      above: '0',
      usual: ['0.6', '0.9'],
      name: { en: 'grip of the tyres', de: 'Reibwert der Reifen' },
    },
    wheelbase: {
      ...PLACE,
      usual: ['1800 mm', '3500 mm'],
      name: { en: 'wheelbase', de: 'Radstand' },
    },
    gravityToFront: {
      ...PLACE,
      usual: ['700 mm', '2000 mm'],
      name: {
        en: 'centre of gravity behind the front axle',
        de: 'Schwerpunkt hinter der Vorderachse',
      },
    },
    gravityHeight: {
      ...PLACE,
      usual: ['400 mm', '900 mm'],
      name: { en: 'height of the centre of gravity', de: 'Höhe des Schwerpunkts' },
    },
    drivenShare: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      above: '0',
      greatest: '1',
      usual: ['0.35', '0.75'],
      name: {
        en: 'share of the weight on the driven wheels',
        de: 'Anteil des Gewichts auf den angetriebenen Rädern',
      },
    },
    mass: {
      type: 'quantity',
      dimension: 'mass',
      optional: true,
      above: '0 kg',
      usual: ['500 kg', '3500 kg'],
      name: { en: 'mass of the car as it drives', de: 'Masse des Wagens im Fahrzustand' },
    },
    torque: {
      type: 'quantity',
      dimension: 'torque',
      optional: true,
      above: '0 N.m',
      usual: ['50 N.m', '800 N.m'],
      name: { en: 'torque of the engine', de: 'Motordrehmoment' },
    },
    stages: {
      type: 'ratio',
      optional: true,
      most: 6,
      usual: ['1/4', '20'],
      name: {
        en: 'ratios from the engine to the wheels, gear and axle',
        de: 'Übersetzungen vom Motor bis zu den Rädern, Gang und Achse',
      },
    },
    efficiency: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      above: '0',
      greatest: '1',
      usual: ['0.85', '0.96'],
      name: { en: 'efficiency of the driveline, 1 if not told', de: 'Wirkungsgrad, sonst 1' },
    },
    rollingRadius: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      above: '0 mm',
      usual: ['220 mm', '420 mm'],
      name: { en: 'rolling radius of the driven tyres', de: 'Rollradius der angetriebenen Reifen' },
    },
    gravity: {
      type: 'quantity',
      dimension: 'acceleration',
      optional: true,
      above: '0 m/s2',
      usual: ['9.78 m/s2', '9.84 m/s2'],
      name: {
        en: 'acceleration of gravity, else 9.80665',
        de: 'Fallbeschleunigung, sonst 9,80665',
      },
    },
  },
  outputs: {
    tractiveEffort: {
      type: 'quantity',
      dimension: 'force',
      needs: EFFORT,
      name: { en: 'tractive effort at the tyres', de: 'Zugkraft an den Reifen' },
    },
    greatestAcceleration: {
      type: 'quantity',
      dimension: 'acceleration',
      needs: ['wheelbase', 'gravityToFront', 'gravityHeight', 'drivenShare'],
      name: {
        en: 'greatest acceleration that the tyres allow',
        de: 'größte Beschleunigung, die die Reifen zulassen',
      },
    },
    greatestEffort: {
      type: 'quantity',
      dimension: 'force',
      needs: ['mass', 'wheelbase', 'gravityToFront', 'gravityHeight', 'drivenShare'],
      name: {
        en: 'greatest effort that the tyres put down',
        de: 'größte Kraft, die die Reifen aufbringen',
      },
    },
    putsDown: {
      type: 'outcome',
      needs: ['mass', ...EFFORT, 'wheelbase', 'gravityToFront', 'gravityHeight', 'drivenShare'],
      name: {
        en: 'The tyres put all of the effort down.',
        de: 'Die Reifen bringen die ganze Zugkraft auf die Straße.',
      },
    },
  },
  formulas: [
    'tractiveEffort = torque · stages[1] · stages[2] · … · efficiency / rollingRadius',
    'front: greatestAcceleration = grip · gravity · (wheelbase − gravityToFront)' +
      ' / (wheelbase + grip · gravityHeight)',
    'rear: greatestAcceleration = grip · gravity · gravityToFront' +
      ' / (wheelbase − grip · gravityHeight)',
    'all-locked: greatestAcceleration = grip · gravity',
    'fixed-share: greatestAcceleration = grip · gravity · drivenShare',
    'rear and all-locked: at most gravity · (wheelbase − gravityToFront) / gravityHeight',
    'greatestEffort = mass · greatestAcceleration',
  ],
  assumptions: [
    {
      en: 'A level road, and the same grip for all tyres.',
      de: 'Ebene Straße, und für alle Reifen derselbe Reibwert.',
    },
    {
      en: 'The car is stiff, and nothing but the driven tyres pushes or holds it.',
      de: 'Der Wagen ist starr, und nur die angetriebenen Reifen schieben oder halten ihn.',
    },
  ],
  validity: [
    {
      en: 'Not for slopes, trailers, or speeds at which the air counts.',
      de: 'Nicht für Steigungen, Anhänger oder Tempo, bei dem die Luft zählt.',
    },
    {
      en: 'Grip is no constant: it hangs on the tyre, the road and the wet.',
      de: 'Der Reibwert ist keine Konstante: Er hängt von Reifen, Straße und Nässe ab.',
    },
    {
      en: 'An open differential is limited by the wheel that slips first.',
      de: 'Ein offenes Differenzial begrenzt das Rad, das zuerst rutscht.',
    },
  ],
  sources: [
    { title: 'tractive effort of the engine at the wheels', basis: 'read' },
    { title: 'vehicle dynamics course, traction limits with load transfer', basis: 'read' },
    {
      title: 'efficiency of 0.85 to 0.96, grip of 0.6 to 0.9 on a dry road',
      basis: 'common-practice',
    },
  ],
  warnings: {
    'front-lifts': {
      en: 'The front wheels may lift before the tyres slip: that is then the limit.',
      de: 'Die Vorderräder heben vielleicht ab, ehe Reifen rutschen: Das ist dann die Grenze.',
    },
    'no-losses': {
      en: 'No efficiency is told, so the effort is more than any driveline gives.',
      de: 'Kein Wirkungsgrad ist gesagt: So viel Zugkraft gibt kein Antriebsstrang her.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'rear-drive',
      summary: 'Rear drive in first gear on a dry road',
      given: {
        drive: 'rear',
        grip: '0.7',
        wheelbase: '2600 mm',
        gravityToFront: '1300 mm',
        gravityHeight: '700 mm',
        mass: '1300 kg',
        torque: '320 N.m',
        stages: ['40/11', '43/12'],
        efficiency: '0.9',
        rollingRadius: '298.5 mm',
        gravity: '9.81 m/s2',
      },
    },
    {
      name: 'fixed-share',
      summary: 'Driven wheels that carry 48 % of the weight',
      given: { drive: 'fixed-share', grip: '0.6 to 0.8', drivenShare: '48 %' },
    },
  ],
  calculate: (given) => {
    const balance = balanceOf(given);
    const faults = faultsOf(balance);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const effort = effortOf(given);
    const greatest = limitOf(given, balance);
    const { mass } = given;
    const greatestEffort = greatest && mass ? multiplyIntervals(greatest, mass) : undefined;
    const mayLift = balance !== null && liftsFront(balance, given.grip) !== 'fails';
    const isPushedFromBehind = given.drive === 'rear' || given.drive === 'all-locked';
    return {
      found: {
        tractiveEffort: effort,
        greatestAcceleration: greatest,
        greatestEffort,
        putsDown: effort && greatestEffort && notAbove(effort, greatestEffort),
      },
      warnings: [
        ...(mayLift && isPushedFromBehind ? ['front-lifts'] : []),
        ...(effort !== undefined && given.efficiency === null ? ['no-losses'] : []),
      ],
    };
  },
});

interface Told {
  readonly drive: 'front' | 'rear' | 'all-locked' | 'fixed-share';
  readonly grip: Interval;
  readonly wheelbase: Interval | null;
  readonly gravityToFront: Interval | null;
  readonly gravityHeight: Interval | null;
  readonly drivenShare: Interval | null;
  readonly torque: Interval | null;
  readonly stages: readonly Interval[] | null;
  readonly efficiency: Interval | null;
  readonly rollingRadius: Interval | null;
  readonly gravity: Interval | null;
}

function balanceOf({ wheelbase, gravityToFront, gravityHeight }: Told): Balance | null {
  if (wheelbase === null || gravityToFront === null || gravityHeight === null) return null;
  return { wheelbase, height: gravityHeight, toFront: gravityToFront };
}

function effortOf({ torque, stages, efficiency, rollingRadius }: Told): Interval | undefined {
  if (torque === null || stages === null || rollingRadius === null) return undefined;
  const ratio = overallRatio(stages);
  return tractiveEffort({
    torque,
    ratio,
    efficiency: efficiency ?? point(ONE),
    radius: rollingRadius,
  });
}

function limitOf(given: Told, balance: Balance | null): Interval | undefined {
  const { drive, grip, drivenShare } = given;
  const surface = { grip, gravity: given.gravity ?? point(STANDARD_GRAVITY) };
  if (drive === 'all-locked') return lockedDriveLimit(balance, surface);
  if (drive === 'fixed-share') {
    if (drivenShare === null) return undefined;
    return multiplyIntervals(lockedDriveLimit(null, surface), drivenShare);
  }
  if (balance === null) return undefined;
  return drive === 'front' ? frontDriveLimit(balance, surface) : rearDriveLimit(balance, surface);
}

function faultsOf(balance: Balance | null): GivenFault[] {
  if (balance === null) return [];
  const toRear = subtractIntervals(balance.wheelbase, balance.toFront);
  if (isWithin(toRear, POSITIVE)) return [];
  const text = {
    en: 'The centre of gravity must lie before the rear axle.',
    de: 'Der Schwerpunkt muss vor der Hinterachse liegen.',
  };
  return [{ input: 'gravityToFront', text }];
}
