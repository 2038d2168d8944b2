/**
 * The shape of a catalogue document, as data: which fields there are, of which form, and what
 * they mean. Two readers use it: `read.ts` finds every fault of a document, and the published
 * JSON Schema is printed from it. Terms, checks and conditions have a grammar of their own.
 */

import { BASES } from '../check/state.js';

export type Shape =
  | { readonly is: 'text' }
  | { readonly is: 'string'; readonly max: number; readonly pattern?: string; says?: string }
  | { readonly is: 'id' }
  | { readonly is: 'boolean' }
  | { readonly is: 'integer'; readonly min: number; readonly max: number }
  | { readonly is: 'enum'; readonly of: readonly (string | number)[] }
  | { readonly is: 'scalar' }
  | { readonly is: 'value' }
  | { readonly is: 'term' }
  | { readonly is: 'check' }
  | { readonly is: 'condition' }
  | { readonly is: 'list'; readonly of: Shape; readonly min?: number; readonly max?: number }
  | { readonly is: 'map'; readonly of: Shape }
  | { readonly is: 'nullable'; readonly of: Shape }
  /** Told apart by what the value is: the first form that could be meant is the one that counts. */
  | { readonly is: 'either'; readonly of: readonly Shape[]; readonly says: string }
  | { readonly is: 'object'; readonly fields: Fields; readonly rest?: Shape };

export interface Field {
  readonly shape: Shape;
  readonly required?: true;
  readonly says: string;
}

export type Fields = { readonly [name: string]: Field };

const TEXT: Shape = { is: 'text' };
const ID: Shape = { is: 'id' };
const BOOLEAN: Shape = { is: 'boolean' };
const SCALAR: Shape = { is: 'scalar' };
const VALUE: Shape = { is: 'value' };
const NAME: Shape = { is: 'string', max: 200 };
const MONTH: Shape = {
  is: 'string',
  max: 7,
  pattern: '^[0-9]{4}-(0[1-9]|1[0-2])$',
  says: 'a month, such as "2006-03"',
};
const DATE: Shape = {
  is: 'string',
  max: 10,
  pattern: '^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$',
  says: 'a day, such as "2026-03-01"',
};

const list = (of: Shape, min = 0, max = 1_000_000): Shape => ({ is: 'list', of, min, max });
const map = (of: Shape): Shape => ({ is: 'map', of });
const need = (shape: Shape, says: string): Field => ({ shape, required: true, says });
const may = (shape: Shape, says: string): Field => ({ shape, says });
const object = (fields: Fields): Shape => ({ is: 'object', fields });

export const EVIDENCE: Shape = object({
  basis: may({ is: 'enum', of: BASES }, 'how it is known; inherited where left out'),
  by: may(NAME, 'who measured, drew or built it'),
  on: may(DATE, 'when'),
  source: may({ is: 'string', max: 500 }, 'sheet, list or drawing'),
  times: may({ is: 'integer', min: 1, max: 1_000_000 }, 'how often it has been built'),
});

const BUILT: Shape = list({ is: 'nullable', of: MONTH }, 2, 2);

const PARAMETER_FIELDS: Fields = {
  type: need(
    { is: 'enum', of: ['code', 'count', 'designation', 'ratio', 'measured'] },
    'how its values read: exact by name, or as the interval that a measure allows',
  ),
  name: may(TEXT, 'in words of the trade'),
  unit: may(NAME, 'unit of measured values and designations'),
  tool: may(ID, 'what measures it'),
  usual: may(list(SCALAR, 2, 2), 'outside this range a value is doubtful'),
};

const KIND: Shape = object({
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
      }),
    ),
    'what a face of this kind records',
  ),
  checks: need(list({ is: 'check' }), 'when two faces meet'),
  notChecked: may(list(TEXT), 'what these checks do not cover'),
  caution: may(ID, 'caution group of the joint'),
});

const ROLE: Shape = object({
  id: need(ID, 'the name of the role'),
  name: need(TEXT, 'in words of the trade'),
  caution: may(ID, 'caution group: brakes, steering, driveline, wheels …'),
  faces: may(list(ID), 'the interfaces that such a part has'),
  values: may(
    map(
      object({
        ...PARAMETER_FIELDS,
        type: may(
          { is: 'enum', of: ['code', 'count', 'designation', 'ratio', 'measured'] },
          'how its values read; left out for derived values',
        ),
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
  name: need(TEXT, 'for customers'),
  roles: need(list(ID, 1), 'what may stand here'),
  count: may({ is: 'integer', min: 1, max: 100 }, 'pieces, all alike'),
  handed: may(BOOLEAN, 'the two pieces are a left and a right one'),
  optional: may(BOOLEAN, 'may be empty'),
  behind: may(list(ID), 'what must come out first'),
});

const LAYOUT: Shape = object({
  id: need(ID, 'the name of the layout'),
  name: may(TEXT, 'for people'),
  positions: need(list(POSITION, 1), 'its places'),
  matings: may(
    list(
      object({
        id: need(ID, 'the name of the mating'),
        between: need(list({ is: 'string', max: 129 }, 2, 2), '"position.interface", twice'),
        adapters: may({ is: 'integer', min: 0, max: 4 }, 'adapters in a row, 1 if left out'),
        shared: may(BOOLEAN, 'its interfaces serve other shared matings too'),
      }),
    ),
    'where two positions meet',
  ),
  terms: may(map({ is: 'term' }), 'named values computed from values'),
  checks: may(list({ is: 'check' }), 'what is no meeting of two faces'),
  unmated: may(
    { is: 'enum', of: ['open', 'ignore'] },
    'what a needed face on no mating is: an open point (default), or nothing',
  ),
});

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

const PART: Shape = object({
  id: need(ID, 'the name of the part, never reused'),
  roles: need(list(ID, 1), 'what it is'),
  name: need(TEXT, 'for customers'),
  maker: may(NAME, 'who makes it'),
  numbers: may(
    list(object({ number: need(NAME, 'as printed'), of: need(NAME, 'whose number') })),
    'its numbers',
  ),
  built: may(BUILT, 'first and last month, null for not known or still'),
  supersededBy: may({ is: 'nullable', of: ID }, 'the part that took its place'),
  hand: may({ is: 'enum', of: ['left', 'right'] }, 'the side it is made for'),
  spans: may(list(ID, 2), 'all the positions that it fills'),
  evidence: may(EVIDENCE, 'of the whole part; inherited where left out'),
  interfaces: may(map(INTERFACE), 'its faces'),
  values: may(map(VALUE), 'its values'),
});

const FITTED: Shape = {
  is: 'either',
  of: [
    { is: 'nullable', of: ID },
    object({
      left: need({ is: 'nullable', of: ID }, 'the left piece'),
      right: need({ is: 'nullable', of: ID }, 'the right piece'),
    }),
  ],
  says: 'a part, null for known to be empty, or {"left": …, "right": …}',
};

const VEHICLE: Shape = object({
  id: need(ID, 'the name of the vehicle, never reused'),
  make: need(NAME, 'make'),
  model: need(NAME, 'model'),
  variant: may(NAME, 'variant'),
  built: may(BUILT, 'first and last month, null for not known or still'),
  facts: may(map(ID), 'what tells it from others'),
  layout: need(ID, 'its layout'),
  evidence: may(EVIDENCE, 'of what the works fitted; inherited where left out'),
  fitted: need(
    {
      is: 'object',
      fields: {
        matings: may(
          map({
            is: 'either',
            of: [ID, list(ID, 1, 4)],
            says: 'an adapter, or a list of adapters in a row',
          }),
          'adapters that the works fitted',
        ),
      },
      rest: FITTED,
    },
    'what the works fitted; a position left out is not recorded',
  ),
});

const RULE: Shape = object({
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

const STATEMENT: Shape = object({
  id: need(ID, 'the name of the statement'),
  part: need(ID, 'the part it speaks of'),
  vehicles: need(list(ID, 1), 'the vehicles it speaks of'),
  position: need(ID, 'where on them'),
  with: may(map(ID), 'what is fitted beside it, by position'),
  verdict: need({ is: 'enum', of: ['fits', 'does-not-fit'] }, 'what is stated'),
  evidence: may(EVIDENCE, 'who states it; inherited where left out'),
});

const OFFER: Shape = object({
  id: need(ID, 'the name of the offer'),
  for: need(ID, 'the part that is offered'),
  price: need(
    {
      is: 'string',
      max: 20,
      pattern: '^[0-9]+(\\.[0-9]{1,4})?$',
      says: 'an amount that is not negative, such as "1850.00"',
    },
    'each, in the currency of the catalogue',
  ),
  condition: may({ is: 'enum', of: ['new', 'rebuilt', 'used'] }, 'condition'),
  stock: may({ is: 'integer', min: 0, max: 1_000_000_000 }, 'pieces at hand'),
  leadDays: may({ is: 'integer', min: 0, max: 10_000 }, 'days until it is there'),
  supplier: may(NAME, 'who offers it'),
  sku: may({ is: 'string', max: 100 }, "the shop's own key"),
  pack: may({ is: 'string', max: 64 }, 'what one price buys, such as "1" or "1 l"'),
});

const BAND: Shape = object({
  pass: need(NAME, 'mismatch up to which nothing is said, such as "0.5 %"'),
  warn: need(NAME, 'mismatch above which it is for loose ground only'),
  refuse: need(NAME, 'mismatch above which it fails'),
});

/** The entities of a document, by the name of their list. */
export const ENTITY_SHAPES = {
  facts: object({
    id: need(ID, 'the name of the fact'),
    name: need(TEXT, 'for customers'),
    values: need(
      list(object({ id: need(ID, 'the value'), name: need(TEXT, 'for customers') }), 1),
      'what it can be',
    ),
    how: may(TEXT, 'how to find out'),
  }),
  kinds: KIND,
  roles: ROLE,
  parts: PART,
  layouts: LAYOUT,
  vehicles: VEHICLE,
  rules: RULE,
  statements: STATEMENT,
  offers: OFFER,
} as const satisfies Readonly<Record<string, Shape>>;

/** The head of a document: all of it but the lists of entities. */
export const HEAD_FIELDS: Fields = {
  catalogue: need({ is: 'enum', of: [1] }, 'the version of this document form'),
  lang: need(
    { is: 'string', max: 8, pattern: '^[a-z]{2,3}(-[A-Z]{2})?$', says: 'a language, such as "en"' },
    'the language of plain texts',
  ),
  currency: may(
    { is: 'string', max: 3, pattern: '^[A-Z]{3}$', says: 'a currency by ISO 4217, such as "EUR"' },
    'of all prices',
  ),
  evidence: need(EVIDENCE, 'the default for every value; its basis must be named'),
  couplings: may(map(BAND), 'limits of axle loops by coupling, beside the usual ones'),
};

export const DOCUMENT_FIELDS: Fields = {
  ...HEAD_FIELDS,
  facts: may(list(ENTITY_SHAPES.facts), 'what a person can find out about a vehicle'),
  kinds: may(list(KIND), "the catalogue's own kinds of interface"),
  roles: may(list(ROLE), 'what parts are'),
  parts: may(list(PART), 'the articles'),
  layouts: may(list(LAYOUT), 'vehicle architectures'),
  vehicles: may(list(VEHICLE), 'identified builds'),
  rules: may(list(RULE), 'facts that no face shows'),
  statements: may(list(STATEMENT), 'what a maker or a shop asserts'),
  offers: may(list(OFFER), 'prices, kept apart from the facts'),
};
