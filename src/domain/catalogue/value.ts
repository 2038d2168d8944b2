/**
 * Reads a recorded value into the set of values that it allows: by the type that the kind or
 * the role gives it, in its unit, widened by the tool, with the evidence that it inherits.
 */

import {
  contains,
  EVERYTHING,
  hull,
  type Interval,
  isPoint,
  isWithin,
  NON_NEGATIVE,
  POSITIVE,
} from '../quantity/interval.js';
import { isFault, parseQuantity, TOOLS, type ValueType } from '../quantity/quantity.js';
import { compare } from '../quantity/rational.js';
import { type Dimension, unitOf } from '../quantity/unit.js';
import type { Evidence, ListItem, Value, ValueBody, ValueSpec } from './catalogue.js';
import type { EvidenceRecord, ParameterRecord, Scalar, ValueRecord } from './document.js';
import { at, type FaultList, hint } from './faults.js';

const CODE_PATTERN = /^[\p{L}\p{N}][\p{L}\p{N} .,_/x×+-]*$/u;

/** What a value of this type and dimension could be if nobody recorded it. */
export function naturalRange(spec: Pick<ValueSpec, 'type' | 'dimension'>): Interval {
  if (spec.type === 'ratio') return POSITIVE;
  if (spec.type === 'count') return NON_NEGATIVE;
  return SIGNED.has(spec.dimension) ? EVERYTHING : NON_NEGATIVE;
}

/** Dimensions whose values may be negative: offsets, angles, temperatures. */
const SIGNED: ReadonlySet<Dimension> = new Set(['length', 'angle', 'temperature', '1']);

/** Reads the common part of a parameter or a role's value. */
export function compileSpec(
  id: string,
  record: Partial<ParameterRecord> & { readonly type: ValueType },
  pointer: string,
  list: FaultList,
): ValueSpec {
  const { type } = record;
  let dimension: Dimension = '1';
  let unit = '';
  if (record.unit !== undefined) {
    const known = unitOf(record.unit);
    if (known === undefined) {
      const text = `"${record.unit}" is no unit that is known here.`;
      list.fault(at(pointer, 'unit'), 'unknown-unit', text);
    } else if (type === 'code' || type === 'count' || type === 'ratio') {
      const text = `A ${type} has no unit.`;
      list.fault(at(pointer, 'unit'), 'unit-not-wanted', text);
    } else {
      dimension = known.dimension;
      unit = known.symbol;
    }
  } else if (type === 'measured') {
    list.fault(pointer, 'missing-field', `"unit" is missing: a measured value needs one.`);
  }
  const tool = record.tool ?? null;
  if (tool !== null && !Object.hasOwn(TOOLS, tool)) {
    const text = `There is no tool "${tool}".${hint(tool, Object.keys(TOOLS))}`;
    list.fault(at(pointer, 'tool'), 'unknown-tool', text);
  }
  const bare = { id, name: record.name ?? null, type, dimension, unit, tool };
  const usual = compileUsual(record, bare, at(pointer, 'usual'), list);
  return { ...bare, usual, isList: false, isRating: false };
}

function compileUsual(
  record: Partial<ParameterRecord>,
  spec: Pick<ValueSpec, 'type' | 'dimension'>,
  pointer: string,
  list: FaultList,
): Interval | null {
  if (record.usual === undefined) return null;
  if (spec.type === 'code') {
    list.fault(pointer, 'not-a-number', 'Codes have no usual range.');
    return null;
  }
  const type = spec.type === 'measured' ? 'designation' : spec.type;
  const ends = record.usual.map((end, index) => {
    return readNumber(end, { type, dimension: spec.dimension }, at(pointer, index), list);
  });
  const [low, high] = ends;
  if (low === null || low === undefined || high === null || high === undefined) return null;
  if (low.low !== null && high.high !== null && compare(low.low, high.high) > 0) {
    list.fault(pointer, 'empty-range', 'The lower end comes first.');
    return null;
  }
  return hull(low, high);
}

function readNumber(
  raw: Scalar,
  spec: { readonly type: Exclude<ValueType, 'code'>; readonly dimension: Dimension },
  pointer: string,
  list: FaultList,
  tool?: string,
): Interval | null {
  const read = parseQuantity(String(raw), { ...spec, tool });
  if (isFault(read)) {
    list.fault(pointer, read.code, read.text);
    return null;
  }
  return read.interval;
}

interface RawParts {
  readonly body: Scalar | readonly Scalar[] | null;
  readonly choose: readonly Scalar[] | null;
  readonly isSet: boolean;
  readonly evidence: EvidenceRecord | undefined;
  readonly tool: string | undefined;
}

function partsOf(record: ValueRecord): RawParts {
  const none = { body: null, choose: null, isSet: false, evidence: undefined, tool: undefined };
  if (typeof record !== 'object' || Array.isArray(record)) {
    return { ...none, body: record as Scalar | readonly Scalar[] };
  }
  if ('choose' in record) {
    const { choose, evidence } = record;
    if ('of' in choose) return { ...none, choose: choose.of, isSet: true, evidence };
    return { ...none, choose, evidence };
  }
  if ('is' in record) {
    return { ...none, body: record.is, evidence: record.evidence, tool: record.tool };
  }
  return none;
}

/** Reads one recorded value; says its faults and gives null, or warns of a doubtful one. */
export function compileValue(
  record: ValueRecord,
  spec: ValueSpec,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Value | null {
  const parts = partsOf(record);
  const evidence = { ...inherited, ...parts.evidence };
  const tool = parts.tool ?? null;
  const body = compileBody(parts, spec, pointer, list);
  if (body === null) return null;
  warnUnusual(body, spec, pointer, list);
  return { ...body, spec, evidence, tool, text: textOf(parts) };
}

function textOf({ body, choose, isSet }: RawParts): string {
  if (choose !== null) return choose.map(String).join(isSet ? ' or ' : ' to ');
  return Array.isArray(body) ? body.map(String).join(', ') : String(body);
}

function compileBody(
  parts: RawParts,
  spec: ValueSpec,
  pointer: string,
  list: FaultList,
): ValueBody | null {
  const { body, choose, isSet, tool } = parts;
  if (choose !== null) return compileChoice(choose, isSet, spec, pointer, list);
  if (Array.isArray(body) !== spec.isList) {
    const text = spec.isList ? 'This is a list of values.' : 'This is one value, not a list.';
    list.fault(pointer, 'not-a-list', text);
    return null;
  }
  if (Array.isArray(body)) {
    const items = compileItems(body as readonly Scalar[], spec, pointer, list);
    return items === null ? null : { form: 'list', items };
  }
  const item = compileItem(body as Scalar, spec, pointer, list, tool);
  if (item === null) return null;
  if (item.code !== null) return { form: 'code', code: item.code };
  return item.interval === null ? null : { form: 'number', interval: item.interval };
}

function compileItems(
  raw: readonly Scalar[],
  spec: ValueSpec,
  pointer: string,
  list: FaultList,
): ListItem[] | null {
  const items = raw.map((one, index) => compileItem(one, spec, at(pointer, index), list));
  const read = items.filter((item): item is ListItem => item !== null);
  return read.length === items.length ? read : null;
}

function compileItem(
  raw: Scalar,
  spec: ValueSpec,
  pointer: string,
  list: FaultList,
  tool?: string,
): ListItem | null {
  const text = String(raw);
  const { type, dimension } = spec;
  if (type !== 'code') {
    const interval = readNumber(raw, { type, dimension }, pointer, list, tool ?? undefined);
    return interval === null ? null : { text, interval, code: null };
  }
  if (tool !== undefined) {
    list.fault(pointer, 'tool-not-wanted', 'A code is read by name; no tool widens it.');
  }
  const code = text.trim().replace(/\s+/g, ' ');
  if (!CODE_PATTERN.test(code)) {
    list.fault(pointer, 'malformed', `"${text}" is no code: letters, digits and - . / x + only.`);
    return null;
  }
  return { text, interval: null, code };
}

function compileChoice(
  options: readonly Scalar[],
  isSet: boolean,
  spec: ValueSpec,
  pointer: string,
  list: FaultList,
): ValueBody | null {
  const here = at(pointer, 'choose');
  if (spec.isList) {
    list.fault(pointer, 'not-a-list', 'A list of values cannot be chosen.');
    return null;
  }
  // What one orders is named exactly: the ends of a range are designations, not readings.
  const exact: ValueSpec = spec.type === 'measured' ? { ...spec, type: 'designation' } : spec;
  const items = compileItems(options, exact, isSet ? at(here, 'of') : here, list);
  if (items === null) return null;
  if (isSet) return { form: 'set', items };
  const [low, high] = items.map(({ interval }) => interval);
  if (low === undefined || low === null || high === undefined || high === null) {
    list.fault(here, 'not-a-number', 'Codes have no range; choose {"of": [one, or, another]}.');
    return null;
  }
  if (!isPoint(low) || !isPoint(high) || low.low === null || high.low === null) {
    list.fault(here, 'not-exact', 'The ends of a range that one may order are exact.');
    return null;
  }
  if (compare(low.low, high.low) > 0) {
    list.fault(here, 'empty-range', 'The lower end of a range comes first.');
    return null;
  }
  return { form: 'range', interval: hull(low, high) };
}

/** Warns where a value lies outside what is usual: a slip of the pen, more often than not. */
function warnUnusual(body: ValueBody, spec: ValueSpec, pointer: string, list: FaultList): void {
  const { usual } = spec;
  if (usual === null) return;
  const seen: Interval[] = [];
  if (body.form === 'number' || body.form === 'range') seen.push(body.interval);
  else if (body.form !== 'code') {
    for (const { interval } of body.items) if (interval !== null) seen.push(interval);
  }
  for (const interval of seen) {
    const middle = interval.low !== null && contains(usual, interval.low);
    if (isWithin(interval, usual) || middle) continue;
    const text = `This lies outside what is usual for ${spec.id}: is it a slip of the pen?`;
    list.warn(pointer, 'unusual-value', text);
  }
}
