/**
 * The pitch circle of studs or holes from the distance between two of them, and the other way.
 *
 * Holes stand evenly on the circle, so the distance of their centres is a chord of it. With five
 * holes no two are opposite, and the factor from the chord of neighbours is 1.70130; the 1.7012
 * that is met in print is an error. Circles that differ by more than 0.2 mm are taken for different
 * ones, which is common practice.
 *
 * Left out: uneven patterns.
 */

import { sineInterval } from '../quantity/enclosure.js';
import {
  absoluteInterval,
  closed,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { divide, ONE, rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { notAbove, within } from './compare.js';

const HALF_TURN = rational(180);

/** Half of the angle between two of `holes` holes that are so many steps apart, as its sine. */
export function halfAngleSine(holes: Interval, steps: Interval = point(ONE)): Interval {
  return sineInterval(scaleInterval(divideIntervals(steps, holes), HALF_TURN));
}

/** The pitch circle over which two holes are so far apart. */
export function pitchCircleOf(chord: Interval, sine: Interval): Interval {
  return divideIntervals(chord, sine);
}

/** How far two holes on a pitch circle are apart. */
export function chordOf(pitchCircle: Interval, sine: Interval): Interval {
  return multiplyIntervals(pitchCircle, sine);
}

/** Pitch circles that differ by so much in mm are taken for one. */
const SAME_CIRCLE = closed(ZERO, rational('0.2'));

const LENGTH = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  above: '0 mm',
  greatest: '2000 mm',
} as const;

export const pitchCircle = calculation({
  name: 'pitch-circle',
  title: { en: 'Pitch circle of studs or holes', de: 'Lochkreis von Bolzen oder Löchern' },
  about: {
    en: 'Which pitch circle do studs so far apart stand on, and how far apart are they on one?',
    de: 'Auf welchem Lochkreis stehen Bolzen dieses Abstands, und wie groß ist der Abstand?',
  },
  inputs: {
    holes: {
      type: 'count',
      least: '2',
      greatest: '60',
      usual: ['3', '10'],
      name: { en: 'number of studs or holes', de: 'Zahl der Bolzen oder Löcher' },
    },
    steps: {
      type: 'count',
      optional: true,
      least: '1',
      greatest: '30',
      name: {
        en: 'measured to the next (1, if not told), or to the next but one (2) and so on',
        de: 'gemessen zum nächsten (1, wenn nicht angegeben), zum übernächsten (2) und so fort',
      },
    },
    chord: {
      ...LENGTH,
      name: {
        en: 'distance of two, from centre to centre',
        de: 'Abstand zweier, von Mitte zu Mitte',
      },
    },
    pitchCircle: {
      ...LENGTH,
      usual: ['80 mm', '350 mm'],
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
    },
  },
  outputs: {
    sine: {
      type: 'quantity',
      dimension: '1',
      name: { en: 'chord over pitch circle', de: 'Abstand durch Lochkreis' },
    },
    factor: {
      type: 'quantity',
      dimension: '1',
      name: { en: 'pitch circle over chord', de: 'Lochkreis durch Abstand' },
    },
    foundPitchCircle: {
      type: 'quantity',
      dimension: 'length',
      needs: ['chord'],
      name: { en: 'pitch circle by the distance', de: 'Lochkreis nach dem Abstand' },
    },
    foundChord: {
      type: 'quantity',
      dimension: 'length',
      needs: ['pitchCircle'],
      name: { en: 'distance on that pitch circle', de: 'Abstand auf diesem Lochkreis' },
    },
    isSame: {
      type: 'outcome',
      needs: ['chord', 'pitchCircle'],
      name: {
        en: 'Distance and pitch circle agree within 0.2 mm.',
        de: 'Abstand und Lochkreis stimmen auf 0,2 mm überein.',
      },
    },
  },
  formulas: [
    'sine = sin(180° · steps / holes)',
    'factor = 1 / sine',
    'foundPitchCircle = chord / sine',
    'foundChord = pitchCircle · sine',
    'isSame: |foundPitchCircle − pitchCircle| ≤ 0.2 mm',
  ],
  assumptions: [
    {
      en: 'The holes stand evenly on one circle.',
      de: 'Die Löcher stehen gleichmäßig auf einem Kreis.',
    },
  ],
  validity: [
    {
      en: 'Edge to like edge of equal holes is the same as centre to centre.',
      de: 'Von Rand zu gleichem Rand gleicher Löcher ist dasselbe wie von Mitte zu Mitte.',
    },
    {
      en: 'The 0.2 mm are common practice, no standard.',
      de: 'Die 0,2 mm sind übliche Praxis und keine Norm.',
    },
  ],
  sources: [
    { title: 'bolt-circle chord geometry', basis: 'read' },
    { title: 'pitch circles within 0.2 mm are one', basis: 'common-practice' },
  ],
  warnings: {
    'other-pitch-circle': {
      en: 'That is another pitch circle: a wheel does not fit, however close the two are.',
      de: 'Das ist ein anderer Lochkreis: Ein Rad passt nicht, so nah die beiden auch liegen.',
    },
    'measure-closer': {
      en: 'The measurement is too coarse to tell the circles apart: measure several distances.',
      de: 'Die Messung ist zu grob, um die Kreise zu trennen: mehrere Abstände messen.',
    },
  },
  caution: 'wheels',
  examples: [
    {
      name: 'five-studs',
      summary: 'Neighbours of five studs, measured to a tenth: 112 mm and not 114.3 mm',
      given: { holes: 5, chord: '65.85 ±0.1 mm', pitchCircle: '112 mm' },
    },
    {
      name: 'next-but-one',
      summary: 'The same five, measured across to the next but one',
      given: { holes: 5, steps: 2, chord: '106.5 ±0.1 mm' },
    },
  ],
  calculate: ({ holes, steps, chord, pitchCircle: circle }) => {
    const faults = steps === null ? [] : stepFaults(holes, steps);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const sine = halfAngleSine(holes, steps ?? point(ONE));
    const foundPitchCircle = chord === null ? undefined : pitchCircleOf(chord, sine);
    const off =
      foundPitchCircle && circle && absoluteInterval(subtractIntervals(foundPitchCircle, circle));
    const isSame = off ? within(off, SAME_CIRCLE) : undefined;
    return {
      found: {
        sine,
        factor: divideIntervals(point(ONE), sine),
        foundPitchCircle,
        foundChord: circle === null ? undefined : chordOf(circle, sine),
        isSame,
      },
      warnings: [
        ...(isSame === 'fails' ? ['other-pitch-circle'] : []),
        ...(isSame === 'open' ? ['measure-closer'] : []),
      ],
    };
  },
});

/** Beyond the opposite hole one would count back on the other side. */
function stepFaults(holes: Interval, steps: Interval): GivenFault[] {
  const half = scaleInterval(holes, divide(ONE, rational(2)));
  if (notAbove(steps, half) === 'holds') return [];
  const text = {
    en: 'Count the shorter way round: at most half as many steps as there are holes.',
    de: 'Den kürzeren Weg zählen: höchstens halb so viele Schritte wie Löcher.',
  };
  return [{ input: 'steps', text }];
}
