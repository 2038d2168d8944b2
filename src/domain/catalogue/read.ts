/**
 * Reads a document against its shape and says every fault, each with its pointer. Knows forms,
 * not meaning: whether a part exists that a vehicle names is the business of `compile.ts`.
 */

import { at, type FaultList, hint } from './faults.js';
import { EVIDENCE, type Fields, type Shape } from './shape.js';

/** Ids, parameter names and enumerated values. */
export const ID_PATTERN = /^[a-z0-9][a-z0-9-]{0,63}$/;

/** Words that mean something of their own wherever an id may stand. */
export const RESERVED_IDS: ReadonlySet<string> = new Set([
  'none',
  'unknown',
  'latest',
  'draft',
  'choices',
  'batch',
  'recheck',
  'matings',
]);

const LONGEST_TEXT = 2000;

/** Reads one value against its shape; true if it has no fault. */
export function readShape(shape: Shape, raw: unknown, pointer: string, list: FaultList): boolean {
  const before = list.faults.length;
  check(shape, raw, pointer, list);
  return list.faults.length === before;
}

function check(shape: Shape, raw: unknown, pointer: string, list: FaultList): void {
  switch (shape.is) {
    case 'text':
      return checkText(raw, pointer, list);
    case 'string':
      return checkString(shape, raw, pointer, list);
    case 'id':
      return checkId(raw, pointer, list);
    case 'boolean':
      if (typeof raw !== 'boolean') list.fault(pointer, 'not-a-boolean', 'This is true or false.');
      return;
    case 'integer':
      return checkInteger(shape, raw, pointer, list);
    case 'enum':
      return checkEnum(shape.of, raw, pointer, list);
    case 'scalar':
      if (!isScalar(raw)) list.fault(pointer, 'not-a-value', sayScalar(raw));
      return;
    case 'value':
      return checkValue(raw, pointer, list);
    case 'term':
    case 'check':
    case 'condition':
      return;
    case 'list':
      return checkList(shape, raw, pointer, list);
    case 'map':
      return checkMap(shape.of, raw, pointer, list);
    case 'nullable':
      if (raw !== null) check(shape.of, raw, pointer, list);
      return;
    case 'either':
      return checkEither(shape.of, shape.says, raw, pointer, list);
    case 'object':
      return checkObject(shape.fields, shape.rest, raw, pointer, list);
  }
}

function checkText(raw: unknown, pointer: string, list: FaultList): void {
  if (typeof raw === 'string') return checkPlainText(raw, pointer, list);
  if (!isObject(raw) || Object.keys(raw).length === 0) {
    list.fault(pointer, 'not-a-text', 'This is a text, or an object of texts by language.');
    return;
  }
  for (const [language, text] of Object.entries(raw)) {
    const place = at(pointer, language);
    if (!/^[a-z]{2,3}(-[A-Z]{2})?$/.test(language)) {
      list.fault(place, 'not-a-language', `"${language}" is no language, such as "en".`);
    } else if (typeof text !== 'string') list.fault(place, 'not-a-text', 'This is a text.');
    else checkPlainText(text, place, list);
  }
}

function checkPlainText(text: string, pointer: string, list: FaultList): void {
  if (text.trim() === '') list.fault(pointer, 'empty-text', 'A text may not be empty.');
  else if (text.length > LONGEST_TEXT) {
    list.fault(pointer, 'too-long', `A text has ${LONGEST_TEXT} characters at most.`);
  } else checkCharacters(text, pointer, list);
}

/** Control characters and lone surrogates cannot be stored and given back unchanged. */
function checkCharacters(text: string, pointer: string, list: FaultList): void {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.test(text)) {
    list.fault(pointer, 'control-character', 'A text may not hold control characters.');
  } else if (/\p{Cs}/u.test(text)) {
    list.fault(pointer, 'lone-surrogate', 'This text is no well-formed Unicode.');
  }
}

function checkString(
  shape: Shape & { is: 'string' },
  raw: unknown,
  pointer: string,
  list: FaultList,
): void {
  if (typeof raw !== 'string' || raw.trim() === '') {
    list.fault(pointer, 'not-a-text', `This is ${shape.says ?? 'a text'}.`);
  } else if (raw.length > shape.max) {
    list.fault(pointer, 'too-long', `This has ${shape.max} characters at most.`);
  } else if (shape.pattern !== undefined && !new RegExp(shape.pattern).test(raw)) {
    list.fault(pointer, 'malformed', `"${raw}" is not ${shape.says ?? 'of the right form'}.`);
  } else checkCharacters(raw, pointer, list);
}

function checkId(raw: unknown, pointer: string, list: FaultList): void {
  if (typeof raw === 'string' && ID_PATTERN.test(raw)) {
    if (RESERVED_IDS.has(raw)) {
      list.fault(pointer, 'reserved-id', `"${raw}" has a meaning of its own; choose another id.`);
    }
    return;
  }
  const said = typeof raw === 'string' ? `"${raw.slice(0, 80)}" is no id: an` : 'An';
  const text = `${said} id is small letters, digits and dashes, at most 64.`;
  list.fault(pointer, 'not-an-id', text);
}

function checkInteger(
  shape: Shape & { is: 'integer' },
  raw: unknown,
  pointer: string,
  list: FaultList,
): void {
  const fits = typeof raw === 'number' && Number.isSafeInteger(raw);
  if (fits && raw >= shape.min && raw <= shape.max) return;
  list.fault(pointer, 'not-an-integer', `This is a whole number, ${shape.min} to ${shape.max}.`);
}

function checkEnum(
  of: readonly (string | number)[],
  raw: unknown,
  pointer: string,
  list: FaultList,
): void {
  if (of.some((option) => option === raw)) return;
  const words = of.map((option) => JSON.stringify(option)).join(', ');
  const guess = typeof raw === 'string' ? hint(raw, of.map(String)) : '';
  list.fault(pointer, 'not-one-of', `This is one of ${words}.${guess}`);
}

function isObject(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}

function isScalar(raw: unknown): boolean {
  if (typeof raw === 'string') return raw.trim() !== '' && raw.length <= 64;
  return typeof raw === 'number' && Number.isSafeInteger(raw);
}

function sayScalar(raw: unknown): string {
  if (typeof raw === 'number') {
    return 'Write numbers that are not whole as text ("3.583"), so that no digit is lost.';
  }
  return 'A value is a text of at most 64 characters, such as "56.1 mm", or a whole number.';
}

function checkScalarOrList(raw: unknown, pointer: string, list: FaultList): void {
  if (!Array.isArray(raw)) {
    if (!isScalar(raw)) list.fault(pointer, 'not-a-value', sayScalar(raw));
    return;
  }
  if (raw.length === 0) list.fault(pointer, 'empty-list', 'A list of values may not be empty.');
  for (const [index, item] of raw.entries()) {
    if (!isScalar(item)) list.fault(at(pointer, index), 'not-a-value', sayScalar(item));
  }
}

function checkValue(raw: unknown, pointer: string, list: FaultList): void {
  if (!isObject(raw)) return checkScalarOrList(raw, pointer, list);
  const isChoice = Object.hasOwn(raw, 'choose');
  const known = isChoice ? ['choose', 'evidence'] : ['is', 'evidence', 'tool'];
  for (const key of Object.keys(raw)) {
    if (known.includes(key)) continue;
    list.fault(at(pointer, key), 'unknown-field', `A value has no "${key}".${hint(key, known)}`);
  }
  if (Object.hasOwn(raw, 'evidence')) check(EVIDENCE, raw.evidence, at(pointer, 'evidence'), list);
  if (isChoice) return checkChoose(raw.choose, at(pointer, 'choose'), list);
  if (!Object.hasOwn(raw, 'is')) {
    const text = 'A value is a text, {"is": …} with evidence, or {"choose": …}.';
    list.fault(pointer, 'not-a-value', text);
  } else checkScalarOrList(raw.is, at(pointer, 'is'), list);
  if (Object.hasOwn(raw, 'tool')) checkId(raw.tool, at(pointer, 'tool'), list);
}

function checkChoose(raw: unknown, pointer: string, list: FaultList): void {
  const isSet = isObject(raw) && Object.keys(raw).length === 1 && Array.isArray(raw.of);
  const options: unknown = isSet ? raw.of : raw;
  if (!Array.isArray(options) || (!isSet && options.length !== 2) || options.length === 0) {
    const text = 'A choice is a range ["600 mm", "1900 mm"], or {"of": [one, or, another]}.';
    list.fault(pointer, 'not-a-choice', text);
    return;
  }
  const place = isSet ? at(pointer, 'of') : pointer;
  for (const [index, option] of options.entries()) {
    if (!isScalar(option)) list.fault(at(place, index), 'not-a-value', sayScalar(option));
  }
}

function checkList(
  shape: Shape & { is: 'list' },
  raw: unknown,
  pointer: string,
  list: FaultList,
): void {
  const { min = 0, max = Number.POSITIVE_INFINITY } = shape;
  if (!Array.isArray(raw)) {
    list.fault(pointer, 'not-a-list', 'This is a list.');
    return;
  }
  if (raw.length < min || raw.length > max) {
    const text = min === max ? `This list has ${min} items.` : `This list needs ${min} or more.`;
    list.fault(pointer, 'wrong-length', raw.length > max ? `At most ${max} items.` : text);
  }
  for (const [index, item] of raw.entries()) check(shape.of, item, at(pointer, index), list);
}

function checkMap(of: Shape, raw: unknown, pointer: string, list: FaultList): void {
  if (!isObject(raw)) {
    list.fault(pointer, 'not-an-object', 'This is an object, with a name for each entry.');
    return;
  }
  for (const [key, item] of Object.entries(raw)) {
    checkId(key, at(pointer, key), list);
    check(of, item, at(pointer, key), list);
  }
}

function checkEither(
  of: readonly Shape[],
  says: string,
  raw: unknown,
  pointer: string,
  list: FaultList,
): void {
  const meant = of.find((shape) => couldBe(shape, raw));
  if (meant === undefined) list.fault(pointer, 'malformed', `This is ${says}.`);
  else check(meant, raw, pointer, list);
}

function couldBe(shape: Shape, raw: unknown): boolean {
  switch (shape.is) {
    case 'nullable':
      return raw === null || couldBe(shape.of, raw);
    case 'object':
    case 'map':
      return isObject(raw);
    case 'list':
      return Array.isArray(raw);
    default:
      return typeof raw === 'string';
  }
}

function checkObject(
  fields: Fields,
  rest: Shape | undefined,
  raw: unknown,
  pointer: string,
  list: FaultList,
): void {
  if (!isObject(raw)) {
    list.fault(pointer, 'not-an-object', 'This is an object with named fields.');
    return;
  }
  for (const [name, field] of Object.entries(fields)) {
    if (Object.hasOwn(raw, name)) check(field.shape, raw[name], at(pointer, name), list);
    else if (field.required) {
      list.fault(pointer, 'missing-field', `"${name}" is missing: ${field.says}.`);
    }
  }
  for (const [name, item] of Object.entries(raw)) {
    if (Object.hasOwn(fields, name)) continue;
    const place = at(pointer, name);
    if (rest === undefined) {
      const text = `There is no field "${name}" here.${hint(name, Object.keys(fields))}`;
      list.fault(place, 'unknown-field', text);
    } else {
      checkId(name, place, list);
      check(rest, item, place, list);
    }
  }
}
