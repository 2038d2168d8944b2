/**
 * The version of what decides: built-in kinds, the judge, the words. Answers name it beside the
 * edition, since a corrected program can answer the same question differently; and a stored index
 * is used only by the version that made it. So every change of a verdict is a new version.
 */
export const ENGINE = '0.5.0';
