/**
 * How each language writes numbers: the mark before the decimals, the words between the digits,
 * and the symbols of units where the trade writes them in another way than records do.
 *
 * Source for German: DIN 1333 for the comma, DIN 5008 for the space before a unit and for the sign
 * of degrees, which follows its number closely.
 */

export interface NumberWords {
  /** Numbers and units are written as in records: then what is recorded stays as it is. */
  readonly isAsRecorded: boolean;
  /** Digits with a point, as this language writes them. */
  readonly digits: (digits: string) => string;
  readonly any: string;
  readonly about: (number: string) => string;
  readonly atLeast: (number: string) => string;
  readonly above: (number: string) => string;
  readonly atMost: (number: string) => string;
  readonly below: (number: string) => string;
  readonly range: (from: string, to: string) => string;
  /** Across and up. */
  readonly point: (x: string, y: string) => string;
  /** All of several values. */
  readonly list: (texts: readonly string[]) => string;
  /** One of several values. */
  readonly oneOf: (texts: readonly string[]) => string;
  /** Symbols of units that this language writes in another way than records do. */
  readonly symbols: Readonly<Record<string, string>>;
}

export const ENGLISH_NUMBERS: NumberWords = {
  isAsRecorded: true,
  digits: (digits) => digits,
  any: 'any',
  about: (number) => `about ${number}`,
  atLeast: (number) => `at least ${number}`,
  above: (number) => `above ${number}`,
  atMost: (number) => `at most ${number}`,
  below: (number) => `below ${number}`,
  range: (from, to) => `${from} to ${to}`,
  point: (x, y) => `${x}, ${y}`,
  list: (texts) => texts.join(', '),
  oneOf: (texts) => texts.join(' or '),
  symbols: {},
};

export const GERMAN_NUMBERS: NumberWords = {
  isAsRecorded: false,
  digits: (digits) => digits.replace('.', ','),
  any: 'beliebig',
  about: (number) => `etwa ${number}`,
  atLeast: (number) => `mindestens ${number}`,
  above: (number) => `über ${number}`,
  atMost: (number) => `höchstens ${number}`,
  below: (number) => `unter ${number}`,
  range: (from, to) => `${from} bis ${to}`,
  // A comma between two numbers with commas in them could not be told from those.
  point: (x, y) => `${x} | ${y}`,
  list: (texts) => texts.join('; '),
  oneOf: (texts) => texts.join(' oder '),
  symbols: {
    piece: 'Stück',
    in: 'Zoll',
    ft: 'Fuß',
    mm2: 'mm²',
    cm2: 'cm²',
    in2: 'Zoll²',
    cm3: 'cm³',
    'mm^3': 'mm³',
    'N.m': 'Nm',
    'lbf.ft': 'lbf·ft',
    'lbf.in': 'lbf·in',
    deg: '°',
    degC: '°C',
    rpm: '1/min',
    'mm2/s': 'mm²/s',
  },
};
