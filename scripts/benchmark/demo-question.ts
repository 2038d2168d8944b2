/**
 * The main question of the demo catalogue: which kits put the late gearbox into the early vehicle.
 * The first time everything is asked of the judge; after that the same is asked again.
 */

import { createHash } from 'node:crypto';
import type { KitQuestion } from '../../src/domain/kit/question.js';
import { resolveKits } from '../../src/domain/kit/resolve.js';
import { problemOf, sweep } from '../../src/domain/kit/sweep.js';
import { openStore } from '../../src/store/sqlite.js';
import { Faults } from '../../src/usecases/faults.js';
import { type KitInput, USUAL_KIT } from '../../src/usecases/kit-input.js';
import { kitQuestionOf } from '../../src/usecases/kit-question.js';
import { Library } from '../../src/usecases/library.js';
import { prepareEdition, publishEdition } from '../../src/usecases/publish-edition.js';
import { demoCatalogue } from '../example-service.js';
import { type Times, timed, timesOf } from './measured.js';

const VEHICLE = 'lirren-1';
const PART = 'gearbox-6-late';
const MOST_ROUTES = 20;

export interface DemoResult {
  readonly name: string;
  readonly routes: number;
  readonly isComplete: boolean;
  /** Over a catalogue that nothing was asked of before. */
  readonly cold: number;
  readonly warm: Times;
  readonly steps: number;
  /** Combinations that the judge was asked about, and how many relations there are. */
  readonly asked: number;
  readonly relations: number;
}

export function measuredDemo(rounds: number): DemoResult[] {
  return [
    { name: 'first route', routes: 1 },
    { name: 'first 3 routes', routes: 3 },
    { name: 'all routes', routes: MOST_ROUTES },
  ].map(({ name, routes }) => {
    const question = demoQuestion(routes);
    const looksAhead = routes > 1;
    const first = timed(() => resolveKits(question, { looksAhead }));
    const again = Array.from(
      { length: rounds },
      () => timed(() => resolveKits(question, { looksAhead })).ms,
    );
    const { routes: found, isComplete, steps } = first.result;
    const warm = timesOf(again.map((ms) => [ms]));
    const counts = askedOf(question, looksAhead);
    return { name, routes: found.length, isComplete, cold: first.ms, warm, steps, ...counts };
  });
}

/** What the search among proven ways asks. */
function askedOf(question: KitQuestion, looksAhead: boolean) {
  const solved = problemOf(question);
  const budget = { left: question.steps };
  sweep(solved, 'proven', { wanted: question.routes, looksAhead, budget, isPassed: () => false });
  const { tables } = solved.tables;
  return {
    asked: tables.reduce((sum, { countAsked }) => sum + countAsked, 0),
    relations: tables.length,
  };
}

/** Over a catalogue of its own, so that nothing has been asked of it. */
function demoQuestion(routes: number): KitQuestion {
  const digest = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');
  const store = openStore(':memory:', { mode: 'create' });
  try {
    const edition = prepareEdition(demoCatalogue(), digest);
    publishEdition({ store, clock: () => '2026-01-01T00:00:00.000Z' }, edition, null);
    const library = new Library(store, digest);
    const input: KitInput = {
      ...USUAL_KIT,
      edition: null,
      lang: 'en',
      units: 'metric',
      vehicle: VEHICLE,
      fitted: {},
      adapters: {},
      measured: [],
      facts: {},
      torque: null,
      use: null,
      ignorePresent: false,
      want: [{ part: PART, position: null, hand: null, renew: false }],
      routes,
    };
    return kitQuestionOf({ library, edition: library.edition(null), input }, new Faults()).question;
  } finally {
    store.close();
  }
}
