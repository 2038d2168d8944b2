/**
 * The facts that have a say about a vehicle: those recorded of it, those that tell what the works
 * fitted, and those that the checks of its layout and the rules for it read.
 */

import { termsOfCondition, termsWithin } from '../check/check.js';
import { referencesOf } from '../check/term.js';
import type { Catalogue, Fact, FittedHere, Occupant, Vehicle, WorksOption } from './catalogue.js';

/** In the order of the catalogue. */
export function factsAbout(vehicle: Vehicle, catalogue: Catalogue): Fact[] {
  const { layout, options } = vehicle;
  const rules = catalogue.rules.get(layout.id) ?? [];
  const conditions = rules
    .flatMap(({ when, needs, excludes }) => [when, needs, excludes])
    .filter((condition) => condition !== null);
  const terms = [...layout.checks.flatMap(termsWithin), ...conditions.flatMap(termsOfCondition)];
  const named = new Set([
    ...vehicle.facts.keys(),
    ...[...options.values()].flatMap(optionsHere).map(({ fact }) => fact),
    ...terms.flatMap(referencesOf).flatMap((one) => (one.of === 'fact' ? [one.fact] : [])),
  ]);
  return [...catalogue.facts.values()].filter(({ id }) => named.has(id));
}

/** The positions at which a fact tells what the works fitted, in the order of the layout. */
export function positionsToldBy(fact: string, { layout, options }: Vehicle): string[] {
  return [...layout.positions.keys()].filter((id) => {
    const here = options.get(id);
    return here !== undefined && optionsHere(here).some((option) => option.fact === fact);
  });
}

function optionsHere(here: FittedHere): WorksOption[] {
  const occupants = here.hands ? [here.left, here.right] : [here.occupant];
  return occupants.filter(isOption);
}

export function isOption(occupant: Occupant | WorksOption): occupant is WorksOption {
  return occupant.is === 'option';
}
