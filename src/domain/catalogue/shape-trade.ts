/**
 * The shapes of what is bought, done and demanded: lots, works, rulesets and offers.
 */

import { PRICE_PATTERN } from './grammar.js';
import {
  AMOUNT,
  BOOLEAN,
  ID,
  list,
  map,
  may,
  NAME,
  need,
  nullable,
  object,
  type Shape,
  TEXT,
  VALUE,
} from './shape-form.js';
import { BUILT } from './shape-records.js';
import { EVIDENCE } from './shape-vocabulary.js';

const LOT_ITEM: Shape = {
  is: 'either',
  of: [
    object(
      {
        vehicle: need(ID, 'the vehicle that it comes out of'),
        position: need(ID, 'where on it'),
      },
      'vehicle',
    ),
    object({
      part: need(ID, 'what is in it'),
      quantity: may(AMOUNT, 'how much of it, such as "2" or "1 l"; one piece if left out'),
    }),
  ],
  says: 'a part, or a position of a vehicle',
};

export const LOT: Shape = object({
  id: need(ID, 'the name of the lot'),
  name: may(TEXT, 'its name, for customers'),
  contains: need(list(LOT_ITEM, 1), 'what is bought with it, whole'),
});

export const WORK: Shape = object({
  id: need(ID, 'the name of the work'),
  name: need(TEXT, 'its name, for customers'),
  on: need({ is: 'condition' }, 'the parts that it can be done on: what must hold of one'),
  gives: need(
    object({
      interfaces: may(map(map(VALUE)), 'what the faces have afterwards'),
      values: may(map(VALUE), 'the values that the part has afterwards'),
    }),
    'what is different afterwards',
  ),
  voids: may(list(ID), 'the ratings that nobody knows afterwards'),
  labour: may(AMOUNT, 'time for one piece, such as "2 h"'),
  signOff: may(
    nullable({ is: 'enum', of: ['workshop', 'engineer'] }),
    'who must sign for it; null if nobody need',
  ),
  reversible: may(BOOLEAN, 'the part can be made again what it was; not, if left out'),
  evidence: may(EVIDENCE, 'of what it gives; inherited where left out'),
});

export const RULESET: Shape = object({
  id: need(ID, 'the name of the ruleset'),
  name: may(TEXT, 'its name, for customers'),
  valid: need(BUILT, 'first and last month that it is for, null for no such limit'),
  cite: need({ is: 'string', max: 500 }, 'where it stands, for people to look it up'),
  demands: need(
    object({
      keep: may(list(ID), 'positions that stay as they are'),
      checks: may(list({ is: 'check' }), 'what must hold'),
    }),
    'what it demands',
  ),
});

export const OFFER: Shape = object({
  id: need(ID, 'the name of the offer'),
  for: need(ID, 'the part, lot or work that is offered'),
  price: need(
    {
      is: 'string',
      max: 20,
      pattern: PRICE_PATTERN.source,
      says: 'an amount, such as "1850.00", never below zero',
    },
    'of one, in the currency of the catalogue',
  ),
  condition: may({ is: 'enum', of: ['new', 'rebuilt', 'used'] }, 'condition'),
  stock: may({ is: 'integer', min: 0, max: 1_000_000_000 }, 'pieces at hand'),
  leadDays: may({ is: 'integer', min: 0, max: 10_000 }, 'days until it is there'),
  supplier: may(NAME, 'who offers it'),
  sku: may({ is: 'string', max: 100 }, "the shop's own key"),
  pack: may({ is: 'string', max: 64, isAmount: true }, 'what one price buys, such as "1" or "1 l"'),
});
