/**
 * What constraints come to where the vehicle is supposed to be one way after the other: each by
 * itself, over all that it may be. It is shown as judged with nothing supposed, as far as that
 * says the same.
 */

import type { Outcome, State } from '../check/state.js';
import { equalIntervals, type Interval } from '../quantity/interval.js';
import type { Configuration } from './configuration.js';
import type { ChoiceConstraint, Constraint } from './constraint.js';
import { supposalsOf } from './supposed.js';

/** The constraints with the vehicle supposed to be one way, in which these facts are so. */
export interface Supposition {
  readonly facts: ReadonlyMap<string, string>;
  readonly constraints: readonly Constraint[];
}

/** Judges by `ask` for each way in which the vehicle may be. */
export function judgedForEach(
  configuration: Configuration,
  ask: (one: Configuration) => readonly Constraint[],
): readonly Constraint[] {
  const plain = ask(configuration);
  const supposals = supposalsOf(configuration);
  if (supposals.length === 0) return plain;
  const suppositions = supposals.map((one) => {
    return { facts: one.facts, constraints: ask(one.configuration) };
  });
  return constraintsOver(plain, suppositions);
}

/** What holds for each way in which the vehicle may be, or fails for each; else it is open. */
export function outcomeForEach(
  configuration: Configuration,
  ask: (one: Configuration) => Outcome,
): Outcome {
  const supposals = supposalsOf(configuration);
  if (supposals.length === 0) return ask(configuration);
  return alikeOf(supposals.map((one) => ask(one.configuration)));
}

/** @param plain as judged with nothing supposed. */
export function constraintsOver(
  plain: readonly Constraint[],
  suppositions: readonly Supposition[],
): Constraint[] {
  const named = suppositions.map(({ constraints }) => byName(constraints));
  const shown = byName(plain);
  const names = new Set([...shown.keys(), ...named.flatMap((one) => [...one.keys()])]);
  return [...names].flatMap((name) => {
    const found = suppositions.map(({ facts }, index) => {
      return { facts, constraint: named[index]?.get(name) ?? null };
    });
    return constraintOver(shown.get(name) ?? null, found) ?? [];
  });
}

function byName(constraints: readonly Constraint[]): Map<string, Constraint> {
  return new Map(constraints.map((one) => [nameOfConstraint(one), one]));
}

/**
 * What is one and the same in all ways. A choice is that of the checks that share it, and several
 * things may be wrong at one place.
 */
export function nameOfConstraint(constraint: Constraint): string {
  const { form, hand, id, code } = constraint;
  const name = form === 'choice' ? [...constraint.members].sort().join('+') : id;
  return [form, name, hand ?? '', form === 'place' ? code : ''].join(' ');
}

interface Found {
  readonly facts: ReadonlyMap<string, string>;
  /** Null where it does not apply, or is given and left out. */
  readonly constraint: Constraint | null;
}

/** Null for what speaks of none of the ways in which the vehicle may be. */
function constraintOver(plain: Constraint | null, found: readonly Found[]): Constraint | null {
  const own = found.flatMap(({ constraint }) => constraint ?? []);
  const [first] = own;
  if (first === undefined) return null;
  const states = found.map(({ constraint }) => constraint?.state ?? 'given');
  const outcome = alikeOf(states.map((state) => (state === 'given' ? 'holds' : state)));
  const isHolding = outcome === 'holds' && states.includes('holds');
  const state: State = outcome === 'holds' && !isHolding ? 'given' : outcome;
  const computed = alikeOf(found.map(({ constraint }) => constraint?.computed ?? 'holds'));
  const alike = own.find((one) => one.state === state);
  const hangsOn = factsTelling(found, ({ constraint }) => outcomeAs(constraint));
  if (state === 'open' && hangsOn.length > 0) {
    const shown = plain?.state === 'open' ? plain : (alike ?? first);
    const supposed = { facts: hangsOn, code: shown.code };
    return { ...shown, state, computed, code: 'told-by-fact', basis: null, supposed };
  }
  if (plain !== null && plain.state === state) return { ...plain, computed };
  if (alike === undefined) throw new Error('what comes to one thing comes to it somewhere');
  const ways = [...(found[0]?.facts.keys() ?? [])];
  const settled = plain === null ? alike : shownAs(alike, plain);
  if (state === 'open' || state === 'given') return { ...settled, computed };
  const supposed = { facts: ways, code: alike.code };
  return { ...settled, computed, code: 'same-for-each-fact', supposed, ...orderedAlike(own) };
}

function outcomeAs(constraint: Constraint | null): Outcome {
  const state = constraint?.state ?? 'given';
  return state === 'given' ? 'holds' : state;
}

/** What all come to; open where they differ. */
function alikeOf(outcomes: readonly Outcome[]): Outcome {
  const [first = 'holds'] = outcomes;
  return outcomes.every((one) => one === first) ? first : 'open';
}

/** Nobody knows what stands at its ends: one of what may is no more there than the others. */
function shownAs(alike: Constraint, plain: Constraint): Constraint {
  if (alike.form !== 'mating' || plain.form !== 'mating') return alike;
  return { ...alike, ends: plain.ends };
}

/** What may be ordered or picked, as far as it is the same in all ways. */
function orderedAlike(own: readonly Constraint[]): Partial<Pick<ChoiceConstraint, 'choices'>> {
  const choices = own.flatMap((one) => (one.form === 'choice' ? [one.choices] : []));
  const [first] = choices;
  if (first === undefined) return {};
  return {
    choices: first.map((one, index) => {
      const others = choices.map((all) => all[index]);
      const isPicked = others.every((other) => other?.pick === one.pick);
      const isOrdered = others.every((other) => isSameOrder(one.order, other?.order ?? null));
      return { ...one, order: isOrdered ? one.order : null, pick: isPicked ? one.pick : null };
    }),
  };
}

function isSameOrder(a: Interval | null, b: Interval | null): boolean {
  return a === null || b === null ? a === b : equalIntervals(a, b);
}

interface Told {
  readonly facts: ReadonlyMap<string, string>;
}

/** The facts of which another value alone makes another thing of it. */
export function factsTelling<Way extends Told>(
  ways: readonly Way[],
  what: (way: Way) => string,
): string[] {
  const facts = [...(ways[0]?.facts.keys() ?? [])];
  return facts.filter((fact) => {
    const known = new Map<string, string>();
    return ways.some((way) => {
      const rest = facts.filter((one) => one !== fact).map((one) => way.facts.get(one));
      const own = what(way);
      const other = known.get(rest.join());
      known.set(rest.join(), own);
      return other !== undefined && other !== own;
    });
  });
}
