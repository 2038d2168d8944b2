/**
 * Parts that are alike: what holds of one of them at a place holds of all, so it is judged once.
 *
 * Alike are parts of which the same is recorded (names and numbers left out), as long as nothing
 * in the catalogue tells them apart as articles: no vehicle has one of them, no condition and no
 * statement names one. What leaves something to choose, or fills several places, is alike to none.
 */

import type { Catalogue, FittedHere, Part } from '../catalogue/catalogue.js';
import { madeFrom } from '../catalogue/trade.js';
import { type Check, type Condition, testsIn } from '../check/check.js';
import { partKey } from '../index/interning.js';
import { hasChoice } from '../judge/plan.js';

export class Likeness {
  readonly #likeOf: ReadonlyMap<Part, number>;
  /** One of each, by number. */
  readonly samples: readonly Part[];

  constructor(catalogue: Catalogue) {
    const told = toldApart(catalogue);
    const byKey = new Map<string, number>();
    const likeOf = new Map<Part, number>();
    const samples: Part[] = [];
    for (const part of catalogue.parts.values()) {
      const isAlone = part.spans !== null || isTold(part, told) || hasChoice(part);
      const key = isAlone ? part.id : `= ${partKey(part)}`;
      let like = byKey.get(key);
      if (like === undefined) {
        like = samples.length;
        byKey.set(key, like);
        samples.push(part);
      }
      likeOf.set(part, like);
    }
    this.#likeOf = likeOf;
    this.samples = samples;
  }

  /** The number of those that are alike to a part of the catalogue. */
  of(part: Part): number {
    const like = this.#likeOf.get(part);
    if (like === undefined) throw new RangeError(`"${part.id}" is no part of the catalogue`);
    return like;
  }
}

function isTold({ id }: Part, told: ReadonlySet<string>): boolean {
  return madeFrom(id).some((article) => told.has(article));
}

/** The articles that something in the catalogue names. */
function toldApart(catalogue: Catalogue): Set<string> {
  const told = new Set<string>();
  for (const vehicle of catalogue.vehicles.values()) {
    for (const fitted of [vehicle.fitted, vehicle.options]) {
      for (const id of [...fitted.values()].flatMap(articlesIn)) told.add(id);
    }
    for (const id of [...vehicle.adapters.values()].flat()) told.add(id);
  }
  for (const statement of catalogue.statements) {
    told.add(statement.part);
    for (const id of statement.with.values()) told.add(id);
  }
  for (const layout of catalogue.layouts.values()) {
    for (const check of layout.checks) nameIn(check, told);
  }
  for (const rule of [...catalogue.rules.values()].flat()) {
    for (const condition of [rule.when, rule.needs, rule.excludes]) {
      if (condition !== null) nameInCondition(condition, told);
    }
  }
  return told;
}

function articlesIn(fitted: FittedHere): string[] {
  const seats = fitted.hands ? [fitted.left, fitted.right] : [fitted.occupant];
  const occupants = seats.flatMap((one) => (one.is === 'option' ? [...one.by.values()] : [one]));
  return occupants.flatMap((one) => (one.is === 'part' ? [one.part] : []));
}

/** A code that no part bears does no harm here. */
function nameIn(check: Check, told: Set<string>): void {
  if (check.primitive === 'one-of' && 'codes' in check.options) {
    for (const code of check.options.codes) told.add(code);
  }
  if (check.when !== null) nameInCondition(check.when, told);
}

function nameInCondition(condition: Condition, told: Set<string>): void {
  for (const one of testsIn(condition)) {
    if (one.test === 'check') nameIn(one.check, told);
    if (one.test === 'adapter') told.add(one.part);
  }
}
