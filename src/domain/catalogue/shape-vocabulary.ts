/**
 * The shapes of what a catalogue is written in: evidence, facts, kinds, roles and layouts.
 */

import { BASES } from '../check/state.js';
import {
  AMOUNT,
  BOOLEAN,
  DATE,
  type Fields,
  ID,
  list,
  map,
  may,
  NAME,
  need,
  object,
  SCALAR,
  type Shape,
  TEXT,
} from './shape-form.js';

const BASIS: Shape = { is: 'enum', of: BASES };

const EVIDENCE_FIELDS: Fields = {
  basis: may(BASIS, 'how it is known; inherited where left out'),
  by: may(NAME, 'who measured, drew or built it'),
  on: may(DATE, 'when'),
  source: may({ is: 'string', max: 500 }, 'sheet, list or drawing'),
  times: may({ is: 'integer', min: 1, max: 1_000_000 }, 'how often it has been built'),
};

export const EVIDENCE: Shape = object(EVIDENCE_FIELDS);

/** What every value inherits in the end, so its basis cannot be left out. */
export const DEFAULT_EVIDENCE: Shape = object({
  ...EVIDENCE_FIELDS,
  basis: need(BASIS, 'how what this document says is known, if nothing else is said'),
});

export const FACT: Shape = object({
  id: need(ID, 'the name of the fact'),
  name: need(TEXT, 'its name, for customers'),
  values: need(
    list(object({ id: need(ID, 'the value'), name: need(TEXT, 'its name, for customers') }), 1),
    'what it can be',
  ),
  how: may(TEXT, 'how to find out'),
});

const VALUE_TYPE: Shape = {
  is: 'enum',
  of: ['code', 'count', 'designation', 'ratio', 'measured', 'points'],
};

const PARAMETER_FIELDS: Fields = {
  type: need(
    VALUE_TYPE,
    'how its values read: exact by name, or as the interval that a measure allows',
  ),
  name: may(TEXT, 'in words of the trade'),
  unit: may(NAME, 'unit of measured values and designations'),
  tool: may(ID, 'what measures it'),
  usual: may(list(SCALAR, 2, 2), 'outside this range a value is doubtful'),
};

export const KIND: Shape = object({
  id: need(ID, 'the name of the kind'),
  name: may(TEXT, 'in words of the trade'),
  standard: may({ is: 'string', max: 300 }, 'governing standard and clause'),
  sides: may(list(ID, 2, 2), 'its two sides; left out where both ends are alike'),
  parameters: need(
    map(
      object({
        ...PARAMETER_FIELDS,
        of: may(ID, 'the one side that has it'),
        optional: may(BOOLEAN, 'checks that name it apply only where it is recorded'),
        unless: may(list(ID, 1), 'needed unless both faces record all of these instead'),
      }),
    ),
    'what a face of this kind records',
  ),
  checks: need(list({ is: 'check' }), 'when two faces meet'),
  notChecked: may(list(TEXT), 'what these checks do not cover'),
  caution: may(ID, 'caution group of the joint'),
});

export const ROLE: Shape = object({
  id: need(ID, 'the name of the role'),
  name: need(TEXT, 'its name, in words of the trade'),
  caution: may(ID, 'caution group: brakes, steering, driveline, wheels …'),
  faces: may(list(ID), 'the interfaces that such a part has'),
  values: may(
    map(
      object({
        ...PARAMETER_FIELDS,
        type: may(VALUE_TYPE, 'how its values read; left out for derived values'),
        list: may(BOOLEAN, 'several values, such as the gears of a gearbox'),
        rating: may(BOOLEAN, 'what the part can bear'),
        term: may({ is: 'term' }, 'derived from the other values, never recorded'),
        askedAs: may({ is: 'enum', of: ['torque'] }, 'a question may set it'),
      }),
    ),
    'the values that such a part has',
  ),
});

const POSITION: Shape = object({
  id: need(ID, 'the name of the position'),
  name: need(TEXT, 'its name, for customers'),
  roles: need(list(ID, 1), 'what may stand here'),
  count: may({ is: 'integer', min: 1, max: 100 }, 'pieces, all alike'),
  handed: may(BOOLEAN, 'the two pieces are a left and a right one'),
  optional: may(BOOLEAN, 'may be empty'),
  behind: may(list(ID), 'what must come out first'),
  labour: may(AMOUNT, 'time to change one piece, such as "6 h"'),
  access: may(AMOUNT, 'time to get one piece out of the way and back, where it is not changed'),
});

const MATING: Shape = object({
  id: need(ID, 'the name of the mating'),
  between: need(list({ is: 'string', max: 129 }, 2, 2), '"position.interface", twice'),
  adapters: may({ is: 'integer', min: 0, max: 4 }, 'adapters in a row, 1 if left out'),
  shared: may(BOOLEAN, 'its interfaces serve other shared matings too'),
});

export const LAYOUT: Shape = object({
  id: need(ID, 'the name of the layout'),
  name: may(TEXT, 'for people'),
  positions: need(list(POSITION, 1), 'its places'),
  matings: may(list(MATING), 'where two positions meet'),
  terms: may(map({ is: 'term' }), 'named values computed from values'),
  termNames: may(map(TEXT), 'what terms are called before people; else by their ids'),
  checks: may(list({ is: 'check' }), 'what is no meeting of two faces'),
  unmated: may(
    { is: 'enum', of: ['open', 'ignore'] },
    'what a needed face on no mating is: an open point (default), or nothing',
  ),
});
