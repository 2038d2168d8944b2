/**
 * Where a constraint stands between the vehicle as it is and the change: what the change does
 * not touch is given, whatever is missing in the records.
 */

import type { Hand } from '../check/reading.js';
import type { Outcome, State } from '../check/state.js';
import {
  adaptersIn,
  type Configuration,
  isOpened,
  isSeatChanged,
  sameAdapters,
  seatAt,
} from './configuration.js';

/** What a constraint speaks of: a change of none of it leaves the constraint as it was. */
export interface Scope {
  readonly positions: readonly string[];
  /** The matings whose adapters it reads. */
  readonly matings: readonly string[];
  /** The positions of which it asks whether the change opens them. */
  readonly opened: readonly string[];
}

export const NO_SCOPE: Scope = { positions: [], matings: [], opened: [] };

/**
 * `works`: all of it is as the works built it. `said`: nothing of it is changed, but a part of
 * it is there because the question says so. `changed`: the change touches it.
 */
export type Standing = 'works' | 'said' | 'changed';

export function standingOf(
  configuration: Configuration,
  { positions, matings, opened }: Scope,
  hand: Hand | null,
): Standing {
  if (opened.some((id) => isOpened(configuration, id))) return 'changed';
  let standing: Standing = 'works';
  const { present, judged, layout } = configuration;
  for (const id of positions) {
    const own = layout.positions.get(id)?.isHanded ? hand : null;
    const hands = layout.positions.get(id)?.isHanded && hand === null ? BOTH : [own];
    for (const one of hands) {
      if (isSeatChanged(configuration, id, one)) return 'changed';
      if (seatAt(present, id, one)?.origin === 'said') standing = 'said';
    }
  }
  for (const mating of matings) {
    if (!sameAdapters(adaptersIn(present, mating), adaptersIn(judged, mating))) return 'changed';
    // Also where the question says that there is none any more.
    if (present.adapters.get(mating)?.origin === 'said') standing = 'said';
  }
  return standing;
}

const BOTH: readonly Hand[] = ['left', 'right'];

/** The state of a constraint: given where the change does not touch it, else as computed. */
export function stateOf(
  computed: Outcome,
  standing: Standing,
  options: { readonly ignorePresent: boolean; readonly isAsked: boolean },
): State {
  if (standing === 'changed' || options.isAsked) return computed;
  if (standing === 'works') return 'given';
  if (computed === 'fails') return options.ignorePresent ? 'given' : 'fails';
  return computed === 'open' ? 'given' : 'holds';
}
