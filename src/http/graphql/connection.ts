/**
 * Lists as connections (Relay Cursor Connections). A cursor is that of the page which its entry is
 * on, with the place of the entry on it: so it goes on where REST's does, and pins its edition.
 */

import {
  GraphQLBoolean,
  GraphQLError,
  type GraphQLFieldConfigMap,
  GraphQLInt,
  GraphQLList,
  GraphQLNonNull,
  GraphQLObjectType,
  type GraphQLOutputType,
  GraphQLString,
} from 'graphql';
import { LIMITS } from '../../contract/limits.js';
import { USUAL_ENTRIES } from '../../contract/list.js';
import type { Answer } from './asking.js';

const PAGE_INFO = new GraphQLObjectType({
  name: 'PageInfo',
  description: 'Where a list goes on. It goes forward alone.',
  fields: {
    hasNextPage: { type: new GraphQLNonNull(GraphQLBoolean) },
    hasPreviousPage: { type: new GraphQLNonNull(GraphQLBoolean) },
    startCursor: { type: GraphQLString },
    endCursor: { type: GraphQLString },
  },
});

export const CONNECTION_ARGUMENTS = {
  first: {
    type: GraphQLInt,
    description: `So many entries at most; ${USUAL_ENTRIES} if left out.`,
  },
  after: { type: GraphQLString, description: 'The cursor of the entry after which to go on.' },
};

export function connectionType(
  name: string,
  node: GraphQLOutputType,
  fields: GraphQLFieldConfigMap<Answer, unknown>,
): GraphQLObjectType {
  const edge = new GraphQLObjectType({
    name: `${name}Edge`,
    fields: {
      cursor: { type: new GraphQLNonNull(GraphQLString) },
      node: { type: new GraphQLNonNull(node) },
    },
  });
  return new GraphQLObjectType({
    name: `${name}Connection`,
    fields: {
      edges: { type: new GraphQLNonNull(new GraphQLList(new GraphQLNonNull(edge))) },
      nodes: { type: new GraphQLNonNull(new GraphQLList(new GraphQLNonNull(node))) },
      pageInfo: { type: new GraphQLNonNull(PAGE_INFO) },
      totalCount: { type: new GraphQLNonNull(GraphQLInt) },
      ...fields,
    },
  });
}

/** Where a page begins, and how many entries of it were given before. */
export interface Place {
  readonly cursor: string | null;
  readonly passed: number;
}

/**
 * `3.12.<cursor of the page>`: the place on the page, the edition, and the page, which is left out
 * for the first one. The list of editions is of none.
 */
const CURSOR = /^(0|[1-9]\d{0,3})\.(\d*)\.([\w-]*)$/;

export function placeOf(after: string | null | undefined, edition: number | null): Place {
  if (after === null || after === undefined) return { cursor: null, passed: 0 };
  const [, passed, own, cursor] = CURSOR.exec(after) ?? [];
  if (passed === undefined || cursor === undefined) throw invalid('not-a-cursor');
  if (own !== String(edition ?? '')) throw invalid('cursor-of-another-edition');
  return { cursor: cursor === '' ? null : cursor, passed: Number(passed) };
}

function invalid(code: 'not-a-cursor' | 'cursor-of-another-edition'): GraphQLError {
  const text =
    code === 'not-a-cursor'
      ? 'It is no cursor of this service.'
      : 'It is a cursor of another edition of the catalogue.';
  return new GraphQLError(`after: ${text}`, {
    extensions: {
      code: 'invalid-cursor',
      status: 400,
      type: '/problems/invalid-cursor',
      errors: [{ parameter: 'after', code, data: {}, text }],
    },
  });
}

/** How many entries to ask for, so that `first` are left after those that were passed. */
export function limitFor(
  first: number | null | undefined,
  { passed }: Place,
  usual: number,
): number {
  const limit = passed + (first ?? usual);
  return first === null || first === undefined ? Math.min(limit, LIMITS.listEntries.value) : limit;
}

export function connectionOf(answer: Answer, { cursor, passed }: Place, edition: number | null) {
  const own = edition ?? '';
  const {
    items = [],
    next = null,
    counts,
  } = answer as {
    readonly items?: readonly unknown[];
    readonly next?: string | null;
    readonly counts?: { readonly total: number };
  };
  const edges = items.map((node, index) => {
    const isLast = index === items.length - 1 && next !== null;
    return { cursor: isLast ? `0.${own}.${next}` : `${index + 1}.${own}.${cursor ?? ''}`, node };
  });
  const shown = edges.slice(passed);
  return {
    ...answer,
    edges: shown,
    nodes: shown.map(({ node }) => node),
    totalCount: counts?.total ?? items.length,
    pageInfo: {
      hasNextPage: next !== null,
      hasPreviousPage: cursor !== null || passed > 0,
      startCursor: shown[0]?.cursor ?? null,
      endCursor: shown.at(-1)?.cursor ?? null,
    },
  };
}
