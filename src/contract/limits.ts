/**
 * Every limit that a client of the service can meet, in one table: its name, which a problem
 * repeats in `limit`, its number, and what is counted. Whoever holds a limit takes its number from
 * here; what the domain holds, it says itself. What each is the most of, the languages say.
 */

import { MOST_ALTERNATIVES } from '../domain/catalogue/compile-face.js';
import { LONGEST_ID, LONGEST_SCALAR } from '../domain/catalogue/grammar.js';
import { MOST_POINTS } from '../domain/catalogue/value.js';
import { MOST_JUDGED, MOST_SOLVED } from '../domain/identify/candidate.js';
import { LONGEST_KEY, MOST_DRIVEN, MOST_ROUTES, MOST_STEPS } from '../domain/kit/extent.js';
import { MAX_DIGITS } from '../domain/quantity/notation.js';

/** What is counted. Characters are Unicode code points: an emoji of one sign is one. */
export type LimitUnit =
  | 'adapters'
  | 'alternatives'
  | 'bytes'
  | 'characters'
  | 'days'
  | 'digits'
  | 'entries'
  | 'faults'
  | 'headers'
  | 'levels'
  | 'milliseconds'
  | 'pieces'
  | 'places'
  | 'points'
  | 'routes'
  | 'steps'
  | 'tokens'
  | 'times'
  | 'values';

export interface Limit {
  /** The most that is taken, itself included. */
  readonly value: number;
  readonly unit: LimitUnit;
}

export const LIMITS = {
  urlBytes: {
    // RFC 9110 section 4.1 asks that 8000 be read.
    value: 8192,
    unit: 'bytes',
  },
  headerBytes: {
    value: 16_384,
    unit: 'bytes',
  },
  headerCount: {
    // A browser behind several proxies sends forty.
    value: 200,
    unit: 'headers',
  },
  bodyBytes: { value: 1_000_000, unit: 'bytes' },
  arrivalMs: {
    // A megabyte takes a slow line ten seconds.
    value: 30_000,
    unit: 'milliseconds',
  },
  stallMs: {
    // Longer than any answer is worked on.
    value: 120_000,
    unit: 'milliseconds',
  },
  batchLineBytes: {
    // A question that names every place and writes out what was measured has a tenth of it.
    value: 65_536,
    unit: 'bytes',
  },
  gzipExpansion: {
    // A list of the same few names over and over comes to a tenth of it.
    value: 200,
    unit: 'times',
  },
  bodyValues: {
    // Several times as many as a question has that names every place and writes out two faces.
    value: 5000,
    unit: 'values',
  },
  bodyLevels: {
    // Deeper than any question or document is.
    value: 32,
    unit: 'levels',
  },
  graphqlTokens: {
    // Four times what selects every field of a kit.
    value: 5000,
    unit: 'tokens',
  },
  graphqlBrackets: {
    // As deep as the levels, with the values of a question in the deepest of them.
    value: 48,
    unit: 'levels',
  },
  graphqlLevels: {
    // What explains a line of a kit goes half as deep.
    value: 24,
    unit: 'levels',
  },
  graphqlFields: {
    // All that there is of a fit with its kit and conflict has 12 000.
    value: 15_000,
    unit: 'entries',
  },
  graphqlCost: {
    // Twelve searches, or a hundred parts on vehicles as they are.
    value: 250,
    unit: 'steps',
  },
  placesInUrl: {
    value: 8,
    unit: 'places',
  },
  placesInBody: {
    // No layout has as many.
    value: 64,
    unit: 'places',
  },
  adaptersInRow: {
    // More than any mating takes.
    value: 8,
    unit: 'adapters',
  },
  nameCharacters: {
    // Ids are shorter, numbers of articles may be as long.
    value: 200,
    unit: 'characters',
  },
  refCharacters: {
    value: 200,
    unit: 'characters',
  },
  namesLookedUp: {
    value: 200,
    unit: 'entries',
  },
  fitsSolved: {
    // Each may take a search of a second.
    value: 20,
    unit: 'entries',
  },
  vehiclesJudged: { value: MOST_JUDGED, unit: 'entries' },
  vehiclesSolved: { value: MOST_SOLVED, unit: 'entries' },
  placeCharacters: {
    value: LONGEST_ID,
    unit: 'characters',
  },
  valueCharacters: {
    value: LONGEST_SCALAR,
    unit: 'characters',
  },
  languageTagCharacters: {
    // RFC 5646 section 4.4.1 asks for at least 35.
    value: 35,
    unit: 'characters',
  },
  numberDigits: { value: MAX_DIGITS, unit: 'digits' },
  faceAlternatives: {
    value: MOST_ALTERNATIVES,
    unit: 'alternatives',
  },
  facePoints: {
    value: MOST_POINTS,
    unit: 'points',
  },
  wants: {
    // More than one conversion wishes for.
    value: 20,
    unit: 'entries',
  },
  wantsInUrl: { value: 4, unit: 'entries' },
  kitEntries: { value: 64, unit: 'entries' },
  ownOffers: {
    // A kit has some twenty lines, each with several offers to choose from.
    value: 500,
    unit: 'entries',
  },
  ownedPieces: { value: 1000, unit: 'pieces' },
  stockPieces: { value: 1_000_000_000, unit: 'pieces' },
  leadDays: { value: 10_000, unit: 'days' },
  routes: { value: MOST_ROUTES, unit: 'routes' },
  drivenRoutes: { value: MOST_DRIVEN, unit: 'routes' },
  drivenLines: { value: 500, unit: 'entries' },
  routeKeyCharacters: { value: LONGEST_KEY, unit: 'characters' },
  kitSteps: { value: MOST_STEPS, unit: 'steps' },
  listEntries: { value: 200, unit: 'entries' },
  cursorCharacters: {
    // A cursor repeats the filters, which a URL holds.
    value: 4096,
    unit: 'characters',
  },
  requestIdCharacters: {
    value: 128,
    unit: 'characters',
  },
  wishCharacters: {
    value: 1000,
    unit: 'characters',
  },
  faultsTold: {
    // The first ones help, a million would not.
    value: 50,
    unit: 'faults',
  },
} as const satisfies Readonly<Record<string, Limit>>;

export type LimitName = keyof typeof LIMITS;

/** All limits, in the order of the table. */
export const LIMIT_NAMES = Object.keys(LIMITS) as readonly LimitName[];

/** What a schema takes for a limit: its number, and as the message of the rule its name. */
export function atMost(name: LimitName): [value: number, rule: { error: LimitName; abort: true }] {
  return [LIMITS[name].value, { error: name, abort: true }];
}

/** The name of a limit that a rule of a schema gave as its message; null where it is none. */
export function limitNamed(message: string): LimitName | null {
  return LIMIT_NAMES.find((name) => name === message) ?? null;
}

/** What a running server takes, by name: the numbers of the table, but for what it was told. */
export type LimitsInForce = Readonly<Record<LimitName, number>>;

export function limitsInForce(told: Partial<LimitsInForce> = {}): LimitsInForce {
  const usual = LIMIT_NAMES.map((name) => [name, LIMITS[name].value] as const);
  return { ...(Object.fromEntries(usual) as LimitsInForce), ...told };
}
