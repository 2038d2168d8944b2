/**
 * The program as a process of its own, as somebody starts it who has it installed.
 */

import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Started {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
}

export interface ProcessOptions {
  /** All that it is told by its environment. */
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly cwd?: string;
}

const entry = fileURLToPath(new URL('../../src/cli/main.ts', import.meta.url));
// In full, since it may be started in a folder that has no packages.
const tsx = import.meta.resolve('tsx');

export function startProgram(words: readonly string[], options: ProcessOptions): Started {
  const { PATH } = process.env;
  const child = spawn(process.execPath, ['--import', tsx, entry, ...words], {
    ...options,
    env: { PATH, ...options.env },
  });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  const ended = new Promise<Ended>((resolve) => {
    child.on('close', (code) => resolve({ code, out, err }));
  });
  return { child, ended };
}

/** The address that `serve --json` prints once it answers. */
export function urlOf({ stdout }: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = '';
    stdout?.on('data', (more: string) => {
      text += more;
      if (text.endsWith('\n')) resolve(JSON.parse(text).url);
    });
    stdout?.on('close', () => reject(new Error(`the service ended; it had printed: ${text}`)));
  });
}
