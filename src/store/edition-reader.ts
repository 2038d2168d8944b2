/**
 * Reads editions: their heads, and whole states of the catalogue as they were published. What is
 * read is compared with the hashes that were stored with it before anybody sees it.
 */

import { createHash } from 'node:crypto';
import type Database from 'better-sqlite3';
import { and, asc, desc, eq, gt, isNull, lte, or, sql } from 'drizzle-orm';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { byCodeUnit, canonicalJson } from '../domain/catalogue/canonical.js';
import type { CatalogueDocument } from '../domain/catalogue/document.js';
import {
  type EditionHead,
  type IndexColumn,
  type StoredEdition,
  StoreFault,
} from '../usecases/ports.js';
import {
  ALL_ENTITY_TABLES,
  HEAD_ID,
  HEAD_TABLES,
  LIST_TABLES,
  STORED_LISTS,
  type StoredList,
} from './entity-tables.js';
import { type IndexColumnRow, indexColumnOf } from './index-column.js';
import { PreparedQuery } from './prepared-query.js';
import { damaged } from './store-fault.js';
import { editions, indexColumns } from './tables/editions.js';

interface EditionRow {
  readonly number: number;
  readonly hash: string;
  readonly published_at: string;
  readonly note: string | null;
  readonly engine: string;
  readonly counts: string;
}

interface RecordRow {
  readonly id: string;
  readonly record: string;
}

/** The rows that an edition has: brought by it or before, and not ended by it or before. */
export function livesIn(table: {
  readonly fromEdition: Parameters<typeof lte>[0];
  readonly untilEdition: Parameters<typeof lte>[0];
}) {
  const edition = sql.placeholder('edition');
  return and(
    lte(table.fromEdition, edition),
    or(isNull(table.untilEdition), gt(table.untilEdition, edition)),
  );
}

export class EditionReader {
  readonly #latest: PreparedQuery<EditionRow>;
  readonly #edition: PreparedQuery<EditionRow>;
  readonly #editions: PreparedQuery<EditionRow>;
  readonly #records: ReadonlyMap<object, PreparedQuery<RecordRow>>;
  readonly #columns: PreparedQuery<IndexColumnRow>;

  constructor(connection: Database.Database) {
    const db = drizzle(connection);
    const prepare = <Row>(query: ConstructorParameters<typeof PreparedQuery>[1]) =>
      new PreparedQuery<Row>(connection, query);
    const sealed = sql`${editions.sealed}`;
    const numbered = and(sealed, eq(editions.number, sql.placeholder('edition')));
    this.#edition = prepare(db.select().from(editions).where(numbered));
    const newestFirst = () =>
      db.select().from(editions).where(sealed).orderBy(desc(editions.number));
    this.#editions = prepare(newestFirst());
    this.#latest = prepare(newestFirst().limit(sql.placeholder('limit')));
    this.#records = new Map(
      ALL_ENTITY_TABLES.map(({ table }) => [
        table,
        prepare<RecordRow>(
          db
            .select({ id: table.id, record: table.record })
            .from(table)
            .where(livesIn(table))
            .orderBy(asc(table.id)),
        ),
      ]),
    );
    const columns = db.select().from(indexColumns).where(livesIn(indexColumns));
    this.#columns = prepare(columns.orderBy(asc(indexColumns.name)));
  }

  latest(): EditionHead | null {
    const row = this.#latest.get({ limit: 1 });
    return row === undefined ? null : headOf(row);
  }

  edition(number: number): EditionHead | null {
    const row = this.#edition.get({ edition: number });
    return row === undefined ? null : headOf(row);
  }

  /** The version of the program that published an edition. */
  engineOf(number: number): string | null {
    return this.#edition.get({ edition: number })?.engine ?? null;
  }

  editions(): EditionHead[] {
    return this.#editions.all().map(headOf);
  }

  /** @throws StoreFault where there is no such edition, or it is not what was published. */
  load(number: number): StoredEdition {
    const { head, state } = this.#checked(number);
    return { head, document: documentOf(state), columns: this.columns(number) };
  }

  /** As `load`, for one that only wants to know whether it could be loaded. */
  check(number: number): EditionHead {
    const { head } = this.#checked(number);
    this.columns(number);
    return head;
  }

  /** @throws StoreFault where a column is not what was stored, or is there twice. */
  columns(number: number): IndexColumn[] {
    const columns = this.#columns.all({ edition: number }).map(indexColumnOf);
    // A hash covers the numbers of a column, not the editions that it is of.
    if (new Set(columns.map(({ name }) => name)).size === columns.length) return columns;
    throw damaged(`edition ${number} has an index column twice`);
  }

  #checked(number: number): { readonly head: EditionHead; readonly state: StoredState } {
    const head = this.edition(number);
    if (head === null) {
      throw new StoreFault(`there is no edition ${number}`, 'ask for one that was published');
    }
    const state = this.#state(number);
    for (const [list, rows] of state.lists) {
      // An edition of a program that did not know a list does not count it.
      const counted = head.counts[list] ?? 0;
      if (counted === rows.length) continue;
      throw damaged(`edition ${number} has ${rows.length} ${list}, not ${counted}`);
    }
    if (hashOf(state) !== head.hash) {
      throw damaged(`edition ${number} does not agree with its hash`);
    }
    return { head, state };
  }

  #state(number: number): StoredState {
    const rowsOf = (table: object) => this.#records.get(table)?.all({ edition: number }) ?? [];
    const heads = rowsOf(HEAD_TABLES.table);
    const [head] = heads;
    if (head === undefined || heads.length > 1) {
      throw damaged(`edition ${number} has ${heads.length} heads, not one`);
    }
    const lists = STORED_LISTS.map((list) => [list, rowsOf(LIST_TABLES[list].table)] as const);
    return { head: recordOf(head.record, HEAD_ID), lists: new Map(lists) };
  }
}

/** A state of the catalogue, its records not read yet. */
interface StoredState {
  readonly head: object;
  readonly lists: ReadonlyMap<StoredList, readonly RecordRow[]>;
}

/**
 * The hash of the canonical document that the records make up, by the very bytes that are
 * stored: `sha256-` and 64 hex digits. Records in the order of their ids, fields in that of their
 * names, empty lists left out.
 */
function hashOf({ head, lists }: StoredState): string {
  const hash = createHash('sha256').update('{');
  const full = [...lists].filter(([, rows]) => rows.length > 0);
  const fields = new Map<string, unknown>([...Object.entries(head), ...full]);
  for (const [index, name] of [...fields.keys()].sort(byCodeUnit).entries()) {
    hash.update(`${index === 0 ? '' : ','}${canonicalJson(name)}:`);
    const rows = lists.get(name as StoredList);
    if (rows === undefined) hash.update(canonicalJson(fields.get(name)));
    else {
      for (const [place, { record }] of rows.entries()) {
        hash.update(`${place === 0 ? '[' : ','}${record}`);
      }
      hash.update(']');
    }
  }
  return `sha256-${hash.update('}').digest('hex')}`;
}

function documentOf({ head, lists }: StoredState): CatalogueDocument {
  const read = [...lists].flatMap(([list, rows]): [StoredList, object[]][] => {
    if (rows.length === 0) return [];
    return [[list, rows.map(({ id, record }) => recordOf(record, id))]];
  });
  return { ...head, ...Object.fromEntries(read) } as unknown as CatalogueDocument;
}

function headOf(row: EditionRow): EditionHead {
  const { number, hash, note } = row;
  const counts = recordOf(row.counts, `edition ${number}`);
  return {
    number,
    hash,
    note,
    publishedAt: row.published_at,
    counts: counts as EditionHead['counts'],
  };
}

/** JSON that was canonical when it was written; `of` says whose, where it is not even JSON. */
export function recordOf(json: string, of: string): object {
  let record: unknown;
  try {
    record = JSON.parse(json);
  } catch (error) {
    throw damaged(`the record of ${of} cannot be read`, { cause: error });
  }
  if (typeof record === 'object' && record !== null) return record;
  throw damaged(`the record of ${of} is no object`);
}
