/**
 * Whether a vehicle can take a lot whole: then that is meant where a question wants the lot and
 * says no more. What else the question demands is no matter here, so that to demand less of a kit
 * never makes it dearer.
 */

import type { Budget } from './core/problem.js';
import { demandsOf, without } from './demands.js';
import { gather } from './finder.js';
import type { KitQuestion } from './question.js';
import { problemOf } from './sweep.js';

/** @returns true also where the steps that are left do not suffice to show that it cannot. */
export function canGoInWhole(question: KitQuestion, lot: string, budget: Budget): boolean {
  const others = demandsOf(question).filter(({ is }) => is !== 'torque' && is !== 'present');
  const alone: KitQuestion = {
    ...without(question, others),
    wants: [{ is: 'lot', lot, whole: true }],
    from: 'recorded',
    prefer: 'cost',
  };
  const solved = problemOf(alone);
  return (['proven', 'open'] as const).some((phase) => {
    const options = { looksAhead: false, budget, wanted: 1, isPassed: () => false };
    const { candidates, isComplete } = gather(solved, phase, options);
    return candidates.length > 0 || !isComplete;
  });
}
