/**
 * The loop of two driven axles: how much faster one would run than the other if nothing slipped,
 * and whether what couples them bears that.
 *
 * From where the two paths part, each stage of a path and the tyre at its end count. What differs
 * is taken up by a differential, by slip, or by winding up. The bands of the couplings stand in
 * `check/coupling.ts`; no standard governs them. In a bend the axles run different ways as well,
 * which comes on top and is always there.
 *
 * Left out: slip, air pressure and load on the tyres, and differences within one axle.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { type Band, DEFAULT_COUPLINGS, refusalOf, type Use } from '../check/coupling.js';
import type { Outcome } from '../check/state.js';
import {
  closed,
  contains,
  divideIntervals,
  type Interval,
  isPoint,
  isWithin,
  multiplyIntervals,
  NON_NEGATIVE,
  point,
  scaleInterval,
} from '../quantity/interval.js';
import { HUNDRED, negate, ONE, type Rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { within } from './compare.js';
import { comparedRatios, overallRatio } from './teeth.js';
import { isTyreFault, toldCircumference } from './told-tyre.js';
import { percentMore } from './tyre-size.js';

export interface Loop {
  /** From where the paths part to the wheels. */
  readonly front: Interval;
  readonly rear: Interval;
  /** Rolling circumference of the front tyres by that of the rear ones. */
  readonly tyres: Interval;
}

/** By how many per cent the front axle would run faster; below 0 it runs slower. */
export function mismatchPercent({ front, rear, tyres }: Loop): Interval {
  return percentMore(multiplyIntervals(rear, tyres), front);
}

/** The ratio of the rear path with which nothing is out. */
export function matchingRear({ front, tyres }: Omit<Loop, 'rear'>): Interval {
  return divideIntervals(front, tyres);
}

type Sense = 'equal' | 'front-faster' | 'front-slower' | 'undecided';

function senseOf(percent: Interval): Sense {
  if (contains(percent, ZERO)) return isPoint(percent) ? 'equal' : 'undecided';
  return isWithin(percent, NON_NEGATIVE) ? 'front-faster' : 'front-slower';
}

const STAGES = { type: 'ratio', optional: true, most: 6, usual: ['1/2', '7'] } as const;
const TYRE = { type: 'text', optional: true, form: '205/55R16' } as const;
const CIRCUMFERENCE = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  above: '0 mm',
  usual: ['1500 mm', '2700 mm'],
} as const;
const WORN = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  least: '0 mm',
  greatest: '20 mm',
  usual: ['0 mm', '7 mm'],
} as const;
const TURNS = { type: 'quantity', dimension: '1', optional: true, above: '0' } as const;
const PATHS = ['frontStages', 'rearStages'] as const;

export const axleLoop = calculation({
  name: 'axle-loop',
  title: { en: 'Loop of two driven axles', de: 'Kreis zweier angetriebener Achsen' },
  about: {
    en: 'Do front and rear axle run equally fast, and does what couples them bear the rest?',
    de: 'Laufen Vorder- und Hinterachse gleich schnell, und trägt die Kopplung den Unterschied?',
  },
  inputs: {
    frontStages: {
      ...STAGES,
      name: {
        en: 'stages to the front wheels, from where the paths part',
        de: 'Stufen zu den Vorderrädern, ab der Verzweigung',
      },
    },
    rearStages: {
      ...STAGES,
      name: {
        en: 'stages to the rear wheels, from where the paths part',
        de: 'Stufen zu den Hinterrädern, ab der Verzweigung',
      },
    },
    frontTyre: {
      ...TYRE,
      name: {
        en: 'front tyre, where the rear one is told',
        de: 'Reifen vorn, wo der hintere genannt ist',
      },
    },
    rearTyre: {
      ...TYRE,
      name: {
        en: 'rear tyre, where the front one is told',
        de: 'Reifen hinten, wo der vordere genannt ist',
      },
    },
    frontCircumference: {
      ...CIRCUMFERENCE,
      name: { en: 'front tyre as it rolls, measured', de: 'Abrollumfang vorn, gemessen' },
    },
    rearCircumference: {
      ...CIRCUMFERENCE,
      name: { en: 'rear tyre as it rolls, measured', de: 'Abrollumfang hinten, gemessen' },
    },
    frontWear: {
      ...WORN,
      name: { en: 'tread worn off in front', de: 'vorn abgefahrenes Profil' },
    },
    rearWear: {
      ...WORN,
      name: { en: 'tread worn off behind', de: 'hinten abgefahrenes Profil' },
    },
    coupling: {
      type: 'code',
      optional: true,
      name: { en: 'what couples the axles', de: 'was die Achsen koppelt' },
      codes: {
        open: { en: 'open bevel differential', de: 'offenes Kegelraddifferenzial' },
        planetary: { en: 'open planetary differential', de: 'offenes Planetendifferenzial' },
        locked: { en: 'locked for good', de: 'ständig starr' },
        'part-time': { en: 'locked when needed', de: 'zuschaltbar, dann starr' },
        viscous: { en: 'viscous coupling', de: 'Viscokupplung' },
        clutch: { en: 'wet clutch', de: 'Lamellenkupplung' },
      },
    },
    use: {
      type: 'code',
      optional: true,
      name: {
        en: 'where it drives, on the road if not told',
        de: 'wo gefahren wird, sonst Straße',
      },
      codes: {
        road: { en: 'road', de: 'Straße' },
        'off-road': { en: 'loose ground', de: 'loser Boden' },
        competition: { en: 'competition', de: 'Wettbewerb' },
      },
    },
    frontTurns: {
      ...TURNS,
      name: {
        en: 'turns of the front wheels counted, such as 13.5 ±0.1',
        de: 'gezählte Umdrehungen vorn, etwa 13.5 ±0.1',
      },
    },
    rearTurns: {
      ...TURNS,
      name: {
        en: 'turns of the rear wheels by hand, with the centre locked',
        de: 'Umdrehungen hinten von Hand, bei gesperrter Mitte',
      },
    },
  },
  outputs: {
    frontRatio: {
      type: 'quantity',
      dimension: '1',
      needs: ['frontStages'],
      name: { en: 'ratio of the front path', de: 'Übersetzung nach vorn' },
    },
    rearRatio: {
      type: 'quantity',
      dimension: '1',
      needs: ['rearStages'],
      name: { en: 'ratio of the rear path', de: 'Übersetzung nach hinten' },
    },
    mismatch: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      needs: PATHS,
      name: {
        en: 'mismatch, above 0 if the front runs faster',
        de: 'Abweichung, über 0 wenn vorn schneller',
      },
    },
    sense: {
      type: 'code',
      needs: PATHS,
      name: { en: 'which axle runs ahead', de: 'welche Achse vorläuft' },
      codes: {
        equal: { en: 'neither: both run equally fast', de: 'keine: beide laufen gleich schnell' },
        'front-faster': { en: 'the front axle is faster', de: 'die Vorderachse ist schneller' },
        'front-slower': { en: 'the front axle is slower', de: 'die Vorderachse ist langsamer' },
        undecided: { en: 'what is given leaves it open', de: 'die Angaben lassen es offen' },
      },
    },
    bearsMismatch: {
      type: 'outcome',
      needs: [...PATHS, 'coupling'],
      name: {
        en: 'The coupling bears the mismatch in this use.',
        de: 'Die Kopplung trägt die Abweichung bei dieser Nutzung.',
      },
    },
    matchingRearRatio: {
      type: 'quantity',
      dimension: '1',
      decimal: true,
      needs: ['frontStages'],
      name: { en: 'rear path without mismatch', de: 'hinten ohne Abweichung' },
    },
    measuredRatio: {
      type: 'quantity',
      dimension: '1',
      needs: ['frontTurns', 'rearTurns'],
      name: { en: 'front turns for each rear turn', de: 'Umdrehungen vorn je Umdrehung hinten' },
    },
    measuredMismatch: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      needs: ['frontTurns', 'rearTurns'],
      name: {
        en: 'mismatch by the turns counted',
        de: 'Abweichung nach den gezählten Umdrehungen',
      },
    },
    turnsMatch: {
      type: 'code',
      needs: [...PATHS, 'frontTurns', 'rearTurns'],
      name: { en: 'the turns beside the stages', de: 'die Umdrehungen neben den Stufen' },
      codes: {
        consistent: { en: 'consistent', de: 'vereinbar' },
        'does-not-match': { en: 'do not match: count the teeth', de: 'passen nicht: Zähne zählen' },
      },
    },
  },
  formulas: [
    'mismatch = 100 · (rearRatio / frontRatio · frontCircumference / rearCircumference − 1)   (%)',
    'matchingRearRatio = frontRatio · rearCircumference / frontCircumference',
    'measuredRatio = frontTurns / rearTurns = rearRatio / frontRatio',
    'frontCircumference = 3.05 · (free diameter − 2 · frontWear)   (radial; bias 2.99)',
  ],
  assumptions: [
    {
      en: 'No tyre slips, and both tyres of an axle roll equally far.',
      de: 'Kein Reifen hat Schlupf, und beide einer Achse rollen gleich weit.',
    },
    {
      en: 'Both axles have the same tyres where none are told.',
      de: 'Beide Achsen haben gleiche Reifen, wo keine genannt sind.',
    },
  ],
  validity: [
    {
      en: 'The limits are for cars and light vans; tractors lead with the front on purpose.',
      de: 'Die Grenzen gelten für Pkw und leichte Transporter; Traktoren eilen vorn gewollt vor.',
    },
    {
      en: 'In a bend the axles run different ways besides: that comes on top.',
      de: 'In Kurven laufen die Achsen zudem verschiedene Wege: Das kommt hinzu.',
    },
    {
      en: 'Above 3 % an open centre needs the word of its maker.',
      de: 'Über 3 % braucht ein offenes Mittendifferenzial das Wort seines Herstellers.',
    },
  ],
  sources: [
    { title: 'kinematics of two paths to the same road', basis: 'arithmetic' },
    {
      title:
        'limits: locking centres 0.5 % unnoticed, 1 % on the road, 2 % on loose ground; open ' +
        'ones 1 % and 3 %',
      basis: 'common-practice',
    },
    { title: 'ETRTO convention, rolling circumference = F x free diameter', basis: 'read' },
  ],
  warnings: {
    'turns-all-the-time': {
      en: 'An open centre takes this up, but its differential then turns and heats all the time.',
      de: 'Eine offene Mitte gleicht das aus, doch ihr Differenzial dreht und heizt dann ständig.',
    },
    'winds-up': {
      en: 'This is, or may be, more than passes unnoticed: tyre slip, heat and wind-up follow.',
      de: 'Das ist mehr, als unbemerkt bleibt, oder kann es sein: Schlupf, Wärme, Verspannung.',
    },
    'loose-ground-only': {
      en: 'This is, or may be, fit for loose ground only: on grip the driveline winds up.',
      de: 'Das taugt nur für losen Boden, oder vielleicht nur: Auf Grip verspannt es sich.',
    },
    'not-proven': {
      en: 'The mismatch may be 0, but readings and decimals cannot prove it: count the teeth.',
      de: 'Die Abweichung kann 0 sein, doch Messwerte beweisen es nicht: Zähne zählen.',
    },
    'measured-beside-computed': {
      en: 'One tyre is measured and one computed by its name: 1.5 % may come of that alone.',
      de: 'Ein Reifen ist gemessen, einer nach dem Namen gerechnet: Das allein macht bis 1,5 %.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'gearbox-alone',
      summary: 'A rear path slowed by 12/11 with the axle as before: 9 % out',
      given: {
        frontStages: ['43/11'],
        rearStages: ['12/11', '43/11'],
        coupling: 'open',
        use: 'road',
      },
    },
    {
      name: 'tyres-and-turns',
      summary: 'Tyres worn in front, and the loop turned by hand',
      given: {
        frontStages: ['39/10'],
        rearStages: ['39/10'],
        frontTyre: '205/55R16',
        frontWear: '6 mm',
        rearTyre: '205/55R16',
        rearWear: '0 mm',
        coupling: 'viscous',
        frontTurns: '10 ±0.05',
        rearTurns: '10',
      },
    },
    {
      name: 'rolled-out',
      summary: 'Both tyres rolled out on the floor',
      given: {
        frontStages: ['39/10'],
        rearStages: ['11/10', '3.545'],
        frontCircumference: '1927 ±5 mm',
        rearCircumference: '1931 ±5 mm',
        coupling: 'clutch',
      },
    },
  ],
  calculate: (given) => {
    const { frontStages, rearStages, frontTurns, rearTurns } = given;
    const tyres = tyresOf(given);
    if ('faults' in tyres) return { found: {}, warnings: [], faults: tyres.faults };
    const front = frontStages === null ? undefined : overallRatio(frontStages);
    const rear = rearStages === null ? undefined : overallRatio(rearStages);
    const loop = front && rear && { front, rear, tyres: tyres.ratio };
    const turned =
      frontTurns === null || rearTurns === null
        ? undefined
        : divideIntervals(frontTurns, rearTurns);
    const judged = loop && judgedLoop(mismatchPercent(loop), given);
    const turnsMatch = turned && loop && comparedRatios(turned, divideIntervals(rear, front));
    return {
      found: {
        frontRatio: front,
        rearRatio: rear,
        ...judged?.found,
        matchingRearRatio: front && matchingRear({ front, tyres: tyres.ratio }),
        measuredRatio: turned,
        measuredMismatch: turned && percentMore(multiplyIntervals(turned, tyres.ratio), point(ONE)),
        turnsMatch: turnsMatch === 'equal' ? 'consistent' : turnsMatch,
      },
      warnings: [
        ...(judged?.warnings ?? []),
        ...(tyres.isMixed ? ['measured-beside-computed'] : []),
      ],
    };
  },
});

type Coupling = 'open' | 'planetary' | 'locked' | 'part-time' | 'viscous' | 'clutch';

interface Coupled {
  readonly coupling: Coupling | null;
  readonly use: Use | null;
}

function judgedLoop(mismatch: Interval, { coupling, use }: Coupled) {
  const sense = senseOf(mismatch);
  const notProven = sense === 'undecided' ? ['not-proven'] : [];
  if (coupling === null) return { found: { mismatch, sense }, warnings: notProven };
  const band = bandOf(coupling);
  const driven = use ?? 'road';
  const isWithinBand = (limit: Rational) => within(mismatch, aroundNothing(limit)) === 'holds';
  const isOpen = coupling === 'open' || coupling === 'planetary';
  const isLoose = !isOpen && driven !== 'road' && !isWithinBand(band.warn);
  return {
    found: { mismatch, sense, bearsMismatch: bears(mismatch, { coupling, use: driven }) },
    warnings: [
      ...(isOpen && sense !== 'equal' ? ['turns-all-the-time'] : []),
      ...(!isOpen && !isWithinBand(band.pass) ? ['winds-up'] : []),
      ...(isLoose ? ['loose-ground-only'] : []),
      ...notProven,
    ],
  };
}

/** Whether a coupling bears a mismatch in per cent, by the limits of common practice. */
export function bears(
  mismatch: Interval,
  { coupling, use }: { readonly coupling: Coupling; readonly use: Use },
): Outcome {
  return within(mismatch, aroundNothing(refusalOf(bandOf(coupling), use)));
}

function bandOf(coupling: Coupling): Band {
  const band = DEFAULT_COUPLINGS.get(coupling);
  if (band === undefined) throw new Error(`no band is told for ${coupling}`);
  return band;
}

/** A share to both sides, in per cent. */
function aroundNothing(share: Rational): Interval {
  return scaleInterval(closed(negate(share), share), HUNDRED);
}

interface Tyres {
  readonly frontTyre: string | null;
  readonly rearTyre: string | null;
  readonly frontCircumference: Interval | null;
  readonly rearCircumference: Interval | null;
  readonly frontWear: Interval | null;
  readonly rearWear: Interval | null;
}

type TyresTold =
  | { readonly faults: readonly GivenFault[] }
  | {
      readonly ratio: Interval;
      /** One by its name, the other measured. */
      readonly isMixed: boolean;
    };

function tyresOf(given: Tyres): TyresTold {
  const front = toldCircumference(
    { tyre: 'frontTyre', circumference: 'frontCircumference', wear: 'frontWear' },
    { tyre: given.frontTyre, measured: given.frontCircumference, wear: given.frontWear },
  );
  const rear = toldCircumference(
    { tyre: 'rearTyre', circumference: 'rearCircumference', wear: 'rearWear' },
    { tyre: given.rearTyre, measured: given.rearCircumference, wear: given.rearWear },
  );
  const faults = [front, rear].filter(isTyreFault);
  if (faults.length > 0) return { faults };
  if (front === null && rear === null) return { ratio: point(ONE), isMixed: false };
  if (front === null || isTyreFault(front)) return { faults: [alone('frontTyre')] };
  if (rear === null || isTyreFault(rear)) return { faults: [alone('rearTyre')] };
  return {
    ratio: divideIntervals(front, rear),
    isMixed: (given.frontTyre === null) !== (given.rearTyre === null),
  };
}

function alone(input: string): GivenFault {
  return {
    input,
    text: {
      en: 'The tyre of the other axle is told: tell this one too, or neither.',
      de: 'Der Reifen der anderen Achse ist genannt: auch diesen nennen oder keinen.',
    },
  };
}
