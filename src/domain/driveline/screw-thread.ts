/**
 * Metric screw threads by their designation: diameters, stress area, and whether two of them mate.
 *
 * ISO 724 gives the diameters from the basic profile (ISO 68-1) as multiples of the pitch, each
 * from the height of a triangle of 60 degrees; ISO 898-1 the stress area. ISO 261 gives the coarse
 * pitch of a designation without one (`thread-code.ts`). Two threads of one diameter and two
 * pitches start together and strip, which is the unsafe one of the near misses.
 *
 * Left out: tolerances (ISO 965), inch and pipe threads, multiple starts.
 *
 * Length: half of it says in two languages what is taken and given.
 */

import type { Outcome } from '../check/state.js';
import { PI } from '../quantity/enclosure.js';
import {
  type Interval,
  multiplyIntervals,
  point,
  powerInterval,
  scaleInterval,
} from '../quantity/interval.js';
import { equals, multiply, type Rational, rational, sign, subtract } from '../quantity/rational.js';
import { canonicalThread } from '../quantity/thread-code.js';
import { calculation, type GivenFault } from './calculation.js';

/** A single-start metric thread, in mm. */
export interface MetricThread {
  readonly diameter: Rational;
  readonly pitch: Rational;
}

const CANONICAL = /^m(\d+(?:\.\d+)?)x(\d+(?:\.\d+)?)$/;

/** Of a designation such as `M12x1.25` or `M12`; null where it is none, or without a pitch. */
export function readThread(text: string): MetricThread | null {
  const [, diameter, pitch] = CANONICAL.exec(canonicalThread(text)) ?? [];
  if (diameter === undefined || pitch === undefined) return null;
  const thread = { diameter: rational(diameter), pitch: rational(pitch) };
  // A pitch that leaves no core is no thread.
  return sign(thread.pitch) > 0 && sign(minorOf(thread)) > 0 ? thread : null;
}

/** ISO 724, in pitches: three quarters, five quarters and 17/12 of the height of the triangle. */
const PITCH_DIAMETER = rational('0.649519');
const INTERNAL_MINOR = rational('1.082532');
const EXTERNAL_MINOR = rational('1.226869');
/** ISO 898-1, in pitches: half way from the pitch diameter to the minor one of the bolt. */
const STRESS_DIAMETER = rational('0.9382');
const QUARTER = rational('1/4');

function less({ diameter, pitch }: MetricThread, pitches: Rational): Rational {
  return subtract(diameter, multiply(pitch, pitches));
}

function minorOf(thread: MetricThread): Rational {
  return less(thread, EXTERNAL_MINOR);
}

/** In mm: pitch diameter, minor diameter of the nut, minor diameter of the bolt. */
export function threadDiameters(thread: MetricThread) {
  return {
    pitch: less(thread, PITCH_DIAMETER),
    internalMinor: less(thread, INTERNAL_MINOR),
    externalMinor: minorOf(thread),
  };
}

/** The section that carries the load of a bolt, in mm2. */
export function stressArea(thread: MetricThread): Interval {
  const square = powerInterval(point(less(thread, STRESS_DIAMETER)), 2);
  return scaleInterval(multiplyIntervals(PI, square), QUARTER);
}

export type Meeting = 'mates' | 'starts-and-strips' | 'does-not-start';

export function meetingOf(a: MetricThread, b: MetricThread): Meeting {
  if (!equals(a.diameter, b.diameter)) return 'does-not-start';
  return equals(a.pitch, b.pitch) ? 'mates' : 'starts-and-strips';
}

export const screwThread = calculation({
  name: 'screw-thread',
  title: { en: 'Metric screw thread', de: 'Metrisches Gewinde' },
  about: {
    en: 'Which diameters and which stress area has this thread, and does another one mate with it?',
    de: 'Welche Durchmesser, welchen Spannungsquerschnitt hat es, und passt ein anderes?',
  },
  inputs: {
    thread: {
      type: 'text',
      form: 'M12x1.25',
      name: {
        en: 'designation; the coarse pitch where none is given',
        de: 'Bezeichnung; ohne Steigung die des Regelgewindes',
      },
    },
    other: {
      type: 'text',
      optional: true,
      form: 'M12x1.5',
      name: { en: 'thread that it is to mate with', de: 'Gewinde, zu dem es passen soll' },
    },
  },
  outputs: {
    pitch: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'pitch', de: 'Steigung' },
    },
    pitchDiameter: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'pitch diameter', de: 'Flankendurchmesser' },
    },
    internalMinorDiameter: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'minor diameter of the nut', de: 'Kerndurchmesser der Mutter' },
    },
    externalMinorDiameter: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'minor diameter of the bolt', de: 'Kerndurchmesser der Schraube' },
    },
    stressArea: {
      type: 'quantity',
      dimension: 'length^2',
      name: { en: 'stress area', de: 'Spannungsquerschnitt' },
    },
    mates: {
      type: 'outcome',
      needs: ['other'],
      name: { en: 'The two threads mate.', de: 'Die beiden Gewinde passen zusammen.' },
    },
  },
  formulas: [
    'pitchDiameter = diameter - 0.649519 · pitch',
    'internalMinorDiameter = diameter - 1.082532 · pitch',
    'externalMinorDiameter = diameter - 1.226869 · pitch',
    'stressArea = π/4 · (diameter - 0.9382 · pitch)²',
  ],
  assumptions: [
    {
      en: 'Right-hand threads of one start, of the basic profile without tolerances.',
      de: 'Eingängige Rechtsgewinde im Nennprofil, ohne Toleranzen.',
    },
  ],
  validity: [
    {
      en: 'For ISO metric threads; inch and pipe threads of a like size are others.',
      de: 'Für metrische ISO-Gewinde; Zoll- und Rohrgewinde ähnlicher Größe sind andere.',
    },
    {
      en: 'A pitch gauge tells the pitch; two threads that start together may still strip.',
      de: 'Die Steigung sagt die Gewindelehre; was anfasst, kann trotzdem ausreißen.',
    },
  ],
  sources: [
    { title: 'ISO 724', basis: 'read' },
    { title: 'ISO 898-1, stress area', basis: 'read' },
    { title: 'ISO 261, coarse pitches', basis: 'from-memory' },
  ],
  warnings: {
    'starts-and-strips': {
      en: 'One diameter and two pitches: they start together and strip. Never force them.',
      de: 'Ein Durchmesser, zwei Steigungen: Sie fassen an und reißen aus. Nie mit Gewalt.',
    },
  },
  caution: 'general',
  examples: [
    {
      name: 'unsafe-nearly',
      summary: 'A fine thread and its neighbour: they start together and strip',
      given: { thread: 'M12x1.25', other: 'M12x1.5' },
    },
    { name: 'coarse', summary: 'A size alone is its coarse thread', given: { thread: 'M10' } },
  ],
  calculate: ({ thread: text, other }) => {
    const thread = readThread(text);
    const mate = other === null ? null : readThread(other);
    const faults = [
      ...(thread === null ? [unreadable('thread')] : []),
      ...(other !== null && mate === null ? [unreadable('other')] : []),
    ];
    if (thread === null || faults.length > 0) return { found: {}, warnings: [], faults };
    const { pitch, internalMinor, externalMinor } = threadDiameters(thread);
    const meeting = mate === null ? null : meetingOf(thread, mate);
    return {
      found: {
        pitch: point(thread.pitch),
        pitchDiameter: point(pitch),
        internalMinorDiameter: point(internalMinor),
        externalMinorDiameter: point(externalMinor),
        stressArea: stressArea(thread),
        mates: meeting === null ? undefined : outcomeOf(meeting),
      },
      warnings: meeting === 'starts-and-strips' ? ['starts-and-strips'] : [],
    };
  },
});

function outcomeOf(meeting: Meeting): Outcome {
  return meeting === 'mates' ? 'holds' : 'fails';
}

/** What to say of a text that is no metric thread. */
export function unreadable(input: string): GivenFault {
  return {
    input,
    text: {
      en: 'It is no metric thread such as M12x1.25, or M12 for the coarse one.',
      de: 'Das ist kein metrisches Gewinde wie M12x1,25 oder M12 für das Regelgewinde.',
    },
  };
}
