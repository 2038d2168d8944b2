/**
 * Lots, works and rulesets as rows.
 */

import { canonicalJson } from '../../domain/catalogue/canonical.js';
import type { LotRecord, RulesetRecord, WorkRecord } from '../../domain/catalogue/document.js';
import type { LotItem } from '../../domain/catalogue/trade.js';
import { exactText } from '../../domain/quantity/rational.js';
import { baseSymbol } from '../../domain/quantity/unit.js';
import { OWNED } from '../entity-tables.js';
import { lots, rulesets, works } from '../tables/trade.js';
import { type EntityRows, entityRows, ownedRows } from './entity-rows.js';
import { found, type Projection } from './projection.js';
import { ownValueRows, valueRows } from './value-rows.js';

export function lotRows(record: LotRecord, projection: Projection): EntityRows {
  const lot = found(projection.catalogue.lots, record.id);
  const items = lot.contains.map((item, ordinal) => ({ ordinal, ...itemCells(item) }));
  const columns = { name: projection.textOrNull(lot.name) };
  return entityRows(lots, record, columns, [ownedRows(OWNED.lotItems, items)]);
}

function itemCells(item: LotItem) {
  if (item.is === 'position') {
    const { vehicle, position } = item;
    return { part: null, quantity: null, unit: null, vehicle, position };
  }
  const { value, dimension } = item.amount;
  const amount = { quantity: exactText(value), unit: baseSymbol(dimension) };
  return { part: item.part, ...amount, vehicle: null, position: null };
}

export function workRows(record: WorkRecord, projection: Projection): EntityRows {
  const work = found(projection.catalogue.works, record.id);
  const { gives, voids, labour, signOff, isReversible, evidence } = work;
  const columns = {
    name: projection.text(work.name),
    condition: canonicalJson(record.on),
    voids: canonicalJson(voids),
    labourHours: labour === null ? null : exactText(labour),
    signOff,
    reversible: isReversible,
    basis: evidence.basis,
  };
  const parameters = [...gives.interfaces].flatMap(([face, values]) =>
    [...values].flatMap(([parameter, value]) =>
      valueRows(value).map((row) => ({ interface: face, parameter, ...row })),
    ),
  );
  return entityRows(works, record, columns, [
    ownedRows(OWNED.workParameters, parameters),
    ownedRows(OWNED.workValues, ownValueRows(gives.values)),
  ]);
}

export function rulesetRows(record: RulesetRecord, projection: Projection): EntityRows {
  const { name, valid, cite } = found(projection.catalogue.rulesets, record.id);
  const { keep = [], checks = [] } = record.demands;
  const [validFrom, validUntil] = valid;
  const columns = { name: projection.textOrNull(name), validFrom, validUntil, cite };
  const sources = checks.map((check, ordinal) => ({ ordinal, source: canonicalJson(check) }));
  return entityRows(rulesets, record, { ...columns, keep: canonicalJson(keep) }, [
    ownedRows(OWNED.rulesetChecks, sources),
  ]);
}
