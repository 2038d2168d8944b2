/**
 * What fits what, over a whole edition, as lines that are made while they are read.
 */

import { FeedLines } from '../../batch/feed-lines.js';
import { inTurns } from '../../batch/stream.js';
import { LATEST } from '../../contract/editions.js';
import { LINE_TYPES } from '../../contract/fit-batch.js';
import {
  exportFitsOperation,
  type FitsFeedQuestion,
  fitsFeedFilters,
  fitsFeedSchema,
} from '../../contract/fits-feed.js';
import type { FitsFeedInput } from '../../usecases/fits-feed.js';
import type { Library } from '../../usecases/library.js';
import { keptFor } from '../access.js';
import { contentLocation, etagOf, JUDGED, type Settled, settle, unlessHad } from '../asked.js';
import { type Exchange, vary } from '../exchange.js';
import { checkForm } from '../form.js';
import { LINE_VARIES, type LineForm, lineReply, logged } from '../line-reply.js';
import { mountedAt, segmentOf } from '../listed.js';
import { type App, mount } from '../mount.js';
import { acceptsCoding, wishedType } from '../negotiation.js';
import type { Place } from '../problem.js';
import { parameterAt, parameterCalled, readQuery } from '../query.js';
import { keyOf } from '../question-key.js';
import type { Service } from '../service.js';

const { path, query } = exportFitsOperation;

export function mountFitsFeed(app: App, service: Service): void {
  mount(app, service, mountedAt(exportFitsOperation), {
    mediaType: LINE_TYPES,
    get: {
      placeOf,
      answer: (exchange) => answerFeed(exchange, service),
    },
  });
}

/** The edition stands in the path. */
function placeOf(at: string): Place {
  return at === 'edition' ? { parameter: 'number' } : parameterCalled(at, query);
}

function answerFeed(exchange: Exchange, service: Service): Response {
  const { library, useCases } = service;
  const { number, ...asked } = questionOf(exchange);
  const isFloating = number === LATEST;
  const edition = isFloating ? undefined : Number(number);
  const { head, lang, view } = settle(service, exchange, { ...asked, edition }, { path });
  const input = { ...fitsFeedFilters(asked), edition: head.number, lang };
  const { headers: sent } = exchange.request;
  const form = {
    type: wishedType(sent.get('accept'), LINE_TYPES),
    isPacked: acceptsCoding(sent.get('accept-encoding'), 'gzip'),
  };
  const headers = {
    'faying-edition': String(head.number),
    'faying-view': view,
    'content-language': lang,
    ...contentLocation(
      { path: path.replace('{number}', String(head.number)), query, asked: spelt(asked, input) },
      { lang },
    ),
    'cache-control': keptFor(exchange, isFloating ? JUDGED.floating : JUDGED.pinned),
    etag: etagOf(keyOfFeed(library, { head, view }, input, form)),
    ...vary(exchange, [...LINE_VARIES, ...(asked.lang === undefined ? ['Accept-Language'] : [])]),
  };
  return unlessHad(exchange, headers, () => {
    const lines = new FeedLines(useCases.startFitsFeed(library, input), form.type);
    const told = logged(inTurns(lines.pieces()), exchange, service, {
      word: 'feed ended',
      counts: () => ({ lines: lines.counts.lines }),
    });
    return () => lineReply(exchange, told, form, headers);
  });
}

function questionOf(exchange: Exchange): FitsFeedQuestion {
  const read = readQuery(exchange.search, query);
  const number = segmentOf(exchange.path, exportFitsOperation);
  const form = { ...read, value: { ...(read.value as object), number } };
  return checkForm(fitsFeedSchema, form, (at) => parameterAt(at, query));
}

/** Names that are in another order, or there twice, ask the same. */
function spelt(
  asked: Omit<FitsFeedQuestion, 'number'>,
  { alone, parts, vehicles }: FitsFeedInput,
): Omit<FitsFeedQuestion, 'number'> {
  return {
    ...asked,
    ...(alone === null ? {} : { alone: [...alone] }),
    ...(parts === null ? {} : { part: [...parts] }),
    ...(vehicles === null ? {} : { vehicle: [...vehicles] }),
  };
}

/** Both editions decide the bytes, and so does each form of them. */
function keyOfFeed(
  library: Library,
  { head, view }: Pick<Settled, 'head' | 'view'>,
  input: FitsFeedInput,
  { type, isPacked }: LineForm,
): string {
  const other = input.from === null ? null : library.find(input.from);
  return keyOf({
    editionHash: [head, other].map((one) => one?.hash ?? '').join(' '),
    path,
    mediaType: isPacked ? `${type}, gzip` : type,
    view,
    input,
  });
}
