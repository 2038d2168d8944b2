/**
 * A question to the demo catalogue with the answer that it must have, told by hand. What is left
 * out of it must not be in the answer either: failing and open constraints, orders and facts to
 * find out are all of them; only numbers and cautions are those that the question is about.
 */

import { expect } from 'vitest';
import type {
  FitAnswer,
  FitPositionView,
  InspectAnswer,
  JudgedView,
  MateAnswer,
  MeasureView,
  Outcome,
} from '../../src/usecases/answer.js';
import type { FitInput } from '../../src/usecases/check-fit.js';
import type { MateInput } from '../../src/usecases/mate-faces.js';
import type { VehicleInput } from '../../src/usecases/question.js';
import type { Asked } from './ask.js';
import { codes, inState } from './found.js';

export type Answer = FitAnswer | InspectAnswer | MateAnswer;

export type Ask =
  | Asked<FitInput, FitAnswer>
  | Asked<VehicleInput, InspectAnswer>
  | Asked<MateInput, MateAnswer>;

export interface Told {
  readonly ask: Ask;
  readonly state: Outcome;
  /** `constraint: code` of what fails, cautions too. */
  readonly fails?: readonly string[];
  readonly open?: readonly string[];
  /** Exact ends of a margin, by constraint: whole numbers or fractions in the unit of its text. */
  readonly margins?: Readonly<Record<string, readonly [low: string, high: string]>>;
  readonly order?: readonly string[];
  /** Code, place, tolerance and tool of what to find out. */
  readonly measure?: readonly string[];
  readonly cautions?: readonly string[];
  /** Code of the first sentence, where it is the point. */
  readonly summary?: string;
}

/** Everything that `Told` speaks of, out of an answer, in the words of `Told`. */
export function expectTold(answer: Answer, told: Told): void {
  const judged = judgedOf(answer);
  const { fails = [], open = [], order = [], measure = [], margins = {} } = told;
  expect({
    state: stateOf(answer),
    fails: judged.flatMap((one) => inState('fails', one)),
    open: judged.flatMap((one) => inState('open', one)),
    order: ordersOf(answer),
    measure: answer.measure.map(asked),
  }).toEqual({ state: told.state, fails, open, order, measure });
  for (const [id, [low, high]] of Object.entries(margins)) {
    expect(marginOf(judged, id), id).toMatchObject({ low, high });
  }
  if (told.cautions !== undefined) {
    expect(codes(answer.cautions)).toEqual(expect.arrayContaining([...told.cautions]));
  }
  if (told.summary !== undefined) expect(answer.summary.code).toBe(told.summary);
}

export function stateOf(answer: Answer): Outcome {
  return 'alone' in answer ? answer.alone : answer.state;
}

function judgedOf(answer: Answer): JudgedView[] {
  if ('positions' in answer) return answer.positions;
  if ('judged' in answer) return [answer.judged];
  const nothing = { checks: [], choices: [], rules: [], places: [], statements: [] };
  return [{ matings: [answer.mating], ...nothing }];
}

function ordersOf(answer: Answer): (string | null)[] {
  const positions: Pick<FitPositionView, 'order'>[] =
    'positions' in answer ? answer.positions : 'order' in answer ? [answer] : [];
  return positions.flatMap(({ order }) => order.map(({ value }) => value?.text ?? null));
}

function asked({ code, on, needed, tool }: MeasureView): string {
  const place = [on.position ?? on.part, on.interface, on.parameter];
  return [code, place.filter((one) => one !== null).join('.'), needed?.text ?? null, tool]
    .filter((one) => one !== null)
    .join(' ');
}

function marginOf(judged: readonly JudgedView[], id: string): unknown {
  const [named, part] = id.split('/');
  const constraints = judged.flatMap(({ matings, checks }) => [
    ...matings.map((one) => ({ id: one.mating, checks: one.checks })),
    ...checks,
  ]);
  const found = constraints.find((one) => one.id === named);
  const own = found?.checks.find(({ check }) => part === undefined || check === part);
  return own?.margin ?? null;
}
