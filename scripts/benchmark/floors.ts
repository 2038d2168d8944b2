/**
 * What the kit benchmark promises, as floors that leave room for noise. They are ratios between
 * solvers in one run on one machine, never times.
 */

import type { ConflictResult } from './conflict-cells.js';
import type { HttpResult } from './http.js';
import type { CellResult } from './optimum-cells.js';
import type { RouteResult } from './route-cells.js';
import type { StreamResult } from './stream.js';

export interface Floor {
  readonly name: string;
  /** What was measured, and where. */
  readonly measured: number;
  readonly where: string;
  readonly floor: number;
  readonly isAtLeast: boolean;
  readonly isKept: boolean;
}

export function floorsOf(
  cells: readonly CellResult[],
  routes: readonly RouteResult[],
  conflicts: readonly ConflictResult[],
): Floor[] {
  const narrow = cells.filter(({ cell }) => ['few', 'rand', 'full'].includes(cell.group));
  const full = narrow.filter(({ cell }) => cell.group === 'full');
  const wide = cells.filter(
    ({ cell }) => cell.name.startsWith('rand') && cell.name.endsWith('+15'),
  );
  return [
    least('HiGHS / own, least of all narrow cells', ratios(narrow, 'HiGHS'), 10),
    mean('YALPS / own, geometric mean of narrow cells', ratios(narrow, 'YALPS'), 3),
    least('YALPS / own, least of all narrow cells', ratios(narrow, 'YALPS'), 1.2),
    least('YALPS / own, least of `full`', ratios(full, 'YALPS'), 5),
    ...growth(narrow),
    least('HiGHS / own, `rand` with 15 joints more', ratios(wide, 'HiGHS'), 1 / 1.5),
    least(
      'any solver / own, least of all cells',
      [...ratios(cells, 'HiGHS'), ...ratios(cells, 'YALPS')],
      1,
    ),
    least('HiGHS with cuts / own, first ten routes', routeRatios(routes), 100),
    least('HiGHS / own, that there is no way', proofRatios(conflicts), 1),
  ].filter((floor) => floor !== null);
}

/** The code of the service around the work itself, against a loop that takes all for good. */
/** A hot question of GraphQL is to come to a quarter at least of what Node alone does. */
export function httpFloors(results: readonly HttpResult[]): Floor[] {
  const hot = results.filter(({ name }) => name === 'GraphQL, the same question');
  const ratios = hot.map(({ name, ratio }): Ratio => [name, ratio]);
  return [least('GraphQL / raw', ratios, 0.25)].filter((one) => one !== null);
}

export function streamFloors(streams: readonly StreamResult[]): Floor[] {
  const ratios = streams.map(({ name, ratio }): Ratio => [name, ratio]);
  return [least('own / plain loop, lines a second', ratios, 0.6)].filter((one) => one !== null);
}

type Ratio = readonly [where: string, ratio: number];

function ratios(cells: readonly CellResult[], opponent: string): Ratio[] {
  return cells.flatMap(({ cell, opponents }) =>
    opponents.flatMap(({ name, ratio }): Ratio[] =>
      name === opponent && Number.isFinite(ratio) ? [[cell.name, ratio]] : [],
    ),
  );
}

function routeRatios(routes: readonly RouteResult[]): Ratio[] {
  return routes.flatMap(({ cell, highs }): Ratio[] =>
    highs === null ? [] : [[cell.name, highs.ratio]],
  );
}

function proofRatios(conflicts: readonly ConflictResult[]): Ratio[] {
  return conflicts.flatMap(({ cell, highs: { proofRatio } }): Ratio[] =>
    Number.isFinite(proofRatio) ? [[cell.name, proofRatio]] : [],
  );
}

function least(name: string, all: readonly Ratio[], floor: number): Floor | null {
  const [first] = all.toSorted(([, a], [, b]) => a - b);
  if (first === undefined) return null;
  const [where, measured] = first;
  return { name, measured, where, floor, isAtLeast: true, isKept: measured >= floor };
}

function mean(name: string, all: readonly Ratio[], floor: number): Floor | null {
  if (all.length === 0) return null;
  const logs = all.reduce((sum, [, ratio]) => sum + Math.log(ratio), 0);
  const measured = Math.exp(logs / all.length);
  const where = `${all.length} cells`;
  return { name, measured, where, floor, isAtLeast: true, isKept: measured >= floor };
}

/** From ten positions to forty, with as many parts each. */
function growth(cells: readonly CellResult[]): Floor[] {
  const medianOf = (name: string) => cells.find(({ cell }) => cell.name === name)?.own.median;
  return [10, 50, 200].flatMap((parts): Floor[] => {
    const small = medianOf(`few n=10 d=${parts}`);
    const large = medianOf(`few n=40 d=${parts}`);
    if (small === undefined || large === undefined) return [];
    const measured = large / small;
    const where = `few d=${parts}`;
    const name = 'own time at n=40 / at n=10';
    return [{ name, measured, where, floor: 6, isAtLeast: false, isKept: measured <= 6 }];
  });
}
