/**
 * Offers: prices and stock as they are now, with a counter of their own that no edition's number
 * depends on. What was offered before is not kept.
 */

import type Database from 'better-sqlite3';
import { asc, eq, sql } from 'drizzle-orm';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { canonicalJson } from '../domain/catalogue/canonical.js';
import type { OfferRecord } from '../domain/catalogue/document.js';
import type { OffersHead } from '../usecases/ports.js';
import { recordOf } from './edition-reader.js';
import { insertInto } from './edition-writer.js';
import { PreparedQuery } from './prepared-query.js';
import { damaged } from './store-fault.js';
import { offers, offersState } from './tables/editions.js';

interface OfferRow {
  readonly id: string;
  readonly for: string;
  readonly price: string;
  readonly condition: string | null;
  readonly stock: number | null;
  readonly lead_days: number | null;
  readonly supplier: string | null;
  readonly sku: string | null;
  readonly pack: string | null;
  readonly record: string;
}

interface StateRow {
  readonly number: number;
  readonly published_at: string;
}

export class OfferStore {
  readonly #all: PreparedQuery<OfferRow>;
  readonly #state: PreparedQuery<StateRow>;
  readonly #insert: PreparedQuery;
  readonly #delete: PreparedQuery;
  readonly #firstState: PreparedQuery;
  readonly #nextState: PreparedQuery;

  constructor(connection: Database.Database) {
    const db = drizzle(connection);
    this.#all = new PreparedQuery(connection, db.select().from(offers).orderBy(asc(offers.id)));
    this.#state = new PreparedQuery(connection, db.select().from(offersState));
    this.#insert = new PreparedQuery(connection, insertInto(db, offers));
    const named = eq(offers.id, sql.placeholder('id'));
    this.#delete = new PreparedQuery(connection, db.delete(offers).where(named));
    this.#firstState = new PreparedQuery(connection, insertInto(db, offersState));
    const next = {
      number: sql`${sql.placeholder('number')}`,
      publishedAt: sql`${sql.placeholder('publishedAt')}`,
    };
    this.#nextState = new PreparedQuery(connection, db.update(offersState).set(next));
  }

  head(): OffersHead {
    const row = this.#state.get();
    if (row === undefined) return { number: 0, publishedAt: null };
    return { number: row.number, publishedAt: row.published_at };
  }

  /** By id. @throws StoreFault where a row does not agree with its record. */
  offers(): OfferRecord[] {
    return this.#all.all().map((row) => {
      const record = recordOf(row.record, `the offer ${row.id}`) as OfferRecord;
      const { leadDays: lead_days, ...cells } = cellsOf(record);
      const expected = Object.entries({ ...cells, lead_days });
      if (expected.every(([column, cell]) => row[column as keyof OfferRow] === cell)) return record;
      throw damaged(`the offer ${row.id} does not agree with its record`);
    });
  }

  /** Puts these offers in the place of all that were; the counter grows only if they differ. */
  replace(records: readonly OfferRecord[], publishedAt: string): OffersHead {
    const { number: last } = this.head();
    const old = new Map(this.#all.all().map(({ id, record }) => [id, record]));
    const number = last + 1;
    let changes = 0;
    for (const offer of records) {
      const record = canonicalJson(offer);
      const before = old.get(offer.id);
      old.delete(offer.id);
      if (before === record) continue;
      changes += 1;
      if (before !== undefined) this.#delete.run({ id: offer.id });
      this.#insert.run({ ...cellsOf(offer), fromOffers: number, record });
    }
    for (const id of old.keys()) this.#delete.run({ id });
    if (changes + old.size === 0) return this.head();
    const state = { number, publishedAt };
    if (last === 0) this.#firstState.run({ ...state, only: 1 });
    else this.#nextState.run(state);
    return state;
  }
}

function cellsOf(offer: OfferRecord) {
  const { id, for: offered, price } = offer;
  const { condition = null, stock = null, leadDays = null } = offer;
  const { supplier = null, sku = null, pack = null } = offer;
  return { id, for: offered, price, condition, stock, leadDays, supplier, sku, pack };
}
