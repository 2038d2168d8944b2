/**
 * Compiles parts: their faces against the kinds, their values against their roles. What a role
 * declares and a part omits is not recorded; what neither knows is a fault.
 */

import type { Evidence, Face, Kind, Part, Role, Value, Values } from './catalogue.js';
import type { InterfaceRecord, PartRecord, ValueRecord } from './document.js';
import { at, type FaultList, hint } from './faults.js';
import { compileValue } from './value.js';

const INTERFACE_FIELDS = ['kind', 'side', 'optional', 'absent', 'evidence', 'alternatives'];

export interface PartNames {
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly kindIds: ReadonlySet<string>;
  readonly roles: ReadonlyMap<string, Role>;
  readonly roleIds: ReadonlySet<string>;
  readonly partIds: ReadonlySet<string>;
}

export function compilePart(
  record: PartRecord,
  names: PartNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Part {
  const evidence = { ...inherited, ...record.evidence };
  for (const [index, role] of record.roles.entries()) {
    if (names.roleIds.has(role)) continue;
    const text = `There is no role "${role}".${hint(role, names.roleIds)}`;
    list.fault(at(at(pointer, 'roles'), index), 'unknown-role', text);
  }
  const successor = record.supersededBy ?? null;
  if (successor !== null && !names.partIds.has(successor)) {
    const text = `There is no part "${successor}".${hint(successor, names.partIds)}`;
    list.fault(at(pointer, 'supersededBy'), 'unknown-part', text);
  }
  const roles = record.roles.flatMap((role) => names.roles.get(role) ?? []);
  return {
    id: record.id,
    roles: record.roles,
    name: record.name,
    maker: record.maker ?? null,
    numbers: record.numbers ?? [],
    supersededBy: successor,
    hand: record.hand ?? null,
    spans: record.spans ?? null,
    faces: compileFaces(record, roles, names, evidence, at(pointer, 'interfaces'), list),
    values: compileOwnValues(record, roles, evidence, at(pointer, 'values'), list),
    evidence,
  };
}

function compileFaces(
  record: PartRecord,
  roles: readonly Role[],
  names: PartNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Map<string, Face> {
  const faces = new Map<string, Face>();
  const known = roles.every((role) => role.faces !== null)
    ? new Set(roles.flatMap((role) => [...(role.faces ?? [])]))
    : null;
  for (const [name, raw] of Object.entries(record.interfaces ?? {})) {
    const place = at(pointer, name);
    if (known !== null && roles.length > 0 && !known.has(name)) {
      const text = `No role of this part has a face "${name}".${hint(name, known)}`;
      list.fault(place, 'unknown-face', text);
    }
    const face = compileFace(name, raw, names, inherited, place, list);
    if (face !== null) faces.set(name, face);
  }
  return faces;
}

/** Compiles one face; also used for faces given in a question. */
export function compileFace(
  name: string,
  raw: InterfaceRecord,
  names: Pick<PartNames, 'kinds' | 'kindIds'>,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Face | null {
  const evidence = { ...inherited, ...raw.evidence };
  const isOptional = raw.optional ?? false;
  if (raw.absent === true) return compileAbsent(name, raw, evidence, pointer, list);
  if (raw.kind === undefined) {
    const text = '"kind" is missing: which kind of interface this is; or {"absent": true}.';
    list.fault(pointer, 'missing-field', text);
    return null;
  }
  const kind = names.kinds.get(raw.kind);
  if (kind === undefined) {
    if (!names.kindIds.has(raw.kind)) {
      const text = `There is no kind "${raw.kind}".${hint(raw.kind, names.kindIds)}`;
      list.fault(at(pointer, 'kind'), 'unknown-kind', text);
    }
    return null;
  }
  const side = compileSide(raw, kind, pointer, list);
  const common = valueRecords(raw);
  const given = raw.alternatives ?? [{}];
  const alternatives = given.map((own, index) => {
    const place = raw.alternatives === undefined ? null : at(at(pointer, 'alternatives'), index);
    const whole = { ...common, ...own };
    const pointerOf = (key: string) =>
      at(place !== null && Object.hasOwn(own, key) ? place : pointer, key);
    return compileParameters(whole, kind, side, evidence, pointerOf, list);
  });
  return { name, isOptional, isAbsent: false, kind, side, alternatives, evidence };
}

function compileAbsent(
  name: string,
  raw: InterfaceRecord,
  evidence: Evidence,
  pointer: string,
  list: FaultList,
): Face {
  for (const key of Object.keys(raw)) {
    if (key === 'absent' || key === 'evidence') continue;
    const text = `A face that is absent has no "${key}".`;
    list.fault(at(pointer, key), 'absent-face', text);
  }
  const none = { kind: null, side: null, alternatives: [] };
  return { name, isOptional: false, isAbsent: true, ...none, evidence };
}

function compileSide(
  raw: InterfaceRecord,
  kind: Kind,
  pointer: string,
  list: FaultList,
): string | null {
  const { side } = raw;
  if (kind.sides === null) {
    if (side !== undefined) {
      const text = `Both ends of "${kind.id}" are alike; leave "side" out.`;
      list.fault(at(pointer, 'side'), 'side-not-wanted', text);
    }
    return null;
  }
  if (side !== undefined && kind.sides.includes(side)) return side;
  const words = kind.sides.map((word) => `"${word}"`).join(' or ');
  if (side === undefined) {
    list.fault(pointer, 'missing-field', `"side" is missing: ${words}.`);
  } else {
    const text = `"${kind.id}" has no side "${side}": it is ${words}.${hint(side, kind.sides)}`;
    list.fault(at(pointer, 'side'), 'unknown-side', text);
  }
  return null;
}

function valueRecords(raw: InterfaceRecord): Record<string, ValueRecord> {
  const own = Object.entries(raw).filter(([key]) => !INTERFACE_FIELDS.includes(key));
  return Object.fromEntries(own) as Record<string, ValueRecord>;
}

function compileParameters(
  records: Readonly<Record<string, ValueRecord>>,
  kind: Kind,
  side: string | null,
  evidence: Evidence,
  pointerOf: (key: string) => string,
  list: FaultList,
): Values {
  const values = new Map<string, Value>();
  for (const [id, record] of Object.entries(records)) {
    const parameter = kind.parameters.get(id);
    const place = pointerOf(id);
    if (parameter === undefined) {
      const text = `"${kind.id}" has no parameter "${id}".${hint(id, kind.parameters.keys())}`;
      list.fault(place, 'unknown-parameter', text);
      continue;
    }
    if (parameter.of !== null && side !== null && parameter.of !== side) {
      const text = `"${id}" belongs to the side "${parameter.of}", and this is "${side}".`;
      list.fault(place, 'other-side', text);
      continue;
    }
    const value = compileValue(record, parameter, evidence, place, list);
    if (value !== null) values.set(id, value);
  }
  return values;
}

function compileOwnValues(
  record: PartRecord,
  roles: readonly Role[],
  evidence: Evidence,
  pointer: string,
  list: FaultList,
): Values {
  const values = new Map<string, Value>();
  for (const [id, raw] of Object.entries(record.values ?? {})) {
    const place = at(pointer, id);
    const spec = roles.map((role) => role.values.get(id)).find((found) => found !== undefined);
    if (spec === undefined) {
      if (roles.length < record.roles.length) continue;
      const known = roles.flatMap((role) => [...role.values.keys()]);
      const text = `No role of this part has a value "${id}".${hint(id, known)}`;
      list.fault(place, 'unknown-value', text);
      continue;
    }
    if (spec.term !== null) {
      const text = `"${id}" is derived from other values and never recorded.`;
      list.fault(place, 'derived-value', text);
      continue;
    }
    const value = compileValue(raw, spec, evidence, place, list);
    if (value !== null) values.set(id, value);
  }
  return values;
}
