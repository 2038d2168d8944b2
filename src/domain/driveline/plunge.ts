/**
 * The plunge of a shaft: how much its length changes over the travel of the suspension, and the
 * room that is left before it bottoms or comes apart.
 *
 * The length is the distance between the centres of its two joints, position by position, the
 * first one at rest. It is measured, or follows from where the outer centre lies as seen from the
 * inner one, or from how far an axle rises or falls straight away from a shaft that lies level.
 *
 * Left out: what an arm does to the path of the outer joint (give coordinates), the limits of the
 * angles, and what the mounts move but as it is told.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { overCorners, rootInterval } from '../quantity/enclosure.js';
import {
  absoluteInterval,
  addIntervals,
  divideIntervals,
  type Interval,
  maximumInterval,
  minimumInterval,
  point,
  powerInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove } from './compare.js';

const NONE = point(ZERO);

/** Reserve of practice each way, in mm, beside what the mounts move. */
export const PLUNGE_RESERVE = point(rational(2));

/** From centre to centre, by the outer centre as seen from the inner one. */
export function centreDistance(along: Interval, across: Interval, up: Interval): Interval {
  const squares = [along, across, up].map((way) => powerInterval(way, 2));
  return rootInterval(squares.reduce(addIntervals), 2);
}

/** What a level shaft gains in length where one end moves straight up or down. */
export function gainByRise(restLength: Interval, rise: Interval): Interval {
  // It falls with the length at rest and grows with the size of the rise.
  return overCorners([restLength, absoluteInterval(rise)], (rest, way) => {
    const after = centreDistance(rest, way, NONE);
    return divideIntervals(powerInterval(way, 2), addIntervals(after, rest));
  });
}

/** How much longer and shorter than at rest, and how far from the shortest to the longest. */
export interface Travel {
  readonly lengthening: Interval;
  readonly shortening: Interval;
  readonly slip: Interval;
}

/** Of lengths that are known apart from each other, the first of them at rest. */
export function travelOf(lengths: readonly Interval[]): Travel {
  const [rest = NONE, ...others] = lengths;
  // Each length meets each other one, never itself: its spread is no travel.
  const pairs = lengths.flatMap((a, i) =>
    lengths.flatMap((b, j) => (i === j ? [] : [subtractIntervals(a, b)])),
  );
  const greatest = (all: readonly Interval[]) => all.reduce(maximumInterval, NONE);
  return {
    lengthening: greatest(others.map((other) => subtractIntervals(other, rest))),
    shortening: greatest(others.map((other) => subtractIntervals(rest, other))),
    slip: greatest(pairs),
  };
}

const LENGTH = { type: 'quantity', dimension: 'length' } as const;
const PLACES = { ...LENGTH, optional: true, most: 12 } as const;
const ONE = { ...LENGTH, optional: true } as const;

export const plunge = calculation({
  name: 'plunge',
  title: { en: 'Plunge of a shaft', de: 'Längenausgleich einer Welle' },
  about: {
    en: 'How much does the length of a shaft change over the travel, and is there room for it?',
    de: 'Wie viel Längenausgleich braucht eine Welle beim Federn, und reicht ihr Verschiebeweg?',
  },
  inputs: {
    length: {
      ...PLACES,
      above: '0 mm',
      name: {
        en: 'length between the joint centres, first at rest, then in other positions',
        de: 'Länge zwischen den Gelenkmitten, zuerst in Ruhe, dann in anderen Lagen',
      },
    },
    along: {
      ...PLACES,
      name: {
        en: 'outer joint centre from the inner one along the car, position by position',
        de: 'äußere Gelenkmitte von der inneren aus längs, Lage für Lage',
      },
    },
    across: {
      ...PLACES,
      name: { en: 'the same across the car', de: 'dasselbe quer zum Fahrzeug' },
    },
    up: { ...PLACES, name: { en: 'the same upwards', de: 'dasselbe nach oben' } },
    rise: {
      ...PLACES,
      name: {
        en: 'how far one end rises straight from a level shaft, position by position',
        de: 'um so viel steigt ein Ende senkrecht aus der waagrechten Lage, Lage für Lage',
      },
    },
    compressedLength: {
      ...ONE,
      above: '0 mm',
      name: { en: 'length pushed right in', de: 'Länge ganz zusammengeschoben' },
    },
    extendedLength: {
      ...ONE,
      above: '0 mm',
      name: { en: 'length drawn right out', de: 'Länge ganz auseinandergezogen' },
    },
    mountMovement: {
      ...ONE,
      least: '0 mm',
      usual: ['3 mm', '5 mm'],
      name: {
        en: 'what the mounts move each way, 0 if not told',
        de: 'Bewegung der Lager in jede Richtung, sonst 0',
      },
    },
    reserve: {
      ...ONE,
      least: '0 mm',
      name: {
        en: 'reserve that is wanted each way, else 2 mm',
        de: 'verlangte Reserve in jede Richtung, sonst 2 mm',
      },
    },
  },
  outputs: {
    lengths: {
      ...LENGTH,
      list: true,
      name: { en: 'length in each position', de: 'Länge in jeder Lage' },
    },
    lengthening: {
      ...LENGTH,
      name: { en: 'longer than at rest by up to', de: 'länger als in Ruhe um bis zu' },
    },
    shortening: {
      ...LENGTH,
      name: { en: 'shorter than at rest by up to', de: 'kürzer als in Ruhe um bis zu' },
    },
    slip: {
      ...LENGTH,
      name: {
        en: 'slip from the shortest to the longest',
        de: 'Verschiebeweg vom kürzesten zum längsten Maß',
      },
    },
    roomInwards: {
      ...LENGTH,
      needs: ['compressedLength'],
      name: {
        en: 'what is left at the shortest before it bottoms',
        de: 'Rest am kürzesten Maß, bis sie auf Block geht',
      },
    },
    roomInwardsEnough: {
      type: 'outcome',
      needs: ['compressedLength'],
      name: {
        en: 'The reserve is left before it bottoms.',
        de: 'Die Reserve bleibt, bevor sie auf Block geht.',
      },
    },
    roomOutwards: {
      ...LENGTH,
      needs: ['extendedLength'],
      name: {
        en: 'what is left at the longest before it comes apart',
        de: 'Rest am längsten Maß, bis sie auseinandergeht',
      },
    },
    roomOutwardsEnough: {
      type: 'outcome',
      needs: ['extendedLength'],
      name: {
        en: 'The reserve is left before it comes apart.',
        de: 'Die Reserve bleibt, bevor sie auseinandergeht.',
      },
    },
  },
  formulas: [
    'lengths = √(along² + across² + up²)   or   √(length² + rise²)   or as measured',
    'slip = greatest(lengths) − least(lengths)',
    'lengthening = greatest(lengths) − lengths₁,   shortening = lengths₁ − least(lengths)',
    'roomInwards = least(lengths) − compressedLength',
    'roomOutwards = extendedLength − greatest(lengths)',
    'enough where room ≥ reserve + mountMovement',
  ],
  assumptions: [
    {
      en: 'The positions told are those in which the shaft is longest and shortest.',
      de: 'Unter den Lagen sind die, in denen die Welle am längsten und am kürzesten ist.',
    },
    {
      en: 'With a rise the shaft lies level at rest and its end moves straight up or down.',
      de: 'Beim Steigen liegt die Welle in Ruhe waagrecht, ihr Ende geht senkrecht auf und ab.',
    },
  ],
  validity: [
    {
      en: 'An axle on arms moves on an arc: then give both coordinates, not its rise.',
      de: 'Eine Achse an Lenkern geht im Bogen: dann Koordinaten angeben, nicht das Steigen.',
    },
    {
      en: 'Take rest, bump and droop, and for a steered wheel both locks.',
      de: 'Ruhe, Einfedern und Ausfedern nehmen, am gelenkten Rad auch beide Einschläge.',
    },
    {
      en: 'The reserve of 2 mm and 3 to 5 mm for mounts are common practice; ask the joint maker.',
      de: '2 mm Reserve und 3 bis 5 mm für Lager sind übliche Praxis; den Hersteller fragen.',
    },
  ],
  sources: [
    { title: 'distance of two points', basis: 'arithmetic' },
    { title: 'reserve of 2 mm each way, mounts of 3 to 5 mm', basis: 'common-practice' },
  ],
  warnings: {
    bottoms: {
      en: 'The shaft bottoms, or may bottom: it then pushes bearings and joints apart.',
      de: 'Die Welle geht auf Block oder kann es: Sie drückt dann Lager und Gelenke auseinander.',
    },
    'comes-apart': {
      en: 'The shaft comes apart, or may come apart.',
      de: 'Die Welle geht auseinander oder kann es.',
    },
    'mounts-not-told': {
      en: 'What the mounts move is not counted: 3 to 5 mm each way are usual.',
      de: 'Die Bewegung der Lager ist nicht gerechnet: üblich sind 3 bis 5 mm je Richtung.',
    },
    'one-position': {
      en: 'Only one position is told, so that no travel is seen.',
      de: 'Nur eine Lage ist angegeben, ein Weg ist so nicht zu sehen.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'half-shaft',
      summary: 'A half-shaft as measured at rest, bump and droop, against its joints',
      given: {
        length: ['382.1 mm', '373.21 mm', '379 mm'],
        compressedLength: '365 ±0.5 mm',
        extendedLength: '400 ±0.5 mm',
        mountMovement: '4 mm',
        reserve: '2 mm',
      },
    },
    {
      name: 'straight-rise',
      summary: 'A propeller shaft of 1400 mm whose axle rises and falls by 60 mm',
      given: { length: ['1400 mm'], rise: ['60 mm', '-60 mm'] },
    },
    {
      name: 'coordinates',
      summary: 'Joint centres by coordinates at rest, bump and droop',
      given: {
        along: ['12 mm', '14 mm', '9 mm'],
        across: ['372 mm', '370 mm', '368 mm'],
        up: ['-60 mm', '10 mm', '-120 mm'],
        extendedLength: '405 mm',
      },
    },
  ],
  calculate: (given) => {
    const positions = positionsOf(given);
    if ('input' in positions) return { found: {}, warnings: [], faults: [positions] };
    const { lengths, travel } = positions;
    const { compressedLength, extendedLength, mountMovement } = given;
    const wanted = addIntervals(given.reserve ?? PLUNGE_RESERVE, mountMovement ?? NONE);
    const shortest = lengths.reduce(minimumInterval);
    const longest = lengths.reduce(maximumInterval);
    const inwards = compressedLength && subtractIntervals(shortest, compressedLength);
    const outwards = extendedLength && subtractIntervals(extendedLength, longest);
    const said = [
      ['bottoms', inwards !== null && isBelow(NONE, inwards) !== 'holds'],
      ['comes-apart', outwards !== null && isBelow(NONE, outwards) !== 'holds'],
      ['mounts-not-told', (inwards ?? outwards) !== null && mountMovement === null],
      ['one-position', lengths.length === 1],
    ] as const;
    return {
      found: {
        lengths,
        ...travel,
        roomInwards: inwards ?? undefined,
        roomInwardsEnough: inwards === null ? undefined : notAbove(wanted, inwards),
        roomOutwards: outwards ?? undefined,
        roomOutwardsEnough: outwards === null ? undefined : notAbove(wanted, outwards),
      },
      warnings: said.flatMap(([code, isSaid]) => (isSaid ? [code] : [])),
    };
  },
});

interface Positions {
  readonly lengths: readonly Interval[];
  readonly travel: Travel;
}

interface GivenPositions {
  readonly length: readonly Interval[] | null;
  readonly along: readonly Interval[] | null;
  readonly across: readonly Interval[] | null;
  readonly up: readonly Interval[] | null;
  readonly rise: readonly Interval[] | null;
}

function positionsOf({ length, rise, ...ways }: GivenPositions): Positions | GivenFault {
  const told = [ways.along, ways.across, ways.up].filter((way) => way !== null);
  if ((length === null) === (told.length === 0)) return ONE_WAY;
  if (length === null) {
    if (rise !== null) return RISE_ALONE;
    const count = told[0]?.length ?? 0;
    if (told.some((way) => way.length !== count)) return COUNTS_DIFFER;
    const at = (way: readonly Interval[] | null, index: number) => way?.[index] ?? NONE;
    const lengths = Array.from({ length: count }, (_, index) =>
      centreDistance(at(ways.along, index), at(ways.across, index), at(ways.up, index)),
    );
    return { lengths, travel: travelOf(lengths) };
  }
  if (rise === null) return { lengths: length, travel: travelOf(length) };
  const [rest, ...others] = length;
  if (rest === undefined || others.length > 0) return RISE_ALONE;
  // One length at rest is behind all of them, so that its spread is no travel.
  const slip = rise.map((way) => gainByRise(rest, way)).reduce(maximumInterval, NONE);
  const lengths = [rest, ...rise.map((way) => centreDistance(rest, way, NONE))];
  return { lengths, travel: { lengthening: slip, shortening: NONE, slip } };
}

const ONE_WAY: GivenFault = {
  input: 'length',
  text: {
    en: 'Tell the lengths, or where the outer joint centre lies, and not both.',
    de: 'Die Längen nennen oder die Lage der äußeren Gelenkmitte, nicht beides.',
  },
};
const RISE_ALONE: GivenFault = {
  input: 'rise',
  text: {
    en: 'A rise goes with one length, that at rest.',
    de: 'Zum Steigen gehört eine einzige Länge, die in Ruhe.',
  },
};
const COUNTS_DIFFER: GivenFault = {
  input: 'up',
  text: {
    en: 'Tell as many values along, across and upwards, position by position.',
    de: 'Längs, quer und nach oben gleich viele Werte nennen, Lage für Lage.',
  },
};
