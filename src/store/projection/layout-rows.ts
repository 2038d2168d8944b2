/**
 * A layout as rows.
 */

import { canonicalJson } from '../../domain/catalogue/canonical.js';
import type { Layout, Mating, Position } from '../../domain/catalogue/catalogue.js';
import type { LayoutRecord } from '../../domain/catalogue/document.js';
import { exactText, type Rational } from '../../domain/quantity/rational.js';
import { OWNED } from '../entity-tables.js';
import { layouts } from '../tables/layouts.js';
import { type EntityRows, entityRows, ownedRows } from './entity-rows.js';
import { found, type Projection } from './projection.js';

export function layoutRows(record: LayoutRecord, projection: Projection): EntityRows {
  const layout = found(projection.catalogue.layouts, record.id);
  const { unmated } = layout;
  const columns = { name: projection.textOrNull(layout.name), unmated };
  const places = [...layout.positions.values()];
  const shared = new Set((record.matings ?? []).filter((one) => one.shared).map(({ id }) => id));
  return entityRows(layouts, record, columns, [
    ownedRows(
      OWNED.positions,
      places.map((position, ordinal) => positionRow(position, ordinal, projection)),
    ),
    ownedRows(
      OWNED.positionRoles,
      places.flatMap(({ id, roles }) => {
        return roles.map((role, ordinal) => ({ position: id, ordinal, role }));
      }),
    ),
    ownedRows(
      OWNED.matings,
      [...layout.matings.values()].map((mating, ordinal) => {
        return { ...matingRow(mating, ordinal), shared: shared.has(mating.id) };
      }),
    ),
    ownedRows(OWNED.layoutChecks, checkRows(layout, record, projection)),
  ]);
}

function positionRow(position: Position, ordinal: number, projection: Projection) {
  return {
    position: position.id,
    ordinal,
    name: projection.text(position.name),
    count: position.count,
    handed: position.isHanded,
    optional: position.isOptional,
    behind: canonicalJson(position.behind),
    labourHours: hours(position.labour),
    accessHours: hours(position.access),
  };
}

function hours(time: Rational | null): string | null {
  return time === null ? null : exactText(time);
}

function matingRow(mating: Mating, ordinal: number) {
  const [first, second] = mating.ends;
  return {
    mating: mating.id,
    ordinal,
    firstPosition: first.position,
    firstInterface: first.interface,
    secondPosition: second.position,
    secondInterface: second.interface,
    adapters: mating.adapters,
    quantity: mating.quantity,
    handed: mating.isHanded,
  };
}

function checkRows(layout: Layout, record: LayoutRecord, projection: Projection) {
  return layout.checks.map(({ id, spelling, severity, code, text }, ordinal) => ({
    check: id,
    ordinal,
    spelling,
    severity,
    code,
    text: projection.textOrNull(text),
    source: canonicalJson(record.checks?.[ordinal]),
  }));
}
