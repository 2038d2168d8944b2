/**
 * Whether checks hold, by trying: they hold if for every value of what is not known some choice
 * makes them all true, and fail if for no value one does.
 *
 * A check that leaves nothing to choose needs less: its number changes steadily with every
 * unknown number, so it takes every value between its least and its greatest, and these stand at
 * the ends of the unknowns. Only such checks may read more than a few unknowns.
 */

import { compare, type Fraction, larger, smaller } from './fraction.js';
import type { Outcome } from './outcome.js';
import { isInside, isTrueIn, type Stretch, type Trial } from './trial.js';
import {
  distinct,
  inEach,
  type Variable,
  type World,
  withWords,
  wordVariable,
  worldsOf,
} from './variable.js';

/** Asked where trying would take too long; nothing is known then. */
export class TooManyWorlds extends Error {}

/** About half a second's worth. */
const MOST_WORLDS = 100_000;

/** Whether a check applies; what is chosen may decide that too. */
export interface Condition {
  readonly choices: readonly Variable[];
  readonly in: (world: World) => Outcome;
}

export const ALWAYS: Condition = { choices: [], in: () => 'holds' };

export function always(outcome: Outcome): Condition {
  return { choices: [], in: () => outcome };
}

/** Every way in which what a condition asks for may be chosen. */
export function outcomesOf({ choices, in: outcomeIn }: Condition): Outcome[] {
  return inEach(choices, grid, outcomeIn);
}

/** A check alone once its choices are made as in a world. */
export function withChoices(trial: Trial, world: World): Trial {
  const made = new Map(world);
  const all = (inner: World): World => new Map([...made, ...inner]);
  return {
    ...trial,
    variables: trial.variables.filter(({ isChoice }) => !isChoice),
    measure: (inner) => trial.measure(all(inner)),
    stretches: (inner) => trial.stretches(all(inner)),
  };
}

export interface Member {
  readonly trial: Trial;
  readonly condition: Condition;
  /** The worlds in which it applies, where its optional values are recorded under some choice. */
  readonly isMeant: (world: World) => boolean;
}

const ends = (variable: Variable) => variable.ends;
const grid = (variable: Variable) => variable.grid;

/** Decides checks that share choices as one. */
export function decide(members: readonly Member[]): Outcome {
  const [only, ...others] = members;
  if (only === undefined) return 'holds';
  if (others.length > 0) {
    // One that fails alone fails beside others; this only saves time.
    const isHopeless = members.some((member) => decide([member]) === 'fails');
    return isHopeless ? 'fails' : decideByTrying(members);
  }
  const variables = variablesOf(members);
  if (variables.some(({ isChoice, isNumber }) => isChoice && isNumber)) {
    return decideByTrying(members);
  }
  const isChosen = variables.some(({ isChoice }) => isChoice);
  return isChosen ? decidePicks(only, variables) : decideHere(only, variables, new Map());
}

function variablesOf(members: readonly Member[]): Variable[] {
  const words = members.flatMap(({ trial }) => trial.words);
  const all = distinct(
    members.flatMap(({ trial, condition }) => [...trial.variables, ...condition.choices]),
  );
  return all.map((variable) => withWords(variable, words));
}

function decideByTrying(members: readonly Member[]): Outcome {
  if (!worksIn('some', members)) return 'fails';
  return worksIn('every', members) ? 'holds' : 'open';
}

/** Whether for some, or for every value of the unknowns some choice makes all members true. */
function worksIn(which: 'some' | 'every', members: readonly Member[]): boolean {
  const variables = variablesOf(members);
  // Whether a check applies is one more thing that may not be known.
  const keyOf = (index: number) => `member ${index} applies`;
  const doubts = members.flatMap(({ condition }, index) =>
    outcomesOf(condition).includes('open')
      ? [wordVariable(keyOf(index), ['yes', 'no'], false)]
      : [],
  );
  const unknowns = [...doubts, ...variables.filter(({ isChoice }) => !isChoice)];
  const choices = variables.filter(({ isChoice }) => isChoice);
  let tried = 0;
  const isTrue = (world: World): boolean => {
    tried += 1;
    if (tried > MOST_WORLDS) throw new TooManyWorlds(`more than ${MOST_WORLDS} worlds`);
    return members.every(({ trial, condition, isMeant }, index) => {
      const applies = condition.in(world);
      const isDoubted = applies === 'open' && world.get(keyOf(index)) === 'no';
      return applies === 'fails' || isDoubted || !isMeant(world) || isTrueIn(trial, world);
    });
  };
  const worksHere = (world: World) => some(worldsOf(choices, grid, world), isTrue);
  const worlds = worldsOf(unknowns, grid);
  if (which === 'some') return some(worlds, worksHere);
  return !some(worlds, (world) => !worksHere(world));
}

function some<Item>(items: Iterable<Item>, test: (item: Item) => boolean): boolean {
  for (const item of items) if (test(item)) return true;
  return false;
}

/** The least and greatest number for every way the words may be. */
function decideByEnds({ trial, isMeant }: Member, variables: readonly Variable[]): Outcome {
  const words = variables.filter(({ isNumber }) => !isNumber);
  const numbers = variables.filter(({ isNumber }) => isNumber);
  const outcomes: Outcome[] = [];
  for (const world of worldsOf(words, grid)) {
    if (isMeant(world)) outcomes.push(outcomeBetween(trial, numbers, world));
    else outcomes.push('holds');
  }
  const [first, ...others] = outcomes;
  if (first === undefined) throw new Error('there is always one world');
  return others.every((outcome) => outcome === first) ? first : 'open';
}

function outcomeBetween(trial: Trial, numbers: readonly Variable[], words: World): Outcome {
  let least: Fraction | null = null;
  let most: Fraction | null = null;
  let stretches: readonly Stretch[] = [];
  for (const world of worldsOf(numbers, ends, words)) {
    const value = trial.measure(world);
    least = least === null ? value : smaller(least, value);
    most = most === null ? value : larger(most, value);
    stretches = trial.stretches(world);
  }
  if (least === null || most === null) throw new Error('there is always one world');
  const [low, high] = [least, most];
  if (stretches.some((one) => isInside(low, one) && isInside(high, one))) return 'holds';
  return stretches.some((one) => reaches([low, high], one)) ? 'open' : 'fails';
}

function reaches([low, high]: readonly [Fraction, Fraction], [from, to]: Stretch): boolean {
  const isBelow = from !== null && compare(high, from) < 0;
  const isAbove = to !== null && compare(low, to) > 0;
  return !isBelow && !isAbove;
}

/** A check with a few options: hopeless if it is under each; else every unknown is tried. */
function decidePicks(member: Member, variables: readonly Variable[]): Outcome {
  const picks = variables.filter(({ isChoice }) => isChoice);
  const unknowns = variables.filter(({ isChoice }) => !isChoice);
  const outcomes: Outcome[] = [];
  for (const world of worldsOf(picks, grid)) {
    const made = new Map(world);
    const isMeant = (inner: World) => member.isMeant(new Map([...made, ...inner]));
    const trial = withChoices(member.trial, made);
    outcomes.push(decideHere({ ...member, isMeant, trial }, unknowns, made));
  }
  if (outcomes.includes('holds')) return 'holds';
  if (outcomes.every((outcome) => outcome === 'fails')) return 'fails';
  return worksIn('every', [member]) ? 'holds' : 'open';
}

/** One check where nothing is left to choose. */
function decideHere(member: Member, unknowns: readonly Variable[], choices: World): Outcome {
  const applies = member.condition.in(choices);
  if (applies === 'fails') return 'holds';
  const outcome = decideByEnds(member, unknowns);
  return applies === 'open' && outcome === 'fails' ? 'open' : outcome;
}
