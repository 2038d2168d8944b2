/**
 * Writes an edition as what it changes: an entity that is as it was keeps its row, one that has
 * changed or vanished ends, and what is new is brought. Runs inside a transaction of the caller.
 *
 * Left out: finding changes without looking at every entity. All are read in and compared; what
 * an edition costs on disk is what changed, not what it takes to publish it.
 */

import type Database from 'better-sqlite3';
import { and, eq, getTableColumns, isNull, sql } from 'drizzle-orm';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import type { SQLiteTable } from 'drizzle-orm/sqlite-core';
import { canonicalJson } from '../domain/catalogue/canonical.js';
import { ENGINE } from '../domain/engine.js';
import type { IndexColumn, PublishRequest } from '../usecases/ports.js';
import {
  ALL_ENTITY_TABLES,
  type EntityTables,
  type OwnedTable,
  STORED_LISTS,
} from './entity-tables.js';
import { indexColumnRow } from './index-column.js';
import { type Cells, PreparedQuery } from './prepared-query.js';
import { Digester, type EntityRows } from './projection/entity-rows.js';
import { type ListRows, rowsOf } from './rows.js';
import { editions, indexColumns } from './tables/editions.js';

type Builder = ReturnType<typeof drizzle>;

/** A row that is in the newest edition. */
interface CurrentRow {
  readonly id: string;
  readonly from_edition: number;
  readonly digest: string;
}

/** The statements over the tables of one list. */
interface ListStatements {
  readonly digester: Digester;
  readonly current: PreparedQuery<CurrentRow>;
  readonly insert: PreparedQuery;
  readonly end: PreparedQuery;
  readonly owned: readonly {
    readonly in: OwnedTable;
    readonly insert: PreparedQuery;
    readonly end: PreparedQuery;
  }[];
}

export class EditionWriter {
  readonly #begin: PreparedQuery;
  readonly #seal: PreparedQuery;
  readonly #lists: ReadonlyMap<EntityTables, ListStatements>;
  readonly #currentColumns: PreparedQuery<CurrentRow>;
  readonly #insertColumn: PreparedQuery;
  readonly #endColumn: PreparedQuery;

  constructor(connection: Database.Database) {
    const db = drizzle(connection);
    this.#begin = new PreparedQuery(connection, insertInto(db, editions));
    const numbered = eq(editions.number, sql.placeholder('number'));
    const sealed = db.update(editions).set({ sealed: sql`${sql.placeholder('sealed')}` });
    this.#seal = new PreparedQuery(connection, sealed.where(numbered));
    this.#lists = new Map(
      ALL_ENTITY_TABLES.map((tables) => [tables, listStatements(connection, db, tables)]),
    );
    const { name, fromEdition, untilEdition, sha256 } = indexColumns;
    const digest = sql<string>`${indexColumns.type} || ' ' || ${sha256}`.as('digest');
    const columns = db.select({ id: sql`${name}`.as('id'), fromEdition, digest });
    const isCurrent = isNull(untilEdition);
    this.#currentColumns = new PreparedQuery(
      connection,
      columns.from(indexColumns).where(isCurrent),
    );
    this.#insertColumn = new PreparedQuery(connection, insertInto(db, indexColumns));
    this.#endColumn = new PreparedQuery(connection, endIn(db, indexColumns, 'name'));
  }

  /** Writes all of an edition, and seals it. */
  write(number: number, request: PublishRequest): void {
    const { document, catalogue, hash, publishedAt, note } = request;
    const counts = STORED_LISTS.map((list) => [list, document[list]?.length ?? 0]);
    const head = { number, hash, publishedAt, note, engine: ENGINE, sealed: false };
    this.#begin.run({ ...head, counts: canonicalJson(Object.fromEntries(counts)) });
    for (const list of rowsOf(document, catalogue)) this.#writeList(number, list);
    this.#writeColumns(number, request.columns);
    this.#seal.run({ number, sealed: true });
  }

  #writeList(edition: number, { tables, entities }: ListRows): void {
    const statements = this.#lists.get(tables);
    if (statements === undefined) throw new Error('a list without statements');
    const current = byId(statements.current.all());
    for (const entity of entities) {
      const digest = statements.digester.of(entity);
      const old = current.get(entity.id);
      current.delete(entity.id);
      if (old?.digest === digest) continue;
      if (old !== undefined) endEntity(statements, old, edition);
      insertEntity(statements, entity, digest, edition);
    }
    for (const vanished of current.values()) endEntity(statements, vanished, edition);
  }

  #writeColumns(edition: number, columns: readonly IndexColumn[]): void {
    const current = byId(this.#currentColumns.all());
    const end = ({ id, from_edition }: CurrentRow) =>
      this.#endColumn.run({ owner: id, fromEdition: from_edition, untilEdition: edition });
    for (const column of columns) {
      const { byte_order, ...row } = indexColumnRow(column);
      const old = current.get(row.name);
      current.delete(row.name);
      if (old?.digest === `${row.type} ${row.sha256}`) continue;
      if (old !== undefined) end(old);
      const span = { fromEdition: edition, untilEdition: null };
      this.#insertColumn.run({ ...row, byteOrder: byte_order, ...span });
    }
    for (const vanished of current.values()) end(vanished);
  }
}

function byId(rows: readonly CurrentRow[]): Map<string, CurrentRow> {
  return new Map(rows.map((row) => [row.id, row]));
}

function insertEntity(
  statements: ListStatements,
  entity: EntityRows,
  digest: string,
  edition: number,
): void {
  const span = { fromEdition: edition, untilEdition: null };
  const { id, record, columns } = entity;
  statements.insert.run({ ...columns, id, record, digest, ...span });
  for (const { in: target, insert } of statements.owned) {
    const rows = entity.owned.find((one) => one.in === target)?.rows ?? [];
    for (const row of rows) insert.run({ ...row, [target.owner]: id, ...span });
  }
}

function endEntity(statements: ListStatements, old: CurrentRow, edition: number): void {
  const values = { owner: old.id, fromEdition: old.from_edition, untilEdition: edition };
  for (const { end } of statements.owned) end.run(values);
  statements.end.run(values);
}

function listStatements(
  connection: Database.Database,
  db: Builder,
  { table, owned }: EntityTables,
): ListStatements {
  const { id, fromEdition, digest, untilEdition } = table;
  const current = db.select({ id, fromEdition, digest }).from(table).where(isNull(untilEdition));
  return {
    digester: new Digester({ table, owned }),
    current: new PreparedQuery(connection, current),
    insert: new PreparedQuery(connection, insertInto(db, table)),
    end: new PreparedQuery(connection, endIn(db, table, 'id')),
    owned: owned.map((one) => ({
      in: one,
      insert: new PreparedQuery(connection, insertInto(db, one.table)),
      end: new PreparedQuery(connection, endIn(db, one.table, one.owner)),
    })),
  };
}

/** Wants a value for each column but the computed ones, by its key. */
export function insertInto(db: Builder, table: SQLiteTable) {
  const columns = Object.entries(getTableColumns(table));
  const places = columns
    .filter(([, column]) => column.generated === undefined)
    .map(([key]) => [key, sql.placeholder(key)]);
  return db.insert(table).values(Object.fromEntries(places) as Cells);
}

/** Ends the rows of one owner that one edition brought. */
function endIn(db: Builder, table: SQLiteTable, owner: string) {
  const columns = getTableColumns(table);
  const [ownerColumn, fromEdition] = [columns[owner], columns.fromEdition];
  if (ownerColumn === undefined || fromEdition === undefined) {
    throw new Error(`a table has no "${owner}", or no edition`);
  }
  const wanted = and(
    eq(ownerColumn, sql.placeholder('owner')),
    eq(fromEdition, sql.placeholder('fromEdition')),
  );
  const ended = { untilEdition: sql`${sql.placeholder('untilEdition')}` };
  return db.update(table).set(ended).where(wanted);
}
