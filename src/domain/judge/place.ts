/**
 * What is asked of places themselves: the right role and hand, nothing missing that a layout
 * needs, one piece at each place, and a mating for every face that needs one.
 */

import type { Part, Position } from '../catalogue/catalogue.js';
import { type Hand, NOWHERE } from '../check/reading.js';
import type { Outcome } from '../check/state.js';
import { type Configuration, handsOf, partAt, seatAt } from './configuration.js';
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
  part: Part | null,
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
    part: part?.id ?? null,
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
    found.push(place(configuration, position, hand, 'wrong-role', part));
  }
  if (hand !== null && part.hand !== null && part.hand !== hand) {
    found.push(place(configuration, position, hand, 'wrong-hand', part));
  }
  if (part.spans?.[0] === position.id) {
    for (const other of part.spans) {
      if (!configuration.layout.positions.has(other)) {
        found.push(place(configuration, position, hand, 'no-place-to-span', part));
        continue;
      }
      const there = partAt(configuration, seatAt(configuration.judged, other, null));
      if (there?.id === part.id) continue;
      found.push(place(configuration, position, hand, 'span-occupied', part));
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
  const { layout, ignorePresent } = configuration;
  if (layout.unmated === 'ignore' || !isFirstPlace(part, position)) return [];
  const used = usedFaces(configuration, part, position);
  const found: FaceConstraint[] = [];
  for (const face of part.faces.values()) {
    if (face.isAbsent || face.isOptional || used.has(face.name)) continue;
    const standing = standingOf(configuration, { ...NO_SCOPE, positions: [position.id] }, hand);
    const computed: Outcome = 'open';
    const address = {
      ...NOWHERE,
      position: position.id,
      hand,
      part: part.id,
      interface: face.name,
    };
    found.push({
      form: 'face',
      id: `${position.id}.${face.name}`,
      hand,
      positions: [position.id],
      state: stateOf(computed, standing, { ignorePresent, isAsked: false }),
      computed,
      severity: 'must',
      code: 'no-mating-for-interface',
      basis: null,
      checks: [],
      missing: [address],
      part: part.id,
      interface: face.name,
    });
  }
  return found;
}

/** A part that spans positions is looked at once. */
function isFirstPlace(part: Part, position: Position): boolean {
  return part.spans === null || part.spans[0] === position.id;
}

function usedFaces(configuration: Configuration, part: Part, position: Position): Set<string> {
  const places = part.spans ?? [position.id];
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
  const used = usedFaces(configuration, part, position);
  return [...part.faces.values()]
    .filter((face) => face.isOptional && !used.has(face.name))
    .map(({ name }) => name);
}
