/**
 * `faying serve --demo`: the two editions that it answers from, and that it wants no database.
 */

import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { demoEditions } from '../../src/cli/demo.js';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { prepareEdition } from '../../src/usecases/publish-edition.js';
import { demoDocument, sha256 } from '../memory-store.js';
import { run } from './terminal.js';

const world = { readFile: (path: string) => readFile(path) };
const readInput = async () => new Uint8Array();
const [before, now, ...more] = await demoEditions({ ...world, readInput, digest: sha256 });

interface Entity {
  readonly id: string;
}

type Lists = Readonly<Record<string, readonly Entity[]>>;

const earlier = JSON.parse(
  readFileSync(new URL('../../db/demo/earlier.json', import.meta.url), 'utf8'),
) as { readonly had: Lists; readonly hadNot: Readonly<Record<string, readonly string[]>> };

/** What a list of an edition has, by id. */
function entities(document: CatalogueDocument | undefined, list: string): Map<string, Entity> {
  const all = (document as unknown as Lists | undefined)?.[list] ?? [];
  return new Map(all.map((entity) => [entity.id, entity]));
}

describe('the editions of the demo', () => {
  test('are two, of which the newest is the demo catalogue itself', () => {
    expect(more).toEqual([]);
    const { content } = prepareEdition(demoDocument(), sha256);
    expect(now?.prepared.content.hash).toBe(content.hash);
    expect(before?.prepared.content.hash).not.toBe(content.hash);
    expect(Date.parse(before?.publishedAt ?? '')).toBeLessThan(Date.parse(now?.publishedAt ?? ''));
  });

  test('have no doubt in them, and say that they are invented', () => {
    for (const edition of [before, now]) {
      expect(edition?.prepared.warnings).toEqual([]);
      expect(edition?.note).toMatch(/^Demo, all of it invented/);
    }
  });

  const named = (lists: Lists) =>
    Object.entries(lists).flatMap(([list, some]) => some.map(({ id }) => [list, id] as const));

  test.each(named(earlier.had))('%s: %s was otherwise, or has gone since', (list, id) => {
    const then = entities(before?.prepared.content.document, list).get(id);
    expect(then).toMatchObject({ id });
    expect(entities(now?.prepared.content.document, list).get(id)).not.toEqual(then);
  });

  const gone = Object.entries(earlier.hadNot).flatMap(([list, ids]) =>
    ids.filter(() => list !== 'offers').map((id) => [list, id] as const),
  );

  test.each(gone)('%s: %s has come since', (list, id) => {
    expect(entities(before?.prepared.content.document, list).has(id)).toBe(false);
    expect(entities(now?.prepared.content.document, list).has(id)).toBe(true);
  });

  test('differ in nothing else', () => {
    const [then, today] = [before, now].map((one) => one?.prepared.content.document);
    const lists = new Set([...Object.keys(then ?? {}), ...Object.keys(today ?? {})]);
    for (const list of lists) {
      if (!Array.isArray((today as unknown as Lists)[list])) continue;
      const told = new Set([
        ...(earlier.had[list] ?? []).map(({ id }) => id),
        ...(earlier.hadNot[list] ?? []),
      ]);
      const rest = (document: CatalogueDocument | undefined) =>
        [...entities(document, list)].filter(([id]) => !told.has(id));
      expect([list, rest(then)]).toEqual([list, rest(today)]);
    }
  });

  test('have offers of what they have', () => {
    const offered = [before, now].map((one) =>
      (one?.prepared.content.offers ?? []).map((offer) => offer.for),
    );
    const lots = earlier.hadNot.lots ?? [];
    expect(lots.length).toBeGreaterThan(0);
    for (const lot of lots) {
      expect(offered.map((some) => some.includes(lot))).toEqual([false, true]);
    }
  });
});

describe('faying serve --demo', () => {
  const words = ['serve', '--demo', '--read-only', '--port', '0'];

  test('says that it is a demo, and opens no database, whichever is configured', async () => {
    const env = { FAYING_DATABASE: '/srv/faying.sqlite' };
    const { code, out, opened, services } = await run(words, { world, env });
    expect([code, opened]).toEqual([0, []]);
    expect(out).toMatch(/^This is the demo: its catalogue is invented, .*\n/);
    expect(services).toMatchObject([{ catalogue: [{}, {}], port: 0, host: null }]);
  });

  test('says so in JSON too', async () => {
    const { out } = await run([...words, '--json'], { world });
    expect(JSON.parse(out)).toMatchObject({ demo: true });
  });

  test('is refused beside a database', async () => {
    const { code, err, services } = await run([...words, '--database', 'd.sqlite']);
    expect([code, services]).toEqual([2, []]);
    expect(err).toContain(
      "Option '--demo' cannot be used with option '--database <path>'.\nSee faying serve --help.",
    );
  });

  test('says what is missing where the demo catalogue is not there', async () => {
    const { code, err } = await run(words);
    expect(code).toBe(2);
    expect(err).toMatch(/db\/demo\/catalogue\.ndjson is not there\./);
  });
});
