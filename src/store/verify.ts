/**
 * Compares everything that is stored with everything else: the file with itself, its tables and
 * seals with those of the migrations, each edition with its hash, each row with the digest that
 * was taken of it when it was written, and the rows of each edition with what this program makes
 * of its records.
 *
 * The last is left out for editions that another version of the program published: it may have
 * read a value differently, and its rows say how.
 */

import type Database from 'better-sqlite3';
import { and, eq, getTableColumns, type SQL, sql } from 'drizzle-orm';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { compileDocument } from '../domain/catalogue/compile.js';
import { ENGINE } from '../domain/engine.js';
import { BUILT_IN_KINDS } from '../domain/kinds/registry.js';
import { StoreFault } from '../usecases/ports.js';
import type { EditionReader } from './edition-reader.js';
import { livesIn } from './edition-reader.js';
import { ALL_ENTITY_TABLES, type EntityTables, type OwnedTable } from './entity-tables.js';
import { alteredObjects } from './migrations.js';
import type { OfferStore } from './offer-store.js';
import { type Cell, PreparedQuery } from './prepared-query.js';
import { coveredColumns, Digester, digestOf } from './projection/entity-rows.js';
import { rowsOf } from './rows.js';
import { storeFaultOf } from './store-fault.js';

export interface VerifyReport {
  readonly editions: number;
  /** Entities over all editions, each counted once for each of its states. */
  readonly entities: number;
  /** Sentences; empty where all is well. */
  readonly disagreements: readonly string[];
}

type Builder = ReturnType<typeof drizzle>;

interface DigestRow {
  readonly id: string;
  readonly digest: string;
}

/** Cells by their place: a name in the schema may be damaged as well. */
type StateCells = readonly [
  id: string,
  fromEdition: number,
  untilEdition: number | null,
  record: string,
  digest: string,
];

/** Runs inside a transaction of the caller. */
export function verifyStore(
  connection: Database.Database,
  path: string,
  reader: EditionReader,
  offers: OfferStore,
): VerifyReport {
  const verifier = new Verifier(connection, path);
  verifier.try(() => verifier.checkFile());
  verifier.try(() => verifier.checkSchema());
  let entities = 0;
  for (const tables of ALL_ENTITY_TABLES) {
    verifier.try(() => {
      entities += verifier.checkDigests(tables);
    });
  }
  let editions = 0;
  verifier.try(() => {
    const numbers = reader.editions().map(({ number }) => number);
    editions = numbers.length;
    verifier.checkNumbers(numbers);
    for (const number of numbers.toReversed()) {
      verifier.try(() => verifier.checkEdition(reader, number));
    }
  });
  verifier.try(() => offers.offers());
  return { editions, entities, disagreements: verifier.disagreements };
}

class Verifier {
  readonly disagreements: string[] = [];
  readonly #connection: Database.Database;
  readonly #path: string;
  readonly #db: Builder;

  constructor(connection: Database.Database, path: string) {
    this.#connection = connection;
    this.#path = path;
    this.#db = drizzle(connection);
  }

  /** What cannot be read is a disagreement like any other. */
  try(check: () => unknown): void {
    try {
      check();
    } catch (error) {
      const fault = storeFaultOf(error, this.#path);
      if (!(fault instanceof StoreFault)) throw error;
      this.disagreements.push(fault.message);
    }
  }

  checkFile(): void {
    const found = this.#connection.pragma('integrity_check') as readonly {
      readonly integrity_check: string;
    }[];
    const said = found.map((row) => row.integrity_check).filter((text) => text !== 'ok');
    const broken = this.#connection.pragma('foreign_key_check') as readonly {
      readonly table: string;
    }[];
    const lost = broken.map(({ table }) => `a row of ${table} points to nothing`);
    this.disagreements.push(...said, ...lost);
  }

  /** The constraints and seals that hold all the rest. */
  checkSchema(): void {
    const altered = alteredObjects(this.#connection);
    this.disagreements.push(...altered.map((name) => `${name} is not as this program made it`));
  }

  /** @param numbers those of the sealed editions, the newest first. */
  checkNumbers(numbers: readonly number[]): void {
    // By hand: `integrity_check` passes over constraints on a connection that only reads.
    const open = this.#connection.prepare('SELECT count(*) FROM editions WHERE sealed IS NOT 1');
    if (open.pluck().get() !== 0) this.disagreements.push('an edition is not sealed');
    const isWhole = numbers.every((number, index) => number === numbers.length - index);
    if (!isWhole) this.disagreements.push('the editions are not numbered 1, 2, 3');
  }

  /** Each state of each entity against its digest; gives how many there are. */
  checkDigests({ table, owned }: EntityTables): number {
    const { id, fromEdition, untilEdition, record, digest } = table;
    const selected = this.#db.select({ id, fromEdition, untilEdition, record, digest });
    const states = new PreparedQuery(this.#connection, selected.from(table));
    const own = this.#coveredCells(table, 'id', null);
    const belonging = owned.map((one) => this.#coveredCells(one.table, one.owner, one.owner));
    const rows = states.cells() as readonly unknown[] as readonly StateCells[];
    for (const [owner, from, until, json, known] of rows) {
      const key = { owner, fromEdition: from, untilEdition: until };
      const [columns = []] = own.cells(key);
      const input = { record: json, columns: columns.slice(1) };
      const cells = belonging.map((query) => query.cells(key));
      const isSpanned = cells.flat().every(([agrees]) => agrees === 1);
      const found = digestOf({ ...input, owned: cells.map((list) => list.map(withoutFirst)) });
      if (isSpanned && found === known) continue;
      const text = `"${owner}", since edition ${from}: a row was altered`;
      this.disagreements.push(text);
    }
    return rows.length;
  }

  /** The cells that a digest covers; the first says whether the row ends with its entity. */
  #coveredCells(
    table: OwnedTable['table'],
    ownerKey: string,
    uncovered: string | null,
  ): PreparedQuery {
    const columns = getTableColumns(table);
    const owner = columns[ownerKey];
    if (owner === undefined) throw new Error(`a table has no "${ownerKey}"`);
    const covered = coveredColumns(table, uncovered).map((key) => [key, sql`${columns[key]}`]);
    const agrees = sql`${table.untilEdition} IS ${sql.placeholder('untilEdition')}`;
    const cells = { agrees, ...(Object.fromEntries(covered) as Record<string, SQL>) };
    const wanted = and(
      eq(owner, sql.placeholder('owner')),
      eq(table.fromEdition, sql.placeholder('fromEdition')),
    );
    return new PreparedQuery(this.#connection, this.#db.select(cells).from(table).where(wanted));
  }

  /** One edition against its hash, and its rows against what is made of its records today. */
  checkEdition(reader: EditionReader, number: number): void {
    const { document } = reader.load(number);
    if (reader.engineOf(number) !== ENGINE) return;
    const { catalogue, faults } = compileDocument(document, BUILT_IN_KINDS);
    if (catalogue === null) {
      this.disagreements.push(`edition ${number} no longer compiles: ${faults[0]?.text ?? ''}`);
      return;
    }
    for (const { tables, entities } of rowsOf(document, catalogue)) {
      const { table } = tables;
      const selected = this.#db.select({ id: table.id, digest: table.digest }).from(table);
      const live = new PreparedQuery<DigestRow>(this.#connection, selected.where(livesIn(table)));
      const stored = new Map(live.all({ edition: number }).map((row) => [row.id, row.digest]));
      const digester = new Digester(tables);
      for (const entity of entities) {
        if (stored.get(entity.id) === digester.of(entity)) continue;
        const text = `"${entity.id}", in edition ${number}: its columns are not what it records`;
        this.disagreements.push(text);
      }
    }
  }
}

function withoutFirst(cells: readonly Cell[]): Cell[] {
  return cells.slice(1);
}
