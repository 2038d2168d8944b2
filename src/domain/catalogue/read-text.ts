/**
 * Reads the plain words of a document: texts for people, ids and scalars. Each function gives
 * back what it read, or says the faults and gives undefined.
 */

import type { Scalar, Text } from './document.js';
import { at, type FaultList, quoted } from './faults.js';
import {
  CONTROL_PATTERN,
  ID_PATTERN,
  LANGUAGE_PATTERN,
  LONGEST_SCALAR,
  LONGEST_TEXT,
  RESERVED_IDS,
  SURROGATE_PATTERN,
} from './grammar.js';

export function isObject(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}

/** A text, or texts by language; texts of faulty languages are left out. */
export function readText(raw: unknown, pointer: string, list: FaultList): Text | undefined {
  if (typeof raw === 'string') return readPlainText(raw, pointer, list);
  if (!isObject(raw) || Object.keys(raw).length === 0) {
    list.fault(pointer, 'not-a-text', 'Wanted here: a text, or an object of texts by language.');
    return undefined;
  }
  const texts: [string, string][] = [];
  for (const [language, text] of Object.entries(raw)) {
    const place = at(pointer, language);
    if (!LANGUAGE_PATTERN.test(language)) {
      list.fault(place, 'not-a-language', `${quoted(language)} is no language, such as "en".`);
    } else if (typeof text !== 'string') {
      list.fault(place, 'not-a-text', 'Wanted here: a text.');
    } else {
      const read = readPlainText(text, place, list);
      if (read !== undefined) texts.push([language, read]);
    }
  }
  return texts.length === 0 ? undefined : Object.fromEntries(texts);
}

function readPlainText(text: string, pointer: string, list: FaultList): string | undefined {
  if (text.trim() === '') {
    list.fault(pointer, 'empty-text', 'A text may not be empty.');
    return undefined;
  }
  if (isLonger(text, LONGEST_TEXT)) {
    list.fault(pointer, 'too-long', `A text has ${LONGEST_TEXT} characters at most.`);
    return undefined;
  }
  return hasGoodCharacters(text, pointer, list) ? text : undefined;
}

/** Counts code points, as JSON Schema does, but no more of them than it must. */
export function isLonger(text: string, most: number): boolean {
  return text.length > most && (text.length > 2 * most || Array.from(text).length > most);
}

/** Control characters and lone surrogates cannot be stored and given back unchanged. */
export function hasGoodCharacters(text: string, pointer: string, list: FaultList): boolean {
  if (CONTROL_PATTERN.test(text)) {
    list.fault(pointer, 'control-character', 'A text may not hold control characters.');
    return false;
  }
  if (SURROGATE_PATTERN.test(text)) {
    const text_ = 'This text holds half a character; it is no well-formed Unicode.';
    list.fault(pointer, 'lone-surrogate', text_);
    return false;
  }
  return true;
}

/** Whether a word may be an id. */
export function isId(word: string): boolean {
  return ID_PATTERN.test(word) && !RESERVED_IDS.has(word);
}

export function readId(raw: unknown, pointer: string, list: FaultList): string | undefined {
  if (typeof raw !== 'string' || !ID_PATTERN.test(raw)) {
    const said = typeof raw === 'string' ? `${quoted(raw)} is no id: an` : 'An';
    const text = `${said} id is small letters, digits and dashes, at most 64.`;
    list.fault(pointer, 'not-an-id', text);
    return undefined;
  }
  if (RESERVED_IDS.has(raw)) {
    list.fault(pointer, 'reserved-id', `"${raw}" has a meaning of its own; choose another id.`);
    return undefined;
  }
  return raw;
}

/** A whole number, or a short text that a type can make a value of. */
export function readScalar(raw: unknown, pointer: string, list: FaultList): Scalar | undefined {
  if (typeof raw === 'number') {
    if (Number.isSafeInteger(raw)) return raw;
    const text = Number.isInteger(raw)
      ? 'Write numbers this large as text, so that no digit is lost.'
      : 'Write numbers that are not whole as text ("3.583"), so that no digit is lost.';
    list.fault(pointer, 'not-a-value', text);
    return undefined;
  }
  if (typeof raw === 'string' && isLonger(raw, LONGEST_SCALAR)) {
    const text = `A value has ${LONGEST_SCALAR} characters at most.`;
    list.fault(pointer, 'value-too-long', text);
    return undefined;
  }
  if (typeof raw !== 'string' || raw.trim() === '') {
    const text =
      `A value is a text of at most ${LONGEST_SCALAR} characters, such as "56.1 mm", ` +
      'or a whole number.';
    list.fault(pointer, 'not-a-value', text);
    return undefined;
  }
  return hasGoodCharacters(raw, pointer, list) ? raw : undefined;
}
