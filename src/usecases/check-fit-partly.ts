/**
 * Does this part fit a vehicle of which only something is known? What every vehicle that it could
 * be comes to; and where they differ, the fewest questions that settle it.
 */

import { MOST_JUDGED, MOST_SOLVED } from '../domain/identify/candidate.js';
import { narrowingAsks, settlingAsks, type ToldBesides } from '../domain/identify/settling.js';
import type { AnswerHead, CautionView, FitAnswer, SaidReason } from './answer.js';
import { type SettlingAskView, settlingViews, tallyOf } from './ask-views.js';
import { once } from './cautions.js';
import { checkFit, type FitInput } from './check-fit.js';
import type { QuestionError } from './errors.js';
import { withHead } from './head.js';
import type { Edition, Library } from './library.js';
import {
  type Alike,
  answersOf,
  askedEach,
  firstAnswer,
  type Meant,
  orNoPlace,
  type PartlyKnown,
  settlingContext,
  toldBesides,
  vehiclesMeant,
} from './meant-vehicles.js';
import { Speaker } from './speaker.js';
import { vehicleLabel } from './vehicle-label.js';

export interface PartlyFitInput extends Omit<FitInput, 'vehicle'>, PartlyKnown {}

type Verdict = FitAnswer['verdict'];

/** What comes of the part on all vehicles that may be meant; null where that is not known. */
export type PartlyVerdict = Verdict | 'depends';

export interface OutcomeCount {
  verdict: Verdict;
  count: number;
}

/** What the part comes to on all that an answer leaves. */
export interface LeadsToVerdict {
  verdict: PartlyVerdict;
  outcomes: OutcomeCount[];
}

/** A vehicle that may be meant. */
export interface MeantVehicle {
  vehicle: string;
  label: string;
  alone: FitAnswer['alone'];
  verdict: Verdict;
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
  ask: SettlingAskView<LeadsToVerdict>[];
  /** Whatever the answers to all questions of `ask` are, one verdict is left. */
  settles: boolean;
  cautions: CautionView[];
  /** The whole answer, where one vehicle alone can be meant. */
  fit: FitAnswer | null;
}

export function checkFitPartly(library: Library, input: PartlyFitInput): PartlyFitAnswer {
  const edition = library.edition(input.edition);
  const meant = vehiclesMeant(edition, input);
  const asked = { library, edition, input, meant };
  const alike = askedEach(meant, edition, { isSolved: input.changes !== 'no' });
  return alike === null ? tooMany(asked) : judgedEach(alike, asked);
}

interface Asked {
  readonly library: Library;
  readonly edition: Edition;
  readonly input: PartlyFitInput;
  readonly meant: Meant;
}

function judgedEach(alike: readonly Alike[], asked: Asked): PartlyFitAnswer {
  const { edition, input, meant } = asked;
  const answers = answersOf(meant, alike, (vehicle) => fitOf(vehicle, asked));
  const speaker = speakerFor(asked);
  const { all, given } = answers;
  const settled = all.map(({ candidate, answer, noPlace }) => {
    return {
      candidate,
      outcome: noPlace === null ? answer.verdict : withoutPlace(noPlace).verdict,
    };
  });
  const [first] = given;
  const isOne = all.length === 1;
  const again = {
    edition,
    input,
    meant,
    most: input.changes === 'no' ? MOST_JUDGED : MOST_SOLVED,
    read: new Set<string>(),
    places: first.positions.map(({ position }) => position),
    ask: (vehicle: string, told: ToldBesides): Verdict =>
      orNoPlace(
        () => fitOf(vehicle, { ...asked, input: toldBesides(input, told) }).verdict,
        (error) => withoutPlace(error).verdict,
      ),
    notAsked: null,
    // Of one vehicle alone its own answer says what to find out.
    isOpen: (verdict: Verdict) => verdict === 'unknown' && !isOne,
  };
  const { asks, isCertain } = settlingAsks(settled, settlingContext(again, alike));
  const { verdict, outcomes } = leadsTo(settled.map(({ outcome }) => outcome));
  return withHead(edition, speaker, {
    ...headOf(first),
    verdict,
    complete: given.every((answer) => answer.complete),
    summary: isOne ? first.summary : summaryOf(verdict, all.length, speaker),
    vehicles: all.map(({ candidate: { vehicle }, answer, noPlace }) => {
      const { alone, verdict: own, complete } = noPlace === null ? answer : withoutPlace(noPlace);
      const label = vehicleLabel(vehicle, speaker.lang);
      return { vehicle: vehicle.id, label, alone, verdict: own, complete };
    }),
    counts: { total: all.length },
    outcomes,
    ask: settlingViews(asks, speaker, leadsTo),
    settles: isCertain,
    cautions: once(given.flatMap((answer) => answer.cautions)),
    fit: isOne ? first : null,
  });
}

/**
 * A part does not fit at a place that a vehicle has not. What else the question says of such a
 * place cannot be so on that vehicle, which leaves the verdict open.
 */
function withoutPlace({
  faults,
}: QuestionError): Pick<MeantVehicle, 'alone' | 'verdict' | 'complete'> {
  const isOfPart = faults.every(({ at }) => at === 'position');
  return isOfPart
    ? { alone: 'fails', verdict: 'does-not-fit', complete: true }
    : { alone: 'open', verdict: 'unknown', complete: true };
}

function fitOf(vehicle: string, { library, edition, input }: Asked): FitAnswer {
  const { known: _, ...question } = input;
  return checkFit(library, { ...question, edition: edition.head.number, vehicle });
}

/** Nobody is asked one by one: the questions are those of the list of vehicles. */
function tooMany(asked: Asked): PartlyFitAnswer {
  const { edition, input, meant } = asked;
  // What the part is called, and whether there is such a part, any of them tells as well.
  const alone: Asked = { ...asked, input: { ...input, changes: 'no' } };
  const named = firstAnswer(meant, (vehicle) => fitOf(vehicle, alone));
  const speaker = speakerFor(asked);
  const { length: count } = meant.found;
  return withHead(edition, speaker, {
    ...headOf(named),
    changes: input.changes === 'no' ? 'no' : 'yes',
    verdict: null,
    complete: false,
    summary: speaker.said('too-many-vehicles', { count }),
    vehicles: [],
    counts: { total: count },
    outcomes: [{ verdict: null, count }],
    ask: settlingViews(narrowingAsks(meant.found, meant.context), speaker, leadsTo),
    settles: false,
    cautions: named.cautions,
    fit: null,
  });
}

function speakerFor({ edition, input, meant }: Asked): Speaker {
  const layout = meant.found[0]?.vehicle.layout ?? null;
  return new Speaker({ catalogue: edition.catalogue, layout, lang: input.lang });
}

function headOf({ changes, asked, part, name }: FitAnswer) {
  return { changes, asked, part, name };
}

const VERDICTS = ['fits', 'fits-with-changes', 'unknown', 'does-not-fit', null] as const;

/** One for all of them, or that it depends; what is not known of one of them is not of all. */
function leadsTo(verdicts: readonly Verdict[]): LeadsToVerdict {
  const [first = null, ...others] = verdicts;
  return {
    verdict: others.every((one) => one === first) ? first : 'depends',
    outcomes: tallyOf<Verdict>(verdicts, VERDICTS).map(([verdict, count]) => {
      return { verdict, count };
    }),
  };
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
