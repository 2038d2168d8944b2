/**
 * In which units the texts of values are, as questions wish it and answers say it.
 */

import { IMPERIAL_UNITS } from '../domain/quantity/format.js';
import { SHOWN_UNITS } from '../domain/quantity/unit.js';
import { z } from './openapi-zod.js';

export const unitsSchema = z.enum(SHOWN_UNITS);

const IMPERIAL = IMPERIAL_UNITS.map(([what, symbol]) => `${what} in \`${symbol}\``).join(', ');

/** Of questions whose answers show values. */
export const unitsField = unitsSchema.optional().openapi({
  description:
    'In which units texts and sentences have values: as each was recorded (`recorded`, where it ' +
    'is left out), or in one system. It changes nothing else: no state, margin or code, and no ' +
    `\`low\`, \`high\` or \`unit\`. Imperial are ${IMPERIAL}; the rest has no imperial unit and ` +
    'stays as it is. So do codes, counts, ratios and sizes that are names (designations, such as ' +
    'the `15 in` of a rim), in all units. What is converted is rounded so that it never looks ' +
    'better than it is, or is said to be about so much.',
  example: 'recorded',
});
