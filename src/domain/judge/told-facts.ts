/**
 * A vehicle as far as its facts are told: what a question says of it, laid over the record, and
 * the works options that this settles. The works fitted what the fact tells, so it is as good as
 * a record of it.
 */

import type { FittedHere, Occupant, Vehicle, WorksOption } from '../catalogue/catalogue.js';
import { type FactAddress, NOWHERE } from '../check/reading.js';
import type { Configuration } from './configuration.js';
import { seatAt } from './configuration.js';

export function withFacts(vehicle: Vehicle, said: ReadonlyMap<string, string>): Vehicle {
  if (said.size === 0) return vehicle;
  const facts = new Map([...vehicle.facts, ...said]);
  // What the record tells, the question may tell otherwise: it is settled anew.
  const untold = new Map([...vehicle.fitted, ...vehicle.options]);
  const fitted = [...untold].map(
    ([position, here]) => [position, settledHere(here, facts)] as const,
  );
  return { ...vehicle, facts, saidFacts: new Set(said.keys()), fitted: new Map(fitted) };
}

function settledHere(here: FittedHere, facts: ReadonlyMap<string, string>): FittedHere {
  if (!here.hands) return { hands: false, occupant: settled(here.occupant, facts) };
  return { hands: true, left: settled(here.left, facts), right: settled(here.right, facts) };
}

function settled(
  occupant: Occupant | WorksOption,
  facts: ReadonlyMap<string, string>,
): Occupant | WorksOption {
  if (occupant.is !== 'option') return occupant;
  const value = facts.get(occupant.fact);
  if (value === undefined) return occupant;
  // A value that the option does not list says nothing of what stands there.
  return occupant.by.get(value) ?? { is: 'as-found' };
}

/** The fact that tells what stands at a place, where a works option does; else null. */
export function factBehind(address: FactAddress, configuration: Configuration): FactAddress | null {
  const { position, hand, part } = address;
  if (position === null || part !== null) return null;
  const option = seatAt(configuration.judged, position, hand)?.option;
  return option === undefined ? null : { ...NOWHERE, fact: option.fact };
}
