/** Documents that are as large as is taken, and one more: for each limit of GraphQL. */

import { expect } from 'vitest';
import { LIMITS, type LimitName } from '../../../src/contract/limits.js';
import { asked, limitsIn } from './asking.js';

const many = (count: number, one: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => one(index)).join(' ');

/** Fifteen, and as many numbers as are left. */
const ofTokens = (tokens: number) =>
  `query ($a: [Int] = [${many(tokens - 15, () => '1')}]) { __typename }`;

/** A fragment of a hundred fields is spread, and what is left spelt out. */
const ofFields = (fields: number) => {
  const spread = many(Math.floor(fields / 100), () => '...f');
  const left = many(fields % 100, (index) => `a${index}: __typename`);
  const hundred = many(100, (index) => `b${index}: __typename`);
  return `{ ${spread} ${left} } fragment f on Query { ${hundred} }`;
};

const ofLevels = (levels: number) =>
  `{ __type(name: "Fault") { ${'ofType { '.repeat(levels - 2)}name ${'} '.repeat(levels - 2)}} }`;

/** An edition costs 1, and so does each record. */
const ofCost = (cost: number) =>
  `{ edition { ${many(cost - 1, (i) => `r${i}: kind(id: "x") { id }`)} } }`;

/** One around the variables, and the lists inside it. */
const ofBrackets = (brackets: number) =>
  `query ($a: ${'['.repeat(brackets - 1)}Int${']'.repeat(brackets - 1)}) { __typename }`;

const DOCUMENTS = {
  graphqlTokens: ofTokens,
  graphqlFields: ofFields,
  graphqlBrackets: ofBrackets,
  graphqlLevels: ofLevels,
  graphqlCost: ofCost,
} as const;

type Case = readonly [LimitName, () => Promise<void>];

export const EXTENT_CASES: Readonly<Partial<Record<LimitName, () => Promise<void>>>> =
  Object.fromEntries(
    Object.entries(DOCUMENTS).map(([name, documentOf]): Case => {
      const limit = name as keyof typeof DOCUMENTS;
      const { value } = LIMITS[limit];
      return [
        limit,
        async () => {
          expect(limitsIn(await asked(documentOf(value)))).toEqual([]);
          expect(limitsIn(await asked(documentOf(value + 1)))).toEqual([limit]);
        },
      ];
    }),
  );
