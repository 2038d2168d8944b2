/**
 * Figures of how a vehicle drives, as answers show them: a name and a value in words.
 */

import type { Outcome } from '../domain/check/state.js';
import {
  type Compared,
  changeOf,
  compared,
  type Figure,
  figure,
} from '../domain/driveline/figure.js';
import { FIGURE_WORDS } from '../domain/driveline/figure-words.js';
import { asItStands, figuresBesidesLoads } from '../domain/driveline/figures.js';
import { reserveCode } from '../domain/driveline/load-figures.js';
import type { ShownValue } from '../domain/explain/reason.js';
import { spokenFor } from '../domain/explain/words.js';
import type { Route } from '../domain/kit/route.js';
import { point } from '../domain/quantity/interval.js';
import { computed } from './computed.js';
import type { Speaker } from './speaker.js';

export interface FigureView {
  /** Null where it is not known. */
  value: ShownValue | null;
  /** Whether it is within its limit; null where it has none. */
  outcome: Outcome | null;
}

/** A figure of one change. */
export interface ChangedFigureView {
  figure: string;
  name: string;
  before: FigureView | null;
  after: FigureView | null;
}

/** How a route drives, in short: whether the axles are in step, and what it makes of the rest. */
export interface RouteDrivelineView {
  loops: ChangedFigureView[];
  better: ChangedFigureView[];
  worse: ChangedFigureView[];
}

export function routeDriveline({ judgement, loads }: Route, speaker: Speaker): RouteDrivelineView {
  const { configuration } = judgement;
  const stands = figuresBesidesLoads(asItStands(configuration));
  const drives = figuresBesidesLoads(configuration);
  const reserves = loads.map(({ check, position, before, after, dimension }): Compared => {
    const what = { code: reserveCode(dimension), of: position } as const;
    const common = { section: 'loads', key: check, what, told: 'times', aim: 'more' } as const;
    const [old, fresh] = [before, after].map((margin) =>
      figure({ ...common, value: margin === null ? null : point(margin) }),
    );
    return { before: old ?? null, after: fresh ?? null };
  });
  const rows = [...compared(stands, drives), ...reserves];
  const view = (row: Compared): ChangedFigureView[] => {
    const one = row.after ?? row.before;
    if (one === null) return [];
    const [before, after] = [row.before, row.after].map((each) => figureView(each, speaker));
    const views = { before: before ?? null, after: after ?? null };
    return [{ figure: one.key, name: figureName(one, speaker), ...views }];
  };
  return {
    loops: rows.filter(({ after }) => after?.section === 'loops').flatMap(view),
    better: rows.filter((row) => changeOf(row) === 'better').flatMap(view),
    worse: rows.filter((row) => changeOf(row) === 'worse').flatMap(view),
  };
}

export function figureName({ what }: Figure, speaker: Speaker): string {
  const { code, of, gear = 0, use = 'road' } = what;
  const words = FIGURE_WORDS[spokenFor(speaker.lang)];
  return words.figures[code]({ of: of === null ? '' : speaker.placeName(of), gear, use });
}

export function figureView(figure: Figure | null, speaker: Speaker): FigureView | null {
  if (figure === null) return null;
  const { value, dimension, told, outcome } = figure;
  if (value === null) return { value: null, outcome };
  if (told === 'times') return { value: speaker.values.share(value, 'ratio'), outcome };
  const percent = told === 'percent';
  return { value: computed(value, { dimension, percent }, speaker.values), outcome };
}
