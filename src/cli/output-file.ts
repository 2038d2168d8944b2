/**
 * A file that is written bit by bit: beside its place until all of it is there, so that a run that
 * is broken off leaves what was there before.
 */

import { randomUUID } from 'node:crypto';
import { type FileHandle, open, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { CommandFault } from './fault.js';

export interface OutputFile {
  /** Comes true when the text is written. */
  write(text: string): Promise<void>;
  /** Puts it in its place. */
  keep(): Promise<void>;
  /** Leaves nothing of it; nothing happens where it was kept. */
  drop(): Promise<void>;
}

/** Whether it may take the place of a file that is there. */
export interface Placing {
  readonly replaces: boolean;
}

/** Throws what `node:fs` throws; `EEXIST` where it may not take the place of one that is there. */
export async function openOutputFile(path: string, placing: Placing): Promise<OutputFile> {
  await checkPlace(path, placing);
  const beside = join(dirname(path), `.${basename(path)}.${randomUUID()}`);
  const file = await open(beside, 'wx');
  let isDone = false;
  return {
    write: async (text) => {
      await file.appendFile(text);
    },
    keep: async () => {
      await closed(file);
      await checkPlace(path, placing);
      await rename(beside, path);
      isDone = true;
    },
    drop: async () => {
      if (isDone) return;
      await file.close();
      await rm(beside, { force: true });
    },
  };
}

/** On the disk before it is called what it is called. */
async function closed(file: FileHandle): Promise<void> {
  await file.sync();
  await file.close();
}

async function checkPlace(path: string, { replaces }: Placing): Promise<void> {
  const there = await stat(path).catch((error: unknown) => {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  });
  if (there === null || (replaces && there.isFile())) return;
  const code = there.isDirectory() ? 'EISDIR' : 'EEXIST';
  throw Object.assign(new Error(`${code}: ${path}`), { code });
}

/** What a person can do about a file that cannot be written, by Node's error code. */
const UNWRITABLE: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['ENOENT', ['is in no folder that there is', 'Look at the spelling, or make the folder.']],
  ['ENOTDIR', ['is in no folder that there is', 'Look at the spelling.']],
  ['EEXIST', ['is there already', 'Choose another name, or add --force.']],
  ['EISDIR', ['is a folder', 'Name a file in it.']],
  ['EACCES', ['may not be written by you', 'Choose another place, or ask its owner.']],
  ['EROFS', ['is on a disk that takes nothing', 'Choose another place.']],
  ['ENOSPC', ['has no room on its disk', 'Make room, or choose another place.']],
]);

/** What writes a file; throws `CommandFault` where a person can do something about it. */
export async function writable<Written>(
  path: string,
  write: () => Promise<Written>,
): Promise<Written> {
  try {
    return await write();
  } catch (error) {
    const known = UNWRITABLE.get(codeOf(error));
    if (known === undefined) throw error;
    const [what, remedy] = known;
    throw new CommandFault('unwritable-file', `${path} ${what}.`, { remedy, cause: error });
  }
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}
