/**
 * The editions that `faying serve --demo` answers from: the demo catalogue as it is, and before it
 * the same as it was once, when a vehicle had not been split yet, a part was still kept and a size
 * had only been read with a tape. Both have a fixed date, so that they answer alike on any day.
 */

import { fileURLToPath } from 'node:url';
import { DocumentRefused } from '../usecases/errors.js';
import { prepareEdition } from '../usecases/publish-edition.js';
import { readDocument } from './document.js';
import type { DatedEdition, Files, World } from './world.js';

/** The package has it, and the checkout too, two folders above this one. */
const FOLDER = new URL('../../db/demo/', import.meta.url);

/** `db/demo/earlier.json`: how the catalogue was, by what was otherwise. */
interface Earlier {
  /** By list: of what is there still what was otherwise (RFC 7396), of the rest all of it. */
  readonly had: Readonly<Record<string, readonly Entity[]>>;
  /** Ids by list. */
  readonly hadNot: Readonly<Record<string, readonly string[]>>;
}

interface Entity {
  readonly id: string;
}

type Lists = Readonly<Record<string, unknown>>;

const FIRST = {
  publishedAt: '2026-04-01T00:00:00.000Z',
  note: 'Demo, all of it invented: as it was before',
};
const NEWEST = {
  publishedAt: '2026-05-01T00:00:00.000Z',
  note: 'Demo, all of it invented: a vehicle split, variants told, a size measured, a part gone',
};

/** In the order in which they are published. Throws what reading a document throws. */
export async function demoEditions(
  world: Files & Pick<World, 'digest'>,
): Promise<readonly DatedEdition[]> {
  const read = async (name: string): Promise<unknown> => {
    const { value, faults } = await readDocument(fileURLToPath(new URL(name, FOLDER)), world);
    if (faults.length > 0) throw new DocumentRefused(faults, []);
    return value;
  };
  const newest = (await read('catalogue.ndjson')) as Lists;
  const first = earlierDocument(newest, (await read('earlier.json')) as Earlier);
  return [
    { ...FIRST, prepared: prepareEdition(first, world.digest) },
    { ...NEWEST, prepared: prepareEdition(newest, world.digest) },
  ];
}

/** The catalogue document as it was. */
function earlierDocument(document: Lists, { had, hadNot }: Earlier): Lists {
  const changed = new Set([...Object.keys(had), ...Object.keys(hadNot)]);
  const lists = [...changed].map((list): [string, readonly unknown[]] => {
    const now = (document[list] ?? []) as readonly Entity[];
    const without = new Set(hadNot[list]);
    const patches = new Map(had[list]?.map((entity) => [entity.id, entity]));
    const ids = new Set([...now, ...patches.values()].map(({ id }) => id));
    const byId = new Map(now.map((entity) => [entity.id, entity]));
    const kept = [...ids].filter((id) => !without.has(id));
    return [list, kept.map((id) => patched(byId.get(id), patches.get(id) ?? {}))];
  });
  return { ...document, ...Object.fromEntries(lists) };
}

/** JSON Merge Patch (RFC 7396): null takes a field away, an object goes on field by field. */
function patched(value: unknown, patch: unknown): unknown {
  if (!isObject(patch)) return patch;
  const fields = new Map(isObject(value) ? Object.entries(value) : []);
  for (const [name, change] of Object.entries(patch)) {
    if (change === null) fields.delete(name);
    else fields.set(name, patched(fields.get(name), change));
  }
  return Object.fromEntries(fields);
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
