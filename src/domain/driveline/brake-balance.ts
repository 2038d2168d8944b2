/**
 * How braking is shared between the axles, beside how the load is shared while braking.
 *
 * Under braking the front axle carries static share + z h / L of the weight. An axle uses up the
 * more grip, the larger its share of the braking is beside its share of the load; the one that uses
 * more locks first. That must not be the rear axle: UN R13-H annex 5 rules the distribution. Other
 * brakes keep the order and the ratio of front to rear within 5 % of the original one, which is
 * common practice.
 *
 * Left out: pressure limiters and valves beyond the torques that are told, suspension geometry,
 * drag of engine and air, an antilock control.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf } from '../check/state.js';
import {
  addIntervals,
  closed,
  divideIntervals,
  EVERYTHING,
  type Interval,
  isWithin,
  multiplyIntervals,
  POSITIVE,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { HUNDRED, ONE, rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove, within } from './compare.js';

const ALL = point(ONE);

/** The front axle's part of all braking, from a torque or force of each axle. */
export function brakeShare(front: Interval, rear: Interval): Interval {
  return divideIntervals(ALL, addIntervals(ALL, divideIntervals(rear, front)));
}

export interface Load {
  /** The front axle's part of the weight at rest. */
  readonly share: Interval;
  /** Height of the centre of gravity over the wheelbase. */
  readonly heightOverBase: Interval;
}

/** The front axle's part of the weight at a deceleration of so many g; above 1 the rear lifts. */
export function dynamicShare({ share, heightOverBase }: Load, deceleration: Interval): Interval {
  return addIntervals(share, multiplyIntervals(deceleration, heightOverBase));
}

/** Grip that each axle uses at a deceleration; of an axle that may lift nothing is claimed. */
export function gripUsed(braking: Interval, load: Load, deceleration: Interval) {
  // Divided by the deceleration, which would else stand above and below the line.
  const front = addIntervals(divideIntervals(load.share, deceleration), load.heightOverBase);
  const atRest = divideIntervals(subtractIntervals(ALL, load.share), deceleration);
  const rear = subtractIntervals(atRest, load.heightOverBase);
  return {
    front: divideIntervals(braking, front),
    rear: isWithin(rear, POSITIVE)
      ? divideIntervals(subtractIntervals(ALL, braking), rear)
      : EVERYTHING,
  };
}

/** The deceleration at which both axles use the same grip; the rear locks first above it. */
export function balancedDeceleration(braking: Interval, load: Load): Interval {
  return divideIntervals(subtractIntervals(braking, load.share), load.heightOverBase);
}

/** How far a ratio of front to rear may be off the original one. */
export const KEPT_RATIO = closed(rational('-0.05'), rational('0.05'));

const TORQUE = {
  type: 'quantity',
  dimension: 'torque',
  above: '0 N.m',
  greatest: '1000000 N.m',
} as const;
const LENGTH = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  above: '0 mm',
  greatest: '20000 mm',
} as const;
const PER_CENT = { type: 'quantity', dimension: '1', percent: true } as const;
const LOAD = ['staticFrontShare', 'centreOfGravityHeight', 'wheelbase'] as const;
const AT = [...LOAD, 'deceleration'] as const;

export const brakeBalance = calculation({
  name: 'brake-balance',
  title: { en: 'Brake balance front to rear', de: 'Bremskraftverteilung vorn zu hinten' },
  about: {
    en: 'Which axle locks first, and how far is the balance off the original brakes?',
    de: 'Welche Achse blockiert zuerst, und wie weit weicht die Verteilung vom Original ab?',
  },
  inputs: {
    frontTorque: {
      ...TORQUE,
      name: { en: 'brake torque of the front axle', de: 'Bremsmoment der Vorderachse' },
    },
    rearTorque: {
      ...TORQUE,
      name: {
        en: 'brake torque of the rear axle at the same pedal force',
        de: 'Bremsmoment der Hinterachse bei derselben Fußkraft',
      },
    },
    frontTyreRadius: {
      ...LENGTH,
      name: {
        en: 'rolling radius in front, as in the rear if not told',
        de: 'Rollhalbmesser vorn, sonst wie hinten',
      },
    },
    rearTyreRadius: {
      ...LENGTH,
      name: {
        en: 'rolling radius in the rear, as in front if not told',
        de: 'Rollhalbmesser hinten, sonst wie vorn',
      },
    },
    originalFrontTorque: {
      ...TORQUE,
      optional: true,
      name: {
        en: 'original brake torque of the front axle',
        de: 'ursprüngliches Bremsmoment der Vorderachse',
      },
    },
    originalRearTorque: {
      ...TORQUE,
      optional: true,
      name: {
        en: 'original brake torque of the rear axle at one pedal force',
        de: 'ursprüngliches Bremsmoment der Hinterachse bei gleicher Fußkraft',
      },
    },
    staticFrontShare: {
      type: 'quantity',
      optional: true,
      above: '0',
      greatest: '1',
      usual: ['0.4', '0.65'],
      name: { en: 'front share of the weight at rest', de: 'Anteil der Vorderachse im Stand' },
    },
    centreOfGravityHeight: {
      ...LENGTH,
      usual: ['400 mm', '800 mm'],
      name: { en: 'height of the centre of gravity', de: 'Höhe des Schwerpunkts' },
    },
    wheelbase: {
      ...LENGTH,
      usual: ['2000 mm', '3500 mm'],
      name: { en: 'wheelbase', de: 'Radstand' },
    },
    deceleration: {
      type: 'quantity',
      optional: true,
      above: '0',
      greatest: '10',
      usual: ['0.1', '1.1'],
      name: { en: 'deceleration in parts of g', de: 'Abbremsung als Vielfaches von g' },
    },
    grip: {
      type: 'quantity',
      optional: true,
      above: '0',
      greatest: '10',
      usual: ['0.1', '1.1'],
      name: { en: 'grip of the tyres', de: 'Kraftschluss der Reifen' },
    },
  },
  outputs: {
    torqueRatio: {
      ...PER_CENT,
      name: { en: 'front brake torque over that behind', de: 'Bremsmoment vorn durch hinten' },
    },
    ratioChange: {
      ...PER_CENT,
      needs: ['originalFrontTorque', 'originalRearTorque'],
      name: { en: 'change of that ratio', de: 'Änderung dieses Verhältnisses' },
    },
    keepsRatio: {
      type: 'outcome',
      needs: ['originalFrontTorque', 'originalRearTorque'],
      name: {
        en: 'The ratio stays within 5 % of the original one.',
        de: 'Das Verhältnis bleibt auf 5 % beim ursprünglichen.',
      },
    },
    frontBrakeShare: {
      ...PER_CENT,
      name: { en: 'front share of the braking', de: 'Anteil der Vorderachse am Bremsen' },
    },
    frontLoadShare: {
      ...PER_CENT,
      needs: AT,
      name: {
        en: 'front share of the weight while braking',
        de: 'Anteil der Vorderachse am Gewicht beim Bremsen',
      },
    },
    locksFirst: {
      type: 'code',
      needs: AT,
      name: { en: 'which axle locks first', de: 'welche Achse zuerst blockiert' },
      codes: {
        front: { en: 'the front axle', de: 'die Vorderachse' },
        rear: { en: 'the rear axle', de: 'die Hinterachse' },
        both: { en: 'both at once', de: 'beide zugleich' },
        open: { en: 'open: it may be either', de: 'offen: Es kann jede sein' },
      },
    },
    balancedDeceleration: {
      ...PER_CENT,
      needs: LOAD,
      name: {
        en: 'deceleration above which the rear axle locks first, of g',
        de: 'Abbremsung, über der die Hinterachse zuerst blockiert, von g',
      },
    },
    frontGripUsed: {
      ...PER_CENT,
      needs: AT,
      name: {
        en: 'grip that the front axle uses',
        de: 'Kraftschluss, den die Vorderachse braucht',
      },
    },
    rearGripUsed: {
      ...PER_CENT,
      needs: AT,
      name: { en: 'grip that the rear axle uses', de: 'Kraftschluss, den die Hinterachse braucht' },
    },
    frontRolls: {
      type: 'outcome',
      needs: [...AT, 'grip'],
      name: {
        en: 'The front wheels keep rolling at that deceleration and grip.',
        de: 'Die Vorderräder rollen bei dieser Abbremsung und diesem Kraftschluss weiter.',
      },
    },
    rearRolls: {
      type: 'outcome',
      needs: [...AT, 'grip'],
      name: {
        en: 'The rear wheels keep rolling at that deceleration and grip.',
        de: 'Die Hinterräder rollen bei dieser Abbremsung und diesem Kraftschluss weiter.',
      },
    },
  },
  formulas: [
    'torqueRatio = frontTorque / rearTorque',
    'ratioChange = torqueRatio / (originalFrontTorque / originalRearTorque) − 1',
    'frontForce = frontTorque / frontTyreRadius,   rearForce = rearTorque / rearTyreRadius',
    'frontBrakeShare = frontForce / (frontForce + rearForce)',
    'frontLoadShare = staticFrontShare + deceleration · heightOverBase',
    'frontGripUsed = deceleration · frontBrakeShare / frontLoadShare',
    'rearGripUsed = deceleration · (1 − frontBrakeShare) / (1 − frontLoadShare)',
    'heightOverBase = centreOfGravityHeight / wheelbase',
    'balancedDeceleration = (frontBrakeShare − staticFrontShare) / heightOverBase',
  ],
  assumptions: [
    {
      en: 'Both axles brake in the same ratio at every pedal force: no limiter, no valve.',
      de: 'Beide Achsen bremsen bei jeder Fußkraft im selben Verhältnis: kein Begrenzer.',
    },
    {
      en: 'Straight ahead on an even road, both sides alike, without an antilock control.',
      de: 'Geradeaus auf ebener Straße, beide Seiten gleich, ohne Blockierregelung.',
    },
  ],
  validity: [
    {
      en: 'For the lightest and the heaviest load: ask with each of them.',
      de: 'Für die leichteste und die schwerste Beladung: mit beiden rechnen.',
    },
    {
      en: 'The 5 % are common practice; beyond them it is a case for an engineer.',
      de: 'Die 5 % sind übliche Praxis; darüber entscheidet ein Ingenieur.',
    },
  ],
  sources: [
    { title: 'load transfer under braking, static share + z h / L', basis: 'arithmetic' },
    { title: 'UN R13-H annex 5, distribution of braking', basis: 'read' },
    { title: 'ratio of front to rear within 5 % of the original', basis: 'common-practice' },
  ],
  warnings: {
    'rear-locks-first': {
      en: 'The rear axle locks, or may lock, first: the vehicle then turns round.',
      de: 'Die Hinterachse blockiert oder kann zuerst blockieren: Dann bricht das Fahrzeug aus.',
    },
    'ratio-off': {
      en: 'The ratio is, or may be, more than 5 % off the original one: ask an engineer.',
      de: 'Das Verhältnis weicht über 5 % ab oder kann es: einen Ingenieur fragen.',
    },
    'rear-lifts': {
      en: 'At that deceleration the rear axle may lift.',
      de: 'Bei dieser Abbremsung kann die Hinterachse abheben.',
    },
    'beyond-grip': {
      en: 'No tyre decelerates the vehicle by more than its grip.',
      de: 'Kein Reifen bremst das Fahrzeug stärker ab als mit seinem Kraftschluss.',
    },
  },
  caution: 'brakes',
  examples: [
    {
      name: 'larger-front-brakes',
      summary: 'Larger brakes in front beside the original ones, at 0.8 g',
      given: {
        frontTorque: '3200 N.m',
        rearTorque: '1100 N.m',
        originalFrontTorque: '2900 N.m',
        originalRearTorque: '1050 N.m',
        staticFrontShare: '58 %',
        centreOfGravityHeight: '0.5 m',
        wheelbase: '2.5 m',
        deceleration: '0.8',
        grip: '0.9',
      },
    },
    {
      name: 'other-tyres-behind',
      summary: 'A balance that is known roughly, on tyres of two sizes',
      given: {
        frontTorque: '2700 ±100 N.m',
        rearTorque: '1000 ±50 N.m',
        frontTyreRadius: '300 mm',
        rearTyreRadius: '310 mm',
        staticFrontShare: '52 %',
        centreOfGravityHeight: '0.52 ±0.02 m',
        wheelbase: '2.6 m',
        deceleration: '0.7',
      },
    },
  ],
  calculate: (given) => {
    const faults = radiusFaults(given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const torqueRatio = divideIntervals(given.frontTorque, given.rearTorque);
    const ratioChange = ratioChangeOf(torqueRatio, given);
    const keepsRatio = ratioChange && within(ratioChange, KEPT_RATIO);
    const braking = brakeShareOf(given);
    const load = loadOf(given);
    const at = load && given.deceleration && axlesAt(braking, load, given.deceleration);
    const rolls = at && given.grip && rollingOf(at.used, given.grip, given.deceleration);
    return {
      found: {
        torqueRatio: inPerCent(torqueRatio),
        ratioChange: ratioChange && inPerCent(ratioChange),
        keepsRatio,
        frontBrakeShare: inPerCent(braking),
        frontLoadShare: at ? inPerCent(at.loadShare) : undefined,
        locksFirst: at?.locksFirst,
        balancedDeceleration: load ? inPerCent(balancedDeceleration(braking, load)) : undefined,
        frontGripUsed: at ? inPerCent(at.used.front) : undefined,
        rearGripUsed: at ? inPerCent(at.used.rear) : undefined,
        frontRolls: rolls?.front,
        rearRolls: rolls?.rear,
      },
      warnings: [
        ...(keepsRatio === undefined || keepsRatio === 'holds' ? [] : ['ratio-off']),
        ...(at && (at.locksFirst === 'rear' || at.locksFirst === 'open')
          ? ['rear-locks-first']
          : []),
        ...(at && isBelow(at.loadShare, ALL) !== 'holds' ? ['rear-lifts'] : []),
        ...(rolls?.isBeyond ? ['beyond-grip'] : []),
      ],
    };
  },
});

function inPerCent(share: Interval): Interval {
  return scaleInterval(share, HUNDRED);
}

interface Originals {
  readonly originalFrontTorque: Interval | null;
  readonly originalRearTorque: Interval | null;
}

function ratioChangeOf(ratio: Interval, given: Originals): Interval | undefined {
  const { originalFrontTorque: front, originalRearTorque: rear } = given;
  if (front === null || rear === null) return undefined;
  return subtractIntervals(divideIntervals(ratio, divideIntervals(front, rear)), ALL);
}

interface Braking {
  readonly frontTorque: Interval;
  readonly rearTorque: Interval;
  readonly frontTyreRadius: Interval | null;
  readonly rearTyreRadius: Interval | null;
}

function brakeShareOf({ frontTorque, rearTorque, frontTyreRadius, rearTyreRadius }: Braking) {
  if (frontTyreRadius === null || rearTyreRadius === null) {
    return brakeShare(frontTorque, rearTorque);
  }
  return brakeShare(
    divideIntervals(frontTorque, frontTyreRadius),
    divideIntervals(rearTorque, rearTyreRadius),
  );
}

function radiusFaults({ frontTyreRadius, rearTyreRadius }: Braking): GivenFault[] {
  if ((frontTyreRadius === null) === (rearTyreRadius === null)) return [];
  const text = {
    en: 'Give the rolling radius of both axles, or of neither where they are the same.',
    de: 'Den Rollhalbmesser beider Achsen angeben oder keinen, wenn sie gleich sind.',
  };
  return [{ input: frontTyreRadius === null ? 'rearTyreRadius' : 'frontTyreRadius', text }];
}

interface GivenLoad {
  readonly staticFrontShare: Interval | null;
  readonly centreOfGravityHeight: Interval | null;
  readonly wheelbase: Interval | null;
}

function loadOf({ staticFrontShare, centreOfGravityHeight, wheelbase }: GivenLoad): Load | null {
  if (staticFrontShare === null || centreOfGravityHeight === null || wheelbase === null) {
    return null;
  }
  const heightOverBase = divideIntervals(centreOfGravityHeight, wheelbase);
  return { share: staticFrontShare, heightOverBase };
}

function axlesAt(braking: Interval, load: Load, deceleration: Interval) {
  const loadShare = dynamicShare(load, deceleration);
  return {
    loadShare,
    used: gripUsed(braking, load, deceleration),
    locksFirst: firstToLock(braking, loadShare),
  };
}

/** The axle whose share of the braking is larger than that of the load. */
export function firstToLock(braking: Interval, load: Interval): 'front' | 'rear' | 'both' | 'open' {
  if (isBelow(load, braking) === 'holds') return 'front';
  if (isBelow(braking, load) === 'holds') return 'rear';
  const isSame = allOf([notAbove(load, braking), notAbove(braking, load)]);
  return isSame === 'holds' ? 'both' : 'open';
}

function rollingOf(
  used: { readonly front: Interval; readonly rear: Interval },
  grip: Interval,
  deceleration: Interval,
) {
  return {
    front: notAbove(used.front, grip),
    rear: notAbove(used.rear, grip),
    isBeyond: notAbove(deceleration, grip) !== 'holds',
  };
}
