/**
 * Grades of brake fluid: the boiling points that each must have at least, whether one may take the
 * place of another, and what a measured boiling point says of what is in the system.
 *
 * Standard: FMVSS 116 (49 CFR 571.116), equilibrium reflux boiling points, dry as delivered and wet
 * with the water that it has taken in. An older printing of a trade article has 270 and 190 degrees
 * for DOT 5.1; the regulation has 260 and 180. DOT 5 is silicone and never mixed with the others.
 *
 * Left out: viscosity in the cold, mineral oils, seals that were made for another fluid.
 */

import { allOf, type Outcome } from '../check/state.js';
import { type Interval, point } from '../quantity/interval.js';
import { rational } from '../quantity/rational.js';
import { calculation } from './calculation.js';
import { notAbove } from './compare.js';

const GRADES = {
  'dot-3': { en: 'DOT 3', de: 'DOT 3 (Glykol)' },
  'dot-4': { en: 'DOT 4', de: 'DOT 4 (Glykol)' },
  'dot-5': { en: 'DOT 5, silicone', de: 'DOT 5 (Silikon)' },
  'dot-5-1': { en: 'DOT 5.1', de: 'DOT 5.1 (Glykol)' },
} as const;

export type FluidGrade = keyof typeof GRADES;

interface Fluid {
  readonly base: 'glycol' | 'silicone';
  /** Least boiling points in degrees Celsius. */
  readonly dry: Interval;
  readonly wet: Interval;
}

const fluid = (base: Fluid['base'], dry: number, wet: number): Fluid => ({
  base,
  dry: point(rational(dry)),
  wet: point(rational(wet)),
});

/** FMVSS 116, S5.1.1 and S5.1.2. */
export const BRAKE_FLUIDS: Readonly<Record<FluidGrade, Fluid>> = {
  'dot-3': fluid('glycol', 205, 140),
  'dot-4': fluid('glycol', 230, 155),
  'dot-5': fluid('silicone', 260, 180),
  'dot-5-1': fluid('glycol', 260, 180),
};

/** Whether a fluid may be filled where another grade is asked for. */
export function servesAs(grade: FluidGrade, asked: FluidGrade): Outcome {
  const [has, wants] = [BRAKE_FLUIDS[grade], BRAKE_FLUIDS[asked]];
  if (has.base !== wants.base) return 'fails';
  return allOf([notAbove(wants.dry, has.dry), notAbove(wants.wet, has.wet)]);
}

const TEMPERATURE = { type: 'quantity', dimension: 'temperature' } as const;

export const brakeFluid = calculation({
  name: 'brake-fluid',
  title: { en: 'Grades of brake fluid', de: 'Sorten der Bremsflüssigkeit' },
  about: {
    en: 'Where may a brake fluid boil, and which grade may take the place of another?',
    de: 'Wann darf eine Bremsflüssigkeit sieden, und welche Sorte ersetzt eine andere?',
  },
  inputs: {
    grades: {
      type: 'code',
      most: 4,
      name: { en: 'grades of fluid', de: 'Sorten der Flüssigkeit' },
      codes: GRADES,
    },
    asked: {
      type: 'code',
      optional: true,
      name: { en: 'grade that the system asks for', de: 'Sorte, die die Anlage verlangt' },
      codes: GRADES,
    },
    measured: {
      ...TEMPERATURE,
      optional: true,
      least: '0 degC',
      greatest: '400 degC',
      name: {
        en: 'boiling point measured in the system',
        de: 'gemessener Siedepunkt in der Anlage',
      },
    },
  },
  outputs: {
    dry: {
      ...TEMPERATURE,
      list: true,
      name: { en: 'boils, dry, at no less than', de: 'siedet trocken nicht unter' },
    },
    wet: {
      ...TEMPERATURE,
      list: true,
      name: { en: 'boils, wet, at no less than', de: 'siedet nass nicht unter' },
    },
    serves: {
      type: 'outcome',
      needs: ['asked'],
      name: {
        en: 'Each of the grades may take the place of the one asked for.',
        de: 'Jede der Sorten kann die verlangte ersetzen.',
      },
    },
    isStillGood: {
      type: 'outcome',
      needs: ['measured'],
      name: {
        en: 'What is in the system boils no lower than the wet boiling point of each grade.',
        de: 'Die Füllung siedet nicht unter dem Nasssiedepunkt jeder der Sorten.',
      },
    },
  },
  formulas: [
    'DOT 3: dry 205 °C, wet 140 °C',
    'DOT 4: dry 230 °C, wet 155 °C',
    'DOT 5 and DOT 5.1: dry 260 °C, wet 180 °C',
    'serves: the same base, and both boiling points at least those of the grade asked for',
  ],
  assumptions: [
    {
      en: 'The fluid is of its grade, from a can that was sealed.',
      de: 'Die Flüssigkeit entspricht ihrer Sorte und kommt aus einem verschlossenen Gebinde.',
    },
  ],
  validity: [
    {
      en: 'Boiling points alone: antilock controls may ask for one that is thinner in the cold.',
      de: 'Nur Siedepunkte: Blockierregler können eine in der Kälte dünnere Sorte verlangen.',
    },
    {
      en: 'The vehicle maker’s grade goes first.',
      de: 'Die Sorte, die der Fahrzeughersteller nennt, geht vor.',
    },
  ],
  sources: [{ title: 'FMVSS 116, 49 CFR 571.116', basis: 'read' }],
  warnings: {
    'other-base': {
      en: 'Silicone and glycol are never mixed, nor filled in place of one another.',
      de: 'Silikon und Glykol werden nie gemischt und nie gegeneinander ausgetauscht.',
    },
    'change-fluid': {
      en: 'The fluid has, or may have, taken in too much water: change it.',
      de: 'Die Flüssigkeit hat zu viel Wasser aufgenommen oder kann es haben: wechseln.',
    },
  },
  caution: 'brakes',
  examples: [
    {
      name: 'grades',
      summary: 'Two grades where DOT 4 is asked for',
      given: { grades: ['dot-4', 'dot-5-1'], asked: 'dot-4' },
    },
    {
      name: 'measured',
      summary: 'DOT 4 that boils at 162 degrees, give or take five',
      given: { grades: ['dot-4'], measured: '162 ±5 degC' },
    },
  ],
  calculate: ({ grades, asked, measured }) => {
    const fluids = grades.map((grade) => BRAKE_FLUIDS[grade]);
    const bases = new Set([...grades, ...(asked ? [asked] : [])].map(baseOf));
    const isStillGood = measured && allOf(fluids.map(({ wet }) => notAbove(wet, measured)));
    return {
      found: {
        dry: fluids.map(({ dry }) => dry),
        wet: fluids.map(({ wet }) => wet),
        serves: asked === null ? undefined : allOf(grades.map((grade) => servesAs(grade, asked))),
        isStillGood: isStillGood ?? undefined,
      },
      warnings: [
        ...(bases.size > 1 ? ['other-base'] : []),
        ...(isStillGood === null || isStillGood === 'holds' ? [] : ['change-fluid']),
      ],
    };
  },
});

function baseOf(grade: FluidGrade): Fluid['base'] {
  return BRAKE_FLUIDS[grade].base;
}
