/**
 * A query that drizzle writes and SQLite prepares once. Values only ever go in as parameters, by
 * the names that the query gives them. Running it by drizzle takes twice as long for a row.
 *
 * Left out: drizzle's mapping of results. Rows come as SQLite gives them, by column name.
 */

import type Database from 'better-sqlite3';
import { is, Param, Placeholder, type Query } from 'drizzle-orm';

/** What a column holds. Truth values are written as 1 and 0, and come back so. */
export type Cell = string | number | boolean | null | Uint8Array;
export type Cells = Readonly<Record<string, Cell>>;

export class PreparedQuery<Result = never> {
  readonly #statement: Database.Statement<unknown[], Result>;
  readonly #names: readonly string[];

  constructor(connection: Database.Database, query: { toSQL(): Query }) {
    const { sql, params } = query.toSQL();
    this.#statement = connection.prepare(sql);
    this.#names = params.map(nameOf);
  }

  run(values: Cells = {}): Database.RunResult {
    return this.#statement.run(this.#bind(values));
  }

  all(values: Cells = {}): Result[] {
    return this.#statement.all(this.#bind(values));
  }

  get(values: Cells = {}): Result | undefined {
    return this.#statement.get(this.#bind(values));
  }

  /** Rows as lists of cells in the order of the query's columns. */
  cells(values: Cells = {}): Cell[][] {
    const rows = this.#statement.raw(true).all(this.#bind(values)) as unknown[] as Cell[][];
    this.#statement.raw(false);
    return rows;
  }

  #bind(values: Cells): unknown[] {
    return this.#names.map((name) => {
      const value = values[name];
      if (value === undefined) throw new Error(`the query wants a value for "${name}"`);
      return typeof value === 'boolean' ? Number(value) : value;
    });
  }
}

/** Every parameter is a named place: a value that stands in the query itself is a mistake. */
function nameOf(param: unknown): string {
  const place: unknown = is(param, Param) ? param.value : param;
  if (is(place, Placeholder) && typeof place.name === 'string') return place.name;
  throw new Error('a value stands in a query that should name a place for it');
}
