/**
 * Reads a document's head and lists of entities. An entity keeps its place and its name whatever
 * faults it has, so that those who name it have none for that.
 */

import type { CatalogueDocument, EntityList } from './document.js';
import { ENTITY_LISTS } from './document.js';
import { at, type FaultList, quoted } from './faults.js';
import { present } from './holes.js';
import { readTolerantly, sayUnknownFields } from './read.js';
import { isObject } from './read-text.js';
import { DOCUMENT_FIELDS, ENTITY_SHAPES, HEAD_FIELDS } from './shape.js';

export type Entity<List extends EntityList> = NonNullable<CatalogueDocument[List]>[number];

/** The entities of one list. */
export interface Entities<Record> {
  /** Each with its place. */
  readonly records: readonly (readonly [record: Record, pointer: string])[];
  /** The ids of all that have one. */
  readonly ids: ReadonlySet<string>;
  /** Ids that several have: which of them is meant, nobody can say. */
  readonly doubled: ReadonlySet<string>;
}

export type Head = Omit<CatalogueDocument, EntityList>;
export type Lists = { readonly [List in EntityList]: Entities<Entity<List>> };

export interface DocumentRead {
  readonly head: Head;
  readonly lists: Lists;
}

/** Reads a parsed JSON value as a document; null where it is none at all. */
export function readDocument(raw: unknown, list: FaultList): DocumentRead | null {
  if (!isObject(raw)) {
    list.fault('', 'not-a-document', 'A catalogue document is a JSON object.');
    return null;
  }
  sayUnknownFields(DOCUMENT_FIELDS, raw, '', list);
  const own = Object.entries(raw).filter(([key]) => Object.hasOwn(HEAD_FIELDS, key));
  const shape = { is: 'object', fields: HEAD_FIELDS } as const;
  const head = readTolerantly(shape, Object.fromEntries(own), '', list) as Head;
  const lists = Object.fromEntries(ENTITY_LISTS.map((name) => [name, readList(name, raw, list)]));
  return { head, lists: lists as unknown as Lists };
}

function readList(
  name: EntityList,
  raw: Readonly<Record<string, unknown>>,
  list: FaultList,
): Entities<{ readonly id: string }> {
  const pointer = at('', name);
  const items = Object.hasOwn(raw, name)
    ? readTolerantly({ is: 'list', of: ENTITY_SHAPES[name] }, raw[name], pointer, list)
    : [];
  if (list.isUnread(pointer)) list.lost.addAll(name);
  const all = (items ?? []) as readonly { readonly id: string }[];
  const records = [...present(all, pointer)].map(([item, place]) => [item, place] as const);
  const ids = new Set<string>();
  const doubled = new Set<string>();
  for (let hole = all.length - records.length; hole > 0; hole -= 1) list.lost.addNameless(name);
  for (const [{ id }, place] of records) {
    if (list.isUnread(at(place, 'id'))) list.lost.addNameless(name, id);
    else if (ids.has(id)) {
      list.fault(at(place, 'id'), 'duplicate-id', `${quoted(id)} is there twice.`);
      list.lost.addDoubled(name, id);
      doubled.add(id);
    } else ids.add(id);
  }
  return { records, ids, doubled };
}

/** The compiled entities by id, without those of which nobody can say which is meant. */
export function byId<Record extends { readonly id: string }, Compiled>(
  { records, ids, doubled }: Entities<Record>,
  compile: (record: Record, pointer: string) => Compiled | null,
): Map<string, Compiled> {
  const entities = new Map<string, Compiled>();
  for (const [record, pointer] of records) {
    const compiled = compile(record, pointer);
    const isNamed = ids.has(record.id) && !doubled.has(record.id);
    if (compiled !== null && isNamed) entities.set(record.id, compiled);
  }
  return entities;
}
