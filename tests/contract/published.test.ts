/**
 * Real answers against the published document, by a validator that is not ours: the demo's answers
 * to every question, and the examples. The schemas let nothing else be in an answer, so a field
 * that nobody declared is found however deep.
 */

import { describe, expect, test } from 'vitest';
import { OPERATIONS } from '../../src/contract/operations.js';
import { fits, inspections, matings } from '../demo/questions.js';
import {
  complaints,
  describedOf,
  mediaTypesOf,
  objectsOf,
  responseSchema,
  schemaAt,
  webhookCalled,
} from './published-document.js';

describe.each([
  ['FitAnswer', fits],
  ['InspectAnswer', inspections],
  ['MateAnswer', matings],
])('%s', (name, questions) => {
  const validate = schemaAt('components', 'schemas', name);

  test.each(Object.entries(questions))('%s', (_, ask) => {
    expect(complaints(validate, ask())).toEqual([]);
  });

  test('has no place for anything else, however deep', () => {
    const [ask] = Object.values(questions);
    let spoilt = 0;
    const answer = JSON.parse(JSON.stringify(ask?.())) as object;
    for (const inner of objectsIn(answer)) {
      Reflect.set(inner, 'nobody-declared-this', 1);
      expect(validate(answer)).toBe(false);
      Reflect.deleteProperty(inner, 'nobody-declared-this');
      spoilt += 1;
    }
    expect(spoilt).toBeGreaterThan(20);
    expect(validate(answer)).toBe(true);
  });
});

function objectsIn(value: unknown): object[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(objectsIn);
  return Array.isArray(value) ? inner : [value, ...inner];
}

describe('the examples', () => {
  test.each(OPERATIONS.map(({ operationId }) => operationId))('of %s', (operationId) => {
    const { path, method, said } = describedOf(operationId);
    for (const type of mediaTypesOf(operationId)) {
      const answers = said.responses[200]?.content?.[type]?.examples ?? {};
      expect(Object.keys(answers).length).toBeGreaterThan(0);
      const validate = responseSchema(operationId, 200, type);
      for (const { value } of Object.values(answers)) {
        expect(complaints(validate, value)).toEqual([]);
      }
      const questions = said.requestBody?.content[type]?.examples ?? {};
      expect(Object.keys(questions).length > 0).toBe(method === 'post');
      for (const { value } of Object.values(questions)) {
        const at = ['paths', path, method, 'requestBody', 'content', type, 'schema'];
        expect(complaints(schemaAt(...at), value)).toEqual([]);
      }
    }
  });

  test('of lines, each line', () => {
    const { said } = describedOf('askFitBatch');
    const type = 'application/x-ndjson';
    const feed = describedOf('exportFits').said;
    const ways = [
      ['FitLine', said.requestBody?.content[type]?.examples],
      ['FitBatchLine', said.responses[200]?.content?.[type]?.examples],
      ['FitsFeedLine', feed.responses[200]?.content?.[type]?.examples],
    ] as const;
    for (const [name, examples = {}] of ways) {
      const validate = schemaAt('components', 'schemas', name);
      const objects = Object.values(examples).flatMap(({ value }) => objectsOf(value));
      expect(objects.length).toBeGreaterThan(2);
      for (const object of objects) expect(complaints(validate, object)).toEqual([]);
      expect(complaints(validate, { ...(objects[1] as object), colour: 1 })).not.toEqual([]);
    }
  });

  test('of what receivers are told, the message', () => {
    const { examples = {} } = webhookCalled('faying.edition.published');
    const validate = schemaAt('components', 'schemas', 'EditionPublished');
    const [shown, ...others] = Object.values(examples).map(({ value }) => value as object);
    expect(others).toEqual([]);
    expect(shown).toMatchObject({ data: { edition: 1, from: null } });
    expect(complaints(validate, shown)).toEqual([]);
    expect(complaints(validate, { ...shown, colour: 1 })).not.toEqual([]);
  });
});
