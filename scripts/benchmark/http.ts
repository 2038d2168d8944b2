/**
 * Measures what the service answers in a second over HTTP, against a server of Node's own that
 * looks at nothing and answers with as many bytes, in turns and by the same client. Both have a
 * process of their own; on a machine of few cores the client takes its share from both.
 */

import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import autocannon from 'autocannon';
import { medianOf } from './measured.js';

export interface HttpExtent {
  readonly seconds: number;
  readonly rounds: number;
}

export interface HttpResult {
  readonly name: string;
  /** Bytes of an answer. */
  readonly bytes: number;
  /** Answers a second: the median over the rounds. */
  readonly own: number;
  readonly raw: number;
  /** Own by raw: the median over the rounds. */
  readonly ratio: number;
  readonly mismatches: readonly string[];
}

const CONNECTIONS = 32;
/** So many requests that differ, more than are answered before the first comes again. */
const REQUESTS = 20_000;

const QUERY =
  'query Hub($vehicle: String!, $part: String!) { edition { number fit(vehicle: $vehicle, ' +
  'part: $part) { alone summary { text } } } }';

/** What is sent: always the same, or one after the other. */
interface Case {
  readonly name: string;
  readonly path: string;
  readonly bodies: readonly string[] | null;
}

const HOT = { vehicle: 'lirren-1', part: 'front-hub-used' };

function cases(): readonly Case[] {
  const graphql = (variables: object) => JSON.stringify({ query: QUERY, variables });
  // What differs is a variable that the query has no use for: no judging is measured.
  const changing = Array.from({ length: REQUESTS }, (_, n) => graphql({ ...HOT, n }));
  const { vehicle, part } = HOT;
  const path = `/v1/fit?vehicle=${vehicle}&part=${part}`;
  return [
    { name: 'REST, the same question', path, bodies: null },
    { name: 'GraphQL, the same question', path: '/graphql', bodies: [graphql(HOT)] },
    { name: 'GraphQL, other variables each time', path: '/graphql', bodies: changing },
  ];
}

export async function measuredHttp(extent: HttpExtent): Promise<HttpResult[]> {
  const service = await started(['src/cli/main.ts', 'serve', '--demo', '--port', '0', '--json']);
  try {
    const results: HttpResult[] = [];
    for (const one of cases()) results.push(await measured(one, service.url, extent));
    return results;
  } finally {
    service.process.kill();
  }
}

async function measured(one: Case, url: string, extent: HttpExtent): Promise<HttpResult> {
  const bytes = await bytesOf(one, url);
  const raw = await started(['scripts/benchmark/raw-server.ts', String(bytes)]);
  const rounds: { own: number; raw: number }[] = [];
  const mismatches: string[] = [];
  try {
    // What is asked for the first time is judged; that is not what is measured here.
    await load(one, url, extent.seconds, mismatches);
    for (let round = 0; round < extent.rounds; round += 1) {
      const own = await load(one, url, extent.seconds, mismatches);
      rounds.push({ own, raw: await load(one, raw.url, extent.seconds, mismatches) });
    }
  } finally {
    raw.process.kill();
  }
  const middle = (of: (round: (typeof rounds)[number]) => number) =>
    medianOf(rounds.map(of).sort((a, b) => a - b));
  return {
    name: one.name,
    bytes,
    own: middle((round) => round.own),
    raw: middle((round) => round.raw),
    ratio: middle((round) => round.own / round.raw),
    mismatches,
  };
}

/** Answers a second. Whatever is no 200 is told. */
async function load(
  { name, path, bodies }: Case,
  url: string,
  seconds: number,
  mismatches: string[],
): Promise<number> {
  const requests =
    bodies === null
      ? [{ method: 'GET' as const, path }]
      : bodies.map((body) => ({ method: 'POST' as const, path, body, headers: JSON_BODY }));
  const result = await autocannon({ url, requests, connections: CONNECTIONS, duration: seconds });
  const { non2xx, errors, timeouts } = result;
  if (non2xx + errors + timeouts > 0) {
    mismatches.push(`${name}: ${non2xx} refused, ${errors} broken off, ${timeouts} too late`);
  }
  return result['2xx'] / result.duration;
}

const JSON_BODY = { 'content-type': 'application/json' };

async function bytesOf({ path, bodies }: Case, url: string): Promise<number> {
  const [body] = bodies ?? [];
  const asked = body === undefined ? {} : { method: 'POST', body, headers: JSON_BODY };
  const response = await fetch(`${url}${path}`, asked);
  return (await response.arrayBuffer()).byteLength;
}

interface Started {
  readonly url: string;
  readonly process: ChildProcess;
}

/** Starts a program that prints where it answers. */
async function started(words: readonly string[]): Promise<Started> {
  const env = { ...process.env, FAYING_LOG_LEVEL: 'silent' };
  const child = spawn(process.execPath, ['--import', 'tsx', ...words], {
    env,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  for await (const line of createInterface(child.stdout)) {
    return { url: (JSON.parse(line) as { url: string }).url, process: child };
  }
  throw new Error(`${words.join(' ')} did not start`);
}
