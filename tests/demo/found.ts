/**
 * Finds in an answer what a test speaks of.
 */

import { expect } from 'vitest';
import type {
  CautionView,
  ConstraintView,
  FitAnswer,
  FitPositionView,
  JudgedView,
  Outcome,
} from '../../src/usecases/answer.js';

/** `mating or check id: code` of all that is in a state, in the order of the layout. */
export function inState(state: Outcome, { matings: met, checks, ...more }: JudgedView): string[] {
  const { choices, rules, places, statements } = more;
  const ofMatings = met.map((one) => ({ ...one, id: one.mating }));
  const all = [...places, ...ofMatings, ...checks, ...choices, ...rules, ...statements];
  const found = all.filter((one) => one.state === state);
  return [...new Set(found.map(({ id, code }) => `${id}: ${code}`))];
}

export function onlyPosition({ positions }: FitAnswer): FitPositionView {
  expect(positions).toHaveLength(1);
  return positions[0] as FitPositionView;
}

export function positionOf({ positions }: FitAnswer, id: string): FitPositionView {
  const found = positions.find(({ position }) => position === id);
  expect(found).toBeDefined();
  return found as FitPositionView;
}

export function check({ checks }: JudgedView, id: string): ConstraintView {
  const found = checks.find((one) => one.id === id);
  expect(found).toBeDefined();
  return found as ConstraintView;
}

/** What checks and rules warn of, beside the usual cautions of the groups. */
export function codes(cautions: readonly CautionView[]): string[] {
  return cautions.filter(({ code, group }) => code !== group).map(({ code }) => code);
}
