/**
 * An answer does not hang on what was asked before it: what is kept of one question is true of the
 * next one too, of another vehicle, with other things said of it, and the other way round.
 */

import { describe, expect, test } from 'vitest';
import type { Seats } from '../../../src/domain/judge/configuration.js';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import { resolveKits } from '../../../src/domain/kit/resolve.js';
import { demoQuestion } from './demo-question.js';

const said: Seats = {
  hands: false,
  seat: { occupant: { is: 'part', part: 'prop-late' }, origin: 'said' },
};

const shafts = { vehicle: 'lirren-1', part: 'rear-shaft-late', position: 'rear-half-shaft' };
const box = { vehicle: 'lirren-1', part: 'gearbox-6-late', position: 'gearbox' };

const renewed = { vehicle: 'lirren-1', part: 'prop-late', position: 'prop-shaft' };
const sayingShaft = { seats: new Map([['prop-shaft', said]]), adapters: new Map() };
const renewal = demoQuestion(renewed).wants.map((want) =>
  want.is === 'part' ? { ...want, renews: true } : want,
);

const questions: readonly KitQuestion[] = [
  demoQuestion(shafts),
  demoQuestion({ ...shafts, part: 'rear-shaft-strong-left' }, { said: sayingShaft }),
  demoQuestion({ ...shafts, part: 'rear-shaft-remade-left' }, { ignorePresent: true }),
  demoQuestion({ ...shafts, vehicle: 'hulvane' }),
  // The same piece anew, where what is said does not go together.
  demoQuestion(renewed, { said: sayingShaft, wants: renewal, ignorePresent: true }),
  demoQuestion(renewed, { said: sayingShaft, wants: renewal }),
  demoQuestion(box, { use: 'off-road' }),
  demoQuestion(box, { keep: ['rear-final-drive'] }),
  demoQuestion(box, { avoid: { ...demoQuestion(box).avoid, parts: new Set(['clutch-late']) } }),
];

/** The same question to a catalogue of its own, of which nothing is kept yet. */
function alone(question: KitQuestion): KitQuestion {
  const catalogue = { ...question.catalogue };
  return { ...question, catalogue, pairsOf: catalogue };
}

function told(question: KitQuestion) {
  const { routes, hasMore } = resolveKits(question);
  const ways = routes.map(({ grade, changes, basket }) => {
    return { grade, changes, lines: basket.lines.map(({ key, price }) => [key, price]) };
  });
  return { ways, hasMore };
}

describe('what was asked before', () => {
  const cold = questions.map((question) => told(alone(question)));

  test('changes nothing', () => {
    expect(questions.map(told)).toEqual(cold);
  });

  test('nor does it backwards', () => {
    expect(questions.toReversed().map(told)).toEqual(cold.toReversed());
  });

  test('the questions are answered differently', () => {
    expect(new Set(cold.map((one) => JSON.stringify(one))).size).toBeGreaterThan(4);
  });
});
