/**
 * The preload that a tightening torque gives a bolt, the torque that a preload takes, and what the
 * bolt bears of it.
 *
 * The nut factor gathers all friction in one number; at a given torque the preload still scatters
 * by about a quarter to either side. Strengths are those of ISO 898-1. The maker's torque or angle
 * always wins over these formulas: they tell whether a figure is in the right place, no more.
 *
 * Left out: angle-controlled and yield-controlled tightening, joints that settle, bending, fatigue.
 *
 * Length: half of it says in two languages what is taken and given.
 */

import {
  closed,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  scaleInterval,
} from '../quantity/interval.js';
import { compare, type Rational, rational } from '../quantity/rational.js';
import { calculation } from './calculation.js';
import { notAbove } from './compare.js';
import { type MetricThread, readThread, stressArea, unreadable } from './screw-thread.js';

const A_MM_IN_METRES = rational('0.001');
const WHOLE = rational(100);

/** The torque that gives a preload, in N.m: T = K F d, with F in N and d in mm. */
export function tighteningTorque(nutFactor: Interval, preload: Interval, diameter: Interval) {
  const moment = multiplyIntervals(multiplyIntervals(nutFactor, preload), diameter);
  return scaleInterval(moment, A_MM_IN_METRES);
}

/** The preload that a torque gives, in N. */
export function preloadOf(torque: Interval, nutFactor: Interval, diameter: Interval): Interval {
  const arm = scaleInterval(multiplyIntervals(nutFactor, diameter), A_MM_IN_METRES);
  return divideIntervals(torque, arm);
}

/** Nut factors by the state of the threads: handbooks of machine design. */
export const NUT_FACTORS = {
  black: rational('0.30'),
  zinc: rational('0.20'),
  lubricated: rational('0.18'),
  cadmium: rational('0.16'),
} as const;

/** Proof, yield and tensile strength in MPa. */
export interface Strength {
  readonly proof: Rational;
  readonly yield: Rational;
  readonly tensile: Rational;
}

interface ClassRow extends Strength {
  /** From above this diameter in mm on; another row is for smaller ones. */
  readonly above: Rational;
}

function row(proof: number, yields: number, tensile: number, above = 0): ClassRow {
  return {
    proof: rational(proof),
    yield: rational(yields),
    tensile: rational(tensile),
    above: rational(above),
  };
}

/** ISO 898-1, table 3, the larger diameters first; 8.8 is stronger above 16 mm. */
const CLASSES = {
  '4.6': [row(225, 240, 400)],
  '5.8': [row(380, 420, 520)],
  '8.8': [row(600, 660, 830, 16), row(580, 640, 800)],
  '9.8': [row(650, 720, 900)],
  '10.9': [row(830, 940, 1040)],
  '12.9': [row(970, 1100, 1220)],
} as const satisfies Readonly<Record<string, readonly ClassRow[]>>;

export type StrengthClass = keyof typeof CLASSES;

export function strengthOf(name: StrengthClass, diameter: Rational): Strength {
  const rows: readonly ClassRow[] = CLASSES[name];
  const found = rows.find(({ above }) => compare(diameter, above) > 0);
  if (found === undefined) throw new RangeError('a bolt has a diameter');
  return found;
}

/** The load up to which a bolt comes back to its length, in N. */
export function proofLoad(thread: MetricThread, name: StrengthClass): Interval {
  return scaleInterval(stressArea(thread), strengthOf(name, thread.diameter).proof);
}

/** Of the proof load, for joints that are taken apart again. */
const USUAL_SHARE = rational('0.75');
/** Preload at one torque scatters by so much to either side. */
const SCATTER = closed(rational('0.75'), rational('1.25'));

export const boltedJoint = calculation({
  name: 'bolted-joint',
  title: {
    en: 'Preload and torque of a bolt',
    de: 'Vorspannkraft und Anzugsmoment einer Schraube',
  },
  about: {
    en: 'Which torque gives a bolt its usual preload, and which preload does a torque give?',
    de: 'Welches Moment gibt die übliche Vorspannkraft, und welche gibt ein Moment?',
  },
  inputs: {
    thread: {
      type: 'text',
      form: 'M12x1.75',
      name: { en: 'thread of the bolt', de: 'Gewinde der Schraube' },
    },
    strengthClass: {
      type: 'code',
      name: { en: 'strength class', de: 'Festigkeitsklasse' },
      codes: {
        '4.6': { en: 'class 4.6', de: 'Klasse 4.6' },
        '5.8': { en: 'class 5.8', de: 'Klasse 5.8' },
        '8.8': { en: 'class 8.8', de: 'Klasse 8.8' },
        '9.8': { en: 'class 9.8', de: 'Klasse 9.8' },
        '10.9': { en: 'class 10.9', de: 'Klasse 10.9' },
        '12.9': { en: 'class 12.9', de: 'Klasse 12.9' },
      },
    },
    condition: {
      type: 'code',
      optional: true,
      name: { en: 'state of the threads, else zinc', de: 'Zustand der Gewinde, sonst verzinkt' },
      codes: {
        black: { en: 'black, dry: nut factor 0.30', de: 'schwarz, trocken: Beiwert 0,30' },
        zinc: { en: 'zinc-plated: 0.20', de: 'verzinkt: 0,20' },
        lubricated: { en: 'lubricated: 0.18', de: 'geschmiert: 0,18' },
        cadmium: { en: 'cadmium-plated: 0.16', de: 'verkadmet: 0,16' },
      },
    },
    nutFactor: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      above: '0',
      usual: ['0.1', '0.35'],
      name: { en: 'nut factor, in place of a state', de: 'Beiwert, anstelle eines Zustands' },
    },
    share: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      above: '0',
      greatest: '1',
      usual: ['0.5', '0.9'],
      name: {
        en: 'preload as a share of the proof load, else 0.75',
        de: 'Vorspannkraft als Anteil der Prüfkraft, sonst 0,75',
      },
    },
    torque: {
      type: 'quantity',
      dimension: 'torque',
      optional: true,
      above: '0 N.m',
      name: { en: 'torque that it is tightened with', de: 'Moment, mit dem sie angezogen wird' },
    },
  },
  outputs: {
    proofStrength: {
      type: 'quantity',
      dimension: 'pressure',
      name: { en: 'proof strength', de: 'Prüfspannung' },
    },
    yieldStrength: {
      type: 'quantity',
      dimension: 'pressure',
      name: { en: 'yield strength', de: 'Streckgrenze' },
    },
    tensileStrength: {
      type: 'quantity',
      dimension: 'pressure',
      name: { en: 'tensile strength', de: 'Zugfestigkeit' },
    },
    nutFactorTaken: {
      type: 'quantity',
      dimension: '1',
      name: { en: 'nut factor', de: 'Beiwert' },
    },
    proofLoad: {
      type: 'quantity',
      dimension: 'force',
      name: { en: 'proof load', de: 'Prüfkraft' },
    },
    preload: {
      type: 'quantity',
      dimension: 'force',
      name: { en: 'preload at that share', de: 'Vorspannkraft bei diesem Anteil' },
    },
    tighteningTorque: {
      type: 'quantity',
      dimension: 'torque',
      name: {
        en: 'torque for it; the maker’s torque or angle wins',
        de: 'Moment dafür; Moment oder Winkel des Herstellers geht vor',
      },
    },
    preloadAtTorque: {
      type: 'quantity',
      dimension: 'force',
      needs: ['torque'],
      name: {
        en: 'preload at the given torque, with its scatter',
        de: 'Vorspannkraft beim gegebenen Moment, mit ihrer Streuung',
      },
    },
    shareAtTorque: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      needs: ['torque'],
      name: { en: 'that, of the proof load', de: 'das von der Prüfkraft' },
    },
    staysBelowProof: {
      type: 'outcome',
      needs: ['torque'],
      name: {
        en: 'However it scatters, it stays below the proof load.',
        de: 'Wie sie auch streut, sie bleibt unter der Prüfkraft.',
      },
    },
  },
  formulas: [
    'proofLoad = proofStrength · stressArea',
    'preload = share · proofLoad',
    'tighteningTorque = nutFactor · preload · diameter',
    'preloadAtTorque = (0.75 to 1.25) · torque / (nutFactor · diameter)',
  ],
  assumptions: [
    {
      en: 'One nut factor for all friction in thread and under the head.',
      de: 'Ein Beiwert für alle Reibung im Gewinde und unter dem Kopf.',
    },
    {
      en: 'At one torque the preload scatters by a quarter to either side.',
      de: 'Bei einem Moment streut die Vorspannkraft um ein Viertel nach beiden Seiten.',
    },
  ],
  validity: [
    {
      en: 'The maker’s torque or angle always wins over these figures.',
      de: 'Moment oder Winkel des Herstellers geht diesen Zahlen immer vor.',
    },
    {
      en: 'Not for bolts that are tightened by an angle or beyond their yield point.',
      de: 'Nicht für Schrauben, die nach Drehwinkel oder über die Streckgrenze angezogen werden.',
    },
  ],
  sources: [
    { title: 'Mechanical Engineering Design, 9th edition, chapter 8', basis: 'read' },
    { title: 'ISO 898-1, strengths of classes', basis: 'read' },
  ],
  warnings: {
    'makers-figure-wins': {
      en: 'Tighten by the maker’s torque or angle: this is no figure to tighten by.',
      de: 'Nach Moment oder Winkel des Herstellers anziehen: Danach wird nicht angezogen.',
    },
    'may-yield': {
      en: 'At this torque the bolt reaches its proof load, or may reach it.',
      de: 'Bei diesem Moment erreicht die Schraube ihre Prüfkraft oder kann sie erreichen.',
    },
    'factor-wins': {
      en: 'The nut factor that was given counts, not the state of the threads.',
      de: 'Es zählt der gegebene Beiwert, nicht der Zustand der Gewinde.',
    },
  },
  caution: 'general',
  examples: [
    {
      name: 'usual-preload',
      summary: 'A coarse bolt of class 8.8, zinc-plated, and what 100 N.m would do to it',
      given: { thread: 'M12x1.75', strengthClass: '8.8', condition: 'zinc', torque: '100 N.m' },
    },
    {
      name: 'by-factor',
      summary: 'By a nut factor that was measured, to seven tenths of the proof load',
      given: { thread: 'M10', strengthClass: '10.9', nutFactor: '0.15 ±0.02', share: '0.7' },
    },
  ],
  calculate: ({ thread: text, strengthClass, condition, nutFactor, share, torque }) => {
    const thread = readThread(text);
    if (thread === null) return { found: {}, warnings: [], faults: [unreadable('thread')] };
    const diameter = point(thread.diameter);
    const strength = strengthOf(strengthClass, thread.diameter);
    const factor = nutFactor ?? point(NUT_FACTORS[condition ?? 'zinc']);
    const proof = proofLoad(thread, strengthClass);
    const preload = multiplyIntervals(share ?? point(USUAL_SHARE), proof);
    const given =
      torque === null ? null : multiplyIntervals(SCATTER, preloadOf(torque, factor, diameter));
    const below = given === null ? undefined : notAbove(given, proof);
    const ofProof =
      given === null ? undefined : scaleInterval(divideIntervals(given, proof), WHOLE);
    return {
      found: {
        proofStrength: point(strength.proof),
        yieldStrength: point(strength.yield),
        tensileStrength: point(strength.tensile),
        nutFactorTaken: factor,
        proofLoad: proof,
        preload,
        tighteningTorque: tighteningTorque(factor, preload, diameter),
        preloadAtTorque: given ?? undefined,
        shareAtTorque: ofProof,
        staysBelowProof: below,
      },
      warnings: [
        'makers-figure-wins',
        ...(below === undefined || below === 'holds' ? [] : ['may-yield']),
        ...(nutFactor !== null && condition !== null ? ['factor-wins'] : []),
      ],
    };
  },
});
