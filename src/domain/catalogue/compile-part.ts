/**
 * Compiles parts: their faces against the kinds, their values against their roles. What a role
 * declares and a part omits is not recorded; what neither knows is a fault.
 */

import type { Evidence, Face, Kind, Part, Role, Value, Values } from './catalogue.js';
import { circlesOf } from './circles.js';
import { compileFace } from './compile-face.js';
import type { PartRecord, ValueRecord } from './document.js';
import { evidenceWithin } from './evidence-within.js';
import { at, type FaultList } from './faults.js';
import { namedEntries, present } from './holes.js';
import { inside } from './lost-names.js';
import { isId } from './read-text.js';
import { compileValue } from './value.js';

export { compileFace } from './compile-face.js';

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
  const evidence = evidenceWithin(inherited, record.evidence);
  const roles = compileRoles(record, names, at(pointer, 'roles'), list);
  const successor = record.supersededBy ?? null;
  if (successor !== null && !names.partIds.has(successor)) {
    const place = at(pointer, 'supersededBy');
    list.unknown(successor, { sort: 'parts', pointer: place, known: names.partIds });
  }
  checkMonths(record.built, at(pointer, 'built'), list);
  const [from = null, until = null] = record.built ?? [];
  return {
    id: record.id,
    roles: [...present(record.roles, '')].map(([role]) => role),
    name: record.name,
    maker: record.maker ?? null,
    numbers: [...present(record.numbers ?? [], '')].map(([number]) => number),
    built: [from, until],
    supersededBy: successor,
    hand: record.hand ?? null,
    spans: compileSpans(record, at(pointer, 'spans'), list),
    faces: compileFaces(record, roles, names, evidence, at(pointer, 'interfaces'), list),
    values: compileOwnValues(record, roles, evidence, at(pointer, 'values'), list),
    evidence,
  };
}

/** First and last month, where both are known. */
export function checkMonths(
  built: readonly [string | null, string | null] | undefined,
  pointer: string,
  list: FaultList,
): void {
  const [from = null, until = null] = built ?? [];
  if (from === null || until === null || from <= until) return;
  list.fault(pointer, 'empty-range', 'The first month comes first.');
}

interface Roles {
  readonly known: readonly Role[];
  /** Some role cannot be read or is not known, so nobody can say what the part may have. */
  readonly isPartly: boolean;
}

function compileRoles(
  record: PartRecord,
  names: PartNames,
  pointer: string,
  list: FaultList,
): Roles {
  for (const [role, place] of present(record.roles, pointer)) {
    if (names.roleIds.has(role)) continue;
    list.unknown(role, { sort: 'roles', pointer: place, known: names.roleIds });
  }
  const known = record.roles.flatMap((role) => names.roles.get(role) ?? []);
  const isPartly = list.isTouched(pointer) || known.length < record.roles.length;
  if (isPartly) list.lost.addAll(inside('parts', record.id, 'roles'));
  return { known, isPartly };
}

/** Null where they cannot all be read: then nothing is said of where the part must stand. */
function compileSpans(
  record: PartRecord,
  pointer: string,
  list: FaultList,
): readonly string[] | null {
  return record.spans === undefined || list.isTouched(pointer) ? null : record.spans;
}

function compileFaces(
  record: PartRecord,
  roles: Roles,
  names: PartNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Map<string, Face> {
  const faces = new Map<string, Face>();
  const space = inside('parts', record.id, 'faces');
  const records = record.interfaces ?? {};
  if (list.isUnread(pointer) || Object.keys(records).some((name) => !isId(name))) {
    list.lost.addAll(space);
  }
  for (const [name, raw, place] of namedEntries(records, pointer)) {
    checkFaceName(name, roles, place, list);
    const face = raw === undefined ? null : compileFace(name, raw, names, inherited, place, list);
    if (face === null) list.lost.add(space, name);
    else faces.set(name, face);
  }
  return faces;
}

/** Where every role of a part lists its faces, the part has no others. */
function checkFaceName(name: string, roles: Roles, pointer: string, list: FaultList): void {
  const { known, isPartly } = roles;
  if (isPartly || known.some(({ faces }) => faces === null)) return;
  if (known.some(({ id }) => list.lost.has(inside('roles', id, 'faces'), name))) return;
  const listed = new Set(known.flatMap(({ faces }) => [...(faces ?? [])]));
  if (listed.has(name)) return;
  const text = `No role of this part has a face "${name}".${list.guess(name, listed)}`;
  list.fault(pointer, 'unknown-face', text);
}

function compileOwnValues(
  record: PartRecord,
  roles: Roles,
  evidence: Evidence,
  pointer: string,
  list: FaultList,
): Values {
  const values = new Map<string, Value>();
  for (const [id, raw, place] of namedEntries(record.values ?? {}, pointer)) {
    const value = compileOwnValue([id, raw, place], roles, evidence, list);
    if (value !== null) values.set(id, value);
  }
  return values;
}

/** A value that roles declare; null where it has a fault, or is not there. */
export function compileOwnValue(
  [id, raw, place]: readonly [id: string, raw: ValueRecord | undefined, pointer: string],
  roles: Roles,
  evidence: Evidence,
  list: FaultList,
): Value | null {
  const spec = roles.known.flatMap((role) => role.values.get(id) ?? [])[0];
  if (spec === undefined) {
    if (!isLostValue(id, roles, list)) sayUnknownValue(id, roles, place, list);
    return null;
  }
  if (spec.term !== null) {
    const text = `"${id}" is derived from other values and never recorded.`;
    list.fault(place, 'derived-value', text);
    return null;
  }
  return raw === undefined ? null : compileValue(raw, spec, evidence, place, list);
}

function isLostValue(id: string, { known, isPartly }: Roles, list: FaultList): boolean {
  return (
    isPartly ||
    known.some((role) =>
      list.lost.excuses(inside('roles', role.id, 'values'), id, role.values.keys()),
    )
  );
}

function sayUnknownValue(id: string, { known }: Roles, pointer: string, list: FaultList): void {
  const words = known.flatMap((role) => [...role.values.keys()]);
  const text = `No role of this part has a value "${id}".${list.guess(id, words)}`;
  list.fault(pointer, 'unknown-value', text);
}

/** Parts that took one another's place in a circle have no last one to offer. */
export function checkSuccession(
  parts: ReadonlyMap<string, Part>,
  pointers: ReadonlyMap<string, string>,
  list: FaultList,
): void {
  const successors = [...parts].map(([id, { supersededBy }]) => {
    return [id, supersededBy === null ? [] : [supersededBy]] as const;
  });
  for (const circle of circlesOf(new Map(successors))) {
    const text = `These parts took one another's place: ${circle.join(', ')}.`;
    const place = pointers.get(circle[0] ?? '') ?? '/parts';
    list.fault(at(place, 'supersededBy'), 'circle', text);
  }
}
