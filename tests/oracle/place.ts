/**
 * Places themselves: something there that a layout needs, of the right role and hand, and a mating
 * for every face that needs one. Only what is wrong is found.
 */

import type { PartRecord, PositionRecord } from '../../src/domain/catalogue/document.js';
import { facesMet } from './donor.js';
import { about, type Finding } from './finding.js';
import { endsOf } from './mating.js';
import type { Outcome } from './outcome.js';
import { type DonorName, type Hand, handsOf, type Scene } from './scene.js';
import { standingOf, stateOf } from './standing.js';

export function findPlaces(scene: Scene): Finding[] {
  return scene.layout.positions.flatMap((position) =>
    handsOf(position).flatMap((hand) => {
      const { holds } = scene.seat('judged', position.id, hand);
      if (holds === 'empty') return findEmpty(scene, position, hand);
      if (holds === 'as-found') return [];
      if (typeof holds === 'string') return findTaken(scene, position, holds, hand);
      return [
        ...findMisplaced(scene, position, holds, hand),
        ...findUnmated(scene, position, holds, hand),
      ];
    }),
  );
}

function found(
  scene: Scene,
  form: 'place' | 'face',
  id: string,
  position: PositionRecord,
  hand: Hand | null,
): Finding {
  const computed: Outcome = form === 'place' ? 'fails' : 'open';
  const names = about([position.id]);
  const { ignorePresent } = scene.question;
  const state = stateOf(computed, standingOf(scene, names, hand), { ignorePresent });
  const verdicts = [{ computed, state, basis: null, failsFirstHand: false }];
  return { form, id, hand, severity: 'must', names, verdicts };
}

function placeId({ id }: PositionRecord, hand: Hand | null): string {
  return hand === null ? id : `${id}:${hand}`;
}

/** A place that is needed may be empty only where it is known to be empty already. */
function findEmpty(scene: Scene, position: PositionRecord, hand: Hand | null): Finding[] {
  const wasEmpty = scene.seat('present', position.id, hand).holds === 'empty';
  if (position.optional === true || wasEmpty) return [];
  return [found(scene, 'place', placeId(position, hand), position, hand)];
}

function findMisplaced(
  scene: Scene,
  position: PositionRecord,
  part: PartRecord,
  hand: Hand | null,
): Finding[] {
  const hasRole = part.roles.some((role) => position.roles.includes(role));
  const hasHand = hand === null || part.hand === undefined || part.hand === hand;
  const faults = [hasRole, hasHand].filter((isRight) => !isRight);
  return faults.map(() => found(scene, 'place', placeId(position, hand), position, hand));
}

/** Where it stood it met something with a face for which there may be no mating here. */
function findTaken(
  scene: Scene,
  position: PositionRecord,
  name: DonorName,
  hand: Hand | null,
): Finding[] {
  if (scene.layout.unmated === 'ignore') return [];
  const ends = (scene.layout.matings ?? []).flatMap(endsOf);
  return facesMet(name, scene.document)
    .filter((face) => !ends.some(([id, other]) => id === position.id && other === face))
    .map((face) => found(scene, 'face', `${position.id}.${face}`, position, hand));
}

function findUnmated(
  scene: Scene,
  position: PositionRecord,
  part: PartRecord,
  hand: Hand | null,
): Finding[] {
  if (scene.layout.unmated === 'ignore') return [];
  const ends = (scene.layout.matings ?? []).flatMap(endsOf);
  return Object.entries(part.interfaces ?? {})
    .filter(([, face]) => face.absent !== true && face.optional !== true)
    .filter(([name]) => !ends.some(([id, face]) => id === position.id && face === name))
    .map(([name]) => found(scene, 'face', `${position.id}.${name}`, position, hand));
}
