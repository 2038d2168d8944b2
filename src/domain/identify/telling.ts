/**
 * What is told of a vehicle, one thing after the other, and which vehicles each of them leaves:
 * those whose record agrees, and those that record nothing of it.
 */

import type { Vehicle } from '../catalogue/catalogue.js';
import { mayMatchVin } from '../catalogue/vin.js';
import type { VehicleField } from '../explain/vehicle-words.js';
import { type Candidate, type Fold, isBuiltBetween, monthText } from './candidate.js';

/** What a record says of one thing that is told. */
export type Told = 'agrees' | 'not-recorded' | 'contradicts';

export interface Telling {
  readonly field: VehicleField | 'fact';
  /** Null where it is of no fact. */
  readonly fact: string | null;
  readonly of: (candidate: Candidate) => Told;
}

/** What somebody knows; null is not known. */
export interface Known {
  /** 17 capitals and digits; `*` stands for one that nobody could read. */
  readonly vin: string | null;
  readonly make: string | null;
  readonly model: string | null;
  readonly variant: string | null;
  readonly year: number | null;
  readonly built: string | null;
  readonly facts: ReadonlyMap<string, string>;
}

export function tellingsOf(known: Known, fold: Fold): Telling[] {
  const { vin, year, built, facts } = known;
  const names = (['make', 'model', 'variant'] as const).flatMap((field): Telling[] => {
    const told = known[field];
    if (told === null) return [];
    const name = fold(told);
    return [{ field, fact: null, of: (candidate) => compared(candidate[field], name) }];
  });
  return [
    ...(vin === null ? [] : [{ field: 'vin' as const, fact: null, of: ofVin(vin) }]),
    ...names,
    ...(year === null ? [] : [{ field: 'year' as const, fact: null, of: ofYear(year) }]),
    ...(built === null
      ? []
      : [{ field: 'built' as const, fact: null, of: ofMonths(built, built) }]),
    ...[...facts].map(([fact, value]): Telling => {
      const of = ({ vehicle }: Candidate) => compared(vehicle.facts.get(fact) ?? null, value);
      return { field: 'fact', fact, of };
    }),
  ];
}

function compared(recorded: string | null, told: string): Told {
  if (recorded === null) return 'not-recorded';
  return recorded === told ? 'agrees' : 'contradicts';
}

function ofVin(vin: string) {
  return ({ vehicle }: Candidate): Told => {
    if (vehicle.vin.length === 0) return 'not-recorded';
    return vehicle.vin.some((pattern) => mayMatchVin(pattern, vin)) ? 'agrees' : 'contradicts';
  };
}

function ofYear(year: number) {
  return ofMonths(monthText(year, 1), monthText(year, 12));
}

function ofMonths(from: string, until: string) {
  return ({ vehicle }: Candidate): Told => {
    if (!isBuiltBetween(vehicle, from, until)) return 'contradicts';
    return isKnown(vehicle) ? 'agrees' : 'not-recorded';
  };
}

function isKnown({ built }: Vehicle): boolean {
  return built.some((month) => month !== null);
}
