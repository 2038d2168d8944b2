/**
 * Where a constraint stands between the vehicle as it is and the change. What the change does not
 * touch is given; but what the question only says of the vehicle has to hold, or at least not
 * fail.
 */

import type { Names } from './condition.js';
import type { Outcome, State } from './outcome.js';
import { type Hand, handsOf, type Scene } from './scene.js';

export type Standing = 'works' | 'said' | 'changed';

export function standingOf(scene: Scene, names: Names, hand: Hand | null): Standing {
  const seats = names.positions.flatMap((id) => {
    const hands = hand === null ? handsOf(scene.position(id)) : [hand];
    return hands.map((one) => ({
      isChanged: scene.isChangedAt(id, one),
      isSaid: scene.seat('present', id, one).origin === 'said',
    }));
  });
  const rows = names.matings.map((mating) => {
    const now = scene.adapters('present', mating);
    const then = scene.adapters('judged', mating);
    const isChanged = now.parts.join() !== then.parts.join();
    return { isChanged, isSaid: now.origin === 'said' };
  });
  const touched = [...seats, ...rows];
  if (touched.some(({ isChanged }) => isChanged)) return 'changed';
  // What is opened without being changed is in the way of a change.
  if (names.opened.some((id) => scene.isOpened(id))) return 'changed';
  return touched.some(({ isSaid }) => isSaid) ? 'said' : 'works';
}

/** @param isAsked whether it reads the torque that the question names. */
export function stateOf(
  computed: Outcome,
  standing: Standing,
  { ignorePresent, isAsked = false }: { ignorePresent: boolean; isAsked?: boolean },
): State {
  if (standing === 'changed' || isAsked) return computed;
  if (standing === 'works' || computed === 'open') return 'given';
  return computed === 'fails' && ignorePresent ? 'given' : computed;
}
