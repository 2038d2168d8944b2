/**
 * What to ask somebody next, so that fewer vehicles are left: the questions that tell the rest
 * apart, with what each answer leaves.
 *
 * An answer leaves what it may be true of (see `candidate.ts`). So a vehicle that does not record
 * a fact counts at every value of it, and the counts of a question can come to more than there
 * are. Nobody is led past his vehicle that way.
 *
 * A model is asked for once the make is known, and the variant and facts once the model is: what
 * they mean depends on it. Each thing is asked for once.
 */

import type { Fact } from '../catalogue/catalogue.js';
import { type Candidate, isBuiltBetween, monthText } from './candidate.js';

export type AskField = 'make' | 'model' | 'variant' | 'year' | 'built' | 'fact';

export interface Ask {
  readonly field: AskField;
  /** The fact that is asked for; null where it is another field. */
  readonly fact: string | null;
  /** Two or more; none of them leaves nothing. */
  readonly values: readonly AskValue[];
}

export interface AskValue {
  /** As a filter takes it. */
  readonly value: string;
  /** So many vehicles are left with this answer. */
  readonly count: number;
}

export interface AskContext {
  /** The facts of the catalogue. */
  readonly facts: ReadonlyMap<string, Fact>;
  /** What is known already, and so is not asked for. */
  readonly known: {
    readonly year: number | null;
    readonly built: string | null;
    readonly facts: ReadonlyMap<string, unknown>;
  };
  /** Years are asked for up to this one where a vehicle may be built still. */
  readonly latestYear: number;
}

/**
 * The best question first. Those of which every answer leaves fewer vehicles stand before those of
 * which only some do; among them make, model, year and month, then variant and facts, by how few
 * are left on average. None where nothing tells the rest apart.
 *
 * @param candidates in the order in which their names are to be offered.
 */
export function asksFor(candidates: readonly Candidate[], context: AskContext): Ask[] {
  const total = candidates.length;
  const tells = (ask: Ask | null): ask is Ask =>
    ask?.values.some(({ count }) => count < total) ?? false;
  const wholes = [nameAsk(candidates), builtAsk(candidates, context)].filter(tells);
  const details = isOneModel(candidates) ? detailAsks(candidates, context).filter(tells) : [];
  const asks = [...wholes, ...details.sort((a, b) => meanLeft(a) - meanLeft(b))];
  const isSure = ({ values }: Ask) => values.every(({ count }) => count < total);
  return [...asks.filter(isSure), ...asks.filter((ask) => !isSure(ask))];
}

/** How many are left where every vehicle is as likely as the next. */
function meanLeft({ values }: Ask): number {
  const sum = values.reduce((all, { count }) => all + count, 0);
  return values.reduce((all, { count }) => all + count * count, 0) / sum;
}

function isOneModel([first, ...others]: readonly Candidate[]): boolean {
  return others.every(({ make, model }) => make === first?.make && model === first.model);
}

/** The make where it is not known; else the model. */
function nameAsk(candidates: readonly Candidate[]): Ask | null {
  const [first] = candidates;
  if (candidates.some(({ make }) => make !== first?.make)) {
    const values = tally(candidates, ({ make, vehicle }) => [make, vehicle.make]);
    return { field: 'make', fact: null, values };
  }
  if (isOneModel(candidates)) return null;
  const values = tally(candidates, ({ model, vehicle }) => [model, vehicle.model]);
  return { field: 'model', fact: null, values };
}

/**
 * How often there is each value, in the order of the first ones. Several spellings of one name
 * are one value, told by the first.
 */
function tally(
  candidates: readonly Candidate[],
  read: (one: Candidate) => readonly [key: string, value: string] | null,
): AskValue[] {
  const found = new Map<string, { readonly value: string; count: number }>();
  for (const candidate of candidates) {
    const named = read(candidate);
    if (named === null) continue;
    const [key, value] = named;
    const known = found.get(key);
    if (known === undefined) found.set(key, { value, count: 1 });
    else known.count += 1;
  }
  return [...found.values()];
}

/** The year; once that is known, the month. */
function builtAsk(candidates: readonly Candidate[], context: AskContext): Ask | null {
  const { year, built } = context.known;
  if (built !== null) return null;
  if (year === null) return yearAsk(candidates, context);
  const months = Array.from({ length: 12 }, (_, index) => monthText(year, index + 1));
  const counted = months.map((value) => {
    const count = candidates.filter(({ vehicle }) => isBuiltBetween(vehicle, value, value)).length;
    return { value, count };
  });
  return { field: 'built', fact: null, values: counted.filter(({ count }) => count > 0) };
}

function yearAsk(candidates: readonly Candidate[], { latestYear }: AskContext): Ask | null {
  const spans = candidates.map(({ vehicle }) => vehicle.built.map(yearOf));
  const recorded = spans.flat().filter((year) => year !== null);
  const [some] = recorded;
  if (some === undefined) return null;
  const isOpen = spans.some(([, until]) => until === null);
  const first = recorded.reduce((a, b) => Math.min(a, b), some);
  const last = recorded.reduce((a, b) => Math.max(a, b), isOpen ? latestYear : some);
  // One more for each year that a vehicle begins with, one fewer after the year that it ends with.
  const steps = Array.from({ length: last - first + 2 }, () => 0);
  const step = (year: number, by: number) => {
    steps[year - first] = (steps[year - first] ?? 0) + by;
  };
  for (const [from = null, until = null] of spans) {
    step(from ?? first, 1);
    step((until ?? last) + 1, -1);
  }
  let count = 0;
  const values = steps.map((by, index) => {
    count += by;
    return { value: String(first + index), count };
  });
  return { field: 'year', fact: null, values: values.filter((one) => one.count > 0) };
}

function yearOf(month: string | null): number | null {
  return month === null ? null : Number(month.slice(0, 4));
}

function detailAsks(candidates: readonly Candidate[], { facts, known }: AskContext): Ask[] {
  const variants = tally(candidates, ({ variant, vehicle }) =>
    variant === null ? null : [variant, vehicle.variant ?? variant],
  );
  const unnamed = candidates.filter(({ variant }) => variant === null).length;
  const values = variants.map(({ value, count }) => ({ value, count: count + unnamed }));
  const asked = [...facts.values()].filter(({ id }) => !known.facts.has(id));
  return [
    { field: 'variant', fact: null, values },
    ...asked.map((fact) => factAsk(candidates, fact)),
  ];
}

/** Every value that the fact can have, if only vehicles that do not record it could have it. */
function factAsk(candidates: readonly Candidate[], { id, values }: Fact): Ask {
  const counts = new Map([...values.keys()].map((value) => [value, 0]));
  let unrecorded = 0;
  for (const { vehicle } of candidates) {
    const value = vehicle.facts.get(id);
    if (value === undefined) unrecorded += 1;
    else counts.set(value, (counts.get(value) ?? 0) + 1);
  }
  const left = [...counts].map(([value, count]) => ({ value, count: count + unrecorded }));
  return { field: 'fact', fact: id, values: left.filter(({ count }) => count > 0) };
}
