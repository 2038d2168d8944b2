/**
 * The contract of the service, as it is written in `openapi/openapi.json`.
 */

import { readFileSync } from 'node:fs';
import { etagOf, unlessKnown } from '../asked.js';
import { type Exchange, vary } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { refuseParameters } from '../query.js';
import { digestOf } from '../question-key.js';
import type { Service } from '../service.js';

export const DOCUMENT_PATH = '/openapi.json';

/** As far from `src/http/routes` as from `dist/http/routes`. */
const FILE = new URL('../../../openapi/openapi.json', import.meta.url);

export function mountDocument(app: App, service: Service): void {
  let read: { readonly text: string; readonly etag: string } | null = null;
  const answer = (exchange: Exchange): Response => {
    refuseParameters(exchange.search);
    if (read === null) {
      const text = readFileSync(FILE, 'utf8');
      read = { text, etag: etagOf(digestOf([text])) };
    }
    const { text, etag } = read;
    const headers = { 'cache-control': 'public, max-age=300', etag, ...vary(exchange) };
    return unlessKnown(exchange, headers, () => text);
  };
  mount(app, service, DOCUMENT_PATH, {
    mediaType: 'application/json',
    get: { placeOf: null, answer },
  });
}
