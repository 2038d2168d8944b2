/**
 * Gear ratios: stages to one ratio, what the decimal on a tag stands for, which teeth may be behind
 * it, and which pairs two fixed shafts can have. The formulas are in `teeth.ts`.
 *
 * Left out: profile shift, helix angles, which of several pairs was ever cut.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import {
  contains,
  type Interval,
  isWithin,
  middle,
  overlaps,
  POSITIVE,
  point,
} from '../quantity/interval.js';
import {
  divide,
  HUNDRED,
  multiply,
  ONE,
  type Rational,
  rational,
  subtract,
} from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import {
  comparedRatios,
  decimalRatio,
  hasPair,
  nearestPairs,
  overallRatio,
  pairText,
  ratioOfPair,
  type ToothPair,
  toothPairs,
  wholeDown,
} from './teeth.js';

function wholeOf(count: Interval): bigint {
  return wholeDown(count.low ?? ONE);
}

const DECIMAL = /^\d{1,4}\.\d{1,9}$/;

function decimalFault(text: string): GivenFault | null {
  const isReadable = DECIMAL.test(text) && isWithin(point(rational(text)), POSITIVE);
  if (isReadable) return null;
  return {
    input: 'decimal',
    text: {
      en: `“${text}” is no decimal above 0. Write it as it stands, with a point, such as 3.545.`,
      de: `„${text}“ ist kein Dezimalbruch über 0. Schreiben, wie er dasteht, mit Punkt: 3.545.`,
    },
  };
}

/** Which rear axles of cars there are: a choice, no standard. */
const DEFAULT_SEARCH = { pinions: [8n, 15n], most: 60n } as const;

const TEETH = { type: 'count', optional: true, least: '1' } as const;

export const ratio = calculation({
  name: 'ratio',
  title: { en: 'Gear ratios and teeth', de: 'Übersetzungen und Zähnezahlen' },
  about: {
    en: 'Which ratio do these stages have, and which teeth can be behind a decimal?',
    de: 'Welche Übersetzung haben diese Stufen, und welche Zähne können hinter der Zahl stehen?',
  },
  inputs: {
    stages: {
      type: 'ratio',
      optional: true,
      most: 8,
      usual: ['1/10', '10'],
      name: {
        en: 'stages in order, driven over driving teeth',
        de: 'Stufen der Reihe nach, Zähne getrieben durch treibend',
      },
    },
    otherStages: {
      type: 'ratio',
      optional: true,
      most: 8,
      usual: ['1/10', '10'],
      name: { en: 'stages to compare with', de: 'Stufen zum Vergleich' },
    },
    decimal: {
      type: 'text',
      optional: true,
      form: '3.545',
      name: {
        en: 'decimal as it stands on a tag',
        de: 'Dezimalbruch, wie er auf dem Schild steht',
      },
    },
    reading: {
      type: 'code',
      optional: true,
      name: {
        en: 'how the decimal was written, either way if not told',
        de: 'wie der Dezimalbruch entstand, sonst auf beide Arten',
      },
      codes: {
        rounded: { en: 'rounded', de: 'gerundet' },
        truncated: { en: 'further digits cut off', de: 'weitere Stellen abgeschnitten' },
        either: { en: 'either of the two', de: 'eines von beiden' },
      },
    },
    pinionLeast: {
      ...TEETH,
      greatest: '60',
      name: { en: 'fewest pinion teeth looked for, else 8', de: 'kleinstes Ritzel, sonst 8 Zähne' },
    },
    pinionMost: {
      ...TEETH,
      greatest: '60',
      name: { en: 'most pinion teeth looked for, else 15', de: 'größtes Ritzel, sonst 15 Zähne' },
    },
    ringMost: {
      ...TEETH,
      greatest: '200',
      name: { en: 'most ring gear teeth, else 60', de: 'größtes Tellerrad, sonst 60 Zähne' },
    },
    drivenTeeth: {
      ...TEETH,
      greatest: '400',
      usual: ['8', '120'],
      name: {
        en: 'driven teeth of a pair on fixed centres',
        de: 'getriebene Zähne eines Paars auf festem Achsabstand',
      },
    },
    drivingTeeth: {
      ...TEETH,
      greatest: '400',
      usual: ['8', '120'],
      name: { en: 'driving teeth of that pair', de: 'treibende Zähne dieses Paars' },
    },
    wishedRatio: {
      type: 'ratio',
      optional: true,
      usual: ['1/10', '10'],
      name: {
        en: 'ratio wished for on those centres, 1 if not told',
        de: 'gewünschte Übersetzung auf diesem Achsabstand, sonst 1',
      },
    },
  },
  outputs: {
    overall: {
      type: 'quantity',
      dimension: '1',
      needs: ['stages'],
      name: { en: 'overall ratio', de: 'Gesamtübersetzung' },
    },
    overallDecimal: {
      type: 'quantity',
      dimension: '1',
      decimal: true,
      needs: ['stages'],
      name: { en: 'the same as a decimal', de: 'dieselbe als Dezimalbruch' },
    },
    otherOverall: {
      type: 'quantity',
      dimension: '1',
      needs: ['otherStages'],
      name: { en: 'overall ratio to compare with', de: 'Gesamtübersetzung zum Vergleich' },
    },
    comparison: {
      type: 'code',
      needs: ['stages', 'otherStages'],
      name: { en: 'the two beside each other', de: 'beide nebeneinander' },
      codes: {
        equal: { en: 'equal', de: 'gleich' },
        consistent: {
          en: 'consistent, but only teeth can prove them equal',
          de: 'vereinbar, doch nur Zähne können Gleichheit beweisen',
        },
        'does-not-match': { en: 'they do not match', de: 'passen nicht zusammen' },
      },
    },
    decimalMeans: {
      type: 'quantity',
      dimension: '1',
      needs: ['decimal'],
      name: { en: 'ratios that the decimal stands for', de: 'wofür der Dezimalbruch steht' },
    },
    decimalMatches: {
      type: 'code',
      needs: ['stages', 'decimal'],
      name: { en: 'the decimal beside the stages', de: 'der Dezimalbruch neben den Stufen' },
      codes: {
        consistent: { en: 'consistent', de: 'vereinbar' },
        'does-not-match': { en: 'does not match', de: 'passt nicht' },
      },
    },
    candidates: {
      type: 'text',
      list: true,
      needs: ['decimal'],
      name: {
        en: 'ring and pinion that may be meant',
        de: 'Teller- und Kegelrad, die es sein können',
      },
    },
    toothSum: {
      type: 'quantity',
      dimension: '1',
      needs: ['drivenTeeth', 'drivingTeeth'],
      name: { en: 'tooth sum of the pair', de: 'Zähnesumme des Paars' },
    },
    hasWishedPair: {
      type: 'outcome',
      needs: ['drivenTeeth', 'drivingTeeth'],
      name: {
        en: 'A pair of that tooth sum has the wished ratio.',
        de: 'Ein Paar dieser Zähnesumme hat die gewünschte Übersetzung.',
      },
    },
    nearest: {
      type: 'text',
      list: true,
      needs: ['drivenTeeth', 'drivingTeeth'],
      name: { en: 'nearest pairs of that sum', de: 'nächste Paare dieser Summe' },
    },
    nearestOff: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      list: true,
      needs: ['drivenTeeth', 'drivingTeeth'],
      name: { en: 'how far they are off the wish', de: 'wie weit sie daneben liegen' },
    },
  },
  formulas: [
    'overall = stages[1] · stages[2] · …',
    'decimalMeans = decimal ± half of its last digit   (rounded)',
    'decimalMeans = decimal to decimal + one of its last digit   (truncated)',
    'candidates = all ring/pinion in decimalMeans',
    'toothSum = drivenTeeth + drivingTeeth, the same for every pair on those centres',
    'nearestOff = 100 · (pair / wishedRatio − 1)   (%)',
  ],
  assumptions: [
    {
      en: 'On fixed centres all pairs have one module and helix angle, and no profile shift.',
      de: 'Auf festem Achsabstand: ein Modul, ein Schrägungswinkel, keine Profilverschiebung.',
    },
  ],
  validity: [
    {
      en: 'A decimal never proves a ratio: several pairs can be behind one, so count the teeth.',
      de: 'Ein Dezimalbruch beweist nichts, mehrere Paare können dahinterstehen: Zähne zählen.',
    },
    {
      en: 'Which teeth are searched is a choice, no standard.',
      de: 'Welche Zähnezahlen gesucht werden, ist eine Wahl und keine Norm.',
    },
  ],
  sources: [
    { title: 'arithmetic of fractions and of rounding', basis: 'arithmetic' },
    {
      title: 'pinions of 8 to 15 and ring gears of up to 60 teeth in car axles',
      basis: 'common-practice',
    },
  ],
  warnings: {
    'several-pairs': {
      en: 'Several pairs round to this decimal: count the teeth.',
      de: 'Mehrere Paare ergeben diesen Dezimalbruch: Zähne zählen.',
    },
    'no-pair': {
      en: 'No pair of the teeth looked for has this decimal: look at its digits, or search wider.',
      de: 'Kein gesuchtes Paar ergibt diesen Dezimalbruch: Ziffern prüfen oder weiter suchen.',
    },
    'odd-sum': {
      en: 'The tooth sum is odd, so these centres take no 1:1 pair without profile shift.',
      de: 'Die Zähnesumme ist ungerade: Ohne Profilverschiebung gibt es hier kein Paar 1:1.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'stages-and-tag',
      summary: 'Two stages beside one, and a tag that says 3.54',
      given: {
        stages: ['39/10', '10/11'],
        otherStages: ['39/11'],
        decimal: '3.54',
        reading: 'truncated',
        pinionLeast: 8,
        pinionMost: 15,
        ringMost: 60,
      },
    },
    {
      name: 'odd-tooth-sum',
      summary: 'A transfer pair of 36 and 33 teeth that shall become 1:1',
      given: { drivenTeeth: 36, drivingTeeth: 33, wishedRatio: '1' },
    },
  ],
  calculate: (given) => {
    const { stages, otherStages, decimal, reading } = given;
    const faults = faultsOf(given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const overall = stages === null ? undefined : overallRatio(stages);
    const otherOverall = otherStages === null ? undefined : overallRatio(otherStages);
    const means = decimal === null ? undefined : decimalRatio(decimal, reading ?? 'either');
    const pairs = means === undefined ? undefined : toothPairs(means, searchOf(given));
    const onCentres = pairsOnCentres(given);
    const warnings = [
      ...(pairs?.length === 0 ? ['no-pair'] : []),
      ...((pairs?.length ?? 0) > 1 ? ['several-pairs'] : []),
      ...(onCentres?.warnings ?? []),
    ];
    return {
      found: {
        overall,
        overallDecimal: overall,
        otherOverall,
        comparison: overall && otherOverall && comparedRatios(overall, otherOverall),
        decimalMeans: means,
        decimalMatches:
          overall && means && (overlaps(overall, means) ? 'consistent' : 'does-not-match'),
        candidates: pairs?.map(pairText),
        ...onCentres?.found,
      },
      warnings,
    };
  },
});

interface Search {
  readonly pinionLeast: Interval | null;
  readonly pinionMost: Interval | null;
  readonly ringMost: Interval | null;
}

function searchOf({ pinionLeast, pinionMost, ringMost }: Search) {
  const { pinions, most } = DEFAULT_SEARCH;
  const least = pinionLeast === null ? pinions[0] : wholeOf(pinionLeast);
  const greatest = pinionMost === null ? pinions[1] : wholeOf(pinionMost);
  return {
    pinions: [least, greatest] as const,
    most: ringMost === null ? most : wholeOf(ringMost),
  };
}

function faultsOf(given: Search & { readonly decimal: string | null }): GivenFault[] {
  const fault = given.decimal === null ? null : decimalFault(given.decimal);
  const [least, most] = searchOf(given).pinions;
  const text = {
    en: `The search would end at ${most} teeth before it begins at ${least}.`,
    de: `Die Suche würde bei ${most} Zähnen enden, ehe sie bei ${least} beginnt.`,
  };
  const input = given.pinionMost === null ? 'pinionLeast' : 'pinionMost';
  return [...(fault === null ? [] : [fault]), ...(least > most ? [{ input, text }] : [])];
}

interface OnCentres {
  readonly drivenTeeth: Interval | null;
  readonly drivingTeeth: Interval | null;
  readonly wishedRatio: Interval | null;
}

function pairsOnCentres({ drivenTeeth, drivingTeeth, wishedRatio }: OnCentres) {
  if (drivenTeeth === null || drivingTeeth === null) return null;
  const sum = wholeOf(drivenTeeth) + wholeOf(drivingTeeth);
  const wished = wishedRatio ?? point(ONE);
  const wish = middle(wished) ?? ONE;
  const pairs = nearestPairs(sum, wish);
  const isOdd = sum % 2n === 1n && contains(wished, ONE);
  return {
    found: {
      toothSum: point(rational(sum)),
      hasWishedPair: hasPair(sum, wished),
      nearest: pairs.map(pairText),
      nearestOff: pairs.map((pair) => point(percentOff(pair, wish))),
    },
    warnings: isOdd ? ['odd-sum'] : [],
  };
}

function percentOff(pair: ToothPair, wish: Rational): Rational {
  return multiply(subtract(divide(ratioOfPair(pair), wish), ONE), HUNDRED);
}
