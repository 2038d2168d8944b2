/**
 * What a vehicle identification number says by itself: whether it is one, whether its check digit
 * agrees, and which model year its code means.
 *
 * ISO 3779 gives the 17 characters and leaves out I, O and Q, which look like digits. The check
 * digit (place 9) and the model-year code (place 10, with place 7) are those of 49 CFR 565 for the
 * United States and Canada; elsewhere both places are the maker's own, so nothing there refuses a
 * number. No number tells what is fitted to a vehicle today.
 *
 * Left out: what a maker means by the other characters, which only the maker publishes; numbers of
 * other lengths, given before 1981.
 *
 * Length: half of it says in two languages what is taken and given.
 */

import type { Outcome } from '../check/state.js';
import { point } from '../quantity/interval.js';
import { rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';

const LENGTH = 17;
/** Places counted from 0. */
const CHECK_PLACE = 8;
const YEAR_PLACE = 9;
const ERA_PLACE = 6;
const SERIAL_PLACE = 11;

/** An unread character. */
const UNREAD = '*';

/** 49 CFR 565.15, table III: the value of each letter; a digit is its own. */
const LETTER_VALUES: Readonly<Record<string, number>> = {
  ...valuesFrom('ABCDEFGH', 1),
  ...valuesFrom('JKLMN', 1),
  P: 7,
  R: 9,
  ...valuesFrom('STUVWXYZ', 2),
};

function valuesFrom(letters: string, first: number): Readonly<Record<string, number>> {
  return Object.fromEntries(Array.from(letters, (letter, index) => [letter, first + index]));
}

/** 49 CFR 565.15, table IV: the weight of each place; that of the check digit itself is 0. */
const WEIGHTS: readonly number[] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];
const MODULUS = 11;

/** 49 CFR 565.15, table VII: codes of 1980 to 2009 in their order; they begin again in 2010. */
const YEAR_CODES = 'ABCDEFGHJKLMNPRSTVWXY123456789';
const FIRST_YEAR = 1980;

/** As it is written on plates: capitals without spaces and dashes. */
export function writtenVin(text: string): string {
  return text.replaceAll(/[\s-]/g, '').toUpperCase();
}

/** Whether it has 17 characters, none of which is I, O or Q. */
export function isVin(vin: string): boolean {
  return vin.length === LENGTH && /^[A-HJ-NPR-Z0-9*]+$/.test(vin);
}

/** The weighted sum of all places but that of the check digit; null where one is not read. */
export function checkSum(vin: string): number | null {
  let sum = 0;
  for (const [place, sign] of Array.from(vin).entries()) {
    const weight = WEIGHTS[place] ?? 0;
    if (weight === 0) continue;
    const value = /^\d$/.test(sign) ? Number(sign) : LETTER_VALUES[sign];
    if (value === undefined) return null;
    sum += weight * value;
  }
  return sum;
}

/** The check digit that goes with the other characters: 0 to 9, or X for a rest of 10. */
export function checkDigit(vin: string): string | null {
  const sum = checkSum(vin);
  if (sum === null) return null;
  const rest = sum % MODULUS;
  return rest === 10 ? 'X' : String(rest);
}

/** The years that a number may mean, by its places 10 and 7; none where place 10 is no code. */
export function modelYears(vin: string): number[] {
  const code = vin.charAt(YEAR_PLACE);
  const at = code === '' ? -1 : YEAR_CODES.indexOf(code);
  if (at === -1) return [];
  const years = [FIRST_YEAR + at, FIRST_YEAR + at + YEAR_CODES.length];
  const era = vin.charAt(ERA_PLACE);
  if (/^\d$/.test(era)) return years.slice(0, 1);
  return /^[A-Z]$/.test(era) ? years.slice(1) : years;
}

export const vin = calculation({
  name: 'vin',
  title: { en: 'Vehicle identification number', de: 'Fahrzeug-Identifizierungsnummer' },
  about: {
    en: 'Is this a vehicle identification number, and which model year may it mean?',
    de: 'Ist das eine Fahrzeug-Identifizierungsnummer, und welches Modelljahr kann sie meinen?',
  },
  inputs: {
    vin: {
      type: 'text',
      form: '1G4AH59H45G118341',
      name: {
        en: 'the number, with * for a character that cannot be read',
        de: 'die Nummer, mit * für ein unlesbares Zeichen',
      },
    },
    market: {
      type: 'code',
      optional: true,
      name: { en: 'where the vehicle was sold new', de: 'wo das Fahrzeug neu verkauft wurde' },
      codes: {
        'north-america': { en: 'United States or Canada', de: 'USA oder Kanada' },
        elsewhere: { en: 'elsewhere', de: 'anderswo' },
      },
    },
  },
  outputs: {
    isVin: {
      type: 'outcome',
      name: {
        en: 'It has 17 characters, none of them I, O or Q.',
        de: 'Sie hat 17 Zeichen, keines davon I, O oder Q.',
      },
    },
    checkSum: {
      type: 'quantity',
      dimension: '1',
      name: { en: 'weighted sum of its characters', de: 'gewichtete Summe ihrer Zeichen' },
    },
    checkDigit: {
      type: 'text',
      name: { en: 'check digit that goes with it', de: 'Prüfziffer, die dazu gehört' },
    },
    checkAgrees: {
      type: 'outcome',
      name: {
        en: 'Its ninth character is that digit.',
        de: 'Ihr neuntes Zeichen ist diese Ziffer.',
      },
    },
    modelYear: {
      type: 'text',
      list: true,
      name: { en: 'model years that it may mean', de: 'Modelljahre, die sie meinen kann' },
    },
    serial: {
      type: 'text',
      name: { en: 'its last six characters', de: 'ihre letzten sechs Zeichen' },
    },
  },
  formulas: [
    'checkSum = Σ weight · value   over all places but the ninth',
    'checkDigit = checkSum mod 11, X for 10',
    'modelYear = by place 10; 1980 to 2009 with a digit at place 7, 2010 to 2039 with a letter',
  ],
  assumptions: [
    {
      en: 'Check digit and model year as the United States and Canada ask for them.',
      de: 'Prüfziffer und Modelljahr, wie USA und Kanada sie verlangen.',
    },
  ],
  validity: [
    {
      en: 'Elsewhere places 9 and 10 are the maker’s own, and often neither digit nor year.',
      de: 'Anderswo gehören Stelle 9 und 10 dem Hersteller und sind oft weder Ziffer noch Jahr.',
    },
    {
      en: 'The rule of place 7 is that of light vehicles.',
      de: 'Die Regel der Stelle 7 gilt für leichte Fahrzeuge.',
    },
    {
      en: 'Numbers given before 1981 may have other lengths.',
      de: 'Nummern von vor 1981 können andere Längen haben.',
    },
  ],
  sources: [
    { title: 'ISO 3779', basis: 'from-memory' },
    { title: '49 CFR 565.15, tables III to VII', basis: 'read' },
  ],
  warnings: {
    'proves-no-part': {
      en: 'It tells how the vehicle was built, never what is fitted today: look at the vehicle.',
      de: 'Sie sagt, wie gebaut wurde, nie was heute verbaut ist: am Fahrzeug nachsehen.',
    },
    'not-of-this-form': {
      en: 'It is no number of this form: too old, or misread.',
      de: 'Sie ist keine Nummer dieser Form: zu alt oder verlesen.',
    },
    'check-digit-differs': {
      en: 'The check digit differs: misread, or of a market that asks for none.',
      de: 'Die Prüfziffer weicht ab: verlesen, oder aus einem Markt, der keine verlangt.',
    },
    'not-a-year-code': {
      en: 'The tenth character is no code of a year.',
      de: 'Das zehnte Zeichen ist kein Code eines Jahrs.',
    },
    'places-of-the-maker': {
      en: 'Outside the United States and Canada, places 9 and 10 need not mean this.',
      de: 'Außerhalb von USA und Kanada müssen Stelle 9 und 10 das nicht bedeuten.',
    },
  },
  caution: 'general',
  examples: [
    {
      name: 'of-the-regulation',
      summary: 'The sample that the regulation itself prints, with its check digit',
      given: { vin: '1G4AH59H45G118341', market: 'north-america' },
    },
    {
      name: 'unread',
      summary: 'The same with a character that nobody could read, sold nobody knows where',
      given: { vin: '1G4AH59H*5G118341' },
    },
  ],
  calculate: ({ vin: text, market }) => {
    const number = writtenVin(text);
    if (!/^[A-Z0-9*]+$/.test(number)) return { found: {}, warnings: [], faults: [unreadable()] };
    const always = ['proves-no-part'];
    if (!isVin(number)) {
      return { found: { isVin: 'fails' }, warnings: ['not-of-this-form', ...always] };
    }
    const years = modelYears(number);
    const sum = checkSum(number);
    const digit = checkDigit(number);
    const agrees = agreement(number.charAt(CHECK_PLACE), digit);
    const warnings = [
      ...(agrees === 'differs' ? ['check-digit-differs'] : []),
      ...(years.length === 0 ? ['not-a-year-code'] : []),
      ...(market === 'north-america' ? [] : ['places-of-the-maker']),
      ...always,
    ];
    return {
      found: {
        isVin: number.includes(UNREAD) ? 'open' : 'holds',
        checkSum: sum === null ? undefined : point(rational(sum)),
        checkDigit: digit ?? undefined,
        checkAgrees: outcomeOf(agrees, market),
        modelYear: years.length === 0 ? undefined : years.map(String),
        serial: number.slice(SERIAL_PLACE),
      },
      warnings,
    };
  },
});

type Agreement = 'agrees' | 'differs' | 'unread';

function agreement(sign: string, digit: string | null): Agreement {
  if (sign === UNREAD || digit === null) return 'unread';
  return sign === digit ? 'agrees' : 'differs';
}

/** A digit that differs refuses a number only where one is asked for. */
function outcomeOf(agrees: Agreement, market: 'north-america' | 'elsewhere' | null): Outcome {
  if (agrees === 'agrees') return 'holds';
  return agrees === 'differs' && market === 'north-america' ? 'fails' : 'open';
}

function unreadable(): GivenFault {
  return {
    input: 'vin',
    text: {
      en: 'A vehicle identification number has letters and digits; * is one that cannot be read.',
      de: 'Eine Fahrzeug-Identifizierungsnummer hat Buchstaben und Ziffern; * ist unlesbar.',
    },
  };
}
