/**
 * A catalogue document as lines (NDJSON): the head on the first, then one entity a line, each a
 * JSON object (RFC 8259) whose "entity" says what it is. What is wrong is said by line, so that a
 * program that writes a document as it goes finds its own record again.
 *
 * Lines end in LF or CRLF; blank ones are passed over. Left out: comments, and records that go on
 * over several lines.
 */

import { ENTITY_LISTS, type EntityList } from '../domain/catalogue/document.js';
import { FAULT_LANGUAGE, hint, MOST_LISTED, nearest } from '../domain/catalogue/faults.js';
import { entityWord } from './entity-word.js';
import { echo } from './json-pointer.js';
import { type JsonFault, readJson } from './json-text.js';
import { sayFault, sayStop } from './problems/words.js';

export const LINE_FAULT_CODES = [
  'late-head',
  'line-too-long',
  'malformed-line',
  'missing-entity',
  'missing-head',
  'not-an-object',
  'not-in-head',
  'repeated-head',
  'unknown-entity',
] as const;

export interface LineFault {
  /** From 1; null where it is of no line, such as that of a head that there is not. */
  readonly line: number | null;
  /** RFC 6901 pointer into the object of the line. */
  readonly pointer: string;
  readonly code: (typeof LINE_FAULT_CODES)[number] | JsonFault['code'];
  readonly text: string;
}

/** How many lines of each list cannot be read: each may have defined a name that others use. */
export type UnreadLines = ReadonlyMap<EntityList, number>;

/** Longer than any entity that a person has written or measured, in UTF-16 units. */
export const LONGEST_LINE = 1_000_000;

/** The word of the head, which stands on the first line. */
export const HEAD = 'head';

const LISTS: ReadonlyMap<string, EntityList> = new Map(
  ENTITY_LISTS.map((list) => [entityWord(list), list]),
);

const WORDS = [HEAD, ...LISTS.keys()];

/** Whether a text is written in lines: its first one that is not blank is an object of its own. */
export function isNdjson(text: string): boolean {
  const [, first = ''] = /^\s*([^\n]*)/.exec(text) ?? [];
  if (first.length > LONGEST_LINE || !/"entity"\s*:/.test(first)) return false;
  const read = readJson(first);
  return read.isJson && isObject(read.value) && Object.hasOwn(read.value, 'entity');
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function readNdjson(text: string): NdjsonDocument {
  const document = new NdjsonDocument();
  let number = 0;
  for (let start = 0; start <= text.length; ) {
    const end = text.indexOf('\n', start);
    const stop = end === -1 ? text.length : end;
    number += 1;
    document.add(number, text.slice(start, stop));
    start = stop + 1;
  }
  document.end();
  return document;
}

/** The document that the lines make up, and where each part of it stands in them. */
export class NdjsonDocument {
  readonly #faults: LineFault[] = [];
  readonly #lists = new Map<EntityList, { readonly items: object[]; readonly lines: number[] }>();
  readonly #unread = new Map<EntityList, number>();
  #head: { readonly fields: object; readonly line: number } | null = null;
  #isHeadLost = false;
  #isFirst = true;

  /** The document in the form of one JSON value. */
  get value(): object {
    const lists = [...this.#lists].map(([list, { items }]) => [list, items] as const);
    return { ...this.#head?.fields, ...Object.fromEntries(lists) };
  }

  /** Of the lines themselves, in their order; `MOST_LISTED` at most. */
  get faults(): readonly LineFault[] {
    return this.#faults;
  }

  get unread(): UnreadLines {
    return this.#unread;
  }

  /** Whether anything can be said of the head: one that there is not, or is lost, is said once. */
  get hasHead(): boolean {
    return this.#head !== null;
  }

  /** Where a place of the document stands in the lines. */
  placeOf(pointer: string): Pick<LineFault, 'line' | 'pointer'> {
    const [, list = '', index = '', rest = ''] =
      /^\/([^/]*)(?:\/([^/]*)(.*))?$/s.exec(pointer) ?? [];
    const lines = this.#lists.get(list as EntityList)?.lines;
    if (lines === undefined) return { line: this.#head?.line ?? null, pointer };
    const line = lines[Number(index)];
    if (index === '' || line === undefined) return { line: null, pointer };
    return { line, pointer: rest };
  }

  add(line: number, written: string): void {
    if (written.trim() === '') return;
    const isFirst = this.#isFirst;
    this.#isFirst = false;
    const value = this.#read(line, written);
    if (value === null) {
      this.#lose(written, isFirst);
      return;
    }
    const { entity, ...fields } = value;
    if (entity === HEAD) this.#addHead(line, fields, isFirst);
    else this.#addEntity(line, entity, fields, written);
  }

  end(): void {
    if (this.#head !== null || this.#isHeadLost) return;
    const text = 'The head is missing: the first line is {"entity": "head", "catalogue": 1, …}.';
    this.#fault(null, 'missing-head', text);
  }

  #read(line: number, written: string): Readonly<Record<string, unknown>> | null {
    if (written.length > LONGEST_LINE) {
      this.#fault(line, 'line-too-long', `A line has ${LONGEST_LINE} characters at most.`);
      return null;
    }
    const read = readJson(written);
    if (!read.isJson) {
      const said = sayStop(read.stop, FAULT_LANGUAGE);
      this.#fault(line, 'malformed-line', `Column ${read.stop.column}: ${said}.`);
      return null;
    }
    if (!isObject(read.value)) {
      this.#fault(line, 'not-an-object', 'A line is one JSON object.');
      return null;
    }
    for (const fault of read.faults) {
      this.#fault(line, fault.code, sayFault(fault, FAULT_LANGUAGE), fault.pointer);
    }
    return read.value;
  }

  #addHead(line: number, fields: object, isFirst: boolean): void {
    if (this.#head !== null) {
      const text = `The head is on line ${this.#head.line} already.`;
      this.#fault(line, 'repeated-head', text);
      return;
    }
    if (!isFirst) this.#fault(line, 'late-head', 'The head is the first of all lines.');
    const own = Object.entries(fields).filter(([name]) => {
      if (!ENTITY_LISTS.some((list) => list === name)) return true;
      const text = `The head has no list of ${name}: each stands on a line of its own.`;
      this.#fault(line, 'not-in-head', text, `/${name}`);
      return false;
    });
    this.#head = { fields: Object.fromEntries(own), line };
  }

  #addEntity(line: number, entity: unknown, fields: object, written: string): void {
    const list = typeof entity === 'string' ? LISTS.get(entity) : undefined;
    if (list !== undefined) {
      const known = this.#lists.get(list) ?? { items: [], lines: [] };
      known.items.push(fields);
      known.lines.push(line);
      this.#lists.set(list, known);
      return;
    }
    if (typeof entity === 'string') {
      const text = `There is no entity "${echo(entity)}".${hint(entity, WORDS)}`;
      this.#fault(line, 'unknown-entity', text, '/entity');
    } else {
      const words = WORDS.map((word) => `"${word}"`).join(', ');
      this.#fault(line, 'missing-entity', `"entity" says what a line is: ${words}.`, '/entity');
    }
    this.#lose(written, false);
  }

  /** Notes what a line that cannot be read may have been: one of a list, or of any. */
  #lose(written: string, isFirst: boolean): void {
    const [, word] = /"entity"\s*:\s*"([a-z]+)"/.exec(written.slice(0, LONGEST_LINE)) ?? [];
    if (word === HEAD || (word === undefined && isFirst)) this.#isHeadLost = true;
    const list = LISTS.get(nearest(word ?? '', WORDS) ?? '');
    for (const one of list === undefined ? ENTITY_LISTS : [list]) {
      this.#unread.set(one, (this.#unread.get(one) ?? 0) + 1);
    }
  }

  #fault(line: number | null, code: LineFault['code'], text: string, pointer = ''): void {
    if (this.#faults.length < MOST_LISTED) this.#faults.push({ line, pointer, code, text });
  }
}
