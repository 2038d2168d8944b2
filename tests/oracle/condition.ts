/**
 * Conditions: joined by strong Kleene logic, each check in them judged on its own.
 */

import { best, type Outcome, opposite, worst } from './outcome.js';
import { namesIn } from './term.js';
import type { RawCheck } from './trial.js';

export type PositionTest = 'changed' | 'kept' | 'opened' | 'empty';
const POSITION_TESTS: readonly string[] = ['changed', 'kept', 'opened', 'empty'];

/** Where a condition looks. */
export interface View {
  readonly judge: (raw: RawCheck) => Outcome;
  readonly look: (test: PositionTest, position: string) => Outcome;
  readonly hasAdapter: (mating: string, part: string) => boolean;
}

type RawCondition = Readonly<Record<string, unknown>>;

export function judgeCondition(raw: unknown, view: View): Outcome {
  const condition = raw as RawCondition;
  const inner = (of: unknown) => (of as readonly unknown[]).map((one) => judgeCondition(one, view));
  if ('all' in condition) return worst(inner(condition.all));
  if ('any' in condition) return best(inner(condition.any));
  if ('not' in condition) return opposite(judgeCondition(condition.not, view));
  if ('adapter' in condition) {
    return view.hasAdapter(String(condition.mating), String(condition.adapter)) ? 'holds' : 'fails';
  }
  const [[word, subject] = ['', '']] = Object.entries(condition);
  if (POSITION_TESTS.includes(word)) return view.look(word as PositionTest, String(subject));
  return view.judge(condition);
}

/** What conditions and checks name. */
export interface Names {
  readonly positions: readonly string[];
  readonly matings: readonly string[];
  /** Positions of which they ask whether they are opened. */
  readonly opened: readonly string[];
}

const NO_NAMES: Names = { positions: [], matings: [], opened: [] };

export function joinNames(all: readonly Names[]): Names {
  return {
    positions: [...new Set(all.flatMap(({ positions }) => positions))],
    matings: [...new Set(all.flatMap(({ matings }) => matings))],
    opened: [...new Set(all.flatMap(({ opened }) => opened))],
  };
}

interface Layout {
  readonly matings?: readonly { readonly id: string; readonly between: readonly string[] }[];
  readonly terms?: Readonly<Record<string, unknown>>;
}

export function namesInCondition(raw: unknown, layout: Layout): Names {
  if (raw === undefined) return NO_NAMES;
  const condition = raw as RawCondition;
  if ('adapter' in condition) return { ...NO_NAMES, matings: [String(condition.mating)] };
  const joined = condition.all ?? condition.any ?? (condition.not && [condition.not]);
  if (joined !== undefined) {
    return joinNames((joined as unknown[]).map((one) => namesInCondition(one, layout)));
  }
  const [[word, subject] = ['', '']] = Object.entries(condition);
  if (!POSITION_TESTS.includes(word)) return namesInCheck(condition, layout);
  const position = String(subject);
  // Whether it is opened says nothing of what stands there.
  if (word === 'opened') return { ...NO_NAMES, opened: [position] };
  return { ...NO_NAMES, positions: [position] };
}

/** The terms of a check, as they are written; its own condition is not among them. */
export function termsOf(raw: RawCheck): readonly unknown[] {
  const [tested] = (raw['one-of'] ?? []) as readonly unknown[];
  const keys = ['equal', 'clearance', 'at-least', 'at-most', 'within', 'agree', 'coupling'];
  return [tested, ...[...keys, 'carries', 'demand', 'whenEmpty'].map((key) => raw[key])];
}

export function namesInCheck(raw: RawCheck, layout: Layout): Names {
  const { terms = {}, matings = [] } = layout;
  const names = namesIn(termsOf(raw), terms).filter((name) => !name.startsWith('fact.'));
  return joinNames(
    names.map((name) => {
      const [first = '', second] = name.split('.');
      const isAdapter = second === 'adapter' && matings.some(({ id }) => id === first);
      return { ...NO_NAMES, ...(isAdapter ? { matings: [first] } : { positions: [first] }) };
    }),
  );
}

/** The checks in a condition: these run for each hand; the rest asks of whole positions. */
export function checksIn(raw: unknown): RawCheck[] {
  if (typeof raw !== 'object' || raw === null) return [];
  const { all, any, not, ...condition } = raw as Record<string, unknown>;
  const inner = (all ?? any ?? (not === undefined ? undefined : [not])) as unknown[] | undefined;
  if (inner !== undefined) return inner.flatMap(checksIn);
  const isOfPositions = [...POSITION_TESTS, 'adapter'].some((word) => word in condition);
  return isOfPositions ? [] : [condition];
}
