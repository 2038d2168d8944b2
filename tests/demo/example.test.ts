/**
 * The example of the document form: it is in order, comes back out of the database as it went in,
 * and shows every field and every word that the form has.
 */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { canonicalDocument } from '../../src/domain/catalogue/canonical.js';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { DOCUMENT_FIELDS } from '../../src/domain/catalogue/shape.js';
import { SPELLINGS } from '../../src/domain/check/check.js';
import { COMMON_KEYS, OWN_KEYS, POSITION_TESTS } from '../../src/domain/check/compile.js';
import { checkFit, type FitInput } from '../../src/usecases/check-fit.js';
import { lintDocument, prepareEdition } from '../../src/usecases/publish-edition.js';
import { libraryOf, sha256 } from '../memory-store.js';
import { freshPath, open, publish } from '../store/database.js';
import { allOf, usedIn } from './shape-walk.js';

const text = readFileSync(new URL('../../db/example.json', import.meta.url), 'utf8');
const example = JSON.parse(text) as CatalogueDocument;

const QUESTION: FitInput = {
  vehicle: 'tarn-1',
  part: 'gb6-late',
  position: null,
  with: {},
  changes: 'no',
  edition: null,
  lang: 'en',
  units: 'recorded',
  facts: {},
  fitted: {},
  adapters: {},
  measured: [],
  torque: null,
  use: null,
  ignorePresent: false,
};

/** Every name in a value, however deep. */
function namesIn(raw: unknown): string[] {
  if (typeof raw !== 'object' || raw === null) return [];
  const own = Array.isArray(raw) ? [] : Object.keys(raw);
  return [...own, ...Object.values(raw).flatMap(namesIn)];
}

describe('the example', () => {
  test('has no fault and no doubt', () => {
    const { faults, warnings } = lintDocument(example);
    expect({ faults, warnings }).toEqual({ faults: [], warnings: [] });
  });

  test('is published into a file and comes back equal', () => {
    const path = freshPath();
    const writer = open(path);
    publish(writer, prepareEdition(example, sha256));
    writer.close();
    const reader = open(path, 'read-only');
    expect(reader.load(1).document).toEqual(canonicalDocument(example));
    expect(reader.offers().records).toEqual(example.offers);
    expect(reader.verify().disagreements).toEqual([]);
  });

  test('uses every field of the form, and every way to write a value', () => {
    const used = usedIn({ ...example }, DOCUMENT_FIELDS);
    const all = allOf(DOCUMENT_FIELDS);
    expect(all.size).toBeGreaterThan(150);
    expect([...all].filter(([one]) => !used.has(one)).map(([, path]) => path)).toEqual([]);
  });

  test('and a field that is left out of it is missed', () => {
    const { offers, ...others } = example;
    const used = usedIn({ ...others, offers: [] }, DOCUMENT_FIELDS);
    const missed = [...allOf(DOCUMENT_FIELDS)].filter(([one]) => !used.has(one));
    expect(offers?.length).toBeGreaterThan(0);
    expect(missed.map(([, path]) => path)).toContain('/offers/*/leadDays');
  });

  test('uses every word of checks, terms and conditions', () => {
    const { kinds, roles, layouts, rules, works, rulesets } = example;
    const names = new Set(namesIn({ kinds, roles, layouts, rules, works, rulesets }));
    const ofChecks = [...COMMON_KEYS, ...SPELLINGS, ...Object.values(OWN_KEYS).flat()];
    const ofTerms = ['product', 'sum', 'min', 'max', 'count'];
    const ofConditions = [...POSITION_TESTS, 'all', 'any', 'not', 'mating', 'adapter'];
    const words = [...ofChecks, ...ofTerms, ...ofConditions];
    expect(words.filter((word) => !names.has(word))).toEqual([]);
  });

  test('answers: the late gearbox fits with three other parts, one of them made to order', () => {
    const library = libraryOf(example);
    const parts = { linkage: 'link-6', 'prop-shaft': 'prop-auto', 'rear-final-drive': 'axle-b' };
    const ask = (beside: FitInput['with']) => checkFit(library, { ...QUESTION, with: beside });
    expect(ask({}).alone).toBe('fails');
    expect(ask(parts).verdict).toBe('fits');
  });
});
