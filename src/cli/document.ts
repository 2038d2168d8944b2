/**
 * The FILE of a command: a catalogue document in UTF-8, from a file or, for `-`, from the
 * standard input. It is one JSON value, or one entity a line (NDJSON), which is told by the name
 * of the file or by its first line.
 */

import { readJson } from '../contract/json-text.js';
import {
  isNdjson,
  type LineFault,
  type NdjsonDocument,
  readNdjson,
  type UnreadLines,
} from '../contract/ndjson-text.js';
import { sayFault, sayStop } from '../contract/problems/words.js';
import { CommandFault, OWN_LANGUAGE } from './fault.js';
import type { Files } from './world.js';

export interface ReadDocument {
  /** What to call it when speaking of it. */
  readonly name: string;
  readonly value: unknown;
  /** What its text has wrong that the value does not show, such as a name that stands twice. */
  readonly faults: readonly DocumentFault[];
  /** How many entities of each list cannot be read, where one stands on each line. */
  readonly unread?: UnreadLines;
  /** What is said of the value, at its place in the text, in the order of the text. */
  readonly placed: (said: readonly DocumentFault[]) => readonly DocumentFault[];
}

/** A fault or a doubt; of a document in lines, by its line. */
export interface DocumentFault {
  readonly line?: number | null;
  readonly pointer: string;
  readonly code: string;
  readonly text: string;
}

/** Throws `CommandFault` where it cannot be read, or is no JSON. */
export async function readDocument(file: string, world: Files): Promise<ReadDocument> {
  const name = file === '-' ? 'standard input' : file;
  const bytes = file === '-' ? await world.readInput() : await readBytes(file, world);
  const written = textOf(bytes, name);
  if (/\.ndjson$/i.test(file) || isNdjson(written)) return inLines(name, readNdjson(written));
  const read = readJson(written);
  if (read.isJson) {
    const faults = read.faults.map(({ pointer, ...fault }) => ({
      pointer,
      code: fault.code,
      text: sayFault(fault, OWN_LANGUAGE),
    }));
    return { name, value: read.value, faults, placed: (said) => said };
  }
  const { line, column } = read.stop;
  const text = sayStop(read.stop, OWN_LANGUAGE);
  throw new CommandFault('malformed-json', `${name}, line ${line}, column ${column}: ${text}.`);
}

function inLines(name: string, document: NdjsonDocument): ReadDocument {
  const { value, faults, unread } = document;
  const placed = (said: readonly DocumentFault[]) =>
    said
      .map((one) =>
        Object.hasOwn(one, 'line') ? one : { ...one, ...document.placeOf(one.pointer) },
      )
      // A head that there is not is said once, not field by field.
      .filter((one) => document.hasHead || one.line !== null || faults.includes(one as LineFault))
      .toSorted((a, b) => (a.line ?? 0) - (b.line ?? 0));
  return { name, value, faults, unread, placed };
}

/** What a person can do about a file that cannot be read, by Node's error code. */
const UNREADABLE: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['ENOENT', ['is not there', 'Look at the spelling, and at the folder that you are in.']],
  ['EISDIR', ['is a folder', 'Name the file in it.']],
  ['EACCES', ['may not be read by you', 'Change its permissions, or ask its owner.']],
  ['ENOTDIR', ['is not there: part of its path is no folder', 'Look at the spelling.']],
  ['ERR_FS_FILE_TOO_LARGE', ['is larger than 2 GiB', 'Split the catalogue.']],
]);

function readBytes(file: string, world: Files): Promise<Uint8Array> {
  return readable(file, () => world.readFile(file));
}

/** What reads a file; throws `CommandFault` where a person can do something about it. */
export async function readable<Read>(file: string, read: () => Promise<Read>): Promise<Read> {
  try {
    return await read();
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    const known = UNREADABLE.get(code);
    if (known === undefined) throw error;
    const [what, remedy] = known;
    throw new CommandFault('unreadable-file', `${file} ${what}.`, { remedy, cause: error });
  }
}

/** A byte order mark is let pass: some editors write one. */
function textOf(bytes: Uint8Array, name: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    const remedy = 'Save it again as UTF-8.';
    const more = { remedy, cause: error };
    throw new CommandFault('malformed-json', `${name} is not text in UTF-8.`, more);
  }
}
