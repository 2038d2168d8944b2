/**
 * Which vehicle is this: by its identification number, and by whatever else is known of it? What
 * nobody recorded leaves no vehicle out, and no number proves what is fitted today.
 */

import {
  checkDigit,
  isVin,
  modelYears,
  vin as vinCalculation,
  writtenVin,
} from '../domain/driveline/vin.js';
import { sayField, sayTold } from '../domain/explain/words.js';
import { asksFor } from '../domain/identify/ask.js';
import {
  type Candidate,
  MOST_CANDIDATES,
  type VehicleFilter,
} from '../domain/identify/candidate.js';
import { type Telling, tellingsOf } from '../domain/identify/telling.js';
import type { AnswerHead, CautionView } from './answer.js';
import { askView } from './ask-views.js';
import { usualCautions } from './cautions.js';
import { Faults } from './faults.js';
import { withHead } from './head.js';
import type { Library } from './library.js';
import { vehicleEntry } from './list-vehicles.js';
import { type CommonInput, factsOf } from './question.js';
import { Speaker } from './speaker.js';
import { latestYearOf, vehicleDirectory } from './vehicle-directory.js';
import type { AskView, VehicleEntry } from './vehicle-view.js';

export interface IdentifyInput
  extends CommonInput,
    Pick<VehicleFilter, 'make' | 'model' | 'variant' | 'year' | 'built'> {
  /** As it was typed; `*` stands for a character that nobody could read. */
  readonly vin: string | null;
  readonly facts: Readonly<Record<string, string>>;
}

/** Why a vehicle may be meant: one for each thing that was told. */
export interface ToldView {
  field: Telling['field'];
  fact: string | null;
  /** False where nobody recorded it, so that it leaves no vehicle out. */
  recorded: boolean;
  text: string;
}

export interface CandidateVehicle extends VehicleEntry {
  why: ToldView[];
}

/** How many vehicles the record of one thing leaves out; each counts where it first goes. */
export interface ExcludedView {
  field: Telling['field'];
  fact: string | null;
  name: string;
  count: number;
}

/** What the number says by itself. */
export interface VinView {
  /** Places 1 to 3, 4 to 9 and 10 to 17 (ISO 3779). */
  maker: string;
  description: string;
  indicator: string;
  /** The digit that goes with it where one is asked for; null where a character is unread. */
  checkDigit: string | null;
  checkDigitAgrees: boolean | null;
  modelYears: number[];
}

export interface IdentifyAnswer extends AnswerHead {
  vin: VinView | null;
  candidates: CandidateVehicle[];
  counts: { total: number };
  excluded: ExcludedView[];
  ask: AskView[];
  warnings: { code: string; text: string }[];
  cautions: CautionView[];
}

export function identifyVehicle(library: Library, input: IdentifyInput): IdentifyAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const faults = new Faults();
  const vin = input.vin === null ? null : vinOf(input.vin, faults);
  const facts = factsOf(catalogue, input.facts, faults);
  faults.endIfAny();
  const directory = vehicleDirectory(catalogue);
  const tellings = tellingsOf({ ...input, vin, facts }, directory.fold);
  const { left, excluded } = sifted(directory.current, tellings);
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang });
  const { year, built } = input;
  const known = { year, built, facts };
  const asks = asksFor(left, {
    facts: catalogue.facts,
    known,
    latestYear: latestYearOf(edition.head),
  });
  return withHead(edition, speaker, {
    vin: vin === null ? null : vinView(vin),
    candidates: likeliest(left, tellings).map((candidate) => {
      const why = tellings.map((telling) => toldView(telling, candidate, speaker));
      return { ...vehicleEntry(candidate.vehicle, speaker), why };
    }),
    counts: { total: left.length },
    excluded: excluded.map(({ telling, count }) => {
      const { field, fact } = telling;
      return { field, fact, name: nameOf(telling, speaker), count };
    }),
    ask: asks.map((ask) => askView(ask, speaker)),
    warnings: warningsOf(vin, speaker),
    cautions: usualCautions(['general'], speaker),
  });
}

/** Which of them are left, and how many each thing that was told has left out. */
function sifted(all: readonly Candidate[], tellings: readonly Telling[]) {
  let left = all;
  const excluded: { readonly telling: Telling; readonly count: number }[] = [];
  for (const telling of tellings) {
    const next = left.filter((candidate) => telling.of(candidate) !== 'contradicts');
    if (next.length < left.length) excluded.push({ telling, count: left.length - next.length });
    left = next;
  }
  return { left, excluded };
}

/** Those of which most of what was told is recorded; equals in the order of the list. */
function likeliest(left: readonly Candidate[], tellings: readonly Telling[]): Candidate[] {
  const agreeing = (candidate: Candidate) =>
    tellings.filter((telling) => telling.of(candidate) === 'agrees').length;
  const counted = left.map((candidate) => ({ candidate, count: agreeing(candidate) }));
  counted.sort((a, b) => b.count - a.count);
  return counted.slice(0, MOST_CANDIDATES).map(({ candidate }) => candidate);
}

/** The number as plates have it; the first thing that no number has is told by its place alone. */
function vinOf(text: string, faults: Faults): string {
  const vin = writtenVin(text);
  const place = Array.from(vin).findIndex((sign) => !/[A-HJ-NPR-Z0-9*]/.test(sign));
  if (place !== -1) faults.add('vin', 'no-sign-of-a-vin', { place: place + 1 });
  else if (!isVin(vin)) faults.add('vin', 'wrong-length-of-vin', { length: vin.length });
  return vin;
}

function vinView(vin: string): VinView {
  const digit = vin.includes('*') ? null : checkDigit(vin);
  return {
    maker: vin.slice(0, 3),
    description: vin.slice(3, 9),
    indicator: vin.slice(9),
    checkDigit: digit,
    checkDigitAgrees: digit === null ? null : vin.charAt(8) === digit,
    modelYears: modelYears(vin),
  };
}

function nameOf({ field, fact }: Telling, speaker: Speaker): string {
  if (field === 'fact') return speaker.factName(fact ?? '');
  return sayField(field, speaker.lang).name;
}

function toldView(telling: Telling, candidate: Candidate, speaker: Speaker): ToldView {
  const { field, fact } = telling;
  const recorded = telling.of(candidate) === 'agrees';
  const text = sayTold(nameOf(telling, speaker), recorded, speaker.lang);
  return { field, fact, recorded, text };
}

/** As the calculator has them: what the number may mean, and that it proves no part. */
function warningsOf(vin: string | null, { lang }: Speaker): { code: string; text: string }[] {
  if (vin === null) return [];
  const { warnings: codes } = vinCalculation.calculate({ vin, market: null });
  return codes.map((code) => {
    const text = vinCalculation.warnings[code];
    if (text === undefined) throw new Error(`the calculator has no warning ${code}`);
    return { code, text: text[lang === 'de' ? 'de' : 'en'] };
  });
}
