/**
 * A planetary centre differential: how it splits torque, and how its three members turn together.
 *
 * The input turns the carrier, ring and sun each drive an axle, and every planet meshes with both.
 * Willis: seen from the carrier, ring and sun turn opposite ways, as often as the other has teeth.
 *
 * Left out: centres with pairs of planets, which split otherwise; friction; locks and couplings.
 */

import {
  addIntervals,
  divideIntervals,
  equalIntervals,
  type Interval,
  multiplyIntervals,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import {
  divide,
  HUNDRED,
  isZero,
  ONE,
  rational,
  roundDown,
  subtract,
} from '../quantity/rational.js';
import { calculation } from './calculation.js';
import { isBelow } from './compare.js';

export interface Planetary {
  readonly ring: Interval;
  readonly sun: Interval;
}

/** The part of the input torque that goes out by the ring; the rest goes out by the sun. */
export function ringShare({ ring, sun }: Planetary): Interval {
  // Each stands once: 1 / (1 + sun / ring).
  const whole = addIntervals(point(ONE), divideIntervals(sun, ring));
  return divideIntervals(point(ONE), whole);
}

/** How fast the sun turns; of exact teeth, since these stand in it more than once. */
export function sunSpeed(
  { ring, sun }: Planetary,
  { carrier, ringSpeed }: { readonly carrier: Interval; readonly ringSpeed: Interval },
): Interval {
  const both = multiplyIntervals(addIntervals(ring, sun), carrier);
  return divideIntervals(subtractIntervals(both, multiplyIntervals(ring, ringSpeed)), sun);
}

const TEETH = { type: 'count', least: '8', greatest: '400', usual: ['12', '120'] } as const;
const SPEED = { type: 'quantity', dimension: 'rotation', optional: true } as const;

export const planetaryCentre = calculation({
  name: 'planetary-centre',
  title: { en: 'Planetary centre differential', de: 'Planeten-Mittendifferenzial' },
  about: {
    en: 'How does a planetary centre split torque, and how do its members turn together?',
    de: 'Wie teilt ein Planeten-Mittendifferenzial das Moment, und wie drehen seine Teile?',
  },
  inputs: {
    ringTeeth: { ...TEETH, name: { en: 'teeth of the ring gear', de: 'Zähne des Hohlrads' } },
    sunTeeth: { ...TEETH, name: { en: 'teeth of the sun gear', de: 'Zähne des Sonnenrads' } },
    carrierSpeed: {
      ...SPEED,
      name: { en: 'speed of the carrier, the input', de: 'Drehzahl des Stegs, des Eingangs' },
    },
    ringSpeed: {
      ...SPEED,
      name: {
        en: 'speed of the ring, below 0 the other way round',
        de: 'Drehzahl des Hohlrads, unter 0 gegenläufig',
      },
    },
  },
  outputs: {
    ringShare: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      name: { en: 'torque that leaves by the ring', de: 'Moment, das über das Hohlrad geht' },
    },
    sunShare: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      name: { en: 'torque that leaves by the sun', de: 'Moment, das über das Sonnenrad geht' },
    },
    sunSpeed: {
      type: 'quantity',
      dimension: 'rotation',
      needs: ['carrierSpeed', 'ringSpeed'],
      name: { en: 'speed of the sun', de: 'Drehzahl des Sonnenrads' },
    },
  },
  formulas: [
    'ringShare = 100 · ringTeeth / (ringTeeth + sunTeeth)   (%)',
    'sunShare = 100 − ringShare   (%)',
    'sunSpeed = ((ringTeeth + sunTeeth) · carrierSpeed − ringTeeth · ringSpeed) / sunTeeth',
  ],
  assumptions: [
    {
      en: 'The input turns the carrier, and each planet meshes with both ring and sun.',
      de: 'Der Eingang treibt den Steg, und jedes Planetenrad kämmt mit Hohlrad und Sonne.',
    },
    { en: 'Nothing rubs and nothing is locked.', de: 'Nichts reibt, und nichts ist gesperrt.' },
  ],
  validity: [
    {
      en: 'Not for centres with pairs of planets between ring and sun, which split otherwise.',
      de: 'Nicht für Planetenpaare zwischen Hohlrad und Sonne: Die teilen anders.',
    },
    {
      en: 'An open bevel centre splits in halves, less its friction.',
      de: 'Ein offenes Kegelrad-Mittendifferenzial teilt hälftig, bis auf seine Reibung.',
    },
  ],
  sources: [
    { title: 'planetary gear kinematics (Willis equation)', basis: 'read' },
    { title: 'balance of torque at ring, sun and carrier', basis: 'read' },
  ],
  warnings: {
    'no-whole-planet': {
      en: 'Ring less sun is odd: no planet without profile shift fits between, so count again.',
      de: 'Hohlrad weniger Sonne ist ungerade: Ohne Profilverschiebung passt kein Planetenrad.',
    },
    'planets-turn': {
      en: 'Ring and sun turn at different speeds here: the planets turn and heat all the time.',
      de: 'Hohlrad und Sonne drehen hier verschieden schnell: Die Planeten drehen ständig mit.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'two-thirds',
      summary: 'A ring of 100 and a sun of 50 teeth, all turning together',
      given: { ringTeeth: 100, sunTeeth: 50, carrierSpeed: '1000 rpm', ringSpeed: '1000 rpm' },
    },
  ],
  calculate: ({ ringTeeth, sunTeeth, carrierSpeed, ringSpeed }) => {
    if (isBelow(sunTeeth, ringTeeth) !== 'holds')
      return { found: {}, warnings: [], faults: [AMISS] };
    const teeth = { ring: ringTeeth, sun: sunTeeth };
    const share = scaleInterval(ringShare(teeth), HUNDRED);
    const turning =
      carrierSpeed === null || ringSpeed === null
        ? undefined
        : sunSpeed(teeth, { carrier: carrierSpeed, ringSpeed });
    const differ =
      turning !== undefined && ringSpeed !== null && !equalIntervals(turning, ringSpeed);
    return {
      found: {
        ringShare: share,
        sunShare: subtractIntervals(point(HUNDRED), share),
        sunSpeed: turning,
      },
      warnings: [...(isOdd(teeth) ? ['no-whole-planet'] : []), ...(differ ? ['planets-turn'] : [])],
    };
  },
});

const AMISS = {
  input: 'sunTeeth',
  text: {
    en: 'The sun turns within the ring, so it has fewer teeth.',
    de: 'Das Sonnenrad dreht im Hohlrad und hat deshalb weniger Zähne.',
  },
};

/** Whether a planet would need half a tooth, which the gap of ring and sun is twice of. */
function isOdd({ ring, sun }: Planetary): boolean {
  const half = divide(subtract(ring.low ?? ONE, sun.low ?? ONE), rational(2));
  return !isZero(subtract(half, roundDown(half, 0)));
}
