#!/usr/bin/env node
/**
 * The entry of the command line: gives the commands the real streams, files, store, service,
 * clock and digest. It holds no logic of its own.
 */

import { createHash } from 'node:crypto';
import { open, readFile, writeFile } from 'node:fs/promises';
import { ENGINE } from '../domain/engine.js';
import { openStore } from '../store/sqlite.js';
import type { Digest, Notifier } from '../usecases/ports.js';
import { CommandFault } from './fault.js';
import { openOutputFile } from './output-file.js';
import { runProgram } from './program.js';
import type { Input, Output, World } from './world.js';

function outputOf(stream: NodeJS.WriteStream): Output {
  // A reader that has seen enough, such as `head`, closes the pipe: that is no failure.
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return {
    write: (text) => {
      stream.write(text);
    },
    isTerminal: stream.isTTY,
    // A terminal that does not know its width says 0.
    columns: stream.isTTY && stream.columns > 0 ? stream.columns : null,
  };
}

async function readInput(): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

async function openInput(path: string): Promise<Input> {
  if (path === '-') {
    const { stdin } = process;
    return { bytes: null, chunks: stdin, close: () => stdin.destroy() };
  }
  const file = await open(path);
  const { size } = await file.stat();
  // A pipe has no size that says anything.
  const chunks = file.createReadStream();
  return { bytes: size > 0 ? size : null, chunks, close: () => chunks.destroy() };
}

/** Whoever reads slowly is waited for. */
function writeOut(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(text, (error) => (error ? reject(error) : resolve()));
  });
}

const ENDING = ['SIGINT', 'SIGTERM'] as const;

/** A second signal is not caught any more, and ends the process at once. */
function untilStopped(): Promise<string> {
  return new Promise((resolve) => {
    const stop = (signal: NodeJS.Signals) => {
      for (const one of ENDING) process.off(one, stop);
      resolve(signal);
    };
    for (const one of ENDING) process.on(one, stop);
  });
}

/** Only whoever publishes needs it, and what it is made of. */
async function openNotifier(): Promise<Notifier | null> {
  const { ConfigFault, readWebhooks } = await import('../config.js');
  try {
    const settings = readWebhooks(process.env);
    if (settings === null) return null;
    return (await import('../notify/webhooks.js')).webhooks(settings);
  } catch (error) {
    if (!(error instanceof ConfigFault)) throw error;
    throw new CommandFault('bad-configuration', error.message, { cause: error });
  }
}

const digest: Digest = (text) => createHash('sha256').update(text, 'utf8').digest('hex');

const MODES = { read: 'read-only', write: 'create' } as const;

const world: World = {
  version: ENGINE,
  env: process.env,
  out: outputOf(process.stdout),
  err: outputOf(process.stderr),
  readFile,
  writeFile: (path, text) => writeFile(path, text),
  openOutput: openOutputFile,
  readInput,
  openInput,
  writeOut,
  openStore: (path, mode) => openStore(path, { mode: MODES[mode] }),
  // Only `serve` needs the service and what it is made of.
  startService: async (request) =>
    (await import('../main.js')).startService(request, process.env, digest),
  openNotifier,
  untilStopped,
  clock: () => new Date().toISOString(),
  digest,
};

// Not `process.exit`, which would cut off what a pipe has not taken yet.
process.exitCode = await runProgram(process.argv.slice(2), world);
