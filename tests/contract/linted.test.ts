/**
 * The published document before two linters that are not ours: neither finds anything, and both
 * are seen to find what is put in for them.
 */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { byRedocly, bySpectral } from './linters.js';

const text = readFileSync(new URL('../../openapi/openapi.json', import.meta.url), 'utf8');

/** Milliseconds; a megabyte of document takes one of them some seconds. */
const PATIENCE = 600_000;

type Fields = Record<string, unknown>;

/** The field of a field of a field. */
function at(value: unknown, ...path: readonly string[]): Fields {
  const found = path.reduce<unknown>((one, name) => (one as Fields | undefined)?.[name], value);
  if (typeof found !== 'object' || found === null) throw new Error(`nothing at ${path.join(' ')}`);
  return found as Fields;
}

/** The document with something wrong in each of many ways. */
function spoilt(): object {
  const document: unknown = JSON.parse(text);
  const fit = at(document, 'paths', '/v1/fit', 'get');
  const said = at(fit, 'responses', '200', 'content', 'application/json', 'examples');
  at(said, Object.keys(said)[0] ?? '', 'value')['nobody-declared-this'] = 1;
  at(document, 'components', 'schemas').Idle = { type: 'object' };
  delete fit.description;
  delete fit.summary;
  delete at(document, 'info').license;
  return document as object;
}

const rules = (complaints: readonly string[]) =>
  [...new Set(complaints.map((one) => one.replace(/:.*/, '')))].sort();

describe.each([
  [
    'Spectral',
    bySpectral,
    [
      'info-license',
      'license-url',
      'oas3-unused-component',
      'oas3-valid-media-example',
      'operation-description',
    ],
  ],
  [
    'Redocly',
    byRedocly,
    ['info-license', 'no-invalid-media-type-examples', 'no-unused-components', 'operation-summary'],
  ],
] as const)('%s', (_, lint, expected) => {
  test('finds nothing', { timeout: PATIENCE }, async () => {
    expect(await lint(JSON.parse(text))).toEqual([]);
  });

  test('finds what is wrong', { timeout: PATIENCE }, async () => {
    expect(rules(await lint(spoilt()))).toEqual(expected);
  });
});
