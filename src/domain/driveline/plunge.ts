/**
 * How far a shaft must lengthen and shorten while its ends move, and whether its slip or plunge has
 * room for it.
 *
 * Lengths are those between the centres of both joints at each position of the suspension: ride
 * height, bump, droop, both locks. They are measured, or follow from a rise of one end straight up
 * from level. Two millimetres to each stop, and what engine and axle mounts give, are practice.
 *
 * Left out: paths in arcs, for which lengths are measured at each position; angles, which limit
 * joints besides.
 *
 * Length: half of it says in two languages what is taken and given.
 */

import { allOf, type Outcome } from '../check/state.js';
import { overCorners, rootInterval } from '../quantity/enclosure.js';
import {
  addIntervals,
  type Interval,
  maximumInterval,
  minimumInterval,
  point,
  powerInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { notAbove } from './compare.js';

const NOTHING = point(rational(0));

/** To each stop, in mm: common practice, no source. */
export const RESERVE = point(rational(2));

/** Between joint centres when one end of a level shaft has gone straight up or down, in mm. */
export function lengthAfterRise(level: Interval, rise: Interval): Interval {
  return rootInterval(addIntervals(powerInterval(level, 2), powerInterval(rise, 2)), 2);
}

/**
 * How much longer it is then. The length stands twice; written h2 / (sqrt(l2 + h2) + l), the change
 * falls with the length and rises with the rise, so its extremes are at corners.
 */
export function changeAfterRise(level: Interval, rise: Interval): Interval {
  return overCorners([level, rise], (l, h) => subtractIntervals(lengthAfterRise(l, h), l));
}

/** What a shaft has to span, from the shortest to the longest. */
export interface Spans {
  readonly shortest: Interval;
  readonly longest: Interval;
}

export function spansOf(lengths: readonly [Interval, ...Interval[]]): Spans {
  return {
    shortest: lengths.reduce(minimumInterval),
    longest: lengths.reduce(maximumInterval),
  };
}

export const plunge = calculation({
  name: 'plunge',
  title: { en: 'Slip and plunge of a shaft', de: 'Längenausgleich einer Welle' },
  about: {
    en: 'How much slip does a shaft need while the suspension moves, and has it room?',
    de: 'Wie viel Ausgleich braucht eine Welle beim Federn, und hat sie Platz?',
  },
  inputs: {
    rideLength: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      usual: ['250 mm', '2000 mm'],
      name: {
        en: 'length between the joint centres at ride height',
        de: 'Länge zwischen den Gelenkmitten in Fahrhöhe',
      },
    },
    otherLengths: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      most: 8,
      above: '0 mm',
      name: {
        en: 'the same at bump, droop and both locks, as measured',
        de: 'dieselbe ein- und ausgefedert und bei vollem Einschlag, gemessen',
      },
    },
    rise: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      least: '0 mm',
      usual: ['20 mm', '150 mm'],
      name: {
        en: 'how far one end goes straight up or down from level',
        de: 'wie weit ein Ende aus der Waagrechten gerade auf oder ab geht',
      },
    },
    compressedLength: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      above: '0 mm',
      name: { en: 'length of the shaft pushed together', de: 'Länge der Welle, zusammengeschoben' },
    },
    extendedLength: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      above: '0 mm',
      name: { en: 'length of the shaft drawn out', de: 'Länge der Welle, auseinandergezogen' },
    },
    mountMovement: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      least: '0 mm',
      usual: ['3 mm', '5 mm'],
      name: {
        en: 'what engine and axle mounts give, each way; else nothing',
        de: 'was Motor- und Achslager nachgeben, je Richtung; sonst nichts',
      },
    },
  },
  outputs: {
    lengthAtRise: {
      type: 'quantity',
      dimension: 'length',
      needs: ['rise'],
      name: { en: 'length after that rise', de: 'Länge nach diesem Weg' },
    },
    changeAtRise: {
      type: 'quantity',
      dimension: 'length',
      needs: ['rise'],
      name: { en: 'so much longer than level', de: 'so viel länger als waagrecht' },
    },
    changes: {
      type: 'quantity',
      dimension: 'length',
      list: true,
      needs: ['otherLengths'],
      name: {
        en: 'change at each other position, longer is above zero',
        de: 'Änderung in jeder anderen Stellung, länger ist über null',
      },
    },
    slipNeeded: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'slip that it takes', de: 'Ausgleich, den es braucht' },
    },
    reserveInwards: {
      type: 'quantity',
      dimension: 'length',
      needs: ['compressedLength'],
      name: {
        en: 'left before it bottoms, mounts counted',
        de: 'übrig, bis sie anschlägt, Lager gerechnet',
      },
    },
    reserveOutwards: {
      type: 'quantity',
      dimension: 'length',
      needs: ['extendedLength'],
      name: {
        en: 'left before it comes apart, mounts counted',
        de: 'übrig, bis sie auseinandergeht, Lager gerechnet',
      },
    },
    hasRoom: {
      type: 'outcome',
      needs: ['compressedLength', 'extendedLength'],
      name: {
        en: 'It keeps 2 mm to both stops everywhere.',
        de: 'Sie behält überall 2 mm zu beiden Anschlägen.',
      },
    },
  },
  formulas: [
    'lengthAtRise = √(rideLength² + rise²)',
    'slipNeeded = longest - shortest of all lengths',
    'reserveInwards = shortest - compressedLength - mountMovement',
    'reserveOutwards = extendedLength - longest - mountMovement',
  ],
  assumptions: [
    {
      en: 'With a rise, the shaft is level at ride height and one end moves straight up or down.',
      de: 'Bei einem Weg liegt die Welle waagrecht, und ein Ende geht gerade auf oder ab.',
    },
  ],
  validity: [
    {
      en: 'An axle on links moves in an arc: then measure the lengths at bump and droop.',
      de: 'Eine Achse an Lenkern geht im Bogen: Dann die Längen ein- und ausgefedert messen.',
    },
    {
      en: 'Joints have limits of their angle besides; ask their maker.',
      de: 'Gelenke haben außerdem Grenzen des Winkels; den Hersteller fragen.',
    },
  ],
  sources: [
    { title: 'distance of two points', basis: 'arithmetic' },
    { title: '2 mm to each stop; 3 to 5 mm for mounts', basis: 'common-practice' },
  ],
  warnings: {
    'only-ride-height': {
      en: 'Only ride height was told: bump, droop and both locks decide.',
      de: 'Nur die Fahrhöhe ist gesagt: Es entscheiden Ein- und Ausfedern und Einschlag.',
    },
    'mounts-left-out': {
      en: 'Mounts were left out; 3 to 5 mm each way are usual.',
      de: 'Lager sind nicht gerechnet; üblich sind 3 bis 5 mm je Richtung.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'half-shaft',
      summary: 'A half-shaft measured at ride height, bump and droop',
      given: {
        rideLength: '382.1 ±0.5 mm',
        otherLengths: ['373.2 ±0.5 mm', '379.0 ±0.5 mm'],
        compressedLength: '362 mm',
        extendedLength: '398 mm',
        mountMovement: '4 mm',
      },
    },
    {
      name: 'vertical-rise',
      summary: 'A level shaft of 1400 mm whose axle rises by 60 mm',
      given: { rideLength: '1400 mm', rise: '60 mm' },
    },
  ],
  calculate: (given) => {
    const { rideLength, otherLengths, rise, mountMovement } = given;
    const { compressedLength: shortest, extendedLength: longest } = given;
    const faults = turned(shortest, longest);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const risen = rise === null ? null : lengthAfterRise(rideLength, rise);
    const others = [...(otherLengths ?? []), ...(risen === null ? [] : [risen])];
    const spans = spansOf([rideLength, ...others]);
    const gives = mountMovement ?? NOTHING;
    const inwards =
      shortest && subtractIntervals(subtractIntervals(spans.shortest, shortest), gives);
    const outwards = longest && subtractIntervals(subtractIntervals(longest, spans.longest), gives);
    return {
      found: {
        lengthAtRise: risen ?? undefined,
        changeAtRise: risen === null ? undefined : changeAfterRise(rideLength, rise ?? NOTHING),
        changes: otherLengths?.map((length) => subtractIntervals(length, rideLength)),
        slipNeeded: slipOf(rideLength, rise, otherLengths, spans),
        reserveInwards: inwards ?? undefined,
        reserveOutwards: outwards ?? undefined,
        hasRoom: inwards && outwards ? roomIn([inwards, outwards]) : undefined,
      },
      warnings: [
        ...(others.length === 0 ? ['only-ride-height'] : []),
        ...(mountMovement === null && (shortest ?? longest) !== null ? ['mounts-left-out'] : []),
      ],
    };
  },
});

/** Of a rise alone it is that change; else the longest less the shortest, and never below zero. */
function slipOf(
  ride: Interval,
  rise: Interval | null,
  others: readonly Interval[] | null,
  { shortest, longest }: Spans,
): Interval {
  if (rise !== null && others === null) return changeAfterRise(ride, rise);
  return maximumInterval(NOTHING, subtractIntervals(longest, shortest));
}

function roomIn(reserves: readonly Interval[]): Outcome {
  return allOf(reserves.map((reserve) => notAbove(RESERVE, reserve)));
}

function turned(shortest: Interval | null, longest: Interval | null): GivenFault[] {
  if (shortest === null || longest === null) return [];
  if (notAbove(longest, shortest) !== 'holds') return [];
  const text = {
    en: 'Drawn out, a shaft is longer than pushed together.',
    de: 'Auseinandergezogen ist eine Welle länger als zusammengeschoben.',
  };
  return [{ input: 'extendedLength', text }];
}
