/**
 * The least that is added below a node by a result that changes none of the sets of places that
 * are passed over. Of each border one case has to be true, and all of them together: what keeps
 * clear of one set may be another. So the cases are tried one border after the other, the least
 * bound first, until there is no border left.
 */

import type { Bound } from './bound.js';
import type { Limit } from './limits.js';
import type { Border } from './passed-set.js';
import { Queue } from './queue.js';

/** So many bounds are computed at the most; what is the least by then is a bound too. */
const mostLooks = 240;

/** Some borders have a case chosen, and the next one has cases that have not been tried. */
interface Trial {
  readonly least: number;
  /** How many borders are settled. */
  readonly settled: number;
  readonly limits: readonly Limit[];
  readonly cases: Generator<Limit[], undefined> | null;
  readonly serial: number;
}

export interface Apart {
  /** Infinity where no such result is below. */
  readonly least: number;
  /** How many bounds have been computed for it. */
  readonly looks: number;
}

/** At least `enough`, which is known already. */
export function leastApart(
  borders: readonly Border[],
  decided: Int32Array,
  bound: Bound,
  enough: number,
): Apart {
  const below = borders.filter((border) => border.isBelow(decided));
  const queue = new Queue<Trial>(compare);
  let serial = 0;
  queue.push({ least: enough, settled: 0, limits: [], cases: null, serial });
  for (let looks = 0; ; ) {
    const trial = queue.pop();
    if (trial === undefined) return { least: Infinity, looks };
    let { settled } = trial;
    while (below[settled]?.isLeftBy(trial.limits)) settled += 1;
    const border = below[settled];
    if (border === undefined || looks >= mostLooks) return { least: trial.least, looks };
    const cases = trial.cases ?? border.cases(decided);
    const { value: chosen } = cases.next();
    if (chosen === undefined) continue;
    queue.push({ ...trial, settled, cases });
    const limits = both(trial.limits, chosen);
    looks += 1;
    const least = Math.max(trial.least, bound.of(decided, limits));
    serial += 1;
    if (least < Infinity) queue.push({ least, settled: settled + 1, limits, cases: null, serial });
  }
}

/** What is allowed by both. */
function both(some: readonly Limit[], more: readonly Limit[]): Limit[] {
  const limits = [...some];
  for (const limit of more) {
    const index = limits.findIndex(({ variable }) => variable === limit.variable);
    const known = limits[index];
    if (known === undefined) {
      limits.push(limit);
      continue;
    }
    const allowed = known.allowed.map((one, value) => one & (limit.allowed[value] ?? 0));
    limits[index] = { ...known, allowed, worse: [...known.worse, ...limit.worse] };
  }
  return limits;
}

function compare(one: Trial, other: Trial): number {
  if (one.least !== other.least) return one.least < other.least ? -1 : 1;
  return other.settled - one.settled || one.serial - other.serial;
}
