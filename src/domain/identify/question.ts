/**
 * Everything that can be asked of a vehicle that is known in part, and which of those that may be
 * meant each answer may be true of.
 */

import type { Fact } from '../catalogue/catalogue.js';
import type { AskContext, AskField } from './ask.js';
import { type Candidate, isBuiltBetween, monthText } from './candidate.js';

export interface Question {
  readonly field: AskField;
  readonly fact: string | null;
  /** Who each answer may be true of, as indices of the candidates. */
  readonly answers: readonly { readonly value: string; readonly members: ReadonlySet<number> }[];
}

/** What can be asked and is not known; only what leaves some out with some answer. */
export function questionsFor(candidates: readonly Candidate[], context: AskContext): Question[] {
  const { year, built, facts } = context.known;
  const names = (['make', 'model', 'variant'] as const).map((field) =>
    nameQuestion(candidates, field),
  );
  const months = built !== null ? [] : [builtQuestion(candidates, year, context.latestYear)];
  const asked = [...context.facts.values()].filter(({ id }) => !facts.has(id));
  const all = [...names, ...months, ...asked.map((fact) => factQuestion(candidates, fact))];
  return all.filter(({ answers }) =>
    answers.some(({ members }) => members.size > 0 && members.size < candidates.length),
  );
}

function nameQuestion(
  candidates: readonly Candidate[],
  field: 'make' | 'model' | 'variant',
): Question {
  const spelt = new Map<string, string>();
  for (const candidate of candidates) {
    const name = candidate[field];
    if (name !== null && !spelt.has(name)) spelt.set(name, candidate.vehicle[field] ?? name);
  }
  const answers = [...spelt].map(([name, value]) => {
    return { value, members: membersOf(candidates, (one) => (one[field] ?? name) === name) };
  });
  return { field, fact: null, answers };
}

/** The year; the month once that is known. */
function builtQuestion(
  candidates: readonly Candidate[],
  year: number | null,
  latestYear: number,
): Question {
  if (year !== null) {
    const months = Array.from({ length: 12 }, (_, index) => monthText(year, index + 1));
    return {
      field: 'built',
      fact: null,
      answers: months.map((one) => builtIn(candidates, one, one, one)),
    };
  }
  const known = candidates.flatMap(({ vehicle }) => vehicle.built.flatMap((month) => month ?? []));
  const years = known.map((month) => Number(month.slice(0, 4)));
  const isOpen = candidates.some(({ vehicle }) => vehicle.built[1] === null);
  const first = Math.min(...years);
  const last = Math.max(...years, isOpen ? latestYear : first);
  const span =
    years.length === 0 ? [] : Array.from({ length: last - first + 1 }, (_, at) => first + at);
  const answers = span.map((one) =>
    builtIn(candidates, String(one), monthText(one, 1), monthText(one, 12)),
  );
  return { field: 'year', fact: null, answers };
}

function builtIn(candidates: readonly Candidate[], value: string, from: string, until: string) {
  const members = membersOf(candidates, ({ vehicle }) => isBuiltBetween(vehicle, from, until));
  return { value, members };
}

function factQuestion(candidates: readonly Candidate[], { id, values }: Fact): Question {
  const answers = [...values.keys()].map((value) => {
    const members = membersOf(
      candidates,
      ({ vehicle }) => (vehicle.facts.get(id) ?? value) === value,
    );
    return { value, members };
  });
  return { field: 'fact', fact: id, answers };
}

function membersOf(
  candidates: readonly Candidate[],
  isTrueOf: (candidate: Candidate) => boolean,
): Set<number> {
  return new Set(candidates.flatMap((one, index) => (isTrueOf(one) ? [index] : [])));
}
