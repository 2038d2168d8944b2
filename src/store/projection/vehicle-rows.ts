/**
 * Vehicles, rules and statements as rows.
 */

import { canonicalJson } from '../../domain/catalogue/canonical.js';
import type { Occupant, Vehicle, WorksOption } from '../../domain/catalogue/catalogue.js';
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
  const { like, replacedBy } = vehicle;
  const columns = {
    make,
    model,
    variant,
    builtFrom,
    builtUntil,
    layout: layout.id,
    basis: evidence.basis,
    like,
    replacedBy: replacedBy.length === 0 ? null : canonicalJson(replacedBy),
  };
  const facts = [...vehicle.facts].map(([fact, value]) => ({ fact, value }));
  const adapters = [...vehicle.adapters].flatMap(([mating, parts]) =>
    parts.map((part, ordinal) => ({ mating, ordinal, part })),
  );
  return entityRows(vehicles, record, columns, [
    ownedRows(OWNED.vehicleFacts, facts),
    ownedRows(OWNED.vehicleVins, vinRows(record)),
    ownedRows(OWNED.fittedParts, fittedRows(vehicle)),
    ownedRows(OWNED.fittedOptions, optionRows(vehicle)),
    ownedRows(OWNED.fittedAdapters, adapters),
  ]);
}

function vinRows({ vin = [] }: VehicleRecord) {
  return vin.map((one, ordinal) => {
    if (typeof one === 'string') return { ordinal, pattern: one, serialFrom: null, serialTo: null };
    return { ordinal, pattern: one.pattern, serialFrom: one.from, serialTo: one.to };
  });
}

interface Seat {
  readonly position: string;
  readonly hand: 'none' | 'left' | 'right';
  readonly occupant: Occupant | WorksOption;
}

function seatsOf(vehicle: Vehicle): Seat[] {
  return [...vehicle.fitted].flatMap(([position, here]): Seat[] => {
    if (!here.hands) return [{ position, hand: 'none', occupant: here.occupant }];
    const { left, right } = here;
    return [
      { position, hand: 'left', occupant: left },
      { position, hand: 'right', occupant: right },
    ];
  });
}

const partOf = (occupant: Occupant) => (occupant.is === 'part' ? occupant.part : null);

/** What is not recorded has no row. */
function fittedRows(vehicle: Vehicle) {
  return seatsOf(vehicle).flatMap(({ position, hand, occupant }) => {
    if (occupant.is === 'as-found' || occupant.is === 'option') return [];
    return [{ position, hand, part: partOf(occupant) }];
  });
}

function optionRows(vehicle: Vehicle) {
  return seatsOf(vehicle).flatMap(({ position, hand, occupant }) => {
    if (occupant.is !== 'option') return [];
    const { fact, by } = occupant;
    return [...by].map(([value, one]) => ({ position, hand, fact, value, part: partOf(one) }));
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
    recommends: json(record.recommends),
    consumes: json(record.consumes),
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
