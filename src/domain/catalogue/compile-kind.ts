/**
 * Compiles kinds and roles: the vocabulary that faces and parts are recorded in.
 */

import type { Check } from '../check/check.js';
import { compileCheck } from '../check/compile.js';
import { compileTerm, shapeOf } from '../check/term.js';
import { baseSymbol } from '../quantity/unit.js';
import type { Kind, Parameter, Role, RoleValue, ValueSpec } from './catalogue.js';
import type { KindRecord, RoleRecord, RoleValueRecord } from './document.js';
import { at, type FaultList, hint } from './faults.js';
import { kindScope, roleScope } from './scope.js';
import { compileSpec } from './value.js';

/** Words of an interface that no parameter can be called. */
const INTERFACE_WORDS = ['kind', 'side', 'optional', 'absent', 'evidence', 'alternatives'];

/** Compiles one kind; a built-in one with a fault is a mistake of the program. */
export function compileKind(
  record: KindRecord,
  isBuiltIn: boolean,
  pointer: string,
  list: FaultList,
): Kind {
  const sides = record.sides ?? null;
  if (sides !== null && sides[0] === sides[1]) {
    const text = 'The two sides need two names; leave "sides" out where both ends are alike.';
    list.fault(at(pointer, 'sides'), 'same-sides', text);
  }
  const parameters = compileParameters(record, sides, at(pointer, 'parameters'), list);
  const scope = kindScope(sides, parameters);
  const checks: Check[] = [];
  for (const [index, raw] of record.checks.entries()) {
    const place = at(at(pointer, 'checks'), index);
    const check = compileCheck(raw, scope, place, list);
    if (check === null) continue;
    if (checks.some(({ id }) => id === check.id)) {
      const text = `Two checks are called "${check.id}"; give one an "id" of its own.`;
      list.fault(place, 'duplicate-id', text);
    }
    checks.push(check);
  }
  return {
    id: record.id,
    name: record.name ?? record.id.replaceAll('-', ' '),
    standard: record.standard ?? null,
    sides,
    parameters,
    checks,
    notChecked: record.notChecked ?? [],
    caution: record.caution ?? null,
    isBuiltIn,
  };
}

function compileParameters(
  record: KindRecord,
  sides: readonly [string, string] | null,
  pointer: string,
  list: FaultList,
): Map<string, Parameter> {
  const parameters = new Map<string, Parameter>();
  for (const [id, raw] of Object.entries(record.parameters)) {
    const place = at(pointer, id);
    if (INTERFACE_WORDS.includes(id)) {
      const text = `"${id}" is a word of every interface and no parameter.`;
      list.fault(place, 'reserved-name', text);
    }
    const of = raw.of ?? null;
    if (of !== null && !(sides ?? []).some((side) => side === of)) {
      const text = `There is no side "${of}".${hint(of, sides ?? [])}`;
      list.fault(at(place, 'of'), 'unknown-side', text);
    }
    const spec = compileSpec(id, raw, place, list);
    parameters.set(id, { ...spec, of, isOptional: raw.optional ?? false });
  }
  return parameters;
}

export function compileRole(record: RoleRecord, pointer: string, list: FaultList): Role {
  const values = new Map<string, RoleValue>();
  const specs = new Map<string, ValueSpec>();
  const place = at(pointer, 'values');
  const entries = Object.entries(record.values ?? {});
  for (const [id, raw] of entries) {
    if (raw.term !== undefined) continue;
    const value = compileRecordedValue(id, raw, at(place, id), list);
    if (value === null) continue;
    specs.set(id, value);
    values.set(id, value);
  }
  for (const [id, raw] of entries) {
    if (raw.term === undefined) continue;
    const value = compileDerivedValue(id, raw, specs, at(place, id), list);
    if (value !== null) values.set(id, value);
  }
  for (const id of ['part', 'role'].filter((word) => values.has(word))) {
    const text = `"${id}" means the part or role itself; call the value something else.`;
    list.fault(at(place, id), 'reserved-name', text);
  }
  return {
    id: record.id,
    name: record.name,
    caution: record.caution ?? null,
    faces: record.faces === undefined ? null : new Set(record.faces),
    values,
  };
}

function compileRecordedValue(
  id: string,
  raw: RoleValueRecord,
  pointer: string,
  list: FaultList,
): RoleValue | null {
  const { type } = raw;
  if (type === undefined) {
    const text = '"type" is missing: code, count, designation, ratio or measured; or a "term".';
    list.fault(pointer, 'missing-field', text);
    return null;
  }
  const spec = compileSpec(id, { ...raw, type }, pointer, list);
  const isList = raw.list ?? false;
  if (raw.askedAs === 'torque' && spec.dimension !== 'torque') {
    const text = 'A question gives "torque" in N.m, so this value must be a torque.';
    list.fault(at(pointer, 'askedAs'), 'wrong-dimension', text);
  }
  const isRating = raw.rating ?? false;
  return { ...spec, isList, isRating, term: null, askedAs: raw.askedAs ?? null };
}

function compileDerivedValue(
  id: string,
  raw: RoleValueRecord,
  specs: ReadonlyMap<string, ValueSpec>,
  pointer: string,
  list: FaultList,
): RoleValue | null {
  for (const key of ['type', 'unit', 'tool', 'usual', 'list', 'askedAs'] as const) {
    if (raw[key] === undefined) continue;
    const text = `A derived value takes its ${key} from its term; leave "${key}" out.`;
    list.fault(at(pointer, key), 'not-for-derived', text);
  }
  const term = compileTerm(raw.term, roleScope(specs), at(pointer, 'term'), list);
  if (term === null) return null;
  const shape = shapeOf(term);
  if (shape.is !== 'number') {
    const text = 'A derived value is one number, such as {"max": "gears"}.';
    list.fault(at(pointer, 'term'), 'not-a-number', text);
    return null;
  }
  const name = raw.name ?? null;
  const isRating = raw.rating ?? false;
  const { dimension } = shape;
  const type = dimension === '1' ? 'ratio' : 'measured';
  const unit = baseSymbol(dimension);
  const usual = null;
  const tool = null;
  const isList = false;
  const askedAs = null;
  return { id, name, type, dimension, unit, tool, usual, isList, isRating, term, askedAs };
}
