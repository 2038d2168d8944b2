/**
 * What a document of GraphQL may not ask for: it is refused before anything is asked.
 */

import { describe, expect, test } from 'vitest';
import { demoDocument } from '../../memory-store.js';
import { rigOf } from '../fixture.js';
import { asked, limitsIn } from './asking.js';
import { EXTENT_CASES } from './extent.js';

test.each(Object.entries(EXTENT_CASES))('%s: as much is taken, and no more', (_, pass) => pass());

describe('a document that asks for too much', () => {
  test.each([
    ['aliases', `{ ${Array.from({ length: 20_000 }, (_, i) => `a${i}: __typename`).join(' ')} }`],
    ['directives', `{ __typename ${'@skip(if: false) '.repeat(20_000)} }`],
  ])('20 000 %s are not even parsed', async (_, query) => {
    expect(limitsIn(await asked(query))).toEqual(['graphqlTokens']);
  });

  test.each([
    ['selections', '{ a '.repeat(2499)],
    ['lists', `{ a(b: ${'['.repeat(4900)}) }`],
    ['objects', `{ a(b: ${'{ c: '.repeat(1600)}) }`],
    ['types', `query ($a: ${'['.repeat(4900)}Int) { a }`],
  ])('%s inside each other are refused before the parser goes into them', async (_, query) => {
    expect(limitsIn(await asked(query))).toEqual(['graphqlBrackets']);
  });

  test('what fragments spread is counted as often as they are spread', async () => {
    const layers = Array.from({ length: 14 }, (_, i) => {
      const next = i === 13 ? '__typename' : `...f${i + 1}`;
      return `fragment f${i} on Query { ${next} ...last ${next} }`;
    });
    const document = `{ ...f0 ...f0 } ${layers.join(' ')} fragment last on Query { __typename }`;
    expect(limitsIn(await asked(document))).toEqual(['graphqlFields']);
  });

  test('fragments that lead back to themselves are refused', async () => {
    const { errors } = await asked(
      '{ ...a } fragment a on Query { ...b } fragment b on Query { ...a }',
    );
    expect(errors?.[0]?.message).toContain('Cannot spread fragment');
  });

  test('a search costs twenty times what a record does', async () => {
    const rig = rigOf({ documents: [demoDocument()] });
    const kits = (count: number) =>
      Array.from(
        { length: count },
        (_, i) => `k${i}: kits(vehicle: "lirren-1", steps: 1) { complete }`,
      );
    const before = rig.judged.resolveKitQuestion;
    const answer = await asked(`{ edition { ${kits(13).join(' ')} } }`, {}, rig);
    expect(limitsIn(answer)).toEqual(['graphqlCost']);
    expect(rig.judged.resolveKitQuestion).toBeLessThanOrEqual(before + 12);
  });
});
