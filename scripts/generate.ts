/**
 * Writes what is generated: the contracts in `openapi/`, the list of the demo catalogue, and the
 * pages of the built-in kinds and of the faults of documents (`npm run generate`). The answers in
 * the examples are those of the service itself, asked over the demo catalogue.
 */

import { mkdirSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { printSchema } from 'graphql';
import { pino } from 'pino';
import { catalogueSchema } from '../src/contract/catalogue-schema.js';
import { EXAMPLE_REQUESTS, type Example, type ExampleRequest } from '../src/contract/examples.js';
import type { CatalogueDocument } from '../src/domain/catalogue/document.js';
import { BUILT_IN_KINDS } from '../src/domain/kinds/registry.js';
import { graphqlSchema } from '../src/http/graphql/schema.js';
import { openapiDocument } from '../src/http/openapi.js';
import {
  demoCatalogue,
  type ExampleService,
  exampleService,
  refusedRequests,
} from './example-service.js';
import { faultsPage } from './faults-page.js';
import { kindsPage } from './kinds-page.js';
import { listingOf } from './listing.js';

const FOLDER = new URL('../openapi/', import.meta.url);
const LISTING = new URL('../db/demo/listing.md', import.meta.url);
const KINDS = new URL('../db/kinds.md', import.meta.url);
const FAULTS = new URL('../db/faults.md', import.meta.url);

/** The contracts by file name, as they are to be written. */
export async function contracts(): Promise<ReadonlyMap<string, string>> {
  const service = exampleService({ log: pino({ level: 'silent' }) });
  try {
    const examples: Example[] = [];
    for (const request of [...EXAMPLE_REQUESTS, ...refusedRequests()]) {
      examples.push(await exampleOf(service, request));
    }
    return new Map([
      ['openapi.json', printed(openapiDocument(examples, service.event()))],
      ['catalogue.schema.json', printed(catalogueSchema())],
      ['schema.graphql', `${printSchema(graphqlSchema())}\n`],
    ]);
  } finally {
    service.close();
  }
}

/** The list of what the demo catalogue has, for people: `db/demo/listing.md`. */
export function demoListing(): string {
  return listingOf(demoCatalogue() as CatalogueDocument);
}

async function exampleOf(
  service: ExampleService,
  request: ExampleRequest & { readonly code?: string },
): Promise<Example> {
  const { operationId, name, code } = request;
  const response = await service.ask(request);
  const { status } = response;
  const text = await response.text();
  const isLines = status === 200 && request.lines !== undefined;
  const answer: unknown = isLines ? text : JSON.parse(text);
  if (code === undefined ? status === 200 : codeOf(answer) === code) {
    return { ...request, status, answer };
  }
  throw new Error(`the example ${operationId}/${name} has ${status}: ${text}`);
}

function codeOf(answer: unknown): unknown {
  return typeof answer === 'object' && answer !== null && 'code' in answer ? answer.code : null;
}

function printed(document: object): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  mkdirSync(FOLDER, { recursive: true });
  for (const [name, text] of await contracts()) writeFileSync(new URL(name, FOLDER), text);
  writeFileSync(LISTING, demoListing());
  writeFileSync(KINDS, kindsPage(BUILT_IN_KINDS));
  writeFileSync(FAULTS, faultsPage());
}
