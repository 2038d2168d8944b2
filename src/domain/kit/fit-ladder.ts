/**
 * What "does it fit" comes to once changes around the part were looked for: place by place, and
 * over all of them. An open point is never shown as fitting, and a search that ended early never
 * as there being no way.
 *
 *   alone    routes found              verdict             kit
 *   holds    not looked for            fits                none
 *   open     the best is proven        unknown             the best
 *   open     else                      unknown             none
 *   fails    the best is proven        fits-with-changes   the best
 *   fails    the best is open          unknown             the best
 *   fails    none, searched to the end does-not-fit        none
 *   fails    none so far               unknown             none
 */

import type { Outcome } from '../check/state.js';
import type { Kits, Route } from './route.js';

export const VERDICTS = ['fits', 'fits-with-changes', 'unknown', 'does-not-fit'] as const;
export type ChangedVerdict = (typeof VERDICTS)[number];

export interface Rung {
  readonly verdict: ChangedVerdict;
  /** The first of the routes, where it is told. */
  readonly route: Route | null;
  /** Nothing that was left out of the search could better the verdict. */
  readonly isComplete: boolean;
}

/** @param kits what the kit question found; null where the part holds alone. */
export function rungOf(alone: Outcome, kits: Kits | null): Rung {
  if (alone === 'holds' || kits === null) {
    const verdict = alone === 'holds' ? 'fits' : 'unknown';
    return { verdict, route: null, isComplete: true };
  }
  const { isComplete } = kits;
  const [best] = kits.routes;
  if (alone === 'open') {
    const route = best?.grade === 'proven' ? best : null;
    return { verdict: 'unknown', route, isComplete };
  }
  if (best?.grade === 'proven') return { verdict: 'fits-with-changes', route: best, isComplete };
  if (best !== undefined) return { verdict: 'unknown', route: best, isComplete };
  return { verdict: isComplete ? 'does-not-fit' : 'unknown', route: null, isComplete };
}

export interface Overall {
  readonly verdict: ChangedVerdict;
  /** Indices of the places where it is had. */
  readonly at: readonly number[];
  readonly isAmbiguous: boolean;
}

/** The best of the places; of none, that it does not fit. */
export function overallOf(rungs: readonly Rung[]): Overall {
  const verdict = VERDICTS.find((one) => rungs.some((rung) => rung.verdict === one));
  if (verdict === undefined) return { verdict: 'does-not-fit', at: [], isAmbiguous: false };
  const at = rungs.flatMap((rung, index) => (rung.verdict === verdict ? [index] : []));
  return { verdict, at, isAmbiguous: at.length < rungs.length };
}
