/**
 * The head of a document, facts, kinds and roles as rows.
 */

import { canonicalJson } from '../../domain/catalogue/canonical.js';
import type {
  CatalogueDocument,
  FactRecord,
  KindRecord,
  RoleRecord,
} from '../../domain/catalogue/document.js';
import { HEAD_ID, OWNED, STORED_LISTS } from '../entity-tables.js';
import { documents, facts, kinds, roles } from '../tables/vocabulary.js';
import { type EntityRows, entityRows, ownedRows } from './entity-rows.js';
import { found, type Projection } from './projection.js';
import { specColumns } from './value-rows.js';

/** All of the document but its lists; its record has no id, for the document has none. */
export function headRows(document: CatalogueDocument): EntityRows {
  const lists: readonly string[] = [...STORED_LISTS, 'offers'];
  const fields = Object.entries(document).filter(([key]) => !lists.includes(key));
  const head = Object.fromEntries(fields);
  const { lang, currency = null, evidence, couplings } = document;
  const columns = {
    lang,
    currency,
    basis: evidence.basis,
    evidence: canonicalJson(evidence),
    couplings: couplings === undefined ? null : canonicalJson(couplings),
  };
  const rows = entityRows(documents, { id: HEAD_ID }, columns);
  return { ...rows, record: canonicalJson(head) };
}

export function factRows(record: FactRecord, projection: Projection): EntityRows {
  const { name, how } = record;
  const values = record.values.map((value, ordinal) => {
    return { ordinal, value: value.id, name: projection.text(value.name) };
  });
  const columns = { name: projection.text(name), how: projection.textOrNull(how) };
  return entityRows(facts, record, columns, [ownedRows(OWNED.factValues, values)]);
}

export function kindRows(record: KindRecord, projection: Projection): EntityRows {
  const kind = found(projection.catalogue.kinds, record.id);
  const [firstSide = null, secondSide = null] = kind.sides ?? [];
  const { standard, caution } = kind;
  const name = projection.text(kind.name);
  const parameters = [...kind.parameters.values()].map((parameter) => ({
    parameter: parameter.id,
    ...specColumns(parameter, projection.textOrNull(parameter.name)),
    ofSide: parameter.of,
    optional: parameter.isOptional,
  }));
  const columns = { name, standard, firstSide, secondSide, caution };
  return entityRows(kinds, record, columns, [ownedRows(OWNED.kindParameters, parameters)]);
}

export function roleRows(record: RoleRecord, projection: Projection): EntityRows {
  const role = found(projection.catalogue.roles, record.id);
  const values = [...role.values.values()].map((value) => ({
    value: value.id,
    ...specColumns(value, projection.textOrNull(value.name)),
    list: value.isList,
    rating: value.isRating,
    derived: value.term !== null,
    askedAs: value.askedAs,
  }));
  const columns = {
    name: projection.text(role.name),
    caution: role.caution,
    faces: record.faces === undefined ? null : canonicalJson(record.faces),
  };
  return entityRows(roles, record, columns, [ownedRows(OWNED.roleValues, values)]);
}
