/**
 * A client for the service, typed by its contract: every path with what it is asked and what it
 * answers. Besides it asks again where that is of use, keeps to one edition where told to, reads
 * lists to their end, and streams batches. It runs in browsers as well as under Node.
 *
 * An answer is returned, and everything else thrown: see `problem.ts`.
 */

import createClient from 'openapi-fetch';
import { type BatchBody, FitBatch, type FitLines } from './batch.js';
import type {
  AnswerOf,
  ArgumentsOf,
  BatchPath,
  FitBatchQuestion,
  ItemOf,
  ListPath,
  Method,
  Page,
  PathOf,
} from './contract.js';
import type { paths } from './generated/openapi.js';
import { OPERATIONS } from './generated/operations.js';
import { refusalOf } from './problem.js';
import {
  type Clock,
  fetchRepeatedly,
  type RetryOptions,
  SYSTEM_CLOCK,
  type Trying,
  USUAL_RETRY,
} from './retry.js';

export interface FayingOptions {
  /** Where the service is, such as `https://fits.example`; empty for where the page came from. */
  readonly baseUrl: string;
  /** Sent as `Authorization: Bearer <key>`. */
  readonly key?: string;
  /** Language of the sentences, such as `de`, where a question does not say. */
  readonly lang?: string;
  /** The edition that answers, where a question does not say; the newest where left out. */
  readonly edition?: number;
  readonly retry?: RetryOptions;
  readonly fetch?: (request: Request) => Promise<Response>;
  readonly clock?: Clock;
}

export interface FitBatchOptions extends FitBatchQuestion {
  readonly signal?: AbortSignal;
}

const BATCH: BatchPath = '/v1/fit/batch';
const NDJSON = 'application/x-ndjson';

/** What is asked with, as far as the client itself looks into it. */
interface Init {
  readonly params?: { readonly query?: object } | undefined;
  readonly body?: unknown;
  readonly signal?: AbortSignal;
}

interface Answered {
  readonly data?: unknown;
  readonly error?: unknown;
  readonly response: Response;
}

/** The calls of openapi-fetch without the types of one path. */
type Call = (method: Method, path: string, init: object) => Promise<Answered>;

export class FayingClient {
  readonly #options: FayingOptions;
  readonly #call: Call;
  readonly #trying: Trying;

  constructor(options: FayingOptions) {
    const { baseUrl, key, retry, clock = SYSTEM_CLOCK } = options;
    const fetch = options.fetch ?? ((request: Request) => globalThis.fetch(request));
    const headers = key === undefined ? {} : { authorization: `Bearer ${key}` };
    const { request } = createClient<paths>({
      baseUrl,
      headers,
      querySerializer: {
        array: { style: 'form', explode: true },
        object: { style: 'form', explode: true },
      },
    });
    this.#options = options;
    this.#call = request as unknown as Call;
    this.#trying = { ...USUAL_RETRY, ...retry, fetch, clock };
  }

  /** The edition that answers where a question does not say; null for the newest. */
  get edition(): number | null {
    return this.#options.edition ?? null;
  }

  /** The same client, kept to one edition: what is asked of it goes together. */
  at(edition: number): FayingClient {
    return new FayingClient({ ...this.#options, edition });
  }

  /** The same client, kept to the edition that is the newest now. */
  async pinned(init: { readonly signal?: AbortSignal } = {}): Promise<FayingClient> {
    const params = { path: { number: 'latest' } };
    const { number } = await this.get('/v1/editions/{number}', { ...init, params });
    return this.at(number);
  }

  /** @throws FayingProblem, UnexpectedAnswer, and what `fetch` throws. */
  get<Path extends PathOf<'get'>>(
    path: Path,
    ...[init]: ArgumentsOf<Path, 'get'>
  ): Promise<AnswerOf<Path, 'get'>> {
    return this.#answer('get', path, init) as Promise<AnswerOf<Path, 'get'>>;
  }

  /** @throws FayingProblem, UnexpectedAnswer, and what `fetch` throws. */
  post<Path extends PathOf<'post'>>(
    path: Path,
    ...[init]: ArgumentsOf<Path, 'post'>
  ): Promise<AnswerOf<Path, 'post'>> {
    return this.#answer('post', path, init) as Promise<AnswerOf<Path, 'post'>>;
  }

  /** The pages of a list, all of the edition of the first. */
  async *pages<Path extends ListPath>(
    path: Path,
    ...[init]: ArgumentsOf<Path, 'get'>
  ): AsyncGenerator<AnswerOf<Path, 'get'>, void, undefined> {
    let asked: Init | undefined = init;
    for (;;) {
      const page = await this.#answer('get', path, asked);
      yield page as AnswerOf<Path, 'get'>;
      const { next } = page as Page;
      if (next === null) return;
      asked = withQuery(asked, { cursor: next });
    }
  }

  /** The entries of a list, page after page. */
  async *items<Path extends ListPath>(
    path: Path,
    ...init: ArgumentsOf<Path, 'get'>
  ): AsyncGenerator<ItemOf<Path>, void, undefined> {
    for await (const page of this.pages(path, ...init)) {
      yield* (page as Page).items as ItemOf<Path>[];
    }
  }

  /** Asks any number of fit questions, a line each; see `batch.ts`. */
  askBatch(questions: FitLines, options: FitBatchOptions = {}): FitBatch {
    const { signal, ...query } = options;
    const send = async (
      body: BatchBody,
      until: AbortSignal,
    ): Promise<ReadableStream<Uint8Array>> => {
      const init = this.#settled('post', BATCH, { params: { query }, signal: until });
      const fetch = typeof body === 'string' ? this.#fetchFor('post', BATCH) : this.#trying.fetch;
      const answered = await this.#call('post', BATCH, {
        ...init,
        headers: { 'content-type': NDJSON, accept: NDJSON },
        body: NDJSON,
        bodySerializer: () => body,
        parseAs: 'stream',
        // By the Fetch standard of every body that is a stream.
        ...(typeof body === 'string' ? {} : { duplex: 'half' }),
        fetch,
      });
      return this.#dataOf(answered) as ReadableStream<Uint8Array>;
    };
    return new FitBatch(questions, send, signal ?? null);
  }

  async #answer(method: Method, path: string, init: Init = {}): Promise<unknown> {
    const { signal } = init;
    const deadline = new Deadline(this.#trying.totalMs, signal ?? null);
    try {
      const asked = { ...this.#settled(method, path, init), signal: deadline.signal };
      const fetch = this.#fetchFor(method, path);
      return this.#dataOf(await this.#call(method, path, { ...asked, fetch }));
    } finally {
      deadline.clear();
    }
  }

  /** What is asked, with the edition and the language of this client where it names none. */
  #settled(method: Method, path: string, init: Init): Init & { readonly headers?: object } {
    const { edition, lang } = this.#options;
    const traits = OPERATIONS[`${method} ${path}`];
    const fields = (place: 'query' | 'body') => ({
      ...(edition !== undefined && traits?.edition === place ? { edition } : {}),
      ...(lang !== undefined && traits?.lang === place ? { lang } : {}),
    });
    const { params, body } = init;
    const isSaid = lang === undefined || traits?.lang !== null;
    return {
      ...init,
      params: { ...params, query: { ...fields('query'), ...params?.query } },
      ...(body === undefined ? {} : { body: { ...fields('body'), ...(body as object) } }),
      ...(isSaid ? {} : { headers: { 'accept-language': lang } }),
    };
  }

  #fetchFor(method: Method, path: string): Trying['fetch'] {
    const isRepeatable = OPERATIONS[`${method} ${path}`]?.repeatable ?? false;
    return isRepeatable ? (request) => fetchRepeatedly(request, this.#trying) : this.#trying.fetch;
  }

  #dataOf({ data, error, response }: Answered): unknown {
    if (response.ok) return data;
    throw refusalOf(response, error, this.#trying.clock.now());
  }
}

function withQuery(init: Init = {}, query: object): Init {
  const { params } = init;
  return { ...init, params: { ...params, query: { ...params?.query, ...query } } };
}

/** Ends a question that takes too long, a try that is never answered among them. */
class Deadline {
  readonly signal: AbortSignal;
  readonly #timer: ReturnType<typeof setTimeout>;

  constructor(ms: number, asked: AbortSignal | null) {
    const over = new AbortController();
    this.signal = asked === null ? over.signal : AbortSignal.any([asked, over.signal]);
    const reason = new DOMException(`There was no answer within ${ms} ms`, 'TimeoutError');
    this.#timer = setTimeout(() => over.abort(reason), ms);
  }

  clear(): void {
    clearTimeout(this.#timer);
  }
}
