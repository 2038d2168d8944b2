/**
 * Every limit that a client of the service can meet, in one table: its name, which a problem
 * repeats in `limit`, its number, and what it is a limit of. Whoever holds a limit takes its
 * number from here; what the domain holds, it says itself.
 */

import { MOST_ALTERNATIVES } from '../domain/catalogue/compile-face.js';
import { LONGEST_ID, LONGEST_SCALAR } from '../domain/catalogue/grammar.js';
import { MOST_POINTS } from '../domain/catalogue/value.js';
import { MAX_DIGITS } from '../domain/quantity/notation.js';

/** What is counted. Characters are UTF-16 units, as `length` of a text counts in JavaScript. */
export type LimitUnit =
  | 'adapters'
  | 'alternatives'
  | 'bytes'
  | 'characters'
  | 'digits'
  | 'entries'
  | 'faults'
  | 'levels'
  | 'milliseconds'
  | 'places'
  | 'points'
  | 'values';

export interface Limit {
  /** The most that is taken, itself included. */
  readonly value: number;
  readonly unit: LimitUnit;
  /** What it is the most of, and what becomes of more. */
  readonly about: string;
}

export const LIMITS = {
  urlBytes: {
    // RFC 9110 section 4.1 asks that 8000 be read.
    value: 8192,
    unit: 'bytes',
    about: 'Path and query of a URL together; POST takes the same questions in a body.',
  },
  headerBytes: {
    value: 16_384,
    unit: 'bytes',
    about: 'The request line and all headers together.',
  },
  bodyBytes: { value: 1_000_000, unit: 'bytes', about: 'A body.' },
  arrivalMs: {
    // A megabyte takes a slow line ten seconds.
    value: 30_000,
    unit: 'milliseconds',
    about: 'The time for a request to arrive whole.',
  },
  bodyValues: {
    // Several times as many as a question has that names every place and writes out two faces.
    value: 5000,
    unit: 'values',
    about: 'Values in a body, lists and objects among them.',
  },
  bodyLevels: {
    // Deeper than any question or document is.
    value: 32,
    unit: 'levels',
    about: 'Lists and objects in one another in a body.',
  },
  placesInUrl: {
    value: 8,
    unit: 'places',
    about: 'Parameters of one group, such as `with.<position>`, in a URL; POST takes more.',
  },
  placesInBody: {
    // No layout has as many.
    value: 64,
    unit: 'places',
    about: 'Positions, matings or facts that one field of a body names.',
  },
  adaptersInRow: {
    // More than any mating takes.
    value: 8,
    unit: 'adapters',
    about: 'Adapters in a row in one mating; a mating may take fewer.',
  },
  nameCharacters: {
    // Ids are shorter, numbers of articles may be as long.
    value: 200,
    unit: 'characters',
    about: 'The name of a vehicle, a part, a face or a value of a fact.',
  },
  placeCharacters: {
    value: LONGEST_ID,
    unit: 'characters',
    about: 'The id of a position, a mating or a fact.',
  },
  valueCharacters: {
    value: LONGEST_SCALAR,
    unit: 'characters',
    about: 'A value with its unit: a torque, or a size of a face that is written out.',
  },
  languageTagCharacters: {
    // RFC 5646 section 4.4.1 asks for at least 35.
    value: 35,
    unit: 'characters',
    about: 'The language tag in `lang`.',
  },
  numberDigits: { value: MAX_DIGITS, unit: 'digits', about: 'Digits of one number in a value.' },
  faceAlternatives: {
    value: MOST_ALTERNATIVES,
    unit: 'alternatives',
    about: 'Ways in which a face that is written out can be.',
  },
  facePoints: {
    value: MOST_POINTS,
    unit: 'points',
    about: 'Points of a pattern in a face that is written out.',
  },
  listEntries: { value: 200, unit: 'entries', about: 'Entries on one page of a list.' },
  cursorCharacters: {
    // A cursor repeats the filters, which a URL holds.
    value: 4096,
    unit: 'characters',
    about: 'The cursor with which a list goes on.',
  },
  requestIdCharacters: {
    value: 128,
    unit: 'characters',
    about: 'An `X-Request-Id` that is taken over; a longer one is replaced by an id of our own.',
  },
  wishCharacters: {
    value: 1000,
    unit: 'characters',
    about: 'What is read of `Accept` and of `Accept-Language`; the rest is left unread.',
  },
  faultsTold: {
    // The first ones help, a million would not.
    value: 50,
    unit: 'faults',
    about: 'Faults of one request that a problem lists in `errors`.',
  },
} as const satisfies Readonly<Record<string, Limit>>;

export type LimitName = keyof typeof LIMITS;

/** All limits, in the order of the table. */
export const LIMIT_NAMES = Object.keys(LIMITS) as readonly LimitName[];
