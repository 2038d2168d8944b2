/**
 * Reads what a kind's parameter or a role's value is: its type, unit, tool and usual range; and a
 * number of that type.
 */

import type { TermShape } from '../check/term.js';
import { EVERYTHING, hull, type Interval, NON_NEGATIVE, POSITIVE } from '../quantity/interval.js';
import {
  isFault,
  type NumberType,
  parseQuantity,
  TOOLS,
  type ValueType,
} from '../quantity/quantity.js';
import { compare } from '../quantity/rational.js';
import { toolFor } from '../quantity/tool.js';
import { type Dimension, unitOf } from '../quantity/unit.js';
import type { ValueSpec } from './catalogue.js';
import type { ParameterRecord, Scalar } from './document.js';
import { at, type FaultList, hint, quoted } from './faults.js';

/** What a value of this type and dimension could be if nobody recorded it. */
export function naturalRange(spec: Pick<ValueSpec, 'type' | 'dimension'>): Interval {
  if (spec.type === 'ratio') return POSITIVE;
  if (spec.type === 'count') return NON_NEGATIVE;
  return SIGNED.has(spec.dimension) ? EVERYTHING : NON_NEGATIVE;
}

/** Dimensions whose values may be negative: offsets, angles, temperatures. */
const SIGNED: ReadonlySet<Dimension> = new Set(['length', 'angle', 'temperature', '1']);

/** What a term is that names such a value. */
export function shapeOfSpec(spec: ValueSpec): TermShape {
  if (spec.type === 'code') return { is: 'code' };
  const { dimension } = spec;
  if (spec.type === 'points') return { is: 'points', dimension };
  if (spec.isList) return { is: 'list', dimension };
  return { is: 'number', dimension, measured: spec.type === 'measured' };
}

/** Reads the common part of a parameter or a role's value; null where its values have no form. */
export function compileSpec(
  id: string,
  record: Partial<ParameterRecord> & { readonly type: ValueType },
  pointer: string,
  list: FaultList,
): ValueSpec | null {
  const type = list.isUnread(at(pointer, 'type')) ? null : record.type;
  const measure = compileUnit(record.unit, type, pointer, list);
  const tool = record.tool ?? null;
  if (tool !== null) checkTool(tool, type, measure, at(pointer, 'tool'), list);
  if (type === null || measure === null) return null;
  const bare = { id, name: record.name ?? null, type, ...measure, tool };
  const usual = compileUsual(record, bare, at(pointer, 'usual'), list);
  return { ...bare, usual, isList: false, isRating: false };
}

/** Codes are told by any tool; a number by one that measures its dimension. */
function checkTool(
  tool: string,
  type: ValueType | null,
  measure: Measure | null,
  pointer: string,
  list: FaultList,
): void {
  if (!Object.hasOwn(TOOLS, tool)) {
    const text = `There is no tool ${quoted(tool)}.${hint(tool, Object.keys(TOOLS))}`;
    list.fault(pointer, 'unknown-tool', text);
  } else if (type !== null && type !== 'code' && measure !== null) {
    const suited = toolFor(tool, measure.dimension);
    if (isFault(suited)) list.fault(pointer, suited.code, suited.text);
  }
}

type Measure = Pick<ValueSpec, 'dimension' | 'unit'>;

function compileUnit(
  symbol: string | undefined,
  type: ValueType | null,
  pointer: string,
  list: FaultList,
): Measure | null {
  const place = at(pointer, 'unit');
  if (list.isUnread(place)) return null;
  if (symbol === undefined) {
    if (type !== 'measured' && type !== 'points') return { dimension: '1', unit: '' };
    const what = type === 'points' ? 'points need one' : 'a measured value needs one';
    list.missing(pointer, 'unit', `${what}, such as "mm"`);
    return null;
  }
  if (type === 'code' || type === 'count' || type === 'ratio') {
    list.fault(place, 'unit-not-wanted', `A ${type} has no unit.`);
    return null;
  }
  const known = unitOf(symbol);
  if (known !== undefined) return { dimension: known.dimension, unit: known.symbol };
  list.fault(place, 'unknown-unit', `${quoted(symbol)} is no unit that is known here.`);
  return null;
}

function compileUsual(
  record: Partial<ParameterRecord>,
  spec: Pick<ValueSpec, 'type' | 'dimension'>,
  pointer: string,
  list: FaultList,
): Interval | null {
  if (record.usual === undefined) return null;
  if (spec.type === 'code' || spec.type === 'points') {
    const text = `${spec.type === 'code' ? 'Codes' : 'Points'} have no usual range.`;
    list.fault(pointer, 'not-a-number', text);
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

/** Reads a number of a type, or says why it is none. */
export function readNumber(
  raw: Scalar,
  spec: { readonly type: NumberType; readonly dimension: Dimension },
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
