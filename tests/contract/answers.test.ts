/**
 * Every answer that the demo catalogue gives, against the shapes that the contract promises: no
 * field is missing, none is there that the contract does not name.
 */

import { describe, expect, test } from 'vitest';
import { editionsAnswerSchema } from '../../src/contract/editions.js';
import { fitAnswerSchema } from '../../src/contract/fit.js';
import { inspectAnswerSchema } from '../../src/contract/inspect.js';
import { mateAnswerSchema } from '../../src/contract/mate.js';
import { fits, inspections, matings } from '../demo/questions.js';

/** As it goes over the wire, where nothing is undefined. */
function onWire(answer: object): unknown {
  return JSON.parse(JSON.stringify(answer));
}

describe('the answers of the demo', () => {
  test.each(Object.entries(fits))('fit: %s', (_, ask) => {
    const answer = onWire(ask());
    expect(fitAnswerSchema.parse(answer)).toEqual(answer);
  });

  test.each(Object.entries(inspections))('inspect: %s', (_, ask) => {
    const answer = onWire(ask());
    expect(inspectAnswerSchema.parse(answer)).toEqual(answer);
  });

  test.each(Object.entries(matings))('mate: %s', (_, ask) => {
    const answer = onWire(ask());
    expect(mateAnswerSchema.parse(answer)).toEqual(answer);
  });

  test('a field that the contract does not name is refused, however deep', () => {
    const [ask] = Object.values(fits);
    const answer = onWire(ask?.() ?? {}) as { positions: { matings: object[] }[] };
    const [position] = answer.positions;
    position?.matings.push({ ...position.matings[0], extra: 1 });
    expect(fitAnswerSchema.safeParse(answer).success).toBe(false);
    expect(editionsAnswerSchema.safeParse({}).success).toBe(false);
  });
});
