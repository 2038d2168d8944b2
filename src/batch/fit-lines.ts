/**
 * A batch of fit questions: bytes in, text out, in pieces. It holds no more than the row that is
 * being read, the piece that is being written, and the answers that were given last, up to a number
 * of bytes. How fast it goes is for whoever pulls the pieces.
 *
 * A question of names alone is answered once and looked up from then on: most lines of a long list
 * are such.
 */

import { LRUCache } from 'lru-cache';
import { type FitLine, type LineType, NDJSON_TYPE } from '../contract/fit-batch.js';
import { vehicleInput } from '../contract/vehicle-input.js';
import type { FitAnswer } from '../usecases/answer.js';
import { QuestionError } from '../usecases/errors.js';
import type { FitBatch, FitLineInput, ShortFit } from '../usecases/fit-batch.js';
import { type AnswerWriter, type LineProblem, WRITERS } from './answers.js';
import { Counts } from './counts.js';
import type { LinePlace } from './line-refused.js';
import { CsvQuestions, NdjsonQuestions, type QuestionReader } from './questions.js';
import { type Row, RowReader } from './rows.js';

export interface FitLinesOptions {
  readonly batch: FitBatch;
  readonly questions: LineType;
  readonly answers: LineType;
  /** The problem of one line; throws what is none, and ends the batch with it. */
  readonly problemOf: (error: unknown, placeOf: (at: string) => LinePlace) => LineProblem;
  /** Lines before it are passed over; counted from 1. */
  readonly fromLine?: number;
}

/** Characters after which a piece is given out. */
export const PIECE = 65_536;

/**
 * Lines after which a piece is given out, however short it is, so that others have their turn; one
 * that had to be judged takes a turn of its own, since that may take as long as thousands.
 */
const TURN = 4000;

/** Bytes of answers that are kept; about what a key and its place in the list take besides. */
const KEPT_BYTES = 32_000_000;
const ENTRY_BYTES = 300;

/** What a question of names alone came to. */
type Known =
  | { readonly kind: 'answer'; readonly tail: string; readonly of: Outcome }
  | { readonly kind: 'error'; readonly tail: string; readonly of: string };

type Outcome = Pick<ShortFit, 'alone' | 'verdict'>;

export class FitLines {
  readonly #options: FitLinesOptions;
  readonly #rows: RowReader;
  readonly #writer: AnswerWriter;
  readonly #fromLine: number;
  readonly #counts = new Counts();
  readonly #known = new LRUCache<string, Known>({
    maxSize: KEPT_BYTES,
    sizeCalculation: ({ tail }, key) => ENTRY_BYTES + 2 * (tail.length + key.length),
  });
  /** Null until the names of the columns have been read. */
  #reader: QuestionReader | null;
  #piece = '';
  #work = 0;
  #next = 1;
  #hasStarted = false;

  constructor(options: FitLinesOptions) {
    const { questions, answers, fromLine = 1 } = options;
    const isCsv = questions !== NDJSON_TYPE;
    this.#options = options;
    this.#rows = new RowReader({ takesQuotes: isCsv });
    this.#writer = WRITERS[answers];
    this.#reader = isCsv ? null : new NdjsonQuestions();
    this.#fromLine = fromLine;
  }

  /** The line behind all that the pieces have answered so far. */
  get next(): number {
    return this.#next;
  }

  get counts(): Counts {
    return this.#counts;
  }

  /** @throws LineRefused where the first row has no names of columns. */
  *push(chunk: Uint8Array): Generator<string> {
    this.#start();
    for (const rows of this.#rows.push(chunk)) yield* this.#answered(rows);
    if (this.#piece !== '') yield this.#take();
  }

  /** The rest, and the counts. */
  *end(): Generator<string> {
    this.#start();
    for (const rows of this.#rows.end()) yield* this.#answered(rows);
    // Without any row there are no names of columns either.
    if (this.#reader === null) this.#header({ line: 1, next: 1, text: '', fault: null });
    this.#piece += this.#writer.end(this.#counts.end(this.#next - 1));
    yield this.#take();
  }

  /** What ended it before its end: the last line, with no counts behind it. */
  brokenOff(error: unknown): string {
    const problem = this.#options.problemOf(error, () => ({}));
    return this.#take() + this.#written('error', this.#next, undefined, problem);
  }

  /** Of rows there are names first; what is said of the whole stands before any answer. */
  #start(): void {
    if (this.#hasStarted || this.#reader === null) return;
    this.#hasStarted = true;
    this.#piece += this.#writer.start(this.#options.batch.start);
  }

  *#answered(rows: readonly Row[]): Generator<string> {
    for (const row of rows) {
      this.#work += 1;
      if (this.#reader === null) this.#header(row);
      else if (row.line >= this.#fromLine) this.#piece += this.#answer(row, this.#reader);
      this.#next = row.next;
      if (this.#piece.length >= PIECE || this.#work >= TURN) yield this.#take();
    }
  }

  #header(row: Row): void {
    this.#reader = new CsvQuestions(row);
    this.#start();
  }

  #take(): string {
    const piece = this.#piece;
    this.#piece = '';
    this.#work = 0;
    return piece;
  }

  #answer(row: Row, reader: QuestionReader): string {
    const { line } = row;
    const plain = row.fault === null ? reader.plain(row) : null;
    if (plain !== null) {
      const known = this.#known.get(keyOf(plain));
      if (known !== undefined) return this.#again(known, line, plain.ref);
    }
    let ref: string | undefined;
    try {
      const question = reader.read(row, (seen) => {
        ref = seen;
      });
      return question === null ? '' : this.#answerTo(question, line, reader);
    } catch (error) {
      const problem = this.#options.problemOf(error, (at) => reader.placeOf(at));
      return this.#written('error', line, ref, problem);
    }
  }

  #again(known: Known, line: number, ref: string | undefined): string {
    if (known.kind === 'answer') this.#counts.answer(known.of);
    else this.#counts.error(known.of);
    return this.#writer.line(known.kind, line, ref, known.tail);
  }

  /** Throws what is wrong with the question. */
  #answerTo(question: FitLine, line: number, reader: QuestionReader): string {
    this.#work += TURN;
    const { ref, ...asked } = question;
    const input = inputOf(asked);
    if (!isPlain(asked)) {
      return this.#written('answer', line, ref, this.#options.batch.answer(input));
    }
    const known = this.#judged(input, reader);
    this.#known.set(keyOf(asked), known);
    return this.#again(known, line, ref);
  }

  /** A mistake of the program, or of the store, may pass: it is told, and not kept. */
  #judged(input: FitLineInput, reader: QuestionReader): Known {
    try {
      const answer = this.#options.batch.answer(input);
      const { alone, verdict } = answer;
      return { kind: 'answer', tail: this.#writer.answerTail(answer), of: { alone, verdict } };
    } catch (error) {
      if (!(error instanceof QuestionError)) throw error;
      const problem = this.#options.problemOf(error, (at) => reader.placeOf(at));
      return { kind: 'error', tail: this.#writer.problemTail(problem), of: problem.code };
    }
  }

  #written(kind: 'answer', line: number, ref: string | undefined, answer: Answer): string;
  #written(kind: 'error', line: number, ref: string | undefined, problem: LineProblem): string;
  #written(
    kind: 'answer' | 'error',
    line: number,
    ref: string | undefined,
    said: Answer | LineProblem,
  ): string {
    if ('alone' in said) {
      this.#counts.answer(said);
      return this.#writer.line(kind, line, ref, this.#writer.answerTail(said));
    }
    this.#counts.error(said.code);
    return this.#writer.line(kind, line, ref, this.#writer.problemTail(said));
  }
}

type Answer = ShortFit | FitAnswer;

type AskedLine = Omit<FitLine, 'ref'>;

/** No name has a line feed in it. */
function keyOf({ vehicle, part }: Pick<FitLine, 'vehicle' | 'part'>): string {
  return `${vehicle}\n${part}`;
}

function isPlain(asked: AskedLine): boolean {
  return Object.keys(asked).length === 2;
}

/** As the use-case takes it; what holds for all lines, it knows. */
function inputOf({ position, with: companions, ...asked }: AskedLine): FitLineInput {
  const { part } = asked;
  const vehicle = vehicleInput(asked, { edition: null, lang: '' });
  return { ...vehicle, part, position: position ?? null, with: companions ?? {} };
}
