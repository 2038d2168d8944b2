/**
 * The committed contracts and fixtures are those that the code generates.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { clientFiles } from '../../scripts/client-types/client-types.js';
import { faultsPage } from '../../scripts/faults-page.js';
import { contracts, demoListing, fixtureFiles } from '../../scripts/generate.js';
import { kindsPage } from '../../scripts/kinds-page.js';
import { OPERATIONS } from '../../src/contract/operations.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';

const generated = await contracts();

function committed(name: string): string {
  return readFileSync(new URL(`../../openapi/${name}`, import.meta.url), 'utf8');
}

describe('openapi/ is as generated (npm run generate)', () => {
  test.each([...generated.keys()])('%s', (name) => {
    expect(committed(name)).toBe(generated.get(name));
  });
});

describe('fixtures/ is as generated', async () => {
  const files = await fixtureFiles();
  const folder = new URL('../../fixtures/', import.meta.url);

  test.each([...files.keys()])('%s', (name) => {
    expect(readFileSync(new URL(name, folder), 'utf8')).toBe(files.get(name));
  });

  test('and has nothing else', () => {
    expect(readdirSync(folder).toSorted()).toEqual([...files.keys()].toSorted());
  });
});

describe('what the client knows of the contract is as generated from it', async () => {
  const files = await clientFiles(committed('openapi.json'));

  test.each([...files.keys()])('%s', (name) => {
    const url = new URL(`../../src/client/generated/${name}`, import.meta.url);
    expect(readFileSync(url, 'utf8')).toBe(files.get(name));
  });
});

test.each([
  ['db/demo/listing.md', demoListing],
  ['db/kinds.md', () => kindsPage(BUILT_IN_KINDS)],
  ['db/faults.md', faultsPage],
] as const)('and so is %s', (path, written) => {
  const url = new URL(`../../${path}`, import.meta.url);
  expect(readFileSync(url, 'utf8')).toBe(written());
});

describe('openapi/openapi.json', () => {
  interface Described {
    readonly openapi: string;
    readonly paths: Record<string, Record<string, { operationId: string }>>;
  }
  const document = JSON.parse(committed('openapi.json')) as Described;

  test('describes each operation once', () => {
    const described = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.entries(methods).map(([method, { operationId }]) => [path, method, operationId]),
    );
    const built = OPERATIONS.map(({ path, method, operationId }) => [path, method, operationId]);
    expect(new Set(described.map(String))).toEqual(new Set(built.map(String)));
    expect(described.length).toBe(built.length);
  });

  test('leads to a definition with each of its references', () => {
    const text = JSON.stringify(document);
    const references = new Set([...text.matchAll(/"\$ref":"#\/([^"]+)"/g)].map(([, at]) => at));
    expect(references.size).toBeGreaterThan(10);
    for (const reference of references) {
      const found = (reference ?? '')
        .split('/')
        .reduce<unknown>(
          (at, name) => (at as Record<string, unknown> | undefined)?.[name],
          document,
        );
      expect([reference, typeof found]).toEqual([reference, 'object']);
    }
  });
});
