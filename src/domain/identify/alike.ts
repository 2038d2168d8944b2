/**
 * Vehicles that nothing tells apart but their names and when they were built: whatever is asked of
 * one of them, all of them come to the same.
 */

import type { Catalogue, Vehicle } from '../catalogue/catalogue.js';

/**
 * The same for two vehicles only where the same is recorded of both in every field that anything is
 * judged by, with the same evidence, and the same statements name them.
 */
export function alikeKey(vehicle: Vehicle, { statements }: Pick<Catalogue, 'statements'>): string {
  const { id, layout, facts, evidence, fitted, options, adapters } = vehicle;
  const named = statements.flatMap((one) => (one.vehicles.includes(id) ? one.id : []));
  return JSON.stringify(
    [layout.id, facts, evidence, fitted, options, adapters, named],
    (_, value: unknown) => (value instanceof Map ? sorted(value) : value),
  );
}

/** Whichever of its entries was recorded first. */
function sorted(map: ReadonlyMap<string, unknown>): [string, unknown][] {
  return [...map].sort(([a], [b]) => (a < b ? -1 : 1));
}
