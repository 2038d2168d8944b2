/**
 * Writes what is generated: the contracts in `openapi/`, the list of the demo catalogue and the
 * page of the built-in kinds (`npm run generate`). The answers in the examples are those of the
 * service itself, asked over the demo catalogue.
 */

import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { pino } from 'pino';
import { catalogueSchema } from '../src/contract/catalogue-schema.js';
import {
  addressOf,
  EXAMPLE_REQUESTS,
  type Example,
  type ExampleRequest,
} from '../src/contract/examples.js';
import { readNdjson } from '../src/contract/ndjson-text.js';
import { OPERATIONS } from '../src/contract/operations.js';
import type { CatalogueDocument } from '../src/domain/catalogue/document.js';
import { BUILT_IN_KINDS } from '../src/domain/kinds/registry.js';
import { createApp } from '../src/http/app.js';
import type { App } from '../src/http/mount.js';
import { openapiDocument } from '../src/http/openapi.js';
import { openStore } from '../src/store/sqlite.js';
import { Library } from '../src/usecases/library.js';
import { prepareEdition, publishEdition } from '../src/usecases/publish-edition.js';
import { kindsPage } from './kinds-page.js';
import { listingOf } from './listing.js';

const FOLDER = new URL('../openapi/', import.meta.url);
const DEMO = new URL('../db/demo/catalogue.ndjson', import.meta.url);

const LISTING = new URL('../db/demo/listing.md', import.meta.url);
const KINDS = new URL('../db/kinds.md', import.meta.url);

/** A fixed instant, so that the same catalogue gives the same bytes on any day. */
const PUBLISHED_AT = '2026-01-01T00:00:00.000Z';

/** The contracts by file name, as they are to be written. */
export async function contracts(): Promise<ReadonlyMap<string, string>> {
  const store = openStore(':memory:', { mode: 'create' });
  try {
    const raw = demoCatalogue();
    const digest = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');
    publishEdition({ store, clock: () => PUBLISHED_AT }, prepareEdition(raw, digest), null);
    const log = pino({ level: 'silent' });
    const config = { corsOrigins: [], answerCacheBytes: 0 };
    const app = createApp({ library: new Library(store), log, config });
    const examples: Example[] = [];
    for (const request of EXAMPLE_REQUESTS) {
      examples.push({ ...request, answer: await answerOf(app, request) });
    }
    return new Map([
      ['openapi.json', printed(openapiDocument(examples))],
      ['catalogue.schema.json', printed(catalogueSchema())],
    ]);
  } finally {
    store.close();
  }
}

function demoCatalogue(): object {
  const { value, faults } = readNdjson(readFileSync(DEMO, 'utf8'));
  const [first] = faults;
  if (first === undefined) return value;
  throw new Error(`demo catalogue, line ${first.line ?? 'none'}: ${first.text}`);
}

/** The list of what the demo catalogue has, for people: `db/demo/listing.md`. */
export function demoListing(): string {
  return listingOf(demoCatalogue() as CatalogueDocument);
}

async function answerOf(app: App, request: ExampleRequest): Promise<unknown> {
  const { operationId, name, body } = request;
  const operation = OPERATIONS.find((one) => one.operationId === operationId);
  if (operation === undefined) throw new Error(`no operation is called ${operationId}`);
  const url = addressOf(request, operation);
  const posted = {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  };
  const response = await app.request(url, operation.method === 'post' ? posted : {});
  if (response.status === 200) return response.json();
  throw new Error(`the example ${operationId}/${name} has no answer: ${await response.text()}`);
}

function printed(document: object): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  mkdirSync(FOLDER, { recursive: true });
  for (const [name, text] of await contracts()) writeFileSync(new URL(name, FOLDER), text);
  writeFileSync(LISTING, demoListing());
  writeFileSync(KINDS, kindsPage(BUILT_IN_KINDS));
}
