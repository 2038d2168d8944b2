/**
 * The shapes of what a catalogue records: parts, vehicles, rules and statements.
 */

import { VIN_PATTERN } from './grammar.js';
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

export const BUILT: Shape = list(nullable(MONTH), 2, 2);

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

const PIECES: readonly Shape[] = [
  nullable(ID),
  object({
    left: need(nullable(ID), 'the left piece, or null'),
    right: need(nullable(ID), 'the right piece, or null'),
  }),
];

const PIECES_SAY = 'a part, null for known to be empty, or {"left": …, "right": …}';

const OPTION: Shape = {
  is: 'object',
  tag: 'by',
  fields: { by: need(ID, 'the fact that tells what the works fitted') },
  rest: { is: 'either', of: PIECES, says: PIECES_SAY },
};

const FITTED: Shape = {
  is: 'either',
  of: [OPTION, ...PIECES],
  says: `${PIECES_SAY}, or {"by": a fact, and what is fitted for each of its values}`,
};

const VIN: Shape = {
  is: 'string',
  max: 17,
  pattern: VIN_PATTERN.source,
  says: 'a pattern of 17 characters: digits, capitals but I, O and Q, and * for any',
};

const SERIAL: Shape = {
  is: 'string',
  max: 8,
  pattern: '^[0-9]{1,8}$',
  says: 'the last digits of a number, eight at most, such as "100000"',
};

const VINS: Shape = list({
  is: 'either',
  of: [
    VIN,
    object({
      pattern: need(VIN, 'the other characters, with * for the digits of the range'),
      from: need(SERIAL, 'the first serial number of the range'),
      to: need(SERIAL, 'the last one, in as many digits'),
    }),
  ],
  says: 'a pattern of 17 characters, or {"pattern": …, "from": …, "to": …}',
});

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
  vin: may(VINS, 'the identification numbers that it can have, by ISO 3779'),
  facts: may(map(ID), 'what tells it from others'),
  layout: may(ID, 'the layout that it has; only one that is like another may leave it out'),
  like: may(nullable(ID), 'a vehicle that it is like, but for what is said here'),
  replacedBy: may(list(ID), 'the more exact vehicles that took its place'),
  evidence: may(EVIDENCE, 'of what the works fitted; inherited where left out'),
  fitted: may(
    {
      is: 'object',
      fields: { matings: may(FITTED_ADAPTERS, 'adapters that the works fitted') },
      rest: FITTED,
    },
    'what the works fitted; a position left out is not recorded, or as on the one it is like',
  ),
});

const RECOMMENDS: Shape = object({
  position: may(ID, 'a place that is worth filling'),
  part: may(ID, 'a part that is worth having'),
  quantity: may({ is: 'term' }, 'how much of the part'),
});

const CONSUMES: Shape = object({
  part: need(ID, 'what is used up'),
  quantity: need({ is: 'term' }, 'how much of it: pieces, volume, mass or length'),
});

export const RULE: Shape = object({
  id: need(ID, 'the name of the rule'),
  layouts: may(list(ID, 1), 'the layouts it speaks of'),
  when: need({ is: 'condition' }, 'when it speaks'),
  needs: may({ is: 'condition' }, 'what must hold then'),
  excludes: may({ is: 'condition' }, 'what must not hold then'),
  recommends: may(RECOMMENDS, 'what is worth having then'),
  consumes: may(CONSUMES, 'what is used up then'),
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
