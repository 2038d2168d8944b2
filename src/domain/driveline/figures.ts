/**
 * How a vehicle drives and what its driveline bears, figure by figure, as it stands and after a
 * change. Which terms say so, the layout declares; what comes of them, the formulas of this folder.
 * A figure that wants something that nobody recorded has no value, and says what is missing.
 */

import type { Configuration } from '../judge/configuration.js';
import type { Interval } from '../quantity/interval.js';
import { brakeFigures } from './brake-figures.js';
import type { Bench, Figure } from './figure.js';
import { gearFigures } from './gear-figures.js';
import { jointFigures } from './joint-figures.js';
import { loadFigures } from './load-figures.js';
import { loopFigures } from './loop-figures.js';
import { shaftFigures } from './shaft-figures.js';
import { TermReader } from './term-reader.js';
import { wheelFigures } from './wheel-figures.js';

const ALL = [
  gearFigures,
  loopFigures,
  loadFigures,
  shaftFigures,
  jointFigures,
  brakeFigures,
  wheelFigures,
];

/** What costs least to know; the loads of a route are known besides. */
const BESIDES_LOADS = ALL.filter((figures) => figures !== loadFigures);

export interface FigureOptions {
  readonly grip: Interval | null;
}

/** The figures of a configuration as it is judged. */
export function figuresOf(configuration: Configuration, { grip }: FigureOptions): Figure[] {
  const bench = benchOf(configuration, grip);
  return ALL.flatMap((figures) => figures(bench));
}

/** The same without loads and without what follows from them. */
export function figuresBesidesLoads(configuration: Configuration): Figure[] {
  const bench = benchOf(configuration, null);
  return BESIDES_LOADS.flatMap((figures) => figures(bench));
}

function benchOf(configuration: Configuration, grip: Interval | null): Bench {
  const { layout, judged } = configuration;
  const reader = new TermReader(configuration, judged);
  return { configuration, layout, driveline: layout.driveline, reader, grip };
}

/** A configuration as it stood before: what is judged is what is there. */
export function asItStands(configuration: Configuration): Configuration {
  return { ...configuration, judged: configuration.present };
}
