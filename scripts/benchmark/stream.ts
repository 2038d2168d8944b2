/**
 * Measures what a batch costs beside the work itself: lines a second of the code that the service
 * runs, against a plain loop over the same bytes, in one process and in turns. Both take the bytes
 * in chunks, read each line, look its answer up and write it; the plain loop does no more than
 * that: it takes every line for a good one.
 */

import { createHash } from 'node:crypto';
import { FitLines } from '../../src/batch/fit-lines.js';
import { answersTo } from '../../src/batch/stream.js';
import { CSV_TYPE, type LineType, NDJSON_TYPE } from '../../src/contract/fit-batch.js';
import { openStore } from '../../src/store/sqlite.js';
import { type FitBatch, type ShortFit, startFitBatch } from '../../src/usecases/fit-batch.js';
import { Library } from '../../src/usecases/library.js';
import { prepareEdition, publishEdition } from '../../src/usecases/publish-edition.js';
import { demoCatalogue } from '../example-service.js';
import { medianOf } from './measured.js';
import { Random } from './random.js';

export interface StreamExtent {
  readonly lines: number;
  readonly rounds: number;
}

export interface StreamResult {
  readonly name: string;
  readonly lines: number;
  /** Lines a second: the median, the slowest and the fastest round. */
  readonly own: Rate;
  readonly plain: Rate;
  /** Own by plain: the median over the rounds. */
  readonly ratio: number;
  readonly mismatches: readonly string[];
}

export interface Rate {
  readonly median: number;
  readonly least: number;
  readonly most: number;
}

/** What was asked for the first time, judged by judged. */
export interface JudgedResult {
  readonly pairs: number;
  readonly perSecond: number;
}

const CHUNK_BYTES = 65_536;
const SEED = 8;

/** So many pairs are asked about again and again, as price lists of a shop do. */
const PAIRS = 1000;

interface Pair {
  readonly vehicle: string;
  readonly part: string;
}

type Answers = ReadonlyMap<string, ShortFit>;

export async function measuredStreams(
  extent: StreamExtent,
): Promise<{ readonly streams: StreamResult[]; readonly judged: JudgedResult }> {
  const batch = demoBatch();
  const random = new Random(SEED);
  const pairs = pairsOf(batch.pairs, random);
  const { answers, judged } = judgedOnce(batch.batch, pairs);
  const known: FitBatch = {
    start: batch.batch.start,
    answer: ({ vehicle, part }) => answers.get(`${vehicle} ${part}`) ?? fail(`${vehicle} ${part}`),
  };
  const streams: StreamResult[] = [];
  for (const type of [NDJSON_TYPE, CSV_TYPE] as const) {
    streams.push(
      await measured(type, known, answers, chunksOf(type, pairs, extent, random), extent),
    );
  }
  return { streams, judged };
}

function fail(what: string): never {
  throw new Error(`nobody judged ${what}`);
}

/** The demo catalogue, and every pair of a vehicle and a part of it. */
function demoBatch(): { readonly batch: FitBatch; readonly pairs: Pair[] } {
  const store = openStore(':memory:', { mode: 'create' });
  const digest = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');
  const clock = () => '2026-01-01T00:00:00.000Z';
  publishEdition({ store, clock }, prepareEdition(demoCatalogue(), digest), null);
  const library = new Library(store, digest);
  const { catalogue } = library.edition(null);
  const vehicles = [...catalogue.vehicles.values()].filter((one) => one.replacedBy.length === 0);
  const pairs = vehicles.flatMap(({ id: vehicle }) =>
    [...catalogue.parts.keys()].map((part) => ({ vehicle, part })),
  );
  const input = { edition: null, lang: 'en', units: 'recorded', changes: 'no' } as const;
  return { batch: startFitBatch(library, { ...input, form: 'short' }), pairs };
}

function pairsOf(all: Pair[], random: Random): Pair[] {
  return Array.from({ length: Math.min(PAIRS, all.length) }, () => {
    const [pair] = all.splice(random.below(all.length), 1);
    return pair ?? fail('a pair');
  });
}

function judgedOnce(batch: FitBatch, pairs: readonly Pair[]) {
  const nothing = { position: null, with: {}, fitted: {}, adapters: {}, facts: {}, measured: [] };
  const rest = { ...nothing, torque: null, use: null, ignorePresent: false };
  const start = performance.now();
  const answers = new Map(
    pairs.map(({ vehicle, part }) => {
      const answer = batch.answer({ ...rest, vehicle, part });
      return [`${vehicle} ${part}`, answer as ShortFit] as const;
    }),
  );
  const perSecond = (1000 * pairs.length) / (performance.now() - start);
  return { answers, judged: { pairs: pairs.length, perSecond } };
}

function chunksOf(
  type: LineType,
  pairs: readonly Pair[],
  { lines }: StreamExtent,
  random: Random,
): Uint8Array[] {
  const text = Array.from({ length: lines }, (_, index) => {
    const { vehicle, part } = pairs[random.below(pairs.length)] ?? fail('a pair');
    const ref = `GB-${String(index).padStart(7, '0')}`;
    if (type === CSV_TYPE) return `${ref},${vehicle},${part}\r\n`;
    return `${JSON.stringify({ ref, vehicle, part })}\n`;
  });
  const bytes = Buffer.from((type === CSV_TYPE ? 'ref,vehicle,part\r\n' : '') + text.join(''));
  const count = Math.ceil(bytes.length / CHUNK_BYTES);
  return Array.from({ length: count }, (_, index) =>
    bytes.subarray(index * CHUNK_BYTES, (index + 1) * CHUNK_BYTES),
  );
}

async function measured(
  type: LineType,
  batch: FitBatch,
  answers: Answers,
  chunks: readonly Uint8Array[],
  { lines, rounds }: StreamExtent,
): Promise<StreamResult> {
  const ways = { own: () => own(type, batch, chunks), plain: () => plain(type, answers, chunks) };
  const rates: Record<keyof typeof ways, number[]> = { own: [], plain: [] };
  const digests = new Set<string>();
  // The first round is for the compiler.
  for (let round = 0; round <= rounds; round += 1) {
    for (const way of ['own', 'plain'] as const) {
      const start = performance.now();
      const written = await ways[way]();
      const perSecond = (1000 * lines) / (performance.now() - start);
      if (round > 0) rates[way].push(perSecond);
      digests.add(answersIn(written, type));
    }
  }
  const ratios = rates.own.map((rate, round) => rate / (rates.plain[round] ?? rate));
  return {
    name: type,
    lines,
    own: rateOf(rates.own),
    plain: rateOf(rates.plain),
    ratio: medianOf(ratios.toSorted((a, b) => a - b)),
    mismatches: digests.size === 1 ? [] : [`${type}: the two write different answers`],
  };
}

function rateOf(rates: readonly number[]): Rate {
  const ordered = rates.toSorted((a, b) => a - b);
  return { median: medianOf(ordered), least: ordered[0] ?? 0, most: ordered.at(-1) ?? 0 };
}

/** The bytes between what is said of the whole at the start and at the end. */
function answersIn(written: readonly Uint8Array[], type: LineType): string {
  const text = Buffer.concat(written).toString();
  const lines = text
    .split('\n')
    .filter((line) => !/^\{"(start|end)"|^(kind|start|end),/.test(line));
  return createHash('sha256')
    .update(`${type}\n${lines.join('\n')}`)
    .digest('hex');
}

async function own(
  type: LineType,
  batch: FitBatch,
  chunks: readonly Uint8Array[],
): Promise<Uint8Array[]> {
  const problemOf = (error: unknown): never => {
    throw error;
  };
  const lines = new FitLines({ batch, questions: type, answers: type, problemOf });
  const encoder = new TextEncoder();
  const written: Uint8Array[] = [];
  for await (const piece of answersTo(each(chunks), lines)) written.push(encoder.encode(piece));
  return written;
}

async function* each(chunks: readonly Uint8Array[]): AsyncGenerator<Uint8Array> {
  yield* chunks;
}

/** What anybody would write who knows that every line is a good one. */
function plain(type: LineType, answers: Answers, chunks: readonly Uint8Array[]): Uint8Array[] {
  const decoder = new TextDecoder();
  const encoder = new TextEncoder();
  const written: Uint8Array[] = [];
  const writeLine = type === CSV_TYPE ? plainRow : plainObject;
  let rest = '';
  let line = 0;
  for (const chunk of chunks) {
    const lines = (rest + decoder.decode(chunk, { stream: true })).split('\n');
    rest = lines.pop() ?? '';
    let out = '';
    for (const text of lines) {
      line += 1;
      if (line > 1 || type !== CSV_TYPE) out += writeLine(text, line, answers);
    }
    written.push(encoder.encode(out));
  }
  return written;
}

function plainObject(text: string, line: number, answers: Answers): string {
  const { ref, vehicle, part } = JSON.parse(text) as Pair & { readonly ref: string };
  const answer = answers.get(`${vehicle} ${part}`) ?? fail(text);
  return `${JSON.stringify({ ref, line, ...answer })}\n`;
}

function plainRow(text: string, line: number, answers: Answers): string {
  const [ref = '', vehicle = '', part = ''] = text.trimEnd().split(',');
  const answer = answers.get(`${vehicle} ${part}`) ?? fail(text);
  const { alone, verdict, codes } = answer;
  const fields = ['answer', line, ref, vehicle, answer.part, alone, verdict ?? '', codes.join(' ')];
  return `${fields.join(',')},,,\r\n`;
}
