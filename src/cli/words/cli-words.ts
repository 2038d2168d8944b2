/**
 * What a language has to say on the command line around the sentences of an answer: headings,
 * labels, and how names are quoted. A language that lacks one of them does not compile.
 */

import type { Hand, Outcome } from '../../usecases/answer.js';
import type { PartlyVerdict } from '../../usecases/check-fit-partly.js';
import type { CodeEntry } from '../../usecases/list-codes.js';
import type { KitWords } from './kit-words.js';
import type { ShowWords } from './show-words.js';

type Verdict = NonNullable<PartlyVerdict>;

export interface CliWords {
  /** A name in the quotes of the language. */
  readonly quoted: (name: string) => string;
  readonly hands: Readonly<Record<Hand, string>>;
  readonly answer: AnswerWords;
  readonly finding: FindingWords;
  readonly names: NameWords;
  readonly fit: FitWords;
  readonly fits: FitsWords;
  readonly identify: IdentifyWords;
  readonly identifyPart: IdentifyPartWords;
  readonly kits: KitWords;
  readonly mate: MateWords;
  readonly vehicle: (id: string) => string;
  readonly show: ShowWords;
  readonly codes: CodesWords;
  readonly calculations: CalculationWords;
  readonly driveline: DrivelineWords;
}

/** What stands below every verdict. */
export interface AnswerWords {
  readonly order: string;
  readonly measure: string;
  readonly noTolerance: string;
  readonly recorded: (value: string) => string;
  /** More than one. */
  readonly settles: (points: number) => string;
  readonly notChecked: string;
  readonly cautions: string;
  readonly from: (edition: number, engine: string) => string;
}

export interface FindingWords {
  readonly fails: string;
  readonly open: string;
  readonly holds: string;
  readonly againstRecords: string;
  readonly notShown: string;
  readonly asBuilt: (places: number) => string;
  /** Stands before a sentence. */
  readonly side: Readonly<Record<Hand, string>>;
  /** Whether a sentence says itself which side it speaks of. */
  readonly saysSide: (sentence: string, hand: Hand) => boolean;
  /** What a value is called that has no name. */
  readonly value: string;
  readonly against: (sides: readonly string[]) => string;
  readonly ofPart: (value: string, part: string) => string;
}

/** What the names of parts in a question led to. */
export interface NameWords {
  /** A name that is no id. */
  readonly found: (asked: string, part: string) => string;
  readonly superseded: (part: string, by: string) => string;
  /** Stands above what to ask to tell vehicles apart. */
  readonly ask: string;
  /** The same where what is asked for leaves no vehicle out. */
  readonly settle: string;
  /** What to ask, which answers there are, and how to find out. */
  readonly question: (name: string, answers: readonly string[], how: string | null) => string;
}

export interface FitWords {
  readonly on: (part: string, vehicle: string) => string;
  readonly best: (places: readonly string[]) => string;
  readonly alone: Readonly<Record<Outcome, string>>;
  /** Above the kit, before its sum. */
  readonly kit: string;
  readonly present: string;
  readonly replaces: (parts: readonly string[]) => string;
}

/** Around lists of what fits what. */
export interface FitsWords {
  /** A part, and how many vehicles may be meant. */
  readonly meant: (part: string, vehicles: number) => string;
  /** What comes of a part on a vehicle, as short as it gets. */
  readonly verdicts: Readonly<Record<Verdict, string>>;
  /** Changes were not looked for. */
  readonly notAlone: string;
  readonly counts: (counts: Readonly<Record<Outcome, number>>) => string;
  /** What comes with a part out of a donor, and what is needed besides. */
  readonly comesWith: (parts: readonly string[]) => string;
  readonly alsoNeeded: (parts: readonly string[]) => string;
}

/** Around the vehicles that may be meant. */
export interface IdentifyWords {
  readonly left: (vehicles: number) => string;
  /** Above what leaves vehicles out. */
  readonly leftOut: string;
  readonly excluded: (name: string, vehicles: number) => string;
  readonly warnings: string;
}

/** Around the parts that a piece can be. */
export interface IdentifyPartWords {
  readonly nearest: string;
  readonly excluded: (told: string, parts: number) => string;
  readonly ask: string;
  /** A sentence, what can come out with how many parts that leaves, and how much more can. */
  readonly outcomes: (text: string, outcomes: readonly string[], more: number) => string;
}

/** Around the list of codes. */
export interface CodesWords {
  /** Above the codes of a group. */
  readonly groups: Readonly<Record<CodeEntry['group'], string>>;
  /** The data of a code has no field. */
  readonly noData: string;
  /** Which built-in kind has it. */
  readonly ofKind: (kind: string) => string;
  readonly from: (engine: string) => string;
}

/** Around the figures of a vehicle. */
export interface DrivelineWords {
  readonly before: string;
  /** One change, or the first, second … of several. */
  readonly after: (change: number | null) => string;
  readonly unknown: string;
  readonly outcomes: Readonly<Record<Outcome, string>>;
  readonly changes: Readonly<Record<'better' | 'worse', string>>;
  readonly noFigures: string;
}

/** Around the answers of calculators, and the list of them. */
export interface CalculationWords {
  readonly outcomes: Readonly<Record<Outcome, string>>;
  readonly given: string;
  readonly formulas: string;
  readonly assumed: string;
  readonly validity: string;
  readonly sources: string;
  /** How a source is known. */
  readonly bases: Readonly<
    Record<'read' | 'arithmetic' | 'from-memory' | 'common-practice', string>
  >;
  readonly warnings: string;
  readonly notFound: string;
  /** What a result would take besides. */
  readonly needs: (output: string, inputs: readonly string[]) => string;
  readonly takes: string;
  readonly gives: string;
  readonly isOptional: string;
  readonly severalAt: (most: number) => string;
  readonly example: string;
  readonly from: (engine: string) => string;
}

export interface MateWords {
  readonly face: (face: string, part: string | null) => string;
  readonly ends: (a: string, b: string, adapters: readonly string[]) => string;
}
