/**
 * The search behind a kit question as plain data, to be looked at and run again anywhere: what it
 * chose from, all that it asked and was answered, and what it found. A replay needs no catalogue.
 *
 * Left out: the limits of lead days and of capacity that are searched one after the other, and
 * whether it is known that limits are kept; what is saved is the search by cost.
 */

import { ENGINE } from '../engine.js';
import { type Groups, gatherGroups, hiddenBy } from './core/groups.js';
import type { Budget, Phase } from './core/problem.js';
import { replay, type SavedProblem, save } from './core/saved.js';
import { Tables } from './core/tables.js';
import { type PriceLane, priceIn } from './lanes.js';
import type { KitQuestion } from './question.js';
import { problemOf } from './sweep.js';

export interface SavedResult {
  readonly grade: Phase;
  readonly cost: number;
  /** What is changed, as `place: article`. */
  readonly changes: readonly string[];
}

export interface SavedKits {
  readonly saved: 1;
  readonly engine: string;
  readonly vehicle: string;
  readonly wanted: number;
  readonly steps: number;
  readonly refusesUnknowns: boolean;
  readonly priceLane: PriceLane;
  /** By variable, by value: what it is. */
  readonly words: readonly (readonly string[])[];
  readonly problem: SavedProblem;
  readonly outcome: SavedOutcome;
}

export interface SavedOutcome {
  readonly results: readonly SavedResult[];
  readonly stepsTaken: number;
  readonly isComplete: boolean;
}

export interface Replayed extends SavedOutcome {
  /** It found what was found when it was saved, in as many steps. */
  readonly isSame: boolean;
}

export function saveKits(question: KitQuestion): SavedKits {
  const { problem } = problemOf(question);
  const tables = new Tables(problem, true);
  const { routes: wanted, steps, refusesUnknowns, vehicle } = question;
  const words = problem.variables.map(({ size }, variable) =>
    Array.from({ length: size }, (_, value) => {
      const values = problem.variables.map((__, other) => (other === variable ? value : 0));
      return problem.scene.articlesOf(variable, problem.sceneValues(values)[variable] ?? 0);
    }),
  );
  const { priceLane } = problem.priceList;
  const outcome = run(tables, { wanted, steps, refusesUnknowns, priceLane, words });
  return {
    saved: 1,
    engine: ENGINE,
    vehicle: vehicle.id,
    wanted,
    steps,
    refusesUnknowns,
    priceLane,
    words,
    problem: save(tables),
    outcome,
  };
}

export function replayKits(saved: SavedKits): Replayed {
  const outcome = run(new Tables(replay(saved.problem)), saved);
  return { ...outcome, isSame: JSON.stringify(outcome) === JSON.stringify(saved.outcome) };
}

type Run = Pick<SavedKits, 'wanted' | 'steps' | 'refusesUnknowns' | 'priceLane' | 'words'>;

/** As a question is searched: what is open only where too little is proven. */
function run(
  tables: Tables,
  { wanted, steps, refusesUnknowns, priceLane, words }: Run,
): SavedOutcome {
  const budget: Budget = { left: steps };
  const ahead = { looksAhead: true, budget };
  const proven = gatherGroups(tables, 'proven', { ...ahead, wanted, isPassed: () => false });
  const results = resultsOf(tables, proven, 'proven', words);
  const isEnough = refusesUnknowns || proven.groups.length > wanted || !proven.isComplete;
  if (isEnough) {
    return { results, stepsTaken: steps - budget.left, isComplete: proven.isComplete };
  }
  const isPassed = hiddenBy(proven.groups, (cost) => priceIn(cost, priceLane));
  const left = wanted - proven.groups.length;
  const open = gatherGroups(tables, 'open', { ...ahead, wanted: left, isPassed });
  return {
    results: [...results, ...resultsOf(tables, open, 'open', words)],
    stepsTaken: steps - budget.left,
    isComplete: open.isComplete,
  };
}

function resultsOf(
  { variables }: Tables,
  { groups }: Groups,
  grade: Phase,
  words: Run['words'],
): SavedResult[] {
  return groups.flatMap(({ cost, found }) =>
    found.map(({ values }): SavedResult => {
      const changes = values.flatMap((value, variable) =>
        value === 0
          ? []
          : [`${variables[variable]?.name ?? ''}: ${words[variable]?.[value] ?? ''}`],
      );
      return { grade, cost, changes };
    }),
  );
}
