/**
 * What a joint comes to by the compiled index alone: a look at a table for each pair of faces,
 * where the judge would judge every check of the kind.
 *
 * It answers only where all of it stands in the records of the edition: two recorded faces, and
 * between them adapters with recorded faces. Everything else is left to the judge.
 */

import type { Mating } from '../catalogue/catalogue.js';
import type { Hand } from '../check/reading.js';
import { allOf, anyOf, type Outcome } from '../check/state.js';
import type { CompiledIndex } from '../index/compiled-index.js';
import { sameOccupant } from '../judge/configuration.js';
import { builtPairs, pairKey } from '../judge/evidence.js';
import { weighBuilt } from '../judge/judge-mating.js';
import { occupantOf, optionsAt, type SeatValue } from './candidates.js';
import type { Scene } from './scene.js';

/** What stands at the two ends, and the values of the variables behind them. */
export interface Met {
  readonly left: SeatValue;
  readonly right: SeatValue;
  readonly isLeftNow: boolean;
  readonly isRightNow: boolean;
  readonly row: readonly string[];
  readonly isRowNow: boolean;
}

/** Null where the index does not know. */
export function metByIndex(scene: Scene, mating: Mating, met: Met): Outcome | null {
  const { index } = scene.question;
  if (index === undefined) return null;
  const outcomes: Outcome[] = [];
  for (const hand of mating.isHanded ? (['left', 'right'] as const) : [null]) {
    const outcome = metFor(scene, index, mating, met, hand);
    if (outcome === null) return null;
    outcomes.push(outcome);
  }
  return allOf(outcomes);
}

function metFor(
  scene: Scene,
  index: CompiledIndex,
  mating: Mating,
  met: Met,
  hand: Hand | null,
): Outcome | null {
  const isLeftKept = isKept(scene, mating.ends[0].position, met.left, met.isLeftNow, hand);
  const isRightKept = isKept(scene, mating.ends[1].position, met.right, met.isRightNow, hand);
  if (mayStand(scene, mating.ends[0].position, met.left, hand)) return null;
  if (mayStand(scene, mating.ends[1].position, met.right, hand)) return null;
  // What is as it was is given, or else said: that is for the judge.
  if (isLeftKept && isRightKept && met.isRowNow) return null;
  const left = articleAt(scene, met.left, hand);
  const right = articleAt(scene, met.right, hand);
  if (left === null || right === null || left === right) return null;
  const [x, y] = mating.ends;
  const from = index.classOf(left, x.interface);
  const to = index.classOf(right, y.interface);
  if (from === null || to === null) return null;
  const computed = through(scene, index, [from], met.row, to);
  if (computed === null) return null;
  const key = pairKey(
    { part: left, interface: x.interface },
    { part: right, interface: y.interface },
    met.row,
  );
  const built = builtPairs(scene.question.pairsOf).get(key) ?? null;
  return weighBuilt(computed, '', built).outcome;
}

/** A pair may have one piece that stays. */
function isKept(
  scene: Scene,
  position: string,
  value: SeatValue,
  isNow: boolean,
  hand: Hand | null,
): boolean {
  if (isNow) return true;
  const now = scene.seatValue(scene.placeVariable(position), 0);
  return sameOccupant(occupantOf(now.seats, hand), occupantOf(value.seats, hand));
}

/** Whether the very article may be there now already, which a fact that nobody told says. */
function mayStand(scene: Scene, position: string, { seats }: SeatValue, hand: Hand | null) {
  const occupant = occupantOf(seats, hand);
  const { seats: now } = scene.seatValue(scene.placeVariable(position), 0);
  return occupant.is === 'part' && optionsAt(now, hand).includes(occupant.part);
}

/** A part as the edition records it, in one place alone. */
function articleAt(scene: Scene, { seats }: SeatValue, hand: Hand | null): string | null {
  const occupant = occupantOf(seats, hand);
  if (occupant.is !== 'part') return null;
  const part = scene.catalogue.parts.get(occupant.part);
  const isRecorded = part !== undefined && scene.question.pairsOf.parts.get(part.id) === part;
  return isRecorded && part.spans === null ? part.id : null;
}

/**
 * From one face to another through a row of adapters, each turned as it comes out best: what
 * follows hangs on the face that is left alone, so two ways are kept at each step.
 */
function through(
  scene: Scene,
  index: CompiledIndex,
  [from]: readonly [number],
  row: readonly string[],
  to: number,
): Outcome | null {
  let ways: readonly { readonly face: number; readonly outcome: Outcome }[] = [
    { face: from, outcome: 'holds' },
  ];
  for (const id of row) {
    const part = scene.catalogue.parts.get(id);
    if (part === undefined || scene.question.pairsOf.parts.get(id) !== part) return null;
    const faces = [...part.faces.keys()].map((name) => index.classOf(id, name));
    const [one, other] = faces;
    if (one == null || other == null) return null;
    const reach = (enter: number): Outcome =>
      anyOf(ways.map(({ face, outcome }) => allOf([outcome, index.meets(face, enter)])));
    ways = [
      { face: other, outcome: reach(one) },
      { face: one, outcome: reach(other) },
    ];
  }
  return anyOf(ways.map(({ face, outcome }) => allOf([outcome, index.meets(face, to)])));
}
