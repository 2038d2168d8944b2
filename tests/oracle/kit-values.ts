/**
 * All that may stand at each place after a change, and all that may sit in each mating.
 *
 * Left out: parts that fill several positions, and adapters that are worked.
 */

import type {
  CatalogueDocument,
  MatingRecord,
  PartRecord,
  PositionRecord,
  WorkRecord,
} from '../../src/domain/catalogue/document.js';
import { isMadeFrom } from './article.js';
import { donorNamed, rolesOf, unrecordedIn } from './donor.js';
import { type KitAsk, keptIn, mayAdd } from './kit-ask.js';
import { workedFrom } from './kit-works.js';
import { type Hand, handsOf, isDonorName, type Scene } from './scene.js';

/** What stands at a place for one hand. */
export interface Piece {
  readonly hand: Hand | null;
  /** A part; `empty`; or `as-found`, which is there and nobody has recorded. */
  readonly holds: string;
  /** The same article as before, bought anew. */
  readonly isRenewed: boolean;
}

/** The pieces of one place, as they are together. */
export type PlaceValue = readonly Piece[];

/** Every article that there may be on the vehicle: those on record, and what works make of them. */
export function withWorkedParts(document: CatalogueDocument, ask: KitAsk): CatalogueDocument {
  const works = worksUpTo(document.works ?? [], ask.workUpTo);
  const parts = document.parts ?? [];
  const worked = parts
    .filter((part) => hasPlace(part, document))
    .flatMap((part) => workedFrom(part, works, document));
  return { ...document, parts: [...parts, ...worked] };
}

/** What nobody need sign is for any workshop. */
function worksUpTo(works: readonly WorkRecord[], most: KitAsk['workUpTo']): WorkRecord[] {
  if (most === 'none') return [];
  return works.filter(({ signOff }) => most === 'engineer' || signOff !== 'engineer');
}

/** The first value is how it stands now. */
export function valuesAt(position: PositionRecord, scene: Scene, ask: KitAsk): PlaceValue[] {
  const isKept = keptIn(scene.document, ask).includes(position.id);
  const hands = handsOf(position).map((hand) => {
    const now = presentAt(scene, position.id, hand);
    const others = othersAt(position, now, scene, ask);
    // A new piece of the same article keeps it as it is.
    return [now, ...others.filter(({ isRenewed }) => isRenewed || !isKept)];
  });
  const all = hands.reduce<PlaceValue[]>(
    (values, pieces) => values.flatMap((value) => pieces.map((piece) => [...value, piece])),
    [[]],
  );
  const before = hands.flatMap(([now]) => now ?? []);
  return all.filter((pieces) => arePaired(pieces, before, scene));
}

/** Either hand may stay; two new pieces are of one article, or made for the two hands. */
function arePaired(pieces: PlaceValue, before: PlaceValue, scene: Scene): boolean {
  const [left, right] = pieces;
  if (left === undefined || right === undefined) return true;
  const isSame = (piece: Piece, index: number) =>
    piece.holds === before[index]?.holds && !piece.isRenewed;
  const changed = pieces.filter((piece, index) => !isSame(piece, index));
  if (changed.some(({ holds }) => holds === 'empty')) return left.holds === right.holds;
  if (changed.length < 2 || left.holds === right.holds) return true;
  const isFor = ({ holds }: Piece, hand: Hand) => handOf(holds, scene) === hand;
  return isFor(left, 'left') && isFor(right, 'right');
}

function handOf(article: string, scene: Scene): Hand | null {
  if (isDonorName(article)) return donorNamed(scene.document, article).hand;
  return scene.part(article).hand ?? null;
}

function presentAt(scene: Scene, id: string, hand: Hand | null): Piece {
  const { holds } = scene.seat('present', id, hand);
  return { hand, holds: typeof holds === 'object' ? holds.id : holds, isRenewed: false };
}

function othersAt(position: PositionRecord, now: Piece, scene: Scene, ask: KitAsk): Piece[] {
  const { hand } = now;
  const isWantedAnew = ask.wants.some(
    (want) =>
      want.is === 'part' &&
      want.renews &&
      (want.position === null || want.position === position.id) &&
      (want.hand === null || want.hand === hand) &&
      want.parts.includes(now.holds),
  );
  const renewed = isWantedAnew && mayAdd(scene.document, ask, now.holds);
  const parts = (scene.document.parts ?? [])
    .filter((part) => mayStandAt(part, position, hand))
    .filter(({ id }) => id !== now.holds)
    .filter(({ id }) => isMadeFrom(id, now.holds) || mayAdd(scene.document, ask, id));
  const taken = unrecordedIn(scene.document)
    .filter(({ name }) => name !== now.holds && mayAdd(scene.document, ask, name))
    .filter((one) => hand === null || one.hand === null || one.hand === hand)
    .filter(({ name }) =>
      rolesOf(scene.document, name).every((role) => position.roles.includes(role)),
    );
  return [
    ...parts.map(({ id }): Piece => ({ hand, holds: id, isRenewed: false })),
    ...taken.map(({ name }): Piece => ({ hand, holds: name, isRenewed: false })),
    ...(renewed ? [{ ...now, isRenewed: true }] : []),
    ...(position.optional === true && now.holds !== 'empty'
      ? [{ hand, holds: 'empty', isRenewed: false }]
      : []),
  ];
}

function mayStandAt(part: PartRecord, position: PositionRecord, hand: Hand | null): boolean {
  const hasRole = part.roles.some((role) => position.roles.includes(role));
  return hasRole && (hand === null || part.hand === undefined || part.hand === hand);
}

/** The first row is the one that sits there now. */
export function rowsIn(mating: MatingRecord, scene: Scene, ask: KitAsk): (readonly string[])[] {
  const now = scene.adapters('present', mating.id).parts;
  const adapters = (scene.document.parts ?? [])
    .filter((part) => isAdapter(part, scene.document))
    .map(({ id }) => id);
  let rows: (readonly string[])[] = [[]];
  const all = [...rows];
  for (let length = 1; length <= (mating.adapters ?? 1); length += 1) {
    rows = rows.flatMap((row) => adapters.map((adapter) => [...row, adapter]));
    all.push(...rows);
  }
  const others = all
    .filter((row) => row.join() !== now.join())
    .filter((row) => addedTo(row, now).every((id) => mayAdd(scene.document, ask, id)));
  return [now, ...others];
}

/** What of a row is not in another already. */
export function addedTo(row: readonly string[], before: readonly string[]): string[] {
  const left = [...before];
  return row.filter((id) => {
    const index = left.indexOf(id);
    if (index >= 0) left.splice(index, 1);
    return index < 0;
  });
}

/** Two faces, and no place of its own on any vehicle. */
function isAdapter(part: PartRecord, document: CatalogueDocument): boolean {
  return Object.keys(part.interfaces ?? {}).length === 2 && !hasPlace(part, document);
}

function hasPlace({ roles }: PartRecord, { layouts = [] }: CatalogueDocument): boolean {
  return layouts.some(({ positions }) =>
    positions.some((position) => roles.some((role) => position.roles.includes(role))),
  );
}
