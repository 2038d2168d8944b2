/**
 * The facts that anything of a vehicle hangs on: a check, a rule or a ruleset reads them, or they
 * are not told yet and say what the works fitted. To tell another fact leaves what the vehicle
 * comes to as it is.
 */

import type { Catalogue, FittedHere, Layout, Vehicle } from '../catalogue/catalogue.js';

export function factsRead(vehicles: readonly Vehicle[], catalogue: Catalogue): Set<string> {
  const layouts = new Set(vehicles.map(({ layout }) => layout));
  const read = new Set([...layouts].flatMap((layout) => [...readIn(catalogue, layout)]));
  for (const { fitted } of vehicles) {
    for (const fact of [...fitted.values()].flatMap(optionFacts)) read.add(fact);
  }
  return read;
}

function optionFacts(here: FittedHere): string[] {
  const seats = here.hands ? [here.left, here.right] : [here.occupant];
  return seats.flatMap((seat) => (seat.is === 'option' ? [seat.fact] : []));
}

const known = new WeakMap<Catalogue, Map<string, ReadonlySet<string>>>();

function readIn(catalogue: Catalogue, { id, checks }: Layout): ReadonlySet<string> {
  const layouts = known.get(catalogue) ?? new Map<string, ReadonlySet<string>>();
  known.set(catalogue, layouts);
  const before = layouts.get(id);
  if (before !== undefined) return before;
  const read = new Set<string>();
  const seen = new Set<object>();
  for (const one of [checks, catalogue.rules.get(id), catalogue.rulesets]) note(one, read, seen);
  layouts.set(id, read);
  return read;
}

/** Every reference to a fact in terms and conditions, however deep. */
function note(value: unknown, read: Set<string>, seen: Set<object>): void {
  if (typeof value !== 'object' || value === null || seen.has(value)) return;
  seen.add(value);
  if ('of' in value && value.of === 'fact' && 'fact' in value) read.add(String(value.fact));
  const inside = value instanceof Map ? value.values() : Object.values(value);
  for (const one of inside) note(one, read, seen);
}
