/**
 * What could sit in the matings of a vehicle. Value 0 is always what sits there now.
 */

import type { Catalogue, Mating, Part } from '../catalogue/catalogue.js';
import type { Arrangement } from '../judge/configuration.js';
import { hasPlace } from '../judge/fit.js';
import { namesOf } from '../judge/worked-part.js';
import { type PlaceCandidates, partsIn } from './candidates.js';
import type { KitQuestion } from './question.js';

/** A mating with what could sit in it, from its first end to its second. */
export interface AdapterCandidates {
  readonly mating: Mating;
  readonly values: readonly [readonly string[], ...(readonly string[])[]];
}

/** What can sit in a mating; null where it takes no adapters and has none. */
export function adapterCandidates(
  mating: Mating,
  places: readonly PlaceCandidates[],
  question: KitQuestion,
  present: Arrangement,
): AdapterCandidates | null {
  const now = present.adapters.get(mating.id)?.parts ?? [];
  if (mating.adapters === 0 && now.length === 0) return null;
  const rows: (readonly string[])[] = [];
  if (now.length > 0) rows.push([]);
  const fitting = adaptersBetween(mating, places, question);
  let shorter: (readonly string[])[] = [[]];
  for (let length = 1; length <= mating.adapters; length += 1) {
    shorter = shorter.flatMap((row) => fitting.map((id) => [...row, id]));
    rows.push(...shorter);
  }
  const isNow = (row: readonly string[]) => row.join() === now.join();
  return { mating, values: [now, ...rows.filter((row) => !isNow(row))] };
}

const betweenParts = new WeakMap<Catalogue, readonly Part[]>();

/** Parts with two faces that have no place of their own in any layout. */
function adapterParts(catalogue: Catalogue): readonly Part[] {
  let known = betweenParts.get(catalogue);
  if (known === undefined) {
    known = [...catalogue.parts.values()].filter(
      (part) => part.faces.size === 2 && !hasPlace(catalogue, part),
    );
    betweenParts.set(catalogue, known);
  }
  return known;
}

/** Adapters one of whose faces is of a kind that some candidate of either end has. */
function adaptersBetween(
  mating: Mating,
  places: readonly PlaceCandidates[],
  question: KitQuestion,
): string[] {
  const kinds = new Set(
    mating.ends.flatMap((end) => {
      const place = places.find(({ position }) => position.id === end.position);
      return [...(place?.values ?? [])].flatMap(({ seats }) =>
        partsIn(seats).flatMap((id) => {
          const kind = question.catalogue.parts.get(namesOf(id)[0])?.faces.get(end.interface)?.kind;
          return kind == null ? [] : [kind.id];
        }),
      );
    }),
  );
  return adapterParts(question.catalogue)
    .filter((part) => [...part.faces.values()].some(({ kind }) => kinds.has(kind?.id ?? '')))
    .map(({ id }) => id);
}
