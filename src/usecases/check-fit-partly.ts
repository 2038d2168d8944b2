/**
 * Does this part fit a vehicle of which only something is known? What every vehicle that it could
 * be comes to; and where they differ, the fewest questions that settle it.
 */

import { asksFor } from '../domain/identify/ask.js';
import type { Candidate, VehicleFilter } from '../domain/identify/candidate.js';
import { type Settled, type SettlingAsk, settlingAsks } from '../domain/identify/settling.js';
import type { AnswerHead, CautionView, FitAnswer, SaidReason } from './answer.js';
import { askLabelled } from './ask-views.js';
import { once } from './cautions.js';
import { checkFit, type FitInput } from './check-fit.js';
import { QuestionError } from './errors.js';
import { Faults } from './faults.js';
import { withHead } from './head.js';
import type { Edition, Library } from './library.js';
import { factsOf } from './question.js';
import { Speaker } from './speaker.js';
import { latestYearOf, vehicleDirectory } from './vehicle-directory.js';
import { vehicleLabel } from './vehicle-label.js';
import type { AskValueView, AskView } from './vehicle-view.js';

/** What is known of the vehicle, beside facts; names as they were typed. */
export type KnownOfVehicle = Pick<VehicleFilter, 'make' | 'model' | 'variant' | 'year' | 'built'>;

export interface PartlyFitInput extends Omit<FitInput, 'vehicle'> {
  readonly known: KnownOfVehicle;
}

/** What comes of the part on all vehicles that may be meant; null where that is not known. */
export type PartlyVerdict = FitAnswer['verdict'] | 'depends';

export interface OutcomeCount {
  verdict: FitAnswer['verdict'];
  count: number;
}

export interface SettlingValueView extends AskValueView {
  /** What the part comes to on all that this answer leaves. */
  verdict: PartlyVerdict;
  outcomes: OutcomeCount[];
}

export interface SettlingAskView extends Omit<AskView, 'values'> {
  values: SettlingValueView[];
}

/** A vehicle that may be meant. */
export interface MeantVehicle {
  vehicle: string;
  label: string;
  alone: FitAnswer['alone'];
  verdict: FitAnswer['verdict'];
  complete: boolean;
}

export interface PartlyFitAnswer extends AnswerHead {
  changes: 'yes' | 'no';
  asked: string;
  part: string;
  name: string;
  verdict: PartlyVerdict;
  /** Nothing better is left out of any of the answers. */
  complete: boolean;
  summary: SaidReason;
  /** In the order of `GET /v1/vehicles`; none where too many may be meant. */
  vehicles: MeantVehicle[];
  counts: { total: number };
  outcomes: OutcomeCount[];
  ask: SettlingAskView[];
  /** Whatever the answers to all questions of `ask` are, one verdict is left. */
  settles: boolean;
  cautions: CautionView[];
  /** The whole answer, where one vehicle alone can be meant. */
  fit: FitAnswer | null;
}

/** So many are asked one by one, with a search for changes and without. */
export const MOST_MEANT = { yes: 20, no: 200 } as const;

export function checkFitPartly(library: Library, input: PartlyFitInput): PartlyFitAnswer {
  const edition = library.edition(input.edition);
  const faults = new Faults();
  const facts = factsOf(edition.catalogue, input.facts, faults);
  faults.endIfAny();
  const filter: VehicleFilter = { ...input.known, text: null, layout: null, facts };
  const directory = vehicleDirectory(edition.catalogue);
  const found = directory.find(filter, { isReplacedToo: false });
  if (found.length === 0) throw noVehicle(input);
  const asked: Asked = { library, edition, input, facts };
  const changes = input.changes === 'no' ? 'no' : 'yes';
  return found.length > MOST_MEANT[changes] ? tooMany(found, asked) : judgedEach(found, asked);
}

interface Asked {
  readonly library: Library;
  readonly edition: Edition;
  readonly input: PartlyFitInput;
  readonly facts: ReadonlyMap<string, string>;
}

/** Told of the first field that narrows the list, whichever of them leaves none. */
function noVehicle({ known }: PartlyFitInput): QuestionError {
  const { make, model, variant, year, built } = known;
  const fields = Object.entries({ make, model, variant, year, built });
  const told = fields.filter(([, value]) => value !== null);
  const name = told.map(([, value]) => value).join(' ');
  const [at = 'make'] = told.map(([field]) => field);
  return new QuestionError([{ at, code: 'unknown-vehicle', data: { name, meant: null } }]);
}

interface Meant {
  readonly candidate: Candidate;
  readonly fit: FitAnswer;
}

function judgedEach(found: readonly Candidate[], asked: Asked): PartlyFitAnswer {
  const meant = meantBy(found, asked);
  const speaker = speakerFor(asked);
  const settled = meant.map(({ candidate, fit }): Settled<FitAnswer['verdict']> => {
    return { candidate, outcome: fit.verdict };
  });
  const { asks, isCertain } = settlingAsks(settled, contextOf(asked));
  const [only, ...others] = meant;
  if (only === undefined) throw new Error('what is meant was judged');
  const verdict = verdictOf(settled.map(({ outcome }) => outcome));
  return withHead(asked.edition, speaker, {
    ...headOf(only.fit),
    verdict,
    complete: meant.every(({ fit }) => fit.complete),
    summary: others.length === 0 ? only.fit.summary : summaryOf(verdict, meant.length, speaker),
    vehicles: meant.map(({ candidate: { vehicle }, fit }) => {
      const { alone, verdict: own, complete } = fit;
      const label = vehicleLabel(vehicle, speaker.lang);
      return { vehicle: vehicle.id, label, alone, verdict: own, complete };
    }),
    counts: { total: meant.length },
    outcomes: countsOf(settled.map(({ outcome }) => outcome)),
    ask: verdict === 'depends' ? asks.map((ask) => settlingView(ask, speaker)) : [],
    settles: verdict !== 'depends' || isCertain,
    cautions: once(meant.flatMap(({ fit }) => fit.cautions)),
    fit: others.length === 0 ? only.fit : null,
  });
}

/**
 * A vehicle that has no such place as the question speaks of is not the one that is meant, as long
 * as another has it.
 */
function meantBy(found: readonly Candidate[], { library, edition, input }: Asked): Meant[] {
  const { known: _, ...question } = input;
  let refused: QuestionError | null = null;
  const meant: Meant[] = [];
  for (const candidate of found) {
    const vehicle = candidate.vehicle.id;
    try {
      const fit = checkFit(library, { ...question, edition: edition.head.number, vehicle });
      meant.push({ candidate, fit });
    } catch (error) {
      if (!(error instanceof QuestionError) || !isOfPlaces(error)) throw error;
      refused ??= error;
    }
  }
  if (meant.length === 0 && refused !== null) throw refused;
  return meant;
}

const OF_PLACES: ReadonlySet<string> = new Set([
  'unknown-position',
  'unknown-mating',
  'not-handed',
]);

function isOfPlaces({ faults }: QuestionError): boolean {
  return faults.every(({ code }) => OF_PLACES.has(code));
}

/** Nobody is asked one by one: the questions are those of the list of vehicles. */
function tooMany(found: readonly Candidate[], asked: Asked): PartlyFitAnswer {
  const { library, edition, input } = asked;
  const { known: _, ...question } = input;
  const [first] = found;
  if (first === undefined) throw new Error('too many vehicles are some');
  // What the part is called, and whether there is such a part, the first one tells as well.
  const vehicle = first.vehicle.id;
  const named = checkFit(library, { ...question, vehicle, changes: 'no' });
  const speaker = speakerFor(asked);
  const outcomes: OutcomeCount[] = [{ verdict: null, count: found.length }];
  return withHead(edition, speaker, {
    ...headOf(named),
    changes: input.changes === 'no' ? 'no' : 'yes',
    verdict: null,
    complete: false,
    summary: speaker.said('too-many-vehicles', { count: found.length }),
    vehicles: [],
    counts: { total: found.length },
    outcomes,
    ask: asksFor(found, contextOf(asked)).map((ask) => {
      const values = ask.values.map(({ value, count }) => {
        const left = Array.from({ length: count }, () => null);
        return { value, outcomes: left };
      });
      return settlingView({ ...ask, values }, speaker);
    }),
    settles: false,
    cautions: named.cautions,
    fit: null,
  });
}

function contextOf({ edition, input, facts }: Asked) {
  const { year, built } = input.known;
  const latestYear = latestYearOf(edition.head);
  return { facts: edition.catalogue.facts, known: { year, built, facts }, latestYear };
}

function speakerFor({ edition, input }: Asked): Speaker {
  return new Speaker({ catalogue: edition.catalogue, layout: null, lang: input.lang });
}

function headOf({ changes, asked, part, name }: FitAnswer) {
  return { changes, asked, part, name };
}

/** One for all of them, or that it depends; what is not known of one of them is not of all. */
function verdictOf(verdicts: readonly FitAnswer['verdict'][]): PartlyVerdict {
  const [first = null, ...others] = verdicts;
  return others.every((one) => one === first) ? first : 'depends';
}

function countsOf(verdicts: readonly FitAnswer['verdict'][]): OutcomeCount[] {
  const all = ['fits', 'fits-with-changes', 'unknown', 'does-not-fit', null] as const;
  return all
    .map((verdict) => {
      return { verdict, count: verdicts.filter((one) => one === verdict).length };
    })
    .filter(({ count }) => count > 0);
}

function settlingView(ask: SettlingAsk<FitAnswer['verdict']>, speaker: Speaker): SettlingAskView {
  const { labels, ...view } = askLabelled(ask, speaker);
  const values = ask.values.map(({ value, outcomes }, index): SettlingValueView => {
    return {
      value,
      label: labels[index] ?? value,
      count: outcomes.length,
      verdict: verdictOf(outcomes),
      outcomes: countsOf(outcomes),
    };
  });
  return { ...view, values };
}

const EACH = {
  fits: 'each-fits',
  'fits-with-changes': 'each-fits-with-changes',
  unknown: 'each-unknown',
  'does-not-fit': 'none-fits',
  depends: 'depends',
} as const;

/** Of several vehicles; changes were not looked for where there is no verdict. */
function summaryOf(verdict: PartlyVerdict, count: number, speaker: Speaker): SaidReason {
  if (verdict === null) return speaker.said('not-alone', {});
  return speaker.said(EACH[verdict], { count });
}
