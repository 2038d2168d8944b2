/**
 * How much a kit question asks for where it does not say, and the most that it may.
 */

export const USUAL_ROUTES = 3;
export const MOST_ROUTES = 20;

/** Steps bound the work of a search, not its time, so that any machine finds the same. */
export const USUAL_STEPS = 50_000;
export const MOST_STEPS = 200_000;

/** So many routes are driven side by side at the most. */
export const MOST_DRIVEN = 4;

/** Longest key of a route, in characters: it has to have room in an address. */
export const LONGEST_KEY = 2000;
