/**
 * The smallest words of a document: ids, languages, plain texts and codes, as patterns. The
 * reader tells people which of the rules was broken; the published JSON Schema prints them.
 */

/** Longest id, in characters. */
export const LONGEST_ID = 64;

/** Ids, parameter names and enumerated values. */
export const ID_PATTERN = new RegExp(`^[a-z0-9][a-z0-9-]{0,${LONGEST_ID - 1}}$`);

/** Words that mean something of their own wherever an id may stand. */
export const RESERVED_IDS: ReadonlySet<string> = new Set([
  'none',
  'unknown',
  'latest',
  'draft',
  'choices',
  'batch',
  'recheck',
  'matings',
]);

/** ISO 639 language, with an ISO 3166 country where it matters. */
export const LANGUAGE_PATTERN = /^[a-z]{2,3}(-[A-Z]{2})?$/;

/**
 * A vehicle identification number of 17 characters (ISO 3779), with `*` for those that may be
 * any. I, O and Q are in none: they look like 1 and 0.
 */
export const VIN_PATTERN = /^[A-HJ-NPR-Z0-9*]{17}$/;

/** Longest text for people, in code points. */
export const LONGEST_TEXT = 2000;

/** Longest recorded value, in code points; no quantity is longer. */
export const LONGEST_SCALAR = 64;

/**
 * A price, never below zero. With more digits before the point the sum of a few of them could no
 * longer be told exactly.
 */
export const PRICE_PATTERN = /^[0-9]{1,10}(\.[0-9]{1,4})?$/;

/** Control characters other than tabs and line breaks. */
export const CONTROL_PATTERN = /[^\P{Cc}\t\n\r]/u;

/** Half of a character: a text that holds one is no well-formed Unicode. */
export const SURROGATE_PATTERN = /\p{Cs}/u;

/** A value that is known by name, once surplus spaces are gone. */
export const CODE_PATTERN = /^[\p{L}\p{N}][\p{L}\p{N} .,_/x×+-]*$/u;
