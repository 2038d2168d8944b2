/**
 * The codes that answers can carry. They are asked of no edition, and can be had before there is
 * one.
 */

import { ENGINE_VERSION } from '../../contract/answer-head.js';
import { type CodesWire, codesQuestionSchema, listCodesOperation } from '../../contract/codes.js';
import type { Frozen } from '../../contract/wire.js';
import { type CodesInput, listCodes } from '../../usecases/list-codes.js';
import { etagOf, unlessKnown } from '../asked.js';
import { type Exchange, spokenIn, vary } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { questionInUrl } from '../query.js';
import { digestOf } from '../question-key.js';
import type { Service } from '../service.js';

const { path, query } = listCodesOperation;

export function mountCodes(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    get: { placeOf: null, answer: codesReply },
  });
}

function codesReply(exchange: Exchange): Response {
  const { group = null } = questionInUrl(exchange, query, codesQuestionSchema);
  const { lang, by } = spokenIn(exchange);
  const of = group === null ? '' : `group=${group}&`;
  const headers = {
    // They change with the program, which takes a moment.
    'cache-control': 'public, max-age=300',
    'content-language': lang,
    'content-location': `${path}?${of}lang=${lang}`,
    etag: etagOf(digestOf([path, ENGINE_VERSION, lang, group ?? ''])),
    ...vary(exchange, by),
  };
  return unlessKnown(exchange, headers, () => textOf({ lang, group }));
}

function textOf(input: CodesInput): string {
  return JSON.stringify(listCodes(input) satisfies Frozen<CodesWire>);
}
