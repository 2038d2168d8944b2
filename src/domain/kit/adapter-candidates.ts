/**
 * What could sit in the matings of a vehicle. Value 0 is always what sits there now.
 */

import type { Catalogue, Mating, Part } from '../catalogue/catalogue.js';
import type { Arrangement } from '../judge/configuration.js';
import { type BuiltPairs, builtPairs, namesInPair } from '../judge/evidence.js';
import { hasPlace } from '../judge/fit.js';
import { namesOf } from '../judge/worked-part.js';
import { askedMatings, ruledMatings } from './asked-adapters.js';
import { occupantOf, type PlaceCandidates, partsIn } from './candidates.js';
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
  const isOpenToAll =
    isAskedFor(mating, question) && mating.ends.some((end) => mayBeFaceless(end, places, question));
  const fitting = isOpenToAll
    ? adapterParts(question.catalogue).map(({ id }) => id)
    : adaptersBetween(mating, places, question, now);
  let shorter: (readonly string[])[] = [[]];
  for (let length = 1; length <= mating.adapters; length += 1) {
    shorter = shorter.flatMap((row) => fitting.map((id) => [...row, id]));
    rows.push(...shorter);
  }
  const isNow = (row: readonly string[]) => row.join() === now.join();
  return { mating, values: [now, ...rows.filter((row) => !isNow(row))] };
}

/** Somebody asks what sits there, or denies that something fits as it is. */
function isAskedFor({ id, ends }: Mating, question: KitQuestion): boolean {
  const { catalogue, vehicle } = question;
  const isDenied = catalogue.statements.some(
    ({ verdict, vehicles, position }) =>
      verdict === 'does-not-fit' &&
      vehicles.includes(vehicle.id) &&
      ends.some((end) => end.position === position),
  );
  return isDenied || ruledMatings(question).has(id) || askedMatings(question).has(id);
}

/** Whether nothing may stand at an end, or something of which no face is recorded there. */
function mayBeFaceless(
  end: Mating['ends'][number],
  places: readonly PlaceCandidates[],
  { catalogue }: KitQuestion,
): boolean {
  const place = places.find(({ position }) => position.id === end.position);
  return (place?.values ?? []).some(({ seats }) => {
    const hands = seats.hands ? (['left', 'right'] as const) : [null];
    return hands.some((hand) => {
      const occupant = occupantOf(seats, hand);
      if (occupant.is !== 'part') return true;
      const face = catalogue.parts.get(namesOf(occupant.part)[0])?.faces.get(end.interface);
      return face === undefined || face.isAbsent;
    });
  });
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

/**
 * Adapters one of whose faces is of a kind that some candidate of either end has, or that some
 * vehicle was built with between two such faces, whatever the records say of them; and those that
 * sit there now.
 */
function adaptersBetween(
  mating: Mating,
  places: readonly PlaceCandidates[],
  question: KitQuestion,
  now: readonly string[],
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
  // In a longer row, one in the middle meets the others alone.
  for (let inner = 2; inner < mating.adapters; inner += 1) {
    for (const { faces } of adapterParts(question.catalogue).filter((part) =>
      reaches(part, kinds),
    )) {
      for (const { kind } of faces.values()) if (kind !== null) kinds.add(kind.id);
    }
  }
  const built = builtBetween(question).get(betweenKey(mating.ends.map((end) => end.interface)));
  return adapterParts(question.catalogue)
    .filter((part) => now.includes(part.id) || built?.has(part.id) === true || reaches(part, kinds))
    .map(({ id }) => id);
}

function reaches({ faces }: Part, kinds: ReadonlySet<string>): boolean {
  return [...faces.values()].some(({ kind }) => kind !== null && kinds.has(kind.id));
}

const builtByFaces = new WeakMap<BuiltPairs, ReadonlyMap<string, ReadonlySet<string>>>();

/** The adapters that vehicles were built with, by the names of the two faces at the ends. */
function builtBetween({ pairsOf }: KitQuestion): ReadonlyMap<string, ReadonlySet<string>> {
  const pairs = builtPairs(pairsOf);
  let known = builtByFaces.get(pairs);
  if (known === undefined) {
    const found = new Map<string, Set<string>>();
    for (const pair of pairs.keys()) {
      const { ends, adapters } = namesInPair(pair);
      if (adapters.length === 0) continue;
      const key = betweenKey(ends.map((end) => end.interface));
      found.set(key, new Set([...(found.get(key) ?? []), ...adapters]));
    }
    known = found;
    builtByFaces.set(pairs, known);
  }
  return known;
}

/** The same whichever end comes first. */
function betweenKey(interfaces: readonly string[]): string {
  return [...interfaces].sort().join('|');
}
