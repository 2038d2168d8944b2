/**
 * The version of what decides: built-in kinds, the judge, the words. Answers name it beside the
 * edition, since a corrected program can answer the same question differently.
 */
export const ENGINE = '0.1.0';
