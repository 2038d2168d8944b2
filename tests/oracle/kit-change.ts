/**
 * One way of changing a vehicle: what stands at each place and sits in each mating, whether the
 * question's wishes are met by it, and what it takes.
 */

import type { PartRecord, PositionRecord } from '../../src/domain/catalogue/document.js';
import { isMadeFrom, madeFrom } from './article.js';
import { judgeCondition } from './condition.js';
import { donorNamed, rolesOf } from './donor.js';
import { addPieces, contentsOf, type KitAsk, type KitWish, piecesOfLot } from './kit-ask.js';
import type { Piece, PlaceValue } from './kit-values.js';
import { viewOf } from './layout-check.js';
import { byId, isDonorName, type Placed, Scene } from './scene.js';
import { outcomeOver } from './supposed.js';

export interface Change {
  /** By position, in the order of the layout. */
  readonly places: ReadonlyMap<string, PlaceValue>;
  readonly rows: ReadonlyMap<string, readonly string[]>;
}

/** The vehicle with the change made. */
export function sceneWith(change: Change, base: Scene): Scene {
  const chosen = [...change.places].map(([id, pieces]) => [id, placedAs(pieces)] as const);
  const question = {
    ...base.question,
    chosen: Object.fromEntries(chosen),
    chosenAdapters: Object.fromEntries(change.rows),
    renewed: [...change.places].flatMap(([id, pieces]) =>
      pieces.some(({ isRenewed }) => isRenewed) ? [id] : [],
    ),
  };
  return new Scene(base.document, question, base.memory, base.supposed);
}

function placedAs(pieces: PlaceValue): Placed {
  const words = pieces.map(({ holds }) => {
    if (holds === 'empty') return null;
    return holds === 'as-found' ? '?' : holds;
  });
  const [first = null, second] = words;
  return second === undefined ? first : { left: first, right: second };
}

export function holdsBefore({ hand }: Piece, id: string, base: Scene): Piece['holds'] {
  const { holds } = base.seat('present', id, hand);
  return typeof holds === 'object' ? holds.id : holds;
}

/** Positions of which a piece is another article than before, in the order of the layout. */
export function changedIn({ places }: Change, base: Scene): string[] {
  return [...places].flatMap(([id, pieces]) =>
    pieces.some((piece) => piece.holds !== holdsBefore(piece, id, base)) ? [id] : [],
  );
}

/** Those and the ones at which the same is put in anew. */
export function touchedIn(change: Change, base: Scene): string[] {
  const changed = changedIn(change, base);
  return [...change.places].flatMap(([id, pieces]) =>
    changed.includes(id) || pieces.some(({ isRenewed }) => isRenewed) ? [id] : [],
  );
}

/** What the records cannot decide is not asked here: conditions are judged with the rest. */
export function meetsWishes(change: Change, base: Scene, ask: KitAsk): boolean {
  return ask.wants.every((want) => meets(want, change, base));
}

function meets(want: KitWish, change: Change, base: Scene): boolean {
  switch (want.is) {
    case 'condition':
    case 'load':
      return true;
    case 'lot':
      return want.whole ? hasPlaced(want.lot, change, base) : usesSome(want.lot, change, base);
    case 'part': {
      const places = want.position === null ? [...change.places.keys()] : [want.position];
      return places.some((id) =>
        want.parts.some((part) => standsAt(part, id, want, change.places.get(id) ?? [], base)),
      );
    }
  }
}

/** On the hand that is named, or that the part is made for; else on both. */
function standsAt(
  part: string,
  id: string,
  { hand, renews }: KitWish & { is: 'part' },
  pieces: PlaceValue,
  base: Scene,
): boolean {
  const own = hand ?? base.part(part).hand ?? null;
  const meant = pieces.filter((piece) => own === null || piece.hand === null || piece.hand === own);
  return (
    meant.length > 0 &&
    meant.every((piece) => {
      const { holds } = piece;
      const before = holdsBefore(piece, id, base);
      const isNew = piece.isRenewed || (before !== holds && !isMadeFrom(holds, before));
      return madeFrom(holds).includes(part) && (isNew || !renews);
    })
  );
}

/** One piece of the lot is new somewhere, if any of it has a place at all. */
function usesSome(lot: string, { places }: Change, base: Scene): boolean {
  const parts = [...contentsOf(base.document, lot).keys()];
  const havePlace = parts.some((part) =>
    [...places.keys()].some((id) => takes(base.position(id), part, kindOf(part, base).roles)),
  );
  const isUsed = [...places].some(([id, pieces]) =>
    pieces.some((piece) => {
      const { holds, isRenewed } = piece;
      const before = holdsBefore(piece, id, base);
      const isNew = isRenewed || (holds !== before && !isMadeFrom(holds, before));
      return isNew && madeFrom(holds).some((one) => parts.includes(one));
    }),
  );
  return isUsed || !havePlace;
}

/**
 * Each piece of a lot that has a place stands at one; what comes off a vehicle stands where it
 * stood there, if there is such a place.
 */
function hasPlaced(lot: string, { places }: Change, base: Scene): boolean {
  const pieces = piecesOfLot(base.document, lot);
  const roomFor = (part: string, only: string | null): Room => {
    const { roles, hand } = kindOf(part, base);
    const seats = [...places].flatMap(([id, there]) => {
      const position = base.position(id);
      const isPlace = (only ?? id) === id && takes(position, part, roles);
      const each = piecesAt(position);
      return there
        .filter((one) => isPlace && (hand === undefined || (one.hand ?? hand) === hand))
        .map(({ holds }) => ({ each, isFilled: madeFrom(holds).includes(part) }));
    });
    const filled = seats.filter(({ isFilled }) => isFilled);
    return { all: sumOf(seats), filled: sumOf(filled) };
  };
  const isDone = (part: string, count: number, only: string | null): boolean => {
    const { all, filled } = roomFor(part, only);
    return filled >= Math.min(count, all);
  };
  const countsAt = new Map<string, number>();
  for (const { part, pieces: count, position } of pieces) {
    if (position !== null) addPieces(countsAt, `${part} ${position}`, count);
  }
  const arePlaced = [...countsAt].every(([name, count]) => {
    const [part = '', position = ''] = name.split(' ');
    return isDone(part, count, position);
  });
  const all = [...contentsOf(base.document, lot)];
  return arePlaced && all.every(([part, count]) => isDone(part, count, null));
}

function kindOf(part: string, { document }: Scene): Pick<PartRecord, 'roles' | 'hand'> {
  if (!isDonorName(part)) return byId(document.parts, part);
  const { hand } = donorNamed(document, part);
  return { roles: rolesOf(document, part), ...(hand === null ? {} : { hand }) };
}

/** What nobody recorded may be of any of its roles, so the place must take them all. */
function takes(position: PositionRecord, part: string, roles: readonly string[]): boolean {
  const isTaken = (role: string) => position.roles.includes(role);
  return isDonorName(part) ? roles.every(isTaken) : roles.some(isTaken);
}

interface Room {
  readonly all: number;
  readonly filled: number;
}

function sumOf(seats: readonly { readonly each: number }[]): number {
  return seats.reduce((sum, { each }) => sum + each, 0);
}

/** How many pieces one seat stands for. */
export function piecesAt({ handed, count = 1 }: PositionRecord): number {
  return handed ? 1 : count;
}

/** What the wishes for conditions come to, by name. */
export function wishesIn(scene: Scene, ask: KitAsk) {
  return ask.wants.flatMap((want, index) => {
    if (want.is !== 'condition') return [];
    const outcome = outcomeOver(scene, (one) =>
      judgeCondition(want.condition, viewOf(one, 'judged', null)),
    );
    return [{ name: `wish ${index}`, outcome }];
  });
}

/** In words, all that stands and sits there. */
export function nameOf({ places, rows }: Change): string {
  const seats = [...places].flatMap(([id, pieces]) =>
    pieces.map(({ hand, holds }) => `${id}${hand === null ? '' : `:${hand}`}=${holds}`),
  );
  const between = [...rows].map(([mating, row]) => `${mating}=${row.join('-')}`);
  return [...seats, ...between].join(' ');
}
