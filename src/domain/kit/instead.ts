/**
 * What would do instead of the part of a line: parts alike in everything, and other parts that
 * do as well with all other lines kept.
 */

import type { Line } from './basket.js';
import { partsIn } from './candidates.js';
import { STATE } from './core/problem.js';
import type { Candidate } from './finder.js';
import type { KitProblem, Solved } from './kit-problem.js';
import type { Alternative } from './route.js';

/** So many alternatives are told of one line. */
const MOST_ALTERNATIVES = 10;

export interface Instead {
  readonly substitutes: Map<string, string[]>;
  readonly alternatives: Map<string, Alternative[]>;
}

export function insteadOf(solved: Solved, candidate: Candidate): Instead {
  const { problem } = solved;
  const substitutes = new Map<string, string[]>();
  const alternatives = new Map<string, Alternative[]>();
  for (const [variable, value] of candidate.values.entries()) {
    if (value === 0) continue;
    const line = lineOf(problem, candidate.basket.lines, variable);
    if (line === null) continue;
    const alike = problem.alikeTo(variable, value);
    substitutes.set(
      line.key,
      alike.flatMap((one) => articleOf(problem, variable, one) ?? []),
    );
    alternatives.set(line.key, alternativesFor(solved, candidate, variable));
  }
  return { substitutes, alternatives };
}

/** The line of the goods of a change, where it is one piece or several alike. */
function lineOf({ scene }: KitProblem, lines: readonly Line[], variable: number): Line | null {
  const name = scene.nameOf(variable);
  const isPlace = variable < scene.places.length;
  const own = lines.filter(({ action, position, mating }) =>
    isPlace ? action === 'add' && position === name : action === 'adapter' && mating === name,
  );
  return own[0] ?? null;
}

/** The one article of a value of the scene; null where there are two, or none. */
function articleOf({ scene }: KitProblem, variable: number, value: number): string | null {
  const ids =
    variable < scene.places.length
      ? partsIn(scene.seatValue(variable, value).seats)
      : scene.row(variable, value);
  return ids.length === 1 ? (ids[0] ?? null) : null;
}

/** The cheapest others that hold, or at worst leave open points, beside all that is kept. */
function alternativesFor(
  { problem, tables }: Solved,
  candidate: Candidate,
  variable: number,
): Alternative[] {
  const found: (Alternative & { readonly cost: number })[] = [];
  const size = problem.variables[variable]?.size ?? 0;
  for (let value = 1; value < size; value += 1) {
    if (value === candidate.values[variable]) continue;
    const values = candidate.values.with(variable, value);
    const open = openPoints({ problem, tables }, values, variable, candidate);
    if (open === null) continue;
    const cost = problem.prices.exact(values);
    const part = articleOf(problem, variable, problem.sceneValues(values)[variable] ?? 0);
    if (part === null || !Number.isFinite(cost)) continue;
    const priceDifference = differenceTo(problem, candidate, values);
    found.push({ part, priceDifference, openPoints: open, cost });
  }
  found.sort((a, b) => a.cost - b.cost || (a.part < b.part ? -1 : 1));
  return found.slice(0, MOST_ALTERNATIVES).map(({ part, priceDifference, openPoints: points }) => {
    return { part, priceDifference, openPoints: points };
  });
}

/** How many relations are then open; null where one fails. */
function openPoints(
  { problem, tables }: Solved,
  values: readonly number[],
  variable: number,
  candidate: Candidate,
): number | null {
  let open = candidate.open.length;
  for (const [index, { scope }] of problem.relations.entries()) {
    if (!scope.includes(variable)) continue;
    const state = tables.stateAt(index, values);
    if (state === STATE.fails) return null;
    if (state === STATE.open) open += 1;
    if (candidate.open.includes(index)) open -= 1;
  }
  return open;
}

function differenceTo(
  problem: KitProblem,
  { basket }: Candidate,
  values: readonly number[],
): number | null {
  const other = problem.priceList.basket(problem.billing.bill(problem.sceneValues(values)));
  if (other === null) return null;
  const isKnown = other.totals.unpriced.length === 0 && basket.totals.unpriced.length === 0;
  return isKnown ? other.totals.cost - basket.totals.cost : null;
}
