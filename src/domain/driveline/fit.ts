/**
 * Limits of size by ISO 286, and the clearance of a hole and a shaft of one nominal size.
 *
 * The tables are the standard's values (`quantity/iso286.ts`), which its older formulas do not
 * always round to; the tolerance factor is shown beside them. Ranges of sizes are over the first
 * and up to and including the second limit, so that 30 is in the range up to 30.
 *
 * Left out: what a class is good for, surfaces and form, heat and speed, sizes above 500 mm.
 *
 * Length: half of it says in two languages what is taken and given.
 */

import type { Outcome } from '../check/state.js';
import { rootInterval } from '../quantity/enclosure.js';
import {
  addIntervals,
  closed,
  type Interval,
  isWithin,
  NON_NEGATIVE,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { isIsoFault, isoLimits, isoRange, isoTolerance } from '../quantity/iso286.js';
import { add, equals, multiply, type Rational, rational, sign } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';

const A_MICROMETRE = rational('0.001');
/** ISO 286-1: i = 0.45 D^(1/3) + 0.001 D, in micrometres with D in mm. */
const CUBE_ROOT_FACTOR = rational('0.45');

/** The tolerance factor of a range of sizes, in mm; D is the geometric mean of its limits. */
export function toleranceFactor([over, upTo]: readonly [number, number]): Interval | null {
  // Of the first range the standard takes the mean of 1 and 3.
  const low = over === 0 ? 1 : over;
  const product = point(multiply(rational(low), rational(upTo)));
  const mean = rootInterval(product, 2);
  const root = scaleInterval(rootInterval(mean, 3), CUBE_ROOT_FACTOR);
  const micrometres = addIntervals(root, scaleInterval(mean, A_MICROMETRE));
  return scaleInterval(micrometres, A_MICROMETRE);
}

const GRADES = [5, 6, 7, 8, 9, 10, 11];

const CLASS = /^[A-Za-z]{1,2}\d{1,2}$/;

/** The sizes that a class allows, in mm; a fault where it is none, or not of this side. */
function sizesOf(input: 'hole' | 'shaft', size: Rational, name: string): Interval | GivenFault {
  const isOfSide = input === 'hole' ? name === name.toUpperCase() : name === name.toLowerCase();
  if (!CLASS.test(name) || !isOfSide) return { input, text: UNREADABLE[input] };
  const limits = isoLimits(size, name);
  if (!isIsoFault(limits)) return closed(add(size, limits.lower), add(size, limits.upper));
  const de = `Die Klasse ${name} ist bei dieser Größe nicht bekannt.`;
  return { input, text: { en: limits.text, de } };
}

const UNREADABLE = {
  hole: {
    en: 'It is no class of a hole such as H7: capital letters and a grade.',
    de: 'Das ist keine Klasse einer Bohrung wie H7: große Buchstaben und ein Grad.',
  },
  shaft: {
    en: 'It is no class of a shaft such as g6: small letters and a grade.',
    de: 'Das ist keine Klasse einer Welle wie g6: kleine Buchstaben und ein Grad.',
  },
} as const;

export const fit = calculation({
  name: 'fit',
  title: { en: 'Limits and fit by ISO 286', de: 'Grenzmaße und Passung nach ISO 286' },
  about: {
    en: 'Which sizes does a tolerance class allow, and how much play has the fit?',
    de: 'Welche Maße erlaubt eine Toleranzklasse, und wie viel Spiel hat die Passung?',
  },
  inputs: {
    size: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      greatest: '500 mm',
      name: { en: 'nominal size', de: 'Nennmaß' },
    },
    hole: {
      type: 'text',
      optional: true,
      form: 'H7',
      name: { en: 'class of the hole', de: 'Klasse der Bohrung' },
    },
    shaft: {
      type: 'text',
      optional: true,
      form: 'g6',
      name: { en: 'class of the shaft', de: 'Klasse der Welle' },
    },
  },
  outputs: {
    holeSizes: {
      type: 'quantity',
      dimension: 'length',
      needs: ['hole'],
      name: { en: 'sizes of the hole', de: 'Maße der Bohrung' },
    },
    shaftSizes: {
      type: 'quantity',
      dimension: 'length',
      needs: ['shaft'],
      name: { en: 'sizes of the shaft', de: 'Maße der Welle' },
    },
    holeDeviation: {
      type: 'quantity',
      dimension: 'length',
      needs: ['hole'],
      name: { en: 'deviations of the hole', de: 'Abmaße der Bohrung' },
    },
    shaftDeviation: {
      type: 'quantity',
      dimension: 'length',
      needs: ['shaft'],
      name: { en: 'deviations of the shaft', de: 'Abmaße der Welle' },
    },
    clearance: {
      type: 'quantity',
      dimension: 'length',
      needs: ['hole', 'shaft'],
      name: {
        en: 'play; below zero the shaft grips',
        de: 'Spiel; unter null sitzt die Welle fest',
      },
    },
    sort: {
      type: 'code',
      needs: ['hole', 'shaft'],
      name: { en: 'sort of fit', de: 'Art der Passung' },
      codes: {
        clearance: { en: 'always with play', de: 'Spielpassung' },
        transition: { en: 'with play or grip, as it comes', de: 'Übergangspassung' },
        interference: { en: 'always with grip', de: 'Übermaßpassung' },
      },
    },
    slides: {
      type: 'outcome',
      needs: ['hole', 'shaft'],
      name: { en: 'The shaft always goes in freely.', de: 'Die Welle geht immer frei hinein.' },
    },
    tolerances: {
      type: 'quantity',
      dimension: 'length',
      list: true,
      name: { en: 'standard tolerances of grades 5 to 11', de: 'Grundtoleranzen IT5 bis IT11' },
    },
    toleranceFactor: {
      type: 'quantity',
      dimension: 'length',
      name: {
        en: 'tolerance factor i of the range of sizes',
        de: 'Toleranzfaktor i des Nennmaßbereichs',
      },
    },
  },
  formulas: [
    'clearance = holeSizes - shaftSizes',
    'toleranceFactor = 0.45 · ∛D + 0.001 · D   (µm; D: geometric mean of the range, mm)',
    'tolerances = 7, 10, 16, 25, 40, 64, 100 · toleranceFactor, rounded as the standard has them',
  ],
  assumptions: [
    { en: 'Both have the same nominal size, at 20 °C.', de: 'Beide mit einem Nennmaß, bei 20 °C.' },
  ],
  validity: [
    {
      en: 'The tables of the standard count; its formula rounds to them only mostly.',
      de: 'Es gelten die Tafeln der Norm; ihre Formel rundet nur meistens auf sie.',
    },
    {
      en: 'Sizes above 0 up to and including 500 mm; 30 is in the range up to 30.',
      de: 'Maße über 0 bis einschließlich 500 mm; 30 gehört in den Bereich bis 30.',
    },
  ],
  sources: [
    { title: 'ISO 286-1 and ISO 286-2', basis: 'from-memory' },
    { title: 'ISO 286-2, preferred fits', basis: 'read' },
  ],
  warnings: {
    'size-not-exact': {
      en: 'A nominal size is one number: the middle of what was given was taken.',
      de: 'Ein Nennmaß ist eine Zahl: Genommen wurde die Mitte dessen, was gegeben ist.',
    },
  },
  caution: 'general',
  examples: [
    {
      name: 'running-fit',
      summary: 'A running fit of 50 mm: 25 to 89 micrometres of play',
      given: { size: '50 mm', hole: 'H8', shaft: 'f7' },
    },
    { name: 'hole', summary: 'A hole alone', given: { size: '30 mm', hole: 'H7' } },
  ],
  calculate: ({ size, hole: holeClass, shaft: shaftClass }) => {
    const nominal = middleOf(size);
    const read = [
      holeClass === null ? null : sizesOf('hole', nominal, holeClass),
      shaftClass === null ? null : sizesOf('shaft', nominal, shaftClass),
    ];
    const faults = read.flatMap((set) => (set !== null && 'text' in set ? [set] : []));
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const [hole = null, shaft = null] = read.map((set) =>
      set === null || 'text' in set ? null : set,
    );
    const deviation = (set: Interval) => subtractIntervals(set, point(nominal));
    const clearance = hole === null || shaft === null ? null : subtractIntervals(hole, shaft);
    const range = isoRange(nominal);
    return {
      found: {
        holeSizes: hole ?? undefined,
        shaftSizes: shaft ?? undefined,
        holeDeviation: hole === null ? undefined : deviation(hole),
        shaftDeviation: shaft === null ? undefined : deviation(shaft),
        clearance: clearance ?? undefined,
        sort: clearance === null ? undefined : sortOf(clearance),
        slides: clearance === null ? undefined : slides(clearance),
        tolerances: GRADES.flatMap((grade) => {
          const tolerance = isoTolerance(nominal, grade);
          return isIsoFault(tolerance) ? [] : [point(tolerance)];
        }),
        toleranceFactor: range === null ? undefined : (toleranceFactor(range) ?? undefined),
      },
      warnings: isExact(size) ? [] : ['size-not-exact'],
    };
  },
});

function middleOf({ low, high }: Interval): Rational {
  if (low === null || high === null) throw new RangeError('a size has both ends');
  return multiply(add(low, high), rational('1/2'));
}

function isExact({ low, high }: Interval): boolean {
  return low !== null && high !== null && equals(low, high);
}

function sortOf(clearance: Interval): 'clearance' | 'transition' | 'interference' {
  if (isWithin(clearance, NON_NEGATIVE)) return 'clearance';
  const { high } = clearance;
  return high !== null && sign(high) <= 0 ? 'interference' : 'transition';
}

function slides(clearance: Interval): Outcome {
  const sort = sortOf(clearance);
  if (sort === 'clearance') return 'holds';
  return sort === 'interference' ? 'fails' : 'open';
}
