/**
 * The shapes of what a catalogue records: parts, vehicles, rules, statements and offers.
 */

import {
  BOOLEAN,
  ID,
  list,
  MONTH,
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
import { EVIDENCE } from './shape-vocabulary.js';

const BUILT: Shape = list(nullable(MONTH), 2, 2);

export const INTERFACE: Shape = {
  is: 'object',
  fields: {
    kind: may(ID, 'the kind of interface'),
    side: may(ID, 'which side of the kind'),
    optional: may(BOOLEAN, 'works with nothing at the other end'),
    absent: may(BOOLEAN, 'the part really has no such face'),
    evidence: may(EVIDENCE, 'of this face; inherited where left out'),
    alternatives: may(list(map(VALUE), 2, 16), 'several faces in one, one of which is used'),
  },
  rest: VALUE,
};

export const PART: Shape = object({
  id: need(ID, 'the name of the part, never reused'),
  roles: need(list(ID, 1), 'what it is'),
  name: need(TEXT, 'its name, for customers'),
  maker: may(NAME, 'who makes it'),
  numbers: may(
    list(object({ number: need(NAME, 'as printed'), of: need(NAME, 'whose number') })),
    'its numbers',
  ),
  built: may(BUILT, 'first and last month, null for not known or still'),
  supersededBy: may(nullable(ID), 'the part that took its place'),
  hand: may({ is: 'enum', of: ['left', 'right'] }, 'the side it is made for'),
  spans: may(list(ID, 2), 'all the positions that it fills'),
  evidence: may(EVIDENCE, 'of the whole part; inherited where left out'),
  interfaces: may(map(INTERFACE), 'its faces'),
  values: may(map(VALUE), 'its values'),
});

const FITTED: Shape = {
  is: 'either',
  of: [
    nullable(ID),
    object({
      left: need(nullable(ID), 'the left piece, or null'),
      right: need(nullable(ID), 'the right piece, or null'),
    }),
  ],
  says: 'a part, null for known to be empty, or {"left": …, "right": …}',
};

const FITTED_ADAPTERS: Shape = map({
  is: 'either',
  of: [ID, list(ID, 1, 4)],
  says: 'an adapter, or a list of adapters in a row',
});

export const VEHICLE: Shape = object({
  id: need(ID, 'the name of the vehicle, never reused'),
  make: need(NAME, 'who made it'),
  model: need(NAME, 'what they call it'),
  variant: may(NAME, 'which of several'),
  built: may(BUILT, 'first and last month, null for not known or still'),
  facts: may(map(ID), 'what tells it from others'),
  layout: need(ID, 'the layout that it has'),
  evidence: may(EVIDENCE, 'of what the works fitted; inherited where left out'),
  fitted: need(
    {
      is: 'object',
      fields: { matings: may(FITTED_ADAPTERS, 'adapters that the works fitted') },
      rest: FITTED,
    },
    'what the works fitted; a position left out is not recorded',
  ),
});

export const RULE: Shape = object({
  id: need(ID, 'the name of the rule'),
  layouts: may(list(ID, 1), 'the layouts it speaks of'),
  when: need({ is: 'condition' }, 'when it speaks'),
  needs: may({ is: 'condition' }, 'what must hold then'),
  excludes: may({ is: 'condition' }, 'what must not hold then'),
  note: may(TEXT, 'said then'),
  caution: may(TEXT, 'warned of then'),
  because: need(TEXT, 'why, for customers'),
  evidence: may(EVIDENCE, 'of the rule; inherited where left out'),
});

export const STATEMENT: Shape = object({
  id: need(ID, 'the name of the statement'),
  part: need(ID, 'the part it speaks of'),
  vehicles: need(list(ID, 1), 'the vehicles it speaks of'),
  position: need(ID, 'where on them'),
  with: may(map(ID), 'what is fitted beside it, by position'),
  verdict: need({ is: 'enum', of: ['fits', 'does-not-fit'] }, 'what is stated'),
  evidence: may(EVIDENCE, 'who states it; inherited where left out'),
});

export const OFFER: Shape = object({
  id: need(ID, 'the name of the offer'),
  for: need(ID, 'the part that is offered'),
  price: need(
    {
      is: 'string',
      max: 20,
      pattern: '^[0-9]+(\\.[0-9]{1,4})?$',
      says: 'an amount, such as "1850.00", never below zero',
    },
    'of one, in the currency of the catalogue',
  ),
  condition: may({ is: 'enum', of: ['new', 'rebuilt', 'used'] }, 'condition'),
  stock: may({ is: 'integer', min: 0, max: 1_000_000_000 }, 'pieces at hand'),
  leadDays: may({ is: 'integer', min: 0, max: 10_000 }, 'days until it is there'),
  supplier: may(NAME, 'who offers it'),
  sku: may({ is: 'string', max: 100 }, "the shop's own key"),
  pack: may({ is: 'string', max: 64 }, 'what one price buys, such as "1" or "1 l"'),
});
