/**
 * One entity as rows: its record, the columns beside it, and the rows that belong to it. The
 * digest covers all of them, so a row is kept over editions exactly as long as nothing in it
 * changes, and a row that somebody altered shows.
 */

import { createHash } from 'node:crypto';
import type { InferSelectModel } from 'drizzle-orm';
import { getTableColumns } from 'drizzle-orm';
import type { SQLiteTable } from 'drizzle-orm/sqlite-core';
import { byCodeUnit, canonicalJson } from '../../domain/catalogue/canonical.js';
import type { EntityTable, OwnedTable } from '../entity-tables.js';
import type { Cell, Cells } from '../prepared-query.js';

export interface OwnedRows {
  readonly in: OwnedTable;
  readonly rows: readonly Cells[];
}

export interface EntityRows {
  readonly id: string;
  /** Canonical JSON. */
  readonly record: string;
  /** All columns but the id, the record, the digest and the editions. */
  readonly columns: Cells;
  readonly owned: readonly OwnedRows[];
}

type Span = 'fromEdition' | 'untilEdition';
type Computed = 'lowAbout' | 'highAbout';
type ColumnsOf<Table extends SQLiteTable> = Omit<
  InferSelectModel<Table>,
  'id' | 'record' | 'digest' | Span
>;
type RowOf<Table extends SQLiteTable, Owner extends string> = Omit<
  InferSelectModel<Table>,
  Owner | Span | Computed
>;

/** `_table` gives the type that the columns must have: all of them, none left to a default. */
export function entityRows<Table extends EntityTable>(
  _table: Table,
  record: { readonly id: string },
  columns: ColumnsOf<Table>,
  owned: readonly OwnedRows[] = [],
): EntityRows {
  const cells = columns as unknown as Cells;
  return { id: record.id, record: canonicalJson(record), columns: cells, owned };
}

export function ownedRows<Table extends OwnedTable['table'], Owner extends string>(
  target: OwnedTable<Table, Owner>,
  rows: readonly RowOf<Table, Owner>[],
): OwnedRows {
  return { in: target, rows };
}

const UNCOVERED = ['id', 'record', 'digest', 'fromEdition', 'untilEdition'];

/** The columns that a digest covers beside the record, in the order of the table. */
export function coveredColumns(table: SQLiteTable, owner: string | null): string[] {
  return Object.entries(getTableColumns(table))
    .filter(([key, column]) => {
      return key !== owner && !UNCOVERED.includes(key) && column.generated === undefined;
    })
    .map(([key]) => key);
}

/** What a digest is taken of; cells in the order of `coveredColumns`, truth values as 1 and 0. */
export interface DigestInput {
  readonly record: string;
  readonly columns: readonly Cell[];
  /** By table, in the order of `EntityTables.owned`. */
  readonly owned: readonly (readonly (readonly Cell[])[])[];
}

/** 64 hex digits; the order of rows in a table does not matter. */
export function digestOf({ record, columns, owned }: DigestInput): string {
  const hash = createHash('sha256').update(record).update('\n').update(JSON.stringify(columns));
  for (const rows of owned) {
    const lines = rows.map((cells) => JSON.stringify(cells)).sort(byCodeUnit);
    hash.update('\n\n').update(lines.join('\n'));
  }
  return hash.digest('hex');
}

/** Writes out what a digest covers, in the order that the tables give. */
export class Digester {
  readonly #columns: readonly string[];
  readonly #owned: readonly { readonly in: OwnedTable; readonly keys: readonly string[] }[];

  constructor(tables: { readonly table: EntityTable; readonly owned: readonly OwnedTable[] }) {
    this.#columns = coveredColumns(tables.table, null);
    this.#owned = tables.owned.map((one) => ({
      in: one,
      keys: coveredColumns(one.table, one.owner),
    }));
  }

  of({ record, columns, owned }: EntityRows): string {
    const rowsIn = (target: OwnedTable) => owned.find((one) => one.in === target)?.rows ?? [];
    return digestOf({
      record,
      columns: cellsOf(columns, this.#columns),
      owned: this.#owned.map(({ in: target, keys }) => {
        return rowsIn(target).map((row) => cellsOf(row, keys));
      }),
    });
  }
}

function cellsOf(cells: Cells, keys: readonly string[]): Cell[] {
  return keys.map((key) => {
    const cell = cells[key];
    if (cell === undefined) throw new Error(`a row has no "${key}"`);
    return typeof cell === 'boolean' ? Number(cell) : cell;
  });
}
