/**
 * The vehicles that are meant by what somebody knows of theirs. What is not recorded of a vehicle
 * could be anything, so it never leaves one out: an answer that is true of somebody's vehicle
 * always leads to its record.
 */

import type { Vehicle } from '../catalogue/catalogue.js';

/** So many of those that may be meant are told one by one. */
export const MOST_CANDIDATES = 50;

/** Of so many that may be meant each is judged by itself. */
export const MOST_JUDGED = 200;

/** For so many of those that something tells apart changes are searched for. */
export const MOST_SOLVED = 20;

/** A vehicle as it is looked for: its names in the form in which they are compared. */
export interface Candidate {
  readonly vehicle: Vehicle;
  readonly make: string;
  readonly model: string;
  readonly variant: string | null;
  /** All three, for words that may stand anywhere in them. */
  readonly names: string;
}

/** What is known of a vehicle; null is not known. Names are as they were typed. */
export interface VehicleFilter {
  readonly make: string | null;
  readonly model: string | null;
  readonly variant: string | null;
  /** Words that all stand somewhere in the names. */
  readonly text: string | null;
  /** A year in some month of which it was built. */
  readonly year: number | null;
  /** The month in which it was built, such as `2004-06`. */
  readonly built: string | null;
  /** Id of its layout. */
  readonly layout: string | null;
  /** Values of facts. */
  readonly facts: ReadonlyMap<string, string>;
}

export type Fold = (text: string) => string;

export function candidateOf(vehicle: Vehicle, fold: Fold): Candidate {
  const make = fold(vehicle.make);
  const model = fold(vehicle.model);
  const variant = vehicle.variant === null ? null : fold(vehicle.variant);
  return { vehicle, make, model, variant, names: `${make} ${model} ${variant ?? ''}` };
}

/** Those that what is known may be true of, in the order in which they are given. */
export function candidatesFor(
  candidates: readonly Candidate[],
  filter: VehicleFilter,
  fold: Fold,
): Candidate[] {
  const { year, built, layout, facts } = filter;
  const [make, model, variant] = [filter.make, filter.model, filter.variant].map((name) =>
    name === null ? null : fold(name),
  );
  const words = filter.text === null ? [] : fold(filter.text).split(/\s+/u);
  const told = [...facts];
  return candidates.filter((one) => {
    const { vehicle } = one;
    return (
      (make === null || one.make === make) &&
      (model === null || one.model === model) &&
      (variant === null || one.variant === null || one.variant === variant) &&
      (layout === null || vehicle.layout.id === layout) &&
      (year === null || isBuiltIn(vehicle, year)) &&
      (built === null || isBuiltBetween(vehicle, built, built)) &&
      told.every(([fact, value]) => (vehicle.facts.get(fact) ?? value) === value) &&
      words.every((word) => one.names.includes(word))
    );
  });
}

/** Whether it may have been built in some month of the year. */
function isBuiltIn(vehicle: Vehicle, year: number): boolean {
  return isBuiltBetween(vehicle, monthText(year, 1), monthText(year, 12));
}

/** As records have it: `2004-06`. */
export function monthText(year: number, month: number): string {
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}`;
}

/** Months are texts of one length, and compare as such. */
export function isBuiltBetween({ built }: Vehicle, first: string, last: string): boolean {
  const [from, until] = built;
  return (from === null || from <= last) && (until === null || until >= first);
}
