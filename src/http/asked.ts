/**
 * Answers a question with what caches and clients need beside it: which edition answered, in
 * which language, for how long it holds, and by which validator it is known again.
 *
 * The validator is made from the edition, the program, the question and the language before any
 * work is done: all that an answer depends on. So a client that asks again costs nothing, nor does
 * another one that asks the same.
 */

import { ordered } from '../contract/canonical.js';
import type { Language } from '../contract/language.js';
import { LIMITS } from '../contract/limits.js';
import type { QueryGrammar } from '../contract/parameters.js';
import type { View } from '../contract/view.js';
import type { Library } from '../usecases/library.js';
import type { EditionHead } from '../usecases/ports.js';
import { checkNewest, isKeptToNewest, keptFor, viewFor } from './access.js';
import { type Exchange, type Headers, JSON_TYPE, jsonReply, vary } from './exchange.js';
import { spokenTo } from './negotiation.js';
import { canonicalSearch } from './query.js';
import { keyOf } from './question-key.js';
import type { Service } from './service.js';

/** For how long caches may keep answers: `Cache-Control` of a pinned edition, and of the newest. */
export interface Lifetimes {
  readonly pinned: string;
  readonly floating: string;
}

/** The newest edition may be another one in half a minute. */
export const FLOATING = 'public, max-age=30, stale-while-revalidate=300, stale-if-error=86400';

/** What the program makes of the records: a pinned answer changes with the program, so a day. */
export const JUDGED: Lifetimes = { pinned: 'public, max-age=86400', floating: FLOATING };

/** What an edition records is the same for ever. */
export const RECORDED: Lifetimes = {
  pinned: 'public, max-age=31536000, immutable',
  floating: FLOATING,
};

export interface Asked {
  readonly edition?: number | undefined;
  readonly lang?: string | undefined;
  readonly view?: View | undefined;
}

/** The edition, language and view that a question without them is asked of. */
export interface Settled {
  readonly head: EditionHead;
  readonly lang: Language;
  readonly view: View;
}

/** `path` is that of the contract; `isGoingOn` where the edition is that of a page before. */
export function settle(
  service: Service,
  exchange: Exchange,
  asked: Asked,
  { path, isGoingOn = false }: { readonly path: string; readonly isGoingOn?: boolean },
): Settled {
  const { edition } = asked;
  const view = viewFor(exchange, asked.view, path);
  // The head alone: an edition that is not at hand is loaded where something is judged.
  const newest = edition === undefined ? service.newest() : null;
  if (edition !== undefined && isKeptToNewest(exchange)) {
    // A list that was begun before the last publication may be read to its end.
    checkNewest(exchange, isGoingOn ? edition + 1 : edition, service.newest());
  }
  const head = newest ?? service.library.head(edition ?? null);
  return {
    head,
    lang: spokenTo(asked.lang, exchange.request.headers.get('accept-language')),
    view,
  };
}

/** What is asked of which use-case. */
export interface Question<Input extends object> {
  /** The path in the contract, however the client spelt it, and with what it filled in. */
  readonly path: string;
  /** The same with the names in it that the contract has there; as `path` where it has none. */
  readonly template?: string;
  /** How it stands in a URL; null where there is no such URL. */
  readonly query: QueryGrammar | null;
  /** As the client said it. */
  readonly asked: Asked;
  readonly lifetimes: Lifetimes;
  /** It tells what is nobody else's, such as what somebody buys at: nobody keeps the answer. */
  readonly isConfidential?: boolean;
  readonly input: Input;
  readonly judge: (library: Library, input: Input) => object;
}

/**
 * Where the method says that nothing is changed, what the client has already is not even judged.
 * POST does not say so: no cache keeps what it gives.
 */
export function answerTo<Input extends object>(
  service: Service,
  exchange: Exchange,
  settled: Settled,
  question: Question<Input>,
): Response {
  const { head, lang, view } = settled;
  const { asked, lifetimes, isConfidential = false } = question;
  const { key, text } = judged(service, settled, question);
  const headers = {
    'faying-edition': String(head.number),
    'faying-view': view,
    'content-language': lang,
    ...contentLocation(question, { edition: head.number, lang, view }),
    ...vary(exchange, asked.lang === undefined ? ['Accept-Language'] : []),
  };
  if (exchange.request.method === 'POST') {
    return jsonReply(exchange, text(), { ...headers, 'cache-control': 'no-store' });
  }
  const usual = asked.edition === undefined ? lifetimes.floating : lifetimes.pinned;
  const kept = isConfidential ? 'no-store' : keptFor(exchange, usual);
  return unlessKnown(exchange, { ...headers, 'cache-control': kept, etag: etagOf(key) }, text);
}

/** Where the same answer can be had by GET; the edition is left out where the path has it. */
export function contentLocation(
  { path, query, asked }: Pick<Question<object>, 'path' | 'query' | 'asked'>,
  settled: { readonly edition?: number; readonly lang: string; readonly view?: View },
): Headers {
  if (query === null) return {};
  const search = canonicalSearch(asked, query, settled);
  if (search === null || path.length + 1 + search.length > LIMITS.urlBytes.value) return {};
  return { 'content-location': `${path}?${search}` };
}

interface Answer {
  readonly key: string;
  /** Judges where the answer is not at hand. */
  readonly text: () => string;
}

function judged<Input extends object>(
  { answers, library, shown }: Service,
  { head: { hash: editionHash }, view }: Settled,
  { path, template = path, input: unordered, judge, isConfidential = false }: Question<Input>,
): Answer {
  const input = ordered(unordered);
  const key = keyOf({ editionHash, path, mediaType: JSON_TYPE, view, input });
  const write = () => JSON.stringify(shown.answer(template, view, judge(library, input)));
  return { key, text: () => (isConfidential ? write() : answers.text(key, write)) };
}

/** The body, or 304 where the client says that it has this very answer. */
export function unlessKnown(
  exchange: Exchange,
  headers: Headers & { readonly etag: string },
  body: () => string,
  reply = jsonReply,
): Response {
  return unlessHad(exchange, headers, () => {
    const text = body();
    return () => reply(exchange, text, headers);
  });
}

/** The same for an answer in any form: `answer` throws where there is none, and gives its reply. */
export function unlessHad(
  exchange: Exchange,
  headers: Headers & { readonly etag: string },
  answer: () => () => Response,
): Response {
  const known = exchange.request.headers.get('if-none-match') ?? '';
  if (tagsOf(known).includes(headers.etag)) return unchanged(exchange, headers);
  const reply = answer();
  // `*` asks whether there is an answer at all, which only answering tells.
  return known.trim() === '*' ? unchanged(exchange, headers) : reply();
}

function unchanged(exchange: Exchange, headers: Headers): Response {
  return new Response(null, { status: 304, headers: { ...exchange.headers, ...headers } });
}

/** A strong validator: 128 bits of a digest of everything that decides the bytes. */
export function etagOf(digest: string): string {
  return `"${digest.slice(0, 22)}"`;
}

/** RFC 9110 section 13.1.2: by the weak comparison. */
function tagsOf(header: string): string[] {
  return header.split(',').map((one) => one.trim().replace(/^W\//, ''));
}
