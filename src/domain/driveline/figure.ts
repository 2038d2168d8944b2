/**
 * One figure of how a vehicle drives, and how two of them compare.
 */

import type { Layout } from '../catalogue/catalogue.js';
import type { Driveline } from '../catalogue/driveline.js';
import type { Use } from '../check/coupling.js';
import type { Reading } from '../check/reading.js';
import type { Outcome } from '../check/state.js';
import type { Configuration } from '../judge/configuration.js';
import { absoluteInterval, type Interval, negateInterval } from '../quantity/interval.js';
import { compare, type Rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import type { TermReader, TermValue } from './term-reader.js';

/** What a figure is of; answers list them in this order. */
export const SECTIONS = [
  'gearing',
  'loops',
  'loads',
  'torque',
  'shafts',
  'joints',
  'speedometer',
  'brakes',
  'wheels',
] as const;

export type Section = (typeof SECTIONS)[number];

/** Whether more of it is better, less, or nearer to nothing; null where neither is. */
export type Aim = 'more' | 'less' | 'none' | null;

export interface Figure {
  readonly section: Section;
  /** Of this figure alone, and the same before and after: `gear-3-speed`. */
  readonly key: string;
  readonly what: FigureName;
  readonly dimension: Dimension;
  /** Told as a value of its dimension, in so many per cent, or as so many times something. */
  readonly told: 'value' | 'percent' | 'times';
  /** Null where it is not known, or there is nothing that it could be of. */
  readonly value: Interval | null;
  /** Whether it is within its limit; null where it has none. */
  readonly outcome: Outcome | null;
  readonly aim: Aim;
  readonly missing: readonly Reading[];
}

/** What a figure is called, for a language to say. */
export interface FigureName {
  readonly code: FigureCode;
  /** A position, an axle or a joint, by its id in the layout. */
  readonly of: string | null;
  readonly gear?: number;
  readonly use?: Use;
}

export const FIGURE_CODES = [
  'gear-ratio',
  'gear-speed',
  'gear-step',
  'cruising-speed',
  'speed-spread',
  'axle-mismatch',
  'load-reserve',
  'mass-reserve',
  'speed-reserve',
  'slip-torque',
  'clutch-reserve',
  'greatest-torque',
  'shaft-speed',
  'shaft-limit',
  'joint-angle',
  'joint-irregularity',
  'joint-difference',
  'speedometer-error',
  'front-braking-share',
  'pedal-travel',
  'wheel-inner-reach',
  'wheel-outer-reach',
  'tyre-diameter',
] as const;

export type FigureCode = (typeof FIGURE_CODES)[number];

/** What figures of one arrangement are made of. */
export interface Bench {
  readonly configuration: Configuration;
  readonly driveline: Driveline;
  readonly layout: Layout;
  readonly reader: TermReader;
  /** Friction of tyres on the road, as whoever asks says it; null where nobody did. */
  readonly grip: Interval | null;
}

/** A figure before and after, where either has it. */
export interface Compared {
  readonly before: Figure | null;
  readonly after: Figure | null;
}

/** Figures of both, in the order of the sections, each beside its like. */
export function compared(old: readonly Figure[], fresh: readonly Figure[]): Compared[] {
  const after = new Map(fresh.map((figure) => [figure.key, figure]));
  const rows: Compared[] = old.map((figure) => {
    return { before: figure, after: after.get(figure.key) ?? null };
  });
  // What only the change brings stands behind what comes before it there.
  let place = 0;
  for (const figure of fresh) {
    const known = rows.findIndex((row) => row.before?.key === figure.key);
    if (known === -1) rows.splice(place, 0, { before: null, after: figure });
    place = (known === -1 ? place : known) + 1;
  }
  return SECTIONS.flatMap((section) =>
    rows.filter((row) => (row.before ?? row.after)?.section === section),
  );
}

export type Change = 'better' | 'worse' | null;

/** Whether a change made a figure better or worse; null where nobody can tell. */
export function changeOf({ before: old, after: fresh }: Compared): Change {
  if (old?.value == null || fresh?.value == null || fresh.aim === null) return null;
  const [a, b] = [rank(old), rank(fresh)];
  if (a === null || b === null) return null;
  if (compare(b.low, a.high) > 0) return 'better';
  return compare(b.high, a.low) < 0 ? 'worse' : null;
}

/** The same, so that more of it is better. */
function rank({ value, aim }: Figure): { low: Rational; high: Rational } | null {
  if (value === null) return null;
  const sized = aim === 'none' ? absoluteInterval(value) : value;
  const turned = aim === 'more' ? sized : negateInterval(sized);
  const { low, high } = turned;
  return low === null || high === null ? null : { low, high };
}

type Told = Pick<Figure, 'section' | 'key' | 'what'> & Partial<Figure>;

/** A figure with what is mostly so: a pure number, no limit, and more of it no better than less. */
export function figure(told: Told): Figure {
  return {
    dimension: '1',
    told: 'value',
    value: null,
    outcome: null,
    aim: null,
    missing: [],
    ...told,
  };
}

/** What a formula makes of terms that are all known; else nothing, and what is missing. */
export function known(
  terms: readonly TermValue[],
  formula: (...values: Interval[]) => Interval,
): Pick<Figure, 'value' | 'missing'> {
  const missing = terms.flatMap((one) => one.missing);
  const values = terms.flatMap(({ interval }) => (interval === null ? [] : [interval]));
  return { value: values.length === terms.length ? formula(...values) : null, missing };
}
