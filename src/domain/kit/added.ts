/**
 * What a value of a place or a mating brings from outside: parts that are put in, and no part that
 * has only been worked on.
 */

import { madeFrom } from '../catalogue/trade.js';
import type { Scene } from './scene.js';

/** The articles that come from outside. */
export function addedAt(scene: Scene, variable: number, value: number): readonly string[] {
  if (variable >= scene.places.length) return splitRow(scene, variable, value).added;
  return scene.seatChanges(variable, value).flatMap(({ now, becomes }) => {
    if (becomes.is !== 'part') return [];
    const isWorked = now.is === 'part' && now.part !== becomes.part;
    return isWorked && madeFrom(becomes.part).includes(now.part) ? [] : [becomes.part];
  });
}

/** What of a row comes from outside, and what of it is there now. */
export function splitRow(scene: Scene, variable: number, value: number) {
  const left = [...scene.row(variable, 0)];
  const added: string[] = [];
  const stays: string[] = [];
  for (const id of scene.row(variable, value)) {
    const at = left.indexOf(id);
    if (at >= 0) left.splice(at, 1);
    (at < 0 ? added : stays).push(id);
  }
  return { added, stays };
}
