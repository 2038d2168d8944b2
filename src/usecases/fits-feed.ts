/**
 * What fits what, over a whole edition, part by part: all of it, or what is different from another
 * edition. It is for whoever keeps a copy: a shop, an index of a search, a set of pages.
 *
 * At any time it holds the lines of one part. Order codes are left out: they change without an
 * edition. So are names and numbers, which are of the part and not of what it fits.
 */

import { ENGINE } from '../domain/engine.js';
import { spokenFor } from '../domain/explain/words.js';
import type { FitAnswer, Outcome } from './answer.js';
import { Faults } from './faults.js';
import { FeedSide, type Row } from './fits-feed-side.js';
import type { Edition, Library } from './library.js';
import { compareKeys } from './listing.js';
import { type CommonInput, vehicleOf } from './question.js';
import { checkOne } from './read-one.js';

export type FeedForm = 'pairs' | 'ranges';

export interface FitsFeedInput extends CommonInput {
  /** Only what is different from this edition; null for all there is. */
  readonly from: number | null;
  /** Only parts of this role. */
  readonly role: string | null;
  /** Only those of these outcomes; all where it is left open. */
  readonly alone: readonly Outcome[] | null;
  /** Only these parts and these vehicles, by id; null for all. */
  readonly parts: readonly string[] | null;
  readonly vehicles: readonly string[] | null;
  readonly form: FeedForm;
}

/** What is settled at the start: of which edition the lines are, and which are wanted. */
export interface FitsFeedStart {
  edition: number;
  from: number | null;
  engine: string;
  lang: string;
  form: FeedForm;
  role: string | null;
  alone: readonly Outcome[] | null;
  part: readonly string[] | null;
  vehicle: readonly string[] | null;
}

/** A part at one place of one vehicle that takes it, with nothing else changed. */
export interface FitsPair {
  part: string;
  vehicle: string;
  position: string;
  alone: Outcome;
  verdict: FitAnswer['verdict'];
}

/** Vehicles of one name that were built one after the other, and on which a part does alike. */
export interface FitsRange {
  part: string;
  make: string;
  model: string;
  variant: string | null;
  /** First and last month of any of them; null is not known, or still going on. */
  built: (string | null)[];
  label: string;
  position: string;
  alone: Outcome;
  verdict: FitAnswer['verdict'];
  /** How many there are. */
  vehicles: number;
  /** Others of this name that were built in these months come to something else. */
  mixed: boolean;
}

/** What was in the other edition and is no longer. */
export type Gone =
  | (Pick<FitsPair, 'part' | 'vehicle' | 'position'> & { gone: true })
  | (Pick<FitsRange, 'part' | 'make' | 'model' | 'variant' | 'built' | 'position' | 'alone'> & {
      gone: true;
    });

export type FeedLine = FitsPair | FitsRange | Gone;

/** Throws `QuestionError` before the first line; there is no other fault. */
export function startFitsFeed(library: Library, input: FitsFeedInput): FitsFeed {
  return new FitsFeed(library, input);
}

export class FitsFeed {
  readonly start: FitsFeedStart;
  /** The ids of the parts that are gone through. */
  readonly #parts: readonly string[];
  readonly #now: FeedSide;
  readonly #before: FeedSide | null;
  #told = 0;

  constructor(library: Library, input: FitsFeedInput) {
    const { role, alone, parts, vehicles, form, from } = input;
    const lang = spokenFor(input.lang);
    const edition = library.edition(input.edition);
    const other = from === null ? null : otherEdition(library, from);
    check(edition, other, input);
    this.start = {
      edition: edition.head.number,
      from,
      engine: ENGINE,
      lang,
      form,
      role,
      alone,
      part: parts,
      vehicle: vehicles,
    };
    const wanted = { role, alone, parts, vehicles, form, lang };
    this.#now = new FeedSide(edition, wanted);
    this.#before = other === null ? null : new FeedSide(other, wanted);
    const ids = new Set([...this.#now.parts, ...(this.#before?.parts ?? [])]);
    this.#parts = [...ids].sort();
  }

  /** How many parts there are to be gone through, and how many have been. */
  get parts(): number {
    return this.#parts.length;
  }

  get told(): number {
    return this.#told;
  }

  /**
   * The lines of each part, in the order of part, vehicle and position, or of part, make, model,
   * variant, months, position and outcome, by code unit. A list without lines leaves a turn to
   * others: something had to be judged.
   */
  *lines(): Generator<readonly FeedLine[]> {
    for (const part of this.#parts) {
      const now = yield* this.#now.rowsOf(part);
      const before = this.#before === null ? null : yield* this.#before.rowsOf(part);
      this.#told += 1;
      yield before === null ? now.map(({ line }) => line) : differences(now, before);
    }
  }
}

function otherEdition(library: Library, number: number): Edition {
  if (library.find(number) !== null) return library.edition(number);
  const faults = new Faults();
  faults.add('from', 'unknown-edition', { edition: number });
  return faults.end();
}

/** What one of the two editions has is known: it may have come, or gone. */
function check(
  edition: Edition,
  other: Edition | null,
  { role, parts, vehicles, lang }: FitsFeedInput,
): void {
  const faults = new Faults();
  const { catalogue } = edition;
  if (role !== null && other?.catalogue.roles.has(role) !== true) {
    checkOne(catalogue.roles, 'role', { id: role, at: 'role' }, faults);
  }
  for (const id of parts ?? []) {
    if (other?.catalogue.parts.has(id) === true) continue;
    checkOne(catalogue.parts, 'part', { id, at: 'part' }, faults);
  }
  for (const id of vehicles ?? []) {
    if (other?.catalogue.vehicles.get(id)?.replacedBy.length === 0) continue;
    vehicleOf(edition, { vehicle: id, facts: {}, lang }, faults);
  }
  faults.endIfAny();
}

/** Both stand in the order of their keys. */
function differences(now: readonly Row[], before: readonly Row[]): FeedLine[] {
  const lines: FeedLine[] = [];
  let at = 0;
  const goneUntil = (key: Row['key'] | null): Row | undefined => {
    for (; at < before.length; at += 1) {
      const row = before[at] as Row;
      const order = key === null ? -1 : compareKeys(row.key, key);
      if (order >= 0) return order === 0 ? row : undefined;
      lines.push(goneOf(row));
    }
    return undefined;
  };
  for (const row of now) {
    const same = goneUntil(row.key);
    if (same !== undefined) at += 1;
    if (JSON.stringify(same?.line) !== JSON.stringify(row.line)) lines.push(row.line);
  }
  goneUntil(null);
  return lines;
}

/** Only by what it is told apart: what came of it then, whoever keeps a copy has. */
function goneOf({ line }: Row): Gone {
  if ('vehicle' in line) {
    const { part, vehicle, position } = line;
    return { part, vehicle, position, gone: true };
  }
  const { part, make, model, variant, built, position, alone } = line;
  return { part, make, model, variant, built, position, alone, gone: true };
}
