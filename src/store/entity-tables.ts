/**
 * Which table holds the entities of which list of a document, and which tables hold the rows
 * that belong to one of them. All that publishes, loads or verifies goes by this list.
 */

import type { InferSelectModel } from 'drizzle-orm';
import type { AnySQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';
import { ENTITY_LISTS, type EntityList } from '../domain/catalogue/document.js';
import { layoutChecks, layouts, matings, positionRoles, positions } from './tables/layouts.js';
import {
  interfaceParameters,
  interfaces,
  partNumbers,
  partRoles,
  parts,
  partValues,
} from './tables/parts.js';
import {
  lotItems,
  lots,
  rulesetChecks,
  rulesets,
  workParameters,
  works,
  workValues,
} from './tables/trade.js';
import {
  fittedAdapters,
  fittedOptions,
  fittedParts,
  rules,
  statements,
  statementVehicles,
  vehicleFacts,
  vehicles,
  vehicleVins,
} from './tables/vehicles.js';
import {
  documents,
  facts,
  factValues,
  kindParameters,
  kinds,
  roles,
  roleValues,
} from './tables/vocabulary.js';

/** The lists that an edition has; offers are kept apart. */
export type StoredList = Exclude<EntityList, 'offers'>;
export const STORED_LISTS: readonly StoredList[] = ENTITY_LISTS.filter((list) => list !== 'offers');

interface Spanned {
  readonly fromEdition: AnySQLiteColumn;
  readonly untilEdition: AnySQLiteColumn;
}

export type EntityTable = SQLiteTable &
  Spanned & {
    readonly id: AnySQLiteColumn;
    readonly record: AnySQLiteColumn;
    readonly digest: AnySQLiteColumn;
  };

/** A table whose rows belong to an entity, which the column `owner` names. */
export interface OwnedTable<
  Table extends SQLiteTable & Spanned = SQLiteTable & Spanned,
  Owner extends string = string,
> {
  readonly table: Table;
  readonly owner: Owner;
}

function ownedBy<Table extends SQLiteTable & Spanned, const Owner extends string>(
  owner: Owner & keyof InferSelectModel<Table>,
  table: Table,
): OwnedTable<Table, Owner> {
  return { table, owner };
}

/** Those that point to another table of the same entity come after it. */
export const OWNED = {
  factValues: ownedBy('fact', factValues),
  kindParameters: ownedBy('kind', kindParameters),
  roleValues: ownedBy('role', roleValues),
  partRoles: ownedBy('part', partRoles),
  partNumbers: ownedBy('part', partNumbers),
  interfaces: ownedBy('part', interfaces),
  interfaceParameters: ownedBy('part', interfaceParameters),
  partValues: ownedBy('part', partValues),
  positions: ownedBy('layout', positions),
  positionRoles: ownedBy('layout', positionRoles),
  matings: ownedBy('layout', matings),
  layoutChecks: ownedBy('layout', layoutChecks),
  vehicleFacts: ownedBy('vehicle', vehicleFacts),
  vehicleVins: ownedBy('vehicle', vehicleVins),
  fittedParts: ownedBy('vehicle', fittedParts),
  fittedOptions: ownedBy('vehicle', fittedOptions),
  fittedAdapters: ownedBy('vehicle', fittedAdapters),
  statementVehicles: ownedBy('statement', statementVehicles),
  lotItems: ownedBy('lot', lotItems),
  workParameters: ownedBy('work', workParameters),
  workValues: ownedBy('work', workValues),
  rulesetChecks: ownedBy('ruleset', rulesetChecks),
} as const;

export interface EntityTables {
  readonly table: EntityTable;
  readonly owned: readonly OwnedTable[];
}

/** What stands in no list: the head of the document. */
export const HEAD_ID = 'document';
export const HEAD_TABLES: EntityTables = { table: documents, owned: [] };

export const LIST_TABLES: { readonly [List in StoredList]: EntityTables } = {
  facts: { table: facts, owned: [OWNED.factValues] },
  kinds: { table: kinds, owned: [OWNED.kindParameters] },
  roles: { table: roles, owned: [OWNED.roleValues] },
  parts: {
    table: parts,
    owned: [
      OWNED.partRoles,
      OWNED.partNumbers,
      OWNED.interfaces,
      OWNED.interfaceParameters,
      OWNED.partValues,
    ],
  },
  layouts: {
    table: layouts,
    owned: [OWNED.positions, OWNED.positionRoles, OWNED.matings, OWNED.layoutChecks],
  },
  vehicles: {
    table: vehicles,
    owned: [
      OWNED.vehicleFacts,
      OWNED.vehicleVins,
      OWNED.fittedParts,
      OWNED.fittedOptions,
      OWNED.fittedAdapters,
    ],
  },
  rules: { table: rules, owned: [] },
  statements: { table: statements, owned: [OWNED.statementVehicles] },
  lots: { table: lots, owned: [OWNED.lotItems] },
  works: { table: works, owned: [OWNED.workParameters, OWNED.workValues] },
  rulesets: { table: rulesets, owned: [OWNED.rulesetChecks] },
};

export const ALL_ENTITY_TABLES: readonly EntityTables[] = [
  HEAD_TABLES,
  ...STORED_LISTS.map((list) => LIST_TABLES[list]),
];
