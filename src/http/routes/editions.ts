/**
 * The editions of the catalogue. Their list is of no one edition: a cursor names the newest one
 * that there was, and stays good whatever is published after it.
 */

import { ENGINE_VERSION } from '../../contract/answer-head.js';
import { canonicalText } from '../../contract/canonical.js';
import type { Cursor } from '../../contract/cursor.js';
import { cursorText, isOf } from '../../contract/cursor.js';
import {
  type EditionsWire,
  type EditionWire,
  editionQuestionSchema,
  editionsQuestionSchema,
  LATEST,
  listEditionsOperation,
  readEditionOperation,
} from '../../contract/editions.js';
import { USUAL_ENTRIES } from '../../contract/list.js';
import type { Frozen } from '../../contract/wire.js';
import type { EditionHead } from '../../usecases/ports.js';
import { checkNewest, isKeptToNewest, keptFor } from '../access.js';
import { etagOf, FLOATING, RECORDED, unlessKnown } from '../asked.js';
import { type Exchange, type Headers, vary } from '../exchange.js';
import { checkForm } from '../form.js';
import { cursorOf, cursorRefusal, mountedAt, segmentOf } from '../listed.js';
import { type App, mount } from '../mount.js';
import { parameterAt, parameterCalled, questionInUrl, readQuery } from '../query.js';
import { digestOf } from '../question-key.js';
import type { Service } from '../service.js';

export function mountEditions(app: App, service: Service): void {
  mount(app, service, listEditionsOperation.path, {
    mediaType: 'application/json',
    get: {
      placeOf: (at) => parameterCalled(at, listEditionsOperation.query),
      answer: (exchange) => answerList(exchange, service),
    },
  });
  mount(app, service, mountedAt(readEditionOperation), {
    mediaType: 'application/json',
    get: {
      placeOf: () => ({ parameter: 'number' }),
      answer: (exchange) => answerRead(exchange, service),
    },
  });
}

function answerList(exchange: Exchange, { library, useCases }: Service): Response {
  const { path, query } = listEditionsOperation;
  const question = questionInUrl(exchange, query, editionsQuestionSchema);
  const { limit = USUAL_ENTRIES } = question;
  const cursor = question.cursor === undefined ? null : cursorOf(question.cursor, path);
  const newest = cursor === null ? library.newest() : library.find(cursor.edition);
  if (cursor !== null && (newest === null || !isOf(cursor, newest.hash))) {
    throw cursorRefusal('cursor-of-another-edition');
  }
  const before = cursor === null ? null : numberAfter(cursor);
  const input = { newest: newest?.number ?? null, before, limit };
  // Editions are only ever added, so the newest one says which there are.
  const asked = [newest?.hash ?? '', ENGINE_VERSION, path, canonicalText(input)];
  const said = [
    ...(question.cursor === undefined ? [] : [`cursor=${question.cursor}`]),
    ...(limit === USUAL_ENTRIES ? [] : [`limit=${limit}`]),
  ];
  const headers = {
    'cache-control': keptFor(exchange, FLOATING),
    'content-location': said.length === 0 ? path : `${path}?${said.join('&')}`,
    etag: tagOf(asked),
  };
  return reply(exchange, input.newest, headers, () => {
    const { next, ...page } = useCases.listEditions(library, input);
    const answer = { ...page, next: nextText(next, newest) };
    return JSON.stringify(answer satisfies Frozen<EditionsWire>);
  });
}

function numberAfter({ after }: Cursor): number {
  const [text = ''] = after;
  if (!/^\d{1,15}$/.test(text)) throw cursorRefusal('not-a-cursor');
  return Number(text);
}

function nextText(after: readonly string[] | null, newest: EditionHead | null): string | null {
  if (after === null || newest === null) return null;
  const { number: edition, hash } = newest;
  return cursorText({ edition, hash, list: listEditionsOperation.path, after });
}

function answerRead(exchange: Exchange, { library, useCases, newest }: Service): Response {
  const { query, path } = readEditionOperation;
  const read = readQuery(exchange.search, query);
  const segment = segmentOf(exchange.path, readEditionOperation);
  const value = { ...(read.value as object), number: segment };
  const form = { ...read, value };
  const { number } = checkForm(editionQuestionSchema, form, (at) => parameterAt(at, query));
  const isFloating = number === LATEST;
  if (!isFloating && isKeptToNewest(exchange)) checkNewest(exchange, Number(number), newest());
  const answer = useCases.readEdition(library, isFloating ? null : Number(number));
  const text = JSON.stringify(answer satisfies Frozen<EditionWire>);
  const headers = {
    'cache-control': keptFor(exchange, isFloating ? FLOATING : RECORDED.pinned),
    'content-location': path.replace('{number}', String(answer.number)),
    // Of the answer itself, which costs no more than to look at it.
    etag: tagOf([text]),
  };
  return reply(exchange, answer.edition, headers, () => text);
}

function tagOf(parts: readonly string[]): string {
  return etagOf(digestOf(parts));
}

function reply(
  exchange: Exchange,
  edition: number | null,
  headers: Headers & { readonly etag: string },
  text: () => string,
): Response {
  const named = edition === null ? {} : { 'faying-edition': String(edition) };
  return unlessKnown(exchange, { ...headers, ...named, ...vary(exchange) }, text);
}
