/**
 * What an answer of the demo asks to have measured is measured, and the question asked again: what
 * the fact settles alone is decided then, and of what it helps with less is left to find out.
 *
 * A number is read at its best estimate, more finely than is needed; of a fact each value is told;
 * of a place that nobody identified some part that goes there must decide, since others may have
 * gaps of their own.
 */

import { describe, expect, test } from 'vitest';
import type { JudgedView, MeasureView } from '../../src/usecases/answer.js';
import { QuestionError } from '../../src/usecases/errors.js';
import type { RouteView } from '../../src/usecases/kit-answer.js';
import type { MeasuredInput } from '../../src/usecases/question.js';
import { demoDocument, libraryOf } from '../memory-store.js';
import { askFit, askInspect, askKits } from './ask.js';
import { fits, inspections } from './questions.js';

const { catalogue } = libraryOf(demoDocument()).edition(null);

type Judged = Partial<JudgedView>;

function openIn(judged: readonly Judged[]): string[] {
  const all = judged.flatMap(({ matings = [], checks = [], choices = [], rules = [] }) => [
    ...matings.map(({ mating: id, state }) => ({ id, state })),
    ...checks,
    ...choices,
    ...rules,
  ]);
  return all.flatMap(({ id, state }) => (state === 'open' ? [id] : []));
}

/** Sizes of what nobody recorded at all; those of another dimension are refused. */
const UNRECORDED = ['500 ±1 mm', '500 ±1 N.m', '50 ±1 mm', '5000 ±1 N.m'];

/** What a person may find out: in the shape in which it is asked for. */
function findings({ on, now, needed }: MeasureView, layout: string): MeasuredInput[] {
  const { position, hand, part, interface: face, parameter, fact } = on;
  const place = { position, hand, part, interface: face, parameter, fact };
  const read = (value: string): MeasuredInput => ({ on: place, value, tool: null });
  if (fact !== null) return [...(catalogue.facts.get(fact)?.values.keys() ?? [])].map(read);
  if (part === null && parameter === null && position !== null) {
    const roles = catalogue.layouts.get(layout)?.positions.get(position)?.roles ?? [];
    const parts = [...catalogue.parts.values()];
    return parts
      .filter((one) => one.roles.some((role) => roles.includes(role)))
      .map(({ id }) => read(id));
  }
  if (now === null) return UNRECORDED.map(read);
  const [low, high] = [Number(now.low), Number(now.high)];
  // Where the best estimate is on the edge, no tolerance is certain: only an exact value is.
  const fine = needed === null ? 0 : Math.min((high - low) / 100, Number(needed.high) / 2);
  return [read(`${(low + high) / 2} ±${fine.toFixed(6)} ${now.unit}`)];
}

/** Null where the value is none of that dimension. */
function tried<Answer>(ask: () => Answer): Answer | null {
  try {
    return ask();
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    expect(error.faults.map(({ code }) => code)).toEqual(['reading-at-fault']);
    return null;
  }
}

const isDecided = (settles: readonly string[], open: readonly string[]) =>
  settles.every((id) => !open.includes(id));

/** The facts that bear on a constraint. */
const factsOn = (id: string, measure: readonly MeasureView[]) =>
  measure.filter(({ settles, helps }) => [...settles, ...helps].includes(id)).length;

interface Asked {
  readonly measure: readonly MeasureView[];
  readonly open: readonly string[];
}

function expectDecided(fact: MeasureView, before: Asked, answers: readonly Asked[]): void {
  expect(answers.length, fact.text).toBeGreaterThan(0);
  const decided = answers.filter(({ open }) => isDecided(fact.settles, open));
  const isIdentity = fact.on.part === null && fact.on.fact === null;
  if (isIdentity) expect(decided.length, fact.text).toBeGreaterThan(0);
  else expect(decided, fact.text).toHaveLength(answers.length);
  for (const { open, measure } of isIdentity ? decided : answers) {
    for (const id of fact.helps.filter((one) => open.includes(one))) {
      expect(factsOn(id, measure), `${fact.text} ${id}`).toBeLessThan(factsOn(id, before.measure));
    }
  }
}

const layoutOf = (vehicle: string) => catalogue.vehicles.get(vehicle)?.layout.id ?? '';
const toDecide = <One extends MeasureView>(measure: readonly One[]) =>
  measure.filter(({ purpose }) => purpose === 'to-decide');

describe('a fit or an inspection that is open', () => {
  const open = Object.entries({ ...fits, ...inspections }).filter(
    ([, ask]) => toDecide(ask().measure).length > 0,
  );

  test('there are some', () => {
    expect(open.length).toBeGreaterThan(2);
  });

  test.each(open)('%s', (_, { input }) => {
    const put = (measured: readonly MeasuredInput[]) => {
      if (!('part' in input)) {
        const { measure, judged } = askInspect(input.vehicle, { ...input, measured })();
        return { measure, open: openIn([judged]) };
      }
      const { measure, positions } = askFit(input.vehicle, input.part, { ...input, measured })();
      return { measure, open: openIn(positions) };
    };
    const before = put([]);
    for (const fact of toDecide(before.measure)) {
      const found = findings(fact, layoutOf(input.vehicle));
      expectDecided(
        fact,
        before,
        found.flatMap((one) => tried(() => put([one])) ?? []),
      );
    }
  });
});

describe('a way that is open', () => {
  const wishes = [
    ['lirren-1', 'starter-gallivet'],
    ['lirren-1', 'rear-shaft-remade-left'],
    ['lirren-1', 'front-hub-used'],
    ['hulvane', 'wheel-15-106'],
  ] as const;
  const lines = ({ lines: own }: RouteView) => own.map(({ key }) => key).join();

  test.each(wishes)('%s: %s', { timeout: 120_000 }, (vehicle, wish) => {
    const put = (measured: readonly MeasuredInput[]) =>
      askKits(vehicle, [wish], { measured })().routes;
    const [route] = put([]);
    if (route === undefined) throw new Error('there is a way');
    const layout = layoutOf(vehicle);
    const same = (routes: readonly RouteView[]) =>
      routes.find((one) => lines(one) === lines(route));
    const facts = toDecide(route.measure);
    expect(facts.length).toBeGreaterThan(0);
    for (const fact of facts) {
      const found = findings(fact, layout).slice(0, 8);
      const answers = found.map((one) => tried(() => put([one])) ?? []);
      // Where it fails now, the way is gone.
      const still = answers.flatMap((routes) => same(routes) ?? []);
      const read = still.map((one) => ({ measure: one.measure, open: openIn([one]) }));
      if (read.length > 0) expectDecided(fact, { ...route, open: openIn([route]) }, read);
      if (!fact.settlesRoutes.includes(0)) continue;
      expect(
        still.map(({ grade }) => grade),
        fact.text,
      ).toContain('proven');
    }
  });

  test.each(wishes)('%s: %s asks first for what settles most ways', (vehicle, wish) => {
    for (const { measure } of askKits(vehicle, [wish], { routes: 6 })().routes) {
      const ranks = measure.map(({ purpose, settlesRoutes, settles, helps }) => [
        purpose === 'to-order' ? 1 : 0,
        -settlesRoutes.length,
        -(settles.length + helps.length),
      ]);
      const inOrder = ranks.toSorted(
        (a, b) => a.map((n, at) => n - (b[at] ?? 0)).find(Boolean) ?? 0,
      );
      expect(ranks).toEqual(inOrder);
      expect(measure.map(({ id }) => id)).toEqual(measure.map((_, at) => `m${at + 1}`));
    }
  });
});
