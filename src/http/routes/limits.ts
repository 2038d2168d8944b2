/**
 * How much of anything the service takes. It is asked of no edition, and can be had before there
 * is one.
 */

import { ENGINE_VERSION } from '../../contract/answer-head.js';
import { canonicalText } from '../../contract/canonical.js';
import type { Language } from '../../contract/language.js';
import {
  type LimitsWire,
  limitsQuestionSchema,
  listLimitsOperation,
} from '../../contract/limit-list.js';
import { LIMIT_NAMES, LIMITS } from '../../contract/limits.js';
import { problemWords } from '../../contract/problems/words.js';
import type { Frozen } from '../../contract/wire.js';
import { etagOf, unlessKnown } from '../asked.js';
import { type Exchange, spokenIn, vary } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { questionInUrl } from '../query.js';
import { digestOf } from '../question-key.js';
import type { Service } from '../service.js';

const { path, query } = listLimitsOperation;

export function mountLimits(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    get: { placeOf: null, answer: listLimits },
  });
}

function listLimits(exchange: Exchange): Response {
  questionInUrl(exchange, query, limitsQuestionSchema);
  const { limits } = exchange;
  const { lang, by } = spokenIn(exchange);
  const headers = {
    // They change with the program and with how it was started, which both take a moment.
    'cache-control': 'public, max-age=300',
    'content-language': lang,
    'content-location': `${path}?lang=${lang}`,
    etag: etagOf(digestOf([path, ENGINE_VERSION, lang, canonicalText(limits)])),
    ...vary(exchange, by),
  };
  return unlessKnown(exchange, headers, () => textOf(exchange, lang));
}

function textOf({ limits }: Exchange, lang: Language): string {
  const words = problemWords(lang).limits;
  const items = LIMIT_NAMES.map((name) => {
    return { name, value: limits[name], unit: LIMITS[name].unit, about: words[name] };
  });
  const answer = {
    engine: ENGINE_VERSION,
    lang,
    items,
    next: null,
    counts: { total: items.length },
  };
  return JSON.stringify(answer satisfies Frozen<LimitsWire>);
}
