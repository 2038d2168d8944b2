/**
 * A part as rows: its roles and numbers as they are written, its faces and values as they are
 * understood.
 */

import { canonicalJson } from '../../domain/catalogue/canonical.js';
import type { Face, Part } from '../../domain/catalogue/catalogue.js';
import type { PartRecord } from '../../domain/catalogue/document.js';
import { OWNED } from '../entity-tables.js';
import { parts } from '../tables/parts.js';
import { type EntityRows, entityRows, ownedRows } from './entity-rows.js';
import { found, type Projection } from './projection.js';
import { ownValueRows, valueRows } from './value-rows.js';

export function partRows(record: PartRecord, projection: Projection): EntityRows {
  const part = found(projection.catalogue.parts, record.id);
  const { maker, hand, supersededBy, spans, built } = part;
  const [builtFrom, builtUntil] = built;
  const columns = {
    name: projection.text(part.name),
    maker,
    hand,
    supersededBy,
    builtFrom,
    builtUntil,
    spans: spans === null ? null : canonicalJson(spans),
    basis: part.evidence.basis,
  };
  const roles = part.roles.map((role, ordinal) => ({ ordinal, role }));
  const numbers = part.numbers.map(({ number, of }, ordinal) => ({
    ordinal,
    number,
    numberOf: of,
  }));
  return entityRows(parts, record, columns, [
    ownedRows(OWNED.partRoles, roles),
    ownedRows(OWNED.partNumbers, numbers),
    ownedRows(OWNED.interfaces, [...part.faces.values()].flatMap(interfaceRows)),
    ownedRows(OWNED.interfaceParameters, parameterRows(part)),
    ownedRows(OWNED.partValues, ownValueRows(part.values)),
  ]);
}

/** A face that is absent has no alternatives, but a row that says so. */
function interfaceRows(face: Face) {
  const count = Math.max(1, face.alternatives.length);
  return Array.from({ length: count }, (_, alternative) => ({
    interface: face.name,
    alternative,
    kind: face.kind?.id ?? null,
    side: face.side,
    optional: face.isOptional,
    absent: face.isAbsent,
    basis: face.evidence.basis,
  }));
}

function parameterRows(part: Part) {
  return [...part.faces.values()].flatMap((face) =>
    face.alternatives.flatMap((values, alternative) =>
      [...values].flatMap(([parameter, value]) =>
        valueRows(value).map((row) => ({ interface: face.name, alternative, parameter, ...row })),
      ),
    ),
  );
}
