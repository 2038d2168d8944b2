/**
 * The vehicles of a catalogue in the order of lists, with their names as they are compared: worked
 * out once for each catalogue, and not for each question.
 */

import type { Catalogue, Vehicle } from '../domain/catalogue/catalogue.js';
import { folded } from '../domain/catalogue/folded.js';
import {
  type Candidate,
  candidateOf,
  candidatesFor,
  type Fold,
  type VehicleFilter,
} from '../domain/identify/candidate.js';
import { compareKeys, type SortKey } from './listing.js';
import type { EditionHead } from './ports.js';

export class VehicleDirectory {
  readonly #fold: Fold;
  readonly #sorted: readonly Candidate[];
  /** Without those that others took the place of. */
  readonly #current: readonly Candidate[];

  /** @param fold the form in which names are compared. */
  constructor(vehicles: Iterable<Vehicle>, fold: Fold = folded) {
    this.#fold = fold;
    const keyed = [...vehicles].map((vehicle) => {
      const candidate = candidateOf(vehicle, fold);
      return { candidate, key: keyOf(candidate) };
    });
    keyed.sort((a, b) => compareKeys(a.key, b.key));
    this.#sorted = keyed.map(({ candidate }) => candidate);
    this.#current = this.#sorted.filter(({ vehicle }) => vehicle.replacedBy.length === 0);
  }

  /** Those that what is known may be true of, in the order of their keys. */
  find(filter: VehicleFilter, { isReplacedToo }: { readonly isReplacedToo: boolean }): Candidate[] {
    return candidatesFor(isReplacedToo ? this.#sorted : this.#current, filter, this.#fold);
  }

  /** All that no other took the place of, in that order. */
  get current(): readonly Candidate[] {
    return this.#current;
  }

  get fold(): Fold {
    return this.#fold;
  }

  /** These vehicles in the same order. */
  among(vehicles: ReadonlySet<Vehicle>): readonly Candidate[] {
    return this.#sorted.filter(({ vehicle }) => vehicles.has(vehicle));
  }
}

/** By make, model, first month, last month and id; what is not known comes first. */
export function keyOf({ make, model, vehicle }: Candidate): SortKey {
  const [from, until] = vehicle.built;
  return [make, model, from ?? '', until ?? '', vehicle.id];
}

/** The year in which an edition was published: no vehicle that it knows was built after it. */
export function latestYearOf({ publishedAt }: EditionHead): number {
  return Number(publishedAt.slice(0, 4));
}

const KNOWN = new WeakMap<Catalogue, VehicleDirectory>();

/** The directory of a catalogue, which is made when it is first asked for. */
export function vehicleDirectory(catalogue: Catalogue): VehicleDirectory {
  const known = KNOWN.get(catalogue);
  if (known !== undefined) return known;
  const directory = new VehicleDirectory(catalogue.vehicles.values());
  KNOWN.set(catalogue, directory);
  return directory;
}
