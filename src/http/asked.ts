/**
 * Answers a question with what caches and clients need beside it: which edition answered, in
 * which language, for how long it holds, and by which validator it is known again.
 *
 * The validator is made from the edition, the program, the question and the language before any
 * work is done: all that an answer depends on. So a question that is asked again costs nothing.
 */

import { hash } from 'node:crypto';
import { ENGINE_VERSION } from '../contract/answer-head.js';
import { languageFor } from '../contract/language.js';
import type { EditionHead } from '../usecases/ports.js';
import { type Exchange, type Headers, jsonReply, vary } from './exchange.js';
import { wishedLanguage } from './negotiation.js';
import { canonicalSearch, type Pair } from './query.js';
import type { Service } from './service.js';

/** A pinned answer changes only with the program, so a day. */
const PINNED = 'public, max-age=86400';
/** The newest edition may be another one in half a minute. */
export const FLOATING = 'public, max-age=30, stale-while-revalidate=300';

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
  const { head } = library.edition(asked.edition ?? null);
  const wished =
    asked.lang === undefined ? null : (languageFor(asked.lang) ?? wishedLanguage(null));
  return { head, lang: wished ?? wishedLanguage(request.headers.get('accept-language')) };
}

/** An answer to a question in a URL: not even judged where the client has it already. */
export function answerAt(
  exchange: Exchange,
  { head, lang }: Settled,
  asked: Asked & { readonly pairs: readonly Pair[] },
  judge: () => object,
): Response {
  const search = canonicalSearch(asked.pairs, { edition: head.number, lang });
  const etag = etagOf([head.hash, ENGINE_VERSION, exchange.path, search]);
  const headers = {
    ...editionHeaders(head, lang),
    'cache-control': asked.edition === undefined ? FLOATING : PINNED,
    'content-location': `${exchange.path}?${search}`,
    etag,
    ...vary(exchange, asked.lang === undefined ? ['Accept-Language'] : []),
  };
  return unlessKnown(exchange, headers, () => JSON.stringify(judge()));
}

/** An answer to a question in a body, which no cache keeps. */
export function answerTo(
  exchange: Exchange,
  { head, lang }: Settled,
  judge: () => object,
): Response {
  const headers = { ...editionHeaders(head, lang), 'cache-control': 'no-store' };
  return jsonReply(exchange, JSON.stringify(judge()), headers);
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
export function etagOf(parts: readonly string[]): string {
  return `"${hash('sha256', JSON.stringify(parts), 'base64url').slice(0, 22)}"`;
}

function editionHeaders({ number }: EditionHead, lang: string): Headers {
  return { 'faying-edition': String(number), 'content-language': lang };
}

/** RFC 9110 section 13.1.2: by the weak comparison. */
function tagsOf(header: string | null): string[] {
  return (header ?? '').split(',').map((one) => one.trim().replace(/^W\//, ''));
}
