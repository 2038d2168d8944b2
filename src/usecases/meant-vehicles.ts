/**
 * Questions about a vehicle of which only something is known: which vehicles may be meant, and what
 * each of them comes to. The question is asked of each as if it were named; of vehicles that
 * nothing tells apart it is asked once.
 */

import { alikeKey } from '../domain/identify/alike.js';
import type { AskContext } from '../domain/identify/ask.js';
import {
  type Candidate,
  MOST_JUDGED,
  MOST_SOLVED,
  type VehicleFilter,
} from '../domain/identify/candidate.js';
import type { SettlingContext, ToldBesides } from '../domain/identify/settling.js';
import { QuestionError } from './errors.js';
import { Faults } from './faults.js';
import type { Edition } from './library.js';
import { factsOf, type VehicleInput } from './question.js';
import { factsMeasured } from './readings.js';
import { latestYearOf, vehicleDirectory } from './vehicle-directory.js';

/** What is known of the vehicle, beside facts; names as they were typed. */
export type KnownOfVehicle = Pick<VehicleFilter, 'make' | 'model' | 'variant' | 'year' | 'built'>;

/** In place of which vehicle it is. */
export interface PartlyKnown extends Pick<VehicleInput, 'facts' | 'measured' | 'fitted'> {
  readonly known: KnownOfVehicle;
}

/** Those that may be meant, one at least, in the order of `GET /v1/vehicles`. */
export interface Meant {
  readonly found: readonly Candidate[];
  /** What is known already, for what may be asked. */
  readonly context: AskContext;
}

/** Throws `QuestionError` where a fact has a fault, and where no vehicle can be meant. */
export function vehiclesMeant(edition: Edition, { known, ...told }: PartlyKnown): Meant {
  const { catalogue, head } = edition;
  const faults = new Faults();
  const measured = factsMeasured(catalogue, told.measured, faults);
  const facts = factsOf(catalogue, { ...told.facts, ...measured }, faults);
  faults.endIfAny();
  const filter: VehicleFilter = { ...known, text: null, layout: null, facts };
  const found = vehicleDirectory(catalogue).find(filter, { isReplacedToo: false });
  if (found.length === 0) throw noVehicle(known);
  const { year, built } = known;
  const latestYear = latestYearOf(head);
  return { found, context: { facts: catalogue.facts, known: { year, built, facts }, latestYear } };
}

/** Told of the first field that narrows the list, whichever of them leaves none. */
function noVehicle({ make, model, variant, year, built }: KnownOfVehicle): QuestionError {
  const fields = Object.entries({ make, model, variant, year, built });
  const told = fields.filter(([, value]) => value !== null);
  const name = told.map(([, value]) => value).join(' ');
  const [at = 'make'] = told.map(([field]) => field);
  return new QuestionError([{ at, code: 'unknown-vehicle', data: { name, meant: null } }]);
}

/** Vehicles of which one stands for all. */
export interface Alike {
  readonly sample: Candidate;
  readonly all: readonly Candidate[];
}

export function alikeOf(found: readonly Candidate[], { catalogue }: Edition): Alike[] {
  const alike = new Map<string, Candidate[]>();
  for (const candidate of found) {
    const key = alikeKey(candidate.vehicle, catalogue);
    const known = alike.get(key);
    if (known === undefined) alike.set(key, [candidate]);
    else known.push(candidate);
  }
  return [...alike.values()].flatMap((all) =>
    all[0] === undefined ? [] : { sample: all[0], all },
  );
}

/**
 * Those that are asked one by one; null where too many may be meant, or too many searches would
 * have to be made.
 */
export function askedEach(
  { found }: Meant,
  edition: Edition,
  { isSolved }: { readonly isSolved: boolean },
): readonly Alike[] | null {
  if (found.length > MOST_JUDGED) return null;
  const alike = alikeOf(found, edition);
  return isSolved && alike.length > MOST_SOLVED ? null : alike;
}

/**
 * A vehicle that may be meant, with the answer that it is given: its own, or of one alike. One that
 * has no such place as the question speaks of has none, and is no less meant for that.
 */
export type MeantAnswer<Answer> = { readonly candidate: Candidate } & Told<Answer>;

type Told<Answer> =
  | { readonly answer: Answer; readonly noPlace: null }
  | { readonly answer: null; readonly noPlace: QuestionError };

/** All that were asked, in the order of the vehicles, and the answers that there are. */
export interface MeantAnswers<Answer> {
  readonly all: readonly MeantAnswer<Answer>[];
  readonly given: readonly [Answer, ...Answer[]];
}

/**
 * @param ask throws `QuestionError`, which is thrown on where it is of more than places, or where
 * no vehicle has the place.
 */
export function answersOf<Answer>(
  { found }: Meant,
  alike: readonly Alike[],
  ask: (vehicle: string) => Answer,
): MeantAnswers<Answer> {
  const answers = new Map<Candidate, MeantAnswer<Answer>>();
  for (const { sample, all } of alike) {
    const asked = orNoPlace<Told<Answer>>(
      () => ({ answer: ask(sample.vehicle.id), noPlace: null }),
      (noPlace) => ({ answer: null, noPlace }),
    );
    for (const candidate of all) answers.set(candidate, { candidate, ...asked });
  }
  const all = found.flatMap((candidate) => answers.get(candidate) ?? []);
  const [first, ...others] = all.flatMap(({ answer }) => (answer === null ? [] : [answer]));
  if (first !== undefined) return { all, given: [first, ...others] };
  throw all[0]?.noPlace ?? new Error('what is meant was asked');
}

/** What comes of a question, or of there being no such place as it speaks of. */
export function orNoPlace<Result>(
  ask: () => Result,
  noPlace: (error: QuestionError) => Result,
): Result {
  try {
    return ask();
  } catch (error) {
    if (!(error instanceof QuestionError) || !isOfPlaces(error)) throw error;
    return noPlace(error);
  }
}

/** The answer of the first that has the places of which the question speaks. */
export function firstAnswer<Answer>({ found }: Meant, ask: (vehicle: string) => Answer): Answer {
  let refused: QuestionError | null = null;
  for (const { vehicle } of found) {
    try {
      return ask(vehicle.id);
    } catch (error) {
      if (!(error instanceof QuestionError) || !isOfPlaces(error)) throw error;
      refused ??= error;
    }
  }
  throw refused ?? new Error('what is meant was asked');
}

/** What has to be said of a question for it to be settled, beside what each vehicle comes to. */
interface Settlable<Outcome> {
  readonly edition: Edition;
  readonly input: PartlyKnown;
  readonly meant: Meant;
  /** So many more are asked at the most. */
  readonly most: number;
  /** Facts that conditions of the question read. */
  readonly read: ReadonlySet<string>;
  /** Places that what is asked about has to do with. */
  readonly places: readonly string[];
  readonly ask: (vehicle: string, told: ToldBesides) => Outcome;
  readonly notAsked: Outcome;
  readonly isOpen: (outcome: Outcome) => boolean;
}

export function settlingContext<Outcome>(
  question: Settlable<Outcome>,
  alike: readonly Alike[],
): SettlingContext<Outcome> {
  const { edition, input, meant, read, places, notAsked, isOpen } = question;
  const measured = input.measured.flatMap(({ on }) => on.position ?? []);
  return {
    ...meant.context,
    catalogue: edition.catalogue,
    read,
    places: new Set([...Object.keys(input.fitted), ...measured]),
    near: new Set(places.flatMap((id) => [id, ...besidesOf(id, meant.found)])),
    outcomeWith: askingAgain(question, alike),
    notAsked,
    isOpen,
  };
}

/** The places that meet this one. */
function besidesOf(id: string, found: readonly Candidate[]): string[] {
  const layouts = new Set(found.map(({ vehicle }) => vehicle.layout));
  const ends = [...layouts].flatMap(({ matings }) => [...matings.values()].map((one) => one.ends));
  return ends
    .map((both) => both.map(({ position }) => position))
    .filter((both) => both.includes(id))
    .flat();
}

/** Each question once for all that nothing tells apart, and no more of them than are allowed. */
function askingAgain<Outcome>(
  { most, ask }: Settlable<Outcome>,
  alike: readonly Alike[],
): SettlingContext<Outcome>['outcomeWith'] {
  const samples = new Map(
    alike.flatMap(({ sample, all }) => all.map((one) => [one, sample] as const)),
  );
  const known = new Map<string, { readonly outcome: Outcome } | null>();
  return (candidate, told) => {
    const { id } = (samples.get(candidate) ?? candidate).vehicle;
    const key = JSON.stringify([id, [...told.facts], [...told.fitted]]);
    const before = known.get(key);
    if (before !== undefined) return before;
    if (known.size >= most) return null;
    const asked = unlessRefused(() => ({ outcome: ask(id, told) }));
    known.set(key, asked);
    return asked;
  };
}

/** What is told besides may leave nothing at a place of which something is said to be measured. */
function unlessRefused<Asked>(ask: () => Asked): Asked | null {
  try {
    return ask();
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    return null;
  }
}

/** The question with this told besides. */
export function toldBesides<Input extends PartlyKnown>(input: Input, told: ToldBesides): Input {
  return {
    ...input,
    facts: { ...input.facts, ...Object.fromEntries(told.facts) },
    fitted: { ...input.fitted, ...Object.fromEntries(told.fitted) },
  };
}

const OF_PLACES: ReadonlySet<string> = new Set([
  'unknown-position',
  'unknown-mating',
  'not-handed',
]);

function isOfPlaces({ faults }: QuestionError): boolean {
  return faults.every(({ code }) => OF_PLACES.has(code));
}
