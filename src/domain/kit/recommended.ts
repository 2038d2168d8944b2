/**
 * What rules hold worth having beside a route: lines that no total counts.
 */

import type { Recommendation } from '../catalogue/trade.js';
import { ONE, type Rational } from '../quantity/rational.js';
import type { Line } from './basket.js';
import { quantityOf, speaks } from './billing.js';
import { partsIn } from './candidates.js';
import { STATE } from './core/problem.js';
import type { Candidate } from './finder.js';
import type { Solved } from './kit-problem.js';

export interface Recommended {
  readonly line: Line;
  /** The rule that says so. */
  readonly rule: string;
}

/** Parts that are recommended and no part of the route already. */
export function recommendedLines(solved: Solved, candidate: Candidate): Recommended[] {
  const { problem } = solved;
  const { values, basket } = candidate;
  const { scene, priceList } = problem;
  const { layout } = scene.question.vehicle;
  const variables = values.map((_, variable) => variable);
  const configuration = scene.configuration(variables, problem.sceneValues(values));
  const bill = problem.billing.bill(problem.sceneValues(values));
  const lines: Recommended[] = [];
  const unchanged = scene.configuration([], []);
  for (const rule of scene.catalogue.rules.get(layout.id) ?? []) {
    const { recommends } = rule;
    if (recommends === null || !speaks(rule.when, configuration)) continue;
    // What is worth having on the vehicle as it is has nothing to do with the change.
    if (speaks(rule.when, unchanged)) continue;
    const part = recommends.part ?? cheapestFor(solved, candidate, recommends);
    if (part === null || scene.question.avoid.parts.has(part)) continue;
    if (basket.lines.some((line) => line.part === part)) continue;
    const quantity = quantityFor(recommends, configuration);
    const more = { part, quantity, dimension: '1', rule: rule.id } as const;
    for (const line of priceList.beside(bill, [more])) {
      if (lines.some((one) => one.line.key === line.key)) continue;
      lines.push({ line: { ...line, position: recommends.position }, rule: rule.id });
    }
  }
  return lines;
}

function quantityFor(
  { quantity }: Recommendation,
  configuration: Parameters<typeof quantityOf>[1],
): Rational | null {
  return quantity === null ? ONE : quantityOf(quantity, configuration);
}

/**
 * The cheapest part that could stand at the position beside all else of the route; null where the
 * route fills it already, or nothing is known to go there.
 */
function cheapestFor(
  { problem, tables }: Solved,
  { values }: Candidate,
  { position }: Recommendation,
): string | null {
  const { scene } = problem;
  if (position === null) return null;
  const variable = scene.placeVariable(position);
  if (values[variable] !== 0) return null;
  let best: { readonly part: string; readonly least: number } | null = null;
  for (let value = 1; value < (problem.variables[variable]?.size ?? 0); value += 1) {
    const least = problem.prices.atLeast[variable]?.[value] ?? 0;
    if (best !== null && best.least <= least) continue;
    const filled = values.with(variable, value);
    const isSound = problem.relations.every(
      ({ scope }, index) =>
        !scope.includes(variable) || tables.stateAt(index, filled) === STATE.holds,
    );
    const { seats } = scene.seatValue(variable, problem.sceneValues(filled)[variable] ?? 0);
    const [part] = isSound ? partsIn(seats) : [];
    if (part !== undefined) best = { part, least };
  }
  return best?.part ?? null;
}
