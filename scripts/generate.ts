/**
 * Writes what is generated (`npm run generate`): the contracts in `openapi/`, what the client is
 * made of, the fixtures of the sandbox in `fixtures/`, the list of the demo catalogue, and the
 * pages of the built-in kinds and of the faults of documents. The answers in the examples are those
 * of the service itself, asked over the demo catalogue.
 */

import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { printSchema } from 'graphql';
import { pino } from 'pino';
import { catalogueSchema } from '../src/contract/catalogue-schema.js';
import { EXAMPLE_REQUESTS, type Example, type ExampleRequest } from '../src/contract/examples.js';
import type { CatalogueDocument } from '../src/domain/catalogue/document.js';
import { BUILT_IN_KINDS } from '../src/domain/kinds/registry.js';
import { graphqlSchema } from '../src/http/graphql/schema.js';
import { openapiDocument } from '../src/http/openapi.js';
import { clientFiles } from './client-types/client-types.js';
import {
  demoCatalogue,
  type ExampleService,
  exampleService,
  refusedRequests,
} from './example-service.js';
import { faultsPage } from './faults-page.js';
import { fixtures } from './fixtures/fixture.js';
import { fixturesPage } from './fixtures/page.js';
import { kindsPage } from './kinds-page.js';
import { listingOf } from './listing.js';

const FOLDER = new URL('../openapi/', import.meta.url);
const FIXTURES = new URL('../fixtures/', import.meta.url);
const CLIENT = new URL('../src/client/generated/', import.meta.url);
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

/** What `fixtures/` has by file name: what is asked of the sandbox, and a page about all of it. */
export async function fixtureFiles(): Promise<ReadonlyMap<string, string>> {
  const all = await fixtures();
  return new Map([
    ['README.md', fixturesPage(all)],
    ...[...all].map(([name, fixture]) => [`${name}.json`, printed(fixture)] as const),
  ]);
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

function write(folder: URL, files: ReadonlyMap<string, string>): void {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of files) writeFileSync(new URL(name, folder), text);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const written = await contracts();
  write(FOLDER, written);
  write(CLIENT, await clientFiles(written.get('openapi.json') ?? ''));
  const fixtures = await fixtureFiles();
  // What is no fixture any more goes.
  rmSync(FIXTURES, { recursive: true, force: true });
  write(FIXTURES, fixtures);
  writeFileSync(LISTING, demoListing());
  writeFileSync(KINDS, kindsPage(BUILT_IN_KINDS));
  writeFileSync(FAULTS, faultsPage());
}
