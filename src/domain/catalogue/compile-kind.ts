/**
 * Compiles kinds and roles: the vocabulary that faces and parts are recorded in.
 */

import { compileChecks } from '../check/compile.js';
import { compileTerm, shapeOf, type Term } from '../check/term.js';
import type { ValueType } from '../quantity/quantity.js';
import { baseSymbol } from '../quantity/unit.js';
import type { Kind, Parameter, Role, RoleValue, ValueSpec } from './catalogue.js';
import type { KindRecord, RoleRecord, RoleValueRecord } from './document.js';
import { at, type FaultList } from './faults.js';
import { loseUnread, present, presentEntries } from './holes.js';
import { inside } from './lost-names.js';
import { kindScope, roleScope } from './scope.js';
import { compileSpec } from './value.js';

/** Words of an interface that no parameter can be called. */
export const INTERFACE_WORDS: readonly string[] = [
  'kind',
  'side',
  'optional',
  'absent',
  'evidence',
  'alternatives',
];

/** Compiles one kind; a built-in one with a fault is a mistake of the program. */
export function compileKind(
  record: KindRecord,
  isBuiltIn: boolean,
  pointer: string,
  list: FaultList,
): Kind {
  const sides = compileSides(record, pointer, list);
  const parameters = compileParameters(record, sides, pointer, list);
  const scope = kindScope(sides, parameters, {
    side: (name) => list.lost.has(inside('kinds', record.id, 'sides'), name),
    parameter: (name) =>
      list.lost.excuses(inside('kinds', record.id, 'parameters'), name, parameters.keys()),
  });
  return {
    id: record.id,
    name: record.name ?? record.id.replaceAll('-', ' '),
    standard: record.standard ?? null,
    sides,
    parameters,
    checks: compileChecks(record.checks, scope, at(pointer, 'checks'), list),
    notChecked: [...present(record.notChecked ?? [], '')].map(([text]) => text),
    caution: record.caution ?? null,
    isBuiltIn,
  };
}

function compileSides(
  record: KindRecord,
  kindPointer: string,
  list: FaultList,
): readonly [string, string] | null {
  const pointer = at(kindPointer, 'sides');
  const sides = record.sides ?? null;
  if (sides !== null && sides[0] === sides[1]) {
    const text = 'The two sides need two names; leave "sides" out where both ends are alike.';
    list.fault(pointer, 'same-sides', text);
  }
  if (sides === null && !list.isUnread(pointer)) {
    for (const [id, { of }] of presentEntries(record.parameters, '')) {
      if (of === undefined) continue;
      list.missing(kindPointer, 'sides', `"${id}" belongs to the side "${of}"`);
      break;
    }
  }
  if (!list.isTouched(pointer)) return sides;
  list.lost.addAll(inside('kinds', record.id, 'sides'));
  return null;
}

function compileParameters(
  record: KindRecord,
  sides: readonly [string, string] | null,
  kindPointer: string,
  list: FaultList,
): Map<string, Parameter> {
  const parameters = new Map<string, Parameter>();
  const pointer = at(kindPointer, 'parameters');
  const space = inside('kinds', record.id, 'parameters');
  if (list.isUnread(pointer)) list.lost.addAll(space);
  loseUnread(record.parameters, space, list);
  for (const [id, raw, place] of presentEntries(record.parameters, pointer)) {
    if (INTERFACE_WORDS.includes(id)) {
      const text = `"${id}" is a word of every interface and no parameter.`;
      list.fault(place, 'reserved-name', text);
    }
    const of = raw.of ?? null;
    const isKnown = of === null || (sides ?? []).some((side) => side === of);
    if (!isKnown) {
      const space = inside('kinds', record.id, 'sides');
      list.unknown(of, { sort: 'sides', space, pointer: at(place, 'of'), known: sides ?? [] });
    }
    const spec = compileSpec(id, raw, place, list);
    if (spec === null) {
      list.lost.add(space, id);
      continue;
    }
    const unless = [...present(raw.unless ?? [], '')].map(([other]) => other);
    const isOptional = raw.optional ?? false;
    parameters.set(id, { ...spec, of: isKnown ? of : null, isOptional, unless });
  }
  checkUnless(record, parameters, pointer, list);
  return parameters;
}

/** What does instead of a parameter is another that both faces may have. */
function checkUnless(
  record: KindRecord,
  parameters: ReadonlyMap<string, Parameter>,
  pointer: string,
  list: FaultList,
): void {
  const space = inside('kinds', record.id, 'parameters');
  for (const [id, { unless = [] }, place] of presentEntries(record.parameters, pointer)) {
    for (const [other, otherPlace] of present(unless, at(place, 'unless'))) {
      const known = parameters.keys();
      if (!parameters.has(other)) {
        list.unknown(other, { sort: 'parameters', space, pointer: otherPlace, known });
      } else if (other === id) {
        list.fault(otherPlace, 'circle', `"${id}" cannot stand in for itself.`);
      }
    }
  }
}

export function compileRole(record: RoleRecord, pointer: string, list: FaultList): Role {
  const place = at(pointer, 'faces');
  if (list.isTouched(place)) list.lost.addAll(inside('roles', record.id, 'faces'));
  const faces = record.faces === undefined ? null : [...present(record.faces, place)];
  return {
    id: record.id,
    name: record.name,
    caution: record.caution ?? null,
    faces: faces === null ? null : new Set(faces.map(([face]) => face)),
    values: compileRoleValues(record, at(pointer, 'values'), list),
  };
}

function compileRoleValues(
  record: RoleRecord,
  pointer: string,
  list: FaultList,
): Map<string, RoleValue> {
  const values = new Map<string, RoleValue>();
  const recorded = new Map<string, ValueSpec>();
  const space = inside('roles', record.id, 'values');
  const records = record.values ?? {};
  if (list.isUnread(pointer)) list.lost.addAll(space);
  loseUnread(records, space, list);
  const entries = [...presentEntries(records, pointer)];
  for (const [id, raw, place] of entries) {
    if (id === 'part' || id === 'role') {
      const text = `"${id}" means the part or role itself; call the value something else.`;
      list.fault(place, 'reserved-name', text);
    }
    if (raw.term !== undefined) continue;
    const value = compileRecordedValue(id, raw, place, list);
    if (value === null) {
      list.lost.add(space, id);
      continue;
    }
    recorded.set(id, value);
    values.set(id, value);
  }
  const scope = roleScope(recorded, (name) => list.lost.excuses(space, name, recorded.keys()));
  for (const [id, raw, place] of entries) {
    if (raw.term === undefined) continue;
    const term = compileTerm(raw.term, scope, at(place, 'term'), list);
    const value = compileDerivedValue(id, raw, term, place, list);
    if (value === null) list.lost.add(space, id);
    else values.set(id, value);
  }
  return values;
}

function compileRecordedValue(
  id: string,
  raw: RoleValueRecord,
  pointer: string,
  list: FaultList,
): RoleValue | null {
  if (raw.type === undefined && !list.isUnread(at(pointer, 'type'))) {
    list.missing(pointer, 'type', 'code, count, designation, ratio or measured; or a "term"');
  }
  // A type that cannot be read stands in for none, so that the rest of the record is looked at.
  const type: ValueType = raw.type ?? 'code';
  const spec = compileSpec(id, { ...raw, type }, pointer, list);
  if (spec === null) return null;
  if (raw.askedAs === 'torque' && spec.dimension !== 'torque') {
    const text = 'A question gives "torque" in N.m, so this value must be a torque.';
    list.fault(at(pointer, 'askedAs'), 'wrong-dimension', text);
    return null;
  }
  if (list.isUnread(at(pointer, 'list'))) return null;
  const isList = raw.list ?? false;
  const isRating = raw.rating ?? false;
  return { ...spec, isList, isRating, term: null, askedAs: raw.askedAs ?? null };
}

function compileDerivedValue(
  id: string,
  raw: RoleValueRecord,
  term: Term | null,
  pointer: string,
  list: FaultList,
): RoleValue | null {
  for (const key of ['type', 'unit', 'tool', 'usual', 'list', 'askedAs'] as const) {
    if (raw[key] === undefined) continue;
    const text = `A derived value takes its ${key} from its term; leave "${key}" out.`;
    list.fault(at(pointer, key), 'not-for-derived', text);
  }
  if (term === null) return null;
  const shape = shapeOf(term);
  if (shape.is !== 'number') {
    const text = 'A derived value is one number, such as {"max": "gears"}.';
    list.fault(at(pointer, 'term'), 'not-a-number', text);
    return null;
  }
  const { dimension } = shape;
  const type = dimension === '1' ? 'ratio' : 'measured';
  const name = raw.name ?? null;
  const isRating = raw.rating ?? false;
  const none = { usual: null, tool: null, isList: false, askedAs: null } as const;
  return { id, name, type, dimension, unit: baseSymbol(dimension), ...none, isRating, term };
}
