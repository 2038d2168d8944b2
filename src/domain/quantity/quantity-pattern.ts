/**
 * The grammar of quantities as one regular expression, for schemas and forms that want to know
 * before they ask. It says what `parseQuantity` can read, text by text.
 *
 * What it cannot see, and the reader alone says: whether a range runs forward (`610 to 600 mm`),
 * whether the tables of ISO 286 have a fit class and its size (`50 t6`, `600 H7`), what a value of
 * some meaning may be (a torque below zero), and how long the whole text is. It needs an engine
 * that knows Unicode and looks ahead, as ECMA-262 does with the flag `u`.
 */

import { MAX_DIGITS } from './notation.js';
import { type Dimension, spellingsOf } from './unit.js';

export interface PatternOptions {
  /** Of the units that may stand there; all of them where it is left out. */
  readonly dimension?: Dimension;
  /** One value by name, as designations are: no range and no fit class. */
  readonly isName?: boolean;
}

/** No longer run of digits, and no number that goes on behind it. */
const NOT_LONGER = String.raw`(?!\d(?:\.?\d){${MAX_DIGITS}})`;
const WHOLE_END = String.raw`(?![\d.])`;
/** Nothing is divided by zero. */
const DIVISOR = String.raw`${NOT_LONGER}\d*[1-9]\d*`;
const UNSIGNED = String.raw`${NOT_LONGER}(?:\d+\/${DIVISOR}|\d+(?:\.\d+)?)${WHOLE_END}`;
const NUMBER = `[-−]?${UNSIGNED}`;
const DEVIATION = String.raw`[-+−]${NOT_LONGER}\d+(?:\.\d+)?${WHOLE_END}`;
const PLUS_MINUS = String.raw`(?:±|\+\s?\/\s?[-−]|\+[-−])`;

const TOLERANCE = String.raw`\s?${PLUS_MINUS}\s?${UNSIGNED}`;
const DEVIATIONS = String.raw`\s?${DEVIATION}\s?\/\s?${DEVIATION}`;
const RANGE = String.raw`\s+to\s+${NUMBER}`;

/** Before a class that begins with an e there is a space, or it would look like an exponent. */
const NO_EXPONENT = String.raw`(?![eE]\d)`;
const CLASS = String.raw`[A-Za-z]{1,2}\d{1,2}`;

/** The pattern of what can be read as a measured value, or as a designation. */
export function quantityPattern({ dimension, isName = false }: PatternOptions = {}): RegExp {
  const spread = [TOLERANCE, DEVIATIONS, ...(isName ? [] : [RANGE])].join('|');
  const measure = `${NUMBER}(?:${spread})?${unitPart(dimension)}`;
  const hasClass = !isName && (dimension === undefined || dimension === 'length');
  const classed = `${NUMBER}${classPart()}`;
  const whole = hasClass ? `${measure}|${classed}` : measure;
  return new RegExp(spaced(String.raw`^\s*(?:${whole})\s*$`), 'u');
}

/** A point: two lengths with a comma between, the unit of both behind the second. */
export function pointPattern(): RegExp {
  const spread = `${NUMBER}(?:${[TOLERANCE, DEVIATIONS, RANGE].join('|')})?`;
  const unit = `(?:${unitPart('length')}|${classPart()})`;
  return new RegExp(spaced(String.raw`^\s*${spread}${unit}?\s?,\s?${spread}${unit}\s*$`), 'u');
}

/**
 * The pattern of what stands for itself wherever a catalogue counts, charges or compares: one exact
 * number, with a space before its unit. That is what `readLiteral` reads; whether the unit is one
 * that is wanted there, it alone says.
 */
export function literalPattern(): RegExp {
  const units = spellingsOf()
    .filter((one) => one !== '')
    .map(escaped);
  const number = String.raw`[-+]?(?:\d+\/0*[1-9]\d*|\d+(?:\.\d+)?)`;
  return new RegExp(String.raw`^\s*${number}(?:\s+(?:${units.join('|')})|[%°"])?\s*$`, 'u');
}

/** All white space between is read as one space, which `\s?` stands for until here. */
function spaced(pattern: string): string {
  return pattern.replaceAll(String.raw`\s?`, String.raw`\s*`);
}

/** The unit behind a number; a pure number need not have one. */
function unitPart(dimension: Dimension | undefined): string {
  const spellings = spellingsOf(dimension);
  const units = spellings.filter((one) => one !== '').map(loosely);
  const part = String.raw`\s?(?:${units.join('|')})`;
  if (units.length === 0) return spellings.length === 0 ? '(?!)' : '';
  return spellings.includes('') ? `(?:${part})?` : part;
}

/** The fit class behind a number, with or without the unit that it is for. */
function classPart(): string {
  const alike = spellingsOf().filter((one) => new RegExp(`^${CLASS}$`, 'u').test(one));
  const noUnit = String.raw`(?!(?:${alike.join('|')})(?![A-Za-z\d]))`;
  return String.raw`${NO_EXPONENT}\s?(?:mm\s?|${noUnit})${CLASS}`;
}

/** As a quantity may spell it: with any minus sign, and any space. */
function loosely(spelling: string): string {
  return escaped(spelling).replaceAll('-', '[-−]').replaceAll(' ', String.raw`\s+`);
}

function escaped(spelling: string): string {
  return spelling.replaceAll(/[.*+?^$()[\]{}|\\/]/gu, String.raw`\$&`);
}
