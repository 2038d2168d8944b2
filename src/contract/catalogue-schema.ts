/**
 * The JSON Schema of a catalogue document (dialect 2020-12), printed from the very shape that the
 * reader uses. It tells forms only: whether a name means anything, whether a value has the unit
 * that its parameter wants, is for the reader alone to say. One recorded
 * value is told in `recorded-schema.ts`; terms, checks and conditions are definitions that name
 * each other.
 */

import {
  ID_PATTERN,
  LANGUAGE_PATTERN,
  LONGEST_TEXT,
  RESERVED_IDS,
} from '../domain/catalogue/grammar.js';
import {
  DOCUMENT_FIELDS,
  ENTITY_SHAPES,
  EVIDENCE,
  type Fields,
  INTERFACE,
  type Shape,
} from '../domain/catalogue/shape.js';
import { type COMMON_KEYS, POSITION_TESTS } from '../domain/check/compile.js';
import { entityWord } from './entity-word.js';
import { RECORDED, refTo, SAFE_INTEGER, type Schema } from './recorded-schema.js';

/** Not blank, and without control characters (but tabs and line breaks) and half characters. */
const TEXT_PATTERN = String.raw`^(?=[\s\S]*\S)(?:[\t\n\r]|[^\p{Cc}\p{Cs}])*$`;

const ID = refTo('id');
const TERM = refTo('term');

/** The whole schema, as plain data. */
export function catalogueSchema(): object {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Catalogue document',
    description:
      'Parts, the faces through which they meet, the layouts of vehicles, and vehicles themselves.',
    ...schemaOfFields(DOCUMENT_FIELDS),
    $defs: {
      ...schemasOfEntities(),
      interface: schemaOfForm(INTERFACE),
      evidence: schemaOfForm(EVIDENCE),
      ...SMALL_DEFINITIONS,
      value: VALUE,
      term: TERM_FORMS,
      check: { description: 'One comparison with three outcomes.', oneOf: checkForms() },
      condition: { description: 'When something holds.', oneOf: conditionForms() },
    },
  };
}

/** Forms that are used in many places are defined once, by name. */
const NAMED: ReadonlyMap<Shape, string> = new Map<Shape, string>([
  [EVIDENCE, 'evidence'],
  [INTERFACE, 'interface'],
  ...Object.entries(ENTITY_SHAPES).map(([list, shape]) => [shape, entityWord(list)] as const),
]);

function schemasOfEntities(): Schema {
  return Object.fromEntries(
    Object.entries(ENTITY_SHAPES).map(([list, shape]) => [entityWord(list), schemaOfForm(shape)]),
  );
}

function schemaOf(shape: Shape): Schema {
  const name = NAMED.get(shape);
  return name === undefined ? schemaOfForm(shape) : refTo(name);
}

function schemaOfForm(shape: Shape): Schema {
  switch (shape.is) {
    case 'scalar':
      return refTo(shape.isAmount ? 'amount' : 'scalar');
    case 'text':
    case 'id':
    case 'value':
    case 'term':
    case 'check':
    case 'condition':
      return refTo(shape.is);
    case 'string':
      if (shape.isAmount) return refTo('literal');
      return { type: 'string', maxLength: shape.max, pattern: shape.pattern ?? TEXT_PATTERN };
    case 'boolean':
      return { type: 'boolean' };
    case 'integer':
      return { type: 'integer', minimum: shape.min, maximum: shape.max };
    case 'enum':
      return { enum: [...shape.of] };
    case 'list':
      return schemaOfList(shape);
    case 'map':
      return { type: 'object', propertyNames: ID, additionalProperties: schemaOf(shape.of) };
    case 'nullable':
      return { anyOf: [schemaOf(shape.of), { type: 'null' }] };
    case 'either':
      return { anyOf: shape.of.map(schemaOf) };
    case 'object':
      return schemaOfFields(shape.fields, shape.rest);
  }
}

function schemaOfList({ of, min, max }: Shape & { is: 'list' }): Schema {
  return {
    type: 'array',
    items: schemaOf(of),
    ...(min === undefined || min === 0 ? {} : { minItems: min }),
    ...(max === undefined ? {} : { maxItems: max }),
  };
}

function schemaOfFields(fields: Fields, rest?: Shape): Schema {
  const properties = Object.entries(fields).map(([name, { shape, says }]) => {
    return [name, { ...schemaOf(shape), description: says }];
  });
  const required = Object.keys(fields).filter((name) => fields[name]?.required);
  const names = { anyOf: [{ enum: Object.keys(fields) }, ID] };
  return {
    type: 'object',
    properties: Object.fromEntries(properties),
    ...(required.length === 0 ? {} : { required }),
    ...(rest === undefined ? {} : { propertyNames: names }),
    additionalProperties: rest === undefined ? false : schemaOf(rest),
  };
}

const PLAIN_TEXT: Schema = { type: 'string', maxLength: LONGEST_TEXT, pattern: TEXT_PATTERN };

const SMALL_DEFINITIONS: Schema = {
  id: {
    description: 'Small letters, digits and dashes.',
    type: 'string',
    pattern: ID_PATTERN.source,
    not: { enum: [...RESERVED_IDS] },
  },
  text: {
    description: 'A text, or the same text by language.',
    anyOf: [
      PLAIN_TEXT,
      {
        type: 'object',
        minProperties: 1,
        propertyNames: { pattern: LANGUAGE_PATTERN.source },
        additionalProperties: PLAIN_TEXT,
      },
    ],
  },
  ...RECORDED,
};

const SCALARS: Schema = { type: 'array', items: refTo('scalar'), minItems: 1 };
const ABOUT_VALUE: Schema = { evidence: refTo('evidence') };

const VALUE: Schema = {
  description: 'A recorded value, with its evidence; or what one may choose.',
  anyOf: [
    refTo('scalar'),
    SCALARS,
    object({ is: { anyOf: [refTo('scalar'), SCALARS] }, ...ABOUT_VALUE, tool: ID }, ['is']),
    object(
      {
        choose: { anyOf: [pairOf(refTo('scalar')), object({ of: SCALARS }, ['of'])] },
        ...ABOUT_VALUE,
      },
      ['choose'],
    ),
  ],
};

function object(properties: Schema, required: readonly string[]): Schema {
  return { type: 'object', properties, required, additionalProperties: false };
}

function pairOf(items: Schema): Schema {
  return { type: 'array', items, minItems: 2, maxItems: 2 };
}

const TERMS: Schema = { anyOf: [TERM, { type: 'array', items: TERM, minItems: 1 }] };

const TERM_FORMS: Schema = {
  description:
    'A value ("4 mm", "1/2"), a name ("gearbox.length"), a list of factors, or values joined.',
  anyOf: [
    { type: 'string', minLength: 1 },
    SAFE_INTEGER,
    { type: 'array', items: TERM, minItems: 1 },
    ...['product', 'sum', 'min', 'max'].map((word) => object({ [word]: TERMS }, [word])),
    object({ count: TERM }, ['count']),
  ],
};

/** In a kind, the name of a parameter stands for both sides that have it. */
const PAIR: Schema = { anyOf: [pairOf(TERM), { type: 'string', minLength: 1 }] };

function checkForms(): Schema[] {
  return [
    checkForm({ equal: PAIR }),
    checkForm({ 'one-of': ONE_OF }),
    checkForm({ clearance: PAIR, min: TERM }, { max: TERM }),
    checkForm({ clearance: PAIR, max: TERM }),
    checkForm({ 'at-least': PAIR }),
    checkForm({ 'at-most': PAIR }),
    checkForm({ within: PAIR, tolerance: TERM }),
    checkForm({ coincide: PAIR, tolerance: TERM }),
    checkForm({ agree: PAIR, coupling: TERM }, { whenEmpty: termsByName() }),
    checkForm({ carries: TERM, demand: TERM }),
  ];
}

const ONE_OF: Schema = {
  type: 'array',
  prefixItems: [
    TERM,
    { type: 'array', items: { anyOf: [{ type: 'string' }, SAFE_INTEGER] }, minItems: 1 },
  ],
  items: false,
  minItems: 2,
};

function termsByName(): Schema {
  return { type: 'object', propertyNames: ID, additionalProperties: TERM };
}

const COMMON: Readonly<Record<(typeof COMMON_KEYS)[number], Schema>> = {
  id: { type: 'string', pattern: ID_PATTERN.source, description: 'Its name.' },
  severity: { enum: ['must', 'caution'], description: 'Must hold (default), or is warned of.' },
  code: { type: 'string', pattern: ID_PATTERN.source, description: 'Reason code of a failure.' },
  text: { ...refTo('text'), description: 'Said beside the reason, in words of the trade.' },
  when: { ...refTo('condition'), description: 'It applies only where this holds.' },
};

function checkForm(own: Schema, optional: Schema = {}): Schema {
  return object({ ...own, ...optional, ...COMMON }, Object.keys(own));
}

function conditionForms(): Schema[] {
  const conditions = { type: 'array', items: refTo('condition'), minItems: 1 };
  return [
    ...POSITION_TESTS.map((test) => object({ [test]: ID }, [test])),
    object({ mating: ID, adapter: ID }, ['mating', 'adapter']),
    ...['all', 'any'].map((word) => object({ [word]: conditions }, [word])),
    object({ not: refTo('condition') }, ['not']),
    refTo('check'),
  ];
}
