/**
 * Reads a document against its shape and says every fault, each with its pointer. Knows forms,
 * not meaning: whether a part exists that a vehicle names is the business of `compile.ts`.
 *
 * What is read is a copy, in which whatever cannot be used is left out, so that one fault hides
 * no other: an unknown or faulty field is gone; a faulty item of a list or entry of a map is a
 * hole (`undefined`), which keeps its place or its name; a field that must be there stands
 * empty (`''`, `[]`, `{}`). The copy of a document without a fault is that document.
 */

import type { EvidenceRecord } from './document.js';
import { at, type FaultList, hint, nearest, quoted } from './faults.js';
import {
  hasGoodCharacters,
  isLonger,
  isObject,
  readId,
  readScalar,
  readText,
} from './read-text.js';
import { readValue } from './read-value.js';
import { EVIDENCE, type Fields, type Shape } from './shape.js';

export { ID_PATTERN, RESERVED_IDS } from './grammar.js';

/** Reads one value against its shape; true if it has no fault. */
export function readShape(shape: Shape, raw: unknown, pointer: string, list: FaultList): boolean {
  const before = list.faultCount;
  readTolerantly(shape, raw, pointer, list);
  return list.faultCount === before;
}

/**
 * Reads one value against its shape.
 *
 * @returns a copy without what is faulty, or undefined where nothing can be used.
 */
export function readTolerantly(
  shape: Shape,
  raw: unknown,
  pointer: string,
  list: FaultList,
): unknown {
  const read = readForm(shape, raw, pointer, list);
  if (read === undefined) list.unread(pointer);
  return read;
}

function readForm(shape: Shape, raw: unknown, pointer: string, list: FaultList): unknown {
  switch (shape.is) {
    case 'text':
      return readText(raw, pointer, list);
    case 'string':
      return readString(shape, raw, pointer, list);
    case 'id':
      return readId(raw, pointer, list);
    case 'boolean':
      if (typeof raw === 'boolean') return raw;
      return list.fault(pointer, 'not-a-boolean', 'Wanted here: true or false.');
    case 'integer':
      return readInteger(shape, raw, pointer, list);
    case 'enum':
      return readEnum(shape.of, raw, pointer, list);
    case 'scalar':
      return readScalar(raw, pointer, list);
    case 'value':
      return readValue(raw, (own, place) => readEvidence(own, place, list), pointer, list);
    case 'term':
    case 'check':
    case 'condition':
      return raw;
    case 'list':
      return readList(shape, raw, pointer, list);
    case 'map':
      return readMap(shape.of, raw, pointer, list);
    case 'nullable':
      return raw === null ? null : readForm(shape.of, raw, pointer, list);
    case 'either':
      return readEither(shape.of, shape.says, raw, pointer, list);
    case 'object':
      return readObject(shape.fields, shape.rest, raw, pointer, list);
  }
}

function readEvidence(raw: unknown, pointer: string, list: FaultList): EvidenceRecord | undefined {
  return readTolerantly(EVIDENCE, raw, pointer, list) as EvidenceRecord | undefined;
}

function readString(
  shape: Shape & { is: 'string' },
  raw: unknown,
  pointer: string,
  list: FaultList,
): string | undefined {
  if (typeof raw !== 'string' || raw.trim() === '') {
    list.fault(pointer, 'not-a-text', `Wanted here: ${shape.says ?? 'a text'}.`);
  } else if (shape.pattern !== undefined && !new RegExp(shape.pattern, 'u').test(raw)) {
    const text = `${quoted(raw)} is not ${shape.says ?? 'of the right form'}.`;
    list.fault(pointer, 'malformed', text);
  } else if (isLonger(raw, shape.max)) {
    list.fault(pointer, 'too-long', `This has ${shape.max} characters at most.`);
  } else if (hasGoodCharacters(raw, pointer, list)) return raw;
  return undefined;
}

function readInteger(
  shape: Shape & { is: 'integer' },
  raw: unknown,
  pointer: string,
  list: FaultList,
): number | undefined {
  const isWhole = typeof raw === 'number' && Number.isSafeInteger(raw);
  if (isWhole && raw >= shape.min && raw <= shape.max) return raw;
  list.fault(
    pointer,
    'not-an-integer',
    `Wanted here: a whole number, ${shape.min} to ${shape.max}.`,
  );
  return undefined;
}

function readEnum(
  of: readonly (string | number)[],
  raw: unknown,
  pointer: string,
  list: FaultList,
): string | number | undefined {
  const meant = of.find((option) => option === raw);
  if (meant !== undefined) return meant;
  const [only, ...others] = of.map((option) => JSON.stringify(option));
  const words =
    others.length === 0
      ? `Wanted here: ${only}.`
      : `Wanted here: one of ${only}, ${others.join(', ')}.`;
  const guess = typeof raw === 'string' ? hint(raw, of.map(String)) : '';
  list.fault(pointer, 'not-one-of', `${words}${guess}`);
  return undefined;
}

function readList(
  { of, min = 0, max = Number.POSITIVE_INFINITY }: Shape & { is: 'list' },
  raw: unknown,
  pointer: string,
  list: FaultList,
): readonly unknown[] | undefined {
  if (!Array.isArray(raw)) {
    list.fault(pointer, 'not-a-list', 'Wanted here: a list.');
    return undefined;
  }
  const isWrong = raw.length < min || raw.length > max;
  if (isWrong) list.fault(pointer, 'wrong-length', sayLength(min, max, raw.length));
  if (raw.length > max) return undefined;
  const items = raw.map((item, index) => readTolerantly(of, item, at(pointer, index), list));
  const isWhole = !isWrong && !items.includes(undefined);
  return isWhole || (min !== max && items.length > 0) ? items : undefined;
}

function sayLength(min: number, max: number, length: number): string {
  if (min === max) return `This list has exactly ${min} items.`;
  if (length > max) return `This list has ${max} items at most.`;
  return min === 1 ? 'This list may not be empty.' : `This list needs ${min} items or more.`;
}

function readMap(
  of: Shape,
  raw: unknown,
  pointer: string,
  list: FaultList,
): Readonly<Record<string, unknown>> | undefined {
  if (!isObject(raw)) {
    list.fault(pointer, 'not-an-object', 'Wanted here: an object, with a name for each entry.');
    return undefined;
  }
  return Object.fromEntries(
    Object.entries(raw).map(([key, item]) => [key, readEntry(of, key, item, pointer, list)]),
  );
}

function readEntry(
  of: Shape,
  key: string,
  item: unknown,
  pointer: string,
  list: FaultList,
): unknown {
  const place = at(pointer, key);
  const isNamed = readId(key, place, list) !== undefined;
  const read = readTolerantly(of, item, place, list);
  return isNamed ? read : undefined;
}

function readEither(
  of: readonly Shape[],
  says: string,
  raw: unknown,
  pointer: string,
  list: FaultList,
): unknown {
  const meant = of.find((shape) => couldBe(shape, raw));
  if (meant !== undefined) return readForm(meant, raw, pointer, list);
  return list.fault(pointer, 'malformed', `Wanted here: ${says}.`);
}

function couldBe(shape: Shape, raw: unknown): boolean {
  switch (shape.is) {
    case 'nullable':
      return raw === null || couldBe(shape.of, raw);
    case 'object':
      return isObject(raw) && (shape.tag === undefined || Object.hasOwn(raw, shape.tag));
    case 'map':
      return isObject(raw);
    case 'list':
      return Array.isArray(raw);
    default:
      return typeof raw === 'string';
  }
}

function readObject(
  fields: Fields,
  rest: Shape | undefined,
  raw: unknown,
  pointer: string,
  list: FaultList,
): Readonly<Record<string, unknown>> | undefined {
  if (!isObject(raw)) {
    list.fault(pointer, 'not-an-object', 'Wanted here: an object with named fields.');
    return undefined;
  }
  if (rest === undefined) sayUnknownFields(fields, raw, pointer, list);
  const read: [string, unknown][] = [];
  for (const [name, field] of Object.entries(fields)) {
    const place = at(pointer, name);
    const isThere = Object.hasOwn(raw, name);
    if (!isThere && field.required && !list.isUnread(place))
      list.missing(pointer, name, field.says);
    const value = isThere ? readTolerantly(field.shape, raw[name], place, list) : undefined;
    if (value !== undefined) read.push([name, value]);
    else if (field.required) read.push([name, insteadOf(name, field.shape, raw)]);
  }
  for (const [name, item] of Object.entries(raw)) {
    if (rest === undefined || Object.hasOwn(fields, name)) continue;
    read.push([name, readEntry(rest, name, item, pointer, list)]);
  }
  return Object.fromEntries(read);
}

/** Says which fields there are not. One that was probably meant is unreadable, not lacking. */
export function sayUnknownFields(
  fields: Fields,
  raw: Readonly<Record<string, unknown>>,
  pointer: string,
  list: FaultList,
): void {
  const absent = new Set(Object.keys(fields).filter((name) => !Object.hasOwn(raw, name)));
  for (const name of Object.keys(raw)) {
    if (Object.hasOwn(fields, name)) continue;
    const meant = nearest(name, absent);
    if (meant !== null) {
      absent.delete(meant);
      list.unread(at(pointer, meant));
    }
    const guess = meant === null ? hint(name, Object.keys(fields)) : ` Did you mean '${meant}'?`;
    const text = `There is no field ${quoted(name)} here.${guess}`;
    list.fault(at(pointer, name), 'unknown-field', text);
  }
}

/**
 * What stands for a field that must be there and cannot be read: something empty that nobody
 * can mean. A thing whose own id is malformed is still known by it.
 */
function insteadOf(name: string, shape: Shape, raw: Readonly<Record<string, unknown>>): unknown {
  if (name === 'id' && Object.hasOwn(raw, name) && typeof raw[name] === 'string') return raw[name];
  return emptyOf(shape);
}

function emptyOf(shape: Shape): unknown {
  switch (shape.is) {
    case 'list':
      return [];
    case 'map':
    case 'object':
      return {};
    case 'enum':
      return shape.of[0];
    case 'nullable':
      return emptyOf(shape.of);
    case 'condition':
    case 'check':
    case 'term':
      return undefined;
    default:
      return '';
  }
}
