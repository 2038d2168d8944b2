/**
 * Which fields the views show: every field of every object that answers have is decided upon, once,
 * and what the public must not see is in no list of its.
 */

import { describe, expect, test } from 'vitest';
import { needOf } from '../../src/contract/access.js';
import { OPERATIONS } from '../../src/contract/operations.js';
import { fieldsAddedBy, SHOWN_OBJECTS } from '../../src/contract/views/fields.js';
import { VIEWS } from '../../src/domain/access.js';
import { type JsonSchema, Schemas } from '../../src/http/json-schema.js';

const schemas = new Schemas();

/** Every object with a name that an answer leads to, with the fields of its schema. */
function objectsOfAnswers(): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  const seen = new Set<string>();
  const walk = (schema: JsonSchema): void => {
    const { name, schema: own } = schemas.read(schema);
    if (name !== null) {
      if (seen.has(name)) return;
      seen.add(name);
    }
    const { properties, items, anyOf = [], additionalProperties } = own;
    if (properties !== undefined && name !== null) found.set(name, Object.keys(properties));
    for (const one of Object.values(properties ?? {})) walk(one);
    for (const one of anyOf) walk(one);
    if (items !== undefined) walk(items);
    if (typeof additionalProperties === 'object') walk(additionalProperties);
  };
  for (const operation of OPERATIONS) {
    if (operation.lines !== undefined) walk(schemas.component(operation.lines.answer.name));
    else walk(schemas.answerOf(operation));
  }
  return found;
}

const objects = objectsOfAnswers();

describe('the lists of fields', () => {
  test('speak of every object that an answer can have, and of no other', () => {
    expect(objects.size).toBeGreaterThan(100);
    expect(Object.keys(SHOWN_OBJECTS).sort()).toEqual([...objects.keys()].sort());
  });

  test.each([...objects])('decide upon each field of %s once', (name, fields) => {
    const decided = VIEWS.flatMap((view) => fieldsAddedBy(view, name));
    expect([...decided].sort()).toEqual([...fields].sort());
  });

  test('keep from the public what it must not see, wherever it stands', () => {
    const hidden = {
      Route: ['weakest', 'loads', 'driveline', 'measure'],
      KitLine: ['price', 'unitPrice', 'labour', 'labourHours'],
      KitTotals: ['cost', 'parts', 'works'],
      LineOffer: ['supplier', 'stock', 'id'],
      FitPosition: ['matings', 'checks'],
      PartAnswer: ['interfaces', 'values', 'evidence'],
      VehicleAnswer: ['values', 'evidence', 'vin', 'positions'],
      SaidReason: ['data'],
      Evidence: ['by', 'source', 'basis'],
      RecordedValue: ['value', 'evidence'],
    };
    for (const [name, fields] of Object.entries(hidden)) {
      const open = fieldsAddedBy('public', name);
      expect([name, fields.filter((field) => open.includes(field))]).toEqual([name, []]);
    }
  });

  test('keep evidence and suppliers from the trade', () => {
    const open = ['public', 'trade'] as const;
    const of = (name: string) => open.flatMap((view) => fieldsAddedBy(view, name));
    expect(of('Evidence')).toEqual([]);
    expect(of('Interface')).toEqual([]);
    expect(of('LineOffer')).not.toContain('supplier');
    expect(of('PartAnswer')).not.toContain('interfaces');
  });
});

describe('who may ask', () => {
  test.each(OPERATIONS.map(({ path }) => path))('%s is said', (path) => {
    expect(() => needOf(path)).not.toThrow();
  });

  test('is said of nothing that is not there', () => {
    expect(() => needOf('/v1/secrets')).toThrow('nothing says who may ask /v1/secrets');
    expect(needOf('/openapi.json')).toEqual({ view: null });
  });
});
