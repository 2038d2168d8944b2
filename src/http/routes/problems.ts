/**
 * The page of each type of problem, which `type` of a problem leads to, and the list of them.
 */

import type { Language } from '../../contract/language.js';
import { z } from '../../contract/openapi-zod.js';
import { parameter, type QueryGrammar } from '../../contract/parameters.js';
import { typeOf } from '../../contract/problems/problem-type.js';
import { COMMON_FIELDS } from '../../contract/question.js';
import { etagOf, unlessKnown } from '../asked.js';
import { type Exchange, spokenIn, textReply, vary } from '../exchange.js';
import { segmentOf } from '../listed.js';
import { type App, mount } from '../mount.js';
import { PROBLEM_CODES, Refusal } from '../problem.js';
import { listPage, problemPage } from '../problem-page.js';
import { questionInUrl } from '../query.js';
import { digestOf } from '../question-key.js';
import type { Service } from '../service.js';

export function mountProblems(app: App, service: Service): void {
  const mediaType = 'text/plain';
  const pages: Pages = new Map();
  const list = (exchange: Exchange) => pageReply(exchange, pages, LIST);
  const one = (exchange: Exchange) => pageReply(exchange, pages, pageAt(exchange));
  mount(app, service, '/problems', { mediaType, get: { placeOf: null, answer: list } });
  mount(app, service, '/problems/:code', { mediaType, get: { placeOf: null, answer: one } });
}

/** What a page takes: the language that it is in. */
const QUERY: QueryGrammar = { parameters: [parameter('lang', COMMON_FIELDS.lang)], groups: [] };
const FIELDS = z.strictObject({ lang: COMMON_FIELDS.lang });

/** Pages that were asked for, by path and language: they are the same as long as the program is. */
type Pages = Map<string, { readonly text: string; readonly etag: string }>;

interface Page {
  /** However the client spelt it. */
  readonly path: string;
  readonly written: (lang: Language) => string;
}

const LIST: Page = { path: '/problems', written: listPage };

function pageAt({ path }: Exchange): Page {
  const asked = segmentOf(path, { path: '/problems/{code}' });
  const code = PROBLEM_CODES.find((known) => known === asked);
  if (code !== undefined) return { path: typeOf(code), written: (lang) => problemPage(code, lang) };
  throw new Refusal('unknown-problem', [{ code: 'unknown-problem', data: { path } }]);
}

function pageReply(exchange: Exchange, pages: Pages, { path, written }: Page): Response {
  questionInUrl(exchange, QUERY, FIELDS);
  const { lang, by } = spokenIn(exchange);
  const key = `${lang} ${path}`;
  let page = pages.get(key);
  if (page === undefined) {
    const text = written(lang);
    page = { text, etag: etagOf(digestOf([text])) };
    pages.set(key, page);
  }
  const { text, etag } = page;
  const headers = {
    'content-language': lang,
    'cache-control': 'public, max-age=86400',
    etag,
    ...vary(exchange, by),
  };
  return unlessKnown(exchange, headers, () => text, textReply);
}
