/**
 * How far the brake pedal goes: what the pistons take in, through the master cylinder, to the foot;
 * and how far with one circuit failed, and what braking is left then.
 *
 * A tandem master cylinder has a chamber for each circuit, one behind the other: their strokes add
 * up. A failed circuit gives no pressure, so its chamber is pushed together until a stop, and only
 * then the other one brakes. Limits, 60 % of the pedal's way with all circuits and 100 % with one
 * failed, are common practice.
 *
 * Left out: swelling hoses, air, pads and calipers that give way, free travel, the booster.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf } from '../check/state.js';
import { PI } from '../quantity/enclosure.js';
import {
  addIntervals,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { HUNDRED, ONE, rational, ZERO } from '../quantity/rational.js';
import { squareSum } from './brake-torque.js';
import { calculation } from './calculation.js';
import { notAbove } from './compare.js';

const HALF = rational('0.5');
const QUARTER = rational('0.25');
const NONE = point(ZERO);

/**
 * What pistons that all travel alike take in, in mm3 but for the factor pi/4, which stands in the
 * area of the master cylinder as well and goes out.
 */
export function takenIn(pistons: readonly Interval[], travel: Interval): Interval {
  return multiplyIntervals(squareSum(pistons), travel);
}

/** Of a piston of this area that fills all of this, in mm: both by the same factor. */
export function strokeOf(taken: readonly Interval[], area: Interval): Interval {
  // Added before the area comes in, which so stands once.
  return divideIntervals(taken.reduce(addIntervals, NONE), area);
}

/** Of a master cylinder that feeds all these circuits, in mm. */
export function masterStroke(taken: readonly Interval[], masterBore: Interval): Interval {
  return strokeOf(taken, squareSum([masterBore]));
}

/** The pedal's way with one circuit failed, in mm. */
export function failedPedal(deadStroke: Interval, stroke: Interval, ratio: Interval): Interval {
  return multiplyIntervals(addIntervals(deadStroke, stroke), ratio);
}

/** The part of the pedal's way that it may take in practice with all circuits. */
export const SHARE_OF_PEDAL = rational('0.6');

const LENGTH_OUT = { type: 'quantity', dimension: 'length' } as const;
const LENGTH = { ...LENGTH_OUT, greatest: '1000 mm' } as const;
const PISTON = { ...LENGTH, most: 16, above: '0 mm', usual: ['14 mm', '70 mm'] } as const;
const TRAVEL = { ...LENGTH, least: '0 mm', usual: ['0.3 mm', '1.5 mm'] } as const;

export const pedalTravel = calculation({
  name: 'pedal-travel',
  title: { en: 'Travel of the brake pedal', de: 'Weg des Bremspedals' },
  about: {
    en: 'How far does the brake pedal go, and how far with one circuit failed?',
    de: 'Wie weit geht das Bremspedal, und wie weit, wenn ein Kreis ausfällt?',
  },
  inputs: {
    frontPistons: {
      ...PISTON,
      name: {
        en: 'diameters of all pistons of the front axle, each one told',
        de: 'Durchmesser aller Kolben der Vorderachse, jeder einzeln',
      },
    },
    frontTravel: {
      ...TRAVEL,
      name: { en: 'travel of each front piston', de: 'Weg jedes vorderen Kolbens' },
    },
    rearPistons: {
      ...PISTON,
      name: {
        en: 'diameters of all pistons of the rear axle, each one told',
        de: 'Durchmesser aller Kolben der Hinterachse, jeder einzeln',
      },
    },
    rearTravel: {
      ...TRAVEL,
      name: { en: 'travel of each rear piston', de: 'Weg jedes hinteren Kolbens' },
    },
    masterBore: {
      ...LENGTH,
      above: '0 mm',
      usual: ['15 mm', '32 mm'],
      name: { en: 'bore of the master cylinder', de: 'Durchmesser des Hauptbremszylinders' },
    },
    pedalRatio: {
      type: 'quantity',
      above: '0',
      greatest: '100',
      usual: ['3', '8'],
      name: { en: 'pedal ratio', de: 'Pedalübersetzung' },
    },
    availableTravel: {
      ...LENGTH,
      optional: true,
      above: '0 mm',
      usual: ['60 mm', '200 mm'],
      name: { en: 'pedal travel that there is', de: 'vorhandener Pedalweg' },
    },
    split: {
      type: 'code',
      optional: true,
      name: { en: 'split of the circuits', de: 'Aufteilung der Bremskreise' },
      codes: {
        'front-rear': { en: 'front and rear axle', de: 'Vorder- und Hinterachse' },
        diagonal: { en: 'diagonal', de: 'diagonal' },
      },
    },
    deadStroke: {
      ...LENGTH,
      optional: true,
      least: '0 mm',
      usual: ['5 mm', '25 mm'],
      name: {
        en: 'stroke of an empty chamber of the master cylinder up to its stop',
        de: 'Hub einer leeren Kammer des Hauptbremszylinders bis zum Anschlag',
      },
    },
    frontBrakeShare: {
      type: 'quantity',
      optional: true,
      least: '0',
      greatest: '1',
      usual: ['0.5', '0.85'],
      name: { en: 'front share of the braking', de: 'Anteil der Vorderachse am Bremsen' },
    },
  },
  outputs: {
    volume: {
      type: 'quantity',
      dimension: 'length^3',
      name: { en: 'volume that the pistons take in', de: 'Volumen, das die Kolben aufnehmen' },
    },
    masterStroke: {
      ...LENGTH_OUT,
      name: { en: 'stroke of the master cylinder', de: 'Hub des Hauptbremszylinders' },
    },
    pedalTravel: {
      ...LENGTH_OUT,
      name: { en: 'pedal travel', de: 'Pedalweg' },
    },
    travelShare: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      needs: ['availableTravel'],
      name: { en: 'part of the travel that there is', de: 'Anteil am vorhandenen Weg' },
    },
    isWithin: {
      type: 'outcome',
      needs: ['availableTravel'],
      name: {
        en: 'The pedal goes no further than 60 % of its travel.',
        de: 'Das Pedal geht nicht weiter als 60 % seines Wegs.',
      },
    },
    failedTravel: {
      ...LENGTH_OUT,
      list: true,
      needs: ['split', 'deadStroke'],
      name: {
        en: 'pedal travel with one circuit failed, the front one first',
        de: 'Pedalweg bei Ausfall eines Kreises, zuerst des vorderen',
      },
    },
    failedIsWithin: {
      type: 'outcome',
      needs: ['split', 'deadStroke', 'availableTravel'],
      name: {
        en: 'With either circuit failed the pedal travel still suffices.',
        de: 'Auch bei Ausfall eines der Kreise reicht der Pedalweg.',
      },
    },
    brakingLeft: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      list: true,
      needs: ['split', 'frontBrakeShare'],
      name: {
        en: 'braking left at the same line pressure, the front circuit failed first',
        de: 'Bremswirkung, die bei gleichem Druck bleibt, zuerst ohne den vorderen Kreis',
      },
    },
  },
  formulas: [
    'volume = π/4 · masterBore² · masterStroke',
    'frontStroke = (frontPistons[1]² + frontPistons[2]² + …) · frontTravel / masterBore²',
    'rearStroke = (rearPistons[1]² + rearPistons[2]² + …) · rearTravel / masterBore²',
    'masterStroke = frontStroke + rearStroke',
    'pedalTravel = masterStroke · pedalRatio',
    'failedTravel = (deadStroke + stroke of the other circuit) · pedalRatio',
    'diagonal: stroke of one circuit = masterStroke / 2,   brakingLeft = 1/2',
    'brakingLeft = 1 − frontBrakeShare (front failed)   or   frontBrakeShare (rear failed)',
  ],
  assumptions: [
    {
      en: 'Lines, hoses, calipers and fluid do not give way, and there is no air in them.',
      de: 'Leitungen, Schläuche, Sättel und Flüssigkeit geben nicht nach, ohne Luft im System.',
    },
    {
      en: 'A tandem master cylinder of one bore, whose chambers both stop after the same stroke.',
      de: 'Ein Tandemzylinder von einem Durchmesser, dessen Kammern nach gleichem Hub anschlagen.',
    },
  ],
  validity: [
    {
      en: 'Free travel and the booster come on top; measure the pedal with the engine running.',
      de: 'Leerweg und Bremskraftverstärker kommen dazu; am Pedal bei laufendem Motor messen.',
    },
    {
      en: 'The 60 % and 100 % are common practice, no standard.',
      de: 'Die 60 % und 100 % sind übliche Praxis und keine Norm.',
    },
  ],
  sources: [
    { title: 'volumes of pistons and master cylinder', basis: 'arithmetic' },
    {
      title: 'pedal travel of 60 % with all circuits and 100 % with one failed',
      basis: 'common-practice',
    },
    { title: 'piston travel of 0.5 to 0.8 mm in front', basis: 'common-practice' },
  ],
  warnings: {
    'long-pedal': {
      en: 'The pedal goes, or may go, too far: a larger master bore or a smaller ratio helps.',
      de: 'Das Pedal geht zu weit oder kann es: Ein größerer Zylinder oder kürzerer Hebel hilft.',
    },
    'pedal-meets-floor': {
      en: 'With one circuit failed the pedal meets, or may meet, its stop before it brakes.',
      de: 'Fällt ein Kreis aus, kann das Pedal anschlagen, ehe der andere bremst.',
    },
    'chamber-too-short': {
      en: 'A chamber reaches, or may reach, its stop before its pistons press.',
      de: 'Eine Kammer kann am Anschlag sein, ehe ihre Kolben anliegen.',
    },
  },
  caution: 'brakes',
  examples: [
    {
      name: 'front-and-rear',
      summary: 'Two floating calipers in front and two behind, circuits by axle',
      given: {
        frontPistons: ['54 mm', '54 mm'],
        frontTravel: '0.6 mm',
        rearPistons: ['38 mm', '38 mm'],
        rearTravel: '0.7 mm',
        masterBore: '23.81 mm',
        pedalRatio: '4.2',
        availableTravel: '150 mm',
        split: 'front-rear',
        deadStroke: '16 mm',
        frontBrakeShare: '72 %',
      },
    },
    {
      name: 'diagonal',
      summary: 'Piston travel known within limits, circuits across',
      given: {
        frontPistons: ['48 mm', '48 mm'],
        frontTravel: '0.5 to 0.8 mm',
        rearPistons: ['34 mm', '34 mm'],
        rearTravel: '0.5 to 0.8 mm',
        masterBore: '22.2 mm',
        pedalRatio: '4',
        availableTravel: '140 mm',
        split: 'diagonal',
        deadStroke: '15 mm',
        frontBrakeShare: '75 %',
      },
    },
  ],
  calculate: (given) => {
    const { masterBore, pedalRatio, availableTravel, split, deadStroke, frontBrakeShare } = given;
    const front = takenIn(given.frontPistons, given.frontTravel);
    const rear = takenIn(given.rearPistons, given.rearTravel);
    const stroke = masterStroke([front, rear], masterBore);
    const travel = multiplyIntervals(stroke, pedalRatio);
    const working = split === null ? [] : strokesLeft(split, { front, rear, masterBore });
    const failed = deadStroke && working.map((one) => failedPedal(deadStroke, one, pedalRatio));
    const isWithin = availableTravel
      ? notAbove(travel, scaleInterval(availableTravel, SHARE_OF_PEDAL))
      : undefined;
    const hasFailed = split !== null && failed !== null;
    const failedIsWithin =
      hasFailed && availableTravel
        ? allOf(failed.map((one) => notAbove(one, availableTravel)))
        : undefined;
    const isShort = working.some((one) => deadStroke && notAbove(one, deadStroke) !== 'holds');
    return {
      found: {
        volume: scaleInterval(multiplyIntervals(PI, addIntervals(front, rear)), QUARTER),
        masterStroke: stroke,
        pedalTravel: travel,
        travelShare: availableTravel
          ? inPerCent(divideIntervals(travel, availableTravel))
          : undefined,
        isWithin,
        failedTravel: hasFailed ? failed : undefined,
        failedIsWithin,
        brakingLeft:
          split && frontBrakeShare ? brakingLeft(split, frontBrakeShare).map(inPerCent) : undefined,
      },
      warnings: [
        ...(isWithin === undefined || isWithin === 'holds' ? [] : ['long-pedal']),
        ...(failedIsWithin === undefined || failedIsWithin === 'holds'
          ? []
          : ['pedal-meets-floor']),
        ...(isShort ? ['chamber-too-short'] : []),
      ],
    };
  },
});

function inPerCent(share: Interval): Interval {
  return scaleInterval(share, HUNDRED);
}

type Split = 'front-rear' | 'diagonal';

interface Taken {
  readonly front: Interval;
  readonly rear: Interval;
  readonly masterBore: Interval;
}

/** Of the circuit that still works, for each that can fail: the front one first. */
function strokesLeft(split: Split, { front, rear, masterBore }: Taken): readonly Interval[] {
  if (split === 'front-rear') {
    return [masterStroke([rear], masterBore), masterStroke([front], masterBore)];
  }
  return [scaleInterval(masterStroke([front, rear], masterBore), HALF)];
}

/** With the same pressure in the circuit that still works. */
export function brakingLeft(split: Split, frontShare: Interval): readonly Interval[] {
  if (split === 'diagonal') return [point(HALF)];
  return [subtractIntervals(point(ONE), frontShare), frontShare];
}
