/**
 * The door of GraphQL: yoga over the schema, with everything that each path does alike around it.
 *
 * A document that yoga has parsed and found sound is kept. The same document again, in the plain
 * form in which clients send it, is answered without going through yoga once more, by the very
 * functions that yoga would call: most of its time goes into what such a request has no need of.
 */

import {
  type DocumentNode,
  type ExecutionResult,
  execute,
  GraphQLError,
  getOperationAST,
} from 'graphql';
import { createYoga, type Plugin } from 'graphql-yoga';
import type { Context as HonoContext } from 'hono';
import { LRUCache } from 'lru-cache';
import { ENGINE_VERSION } from '../../contract/answer-head.js';
import { bytesOf } from '../body.js';
import { type Exchange, openExchange, optionsReply, problemReply, vary } from '../exchange.js';
import type { App } from '../mount.js';
import { refusalOf } from '../problem.js';
import { digestOf } from '../question-key.js';
import { type Service, type ServiceEnv, stateOf } from '../service.js';
import type { Context } from './asking.js';
import { parsed } from './parsing.js';
import { limitExtent } from './rules.js';
import { graphqlSchema } from './schema.js';

export const GRAPHQL_PATH = '/graphql';

const ALLOW = 'GET, POST, OPTIONS';

/** Documents that are kept, and characters of the longest. */
const KEPT = 1000;
const LONGEST_KEPT = 20_000;

const JSON_TYPE = 'application/json';

interface Bindings {
  readonly context: Context;
}

export function mountGraphql(app: App, service: Service): void {
  const door = new Door(app, service);
  app.all(GRAPHQL_PATH, (context) => door.answer(context));
}

class Door {
  readonly #app: App;
  readonly #service: Service;
  /** What was parsed and found sound, by its text. */
  readonly #sound = new LRUCache<string, DocumentNode>({ max: KEPT });
  #yoga: ReturnType<typeof createYoga<Bindings>> | null = null;

  constructor(app: App, service: Service) {
    this.#app = app;
    this.#service = service;
  }

  async answer(hono: HonoContext<ServiceEnv>): Promise<Response> {
    const { stopwatch, log } = this.#service;
    const started = stopwatch();
    const exchange = openExchange(hono.req.raw, this.#service, stateOf(hono.env), {});
    const { method } = exchange.request;
    let response: Response;
    try {
      response = await this.#reply(exchange, hono.env);
    } catch (error) {
      response = problemReply(exchange, refusalOf(error, null));
    }
    const ms = Math.round((stopwatch() - started) * 1000) / 1000;
    const { status } = response;
    log.info({ method, route: GRAPHQL_PATH, status, ms, requestId: exchange.id }, 'answered');
    return response;
  }

  async #reply(exchange: Exchange, bindings: ServiceEnv['Bindings']): Promise<Response> {
    const { request } = exchange;
    if (request.method === 'OPTIONS') return optionsReply(exchange, ALLOW);
    const body = request.method === 'POST' ? await bytesOf(request) : null;
    const text = body === null ? null : new TextDecoder().decode(body);
    const isPlain = text !== null && isPlainlyAsked(request.headers);
    // Who is opened nothing at all is told so where a question is answered.
    const key = isPlain ? this.#keyOf(text, exchange) : null;
    const given = key === null ? undefined : this.#service.answers.find(key);
    if (given !== undefined) return jsonOf(given, exchange);
    const headers = new Headers(request.headers);
    headers.set('x-request-id', exchange.id);
    const context: Context = { app: this.#app, bindings, headers, spent: 0, isConfidential: false };
    const quick = isPlain ? this.#quickly(text, context) : null;
    if (quick !== null) {
      const answer = await quick;
      const result = JSON.stringify(answer);
      const isKept = key !== null && !context.isConfidential && !('errors' in answer);
      if (isKept) this.#service.answers.keep(key, result);
      return jsonOf(result, exchange);
    }
    const { url, method } = request;
    const inner = new Request(url, { method, headers, ...(text === null ? {} : { body: text }) });
    const answered = await this.#through(inner, context);
    const { status } = answered;
    const own = { ...Object.fromEntries(answered.headers), ...headersOf(exchange) };
    return new Response(await answered.text(), { status, headers: own });
  }

  /** Whatever an edition is asked, it is the newest or one that never changes. */
  #keyOf(text: string, { access, request }: Exchange): string | null {
    // A key may have ended: what it opens decides, and not how it is written.
    if (access instanceof Error) return null;
    const { newest, offersNumber } = this.#service;
    const of = [ENGINE_VERSION, newest()?.hash ?? '', String(offersNumber())];
    const to = [[...access.scopes].sort().join(), request.headers.get('accept-language') ?? ''];
    return digestOf([GRAPHQL_PATH, ...of, ...to, text]);
  }

  /** Null where it is not in the plain form, or the document is a new one. */
  #quickly(text: string, contextValue: Context): Promise<object> | null {
    const asked = readPlain(text);
    const document = asked === null ? undefined : this.#sound.get(asked.query);
    if (asked === null || document === undefined) return null;
    const { operationName, variables } = asked;
    const operation = getOperationAST(document, operationName);
    if (operation?.operation !== 'query') return null;
    const schema = graphqlSchema();
    const result = execute({
      schema,
      document,
      contextValue,
      operationName: operationName ?? null,
      variableValues: variables ?? null,
    });
    return Promise.resolve(result).then((one) => this.#masked(one));
  }

  #masked({ data, errors }: ExecutionResult): object {
    const masked = errors?.map((error) => this.#mask(error));
    return {
      ...(masked === undefined ? {} : { errors: masked }),
      ...(data === undefined ? {} : { data }),
    };
  }

  /** A fault of the program is told to nobody but the log. */
  #mask(error: unknown): GraphQLError {
    if (error instanceof GraphQLError && error.originalError === undefined) return error;
    const original = error instanceof GraphQLError ? error.originalError : error;
    if (original instanceof GraphQLError) return error as GraphQLError;
    this.#service.log.error({ err: original }, 'internal-error');
    const { nodes, path } = error instanceof GraphQLError ? error : { nodes: null, path: null };
    return new GraphQLError('Something went wrong in the service itself.', {
      nodes: nodes ?? null,
      path: path ?? null,
      extensions: { code: 'internal-error', status: 500 },
    });
  }

  #through(request: Request, context: Context): Promise<Response> {
    this.#yoga ??= createYoga<Bindings>({
      schema: graphqlSchema(),
      graphqlEndpoint: GRAPHQL_PATH,
      // It would load its pages from elsewhere.
      graphiql: false,
      landingPage: false,
      // The service has its own list of origins.
      cors: false,
      batching: false,
      logging: false,
      maskedErrors: { maskError: (error) => this.#mask(error) },
      context: ({ context: own }: Bindings) => own,
      plugins: [this.#limits()],
    });
    return Promise.resolve(this.#yoga.fetch(request, { context }));
  }

  #limits(): Plugin {
    return {
      onParse: ({ setParseFn }) => {
        setParseFn(parsed);
      },
      onValidate: ({ addValidationRule, params }) => {
        addValidationRule(limitExtent);
        return ({ valid }) => {
          const documentAST = params.documentAST as DocumentNode;
          const text = documentAST.loc?.source.body ?? '';
          if (valid && text.length <= LONGEST_KEPT) this.#sound.set(text, documentAST);
        };
      },
    };
  }
}

const CONTENT = 'application/json; charset=utf-8';

/** What clients send: JSON that wishes for JSON. All else is for yoga to take apart. */
function isPlainlyAsked(headers: Headers): boolean {
  const accept = headers.get('accept') ?? '*/*';
  return headers.get('content-type') === JSON_TYPE && (accept === '*/*' || accept === JSON_TYPE);
}

interface Plain {
  readonly query: string;
  readonly operationName?: string | null;
  readonly variables?: Readonly<Record<string, unknown>> | null;
}

const FIELDS: ReadonlySet<string> = new Set(['query', 'operationName', 'variables']);

function readPlain(text: string): Plain | null {
  let read: unknown;
  try {
    read = JSON.parse(text);
  } catch (error) {
    // What is no JSON is refused by yoga, in its words.
    if (error instanceof SyntaxError) return null;
    throw error;
  }
  if (typeof read !== 'object' || read === null || Array.isArray(read)) return null;
  const { query, operationName, variables } = read as Partial<Record<keyof Plain, unknown>>;
  const isPlain =
    Object.keys(read).every((name) => FIELDS.has(name)) &&
    typeof query === 'string' &&
    (operationName === undefined || operationName === null || typeof operationName === 'string') &&
    (variables === undefined || (typeof variables === 'object' && !Array.isArray(variables)));
  return isPlain ? (read as Plain) : null;
}

function jsonOf(text: string, exchange: Exchange): Response {
  return new Response(text, { headers: { ...headersOf(exchange), 'content-type': CONTENT } });
}

/** Nobody keeps the answer: what it is of stands in the body, which no cache knows. */
function headersOf(exchange: Exchange): Record<string, string> {
  return {
    ...exchange.headers,
    'cache-control': 'no-store',
    ...vary(exchange, ['Accept', 'Accept-Language']),
  };
}
