/**
 * What the question itself demands, as relations: what is wanted, and what must not be put in.
 */

import type { Position } from '../catalogue/catalogue.js';
import { donorArticles, mayStandAt } from '../catalogue/donor-article.js';
import { madeFrom } from '../catalogue/trade.js';
import type { Condition } from '../check/check.js';
import type { Hand } from '../check/reading.js';
import { judgeCondition } from '../judge/condition.js';
import { handsOf } from '../judge/configuration.js';
import { settingOf } from '../judge/judge.js';
import { outcomeForEach } from '../judge/supposed-constraints.js';
import { add, equals, ONE, type Rational, ZERO } from '../quantity/rational.js';
import { addedAt } from './added.js';
import { madeForHand, occupantOf, type SeatValue } from './candidates.js';
import { STATE } from './core/problem.js';
import { type LotPieces, piecesIn } from './lot-contents.js';
import type { Want } from './question.js';
import { Reads } from './reads.js';
import { HOLDS, type KitRelation, relationOf, STATES } from './relation.js';
import type { Scene } from './scene.js';

/** The relations of the question, its wants first, in its own order. */
export function questionRelations(scene: Scene): KitRelation[] {
  const { wants, avoid } = scene.question;
  return [
    ...wants.flatMap((want, index) => wantRelations(scene, want, index)),
    ...avoid.conditions.map(({ position, condition }, index) =>
      avoidedRelation(scene, position, condition, index),
    ),
  ];
}

function wantRelations(scene: Scene, want: Want, index: number): KitRelation[] {
  const id = `${index}`;
  switch (want.is) {
    case 'part':
      return [partRelation(scene, want, id)];
    case 'condition':
      return [conditionRelation(scene, want.position, want.condition, id)];
    case 'lot':
      return want.whole ? lotRelations(scene, want.lot, id) : someOfLot(scene, want.lot, id);
    case 'load':
      // It is demanded of the whole vehicle: see `demanded-relations.ts`.
      return [];
  }
}

type PartWant = Want & { readonly is: 'part' };

/** One of the parts stands at the place, or at one of the places that take it. */
function partRelation(scene: Scene, want: PartWant, id: string): KitRelation {
  const places = scene.places
    .map(({ position }) => position)
    .filter((position) => want.position === null || position.id === want.position)
    .filter((position) => want.position !== null || takesOne(scene, position, want.parts));
  const reads = new Reads(scene);
  for (const { id: position } of places) {
    for (const part of want.parts) reads.named(position, part);
  }
  return relationOf(scene, {
    sort: 'want',
    id,
    reads,
    keyOf: (variable, value) => `${standsAt(scene, variable, value, want)}`,
    judge: (scope, values) => {
      const stands = scope.some((variable, at) => standsAt(scene, variable, values[at] ?? 0, want));
      return { ...HOLDS, state: stands ? STATE.holds : STATE.fails };
    },
  });
}

function takesOne(scene: Scene, position: Position, parts: readonly string[]): boolean {
  return parts.some((id) => {
    const taken = donorArticles(scene.catalogue).get(id);
    if (taken !== undefined) return mayStandAt(taken, position, null);
    const part = scene.catalogue.parts.get(id);
    if (part === undefined) return false;
    if (part.spans !== null) return part.spans[0] === position.id;
    return part.roles.some((role) => position.roles.includes(role));
  });
}

/** Whether a value puts one of the wanted parts on each hand that it is wanted for. */
function standsAt(scene: Scene, variable: number, value: number, want: PartWant): boolean {
  const { position } = scene.places[variable] ?? {};
  if (position === undefined) return false;
  const seat = scene.seatValue(variable, value);
  return want.parts.some((id) => {
    const own = want.hand ?? scene.catalogue.parts.get(id)?.hand ?? null;
    const hands = position.isHanded && own !== null ? [own] : handsOf(position);
    return hands.every(
      (hand) => isPart(seat, hand, id) && (!want.renews || isNew(scene, variable, value, hand)),
    );
  });
}

/** The part itself, or what a work has made of it. */
function isPart({ seats }: SeatValue, hand: Hand | null, id: string): boolean {
  const occupant = occupantOf(seats, hand);
  return occupant.is === 'part' && madeFrom(occupant.part).includes(id);
}

/** Another piece than now; one that has only been worked on is the same. */
function isNew(scene: Scene, variable: number, value: number, hand: Hand | null): boolean {
  const { seats, renewed } = scene.seatValue(variable, value);
  if (renewed.includes(hand)) return true;
  const now = occupantOf(scene.seatValue(variable, 0).seats, hand);
  const then = occupantOf(seats, hand);
  if (now.is !== 'part' || then.is !== 'part') return true;
  return !madeFrom(then.part).includes(now.part);
}

function conditionRelation(
  scene: Scene,
  position: string,
  condition: Condition,
  id: string,
): KitRelation {
  const reads = new Reads(scene);
  reads.change(position);
  reads.condition(condition);
  return relationOf(scene, {
    sort: 'want',
    id,
    reads,
    judge: (scope, values) => {
      const outcome = outcomeForEach(scene.configuration(scope, values), (one) =>
        judgeCondition(condition, one, settingOf(one), null),
      );
      return { ...HOLDS, state: STATES[outcome] };
    },
  });
}

/** A piece of a wanted lot is put in at one of the places that take any of it. */
function someOfLot(scene: Scene, lot: string, id: string): KitRelation[] {
  const recorded = scene.catalogue.lots.get(lot);
  const pieces = recorded === undefined ? [] : piecesIn(recorded, scene.catalogue);
  const parts = [...new Set(pieces.map(({ part }) => part))];
  const places = scene.places.flatMap(({ position }) =>
    takesOne(scene, position, parts) ? [position] : [],
  );
  if (places.length === 0) return [];
  const reads = new Reads(scene);
  for (const position of places) for (const part of parts) reads.named(position.id, part);
  const isPutIn = (variable: number, value: number): boolean =>
    addedAt(scene, variable, value).some((article) =>
      madeFrom(article).some((one) => parts.includes(one)),
    );
  const relation = relationOf(scene, {
    sort: 'want',
    id,
    reads,
    keyOf: (variable, value) => `${isPutIn(variable, value)}`,
    judge: (scope, values) => {
      const isUsed = scope.some((variable, at) => isPutIn(variable, values[at] ?? 0));
      return { ...HOLDS, state: isUsed ? STATE.holds : STATE.fails };
    },
  });
  return [relation];
}

/**
 * Every piece of a wanted lot that has a place on the vehicle is put there: those of a vehicle
 * that is taken apart where they stood, and of each article as many as there are in all.
 */
function lotRelations(scene: Scene, lot: string, id: string): KitRelation[] {
  const recorded = scene.catalogue.lots.get(lot);
  const pieces = recorded === undefined ? [] : piecesIn(recorded, scene.catalogue);
  const placed = pieces.filter(({ position }) => position !== null);
  const whole = pieces.map((one): LotPieces => ({ ...one, position: null }));
  return summed([...placed, ...whole]).flatMap(({ part, quantity: count, position }) => {
    const own = placesFor(scene, part, position);
    const name = [id, part, ...(position === null ? [] : [position])].join('.');
    return own.length === 0 ? [] : [piecesRelation(scene, part, count, own, name)];
  });
}

/** Each article once at each place, and once wherever it stands. */
function summed(pieces: readonly LotPieces[]): LotPieces[] {
  const sums = new Map<string, LotPieces>();
  for (const one of pieces) {
    const name = `${one.part} ${one.position ?? ''}`;
    const before = sums.get(name)?.quantity ?? ZERO;
    sums.set(name, { ...one, quantity: add(before, one.quantity) });
  }
  return [...sums.values()];
}

/** The place where it stood, if there is such a one here; of what stood nowhere, all. */
function placesFor(scene: Scene, part: string, position: string | null): Position[] {
  return scene.places
    .map((place) => place.position)
    .filter((place) => takesOne(scene, place, [part]))
    .filter(({ id }) => position === null || id === position);
}

function piecesRelation(
  scene: Scene,
  part: string,
  pieces: Rational,
  places: readonly Position[],
  id: string,
): KitRelation {
  const reads = new Reads(scene);
  for (const position of places) reads.named(position.id, part);
  const own = madeForHand(part, scene);
  // What is made for one hand has room on that side alone.
  const roomAt = ({ count, isHanded }: Position) => (isHanded && own !== null ? count / 2 : count);
  const room = places.reduce((sum, position) => sum + roomAt(position), 0);
  const wanted = Math.min(room, wholeOf(pieces));
  const countAt = (variable: number, value: number): number => {
    const { position } = scene.places[variable] ?? {};
    if (position === undefined) return 0;
    const seat = scene.seatValue(variable, value);
    const hands = handsOf(position).filter((hand) => isPart(seat, hand, part));
    return (position.count / handsOf(position).length) * hands.length;
  };
  return relationOf(scene, {
    sort: 'want',
    id,
    reads,
    keyOf: (variable, value) => `${countAt(variable, value)}`,
    judge: (scope, values) => {
      const there = scope.reduce(
        (sum, variable, at) => sum + countAt(variable, values[at] ?? 0),
        0,
      );
      return { ...HOLDS, state: there >= wanted ? STATE.holds : STATE.fails };
    },
  });
}

/** Pieces are whole; of what is poured or cut, any of it is one. */
function wholeOf(pieces: Rational): number {
  return equals(pieces, ONE) ? 1 : Math.max(1, Math.floor(pieces.valueOf()));
}

/** What is put in at the position must not meet the condition. */
function avoidedRelation(
  scene: Scene,
  position: string,
  condition: Condition,
  index: number,
): KitRelation {
  const reads = new Reads(scene);
  reads.change(position);
  reads.condition(condition);
  const variable = scene.placeVariable(position);
  return relationOf(scene, {
    sort: 'avoided',
    id: `${index}`,
    reads,
    judge: (scope, values) => {
      if ((values[scope.indexOf(variable)] ?? 0) === 0) return HOLDS;
      const outcome = outcomeForEach(scene.configuration(scope, values), (one) =>
        judgeCondition(condition, one, settingOf(one), null),
      );
      if (outcome === 'fails') return HOLDS;
      return { ...HOLDS, state: outcome === 'holds' ? STATE.fails : STATE.open };
    },
  });
}
