/**
 * Reads a recorded value into the set of values that it allows: by the type that the kind or
 * the role gives it, in its unit, widened by the tool, with the evidence that it inherits.
 */

import { hull, type Interval, isPoint, overlaps } from '../quantity/interval.js';
import { type PlanePoint, parsePoint } from '../quantity/plane-point.js';
import { isFault } from '../quantity/quantity.js';
import { compare } from '../quantity/rational.js';
import { canonicalThread } from '../quantity/thread-code.js';
import { toolFor } from '../quantity/tool.js';
import { nameOf } from '../quantity/unit.js';
import type { Evidence, ListItem, Value, ValueBody, ValueSpec } from './catalogue.js';
import type { EvidenceRecord, Scalar, ValueRecord } from './document.js';
import { evidenceWithin } from './evidence-within.js';
import { at, type FaultList, quoted } from './faults.js';
import { CODE_PATTERN } from './grammar.js';
import { present } from './holes.js';
import { isPlaceholder } from './placeholder.js';
import { naturalRange, readNumber } from './value-spec.js';

export { compileSpec, naturalRange, shapeOfSpec } from './value-spec.js';

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
  const evidence = evidenceWithin(inherited, parts.evidence);
  const tool = parts.tool === undefined ? null : usableTool(parts.tool, spec, pointer, list);
  const body = compileBody(parts, spec, tool, placeOf(record, pointer), list);
  if (body === null) return null;
  warnUnusual(body, spec, placeOf(record, pointer), list);
  return { ...body, spec, evidence, tool, text: textOf(parts, spec.type === 'points') };
}

/** The tool, if one could read such a value with it. */
function usableTool(
  tool: string,
  spec: ValueSpec,
  pointer: string,
  list: FaultList,
): string | null {
  const place = at(pointer, 'tool');
  if (spec.type === 'code') {
    list.fault(place, 'tool-not-wanted', 'A code is read by name; no tool widens it.');
    return null;
  }
  const known = toolFor(tool, spec.dimension);
  if (!isFault(known)) return tool;
  list.fault(place, known.code, known.text);
  return null;
}

/** Where the values themselves stand in the record. */
function placeOf(record: ValueRecord, pointer: string): string {
  if (typeof record !== 'object' || Array.isArray(record)) return pointer;
  if ('is' in record) return at(pointer, 'is');
  const place = at(pointer, 'choose');
  return 'choose' in record && 'of' in record.choose ? at(place, 'of') : place;
}

function textOf({ body, choose, isSet }: RawParts, isOfPoints: boolean): string {
  if (choose !== null) return choose.map(String).join(isSet ? ' or ' : ' to ');
  if (!Array.isArray(body)) return String(body);
  return body.map(String).join(isOfPoints ? '; ' : ', ');
}

function compileBody(
  parts: RawParts,
  spec: ValueSpec,
  tool: string | null,
  pointer: string,
  list: FaultList,
): ValueBody | null {
  const { body, choose, isSet } = parts;
  if (choose !== null) return compileChoice(choose, isSet, spec, pointer, list);
  if (spec.type === 'points') return compilePoints(body, spec, tool, pointer, list);
  if (Array.isArray(body) !== spec.isList) {
    const text = spec.isList
      ? 'Wanted here: a list of values.'
      : 'Wanted here: one value, not a list.';
    list.fault(pointer, 'not-a-list', text);
    return null;
  }
  if (Array.isArray(body)) {
    const items = compileItems(body as readonly Scalar[], spec, tool, pointer, list);
    return items === null ? null : { form: 'list', items };
  }
  const item = compileItem(body as Scalar, spec, tool, pointer, list);
  if (item === null) return null;
  if (item.code !== null) return { form: 'code', code: item.code };
  return item.interval === null ? null : { form: 'number', interval: item.interval };
}

/** More bolts than this hold no two parts together. */
export const MOST_POINTS = 64;

function compilePoints(
  body: Scalar | readonly Scalar[] | null,
  { dimension }: ValueSpec,
  tool: string | null,
  pointer: string,
  list: FaultList,
): ValueBody | null {
  if (!Array.isArray(body)) {
    list.fault(pointer, 'not-a-list', 'Wanted here: a list of points, ["120.5, -45.0 mm", …].');
    return null;
  }
  if (body.length > MOST_POINTS) {
    list.fault(pointer, 'too-many-points', `This list has ${MOST_POINTS} items at most.`);
    return null;
  }
  const points: PlanePoint[] = [];
  for (const [one, place] of present(body as readonly Scalar[], pointer)) {
    const read = parsePoint(String(one), { dimension, tool: tool ?? undefined });
    if (isFault(read)) list.fault(place, read.code, read.text);
    else points.push(read);
  }
  return points.length === body.length ? { form: 'points', points } : null;
}

function compileItems(
  raw: readonly Scalar[],
  spec: ValueSpec,
  tool: string | null,
  pointer: string,
  list: FaultList,
): ListItem[] | null {
  const items: ListItem[] = [];
  for (const [one, place] of present(raw, pointer)) {
    const item = compileItem(one, spec, tool, place, list);
    if (item !== null) items.push(item);
  }
  return items.length === raw.length ? items : null;
}

function compileItem(
  raw: Scalar,
  spec: ValueSpec,
  tool: string | null,
  pointer: string,
  list: FaultList,
): ListItem | null {
  const text = String(raw);
  const { type, dimension } = spec;
  if (type === 'points') throw new Error('points are read on their own');
  if (type !== 'code') {
    const interval = readNumber(raw, { type, dimension }, pointer, list, tool ?? undefined);
    if (interval === null) return null;
    if (overlaps(interval, naturalRange(spec))) return { text, interval, code: null };
    list.fault(pointer, 'out-of-range', `This is ${nameOf(dimension)}, which is not negative.`);
    return null;
  }
  const code = text.trim().replace(/\s+/g, ' ');
  if (isPlaceholder(code)) {
    const said = 'tells nothing, yet two of it would be equal; leave out what is not recorded';
    list.fault(pointer, 'placeholder-code', `${quoted(text)} ${said}.`);
    return null;
  }
  if (CODE_PATTERN.test(code)) return { text, interval: null, code: canonicalThread(code) };
  const said = 'it has letters, digits, spaces and . , _ / x + - only, a letter or digit first';
  list.fault(pointer, 'malformed', `${quoted(text)} is no code: ${said}.`);
  return null;
}

function compileChoice(
  options: readonly Scalar[],
  isSet: boolean,
  spec: ValueSpec,
  pointer: string,
  list: FaultList,
): ValueBody | null {
  if (spec.isList || spec.type === 'points') {
    list.fault(pointer, 'not-a-list', 'A list of values cannot be chosen.');
    return null;
  }
  // What one orders is named exactly: the ends of a range are designations, not readings.
  const exact: ValueSpec = spec.type === 'measured' ? { ...spec, type: 'designation' } : spec;
  const items = compileItems(options, exact, null, pointer, list);
  if (items === null) return null;
  if (isSet) return { form: 'set', items };
  const [low, high] = items.map(({ interval }) => interval);
  if (low === undefined || low === null || high === undefined || high === null) {
    list.fault(pointer, 'not-a-number', 'Codes have no range; choose {"of": [one, or, another]}.');
    return null;
  }
  if (!isPoint(low) || !isPoint(high) || low.low === null || high.low === null) {
    list.fault(pointer, 'not-exact', 'The ends of a range that one may order are exact.');
    return null;
  }
  if (compare(low.low, high.low) > 0) {
    list.fault(pointer, 'empty-range', 'The lower end of a range comes first.');
    return null;
  }
  return { form: 'range', interval: hull(low, high) };
}

/** Warns where a value lies outside what is usual: a slip of the pen, more often than not. */
function warnUnusual(body: ValueBody, spec: ValueSpec, pointer: string, list: FaultList): void {
  const { usual } = spec;
  if (usual === null) return;
  const warn = (interval: Interval | null, place: string) => {
    if (interval === null || overlaps(interval, usual)) return;
    const text = `This lies outside what is usual for "${spec.id}": is it a slip of the pen?`;
    list.warn(place, 'unusual-value', text);
  };
  if (body.form === 'number' || body.form === 'range') warn(body.interval, pointer);
  else if (body.form === 'list' || body.form === 'set') {
    for (const [index, { interval }] of body.items.entries()) warn(interval, at(pointer, index));
  }
}
