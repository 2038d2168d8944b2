/**
 * What comes along when a part of a donor is used: the other pieces of that donor that the best way
 * of putting it in takes, and what has to be had besides.
 */

import type { Position } from '../domain/catalogue/catalogue.js';
import type { KitLineView } from './kit-answer.js';
import { USUAL_KIT } from './kit-input.js';
import { routeView } from './kit-views.js';
import type { Edition, Library } from './library.js';
import type { VehicleInput } from './question.js';
import { findKits } from './resolve-kits.js';
import type { Speaker } from './speaker.js';

export interface DonorKitView {
  /** Pieces of the donor. */
  comesWith: KitPieceView[];
  alsoNeeded: KitPieceView[];
}

/** A part of a way, at its place or in its joint. */
export interface KitPieceView {
  position: string | null;
  mating: string | null;
  part: string;
  name: string;
}

export interface DonorKitSought {
  readonly library: Library;
  readonly edition: Edition;
  readonly vehicle: VehicleInput;
  /** Id of the part. */
  readonly part: string;
  readonly position: string | null;
  /** Where each part stands on the donor. */
  readonly onDonor: ReadonlyMap<string, readonly Position[]>;
}

/** Null where no way is known. The pieces of the donor are had for nothing, as many as it has. */
export function donorKit(sought: DonorKitSought, speaker: Speaker): DonorKitView | null {
  const { library, edition, vehicle, part, position, onDonor } = sought;
  const owned = [...onDonor].map(([id, places]) => {
    const quantity = places.reduce((sum, { count }) => sum + count, 0);
    return { part: id, quantity };
  });
  const want = [{ part, position, hand: null, renew: false }];
  const input = { ...vehicle, ...USUAL_KIT, want, owned, routes: 1 };
  const { kits, telling } = findKits(library, edition, input);
  if (kits.routes.length === 0) return null;
  const { lines } = routeView(kits, 0, telling, speaker);
  const goods = lines.flatMap((line) => pieceOf(line, part));
  return {
    comesWith: goods.filter(({ isOwned }) => isOwned).map(({ piece }) => piece),
    alsoNeeded: goods.filter(({ isOwned }) => !isOwned).map(({ piece }) => piece),
  };
}

/** Of a line that puts another part in. */
function pieceOf({ action, part, position, mating, name, source }: KitLineView, own: string) {
  if (action !== 'add' && action !== 'adapter' && action !== 'extra') return [];
  if (part === null || part === own) return [];
  return [{ isOwned: source === 'owned', piece: { position, mating, part, name } }];
}
