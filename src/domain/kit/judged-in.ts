/**
 * What the relations of a vehicle have in common: how a few joints and checks are judged by
 * themselves, and where their answers may be kept.
 */

import type { Layout } from '../catalogue/catalogue.js';
import type { Check } from '../check/check.js';
import type { Constraint } from '../judge/constraint.js';
import { judgeMeetings } from '../judge/judge.js';
import type { Reads } from './reads.js';
import type { Scene } from './scene.js';

/** For answers that hang on what this vehicle was built with, and on nothing that is said of it. */
export function keptForVehicle(scene: Scene, sort: string, id: string): string | null {
  const { said, torque, use, ignorePresent, vehicle } = scene.question;
  if (torque !== null || said.seats.size > 0 || said.adapters.size > 0) return null;
  // What the question knows of the vehicle may decide a check.
  if (vehicle.saidFacts.size > 0) return null;
  return `${sort} ${id} of ${vehicle.id} ${use ?? ''} ${ignorePresent ? 'as it is' : ''}`;
}

/** As the works built it, and nobody says otherwise: given, whatever the records come to. */
export function isGiven(scene: Scene, values: readonly number[]): boolean {
  const { said, torque } = scene.question;
  if (torque !== null || said.seats.size > 0 || said.adapters.size > 0) return false;
  return values.every((value) => value === 0);
}

/** A layout of these matings and checks alone. */
export function layoutOf(
  scene: Scene,
  matings: Iterable<string>,
  checks: readonly Check[],
): Layout {
  const { layout } = scene.question.vehicle;
  const wanted = new Set(matings);
  const own = [...layout.matings].filter(([id]) => wanted.has(id));
  return { ...layout, matings: new Map(own), checks };
}

export function judgeIn(
  scene: Scene,
  layout: Layout,
  scope: readonly number[],
  values: readonly number[],
): readonly Constraint[] {
  if (isGiven(scene, values)) return [];
  const configuration = scene.configuration(scope, values);
  return judgeMeetings({ ...configuration, layout, skipsGiven: true });
}

/** A statement about one of these places also reads the companions that it names. */
export function readStatements(scene: Scene, reads: Reads, positions: readonly string[]): boolean {
  let isStated = false;
  const { layout } = scene.question.vehicle;
  for (const statement of scene.catalogue.statements) {
    const names = [statement.position, ...statement.with.keys()];
    if (!positions.includes(statement.position)) continue;
    if (!names.every((id) => layout.positions.has(id))) continue;
    reads.named(statement.position, statement.part);
    for (const [id, part] of statement.with) reads.named(id, part);
    isStated = true;
  }
  return isStated;
}
