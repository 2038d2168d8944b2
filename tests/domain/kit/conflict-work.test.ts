/**
 * How much work it is to say why a question of the demo has no way, counted in solves and steps,
 * never in time. Each bound is about twice what it takes.
 */

import { describe, expect, test } from 'vitest';
import { conflictOf } from '../../../src/domain/kit/conflict.js';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import { demoQuestion } from './demo-question.js';

const wish = { vehicle: 'lirren-1', part: 'gearbox-6-late', position: 'gearbox' };

/** It may only change what is named. */
function changingOnly(...changed: string[]): KitQuestion {
  const question = demoQuestion(wish);
  const { positions } = question.vehicle.layout;
  return { ...question, keep: [...positions.keys()].filter((id) => !changed.includes(id)) };
}

describe('why the demo has no way', () => {
  test.each([
    ['where all else is to stay', changingOnly('gearbox'), 320, 1100],
    ['where three parts are to be avoided besides', avoiding(changingOnly('gearbox')), 360, 1500],
    ['where only two positions may change', within(demoQuestion(wish), 2), 42, 250],
  ])('%s', (_name, question, solves, steps) => {
    const { isSmallest, path, work } = conflictOf(question);
    expect(isSmallest).toBe(true);
    expect(path).not.toBeNull();
    expect(work.solves).toBeLessThanOrEqual(solves);
    expect(work.steps).toBeLessThanOrEqual(steps);
  });
});

function avoiding(question: KitQuestion): KitQuestion {
  const parts = new Set(['propshaft-hybrid', 'clutch-strong', 'flange-plate']);
  return { ...question, avoid: { ...question.avoid, parts } };
}

function within(question: KitQuestion, changedPositions: number): KitQuestion {
  return { ...question, limits: { ...question.limits, changedPositions } };
}
