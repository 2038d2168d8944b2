/**
 * Answers a question with what caches and clients need beside it: which edition answered, in
 * which language, for how long it holds, and by which validator it is known again.
 *
 * The validator is made from the edition, the program, the question and the language before any
 * work is done: all that an answer depends on. So a client that asks again costs nothing, nor does
 * another one that asks the same.
 */

import { languageFor } from '../contract/language.js';
import type { Library } from '../usecases/library.js';
import type { EditionHead } from '../usecases/ports.js';
import { type Exchange, type Headers, JSON_TYPE, jsonReply, vary } from './exchange.js';
import { wishedLanguage } from './negotiation.js';
import { canonicalSearch, type Pair } from './query.js';
import { keyOf, ordered } from './question-key.js';
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
}

/** The edition and language that a question without them is asked of. */
export interface Settled {
  readonly head: EditionHead;
  readonly lang: string;
}

export function settle({ library }: Service, { request }: Exchange, asked: Asked): Settled {
  // The head alone: an edition that is not at hand is loaded where something is judged.
  const head = library.head(asked.edition ?? null);
  const wished =
    asked.lang === undefined ? null : (languageFor(asked.lang) ?? wishedLanguage(null));
  return { head, lang: wished ?? wishedLanguage(request.headers.get('accept-language')) };
}

/** What is asked of which use-case. */
export interface Question<Input extends object> {
  /** The path in the contract, however the client spelt it. */
  readonly path: string;
  readonly input: Input;
  readonly judge: (library: Library, input: Input) => object;
}

/** An answer to a question in a URL: not even judged where the client has it already. */
export function answerAt<Input extends object>(
  service: Service,
  exchange: Exchange,
  { head, lang }: Settled,
  asked: Asked & { readonly pairs: readonly Pair[]; readonly lifetimes: Lifetimes },
  question: Question<Input>,
): Response {
  const { key, text } = answerTo(service, head, question);
  const search = canonicalSearch(asked.pairs, { edition: head.number, lang });
  const { pinned, floating } = asked.lifetimes;
  const headers = {
    ...editionHeaders(head, lang),
    'cache-control': asked.edition === undefined ? floating : pinned,
    'content-location': `${question.path}?${search}`,
    etag: etagOf(key),
    ...vary(exchange, asked.lang === undefined ? ['Accept-Language'] : []),
  };
  return unlessKnown(exchange, headers, text);
}

/** An answer to a question in a body, which no cache on the way keeps. */
export function answerIn<Input extends object>(
  service: Service,
  exchange: Exchange,
  { head, lang }: Settled,
  question: Question<Input>,
): Response {
  const { text } = answerTo(service, head, question);
  const headers = { ...editionHeaders(head, lang), 'cache-control': 'no-store' };
  return jsonReply(exchange, text(), headers);
}

interface Answer {
  readonly key: string;
  /** Judges where the answer is not at hand. */
  readonly text: () => string;
}

function answerTo<Input extends object>(
  { answers, library }: Service,
  { hash: editionHash }: EditionHead,
  { path, input: unordered, judge }: Question<Input>,
): Answer {
  const input = ordered(unordered);
  const key = keyOf({ editionHash, path, mediaType: JSON_TYPE, input });
  return { key, text: () => answers.text(key, () => JSON.stringify(judge(library, input))) };
}

/** The body, or 304 where the client says that it has this very answer. */
export function unlessKnown(
  exchange: Exchange,
  headers: Headers & { readonly etag: string },
  body: () => string,
): Response {
  const known = tagsOf(exchange.request.headers.get('if-none-match'));
  if (known.includes(headers.etag)) return unchanged(exchange, headers);
  const text = body();
  // `*` asks whether there is an answer at all, which only answering tells.
  return known.includes('*') ? unchanged(exchange, headers) : jsonReply(exchange, text, headers);
}

function unchanged(exchange: Exchange, headers: Headers): Response {
  return new Response(null, { status: 304, headers: { ...exchange.headers, ...headers } });
}

/** A strong validator: 128 bits of a digest of everything that decides the bytes. */
export function etagOf(digest: string): string {
  return `"${digest.slice(0, 22)}"`;
}

function editionHeaders({ number }: EditionHead, lang: string): Headers {
  return { 'faying-edition': String(number), 'content-language': lang };
}

/** RFC 9110 section 13.1.2: by the weak comparison. */
function tagsOf(header: string | null): string[] {
  return (header ?? '').split(',').map((one) => one.trim().replace(/^W\//, ''));
}
