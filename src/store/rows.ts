/**
 * A compiled document as rows of the store, list by list. The record of each entity is the truth;
 * the columns beside it are there to be queried, and are never read back into a catalogue.
 */

import type { Catalogue } from '../domain/catalogue/catalogue.js';
import type { CatalogueDocument } from '../domain/catalogue/document.js';
import {
  type EntityTables,
  HEAD_TABLES,
  LIST_TABLES,
  STORED_LISTS,
  type StoredList,
} from './entity-tables.js';
import type { EntityRows } from './projection/entity-rows.js';
import { layoutRows } from './projection/layout-rows.js';
import { partRows } from './projection/part-rows.js';
import { Projection } from './projection/projection.js';
import { lotRows, rulesetRows, workRows } from './projection/trade-rows.js';
import { ruleRows, statementRows, vehicleRows } from './projection/vehicle-rows.js';
import { factRows, headRows, kindRows, roleRows } from './projection/vocabulary-rows.js';

/** The rows of one list; made one by one, since a document may have very many. */
export interface ListRows {
  readonly tables: EntityTables;
  readonly entities: Iterable<EntityRows>;
}

type RecordOf<List extends StoredList> = NonNullable<CatalogueDocument[List]>[number];

const PROJECTORS: {
  readonly [List in StoredList]: (record: RecordOf<List>, projection: Projection) => EntityRows;
} = {
  facts: factRows,
  kinds: kindRows,
  roles: roleRows,
  parts: partRows,
  layouts: layoutRows,
  vehicles: vehicleRows,
  rules: ruleRows,
  statements: statementRows,
  lots: lotRows,
  works: workRows,
  rulesets: rulesetRows,
};

export function rowsOf(document: CatalogueDocument, catalogue: Catalogue): ListRows[] {
  const projection = new Projection(catalogue);
  const lists = STORED_LISTS.map((list) => ({
    tables: LIST_TABLES[list],
    entities: entitiesOf(list, document, projection),
  }));
  return [{ tables: HEAD_TABLES, entities: [headRows(document)] }, ...lists];
}

function* entitiesOf<List extends StoredList>(
  list: List,
  document: CatalogueDocument,
  projection: Projection,
): Generator<EntityRows> {
  const project = PROJECTORS[list];
  for (const record of (document[list] ?? []) as readonly RecordOf<List>[]) {
    yield project(record, projection);
  }
}
