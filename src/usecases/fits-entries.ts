/**
 * What lists of fits have in common: the outcome of a part on a vehicle out of its places, which
 * outcomes are listed, and how many there are of each.
 */

import type { Part, Vehicle } from '../domain/catalogue/catalogue.js';
import { anyOf, type Outcome } from '../domain/check/state.js';
import type { FitsAt } from '../domain/fits/fits-index.js';
import type { FitAnswer } from './answer.js';
import type { FitsCounts, FitsView } from './fits-view.js';
import type { Speaker } from './speaker.js';

/** A part on a vehicle, as far as the vehicle stays as it is. */
export interface Fits {
  readonly part: Part;
  readonly vehicle: Vehicle;
  readonly places: readonly FitsAt[];
  readonly alone: Outcome;
}

export function fitsOf(part: Part, vehicle: Vehicle, places: readonly FitsAt[]): Fits {
  return { part, vehicle, places, alone: anyOf(places.map(({ alone }) => alone)) };
}

/** What was found of changes around it; null where they were not looked for. */
export type Searched = Pick<FitAnswer, 'verdict' | 'complete'> | null;

export function fitsView({ places, alone }: Fits, searched: Searched, speaker: Speaker): FitsView {
  const at = places.filter((place) => place.alone === alone);
  return {
    alone,
    verdict: searched === null ? verdictAlone(alone) : searched.verdict,
    complete: searched?.complete ?? true,
    at: at.map(({ position }) => position.id),
    ambiguous: at.length > 0 && at.length < places.length,
    positions: places.map((place) => {
      const { id, name } = place.position;
      return { position: id, name: speaker.text(name), alone: place.alone };
    }),
  };
}

/** Null where only changes could make it fit, and nobody looked for them. */
export function verdictAlone(alone: Outcome): 'fits' | 'unknown' | null {
  return alone === 'holds' ? 'fits' : alone === 'open' ? 'unknown' : null;
}

/** How many there are of each, and in all of those that are listed. */
export function countsOf(outcomes: readonly Outcome[], listed: ReadonlySet<Outcome>): FitsCounts {
  const count = (outcome: Outcome) => outcomes.filter((one) => one === outcome).length;
  const [holds, open, fails] = [count('holds'), count('open'), count('fails')];
  const total = outcomes.filter((one) => listed.has(one)).length;
  return { total, holds, open, fails };
}
