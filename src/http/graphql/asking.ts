/**
 * Asks the service what a field of GraphQL asks, in the way in which REST asks it: so both doors
 * have one answer, one set of faults, one cache and one log.
 */

import { GraphQLError } from 'graphql';
import { LIMITS } from '../../contract/limits.js';
import type { Operation } from '../../contract/operation.js';
import type { ProblemWire } from '../../contract/problem.js';
import type { App } from '../mount.js';
import type { ServiceEnv } from '../service.js';

/** What all fields of one request share. */
export interface Context {
  readonly app: App;
  readonly bindings: ServiceEnv['Bindings'];
  /** Of the request that came in: who asks, in which language, by which id. */
  readonly headers: Headers;
  /** What the questions of the request have cost so far. */
  spent: number;
  /** Whether something was answered that nobody is to keep. */
  isConfidential: boolean;
}

/** Headers that bear on an answer. */
const PASSED = ['accept-language', 'authorization', 'origin', 'x-request-id'] as const;

/** Nobody listens there: the request stays inside. */
const INSIDE = 'http://service.invalid';

const COST_LIMIT = LIMITS.graphqlCost.value;

export interface Asking {
  readonly operation: Operation;
  /** What stands in the path; null where nothing does. */
  readonly segment: string | null;
  readonly question: Readonly<Record<string, unknown>>;
}

export type Answer = Readonly<Record<string, unknown>>;

export async function ask(asking: Asking, context: Context): Promise<Answer> {
  const { app, bindings } = context;
  const response = await app.fetch(requestOf(asking, context), bindings);
  if (response.headers.get('cache-control') === 'no-store') context.isConfidential = true;
  const body: unknown = await response.json();
  if (response.ok) return body as Answer;
  throw errorOf(body as ProblemWire);
}

/** Ends what asks for more than a request may. */
export function spend(cost: number, context: Context): void {
  context.spent += cost;
  if (context.spent <= COST_LIMIT) return;
  throw new GraphQLError(`The questions of this request cost more than ${COST_LIMIT}.`, {
    extensions: {
      code: 'invalid-request',
      status: 400,
      limit: { name: 'graphqlCost', value: COST_LIMIT },
    },
  });
}

/** In a path these two are steps, however they are encoded. */
const NO_SEGMENT = new GraphQLError('A point, or two, is the id of nothing.', {
  extensions: { code: 'invalid-request', status: 400 },
});

function requestOf({ operation, segment, question }: Asking, context: Context): Request {
  const headers = new Headers();
  for (const name of PASSED) {
    const value = context.headers.get(name);
    if (value !== null) headers.set(name, value);
  }
  if (segment === '.' || segment === '..') throw NO_SEGMENT;
  const path = operation.path.replace(/\{\w+\}/, encodeURIComponent(segment ?? ''));
  if (operation.method === 'get') {
    const search = searchOf(question, operation);
    return new Request(`${INSIDE}${path}${search === '' ? '' : `?${search}`}`, { headers });
  }
  headers.set('content-type', 'application/json');
  // QUERY says that nothing is changed, so its answer may be one that is at hand.
  const body = JSON.stringify(question);
  return new Request(`${INSIDE}${path}`, { method: 'QUERY', headers, body });
}

/** A list as a parameter that is there several times, a map as one for each of its places. */
function searchOf(question: Asking['question'], { query }: Operation): string {
  return Object.entries(question)
    .flatMap(([field, value]) => {
      const name = query.groups.find((group) => group.field === field)?.prefix ?? field;
      if (Array.isArray(value)) return value.map((one) => pair(name, one));
      if (typeof value !== 'object' || value === null) return pair(name, value);
      return Object.entries(value).map(([place, one]) => pair(`${name}.${place}`, one));
    })
    .join('&');
}

function pair(name: string, value: unknown): string {
  return `${encodeURIComponent(name)}=${encodeURIComponent(String(value))}`;
}

/** A problem as GraphQL tells errors: its sentence, and all that it says in `extensions`. */
function errorOf({ detail, instance: _, ...problem }: ProblemWire): GraphQLError {
  return new GraphQLError(detail, { extensions: { ...problem } });
}
