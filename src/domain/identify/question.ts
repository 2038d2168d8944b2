/**
 * Everything that can be asked of a vehicle that is known in part, and which of those that may be
 * meant each answer may be true of.
 *
 * An answer to most questions leaves some vehicles out, and the rest as they are. One that is laid
 * over the vehicle can change what it comes to as well: a fact that something reads, and what is
 * fitted at a place today. What is fitted says nothing of which vehicle it is, whatever the works
 * fitted, so it leaves none out.
 */

import type { Catalogue, Fact, FittedHere } from '../catalogue/catalogue.js';
import type { AskContext, AskField } from './ask.js';
import { type Candidate, isBuiltBetween, monthText } from './candidate.js';
import { factsRead } from './facts-read.js';

/** `fitted` is what stands at a place. */
export type SettlingField = AskField | 'fitted';

export interface Question {
  readonly field: SettlingField;
  /** The fact that is asked for; null where it is another field. */
  readonly fact: string | null;
  /** The place of which it is asked what is fitted there; null where it is another field. */
  readonly position: string | null;
  /** Who each answer may be true of, as indices of the candidates. */
  readonly answers: readonly Answer[];
  /** Whether an answer can change what a vehicle comes to. */
  readonly isLaid: boolean;
}

export interface Answer {
  readonly value: string;
  readonly members: ReadonlySet<number>;
}

/** What can be asked and is not known; only what leaves some out with some answer. */
export function questionsFor(
  candidates: readonly Candidate[],
  context: AskContext & { readonly catalogue: Catalogue; readonly read: ReadonlySet<string> },
): Question[] {
  const { year, built, facts } = context.known;
  const names = (['make', 'model', 'variant'] as const).map((field) =>
    nameQuestion(candidates, field),
  );
  const months = built !== null ? [] : [builtQuestion(candidates, year, context.latestYear)];
  const asked = [...context.facts.values()].filter(({ id }) => !facts.has(id));
  const read = factsRead(
    candidates.map(({ vehicle }) => vehicle),
    context.catalogue,
  );
  const all = [
    ...names,
    ...months,
    ...asked.map((fact) =>
      factQuestion(candidates, fact, read.has(fact.id) || context.read.has(fact.id)),
    ),
  ];
  return all.filter(
    ({ answers, isLaid }) =>
      isLaid || answers.some(({ members }) => members.size > 0 && members.size < candidates.length),
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
  return { field, ...OF_NO_MORE, answers };
}

const OF_NO_MORE = { fact: null, position: null, isLaid: false } as const;

/** The year; the month once that is known. */
function builtQuestion(
  candidates: readonly Candidate[],
  year: number | null,
  latestYear: number,
): Question {
  if (year !== null) {
    const months = Array.from({ length: 12 }, (_, index) => monthText(year, index + 1));
    const answers = months.map((one) => builtIn(candidates, one, one, one));
    return { field: 'built', ...OF_NO_MORE, answers };
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
  return { field: 'year', ...OF_NO_MORE, answers };
}

function builtIn(
  candidates: readonly Candidate[],
  value: string,
  from: string,
  until: string,
): Answer {
  const members = membersOf(candidates, ({ vehicle }) => isBuiltBetween(vehicle, from, until));
  return { value, members };
}

function factQuestion(
  candidates: readonly Candidate[],
  { id, values }: Fact,
  isLaid: boolean,
): Question {
  const answers = [...values.keys()].map((value) => {
    const members = membersOf(
      candidates,
      ({ vehicle }) => (vehicle.facts.get(id) ?? value) === value,
    );
    return { value, members };
  });
  return { field: 'fact', fact: id, position: null, answers, isLaid };
}

function membersOf(
  candidates: readonly Candidate[],
  isTrueOf: (candidate: Candidate) => boolean,
): Set<number> {
  return new Set(candidates.flatMap((one, index) => (isTrueOf(one) ? [index] : [])));
}

/**
 * What is fitted at places that all of them have, where the works fitted this to one of them and
 * that to another, or what they fitted hangs on a fact. Of a place with a left and a right piece
 * only where both are of one article.
 *
 * @param known places of which it is known already.
 * @param near places that are asked about first.
 */
export function placeQuestions(
  candidates: readonly Candidate[],
  known: ReadonlySet<string>,
  near: ReadonlySet<string>,
): Question[] {
  const everybody = new Set(candidates.keys());
  const places = [...(candidates[0]?.vehicle.layout.positions.keys() ?? [])].filter(
    (id) => !known.has(id) && candidates.every(({ vehicle }) => vehicle.layout.positions.has(id)),
  );
  const asked = places.flatMap((id): Question[] => {
    const found = candidates.map(({ vehicle }) => fittedBy(vehicle.fitted.get(id)));
    const values = new Set(found.flatMap((one) => one ?? []));
    if (values.size < 2 || found.includes(null)) return [];
    const answers = [...values].map((value) => ({ value, members: everybody }));
    return [{ field: 'fitted', fact: null, position: id, answers, isLaid: true }];
  });
  const isNear = ({ position }: Question) => near.has(position ?? '');
  return [...asked.filter(isNear), ...asked.filter((one) => !isNear(one))];
}

/** As `fitted` of a question takes it; none where nobody recorded it, null where it cannot. */
function fittedBy(here: FittedHere | undefined): readonly string[] | null {
  if (here === undefined) return [];
  const [one, other] = here.hands ? [here.left, here.right] : [here.occupant, here.occupant];
  const [left, right] = [one, other].map((seat) =>
    (seat.is === 'option' ? [...seat.by.values()] : [seat]).flatMap((occupant) => {
      if (occupant.is === 'part') return [occupant.part];
      return occupant.is === 'empty' ? ['none'] : [];
    }),
  );
  const isOne = left?.every((value, index) => value === right?.[index]) === true;
  return isOne && left.length === right?.length ? left : null;
}
