/**
 * The shape of a catalogue document, as data: which fields there are, of which form, and what
 * they mean. Two readers use it: `read.ts` finds every fault of a document, and the published
 * JSON Schema is printed from it. Terms, checks and conditions have a grammar of their own.
 */

import { type Fields, LANGUAGE, list, map, may, need, object, type Shape } from './shape-form.js';
import { PART, RULE, STATEMENT, VEHICLE } from './shape-records.js';
import { LOT, OFFER, RULESET, WORK } from './shape-trade.js';
import { DEFAULT_EVIDENCE, FACT, KIND, LAYOUT, ROLE } from './shape-vocabulary.js';

export type { Field, Fields, Shape } from './shape-form.js';
export { INTERFACE } from './shape-records.js';
export { EVIDENCE } from './shape-vocabulary.js';

const SHARE: Shape = { is: 'string', max: 200, isAmount: true };

const BAND: Shape = object({
  pass: need(SHARE, 'mismatch up to which nothing is said, such as "0.5 %"'),
  warn: need(SHARE, 'mismatch above which it is for loose ground only'),
  refuse: need(SHARE, 'mismatch above which it fails'),
});

/** The entities of a document, by the name of their list. */
export const ENTITY_SHAPES = {
  facts: FACT,
  kinds: KIND,
  roles: ROLE,
  parts: PART,
  layouts: LAYOUT,
  vehicles: VEHICLE,
  rules: RULE,
  statements: STATEMENT,
  lots: LOT,
  works: WORK,
  rulesets: RULESET,
  offers: OFFER,
} as const satisfies Readonly<Record<string, Shape>>;

/** The head of a document: all of it but the lists of entities. */
export const HEAD_FIELDS: Fields = {
  catalogue: need({ is: 'enum', of: [1] }, 'the version of this document form, which is 1'),
  lang: need(LANGUAGE, 'the language of plain texts, such as "en"'),
  currency: may(
    { is: 'string', max: 3, pattern: '^[A-Z]{3}$', says: 'a currency by ISO 4217, such as "EUR"' },
    'of all prices',
  ),
  evidence: need(DEFAULT_EVIDENCE, 'the default for every value; its basis must be named'),
  couplings: may(map(BAND), 'limits of axle loops by coupling, beside the usual ones'),
};

export const DOCUMENT_FIELDS: Fields = {
  ...HEAD_FIELDS,
  facts: may(list(FACT), 'what a person can find out about a vehicle'),
  kinds: may(list(KIND), "the catalogue's own kinds of interface"),
  roles: may(list(ROLE), 'what parts are'),
  parts: may(list(PART), 'the articles'),
  layouts: may(list(LAYOUT), 'vehicle architectures'),
  vehicles: may(list(VEHICLE), 'identified builds'),
  rules: may(list(RULE), 'facts that no face shows'),
  statements: may(list(STATEMENT), 'what a maker or a shop asserts'),
  lots: may(list(LOT), 'what is bought whole, at one price'),
  works: may(list(WORK), 'what makes one part another'),
  rulesets: may(list(RULESET), 'what an authority or a rule book demands'),
  offers: may(list(OFFER), 'prices, kept apart from the facts'),
};
