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

const TERM: Shape = { is: 'term' };

const AXLE: Shape = object({
  id: need(ID, 'the name of the axle'),
  name: need(TEXT, 'for people'),
  drive: need(TERM, 'turns of the gearbox output for one of its wheels'),
  circumference: need(TERM, 'rolling circumference of its tyres'),
  mass: may(TERM, 'that it bears, standing'),
});

const SLIP: Shape = object({
  load: need(ID, 'a check that something carries a torque'),
  axle: need(ID, 'whose wheels limit it by slipping'),
  after: need(TERM, 'torque at both wheels together for one of it'),
});

const SHAFT: Shape = object({
  position: need(ID, 'the propeller shaft'),
  axle: need(ID, 'that it drives'),
  drive: need(TERM, 'its turns for one of the wheels'),
  outer: need(TERM, 'outer diameter of its tube'),
  inner: need(TERM, 'inner diameter'),
  length: need(TERM, 'of its longest piece, between the joint centres'),
});

const JOINT: Shape = object({
  id: need(ID, 'the name of the joint'),
  name: need(TEXT, 'for people'),
  angle: need(TERM, 'at ride height'),
  other: may(TERM, 'of the joint that evens it out'),
});

const WHEEL: Shape = object({
  position: need(ID, 'the wheel'),
  inset: need(TERM, 'of the wheel'),
  width: need(TERM, 'of the tyre'),
  diameter: need(TERM, 'of the tyre'),
  spacer: may(TERM, 'thickness of what is between hub and wheel'),
});

const PISTONS: Shape = object({
  area: need(TERM, 'of the pistons of one axle'),
  travel: need(TERM, 'of each of them until the brakes grip'),
});

const DRIVELINE: Shape = object({
  engineTorque: may(TERM, 'greatest torque of the engine'),
  engineSpeed: may(TERM, 'greatest speed of the engine'),
  topSpeed: may(TERM, 'greatest speed of the vehicle'),
  clutchTorque: may(TERM, 'what the clutch holds'),
  gears: may(TERM, 'the list of the gears'),
  axles: may(list(AXLE), 'that are driven'),
  slips: may(list(SLIP), 'loads that the grip of tyres limits'),
  shafts: may(list(SHAFT), 'propeller shafts, which may whirl'),
  joints: may(list(JOINT), 'universal joints'),
  speedometer: may(
    object({
      shows: need(TERM, 'what it is set for'),
      turns: need(TERM, 'what drives it, told as that is'),
    }),
    'shows truly where both are equal',
  ),
  brakes: may(
    object({
      front: need(TERM, 'torque of the front brakes, to any scale'),
      rear: need(TERM, 'torque of the rear brakes, to the same scale'),
      frontShare: may(TERM, 'share of the front that the maker chose'),
    }),
    'the balance of the brakes',
  ),
  pedal: may(
    object({
      master: need(TERM, 'piston area of the master cylinder'),
      ratio: need(TERM, 'of the pedal'),
      wheels: need(list(PISTONS, 1), 'what it fills, axle by axle'),
      available: may(TERM, 'travel that the pedal has'),
    }),
    'the travel of the brake pedal',
  ),
  wheels: may(list(WHEEL), 'where wheels and tyres reach'),
});

export const LAYOUT: Shape = object({
  id: need(ID, 'the name of the layout'),
  name: may(TEXT, 'for people'),
  positions: need(list(POSITION, 1), 'its places'),
  matings: may(list(MATING), 'where two positions meet'),
  terms: may(map({ is: 'term' }), 'named values computed from values'),
  termNames: may(map(TEXT), 'what terms are called before people; else by their ids'),
  checks: may(list({ is: 'check' }), 'what is no meeting of two faces'),
  driveline: may(DRIVELINE, 'which of its values say how it drives'),
  unmated: may(
    { is: 'enum', of: ['open', 'ignore'] },
    'what a needed face on no mating is: an open point (default), or nothing',
  ),
});
