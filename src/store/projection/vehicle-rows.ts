/**
 * Vehicles, rules and statements as rows.
 */

import { canonicalJson } from '../../domain/catalogue/canonical.js';
import type { Occupant, Vehicle } from '../../domain/catalogue/catalogue.js';
import type {
  RuleRecord,
  StatementRecord,
  VehicleRecord,
} from '../../domain/catalogue/document.js';
import { OWNED } from '../entity-tables.js';
import { rules, statements, vehicles } from '../tables/vehicles.js';
import { type EntityRows, entityRows, ownedRows } from './entity-rows.js';
import { found, type Projection } from './projection.js';

export function vehicleRows(record: VehicleRecord, projection: Projection): EntityRows {
  const vehicle = found(projection.catalogue.vehicles, record.id);
  const { make, model, variant, layout, evidence } = vehicle;
  const [builtFrom, builtUntil] = vehicle.built;
  const columns = {
    make,
    model,
    variant,
    builtFrom,
    builtUntil,
    layout: layout.id,
    basis: evidence.basis,
  };
  const facts = [...vehicle.facts].map(([fact, value]) => ({ fact, value }));
  const adapters = [...vehicle.adapters].flatMap(([mating, parts]) =>
    parts.map((part, ordinal) => ({ mating, ordinal, part })),
  );
  return entityRows(vehicles, record, columns, [
    ownedRows(OWNED.vehicleFacts, facts),
    ownedRows(OWNED.fittedParts, fittedRows(vehicle)),
    ownedRows(OWNED.fittedAdapters, adapters),
  ]);
}

/** What is not recorded has no row. */
function fittedRows(vehicle: Vehicle) {
  return [...vehicle.fitted].flatMap(([position, here]) => {
    const occupants: readonly (readonly ['none' | 'left' | 'right', Occupant])[] = here.hands
      ? [
          ['left', here.left],
          ['right', here.right],
        ]
      : [['none', here.occupant]];
    return occupants
      .filter(([, occupant]) => occupant.is !== 'as-found')
      .map(([hand, occupant]) => {
        return { position, hand, part: occupant.is === 'part' ? occupant.part : null };
      });
  });
}

export function ruleRows(record: RuleRecord, projection: Projection): EntityRows {
  const json = (value: unknown) => (value === undefined ? null : canonicalJson(value));
  return entityRows(rules, record, {
    layouts: json(record.layouts),
    condition: canonicalJson(record.when),
    needs: json(record.needs),
    excludes: json(record.excludes),
    note: projection.textOrNull(record.note),
    caution: projection.textOrNull(record.caution),
    because: projection.text(record.because),
    basis: projection.basis(record.evidence),
  });
}

export function statementRows(record: StatementRecord, projection: Projection): EntityRows {
  const { part, position, verdict } = record;
  const beside = canonicalJson(record.with ?? {});
  const basis = projection.basis(record.evidence);
  const listed = record.vehicles.map((vehicle, ordinal) => ({ ordinal, vehicle }));
  const columns = { part, position, beside, verdict, basis };
  return entityRows(statements, record, columns, [ownedRows(OWNED.statementVehicles, listed)]);
}
