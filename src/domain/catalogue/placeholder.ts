/**
 * Words that people write where they have nothing to record. A code is compared by name alone, so
 * two faces that are both "unknown" would be equal, and would meet, because nobody knows anything
 * of either.
 *
 * "none" is another matter: that there is none of something is a fact, and some kinds ask for it
 * (`missing-tooth`). Where the checks of a kind do not name it, it may mean either, and is refused.
 */

import { type Check, type SimpleCondition, testsIn } from '../check/check.js';
import type { Kind } from './catalogue.js';

/**
 * English, and the same in neighbouring languages. Left out is "NA": it stands for engines without
 * a charger, and for a continent.
 */
const PLACEHOLDERS: ReadonlySet<string> = new Set(
  [
    'unknown, not known, unrecorded, not recorded, undefined, not defined',
    'unspecified, not specified, undetermined, not determined, unclear, not sure',
    'not applicable, not available, n/a, n.a, n. a, null, nil, empty, blank',
    'tbd, t.b.d, tba, t.b.a, tbc, t.b.c, todo, to do, pending, placeholder',
    'to be defined, to be determined, to be decided, to be announced, to be confirmed',
    'other, others, various, misc, miscellaneous, any',
    'unbekannt, nicht bekannt, keine angabe, k.a, k. a, sonstige, diverse',
    'inconnu, desconocido, sconosciuto, onbekend, desconhecido, okänd, ukjent',
  ].flatMap((row) => row.split(', ')),
);

/** Whether a code says only that there is nothing to say, whatever its letters and marks. */
export function isPlaceholder(code: string): boolean {
  const words = code.toLowerCase().replaceAll(/[\s_-]+/gu, ' ');
  return PLACEHOLDERS.has(words.replace(/[\s.,]+$/u, ''));
}

/** That there is none, in the one word that ids have reserved for it. */
export const NONE = 'none';

/** Whether the checks of a kind tell what it means that there is none. */
export function asksForNone({ checks }: Kind): boolean {
  return checks.some(checkNamesNone);
}

function checkNamesNone(check: Check): boolean {
  const isNamed =
    check.primitive === 'one-of' && 'codes' in check.options && check.options.codes.includes(NONE);
  return isNamed || (check.when !== null && testsIn(check.when).some(conditionNamesNone));
}

function conditionNamesNone(condition: SimpleCondition): boolean {
  return condition.test === 'check' && checkNamesNone(condition.check);
}
