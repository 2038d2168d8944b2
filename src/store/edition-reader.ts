/**
 * Reads editions: their heads, and whole states of the catalogue as they were published. What is
 * read is compared with the hashes that were stored with it before anybody sees it.
 */

import { createHash } from 'node:crypto';
import type Database from 'better-sqlite3';
import { and, asc, desc, eq, gt, isNull, lte, or, sql } from 'drizzle-orm';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { canonicalDocument, canonicalJson } from '../domain/catalogue/canonical.js';
import type { CatalogueDocument } from '../domain/catalogue/document.js';
import {
  type EditionHead,
  type IndexColumn,
  type StoredEdition,
  StoreFault,
} from '../usecases/ports.js';
import {
  ALL_ENTITY_TABLES,
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

/** `sha256-` and 64 hex digits of a canonical document. */
export function hashOf(document: CatalogueDocument): string {
  const canonical = canonicalJson(canonicalDocument(document));
  return `sha256-${createHash('sha256').update(canonical).digest('hex')}`;
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
    const head = this.edition(number);
    if (head === null) {
      throw new StoreFault(`there is no edition ${number}`, 'ask for one that was published');
    }
    const document = this.#document(number);
    for (const list of STORED_LISTS) {
      const [counted, there] = [head.counts[list], document[list]?.length ?? 0];
      if (counted === there) continue;
      throw damaged(`edition ${number} has ${there} ${list}, not ${counted ?? 'any number'}`);
    }
    if (hashOf(document) !== head.hash) {
      throw damaged(`edition ${number} does not agree with its hash`);
    }
    return { head, document, columns: this.columns(number) };
  }

  columns(number: number): IndexColumn[] {
    return this.#columns.all({ edition: number }).map(indexColumnOf);
  }

  #document(number: number): CatalogueDocument {
    const [head, ...others] = this.#recordsOf(HEAD_TABLES.table, number);
    if (head === undefined || others.length > 0) {
      throw damaged(`edition ${number} has ${others.length + (head ? 1 : 0)} heads, not one`);
    }
    const lists = STORED_LISTS.flatMap((list): [StoredList, object[]][] => {
      const records = this.#recordsOf(LIST_TABLES[list].table, number);
      return records.length === 0 ? [] : [[list, records]];
    });
    return { ...head, ...Object.fromEntries(lists) } as unknown as CatalogueDocument;
  }

  #recordsOf(table: object, edition: number): object[] {
    const rows = this.#records.get(table)?.all({ edition }) ?? [];
    return rows.map(({ id, record }) => recordOf(record, id));
  }
}

function headOf(row: EditionRow): EditionHead {
  const { number, hash, note } = row;
  const counts = recordOf(row.counts, `edition ${number}`);
  return {
    ...{ number, hash, note },
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
