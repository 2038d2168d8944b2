/**
 * Which editions are there?
 */

import { ENGINE_VERSION } from '../../contract/answer-head.js';
import { type EditionsAnswer, listEditionsOperation } from '../../contract/editions.js';
import type { Frozen } from '../../contract/wire.js';
import { etagOf, FLOATING, unlessKnown } from '../asked.js';
import { type Exchange, vary } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { refuseParameters } from '../query.js';
import { digestOf } from '../question-key.js';
import type { Service } from '../service.js';

const { path } = listEditionsOperation;

export function mountEditions(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    get: { placeOf: null, answer: (exchange) => listEditions(exchange, service) },
  });
}

function listEditions(exchange: Exchange, { library }: Service): Response {
  refuseParameters(exchange.search);
  const heads = library.editions();
  const [newest] = heads;
  // Editions are only ever added, so the newest one says which there are.
  const parts = [newest?.hash ?? '', ENGINE_VERSION, path, String(heads.length)];
  const etag = etagOf(digestOf(parts));
  const headers = {
    'cache-control': FLOATING,
    'content-location': path,
    etag,
    ...vary(exchange),
  };
  const named = newest === undefined ? {} : { 'faying-edition': String(newest.number) };
  return unlessKnown(exchange, { ...headers, ...named }, () => {
    const items = heads.map(({ number, hash, publishedAt, note, counts }) => ({
      number,
      hash,
      publishedAt,
      note,
      counts,
    }));
    const edition = newest?.number ?? null;
    const answer = { edition, engine: ENGINE_VERSION, items, next: null };
    return JSON.stringify(answer satisfies Frozen<EditionsAnswer>);
  });
}
