/**
 * Checks laid out to be judged: alone, or together with those that share a choice with them.
 */

import { decide, type Member } from './decide.js';
import { numberOf, oncePer } from './memory.js';
import {
  type Basis,
  type Outcome,
  type Trust,
  trustAll,
  type Weighed,
  weakest,
  weigh,
} from './outcome.js';
import type { Hand, Scene } from './scene.js';

export interface PlannedCheck {
  /** `mating/check` for a check of a kind, the id for one of the layout. */
  readonly name: string;
  readonly hand: Hand | null;
  readonly severity: 'must' | 'caution';
  /** The positions and matings whose articles it is about. */
  readonly positions: readonly string[];
  readonly matings: readonly string[];
  /** Positions of which its condition asks whether they are opened. */
  readonly opened: readonly string[];
  /** Tells the joints of one mating for one hand from all others; null for the layout's own. */
  readonly joint: string | null;
  readonly memberWith: (trust: Trust) => Member;
}

export const judgeAlone: (check: PlannedCheck) => Weighed = oncePer((check) =>
  judgeTogether([check]),
);

export function judgeTogether(checks: readonly PlannedCheck[]): Weighed {
  return weigh((trust) => decide(checks.map(({ memberWith }) => memberWith(trust))));
}

/** The weakest basis of the values that decided it. */
export function basisOfCheck({ memberWith }: PlannedCheck, { trust }: Weighed): Basis | null {
  const { sides } = memberWith(trust).trial;
  return weakest(sides.flatMap(({ bases }) => bases).filter(trust));
}

const choicesOf = oncePer(({ memberWith }: PlannedCheck) => {
  const { trial, condition } = memberWith(trustAll);
  return [...trial.variables.filter(({ isChoice }) => isChoice), ...condition.choices];
});

export interface Group {
  readonly checks: readonly PlannedCheck[];
  readonly outcome: Outcome;
  readonly weighed: Weighed;
  /**
   * It is left open which of several options the single checks are shown with, where none suits
   * all: then each may look as good as it is alone, or as bad as all together.
   */
  readonly hasOptions: boolean;
}

/** The checks that share a choice, directly or through others, in twos or more. */
export function groupsOf(checks: readonly PlannedCheck[], { memory }: Scene): Group[] {
  const groups: PlannedCheck[][] = [];
  for (const check of checks.filter(({ severity }) => severity === 'must')) {
    const own = choicesOf(check).map(({ key }) => key);
    if (own.length === 0) continue;
    const touching = groups.filter((group) =>
      group.some((other) => choicesOf(other).some(({ key }) => own.includes(key))),
    );
    for (const group of touching) groups.splice(groups.indexOf(group), 1);
    groups.push([...touching.flat(), check]);
  }
  return groups
    .filter(({ length }) => length > 1)
    .map((members) => {
      const name = `group ${members.map(numberOf).join()}`;
      const weighed = memory.once(name, () => judgeTogether(members));
      const hasOptions = members.some((one) => choicesOf(one).some(({ isNumber }) => !isNumber));
      return { checks: members, outcome: weighed.outcome, weighed, hasOptions };
    });
}
