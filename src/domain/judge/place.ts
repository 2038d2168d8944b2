/**
 * What is asked of places themselves: the right role and hand, nothing missing that a layout
 * needs, one piece at each place, and a mating for every face that needs one. What nobody
 * identified out of a vehicle that is taken apart may need all that it met something with there.
 */

import type { Part, Position } from '../catalogue/catalogue.js';
import type { DonorArticle } from '../catalogue/donor-article.js';
import { type Hand, NOWHERE } from '../check/reading.js';
import type { Outcome } from '../check/state.js';
import {
  asBuilt,
  type Configuration,
  donorArticleAt,
  handsOf,
  partAt,
  seatAt,
} from './configuration.js';
import type { FaceConstraint, PlaceConstraint } from './constraint.js';
import { NO_SCOPE, standingOf, stateOf } from './standing.js';

export function judgePlaces(
  configuration: Configuration,
  positions: readonly Position[],
): (PlaceConstraint | FaceConstraint)[] {
  const found: (PlaceConstraint | FaceConstraint)[] = [];
  for (const position of positions) {
    for (const hand of handsOf(position)) {
      const seat = seatAt(configuration.judged, position.id, hand);
      const part = partAt(configuration, seat);
      if (seat?.occupant.is === 'empty')
        found.push(...judgeEmptySeat(configuration, position, hand));
      const taken = donorArticleAt(configuration, seat);
      if (taken !== null) found.push(...judgeTaken(configuration, position, taken, hand));
      if (part === null) continue;
      found.push(...judgeSeat(configuration, position, part, hand));
      found.push(...judgeFaces(configuration, position, part, hand));
    }
  }
  return found;
}

function place(
  configuration: Configuration,
  position: Position,
  hand: Hand | null,
  code: string,
  part: string | null,
): PlaceConstraint {
  const computed: Outcome = 'fails';
  const standing = standingOf(configuration, { ...NO_SCOPE, positions: [position.id] }, hand);
  const { ignorePresent } = configuration;
  return {
    form: 'place',
    id: hand === null ? position.id : `${position.id}:${hand}`,
    hand,
    positions: [position.id],
    state: stateOf(computed, standing, { ignorePresent, isAsked: false }),
    computed,
    severity: 'must',
    code,
    basis: null,
    checks: [],
    missing: [],
    part,
  };
}

/** A place that the layout needs may be empty only where it is empty already. */
function judgeEmptySeat(
  configuration: Configuration,
  position: Position,
  hand: Hand | null,
): PlaceConstraint[] {
  if (position.isOptional) return [];
  const now = seatAt(configuration.present, position.id, hand)?.occupant;
  if (now?.is === 'empty') return [];
  return [place(configuration, position, hand, 'needed-place-empty', null)];
}

function judgeSeat(
  configuration: Configuration,
  position: Position,
  part: Part,
  hand: Hand | null,
): PlaceConstraint[] {
  const found: PlaceConstraint[] = [];
  if (!part.roles.some((role) => position.roles.includes(role))) {
    found.push(place(configuration, position, hand, 'wrong-role', part.id));
  }
  if (hand !== null && part.hand !== null && part.hand !== hand) {
    found.push(place(configuration, position, hand, 'wrong-hand', part.id));
  }
  if (part.spans?.[0] === position.id) {
    for (const other of part.spans) {
      if (!configuration.layout.positions.has(other)) {
        found.push(place(configuration, position, hand, 'no-place-to-span', part.id));
        continue;
      }
      const there = partAt(configuration, seatAt(configuration.judged, other, null));
      if (there?.id === part.id) continue;
      found.push(place(configuration, position, hand, 'span-occupied', part.id));
    }
  }
  return found;
}

/** A needed face on no mating is open: what it needs is nowhere in this layout. */
function judgeFaces(
  configuration: Configuration,
  position: Position,
  part: Part,
  hand: Hand | null,
): FaceConstraint[] {
  const { layout } = configuration;
  if (layout.unmated === 'ignore' || !isFirstPlace(part, position)) return [];
  const used = usedFaces(configuration, part.spans ?? [position.id]);
  return [...part.faces.values()]
    .filter((face) => !face.isAbsent && !face.isOptional && !used.has(face.name))
    .map(({ name }) => unmated(configuration, position, hand, { part: part.id, interface: name }));
}

function unmated(
  configuration: Configuration,
  position: Position,
  hand: Hand | null,
  face: { readonly part: string; readonly interface: string },
): FaceConstraint {
  const { ignorePresent } = configuration;
  const standing = standingOf(configuration, { ...NO_SCOPE, positions: [position.id] }, hand);
  const computed: Outcome = 'open';
  return {
    form: 'face',
    id: `${position.id}.${face.interface}`,
    hand,
    positions: [position.id],
    state: stateOf(computed, standing, { ignorePresent, isAsked: false }),
    computed,
    severity: 'must',
    code: 'no-mating-for-interface',
    basis: null,
    checks: [],
    missing: [{ ...NOWHERE, position: position.id, hand, ...face }],
    ...face,
  };
}

function judgeTaken(
  configuration: Configuration,
  position: Position,
  taken: DonorArticle,
  hand: Hand | null,
): (PlaceConstraint | FaceConstraint)[] {
  const { id, position: from, hand: own } = taken;
  const found: (PlaceConstraint | FaceConstraint)[] = [];
  if (!from.roles.some((role) => position.roles.includes(role))) {
    found.push(place(configuration, position, hand, 'wrong-role', id));
  }
  if (hand !== null && own !== null && own !== hand) {
    found.push(place(configuration, position, hand, 'wrong-hand', id));
  }
  return [...found, ...judgeMet(configuration, position, taken, hand)];
}

/** A face with which it met something on its vehicle is one that it has, and may need. */
function judgeMet(
  configuration: Configuration,
  position: Position,
  { id: part, vehicle, position: from }: DonorArticle,
  hand: Hand | null,
): FaceConstraint[] {
  if (configuration.layout.unmated === 'ignore') return [];
  const used = usedFaces(configuration, [position.id]);
  const built = asBuilt(vehicle);
  const met = [...vehicle.layout.matings.values()].flatMap(({ ends }) =>
    ends.flatMap((end, index) => {
      const other = ends[1 - index];
      if (end.position !== from.id || other === undefined || used.has(end.interface)) return [];
      const beside = vehicle.layout.positions.get(other.position);
      const isMet = (beside === undefined ? [] : handsOf(beside)).some(
        (one) => seatAt(built, other.position, one)?.occupant.is !== 'empty',
      );
      return isMet ? [end.interface] : [];
    }),
  );
  return [...new Set(met)].map((face) =>
    unmated(configuration, position, hand, { part, interface: face }),
  );
}

/** A part that spans positions is looked at once. */
function isFirstPlace(part: Part, position: Position): boolean {
  return part.spans === null || part.spans[0] === position.id;
}

function usedFaces(configuration: Configuration, places: readonly string[]): Set<string> {
  const used = new Set<string>();
  for (const { ends } of configuration.layout.matings.values()) {
    for (const end of ends) if (places.includes(end.position)) used.add(end.interface);
  }
  return used;
}

/** The optional faces of changed parts that no mating of the layout serves, by part. */
export function unmatedOptionalFaces(
  configuration: Configuration,
  part: Part,
  position: Position,
): string[] {
  const used = usedFaces(configuration, part.spans ?? [position.id]);
  return [...part.faces.values()]
    .filter((face) => face.isOptional && !used.has(face.name))
    .map(({ name }) => name);
}
