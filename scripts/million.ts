/**
 * A batch of many lines over HTTP: starts the service as a process of its own over the demo
 * catalogue, sends it lines as fast as it takes them, and reads the answers as they come. Says how
 * many were answered a second, what the service had in memory at most, and how long others who
 * asked something small meanwhile had to wait. Exit code 1 where the counts are not right.
 *
 * The memory is read from `/proc`, so this is for Linux alone.
 */

import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { setTimeout as sleep } from 'node:timers/promises';
import { parseArgs } from 'node:util';
import { createGunzip, createGzip } from 'node:zlib';
import type { FitBatchEnd } from '../src/contract/fit-batch.js';
import type { CatalogueDocument } from '../src/domain/catalogue/document.js';
import { Random } from './benchmark/random.js';
import { demoCatalogue } from './example-service.js';

const USAGE = `Usage: scripts/million [--lines N] [--gzip]

  --lines N  so many lines in place of a million
  --gzip     packed both ways`;

const SEED = 8;
const CATALOGUE = 'db/demo/catalogue.ndjson';

/** The program out of its source, as another process. */
function faying(...words: readonly string[]): ChildProcess {
  const node = ['--import', 'tsx', 'src/cli/main.ts', ...words];
  // A batch takes a key, unless it is open to everybody.
  const env = { ...process.env, FAYING_OPEN: 'batch,public' };
  return spawn(process.execPath, node, { env, stdio: ['ignore', 'pipe', 'ignore'] });
}

async function startedOver(database: string): Promise<{ service: ChildProcess; url: string }> {
  const publishing = faying('publish', CATALOGUE, '--database', database);
  const [code] = (await once(publishing, 'exit')) as [number];
  if (code !== 0) throw new Error('the demo catalogue cannot be published');
  const service = faying('serve', '--port', '0', '--database', database, '--json');
  if (service.stdout === null) throw new Error('the service says nothing');
  for await (const line of createInterface(service.stdout)) {
    return { service, url: (JSON.parse(line) as { url: string }).url };
  }
  throw new Error('the service did not start');
}

/** Pairs of the demo at random, a thousand lines at a time. */
function* chunks(lines: number): Generator<Buffer> {
  const { vehicles = [], parts = [] } = demoCatalogue() as CatalogueDocument;
  const random = new Random(SEED);
  const any = (of: readonly { readonly id: string }[]) => of[random.below(of.length)]?.id ?? '';
  for (let sent = 0; sent < lines; ) {
    let text = '';
    for (let count = 0; count < 1000 && sent < lines; count += 1, sent += 1) {
      text += `{"ref":"${sent}","vehicle":"${any(vehicles)}","part":"${any(parts)}"}\n`;
    }
    yield Buffer.from(text);
  }
}

/** In bytes: the most that the process had resident, and what it has now. */
function memoryOf({ pid }: ChildProcess): { readonly most: number; readonly now: number } {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const kilobytes = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+)`).exec(status)?.[1]);
  return { most: 1024 * kilobytes('VmHWM'), now: 1024 * kilobytes('VmRSS') };
}

/** Asks something small again and again, and tells how long each took. */
async function asking(url: string, isOver: () => boolean): Promise<number[]> {
  const waits: number[] = [];
  while (!isOver()) {
    const start = performance.now();
    await (await fetch(`${url}/livez`)).text();
    waits.push(performance.now() - start);
    await sleep(20);
  }
  return waits.sort((a, b) => a - b);
}

async function answered(url: string, lines: number, isPacked: boolean): Promise<FitBatchEnd> {
  const coding = isPacked ? { 'content-encoding': 'gzip', 'accept-encoding': 'gzip' } : {};
  const headers = { 'content-type': 'application/x-ndjson', ...coding };
  const asked = request(`${url}/v1/fit/batch`, { method: 'POST', headers });
  const source = Readable.from(chunks(lines), { objectMode: false });
  const sending = isPacked ? pipeline(source, createGzip(), asked) : pipeline(source, asked);
  const [response] = (await once(asked, 'response')) as [Readable];
  const bytes = isPacked ? response.pipe(createGunzip()) : response;
  let last = '';
  for await (const chunk of bytes as AsyncIterable<Buffer>) {
    // The last line is a short one.
    last = (last + chunk.toString('latin1')).slice(-2000);
  }
  await sending;
  const line = last.trimEnd().split('\n').at(-1) ?? '';
  return (JSON.parse(line) as { end: FitBatchEnd }).end;
}

async function million(lines: number, isPacked: boolean): Promise<boolean> {
  const folder = mkdtempSync(join(tmpdir(), 'faying-million-'));
  const say = (text: string) => process.stdout.write(`${text}\n`);
  const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(0)} MB`;
  const { service, url } = await startedOver(join(folder, 'demo.sqlite'));
  try {
    const before = memoryOf(service);
    let isOver = false;
    const others = asking(url, () => isOver);
    const start = performance.now();
    const end = await answered(url, lines, isPacked);
    const seconds = (performance.now() - start) / 1000;
    isOver = true;
    const waits = await others;
    const { most, now } = memoryOf(service);
    const at = (share: number) => `${(waits[Math.floor(share * waits.length)] ?? 0).toFixed(0)} ms`;
    say(`${lines} lines${isPacked ? ', packed' : ''}: ${seconds.toFixed(1)} s`);
    say(`${(lines / seconds).toFixed(0)} lines a second`);
    say(`memory of the service: ${megabytes(before.now)} before, ${megabytes(most)} at most`);
    say(`and ${megabytes(now)} after`);
    say(`others waited ${at(0.5)} in the middle, ${at(0.99)} at 99 %, ${at(0.9999)} at most`);
    say(`end: ${JSON.stringify(end)}`);
    return end.lines === lines && end.answers + end.errors === lines;
  } finally {
    service.kill('SIGTERM');
    await once(service, 'exit');
    rmSync(folder, { recursive: true });
  }
}

const { values } = parseArgs({
  options: {
    lines: { type: 'string', default: '1000000' },
    gzip: { type: 'boolean', default: false },
    help: { type: 'boolean', short: 'h', default: false },
  },
});
const lines = /^[1-9]\d{0,8}$/.test(values.lines) ? Number(values.lines) : null;
if (values.help) process.stdout.write(`${USAGE}\n`);
else if (lines === null) {
  process.stderr.write(`${USAGE}\n`);
  process.exitCode = 2;
} else if (!(await million(lines, values.gzip))) process.exitCode = 1;
