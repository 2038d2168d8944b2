/**
 * The FILE of a command: a catalogue document in UTF-8, from a file or, for `-`, from the
 * standard input.
 */

import { type JsonFault, readJson } from '../contract/json-text.js';
import { CommandFault } from './fault.js';
import type { World } from './world.js';

export interface ReadDocument {
  /** What to call it when speaking of it. */
  readonly name: string;
  readonly value: unknown;
  /** What its text has wrong that the value does not show, such as a name that stands twice. */
  readonly faults: readonly JsonFault[];
}

/** Throws `CommandFault` where it cannot be read, or is no JSON. */
export async function readDocument(file: string, world: World): Promise<ReadDocument> {
  const name = file === '-' ? 'standard input' : file;
  const bytes = file === '-' ? await world.readInput() : await readBytes(file, world);
  const read = readJson(textOf(bytes, name));
  if (read.isJson) return { name, value: read.value, faults: read.faults };
  const { line, column, text } = read.stop;
  throw new CommandFault('malformed-json', `${name}, line ${line}, column ${column}: ${text}.`);
}

/** What a person can do about a file that cannot be read, by Node's error code. */
const UNREADABLE: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['ENOENT', ['is not there', 'Look at the spelling, and at the folder that you are in.']],
  ['EISDIR', ['is a folder', 'Name the file in it.']],
  ['EACCES', ['may not be read by you', 'Change its permissions, or ask its owner.']],
  ['ENOTDIR', ['is not there: part of its path is no folder', 'Look at the spelling.']],
  ['ERR_FS_FILE_TOO_LARGE', ['is larger than 2 GiB', 'Split the catalogue.']],
]);

async function readBytes(file: string, world: World): Promise<Uint8Array> {
  try {
    return await world.readFile(file);
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
